package said

// inRun are dangers of what was left undone, of water at what is live, and of live metal,
// in rows of their own: they are looked at only when their own words stand there (common
// practice). Water of 65 °C and more scalds in seconds (from memory).
var inRun = []Alarm{
	{Finding: "hazard", absent: true, unless: TakesOut, quick: "left|leav|forg|n't |dnt |ent |not |never|without|braz|solder|torch|weld|tape",
		beside: "cover|panel|guard|shield|front|plate|kick|screw|nut|plug|relief|clamp|grip|grom|bushing|flue|duct|union|flex|hose|brack|kit|glass|cap|driver|spann|wrench|plier|tool|bolt|bit|rag|tape|braz|solder|torch|weld",
		acts: rows{text: `
(boxed|closed|buttoned|back|put|r[au]n|runs|left|started) (it )?(up |together |back )*<w>without <w2><kept>\b
`},
		said: rows{text: `
(left|leaving) <w4><kept> <w3>(off|out|open|undone|loose|hanging|un\w+ed)\b
(left|leaving) (off|out) <w2><kept>\b
<kept> (was |all |just )?left <w>(off|out|open|undone|loose|hanging|un\w+ed)\b
(forgot|\w+n't|not|never) (to )?<puts> (back |up |down |on |in |off )*<w3><kept>\b
forgot <w><kept>\b
(left|leaving) <w4>cap(acitor)?s? <w2>(charged|live|undischarged)\b
cap(acitor)?s? (left charged|(not|never|un) ?(been )?(discharged|bled))
(forgot|\w+n't|not|never) (to )?(discharge[ds]?|bleed|bled|short(ed)? out) <w2>cap(acitor)?s?\b
(left|leaving|forgot) <w3>(\w*driver|spanner|wrench|pliers|tools?|nut|bolt|bit|clamp|rag) <w>(inside|on|under|behind|in)\b
(just|only) <w>taped? 
taped? only\b
(taped|wrapped|bound) (up |over |round )*<w><hurt> <w><cord>
<hurt> <w><cord> <w3>(taped|tape)\b
<torch> <w3>(with|while|without) <w3>((refrigerant|gas|charge|<burns>) <w>(in|inside|left)\b|(purg|recover|evacuat|flush|vent)ing)
<torch> <w4>(near|next to|beside|close to|by) <w>(gas|<fuel>|paint|foam|cylinder|bottle|can|refrigerant|<burns>)\b
`},
		harmless: rows{text: `
left (side|hand|rear burner|front burner)
`}},
	{Finding: "hazard", absent: true, quick: "water|leak|drip|wet |weep|soak|spray|dribbl|trickl|rain|condensate|overflow|seep|splash|moist|damp|flood|drool|puddle|pour",
		beside: "board|pcb|transf|termin| box|conduit|element cover|wir|harness|connect|plug|contactor|breaker|junct|relay|timer|electr|strip|mains|live|jbox|cap|outlet|socket|recept",
		said: rows{text: `
<wet> (right )?(on|onto|in|into|over|down|through|inside|on to|in to) <w3>(<main>|<more>)\b
<wet> (right )?<by> <w2><socket>
<wet> (right )?<by> <w2><main>\b
(<main>|<more>) <w>(wet|soaked|soaking|damp|flooded|dripping|full of water|under water|in (puddle|water))\b
(wet|soaked|flooded|damp) <w>(<main>|outlet|socket|receptacle|power strip)\b
conduit <w>(leak\w*|drip\w*|wet|full of water)
`},
		harmless: rows{text: `
(not?|nothing|never|isn't|without) <w2>(water|leak|drip|wet|damp|moisture)
leak (test|check|sens|det|search)
water (heater|valve|outlet|level|inlet|pump|filter|sensor)
(drain|valve|pump|hose) (outlet|socket|plug)
dry\b
(dried|replaced|mended|repaired|fixed|cured|stopped)\b
`}},
	{Finding: "hazard", absent: true, quick: "near|almost|drops|dropped|falls|fell|slams|crashes|stack|razor|jagged|sharp|slic|gash|stab|petrol|gasolin|gas can|thinner|solvent|kerosen|aerosol|paper|mmab|combust|cardb|curtain|rags|boxes|paint|crumbl|flak|undersiz|too |thinner|hob|cooktop|glass|ceramic|bare|pins|lugs|blades| cover|c at |f at |c from|f from|propane|290|600|butane|lpg|uncapped|not capped|no cap|bbq|camping",
		said: rows{text: `
(near|nearly|almost) (took|got|lost|crushed|caught|hit|(fell|down) on|broke|cut|trapped|burnt|burned|killed) <w2>(me|her|him|us|them|kids?|child|baby|toddler|dog|cat|fingers?|hand|foot|toes?|arm|head|leg)\b
door <w>(drops|dropped|falls|fell|slams|crashes) (open |down |shut )?(like|hard|fast|heavy|down)\b
stack\w* <w4>((no|without) <w>(kit|strap|straps|bracket|brackets)|(not|un|isn't|never) ?(strapped|secured|fixed|anchored|bolted|tied))
(no|missing|without) stack\w* (kit|strap|bracket)
((razor|jagged) edge|(sharp|jagged) (broken|plastic|metal|liner|corner))
(sliced|slashed|gashed|stabbed|jabbed|cut|burnt|burned|crushed) (my|her|me|him|client's|customer's) <w>(thumb|palm|knuckle|wrist|leg|foot|toe|head|face|finger|hand|arm)
(<fuel>|gas cans?|paint (can|tin)s?|rags|cardboard|boxes|newspapers?) <w4>(next to|near|by|beside|against|under|around|over|close to|on) <w2>(burners?|flame|pilot|heater|flue|<mach>|vent)\b
insulation <w>(crumbl|flak|perish)\w*
(undersized|too thin|too small|thinner) <w><cord>
<cord> <w2>(too (small|thin|light)|undersized)\b
(hob|cooktop|ceramic|glass top)( glass| top| surface)? <w><crack>
<crack> <w>(glass )?(hob|top|cooktop|ceramic)\b
bare (\d+ ?v? )?<w>(terminals|lugs|live|pins|bus ?bars?|blades?)\b
(terminals|lugs|pins|bus ?bars?|blades?) (bare|uncovered)\b
(stat|thermostat|wiring|control|electrical) covers? (<gone>|open)
((6[5-9]|[7-9]\d) ?c|1[5-9]\d ?f)( water)? (at|from|out of) <w2>(tap|faucet|shower|bath|basin|sink)\b
(r ?)?(134a?|22|12|4\d\d[ab]?) <w3>(with|on) (<burns>|butane|lpg)\b
(gassed|charged|topped|filled|recharged) <w3>(with|on) <w>(bbq|camping|lighter|grill|cooker|stove) (gas|propane|butane|lpg)\b
(line|pipe|cock|tee|stub|gas) <w>(uncapped|not capped|with no cap|no cap)\b
`},
		harmless: rows{text: `
no <w>(petrol|gas can|boxes|rags|cardboard|bare|sharp)
(shelf|turntable|plate|jar|bowl|light|lamp|tray|drawer) (glass )?(crack|shatter|smash|broken)
(pipe|line ?set|suction|foam|duct|tank|cabinet|wall|oven) insulation
(replaced|fitted|new|renewed|moved|filed|covered)\b
ago\b
`}},
	{Finding: "shock", quick: "test|neon|pen |stick|bare foot|barefoot|buzz|alive|feel|felt|ncv|cabinet|case |drum|metal|casing|chassis|frame|shell",
		beside: "light|lit |glow|beep|chirp|flash|buzz|sings|goes|comes|scream|hot|live|foot|touch|electric",
		said: rows{text: `
(tester|test (lamp|light)|neon( screwdriver| tester| pen| driver)?|(voltage|volt|test) ?(pen|stick)|pen|ncvt?) <w>(lights|lit|glow\w*|beep\w*|chirp\w*|flash\w*|buzz\w*|sings|goes off|comes on|screams) <w4>(<hull>|lid|tub|body|skin|tap|sink|panel screws?|<mach>)\b
(<shell>|drum|lid|tub|skin) <w>(goes|turns|is|becomes|gets|sits|comes)? ?(hot|live|alive) ((to|against|from) (<e>|neutral|sink|tap)|(with|when|if) <w3>(plug|cord|polarity|revers\w*)\b)
(buzz\w*|tingl\w*|tickl\w*|hum\w*|vibrat\w*) (when|if) <w>(bare ?foot|barefoot|wet hands?|touch\w*)
(feels?|felt) (buzz\w*|electric|alive)\b
`},
		harmless: rows{text: `
no <w2>(glow|light|beep|volt)
(neon|indicator|power|panel) (light|lamp|indicator)s? <w>(on|lit|glow|comes)
(hinge|defrost|elem\w*|supply)\b
`}},
}
