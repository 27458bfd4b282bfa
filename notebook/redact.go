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
	c := call.New()
	for _, e := range f.Entries {
		if _, err := c.Apply(e.At, call.Redacted(e.Line)); err != nil {
			return nil, fmt.Errorf("entry %d cannot be replayed: %w", e.N, err)
		}
	}
	return page.Render(c.Record(), keptRemarks(Host{}, f)), nil
}
