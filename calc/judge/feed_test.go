package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/verdict"
)

// What is called and gets too little is not sound: a heater gives the square of the
// share (Joule's law), a motor its torque likewise; 104 of 120 V are the least of
// ANSI C84.1-2011 Table 1, range B (from memory).
func TestFeed(t *testing.T) {
	for _, c := range []struct {
		volts, rated float64
		called       bool
		word         verdict.Word
		fact, text   string
	}{
		{118, 120, true, verdict.Sound, "fed", "it is given 118 V"},
		{208, 240, true, verdict.Sound, "fed", "it is given 208 V"},
		{104, 120, false, verdict.Sound, "fed", "it is given 104 V"},
		{85, 120, true, verdict.Suspect, "fed", "85 V are too little"},
		{85, 120, false, verdict.Suspect, "fed", "85 V are too little"},
		{160, 240, true, verdict.Suspect, "", "a lost leg"},
		{102, 120, true, verdict.CannotTell, "fed", "whether 102 V are enough"},
		{1, 120, true, verdict.Failed, "unfed", "should be called"},
		{1, 120, false, verdict.CannotTell, "", "no call now"},
		{72, 120, true, verdict.CannotTell, "", "neither a call nor none"},
	} {
		got := Feed(FeedIn{Place: "comp", Volts: within(c.volts, 1), Rated: c.rated, Called: c.called, Fed: "fed", Unfed: "unfed"})
		if got.Word != c.word || strings.Join(got.Fact, " ") != c.fact || !strings.Contains(got.Text, c.text) {
			t.Errorf("%v of %v V: %s, %v, %s", c.volts, c.rated, got.Word, got.Fact, got.Text)
		}
	}
}
