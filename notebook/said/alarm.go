package said

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	quick   []string // without one of which the patterns are not looked at
	is, not func() *regexp.Regexp
	Caution string // the code of its caution
	Finding string // the code of what was found by these words
}

// gone tells a clause of a danger that is no more, or never was.
var gone = Lazily(`\b(mended|repaired|fixed|cured|gone|cleared|tested (good|tight|ok)|no longer|no more|any ?more|not|never|without|nothing|free of)\b|n't\b`)

const (
	bareMetal = `(metal|case|cabinet|body|door|frame|chassis|housing|panel)`
	mainsPart = `(plug|outlet|socket|receptacle|cord|flex|terminal block)`
	burntBy   = `(melt\w*|burn\w*|scorch\w*|charred|on fire)`
)

var alarms = []Alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live ", " live", "bit ", "bites"},
		Lazily(`\bshock(s|ed|ing)?\b|tingl|\bzapped\b|\bbitten by\b|\b(got bit|bit (me|her|him|us)|bites (me|her|him|you))\b|\b` + bareMetal + ` (is |was )?live\b|\blive ` + bareMetal + `\b`),
		Lazily(`\bno (shock|tingl)|shocked at|shock (sticker|label|sign|hazard)|tingling noise|shock absorb|absorber|suspension|(gas|tub|front|rear|new|worn|broken) shocks?\b|\bshocks? (are |is )?(worn|broken|bad|weak|leak\w*|gone|off)|\b(damper|spring)`), caution.Shock, "shock"},
	{[]string{"spark", "arc", "smok", "burn", "scorch", "melt", "charred", "fire", "flames", "smoulder", "smolder"},
		Lazily(`\bsmou?lder\w*|\bsmell\w* (\w+ ){0,3}burn(t|ing)\b|\bfire in\b|\bwire nut (is )?(melted|burnt)|\b(sparks|sparked|sparking|arcing|arced|smok(e|es|ed|ing))\b|\bburn(ing|t) smell\b|\bsmells? (of )?burn(t|ing)\b|\b(in|out|and) flames\b|\bflames (from|behind|inside|came|shot)|\b(caught|on|lint|small|a) fire\b|\bscorch(ed)?\b|\bburn marks?\b|\b` + mainsPart + ` (is |was |has |have )?` + burntBy + `|\b(melted|burnt|burned|scorched|charred) (the )?` + mainsPart),
		Lazily(`\bno (spark|arc|smok|burn|smell|fire)|\bspark\w* (at|from|of|to) (the )?(igni|electrode|candle|burner|brush)|(igniter|ignitor|electrode|brush\w*|burner) sparks?|smoke (detector|alarm)|(customer|client|owner|tenant|he|she|they) smokes?\b|smoked (salmon|fish|meat|ham)|burn\w* smell none`), caution.Smoke, "smoke"},
	{[]string{"gas", "odor", "odour", "rotten egg", "propane", "lpg"},
		Lazily(`\bgas smell|\brotten eggs?\b|\b(propane|lpg|natural gas) (smell|odou?r)|\bsme(ll|lt)(s|ed|ing)?( of| like)? (natural )?(gas|propane|lpg)\b|\bgas odou?r|\bodou?r of gas`), Lazily(`\bno (gas|smell|odou?r)|flue gas|sewer gas|last year|years? ago|before it lights`), caution.GasSmell, "gas-smell"},
	{[]string{"gas", "bubbles", "sniffer"},
		Lazily(`\bgas (is )?leak|\bleak(s|ing)? (of )?gas\b|\bleak at (the )?gas\b|\bbubbles at (the )?(union|gas|cock|fitting|valve)|\bgas sniffer (goes|went) off`), Lazily(`\bno (gas )?(leak|bubbles)|leak test|refrigerant`), caution.GasSmell, "gas-leak"},
	{[]string{"monoxide", "co ", " co", "exchanger", "flue", "chimney", "roll", "soot", "yellow", "lazy", "dizzy", "headache"},
		Lazily(`carbon monoxide|\bdizzy\b|\bheadaches?\b|\bco (alarm|detector)|\bhigh co\b|\bco\b.{0,20}\b[1-9]\d+ ?ppm|\b[1-9]\d+ ?ppm (of )?co\b|(crack|hole|rust|split|perforat|corrod)\w*( right)?( through)?( in)?( the)? heat exchanger|heat exchanger.{0,20}(crack|hole|rust|split|perforat|corrod)` +
			`|\b(flue|chimney)\b.{0,20}\b(block|disconnect|off\b|open\b|loose|leak|split|rust|broken|down\b)|(block|disconnect)\w* (flue|chimney)|\brolls? ?out\b|\brollout\b|\bsooty?\b|(yellow|lazy) flame|flames? (is |are |burns? |burn )?(yellow|lazy)`),
		Lazily(`\bno (co\b|carbon|soot|crack|roll)|co (detector|alarm) (is |was )?(fitted|tested|silent|in)\b|rollout (switch )?(closed|good|sound|ok)|soot.?free`), caution.Monoxide, "co"},
	{[]string{"unsafe", "not safe", "danger", "tagged", "at risk", "do not use", "not to use", "condemned"},
		Lazily(`^ ?unsafe\b|\b(is|it|unit|machine|appliance|left|as|and|now|found|was) unsafe\b|\bnot safe (to (use|run|operate)|for use)|\bdanger(ous)?\b|\b(unit|machine|appliance|it) (is |was )?condemned\b|\bdo not use (it|the)?\b|\bnot to use (it|the)\b|\bred.?tag\w*|\bat risk\b`),
		Lazily(`unsafe (to move|ladder)|tagged out do not use|no danger|not unsafe|before|until|danger (label|sign)`), caution.Unsafe, "called-unsafe"},
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
	if text = strings.ToLower(text[:min(len(text), MostBytes)]); !Has(text, anyAlarm()) {
		return nil
	}
	for _, clause := range Clauses(cause.Calmed(text)) {
		clause = " " + strings.Join(cause.Fold(clause), " ") + " "
		for i := range alarms {
			if a := &alarms[i]; Has(clause, a.quick) && a.spokenOf(clause, wordings()[i]) && !slices.ContainsFunc(out, a.same) {
				out = append(out, *a)
			}
		}
	}
	return out
}

// spokenOf reports whether a clause speaks of the danger, by its pattern or by a
// wording of its finding, and does not say that it is none or no more.
func (a *Alarm) spokenOf(clause string, wordings []string) bool {
	said := a.is().MatchString(clause)
	for i := 0; i < len(wordings) && !said; i++ {
		said = strings.Contains(clause, wordings[i]) && !strings.Contains(clause, " no"+wordings[i])
	}
	return said && !a.not().MatchString(clause) && (a.Caution == caution.Unsafe || !gone().MatchString(clause))
}

func (a Alarm) same(b Alarm) bool { return a.Finding == b.Finding }

// anyAlarm are the words without one of which no danger is spoken of.
var anyAlarm = sync.OnceValue(func() []string {
	var out []string
	for _, a := range alarms {
		out = append(out, a.quick...)
	}
	return out
})

// MadeSafe reports whether words begin with how a unit is made safe.
func MadeSafe(text string) bool { return madeSafe().MatchString(text) && !NotSafe(text) }

var madeSafe = Lazily(`(?i)^(it |unit |power |plug )?(is |was )?(un ?plugged|isolated|locked (out|off)|tagged out|disconnected( it| the unit| power|$|,)|discharged|shut ?off|(switched|turned) off|killed (the )?power|pulled (the )?(plug|disconnect)|power (is )?off|plug (is )?(out|pulled))\b`)

// NotSafe reports whether words are no statement that a unit was made safe.
func NotSafe(text string) bool { return notSafe().MatchString(text) }

var notSafe = Lazily(`(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`)

// Decides reports whether a text is of what the client wants to be done.
func Decides(text string) bool { return decides().MatchString(text[:min(len(text), LongClause)]) }

var decides = Lazily(`(?i)\b(client|customer|owner|tenant|landlord)\b.{0,40}\b(declin|refus|agree|accept|approv|decid|want|chose|choos|prefer|goes|go ahead|buy|bought|will)|^declin`)
