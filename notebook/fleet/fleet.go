// Package fleet goes through many notebooks: it lists them, adds them up in
// a digest, writes them out as tables, and gathers what they teach about a
// model of compressor.
//
// A closed notebook whose log has the SHA-256 that its front matter names, and
// whose front matter and sections have the digests that they bear, is read from
// the front matter alone. All are digests, no signatures: who can write the file can
// make them anew, and only a scan that replays every notebook
// (Options.Records) finds that out. Files are opened for reading only, nothing
// is kept between two runs, and a bad file stops nothing.
package fleet

import (
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// State says how far a file is believed.
type State string

const (
	// Trusted is a closed notebook whose log is as it was when closed.
	Trusted State = "trusted"
	// Changed is a closed notebook whose log or front matter is not what was
	// closed, or one that was cut off.
	Changed State = "changed"
	// Open is a notebook that is not closed.
	Open State = "open"
	// Copy is a notebook with the same log as another that is counted, or a
	// part of it.
	Copy State = "copy"
	// Redacted is a copy without client and site beside the call that it was
	// made of; only who has seen all files can tell.
	Redacted State = "redacted"
	// Foreign is a file that is no notebook and does not pretend to be.
	Foreign State = "foreign"
	// Bad is a file that could not be read as a notebook.
	Bad State = "bad"
)

// Counts reports whether a file of this state is a call to be counted.
func (s State) Counts() bool { return s == Trusted || s == Changed || s == Open }

// Fault is something wrong at a place in a notebook.
type Fault = page.Fault

// Replay applies the typed lines of a notebook again and reports the record
// they amount to and every difference from what the file says. It is called
// from several goroutines at once and must not keep content, which is
// overwritten when it returns.
type Replay func(content []byte) (*record.Record, []Fault, error)

// Item is one file of a scan.
type Item struct {
	Path string // as found, to show and to open
	Rel  string // below the folder that was scanned, with slashes
	// ID names the call in every table: see the package's schema text.
	ID     string
	State  State
	Reason string // why it is not trusted, or what a replay found
	// Header is from the front matter when trusted, else from the replay.
	// Its texts are safe to show.
	Header record.Header
	Faults []Fault
	// Record is the replayed call, only with Options.Records.
	Record *record.Record
	// Found tells that a typed line holds Options.Text.
	Found bool

	// follow is what is told of the calls before and behind, see Once.
	follow *Follow

	next  string   // of an open call, when it was replayed
	sum   [32]byte // of the log's text
	trail trail    // of its typed lines
	first string   // the log's first line
}

// Options steer a scan. The zero value reads front matter only.
type Options struct {
	// Replay is used for notebooks that are not trusted; without it they are
	// listed with what their front matter says.
	Replay Replay
	// Records replays trusted notebooks too and keeps the record of each.
	Records bool
	// Text is looked for in the typed lines of each log, letter case aside.
	Text string
	// Renamed names the notebooks in folders whose names do not end in .md: each
	// file there is looked into for it.
	Renamed bool
	// Progress is told after each file how many are done.
	Progress func(done, total int)
	// Workers is how many files are read at once; 0 means one per processor.
	Workers int

	open opener // os files when nil; tests inject errors
	most int    // bytes of a file that is read; journal.MaxFile when 0
}
