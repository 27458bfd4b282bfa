package call

import (
	"math"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// sideOf says on which side of the sealed system a gauge was read, "" for a
// place that is neither.
func sideOf(place string) string {
	switch p := strings.ToLower(place); {
	case strings.HasPrefix(p, "suction"), strings.HasPrefix(p, "low"):
		return "suction"
	case strings.HasPrefix(p, "discharge"), strings.HasPrefix(p, "high"):
		return "discharge"
	case strings.HasPrefix(p, "system"), strings.HasPrefix(p, "process"):
		return "system"
	}
	return ""
}

// gas is the refrigerant of the plate.
func (c *Call) gas() string {
	if g := c.plateText(c.mainMachine(), "gas"); g != "" {
		return g
	}
	return c.plateText("", "gas")
}

// outdoors are what the air round the condenser of an air conditioner is called,
// indoors that of any other machine.
var outdoors, indoors = []string{"outdoor", "outside", "ambient"}, []string{"room", "ambient", "kitchen"}

// usedFor is what the evaporator of this appliance cools, and what the air round
// its condenser is called. A heat pump's do either, and of other machines nobody
// said.
func (c *Call) usedFor() (judge.Evaporator, []string) {
	is := c.appliance()
	switch unit := strings.ToLower(is.Unit); {
	case strings.Contains(unit, "heat pump"), is.HeatPumpDryer:
		return "", indoors
	case is.Air:
		return judge.CoolsAir, outdoors
	case is.OneFan:
		return judge.CoolsAir, indoors
	}
	if cools(is.Unit) {
		return judge.Freezes, indoors
	}
	return "", indoors
}

// airRound is the last temperature of the air round the condenser before an entry.
func (c *Call) airRound(names []string, before int) measure.Value {
	c.spend(4 * len(c.readings))
	for i := len(c.readings) - 1; i >= 0; i-- {
		if r := c.readings[i]; r.quality.word == "temp" && r.entry < before && !r.over && c.alive(r.entry) && among(names, strings.ToLower(r.a)) {
			return c.value(r)
		}
	}
	return measure.Open(0)
}

// judgePressure judges the last gauge readings: those at rest by the gas, those
// of both sides at work by each other and by where the gas boils and condenses.
func (c *Call) judgePressure(rs []*reading, before int) verdict.Verdict {
	r := latest(rs)
	running := func(side string) measure.Value {
		for i := len(rs) - 1; i >= 0; i-- {
			if rs[i].cond.is("run") && sideOf(rs[i].a) == side {
				return c.value(rs[i])
			}
		}
		return measure.Open(0)
	}
	gas := c.gas()
	switch {
	case r.cond.is("standing"):
		return judge.AtRest(judge.AtRestIn{PSI: c.value(r), Celsius: c.roomBeside(r), Gas: gas})
	case !r.cond.is("run"):
		return verdict.Verdict{Subject: "pressure", Word: verdict.CannotTell, Entries: []int{r.entry},
			Text: "write run behind it while the compressor runs, or standing once all has stood level and at one temperature"}
	}
	in := judge.PumpingIn{Suction: running("suction"), Discharge: running("discharge"), Gas: gas}
	var names []string
	in.For, names = c.usedFor()
	in.Rooms = c.appliance().Air || c.appliance().OneFan
	in.Hot = c.appliance().HeatPumpDryer || c.appliance().Tank
	in.AirName, in.Air = names[0], c.airRound(names, before)
	v := judge.Pumping(in)
	if v.Word == verdict.CannotTell && (in.Suction.Over || in.Discharge.Over) {
		v.Entries = []int{r.entry}
		v.Text = "one side alone tells little: read the other side (psi discharge 70 run), and frost and timed temperatures"
		if t, ok := formula.SaturationCelsius(gas, r.x); ok && sideOf(r.a) == "suction" {
			v.Text = "at this suction " + gas + " boils at " + oneDigit(t) + " °C; " + v.Text
			v.Source = formula.SaturationSource(gas)
		}
	}
	return v
}

// oneDigit writes x with at most one digit behind the point.
func oneDigit(x float64) string { return number(math.Round(x*10) / 10) }
