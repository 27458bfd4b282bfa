package call

import (
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// fittedCap is a capacitor fitted, with the entry that says so.
type fittedCap struct {
	said.Capacitor
	entry int
}

// stead is the plate's marking that a section of a fitted capacitor stands in
// for: the one of its name, else the only one.
func (c *Call) stead(f fittedCap, section int) (plate, bool) {
	if len(f.UF) == 2 {
		return c.plateAt("", "mfd", []string{"herm", "fan"}[section])
	}
	var only plate
	n := 0
	c.spend(2 * len(c.plates))
	for _, p := range c.plates {
		if p.key != "mfd" || !c.alive(p.entry) {
			continue
		}
		if p.name != "" && among(f.Words, strings.TrimSuffix(strings.ToLower(p.name), "-cap")) {
			return p, true
		}
		if n == 0 || !sameName(p.name, only.name) {
			n++
		}
		only = p
	}
	return only, n == 1
}

// misfit says why one section of a fitted capacitor does not suit in place of
// what the plate says, and how that is known; "" when it suits.
func misfit(p plate, uF, volts float64) string {
	s, err := capSize(p)
	if err != nil {
		return ""
	}
	why := s.Misfit(uF, volts)
	if why == "" {
		return ""
	}
	return s.Kind + " capacitor, " + why + " (" + s.Source + "), the old one's marking: entry " + itoa(p.entry)
}

// capSize is the range that would do in place of a capacitor marked so.
func capSize(p plate) (repair.Size, error) {
	lo, err := p.q.In("uF")
	if err != nil {
		return repair.Size{}, err
	}
	if !p.ranged && p.name != "start" {
		return repair.RunSize(lo, p.rated, p.tol)
	}
	hi := 0.0
	if p.ranged {
		hi, _ = p.hi.In("uF")
	}
	return repair.StartSize(lo, hi, p.rated)
}

// misfits lists what the capacitors fitted from an entry on do not suit by, the
// last fitted in each place, and the gas last charged.
func (c *Call) misfits(from int) []string {
	var out []string
	if why := c.wrongGas(from); why != "" {
		out = append(out, why)
	}
	seen := map[string]bool{}
	for i := len(c.capsFitted) - 1; i >= max(0, len(c.capsFitted)-mostRenewals); i-- {
		f := c.capsFitted[i]
		if f.entry < from || !c.alive(f.entry) {
			continue
		}
		c.spend(2000)
		for n, uF := range f.UF {
			p, ok := c.stead(f, n)
			if !ok || seen[p.name] {
				continue
			}
			seen[p.name] = true
			if why := misfit(p, uF, f.Volts); why != "" {
				out = append(out, why+", fitted: entry "+itoa(f.entry))
			}
		}
	}
	return out
}

// charged is the gas last charged, as it was named, and the entry.
func (c *Call) charged() (string, int) {
	for i := len(c.done) - 1; i >= max(0, len(c.done)-mostRenewals); i-- {
		c.spend(200)
		if d := &c.done[i]; c.alive(d.entry) {
			if gas := said.Charged(d.text); gas != "" {
				return gas, d.entry
			}
		}
	}
	return "", 0
}

// held is the gas last charged, or last told of as what is in the machine.
func (c *Call) held() (string, int) {
	gas, at := c.charged()
	for i := len(c.works) - 1; i >= max(0, len(c.works)-mostRenewals) && c.works[i].entry > at; i-- {
		c.spend(200)
		if w := &c.works[i]; (w.kind == "note" || w.kind == "saw") && c.alive(w.entry) {
			if g := said.Held(w.text); g != "" {
				return g, w.entry
			}
		}
	}
	return gas, at
}

// tellHeld tells of a gas that the line at hand names as what is in the machine and that
// is not the plate's; one that burns in a machine that is made for none is what can hurt
// (common practice).
func (c *Call) tellHeld(r *Reply, text string) {
	if said.Held(text) == "" {
		return
	}
	gas, at := c.held()
	why := c.wrongGas(c.entry)
	if at != c.entry || why == "" {
		return
	}
	if repair.Flammable(gas) && !repair.Flammable(c.gas()) {
		c.warnAgain(r, caution.Flammable)
		if c.lastOf(c.seenAt["hazard"], c.entry) != c.entry {
			c.sight("hazard", gas)
			r.add(Bad, "It burns, and the machine is made for "+c.gas()+": counts as something that can hurt; wanted then: saw hazard gone. If it is not so, strike "+itoa(c.entry)+".").flag("danger-told")
		}
	}
	if n := len(c.works); n > 0 && c.works[n-1].kind != "did" {
		r.add(Ask, "Does not fit by its marking: "+why+".").flag("part-does-not-fit")
	}
}

// wrongGas tells of a gas in it that is not the plate's, "" when it is: oil, capillary
// and what may spark are made for one gas (common practice).
func (c *Call) wrongGas(from int) string {
	gas, at := c.held()
	if on := c.gas(); gas != "" && on != "" && at >= from && formula.GasKey(on) != formula.GasKey(gas) {
		where := "in it"
		if _, charged := c.charged(); charged == at {
			where = "charged"
		}
		return "the gas " + where + ", " + gas + atEntry(at) + ", is not that of the plate, " + on
	}
	return ""
}
