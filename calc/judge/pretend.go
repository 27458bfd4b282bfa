package judge

import (
	"math"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Between these, in °C, the temperature that a thermistor pretends is looked
// for: what an appliance's control can be meant to see.
const ntcCold, ntcWarm = -60.0, 300.0

// pretends adds to a sensor that is off its curve at c °C the temperature that
// the control takes it for, and what that makes the control do. An open or
// shorted one is left alone: controls know those for faults.
func pretends(out verdict.Verdict, v measure.Value, c float64, curve func(float64) (float64, bool), cold, warm float64) verdict.Verdict {
	if out.Word != verdict.Failed || v.Over || v.Hi < contactOhms {
		return out
	}
	t, ok := inverse(curve, v.X, cold, warm)
	if !ok {
		return out
	}
	if t < c {
		out.Text += "; it reads as " + num(tenth(t)) + " °C, colder than it is"
		out.Also = append(out.Also, "a control that cools stops too early by it, and the box gets too warm; one that heats goes on too long")
		out.Fact = append(out.Fact, "sensor-reads-cold")
	} else {
		out.Text += "; it reads as " + num(tenth(t)) + " °C, warmer than it is"
		out.Also = append(out.Also, "a control that cools goes on too long by it, and the box gets too cold; one that heats stops too early")
		out.Fact = append(out.Fact, "sensor-reads-warm")
	}
	return out
}

// inverse gives the temperature at which a curve that only rises or only falls
// has the ohms, false when that lies outside it.
func inverse(curve func(float64) (float64, bool), ohms, cold, warm float64) (float64, bool) {
	for _, ok := curve(cold); !ok && cold < warm; _, ok = curve(cold) {
		cold++
	}
	for _, ok := curve(warm); !ok && cold < warm; _, ok = curve(warm) {
		warm--
	}
	a, _ := curve(cold)
	b, _ := curve(warm)
	if cold >= warm || (ohms-a)*(ohms-b) > 0 {
		return 0, false
	}
	for range 64 { // halvings: more than the numbers have digits
		mid := (cold + warm) / 2
		if m, _ := curve(mid); (m-ohms)*(a-ohms) > 0 {
			cold = mid
		} else {
			warm = mid
		}
	}
	return (cold + warm) / 2, true
}

//go:noinline
func tenth(x float64) float64 { return math.Round(x*10) / 10 }
