package cause

import "strings"

// Cause is one possible reason for a complaint.
type Cause struct {
	Code, Name  string   // the code and its plain words
	Predicts    []string // facts that are to be expected with this cause; they support it but do not show it
	ShownBy     []string // facts that show it by themselves
	Contradicts []string // facts that it cannot stand beside: any of them rules it out
	Before      []string // tests to have done before the usual repair
	Fix         string   // the usual repair, common practice
	Work        string   // phrases of work that mends it, parted by commas; they tell that something was done, not that it was done well
	Consequence bool     // it follows from another cause, so the search goes on behind it
	Machine     bool     // it is of the machine in question itself: work on another one is none for it
	Note        string   // what else to know; may be empty
	Source      string   // what the entry rests on
	Own         *Own     // what no other cause asks for; nil where all of it is shared
}

// Own is what one cause alone is told by.
type Own struct {
	Seen string // its findings, in the form of seenRows
	Test Test   // what looks for them
}

// Danger says how near a test brings the technician to live or moving parts.
type Danger uint8

// The levels of danger, the safest first.
const (
	Look Danger = iota // covers on, nothing opened
	Dead               // opened, isolated and proved dead
	Live               // energised with covers off
)

// String names the level in one word.
func (d Danger) String() string { return [...]string{"look", "dead", "live"}[d] }

// Test is one way to establish a fact.
type Test struct {
	Code, Name string
	How        string   // an example of the line to type
	Outcomes   []string // the facts that it may establish
	Vague      []string // facts that say it was done but settled nothing
	Effort     int      // 1 is seconds, 5 is an hour or a special tool
	Danger     Danger
	Caution    []string // codes of the cautions that belong to this step
	On         []string // complaints in which it is proposed; empty is all on which it bears
	When       []string // proposed only when one of these facts is known; empty is always
	Barred     []string // never proposed when one of these facts is known
	Source     string   // of a number that Name holds; empty when it holds none
}

// live is 1 for a live test and 0 for any other, to sort by.
func (t *Test) live() int {
	if t.Danger == Live {
		return 1
	}
	return 0
}

// Course is what the trade does before anything else once something is known.
type Course struct {
	On     []string // the complaints in which it is taken
	When   []string // all of these facts are known; empty is from the start
	Tests  []string // in this order, each while it speaks for or against a cause that is left
	Source string
}

// Need is one thing that a complete call holds: at least one of the facts.
type Need struct {
	What string
	Any  []string
}

// Complaint is one of the common complaints.
type Complaint struct {
	Code, Name string
	Words      string   // phrases, parted by commas: all words of one of them must occur in the customer's words
	Signs      []string // findings that open this complaint by themselves
	Cured      []string // facts that say that the complaint is not there now
	Causes     []string // codes, in the order in which they would be mended
	Need       []Need   // what a complete call holds unless the technician says otherwise
}

// Complaints lists the complaints, the most specific first.
func Complaints() []Complaint { return append([]Complaint(nil), complaints...) }

// ComplaintBy gives the complaint with a code.
//
//go:noinline
func ComplaintBy(code string) (Complaint, bool) {
	for _, c := range complaints {
		if c.Code == code {
			return c, true
		}
	}
	return Complaint{}, false
}

// By gives the cause with a code.
func By(code string) (Cause, bool) {
	i, ok := tables().cause[code]
	if !ok {
		return Cause{}, false
	}
	return *tables().causes[i], true
}

// Tests lists all tests, those that several causes share first, in the order of
// the tables.
func Tests() []Test {
	var out []Test
	for _, t := range tables().tests {
		out = append(out, *t)
	}
	return out
}

// with is a list of codes and those of another behind them: made by a call, which costs
// the program a tenth of what a literal does.
//
//go:noinline
func with(codes string, more []string) []string { return append(strings.Fields(codes), more...) }
