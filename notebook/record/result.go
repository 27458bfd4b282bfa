package record

import "strings"

// The values of Header.Result.
const (
	Unsafe     = "unsafe"
	NotProved  = "not proved"
	Waits      = "waits for a part"
	Unfinished = "unfinished"
	NoRepair   = "no repair"
	PassedOn   = "passed on"
	Declined   = "declined"
	NoFault    = "no fault found"
	CalledOff  = "called off"
	Proved     = "proved"
)

// Result is how a call stands, in two words.
type Result struct {
	Word  string
	Means string
	Tone  string // "good", "doubt", "bad" or "plain"
}

// Results are all values of Header.Result, what needs attention first.
var Results = []Result{
	{Unsafe, "left with a danger that was found", "bad"},
	{NotProved, "repaired, and the repair not shown to hold", "doubt"},
	{Waits, "stopped for want of a part", "doubt"},
	{Unfinished, "not repaired and never closed", "doubt"},
	{PassedOn, "handed over to somebody else", "doubt"},
	{NoRepair, "closed without a repair and without a word why", "doubt"},
	{Declined, "the client declined the repair", "plain"},
	{NoFault, "looked at, and nothing found to mend", "plain"},
	{CalledOff, "nobody home, or the unit gone", "plain"},
	{Proved, "repaired, and shown to hold", "good"},
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

// ResultWords says the values with their meaning.
func ResultWords() string {
	var out []string
	for _, r := range Results {
		out = append(out, r.Word+" ("+r.Means+")")
	}
	return strings.Join(out, ", ")
}
