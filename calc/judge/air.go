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
	d := measure.Value{X: in.X - out.X, Lo: in.Lo - out.Hi, Hi: in.Hi - out.Lo}
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
