package winding

import (
	"math/rand/v2"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

func around(x, percent float64) measure.Value { return measure.Within(x, x*percent/100) }

// Sheets and machines are invented; that the readings of a pair are start, run
// or both in series is the rule of the three pins (Compressor Common-Run-Start,
// distributor's technician bulletin, 2020).
func TestCompareSheet(t *testing.T) {
	sheet := Sheet{around(4.1, 5), around(3.3, 5)}
	for _, c := range []struct {
		name        string
		in          []Reading
		s           Sheet
		contradicts bool
		roles       map[string]Role
		say         string
	}{
		{"too close for the meter, parted by the sheet", pairs("A", "B", "4.1", "A", "C", "3.6", "B", "C", "7.5"), Sheet{around(4.1, 2), around(3.4, 2)},
			false, map[string]Role{"A": Common, "B": Start, "C": Run}, "Resting on the sheet: A is common"},
		{"one pair", pairs("A", "B", "4.1"), sheet, false, nil, "A–B 4.1 Ω fits start (4.1)"},
		{"two pairs", pairs("A", "B", "7.5", "A", "C", "3.3"), sheet, false, map[string]Role{"A": Run, "B": Start, "C": Common}, "Resting on the sheet"},
		{"a pair that fits none", pairs("A", "B", "12.5", "A", "C", "3.3"), sheet, true, nil, "A–B 12.5 Ω fits neither start (4.1), run (3.3) nor both in series (7.4)"},
		{"each fits, together they do not", pairs("A", "B", "7.4", "A", "C", "7.4"), sheet, true, nil, "No way to name the pins fits the sheet"},
		{"open protector", pairs("A", "B", "OL", "A", "C", "OL", "B", "C", "7.4"), sheet, false, map[string]Role{"A": Common}, "start and run in series"},
		{"start only", pairs("A", "B", "8.1", "A", "C", "3.4"), Sheet{around(8, 5), measure.Open(0)}, false, nil, "A–B 8.1 Ω fits start (8)"},
		{"settled already", pairs("A", "B", "8.4", "A", "C", "3.1", "B", "C", "11.5"), Sheet{around(8.4, 5), around(3.1, 5)}, false, nil, ""},
		{"no sheet", pairs("A", "B", "4.1", "A", "C", "3.3"), Sheet{measure.Open(0), measure.Open(0)}, false, nil, ""},
	} {
		in := Input{Readings: c.in, Meter: measure.Default, Probes: 0.1}
		got := compareSheet(in, Infer(in), c.s)
		notes := strings.Join(got.Notes, "\n")
		if got.Contradicts != c.contradicts || !strings.Contains(notes, c.say) || c.say == "" && notes != "" {
			t.Errorf("%s: contradicts %v, %q", c.name, got.Contradicts, notes)
		}
		for pin, role := range c.roles {
			if got.Roles[pin] != role {
				t.Errorf("%s: %s is %q, want %s (%q)", c.name, pin, got.Roles[pin], role, notes)
			}
		}
	}
}

// Whatever the meter says within its limits and the sheet within its
// tolerance, a true sheet never contradicts and never names a role wrong.
func TestTrueSheetNeverMisleads(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	helped := 0
	for range 20_000 {
		run := logUniform(rng, 1, 40)
		start := run * (1 + 4*rng.Float64())
		tol := 1 + 9*rng.Float64()
		off := func(x, half float64) float64 { return x + half*(2*rng.Float64()-1) }
		sheet := Sheet{around(start, tol), around(run, tol)}
		ts, tr := off(start, start*tol/100), off(run, run*tol/100)
		lead := 0.5 * rng.Float64()
		read := func(x float64) measure.Value {
			rough := rng.IntN(2) == 0
			half := measure.Default.Limit(x+lead, 0.1, rough)
			return measure.Within(off(x+lead, half), half)
		}
		all := []Reading{{"A", "B", read(ts)}, {"A", "C", read(tr)}, {"B", "C", read(ts + tr)}}
		in := Input{Readings: all[:1+rng.IntN(3)], Meter: measure.Default}
		if len(in.Readings) == 1 {
			in.Pins = []string{"C"}
		}
		got := compareSheet(in, Infer(in), sheet)
		if got.Contradicts {
			t.Fatalf("%v against %v: %q", in.Readings, sheet, got.Notes)
		}
		for pin, role := range map[string]Role{"A": Common, "B": Start, "C": Run} {
			if said, ok := got.Roles[pin]; ok && said != role {
				t.Fatalf("%v against %v names %s %s", in.Readings, sheet, pin, said)
			}
			if got.Roles[pin] == role {
				helped++
			}
		}
	}
	if helped < 5_000 {
		t.Errorf("the sheet named %d roles only", helped)
	}
}
