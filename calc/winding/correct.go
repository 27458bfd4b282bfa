package winding

import (
	"fmt"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// copperK is the constant of copper, in °C, by which its resistance follows
// temperature: R2/R1 = (K+t2)/(K+t1). "K is 234.5 for copper", UL text on
// temperature rise by resistance, also IEEE 112.
const copperK = 234.5

// ToTemp corrects the resistance of a copper winding read at from to what it
// would be at to, both in °C. An open reading stays open.
func ToTemp(v measure.Value, from, to float64) measure.Value {
	return v.Times((copperK + to) / (copperK + from))
}

// Compare judges a winding's reading against the ohms of a nameplate or
// service sheet, with the tolerance in percent given there. Both must stand
// for the same temperature: see ToTemp.
func Compare(subject string, v measure.Value, plate, tolPercent float64) verdict.Verdict {
	lo, hi := plate*(1-tolPercent/100), plate*(1+tolPercent/100)
	d := verdict.Verdict{
		Subject: subject,
		Limit:   fmt.Sprintf("%s to %s (%s ± %s %%)", number(lo), ohms(hi), number(plate), number(tolPercent)),
		Source:  "the plate or service sheet as entered",
	}
	if v.Entry > 0 {
		d.Entries = []int{v.Entry}
	}
	if v.Over {
		d.Word, d.Text = verdict.Failed, subject+" reads open; the sheet says "+ohms(plate)+"."
		return d
	}
	inside := min(v.X-lo, hi-v.X)
	if h := v.Half(); h > 0 {
		d.Margin, d.Judged = inside/h, true
	}
	says := subject + " reads " + reads(v) + ", the sheet " + ohms(plate) + ": "
	switch {
	case v.Lo >= lo && v.Hi <= hi:
		d.Word, d.Text = verdict.Sound, says+"within its tolerance."
	case v.Hi < lo:
		d.Word, d.Text = verdict.Failed, says+"below its tolerance, beyond what the meter allows; shorted turns read low."
	case v.Lo > hi:
		d.Word, d.Text = verdict.Failed, says+"above its tolerance, beyond what the meter allows; heat and bad contacts read high."
	default:
		d.Word, d.Text = verdict.CannotTell, says+"the limit lies within the meter's own error."
	}
	return d
}
