package judge

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// +20 % up to 300 W, above +15 % or +60 W: IEC 60335-1 cl. 10.1 Table 1, motor-
// operated (from memory); the other limits are common practice.
func TestAmps(t *testing.T) {
	for _, c := range []struct {
		name       string
		x, half    float64
		plate, lra float64
		word       verdict.Word
		facts      []string
	}{
		{"sound", 1.15, 0.04, 1.2, 12, verdict.Sound, []string{"amps-sound"}},
		{"high", 1.6, 0.04, 1.2, 12, verdict.Failed, []string{"amps-high"}},
		{"low", 0.4, 0.03, 1.2, 12, verdict.Suspect, []string{"amps-low"}},
		{"none", 0.01, 0.03, 1.2, 12, verdict.Failed, []string{"amps-none"}},
		{"near LRA", 11, 0.2, 1.2, 12, verdict.Failed, []string{"amps-locked-rotor"}},
		{"six times, no LRA", 7, 0.2, 1.2, 0, verdict.Suspect, []string{"amps-locked-rotor"}},
		{"near the limit", 1.37, 0.04, 1.2, 12, verdict.CannotTell, nil},
		{"at the plate, read in tenths", 1.2, 0.312, 1.2, 12, verdict.CannotTell, []string{"amps-agree"}},
		{"half of it, read in tenths", 0.6, 0.306, 1.2, 12, verdict.CannotTell, []string{"amps-agree"}},
		{"over the plate, read in tenths", 1.4, 0.314, 1.2, 12, verdict.CannotTell, nil},
		{"below the lower end", 0.4, 0.304, 1.2, 12, verdict.CannotTell, nil},
		{"a clamp too rough to say anything", 1.1, 1.05, 1.2, 12, verdict.CannotTell, nil},
		{"no plate", 1.15, 0.04, 0, 0, verdict.CannotTell, nil},
		{"+18 %, power not known", 1.415, 0.01, 1.2, 12, verdict.CannotTell, nil},
	} {
		got := Amps(AmpsIn{Name: "comp", Run: within(c.x, c.half), Plate: c.plate, LRA: c.lra})
		check(t, c.name, got, c.word, c.facts...)
		if slices.Contains(got.Fact, "amps-locked-rotor") && !strings.Contains(got.Text, "inferred") {
			t.Errorf("%s: an inference is not worded as one: %q", c.name, got.Text)
		}
	}
}

// The meter that is named tells: within the doubt that is asked of it the same
// reading is judged.
func TestAmpsNameTheMeter(t *testing.T) {
	for _, c := range []struct {
		x, half float64
		text    string
	}{
		{1.4, 0.314, "1.4 A is too near the limit to say: a meter within ±0.03 A there would, its accuracy typed: meter amp …"},
		{1.3, 0.313, "within ±0.1 A"},
		{0.46, 0.03, "±0.01 A"},
		{1.439, 0.05, "take it again later"},
	} {
		in := AmpsIn{Name: "comp", Run: within(c.x, c.half), Plate: 1.2, LRA: 12, Volts: 115}
		if got := Amps(in); got.Word != verdict.CannotTell || !strings.Contains(got.Text, c.text) {
			t.Errorf("%g ± %g: %s, %s; want %s", c.x, c.half, got.Word, got.Text, c.text)
		}
		_, after, found := strings.Cut(c.text, "±")
		if !found {
			continue
		}
		to, _, _ := strings.Cut(after, " A")
		half, err := strconv.ParseFloat(to, 64)
		if err != nil {
			t.Fatal(err)
		}
		in.Run = within(c.x, half)
		if got := Amps(in); got.Word == verdict.CannotTell {
			t.Errorf("%g ± %g: %s", c.x, half, got.Text)
		}
	}
}

func TestRunLimit(t *testing.T) {
	for _, x := range []struct{ plate, volts, most float64 }{
		{1.2, 115, 1.44},          // 138 VA
		{2.5, 120, 3},             // 300 VA
		{3, 115, 3 + 60.0/115},    // 345 VA, 60 W are more than 15 %
		{3.5, 115, 3.5 + 60./115}, // 402.5 VA, 60.4 W would be 15 %
		{10, 115, 11.5},           // 1150 VA
	} {
		want := x.most
		if x.plate*x.volts*0.15 > 60 {
			want = x.plate * 1.15
		}
		most, loose, source := runLimit(x.plate, x.volts)
		if math.Abs(most-want) > 1e-9 || loose != most || !strings.Contains(source, "from memory") {
			t.Errorf("%g A at %g V: %g, want %g (%s)", x.plate, x.volts, most, want, source)
		}
		in := AmpsIn{Plate: x.plate, Volts: x.volts, LRA: 10 * x.plate}
		for run, word := range map[float64]verdict.Word{want * 0.99: verdict.Sound, want * 1.01: verdict.Failed} {
			in.Run = within(run, run*0.001)
			if got := Amps(in); got.Word != word {
				t.Errorf("%g A on a plate of %g A at %g V: %s, want %s", run, x.plate, x.volts, got.Word, word)
			}
		}
	}
}

// A start draws up to 6 times the running amps and a locked rotor the plate's
// LRA, so that the peak alone does not part them: refrigerator service text;
// the shares of the LRA are common practice.
func TestSurge(t *testing.T) {
	for _, c := range []struct {
		name       string
		x          float64
		plate, lra float64
		then       Course
		word       verdict.Word
		facts      []string
		says       string
	}{
		{"normal start", 11, 1.2, 12, Started, verdict.Sound, []string{"surge-sound"}, "it started"},
		{"stays at LRA", 11, 1.2, 12, Stayed, verdict.Failed, []string{"amps-locked-rotor"}, "and staying"},
		{"stays at LRA on a weak supply", 9, 1.2, 12, Stayed, verdict.Failed, []string{"amps-locked-rotor"}, "inferred"},
		{"stays, only running amps known", 7, 1.2, 0, Stayed, verdict.Suspect, []string{"amps-locked-rotor"}, "inferred"},
		{"stays, far above LRA", 19, 1.2, 12, Stayed, verdict.Failed, []string{"amps-locked-rotor", "windings-odd"}, "or turns are shorted (inferred)"},
		{"stays, well under", 3, 1.2, 12, Stayed, verdict.CannotTell, nil, "running amps"},
		{"stays, near the limit", 8.45, 1.2, 12, Stayed, verdict.CannotTell, nil, "near locked-rotor"},
		{"no start seen", 12, 1.2, 12, NotStarted, verdict.Failed, []string{"amps-locked-rotor"}, "no start seen: the rotor is locked"},
		{"no start seen, well under", 3, 1.2, 12, NotStarted, verdict.CannotTell, nil, "well under"},
		{"nobody looked, at LRA", 12, 1.2, 12, Unwatched, verdict.CannotTell, nil, "a start or a locked rotor"},
		{"nobody looked, on the lower end of it", 8.45, 1.2, 12, Unwatched, verdict.CannotTell, nil, "a start or a locked rotor"},
		{"nobody looked, only running amps known", 6, 1.2, 0, Unwatched, verdict.CannotTell, nil, "a start or a locked rotor"},
		{"nobody looked, between", 5, 1.2, 12, Unwatched, verdict.Sound, []string{"surge-sound"}, "nobody wrote that it falls"},
		{"nobody looked, running amps", 1.3, 1.2, 12, Unwatched, verdict.CannotTell, nil, "the peak was missed"},
		{"nobody looked, only the LRA known", 5, 0, 12, Unwatched, verdict.CannotTell, nil, "plate amps"},
		{"nobody looked, far above LRA", 19, 1.2, 12, Unwatched, verdict.Suspect, nil, "well above the LRA"},
		{"far above LRA", 19, 1.2, 12, Started, verdict.Suspect, nil, "well above the LRA"},
		{"no current, and it started", 0, 1.2, 12, Started, verdict.CannotTell, nil, "less than it draws running"},
		{"next to none, and it started", 0.2, 1.2, 12, Started, verdict.CannotTell, nil, "less than it draws running"},
		{"next to none, only the LRA known", 0.4, 0, 12, Started, verdict.CannotTell, nil, "less than it draws running"},
		{"a small start, only the LRA known", 3, 0, 12, Started, verdict.Sound, []string{"surge-sound"}, "it started"},
		{"a small start", 2.5, 1.2, 12, Started, verdict.Sound, []string{"surge-sound"}, "it started"},
		{"no plate", 11, 0, 0, Stayed, verdict.CannotTell, nil, "plate lra"},
	} {
		got := Surge(SurgeIn{Name: "comp", Peak: within(c.x, 0.2), Plate: c.plate, LRA: c.lra, Then: c.then})
		check(t, c.name, got, c.word, c.facts...)
		if !strings.Contains(got.Text, c.says) || strings.Contains(got.Text, "at once") {
			t.Errorf("%s: %q does not say %q", c.name, got.Text, c.says)
		}
		if slices.Contains(got.Fact, "amps-locked-rotor") &&
			(!strings.Contains(got.Text, "inferred") || !slices.Contains(got.Caution, caution.ProtectorStays)) {
			t.Errorf("%s: %q, cautions %v", c.name, got.Text, got.Caution)
		}
	}
}

// What a clamp shows with no current, or round both wires of a cord, is zero
// within what it may be off: it tells nothing of the load (common practice).
func TestNoAmps(t *testing.T) {
	for _, c := range []struct {
		name       string
		half, rla  float64
		word       verdict.Word
		fact, says string
	}{
		{"surely none", 0.03, 1.2, verdict.Failed, "amps-none", "does not run"},
		{"within the clamp's doubt", 0.3, 1.2, verdict.Suspect, "", "not round one wire alone"},
		{"a small load", 0.3, 0.5, verdict.CannotTell, "", "not round one wire alone"},
	} {
		got := Amps(AmpsIn{Name: "comp", Run: within(0, c.half), Plate: c.rla})
		var facts []string
		if c.fact != "" {
			facts = []string{c.fact}
		}
		check(t, c.name, got, c.word, facts...)
		if !strings.Contains(got.Text, c.says) || strings.Contains(got.Text, "runs with little") {
			t.Errorf("%s: %q", c.name, got.Text)
		}
	}
}

// The overload opens in seconds: refrigerator service text.
func TestTrip(t *testing.T) {
	for _, c := range []struct {
		name          string
		seconds, amps float64
		word          verdict.Word
		facts         []string
	}{
		{"does its work", 8, 11, verdict.Sound, []string{"amps-locked-rotor"}},
		{"slow at locked rotor", 120, 11, verdict.Suspect, []string{"amps-locked-rotor"}},
		{"opens within the plate", 90, 1.1, verdict.Suspect, nil},
		{"opens on a high current", 90, 3, verdict.CannotTell, nil},
	} {
		got := Trip(TripIn{Seconds: within(c.seconds, 1), Amps: within(c.amps, 0.1), Plate: 1.2, LRA: 12})
		check(t, c.name, got, c.word, c.facts...)
	}
	check(t, "no plate", Trip(TripIn{Seconds: measure.Exact(8), Amps: measure.Exact(11)}), verdict.CannotTell)
}
