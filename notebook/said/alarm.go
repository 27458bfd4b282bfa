package said

import (
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	quick   string // words without one of which the patterns are not looked at
	is, not pattern
	Finding string // the code of what was found by these words
	absent  bool   // it is itself that something is not there, or not to be
}

// gone tells a clause of a danger that is no more, or never was.
var gone = pattern{expr: `\b(mended|repaired|fixed|cured|gone|cleared|tested (good|tight|ok)|no longer|no more|any ?more|not|never|without|nothing|free of)\b|n't\b`}

const (
	bareMetal = `(metal|case|cabinet|body|door|frame|chassis|housing|panel|shell|sheath|handle|knob)`
	shell     = `(case|cabinet|chassis|frame|body|shell|metal|handle|housing)`
	mainsPart = `(plug|outlet|socket|receptacle|cord|flex|terminal block)`
	outlets   = `(outlet|receptacle|wall socket|socket|wall plug)`
	anyUnit   = `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|stove|cooktop|hob|microwave|furnace|heater|boiler|it)`
	burntBy   = `(melt\w*|burn\w*|scorch\w*|charred|on fire)`
)

var alarms = []Alarm{
	{"shock|tingl|zap|jolt|tickle|bitten by|live | live|bit |bites|electri|energi|hot to|volt| v ",
		pattern{expr: `\bshock(s|ed|ing)?\b|tingl|\bzap(s|ped)?\b|\b(gave|gives|got|felt|get|gets) (\w+ ){0,2}jolt|\btickles?\b|\bfelt (the |some )?(electricity|current)\b|\b(volts?|voltage|[1-9]\d+ ?v) (on|between) (the |its )?` + shell + `\b|\b` + shell + ` (is |was )?(energi[sz]ed|electrified|hot to (ground|earth))|\b[1-9]\d+ ?v\w* between (the )?` + bareMetal + ` and (ground|earth|neutral)|\bbitten by\b|\b(got bit|bit (me|her|him|us)|bites (me|her|him|you))\b|\b` + bareMetal + ` (is |was )?live\b|\blive ` + bareMetal + `\b`},
		pattern{expr: `\bno (shock|tingl|volt)|\bzero\b|\b0 (\d+ ?)?v|shocked at|shock (sticker|label|sign|hazard)|tingling noise|shock absorb|absorber|suspension|(gas|tub|front|rear|new|worn|broken) shocks?\b|\bshocks? (are |is )?(worn|broken|bad|weak|leak\w*|gone|off)|\b(damper|spring)`}, "shock", false},
	{"spark|arc|smok|burn|scorch|melt|charred|fire|flame|smoulder|smolder|hot plastic|flash|discolo|browned|blackened",
		pattern{expr: `\bsmou?lder\w*|\bsmell\w* (\w+ ){0,3}(burn(t|ing)|hot plastic)\b|\bburn(t|ing) (rubber|plastic|wire|electrical) (smell|odou?r)|\bflash and (a )?bang\b|\bfire damage|\bflames? at (the )?(terminal|relay|board|plug)|\b` + mainsPart + ` .{0,14}(discolou?red|browned|blackened)|\bfire in\b|\bwire nut (is )?(melted|burnt)|\b(sparks|sparked|sparking|arcing|arced|smok(e|es|ed|ing|y))\b|\bburn(ing|t) smell\b|\bsmells? (of )?burn(t|ing)\b|\b(in|out|and) flames\b|\bflames (from|behind|inside|came|shot)|\b(caught|on|lint|small|a) fire\b|\bscorch(ed)?\b|\bburn marks?\b|\b` + mainsPart + ` (is |was |has |have )?` + burntBy + `|\b(melted|burnt|burned|scorched|charred) (the )?` + mainsPart},
		pattern{expr: `\bno (spark|arc|smok|burn|smell|fire)|\bspark\w* (at|from|of|to) (the )?(igni|electrode|candle|burner|brush)|(igniter|ignitor|electrode|brush\w*|burner) sparks?|smoke (detector|alarm)|(customer|client|owner|tenant|he|she|they) smokes?\b|smoked (salmon|fish|meat|ham)|burn\w* smell none`}, "smoke", false},
	{"gas|odor|odour|rotten egg|propane|lpg",
		pattern{expr: `\bgas smell|\brotten eggs?\b|\b(propane|lpg|natural gas) (smell|odou?r)|\bsme(ll|lt)(s|ed|ing)?( of| like)? (natural )?(gas|propane|lpg)\b|\bgas odou?r|\bodou?r of gas`}, pattern{expr: `\bno (gas|smell|odou?r)|flue gas|sewer gas|last year|years? ago|before it lights`}, "gas-smell", false},
	{"gas|bubbles|sniffer|burner stays",
		pattern{expr: `\bgas (is |valve )?(leak|hiss|escap)|\bgas valve passes|\bhiss\w* (of )?gas\b|\bburner stays (on|lit) (with|when) (the )?(knob|valve|control|cock)|\bleak(s|ing)? (of )?gas\b|\bleak at (the )?gas\b|\bbubbles (still )?at (the )?(union|gas|cock|fitting|valve)|\bgas sniffer (goes|went) off`}, pattern{expr: `\bno (gas )?(leak|bubbles|hiss)|leak test|refrigerant|hot gas`}, "gas-leak", false},
	{"monoxide|co | co|exchanger|flue|chimney|roll|soot|yellow|lazy|dizzy|headache|nausea|sick|spill|draft|fumes",
		pattern{expr: `carbon monoxide|\bdizzy\b|\bnausea|\b(feels?|felt|feeling) sick\b|\bback ?draft|\b(exhaust|fumes|flue gas\w*|combustion\w*) .{0,10}(spill|into|in) |\bheadaches?\b|\bco (alarm|detector)|\bhigh co\b|\bco\b.{0,20}\b[1-9]\d+ ?ppm|\b[1-9]\d+ ?ppm (of )?co\b|(crack|hole|rust|split|perforat|corrod)\w*( right)?( through)?( in)?( the)? heat exchanger|heat exchanger.{0,20}(crack|hole|rust|split|perforat|corrod)` +
			`|\b(flue|chimney)\b.{0,20}\b(block|disconnect|off\b|open\b|loose|leak|split|rust|broken|down\b)|(block|disconnect)\w* (flue|chimney)|\brolls? ?out\b|\bflames? .{0,12}\broll|\b(holes?|rust\w*|cracks?) .{0,6}in (the )?(flue|chimney)|\brollout\b|\bsooty?\b|(yellow|lazy) flame|flames? (is |are |burns? |burn )?(yellow|lazy)`},
		pattern{expr: `\bno (co\b|carbon|soot|crack|roll|headache|nausea|back|spill|fumes)|co (detector|alarm) (is |was )?(fitted|tested|silent|in)\b|rollout (switch )?(closed|good|sound|ok)|soot.?free`}, "co", false},
	{"unsafe|not safe|danger|tagged|at risk| use|condemned|out of service|not to |not be |not touch|not operate",
		pattern{expr: `^ ?unsafe\b|\b(is|it|unit|machine|appliance|left|as|and|now|found|was) unsafe\b|\bnot safe (to (use|run|operate)|for use)|\bdanger(ous)?\b|\b(unit|machine|appliance|it) (is |was )?condemned\b|^ ?(left )?condemned\b|\bred.?tag\w*|\bat risk\b` +
			`|\b((do not|don't|not to) (use|touch|operate)|(told|asked|warned|advised) (\w+ ){0,3}not to (run|(switch|turn) on)|((must|should|may) not|not to) be (used|run|operated|energi[sz]ed|(switched|turned) on))( (it|this|again|anymore|until|before|while|tag|label|sign|sticker|on|and|left|by|the ` + anyUnit + `)\b| $)|\b` + anyUnit + ` (is |was |left |taken |put |tagged )*out of service\b|^ ?(left |taken |tagged |put )*out of service\b`},
		pattern{expr: `unsafe (to move|ladder)|\b(they|we|i|you|who|people|tenants|clients|customers) (do not|don't)|no danger|in danger|dangerous goods|out of danger|not unsafe|(unsafe|dangerous) before|danger (label|sign)|(food|milk|meat|medicines?|insulin|stock|floor|board|compressor) (is |are )?at risk|at risk of (spoil|thaw|damage|fail|ice|icing|frost)`}, "called-unsafe", true},
	{"open|ajar|unlocks| up | off |n't stop",
		pattern{expr: `\b(runs?|ran|running|heats?|heating|starts?|started|spins?|spun|spinning|tumbles?|turns?|operates?|operating|works|working|cooks|cooking|sprays|(turns?|comes) on|(starts?|runs?) by itself|(keeps?|kept|goes|carries|stays) (on|going|running|heating|spinning|turning|tumbling))( even| still)? (with|when|while|though) (the |its )?(door|lid) (is |was )?(still )?(opens?|opened|ajar|up|off)\b|\bruns open\b|\b(door|lid) (opens|opened|unlocks|can be opened) (while|when|during) (it |still )?(is )?(spin|run|turn|wash|heat)|\b(door|lid) (is |was )?open (and|but) (it )?(still )?(runs|heats|spins|starts|keeps)|\b(does|did|will|would)n't stop (with|when) (the |its )?(door|lid)`},
		pattern{expr: `\b(light|lamp|bulb|fan|blower|clock|display)s? (still )?(stays?|runs?|works?|comes?|turns?)|\b(does|did|do|will) not (run|heat|start|spin|turn|operate|work)|n't (run|heat|start|spin|turn|operate|work)|\b(drain|water|pump|drum by hand|hand)\b`}, "runs-open", true},
	{"microwaves|radiation|leakage|mw",
		pattern{expr: `\bmicrowaves? (leak\w*|escap\w*|come out)|\bleak\w* (of )?(microwaves|radiation)|\bradiation\b.{0,12}(leak|high|escap)|\bleakage (is |was |test )?(too high|high|failed|over|above)|\b([6-9]|\d\d) ?mw\b`},
		pattern{expr: `\bno (leak|radiation|microwave)|earth leakage`}, "radiates", false},
	{"ground|earth|polarity|revers|neutral|prong",
		pattern{expr: `\bopen ground\b|\b` + outlets + ` (is |was |has |have |is not |has not |isn't |not |no |without |lacks |missing |with )*(a |an |any )?(un|no |open |missing )?(ground|earth)(ed|ing)?( wire| connection| pin)?( missing| open| dead)? $|\b(un(ground|earth)ed|no (ground|earth)\w*( wire| connection| pin)?) (at|in|on|to) (the |this |that |her |his |their )?(wall |kitchen |laundry )?` + outlets + `|\b(un(ground|earth)ed|(2|two) prong) (\w+ )?` + outlets +
			`|\b` + outlets + ` .{0,12}(not|n't|no|without|lacks|missing) (a |properly )?(ground|earth)|\b(ground|earth)( wire| pin)? (is |was )?(missing|open|dead|not connected|disconnected) (at|in|on) (the )?` + outlets + `|\brevers\w* polarity|\bpolarity (is |was )?(revers\w*|wrong|swapped)|\b(hot|line|live) (and |to )?(neutral|ground|earth) (are |were |is |was )?(revers\w*|swapped|crossed)|\b(open|lost|floating) neutral\b|\bbootleg ground`},
		pattern{expr: `\b(motor|dc|fan|board|diode|battery|magnet|valve|probes?|leads?|transformer|winding|coil|meter)s?\b|\bnot? (revers|open ground)|\b(mended|repaired|fixed|corrected|cured)\b|polarity (is |was )?(right|good|correct)|\b` + outlets + ` (is |was |now )*(well |properly )?(ground|earth)ed $|ground fault`}, "outlet-wrong", true},
	{"refrigerant|pierced|punctured|hiss|sealed system|leak|sniffer|propane|isobutane",
		pattern{expr: `\b(refrigerant|propane|isobutane|joint|flare|braze) (is |was |gas )?(leak|escap)|\bsniffer (sounds|alarms)|\bleak\w* (of )?(refrigerant|propane|isobutane)\b|\b(pierced|punctured|poked a hole in|holed) (the |an |his |her )?(\w+ )?(evaporator|evap|coil|tub(e|ing)|liner)|\b(evaporator|evap|coil|sealed system|tubing) (is |was )?(pierced|punctured|holed)|\bhiss\w* (from|at) (the )?(evap|coil|tub|joint|line)|\bsealed system (is |was )?leak|\bleak\w* (at|in) (the )?(evap\w*|condenser|joint|coil|capillary|drier|process tube|low side|high side) $`},
		pattern{expr: `\bno (\w+ )?(leak|hiss)|normal|water|drain|drip|oil`}, "leak-found", false},
	{"bare|exposed|frayed|copper|water|scald|hurt|burn|cut|caught|trapped|too hot|plug|cord|relief|t&p| t p |insulation|explo|gas valve|tip|guard|delayed|light|ignites|blow|flash|fell|falls|sharp|glass|inside|ammonia|injured",
		pattern{expr: `\b(bare|exposed|frayed) (\w+ )?(wires?|wiring|conductors?|cord|cable|live)\b|\b(cord|cable|flex|wires?|wiring) (insulation )?(is |was |are )?(bare|frayed|exposed)\b|\binsulation melted\b|\bcopper (is )?(showing|bare|exposed)|\bwater (\w+ ){0,2}(on|onto|in|into|over) (the |a )?(\w+ )?(live|electric\w*|terminals?|terminal block|board|junction box|wiring|connectors?|breaker|wall outlet)\b|\bwater (\w+ ){0,2}(on|onto|into|over) (the )?(outlet|socket|receptacle|plug) $` +
			`|\bscald|\b(child|kid|baby|client|customer|tenant|owner|somebody) (was |got )*(hurt|injured|(burnt|burned) on)\b|\b(burn(t|ed|s)|cut|hurt|caught|trapped|pinched|crushed) (a |the |his |her |my |their |its |client's |customer's |the client's |the customer's )?(hand|finger|arm)s?\b|\bfingers? (was |got )*(caught|trapped|pinched|cut)\b|\b(plug|cord) (is |was |runs |gets |feels |too |very )*hot( $| to (the )?touch| when| after| under)|\b(door|glass|handle|outlet|cabinet) .{0,12}too hot to touch|\bglass shattered|\b(locked|trapped|shut) inside\b|\bammonia (smell|leak)|\b(smell|leak)\w* of ammonia` +
			`|\b(relief valve|t p valve|tpr|prv) (is |was )*(capped|plugged|blocked|missing|removed|seized|tied|does not open|won't open)|\banti ?tip (\w+ )?(is |was )?(missing|off|not)|\bno anti ?tip|\btip(s|ped) (over|forward)|not secured tips|\b(unit|machine|appliance|it|dryer|washer|range|fridge|refrigerator) (\w+ and )?(fell|falls) (on|over|off|down|out|from (the )?(window|wall|bracket|stand|stack))|\b(fan|blade|belt|pulley)( blade)? guard (is |was )?(left off|missing|broken|gone)` +
			`|\bdelayed ignition|\b(lights|ignites) with (a )?(bang|boom|explosion)|\b(flames?|burners?) (blows?|flash\w*) back|\bexplo\w+ (on|at|when) (start|light|ignit)|\bgas valve (does not|doesn't|won't|will not) (shut|close)|\bsharp edges?\b`},
		pattern{expr: `\bno (bare|exposed|water|sharp|burn|delayed|flash)|\b(mended|repaired|replaced|covered|insulated|taped)\b|food|grease|(years?|months?) ago|last year|\bnot (hurt|exposed|bare|hot|tip)|flow|bare (ground|earth|copper)`}, "hazard", true},
}

// wordings are those of the findings of alarms, each with a space on both sides, and
// behind them the words without one of which each is not looked for.
var wordings = sync.OnceValue(func() [][]string {
	out := make([][]string, len(alarms), len(alarms)+len(alarms))
	for i := range alarms {
		f, _ := cause.Lookup(alarms[i].Finding)
		for _, w := range f.Words {
			out[i] = append(out[i], " "+strings.Join(cause.Fold(w), " ")+" ")
		}
		out = append(out, strings.Split(alarms[i].quick, "|"))
	}
	return out
})

// Alarms gives the dangers that a text speaks of.
func Alarms(text string) []*Alarm {
	var out []*Alarm
	if text = strings.ToLower(text[:min(len(text), MostBytes)]); !Has(text, anyAlarm()) {
		return nil
	}
	said := wordings()
	clauses := Clauses(cause.Calmed(text))
	for i, clause := range clauses {
		if none := noneOf.get(); none.MatchString(clause) || i+1 < len(clauses) && none.MatchString("checked? "+clauses[i+1]) && looksFor.get().MatchString(clause) {
			continue
		}
		clause = " " + strings.Join(cause.Fold(clause), " ") + " "
		for i := range alarms {
			if a := &alarms[i]; Has(clause, said[len(alarms)+i]) && a.spokenOf(clause, said[i]) && !slices.Contains(out, a) {
				out = append(out, a)
			}
		}
	}
	return out
}

// noneOf tells a clause that asks and says no, looksFor one of what was looked for.
var (
	noneOf   = pattern{expr: `\?\s*(\w+ ){0,3}(no|none|nope|nil|negative)$`}
	looksFor = pattern{expr: `\b(check\w*|test\w*|asked|looked|search\w*|any)\b|\?$`}
)

// spokenOf reports whether a clause speaks of the danger, by its pattern or by a
// wording of its finding, and does not say that it is none or no more.
func (a *Alarm) spokenOf(clause string, wordings []string) bool {
	said := a.is.get().MatchString(clause)
	for i := 0; i < len(wordings) && !said; i++ {
		said = strings.Contains(clause, wordings[i]) && !strings.Contains(clause, " no"+wordings[i])
	}
	return said && !a.not.get().MatchString(clause) && (a.absent || !gone.get().MatchString(clause))
}

// anyAlarm are the words without one of which no danger is spoken of.
var anyAlarm = sync.OnceValue(func() []string {
	var out []string
	for _, quick := range wordings()[len(alarms):] {
		out = append(out, quick...)
	}
	return out
})

// MadeSafe reports whether words begin with how a unit is made safe.
func MadeSafe(text string) bool { return madeSafe.get().MatchString(text) && !NotSafe(text) }

var madeSafe = pattern{expr: `(?i)^(it |unit |power |plug )?(is |was )?(un ?plugged|isolated|locked (out|off)|tagged out|disconnected( it| the unit| power|$|,)|discharged|shut ?off|(switched|turned) off|killed (the )?power|pulled (the )?(plug|disconnect)|power (is )?off|plug (is )?(out|pulled))\b`}

// NotSafe reports whether words are no statement that a unit was made safe.
func NotSafe(text string) bool { return notSafe.get().MatchString(text) }

var notSafe = pattern{expr: `(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`}

// Decides reports whether a text is of what the client wants to be done.
func Decides(text string) bool { return decides.get().MatchString(text[:min(len(text), LongClause)]) }

var decides = pattern{expr: `(?i)\b(client|customer|owner|tenant|landlord)\b.{0,40}\b(declin|refus|agree|accept|approv|decid|want|chose|choos|prefer|goes|go ahead|buy|bought|will)|^declin`}
