package cause

import (
	"slices"
	"strings"
	"sync"
	"testing"
)

// TestRecipeCause adds a cause as a developer would: one entry of the table
// and its code in the complaint's list.
func TestRecipeCause(t *testing.T) {
	oldCauses, oldComplaints, oldTables := causeTables, complaints, tables
	defer func() { causeTables, complaints, tables = oldCauses, oldComplaints, oldTables }()

	causeTables = append(slices.Clone(causeTables), []Cause{{
		Code: "mouse-in-relay", Name: "a mouse sits in the relay box",
		Predicts: []string{"clicks"}, ShownBy: []string{"device-rattles"}, Contradicts: []string{"starts-and-runs"},
		Fix: "let it out", Source: "example",
	}})
	complaints = slices.Clone(complaints)
	i := slices.IndexFunc(complaints, func(c Complaint) bool { return c.Code == "no-start" })
	complaints[i].Causes = append(slices.Clone(complaints[i].Causes), "mouse-in-relay")
	tables = sync.OnceValue(buildTables)

	state := func(facts ...Fact) State {
		for _, s := range Weigh("no-start", facts).Standings {
			if s.Cause.Code == "mouse-in-relay" {
				return s.State
			}
		}
		return "not listed"
	}
	if got := state(Fact{"clicks", 1}); got != Open {
		t.Errorf("after a click it is %s", got)
	}
	if got := state(Fact{"clicks", 1}, Fact{"device-rattles", 2}); got != Supported {
		t.Errorf("after a rattle it is %s", got)
	}
	if got := state(Fact{"starts-and-runs", 1}); got != RuledOut {
		t.Errorf("once it runs it is %s", got)
	}
	if _, ok := By("mouse-in-relay"); !ok {
		t.Error("it is not found by its code")
	}
}

// TestUnknownCodeNamesItsRow: a slip in the table is told with the row that has
// it.
func TestUnknownCodeNamesItsRow(t *testing.T) {
	oldCauses, oldComplaints := causeTables, complaints
	defer func() {
		causeTables, complaints = oldCauses, oldComplaints
		if got, _ := recover().(string); !strings.Contains(got, "mouse-in-relay names squeaks") {
			t.Errorf("it is told as %q", got)
		}
	}()
	causeTables = append(slices.Clone(causeTables), []Cause{{Code: "mouse-in-relay", Name: "a mouse sits in the relay box", Predicts: []string{"squeaks"}}})
	complaints = slices.Clone(complaints)
	complaints[0].Causes = append(slices.Clone(complaints[0].Causes), "mouse-in-relay")
	buildTables()
}
