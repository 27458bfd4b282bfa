package said

import (
	"slices"
	"strings"
	"sync"
)

// inRows are the words that many rows have, by what stands for them there.
var inRows = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer(
		`<w>`, `(\w+ )?`, // words that may stand between
		`<e>`, `(ground|earth)`,
		`<w2>`, `(\w+ ){0,2}`,
		`<w3>`, `(\w+ ){0,3}`,
		`<metal>`, `(metal|cas(?:e|ing)|cabinet|body|door|lid|frame|chassis|housing|panel|shell|sheath|handle|knob)`,
		`<shell>`, `(cas(?:e|ing)|cabinet|chassis|frame|body|shell|metal|handle|housing)`,
		`<hull>`, `(metal|cas(?:e|ing)|cabinet|door|frame|chassis|shell|handle|drum|knob)`,
		`<mach>`, `(`+kin+`|stove|cooktop|hob|microwave|furnace|boiler)`,
		`<earthy>`, `(sink|tap|faucet|radiator|pipe)`,
		`<mains>`, `(plug|outlet|socket|receptacle|cord|flex|terminal block)`,
		`<outlet>`, `(outlet|receptacle|wall socket|socket|wall plug)`,
		`<gone>`, `((was |left |taken |all )*(off|missing|gone|lost|removed|unhooked)|(not|never|isn't|wasn't) (on|there|fitted|put back)|(cut|snapped|sheared|broken|broke|torn|ripped|bent|fell|fallen) off|(lay|ly|lean|hang)ing|(on|in) (floor|wall|corner))`,
		`<fails>`, `(does not|doesn't|don't|did not|didn't|will not|won't|not|never)`,
		`<relief>`, `(relief|t (?:and )?p|p (?:and )?t|tp|tpr|prv)`,
		`<machine>`, `(unit|machine|appliance|`+kin+`|stove|cooktop|hob|microwave|furnace|heater|boiler|it)`,
		`<who>`, `(i|you|we|he|she|they|one|somebody|someone|anyone|client|customer|tenant)`,
		`<runs>`, `(runs?|ran|running|heats?|heating|starts?|started|spins?|spun|spinning|tumbles?|tumbling|turns?|turning|operates?|operating|works|working|cooks?|cooking|cooking|sprays|(turns?|comes|stays?|goes|keeps?|kept|carries|by itself) on|by itself|going)( on| even| still| right)*`,
		`<sounds>`, `(\w+ )?(beep\w*|alarms?|alarmed|sounds?|sounded|chirps?|hits|screams|reacts|trips|triggers|(went|goes|going) off)`,
		`<renewed>`, `(was |were |is |now |has been |have been )*(replaced|removed|renewed|repaired|mended|fixed)`,
		`<by>`, `(on|onto|in|into|over|down|at|by|near|under|beside|behind|above|below|around)`,
		`<main>`, `(live|board|pcb|transformer|terminal( block|s)|junction( box)?|j box|fuse box|breaker( box| panel)?|disconnect|contactor|electrics|wiring|harness)`,
		`<fuel>`, `(petrol|gasoline|propane|butane|(paint )?thinners?|solvents?|kerosene|aerosols?|flammables?|combustibles?|curtains?)`,
		`<burns>`, `(r ?290|r ?600a?|propane|isobutane)`,
		`<w4>`, `(\w+ ){0,4}`,
		`<hurt>`, `(burnt|split|damaged|chewed|frayed|nicked|melted|cut|cracked|scorched)`,
		`<torch>`, `(braz|solder|torch|weld)\w*`,
		`<crack>`, `(crack|shatter|smash)\w*`,
		`<kept>`, `((cover|panel|guard|shield|dead ?front|(kick|toe) ?(plate|panel|kick)|(port|test|tap|manometer|terminal|lug) (screw|nut|plug)|strain relief|cord (clamp|grip)|grommet|bushing|clamp|flue|duct|union|gas (nut|fitting|flex|line|hose)|anti ?tip( bracket)?|tip bracket|stack\w* kit|door glass)s?)`,
		`<puts>`, `(put|refit|re fit|fit|tighten|screw|bolt|clamp|reconnect|connect|secure|strap|re ?attach|attach|hook|close|do up|seal|cover|nip up)`,
		`<cord>`, `(cord|cable|flex|wire|wiring|lead|splice|joint|plug|conductor|hose)s?\b`,
		`<wet>`, `((water|rain|condensate|melt ?water|moisture|puddle)( (got|goes|gone|comes?|came|runs|ran|drips?|leaks?|all|right|down|out|sits|stands|found|seen|\w+(ing|ed|es)))*|(leaks?|leaking|leaked|sprays|spraying|(drip|weep|dribbl|pour|trickl|seep|splash|overflow|flood|drool)\w*|(drips?|runs|ran|running|comes) down)( \w+){0,3}?)`,
		`<more>`, `(boards|control (panel|box)|terminal|conduit|element cover|wires|connectors?|motor plugs?|relay|timer|electr\w+|(power|plug) strip|fuse box|switch box|mains|cap(acitor)?s?)`,
		`<socket>`, `(outlet|socket|receptacle|plugs?|power strip|plug strip)( $| below| under| box| and | it | behind)`,
		`<left>`, `(left|leaving|in use)( $| (it|in|so|as|for|alone|there|that|until|like|today|running)\b)`,
		`<burnt>`, `(melt\w*|burn\w*|scorch\w*|charred|cooked|toasted|crispy|on fire)`,
	)
})

// alarms are the dangers, each with its wordings, a row each. A row is a pattern in the
// words of one clause, which have a space on both sides and between them, no marks, and
// none of the words in fillers; it begins where a word does. Behind quick stand the beginnings of words without one
// of which none of its rows is looked at. An earth run to a pipe is no way back for what
// flows at a fault (NEC 250.4(A)(5), from memory): it counts as an outlet without one.
// What is burnt or a swollen capacitor is a danger where it was left so: else it is a
// finding on the way to a repair (common practice).
var alarms = slices.Concat(inAny, inSome, inRun)

var inAny = []Alarm{
	{Finding: "shock", quick: "shock|tingl|zap|jolt|tickle|bitten by|live | live|bit |bite|nip|belt|kick off|kick from|lit |cabinet|chassis|v on |v to |v from |v betw|hot skin|s hot|s live|electri|energi|hot to|volt| v |buzz|prickl|current on|tester l|electroc",
		said: rows{text: `
shock(s|ed|ing)?\b
tingl
zap(s|ped)?\b
(gave|gives|got|felt|get|gets) <w2>jolt
tickle[sd]?\b
felt (some )?(electricity|current)\b
(volts?|voltage|[1-9]\d+ ?v) (on|between) <shell>\b
<shell> (energi[sz]ed|electrified|hot to <e>)
[1-9]\d+ ?v\w* ((between|from) )?<metal> (and|to) (ground|earth|neutral)
<metal> (to|and) (ground|earth|neutral) <w2>[1-9]\d+ ?v
[1-9]\d+ ?v\w* (from|between) (<mach> )?(<hull> )+(and|to) <w2>(<hull>|<mach>|<earthy>) $
[1-9]\d+ ?v\w* (from|between) <mach> (and|to) <w>(<hull>|<earthy>) $
<shell> <w2>[1-9]\d+ ?v\w* (to|against) <w><earthy>\b
[1-9]\d+ ?v\w* on (door|lid|panel|knob)( handle)?( $| to )
handle buzz
(got|gets?|gave|gives) <w2>(belt|kick|nip|bite|buzz) ((off|from) <w><metal>|touching|when|if)
(gave|gives|lit) (me|her|him|us|customer|client|owner|tenant) (up\b|(belt|kick|nip|bite|buzz)\b)
buzz\w* (my |her )?(hand|finger|arm)
(buzz(es)?|nip(s|ped)) (her|him|me|us|you|them|client|customer|tenant|owner)\b
buzz\w* <w>(when|if) <w2>touch
(feels?|felt|get|gets|got) buzz (off|from|on) <metal>
prickl
current on <shell>
electrocut
<shell> (measures|reads|shows|sits at) [1-9]\d+ ?v
hot (skin|chassis)|chassis hot
[1-9]\d+ on (cabinet|chassis|frame)\b
live to <shell>
<shell> (tests?|reads?|shows?|metered) (hot|live)\b
<shell> hot with [1-9]\d
bitten by\b
(gets?|getting|got) (bit|bitten|nipped) (when|if|off|from|touching)\b
(got bit|bit (me|her|him|us)|bites? (me|her|him|us|you|client|customer|tenant))\b
<metal> live\b
live <metal>\b
`},
		harmless: rows{text: `
no (shock|tingl|volt)
(by|from) (dog|fence|cattle|toaster)
ask\w* <w>(if|whether) <w>(could|can|might|may|would|will) (give <w2>|ever )?(shock|zap|electrocut\w*)( her| him| me| us| them| you| kids| \w+(one|body))? $
(dog|cat|puppy) <w3>(shock|zap|bit)
zero\b
0 (\d+ ?)?v
shocked (at|how|we|they|by (mess|price|bill|cost|state|dirt|news)|to (see|hear|find|learn)|that)
static( $| (shock|from|electric|cling|spark|discharge))
shock load
shock (sticker|label|sign|hazard)
tingling noise
(gas|tub|front|rear|new|worn|broken) shocks?\b
shocks? (worn|broken|bad|weak|leak\w*|gone|off $)
`}},
	{Finding: "smoke", quick: "flar|spark|arc|smok|burn|scorch|melt|charred|fire|flame|smoulder|smolder|smell|flash|discolo|browned|blackened|cooked|crispy|fried|crackl|sizzl|fizz|singed|glow|toasted",
		said: rows{text: `
(flared|flare|flaring) up\b
smou?lder\w*
smell\w* <w3>(burn(t|ing)|hot (plastic|wir\w+|insulation|electric\w*)|electrical|overheat\w*)\b
burn(t|ing) (rubber|plastic|wire|electrical) (smell|odor)
flash and bang\b
arcs $
(crackl|sizzl|fizz)\w* <w>(at|from|in|behind|by) <w>(<mains>|terminal|block|wir\w+|relay|breaker|panel|switch)
(wires?|terminals?|breaker|<mains>) (\w+ ){0,4}(crackl|sizzl|fizz)\w*
lint <w>(burnt|burned|scorched|singed|charred)
(burnt|burned|charred|singed) (lint|bits)\b
glowing (wire|terminal|connection|splice)\b
flash\w* (when|if|while|on|as) <w>plug
arcs? (at|across|between|inside|behind|on|to|when|if)\b
<mains> (strip )?(looks )?(cooked|crispy|fried)
fire damage
flames? at (terminal|relay|board|plug)
<mains> .{0,20}(discolou?red|browned|blackened)
fire in\b
wire ?nuts? <burnt>|<burnt> wire ?nuts?
(cord|supply|power|main|whip|l[123]) (lug|wire|lead)s? (l[123] )?<burnt>
(glow\w* <w>lint|lint <w>glow)
(sparks|sparked|sparking|arcing|arced|smok(e|es|ed|ing|y))\b
burn(ing|t) (smell|odor)\b
(in|out|and) flames\b
flames (from|behind|inside|came|shot)
(caught|on|lint|small) fire\b
scorch(ed|ing|es)?\b
burn marks?\b
sparks? (at|from|in|inside|behind) (<mains>|relay|board|terminal|motor|switch|timer|wir)
<mains> (end |tip |blade |prong )?<burnt>
sparks? inside $
(melted|burnt|burned|scorched|charred)( up| out)? <mains>
`},
		harmless: rows{text: `
no (spark|arc|smok|burn|smell|fire|scorch|flash)
spark\w* (at|from|of|to) (igni|electrode|candle|burner|brush)
(igniter|ignitor|electrode|brush\w*|burner) sparks?
smoke (det\w*|alarm)
fire in (fireplace|stove|pit|wood)
(toast|food|bread|popcorn|dinner|meat|crumbs?|cooking) <w>(smell|burn|smok)
first (bake|heat|burn|use)
self ?clean\w* <w2>(smok|smell|burn)
smok\w* <w3>(grease|fat|crumbs|toast|food|cook|broil|bacon)
smoked (salmon|fish|meat|ham)
smok\w* (cigar\w*|pipe|outside)
lint fire (risk|hazard)
(bbq|grill|barbecue) .{0,12}smok
(next door|neighbou?r\w*|(other|old|different) (fridge|unit|one|machine)) .{0,12}smok
burn\w* smell none
`}},
	{Finding: "gas-smell", quick: "gas|odor|odour|rotten egg|propane|lpg| lp |mercaptan",
		said: rows{text: `
gas smell
rotten eggs?\b
(propane|lpg?|nat(ural)? gas) (smell|odor)
(smell\w*|smelt|sniff\w*|stink\w*|reek\w*|whiff|hint|nose says) ((bit |little |lot |strongly |slightly |faintly |something |raw |natural |of |like |some )*)(gas|propane|lpg?|mercaptan)\b
gassy\b
mercaptan smell
gas fumes
gas odor
odor of (gas|propane|lpg)
`},
		harmless: rows{text: `
no (gas|smell|odor)
flue gas
sewer gas
last year
years? ago
before it lights
ask\w* <w>(about|if|whether|for)\b
(what to do|in case|if) (\w+ ){0,4}(smell|gas)
`}},
	{Finding: "gas-leak", quick: "gas|bubbl|sniffer",
		said: rows{text: `
gas (valve |pipe |line |hose |union |fitting |regulator |meter |cock |flex |connector )?(\w+ (and )?)?(leak|hiss|escap|seep|weep)
gas valve passes
(tap|valve|cock|control) pass(es|ing) gas\b
hiss\w* (of )?gas\b
leak(s|ing)? (of )?gas\b
leak\w* <w2>(at|on|in|from|near|by) gas( $| (in|at|valve|cock|regulator|pipe|line|hose|union|fitting|meter|connector|manifold|control|joint|bottle|flex|tap|supply)\b)
meter (turns|runs|moves|spins|creeps) (with|when) <w3>off
bubbles at (union|gas|cock|fitting|valve)
`},
		harmless: rows{text: `
no (gas )?(leak|bubbles|hiss)
leak (test|check)
leaks? (none|nil|neg)
refrigerant
hot gas
`}},
	{Finding: "co", quick: "monoxide| co | co:| co,| co=| co-|warner|exchanger| hx|flue|chimney|roll|soot|yellow|lazy|dizzy|headache|nausea|sick|spill|draft|fumes|puff|imping|exhaust",
		said: rows{text: `
carbon monoxide
dizzy\b
nausea
(feels?|felt|feeling) sick\b
back ?draft
(exhaust|fumes|flue gas\w*|combustion\w*) .{0,16}(spill\w*|leak\w*|into|in|out|at|from)\b
headaches?\b
co (alarm|detector)
high co\b
co\b.{0,20}\b[1-9]\d+ ?ppm
[1-9]\d+ ?ppm (of )?co\b
(crack|hole|rust|split|perforat|corrod)\w*( right)?( through)?( in)? heat exchanger
heat exchanger.{0,20}(crack|hole|rust|split|perforat|corrod)
(crack|hole|hairline|split|perforat)\w* <w2>(in|at|on|of|along|through) (\w+ ){0,5}exchanger
exchanger <w3>(crack|holed|split|perforat)
(flue|chimney)\b.{0,20}\b(block|disconnect|separat|collaps|off\b|open\b|loose|leak|split|rust|broken|down\b|apart|fell|fallen|plugged|nest|crush)
(block|disconnect)\w* (flue|chimney)
rolls? ?out\b
flames? .{0,12}\broll
(holes?|rust\w*|cracks?) .{0,6}in (flue|chimney)
rollout\b
nest <w2>in (flue|chimney|vent)
hood .{0,8}spill
spill\w* (at|from|out of|under) ((draft|draught) )?(hood|diverter)
no draft( $| (at|in|up))
flue gas\w* .{0,24}(room|house|kitchen|basement)
warner <sounds>
soot(y|ed|ing)?\b
(negative draft|puff ?back|flames? imping)
(yellow|lazy) flame
flames? (burns? |burn )?(yellow|lazy)
`},
		harmless: rows{text: `
^ ((client|customer|cust|owner|tenant|she|he|lady|said|says|that|got) )*(headache|dizzy|nausea|sick) <w3>(from|due to|because of) <w>(cold|flu|migraine|hangover|sinus|covid|allerg\w*)( meds| pills)? $
no (co\b|carbon|soot|crack|roll|headache|nausea|back|spill|fumes)
roll ?out (sw\w* )?(tested )?(closed|good|sound|ok|0)
^ disconnected flue
low batter
soot ?free
(co|carbon monoxide) <w2>(test|check|reading|level|meter)s? (at |of )*(passed|good|fine|normal|clear|negative|0|zero|low|none)\b
carbon monoxide (at |reads? )*(0|zero|none|nil)\b
(explain|danger|risk|leaflet|talk|warned|ask)\w* <w3>(of|about) (co|carbon monoxide)\b
co .{0,12}\b[1-9]\d? ?ppm (air free )?(in|at) (flue|stack|exhaust|vent)
(paint|no) fumes
(clean|brush)\w* <w>soot
`}},
	{Finding: "called-unsafe", absent: true, quick: "unsafe|not safe|danger| tag|tagged|at risk| use|condemned|out of service|not to |not be |not touch|not operate",
		said: rows{text: `
^ unsafe\b
(it|unit|machine|appliance|left|as|and|found) unsafe\b
unsafe $
not safe (to (use|run|operate)|for use)
danger(ous)?\b
(unit|machine|appliance|it) condemned\b
^ (left )?condemned\b
red ?tag\w*
at risk\b
(not |un ?)fit (to|for) use
((do not|don't|not to) (use|touch|operate)|(told|asked|warned|advised) <w3>not to (run|(switch|turn) on)|((must|should|may) not|not to) be (used|run|operated|energi[sz]ed|(switched|turned) on))( (it|this|again|anymore|until|before|while|tag|label|sign|sticker|on|and|left|by|<machine>)\b| $)
<machine> (left |taken |put |tagged )*out of service\b
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
(unsafe|dangerous) ((old|vinyl|foil|gas|power|extension|flexible|plastic|vent|dryer) )*(vent|cord|hose|wiring|plug|outlet|flex|duct|connector|wire|pipe|cable|connection)s? <renewed>
condemned (old |worn )+(vent|cord|hose|plug|outlet|flex|duct|connector|pipe|cable)
danger of <w><w>explained
explain\w* <w3>danger
(unsafe|dangerous) before
danger (label|sign)
(food|milk|meat|medicines?|insulin|stock|floor|board|compressor) at risk
at risk of (spoil|thaw|damage|fail|ice|icing|frost)
`}},
	{Finding: "runs-open", absent: true, quick: "open|ajar|cracked|unlocks| up | off |n't stop|not stop|pull|lift|closing|shutting",
		said: rows{text: `
<runs> ((with|when|while|though|if|after|once|as) )?(door|lid) (being |cracked )?(opens?|opened|ajar|up|off|cracked)\b
mag\w* on (with )?door (open|ajar|cracked)
<runs> (when|while|if|after|once|as) <who> (open|pull|lift)\w* (door|lid)\b
(start|run|cook|heat)\w* without (closing|shutting) (door|lid)
runs open\b
(door|lid) (opens|opened|unlocks|can be opened) (while|when|during|mid) (it )?(spin|run|turn|wash|heat|cycle)
(door|lid) open (and |but |it )*<runs>
\w*(n't|not) stop (cooking |running |heating |spinning |turning )?(with|when|if|after|once) (<who> )?(open\w* )?(door|lid)
`},
		harmless: rows{text: `
(light|lamp|bulb|fan|blower|clock|display)s? (stays?|runs?|works?|comes?|turns?|keeps?|goes)
no (spin|run|heat|start)
(stops|stopped|quits) (cook|run|heat|spin|turn|tumbl|spray)
(does|did|do|will) not (run|heat|start|spin|turn|operate|work)
\w*n't (run|heat|start|spin|turn|operate|work)
(drain|water|pump|drum by hand|hand)\b
`}},
	{Finding: "radiates", quick: "microwaves|radiation|leakage|mw",
		said: rows{text: `
microwaves? (leak\w*|escap\w*|come out)
leak\w* (of )?(microwaves|radiation)
radiation\b.{0,12}(leak|high|escap)
leakage (test )?(too high|high|failed|over|above)
([6-9]|\d\d) ?mw\b
`},
		harmless: rows{text: `
no (leak|radiation|microwave)
earth leakage
`}},
	{Finding: "outlet-wrong", absent: true, quick: "ground|earth|polarity|revers|neutral|prong|wired",
		said: rows{text: `
open ground\b
<outlet> (isn't |not |no |without |lacks |missing |with )*(any )?(un|no |open |missing )?<e>(ed|ing)?( wire| connection| pin)?( missing| open| dead)? $
(un<e>ed|no <e>\w*( wire| connection| pin)?) (at|in|on|to) (this |that |her )?(wall |kitchen |laundry )?<outlet>
(un<e>ed|(2|two) prong) <w><outlet>
<outlet> .{0,12}(not|n't|no|without|lacks|missing) (properly )?<e>
<e>( wire| pin)? (missing|open|dead|not connected|disconnected) (at|in|on) <outlet>
<e> (at|in|on) <outlet> (dead|open|missing|bad)
revers\w* polarity
^ no <e>( wire)? (behind|present|there|in box)\b
polarity (revers\w*|backward\w*|wrong|swapped)
(hot|line|live|neutral|ground|earth) (and |to |with )?(hot|neutral|ground|earth)( wires?)? (revers\w*|swap\w*|cross\w*|mixed|interchanged)
(swapped|crossed|reversed) (hot|neutral|ground|earth|line|live) (and|with) (neutral|ground|earth|hot)
<outlet> (mis ?wired|wired (wrong|backward))
(wrongly|badly|mis) ?wired <w><outlet>
(open|lost|floating|loose|broken|missing) neutral\b
neutral (open|lost|floating|missing|broken)\b
bootleg ground
<e>(ed|ing)?( wire| lead| strap| conductor)? <w>(to|onto) <w2>(pipe|tap|faucet|spigot|radiator|gas line|water line)\b
us(ed|es|ing) <w2>pipe <w>(as|for) <e>
`},
		harmless: rows{text: `
(motor|dc|fan|board|diode|battery|magnet|valve|probes?|leads?|transformer|winding|coil|meter)s?\b
not? (revers|open ground)
(measur|ohm|check|test|read)\w* <w2><e>(ed|ing)?( wire| lead| strap| conductor)? to\b
(mended|repaired|fixed|corrected|cured|ruled out)\b
<outlet> (well |properly )?<e>ed $
`}},
	{Finding: "earth-off", absent: true, quick: "earth|ground|green|bond",
		said: rows{text: `
(<e>(ing)?|bond\w*|green) (\w+ )?(screw|stud|bolt|rivet|nut|lug)s? (\w+ )?(snapped|snaped|sheared|stripped|broken?|busted|cracked|corroded|rusted)\b
(screw|stud|bolt|rivet|nut|lug)s? (for|of|on|holding) (<e>|bond\w*|green)( \w+)? (snapped|sheared|stripped|broken?|missing|gone|loose)\b
(<e>|bond\w*) (screw|nut|lug|tag|tail|clip)s? (\w+ )?(missing|loose|gone|lost|stripped|not (on|there|fitted|back)|left (off|out|loose)|off|broken)\b
(left|forgot|without|no|missing|lost) (\w+ )?(<e>|bond\w*) (screw|nut|lug|strap|wire|tag|tail|clip|lead)s?\b
plug (has |got |with )*(no|without) (<e>|ground pin|round pin)\b
(earth|ground|bonding)( wire| lead| strap| conductor| bond| core) (hangs? |hanging )?(loose|dangling|broken|torn|pulled out|(came|come|fell|fallen) off|not (connected|attached)|hanging|chewed|corroded)\b
(earth|ground|bond(ing)?) (wire|lead|strap|bond|lug) (gone|burnt|melted|cut)\b
no bond(ing)?( wire| lug)?( $| (on|at|to)\b)
(earth|ground|bonding) (wire |lead |strap |lug |screw |tab |tag |stud )?((on|at|of|to|from) (\w+ ){1,3})?(never|not|un) ?(been )?(connected|attached|fitted|made|bonded|landed|hooked)\b
bond(ing)? (wire|lead|strap|jumper) left (off|out|loose)\b
(chassis|frame|drum|shell|panel) (not |un|never )(bonded|earthed|grounded)\b
green( and yellow| yellow)? (wire|lead|conductor) (just |hangs? |hanging |left )*(loose|dangling|broken|cut|off|missing|torn|pulled out|not (connected|attached|landed|hooked)|disconnected|hanging|chewed|corroded)\b
(earth|ground|bonding)( wire| lead| strap| conductor| bond)? (not |un)(reconnected|refitted|put back|hooked up|hooked back|fitted)
<e> left (off|disconnected|loose|out|open)\b
<e>( wire| lead| strap) left (disconnected|loose|open|un\w+)\b
forgot (to )?((hook up|hook|connect|reconnect|put|refit|fit|attach|tighten) )?(back )?<e>\b
^ (it |unit |machine |cabinet |case )?(not|isn't|un|never) ?(earthed|grounded)\b
^ no <e> (wire )?(hooked|connected|landed)
^ no earth $
no <e> (on|at|in|to) (<machine>|cabinet|case|metal|frame)\b
`},
		harmless: rows{text: `
(outlet|receptacle|socket|cord|neutral)\b
winding|pin|coil
(4|four) wire
`}},
	{Finding: "leak-found", quick: "nick|stab|gouge|pour|refrigerant|pierced|punctured|hiss|sealed system|leak|sniffer|propane|butane|detector|charge|a2l",
		said: rows{text: `
(refrig\w*|charge|propane|iso ?butane|(r ?)?(600a?|290|32|454b)|a2l|joint|flare|braze|schrader|coil|evap\w*|flammable gas) (gas )?(leak|escap)
(sniffer|(isobutane|propane|butane|hydrocarbon|refrigerant|combustible|leak|gas|a2l) (gas |leak )?(detector|sensor)) <sounds>
detector <sounds> (at|near|by|on) (evap|joint|coil|braze|flare|process|tube|comp|union|cock|valve)
leak\w* (of )?(refrigerant|propane|iso ?butane)\b
los(es|ing|t) <w>(refrigerant|charge|410a?)\b
(nicked|stabbed|gouged|pierced|punctured|poked hole in|holed) (her )?<w>(evaporator|evap|coil|tub(e|ing)|liner)
(evaporator|evap|coil|sealed system|tubing) (pierced|punctured|holed)
hiss\w* (from|at) (evap|coil|tub|joint|line)
sealed system leak
(smell\w*|smelt|whiff|odor) (of )?(refrigerant|isobutane|butane)\b
(r ?(600a|290)|refrigerant|propane|isobutane)( gas)? (pour|com|blow|hiss|spray|gush|rush|stream|bubbl)\w* (out|from)\b
leak\w* (at|in|by|near|from) (evap\w*|condenser|joint|coil|capillary|(filter )?drier|process tube|low side|high side|flare|schrader|service valve)( $| braze)
`},
		harmless: rows{text: `
no <w>(leak|hiss|smell|odor)
normal
water
leak (test|check|search)\w* <w>(clean|good|neg\w*|passed|tight)
`}},
	{Finding: "hazard", absent: true, quick: "neutral|propane|290|600|isobut| lost|pulley|chain|sprocket|coupling|e stop|estop|stop button|mushroom|emerg|cover|nip |oversiz|overfus| dry |splic|strain|relief|vinyl|condensate|fire|fall|bracket|slug|overload|stays on|glows|t off|drip|leak|bare|exposed|chewed|gnawed|earth|ground|green|blew|shot o|spat|popped|bulg|swoll|swell|ballo| hot | and b|accessible|tpr|prv|too small|too thin|frayed|copper|water|scald|hurt|burn|cut|caught|trapped|too hot|plug|cord|t&p| t p |insulation|explo|gas valve|tip|guard|delayed|light|ignites|blow|flash|fell|sharp|glass|inside|ammonia|injured|flex|sheath|jacket|socket|outlet|recept|knob off|lick|control off|dial off|live |urn off|en off|not be |n't be |tch off|go off|extension| ext |safety valve| cap|harness|spade|terminal|wire nut|melt|scorch|charred|cooked|connector|heaters|solder|too big|too large|nail |t trip|dead front|ct won|plastic duct|for fuse",
		acts: rows{text: `
(4|four) ?(wire|prong|pin|core|conductor)\b.{0,60}(strap|link|jumper|bond\w*|screw) <w>(on|to) neutral
(strap|link|jumper|bond\w*) <w2>(on|to|at) neutral .{0,24}(4|four) ?(wire|prong|pin|core|conductor)
neutral <w>(bonded|strapped|linked|tied) <w>(to|at) <shell>.{0,30}(4|four) ?(wire|prong|pin|core|conductor)
(strap|link|jumper) (left|kept) (on|to|at) neutral
<relief> (\w+ ){0,5}(swapped|replaced|put) <w3>(plug|cap|nipple|bushing)\b
(put|screwed) (plug|cap) (on|in|over) <w><relief>
(propane|isobutane|r ?290|r ?600a?) (drop|<w3>(in|for|of) (r ?)?(134a|22|4\d\da)\b)
dropped in (r ?290|propane)\b
(plugg|capp|block|cork|wedg|solder|screw)ed (off |up |shut )?<w><relief>\b
tied (off |up |shut )?<w>(relief|t (and )?p|tpr|prv)\b
(plug|cap|cork|bung|stopper) (in|on|into|over|onto) <w>(t p|tpr|prv|relief)
(hard ?)?(wired|spliced) <w>(to|into|onto) <w>(extension|ext)\b
slugs? (in|into|for|instead)\b
(set|turned|cranked|adjusted|dialed|raised|upped|jacked|bumped) (up )?<w>overload <w2>(up|higher|high|max|above|over)\b
(raised|upped|cranked|jacked|bumped) (up )?<w>overload
overload <w2>(turned|cranked|dialed|jacked|bumped) (all way )?(up|higher|to max|over)\b
`},
		said: rows{text: hazards},
		harmless: rows{text: `
(air|water|exhaust|supply|duct|vent) outlet
(risk|hazard) explained
(light|lamp|fan|blower|alarm|beep\w*|display|clock|water) <w>(cannot|can't)
no (bulg|bare|exposed|water|sharp|burn|delayed|flash|fire|leak)
(temp\w*|pressure|volts|amps) <w>(could|may|might|will) fall
(mended|repaired|replaced|covered|insulated|taped)\b
(filed|deburred|smoothed|rounded) <w>sharp
sharp edges? (\w+ ){0,4}(filed|smooth\w*|deburred|rounded|taken off|folded)
(years?|months?) ago
last year
bare (copper )?(wire )?((for|to|is|as) )?<e>
^ (stripped|trimmed) insulation
(took|take|pulled|had|removed) <w2>guards? off
(talk|spoke|discuss|explain|told|warn|advis|ask)\w* <w3>(about|of) <w>lint <w>(fire )?(risk|hazard)
`}},
}
