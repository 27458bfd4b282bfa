package said

import (
	"regexp"
	"sync"
)

// wiredIn tells an appliance that has no outlet which another one fits.
var wiredIn = sync.OnceValues(func() (is, not *regexp.Regexp) {
	return regexp.MustCompile(`(?i)central a|rooftop|outdoor unit|\b(oven|range|cooker|hob|cooktop|stove|water heater|elec\w* dryer|furnace|boiler)\b`),
		regexp.MustCompile(`(?i)\b(gas|microwave|toaster|portable)\b`)
})

// fittedIn tells what else is wired in, without a plug (common practice).
var fittedIn = pattern{expr: `(?i)walk.?in|roof.?top|packaged|` + phases3 + `|central (air|ac|a/c)|air handler|condensing unit|hard.?wired|range hood|(bath\w*|ceiling|attic|kitchen|wall) (exhaust |extract\w* )?fan|split|exhaust hood`}

// Plugless reports whether it has an earth terminal, and no plug with an earth pin.
//
//go:noinline
func (a *Appliance) Plugless() bool {
	return a.Wired || a.Furnace || a.HeatPump && !Has(a.Unit, []string{"window", "portable"}) || a.ThreePhases || fittedIn.get().MatchString(a.Unit)
}

// hasNoOutlet tells such an appliance by its name and the complaint's words.
func hasNoOutlet(text string) bool {
	is, not := wiredIn()
	return is.MatchString(text) && !not.MatchString(text)
}

// withoutCompressor tells an appliance that has none by what it is called.
var withoutCompressor = sync.OnceValues(func() (anywhere, unit *regexp.Regexp) {
	return regexp.MustCompile(`(?i)\b(oven|range|dryer|drier|washer|washing|dishwasher|cooker|hob|cooktop|stove|heater|microwave|pump|blower|dispos(al|er)|vacuum|mixer|blender|toaster|kettle|grill|furnace|boiler|fireplace)\b`),
		regexp.MustCompile(`(?i)\b(fan|hood|fryer|iron|compactor|ventilator|conveyor|hoist|lathe|(electric|three.?phase|3.?phase) motor)\b`)
})

// hasNoCompressor tells such an appliance by its name, else by the complaint's
// words.
func hasNoCompressor(unit, fault string) bool {
	anywhere, named := withoutCompressor()
	text := unit
	if unit == "" {
		text = fault
	}
	return isKind(absorbers, text) || isKind(peltiers, text) || (anywhere.MatchString(text) || named.MatchString(unit)) && !cools.get().MatchString(text) && !heatPumps.get().MatchString(text)
}

// heatPumps tells an appliance that heats or dries by a sealed system.
var heatPumps = pattern{expr: `(?i)` + pumps}

// cools tells an appliance that has a compressor by the words of a complaint
// that speak of a heater or fan in it too.
var cools = pattern{expr: `(?i)fridge|refrig|freez|cool|\bice|compressor|defrost`}

// still tells what heats without a fan or a pump that its heat depends on.
var still = pattern{expr: `\b(water heater|hob|cooktop|kettle|iron|toaster|fryer)\b`}

// element tells one of several heaters by what a complaint calls it.
var element = pattern{expr: `\b(bake|broil|grill|ring|burner|zone|hotplate|element|cooktop|hob)`}

// elements tells what has several heaters on one supply.
var elements = pattern{expr: `\b(oven|range( [^h]|,|$)|cooker|hob|cooktop|stove)\b`}

// inOneCase tells an air conditioner with one fan motor for both coils, twoFans
// one of which the condenser has its own (common practice).
var (
	inOneCase = Lazily(`\bwindow|through.?(?:the.?)?wall|portable|\b(?:room|wall) (?:air|ac|a/c|unit)|\bptac`)
	twoFans   = Lazily(`split|\bcentral|outdoor|outside unit|condens(?:er|ing) unit|rooftop|packaged?\b|two fan`)
)

var heatPumpDryer = pattern{expr: `heat.?pump.*(dryer|drier|tumbl)`}

// tanks tells what heats a tank of water, immersed what heats water at all.
var (
	tanks    = Lazily(`\b(water heater|immersion|urn|geyser|calorifier)s?\b`)
	immersed = Lazily(`\b(water heater|immersion|urn|geyser|calorifier|kettle|boiler|(dish)?washer|(dish)?washing machine)s?\b`)
)

// kinds tell the kinds of appliance from each other, a group for each.
var kinds = pattern{expr: `(?i)(dish.?wash)|((?:^|[^h][ /-])wash(?:er|ing)|laundry)|(` + dryers + `)|(fridge|refrig|freez|cooler|chiller)|(dehumid)|(` + airUnits +
	`)|(\b(?:oven|cooker|cooktop|hob|stove)|\brange(?: [^h]|,|$))|(microwave)|(water heater)|(furnace|boiler)|(\bice ?m)`}

// Kinds is the set of the kinds of appliance that words name, a bit for each.
func Kinds(words string) (set int) {
	for _, at := range kinds.get().FindAllStringSubmatchIndex(words[:min(len(words), MostBytes)], -1) {
		for i := 2; i < len(at); i += 2 {
			if at[i] >= 0 {
				set |= 1 << i
			}
		}
	}
	return set
}
