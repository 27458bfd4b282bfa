package winding

import (
	"maps"
	"slices"
	"strings"
	"testing"
)

// fan5 is a computed three-speed fan: start 60 and main 40 at common, then 8
// and 9 Ω more for the lower speeds.
func fan5() []Reading {
	return pairs("S", "C", "60.0", "C", "H", "40.0", "H", "M", "8.0", "M", "L", "9.0", "S", "H", "100.0",
		"S", "M", "108.0", "S", "L", "117.0", "C", "M", "48.0", "C", "L", "57.0", "H", "L", "17.0")
}

func TestNetwork(t *testing.T) {
	five := map[string]Role{"C": Common, "S": Start, "H": High, "M": Medium, "L": Low}
	fan4 := pairs("S", "C", "60.0", "C", "H", "25.0", "H", "L", "8.0", "S", "H", "85.0", "S", "L", "93.0", "C", "L", "33.0")
	four := map[string]Role{"C": Common, "S": Start, "H": High, "L": Low}
	apart := pairs("A", "C", "OL", "A", "D", "OL", "B", "C", "OL", "B", "D", "OL")
	isolated := append(pairs("A", "B", "4.0", "C", "D", "9.0"), apart...)
	protector := pairs("P", "C", "0.1", "C", "S", "11.0", "C", "R", "4.0", "S", "R", "15.0", "P", "S", "11.1", "P", "R", "4.1")
	tests := []struct {
		name    string
		in      Input
		state   State
		settled bool
		roles   map[string]Role
		note    string
	}{
		{"three speeds", Input{Readings: fan5(), Kind: Fan}, Sound, true, five, "Tapped motor"},
		{"three speeds, one pair unread", Input{Readings: fan5()[:9], Kind: Fan}, Sound, true, five, "Windings in series"},
		{"three speeds, half read", Input{Readings: fan5()[:5], Kind: Fan}, Incomplete, false, nil, "tells most"},
		{"marked against every pattern", Input{Readings: fan5(), Kind: Fan, Marks: []Mark{{"S", Common, 1}}},
			Sound, false, map[string]Role{"S": Common}, "the markings hold"},
		{"two speeds, ambiguous", Input{Readings: fan4, Kind: Fan}, Sound, false, map[string]Role{"L": Low}, "the names are not"},
		{"two speeds, a capacitor known", Input{Readings: fan4, Kind: Fan, StartLead: true}, Sound, true, four, "start at common"},
		{"two speeds, one marking", Input{Readings: fan4, Kind: Fan, Marks: []Mark{{"S", Start, 7}}}, Sound, true, four, ""},
		{"isolated", Input{Readings: isolated, Kind: Motor}, Sound, true,
			map[string]Role{"A": Main, "B": Main, "C": Auxiliary, "D": Auxiliary}, "Two isolated windings"},
		{"isolated, one open pair is proof", Input{Readings: isolated[:3], Kind: Motor}, Sound, true,
			map[string]Role{"A": Main, "B": Main, "C": Auxiliary, "D": Auxiliary}, "open between them"},
		{"isolated, not yet parted", Input{Readings: isolated[:2], Kind: Motor}, Incomplete, false, nil, "Wanted next: A–C"},
		{"across isolated windings", Input{Readings: append(slices.Clone(isolated), pairs("B", "D", "20.0")...), Kind: Motor},
			DoesNotAddUp, false, nil, "B–D 20 Ω crosses between windings"},
		{"leak between isolated windings", Input{Readings: pairs("A", "B", "4.0", "C", "D", "9.0", "B", "D", "500.0",
			"A", "D", "504.0", "B", "C", "509.0", "A", "C", "513.0"), Kind: Motor}, DoesNotAddUp, false, nil, "a path between them"},
		{"reversing by design", Input{Readings: append(pairs("A", "B", "9.0", "C", "D", "9.0"), apart...), EqualByDesign: true},
			Sound, true, nil, "not shorted"},
		{"alike, not declared", Input{Readings: append(pairs("A", "B", "9.0", "C", "D", "9.0"), apart...)},
			TooClose, false, nil, "too close to part main from auxiliary"},
		{"isolated, named by a marking", Input{Readings: isolated, Marks: []Mark{{"C", Main, 1}}}, Sound, true,
			map[string]Role{"A": Auxiliary, "B": Auxiliary, "C": Main, "D": Main}, "named by their marking"},
		{"a fan in two groups", Input{Readings: isolated, Kind: Fan}, OpenUnplaced, false, nil, "one is open between the groups"},
		{"a tap too low for the range", Input{Readings: lowTap(".0"), Kind: Fan}, TooClose, false, nil, "read it on a finer one"},
		{"a tap shorted", Input{Readings: lowTap(".00"), Kind: Fan}, Shorted, false, nil, "a tap is shorted"},
		{"networks too close", Input{Readings: pairs("A", "B", "0.3", "A", "C", "0.4", "A", "D", "9.0", "B", "C", "0.5", "B", "D", "9.3", "C", "D", "9.2")},
			TooClose, false, nil, "again on a finer range"},
		{"marked across a break", Input{Readings: isolated, Marks: []Mark{{"A", Common, 1}, {"C", High, 2}}},
			OpenWinding, false, map[string]Role{"A": Common, "C": High}, "Open between common and C (high)"},
		{"protector lead", Input{Readings: protector}, Sound, false, map[string]Role{"R": Run, "S": Start}, "C and P are both at common"},
		{"protector lead marked", Input{Readings: protector, Marks: []Mark{{"P", Protector, 1}}}, Sound, true,
			map[string]Role{"C": Common, "P": Protector, "R": Run, "S": Start}, "near zero"},
		{"protector open", Input{Readings: append(pairs("P", "C", "OL", "P", "S", "OL", "P", "R", "OL"), protector[1:4]...),
			Marks: []Mark{{"P", Protector, 1}}}, OverloadOpen, false, map[string]Role{"P": Protector}, "Let it cool"},
		{"a lead open", Input{Readings: append(pairs("L", "S", "OL", "L", "C", "OL", "L", "H", "OL"), fan4[0], fan4[1], fan4[3])},
			OpenUnplaced, false, nil, "Open to every other lead: L"},
		{"start open, marked", Input{Readings: append(pairs("S", "C", "OL", "S", "H", "OL", "S", "L", "OL"), fan4[1], fan4[2], fan4[5]),
			Marks: []Mark{{"S", Start, 1}}}, OpenWinding, false, map[string]Role{"S": Start}, "start winding is open"},
		// Three-phase star with the neutral brought out: equal (computed).
		{"star", Input{Readings: pairs("U", "V", "10.0", "U", "W", "10.0", "V", "W", "10.1", "N", "U", "5.0", "N", "V", "5.0", "N", "W", "5.0")},
			EqualWindings, false, nil, "three-phase"},
		{"joint inside", Input{Readings: pairs("A", "B", "10.0", "A", "C", "12.0", "A", "D", "14.0", "B", "C", "16.0", "B", "D", "18.0", "C", "D", "20.0")},
			Sound, false, nil, "A–joint about 3 Ω, B–joint about 7 Ω, C–joint about 9 Ω and D–joint about 11 Ω"},
		{"no network", Input{Readings: pairs("A", "B", "10.0", "A", "C", "10.0", "A", "D", "90.0", "B", "C", "90.0", "B", "D", "10.0", "C", "D", "10.0")},
			DoesNotAddUp, false, nil, "No network of windings in series"},
		{"a lead not read", Input{Readings: fan4, Leads: 5}, Incomplete, false, map[string]Role{"L": Low}, "5 leads, of which 4"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := Infer(tt.in)
			if r.State != tt.state || r.Settled != tt.settled || !maps.Equal(r.Roles, tt.roles) {
				t.Errorf("got %s %v %v, want %s %v %v", r.State, r.Settled, r.Roles, tt.state, tt.settled, tt.roles)
			}
			if s := strings.Join(r.Notes, "\n"); !strings.Contains(s, tt.note) {
				t.Errorf("no note says %q:\n%s", tt.note, s)
			}
		})
	}
}

// lowTap is a fan whose two upper speeds read as one, 8 Ω below the low one.
func lowTap(digits string) []Reading {
	var out []Reading
	for _, r := range []struct{ a, b, x string }{
		{"S", "C", "60"}, {"C", "H", "20"}, {"C", "M", "20"}, {"H", "M", "0"}, {"C", "L", "28"},
		{"S", "H", "80"}, {"S", "M", "80"}, {"S", "L", "88"}, {"H", "L", "8"}, {"M", "L", "8"},
	} {
		out = append(out, Reading{r.a, r.b, val(r.x + digits)})
	}
	return out
}

// A group of more leads than the search holds is not guessed at.
func TestTooManyLeads(t *testing.T) {
	var in Input
	pins := strings.Split("ABCDEFGHIJKLMN", "")
	for i, a := range pins {
		for _, b := range pins[i+1:] {
			in.Readings = append(in.Readings, Reading{a, b, val("5.0")})
		}
	}
	if r := Infer(in); r.State != Incomplete || len(r.Roles) != 0 {
		t.Errorf("%s %v", r.State, r.Roles)
	}
}

func TestNetworkLeads(t *testing.T) {
	in := pairs("S", "C", "60.35", "C", "H", "40.35", "H", "L", "8.35", "S", "H", "100.35", "S", "L", "108.35", "C", "L", "48.35")
	for i := range in {
		x := in[i].V.X
		in[i].V.Lo, in[i].V.Hi = x-0.05, x+0.05
	}
	r := Infer(Input{Readings: in, Kind: Fan, StartLead: true})
	if r.State != DoesNotAddUp || r.Gap == nil || !near(r.Gap.Lead, 0.35) {
		t.Fatalf("%s %+v", r.State, r.Gap)
	}
	if !strings.Contains(strings.Join(r.Notes, "\n"), "`probes 0.35`") {
		t.Errorf("no suggestion: %q", r.Notes)
	}
}

// The reading that parts candidates is worth reading: following the advice
// must end with one network.
func TestWantedLeadsToAnAnswer(t *testing.T) {
	full := fan5()
	read := slices.Clone(full[:1])
	pins := []string{"S", "C", "H", "M", "L"}
	for steps := 0; ; steps++ {
		r := Infer(Input{Readings: read, Pins: pins, Kind: Fan})
		if r.State == Sound {
			if r.Roles["M"] != Medium || len(read) > 9 {
				t.Errorf("after %d readings: %v", len(read), r.Roles)
			}
			return
		}
		if steps > 10 || len(r.Wanted) == 0 {
			t.Fatalf("stuck after %d readings: %s %v", len(read), r.State, r.Notes)
		}
		k := slices.IndexFunc(full, func(x Reading) bool {
			p := x.Pair()
			return p == r.Wanted[0] || (Pair{p[1], p[0]}) == r.Wanted[0]
		})
		read = append(read, full[k])
	}
}
