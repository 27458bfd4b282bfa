package call

import (
	"math"
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// defaultMachine is at hand until `on` names another.
const defaultMachine = "compressor"

// reads is the command for a kind of reading.
//
//go:noinline
func reads(word, page, help, doc string, examples ...string) Command {
	return Command{
		Word: word, Group: Reads, See: page,
		Params: []Param{{Name: "[POINT [POINT]] VALUE [CONDITION], …", Kind: Readings, Words: func(c *Call) []string { return c.offerPoints(word) }}},
		Help:   help, Doc: doc, Examples: examples,
		apply: func(c *Call, a *args) (*Reply, error) { return c.applyReadings(qualityOf(word), a) },
	}
}

func readingCommands() []Command {
	cond := "Conditions behind the value: cold, hot, start, run, before, after, peak, closed and open (how a contact should be), upright, inverted (or upside down), dc (direct volts), ice (a sensor in stirred ice water), standing (pressures levelled and all at one temperature), at 25C, test 500V. A value is 3.4, 3.4k, 3R4, OL, ~6.5 when read roughly, or a sum in parentheses."
	return []Command{
		reads("ohm", "parts", "resistance between two points, or of a part; case is the metal shell", cond,
			"ohm A B 3.4", "ohm A case OL", "ohm A B 3.45, A C ~6.5, B C 2.5", "ohm ptc 5.2 cold", "ohm A case 200M test 500V"),
		reads("volt", "", "volts between points or at a place", cond, "volt L N 118.2", "volt line 104 start", "volt comp 0.2"),
		reads("amp", "", "amperes; peak for the start surge", cond, "amp comp 1.15 run", "amp comp 14 peak", "amp C1 2.1 run"),
		reads("mfd", "", "microfarads of a capacitor", "It is judged by what is marked on that can: plate mfd C1 12 5%. Both sections of one can: mfd herm 44.6, fan 4.9. "+cond, "mfd C1 11.8", "mfd herm 44.6, fan 4.9"),
		reads("temp", "", "temperature; C or F behind the number", cond, "temp freezer -2F", "temp fridge 4C after"),
		reads("watt", "", "watts", cond, "watt comp 110"),
		reads("psi", "", "gauge pressure, only where a licensed technician has a port to read", cond, "psi suction 2 run", "psi suction -6 run, discharge 70 run", "psi suction 36 standing at 25C"),
		reads("trip", "", "seconds until the overload takes the machine off", cond, "trip 8s"),
		{
			Word: "on", Group: Reads,
			Params: []Param{{Name: "MACHINE", Kind: Name, Words: func(*Call) []string { return []string{"compressor", "cond-fan", "evap-fan", "motor", "heater"} }},
				{Name: "WORD", Kind: Name, Optional: true}},
			Help:     "the machine whose pins and plate come next (the first is the compressor)",
			Examples: []string{"on evap-fan"},
			apply: func(c *Call, a *args) (*Reply, error) {
				name := a.text("MACHINE")
				if second := a.text("WORD"); second != "" {
					name += "-" + second
				}
				name = c.machineNamed(name)
				c.atHand = append(c.atHand, text{value: name, entry: c.entry})
				return say("At hand: " + name + "."), nil
			},
		},
		{
			Word: "mark", Group: Reads,
			Params: []Param{
				{Name: "PIN", Kind: Place, Words: func(c *Call) []string { return c.pins() }},
				{Name: "ROLE", Kind: Choice, Words: func(*Call) []string { return markRoles }},
			},
			Help:     "a marking printed on the housing; it outranks what the ohms suggest",
			Examples: []string{"mark A common"},
			apply:    applyMark,
		},
	}
}

// machineNamed is the machine that a name means: comp is the compressor, as
// in amp comp, and another letter case is no other machine.
func (c *Call) machineNamed(name string) string {
	name = c.itsFan(motorName(name))
	if strings.EqualFold(name, "comp") || strings.EqualFold(name, defaultMachine) {
		return defaultMachine
	}
	for _, h := range c.atHand {
		if strings.EqualFold(h.value, name) && c.alive(h.entry) {
			return h.value
		}
	}
	return name
}

// markRoles are the roles that a housing can print.
var markRoles = []string{"common", "start", "run", "high", "medium-high", "medium", "medium-low", "low", "main", "auxiliary", "protector"}

// oneOfEach are the roles that one pin of a machine has.
var oneOfEach = []string{"common", "start", "run"}

// mark is a marking on the housing.
type mark struct {
	entry int
	of    string
	pin   string
	role  winding.Role
}

func applyMark(c *Call, a *args) (*Reply, error) {
	of := c.machineAtHand()
	for _, m := range c.marks {
		if role := a.text("ROLE"); m.of == of && string(m.role) == role && !strings.EqualFold(m.pin, a.text("PIN")) && among(oneOfEach, role) && c.alive(m.entry) && m.entry > c.renewedAt(of) {
			return nil, a.get("ROLE").errorf("%s is marked %s already, entry %d", m.pin, role, m.entry).
				WithHint("one of the two is read wrong; strike %d takes that one back", m.entry)
		}
	}
	c.marks = append(c.marks, mark{c.entry, of, a.text("PIN"), winding.Role(a.text("ROLE"))})
	r := say("Marked on the housing: " + a.text("PIN") + " is " + a.text("ROLE") + ".")
	c.refreshMachine(of, r)
	return c.finish(r), nil
}

// itsMotor is the machine of an appliance without a compressor.
const itsMotor = "motor"

// machineAtHand is the machine to which pins belong now: of what does not drain
// the pump, of what has no compressor its motor, until another is put at hand.
//
//go:noinline
func (c *Call) machineAtHand() string {
	for i := len(c.atHand) - 1; i >= 0; i-- {
		if c.alive(c.atHand[i].entry) {
			return c.atHand[i].value
		}
	}
	switch {
	case c.complaint() == said.NoDrain:
		return drainPump
	case c.appliance().Unsealed && c.machines[defaultMachine] == nil:
		return itsMotor
	}
	return defaultMachine
}

// putAtHand reports whether a machine was put at hand by its name.
func (c *Call) putAtHand() bool {
	return slices.ContainsFunc(c.atHand, func(t text) bool { return c.alive(t.entry) })
}

// pins lists the pins of the machine at hand.
//
//go:noinline
func (c *Call) pins() []string {
	m := c.machines[c.machineAtHand()]
	if m == nil {
		return nil
	}
	return m.result.Pins
}

// offerPoints lists what may be read next with a kind of reading, the pair
// wanted first.
func (c *Call) offerPoints(word string) []string {
	var out []string
	if word == "ohm" {
		if m := c.machines[c.machineAtHand()]; m != nil {
			for _, p := range m.result.Wanted {
				out = append(out, p[0]+" "+p[1])
			}
			out = append(out, m.result.Pins...)
			out = append(out, caseName)
		}
	}
	seen := map[string]bool{}
	c.spend(2 * len(c.readings))
	for _, r := range c.readings {
		if r.quality.word == word && r.b == "" && !seen[r.a] {
			seen[r.a] = true
			out = append(out, r.a)
		}
	}
	return append(out, placeWords(word)...)
}

func (c *Call) applyReadings(q *quality, a *args) (*Reply, error) {
	words := a.first().words
	rs, err := c.parseReadings(q, words)
	if err != nil {
		return nil, err
	}
	if err := c.tooManyPins(rs, words); err != nil {
		return nil, err
	}
	reply := &Reply{}
	c.remindBefore(q, rs, reply)
	before := len(reply.Lines)
	machines := map[string]bool{}
	for _, r := range rs {
		c.addReading(r)
		if q.word == "ohm" && r.of != "" && r.b != "" && partOf(r.of) == nil {
			machines[r.of] = true
		}
		c.compareWithEarlier(r, reply)
	}
	reply.Lines = append(reply.Lines[:before:before], append([]Line{{Plain, c.recorded(rs)}}, reply.Lines[before:]...)...)
	for _, r := range rs {
		c.tellBare(r, reply)
		c.tellVacuum(r, reply)
		c.tellBeyond(r, reply)
		unit, x, end := q.word, number(r.x), ""
		switch {
		case r.res > kilohm:
			unit, x, end = "megohm", number(r.x/megohm), "M"
		case r.res > 1:
			unit, x, end = "kilohm", number(r.x/kilohm), "k"
		}
		if r.tenths && c.sayOnce("tenths of "+unit) {
			reply.add(Plain, "Whole "+unit+"s are taken as tenths shown ("+x+".0"+end+"); write ~"+x+end+" if the meter shows none.").flag("tenths-assumed")
		}
	}
	for _, of := range sortedNames(machines) {
		c.refreshMachine(of, reply)
		c.tellPlateOhms(of, reply)
	}
	was := c.wasPhased
	phased := c.resubject() && c.wasPhased && !was
	if phased {
		reply.add(Plain, "Three legs are read against each other: taken as on three phases (inferred); plate type … says otherwise.").flag("three-legs")
	}
	t := judgementsTold{c: c, reply: reply, done: map[string]bool{}}
	for _, r := range rs {
		t.tell(r)
	}
	for _, of := range sortedNames(machines) {
		c.rejudgeCases(of, reply)
	}
	if q.word == "volt" {
		c.rejudgeFans(rs, reply)
	}
	if len(t.likewise) > 0 {
		reply.add(Plain, "Likewise "+strings.Join(t.likewise, ", ")+" to the case: "+string(t.caseWord)+".")
	}
	if phased {
		c.rejudge(reply)
	}
	return c.finish(reply), nil
}

// sayOnce reports whether something is yet to be said in this call, and notes
// that this entry says it.
func (c *Call) sayOnce(what string) bool {
	if c.said[what] != 0 {
		return false
	}
	c.said[what] = c.entry
	return true
}

func sortedNames(m map[string]bool) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	sort.Strings(out)
	return out
}

// mostPins is how many pins of one machine are read: more than any motor of
// an appliance brings out. The search for its windings grows fast with them.
const mostPins = 24

// tooManyPins refuses readings that would give the machine at hand more pins
// than mostPins: they are likelier slips than pins.
func (c *Call) tooManyPins(rs []*reading, words []script.Word) error {
	if rs[0].quality.word != "ohm" {
		return nil
	}
	seen := map[string]bool{}
	for _, key := range c.keysOf(c.machineAtHand()) {
		r := c.byKey[key][0]
		seen[r.a], seen[r.b] = true, true
	}
	for _, r := range rs {
		if r.b != "" {
			seen[r.a], seen[r.b] = true, true
		}
	}
	if len(seen) <= mostPins+1 {
		return nil
	}
	return words[0].Errorf("%s would have more than %d pins", c.machineAtHand(), mostPins).
		WithHint("another machine is named with: on evap-fan")
}

// leastLive is the current, in A, or power, in W, above which something is under
// power: a clamp round nothing shows some hundredths (common practice).
const leastLive = 0.05

func (c *Call) addReading(r *reading) {
	r.entry, r.at, r.index = c.entry, c.at, len(c.readings)
	if r.quality.word == "ohm" && r.b != "" {
		r.of = c.machineAtHand()
		if len(r.a) > 2 && partOf(r.a) != nil && r.b == caseName && !among(c.pins(), r.a) {
			r.of = "" // a part named outright is no pin of the machine
		}
		if r.b == caseName && isSupplyPoint(r.a) && !among(c.pins(), r.a) {
			r.of = "" // nor is a conductor of the supply
		}
		if c.ofHighVolts(r) {
			r.of = "" // nor a part of another trade
		}
	}
	c.readings = append(c.readings, r)
	if p := pairOfLegs(r); r.quality.word == "volt" && legPairs[p] != "" {
		if c.legReads == nil {
			c.legReads = map[string][]int{}
		}
		c.legReads[p] = append(c.legReads[p], r.entry)
	}
	if namesSecondLeg(r) {
		c.secondLeg = append(c.secondLeg, r)
	}
	switch r.quality.word {
	case "volt":
		if r.over || c.value(r).X >= deadVolts {
			c.live = append(c.live, r.entry)
		} else if c.value(r).Hi < deadVolts && !r.cond.energised() && !r.cond.is(directWord) && (isLine(r) && !c.isLeg(r) || r.b == "" && c.atMachine(r)) {
			c.dead = append(c.dead, r.entry)
		}
	case "amp", "watt":
		if r.over || r.x > leastLive {
			c.live = append(c.live, r.entry)
		}
	case "temp":
		if among(indoors, strings.ToLower(r.a)) {
			c.rooms = append(c.rooms, r)
		}
	}
	k := r.key()
	if len(c.byKey[k]) == 0 {
		c.keys = append(c.keys, k)
	}
	c.byKey[k] = append(c.byKey[k], r)
	if kind, name := c.subject(r); kind != "" {
		c.file(r, kind, name)
	}
}

// file puts a reading under its subject.
func (c *Call) file(r *reading, kind, name string) {
	s := kind + "\x00" + name
	c.bySubject[s] = append(c.bySubject[s], r)
	c.bySubjectKind[kind] = append(c.bySubjectKind[kind], r)
	if kind == "part" && r.cond.is("open") {
		c.doorOpen = append(c.doorOpen, r)
	}
}

// recorded says in one line what was taken down, and in what condition each was.
func (c *Call) recorded(rs []*reading) string {
	var parts []string
	for _, r := range rs {
		s := r.where() + " " + r.shown()
		if !r.over && !r.derived {
			s += " (±" + shortLimit(c.limit(r), r) + ")"
		}
		parts = append(parts, strings.TrimRight(s+" "+r.cond.String(), " "))
	}
	return "Entry " + itoa(c.entry) + ": " + strings.Join(parts, ", ") + "."
}

// shortLimit writes a limit in the unit in which the reading is shown, with
// two digits.
func shortLimit(limit float64, r *reading) string {
	if r.quality.word == "temp" {
		if r.q.UCUM() == "[degF]" {
			return twoDigits(limit*1.8) + " °F"
		}
		return twoDigits(limit) + " °C"
	}
	x := r.x
	shown, _, _ := r.q.Shown()
	if x == 0 || shown == 0 {
		return twoDigits(limit)
	}
	return twoDigits(limit * math.Abs(shown/x))
}

func twoDigits(x float64) string {
	if x == 0 {
		return "0"
	}
	d := 1 - int(math.Floor(math.Log10(math.Abs(x))))
	p := math.Pow10(d)
	return number(math.Round(x*p) / p)
}

// lastOf is the last of the entries, up to one, that still counts.
func (c *Call) lastOf(entries []int, upTo int) int {
	for i := sort.SearchInts(entries, upTo+1) - 1; i >= 0; i-- {
		if c.alive(entries[i]) {
			return entries[i]
		}
	}
	return 0
}

// tellVerdict adds a judgement to a reply.
func (c *Call) tellVerdict(j *judged, reply *Reply) {
	if j == nil {
		return
	}
	v := j.verdict
	tone := map[verdict.Word]Tone{verdict.Sound: Good, verdict.Suspect: Warn, verdict.Failed: Bad, verdict.CannotTell: Warn}[v.Word]
	text := v.Subject + ": " + string(v.Word) + ", " + v.Text
	if v.Limit != "" {
		text += " (limit " + v.Limit
		if v.Judged {
			text += ", " + marginText(v.Margin)
		}
		if v.Source != "" && v.Word != verdict.Sound {
			text += "; " + v.Source
		}
		text += ")"
	}
	reply.add(tone, text+endStop(text))
	also := v.Also
	if v.Word == verdict.Sound || v.Word == verdict.CannotTell {
		also = nil // why and the record hold them
	}
	fails := func(s string) bool { return strings.HasSuffix(s, "would fail it") }
	passes := func(s string) bool {
		return strings.HasSuffix(s, "would pass it") || strings.HasSuffix(s, "is too near to say") || strings.HasSuffix(s, "rated volts")
	}
	if len(also) > 1 && slices.ContainsFunc(also, fails) && !slices.ContainsFunc(also, passes) {
		also = append([]string{"every other published limit would fail it too"}, slices.DeleteFunc(slices.Clone(also), fails)...)
	}
	for _, s := range also {
		reply.add(Plain, strings.ToUpper(s[:1])+s[1:]+endStop(s))
	}
	for _, code := range v.Caution {
		c.warn(reply, code)
	}
	reply.flag(v.Fact...)
}

//go:noinline
func endStop(s string) string {
	if strings.HasSuffix(s, ".") || strings.HasSuffix(s, "…") {
		return ""
	}
	return "."
}

// suspectRange points out a display that speaks for a wrong meter range.
func (c *Call) suspectRange(r *reading, reply *Reply) {
	if v, ok := r.wrongRange(); ok {
		reply.add(Warn, v.Subject+": "+string(v.Word)+", "+v.Text+".").flag("meter-range")
	}
}
