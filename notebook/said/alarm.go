package said

import (
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	words   []string
	Caution string // the code of its caution
	Finding string // the code of what was found by these words
}

// alarms are the dangers by beginnings of words that are none of the wordings of
// their findings: those are heard as well.
var alarms = []Alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live case", "live cabinet"}, caution.Shock, "shock"},
	{[]string{"sparks", "sparked", "arced", "smok", "smells of burning", "flames", "caught fire"}, caution.Smoke, "smoke"},
	{nil, caution.GasSmell, "gas-smell"},
	{nil, caution.GasSmell, "gas-leak"},
	{nil, caution.Monoxide, "co"},
}

// wordings are those of the findings of alarms, each with a space on both sides.
var wordings = sync.OnceValue(func() [][]string {
	out := make([][]string, len(alarms))
	for i, a := range alarms {
		f, _ := cause.Lookup(a.Finding)
		for _, w := range f.Words {
			out[i] = append(out[i], " "+strings.Join(cause.Fold(w), " ")+" ")
		}
	}
	return out
})

// Alarms gives the dangers that a text speaks of.
func Alarms(text string) []Alarm {
	var out []Alarm
	text = " " + strings.Join(cause.Fold(text), " ") + " "
	for i, a := range alarms {
		for _, w := range append(slices.Clone(a.words), wordings()[i]...) {
			if strings.Contains(text, w) && !strings.Contains(text, " no "+strings.TrimSpace(w)) {
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
