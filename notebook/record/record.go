// Package record is what a call amounts to, as plain data: every page,
// table and export is drawn from it. It decides nothing.
package record

import (
	"strconv"
	"time"
)

// TimeLayout is how times are written: ISO 8601 with offset, to the second.
const TimeLayout = "2006-01-02T15:04:05-07:00"

// Money writes a sum of money in the notebook's own currency.
//
//go:noinline
func Money(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// Format is the version of the notebook file that this program writes.
const Format = 1

// Header is what a program indexes a call by; it stands in the file's front
// matter.
type Header struct {
	Format     int
	State      string // "open" or "closed"
	Entries    int    // how many log entries the part above the log rests on
	Started    string // ISO 8601, "" before the first entry
	Ended      string // ISO 8601 of the last entry
	Technician string
	Client     string
	Site       string
	Unit       string
	Model      string
	Serial     string
	Machine    string // model on the plate of the machine judged, the compressor as a rule
	Complaint  string
	Kind       string // complaint code, see calc/cause
	Cause      string // name of the cause found, "" when none is supported alone
	Result     string // one of Results
	Left       string // the state in which the unit was left, "" when it is not written down
	Minutes    int
	Cost       float64
	Unpriced   int // parts written down without a price, which the cost lacks
	Missing    []string
	Unsafe     []string
	Doubt      []string // dangers told of, what is in doubt, and what cannot be so
	Said       []string // words to read for a danger, and since a repair those that leave it proved
	Parts      []string // "2 x start device"
	Ohms       []string // "common-run 2.5", ohms between roles, settled only
	Redacted   bool
	SHA256     string // of the log's text, when closed
}

// Fact is one labelled sentence.
type Fact struct{ Label, Text string }

// Note is a sentence with the entry and the source it rests on.
type Note struct {
	Entry  int
	Text   string
	Source string
}

// Pin is one terminal of a machine.
type Pin struct {
	Name, Role string
	Case       string // ohms to the case as shown, "" when not read
}

// Pair is the reading between two pins that counts.
type Pair struct {
	A, B, Ohms string
}

// Machine is one machine whose pins were read.
type Machine struct {
	Name    string
	State   string // in words
	Settled bool
	Pins    []Pin
	Pairs   []Pair
	Notes   []string
}

// Reading is one line of evidence.
type Reading struct {
	Entry     int
	At        time.Time
	Kind      string // the command word
	Of        string // the machine, for readings between its pins
	A, B      string // points; B may be empty
	Value     float64
	Unit      string // UCUM
	U         float64
	Over      bool
	Shown     string // value as shown, with unit
	Condition string
	Struck    string // the reason, "" when it counts
}

// Verdict is one judgement.
type Verdict struct {
	Subject, Word, Text, Limit, Source string
	Margin                             string
	Also                               []string
	Entries                            []int
}

// Sum is one expression and its value.
type Sum struct {
	Entry                int
	Text, Value, Meaning string
	Number               float64
	Unit                 string
	U                    float64
	Met                  string // "met", "not met", "cannot tell", "in doubt" or "waiting" for an expectation, else ""
	Struck               string
}

// Cause is one possible cause and where it stands.
type Cause struct {
	Code, Name, State string
	For, Against      []int
	Fix               string
}

// AlertWords begin the alerts of a record, each before a colon.
var AlertWords = []string{"Unsafe", "In doubt", "Contradiction", "Expectation not met", "Not mended", "Work for what was ruled out", "Does not fit by its marking", "To read", "Missing", "Note"}

// Work is something done or written down.
type Work struct {
	Entry  int
	At     time.Time
	Kind   string // did, safe, saw, note
	Text   string
	Struck string
}

// Part is a part used.
type Part struct {
	Entry  int
	Name   string
	Serial string
	Count  float64
	Price  float64 // of one
	Priced bool
	Struck string
}

// Called is the part by its name and, where it has one, its serial number.
func (p *Part) Called() string {
	if p.Serial == "" {
		return p.Name
	}
	return p.Name + ", serial " + p.Serial
}

// Wire is one wire of a part and where it goes.
type Wire struct {
	Entry          int
	Wire, Role, At string
	Note           string
}

// Point is one timed temperature of a curve.
type Point struct {
	Minutes float64
	Celsius float64
	Entry   int
}

// Curve is the course of one temperature after the repair.
type Curve struct {
	Place   string
	Unit    string // "C" or "F", as shown
	Points  []Point
	Target  float64 // °C
	Verdict string
	Reason  string
	Fit     *Fit
	Plot    []string // plain text
}

// Fit is a curve's exponential.
type Fit struct {
	Final, Start, Tau float64 // °C, °C, minutes
}

// Entry is one line of the log with the reply that was given.
type Entry struct {
	N      int
	At     time.Time
	Line   string
	Kind   string
	Reply  []string
	Struck string
}

// Clock is a time of day, with its date when the call went on to another day.
func (r *Record) Clock(t time.Time) string {
	if len(r.Log) > 0 && t.Format(time.DateOnly) != r.Log[0].At.Format(time.DateOnly) {
		return t.Format("2006-01-02 15:04")
	}
	return t.Format("15:04")
}

// Record is a whole call.
type Record struct {
	Header   Header
	Outcome  []Fact
	Identity []Fact
	Alerts   []string
	Cautions []Note
	Machines []Machine
	Wiring   []Wire
	Readings []Reading
	Verdicts []Verdict
	Sums     []Sum
	Causes   []Cause
	// CausesBefore is the entry of the repair before which the causes stood as
	// listed, 0 when nothing was repaired.
	CausesBefore int
	Next         string
	Work         []Work
	Parts        []Part
	Proof        []Fact
	Curves       []Curve
	Missing      []string
	Log          []Entry
	// Reopened is the entry that opened a closed call again, 0 when none did or
	// it was closed since.
	Reopened int
}

// StillOpen says how a call comes to be open.
func (r *Record) StillOpen() string {
	if r.Reopened == 0 {
		return "never closed"
	}
	return "closed, then opened again (entry " + strconv.Itoa(r.Reopened) + ")"
}
