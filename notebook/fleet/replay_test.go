package fleet

import (
	"path/filepath"
	"strings"

	"ohmcall/notebook/fleet/sample"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// sampleReplay stands in for the replay of typed lines: it knows the few
// words that the tests use, calls an entry without a reply a fault, and
// leaves the rest as the front matter has it.
func sampleReplay(content []byte) (*record.Record, []Fault, error) {
	f, err := page.Read(content)
	if err != nil {
		return nil, nil, err
	}
	rec := &record.Record{Header: f.Header}
	rec.Header.State, rec.Header.SHA256, rec.Header.Entries = "open", "", len(f.Entries)
	var faults []Fault
	for _, e := range f.Entries {
		word, rest, _ := strings.Cut(e.Line, " ")
		rec.Log = append(rec.Log, record.Entry{N: e.N, At: e.At, Line: e.Line, Kind: word, Reply: e.Reply})
		switch word {
		case "panic":
			panic("a fault of the replay")
		case "ohm", "volt", "amp", "temp":
			rec.Readings = append(rec.Readings, record.Reading{Entry: e.N, At: e.At, Kind: word, Shown: rest})
		case "client":
			rec.Header.Client = rest
		case "close":
			rec.Header.State = "closed"
		}
		if len(e.Reply) == 0 {
			faults = append(faults, Fault{Row: e.Row, Col: 1, Text: "no reply"})
		}
	}
	return rec, faults, nil
}

// sampleFiles writes n notebooks and gives their paths.
func sampleFiles(t interface {
	Fatal(...any)
	TempDir() string
}, n int) (dir string, names []string) {
	dir = t.TempDir()
	if _, err := sample.Write(dir, 7, n); err != nil {
		t.Fatal(err)
	}
	for i := range n {
		name, _ := sample.File(7, i)
		names = append(names, filepath.Join(dir, name))
	}
	return dir, names
}
