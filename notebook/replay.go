package notebook

import (
	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// replay is a file's entries applied anew, within the bounds.
type replay struct {
	call *call.Call
	// asOf is the call as of the entries that the header speaks of, or of all
	// when it speaks of more; nil when it was not asked for.
	asOf *record.Record
	cost bounds
}

// replayed applies a file's entries, each as line gives it, and tells what
// came of it. The error says that the file is beyond the bounds. asOf is only
// made when it is wanted.
func replayed(f *page.File, asOf bool, line func(string) string, each func(i int, got call.Entry, reply []string, err error)) (*replay, error) {
	r := &replay{call: call.New()}
	behind := min(max(f.Header.Entries, 0), len(f.Entries))
	for i := range f.Entries {
		if asOf && i == behind {
			r.asOf = r.call.Record()
		}
		e := &f.Entries[i]
		text := e.Line
		if line != nil {
			text = line(text)
		}
		got, err := r.cost.apply(r.call, e.At, text)
		if full := r.cost.over(0); full != nil {
			return nil, full
		}
		if each != nil {
			each(i, got, got.Reply.PlainLines(), err)
		}
	}
	if asOf && behind == len(f.Entries) {
		r.asOf = r.call.Record()
	}
	return r, nil
}

// touched names the derived sections into which somebody has written.
//
//go:noinline
func touched(f *page.File) []string {
	var out []string
	for _, s := range f.Sections {
		if s.Edited {
			out = append(out, s.ID)
		}
	}
	return out
}
