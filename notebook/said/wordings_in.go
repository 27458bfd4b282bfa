package said

// inSome are dangers, as in alarms, of which some appliances alone are told by such words.
var inSome = []Alarm{
	{Finding: "radiates", in: microwave, absent: true, quick: "monitor|weld|crack|bent|warp|smash|shatter|broken|holed|hole |torn|burnt|burned",
		said: rows{text: `
(cracked|broken|bent|warped) (oven )?(door|window)( glass| screen)?( $| and )
door( glass| window| screen| seal)? (cracked|broken|bent|warped|smashed|shattered|torn)
(screen|mesh|window) (in door )?(holed|torn|burnt|burned|cracked|smashed)
(hinge|latch)(es|s)? (broken|bent)
monitor( switch| interlock)? (<gone>|weld\w*|(cut|taken|pulled|wired) out)
hole (burnt |burned )?(in|through) (door|screen|mesh|window)
(door|screen|mesh|window) (hole|crack)
`}},
	{Finding: "hazard", in: startsAlone, absent: true, quick: "itself|own | lock|latch| unlock|self clean|g clean|n clean|runaway|falls open",
		said: rows{text: `
(turns?|comes?|came|starts?|started|runs?|ran|heats?|cooks?) (on )?(all )?(by itself|on own)\b
(latch|lock|door) <fails> (lock|latch|hold|engage) <w>(self )?clean
self clean (door )?(latch|lock) <fails> (lock|latch|hold|engage)
door (opens?|unlocks?) <w2>(during|in|while|mid) (self )?clean
(runaway|door falls open)\b
`}, harmless: rows{text: `
(fan|light|lamp|clock|display)s? (turns?|comes?|starts?|runs?)
`}},
	{Finding: "gas-leak", in: holdsGas, quick: "bubbl|leak test",
		said: rows{text: `
bubbl\w* <w2>(at|on|around|from) <w>(union|gas|cock|fitting|valve|regulator|manifold|flex|connector|elbow|tee|nut|joint|pipe|flare|braze)\b
bubbl\w* when soaped
(failed|fails|did not pass) <w>leak test
leak test <w>failed
`}, harmless: rows{text: `
no bubbl
bubbl\w* te?st (neg|ok|good|clean|passed)
`}},
	{Finding: "gas-leak", in: burnsGas, quick: "gas|bubbl|stays open|passes|passing|hiss|leak|seep|weep|whiff|pipe open|smell|burner stay|flame stay|flames stay|shut off|shutoff",
		said: rows{text: `
(burner|valve|tap|cock|control|safety|jet)s? (\w+ )?(keeps? |still |lets? )*(pass(es|ing)|lets? (by|through|out)) (by |out |through )?gas\b
(burner|flame)s? stays? (on|lit) (with|when|after|though) <w>(off|knob|valve|control|cock|call|satisfied)\b
hiss\w* <w2>(at|from|in|by|near|behind) <w>(flex|hose|regulator|union|connector|cock|fitting|gas|pipe|meter|bottle|cylinder)
(regulator|flex|connector|union|cock|manifold|orifice|injector)( hose| fitting| joint)? (leak|seep)
leak(s|ing)? (there |again )?(at|on|in|by) (elbow|tee|union|nut|cock|regulator|fitting|flare|connector|flex|manifold)
leak(s|ing)? (little|bit|slightly|some)\b
(valve|cock|control|shut ?off) <w>(leaks?|leaking|passes|passing) ($|by|past|through)
(small|slight|tiny|little|slow) leak ($|left|remains|there|again)
leak (left|remains)\b
(nut|union|fitting|stem|joint|connector|cock) (weep|seep|leak)
(nut|union|fitting|regulator|joint|connector|cock|flex|hose|(gas|flex) line) (blows )?bubbl
(safety|oven|gas|main|control) valve <w>stays open\b
whiff (at|from|by|near|around)\b
weep\w* (union|fitting|joint|connector|nut|flare)\b
smells? (it )?(again|back)\b
(left )?(old )?(gas )?pipe (left )?open
`}, harmless: rows{text: `
no (leak|hiss)
water\b
burn(t|ing)|mold|mould|musty
normal
`}},
	{Finding: "leak-found", in: sealed, quick: "detector|sniffer",
		said: rows{text: `
(detector|sniffer) <sounds> $
`}, harmless: rows{text: `
(smoke|fire|motion|co|warner) (gas )?detector
`}},
	{Finding: "hazard", in: heatsBesides, quick: "stays |stuck on|fluff",
		said: rows{text: `
(burner|heater|element|heat|oven) stays (on|hot|lit|red) (with|when|even|after|though) <w3>(off|stops?|stopped)\b
(heater|element) stays on $
heats (on|in|with) (air |no heat )?fluff
(burner|element|heater|oven)( \w+)? stuck on( $| high| full)
`}},
	{Finding: "co", in: burns, quick: "ppm|cell",
		said: rows{text: `
[1-9]\d+ ?ppm
(cells?|clamshells?)( \d)? <w>(crack|split|holed|rusted through|perforat)
(crack|hole|split)\w* (in|through) <w2>cells?\b
`}, harmless: rows{text: `
(co2|nox|chlorine|hardness|alkalinity|salt|tds|inhibitor|glycol|calcium)\b
[1-9]\d? ?ppm (air free )?(in|at) (flue|stack|exhaust|vent)( $| (normal|good|fine|after|hot))
no (crack|hole)
`}},
	{Finding: "hazard", in: burns, absent: true, quick: "go out|quit|close|t turn|froze|stuck open|seized|gas line|regulator|shutoff|shut off|t shut|orifice|brass|uncoated|kink|pool|bang|boom|whoomp|whomp|whump|woof|explo|connector|flex|gas hose|gas line|orifice|jet|injector|spud",
		acts: rows{text: `
(drill|ream|enlarg)\w* (out |open |up |bigger )?<w3>(orifice|jet|injector|spud)s?\b
`},
		said: rows{text: `
(bang|boom|whoo?mp\w*|whump\w*|woof|explo\w+) (on|at|when|with|upon|as|before) <w2>(light|lit|ignit|fire)
(lights|ignites|fires|lighting|ignition) (up |off )?<w>with <w>(bang|boom|whoo?mp|whump|woof)
(flex|gas|appliance) (connector|hose|line)s? <w>(kink|crush|rubb|chaf|pinch|corrod)
(kinked|crushed|chafed|pinched|corroded) <w>(flex|gas|appliance) (connector|hose|line)
(orifice|jet|injector|spud)s? <w>(drilled|reamed|enlarged)
(flame|burner)s? <fails> (go out|shut off|quit)
(valve|cock|shut ?off)( valve)? (<fails> <w>(shut|close|turn)|froze\w*|stuck open|seized)
(open gas line|gas line (open|not capped|uncapped))\b
((no|missing) (gas )?regulator|regulator <gone>)
no (gas )?(shut ?off|cock)( valve)?( $| (behind|on|at|for))
(uncoated|brass|kinked) <w>(flex|connector)\b
(flex|connector) <w>kink\w*
((lp|propane) (orifices?|jets?|spuds?) on|(on|to) (lp|propane) with) nat\w*
propane pool\w*
`}, harmless: rows{text: `
no <w>(bang|boom|whoo?mp|whump|woof|kink)
(bang|boom\w*|woof)\b.{0,20}\b(gone|fixed|cured)
(vent|duct)\b
`}},
	{Finding: "co", in: ventsGas, quick: "dump|blow|vent|exhaust|duct|detector|inducer|comb|spill|wall",
		said: rows{text: `
(exhaust|vent|duct|blow|dump|discharg|terminat|end|stop|open)(s|es|ing|ed|ates)? (just |only |straight |right |pipe |hose |duct |air |dumps |blows |ends |stops |opens |out )*(in|into|inside|in to) <w>(wall|attic|crawl\w*|garage|house|room|basement|laundry|cabinet|ceiling|closet|kitchen|cellar)\b
(inducer|exhauster)( motor)?( fan)?( housing| wheel| body| gasket| case)? <w>(crack|split|hole|perforat)
(cracked|split|hole in) (draft )?inducer
combustion air <w2>(cover|block|plug|shut|closed|taped|restrict|stuffed)
(covered|blocked|plugged|shut|closed|taped|stuffed) <w>combustion air
(vent|exhaust|duct)( pipe| hose| duct| connector)? ((fell|fallen|come|came|slipped|popped|blown|knocked) (off|out|down|apart|loose)|pulled (off|apart|loose)|disconnected|not connected|apart|off)\b
(vent|exhaust|duct) (dumps|dumping|blows|blowing|vents|venting) (inside|indoors) $
no comb(ustion)? air
spill(age|ing|s) ($|<w>(at|in|into|out|from) <w>(hood|house|room|basement|diverter|closet|vent))
(vent|flue)( pipe)? <w>touch\w* <w>(wood|joist|stud|fram\w*)
(vent|exhaust|duct)s? inside\b
vent\w* <w>(under|near|below|close to) <w>window
detector <sounds>
`}, harmless: rows{text: `
(smoke|fire|leak|gas|motion|co) (leak )?detector
no spill
`}},
	{Finding: "co", in: drafts, quick: "vent|exhaust|terminat",
		said: rows{text: `
(vent|exhaust|terminat\w+)( pipe| cap| terminal| terminat\w+| connector| hood| stack| run)? (partly |partially |half |fully |completely |badly )*(block|plug|clog|obstruct|restrict|stopped up|stuffed|crush|collaps|full of|choked|packed|snow|iced over|covered)
(blocked|plugged|clogged|obstructed|restricted|crushed|collapsed) <w>(vent|exhaust|terminat\w+)( $| pipe| cap| stack| terminat)
`}, harmless: rows{text: `
(register|return|supply|floor|air|heat|ceiling|room|bedroom|wall|kitchen|bath|dryer|auto\w*|crawl\w*|attic|soffit|gable|tank|tub|hood) vent
`}},
	{Finding: "smoke", quick: "flared|flare up|glow", in: (*Appliance).Dries,
		said: rows{text: `
(red|orange) glow\b
glowing (red )?(inside|under|behind|in back|at back)\b
`},
		harmless: rows{text: `
(igniter|ignitor|element|elem|burner|heater|coil|normal)\b
`}},
}

// drafts is of what gives its burnt gas to a flue: not what dries, whose vent has lint, nor what cooks.
func drafts(a *Appliance) bool { return burns(a) && !a.Electric && !a.Dries() && !Has(a.Unit, cooking) }

func microwave(a *Appliance) bool { return a.HighVolts }

// startsAlone is of what must not start without a hand: what cooks.
func startsAlone(a *Appliance) bool { return Has(a.Unit, cooking) }

var cooking = []string{"oven", "range", "stove", "microw", "cooker"}

// burnsGas leaves out what holds water too, whose joints may leak that.
func burnsGas(a *Appliance) bool { return burns(a) && !a.Tank }

// heatsBesides is of what is not heated by gas, or holds water.
func heatsBesides(a *Appliance) bool { return !burnsGas(a) }

func sealed(a *Appliance) bool { return !a.Unsealed && !burns(a) && a.Unit != "" }

func burns(a *Appliance) bool { return a.Gas || a.Furnace }

func holdsGas(a *Appliance) bool { return !a.Unsealed || a.Gas || a.Furnace || a.Unit == "" }

// ventsGas is of what burns gas, and of a dryer that may.
func ventsGas(a *Appliance) bool {
	return a.Gas || a.Furnace || !a.Electric && !a.HeatPumpDryer && a.Dries()
}
