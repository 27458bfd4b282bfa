package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// appliance is what the words for the unit and its complaint tell of it.
//
//go:noinline
func (c *Call) appliance() *said.Appliance {
	if at := [2]int{len(c.fields), len(c.struck)}; c.is == nil || c.isAt != at {
		c.isAt = at
		if unit, fault := c.last("unit"), c.last("fault"); c.is == nil || unit != c.is.Unit || fault != c.is.Fault {
			c.spend(16_000)
			c.is = said.ApplianceOf(unit, fault)
		}
	}
	return c.is
}

// highVolts are the parts of the high-voltage side of a microwave oven.
var highVolts = []string{"secondary", "primary", "magnetron", "filament", "transformer", "diode", "doubler", "hv", "high-voltage"}

// ofHighVolts tells a reading on that side, of which nothing is judged here.
func (c *Call) ofHighVolts(r *reading) bool {
	return c.appliance().HighVolts && slices.ContainsFunc(highVolts, func(w string) bool {
		return strings.HasPrefix(strings.ToLower(r.a), w) || strings.HasPrefix(strings.ToLower(r.b), w)
	}) && partOf(r.a) != partOf("switch") // its interlocks are called primary and secondary too
}

// complaint is the code of the complaint weighed.
func (c *Call) complaint() string {
	code := c.appliance().Complaint()
	if fault := c.last("fault"); fault != "" && c.onThreePhases() {
		return said.OnThree(code, fault)
	}
	return code
}

// itsFan is the fan of an appliance with one by the name that findings know.
func (c *Call) itsFan(name string) string {
	switch {
	case !strings.EqualFold(name, "fan"):
	case c.fanOutside():
		return "cond-fan"
	case c.complaint() == said.ACWarm, c.complaint() == said.NoHeatPump:
		return "blower"
	case c.appliance().OneFan:
		return "cond-fan"
	}
	return name
}

// fanOutside reports whether the fan of an air conditioner that a call is about is that of
// its condenser: it was seen to stand, or the unit is named by its place outside, and the
// other was not.
func (c *Call) fanOutside() bool {
	a := c.appliance()
	return a.Air && !a.FanShared && len(c.seenAt["blower-stopped"]) == 0 && (len(c.seenAt["cond-fan-stopped"]) > 0 ||
		said.Has(a.Unit, []string{"outdoor", "condensing unit"}) && !said.Has(a.Unit, []string{"indoor", "handler", "packag"}))
}

// airCodes are the facts of an air conditioner for those of a machine with two
// fans and frost.
var airCodes = map[string]string{"cond-fan-runs": "blower-runs", "evap-fan-runs": "blower-runs", "cond-fan-stopped": "blower-stopped",
	"evap-fan-stopped": "blower-stopped", "frost-heavy": "coil-iced", "frost-partial": "coil-partial"}

// warmRoom is from which temperature of the room, in °C, a dehumidifier works that is not
// made for colder ones: 65 °F (common practice).
const warmRoom = 18.3

// drainPump is the machine of a call about what does not drain.
const drainPump = "pump"

// plateAtHand is whose plate a value is taken for: the appliance's plate says
// nothing of its pump but what only a pump has.
func (c *Call) plateAtHand(key string) string {
	of := c.machineAtHand()
	if (of == drainPump || of == itsMotor) && !c.putAtHand() && !among([]string{"leads", "ohms", "windings"}, key) {
		return defaultMachine
	}
	return of
}

// kindSaid gives the last entry before another that says of which kind the
// appliance is, 0 when none does.
func (c *Call) kindSaid(before int) int {
	for i := len(c.fields) - 1; i >= 0; i-- {
		c.spend(1)
		if f := c.fields[i]; (f.key == "unit" || f.key == "fault") && f.entry < before && c.alive(f.entry) {
			return f.entry
		}
	}
	return 0
}

// coilBelow is how far below the room a coil that works is at least, in kelvin
// (common practice).
const coilBelow = 5

var (
	proofDrains = proofWanted{"that it drains (saw drains)", seen("drains")}
	proofPump   = proofWanted{"running amps (amp pump … run)", running}
	proofAir    = proofWanted{"the air split, ten minutes after the start (temp return …, supply …)", airSettled}
	proofRise   = proofWanted{"the air rise, ten minutes after the start and not while it defrosts (temp return …, supply …)", airSettled}
	proofCoil   = proofWanted{"that it dries: a coil well below the room (temp coil …, temp room …), or water in the bucket (saw dries)",
		func(c *Call, since int) shown {
			coil, room := c.lastTemp("coil", since), c.lastTemp("room", since)
			if s := seen("dries")(c, since); s.held || coil == nil || room == nil {
				return s
			}
			return shown{held: c.value(coil).Hi+coilBelow < c.value(room).Lo,
				text: coil.shown() + " in a room of " + room.shown() + " (entries " + itoa(coil.entry) + ", " + itoa(room.entry) + ")"}
		}}
)

// drumWarm is what the air of a heat-pump dryer reaches that no room has, in °C
// (common practice).
const drumWarm = 40

var proofDrum = proofWanted{"that it dries (saw dries), or warm air in the drum (temp dryer …)", func(c *Call, since int) shown {
	air := c.lastTemp("dryer", since)
	if s := seen("dries")(c, since); s.held || air == nil {
		return s
	}
	return shown{held: c.value(air).Lo >= drumWarm, text: air.shown() + " (entry " + itoa(air.entry) + ")"}
}}

// fanWords are the words of a finding with the one fan of an appliance under the
// name that the findings know, and with what does not leak where only water can.
func (c *Call) fanWords(text string) string {
	a, name := c.appliance(), "cond-fan"
	low := strings.ToLower(text)
	if leaks := strings.Contains(low, "no ") && strings.Contains(low, "leak"); leaks && c.openedAt(tightness[1].of) > 0 {
		text = bareLeaks().ReplaceAllString(text, "${1}no leak found$2")
	} else if leaks && (among([]string{"leaks-ices", "leaks-water", "leaks-tank", "leaks-disposer", "leaks-condensate", "ac-drips"}, c.complaint()) || a.Unit != "" && a.Unsealed && !a.Gas) {
		text = bareLeaks().ReplaceAllString(text, "${1}water line dry$2")
	}
	if strings.Contains(low, "float ") && among([]string{"overfills", said.NoDrain}, c.complaint()) {
		text = bareFloat().ReplaceAllString(text, "${1} down$2") // up, it would not fill, or it would pump
	}
	if of := c.complaint() == said.NoDrain; (of || said.Has(a.Unit, []string{"washer"}) && !said.Has(a.Unit, []string{"dish"})) && said.Has(low, []string{"water", "pit", "basin", "crock", "tub"}) {
		text = notOut().ReplaceAllString(text, "does not drain")
		if of {
			text = pitEmpty().ReplaceAllString(text, "${1}drains")
		}
	}
	text = said.KitTried(text)
	if !said.Has(low, []string{"fan ", "blower "}) || !bareFan().MatchString(text) {
		return text
	}
	switch fans, _ := c.fansWorkedOn(); {
	case a.OneFan, c.fanOutside():
	case a.Fan() && said.Has(low, []string{"fan run", "blower run", "fan turns on"}):
		name, text = "motor", strings.Replace(text, " on all", ", all", 1) // it has no other
	case a.Air:
		name = "blower"
	case len(fans) == 1: // the one that was mended
		name = fans[0].name
	default:
		return text
	}
	return bareFan().ReplaceAllString(text, "${1}"+name+" ")
}

var (
	bareFan   = said.Lazily(`(?i)(^|, *)(?:the )?(?:fan|blower) `)
	bareFloat = said.Lazily(`(?i)(\bfloat (?:switch )?stuck)($| *[,;])`)
	notOut    = said.Lazily(`(?i)\bno water (?:is |gets? )?(?:mov(?:es|ing)|(?:com|go|gett?)(?:es|ing|s)? out|leav(?:es|ing)|pumped)\b`)
	pitEmpty  = said.Lazily(`(?i)(^|, *)(?:the )?(?:pump )?(?:pumps(?: out| down)?|empties|clears)(?: the| its)? (?:sump |whole )?(?:pit|basin|crock|tub|water)(?: (?:all|right|fully|down|dry|empty|out))*(?: (?:and|then) (?:stops|shuts off|turns off|cuts off|goes off)$)?\b`)
	bareLeaks = said.Lazily(`(?i)(^|, *)no (?:more )?leaks?($|[ ,])`)
)

// whichFan is what a finding about a fan would be of each of the two, nil when it is
// about none.
func whichFan(text string) []string {
	evap := bareFan().ReplaceAllString(text, "${1}evap-fan ")
	if evap == text || len(cause.FindFindings(evap)) == 0 {
		return nil
	}
	return []string{evap, strings.Replace(evap, "evap-fan", "cond-fan", 1)}
}

// lastTemp is the last temperature of a place after an entry, nil when there is
// none.
func (c *Call) lastTemp(place string, since int) *reading {
	return c.lastAfter(since, func(r *reading) bool {
		return r.quality.word == "temp" && !r.over && strings.HasPrefix(strings.ToLower(r.a), place)
	})
}

// coldForIce is what an ice maker has to be at, in °C, to let go of its ice: 15 °F
// (common practice).
const coldForIce = -9.4

// iceCold adds what the last temperature of the freezer says of an ice maker in it.
func (c *Call) iceCold(before int, add func(string, int)) {
	temps := c.bySubjectKind["temp"]
	for i := len(temps) - 1; i >= max(0, len(temps)-mostSearched) && c.complaint() == "no-ice"; i-- {
		c.spend(4)
		r := temps[i]
		if r.entry >= before || r.over || !c.alive(r.entry) || c.spaceOf(r.a) != judge.Freezer {
			continue
		}
		switch v := c.value(r); {
		case v.Hi <= coldForIce:
			add("ice-cold-enough", r.entry)
		case v.Lo > coldForIce:
			add("ice-too-warm", r.entry)
		}
		return
	}
}

// freezerWorks is from what a freezer on is cold enough, in °C, for the cold to be
// made: 5 °F (common practice).
const freezerWorks = -15

// roomMost is the warmest room that any cabinet is made for, in °C, by the tropical
// class (IEC 62552, from memory).
const roomMost = 43

// lastIs is the last entry of temperatures before another, 0 when there is none or it
// is not as is asked.
func (c *Call) lastIs(rs []*reading, before int, is func(measure.Value) bool) int {
	for i := len(rs) - 1; i >= 0; i-- {
		if c.spend(2); rs[i].entry < before && c.alive(rs[i].entry) {
			if !rs[i].over && is(c.value(rs[i])) {
				return rs[i].entry
			}
			break
		}
	}
	return 0
}

func freezes(v measure.Value) bool { return v.Hi <= freezerWorks }
func tooHot(v measure.Value) bool  { return v.Lo > roomMost }

// dries gives what proves an appliance that takes water out of air or clothes.
func (c *Call) dries() (proofWanted, bool) {
	switch {
	case c.appliance().HeatPumpDryer:
		return proofDrum, true
	case c.appliance().OneFan:
		return proofCoil, true
	}
	return proofWanted{}, false
}

// fixes are the repairs of causes that are others in appliances of a complaint
// (common practice).
var fixes = []struct{ cause, complaint, text string }{
	{"airflow-blocked", said.NoDry, "clean the filters, the fins of evaporator and condenser (heat exchanger), the fan and the drain; then see that it dries"},
	{"airflow-blocked", said.ACWarm, "clean the filter, the fins of both coils and the fans; then read the air split"},
}

// mending is the step that mends a cause in this appliance.
func (c *Call) mending(k *cause.Cause) string {
	for _, f := range fixes {
		if f.cause == k.Code && f.complaint == c.complaint() {
			return "mend: " + f.text
		}
	}
	if k.Code == "supply-weak" && c.split() {
		return "mend: have an electrician see to breaker, outlet, wiring and service; where the service is of 208 V, its maker's own heater for that"
	}
	if k.Code == "winding-open" && c.openForCertain() {
		fix, _, _ := strings.Cut(k.Fix, ";")
		return "mend: " + fix
	}
	return "mend: " + k.Fix
}

// openForCertain reports whether what reads open of the machine cannot be a protector
// that closes again: by where it is open, or because it was read cold after a rest.
func (c *Call) openForCertain() bool {
	m := c.machines[c.mainMachine()]
	if m == nil || m.result.State != winding.OpenWinding {
		return false
	}
	return len(m.result.Pins) > 2 || !slices.ContainsFunc(c.pairsOf(m.name, math.MaxInt), func(r *reading) bool { return r.over && r.b != caseName && !(readsCold(r) && c.rested(r.entry)) })
}
