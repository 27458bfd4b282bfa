package winding

import (
	"maps"
	"slices"
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
		{"common marked and reading through", pairs("A", "B", "3.4", "A", "C", "OL", "B", "C", "OL"), []Mark{{"A", Common, 1}},
			OpenUnplaced, map[string]Role{"A": Common}, "Possible: C is start and the start winding is open.\nPossible: C is run and the run winding is open.\nA protector in common is closed: A–B 3.4 Ω reads through it.\nTo part"},
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

// What is open cold is not waited for: below 49 °C (120 °F), ice-machine operation
// manual 80-0111-9 p. 176.
func TestOpenCold(t *testing.T) {
	three := pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "15.0")
	all := pairs("C", "S", "OL", "C", "R", "OL", "S", "R", "OL")
	for _, tt := range []struct {
		name string
		in   Input
		note string
		fact bool
	}{
		{"hot", Input{Readings: three}, "let it cool", false},
		{"cold", Input{Readings: three, Cold: true}, "Open though cold: a protector failed open, or a winding or lead is open (inferred)", true},
		{"common marked", Input{Readings: three, Cold: true, Marks: []Mark{{"C", Common, 1}}}, "Open though cold: the protector failed open, or the lead to common is open (inferred)", true},
		{"start marked: a winding anyway", Input{Readings: three, Cold: true, Marks: []Mark{{"C", Start, 1}}}, "start winding is open", false},
		{"common marked and reading through", Input{Readings: pairs("C", "S", "OL", "C", "R", "4.0", "S", "R", "OL"), Cold: true, Marks: []Mark{{"C", Common, 1}}}, "A winding is open at S: ", false},
		{"all open", Input{Readings: all, Cold: true}, "Open though cold", true},
		{"a fan", Input{Readings: three, Cold: true, Kind: Fan}, "Open though cold", true},
		{"two leads", Input{Readings: pairs("1", "2", "OL"), Leads: 2, Cold: true}, "Open though cold: a protector in series failed open", false},
		{"two leads, hot", Input{Readings: pairs("1", "2", "OL"), Leads: 2}, "let it cool", false},
		{"cold, and nobody knows how long", Input{Readings: three, Soon: true}, "Read again after a rest without power", false},
		{"read open before", Input{Readings: three, Again: true}, "read it again with cold behind each pair", false},
		{"whole", Input{Readings: pairs("C", "S", "9.6", "C", "R", "4.0", "S", "R", "13.6"), Cold: true}, "C is common", false},
	} {
		r := Infer(tt.in)
		s := strings.Join(r.Notes, "\n")
		if !strings.Contains(s, tt.note) || slices.Contains(r.Facts, FactOpenCold) != tt.fact {
			t.Errorf("%s: %v\n%s", tt.name, r.Facts, s)
		}
		for _, n := range r.Notes {
			if strings.Contains(n, "though cold") && (strings.Contains(s, "et it cool") || len([]rune(n)) > 120) {
				t.Errorf("%s: %s", tt.name, s)
			}
		}
	}
}

// Current that reads through common goes through the protector in it, which is closed
// then; what is open beyond is a winding, surely so where it was read cold (common practice).
func TestThroughCommon(t *testing.T) {
	through, apart := pairs("A", "B", "3.4", "A", "C", "OL", "B", "C", "OL"), pairs("A", "B", "OL", "A", "C", "OL", "B", "C", "9.8")
	common := []Mark{{"A", Common, 1}}
	for _, tt := range []struct {
		name  string
		in    Input
		facts []string
	}{
		{"nobody says how warm", Input{Readings: through, Marks: common}, []string{FactThrough, FactOpenUnplaced}},
		{"cold", Input{Readings: through, Marks: common, Cold: true}, []string{FactThrough, FactOpen}},
		{"cold, and nobody knows how long", Input{Readings: through, Marks: common, Soon: true}, []string{FactThrough, FactOpen}},
		{"unmarked", Input{Readings: through, Soon: true}, []string{FactOpenUnplaced}},
		{"both pairs to common open", Input{Readings: apart, Marks: common, Soon: true}, []string{FactProtector}},
	} {
		if got := Infer(tt.in).Facts; !slices.Equal(got, tt.facts) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.facts)
		}
	}
}
