package pulldown

import (
	"errors"
	"fmt"
	"math"

	"ohmcall/calc/judge"
)

// Target is a temperature to come down to.
type Target struct {
	Name    string
	Celsius float64
	Source  string
	Coldest float64 // °C, colder than any such place becomes (common practice)
}

// The temperatures at which food keeps: 40 °F and 0 °F.
var (
	Refrigerator = Target{"refrigerator", judge.FreshFoodCelsius, judge.FoodSource, -30}
	Freezer      = Target{"freezer", judge.FreezerCelsius, judge.FoodSource, -35}
)

// warmest is warmer than any such place settles at, °C (common practice).
const warmest = 45

// State is what can be said about a target.
type State string

// The six answers.
const (
	Proved       State = "proved"
	OnCourse     State = "on course"
	WillNotReach State = "will not reach"
	TooEarly     State = "too early"
	RisesAgain   State = "rises again"
	Warms        State = "warms"
)

// Forecast is when the curve comes down to a temperature, in minutes on the
// readings' own scale.
type Forecast struct {
	Minutes   float64
	U         float64 // standard uncertainty, first order
	Low, High float64 // bounds for 95 %
	Never     bool    // within its bounds the curve may never come down that far; High means nothing
}

// Forecast tells when the thermometer will show a temperature. The error says
// why there is no such time.
func (r *Result) Forecast(celsius float64) (Forecast, error) {
	drop := r.Start.Value - r.Final.Value
	switch {
	case !finite(celsius):
		return Forecast{}, errors.New("the target is not a finite number")
	case drop <= 0:
		return Forecast{}, errors.New("the readings do not fall")
	case celsius <= r.Final.Value:
		return Forecast{}, fmt.Errorf("the curve settles at %s, above the target", showCelsius(r.Final.Value))
	}
	after := r.Tau.Value * math.Log(drop/(celsius-r.Final.Value))
	f := Forecast{Minutes: r.data.origin + after, U: r.timeUncertainty(celsius)}
	f.Low = r.data.origin + r.reach(-1, celsius, after, 0)
	if f.Never = r.Final.High >= celsius; !f.Never {
		f.High = r.data.origin + r.reach(1, celsius, after, 20*r.most)
	}
	return f, nil
}

// reach finds by bisection the time at which one side's edge of the curve's
// bounds comes down to the target, between the curve's own time and an outer
// one. A target that was reached before the first reading was reached at it:
// the curve is not drawn back.
func (r *Result) reach(side, target, inner, outer float64) float64 {
	if inner <= 0 {
		return inner
	}
	for math.Abs(outer-inner) > 1e-5*(inner+1) {
		mid := (inner + outer) / 2
		edge := r.edge(func(tau float64) float64 { return -math.Expm1(-mid / tau) }, side)
		if (edge > target) == (outer > inner) {
			inner = mid
		} else {
			outer = mid
		}
	}
	return (inner + outer) / 2
}

// timeUncertainty carries Cov over to the time of a temperature.
func (r *Result) timeUncertainty(celsius float64) float64 {
	tau, drop, rest := r.Tau.Value, r.Start.Value-r.Final.Value, celsius-r.Final.Value
	g := [3]float64{tau * (1/rest - 1/drop), math.Log(drop / rest), tau / drop}
	v := 0.0
	for i := range g {
		for j := range g {
			v += g[i] * r.Cov[i][j] * g[j]
		}
	}
	return math.Sqrt(max(v, 0))
}

// Judgement is the answer for one target with what it rests on.
type Judgement struct {
	State    State
	Reason   string    // one sentence or two
	Forecast *Forecast // when on course
}

// Judge says where a pull-down stands. Show writes a temperature for the
// reader; nil writes degrees Celsius.
//
// Proved rests on the last reading alone: it is below the target by more than
// the thermometer's uncertainty (k = 2). The other answers rest on the final
// temperature's bounds, to which the thermometer's uncertainty is added once
// more, as an error that all readings share.
func (r *Result) Judge(t Target, show func(celsius float64) string) Judgement {
	if show == nil {
		show = showCelsius
	}
	n := len(r.data.y) - 1
	last, u := r.data.y[n], 1/math.Sqrt(r.data.w[n])
	target := show(t.Celsius)
	if last+2*u <= t.Celsius {
		return Judgement{State: Proved, Reason: fmt.Sprintf(
			"the last reading, %s, is at or below %s by more than the thermometer's uncertainty", show(last), target)}
	}
	low, high := r.finalBounds()
	from := fmt.Sprintf("by the curve through %d readings it settles", n+1)
	settles := r.ends(from, t, show, low, high)
	held := ""
	if r.Scattered {
		held += "; the readings do not lie on one curve, as after a door opening or a defrost"
	}
	if r.Final.Open {
		held += ", taking for granted a time constant of a day at most"
	}
	settles += held
	switch {
	case !r.Tells(t):
		return Judgement{State: TooEarly, Reason: fmt.Sprintf(
			"%d readings so near a straight line do not tell where it settles (a %s is between %s and %s; common practice): take more readings", n+1, t.Name, show(t.Coldest), show(warmest))}
	case high <= t.Celsius:
		j := Judgement{State: OnCourse, Reason: settles + ", which is below " + target}
		if f, err := r.Forecast(t.Celsius); err == nil {
			j.Forecast = &f
			j.Reason += fmt.Sprintf("; expected there %s after the first reading", r.duration(f))
		}
		return j
	case low > t.Celsius:
		return Judgement{State: WillNotReach, Reason: settles + ", which is above " + target}
	case last <= t.Celsius:
		return Judgement{State: TooEarly, Reason: fmt.Sprintf(
			"the last reading, %s, is at %s within the thermometer's uncertainty; %s: take more readings", show(last), target, settles)}
	}
	if high-low > vague && high <= warmest {
		settles = fmt.Sprintf("%s below %s with 95 %% confidence%s", from, show(high), held)
	}
	return Judgement{State: TooEarly, Reason: settles + ", which does not tell about " + target + " yet: take more readings"}
}

// Tells reports whether the curve settles where a cabinet can: of readings near
// a straight line the fit's end is no temperature.
func (r *Result) Tells(t Target) bool { return r.Final.Value >= t.Coldest && r.Final.Value <= warmest }

// ends says where the curve settles, with those of its bounds that a cabinet
// can have.
func (r *Result) ends(from string, t Target, show func(float64) string, low, high float64) string {
	at := fmt.Sprintf("%s at %s, ", from, show(r.Final.Value))
	switch {
	case low >= t.Coldest && high <= warmest:
		return at + fmt.Sprintf("between %s and %s with 95 %% confidence", show(low), show(high))
	case low >= t.Coldest:
		return at + fmt.Sprintf("above %s with 95 %% confidence", show(low))
	case high <= warmest:
		return at + fmt.Sprintf("below %s with 95 %% confidence", show(high))
	}
	return from + " within no bounds that tell"
}

// vague is the width of the final temperature's bounds, in kelvin, beyond
// which their lower end is no temperature that anyone would look for.
const vague = 30

// finalBounds are the final temperature's bounds with the thermometer's own
// uncertainty added.
func (r *Result) finalBounds() (low, high float64) {
	own := r.K * r.data.u
	return r.Final.Value - math.Hypot(r.Final.Value-r.Final.Low, own), r.Final.Value + math.Hypot(r.Final.High-r.Final.Value, own)
}

func showCelsius(c float64) string { return fmt.Sprintf("%.1f °C", c) }

// duration writes a forecast as time since the first reading.
func (r *Result) duration(f Forecast) string {
	from, at, to := f.Low-r.data.origin, f.Minutes-r.data.origin, f.High-r.data.origin
	unit, digits := "min", 0
	if at >= 120 {
		unit, digits = "h", 1
		from, at, to = from/60, at/60, to/60
	}
	return fmt.Sprintf("%.*f %s (%.*f to %.*f %s)", digits, at, unit, digits, from, digits, to, unit)
}
