package call

import (
	"cmp"
	"regexp"
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// Complaints that the kind of appliance tells from others of the same words.
const (
	noDrain = "no-drain"
	noDry   = "no-dry"
	acWarm  = "ac-warm"
)

// airConditioner reports whether the appliance is one. It has one fan motor.
func (c *Call) airConditioner() bool {
	c.complaint()
	return c.matched.air
}

// itsFan is the fan of an appliance with one by the name that findings know.
func (c *Call) itsFan(name string) string {
	switch {
	case !strings.EqualFold(name, "fan"):
	case c.complaint() == acWarm:
		return "blower"
	case c.oneFan():
		return "cond-fan"
	}
	return name
}

// airCodes are the facts of an air conditioner for those of a machine with two
// fans and frost.
var airCodes = map[string]string{"cond-fan-runs": "blower-runs", "evap-fan-runs": "blower-runs", "cond-fan-stopped": "blower-stopped",
	"evap-fan-stopped": "blower-stopped", "frost-heavy": "coil-iced", "frost-partial": "coil-partial"}

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
	unit, words string // patterns; "" fits all
	complaint   string
	instead     []string // "" is of no complaint at all
}

// Patterns of kinds of appliance.
const (
	washers  = `\b(dish)?wash(er|ing)`
	dryers   = `dryer|drier|tumbl`
	laundry  = `\bwash(er|ing)|laundry|` + dryers
	airUnits = `air.?con|\b(ac|a/c)\b|window unit|mini.?split`
	gasUnits = `\bgas\b`
	hotter   = `too hot|overheat|burns |scorch`
	phases3  = `\b(three|3).?ph(ase)?\b`
)

var appliances = []byAppliance{
	{phases3, "", threePhase, singlePhase},
	{washers, `\bpump|\bdrain|water (stays|stands|left)|standing water`, noDrain, []string{"", motorDead, "hums-trips", "no-start"}},
	{`dehumidif|heat.?pump.*(dryer|drier|tumbl)`, `\bdr(y|ies)|water|bucket|damp|wet\b|forever|too long|heat|\bic(e|ing)|frost`, noDry, []string{"", "no-heat", "no-cool", "leaks-ices"}},
	{airUnits, `leak|drip|puddle|water`, "ac-drips", []string{"", "leaks-ices"}},
	{airUnits, `warm|cool|cold|\bhot|hum|click|cuts|trip|short|frost|\bice|frozen|freez|compressor|runs|stops`, acWarm,
		[]string{"", "no-cool", "hums-trips", "no-start", "runs-always", "too-cold", "leaks-ices"}},
	{laundry, `nois|\bbang|squeal|squeak|grind|rattl|thump|\bloud|shak|vibrat|walks`, "noisy", []string{""}},
	{`\bwash(er|ing)|laundry`, `spin|agitat|drum|\bturn (?:the )?`, "no-spin", []string{"", motorDead, "hums-trips"}},
	{dryers, `(drum|tumbl\w*) .*(not|n.?t|never) |(not|n.?t|no|never|stopped) (tumbl|turn|spin)`, "no-tumble", []string{"", motorDead, "no-start", "no-heat", "hums-trips"}},
	{washers, `over.?fill|fills (up|over)|(keeps|not stop|n.?t stop|never stops) fill|too much water|flood`, "overfills", []string{"", "leaks-ices", "runs-always"}},
	{washers, `(not|n.?t|never|slow\w*|long|stopped) .{0,12}\bfill|\bfills? (very |too )?slow|no water\b|(not|n.?t) (get|take)\w* (any )?water|not enough water|low water|trickl`,
		"no-fill", []string{"", "no-start", motorDead, "no-heat", "leaks-ices"}},
	{washers + `|` + dryers, "", "wont-run", []string{"no-start"}},
	{`\b(oven|cooker|cooktop|hob|stove|heater)\b|\brange( [^h]|,|$)`, hotter + `|(not|n.?t) (shut|turn|switch) off|stays on|runs? (all|const)|always|never (stops|shuts)`, "too-hot", []string{"", "runs-always"}},
	{dryers, hotter, "too-hot", []string{""}},
	{washers + `|` + dryers, "", "never-ends", []string{"runs-always"}},
	{`dryer|drier`, `too long|forever|for ever|(two|three|several) (cycles|times|runs)|still (damp|wet)|slow`, "slow-dry", []string{"", "no-heat"}},
	{gasUnits, "", "gas-no-heat", []string{"no-heat"}},
	{gasUnits, `then (goes )?(cold|cool|off)|flame|ignit|stops heat`, "gas-no-heat", []string{""}},
}

type unitAndWords struct{ unit, words *regexp.Regexp }

// appliancePatterns are the patterns of unit and words of each row, made once.
var appliancePatterns = sync.OnceValue(func() []unitAndWords {
	out := make([]unitAndWords, len(appliances))
	for i, a := range appliances {
		out[i] = unitAndWords{regexp.MustCompile(`(?i)` + a.unit), regexp.MustCompile(`(?i)` + cmp.Or(a.words, `.+`))}
	}
	return out
})

// electricUnits is no kind of a row.
const electricUnits = `electric`

// isKind tells a kind of appliance in a text by its pattern.
func isKind(pattern, text string) bool {
	if i := slices.IndexFunc(appliances, func(a byAppliance) bool { return a.unit == pattern }); i >= 0 {
		return appliancePatterns()[i].unit.MatchString(text)
	}
	return strings.Contains(strings.ToLower(text), pattern)
}

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
	for i, a := range appliances {
		is := appliancePatterns()[i]
		phrase := is.words.FindString(troubled(words))
		if phrase == "" || !is.unit.MatchString(unit) || !among(a.instead, first) {
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
	return said.Has(c.last("unit")+" "+c.last("fault"), []string{"microwave"})
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
var fine = said.Lazily(`(?i)\b(ok|okay|fine|good|well|works?|working|normal|all right)\b`)

var denied = said.Lazily(`(?i)\b(not|no|never|cannot|stopped|won.?t|doesn.?t|isn.?t|don.?t)\b`)

var clauses = said.Lazily(`[,;:]| but | and | while `)

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
	proofAir    = proofWanted{"the air split, ten minutes after the start (temp return …, supply …)", whole((*Call).ofAir)}
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
	name := "cond-fan"
	if c.airConditioner() {
		name = "blower"
	} else if !c.oneFan() {
		return text
	}
	return bareFan().ReplaceAllString(text, "${1}"+name+" ")
}

var bareFan = said.Lazily(`(?i)(^|, *)(?:the )?fan `)

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

var heatPumpDryer = said.Lazily(`heat.?pump.*(dryer|drier|tumbl)`)
