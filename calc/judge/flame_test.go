package judge

import (
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// A flame of 1 µA or more holds most controls; a rod is open on ohms: common
// practice.
func TestFlame(t *testing.T) {
	ua := func(x, half float64) measure.Value { return within(x*1e-6, half*1e-6) }
	check(t, "good", FlameAmps("", ua(3.2, 0.1)), verdict.Sound, "flame-sensed")
	check(t, "enough", FlameAmps("", ua(1.5, 0.1)), verdict.Sound, "flame-sensed")
	check(t, "weak", FlameAmps("", ua(0.4, 0.1)), verdict.Suspect, "flame-weak")
	check(t, "near", FlameAmps("", ua(1.05, 0.1)), verdict.CannotTell)
	check(t, "over", FlameAmps("", measure.Open(5)), verdict.CannotTell)
	check(t, "rod open", FlameRod("", measure.Open(5)), verdict.CannotTell)
	check(t, "rod to metal", FlameRod("", within(20e3, 400)), verdict.Suspect, "flame-weak")
	check(t, "rod damp", FlameRod("", within(1e6, 2e4)), verdict.CannotTell)
}
