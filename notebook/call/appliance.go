package call

import (
	"regexp"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// noDrain and noDry are complaints that the kind of appliance tells from others
// of the same words.
const (
	noDrain = "no-drain"
	noDry   = "no-dry"
)

// drainPump is the machine of a call about what does not drain.
const drainPump = "pump"

// plateAtHand is whose plate a value is taken for: the appliance's plate says
// nothing of its pump but what only a pump has.
func (c *Call) plateAtHand(key string) string {
	of := c.machineAtHand()
	if of == drainPump && len(c.atHand) == 0 && !among([]string{"leads", "ohms", "windings"}, key) {
		return defaultMachine
	}
	return of
}

// byAppliance gives the complaint of words that mean another one in an
// appliance of that kind. It takes the place of some complaints only: what the
// words say more plainly stays.
type byAppliance struct {
	unit, words *regexp.Regexp
	complaint   string
	instead     []string // "" is of no complaint at all
}

var appliances = sync.OnceValue(func() []byAppliance {
	return []byAppliance{
		{regexp.MustCompile(`(?i)\b(dish)?wash(er|ing)`), regexp.MustCompile(`(?i)\bpump|\bdrain|water (stays|stands|left)|standing water`), noDrain,
			[]string{"", "motor-dead", "hums-trips", "no-start"}},
		{regexp.MustCompile(`(?i)dehumidif|heat.?pump.*(dryer|drier|tumbl)`), regexp.MustCompile(`(?i)\bdr(y|ies)|water|bucket|damp|wet\b|forever|too long|heat`), noDry,
			[]string{"", "no-heat", "no-cool", "leaks-ices"}},
	}
})

// taken is the complaint that a call's words are taken for in its appliance,
// false when the words alone decide.
func taken(words, unit string, hits []cause.Hit) (cause.Hit, bool) {
	first := ""
	if len(hits) > 0 {
		first = hits[0].Code
	}
	if unit == "" {
		unit = words
	}
	for _, a := range appliances() {
		phrase := a.words.FindString(troubled(words))
		if phrase == "" || !a.unit.MatchString(unit) || !among(a.instead, first) {
			continue
		}
		k, _ := cause.ComplaintBy(a.complaint)
		return cause.Hit{Complaint: k, Phrase: strings.TrimSpace(phrase)}, true
	}
	return cause.Hit{}, false
}

// wiredIn tells an appliance that has no outlet which another one fits.
var wiredIn = sync.OnceValues(func() (is, not *regexp.Regexp) {
	return regexp.MustCompile(`(?i)\b(oven|range|cooker|hob|cooktop|stove|water heater|electric dryer)\b`),
		regexp.MustCompile(`(?i)\b(gas|microwave|toaster|portable)\b`)
})

// highVoltage tells an appliance with thousands of volts inside, which nothing
// here is made to judge.
func (c *Call) highVoltage() bool {
	return speaksOf(c.last("unit")+" "+c.last("fault"), []string{"microwave"})
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

// hasNoOutlet tells such an appliance by its name and the complaint's words.
func hasNoOutlet(unit, fault string) bool {
	is, not := wiredIn()
	text := unit + " " + fault
	return is.MatchString(text) && !not.MatchString(text)
}

// fine tells the part of a complaint that speaks of what works.
var fine = lazily(`(?i)\b(ok|okay|fine|good|well|works?|working|normal|all right)\b`)

var denied = lazily(`(?i)\b(not|no|never|cannot|stopped|won.?t|doesn.?t|isn.?t|don.?t)\b`)

var clauses = lazily(`[,;:]| but | and | while `)

// troubled leaves out of a complaint what it says is all right, so that "fridge
// warm, freezer ok" is about the fridge.
func troubled(text string) string {
	var out []string
	for _, part := range clauses().Split(text, -1) {
		if !fine().MatchString(part) || denied().MatchString(part) {
			out = append(out, part)
		}
	}
	return strings.Join(out, ", ")
}

// coilBelow is how far below the room a coil that works is at least, in kelvin
// (common practice).
const coilBelow = 5

var (
	proofDrains = proofWanted{"that it drains (saw drains)", seen("drains")}
	proofPump   = proofWanted{"running amps (amp pump … run)", running}
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

// oneFan tells an appliance with a single fan for both of its coils, as
// dehumidifiers have (common practice): what is asked of its condenser fan is
// asked of its fan.
func (c *Call) oneFan() bool {
	return strings.Contains(strings.ToLower(c.last("unit")+" "+c.last("fault")), "dehumidif")
}

// fanWords are the words of a finding with the one fan of an appliance under the
// name that the findings know.
func (c *Call) fanWords(text string) string {
	if !c.oneFan() {
		return text
	}
	return bareFan().ReplaceAllString(text, "${1}cond-fan ")
}

var bareFan = lazily(`(?i)(^|, *)(?:the )?fan `)

// lastTemp is the last temperature of a place after an entry, nil when there is
// none.
func (c *Call) lastTemp(place string, since int) *reading {
	return c.lastAfter(since, func(r *reading) bool {
		return r.quality.word == "temp" && !r.over && strings.HasPrefix(strings.ToLower(r.a), place)
	})
}

// dries gives what proves an appliance that takes water out of air or clothes.
func (c *Call) dries() (proofWanted, bool) {
	switch {
	case c.oneFan():
		return proofCoil, true
	case heatPumpDryer().MatchString(strings.ToLower(c.last("unit") + " " + c.last("fault"))):
		return proofDrum, true
	}
	return proofWanted{}, false
}

var heatPumpDryer = lazily(`heat.?pump.*(dryer|drier|tumbl)`)
