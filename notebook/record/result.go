package record

import "strings"

// The values of Header.Result.
const (
	Unsafe     = "unsafe"
	NotProved  = "not proved"
	Waits      = "waits for a part"
	Undecided  = "waits for the client"
	Unfinished = "unfinished"
	NoRepair   = "no repair"
	PassedOn   = "passed on"
	Declined   = "declined"
	NotWorth   = "not worth repair"
	NoFault    = "no fault found"
	CalledOff  = "called off"
	Proved     = "proved"
)

// Result is how a call stands, in two words.
type Result struct {
	Word  string
	Means string
	Tone  string // "good", "doubt", "bad" or "plain"
	// Returns says that another call on the unit is to be expected.
	Returns bool
}

// Results are all values of Header.Result, what needs attention first.
var Results = []Result{
	{Unsafe, "left with a danger that was found", "bad", false},
	{NotProved, "repaired, and the repair not shown to hold", "doubt", false},
	{Waits, "stopped for want of a part", "doubt", true},
	{Undecided, "the client has still to decide", "doubt", true},
	{Unfinished, "not repaired, and not closed or to be gone on with", "doubt", true},
	{PassedOn, "handed over to somebody else", "doubt", true},
	{NoRepair, "closed without a repair and without a word why", "doubt", false},
	{Declined, "the client declined the repair", "plain", true},
	{NotWorth, "the technician advised against the repair, or no part is to be had", "plain", true},
	{NoFault, "looked at, and nothing found to mend", "plain", false},
	{CalledOff, "put off or cancelled, nobody home, or the unit gone", "plain", true},
	{Proved, "repaired, and shown to hold", "good", false},
}

// ResultRank is the place of a result in the table; an unknown one comes
// before what is proved.
func ResultRank(word string) int {
	for i := range Results {
		if Results[i].Word == word {
			return i
		}
	}
	return len(Results) - 2
}

// Returns reports whether another call on the unit is to be expected after this
// one: nothing was mended, and it is said why; or the unit was unsafe, and
// nothing was mended.
func (h *Header) Returns() bool {
	for i := range Results {
		if r := &Results[i]; r.Word == h.Result && r.Returns {
			return true
		}
	}
	for _, s := range h.Missing {
		if strings.HasPrefix(s, "proof") {
			return false
		}
	}
	return h.Result == Unsafe && len(h.Parts) == 0
}

// ResultWords says the values with their meaning.
func ResultWords() string {
	var out []string
	for _, r := range Results {
		out = append(out, r.Word+" ("+r.Means+")")
	}
	return strings.Join(out, ", ")
}
