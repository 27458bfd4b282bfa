package said

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	quick   []string // without one of which the patterns are not looked at
	is, not pattern
	Finding string // the code of what was found by these words
	absent  bool   // it is itself that something is not there, or not to be
}

// pattern is one that is made when it is first asked for.
type pattern struct {
	expr string
	once sync.Once
	made *regexp.Regexp
}

func (p *pattern) get() *regexp.Regexp {
	p.once.Do(func() { p.made = regexp.MustCompile(p.expr) })
	return p.made
}

// gone tells a clause of a danger that is no more, or never was.
var gone = Lazily(`\b(mended|repaired|fixed|cured|gone|cleared|tested (good|tight|ok)|no longer|no more|any ?more|not|never|without|nothing|free of)\b|n't\b`)

const (
	bareMetal = `(metal|case|cabinet|body|door|frame|chassis|housing|panel)`
	mainsPart = `(plug|outlet|socket|receptacle|cord|flex|terminal block)`
	outlets   = `(outlet|receptacle|wall socket|socket|wall plug)`
	anyUnit   = `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|stove|cooktop|hob|microwave|furnace|heater|boiler|it)`
	burntBy   = `(melt\w*|burn\w*|scorch\w*|charred|on fire)`
)

var alarms = []Alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live ", " live", "bit ", "bites"},
		pattern{expr: `\bshock(s|ed|ing)?\b|tingl|\bzapped\b|\bbitten by\b|\b(got bit|bit (me|her|him|us)|bites (me|her|him|you))\b|\b` + bareMetal + ` (is |was )?live\b|\blive ` + bareMetal + `\b`},
		pattern{expr: `\bno (shock|tingl)|shocked at|shock (sticker|label|sign|hazard)|tingling noise|shock absorb|absorber|suspension|(gas|tub|front|rear|new|worn|broken) shocks?\b|\bshocks? (are |is )?(worn|broken|bad|weak|leak\w*|gone|off)|\b(damper|spring)`}, "shock", false},
	{[]string{"spark", "arc", "smok", "burn", "scorch", "melt", "charred", "fire", "flames", "smoulder", "smolder"},
		pattern{expr: `\bsmou?lder\w*|\bsmell\w* (\w+ ){0,3}burn(t|ing)\b|\bfire in\b|\bwire nut (is )?(melted|burnt)|\b(sparks|sparked|sparking|arcing|arced|smok(e|es|ed|ing))\b|\bburn(ing|t) smell\b|\bsmells? (of )?burn(t|ing)\b|\b(in|out|and) flames\b|\bflames (from|behind|inside|came|shot)|\b(caught|on|lint|small|a) fire\b|\bscorch(ed)?\b|\bburn marks?\b|\b` + mainsPart + ` (is |was |has |have )?` + burntBy + `|\b(melted|burnt|burned|scorched|charred) (the )?` + mainsPart},
		pattern{expr: `\bno (spark|arc|smok|burn|smell|fire)|\bspark\w* (at|from|of|to) (the )?(igni|electrode|candle|burner|brush)|(igniter|ignitor|electrode|brush\w*|burner) sparks?|smoke (detector|alarm)|(customer|client|owner|tenant|he|she|they) smokes?\b|smoked (salmon|fish|meat|ham)|burn\w* smell none`}, "smoke", false},
	{[]string{"gas", "odor", "odour", "rotten egg", "propane", "lpg"},
		pattern{expr: `\bgas smell|\brotten eggs?\b|\b(propane|lpg|natural gas) (smell|odou?r)|\bsme(ll|lt)(s|ed|ing)?( of| like)? (natural )?(gas|propane|lpg)\b|\bgas odou?r|\bodou?r of gas`}, pattern{expr: `\bno (gas|smell|odou?r)|flue gas|sewer gas|last year|years? ago|before it lights`}, "gas-smell", false},
	{[]string{"gas", "bubbles", "sniffer"},
		pattern{expr: `\bgas (is )?leak|\bleak(s|ing)? (of )?gas\b|\bleak at (the )?gas\b|\bbubbles at (the )?(union|gas|cock|fitting|valve)|\bgas sniffer (goes|went) off`}, pattern{expr: `\bno (gas )?(leak|bubbles)|leak test|refrigerant`}, "gas-leak", false},
	{[]string{"monoxide", "co ", " co", "exchanger", "flue", "chimney", "roll", "soot", "yellow", "lazy", "dizzy", "headache"},
		pattern{expr: `carbon monoxide|\bdizzy\b|\bheadaches?\b|\bco (alarm|detector)|\bhigh co\b|\bco\b.{0,20}\b[1-9]\d+ ?ppm|\b[1-9]\d+ ?ppm (of )?co\b|(crack|hole|rust|split|perforat|corrod)\w*( right)?( through)?( in)?( the)? heat exchanger|heat exchanger.{0,20}(crack|hole|rust|split|perforat|corrod)` +
			`|\b(flue|chimney)\b.{0,20}\b(block|disconnect|off\b|open\b|loose|leak|split|rust|broken|down\b)|(block|disconnect)\w* (flue|chimney)|\brolls? ?out\b|\brollout\b|\bsooty?\b|(yellow|lazy) flame|flames? (is |are |burns? |burn )?(yellow|lazy)`},
		pattern{expr: `\bno (co\b|carbon|soot|crack|roll)|co (detector|alarm) (is |was )?(fitted|tested|silent|in)\b|rollout (switch )?(closed|good|sound|ok)|soot.?free`}, "co", false},
	{[]string{"unsafe", "not safe", "danger", "tagged", "at risk", " use", "condemned", "out of service", "not run", "not touch"},
		pattern{expr: `^ ?unsafe\b|\b(is|it|unit|machine|appliance|left|as|and|now|found|was) unsafe\b|\bnot safe (to (use|run|operate)|for use)|\bdanger(ous)?\b|\b(unit|machine|appliance|it) (is |was )?condemned\b|^ ?(left )?condemned\b|\bred.?tag\w*|\bat risk\b` +
			`|\b(do not|don't|must not|not to|never|cannot be|not be|not to be|must not be) (use|used|run|operate|operated|touch|energi[sz]ed?|switched on|turned on)( (it|this|again|anymore|until|before|while|tag|label|sign|sticker|on|and|left|by|the ` + anyUnit + `)\b| $)|\b` + anyUnit + ` (is |was |left |taken |put |tagged )*out of service\b|^ ?(left |taken |tagged |put )*out of service\b`},
		pattern{expr: `unsafe (to move|ladder)|no danger|out of danger|not unsafe|(unsafe|dangerous) before|danger (label|sign)|(food|milk|meat|medicines?|insulin|stock|floor|board|compressor) (is |are )?at risk|at risk of (spoil|thaw|damage|fail|ice|icing|frost)`}, "called-unsafe", true},
	{[]string{"door", "lid"},
		pattern{expr: `\b(runs?|ran|running|heats?|heating|starts?|started|spins?|spun|spinning|tumbles?|turns?|operates?|operating|works|working|cooks|cooking|sprays|(keeps?|kept|goes|carries|stays) (on|going|running|heating|spinning|turning|tumbling))( even| still)? (with|when|while|though) (the |its )?(door|lid) (is |was )?(still )?(open|opened|ajar|up|off)\b|\b(door|lid) (is |was )?open (and|but) (it )?(still )?(runs|heats|spins|starts|keeps)|\b(does|did|will|would)n't stop (with|when) (the |its )?(door|lid)`},
		pattern{expr: `\b(light|lamp|bulb|fan|blower|clock|display)s? (still )?(stays?|runs?|works?|comes?|turns?)|\b(does|did|do|will) not (run|heat|start|spin|turn|operate|work)|n't (run|heat|start|spin|turn|operate|work)|\b(drain|water|pump|drum by hand|hand)\b`}, "runs-open", true},
	{[]string{"microwaves", "radiation", "leakage", "mw"},
		pattern{expr: `\bmicrowaves? (leak\w*|escap\w*|come out)|\bleak\w* (of )?(microwaves|radiation)|\bradiation\b.{0,12}(leak|high|escap)|\bleakage (is |was |test )?(too high|high|failed|over|above)|\b([6-9]|\d\d) ?mw\b`},
		pattern{expr: `\bno (leak|radiation|microwave)|earth leakage`}, "radiates", false},
	{[]string{"ground", "earth", "polarity", "revers", "neutral"},
		pattern{expr: `\bopen ground\b|\b` + outlets + ` (is |was |has |have |is not |has not |isn't |not |no |without |lacks |missing |with )*(a |an |any )?(un|no |open |missing )?(ground|earth)(ed|ing)?( wire| connection| pin)?( missing| open| dead)? $|\b(un(ground|earth)ed|no (ground|earth)\w*( wire| connection| pin)?) (at|in|on|to) (the |this |that |her |his |their )?(wall |kitchen |laundry )?` + outlets + `|\bun(ground|earth)ed ` + outlets +
			`|\b` + outlets + ` .{0,12}(not|n't|no|without|lacks|missing) (a |properly )?(ground|earth)|\b(ground|earth)( wire| pin)? (is |was )?(missing|open|dead|not connected|disconnected) (at|in|on) (the )?` + outlets + `|\brevers\w* polarity|\bpolarity (is |was )?(revers\w*|wrong|swapped)|\b(hot|line|live) (and |to )?neutral (are |were |is |was )?(revers\w*|swapped|crossed)|\b(open|lost|floating) neutral\b|\bbootleg ground`},
		pattern{expr: `\b(motor|dc|fan|board|diode|battery|magnet|valve|probes?|leads?|transformer|winding|coil|meter)s?\b|\bnot? (revers|open ground)|\b(mended|repaired|fixed|corrected|cured)\b|polarity (is |was )?(right|good|correct)|\b` + outlets + ` (is |was |now )*(well |properly )?(ground|earth)ed $|ground fault`}, "outlet-wrong", true},
}

// wordings are those of the findings of alarms, each with a space on both sides.
var wordings = sync.OnceValue(func() [][]string {
	out := make([][]string, len(alarms))
	for i := range alarms {
		f, _ := cause.Lookup(alarms[i].Finding)
		for _, w := range f.Words {
			out[i] = append(out[i], " "+strings.Join(cause.Fold(w), " ")+" ")
		}
	}
	return out
})

// Alarms gives the dangers that a text speaks of.
func Alarms(text string) []*Alarm {
	var out []*Alarm
	if text = strings.ToLower(text[:min(len(text), MostBytes)]); !Has(text, anyAlarm()) {
		return nil
	}
	for _, clause := range Clauses(cause.Calmed(text)) {
		clause = " " + strings.Join(cause.Fold(clause), " ") + " "
		for i := range alarms {
			if a := &alarms[i]; Has(clause, a.quick) && a.spokenOf(clause, wordings()[i]) && !slices.Contains(out, a) {
				out = append(out, a)
			}
		}
	}
	return out
}

// spokenOf reports whether a clause speaks of the danger, by its pattern or by a
// wording of its finding, and does not say that it is none or no more.
func (a *Alarm) spokenOf(clause string, wordings []string) bool {
	said := a.is.get().MatchString(clause)
	for i := 0; i < len(wordings) && !said; i++ {
		said = strings.Contains(clause, wordings[i]) && !strings.Contains(clause, " no"+wordings[i])
	}
	return said && !a.not.get().MatchString(clause) && (a.absent || !gone().MatchString(clause))
}

// anyAlarm are the words without one of which no danger is spoken of.
var anyAlarm = sync.OnceValue(func() []string {
	var out []string
	for i := range alarms {
		out = append(out, alarms[i].quick...)
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
