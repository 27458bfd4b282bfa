package cause

import (
	"slices"
	"strings"
	"sync"
	"testing"
)

// withCause adds a cause to the tables, and its code to a complaint's list, for
// the time of a test.
func withCause(t *testing.T, c Cause, complaint string) {
	t.Helper()
	oldCauses, oldComplaints := causeTables, complaints
	fresh := func() {
		seen, vocabulary, tables, phrases = sync.OnceValue(readSeen), sync.OnceValue(buildVocabulary), sync.OnceValue(buildTables), sync.OnceValue(readPhrases)
	}
	t.Cleanup(func() {
		causeTables, complaints = oldCauses, oldComplaints
		fresh()
	})
	causeTables = func() [][]Cause { return append(slices.Clone(oldCauses()), []Cause{c}) }
	complaints = slices.Clone(complaints)
	i := slices.IndexFunc(complaints, func(x Complaint) bool { return x.Code == complaint })
	complaints[i].Causes = append(slices.Clone(complaints[i].Causes), c.Code)
	fresh()
}

// TestRecipeCause adds a cause with a finding and a test of its own as a
// developer would: one entry of the table and its code in the complaint's list.
func TestRecipeCause(t *testing.T) {
	withCause(t, Cause{
		Code: "mouse-in-relay", Name: "a mouse sits in the relay box",
		Predicts: []string{"clicks"}, ShownBy: []string{"squeaks"}, Contradicts: []string{"no-squeak", "starts-and-runs"},
		Fix: "let the mouse out of the relay", Work: "mouse", Source: commonPractice,
		Own: &Own{
			Seen: `
				squeaks | squeaks, mouse in box | the relay box squeaks | no-squeak
				no-squeak | no squeak, box silent | the relay box does not squeak |`,
			Test: Test{Code: "squeak", Name: "listen at the relay box", How: "saw no squeak", Outcomes: []string{"squeaks", "no-squeak"}, Effort: 1, Danger: Look},
		},
	}, "no-start")

	for _, c := range []struct {
		facts string
		want  State
	}{
		{"clicks", Open},
		{"clicks squeaks", Supported},
		{"clicks no-squeak", RuledOut},
		{"starts-and-runs", RuledOut},
	} {
		r := Weigh("no-start", facts(c.facts))
		i := slices.IndexFunc(r.Standings, func(s Standing) bool { return s.Cause.Code == "mouse-in-relay" })
		if i < 0 || r.Standings[i].State != c.want {
			t.Errorf("after %s it is %+v, want %s", c.facts, r.Standings, c.want)
		}
	}
	if r := Weigh("no-start", facts("clicks squeaks")); r.Repair == nil || r.Repair.Code != "mouse-in-relay" || len(Why("mouse-in-relay", r)) == 0 {
		t.Errorf("once it squeaks, next is %s", r.NextWhy)
	}
	asked := false
	for f := "clicks"; !asked; {
		r := Weigh("no-start", facts(f))
		if r.Next == nil {
			t.Fatalf("its test is never proposed, after %s: %s", f, r.NextWhy)
		}
		asked = r.Next.Code == "squeak"
		f += " " + r.Next.Outcomes[0]
	}
	if code, _, ok := FindFinding("box silent, lid on"); !ok || code != "no-squeak" {
		t.Errorf("its finding is not understood: %q", code)
	}
	if r := Weigh("no-start", facts("squeaks no-squeak")); len(r.Contradictions) != 1 {
		t.Error("what its findings exclude is lost")
	}
	if !Mends("mouse-in-relay", "put the mouse into the garden") {
		t.Error("its work is not understood")
	}
	// What the table asks of every row, it asks of this one.
	for name, test := range map[string]func(*testing.T){
		"vocabulary": TestVocabularyIsWellFormed, "codes": TestEveryCodeUsedIsKnown, "causes": TestCausesAreWellFormed, "repairs": TestRepairsAreSafe,
		"tests": TestTestsAreWellFormed, "decided": TestEveryCauseAndPairCanBeDecided, "wordings": TestEveryWordingIsFound,
	} {
		t.Run(name, test)
	}
}

// TestUnknownCodeNamesItsRow: a slip in the table is told with the row that has
// it.
func TestUnknownCodeNamesItsRow(t *testing.T) {
	withCause(t, Cause{Code: "mouse-in-relay", Name: "a mouse sits in the relay box", Predicts: []string{"squeaks"}}, "no-start")
	defer func() {
		if got, _ := recover().(string); !strings.Contains(got, "mouse-in-relay names squeaks") {
			t.Errorf("it is told as %q", got)
		}
	}()
	buildTables()
}
