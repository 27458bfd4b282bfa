package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// MetalIn is the volts between the bare metal of an appliance under power and
// something that stands on earth: earth, the neutral conductor, a water pipe.
type MetalIn struct {
	To    string
	Volts measure.Value
}

// Limits of the volts on touchable metal: above metalTouch they must be
// switched off (IEC 61140, conventional limit of the touch voltage, 50 V AC,
// from memory); up to metalQuiet a loaded neutral explains them (common
// practice).
const (
	metalTouch = 50.0
	metalQuiet = 5.0
)

// Metal judges whether the metal of an appliance stands under volts.
func Metal(in MetalIn) verdict.Verdict {
	w := atMost(metalTouch)
	out := begin("metal to "+in.To, in.Volts, w, "V", "IEC 61140, limit of the touch voltage, from memory")
	out.Caution = []string{caution.MainsLive, caution.Shock}
	x := quantity(in.Volts.X, "V")
	switch {
	case in.Volts.Over || w.place(in.Volts) == above:
		out.Word, out.Fact = verdict.Failed, []string{"metal-live"}
		out.Text = x + " on bare metal: nobody touches it, and the power goes off at its source, not at the appliance"
		out.Also = []string{"by this its earth path is open or something leaks to the metal; a filter's small leak shows as much where the earth is open"}
	case w.place(in.Volts) == straddles:
		out.Word = verdict.CannotTell
		out.Text = x + " on bare metal is too near the limit to say: take the power off, and read the earth path and each part to the case"
	case atMost(metalQuiet).place(in.Volts) == straddles:
		out.Word = verdict.CannotTell
		out.Text = x + " on bare metal is little, and too near what a loaded neutral makes to say: read the earth path with the power off"
	case in.Volts.Hi <= metalQuiet:
		out.Word, out.Fact = verdict.Sound, []string{"metal-quiet"}
		out.Text = x + " is no more than a loaded neutral makes"
	default:
		out.Word = verdict.Suspect
		out.Text = x + " is more than a loaded neutral makes: read the earth path and each part to the case with the power off"
	}
	return out
}

// mostLeaked is the most current, in A, that the protective earth of an appliance may carry
// in use: 5 mA of a heater of several kilowatts, 3.5 mA of what a motor drives
// (IEC 60335-1 cl. 13.2, from memory).
const mostLeaked = 5e-3

// EarthAmps judges a current in the protective earth, which carries none but a leak.
func EarthAmps(amps measure.Value) verdict.Verdict {
	w := atMost(mostLeaked)
	out := begin("current in the earth", amps, w, "A", "IEC 60335-1 cl. 13.2, from memory")
	out.Caution = []string{caution.MainsLive, caution.Shock}
	out.Word, out.Text = w.word(amps), " is no more than an appliance may leak, as far as this clamp tells"
	if out.Word == verdict.Failed {
		out.Text = " in the earth: something leaks to the metal or the neutral lies on it; power off at its source"
	}
	out.Text = quantity(amps.X, "A") + out.Text
	return out
}

// Neutral judges the volts between the neutral conductor and earth, under power: a
// loaded neutral has a few (common practice).
func Neutral(volts measure.Value) verdict.Verdict {
	w := atMost(metalQuiet)
	out := begin("neutral to earth", volts, w, "V", commonPractice)
	out.Caution = []string{caution.MainsLive}
	x := quantity(volts.X, "V")
	switch {
	case volts.Over || volts.Lo > LegNominal*ghostShare:
		out.Word, out.Fact = verdict.Suspect, []string{"neutral-poor"}
		out.Text = x + " between neutral and earth: line and neutral are crossed, or one is open; leave it off, for an electrician"
	case w.place(volts) == above:
		out.Word, out.Fact = verdict.Suspect, []string{"neutral-poor"}
		out.Text = x + " is more than a loaded neutral makes: a poor or open neutral or earth, for an electrician"
	case w.place(volts) == straddles:
		out.Word = verdict.CannotTell
		out.Text = x + " is too near what a loaded neutral makes to say: read it with the load on and off"
	default:
		out.Word, out.Text = verdict.Sound, x+" is no more than a loaded neutral makes"
	}
	return out
}
