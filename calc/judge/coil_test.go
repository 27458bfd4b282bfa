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
	}{
		{"open", CoilIn{Ohms: measure.Open(7)}, verdict.Failed},
		{"nothing to hold it against", CoilIn{Name: "valve", Ohms: within(1100, 12)}, verdict.CannotTell},
		{"as marked", CoilIn{Ohms: within(1100, 12), Marked: 1150}, verdict.Sound},
		{"half of it", CoilIn{Ohms: within(550, 8), Marked: 1150}, verdict.Suspect},
		{"near zero", CoilIn{Ohms: within(0.3, 0.3), Marked: 1150}, verdict.Suspect},
	} {
		check(t, c.name, SmallCoil(c.in), c.word)
	}
	check(t, "igniter open", Igniter("", measure.Open(7)), verdict.Failed, "heater-open")
	check(t, "igniter", Igniter("", within(80, 1)), verdict.CannotTell, "heater-undecided")
}
