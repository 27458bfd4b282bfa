package winding

import (
	"maps"
	"strings"
	"testing"
)

func TestOpen(t *testing.T) {
	all := func(c, s, r string) []Mark { return []Mark{{c, Common, 1}, {s, Start, 2}, {r, Run, 3}} }
	csr := map[string]Role{"C": Common, "S": Start, "R": Run}
	tests := []struct {
		name  string
		in    []Reading
		marks []Mark
		state State
		roles map[string]Role
		note  string
	}{
		// Internal overload signature: Schreiber chiller manual p. 12, and
		// ice-machine operation manual 80-0111-9 p. 176 (below 49 °C).
		{"overload", pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "15.0"), all("C", "S", "R"), OverloadOpen, csr, "let it cool below 49 °C"},
		{"overload, common marked", pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "15.0"), []Mark{{"C", Common, 1}},
			OverloadOpen, map[string]Role{"C": Common}, "internal protector may be open"},
		{"unmarked", pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "15.0"), nil, OpenUnplaced, nil,
			"Possible: C is common and the internal protector is open.\nPossible: C is start and the start winding is open.\nPossible: C is run and the run winding is open.\nTo part"},
		{"run marked at the open pin", pairs("C", "S", "4.0", "C", "R", "OL", "S", "R", "OL"), []Mark{{"R", Run, 1}},
			OpenWinding, map[string]Role{"R": Run}, "run winding is open"},
		{"start open", pairs("C", "S", "OL", "C", "R", "4.0", "S", "R", "OL"), all("C", "S", "R"), OpenWinding, csr, "start winding is open"},
		{"run marked, two ways left", pairs("X", "R", "4.0", "X", "Y", "OL", "R", "Y", "OL"), []Mark{{"R", Run, 1}},
			OpenUnplaced, map[string]Role{"R": Run}, "Possible: Y is common and the internal protector is open.\nPossible: Y is start and the start winding is open.\nTo part"},
		{"all open, marked", pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "OL"), all("C", "S", "R"), OpenWinding, csr, "All three"},
		// A three-phase protector opens all three: Schreiber chiller manual p. 12.
		{"all open", pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "OL"), nil, OpenUnplaced, nil, "opens all three"},
		{"one open", pairs("A", "B", "OL", "A", "C", "3.0", "B", "C", "4.0"), nil, DoesNotAddUp, nil, "Contradiction"},
		{"open so far", pairs("A", "B", "OL", "A", "C", "3.0"), nil, Incomplete, nil, "B–C must read open too"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := Infer(Input{Readings: tt.in, Marks: tt.marks})
			if r.State != tt.state || !maps.Equal(r.Roles, tt.roles) {
				t.Errorf("got %s %v, want %s %v", r.State, r.Roles, tt.state, tt.roles)
			}
			if s := strings.Join(r.Notes, "\n"); !strings.Contains(s, tt.note) {
				t.Errorf("no note says %q:\n%s", tt.note, s)
			}
		})
	}
}
