package winding

import (
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

// scenes are inputs of every kind: sound, faulty, partial, marked, networks.
func scenes() []Input {
	abc := func(marks []Mark, s ...string) Input { return Input{Readings: pairs(s...), Marks: marks} }
	return []Input{
		abc(nil, "A", "B", "3.45", "A", "C", "~6.5", "B", "C", "2.5"),
		abc(nil, "A", "B", "7.0", "B", "C", "8.0", "A", "C", "6.0"),
		abc(nil, "A", "B", "3.0", "A", "C", "3.2", "B", "C", "6.2"),
		abc(nil, "A", "B", "5.0", "A", "C", "5.1", "B", "C", "5.0"),
		abc(nil, "A", "B", "OL", "A", "C", "OL", "B", "C", "4.0"),
		abc(nil, "A", "B", "OL", "A", "C", "3.0", "B", "C", "4.0"),
		abc(nil, "A", "B", "15.0", "B", "C", "4.0"),
		abc(nil, "A", "B", "4.0", "A", "C", "11.0", "B", "C", "15.0", "C", "case", "OL", "A", "case", "30000"),
		abc([]Mark{{"A", Common, 1}}, "A", "B", "15.0", "B", "C", "4.0"),
		abc([]Mark{{"A", Start, 1}, {"B", Run, 2}}, "A", "B", "15.0", "B", "C", "11.0", "A", "C", "4.0"),
		{Readings: fan5(), Kind: Fan},
		{Readings: fan5()[:8], Kind: Fan},
		{Readings: pairs("A", "B", "4.0", "C", "D", "9.0", "A", "C", "OL", "A", "D", "OL", "B", "C", "OL", "B", "D", "20.0")},
		{Readings: pairs("P", "C", "0.1", "C", "S", "11.0", "C", "R", "4.0", "S", "R", "15.0", "P", "S", "11.1", "P", "R", "4.1")},
	}
}

func TestOrderOfTypingDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for n, in := range scenes() {
		want := Infer(in)
		for range 20 {
			mixed := in
			mixed.Readings = slices.Clone(in.Readings)
			rng.Shuffle(len(mixed.Readings), func(i, j int) {
				mixed.Readings[i], mixed.Readings[j] = mixed.Readings[j], mixed.Readings[i]
			})
			for i, r := range mixed.Readings {
				if rng.IntN(2) == 0 {
					mixed.Readings[i] = Reading{r.B, r.A, r.V}
				}
			}
			mixed.Marks = slices.Clone(in.Marks)
			slices.Reverse(mixed.Marks)
			got := Infer(mixed)
			if got.State != want.State || got.Settled != want.Settled || !maps.Equal(got.Roles, want.Roles) ||
				!slices.Equal(got.Notes, want.Notes) || !slices.Equal(got.Wanted, want.Wanted) || !slices.Equal(got.Facts, want.Facts) {
				t.Fatalf("scene %d:\n%+v\n%+v", n, got, want)
			}
		}
	}
}

func TestNamesDoNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	names := []string{"1", "2", "blue", "W", "x-9", "Öse", "c1"}
	for n, in := range scenes() {
		want := Infer(in)
		for range 20 {
			rng.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
			to := map[string]string{Case: Case}
			for i, p := range want.Pins {
				to[p] = names[i]
			}
			other := in
			other.Readings, other.Marks = nil, nil
			for _, r := range in.Readings {
				other.Readings = append(other.Readings, Reading{to[r.A], to[r.B], r.V})
			}
			for _, m := range in.Marks {
				other.Marks = append(other.Marks, Mark{to[m.Pin], m.Role, m.Entry})
			}
			got := Infer(other)
			roles := map[string]Role{}
			for pin, role := range want.Roles {
				roles[to[pin]] = role
			}
			if got.State != want.State || got.Settled != want.Settled || !maps.Equal(got.Roles, roles) {
				t.Fatalf("scene %d renamed %v: %s %v, want %s %v", n, to, got.State, got.Roles, want.State, roles)
			}
		}
	}
}

// Ten times the ohms, limits and all, is the same machine wound finer. Only
// limits that are not the meter's (to the case, kilohms, probe leads) are in
// ohms; no scene but the ground fault comes near them.
func TestScalingChangesOnlyNumbers(t *testing.T) {
	for n, in := range scenes() {
		want := Infer(in)
		big := in
		big.Readings = slices.Clone(in.Readings)
		for i, r := range big.Readings {
			if !isCase(r.A) && !isCase(r.B) {
				big.Readings[i].V = r.V.Times(10)
			}
		}
		got := Infer(big)
		if got.State != want.State || got.Settled != want.Settled || !maps.Equal(got.Roles, want.Roles) || !slices.Equal(got.Facts, want.Facts) {
			t.Errorf("scene %d: %s %v %v, want %s %v %v", n, got.State, got.Roles, got.Facts, want.State, want.Roles, want.Facts)
		}
	}
}

func TestSameLeadsNeverSwapRoles(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for n := range 5000 {
		run := 0.5 + 20*rng.Float64()
		start := run * (1.02 + 5*rng.Float64())
		read := func(lead float64) Result {
			var in Input
			for _, p := range []struct {
				a, b string
				x    float64
			}{{"C", "R", run}, {"C", "S", start}, {"S", "R", start + run}} {
				x := p.x + lead
				in.Readings = append(in.Readings, Reading{p.a, p.b, measure.Within(x, measure.Default.Limit(x, 0.1, false))})
			}
			return Infer(in)
		}
		plain, with := read(0), read(5*rng.Float64())
		for pin, role := range with.Roles {
			if was, ok := plain.Roles[pin]; ok && was != role {
				t.Fatalf("machine %d (%v, %v): %s was %s, now %s", n, run, start, pin, was, role)
			}
			if role != map[string]Role{"C": Common, "S": Start, "R": Run}[pin] {
				t.Fatalf("machine %d: %s is not %s", n, pin, role)
			}
		}
	}
}

func TestNotesAreLines(t *testing.T) {
	for n, in := range scenes() {
		for _, s := range Infer(in).Notes {
			if s == "" || strings.ContainsAny(s, "\n\t") || strings.Contains(s, "NaN") || strings.Contains(s, "Inf") {
				t.Errorf("scene %d: note %q", n, s)
			}
		}
	}
}
