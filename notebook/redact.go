package notebook

import (
	"fmt"

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
	remarks, err := remarksIn(f)
	if err != nil {
		return nil, err
	}
	return page.Render(made.call.Record(), remarks), nil
}
