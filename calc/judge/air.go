package judge

import (
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// split is how much colder, in kelvin, an air conditioner gives the air out than
// it takes it in once it has run for ten minutes, 14 to 25 °F (common practice).
var split = window{8, 14}

// rise is how much warmer, in kelvin, a heat pump that heats gives the air out than
// it takes it in once it has run for ten minutes: 15 °F of a ducted one on a cold
// day to some 55 °F of a room unit on a mild one (common practice).
var rise = window{8, 30}

// cooled is how much colder, in kelvin, air is given out at least that a coil has cooled
// and no thermometer or draught has (common practice).
const cooled = 4

// fahrenheit is how many degrees Fahrenheit a kelvin is (NIST SP 811, from memory).
const fahrenheit = 1.8

// air is one judgement of two temperatures of the air: what they are apart, how that
// is told, and what is said and shown of it inside, below and above what is usual.
type air struct {
	subject, told string
	usual         window
	text, fact    [3]string
}

// A dry or humid room moves what is usual in cooling, outdoor cold and a defrost in
// heating: they condemn nothing (common practice).
var (
	cooling = air{"air split", " between the air taken in and given out", split,
		[3]string{", by one thermometer", ": it hardly cools", ": too little air over the coil"}, [3]string{"split-sound", "split-small", "split-large"}}
	heating = air{"air rise", " warmer than it was taken in", rise,
		[3]string{", by one thermometer", ": it hardly heats, or it was defrosting: see that it was not", ": too little air over the indoor coil, or an electric heater helps"},
		[3]string{"rise-sound", "rise-small", "rise-large"}}
)

// AirSplit judges the temperatures in °C of the air that an air conditioner takes
// in and gives out.
func AirSplit(in, out measure.Value) verdict.Verdict { return cooling.judge(in, out, less(in, out)) }

// AirRise judges the temperatures in °C of the air that a heat pump in heating takes
// in and gives out.
// Air that comes out far colder was cooled: its compressor pumps, and its valve stands
// so or it defrosts.
func AirRise(in, out measure.Value) verdict.Verdict {
	v := heating.judge(in, out, less(out, in))
	if apart := less(in, out); v.Word == verdict.Suspect && apart.Lo >= cooled {
		v.Text = quantity(tenth(apart.X), "K") + " (" + num(tenth(apart.X*fahrenheit)) + " °F) colder than it was taken in: it cools, by its reversing valve or in a defrost"
		v.Fact = []string{"rise-cooled"}
	}
	return v
}

func (a *air) judge(in, out, apart measure.Value) verdict.Verdict {
	if in.Over || out.Over {
		return cannot(a.subject, "a number is needed of both, the thermometer is out of its range", in, out)
	}
	v := begin(a.subject, apart, a.usual, "K", commonPractice)
	v.Entries = entries(in, out)
	v.Word = a.usual.advisoryWord(apart)
	x := quantity(tenth(apart.X), "K") + " (" + num(tenth(apart.X*fahrenheit)) + " °F)" + a.told
	at := 0
	switch a.usual.place(apart) {
	case inside:
	case below:
		at = 1
	case above:
		at = 2
	default:
		v.Text = x + ", too near the limit to say: let it run ten minutes and read both with one thermometer"
		return v
	}
	v.Text, v.Fact = x+a.text[at], []string{a.fact[at]}
	return v
}

// less is what one of two temperatures is more than the other.
func less(a, b measure.Value) measure.Value {
	return measure.Value{X: a.X - b.X, Lo: a.Lo - b.Hi, Hi: a.Hi - b.Lo}
}
