package said

import (
	"cmp"
	"regexp"
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Appliance is what the words for a unit and its complaint tell of it.
type Appliance struct {
	Unit, Fault   string
	Complaints    []cause.Hit // that the words name, the best first
	Heard         []string    // the findings that the complaint's words name
	Wired         bool        // has no outlet which another appliance fits
	Unsealed      bool        // has no compressor: by the words for the unit, else by those of the complaint
	Air           bool        // an air conditioner
	Gas, Electric bool        // said of what heats
	OneFan        bool        // a single fan for both of its coils, as dehumidifiers and heat-pump dryers have
	HeatPumpDryer bool
	Inverter      bool // its compressor turns on a drive, as fast as the load wants
	HeatPump      bool // warms and cools rooms by turning its circuit round
	Tank          bool // heats a tank of water, which an element must not be without
	Immersed      bool // its element lies in water
	NoMains       bool // burns gas by a standing pilot, without mains
	Radiant       bool // a switch senses the heat of its flame
	Still         bool // moves no air and no water through itself
	Elements      bool // several heaters on one supply
	Furnace       bool // its flame is sensed by a rod
	Oil           bool // an oil burner heats it, of which no causes are held
	HighVolts     bool // thousands of volts inside, which nothing here is made to judge
	ThreePhases   bool
	Seals         bool   // has a door with a gasket against water, or may
	DirectDrive   bool   // its motor turns its load without belt, brushes or tachogenerator
	FanShared     bool   // an air conditioner in one case, of which one motor turns both fans
	Element       string // of several heaters the one that the complaint is about
}

// ApplianceOf reads the words for a unit and those of its complaint.
func ApplianceOf(unit, fault string) *Appliance {
	named := unit
	unit = roomHeatPump(cmp.Or(unit, roomHeatPump(fault)))
	if named == "" && !isKind(roomPumps, unit) {
		unit = ""
	}
	both := strings.ToLower(unit + " " + fault)
	ap := &Appliance{
		Element: element.get().FindString(Troubled(strings.ToLower(fault))),
		Seals:   seals(named), DirectDrive: direct.get().MatchString(named),
		Unit: named, Fault: fault, HeatPump: isKind(roomPumps, unit), Complaints: complaintsOf(fault, unit), Heard: cause.Heard(fault),
		Wired: hasNoOutlet(both), Unsealed: hasNoCompressor(unit, fault),
		Air: isKind(airUnits, cmp.Or(unit, fault)), Gas: isKind(gasUnits, unit), Electric: Has(unit, []string{"elec"}),
		OneFan: Has(both, []string{"dehumidif"}) || heatPumpDryer.get().MatchString(both), HeatPumpDryer: heatPumpDryer.get().MatchString(both),
		Tank: tanks().MatchString(both), Immersed: immersed().MatchString(both),
		Still:   still.get().MatchString(both) && !Has(both, []string{"induction"}),
		NoMains: onPilot(unit), Radiant: isKind(gasUnits, unit) && isKind(dryers, unit),
		Inverter: Has(unit, onDrives),
		Elements: elements.get().MatchString(unit) && !Has(strings.ToLower(unit), highVolts),
		Furnace:  Has(both, []string{"furnace", "boiler"}), Oil: burnsOil(unit),
		HighVolts: Has(both, highVolts), ThreePhases: isKind(phases3, both), FanShared: inOneCase().MatchString(both) && !twoFans().MatchString(both),
	}
	if ap.Tame(fault) {
		ap.Heard = slices.DeleteFunc(ap.Heard, func(code string) bool { return code == "smoke" })
	}
	for _, a := range Alarms(fault, ap, false) {
		if !slices.Contains(ap.Heard, a.Finding) {
			ap.Heard = append(ap.Heard, a.Finding)
		}
	}
	return ap
}

// roomHeatPump adds to the words for a heat pump that warms and cools rooms what it
// is besides: an air conditioner.
func roomHeatPump(unit string) string {
	if low := strings.ToLower(unit); heatPumps.get().MatchString(low) && !Has(low, []string{"dry", "dri", "tumbl", "wash", "water", "pool", "humid", "air con", "aircon"}) {
		return unit + " (air conditioner)"
	}
	return unit
}

// onDrives are words for what has its compressor on a drive (common practice).
var onDrives = []string{"inverter", "mini split", "mini-split", "minisplit", "ductless", "variable speed"}

// highVolts are appliances with thousands of volts inside.
var highVolts = []string{"microwave"}

// Shares reports whether more than one heater draws on the watts of its plate: other
// heaters, or a motor that has a good part of them.
func (a *Appliance) Shares() bool { return a.Elements || a.HighVolts || isKind(washers, a.Unit) }

// Dries reports whether it dries clothes.
func (a *Appliance) Dries() bool { return isKind(dryers, a.Unit) }

// seals reports whether what is called so has a door with a gasket against water, or may:
// what loads from the top has none.
func seals(unit string) bool {
	return unit == "" || Has(unit, []string{"wash", "oven", "range", "microw", "front", "dry", "steam"}) && !topLoads.get().MatchString(unit)
}

var topLoads = pattern{expr: `(?i)top.?load`}

// direct tells what turns its load without belt, brushes or tachogenerator (common practice).
var direct = pattern{expr: `(?i)dispos|circulat|\b(sump|ejector|sewage|condensate|well|drain|wash) pump`}

// Fan reports whether it is a fan, as a range hood is.
func (a *Appliance) Fan() bool { return isKind(hoods+`|\bfan\b`, a.Unit) }

// Blows reports whether a blower of its own takes its heat away, which stands by itself.
func (a *Appliance) Blows() bool { return isKind(blowers, a.Unit) }

// Complaint is the code of the best complaint that the words name, "" when they
// name none.
func (a *Appliance) Complaint() string {
	if len(a.Complaints) == 0 {
		return ""
	}
	return a.Complaints[0].Code
}

// byAppliance gives the complaint of words that mean another one in an
// appliance of that kind. It takes the place of some complaints only: what the
// words say more plainly stays.
type byAppliance struct {
	unit, words string // patterns; "" fits all
	complaint   string
	instead     []string // "" is of no complaint at all
}

// Patterns of kinds of appliance.
const (
	washers   = `\b(dish)?wash(er|ing)`
	dryers    = `dryer|drier|tumbl`
	hoods     = `\bhood|exhaust|extractor fan|ventilat|vent fan`
	laundry   = `\bwash(er|ing)|laundry|` + dryers
	airUnits  = `rooftop|packaged? unit|air.?con|\b(ac|a/c)\b|window unit|mini.?split|split system|central air|outdoor unit`
	gasUnits  = `\bgas\b`
	burners   = `\bgas\b.*(dry|dri|oven|range|cook|stove|furnace|boiler)|(dry|dri|oven|range|cook|stove|furnace|boiler).*\bgas\b`
	tepid     = `luke.?warm|tepid|warm at best|(not|n.?t|only|just|barely) warm`
	locked    = `(not|n.?t|never|fails? to) (\w+ )?unlock\b|(stay|still|remain|keep)\w* locked|locked (shut|closed)`
	leftIn    = `water (is |was )?(still |left |remains? |remaining |stays |stands |standing |sits |sitting )+(in|at|inside|after)\b|(still|stops with|ends with|left with|leaves|full of) ((dirty|standing|some|the) )?water (in|at|inside)\b|^\W*((there|it)( i|.)?s |has )?(dirty )?water in (the )?(bottom|tub|drum|sump)`
	colds     = `fridge|refrig|freez|\bice|cooler`
	absorbers = `absorption|absorber`
	peltiers  = `peltier|thermo-?electric`
	hotter    = `too hot|overheat|burns |scorch|scald`
	pumps     = `heat.?pump|reverse.?cycle`
	roomPumps = `(` + pumps + `).*(` + airUnits + `)|(` + airUnits + `).*(` + pumps + `)`
	sumps     = `\b(sump|ejector|sewage|effluent|utility|condensate|lift).{0,10}pump`
	cookers   = `\b(oven|cooker|cooktop|hob|stove)\b|\brange( [^h]|,|$)`
	heatsOn   = `\b(heat\w*|element|burner|coil) (still )?(stays?|stayed|remains?|keeps) (on|heating|red|lit)\b|\bheats? (\w+ ){0,2}(when|with|on|while|after|though|in) .{0,20}(off\b|stop\w*|fluff|no.?heat|air only)|\bheats? (all the time|non.?stop|constant\w*|contin\w*)|\bstuck on( high| hot| full|\W*$)|(still|stays) hot (\w+ )?(after|when|though) .{0,20}(stop|off|end|done)`
	againOut  = `(blows?|blew|blowing|pops?|popping|trips?|tripping|burns|goes through|eats) (\w+ ){0,2}(thermal|limit|cut.?o|tco)|(thermal|limit|cut.?off|cut.?out|tco)\b.*(blows|blew|blowing|again|keeps|every|second|third|2nd|3rd|repeat|trips|pops)|keeps .{0,20}(thermal|limit|cut.?o|tco)`
	blowers   = `furnace|air handler|fan coil|unit heater`
	noBlower  = `(^|[^r] )(blower|fan)\b( motor)?.{0,10}(\b(not|never) |n.?t )(\w+ )?(com\w* on|run|start|kick\w* (on|in)|work|blow|spin|turn(ing)? on|turn(ing)?\W*$|turn(ing)?[,;]|go on)|(^|[^r] )(blower|fan)\b( motor)?.{0,6}\b(dead|quit|stopped|stands)\b|\b(no|low|weak|poor|little) (air|airflow|air flow)\b|\bno blower`
	phases3   = `\b(three|3).?ph(ase)?\b`
)

// Complaints that the kind of appliance tells from others of the same words.
const (
	MotorDead  = "motor-dead" // of a motor by itself
	NoDrain    = "no-drain"
	NoDry      = "no-dry"
	GasQuits   = "gas-quits" // of a burner whose heat is lost
	FanOn      = "fan-on"
	ACWarm     = "ac-warm"
	NoWaves    = "no-waves"    // of a microwave oven
	ACDead     = "ac-dead"     // of one whose outdoor unit stands
	ZoneCold   = "zone-cold"   // of a boiler that fires
	RunsOn     = "ac-runs-on"  // of an air conditioner
	NoHeatPump = "hp-no-heat"  // of a heat pump that heats rooms
	ThreePhase = "three-phase" // of a machine that takes three phases
)

// Burners are the complaints of what burns gas.
var Burners = []string{"gas-no-heat", "furnace-no-heat", "pilot-out", GasQuits}

// singlePhase are the complaints of a machine that does not run, or of which the
// words say too little, which three phases tell apart.
var singlePhase = []string{"", "no-start", "hums-trips", MotorDead}

// fittings are words for what is on an appliance beside its machine, machineWords those
// for the machine and what becomes of it (common practice).
var fittings, machineWords = []string{"light", "lamp", "bulb", "door", "gasket", "handle", "hinge", "shel", "display", "knob", "button", "panel", "label", "thermometer", "curtain"},
	[]string{"motor", "comp", "pump", "fan", "blower", "run", "start", "trip", "spin", "turn", "dead", "hum", "buzz", "phase", "leg", "fuse", "contactor", "breaker", "power", "unit"}

// apart reports whether words of a complaint say nothing of whether a machine runs:
// they are of a noise alone, or of a fitting.
func apart(words string) bool {
	return noiseAlone(words) || Has(words, fittings) && !Has(words, machineWords)
}

// OnThree is the complaint of a machine on three phases, of which words name another or
// none; of a noise alone three phases say nothing.
func OnThree(complaint, words string) string {
	if slices.Contains(singlePhase, complaint) && !apart(words) {
		return ThreePhase
	}
	return complaint
}

// coolerWarm are the complaints that are none of a machine's in a cooler without one.
var coolerWarm = []string{"", "no-cool", "no-heat", "runs-always", "no-start", MotorDead}

var appliances = []byAppliance{
	{absorbers, "", "absorption-warm", coolerWarm},
	{peltiers, "", "peltier-warm", coolerWarm},
	{`microwave`, `(^|[^m]al |[^a]l |[^l] )fuse|(breaker|trip).*\bdoor`, "blows-fuse", []string{"", "trips-breaker", "no-power"}},
	{`induction`, `\b(zone|burner|ring|pan|pot|boost)s?\b|\b(left|right|front|rear|back|lf|rf|lr|rr)\b.*(error|dead|not|n.?t|no)\b`, "no-zone", []string{"", "no-heat", "no-power", MotorDead, "no-cool", "hums-trips"}},
	{`induction (cook|hob)`, "", "no-zone", []string{"no-heat", "hums-trips"}},
	{`induction`, `^([^o]|o[^v])*\b(shuts|cuts|turns|switches|kicks|goes) (itself )?(off|out)`, "no-zone", []string{"", "hums-trips"}},
	{`ice.?machine|cuber`, `harvest|\bfall|\bthin|\bthick|slab|bridg|slow|hollow|cloudy|(no|little|low|less|enough|late|makes?|making) (\w+ )?ice|releas|drop|produc`, "poor-ice", []string{"", "no-ice", "no-cool", "no-heat", "leaks-ices", "no-fill"}},
	{`\bwash(er|ing)|laundry`, `\bno cold( water|$|[,;])|\bcold (water )?(side |valve |inlet )?(\w+ )?(not|\w*n.?t|never|dead|slow|stuck)\b|\bno hot (water )?(fill|in(let)?\b|side|comes)|\bhot (side|inlet|valve|fill|tap)|\bfill\w* (\w+ ){0,2}(cold|hot)|cold (water )?only|only cold|(cold|hot) (water )?(comes|fills|runs) in`, "no-fill", []string{"", "no-heat", "leaks-ices", "no-start", MotorDead}},
	{hoods, `(\b(no|not|barely|hardly|weak|poor|low|little|less)|n.?t)\b.{0,12}\b(suction|suck|draw|pull|air|clear|remov)|full of smoke`, "draws-poorly", []string{"", "noisy"}},
	{`vacuum`, `suction|\bsuck|pick\w* up`, "draws-poorly", []string{""}},
	{hoods + `|\bfan\b`, `\b(low|med\w*|high|speed)s?\b.*\b(dead|only|no|not|[a-z]+n.?t)\b|\bonly (\w+ )?(on|at) (low|high|med)`, MotorDead, []string{"", "no-power"}},
	{sumps, "", "pump-on", []string{"runs-always"}},
	{sumps, `(not|n.?t|never) (shut|turn|stop|quit|switch)|(runs?|running) (on|non.?stop|constant|contin)`, "pump-on", []string{"", MotorDead, "no-start"}},
	{sumps, `(not|n.?t|never|no) (\w+ )?(pump|empt|lower|mov)|level .{0,20}(\bnot|n.?t|high|ris|up)\b|high water|overflow|flood|(pit|basin|sump|tank|pan) (is )?full`, NoDrain, []string{"", MotorDead, "no-start", "leaks-ices", "no-fill"}},
	{washers + `|` + dryers + `|` + cookers, heatsOn, "too-hot", []string{"", "runs-always", MotorDead, "no-start", "never-ends", "hums-trips"}},
	{dryers, againOut, "too-hot", []string{"", "trips-breaker", "no-power"}},
	{blowers, noBlower, "no-blower", []string{"", MotorDead, "no-start", "hums-trips", "trips-breaker", "no-heat"}},
	{`dispos`, `leak|drip|water`, "leaks-disposer", []string{"", "leaks-ices"}},
	{`water heater|\btank|calorifier|geyser`, `leak|drip|puddle|\bwater (on|under|at|around)\b|\bwet\b|relief|t&p|\bspray`, "leaks-tank", []string{"", "leaks-ices", "no-heat"}},
	{`furnace`, `(water|condens\w*)\b.*(leak|drip|floor|under|around)|(leak|drip)\w* (\w+ )?(water|condens)|puddle|wet floor`, "leaks-condensate", []string{"", "leaks-ices", "no-heat"}},
	{`\bwash(er|ing)|laundry`, `\boil`, "leaks-oil", []string{"", "leaks-ices", "no-spin"}},
	{`(heat.?pump|condens).*(dryer|drier|tumbl)`, `leak|puddle|\bwater (on|under|all over|in the base)`, "leaks-water", []string{"", "leaks-ices"}},
	{`(heat.?pump|condens).*(dryer|drier|tumbl)`, `empty (\w+ )?tank|tank (\w+ )?(light|full)|not (pump|empt)`, NoDrain, []string{"", "no-power"}},
	{`water heater|geyser`, `smell|stink|stench|rotten|sulf|sulph|odou?r`, "smelly-water", []string{"", "no-heat"}},
	{hoods + `|\bfan\b`, `\bfan (motor )?(is |was )?(dead|stopped|quit)\b`, MotorDead, []string{"", "no-power"}},
	{hoods + `|\bfan\b`, `nois|squeal|squeak|grind|rattl|\bloud|vibrat|chirp|scrap`, "noisy-fan", []string{"", MotorDead}},
	{phases3, "", ThreePhase, singlePhase},
	{washers, leftIn, NoDrain, []string{"", MotorDead, "hums-trips", "no-start", "leaks-ices"}},
	{`\bwash(er|ing)|laundry`, `\b(fills|drains|pumps)\b.*(\bbut\b|,).*\b(spin|agitat|turn)`, "no-spin", []string{"", MotorDead, "hums-trips", "no-start", NoDrain}},
	{washers, locked + `|(^|[,;] |the )(door|lid) .{0,12}((not|n.?t) open|locked|stuck (shut|closed))`, "door-locked", []string{"", "no-start", MotorDead}},
	{`\b(oven|cooker|stove|range)\b`, locked + `|door (is |was |got |has |still |stuck )*(locked|stuck shut|((wo|do|does|ca)n.?t|will not|cannot) open)`, "oven-locked", []string{"", "no-start"}},
	{`microwave`, "", NoWaves, []string{"no-heat"}},
	{`microwave`, `(no|not|n.?t|never|stopped|barely|hardly|slow\w*|weak\w*|poor\w*) (\w+ ){0,2}?(heat|warm|cook|hot\b)|(stays|still|food) cold|cold food|heats? (slow|weak|poor)`, NoWaves, []string{"", "no-cool", MotorDead, "hums-trips"}},
	{washers, `\bpump|\bdrain|water (stays|stands|left)|standing water`, NoDrain, []string{"", MotorDead, "hums-trips", "no-start"}},
	{`dehumidif|heat.?pump.*(dryer|drier|tumbl)`, `\bdr(y|ies)|water|bucket|damp|wet\b|forever|too long|cycles|\bslow|hours|heat|\bic(e|ing)|frost`, NoDry, []string{"", "no-heat", "no-cool", "leaks-ices"}},
	{roomPumps, `^(?:(?:the|it|just|only|outdoor|outside|unit|heat pump|compressor|comp|hum(?:s|ming)?|buzz(?:es|ing)?|loudly|and|but|then|trips?|clicks?|does|not|n.?t|doesn.?t|won.?t|start|run)\W*)+$`, "hums-trips", []string{"hums-trips"}},
	{roomPumps, `(no|not|n.?t|never|hardly|barely|stopped|little|less|poor|weak|enough|low) (\w+ ){0,2}?heat(s|ing|$|[,;.]| (in|on|at|from|when|but|and|since|any|up|the|enough|now|out|to))|heat\w* (mode|setting)|in heating|heats? (up )?(poor|slow|bad|weak|little)|blow\w* cold|cold air in|cold (air )?(on|when|while|with|during) .{0,20}heat|cools .{0,12}(in|when|on) heat|defrost|outdoor (unit|coil) \w*ic|(aux\w*|emergency) heat`, NoHeatPump,
		[]string{"", "no-heat", "no-cool", "runs-always", "too-cold", "leaks-ices", "hums-trips"}},
	{airUnits + `|` + pumps, `(not|n.?t|never) (shut|turn|switch|cycle|kick|cut)s? off|(not|n.?t|never) (stop|quit)|(runs|running|stays on|keeps (running|going)) (\w+ ){0,3}(when|with|after|though|even)( the)? (thermostat|t-?stat|stat|call|set|it)( is|.s)? ?(is )?(off|satisfied|reached|gone|done)|contactor (is )?(weld|stuck)`, RunsOn,
		[]string{"", "runs-always", "no-start", MotorDead}},
	{airUnits, `(outdoor|outside|condens\w*|ac|a/c|system|unit|it|conditioner)( unit| side)?( (is|was|just|completely|totally))* (dead|silent|(not|never|(is|does|wo|did|was)n.?t) (\w+ )?(run|com|start|kick|turn|work))|(thermostat|t-?stat|stat) (is |went |screen |display )*(blank|dead)|(nothing|blank|no (display|power)) (on|at|to) (the )?(thermostat|t-?stat|stat)`, ACDead, []string{"", "no-power", "no-start", MotorDead}},
	{airUnits, `leak|drip|puddle|water`, "ac-drips", []string{"", "leaks-ices"}},
	{airUnits, `warm|cool|cold|\bhot|hum|click|contactor|cuts|trip|short|frost|\bice|fr[eo]ez|froz|compressor|runs|stops`, ACWarm,
		[]string{"", "no-cool", "hums-trips", "no-start", "runs-always", "too-cold", "leaks-ices"}},
	{laundry, `nois|\bbang|squeal|squeak|grind|rattl|thump|\bloud|shak|vibrat|walks`, "noisy", []string{""}},
	{colds + `|walk.?in|reach.?in|merchand|display`, `(warm|low.?press|\d ?°?[fc]\b|not (cool|hold)|n.?t (cool|hold)).*short.?cycl\w*($|[,;.]| (and|but|on (the )?(low|lp|press)))|short.?cycl\w*($|[,;.]| (and|but|on (the )?(low|lp|press))).*(warm|press|lp\b|\d ?°?[fc]\b|not (cool|hold)|n.?t (cool|hold))`, "no-cool", []string{"hums-trips"}},
	{colds, `nois|\bbang|squeal|squeak|grind|rattl|thump|\bloud|vibrat|knock|scrap|buzz\w* loud|chirp`, "noisy-cold", []string{""}},
	{colds, `ice.?mak|(ice|bin) full|\bno ice( |$|,)|(not|n.?t|stopped) mak\w* (any )?ice|\bice (production|cubes)|no cubes`, "no-ice", []string{"", "no-cool", "leaks-ices", "no-fill", "too-cold", "no-power"}},
	{colds, `(\b(comp(ressor)?|kicks)\b|^\W*(it|starts|runs|comes)\b).{0,30}(\b(then|n|and|but|&) (then |it )?(stops?|off|out|quits?|dies|cuts|shuts|goes off)\b|(stops|quits|dies|shuts|cuts)\b.{0,12} (after|within|in) (a |about )?(few|couple|\d+) ?(of )?s)`, "hums-trips", []string{""}},
	{colds, `\bcomp(ressor)? (is |was |has |just |completely |totally )*(dead|died|quit|(not|(wo|do|does|did|is|was)n.?t|(does|will|did) not|never|no longer|stopped) (run|work|start|com|kick|turn))|\bdead comp`, "no-start", []string{""}},
	{colds, `(not|n.?t|nt|never|cannot|stop\w*|quit\w*|lost|los(es|ing)|poor\w*|weak\w*|little|low|no|hardly|barely|slow\w*|bad\w*) (\w+ ){0,2}?(cool|cold|chill|freez|frozen|(hold|keep|reach|get|pull)\w* (temp|down))|(food|everything|it all|stuff|meat|contents|ice cream|ice|freezer|itself) .{0,12}(thaw|melt|defrosted|spoil|soft|gone off|went off)`, "no-cool", []string{""}},
	{colds, `^\W*((the|it|is|unit|fridge|refrigerator|freezer|cooler|machine|just|completely|has|now)\W+)*(quit$|silent( comp(ressor)?)?$|(not|(wo|do|does|did|is|was)n.?t|(does|will|did) not|never|no longer|stopped|quit) (run|work))`, "no-start", []string{""}},
	{`\bwash(er|ing)|laundry`, `\b(clothes|laundry|load|towels)\b.*\b(soak|sopping|dripping|wet)`, "no-spin", []string{""}},
	{`\bwash(er|ing)|laundry`, `spin|agitat|drum|\bturn (?:the )?`, "no-spin", []string{"", MotorDead, "hums-trips"}},
	{dryers, `(drum|tumbl\w*) .*(not|n.?t|never) |(not|n.?t|no|never|stopped) (tumbl|turn|spin)`, "no-tumble", []string{"", MotorDead, "no-start", "no-heat", "hums-trips"}},
	{burners, `\bheat\w* (shuts|cuts|goes|turns|quits|stops|drops)|(stops?|quits?|loses?) (its |the )?heat|(stopped|lost|no|not) (its |the )?heat\w* (after (the )?first|after (a |about )?(few |\d+ |ten |five )min|when (it.?s |it is |it gets )?(hot|warm)|once|part|mid|half)|\b(heat\w*|hot|warm)\b.*\bthen\b.*\b(cold|cool|off|no heat|quits?|stops?)\b|\b(gas|flame|burner)\b.*\b(when|once) (it.?s |it is |it gets )?hot\b|(at first|first (load|cycle)).*\b(cold|no heat|no flame)\b|(flame|burner)s? (\w+ )?(goes|go|shuts|drops|dies|cuts|quits) (out |off |down )?after (a |about |the )*(few |couple |first )?(of )?(\d+ |ten |five )?min`,
		GasQuits, []string{"", "hums-trips", "no-heat", "slow-dry", "no-start", MotorDead, "no-cool"}},
	{`boiler`, `(^|[^yl] )zone\b|other zones|(boiler|burner)s?( is| gets)? (hot|fir|run|light|work|fine|ok)\w*\b.*(cold|no heat|(not|n.?t) (heat|get))|(no heat (in |to |on )?(the |my )?(bed|bath|up|down|one|radiat|baseb|living|back|second|2nd)|(bedroom|upstairs|downstairs|radiator|baseboard)s?\b.*(cold|no heat))([^n]|n[^o'])*$`, ZoneCold, []string{"", "no-heat", "no-start", MotorDead, "no-cool"}},
	{`furnace|boiler|air handler`, `\b(blower|fan)\b.*(runs? (all|always|const|contin|non|24)|(wo|does|did|will|would|not)( ?n.?t| not)? (shut|turn|stop|go|switch)( off)?|never (shuts|stops|turns|goes)|stays on|always (on|runs)|keeps (running|on|going)|constantly|runs on)`, FanOn,
		[]string{"", "runs-always", "no-heat", MotorDead, "no-start", "never-ends", "hums-trips"}},
	{gasUnits + `|furnace|boiler`, `\bpilot|thermocouple|thermopile`, "pilot-out", []string{"", "no-heat", "no-start", MotorDead, "hums-trips", "no-power"}},
	{dryers, `\bheat\w* (shuts|cuts|goes|turns|quits|stops)`, "no-heat", []string{"", "hums-trips"}},
	{`heat.?pump.*(dryer|drier|tumbl)`, `\b(hum|buzz)`, "hums-trips", []string{"hums-trips", "no-start"}},
	{dryers, `\b(hum|buzz)`, MotorDead, []string{"hums-trips", "no-start"}},
	{dryers, `(shuts|cuts|turns|switches) (itself )?(off|out|down)|kicks (itself )?(off|out)|(stops|quits|dies) (by itself |itself )?(after|in|during|before|mid|half|too|within)|(min\w*|hour|while),? (and |it |then )+(stops|quits|dies)|keeps (stopping|shutting)`, "stops-early",
		[]string{"", "hums-trips", "no-start", MotorDead, "slow-dry", "no-cool"}},
	{washers, `(stops|stopped|quits|dies|cuts out|shuts (itself )?(off|down)|pauses|halts) (by itself |itself )?(mid|half|part|(in|during|before) (the )?(mid|cycle|wash|rinse|prog|end))`, "stops-mid", []string{"", "hums-trips", "no-start", MotorDead, "no-spin", NoDrain}},
	{washers, `over.?(fill|flow)|\bwater (\w+ )?(com|runn|flow|gett)\w* in (\w+ )?(when|with|while|though)|fills (up|over)|(keeps|not stop|n.?t stop|never stops) fill|too much water|flood`, "overfills", []string{"", "leaks-ices", "runs-always"}},
	{washers, `(not|n.?t|never|slow\w*|long|stopped) .{0,12}\bfill|\bno fill\b|\bfill\w* (very |too |so |real )?slow|no water\b|(not|n.?t) (get|take)\w* (any )?water|not enough water|low water|trickl`,
		"no-fill", []string{"", "no-start", MotorDead, "no-heat", "leaks-ices", "hums-trips"}},
	{washers, `(not|n.?t|never) (\w+ )?(lock|latch)\b|(door|lid) (lock|latch) .*(not|n.?t|fail|blink|flash)`, "wont-run", []string{"", MotorDead}},
	{washers + `|` + dryers, "", "wont-run", []string{"no-start"}},
	{gasUnits + `|furnace`, `(not|n.?t|nt|never|slow to|long to|fails? to) (light|lite|fire|ignite|stay lit)|\b(lights?|lites?|fires?( up)?) (then|and|but) (it )?(quit|die|stop|goes|shuts)|\bno flame|\b(bake|broil|oven|burner)s? (do|does|wo|did)(es)?n.?t (come|turn|go|kick) on`, "gas-no-heat", []string{"", "no-start", MotorDead, "hums-trips", "no-heat"}},
	{gasUnits, `(spark|click|tick)\w*\b.*\b(non.?stop|constant|contin|all the time|always|by (it|them)sel|on (its|their) own|off|even when|after|(n.?t|not|never) (stop|quit)|random)|\b(keep|kept|constant|contin|non.?stop|always|random|(not|n.?t|never) (stop|quit))\w*\W+(on )?(igniter )?(spark|click|tick)`, "keeps-sparking",
		[]string{"", MotorDead, "no-start", "hums-trips", "runs-always"}},
	{`\b(oven|cooker|cooktop|hob|stove|heater)\b|\brange( [^h]|,|$)`, hotter + `|(not|n.?t) (shut|turn|switch) off|stays on|runs? (all|const)|always|never (stops|shuts)`, "too-hot", []string{"", "runs-always"}},
	{`\b(oven|cooker|cooktop|hob|stove|heater)\b|\brange( [^h]|,|$)`, `\b(burner|element|ring|plate|oven|broiler|grill|heat\w*|it) (still )?(wo|does|did|would|will)? ?n.?t (shut|turn|switch|go) off`, "too-hot", []string{MotorDead, "no-start"}},
	{`\b(oven|cooker|stove|range)\b`, `off by|temp\w* (is |runs )?(off|wrong|out)\b|inaccura|uneven|\d\d+ ?(°|deg\w*|f|c)? ?(too )?(hot|high|off)\b|\b(runs|bakes) hot\b`, "too-hot", []string{""}},
	{`furnace|boiler`, `inducer|flame|ignit|pressure switch|draft|flue`, "gas-no-heat", []string{"", "no-heat"}},
	{`dish`, `\b(dirty|gritty|grit|residue|cloudy)\b|(not|n.?t|never|poor\w*) (get\w* )?(clean|wash)|wash\w* (poor|bad)`, "no-clean", []string{""}},
	{`dish`, `\bdishes\b.*\bwet\b`, "no-heat", []string{""}},
	{`heater`, `\breset\b.*(trip|pop|kick|out|every|days|again)|(trip|pop|push|press|hit)\w* .*\breset`, "too-hot", []string{"", "hums-trips"}},
	{gasUnits, `runs? out (too |so |very )?(fast|quick|early|soon)|not enough hot`, "gas-no-heat", []string{""}},
	{`heater|tank`, `runs? out (too |so |very )?(fast|quick|early|soon)|not enough hot`, "no-heat", []string{""}},
	{washers + `|` + dryers, `\b(heat|heater|element)\b.{0,12}\b(dead|burnt|burned|gone)\b`, "no-heat", []string{"", "no-power"}},
	{`\b(oven|cooker|stove|range)\b`, `too (cold|cool)\b|\b(runs|bakes) (\d+ ?(deg\w*|f|c)? ?)?(cold|cool|low)\b|under ?cook|under ?bake`, "no-heat", []string{"", "too-cold"}},
	{`elec\w* (furnace|boiler)`, `blow\w* (only )?(cold|cool)|cold air`, "no-heat", []string{"", "no-cool"}},
	{`furnace|boiler`, `blow\w* (only )?(cold|cool)|cold air`, "gas-no-heat", []string{"", "no-cool"}},
	{`furnace|boiler`, `short.?cycl|\blimit|cuts out|cycl`, GasQuits, []string{"", "hums-trips", "trips-breaker"}},
	{gasUnits, `\bburners? (is |are |went )?(out|dead|cold)\b`, "gas-no-heat", []string{"", "no-power"}},
	{`\b(oven|range|cooker|hob|cooktop|stove)\b`, `\b(ring|zone|burner|plate|element|grill|broil\w*|bake)s?\b.{0,20}\b(dead|cold|not|n.?t|(do|does|wo|did|is)n.?t|never|no|out|quit)\b|\bno (grill|broil|bake)\b`, "no-heat", []string{"", "no-power"}},
	{`furnace|boiler|` + gasUnits, `\blights?\b.*(out|off|lock)|locks? ?out|flame.*(drops?|goes|out)`, "gas-no-heat", []string{"", "no-heat", "hums-trips", "no-start", MotorDead}},
	{dryers, hotter, "too-hot", []string{""}},
	{washers + `|` + dryers, "", "never-ends", []string{"runs-always"}},
	{`dryer|drier`, `too long|forever|for ever|\bhours?\b|long (dry|time)|\btimes? .{0,8}long|(two|three|four|several|many|multiple|\d+) (cycles|times|runs|loads)|still (damp|wet)|slow`, "slow-dry", []string{"", "no-heat"}},
	{gasUnits, tepid, "gas-no-heat", []string{"", "no-cool"}},
	{`heater|immersion|boiler|furnace|oven|range|stove|cooker|` + washers + `|` + dryers, tepid, "no-heat", []string{"", "no-cool"}},
	{gasUnits, "", "gas-no-heat", []string{"no-heat"}},
	{gasUnits, `then (goes )?(cold|cool|off)|flame|ignit|pilot|stops heat`, "gas-no-heat", []string{""}},
}

type unitAndWords struct{ unit, words *regexp.Regexp }

// appliancePatterns are the patterns of unit and words of each row, made once.
var appliancePatterns = sync.OnceValue(func() []unitAndWords {
	out := make([]unitAndWords, len(appliances))
	for i, a := range appliances {
		out[i] = unitAndWords{regexp.MustCompile(`(?i)` + a.unit), regexp.MustCompile(`(?i)` + cmp.Or(a.words, `.+`))}
	}
	return out
})

// isKind tells a kind of appliance in a text by its pattern in the table.
func isKind(pattern, text string) bool {
	i := slices.IndexFunc(appliances, func(a byAppliance) bool { return a.unit == pattern })
	return appliancePatterns()[i].unit.MatchString(text)
}

// burner is the complaint of a gas burner that does not heat, by what it is in.
func burner(unit string) string {
	switch {
	case furnaces.get().MatchString(unit):
		return "furnace-no-heat"
	case onPilot(unit):
		return "pilot-out"
	}
	return "gas-no-heat"
}

// onPilot tells what burns gas by a standing pilot, without mains, by what it is called
// (common practice).
func onPilot(unit string) bool {
	return isKind(gasUnits, unit) && pilots.get().MatchString(unit) && !powered.get().MatchString(unit)
}

var (
	furnaces = pattern{expr: `(?i)furnace|boiler|power.?vent|induced`}
	pilots   = pattern{expr: `(?i)water heater|standing pilot|fireplace|wall heater|space heater|floor heater`}
	powered  = pattern{expr: `(?i)power|electr|furnace|boiler|tank.?less|on.?demand|instant|condens|hybrid|induced|spark|hot surface`}
)

// phraseOf is what a pattern finds in a text, from the start of its word.
func phraseOf(pattern *regexp.Regexp, text string) string {
	at := pattern.FindStringIndex(text)
	if at == nil {
		return ""
	}
	return text[strings.LastIndex(text[:at[0]], " ")+1 : at[1]]
}

// taken is the complaint that a call's words are taken for in its appliance,
// false when the words alone decide.
func taken(words, unit string, hits []cause.Hit) (cause.Hit, bool) {
	first := ""
	if len(hits) > 0 {
		first = hits[0].Code
	}
	if unit == "" {
		unit = words
	}
	for i, a := range appliances {
		is := appliancePatterns()[i]
		phrase := phraseOf(is.words, Troubled(words))
		if phrase == "" || !is.unit.MatchString(unit) || !slices.Contains(a.instead, first) || a.complaint == ThreePhase && apart(words) {
			continue
		}
		code := a.complaint
		if code == "gas-no-heat" {
			code = burner(unit)
		}
		k, _ := cause.ComplaintBy(code)
		return cause.Hit{Complaint: k, Phrase: strings.TrimSpace(phrase)}, true
	}
	return cause.Hit{}, false
}
