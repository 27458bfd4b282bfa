package judge

import (
	"cmp"
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// coilTolerance is taken, in percent, when the ohms of a coil were given
// without one (common practice).
const coilTolerance = 10.0

// CoilIn is the coil of a solenoid or valve across its two terminals.
type CoilIn struct {
	Name      string
	Ohms      measure.Value
	Marked    float64 // ohms by plate or service sheet, 0 when not known
	Tolerance float64 // percent, 0 for the default
	Work      bool    // it heats by induction: a few turns of litz wire, of about 0.1 Ω (common practice)
	Facts     string  // what its facts begin with, "" for coil
}

// SmallCoil judges a coil by its marked ohms. Without them only an open one is
// certainly bad: coils of one use differ a hundredfold.
func SmallCoil(in CoilIn) verdict.Verdict {
	w, source, tol := window{0, math.Inf(1)}, commonPractice, in.Tolerance
	if in.Marked > 0 {
		if tol <= 0 {
			tol = coilTolerance
		}
		w, source = around(in.Marked, tol), fmt.Sprintf("plate or service sheet, ±%s %%", num(tol))
	} else if in.Work {
		w = atMost(contactOhms)
	}
	out := begin(named("coil", in.Name), in.Ohms, w, "Ω", source)
	out.Caution = []string{caution.ProveDead}
	if in.Marked <= 0 && !in.Work {
		out.Limit, out.Judged, out.Margin = "finite", false, 0
	}
	of := cmp.Or(in.Facts, "coil")
	out.Fact = []string{of + "-conducts"}
	switch {
	case in.Ohms.Over:
		out.Word, out.Text, out.Fact = verdict.Failed, "open: the coil or its wire is broken", []string{of + "-open"}
	case in.Work && in.Marked <= 0 && w.place(in.Ohms) == inside:
		out.Word, out.Text = verdict.Sound, ohms(in.Ohms.X)+": as low as a work coil is; shorted turns show in no ohms"
	case in.Work && in.Marked <= 0:
		out.Word, out.Text = w.advisoryWord(in.Ohms), ohms(in.Ohms.X)+": a work coil has hardly any: short the probes and repeat, else a burnt joint"
	case in.Ohms.Hi < contactOhms:
		out.Word, out.Text = verdict.Suspect, ohms(in.Ohms.X)+": hardly any coil is that low; lift one wire and repeat"
	case in.Marked <= 0:
		out.Word, out.Text = verdict.CannotTell, "not open; plate ohms "+in.Name+" and its value say more"
	case w.place(in.Ohms) == inside:
		out.Word, out.Text = verdict.Sound, ohms(in.Ohms.X)+" agrees with "+ohms(in.Marked)
	default:
		out.Word, out.Text = w.advisoryWord(in.Ohms), ohms(in.Ohms.X)+" against "+ohms(in.Marked)+": lift one wire and repeat at room temperature"
	}
	return out
}

// Igniter judges a hot-surface igniter, which glows to light a burner. Its
// ohms find a broken one and do not prove a whole one.
func Igniter(name string, v measure.Value) verdict.Verdict {
	out := begin(named("igniter", name), v, window{0, math.Inf(1)}, "Ω", commonPractice)
	out.Limit, out.Judged, out.Margin = "finite", false, 0
	out.Caution = []string{caution.ProveDead, caution.HotMoving}
	if v.Over {
		out.Word, out.Text, out.Fact = verdict.Failed, "open: broken", []string{"igniter-open"}
		return out
	}
	out.Word, out.Fact = verdict.CannotTell, []string{"igniter-conducts"}
	out.Text = "not open; its amps against the marking of the valve say whether it glows hot enough"
	return out
}

// IgniterAmpsIn is the current of a hot-surface igniter while it glows, and what
// the gas valve in its circuit is marked to open at.
type IgniterAmpsIn struct {
	Name string
	Amps measure.Value
	Low  float64 // A, the least that the valve is marked with, 0 when not known
	High float64 // A, the most, 0 when not known
}

// IgniterAmps judges whether an igniter draws what opens its valve. The valve's
// own marking is the limit: igniters of two kinds differ by an ampere.
func IgniterAmps(in IgniterAmpsIn) verdict.Verdict {
	w := window{in.Low, math.Inf(1)}
	out := begin("igniter amps", in.Amps, w, "A", "the marking of the gas valve")
	out.Caution = []string{caution.MainsLive, caution.FuelGas, caution.HotMoving}
	switch {
	case in.Low <= 0:
		out.Word, out.Limit, out.Judged, out.Source = verdict.CannotTell, "", false, ""
		out.Text = "the amps that the gas valve is marked with are needed: plate igniter 3.2-3.6"
	case w.place(in.Amps) == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, "it draws what its valve asks for", []string{"igniter-strong"}
	case w.place(in.Amps) == below:
		out.Word, out.Text, out.Fact = verdict.Failed, "it draws less than its valve asks for, which then opens late or never", []string{"igniter-weak"}
	case float32(2*in.Amps.X) >= float32(in.Low+in.High) && in.Amps.X <= in.High && in.Amps.Half() <= in.High-in.Low:
		out.Word, out.Fact = verdict.CannotTell, []string{"igniter-strong"}
		out.Text = "in the upper half of its valve's marking, as near as this clamp tells"
	default:
		out.Word, out.Text = verdict.CannotTell, "too near to what its valve asks for"
	}
	return out
}
