package winding

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

func TestThreePins(t *testing.T) {
	abc := func(c, s, r string) map[string]Role { return map[string]Role{c: Common, s: Start, r: Run} }
	tests := []struct {
		name    string
		in      []Reading
		marks   []Mark
		state   State
		roles   map[string]Role
		settled bool
		note    string // a part of one of the notes
	}{
		// Distributor technician bulletin "Compressor Common–Run–Start" (2020).
		{"additive 4, 11, 15", pairs("C", "S", "11.0", "C", "R", "4.0", "R", "S", "15.0"), nil,
			Sound, abc("C", "S", "R"), true, "11 + 4 adds up to 15 Ω"},
		// "How to identify unmarked compressor terminals", figs 38-40, takes the order
		// although 6 + 7 is not 8; of a machine at hand one of them is wrong by as much
		// as they differ, so none is taken (common practice).
		{"trap 7, 8, 6", pairs("1", "2", "7.0", "2", "3", "8.0", "1", "3", "6.0"), nil,
			DoesNotAddUp, nil, false, "7 + 6 exceeds 8 Ω by 5 Ω (62 %)"},
		{"trap 7, 8, 6, marked", pairs("1", "2", "7.0", "2", "3", "8.0", "1", "3", "6.0"), []Mark{{"1", Common, 1}, {"2", Start, 2}},
			DoesNotAddUp, abc("1", "2", "3"), true, "7 + 6 exceeds 8 Ω by 5 Ω (62 %)"},
		{"trap 7, 8, 6, one marked", pairs("1", "2", "7.0", "2", "3", "8.0", "1", "3", "6.0"), []Mark{{"1", Common, 1}},
			DoesNotAddUp, map[string]Role{"1": Common}, false, "no role is certain by them"},
		{"far too high", pairs("A", "B", "3.2", "A", "C", "14", "B", "C", "5.1"), nil,
			DoesNotAddUp, nil, false, "suspect a bad contact on the highest pair, or a slip"},
		{"two alike and one low", pairs("A", "B", "9.1", "A", "C", "9.2", "B", "C", "6.0"), nil,
			DoesNotAddUp, nil, false, "A three-phase machine with a fault can read so too"},
		{"a sum off by a tenth", pairs("A", "B", "4.00", "A", "C", "11.00", "B", "C", "13.50"), nil,
			DoesNotAddUp, abc("A", "C", "B"), true, "but the readings do not add up"},
		{"leads, and much of the whole", pairs("A", "B", "1.00", "A", "C", "1.30", "B", "C", "1.80"), nil,
			DoesNotAddUp, abc("A", "C", "B"), true, "`probes 0.5`"},
		// Heating and Cooling Essentials (2022) §25.8: the highest, 18 Ω, is start
		// to run; the two parts here are computed to fit it.
		{"highest 18", pairs("A", "B", "18.0", "B", "C", "4.0", "A", "C", "14.0"), nil,
			Sound, abc("C", "A", "B"), true, "A–B 18 Ω is the highest pair, so it is start–run; C, outside it, is common"},
		{"rough highest", pairs("A", "B", "3.45", "A", "C", "~6.5", "B", "C", "2.5"), nil,
			Sound, abc("B", "A", "C"), true, "3.45 + 2.5 falls short of about 6.5 Ω by 0.55 Ω (8 %)"},
		// Heating and Cooling Essentials (2022) §25: three-phase, same resistance.
		{"equal", pairs("A", "B", "5.0", "A", "C", "5.1", "B", "C", "5.0"), nil,
			EqualWindings, nil, false, "Never connect mains or a start kit"},
		{"equal, one marked", pairs("A", "B", "5.0", "A", "C", "5.1", "B", "C", "5.0"), []Mark{{"A", Common, 1}},
			EqualWindings, map[string]Role{"A": Common}, false, "three equal windings have no such lead"},
		{"nearly equal", pairs("A", "B", "5.00", "A", "C", "5.30", "B", "C", "5.10"), nil,
			DoesNotAddUp, nil, false, "likely three-phase with one winding off"},
		{"start and run too close", pairs("A", "B", "3.0", "A", "C", "3.2", "B", "C", "6.2"), nil,
			TooClose, map[string]Role{"A": Common}, false, "finer range"},
		{"parted by a marking", pairs("A", "B", "3.0", "A", "C", "3.2", "B", "C", "6.2"), []Mark{{"B", Start, 9}},
			Sound, abc("A", "B", "C"), true, "markings say which"},
		{"highest and middle too close", pairs("A", "B", "0.9", "A", "C", "9.0", "B", "C", "9.5"), nil,
			TooClose, map[string]Role{"C": Start}, false, "finer range"},
		{"nothing certain", pairs("A", "B", "0.4", "A", "C", "0.5", "B", "C", "0.8"), nil,
			TooClose, nil, false, "may also be equal"},
		// A rotary machine with start below run (common practice): the marking
		// outranks the ranking.
		{"marked against the order", pairs("A", "B", "4.0", "A", "C", "11.0", "B", "C", "15.0"),
			[]Mark{{"A", Common, 1}, {"B", Start, 2}, {"C", Run, 3}},
			Sound, abc("A", "B", "C"), true, "rotary"},
		{"start marked against the order", pairs("A", "B", "4.0", "A", "C", "11.0", "B", "C", "15.0"),
			[]Mark{{"B", Start, 2}}, Sound, abc("A", "B", "C"), true, "although it reads below run"},
		{"common marked against the highest", pairs("A", "B", "3.45", "A", "C", "~6.5", "B", "C", "2.5"),
			[]Mark{{"A", Common, 4}}, DoesNotAddUp, map[string]Role{"A": Common}, false, "The marking holds"},
		{"leads in every pair", pairs("A", "B", "1.40", "A", "C", "3.40", "B", "C", "4.40"), nil,
			DoesNotAddUp, abc("A", "C", "B"), true, "`probes 0.4`"},
		{"negative gap", pairs("A", "B", "4.00", "A", "C", "11.00", "B", "C", "18.00"), nil,
			DoesNotAddUp, abc("A", "C", "B"), true, "Leads cannot do this"},
		{"zero", pairs("A", "B", "0.0", "A", "C", "4.2", "B", "C", "4.2"), nil,
			Shorted, nil, false, "Shorted: A–B 0 Ω"},
		{"near zero, as coarse as the meter", pairs("A", "B", "4.1", "B", "C", "4.1", "A", "C", "0.2"), nil,
			Shorted, nil, false, "Shorted: A–C 0.2 Ω against A–B 4.1 Ω and B–C 4.1 Ω"},
		{"nearer", pairs("1", "2", "3.2", "1", "3", "3.2", "2", "3", "0.1"), nil,
			Shorted, nil, false, "take off what is on the pins (relay, jumper)"},
		{"perhaps a short", pairs("1", "2", "1.2", "1", "3", "1.2", "2", "3", "0.3"), nil,
			TooClose, nil, false, "may be a short between two pins"},
		{"a low run winding, finely read", pairs("1", "2", "1.20", "1", "3", "1.50", "2", "3", "0.30"), nil,
			Sound, abc("2", "1", "3"), true, "adds up"},
		{"a low run winding, three unlike", pairs("1", "2", "1.5", "1", "3", "2.4", "2", "3", "0.3"), nil,
			Sound, abc("2", "1", "3"), true, "falls short"},
		{"near zero, marked", pairs("A", "B", "0.1", "A", "C", "4.2", "B", "C", "4.2"), []Mark{{"A", Common, 1}, {"B", Run, 2}},
			Shorted, abc("A", "C", "B"), true, "this is the run winding"},
		{"all zero", pairs("A", "B", "0.0", "A", "C", "0.0", "B", "C", "0.0"), nil, TooClose, nil, false, ""},
		{"kilohms", pairs("A", "B", "4700", "A", "C", "4.2"), nil, NotAWinding, nil, false, "A–B 4.7 kΩ"},
		{"unusual ratio", pairs("A", "B", "4.00", "A", "C", "5.00", "B", "C", "9.00"), nil,
			Sound, abc("A", "C", "B"), true, "Start is 1.3 times run"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := Infer(Input{Readings: tt.in, Marks: tt.marks, Meter: measure.Default})
			if r.State != tt.state || r.Settled != tt.settled || !maps.Equal(r.Roles, tt.roles) {
				t.Errorf("got %s settled %v %v, want %s %v %v", r.State, r.Settled, r.Roles, tt.state, tt.settled, tt.roles)
			}
			if all := strings.Join(r.Notes, "\n"); !strings.Contains(all, tt.note) {
				t.Errorf("no note says %q:\n%s", tt.note, all)
			}
		})
	}
}

// Sound machines are published at ratios of 2 and 2.75 (the bulletin's 11 to 4):
// the usual 3 to 5 (common practice) may raise a word, never the state.
func TestRatioIsNoFault(t *testing.T) {
	r := Infer(Input{Readings: pairs("C", "S", "11.00", "C", "R", "4.00", "R", "S", "15.00")})
	if r.State != Sound || !slices.Contains(r.Facts, FactSound) {
		t.Fatalf("state %s facts %v", r.State, r.Facts)
	}
	if !strings.Contains(strings.Join(r.Notes, "\n"), "no fault by itself") {
		t.Errorf("no word about the ratio: %q", r.Notes)
	}
}

func TestGap(t *testing.T) {
	tests := []struct {
		in           []Reading
		probes       float64
		ohms, lead   float64
		beyond       bool
		note, absent string
	}{
		{pairs("A", "B", "3.45", "A", "C", "~6.5", "B", "C", "2.5"), 0, -0.55, 0, false, "contact error", "probes"},
		{pairs("A", "B", "1.40", "A", "C", "3.40", "B", "C", "4.40"), 0, 0.4, 0.4, true, "0.4 Ω", "Leads cannot"},
		{pairs("A", "B", "7.0", "A", "C", "6.0", "B", "C", "8.0"), 0, 5, 0, true, "more than probe leads have", "enter `probes"},
		{pairs("A", "B", "3.50", "A", "C", "10.50", "B", "C", "14.50"), 0.5, -0.5, 0, true, "may be too much", "enter `probes"},
	}
	for _, tt := range tests {
		r := Infer(Input{Readings: tt.in, Probes: tt.probes})
		g := r.Gap
		if g == nil {
			t.Fatalf("%v: no gap", tt.in)
		}
		if !near(g.Ohms, tt.ohms) || !near(g.Lead, tt.lead) || g.Beyond != tt.beyond {
			t.Errorf("gap %+v, want %v lead %v beyond %v", *g, tt.ohms, tt.lead, tt.beyond)
		}
		all := strings.Join(r.Notes, "\n")
		if !strings.Contains(all, tt.note) || strings.Contains(all, tt.absent) {
			t.Errorf("notes want %q and not %q:\n%s", tt.note, tt.absent, all)
		}
	}
}

func TestWindingsAndProof(t *testing.T) {
	in := pairs("A", "B", "4.0", "A", "C", "11.0", "B", "C", "15.0")
	for i := range in {
		in[i].V.Entry = i + 5
	}
	r := Infer(Input{Readings: in})
	if len(r.Windings) != 2 || r.Windings[0].Name != "start" || r.Windings[0].Value.X != 11 || r.Windings[1].Value.X != 4 {
		t.Errorf("windings %v", r.Windings)
	}
	var entries []int
	for _, p := range r.Proof {
		entries = append(entries, p.V.Entry)
	}
	if !slices.Equal(entries, []int{5, 6, 7}) {
		t.Errorf("proof %v", entries)
	}
	if want := []Pair{{"A", Case}, {"B", Case}, {"C", Case}}; !slices.Equal(r.Wanted, want) {
		t.Errorf("wanted %v", r.Wanted)
	}
}

func TestEqualByDesign(t *testing.T) {
	in := Input{Readings: pairs("A", "B", "30.0", "A", "C", "30.1", "B", "C", "60.0"), Kind: Motor, EqualByDesign: true}
	r := Infer(in)
	if r.State != Sound || !r.Settled || !maps.Equal(r.Roles, map[string]Role{"A": Common}) {
		t.Errorf("reversing motor: %s %v %v", r.State, r.Settled, r.Roles)
	}
	in.EqualByDesign = false
	if r := Infer(in); r.State != TooClose || r.Settled {
		t.Errorf("not declared: %s %v", r.State, r.Settled)
	}
}

func TestRepeats(t *testing.T) {
	in := pairs("A", "B", "9.0", "B", "A", "4.0", "A", "C", "11.0", "B", "C", "15.0", "C", "A", "11.1")
	r := Infer(Input{Readings: in})
	if len(r.Repeats) != 1 || r.Repeats[0].Pair != (Pair{"A", "B"}) || r.Repeats[0].Was.X != 9 || r.Repeats[0].Now.X != 4 {
		t.Fatalf("repeats %v", r.Repeats)
	}
	if r.State != Sound || r.Roles["A"] != Common {
		t.Errorf("the latest should count: %s %v", r.State, r.Roles)
	}
}

func TestGround(t *testing.T) {
	base := pairs("A", "B", "4.0", "A", "C", "11.0", "B", "C", "15.0")
	tests := []struct {
		extra []Reading
		state State
		fact  string
		note  string
	}{
		// Bulletin AE4-1294: 1000 Ω per rated volt is probably acceptable, and a single
		// reading cannot condemn; 100 V is the least mains (common practice).
		{pairs("A", "case", "90000"), Grounded, FactGrounded, "Never energise"},
		{pairs("A", "case", "220000"), Sound, FactSound, "Still wanted: B and C to case"},
		{pairs("case", "A", "12"), Grounded, FactGrounded, "A–case 12 Ω"},
		{pairs("A", "case", "510000"), Sound, FactSound, "Still wanted: B and C to case"},
		{pairs("A", "case", "6000000"), Sound, FactSound, "No gross fault to the case at A; an ohm-meter cannot prove insulation"},
		{pairs("A", "Case", "OL", "B", "case", "OL", "C", "case", "OL"), Sound, FactNoGround, "No gross fault to the case at A, B and C"},
	}
	for _, tt := range tests {
		r := Infer(Input{Readings: append(slices.Clone(base), tt.extra...)})
		if r.State != tt.state || !slices.Contains(r.Facts, tt.fact) || r.Roles["A"] != Common {
			t.Errorf("%v: %s %v %v", tt.extra, r.State, r.Facts, r.Roles)
		}
		if all := strings.Join(r.Notes, "\n"); !strings.Contains(all, tt.note) {
			t.Errorf("no note %q:\n%s", tt.note, all)
		}
	}
	// 0.23 MΩ at 230 V, 0.115 MΩ at 115 V (AE4-1294).
	for volts, want := range map[float64]State{230: Grounded, 115: Sound} {
		if r := Infer(Input{Readings: append(slices.Clone(base), pairs("A", "case", "220000")...), RatedVolts: volts}); r.State != want {
			t.Errorf("220 kΩ to the case at %v V: %s, want %s", volts, r.State, want)
		}
	}
	// Below the strictest published limit (5 MΩ) the windings claim nothing.
	if r := Infer(Input{Readings: append(slices.Clone(base), pairs("A", "case", "1200000")...)}); strings.Contains(strings.Join(r.Notes, "\n"), "No gross fault") {
		t.Errorf("1.2 MΩ to the case passes without a word: %q", r.Notes)
	}
	tested := Infer(Input{Readings: append(slices.Clone(base), pairs("A", "case", "OL", "B", "case", "OL")...), Tested: []string{"A"}})
	if all := strings.Join(tested.Notes, "\n"); !strings.Contains(all, "No gross fault to the case at B; an ohm-meter") {
		t.Errorf("a pin read with an insulation tester is taken for one that was not:\n%s", all)
	}
	r := Infer(Input{Readings: pairs("A", "case", "100")})
	if r.State != Grounded || len(r.Cautions) != 2 {
		t.Errorf("first reading to case: %s %v", r.State, r.Cautions)
	}
}

func TestMarkedTwice(t *testing.T) {
	r := Infer(Input{Marks: []Mark{{"A", Common, 1}, {"B", Common, 2}, {"C", Run, 3}, {"C", Start, 4}}})
	if len(r.Conflicts) != 1 || !strings.Contains(r.Conflicts[0], "A and B are both marked common") {
		t.Errorf("conflicts %q", r.Conflicts)
	}
	if !maps.Equal(r.Roles, map[string]Role{"C": Start}) {
		t.Errorf("roles %v", r.Roles)
	}
}

// No network of windings reads more between two pins than over the third: a highest
// pair that does is no short (the triangle of resistances).
func TestTooHighIsNoShort(t *testing.T) {
	for high, want := range map[string]string{"18.0": FactTooHigh, "12.0": FactDoNotAddUp, "15.0": FactSound} {
		r := Infer(Input{Readings: pairs("A", "B", "4.00", "A", "C", "11.00", "B", "C", high), Meter: measure.Default})
		if !slices.Contains(r.Facts, want) || strings.Contains(strings.Join(r.Notes, " "), "shorted") {
			t.Errorf("%s: %v, want %s: %q", high, r.Facts, want, r.Notes)
		}
	}
}
