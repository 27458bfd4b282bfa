package call

import (
	"strings"

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

// wrongGas tells of a gas charged that is not the plate's, "" when it is: oil, capillary
// and what may spark are made for one gas (common practice).
func (c *Call) wrongGas(from int) string {
	gas, at := c.charged()
	if on := c.gas(); gas != "" && on != "" && at >= from && formula.GasKey(on) != formula.GasKey(gas) {
		return "the gas charged, " + gas + atEntry(at) + ", is not that of the plate, " + on
	}
	return ""
}
