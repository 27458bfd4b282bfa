package said

import (
	"strconv"
	"strings"
	"sync"
)

// Fare is what words that come after a repair was proved say of how the machine does.
type Fare byte

const (
	Beside  Fare = iota // of no machine and no complaint, or only of the papers of the call
	Well                // it does as it should, what was complained of is gone, or it rests
	Unclear             // of the machine, or told by the client, in words that no list here has
	Warm                // what should be cold is not
	Fails               // it stands, or does what it should not
)

// Kept is what a machine is for, by which its words are read, and whether its degrees are °C.
type Kept struct{ Cold, Ice, Rooms, Celsius bool }

// OnMachine reports whether a text has a word of a machine, of what it cools, or of who
// tells of it: without one Fares has nothing to read.
func OnMachine(text string) bool {
	return ofMachine().in(" " + strings.ToLower(text[:min(len(text), MostBytes)]) + " ")
}

// Fares reads words of how a machine does, for the worst of its clauses. No list has all that people write: what is of the machine or from the
// client and not understood is asked about (common practice throughout).
func (k Kept) Fares(text string) Fare {
	text = strings.ToLower(spelt(text[:min(len(text), MostBytes)]))
	rests, worst := Rests(text), Beside
	told := false
	for _, clause := range Clauses(strings.ReplaceAll(text, "’", "'")) {
		rest := reporter.get().ReplaceAllString(clause, "")
		told = told || rest != clause
		for _, part := range strings.Split(unparted.Replace(rest), " and ") {
			worst = max(worst, k.clause(strings.TrimSpace(part), rests, told))
		}
	}
	if worst == Beside && !papers.is(text) && reporter.get().ReplaceAllString(text, "") == "" {
		return Unclear // and nothing of what was said
	}
	return worst
}

func (k Kept) clause(clause string, rests, told bool) Fare {
	switch {
	case clause == "":
		return Beside
	case goneNow.is(clause):
		return Well
	case earlier.is(clause) && !Has(clause, thanBefore):
		return Beside
	case rests && isOff.is(clause):
		return Well
	case stands.is(clause) && !allowed.is(clause) && !Hums(clause):
		return Fails
	case k.Ice && iceless.is(clause) || k.Rooms && airless.is(clause):
		return Fails
	case k.Cold && (warmth.is(clause) || k.Rooms && hotRooms.is(clause) || !k.Rooms && softened.is(clause)):
		return Warm
	}
	switch number := k.degrees(clause); {
	case number == Warm:
		return Warm
	case number == Well && !denies.is(clause), !noVouch.is(clause) && (k.Cold && cold.is(clause) && !Has(clause, cooling) || positive.is(clause)):
		return Well
	}
	if (told || (noVouch.is(clause) || doubtful.is(clause)) && ofMachine().in(" "+clause+" ")) && !papers.is(clause) {
		return Unclear
	}
	return Beside
}

// unparted are words with an and that parts nothing.
var unparted = strings.NewReplacer("nice and ", "nice ", "good and ", "good ", "on and off", "on off", "up and down", "up down", "stuffy and", "stuffy", "again and again", "again")

// Eased reports whether a clause says that what was complained of is gone, that a machine
// rests, or that what should be cold is: beside it the same words mean no failure.
func (k Kept) Eased(clause string, rests bool) bool {
	if !ofMachine().in(" " + clause + " ") {
		return false
	}
	rest := strings.TrimSpace(reporter.get().ReplaceAllString(clause, ""))
	return goneNow.is(rest) && !strings.Contains(rest, " and ") || rests && isOff.is(rest) && !stands.is(strings.Replace(rest, "stopped", "", 1)) ||
		k.Cold && !k.Rooms && hardens.is(rest) && !Has(rest, cooling) && !noVouch.is(rest) && !stands.is(rest)
}

// hardens tells of what was frozen that it is.
var hardens = pattern{expr: `\b(hard|solid|rock|firm|frozen|ice.?cold)\b`}

// Rests reports whether a text says that a machine is off because what it cools is cold,
// or its control is satisfied, and nothing of that it will not start.
func Rests(text string) bool {
	text = strings.ToLower(text[:min(len(text), MostBytes)])
	return Has(text, offWords) && isOff.is(text) && atRest.is(text) && !unrestful.is(text)
}

// SoundWord is the sound that words say is there no more, "" when they say of none.
func SoundWord(text string) string {
	if text = strings.ToLower(text[:min(len(text), MostBytes)]); !goneNow.is(text) {
		return ""
	}
	return sounds.get().FindString(text)
}

var (
	// reporter tells who said it, and when, in front of what was said.
	reporter = pattern{expr: `^<whom>$|^(a |the )?(call ?-?back( from)?( <whom>)?|(call(s|ed)|rang|phoned|texted) (back|in)|<whom>( \w+)?( (has|have|just|also|now|then|already))* <said>( (back|again|in|me|us|up|over|later|that|how|about|to say|(the )?next (day|morning|week)|today|tonight|this (morning|evening|afternoon)|last night|\d+ (days?|hours?|h|weeks?) later|after \w+ \w+))*)\b[ .]*`}
	// goneNow tells that what was complained of, or would be a failure, is not there.
	goneNow = pattern{expr: `
(no|never|not|none|nor|zero|without|nothing|\w+n't|no more|no longer) ((a|any|one|single|more|further|been|be|gone|got|get|had|the|it|at all|once|ever|even|heard|hearing|seen|in|of|or|yet|as|out|up) )*(click\w*|hum\w*|buzz\w*|nois\w*|rattl\w*|trip\w*|stall\w*|warm\w*|hot|thaw\w*|melt\w*|leak\w*|drip\w*|problems?|issues?|trouble\w*|complain\w*|faults?|alarms?|failures?|short cycl\w*|soft\w*|defrosted|spoil\w*|change needed)\b
(click\w*|hum\w*|buzz\w*|nois\w*|rattl\w*|vibrat\w*|leak|drip\w*|smell|problem|issue|complaint|fault)( noise| sound)?( is| has| was| all| now)* (gone|stopped|over|history|fixed|cured|solved|no more|away)\b
(^|(has|have|had|got|gets|there'?s|that|it) )(hot water|heat|ice|cold air|power|runs|cools|heats|dries|spins|drains|pumps|works) again$
(no more|any ?more) (click\w*|hum\w*|buzz\w*|nois\w*|rattl\w*|trip\w*)\b
(not|no) (a )?(click|hum|buzz|noise|sound|peep)\b
nothing (is |was )?wrong( (with|in|at) (the )?(unit|machine|it|fridge|refrigerator|freezer|ice ?maker|appliance|washer|dryer|oven))?$
(did|has|have)(n't| not|nt) (\w+ )?(stop\w*|quit|fail\w*|die\w*|stall\w*|trip\w*|click\w*)\b
(never|not) (\w+ )?(stopped|quit|failed|died|stalled|tripped|clicked)\b
`}
	sounds = pattern{expr: `\b(click|hum|buzz|nois|rattl|squeal|grind|vibrat|bang|knock)`}
	// earlier tells of what was before, or may be.
	earlier = pattern{expr: `
(before|on arrival|when i (came|arriv\w+|got)|used to|had been|old|original\w*|last (week|month|year|visit|summer|winter)|(days?|weeks?|months?|years?) ago|threw|thrown|if|unless|until|should|in case|may|might|would|could|in future)\b
`}
	thanBefore = []string{"as before", "than before", "like before"}
	offWords   = []string{"off", "stop", "shut", "cycl", "rest", "idle", "quiet", "silent", "not running"}
	isOff      = pattern{expr: `\b(off|stop\w*|shut\w*|cycl\w+|rest(s|ed|ing|arts?)|idle|idling|quiet|silent|not running)\b`}
	// atRest tells why a machine stands that should.
	atRest = pattern{expr: `
satisfied\b
(on|at|by|off|with) (the |its |his |bin )*(thermo\w*|t-?stat|stat|control|temp\w*|set ?(point|temp\w*)|target|bin (stat|switch|control)|ice level|timer|defrost|eye)\b
(cycl(ed|es|ing) (off|normal\w*|on and off|properly|as it should|fine|ok|well|on (its |the )?\w*stat)|stat open|bin (is )?full|full bin|normal\w*|as it should|at (\d+|-\d+) ?°?[fc]?)\b
(box|freezer|fridge|cabinet|cooler|inside|case|house|rooms?|walk-?in)( (is|at|now|nice and|down to|all|stays|still|good and|its|holding))* (cold|cool|frozen|temp|target|set ?(point|temp)?|-\d+|[0-5]|3\d|40|satisfied)( ?°?[fc])?\b
^(nice and )?cold\b
, (nice and )?cold$
`}
	unrestful = pattern{expr: `\b(again|wo(n't|nt)|will not|can(no|')t|does(n't| not|nt)|refus\w*|not (cold|re-?start\w*|start\w*|com)|no (re-?)?start|warm\w*|hot|overload|trip\w*|after \d|too (soon|early)|early|dead)\b`}
	// stands tells that a machine stands that should run, or will not do its work.
	stands = pattern{expr: `
<mach><there>( (has|have|is|are|'s|just|now|again|still|all|both|only|then|goes|went|gone|go|back|to))* (stop(s|ped)?|quits?|dies|died|dead|silent|stalls|stalled|stuck|jammed|seized( up)?|locked( up)?|not (running|turning|spinning|moving|starting|working|pumping|coming on|blowing|kicking in|cycling)|stands( still| there)?( again)?$|stands still|standing still|sits (there|dead|still)|struggl\w+|labou?r\w*|short.?cycl\w*|won't \w+|will not \w+|doesn't \w+|does not \w+|don't \w+|isn't \w+ing|aren't \w+ing|can't \w+|cannot \w+|refuses to \w+|fails to \w+|intermittent\w*|does nothing|giv(e|es|en|ing) up|gave up|pack(s|ed) (it )?(in|up)|conk\w*|kaput|down$|out of order|comes on for \d+|barely \w+|hardly \w+|buzz\w*|clicks|clicking)\b
(won't|will not|doesn't|does not|don't|can't|cannot|refuses to|fails to|not|isn't|no) (re-?start\w*|start\w*( back)?( up)?|(com(e|ing)|kick(ing)?|cut(ting)?|turn(ing)?) (on|in|back|up)|spin(ning)?|pump(ing)?)\b
(short.?cycl\w+|started tripping|locked rotor|stopped (making|cooling|freezing|running|working|pumping|blowing|turning|spinning|dropping)|not (working|right|running|cooling|freezing|making))\b
(click\w*|hum\w*|buzz\w*|nois\w*|rattl\w*|squeal\w*|grind\w*|problem|fault|issue|trouble|complaint|symptom)( noise| sound)?( (has|is|just|all))* (start\w* (up )?again|starts|started( up)?|back|again|returned|returns|persists|still there|every \w+|worse|louder)\b
(is|it'?s) back to (its )?(old|how|what|where)\b
(worse|no better|not better|not (much )?(improved|different)|no improvement)\b
windings?( (is|are|now|reads?|just|gone))* (open|short\w*|ground\w*|burn\w*)\b
breaker( (has|is|just))* (went|gone|goes|popped|trips|out|off)( again)?\b
`}
	// allowed tells of what may stand, and of what stands for something else.
	allowed = pattern{expr: `\b(when|door|lid|defrost\w*|unplug\w*|by hand|with it|for (the )?(test|reading|work)|switched off|turned off|set to off|never|did(n't| not)|has(n't| not)|stop(ped)? (the|a) \w+|(need|have|want|like|agree|mind|know|care|own|use|charge|matter)s?|stuck (a|the|on|label|sticker|note)|by me|i (have )?(stop|shut)\w*)\b`}
	// iceless tells that ice is not made, is thin, or does not drop.
	iceless = pattern{expr: `
(no|not (making|getting|dropping|enough)( (much|any|enough))?|(stop|quit)(s|ped)? making|won't make|doesn't make|does not make|less|little|hardly any|barely any|half (the|as much)|short of|out of|run out of|ran out of|without|too little|slow( to make)?) (ice|cubes)\b
(ice|slabs?|cubes?|sheet|batch\w*|bridge)<being> (thin\w*|hollow|cloudy|too small|smaller|soft|mushy|wet|shell\w*|half|incomplete|slow\w*|late|hang\w*|sticks|stuck|stays on|not (drop|releas|fall|slid|com|harvest)\w*|(won't|will not|doesn't|does not|don't|cannot|can't|fails to) (drop|releas|fall|slide|come|let go|harvest|form)\w*)\b
bin<being> (empty|low|not full|nearly empty|half full|never full)\b
bin (won't|doesn't|does not|never|not) fill\w*\b
(no|won't|will not|doesn't|does not|not|never|late|slow) harvest\w*\b
(only|just|barely) \d+ ?(lbs?|pounds?|kg|kilos?|cubes|batches)\b
(thin|hollow|mushy|cloudy) (ice|slab|cubes?|batch\w*)\b
half the ice\b
production( (is|was|has|way|much|all))* (down|low|poor|dropp\w*|half|off|slow)\b
(never|won't|doesn't|does not|not|will not) let(s|ting)? go\b
`}
	// airless tells that the air of rooms is not cooled, or that a line freezes.
	airless = pattern{expr: `
no (cold|cool) air( (again|at all|now|from|out|today|yet|coming|com)\b.*)?$
(air|vents?|registers?|supply|grilles?)( (at|from|out of|of) (the )?(vents?|registers?|grilles?))?<being> (room temp\w*|warm|hot|lukewarm|tepid|not cold|not cool|weak|ambient)\b
(suction|liquid)( line)?<being> (freez\w*|frozen|frost\w*|ic(ed|ing|y))\b
(line ?set|coil|evap\w*)<being> (freez\w*|frozen|iced|icing)\b
`}
	// warmth tells that what should be cold is not.
	warmth = pattern{expr: `
(not|n't|no longer|hardly|barely|less|nowhere near|never)( (as|that|very|really|quite|so|get\w*|keep\w*|stay\w*|hold\w*|even|been|at all|feel\w*|gone|going|go|make|making|the))* (cold|cool|cooling|frozen|freezing|hard|solid)\b
(cold|cool|cooling)( (is|has))* (gone|lost|weak)\b
(warm(s|ing|ed)?|heat(s|ing|ed)) (up|back|again)\b
(gets?|getting|got|going|goes|gone|went|turned|turning|is|are|runs?|running|feels?|blow\w*|still|again|too|stays|staying|bit|slightly|rather|sort of|kind of)( (too|so|a bit|quite|rather|all|back|up|slightly|very))* (warm\w*|lukewarm|tepid|hot|soft|mush\w*)\b
(doesn't|does not|don't|won't|will not|can't|can not|cannot|not|isn't|never|unable to|fails? to|struggl\w+ to|no longer|hardly|barely)( (even|quite|really|ever|always|able to|properly))* (keep\w*|hold\w*|stay\w*|get\w*|reach\w*|mak\w*|cool\w*|freez\w*|maintain\w*|drop\w*|com\w+|pull\w*|go\w*|bring)( (up|down|below|under|to|it'?s?|its|the|any|a|past|lower))*( (cold\w*|cool\w*|temp\w*|set ?point|enough|ice|frozen|house|rooms?|\d+))*$
los(es|ing|t) ((it'?s|the|all|its) )*(cold|cool\w*|temp\w*)\b
(back|creep\w*|climb\w*|drift\w*|ris(es|ing|en)|rose|crept|going|goes|went|edging|shot|shoots) ((back|up|on|way) )+(to |at |past |over |above )?\d
not (keep\w*|catch\w*) (up|pace)\b
(can't|cannot|can not|doesn't|won't|hardly|barely) (keep|catch) (up|pace)\b
<goods><being> (warm|lukewarm|tepid|hot|at room temp\w*)\b
<chilled><being> (warm\w*|lukewarm|tepid|at room temp\w*)\b
(creep\w*|climb\w*|drift\w*|crept|edging|rising|temp\w* going)( (back|up|again|warmer))+\b
temp\w*( (is|are|was|has|been|keeps|kept))* (high|up|rising|climbing|too high|going up|drifting|creeping|swing\w*)\b
`}
	// softened tells it of what was frozen.
	softened = pattern{expr: `
<goods><being> (soft\w*|bendy|soggy|limp|defrost\w*|thaw\w*|melt\w*|mush\w*|slush\w*|soup\w*|spoil\w*|rott\w+|runny|liquid|sour|smells|sweat\w*|drip\w*|off|bad|ruined|to (mush|slush|soup|liquid|water))\b
(lost|threw out|had to throw|losing) ((all|the|her|his|their|of|it) )*<goods>\b
(freezer|box|cabinet)<being> (thaw\w*|defrosted|melt\w*|soft|wet inside|puddle)\b
(water|puddle)( (is|was|all))* (in|under|below|on) (the )?(freezer|box|drawer|basket|floor)\b
`}
	// hotRooms tells it of rooms.
	hotRooms = pattern{expr: `
<rooms><being> (hot\w*|warm\w*|stuffy|humid|muggy|sticky|boiling|roasting|sweltering|unbearable|uncomfortable|too (warm|hot))\b
(still|again|too|so) (hot|warm|humid|stuffy|muggy)\b
(hot|warm|stuffy|humid|muggy)( (in|at|up|down))* (the )?(house|home|rooms?|bedrooms?|upstairs|downstairs|office|kitchen|store|shop|there)\b
(stays?|staying|stuck|sits?|sitting|hangs?|hovers?|won't (go|get|drop)|doesn't (go|get|drop)|not (dropping|going|getting|coming)|can't (hold|reach|get)|cannot (hold|reach|get))( (at|around|about|below|under|down|to|past|on))* \d
\d+( ?°?[fc])? (and|but) (not|won't|still|doesn't) \w+\b
`}
	// cold tells that what should be cold is; positive that all is well.
	cold     = pattern{expr: `\b(ice.?cold|cold(er|est)?|cool(s|er|est|ed|ing)?|frozen|frosty|chilly|rock.?hard|rock.?solid|hard|solid|firm|frigid|freezes|freezing|like (a )?(rock|stone)s?)\b`}
	positive = pattern{expr: `\b(thumbs up|nicely|all well|came down|clear|happy|pleased|satisfied|thank\w*|glad|delighted|great|fine|well|good|ok|okay|perfect\w*|excellent|normal\w*|as it should|as new|like new|proper\w*|steady|steadily|freely|smooth\w*|quiet\w*|works?|working|runs?|running|ran|starts?|started|spins|spinning|turns|turning|blows|cycl\w+|keeps up|keeping up|holds?|holding|plenty|lots|full|down to|pulled down|pulls down|drops|dropped|drop clean|keeps (its )?(temp|cold|ice)|back (in|to|at) (the )?(tray|bin|normal|temp\w*|set\w*|target)|makes ice|making ice|harvest\w*|comfortable|comfy|at (set ?point|temp|target)|fixed|solved|cured|sorted|satisfies)\b`}
	cooling  = []string{"coil", " line", "evap"} // what should not be hard with ice
	denies   = pattern{expr: `\b(not|\w+n't|cannot|never|hardly|barely)\b`}
	// noVouch are words beside which neither vouches.
	noVouch = pattern{expr: `\b(not|\w+n't|cannot|no|never|hardly|barely|only|sometimes|less|half|slow\w*|weak|loud|nois\w*|rough|odd\w*|strange\w*|funny|weird|constantly|non-?stop|all the time|runs all (day|night)|smell\w*|still|almost|until|hot|warm\w*|high|wrong|worse|bad\w*|poor\w*|ic(ed|ing|es)|frost\w*|trip\w*|dead)\b`}
	// doubtful are words by which what is said of a machine may be of a failure.
	doubtful = pattern{expr: `\b(fewer|all (over|day)|hours?|longer|down|(is|was|it's|goes|went|stays) (off|out|up|back)|by itself|again|keeps|tr(ies|ied|ying)|falls?|fell|froze|wet|soggy|trouble|problem|issue|seems|sounds|looks|like an?|as if|struggl\w+|too|broke\w*|fail\w*|stuck|gives up|gave up)\b`}
	// papers tells of the papers, the way and the people of a call, or of what a thing is and
	// where it stands.
	papers = pattern{expr: `\b(pa(id|ys?)|cash|card|che(ck|que)s?|invoice\w*|bill\w*|sign\w*|advis\w*|recommend\w*|explain\w*|show(n|ed)?|told (cust\w*|client|owner|tenant|lady|him|her|them)|gave|keys?|warrant\w*|model|serial|tag|next|quot\w*|estimat\w*|pric\w*|declin\w*|wants?|ask(s|ed)?|will \w+|to (call|clean|keep|trim|check|decide|order|watch)|if (it|any\w*)|number|photo\w*|parking|gate|contract|agreement|maintenance|lease\w*|appointment|receipt|copy|e?mail\w*|address|name|at (home|work)|let (me|us) in|deliver\w*|bought|years? old|built|moved|pushed|hauled|part|met|spoke|talked|remind\w*|call client|(is|are) (on|in|at|behind|under) (the|a)|not (yet )?(fitted|installed|connected|present|used)|original|stands in|sits (in|on)|next to|behind|in (the |a )?(garage|basement|attic|closet|yard)|roof|rated|has (two|\d|a|an|one)|set (to|at)|label|plate|cover|panel|clean\w*|back in|levell?ed|door (was |had |left )*(open|ajar)|left (the )?(door|lid) open|second|another|filter|took)\b`}

	coldNumber = Lazily(`\b(freezer|fridge|refrigerator|box|cooler|cabinet|case|compartment|walk-?in|reach-?in|it'?s?|its|inside|temp\w*|milk|food|meat)\b[^\d]{0,24}?(-?\d+(?:\.\d+)?) ?(?:°|deg\w*)? ?([fc]\b)?`)
	roomNumber = Lazily(`\b(house|home|rooms?|bedrooms?|upstairs|downstairs|office|kitchen|store|shop|lounge|place|inside|indoors|apartment|flat|it'?s?|its)\b[^\d]{0,24}?(-?\d+(?:\.\d+)?) ?(?:°|deg\w*)? ?([fc]\b)?`)
	numberIn   = Lazily(`(-?\d+(?:\.\d+)?) ?(?:°|deg\w*)? ?([fc]\b)? (?:deg\w* )?(?:in|inside|at) (?:the |her |his )?(freezer|fridge|refrigerator|box|cooler|cabinet|case|house|home|rooms?|bedrooms?|upstairs|office|kitchen|store|shop)\b`)
)

// ofMachine are the words of a machine, of what it cools, or of who tells of it.
var ofMachine = sync.OnceValue(func() *finder {
	return newFinder(strings.Split(" comp , compr, cond, evap, fan, blower, pump, unit, machine, motor, system, box, freezer, fridge, refrig, cooler, cabinet, walk-in, walkin, reach-in, house, home , room, bed, living, upstairs, outdoor, outside, winding, sheet, below, say, phoned, text, production, all day, nonstop, plate, pop, chick, fish, pizza, downstairs, office, kitchen , ice, slab, cube, bin , bin., batch, harvest, callback, cust, client, owner, tenant, landl, lady , resident, staff, boss , manager, chef, bar , milk, food, meat, butter, cream, frozen, veg, everything, goods, grocer, beer, drinks, temp, warm, cold, thaw, melt, not keep, can't keep, cannot keep, keep up, click, hum, buzz, noise, loses, restart, cool, air , vents, stop, quit, called back, callback, call-back, call back, rang, only , suction, line , coil, rises", ","))
})

// degrees reads a number of degrees of a place that is kept cold: Warm when it is on
// the wrong side of what the proof wants, more than a cycle of its control is; Well when it
// is not; Unclear between, and Beside without one. Without its unit what is warm in both
// counts (limits: common practice).
func (k Kept) degrees(clause string) Fare {
	if !k.Cold || !strings.ContainsAny(clause, "0123456789") {
		return Beside
	}
	place, num, unit := "", "", ""
	if m := numberIn().FindStringSubmatch(clause); m != nil {
		num, unit, place = m[1], m[2], m[3]
	} else {
		p := coldNumber
		if k.Rooms {
			p = roomNumber
		}
		m := p().FindStringSubmatch(clause)
		if m == nil {
			return Beside
		}
		place, num, unit = m[1], m[2], m[3]
	}
	n, err := strconv.ParseFloat(num, 64)
	if err != nil || num == "" {
		return Beside
	}
	if unit == "c" || unit == "" && k.Celsius {
		n = n*1.8 + 32
	}
	good, bad := 40.0, 45.0
	switch {
	case k.Rooms:
		good, bad = 76, 80
	case strings.HasPrefix(place, "freezer"):
		good, bad = 5, 15
	}
	switch {
	case n >= bad:
		return Warm
	case n <= good:
		return Well
	}
	return Unclear
}
