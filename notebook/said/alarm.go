package said

import "ohmcall/calc/caution"

// alarm is a danger that words speak of, with the code of its caution.
type alarm struct {
	words []string
	code  string
}

var alarms = []alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live case", "live cabinet"}, caution.Shock},
	{[]string{"sparks", "sparked", "sparking", "arcing", "arced", "smoke", "smoking", "burning smell", "smell of burning", "burnt smell", "smells burnt", "smells of burning", "flames", "caught fire"}, caution.Smoke},
	{[]string{"gas smell", "smell of gas", "smells of gas", "smells gas", "smelled gas", "smell gas"}, caution.GasSmell},
}

// Alarms gives the codes of the cautions that a text calls for.
func Alarms(text string) []string {
	var out []string
	for _, a := range alarms {
		for _, w := range a.words {
			if Has(text, []string{w}) && !Has(text, []string{"no " + w}) {
				out = append(out, a.code)
			}
		}
	}
	return out
}

// MadeSafe reports whether words begin with how a unit is made safe.
func MadeSafe(text string) bool { return madeSafe().MatchString(text) && !NotSafe(text) }

var madeSafe = Lazily(`(?i)^(it |unit |power |plug )?(is |was )?(un ?plugged|isolated|locked (out|off)|tagged out|disconnected( it| the unit| power|$|,)|discharged|shut ?off|(switched|turned) off|killed (the )?power|pulled (the )?(plug|disconnect)|power (is )?off|plug (is )?(out|pulled))\b`)

// NotSafe reports whether words are no statement that a unit was made safe.
func NotSafe(text string) bool { return notSafe().MatchString(text) }

var notSafe = Lazily(`(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`)

// Decides reports whether a text is of what the client wants to be done.
func Decides(text string) bool { return decides().MatchString(text[:min(len(text), LongClause)]) }

var decides = Lazily(`(?i)\b(client|customer|owner|tenant|landlord)\b.{0,40}\b(declin|refus|agree|accept|approv|decid|want|chose|choos|prefer|goes|go ahead|buy|bought|will)|^declin`)
