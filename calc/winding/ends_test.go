package winding

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

// Six leads named as the ends of three windings: IEC 60034-8 and NEMA MG 1 (from
// memory); that the three read alike is common practice.
func TestSixEnds(t *testing.T) {
	pair := func(a, b string, x float64) Reading { return Reading{A: a, B: b, V: measure.Within(x, 0.1)} }
	open := func(a, b string) Reading { return Reading{A: a, B: b, V: measure.Open(0)} }
	for _, c := range []struct {
		name     string
		readings []Reading
		state    State
		fact     string
		note     string
		toCase   int // pins still wanted
	}{
		{"alike", []Reading{pair("U1", "U2", 4.4), pair("V1", "V2", 4.5), pair("W1", "W2", 4.4)}, Sound, FactSound, "They read alike", 3},
		{"alike, in small letters", []Reading{pair("u1", "u2", 4.4), pair("v1", "v2", 4.5), pair("w1", "w2", 4.4), open("u1", Case), open("v2", Case)}, Sound, FactSound, "They read alike", 1},
		{"by the other standard", []Reading{pair("T1", "T4", 4.4), pair("T2", "T5", 4.5), pair("T3", "T6", 4.4), open("T1", "T2")}, Sound, FactSound, "They read alike", 3},
		{"one differs", []Reading{pair("U1", "U2", 4.4), pair("V1", "V2", 7.5), pair("W1", "W2", 4.4)}, DoesNotAddUp, FactDoNotAddUp, "differ by more", 3},
		{"two read", []Reading{pair("U1", "U2", 4.4), pair("V1", "V2", 4.5)}, Incomplete, "", "Wanted next", 0},
		{"joined by links", []Reading{pair("U1", "U2", 4.4), pair("V1", "V2", 4.5), pair("W1", "W2", 4.4), pair("U2", "V2", 0.1)}, Incomplete, "", "Wanted next", 0},
		{"other names", []Reading{pair("1", "2", 4.4), pair("3", "4", 4.5), pair("5", "6", 4.4)}, Incomplete, "", "Wanted next", 0},
		{"a winding open", []Reading{pair("U1", "U2", 4.4), pair("V1", "V2", 4.5), open("W1", "W2")}, Incomplete, "", "Wanted next", 0},
	} {
		res := Infer(Input{Readings: c.readings, Leads: 6})
		if res.State != c.state || c.fact != "" && !slices.Contains(res.Facts, c.fact) || !strings.Contains(strings.Join(res.Notes, " "), c.note) {
			t.Errorf("%s: %s, %v, %q", c.name, res.State, res.Facts, res.Notes)
		}
		wanted := 0
		for _, p := range res.Wanted {
			if strings.HasSuffix(p.String(), Case) {
				wanted++
			}
		}
		if wanted != c.toCase {
			t.Errorf("%s: %v wanted", c.name, res.Wanted)
		}
	}
}
