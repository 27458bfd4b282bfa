package call

import (
	"cmp"
	"math"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// forecast is what a sound part would read in a test that is proposed: the
// judge's own limit by the plate of this call, and the line to type.
type forecast struct {
	verdict verdict.Verdict // of the value expected; its limit and source are told
	line    string          // "" leaves the example of the test
	also    string          // a sentence of its own
}

// forecasts gives by a test's code what a sound part would read. It asks the
// judges, so that no limit is written twice.
var forecasts map[string]func(c *Call) forecast

func init() {
	fed := func(c *Call) forecast {
		v := c.ratedVolts()
		return forecast{verdict: judge.Feed(judge.FeedIn{Volts: measure.Exact(v), Rated: v, Called: true})}
	}
	fedFan := func(c *Call) forecast {
		if c.ratedVolts() > 0 && c.appliance().Air {
			return fed(c)
		}
		return forecast{also: "the volts on the fan's own label: those of the mains, or about 12 V direct (dc behind them)"}
	}
	forecasts = map[string]func(c *Call) forecast{
		"winding-ohms": expectWindings, "heater-ohms": expectHeater, "sensor-ohms": expectSensor,
		"start-cap": expectStartCap, "run-cap": expectRunCap, "start-amps": expectStart,
		"supply-volts": func(c *Call) forecast {
			n := c.nominalVolts(120)
			f := forecast{verdict: judge.Supply(judge.SupplyIn{Volts: measure.Exact(n), Nominal: n, Edition: c.last("edition")}), line: "volt line " + number(n)}
			if n > judge.TwoLegs {
				f.line = "volt L1 L2 " + number(n)
			}
			return f
		},
		"start-sag": func(*Call) forecast {
			return forecast{verdict: judge.Sag(judge.SagIn{NoLoad: measure.Exact(1), Loaded: measure.Exact(1), Starting: true})}
		},
		"load-sag": func(*Call) forecast {
			return forecast{verdict: judge.Sag(judge.SagIn{NoLoad: measure.Exact(1), Loaded: measure.Exact(1)})}
		},
		"igniter-amps": func(c *Call) forecast {
			p, ok := c.plateAt("", "igniter", "")
			if !ok || !p.isQ {
				return forecast{also: "what the gas valve is marked with; plate igniter 3.2-3.6 takes it down"}
			}
			low, _ := p.q.In("A")
			return forecast{verdict: judge.IgniterAmps(judge.IgniterAmpsIn{Amps: measure.Exact(low), Low: low}), line: "amp igniter " + digits(low) + " run"}
		},
		"heater-amps": func(c *Call) forecast {
			name, w, v, whole := c.heaterToRead()
			f := forecast{verdict: judge.HeaterAmps(judge.HeaterAmpsIn{Amps: measure.Exact(1), Watts: w, Rated: v, Whole: whole})}
			switch {
			case w > 0 && v > 0 && whole:
				f.also = ofWhole
			case w > 0 && v > 0:
				f.line = "amp " + name + " " + digits(w/v) + " run"
			}
			return f
		},
		"start-device": func(c *Call) forecast {
			return forecast{verdict: judge.PTC(judge.PTCIn{Ohms: measure.Exact(5), State: judge.Cold, Volts: c.ratedVolts()}),
				also: "that is a PTC disc; a relay is read by its coil and contact (ohm relay-coil 0.4, relay-contact OL upright, relay-contact 0.1 inverted)"}
		},
		"overload-ohms": func(*Call) forecast {
			return forecast{verdict: judge.Overload(judge.OverloadIn{Ohms: measure.Exact(0), State: judge.Cold})}
		},
		"thermostat": closed(judge.Thermostat), "limit-ohms": closed(judge.Limit), "switch": closed(judge.Switched),
		"speed-switch": closed(judge.Speed), "fuse": closed(judge.Fuse), "cord": closed(judge.Cord),
		"plug-pins":          func(*Call) forecast { return forecast{verdict: judge.Plug(measure.Exact(10))} },
		"defrost-thermostat": closed(judge.Limit), "call-volts": fed, "heater-volts": fed, "cond-fan-volts": fedFan, "evap-fan-volts": fedFan,
		"case-ohms":   expectCase,
		"heater-case": func(*Call) forecast { return forecast{also: "OL; it finds a gross fault only"} },
		"insulation-tester": func(c *Call) forecast {
			rule, house := c.insulationRule()
			return forecast{verdict: judge.Insulation(judge.InsulationIn{Ohms: measure.Exact(1e9), TestVolts: 500, RatedVolts: c.ratedVolts(), Rule: rule, HouseOhms: house})}
		},
		"heater-tester":  func(*Call) forecast { return forecast{verdict: judge.HeaterToCase("", measure.Exact(1e9), 500, false)} },
		"cond-fan-motor": expectFan, "evap-fan-motor": expectFan,
		"standing-pressure": func(c *Call) forecast {
			t := c.roomBeside(&reading{at: c.at, index: len(c.readings)})
			if !t.Over {
				t = measure.Exact(t.X)
			}
			return forecast{verdict: judge.AtRest(judge.AtRestIn{PSI: measure.Exact(0), Celsius: t, Gas: c.gas()})}
		},
	}
}

// closed is the forecast of a contact that must conduct.
//
//go:noinline
func closed(p judge.Path) func(*Call) forecast {
	return func(*Call) forecast {
		return forecast{verdict: judge.Switch(judge.SwitchIn{Path: p, Ohms: measure.Exact(0), Want: "closed"})}
	}
}

// forecast is what a proposed test would read on a sound part.
func (c *Call) forecast(t *cause.Test) forecast {
	if f, ok := forecasts[t.Code]; ok {
		return f(c)
	}
	return forecast{}
}

// sentence says what a sound part reads, by which rule; when the plate lacks
// something for that, what.
func (f forecast) sentence() string {
	var parts []string
	switch v := f.verdict; {
	case v.Limit != "":
		parts = append(parts, "a sound one reads "+v.Limit+" ("+v.Source+")")
	case v.Word == verdict.CannotTell:
		parts = append(parts, v.Text)
	}
	if f.also != "" {
		parts = append(parts, f.also)
	}
	if len(parts) == 0 {
		return ""
	}
	return "Expected: " + strings.Join(parts, "; ") + "."
}

// proposed is a test in words with the line to type.
func (c *Call) proposed(t *cause.Test) string {
	name, line := t.Name, t.How
	if c.appliance().Wired {
		name = strings.Replace(name, "unplug the appliance", "open its disconnect", 1)
	}
	if f := c.forecast(t); f.line != "" {
		line = f.line
	}
	if element := c.appliance().Element; element != "" && isHeater(element) {
		line = strings.ReplaceAll(line, " heater ", " "+element+" ")
	}
	of := c.mainMachine()
	if kindOf(of) != winding.Compressor {
		line = strings.ReplaceAll(line, " comp ", " "+of+" ")
	}
	if t.Code == "winding-ohms" && c.complaint() == said.NoDrain {
		return "ohms between the two leads of the " + of + ", wires off: " + c.onFirst(of) + "ohm 1 2 …"
	}
	ofPins := t.Code == "winding-ohms" || t.Code == "case-ohms"
	switch {
	case t.Code == "winding-ohms" && c.onThreePhases():
		line = "ohm T1 T2 3.4, T2 T3 3.4, T1 T3 3.4"
	case t.Code == "winding-ohms" && kindOf(of) != winding.Compressor:
		name = "ohms between every two leads of the " + of + ", wires off (plate leads 2 where there are only two)"
	}
	if ofPins {
		line = c.onFirst(of) + line
	}
	if c.appliance().OneFan && strings.HasPrefix(line, "saw ") {
		name, line = strings.Replace(name, "condenser fan", "fan", 1), strings.Replace(line, "cond-fan", "fan", 1)
	}
	return name + ": " + line
}

// digits rounds x to three digits for a line to type.
func digits(x float64) string {
	if x <= 0 {
		return "0"
	}
	p := math.Pow10(2 - int(math.Floor(math.Log10(x))))
	x = math.Round(x*p) / p
	switch {
	case x >= 1e6:
		return number(x/1e6) + "M"
	case x >= 1e4:
		return number(x/1e3) + "k"
	}
	return number(x)
}

const ofWhole = "the plate's watts are of more than the heater; its own by name, as in plate watts heater …, give closer limits"

// heaterToRead is the heater to be read, its watts and volts, and whether more draws on
// the watts: the one of the complaint, else the only one that has watts of its own.
func (c *Call) heaterToRead() (name string, watts, volts float64, whole bool) {
	var only string // of those that have watts of their own
	others := false
	for _, p := range c.plates {
		if c.spend(2); p.key == "watts" && p.name != "" && c.alive(p.entry) {
			others = others || only != "" && !sameHeater(p.name, only)
			only = p.name
		}
	}
	switch name = c.appliance().Element; {
	case isHeater(name):
	case only != "" && !others:
		name = only
	default:
		name = cmp.Or(c.twinToRead(), "heater")
	}
	watts, whole = c.heaterWatts(name)
	_, volts = c.heaterVolts()
	return name, watts, volts, whole
}

func expectHeater(c *Call) forecast {
	name, w, v, whole := c.heaterToRead()
	read := measure.Exact(1)
	if whole {
		read = measure.Exact(2 * v * v / w) // as one of several would
	}
	f := forecast{verdict: judge.Heater(judge.HeaterIn{Ohms: read, Watts: w, Volts: v, Series: judge.Alone, Whole: whole})}
	switch {
	case w > 0 && v > 0 && whole:
		f.also = ofWhole
	case w > 0 && v > 0:
		f.line = "ohm " + name + " " + digits(v*v/w)
		f.also = digits(v*v/w) + " Ω is the plate's volts squared by its watts"
	}
	return f
}

func expectSensor(c *Call) forecast {
	const code = "sensor"
	f := forecast{verdict: judgeNTC(c, code, []*reading{{quality: qualityOf("ohm"), a: code, x: 1, cond: condition{words: []string{iceWord}, hasAt: true}}}, math.MaxInt)}
	f.verdict.Text = "plate r25 10k, beta 3977, or plate row 0C 32.65k, … from its sheet, or plate r0 1000 for platinum, gives the limit"
	if at, ok := c.sensorAtIce(); ok {
		f.line = "ohm sensor " + digits(at) + " ice"
	}
	return f
}

// sensorAtIce is the ohms of the plate's sensor at 0 °C.
func (c *Call) sensorAtIce() (float64, bool) {
	if t, _, err := judge.NewTable(c.sensorRows()); err == nil {
		return t.Ohms(0)
	}
	if r0 := c.plateNumber("", "r0", "ohm"); r0 > 0 {
		return r0, true
	}
	r25, beta := c.plateNumber("", "r25", "ohm"), c.plateNumber("", "beta", "")
	return judge.BetaOhms(r25, beta, 0), r25 > 0 && beta > 0
}

func expectStartCap(c *Call) forecast {
	p, ok := c.plateAt("", "mfd", "start")
	if !ok || !p.ranged && !isStartCap(p.name) {
		return forecast{also: "the range on its can; plate mfd start 88-108 takes it down"}
	}
	in := judge.StartCapIn{Measured: measure.Exact(1)}
	in.Low, _ = p.q.In("uF")
	if p.ranged {
		in.High, _ = p.hi.In("uF")
	}
	return forecast{verdict: judge.StartCap(in), line: "mfd start " + digits(in.Low)}
}

// expectRunCap is of the section that serves the machine, else of the last one.
func expectRunCap(c *Call) forecast {
	var of *plate
	fan := kindOf(c.mainMachine()) == winding.Fan
	serves := func(p *plate) bool { return strings.Contains(strings.ToLower(p.name), "fan") == fan }
	c.spend(10 * len(c.plates))
	for i := len(c.plates) - 1; i >= 0; i-- {
		p := &c.plates[i]
		if p.key != "mfd" || p.ranged || strings.HasPrefix(strings.ToLower(p.name), "start") || !c.alive(p.entry) {
			continue
		}
		if of == nil || serves(p) && !serves(of) {
			of = p
		}
	}
	if of == nil {
		return forecast{also: "its marking within the tolerance on the can; plate mfd C1 35 6% takes it down"}
	}
	marked, _ := of.q.In("uF")
	return forecast{verdict: judge.RunCap(judge.RunCapIn{Measured: measure.Exact(marked), Marked: marked, Tolerance: of.tol}),
		line: "mfd " + cmp.Or(of.name, "run") + " " + digits(marked)}
}

func expectStart(c *Call) forecast {
	of := c.mainMachine()
	plate, lra := c.plateNumber(of, "amps", "A"), c.plateNumber(of, "lra", "A")
	if plate == 0 {
		return forecast{also: "the plate's amps and LRA (plate amps 1.2, lra 12) give the limits"}
	}
	run := judge.Amps(judge.AmpsIn{Run: measure.Exact(plate), Plate: plate, LRA: lra, Volts: c.voltsOf(of)})
	f := forecast{verdict: run, also: "running"}
	if lra > 0 {
		peak := judge.Surge(judge.SurgeIn{Peak: measure.Exact(lra), Plate: plate, LRA: lra, Then: judge.Started})
		f.also = "running; at start " + peak.Limit + " (common practice)"
	}
	return f
}

func expectFan(*Call) forecast {
	return forecast{also: "it turns freely and coasts, and every two of its leads read finite and steady: on cond-fan (or evap-fan), then ohm A B …, with plate leads 2 where there are two"}
}

// expectCase names the pins that are left.
func expectCase(c *Call) forecast {
	f := forecast{also: "OL at every pin; it finds a gross fault only"}
	for _, p := range c.notToCase(c.mainMachine(), math.MaxInt) {
		f.line += ", " + p + " " + caseName + " OL"
	}
	if f.line != "" {
		f.line = "ohm" + f.line[1:]
	}
	return f
}

func expectWindings(c *Call) forecast {
	of := c.mainMachine()
	var sheet []string
	for _, p := range c.plates {
		if p.key == "ohms" && p.of == of && p.name != "" && c.alive(p.entry) {
			sheet = append(sheet, p.text)
		}
	}
	f := forecast{also: "the two lower pairs add up to the highest (ice-machine operation manual 80-0111-9 p. 176)"}
	if m := c.machines[of]; m != nil {
		for _, p := range m.result.Wanted {
			if p[1] != caseName {
				f.line += ", " + p[0] + " " + p[1] + " …"
			}
		}
	}
	if f.line != "" {
		f.line = "ohm" + f.line[1:]
	}
	switch kind := c.typeOf(of); {
	case kind == onDrive || kind == said.ThreePhase:
		f.also = "three like pairs (common practice)"
		f.line = cmp.Or(f.line, "ohm U V 6.1, U W 6.1, V W 6.1")
	case kindOf(of) == winding.Fan:
		f.also = "from common the high speed reads lowest, then medium, then low, one series; a start lead reads higher (common practice)"
	case kindOf(of) == winding.Motor:
		f.also = "the two leads of a winding read finite, leads of windings that are not joined OL; of three joined leads the two lower pairs add up to the highest (common practice)"
	}
	if len(sheet) > 0 {
		f.also = "by the sheet " + strings.Join(sheet, ", ") + "; " + f.also
	}
	return f
}
