package call

import (
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// offPower are the states in which a unit has nothing that could spark.
var offPower = []string{"unplugged", "tagged out", "taken away"}

// flammableGas reports whether the machine's refrigerant burns, and the unit was
// not left without its power.
func flammableGas(c *Call) bool {
	as, _ := c.leftAs()
	return repair.Flammable(c.fireGas()) && !among(offPower, said.StateLeft(as))
}

// smellsOfCharge reports whether the only gas in the machine that burns is its refrigerant:
// what smells of gas, or leaks it, is that then (common practice).
func (c *Call) smellsOfCharge() bool {
	a := c.appliance()
	return !a.Gas && !a.Furnace && !a.Unsealed && repair.Hydrocarbon(c.fireGas())
}

// fireGas is the machine's refrigerant by its plate, or one that burns where what was told
// of the machine names it.
func (c *Call) fireGas() string {
	g, named := c.gas(), c.last("unit")+", "+c.last("fault")
	switch {
	case repair.Flammable(g):
		return g
	case c.lastOf(c.fires, c.entry) > 0 || said.NamesFire(named):
		return "R-290"
	case c.lastOf(c.mild, c.entry) > 0 || said.NamesMild(named):
		return "R-32"
	}
	return g
}

func burnsFuel(c *Call) bool { return !c.smellsOfCharge() }

// smellsOfFuel reports whether a smell of gas may be of fuel.
func (c *Call) smellsOfFuel() bool { return burnsFuel(c) || c.smelt(true) > 0 }

// smelt is the last entry that tells of a smell of gas, at another appliance or in the
// house, or at the machine itself; 0 when none does.
func (c *Call) smelt(elsewhere bool) int {
	list := c.seenAt["gas-smell"]
	c.spend(50 * len(list))
	for i := len(list) - 1; i >= 0; i-- {
		if c.alive(list[i]) && said.OtherGas(c.line(list[i])) == elsewhere {
			return list[i]
		}
	}
	if c.heard("gas-smell") && said.OtherGas(c.last("fault")) == elsewhere {
		return c.lastAt("fault")
	}
	return 0
}
