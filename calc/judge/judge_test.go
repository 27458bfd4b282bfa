package judge

import (
	"math"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// within is a reading with bounds of half on either side, as entry 7.
func within(x, half float64) measure.Value {
	v := measure.Within(x, half)
	v.Entry = 7
	return v
}

// check compares the word and the facts of a verdict.
func check(t *testing.T, name string, got verdict.Verdict, word verdict.Word, facts ...string) {
	t.Helper()
	if got.Word != word {
		t.Errorf("%s: %s (%s), want %s", name, got.Word, got.Text, word)
	}
	if len(got.Fact) != len(facts) {
		t.Errorf("%s: facts %v, want %v", name, got.Fact, facts)
		return
	}
	for i := range facts {
		if got.Fact[i] != facts[i] {
			t.Errorf("%s: facts %v, want %v", name, got.Fact, facts)
		}
	}
}

func near(t *testing.T, name string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) > tol {
		t.Errorf("%s = %v, want %v ± %v", name, got, want, tol)
	}
}

func TestWordFollowsTheBounds(t *testing.T) {
	w := window{10, 20}
	for _, c := range []struct {
		x, half  float64
		word     verdict.Word
		advisory verdict.Word
		margin   float64
	}{
		{15, 1, verdict.Sound, verdict.Sound, 5},
		{11, 1, verdict.Sound, verdict.Sound, 1},
		{10.5, 1, verdict.CannotTell, verdict.CannotTell, 0.5},
		{9.5, 1, verdict.CannotTell, verdict.CannotTell, -0.5},
		{8.5, 1, verdict.Failed, verdict.Suspect, -1.5},
		{21.5, 1, verdict.Failed, verdict.Suspect, -1.5},
		{20.5, 1, verdict.CannotTell, verdict.CannotTell, -0.5},
	} {
		v := within(c.x, c.half)
		if got := w.word(v); got != c.word {
			t.Errorf("%v ± %v: %s, want %s", c.x, c.half, got, c.word)
		}
		if got := w.advisoryWord(v); got != c.advisory {
			t.Errorf("%v ± %v advisory: %s, want %s", c.x, c.half, got, c.advisory)
		}
		m, judged := w.margin(v)
		if !judged {
			t.Errorf("%v ± %v: margin not judged", c.x, c.half)
		}
		near(t, "margin", m, c.margin, 1e-9)
	}
	if _, judged := w.margin(measure.Exact(15)); judged {
		t.Error("a value without doubt has no margin in half-widths")
	}
	if _, judged := w.margin(measure.Open(1)); judged {
		t.Error("OL has no margin")
	}
}

func TestNumberAndLimitText(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{num(0), "0"}, {num(3.4), "3.4"}, {num(26.449999), "26.45"}, {num(1234567), "1234567"},
		{num(0.00125), "0.00125"}, {num(-0.5), "-0.5"}, {num(100), "100"},
		{ohms(3.4), "3.4 Ω"}, {ohms(12_500), "12.5 kΩ"}, {ohms(2e6), "2 MΩ"}, {ohms(999.96), "1 kΩ"},
		{window{10.8, 13.2}.text("µF"), "10.8 to 13.2 µF"},
		{window{900, 1100}.text("Ω"), "900 Ω to 1.1 kΩ"},
		{window{108, 126}.text("V"), "108 to 126 V"},
		{atLeast(2e6).text("Ω"), "at least 2 MΩ"}, {atMost(5).text("%"), "at most 5 %"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}
