package said

// hazards are wordings of what can hurt whoever is near, a row each (common practice).
const hazards = `
(bare|exposed|frayed) <w>(wires?|wiring|conductors?|cord|cable|live)\b
(cord|cable|flex|wires?|leads?|wiring) (insulation )?(bare|frayed|exposed)\b
insulation melted\b
(live|hot|energi[sz]ed) (lugs?|terminals?|parts?|conductors?|ends?|pins?|bus ?bars?) (left )?(bare|exposed|uncovered|accessible|visible|showing)
(cord|mains cable|power cable) (chewed|gnawed|cut (through|open|into)|split open|nicked)\b
insulation (gone|missing|stripped|worn|chewed|rubbed|off|burnt|burned|cracked|split|damaged|nicked|scraped|peel\w*|brittle)( off| through)? <w3>(wire|cord|cable|conductor|lead|l[123]|hot|live)s?\b
(wire|cord|cable|lead|conductor)s? <w>(insulation|jacket|sheath\w*) (gone|missing|worn|chewed|rubbed|off|cracked|damaged|nicked|torn|peel\w*|brittle)
(sheath\w*|cord|flex|mains cable|power cable|outer jacket|cord jacket) <w>(cracked|torn|perished|nicked|chafed|pinched|crushed|damaged|worn through|pulled (back|out)|split)( $| (at|near|open|by|along|through|and|in|left)\b)
(split|cracked|torn|perished|damaged|nicked|chafed|crushed) <w>(sheath|cord|flex|mains cable|power cable)\b
(chafed|worn|rubbed|chewed|nicked|through|down) <w>to (bare )?copper
bare (ends?|splices?)\b
(cores?|conductors?) (visible|showing|exposed)
(outlet|socket|receptacle) <w>(cracked|smashed|broken)\b
hot enough to burn\b
(cord|cable|plug|wires?|wiring|outlet) <w>(in|under) water\b
wire ?nuts? <w>(off|missing|gone)\b
bare copper <w2>(touch\w*|against|rubb?\w*|near|at|on|by|under|in)\b
(wire|lead|terminal|spade|connector|lug|contact|harness)s? <w><burnt> (\w+ ){0,6}<left>
<burnt> <w>(wire|lead|terminal|spade|connector|lug|contact|harness)s? (\w+ ){0,6}<left>
left <w2>(<burnt>|swoll\w*|swell\w*|bulg\w*) <w>(wire|lead|terminal|spade|connector|lug|contact|harness|cap|capacitor)s?\b
(cap|capacitor)s? <w>(swell\w*|swoll\w*|bulg\w*|burst|domed|leak\w*) (\w+ ){0,6}<left>
(swoll\w*|swell\w*|bulg\w*) <w>(cap|capacitor)s? <w3><left>
(thin|light|lightweight|small|undersized|flimsy|cheap|lamp|household|indoor|(16|18) (ga|gauge|awg)) <w>(extension|ext)( $| (cord|lead|cable))
(extension|ext) (cord|lead|cable) <w>(thin|light|small|undersized|coiled)\b
(breaker|disconnect|terminal block|connector|spade|lug|wiring|wires?|switch|fuse) <w>hot to touch
breaker (runs|gets|feels|too|getting) hot
(plugged|capped|blocked|wedged|tied) <w>safety valve
safety valve <w>(capped|plugged|blocked|seized)
terminals?( pins?)? (blown|blew|shot|spat|popped) (out|off)
(blew|blown|spat|shot) (out )?(one )?(comp\w* )?terminal
copper (show(s|ing)|bare|exposed|visible)
l[123] <w>(bare|exposed|uncovered)\b
scald
(child|kid|baby|client|customer|tenant|owner|somebody) (got )*(hurt|injured|(burnt|burned) on)\b
(burn(t|ed|s)|cut|hurt|caught|trapped|pinched|crushed) (her |my |client's |customer's )?(hand|finger|arm)s?\b
fingers? (got )*(caught|trapped|pinched|cut)\b
(plug|cord|outlet|receptacle|socket)( prongs?| pins?| blades?)? (runs |gets |feels |too )*hot( $| to touch| when| after| under)
<mains> (looks |feels |got |gets )*(hot|warm|gone|went|turned) (and |n )?(brown|black)
(door|glass|handle|outlet|cabinet) .{0,12}too hot to touch
glass shattered
(locked|trapped|shut) inside\b
ammonia (smell|leak)
(smell|leak)\w* of ammonia
<relief>( valve| relief| discharge| drain| line| pipe| tube| port)* (capped|plugged|blocked|missing|removed|gone|seized|tied|stuck|frozen|painted|corroded shut|wrong|no (discharge|drain|tube|pipe)|<fails> (\w+ or )?(open|pop|lift|work|reliev)\w*)
no (discharge|drain) (tube|pipe|line) on <relief>
[1-9]\d\d psi relief on
((fires|fired|firing|runs?) (dry|(with|on) low water)|dry fired|low water (and |but )?fir(es|ing))\b
(t p|tpr|prv|relief valve) <w3>(capped|plugged|corked)\b
(t p|tpr|prv|relief valve) (\w+ ){0,6}(plug|cap|cork) (screwed |pushed |glued |soldered )?(in|on)\b
no (t p|tpr|relief)( valve)? 
tank (bulg|swoll|swell|balloon)
bulg\w* (in |on )?tank
anti ?tip <w>(missing|off|not)
no anti ?tip
(tip(s|ped) (over|forward)|range tips)\b
(unit|machine|appliance|it|dryer|washer|range|fridge|refrigerator) (\w+ and )?(fell|falls) (on|over|off|down|out|from (window|wall|bracket|stand|stack))
(fan|blade|belt|pulley|chain|coupling|sprocket)( blade| drive)? cover (left off|off left|off and lost|missing|broken|gone|lost|not (re)?fitted)
guards? ((over|on|of|for|round) <w>(fan|blade|belt|pulley|chain|coupling|sprocket) )?<w>(<gone>|broken|not refitted)\b
(no|missing) <w>guards?( $| (on|over|at|for|and)\b)
nip (point |roll )?(exposed|open)
light curtain (muted|blocked|out|off|dead|bypassed)\b
(fan|belt|pulley|chain|coupling|sprocket)s? <w>(wide open|(runs?|running) open|unguarded|without (guard|cover)|open no guard)\b
(emergency stop|e ?stop|stop button|mushroom|pull cord( stop)?)( button| switch)? (no effect|no good|does nothing|dead|bad|broken|without effect|wired out|<fails> (stop|work|drop|kill|do)\w*)\b
delayed ignition
(bbq|grill) propane
(ball|gate|shut ?off) valve <w3>(on|in|before|ahead of) <relief>
<relief> (\w+ ){0,5}(ball|gate) valve
valve on <relief> (line )?(shut|closed)
(comp\w*( terminal)?|terminal( block)?|disconnect|junction( box)?|element|access|outlet) covers? (missing|gone|lost|not (on|there|fitted)|left off)\b
no <w>(comp\w*|terminal|disconnect|junction( box)?|element) covers?\b
no (terminal )?cover (on|over) (comp\w*|disconnect|junction|terminal|box|panel)
(no|missing) dead ?front|dead ?front <gone>
heaters? <w>(pulled|taken|cut|removed|jumped|out|gone|missing) (out )?(of|from|in) (overload|starter)
overload heaters? <w>(out|missing|gone|removed|jumped|pulled|shorted|too (big|large)|oversized?|wrong)\b
no (overload heaters?|heaters? in (overload|starter))
(copper|wire|jumpers?|slugs?) (for|in place of|instead of) (overload )?heaters
(oversized? heaters|wrong heaters in overload)\b
overload (set )?(too|way) high
overfused
(fuse|breaker)s? too (big|large)
slugs? (in|for|where) (disconnect|fuse|holder|block)
(nail|penny|coin|bolt|wire) for <w>fuse
fuses? <w>soldered
propane in <w2>(r ?)?(22|134a)\b
splice\w* <w3>(no|not in|without) box
(open|flying) splice
spliced with tape
no strain relief
(limit|breaker|gfci) <fails> trip
vinyl <w>(duct|vent|hose)
plastic (flex )?duct
disconnect <fails> (pull|open|shut)
water in <w>panel
(lights|ignites) with (bang|boom|explosion)
(flames?|burners?) (blows?|flash\w*) back
explo\w+ (on|at|when) (start|light|ignit)
gas valve (does not|doesn't|won't|will not) (shut|close)
sharp edges?\b
fire (hazard|risk)
(could|may|might|will) fall( on| out| down| off| $)
(tip|tipping) bracket (missing|off|not|gone)
(element|heater) (stays on|glows)\b.{0,24}\boff\b
(element|heater|burner) (still )?(on|hot|red) (with|when|after|though) <w>(control|knob|switch|dial|thermostat)s? <w>off\b
(element|heater|burner|oven|broiler|grill|stove|cooktop|hob|hotplate|heat|fryer|toaster) ((went|got|hit|ran|climbed) (\w+ ){0,4}and )?(will not|(wo|does|did|would)( not|n't)) (turn|shut|switch|go) off
(cannot|can't) be (turned|switched|shut) off
^ stays (on|hot|lit) <w>(with|when|even|after|though) <w3>off\b
(heats|heating|cooks|bakes) <w>(with|when|even|after|while) (<w2>(knob|control|switch|dial|thermostat) )?<w>off\b
flames? <w3>lick\w*
glass <w3>(falling|fell|hanging)\b
(extension|ext) (cord|lead|cable) <w>(across|under|through|over) <w>(hall\w*|carpet|rug|door\w*|room|floor|wall|ceiling|window|walkway|stairs)
`
