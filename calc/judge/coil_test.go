package judge

import (
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// An open coil is bad, any other is held against its sheet: common practice.
func TestSmallCoil(t *testing.T) {
	for _, c := range []struct {
		name string
		in   CoilIn
		word verdict.Word
		fact string
	}{
		{"open", CoilIn{Ohms: measure.Open(7)}, verdict.Failed, "coil-open"},
		{"nothing to hold it against", CoilIn{Name: "valve", Ohms: within(1100, 12)}, verdict.CannotTell, "coil-conducts"},
		{"as marked", CoilIn{Ohms: within(1100, 12), Marked: 1150}, verdict.Sound, "coil-conducts"},
		{"half of it", CoilIn{Ohms: within(550, 8), Marked: 1150}, verdict.Suspect, "coil-conducts"},
		{"near zero", CoilIn{Ohms: within(0.3, 0.3), Marked: 1150}, verdict.Suspect, "coil-conducts"},
	} {
		check(t, c.name, SmallCoil(c.in), c.word, c.fact)
	}
	// 3.2 to 3.6 A is a usual marking of an oven's valve: from memory.
	check(t, "igniter weak", IgniterAmps(IgniterAmpsIn{Amps: within(2.4, 0.1), Low: 3.2}), verdict.Failed, "igniter-weak")
	check(t, "igniter strong", IgniterAmps(IgniterAmpsIn{Amps: within(3.4, 0.1), Low: 3.2}), verdict.Sound, "igniter-strong")
	check(t, "igniter near", IgniterAmps(IgniterAmpsIn{Amps: within(3.2, 0.1), Low: 3.2}), verdict.CannotTell)
	check(t, "igniter in its band", IgniterAmps(IgniterAmpsIn{Amps: within(3.4, 0.33), Low: 3.2, High: 3.6}), verdict.CannotTell, "igniter-strong")
	check(t, "igniter low in its band", IgniterAmps(IgniterAmpsIn{Amps: within(3.3, 0.33), Low: 3.2, High: 3.6}), verdict.CannotTell)
	check(t, "igniter by a rough clamp", IgniterAmps(IgniterAmpsIn{Amps: within(3.5, 0.6), Low: 3.2, High: 3.6}), verdict.CannotTell)
	check(t, "valve not read", IgniterAmps(IgniterAmpsIn{Amps: within(3.4, 0.1)}), verdict.CannotTell)
	check(t, "igniter open", Igniter("", measure.Open(7)), verdict.Failed, "igniter-open")
	check(t, "igniter", Igniter("", within(80, 1)), verdict.CannotTell, "igniter-conducts")
}
