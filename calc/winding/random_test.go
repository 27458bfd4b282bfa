package winding

import (
	"math/rand/v2"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

// Whatever is typed, the answer comes, is complete in itself, and is the same
// when asked again.
func TestAnyInput(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	pins := []string{"A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N", "case", ""}
	roles := append([]Role{""}, roleOrder...)
	states := map[State]int{}
	for n := range 10000 {
		leads := 1 + rng.IntN(6)
		if n%50 == 0 {
			leads = len(pins)
		}
		var in Input
		pick := func() string {
			if rng.IntN(20) == 0 {
				return pins[len(pins)-1-rng.IntN(2)]
			}
			return pins[rng.IntN(min(leads, len(pins)-2))]
		}
		for range rng.IntN(3 * leads) {
			v := measure.Open(0)
			switch rng.IntN(5) {
			case 0:
			case 1:
				v = measure.Within(0, 0.3)
			case 2, 3:
				v = measure.Within(float64(4+rng.IntN(6)), 0.3)
			default:
				x := logUniform(rng, 0.01, 1e5)
				v = measure.Within(x, 0.01*x+0.03)
			}
			in.Readings = append(in.Readings, Reading{pick(), pick(), v})
		}
		for range rng.IntN(4) {
			in.Marks = append(in.Marks, Mark{Pin: pick(), Role: roles[rng.IntN(len(roles))]})
		}
		in.Kind = []Kind{Unknown, Compressor, Fan, Motor}[rng.IntN(4)]
		in.EqualByDesign, in.StartLead = rng.IntN(4) == 0, rng.IntN(4) == 0
		in.Leads = rng.IntN(6)
		r := Infer(in)
		states[r.State]++
		if len(r.Notes) == 0 {
			t.Fatalf("no word on %+v", in)
		}
		for _, s := range r.Notes {
			if s == "" || strings.ContainsAny(s, "\n") || strings.Contains(s, "NaN") || strings.Contains(s, "Inf") {
				t.Fatalf("note %q on %+v", s, in)
			}
		}
		if strings.Join(Infer(in).Notes, "\n") != strings.Join(r.Notes, "\n") {
			t.Fatalf("asked again, another answer on %+v", in)
		}
	}
	for _, s := range severity {
		if states[s] == 0 {
			t.Errorf("no input came to %s", s)
		}
	}
	t.Log(states)
}
