package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	units "ohmcall/calc/quantity"
	"ohmcall/calc/verdict"
)

// kelvin is 0 °C in kelvin.
const kelvin = units.ZeroC

// shortShare is the share of the lowest resistance expected below which a
// sensor is shorted (common practice).
const shortShare = 0.01

// Tolerances in percent of the resistance that are used when the sensor's
// data give none (common practice). Beta alone misses a published curve by
// 4 % at 0 °C, so it is allowed more than a table.
const (
	defaultTableTolerance = 5.0
	defaultBetaTolerance  = 10.0
)

// NTCIn is a thermistor held at a known temperature: in ice water, or beside
// a thermometer. Either Table or R25 with Beta describes the part.
type NTCIn struct {
	Name      string
	Ohms      measure.Value
	Celsius   measure.Value
	R25       float64
	Beta      float64
	Table     Table
	Tolerance float64 // percent of the resistance, 0 for the default
	Switch    bool    // it may be a contact that is called a sensor
}

// open adds to a thermistor's verdict that it is open: to its control that is colder
// than anything.
func (in NTCIn) open(v verdict.Verdict) verdict.Verdict {
	if in.Ohms.Over {
		v.Fact = append(v.Fact, "sensor-open")
	}
	return v
}

// NTC judges a thermistor against its table or its beta.
func NTC(in NTCIn) verdict.Verdict {
	subject := named("NTC sensor", in.Name)
	curve, tol, source := in.curve()
	if (curve == nil || in.Celsius.Over) && in.Ohms.Over {
		return in.open(verdict.Verdict{Subject: subject, Word: verdict.Suspect, Limit: "finite", Source: commonPractice,
			Text: "open: the sensor, its lead or its plug; read at the sensor itself on the highest range",
			Fact: []string{fact("sensor", verdict.Suspect)}, Caution: []string{caution.ProveDead}, Entries: entries(in.Ohms)})
	}
	if !in.Ohms.Over && in.Ohms.Hi < contactOhms && (curve == nil || in.Celsius.Over) && !in.Switch {
		return verdict.Verdict{Subject: subject, Word: verdict.Failed, Limit: "more than a contact's ohms", Source: commonPractice,
			Text: ohms(in.Ohms.X) + " is a short at any temperature: the sensor, its lead or its plug; read at the sensor itself",
			Fact: []string{fact("sensor", verdict.Failed)}, Caution: []string{caution.ProveDead}, Entries: entries(in.Ohms)}
	}
	if curve == nil {
		text := "a table, or R25 and beta, is needed to judge it"
		if r0 := likelyPlatinum(in.Ohms, in.Celsius); r0 > 0 {
			text += "; by its ohms it may be a platinum sensor: plate r0 " + num(r0)
		}
		return undecided("sensor", subject, text, in.Ohms, in.Celsius)
	}
	if d := Against(in.Table, in.R25, in.Beta); len(d) > 0 && !in.Ohms.Over {
		return undecided("sensor", subject, d[0], in.Ohms, in.Celsius)
	}
	cold, okCold := curve(in.Celsius.Lo)
	hot, okHot := curve(in.Celsius.Hi)
	if in.Celsius.Over {
		return undecided("sensor", subject, "the temperature at the sensor is needed: write it behind the ohms, as in at 20C", in.Ohms)
	}
	if !okCold || !okHot {
		return undecided("sensor", subject, "the temperature is outside what its table or formula covers", in.Ohms, in.Celsius)
	}
	at, okAt := curve(in.Celsius.X)
	if !okAt {
		return undecided("sensor", subject, "the temperature is outside what its table or formula covers", in.Ohms, in.Celsius)
	}
	// What the thermometer may be off counts as doubt of the reading: it is
	// taken to the temperature read from each end of that doubt.
	v := in.Ohms
	v.Lo *= at / max(cold, hot)
	v.Hi *= at / min(cold, hot)
	out := sensor(subject, v, in.Celsius, around(at, tol), fmt.Sprintf("%s, ±%s %%", source, num(tol)))
	return in.open(pretends(out, in.Ohms, in.Celsius.X, curve, ntcCold, ntcWarm))
}

// curve is the resistance at a temperature, false where it is not defined.
func (in NTCIn) curve() (f func(c float64) (float64, bool), tol float64, source string) {
	tol = in.Tolerance
	switch {
	case len(in.Table.points) > 1:
		if tol <= 0 {
			tol = defaultTableTolerance
		}
		return in.Table.Ohms, tol, "the sensor's own table"
	case in.R25 > 0 && in.Beta > 0:
		if tol <= 0 {
			tol = defaultBetaTolerance
		}
		return func(c float64) (float64, bool) {
			return BetaOhms(in.R25, in.Beta, c), c > -kelvin
		}, tol, "IEC 60539-1, beta equation"
	}
	return nil, 0, ""
}

// betaRef is the temperature of R25, in °C (IEC 60539-1).
const betaRef = 25

// BetaOhms is the resistance at c °C by R25 and beta.
func BetaOhms(r25, beta, c float64) float64 {
	return formula.BetaOhms(r25, beta, betaRef, c)
}

// defaultPlatinumKelvin is how far a platinum sensor of no known class may be
// off, in kelvin: an appliance's control needs no better (common practice).
const defaultPlatinumKelvin = 3.0

// PlatinumIn is a platinum sensor of R0 ohms at 0 °C, of tolerance class
// "A" or "B"; without a class defaultPlatinumKelvin is taken.
type PlatinumIn struct {
	Name    string
	Ohms    measure.Value
	Celsius measure.Value
	R0      float64
	Class   string
}

// ptClasses are the tolerances of IEC 60751 in kelvin: a fixed part and one
// for each degree.
var ptClasses = map[string]struct{ fixed, slope float64 }{"A": {0.15, 0.002}, "B": {0.30, 0.005}}

// Platinum judges a platinum sensor against the curve of IEC 60751.
func Platinum(in PlatinumIn) verdict.Verdict {
	subject := named("platinum sensor", in.Name)
	class, known := ptClasses[in.Class]
	source := "IEC 60751, class " + in.Class
	if in.Class == "" {
		class.fixed, known = defaultPlatinumKelvin, true
		source = fmt.Sprintf("IEC 60751; ±%s K, no class being known (%s)", num(defaultPlatinumKelvin), commonPractice)
	}
	t := in.Celsius
	if in.R0 <= 0 || !known || t.Over || t.Lo < formula.PlatinumRange.Lo || t.Hi > formula.PlatinumRange.Hi {
		return undecided("sensor", subject, "R0, class A or B and a temperature of -200 to 850 °C are needed", in.Ohms, t)
	}
	off := class.fixed + class.slope*math.Abs(t.X)
	w := window{formula.PlatinumOhms(in.R0, t.X-off), formula.PlatinumOhms(in.R0, t.X+off)}
	v, at := in.Ohms, formula.PlatinumOhms(in.R0, t.X)
	v.Lo -= formula.PlatinumOhms(in.R0, t.Hi) - at
	v.Hi += at - formula.PlatinumOhms(in.R0, t.Lo)
	out := sensor(subject, v, t, w, source)
	curve := func(c float64) (float64, bool) { return formula.PlatinumOhms(in.R0, c), true }
	return pretends(out, in.Ohms, t.X, curve, formula.PlatinumRange.Lo, formula.PlatinumRange.Hi)
}

// sensor judges any resistance sensor against the window at a temperature;
// the doubt of v holds that of the temperature.
func sensor(subject string, v, celsius measure.Value, w window, source string) verdict.Verdict {
	out := begin(subject, v, w, "Ω", source)
	out.Entries = entries(v, celsius)
	out.Caution = []string{caution.ProveDead}
	at := num(tenth(celsius.X)) + " °C"
	switch {
	case v.Over:
		out.Word, out.Fact = verdict.Failed, []string{"sensor-failed"}
		out.Text = "open: the sensor, its lead or its plug; read at the sensor itself"
		return out
	case v.Hi < w.lo*shortShare && powerOfTen(v, w) == "":
		out.Word, out.Fact = verdict.Failed, []string{"sensor-failed"}
		out.Text = "near zero ohms: the sensor or its lead is shorted"
		return out
	}
	if slip := powerOfTen(v, w); slip != "" {
		out.Word, out.Text, out.Fact = verdict.Suspect, slip, []string{"sensor-suspect"}
		return out
	}
	out.Word = w.word(v)
	switch out.Word {
	case verdict.Sound:
		out.Text, out.Fact = ohms(v.X)+" is right at "+at, []string{"sensor-sound"}
	case verdict.Failed:
		out.Text, out.Fact = ohms(v.X)+" is wrong at "+at+", the limit is "+out.Limit, []string{"sensor-failed"}
	case verdict.CannotTell:
		out.Text = ohms(v.X) + " is too near the limit to say at " + at + ": repeat in ice water"
		if v.Hi-v.Lo >= w.hi-w.lo {
			// No reading of such a doubt can ever be called sound.
			mid := (w.lo + w.hi) / 2
			out.Text = fmt.Sprintf("%s is within %s %% of %s at %s", ohms(v.X), num(math.Ceil(10*100*math.Abs(v.X/mid-1))/10), ohms(mid), at)
			if w.holds(v.X) {
				out.Text += ": no gross fault"
			}
			out.Text += "; only a finer meter can say more (meter ohm)"
		}
		out.Fact = []string{fact("sensor", out.Word)}
	}
	return out
}
