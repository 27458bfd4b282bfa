package notebook

import (
	"strings"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
)

// keptRemarks gathers what people wrote: between the sections, inside them,
// and in the log. asOf is
// the call as of the header; nothing of a section is told apart without it.
func keptRemarks(f *page.File, asOf *record.Record) (map[string]string, error) {
	left := page.MaxRemarks
	out := map[string]string{}
	for id, s := range f.Remarks {
		out[id] = s
	}
	var fresh map[string]map[string]bool
	for _, s := range f.Sections {
		if !s.Edited {
			continue
		}
		if fresh == nil {
			fresh = derivedLines(asOf)
		}
		var own []string
		for _, line := range strings.Split(s.Body, "\n") {
			if strings.TrimSpace(line) == "" || fresh[s.ID][line] {
				continue
			}
			if left -= len(line); left < 0 {
				return nil, page.ErrRemarks
			}
			own = append(own, line)
		}
		if len(own) > 0 {
			addRemark(out, s.ID, strings.Join(own, "\n\n"))
		}
	}
	if len(f.Stray) > 0 {
		// In the log they were plain text; outside it they must stay so.
		addRemark(out, "log", plain(f.Stray))
	}
	if f.Torn != "" {
		addRemark(out, "log", "Cut off by a crash, never recorded: "+page.Escape(script.Clean(f.Torn)))
	}
	if len(f.Cut) > 0 {
		addRemark(out, "log", "What was left of this file, which ended before its log:\n\n"+plain(f.Cut))
	}
	return out, nil
}

// remarksIn is keptRemarks for a file that was not replayed.
func remarksIn(f *page.File) (map[string]string, error) {
	var asOf *record.Record
	if len(touched(f)) > 0 {
		made, err := replayed(f, true, nil, nil)
		if err != nil {
			return nil, err
		}
		asOf = made.asOf
	}
	return keptRemarks(f, asOf)
}

//go:noinline
func addRemark(remarks map[string]string, id, text string) {
	remarks[id] = strings.TrimPrefix(remarks[id]+"\n\n"+text, "\n\n")
}

// plain keeps lines as text that can become no markup. They are set in, so
// that none is taken for a mark or a heading of ours when the file is read.
func plain(lines []string) string {
	clean := make([]string, len(lines))
	for i, l := range lines {
		clean[i] = "  " + script.Clean(l)
	}
	return strings.TrimRight(page.CodeBlock(clean), "\n")
}

// derivedLines are the lines of the sections as they were written, to tell a
// person's lines from the program's.
func derivedLines(asOf *record.Record) map[string]map[string]bool {
	out := map[string]map[string]bool{}
	if asOf == nil {
		return out
	}
	for _, s := range page.Sections(asOf) {
		lines := map[string]bool{}
		for _, l := range strings.Split(s.Body, "\n") {
			lines[l] = true
		}
		out[s.ID] = lines
	}
	return out
}
