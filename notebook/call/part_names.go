package call

import (
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/source"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// partAliases are other names of the trade for parts in the table.
var partAliases = map[string]string{
	"hi-limit": "limit", "high-limit": "limit", "hilimit": "limit", "safety-thermostat": "limit",
	"rollout": "limit", "roll-out": "limit", "rollout-switch": "limit", "roll-out-switch": "limit", "rollout-limit": "limit", "flame-rollout": "limit", "flame-rollout-switch": "limit",
	"thermal-cutoff": "tco", "thermal-cut-off": "tco", "cutoff": "tco",
	"thermal-cutout": "tco", "thermal-cut-out": "tco", "cutout": "tco", "cut-out": "tco", "thermal-link": "tco",
	"cycling-thermostat": "thermostat", "cold-control": "thermostat", "tstat": "thermostat", "operating-thermostat": "thermostat",
	"defrost-stat": "defrost-thermostat", "defrost-termination": "defrost-thermostat", "termination": "defrost-thermostat", "defrost-bimetal": "defrost-thermostat",
	"ol": "overload", "olp": "overload",
	"eco": "limit", "tach": "tacho", "tach-coil": "tacho", "tach-generator": "tacho", "tach-sensor": "tacho",
	"ignitor": "igniter", "ign": "igniter", "hsi": "igniter", "glow-coil": "igniter", "aquastat": "thermostat", "lwco": "switch",
	"hot-surface-igniter": "igniter", "surface-igniter": "igniter", "glow-bar": "igniter", "door-sensor": "switch",
	"heating-coil": "heater", "t-fuse": "thermal-fuse", "tf": "thermal-fuse", "hi-lim": "limit", "high-lim": "limit",
	"push-to-start": "switch", "press-to-start": "switch",
	"start-relay": "relay", "current-relay": "relay", "door-lock": "switch", "lid-switch": "switch", "door-latch": "switch", "lid-lock": "switch",
	"element-bake": "bake", "element-broil": "broil", "oven-sensor": "sensor", "temp-sensor": "sensor", "oven-probe": "sensor",
	"power-cord": "cord", "radiant-sensor": "flame-sensor", "selector": "switch", "selector-switch": "switch", "lid": "switch",
	"kit": "module", "start-kit": "module", "hard-start": "module", "hard-start-kit": "module", "water-valve": "valve", "inlet-valve": "valve",
	"heat": "heater", "strip": "heater", "heat-strip": "heater",
}

// canonical is a part's name in the table for one of its other names; digits
// behind it count the parts.
func canonical(name string) string {
	name = strings.ToLower(name)
	bare := strings.TrimRight(name, "0123456789")
	for _, n := range []string{name, bare, strings.TrimRight(bare, "-")} {
		if known, ok := partAliases[n]; ok {
			return known
		}
	}
	return name
}

// partNamed lists the names of parts, those of the table first.
func partNamed() []string {
	var out, more []string
	for _, p := range partPlaces {
		out = append(out, p.words...)
	}
	for alias := range partAliases {
		more = append(more, alias)
	}
	slices.Sort(more)
	return append(out, more...)
}

// nearestPart is the part that a name may be a slip for, "" when none is near.
func nearestPart(name string) string {
	known := partNamed()
	if n := source.Nearest(name, known); n != "" {
		return n
	}
	for _, w := range strings.Split(strings.ToLower(name), "-") {
		if i := slices.IndexFunc(known, func(k string) bool { return len(w) > 3 && strings.Contains(k, w) }); i >= 0 {
			return known[i]
		}
	}
	return ""
}

// otherSensors are the sensors that are no thermistors (common practice).
var otherSensors = []string{"moisture-sensor", "sensor-bars", "moisture-bars", "humidity-sensor", "hall", "pressure-sensor", "pressure-transducer", "transducer", "level-sensor", "water-level-sensor",
	"turbidity-sensor", "flow-sensor", "flow-meter", "flowmeter", "speed-sensor", "vibration-sensor", "position-sensor", "weight-sensor"}

func judgeOtherSensor(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	return judge.NotHere("sensor "+name, "no thermistor: what it reads is in its sheet (common practice)", c.value(latest(rs)))
}

// judgeLamp judges nothing for certain: a filament conducts, an LED or a tube need not.
func judgeLamp(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r, text := latest(rs), "not open: a filament is whole"
	if r.over {
		text = "open: a filament would be burnt out; an LED lamp or a tube tells nothing on ohms"
	}
	return judge.NotHere("lamp "+name, text+" (common practice)", c.value(r))
}

// assemblies say what is done in place of the ohms of the whole (common practice).
var assemblies = []struct{ word, says string }{
	{"ice-maker", "an assembly: its heater, its thermostat and its motor are read one by one"},
	{"electrode", "a spark gap, open on ohms: its insulator and its gap are looked at"},
	{"transformer", "two windings: on transformer, then the ohms of each between its own pins"},
	{"kit", "a capacitor and what cuts it out, behind two leads: mfd start-cap … reads the one, ohm relay … or ohm ptc … the other"},
	{"", "no ohms judge electronics: what feeds it and what it gives out are read"},
}

func judgeAssembly(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	i := slices.IndexFunc(assemblies, func(a struct{ word, says string }) bool { return strings.Contains(name, a.word) })
	return judge.NotHere(name, assemblies[i].says+" (common practice)", c.value(latest(rs)))
}

// judgeWound judges the winding of a part that is no valve by its conducting alone.
func judgeWound(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	v := judge.NotHere(name, "not open; its sheet gives its ohms (common practice)", c.value(r))
	if r.b != "" {
		v.Text = "one pair of its pins is its motor, the others are contacts that its place opens and closes (common practice)"
	} else if r.over {
		v.Word, v.Text = verdict.Failed, "open: the winding or its wire is broken (common practice)"
	}
	return v
}

// motors are parts with pins of their own, read as a machine.
var motors = []string{"pump", "drain-pump", "motor", "fan", "cond-fan", "evap-fan", "blower", "compressor", "comp"}

// twoLeads are the motors that have two leads (common practice), and motorKind what is
// read between them when no pins are said.
var twoLeads = []string{"evap-fan", "cond-fan", "drain-pump", "turntable-motor", "inducer-motor"}

const motorKind = "motor"

// judgeLeads judges a motor between its two leads when they read open: that of one on
// direct volts has electronics, of which ohms tell nothing (common practice).
func (c *Call) judgeLeads(name string, r *reading) (verdict.Verdict, bool) {
	v := judgeWound(c, name, []*reading{r}, 0)
	if !r.over {
		return v, true
	}
	if says := c.maybeDirect(name); says != "" {
		v.Word, v.Text, v.Fact = verdict.CannotTell, says, []string{name + "-windings-undecided"}
	} else {
		v.Fact = []string{name + "-windings-failed"}
		v.Also = []string{"a hot one is let cool and read again"}
	}
	return v, true
}

// lowVolts are the most that boards feed a fan with, direct ones (common practice).
const lowVolts = 50

// maybeDirect says why ohms do not condemn a fan: it runs on direct volts, or may do so
// in what cools as long as neither its plate nor the volts read at it tell of mains.
func (c *Call) maybeDirect(name string) string {
	const electronics = "a motor on direct volts has electronics, of which ohms tell nothing (common practice)"
	key := "volt\x00\x00" + name + "\x00\x00"
	_, read := c.last2(key)
	_, direct := c.last2(key + directWord)
	a, plate := c.appliance(), c.plateNumber(name, "volts", "V")
	switch {
	case direct != nil || plate > 0 && plate < lowVolts:
		return electronics
	case plate > 0 || read != nil && c.value(read).Lo > lowVolts || a.Unsealed || a.Air || name != "evap-fan" && name != "cond-fan":
		return ""
	}
	return "open is a mains motor with a broken winding, or one on direct volts, whose electronics read so; its volts tell: volt " + name + " … run"
}

// rejudgeFans judges the ohms of fans anew whose volts were read now.
func (c *Call) rejudgeFans(rs []*reading, reply *Reply) {
	for _, r := range rs {
		name := strings.ToLower(r.a)
		if !among(twoLeads, name) {
			continue
		}
		if j := c.judged[motorKind+"\x00"+name]; j != nil {
			if j, changed := c.judge(motorKind, name); changed {
				c.tellVerdict(j, reply)
			}
		}
		if c.machines[name] != nil {
			c.refreshMachine(name, reply)
		}
	}
}

// motorAliases are other names of the trade for the fans.
var motorAliases = map[string]string{
	"evaporator-fan": "evap-fan", "freezer-fan": "evap-fan", "condenser-fan": "cond-fan", "outdoor-fan": "cond-fan", "outside-fan": "cond-fan", "od-fan": "cond-fan",
}

// motorName is a fan's name as the calls know it.
func motorName(name string) string {
	bare := strings.TrimSuffix(strings.ToLower(name), "-motor")
	if known, ok := motorAliases[bare]; ok {
		return known
	}
	if bare == "evap-fan" || bare == "cond-fan" {
		return bare
	}
	return name
}

// isMotor tells a part with pins of its own.
func isMotor(name string) bool {
	name = strings.ToLower(name)
	if i := strings.LastIndex(name, "-"); i > 0 && twoWordMotor(name[:i], name[i+1:]) {
		return true
	}
	return among(motors, name)
}

// unknownPart answers a reading of a part that has no judge.
func unknownPart(r *reading) string {
	if isMotor(r.a) {
		return r.a + " has pins: on " + r.a + ", then ohm 1 2 " + strings.TrimSuffix(r.shown(), " Ω") + " reads one pair of them."
	}
	if end := r.a[strings.LastIndexByte(r.a, '-')+1:]; among([]string{"winding", "leads", "stator"}, end) {
		return r.a + " is read between its two pins, as they are marked or numbered: ohm 1 2 " + strings.TrimSuffix(r.shown(), " Ω") + "."
	}
	text := r.a + " is none of the parts that are judged here"
	if n := nearestPart(r.a); n != "" {
		text += "; perhaps: " + n
	}
	return text + "; help parts lists them. Two points are parted by a space: ohm A B 3.4."
}

// names are a part's names, with those that the trade calls it too.
func (p *place) names() []string {
	names := slices.Clone(p.words)
	for _, alias := range partNamed() {
		if known, ok := partAliases[alias]; ok && among(p.words, known) {
			names = append(names, alias)
		}
	}
	return names
}

// judgeCoil judges the coil of a solenoid or valve.
func judgeCoil(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	v := c.smallCoil(name, rs, "")
	if latest(rs).over && said.Has(name, []string{"liquid", "pump-down", "pumpdown"}) {
		v.Fact = []string{"liquid-valve-shut"}
	}
	return v
}

func (c *Call) smallCoil(name string, rs []*reading, facts string) verdict.Verdict {
	in := judge.CoilIn{Name: name, Ohms: c.value(latest(rs)), Facts: facts}
	in.Work = strings.Contains(name, "coil") && said.Has(c.last("unit")+name, []string{"induction", "work-coil"})
	if p, ok := c.plateAt("", "ohms", name); ok && strings.EqualFold(p.name, name) {
		in.Marked, _ = p.q.In("ohm")
		in.Tolerance = p.tol
	}
	return judge.SmallCoil(in)
}

// judgeTacho judges the tachogenerator of a motor, which is a small coil.
func judgeTacho(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	return c.smallCoil(name, rs, "tacho")
}

func isIgniter(name string) bool { return partOf(name) == partOf("igniter") }

func judgeIgniter(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	return judge.Igniter(strings.Trim(strings.TrimPrefix(name, "igniter"), "-"), c.value(latest(rs)))
}
