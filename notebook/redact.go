package notebook

import (
	"fmt"
	"strings"

	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
)

// Redact gives a copy of a notebook in which the personal fields are replaced
// by a mark. The technical lines stay and replay; free text is kept.
func Redact(content []byte) ([]byte, error) {
	f, err := page.Read(content)
	if err != nil {
		return nil, err
	}
	var lost error
	made, err := replayed(f, false, call.Redacted, func(i int, _ call.Entry, _ []string, err error) {
		if err != nil && lost == nil {
			lost = fmt.Errorf("entry %d cannot be replayed: %w", f.Entries[i].N, err)
		}
	})
	if err == nil {
		err = lost
	}
	if err != nil {
		return nil, err
	}
	f.Torn = loose(f.Torn)
	for i, line := range f.Stray {
		f.Stray[i] = loose(line)
	}
	if len(f.Cut) > 0 {
		f.Cut = []string{call.RedactedMark} // of a page without its log no line tells what it is
	}
	remarks, err := remarksIn(f)
	if err != nil {
		return nil, err
	}
	return page.Render(made.call.Record(), remarks), nil
}

// loose redacts what is neither an entry nor a reply: torn or mangled as it is,
// it may be a personal line from any of its words on.
func loose(line string) string {
	words := strings.Fields(line)
	for i, w := range words {
		if call.Personal(strings.ToLower(w)) {
			return strings.Join(append(words[:i+1], call.RedactedMark), " ")
		}
	}
	return line
}
