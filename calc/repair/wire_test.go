package repair

import (
	"reflect"
	"slices"
	"strings"
	"testing"
)

var roles = map[string]string{"A": "start", "B": "run", "D": "common"}

func TestWiringServesEachRoleOnce(t *testing.T) {
	got := Wiring([]Wire{{"black", "C", 4}, {"red", "start", 5}, {"white", "B", 6}, {"green", "line", 7}}, roles)
	want := []WireRow{
		{Wire: "black", Role: "common", Pin: "D", Entry: 4},
		{Wire: "red", Role: "start", Pin: "A", Entry: 5},
		{Wire: "white", Role: "run", Pin: "B", Entry: 6},
		{Wire: "green", Other: "line", Entry: 7},
	}
	if !reflect.DeepEqual(got.Rows, want) || !got.Complete() || !slices.Equal(got.Entries, []int{4, 5, 6, 7}) {
		t.Errorf("%+v", got)
	}
}

func TestWiringSaysWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		name  string
		wires []Wire
		roles map[string]string
		want  string
	}{
		{"missing", []Wire{{"black", "C", 0}, {"red", "S", 0}}, roles, "no wire goes to run"},
		{"twice", []Wire{{"black", "C", 0}, {"red", "S", 0}, {"white", "R", 0}, {"blue", "B", 0}}, roles, "2 wires go to run: white, blue"},
		{"colour twice", []Wire{{"red", "C", 0}, {"Red", "S", 0}, {"white", "R", 0}}, roles, "2 wires are called red: mark them apart"},
		{"no roles", []Wire{{"black", "C", 0}}, nil, "the roles of the pins are not settled: read the ohms first"},
		{"role unknown", []Wire{{"black", "C", 0}, {"red", "S", 0}}, map[string]string{"A": "start"}, "black: no pin is known to be common"},
		{"pin named as another role", []Wire{{"black", "S", 0}}, map[string]string{"S": "common", "R": "run", "C": "start"},
			"black: S is a pin here, read as common, and also the mark for start: write the role in full"},
		{"role on two pins", []Wire{{"black", "run", 0}}, map[string]string{"1": "run", "2": "run"}, "black: run is on more than one pin: 1, 2"},
	} {
		got := Wiring(c.wires, c.roles)
		if got.Complete() || !slices.Contains(got.Problems, c.want) {
			t.Errorf("%s: problems %q", c.name, got.Problems)
		}
	}
	if got := Wiring(nil, roles); got.Complete() || len(got.Problems) != 3 {
		t.Errorf("no wires: %q", got.Problems)
	}
}

// Pins that carry the marks of their own roles are not ambiguous.
func TestWiringTakesMarkedPins(t *testing.T) {
	got := Wiring([]Wire{{"black", "c", 0}, {"red", "S", 0}, {"white", "Run", 0}}, map[string]string{"C": "common", "S": "start", "R": "run"})
	if !got.Complete() || got.Rows[0].Pin != "C" || got.Rows[2].Pin != "R" {
		t.Errorf("%+v", got)
	}
}

// Renaming pins changes names and nothing else; the colours mean nothing.
func TestWiringIgnoresNames(t *testing.T) {
	a := Wiring([]Wire{{"black", "common", 0}, {"red", "start", 0}}, roles)
	b := Wiring([]Wire{{"red", "common", 0}, {"black", "start", 0}}, map[string]string{"1": "start", "2": "run", "3": "common"})
	if len(a.Problems) != len(b.Problems) || strings.Join(a.Problems, ";") != strings.Join(b.Problems, ";") {
		t.Errorf("%q and %q", a.Problems, b.Problems)
	}
	for i := range a.Rows {
		if a.Rows[i].Role != b.Rows[i].Role {
			t.Errorf("row %d: %s and %s", i, a.Rows[i].Role, b.Rows[i].Role)
		}
	}
	fan := map[string]string{"1": "common", "2": "high", "3": "low", "4": "start"}
	c := Wiring([]Wire{{"black", "high", 0}}, fan)
	if !slices.Equal(c.Problems, []string{"no wire goes to common", "no wire goes to start", "no wire goes to low"}) {
		t.Errorf("fan motor: %q", c.Problems)
	}
}
