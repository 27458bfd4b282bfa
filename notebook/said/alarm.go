package said

import (
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	words   []string
	Caution string // the code of its caution
	Finding string // the code of what was found by these words
}

var alarms = []Alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live case", "live cabinet"}, caution.Shock, "shock"},
	{[]string{"sparks", "sparked", "sparking", "arcing", "arced", "smoke", "smoking", "burning smell", "smell of burning", "burnt smell", "smells burnt", "smells of burning", "flames", "caught fire"}, caution.Smoke, "smoke"},
	{[]string{"gas smell", "smell of gas", "smells of gas", "smells gas", "smelled gas", "smell gas", "gas odor", "gas odour", "odor of gas"}, caution.GasSmell, "gas-smell"},
	{[]string{"gas leak", "leaking gas", "leaks gas", "leak at the gas ", "leak at gas "}, caution.GasSmell, "gas-leak"},
	{[]string{"carbon monoxide", " co alarm", " co detector", "heat exchanger cracked", "cracked heat exchanger", "flue blocked", "blocked flue"}, caution.Monoxide, "co"},
}

// Alarms gives the dangers that a text speaks of.
func Alarms(text string) []Alarm {
	var out []Alarm
	text = " " + strings.Join(cause.Fold(text), " ") + " "
	for _, a := range alarms {
		for _, w := range a.words {
			if Has(text, []string{w}) && !Has(text, []string{" no " + strings.TrimSpace(w)}) {
				out = append(out, a)
				break
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
