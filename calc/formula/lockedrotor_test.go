package formula

import (
	"math"
	"strings"
	"testing"
)

func TestLockedRotorPublished(t *testing.T) {
	const nec = "NEC Table 430.7(B), computed"
	checkPublished(t, []published{
		{"lra_least", []any{"L", 115.0, 0.25}, 19.57, 0.005, nec},
		{"lra_most", []any{"L", 115.0, 0.25}, 21.72, 0.005, nec},
		{"lra_least", []any{"n", 115.0, 0.25}, 24.35, 0.005, nec},
		{"lra_most", []any{"N", 115.0, 0.25}, 27.15, 0.005, nec},
		{"lra_code", []any{30.0, 115.0, 1.0 / 3}, 10.35, 1e-9, nec},
		{"lra_code", []any{30.0, 115.0, 1.0 / 3, "three-phase"}, 10.35 * math.Sqrt(3), 1e-9, nec},
		{"lra_least", []any{"A", 115.0, 0.25}, 0, 1e-12, nec},
	})
	checkRefusals(t, []refusal{
		{"lra_most", []any{"V", 115.0, 0.25}, "code V has no upper end: 22.4 kVA/hp and more"},
		{"lra_least", []any{"O", 115.0, 0.25}, `code "O" is not known: one of A, B, C`},
	})
}

func TestCodeLetters(t *testing.T) {
	// NEC Table 430.7(B), every row's two ends.
	for kva, want := range map[float64]string{
		0: "A", 3.14: "A", 3.15: "B", 3.54: "B", 3.545: "B", 3.55: "C", 3.99: "C", 4: "D", 4.49: "D", 4.5: "E", 4.99: "E",
		5: "F", 5.59: "F", 5.6: "G", 6.29: "G", 6.3: "H", 7.09: "H", 7.1: "J", 7.99: "J", 8: "K", 8.99: "K", 9: "L", 9.99: "L",
		10: "M", 10.35: "M", 11.19: "M", 11.2: "N", 12.49: "N", 12.5: "P", 13.99: "P", 14: "R", 15.99: "R", 16: "S", 17.99: "S",
		18: "T", 19.99: "T", 20: "U", 22.39: "U", 22.4: "V", 100: "V",
	} {
		if got := codeOf(kva).letter; got != want {
			t.Errorf("%g kVA/hp is code %s, want %s", kva, got, want)
		}
	}
	f, _ := Lookup("lra_code")
	if got := f.Say(Args{}, 10.35); !strings.Contains(got, "code letter M, 10 to 11.19 kVA/hp") {
		t.Errorf("10.35 kVA/hp is said to be %q", got)
	}
	if got := f.Say(Args{}, 30); !strings.Contains(got, "code letter V, 22.4 kVA/hp and more") {
		t.Errorf("30 kVA/hp is said to be %q", got)
	}
}

// NEC Table 430.7(B), each row's upper end as printed: 100 hp on 100 V draw at most
// a thousand times as many amps, and by √3 fewer on three phases.
func TestLockedRotorUpperEnds(t *testing.T) {
	var rows []published
	for letter, most := range map[string]float64{
		"A": 3.14, "B": 3.54, "C": 3.99, "D": 4.49, "E": 4.99, "F": 5.59, "G": 6.29, "H": 7.09, "J": 7.99, "K": 8.99,
		"L": 9.99, "M": 11.19, "N": 12.49, "P": 13.99, "R": 15.99, "S": 17.99, "T": 19.99, "U": 22.39,
	} {
		rows = append(rows,
			published{"lra_most", []any{letter, 100.0, 100.0}, 1000 * most, 1e-6, "NEC Table 430.7(B)"},
			published{"lra_most", []any{letter, 100.0, 100.0, "three-phase"}, 577.3502692 * most, 1e-4, "NEC Table 430.7(B)"})
	}
	rows = append(rows, published{"lra_least", []any{"L", 100.0, 100.0, "three-phase"}, 577.3502692 * 9, 1e-4, "NEC Table 430.7(B)"})
	checkPublished(t, rows)
}
