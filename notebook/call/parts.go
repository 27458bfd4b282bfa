package call

import (
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/source"
	"ohmcall/calc/verdict"
)

// partAliases are other names of the trade for parts in the table.
var partAliases = map[string]string{
	"hi-limit": "limit", "high-limit": "limit", "hilimit": "limit", "safety-thermostat": "limit",
	"rollout": "limit", "roll-out": "limit", "rollout-switch": "limit", "roll-out-switch": "limit", "rollout-limit": "limit", "flame-rollout": "limit", "flame-rollout-switch": "limit",
	"thermal-cutoff": "tco", "thermal-cut-off": "tco", "cutoff": "tco",
	"thermal-cutout": "tco", "thermal-cut-out": "tco", "cutout": "tco", "cut-out": "tco", "thermal-link": "tco",
	"cycling-thermostat": "thermostat", "cold-control": "thermostat", "tstat": "thermostat", "operating-thermostat": "thermostat",
	"defrost-stat": "defrost-thermostat", "defrost-bimetal": "defrost-thermostat",
	"ol": "overload", "olp": "overload",
	"start-relay": "relay", "current-relay": "relay", "door-lock": "switch", "lid-switch": "switch", "door-latch": "switch", "lid-lock": "switch",
	"element-bake": "bake", "element-broil": "broil", "oven-sensor": "sensor", "temp-sensor": "sensor", "oven-probe": "sensor",
	"power-cord": "cord", "radiant-sensor": "flame-sensor", "selector": "switch", "selector-switch": "switch", "lid": "switch",
	"water-valve": "valve", "inlet-valve": "valve", "gas-valve": "valve",
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

// motors are parts with pins of their own, read as a machine.
var motors = []string{"pump", "drain-pump", "timer", "motor", "fan", "cond-fan", "evap-fan", "blower", "compressor", "comp"}

// motorAliases are other names of the trade for the fans.
var motorAliases = map[string]string{
	"evaporator-fan": "evap-fan", "freezer-fan": "evap-fan", "condenser-fan": "cond-fan",
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
	return c.smallCoil(name, rs, "")
}

func (c *Call) smallCoil(name string, rs []*reading, facts string) verdict.Verdict {
	in := judge.CoilIn{Name: name, Ohms: c.value(latest(rs)), Facts: facts}
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

func isIgniter(name string) bool { return strings.HasPrefix(strings.ToLower(name), "igniter") }

func judgeIgniter(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	return judge.Igniter(strings.Trim(strings.TrimPrefix(name, "igniter"), "-"), c.value(latest(rs)))
}
