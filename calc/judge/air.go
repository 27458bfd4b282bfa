package judge

import (
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// split is how much colder, in kelvin, an air conditioner gives the air out than
// it takes it in once it has run for ten minutes, 14 to 25 °F (common practice).
var split = window{8, 14}

// fahrenheit is how many degrees Fahrenheit a kelvin is (NIST SP 811, from memory).
const fahrenheit = 1.8

// AirSplit judges the temperatures in °C of the air that an air conditioner takes
// in and gives out. A dry or humid room moves what is usual, so it condemns
// nothing.
func AirSplit(in, out measure.Value) verdict.Verdict {
	if in.Over || out.Over {
		return cannot("air split", "a number is needed of both, the thermometer is out of its range", in, out)
	}
	d := less(in, out)
	v := begin("air split", d, split, "K", commonPractice)
	v.Entries = entries(in, out)
	v.Word = split.advisoryWord(d)
	x := quantity(tenth(d.X), "K") + " (" + num(tenth(d.X*fahrenheit)) + " °F) between the air taken in and given out"
	switch split.place(d) {
	case inside:
		v.Text, v.Fact = x+", by one thermometer", []string{"split-sound"}
	case below:
		v.Text, v.Fact = x+": it hardly cools", []string{"split-small"}
	case above:
		v.Text, v.Fact = x+": too little air over the coil", []string{"split-large"}
	default:
		v.Text = x + ", too near the limit to say: let it run ten minutes and read both with one thermometer"
	}
	return v
}

// less is what one of two temperatures is more than the other.
func less(a, b measure.Value) measure.Value {
	return measure.Value{X: a.X - b.X, Lo: a.Lo - b.Hi, Hi: a.Hi - b.Lo}
}

// rise is how much warmer, in kelvin, a heat pump that heats gives the air out than
// it takes it in once it has run for ten minutes: 15 °F of a ducted one on a cold
// day to some 55 °F of a room unit on a mild one (common practice).
var rise = window{8, 30}

// AirRise judges the temperatures in °C of the air that a heat pump in heating takes
// in and gives out. Outdoor cold and a defrost lower what is usual, so it condemns
// nothing.
func AirRise(in, out measure.Value) verdict.Verdict {
	if in.Over || out.Over {
		return cannot("air rise", "a number is needed of both, the thermometer is out of its range", in, out)
	}
	d := less(out, in)
	v := begin("air rise", d, rise, "K", commonPractice)
	v.Entries = entries(in, out)
	v.Word = rise.advisoryWord(d)
	x := quantity(tenth(d.X), "K") + " (" + num(tenth(d.X*fahrenheit)) + " °F) warmer than it was taken in"
	switch rise.place(d) {
	case inside:
		v.Text, v.Fact = x+", by one thermometer", []string{"rise-sound"}
	case below:
		v.Text, v.Fact = x+": it hardly heats, or it was defrosting: see that it was not", []string{"rise-small"}
	case above:
		v.Text, v.Fact = x+": too little air over the indoor coil, or an electric heater helps", []string{"rise-large"}
	default:
		v.Text = x + ", too near the limit to say: let it run ten minutes and read both with one thermometer"
	}
	return v
}
