package call

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/caution"
	"ohmcall/calc/repair"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// work is something done or written down.
type work struct {
	entry int
	at    time.Time
	kind  string
	text  string
}

// part is a part used.
type part struct {
	entry  int
	name   string
	serial string
	count  float64
	price  float64
	priced bool
}

// wire is a wire of the part fitted, and the role that it serves.
type wire struct {
	entry  int
	colour string
	of     string // the machine at hand
	to     string // a role, a pin or another point, as typed
}

func workCommands() []Command {
	return []Command{
		{
			Word: "saw", Group: Work,
			Params:   []Param{{Name: "FINDING", Kind: Text, Words: func(*Call) []string { return findingWords() }}},
			Help:     "a finding, from the list in help findings, or in your own words",
			Examples: []string{"saw clicks", "saw both fans run", "saw cond-fan runs, evap-fan stopped", "saw comp hot"},
			See:      "findings",
			apply:    applySaw,
		},
		{
			Word: "safe", Group: Work,
			Params:   []Param{{Name: "TEXT", Kind: Text, Optional: true}},
			Help:     "isolated, locked and proved dead, capacitor discharged",
			Examples: []string{"safe", "safe plug pulled and taped, C1 discharged through 20k, 0.3 V left"},
			apply: func(c *Call, a *args) (*Reply, error) {
				t := a.text("TEXT")
				if said.NotSafe(t) {
					return nil, a.get("TEXT").errorf("safe states that the unit is isolated, proved dead and discharged; these words say that it is not").
						WithHint("write safe when it is, and anything else as a note: note %s", t)
				}
				if t == "" {
					t = "the technician states that it is isolated, proved dead, and its capacitors discharged"
				}
				c.worked(work{c.entry, c.at, "safe", t})
				if said.GasShut(t) {
					return say("Made safe: " + t + ". That is the gas alone: safe unplugged when its power is off too."), nil
				}
				c.dead = append(c.dead, c.entry)
				r := say("Made safe: " + t + ".")
				if discharged := said.Has(t, []string{"discharg"}); c.appliance().HighVolts && !discharged {
					c.warnAgain(r, caution.HighVoltage)
				} else if c.typeOf(c.mainMachine()) == onDrive && !discharged {
					c.warn(r, caution.Capacitor)
				}
				return r, nil
			},
		},
		{
			Word: "did", Group: Work,
			Params:   []Param{{Name: "TEXT", Kind: Text}},
			Help:     "work done",
			Examples: []string{"did replaced start device"},
			apply: func(c *Call, a *args) (*Reply, error) {
				c.worked(work{c.entry, c.at, "did", a.text("TEXT")})
				r := c.warnOfWork(&Reply{}, a.text("TEXT"))
				c.told(r, a.text("TEXT"), true)
				c.worry(r, a.text("TEXT"))
				c.putRight(a.text("TEXT"))
				if said.Undone(a.text("TEXT")) {
					c.shownGone(r, a.text("TEXT"))
					r.add(Plain, "Written down: "+a.text("TEXT")+". By its words nothing is mended yet.")
					if c.shutAt() == c.entry && len(c.repairs()) > 0 {
						r.add(Plain, "Shut after the work: the earth to its metal is read again, and nothing else.")
					}
					return r, nil
				}
				c.place(a, "did", a.text("TEXT"))
				c.mend()
				c.warnOfOpened(r, a.text("TEXT"))
				c.renew(r.add(Plain, "Done: "+a.text("TEXT")+"."))
				c.failedWork(r, a.text("TEXT"))
				c.shownGone(r, a.text("TEXT"))
				return c.afterRepair(r, a.line.Body), nil
			},
		},
		{
			Word: "part", Group: Work,
			Params:   []Param{{Name: "PART, [COUNT], [PRICE]", Kind: Fields, Words: func(c *Call) []string { return c.partNames() }}},
			Help:     "a part used, how many, and the price of one",
			Doc:      "The part's own serial number stands behind its name and the word serial.",
			Examples: []string{"part start device SAMPLE-SD1, 1, 24.50", "part control board SAMPLE-CB2 serial DEMO-B-0042, 1, 85"},
			apply:    applyPart,
		},
		{
			Word: "wire", Group: Work,
			Params: []Param{
				{Name: "COLOUR", Kind: Name},
				{Name: "ROLE|PIN", Kind: Place, Words: wireTargets},
			},
			Help:     "a wire of the part in hand, as printed on that part, and the role or pin it goes to",
			Doc:      "C, S and R stand for common, start and run. The tool keeps no colour code: the part's own label decides.",
			Examples: []string{"wire black common"},
			apply:    applyWire,
		},
		{
			Word: "note", Group: Work,
			Params:   []Param{{Name: "TEXT", Kind: Text}},
			Help:     "anything else, as it is",
			Examples: []string{"note customer says it was moved last week"},
			apply: func(c *Call, a *args) (*Reply, error) {
				if met, known := c.guard(a.line); known != nil && unreadYet(known) {
					return (&Reply{}).add(Ask, "Condition cannot be told, "+faultOf(known)+"; not noted."), nil
				} else if known != nil {
					return nil, known
				} else if r := guarded(met, "not noted"); r != nil {
					return r, nil
				}
				kind := kindOfNote(a.text("TEXT"))
				c.worked(work{c.entry, c.at, kind, a.text("TEXT")})
				if kind == ofTheFile {
					return say("Noted."), nil
				}
				r := c.warnOfWork(say("Noted."), a.text("TEXT"))
				c.told(r, a.text("TEXT"), false)
				c.shownGone(r, a.text("TEXT"))
				c.wonder(r, a.text("TEXT"))
				if low := strings.ToLower(a.text("TEXT")); startsWithAny(low, workWords) && said.Has(low+" ", workedOn) {
					r.add(Ask, "A note is no work: if that was done now, did "+a.text("TEXT")+" has it in the record, and what proves it is asked.").flag("reads-as-work")
				}
				if len(c.repairs()) > 0 && c.result() == record.Proved {
					r.Lines[0].Text = "Noted; the proof stands."
				}
				return r, nil
			},
		},
	}
}

// workWords begin a note that may be work which was done.
var workWords = []string{"added ", "fitted ", "replaced ", "installed ", "changed the ", "swapped ", "recharged ", "charged ", "topped ", "renewed ", "rewired ", "weighed in "}

// workedOn are words of what such work is on.
var workedOn = []string{"gas ", "charge ", "refrigerant", " r-", " r4", " r1", " r2", " r6", " lb", " oz", "part", "kit", "fan", "motor", "relay", "overload", "capacitor", " cap ", "comp", "switch", "valve", "heater", "element", "sensor", "board", "thermostat", "control", "wire", "cord", "fuse", "belt", "pump", "contactor", "igniter", "filter", "seal", "gasket", "hose", "limit", "timer"}

// afterRepair says what the record wants once something was repaired.
func (c *Call) afterRepair(r *Reply, line string) *Reply {
	c.warn(r, caution.EarthAfter)
	c.tellVoided(r, line)
	for _, why := range c.misfits(c.entry) {
		r.add(Ask, "Does not fit by its marking: "+why+".").flag("part-does-not-fit")
	}
	if m := strings.Join(c.proofMissing(), "; "); m != "" && m != c.proofTold {
		c.proofTold = m
		r.add(Ask, "Proof wanted: "+m+".")
	}
	return c.finish(r)
}

func (c *Call) partNames() []string {
	var out []string
	for _, p := range c.parts {
		if !among(out, p.name) {
			out = append(out, p.name)
		}
	}
	return out
}

// isSerialWord tells the word behind which a part's serial number stands.
func isSerialWord(s string) bool {
	return among([]string{"serial", "s/n", "sn"}, strings.ToLower(strings.TrimRight(s, ".:")))
}

func applyPart(c *Call, a *args) (*Reply, error) {
	words := a.first().words
	parts, err := split(words)
	if err != nil {
		return nil, err
	}
	p := part{entry: c.entry, count: 1}
	var name []string
	for _, w := range parts[0] {
		name = append(name, w.Text)
	}
	if i := slices.IndexFunc(name, isSerialWord); i > 0 && i+1 < len(name) {
		name, p.serial = name[:i], strings.Join(name[i+1:], " ")
	}
	p.name = strings.Join(name, " ")
	if len(parts) > 3 {
		return nil, parts[3][0].Errorf("a part has a name, a count and a price").WithHint("as in: part start device, 1, 24.50")
	}
	if len(parts) > 1 {
		w := parts[1][0]
		if p.count, err = parsePositive(w.Text); err != nil || len(parts[1]) > 1 || p.count == 0 {
			return nil, w.Errorf("%q is no count", w.Text).WithHint("as in: part start device, 1, 24.50")
		}
		if len(parts) == 2 && p.count != math.Trunc(p.count) {
			return nil, w.Errorf("%s reads like a price and stands where the count does", w.Text).WithHint("count, then price: part %s, 1, %s", p.name, w.Text)
		}
	}
	if len(parts) > 2 {
		w := parts[2][0]
		if p.price, err = parsePositive(w.Text); err != nil || len(parts[2]) > 1 {
			return nil, w.Errorf("%q is no price", w.Text).WithHint("a plain number in the notebook's currency, as in: part start device, 1, 24.50")
		}
		p.priced = true
	}
	c.parts = append(c.parts, p)
	c.heed(work{c.entry, c.at, "part", p.name})
	text := "Part: " + number(p.count) + " × " + p.name
	if p.serial != "" {
		text += ", serial " + p.serial
	}
	if p.priced {
		text += " at " + record.Money(p.price)
	}
	r := &Reply{}
	if n := len(parts[0]); len(parts) == 1 && n > 1 && startsLikeNumber(parts[0][n-1].Text) {
		if _, err := parsePositive(parts[0][n-1].Text); err == nil {
			r.add(Ask, "All of it is taken as the name; count and price stand behind commas: part start device, 1, 24.50.")
		}
	}
	if said.Undone(p.name) {
		return r.add(Plain, text+". By its words it is not fitted yet."), nil
	}
	c.place(a, "part", p.name)
	c.mend()
	if said.Names(strings.ToLower(p.name), defaultMachine) || said.OpensSystem(p.name) {
		c.warnOfWork(r, "new compressor")
	}
	c.warnOfOpened(r, p.name)
	c.renew(r.add(Plain, text+"."))
	return c.afterRepair(r, a.line.Body), nil
}

// warnOfWork gives the cautions that belong to the words of what was done.
func (c *Call) warnOfWork(r *Reply, text string) *Reply {
	c.alarmed(r, text)
	c.warnOfGuards(r)
	if n := len(c.works); n > 0 && c.works[n-1].entry == c.entry && c.saysLined(c.works[n-1]) && len(c.lined()) > 0 {
		c.warnAgain(r, caution.InverterLine)
		r.add(Ask, "Line voltage on a compressor that a drive runs: prove drive and compressor before they are trusted.")
	}
	if said.OpensSystem(text) && said.OpensSystem(strings.Join(said.Stated(text), ", ")) && c.atCompressor() {
		c.warn(r, caution.SealedSystem)
		if repair.Flammable(c.plateText(c.mainMachine(), "gas")) {
			c.warn(r, caution.Flammable)
		}
	}
	return r
}

// wireTargets offers the roles, then the pins, that a wire can go to.
func wireTargets(c *Call) []string {
	return append([]string{"C", "S", "R", "L", "N"}, c.pins()...)
}

func applyWire(c *Call, a *args) (*Reply, error) {
	to := a.get("ROLE|PIN")
	if role := roleLetters[to.text]; role != "" && among(c.pins(), to.text) {
		if is := string(c.machines[c.machineAtHand()].result.Roles[to.text]); is != role {
			return nil, to.errorf("%s is a pin here and the letter for %s too", to.text, role).
				WithHint("write the role in full: wire %s %s, or: wire %s %s", a.text("COLOUR"), role, a.text("COLOUR"), cmp.Or(is, "run"))
		}
	}
	c.wires = append(c.wires, wire{c.entry, a.text("COLOUR"), c.machineAtHand(), to.text})
	t := c.wiring(c.machineAtHand())
	r := &Reply{}
	for _, row := range t.Rows {
		if row.Entry == c.entry {
			r.add(Plain, wireText(row)+".")
		}
	}
	for _, w := range c.wires[:len(c.wires)-1] {
		if w.of == c.machineAtHand() && strings.EqualFold(w.colour, a.text("COLOUR")) && c.alive(w.entry) {
			r.add(Ask, "If this one corrects "+w.colour+" to "+w.to+": strike "+itoa(w.entry)+".")
		}
	}
	for _, f := range t.Problems {
		r.add(Ask, strings.ToUpper(f[:1])+f[1:]+endStop(f))
	}
	if c.gapWide() {
		r.add(Ask, "The roles rest on readings that do not add up: read the three pairs again before this is connected.")
	}
	if m := c.machines[c.machineAtHand()]; t.Complete() && m != nil && m.result.Settled {
		r.add(Good, "Each role is served once.").flag("wiring-complete")
	}
	c.warn(r, caution.ProveDead)
	return r, nil
}

// roleLetters are the letters that the trade prints on terminals.
var roleLetters = map[string]string{"C": "common", "S": "start", "R": "run"}

// wireText says wire, role and pin in one line.
func wireText(row repair.WireRow) string {
	if row.Other != "" {
		return row.Wire + " → " + row.Other
	}
	return row.Wire + " → " + cmp.Or(row.Role, "role not known") + " → pin " + cmp.Or(row.Pin, "not known")
}

// wirings are those of each machine of which wires were written down.
func (c *Call) wirings() (out []repair.WireTable) {
	told := ""
	for _, w := range c.wires {
		if !strings.Contains(told, w.of+",") {
			told += w.of + ","
			out = append(out, c.wiring(w.of))
		}
	}
	return out
}

// wiring holds the wires of a machine against the roles found.
func (c *Call) wiring(of string) repair.WireTable {
	roles := map[string]string{}
	if m := c.machines[of]; m != nil {
		for pin, role := range m.result.Roles {
			roles[pin] = string(role)
		}
	}
	var wires []repair.Wire
	c.spend(400 * len(c.wires))
	for _, w := range c.wires {
		if w.of == of && c.alive(w.entry) {
			wires = append(wires, repair.Wire{Colour: c.ofMachine(of) + w.colour, To: w.to, Entry: w.entry})
		}
	}
	t := repair.Wiring(wires, roles)
	if m := c.machines[of]; m != nil && m.result.Disputed {
		t.Problems = append(t.Problems, disputes+": settle which pin is common before this is connected")
	}
	for i, p := range t.Problems {
		t.Problems[i] = c.ofMachine(of) + p
	}
	return t
}

// wiresClash says which role has no wire while another has two, "" when none is so or
// the wiring was held against its diagram since.
func (c *Call) wiresClash() string {
	n := len(c.wires)
	if n == 0 || c.lastOf(c.seenAt["wiring-matches"], c.entry) > c.wires[n-1].entry {
		return ""
	}
	for _, t := range c.wirings() {
		none, two := "", ""
		for _, p := range t.Problems {
			if strings.Contains(p, "no wire ") {
				none = p
			} else if strings.Contains(p, " wires go ") {
				two = ", and " + p
			}
		}
		if none != "" && two != "" {
			return none + two
		}
	}
	return ""
}
