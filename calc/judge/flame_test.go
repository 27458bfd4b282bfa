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

// A thermocouple in its flame holds a valve from some 12 mV on, a thermopile from some
// 200: common practice.
func TestThermocouple(t *testing.T) {
	mv := func(x, half float64) measure.Value { return within(x*1e-3, half*1e-3) }
	check(t, "good", Thermocouple("thermocouple", mv(27, 1)), verdict.Sound, "thermocouple-sound")
	check(t, "the other way round", Thermocouple("thermocouple", mv(-27, 1)), verdict.Sound, "thermocouple-sound")
	check(t, "dead", Thermocouple("thermocouple", mv(2, 1)), verdict.Suspect, "thermocouple-weak")
	check(t, "weak", Thermocouple("thermocouple", mv(8, 1)), verdict.Suspect, "thermocouple-weak")
	check(t, "loaded or not", Thermocouple("thermocouple", mv(14, 1)), verdict.CannotTell)
	check(t, "near", Thermocouple("thermocouple", mv(12, 1)), verdict.CannotTell)
	check(t, "over", Thermocouple("thermocouple", measure.Open(5)), verdict.CannotTell)
	check(t, "pile", Thermocouple("thermopile", mv(420, 7)), verdict.Sound, "thermocouple-sound")
	check(t, "a pile in volts", Thermocouple("thermopile", mv(480000, 7800)), verdict.CannotTell)
	check(t, "a couple in volts", Thermocouple("thermocouple", mv(25000, 300)), verdict.CannotTell)
	check(t, "a strong pile", Thermocouple("thermopile", mv(750, 10)), verdict.Sound, "thermocouple-sound")
	check(t, "weak pile", Thermocouple("thermopile", mv(120, 5)), verdict.Suspect, "thermocouple-weak")
	check(t, "pile, loaded or not", Thermocouple("thermopile", mv(300, 5)), verdict.CannotTell)
}
