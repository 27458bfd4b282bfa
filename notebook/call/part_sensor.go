package call

import (
	"slices"
	"strings"
	"time"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

func judgeNTC(c *Call, name string, rs []*reading, before int) verdict.Verdict {
	r := latest(rs)
	in := judge.NTCIn{Name: name, Ohms: c.value(r), Celsius: c.temperatureBeside(r),
		R25: c.plateNumber("", "r25", "ohm"), Beta: c.plateNumber("", "beta", ""), Switch: !steers(name)}
	if in.R25 == 0 && len(c.sensorRows()) == 0 && c.plateNumber("", "r0", "ohm") > 0 {
		return judgePlatinum(c, name, rs, before)
	}
	doubts, fault := []string(nil), error(nil)
	if rows := c.sensorRows(); len(rows) > 0 {
		in.Table, doubts, fault = judge.NewTable(rows)
	}
	v := judge.NTC(in)
	if v.Word == verdict.CannotTell {
		v.Text = but(v.Text, in.Celsius, c.notBeside(r))
	}
	if fault != nil {
		v.Also = append(v.Also, "the table typed from the sheet is not used: "+fault.Error())
		if v.Word == verdict.CannotTell {
			v.Text = v.Also[len(v.Also)-1]
		}
	}
	v.Also = append(v.Also, doubts...)
	if !steers(name) {
		v.Also = slices.DeleteFunc(v.Also, func(s string) bool { return strings.HasPrefix(s, "a control that") })
		v.Fact = slices.DeleteFunc(v.Fact, func(f string) bool { return strings.HasPrefix(f, "sensor-reads") || f == "sensor-open" })
	}
	return v
}

// steers tells the sensor that the control holds the temperature by from one
// on the evaporator, which ends the defrost.
func steers(name string) bool {
	return !strings.Contains(name, "evap") && !strings.Contains(name, "defrost")
}

// sensorRows are the rows of a sensor's table as typed with plate row.
func (c *Call) sensorRows() []judge.Point {
	var out []judge.Point
	c.spend(2 * len(c.plates))
	for _, p := range c.plates {
		if p.key == "row" && c.alive(p.entry) {
			t, _ := p.q.In("degC")
			ohms, _ := p.hi.In("ohm")
			out = append(out, judge.Point{Celsius: t, Ohms: ohms})
		}
	}
	return out
}

// pt1000From is more than a Pt100 reads at any temperature that it is made for, and less
// than a Pt1000 in any appliance: 400 Ω is beyond 850 °C of the one, -150 °C of the
// other (IEC 60751, from memory).
const pt1000From = 400

func judgePlatinum(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	r0 := c.plateNumber("", "r0", "ohm")
	if r0 == 0 {
		r0 = 100
		if v := c.value(r); strings.Contains(name, "1000") || !strings.Contains(name, "100") && !v.Over && v.X > pt1000From {
			r0 = 1000 // by its name, else by what it reads
		}
	}
	in := judge.PlatinumIn{Name: name, Ohms: c.value(r), Celsius: c.temperatureBeside(r), R0: r0, Class: c.plateText("", "class")}
	v := judge.Platinum(in)
	v.Text = but(v.Text, in.Celsius, c.notBeside(r))
	return v
}

// but adds to a text why no temperature is held against a sensor.
func but(text string, at measure.Value, why string) string {
	if !at.Over || why == "" {
		return text
	}
	return text + "; " + why
}

// iceBath is how near to 0 °C stirred ice water holds a sensor, in kelvin
// (common practice).
const iceBath = 0.2

// besideFor is how far apart readings are that are of one moment: the temperature
// that a sensor or a pressure has, the volts of a current (common practice).
const besideFor = 15 * time.Minute

// roomBeside is the temperature of the room at which a pressure stood.
func (c *Call) roomBeside(r *reading) measure.Value {
	return c.temperatureOf(r, func(t *reading) bool { return strings.EqualFold(t.a, "room") })
}

// temperatureOf is the temperature written behind a reading, else that read last
// of a place that fits, a little before it.
func (c *Call) temperatureOf(r *reading, fits func(*reading) bool) measure.Value {
	if r.cond.hasAt {
		doubt := c.meterFor("temp").fixed
		if r.cond.is(iceWord) {
			doubt = iceBath
		}
		v := measure.Within(r.cond.at, doubt)
		v.Entry = r.entry
		return v
	}
	for i := r.index - 1; i >= 0 && r.at.Sub(c.readings[i].at) <= besideFor; i-- {
		c.spend(2)
		if t := c.readings[i]; t.quality.word == "temp" && c.alive(t.entry) && fits(t) {
			return c.value(t)
		}
	}
	return measure.Open(0)
}
