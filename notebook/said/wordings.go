package said

import (
	"strings"
	"sync"
)

// inRows are the words that many rows have, by what stands for them there.
var inRows = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer(
		`<metal>`, `(metal|case|cabinet|body|door|frame|chassis|housing|panel|shell|sheath|handle|knob)`,
		`<shell>`, `(case|cabinet|chassis|frame|body|shell|metal|handle|housing)`,
		`<mains>`, `(plug|outlet|socket|receptacle|cord|flex|terminal block)`,
		`<outlet>`, `(outlet|receptacle|wall socket|socket|wall plug)`,
		`<machine>`, `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|stove|cooktop|hob|microwave|furnace|heater|boiler|it)`,
		`<burnt>`, `(melt\w*|burn\w*|scorch\w*|charred|on fire)`,
	)
})

// alarms are the dangers, each with its wordings, a row each. A row is a pattern in the
// words of one clause, which have a space on both sides and between them, and no marks;
// it begins where a word does. Behind quick stand the beginnings of words without one
// of which none of its rows is looked at.
var alarms = []Alarm{
	{Finding: "shock", quick: "shock|tingl|zap|jolt|tickle|bitten by|live | live|bit |bites|electri|energi|hot to|volt| v ",
		said: rows{text: `
shock(s|ed|ing)?\b
tingl
zap(s|ped)?\b
(gave|gives|got|felt|get|gets) (\w+ ){0,2}jolt
tickles?\b
felt (the |some )?(electricity|current)\b
(volts?|voltage|[1-9]\d+ ?v) (on|between) (the |its )?<shell>\b
<shell> (is |was )?(energi[sz]ed|electrified|hot to (ground|earth))
[1-9]\d+ ?v\w* between (the )?<metal> and (ground|earth|neutral)
bitten by\b
(got bit|bit (me|her|him|us)|bites (me|her|him|you))\b
<metal> (is |was )?live\b
live <metal>\b
`},
		harmless: rows{text: `
no (shock|tingl|volt)
zero\b
0 (\d+ ?)?v
shocked at
shock (sticker|label|sign|hazard)
tingling noise
shock absorb
absorber
suspension
(gas|tub|front|rear|new|worn|broken) shocks?\b
shocks? (are |is )?(worn|broken|bad|weak|leak\w*|gone|off)
(damper|spring)
`}},
	{Finding: "smoke", quick: "spark|arc|smok|burn|scorch|melt|charred|fire|flame|smoulder|smolder|hot plastic|flash|discolo|browned|blackened",
		said: rows{text: `
smou?lder\w*
smell\w* (\w+ ){0,3}(burn(t|ing)|hot plastic)\b
burn(t|ing) (rubber|plastic|wire|electrical) (smell|odor)
flash and (a )?bang\b
fire damage
flames? at (the )?(terminal|relay|board|plug)
<mains> .{0,14}(discolou?red|browned|blackened)
fire in\b
wire nut (is )?(melted|burnt)
(sparks|sparked|sparking|arcing|arced|smok(e|es|ed|ing|y))\b
burn(ing|t) smell\b
smells? (of )?burn(t|ing)\b
(in|out|and) flames\b
flames (from|behind|inside|came|shot)
(caught|on|lint|small|a) fire\b
scorch(ed)?\b
burn marks?\b
<mains> (is |was |has |have )?<burnt>
(melted|burnt|burned|scorched|charred) (the )?<mains>
`},
		harmless: rows{text: `
no (spark|arc|smok|burn|smell|fire)
spark\w* (at|from|of|to) (the )?(igni|electrode|candle|burner|brush)
(igniter|ignitor|electrode|brush\w*|burner) sparks?
smoke (detector|alarm)
(customer|client|owner|tenant|he|she|they) smokes?\b
smoked (salmon|fish|meat|ham)
burn\w* smell none
`}},
	{Finding: "gas-smell", quick: "gas|odor|odour|rotten egg|propane|lpg",
		said: rows{text: `
gas smell
rotten eggs?\b
(propane|lpg|natural gas) (smell|odor)
sme(ll|lt)(s|ed|ing)?( of| like)? (natural )?(gas|propane|lpg)\b
gas odor
odor of gas
`},
		harmless: rows{text: `
no (gas|smell|odor)
flue gas
sewer gas
last year
years? ago
before it lights
`}},
	{Finding: "gas-leak", quick: "gas|bubbles|sniffer|burner stays",
		said: rows{text: `
gas (is |valve )?(leak|hiss|escap)
gas valve passes
hiss\w* (of )?gas\b
burner stays (on|lit) (with|when) (the )?(knob|valve|control|cock)
leak(s|ing)? (of )?gas\b
leak at (the )?gas\b
bubbles (still )?at (the )?(union|gas|cock|fitting|valve)
gas sniffer (goes|went) off
`},
		harmless: rows{text: `
no (gas )?(leak|bubbles|hiss)
leak test
refrigerant
hot gas
`}},
	{Finding: "co", quick: "monoxide|co | co|exchanger|flue|chimney|roll|soot|yellow|lazy|dizzy|headache|nausea|sick|spill|draft|fumes",
		said: rows{text: `
carbon monoxide
dizzy\b
nausea
(feels?|felt|feeling) sick\b
back ?draft
(exhaust|fumes|flue gas\w*|combustion\w*) .{0,10}(spill|into|in) 
headaches?\b
co (alarm|detector)
high co\b
co\b.{0,20}\b[1-9]\d+ ?ppm
[1-9]\d+ ?ppm (of )?co\b
(crack|hole|rust|split|perforat|corrod)\w*( right)?( through)?( in)?( the)? heat exchanger
heat exchanger.{0,20}(crack|hole|rust|split|perforat|corrod)
(flue|chimney)\b.{0,20}\b(block|disconnect|off\b|open\b|loose|leak|split|rust|broken|down\b)
(block|disconnect)\w* (flue|chimney)
rolls? ?out\b
flames? .{0,12}\broll
(holes?|rust\w*|cracks?) .{0,6}in (the )?(flue|chimney)
rollout\b
sooty?\b
(yellow|lazy) flame
flames? (is |are |burns? |burn )?(yellow|lazy)
`},
		harmless: rows{text: `
no (co\b|carbon|soot|crack|roll|headache|nausea|back|spill|fumes)
co (detector|alarm) (is |was )?(fitted|tested|silent|in)\b
rollout (switch )?(closed|good|sound|ok)
soot ?free
`}},
	{Finding: "called-unsafe", absent: true, quick: "unsafe|not safe|danger|tagged|at risk| use|condemned|out of service|not to |not be |not touch|not operate",
		said: rows{text: `
^ unsafe\b
(is|it|unit|machine|appliance|left|as|and|now|found|was) unsafe\b
not safe (to (use|run|operate)|for use)
danger(ous)?\b
(unit|machine|appliance|it) (is |was )?condemned\b
^ (left )?condemned\b
red ?tag\w*
at risk\b
((do not|don't|not to) (use|touch|operate)|(told|asked|warned|advised) (\w+ ){0,3}not to (run|(switch|turn) on)|((must|should|may) not|not to) be (used|run|operated|energi[sz]ed|(switched|turned) on))( (it|this|again|anymore|until|before|while|tag|label|sign|sticker|on|and|left|by|the <machine>)\b| $)
<machine> (is |was |left |taken |put |tagged )*out of service\b
^ (left |taken |tagged |put )*out of service\b
`},
		harmless: rows{text: `
unsafe (to move|ladder)
(they|we|i|you|who|people|tenants|clients|customers) (do not|don't)
no danger
in danger
dangerous goods
out of danger
not unsafe
(unsafe|dangerous) before
danger (label|sign)
(food|milk|meat|medicines?|insulin|stock|floor|board|compressor) (is |are )?at risk
at risk of (spoil|thaw|damage|fail|ice|icing|frost)
`}},
	{Finding: "runs-open", absent: true, quick: "open|ajar|unlocks| up | off |n't stop",
		said: rows{text: `
(runs?|ran|running|heats?|heating|starts?|started|spins?|spun|spinning|tumbles?|turns?|operates?|operating|works|working|cooks|cooking|sprays|(turns?|comes) on|(starts?|runs?) by itself|(keeps?|kept|goes|carries|stays) (on|going|running|heating|spinning|turning|tumbling))( even| still)? (with|when|while|though) (the |its )?(door|lid) (is |was )?(still )?(opens?|opened|ajar|up|off)\b
runs open\b
(door|lid) (opens|opened|unlocks|can be opened) (while|when|during) (it |still )?(is )?(spin|run|turn|wash|heat)
(door|lid) (is |was )?open (and|but) (it )?(still )?(runs|heats|spins|starts|keeps)
(does|did|will|would)n't stop (with|when) (the |its )?(door|lid)
`},
		harmless: rows{text: `
(light|lamp|bulb|fan|blower|clock|display)s? (still )?(stays?|runs?|works?|comes?|turns?)
(does|did|do|will) not (run|heat|start|spin|turn|operate|work)
\w*n't (run|heat|start|spin|turn|operate|work)
(drain|water|pump|drum by hand|hand)\b
`}},
	{Finding: "radiates", quick: "microwaves|radiation|leakage|mw",
		said: rows{text: `
microwaves? (leak\w*|escap\w*|come out)
leak\w* (of )?(microwaves|radiation)
radiation\b.{0,12}(leak|high|escap)
leakage (is |was |test )?(too high|high|failed|over|above)
([6-9]|\d\d) ?mw\b
`},
		harmless: rows{text: `
no (leak|radiation|microwave)
earth leakage
`}},
	{Finding: "outlet-wrong", absent: true, quick: "ground|earth|polarity|revers|neutral|prong",
		said: rows{text: `
open ground\b
<outlet> (is |was |has |have |is not |has not |isn't |not |no |without |lacks |missing |with )*(a |an |any )?(un|no |open |missing )?(ground|earth)(ed|ing)?( wire| connection| pin)?( missing| open| dead)? $
(un(ground|earth)ed|no (ground|earth)\w*( wire| connection| pin)?) (at|in|on|to) (the |this |that |her |his |their )?(wall |kitchen |laundry )?<outlet>
(un(ground|earth)ed|(2|two) prong) (\w+ )?<outlet>
<outlet> .{0,12}(not|n't|no|without|lacks|missing) (a |properly )?(ground|earth)
(ground|earth)( wire| pin)? (is |was )?(missing|open|dead|not connected|disconnected) (at|in|on) (the )?<outlet>
revers\w* polarity
polarity (is |was )?(revers\w*|wrong|swapped)
(hot|line|live) (and |to )?(neutral|ground|earth) (are |were |is |was )?(revers\w*|swapped|crossed)
(open|lost|floating) neutral\b
bootleg ground
`},
		harmless: rows{text: `
(motor|dc|fan|board|diode|battery|magnet|valve|probes?|leads?|transformer|winding|coil|meter)s?\b
not? (revers|open ground)
(mended|repaired|fixed|corrected|cured)\b
polarity (is |was )?(right|good|correct)
<outlet> (is |was |now )*(well |properly )?(ground|earth)ed $
ground fault
`}},
	{Finding: "leak-found", quick: "refrigerant|pierced|punctured|hiss|sealed system|leak|sniffer|propane|isobutane",
		said: rows{text: `
(refrigerant|propane|isobutane|joint|flare|braze) (is |was |gas )?(leak|escap)
sniffer (sounds|alarms)
leak\w* (of )?(refrigerant|propane|isobutane)\b
(pierced|punctured|poked a hole in|holed) (the |an |his |her )?(\w+ )?(evaporator|evap|coil|tub(e|ing)|liner)
(evaporator|evap|coil|sealed system|tubing) (is |was )?(pierced|punctured|holed)
hiss\w* (from|at) (the )?(evap|coil|tub|joint|line)
sealed system (is |was )?leak
leak\w* (at|in) (the )?(evap\w*|condenser|joint|coil|capillary|drier|process tube|low side|high side) $
`},
		harmless: rows{text: `
no (\w+ )?(leak|hiss)
normal
water
drain
drip
oil
`}},
	{Finding: "hazard", absent: true, quick: "bare|exposed|frayed|copper|water|scald|hurt|burn|cut|caught|trapped|too hot|plug|cord|relief|t&p| t p |insulation|explo|gas valve|tip|guard|delayed|light|ignites|blow|flash|fell|falls|sharp|glass|inside|ammonia|injured",
		said: rows{text: `
(bare|exposed|frayed) (\w+ )?(wires?|wiring|conductors?|cord|cable|live)\b
(cord|cable|flex|wires?|wiring) (insulation )?(is |was |are )?(bare|frayed|exposed)\b
insulation melted\b
copper (is )?(showing|bare|exposed)
water (\w+ ){0,2}(on|onto|in|into|over) (the |a )?(\w+ )?(live|electric\w*|terminals?|terminal block|board|junction box|wiring|connectors?|breaker|wall outlet)\b
water (\w+ ){0,2}(on|onto|into|over) (the )?(outlet|socket|receptacle|plug) $
scald
(child|kid|baby|client|customer|tenant|owner|somebody) (was |got )*(hurt|injured|(burnt|burned) on)\b
(burn(t|ed|s)|cut|hurt|caught|trapped|pinched|crushed) (a |the |his |her |my |their |its |client's |customer's |the client's |the customer's )?(hand|finger|arm)s?\b
fingers? (was |got )*(caught|trapped|pinched|cut)\b
(plug|cord) (is |was |runs |gets |feels |too |very )*hot( $| to (the )?touch| when| after| under)
(door|glass|handle|outlet|cabinet) .{0,12}too hot to touch
glass shattered
(locked|trapped|shut) inside\b
ammonia (smell|leak)
(smell|leak)\w* of ammonia
(relief valve|t p valve|tpr|prv) (is |was )*(capped|plugged|blocked|missing|removed|seized|tied|does not open|won't open)
anti ?tip (\w+ )?(is |was )?(missing|off|not)
no anti ?tip
tip(s|ped) (over|forward)
not secured tips
(unit|machine|appliance|it|dryer|washer|range|fridge|refrigerator) (\w+ and )?(fell|falls) (on|over|off|down|out|from (the )?(window|wall|bracket|stand|stack))
(fan|blade|belt|pulley)( blade)? guard (is |was )?(left off|missing|broken|gone)
delayed ignition
(lights|ignites) with (a )?(bang|boom|explosion)
(flames?|burners?) (blows?|flash\w*) back
explo\w+ (on|at|when) (start|light|ignit)
gas valve (does not|doesn't|won't|will not) (shut|close)
sharp edges?\b
`},
		harmless: rows{text: `
no (bare|exposed|water|sharp|burn|delayed|flash)
(mended|repaired|replaced|covered|insulated|taped)\b
food
grease
(years?|months?) ago
last year
not (hurt|exposed|bare|hot|tip)
\w*flow
bare (ground|earth|copper)
`}},
}
