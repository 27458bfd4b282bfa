package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// opening is a joint that an entry of work opened.
type opening struct {
	said.Joint
	entry int
}

// tightness is what is wanted of the joints of one gas that work opened, whatever
// it was done for (common practice; a leak test of every gas joint made or broken
// is in the gas codes too, from memory).
var tightness = []struct {
	of     func(c *Call, j said.Joint) bool
	warned func(c *Call, r *Reply)
	leak   string // the danger whose own proof says the same
	tight  string // the finding that shows it
	proof  string
}{
	{
		func(c *Call, j said.Joint) bool {
			a := c.appliance()
			burns := a.Gas || a.Furnace || among(said.Burners, c.complaint())
			return burns && j == said.BurnerJoint || (burns || a.Unsealed || a.Unit == "") && j == said.GasJoint
		},
		func(c *Call, r *Reply) { c.warnAgain(r, caution.FuelGas) },
		"gas-leak", "no-gas-leak", "that every gas joint opened is tight, by a leak test (saw no gas leak)",
	},
	{
		func(c *Call, j said.Joint) bool { return j == said.RefrigerantJoint && !c.appliance().Unsealed },
		func(c *Call, r *Reply) {
			c.warn(r, caution.SealedSystem)
			if gas, _ := c.charged(); repair.Flammable(c.gas()) || repair.Flammable(gas) {
				c.warnAgain(r, caution.Flammable)
			}
		},
		"leak-found", "leak-not-found", "that every refrigerant joint opened is tight, by a leak check (saw no leak found)",
	},
}

// openedAt is the last entry of work that opened such a joint, 0 when none did.
func (c *Call) openedAt(of func(*Call, said.Joint) bool) int {
	for i := len(c.opened) - 1; i >= max(0, len(c.opened)-mostRenewals); i-- {
		c.spend(20)
		if o := c.opened[i]; c.alive(o.entry) && !c.saidBefore(o.entry) && of(c, o.Joint) {
			return c.workAt(o.entry)
		}
	}
	return 0
}

// emptied are words of work for which a tank is emptied.
var emptied = []string{"element", "heater", "anode", "drain", "flush", "dip tube", "relief"}

// warnOfOpened gives the cautions of the joints that the line at hand opened, and of
// a tank that its work, in these words, has emptied.
func (c *Call) warnOfOpened(r *Reply, text string) {
	if a := c.appliance(); a.Tank && !a.Gas && said.Has(text, emptied) {
		c.warn(r, caution.FillFirst)
	}
	for _, t := range tightness {
		if !c.saidBefore(c.entry) && c.openedAt(t.of) == c.workAt(c.entry) {
			t.warned(c, r)
		}
	}
}

// tightProofs are the leak tests that work which opened a joint wants. One that a
// leak found asks for anyway is named once.
func (c *Call) tightProofs() (out []proofWanted) {
	for _, t := range tightness {
		at := c.openedAt(t.of)
		if at == 0 || c.alarmStands(t.leak) {
			continue
		}
		out = append(out, proofWanted{t.proof, func(c *Call, _ int) shown {
			n := c.lastShown([]string{t.tight})
			if n < at { // in the line of the work it stands behind it
				return shown{}
			}
			if again := c.lastShown([]string{t.leak, "oil-stain"}); again > max(n, c.since()) {
				return shown{text: "a sign of a leak again" + atEntry(again)}
			}
			f, _ := cause.Lookup(t.tight)
			return shown{held: true, text: f.Help + atEntry(n)}
		}})
	}
	return out
}

// underGas are the facts that a burner had gas, or lacked something else before its
// cock was found shut.
var underGas = []string{"gas-on", "flame-lights", "flame-drops-out", "flame-sensed", "flame-weak", "igniter-weak", "igniter-open", "heats-up", "gas-coil-open"}

// shutForWork reports whether a gas cock that was seen shut at an entry had been
// shut to work at it: beside or after the words that the unit was made safe, after
// work, or after what was found under gas. It is then no reason for the fault
// (common practice).
func (c *Call) shutForWork(entry int) bool {
	for _, w := range c.works {
		if c.spend(1); w.kind == "safe" && w.entry <= entry+1 && c.alive(w.entry) {
			return true
		}
	}
	before := func(list []int) bool {
		return slices.ContainsFunc(list, func(n int) bool { return n < entry && c.alive(n) })
	}
	if before(c.mended) {
		return true
	}
	for _, code := range underGas {
		if before(c.seenAt[code]) {
			return true
		}
	}
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if c.spend(1); kind == "wind" || !isIgniter(name) && !strings.HasPrefix(name, "flame") && !strings.HasPrefix(name, "gas") {
			continue
		}
		c.spend(2000)
		if codes, _, _ := c.codesOf(key, kind, name, entry); intersects(codes, underGas) {
			return true
		}
	}
	return false
}
