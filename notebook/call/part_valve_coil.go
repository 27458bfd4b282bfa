package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// dryerCoils is how many coils the gas valve of a dryer has: one that reads through says
// nothing of the others (common practice).
const dryerCoils = 3

// readCold takes away what a coil or a limit that conducts tells where it does not tell
// enough: read cold, when the heat is lost hot; and one coil of several.
func (l *factList) readCold() {
	c, coils := l.c, 0
	hot := c.complaint() == said.GasQuits || l.has("heat-lost")
	if !hot && !c.appliance().Radiant {
		return
	}
	l.out = slices.DeleteFunc(l.out, func(f cause.Fact) bool {
		coil := f.Code == "coil-conducts"
		if (coil || f.Code == "limit-closed") && hot && !c.readHot(f.Entry) {
			return true
		}
		if coil {
			coils++
		}
		return false
	})
	if coils < dryerCoils && c.appliance().Radiant {
		l.out = slices.DeleteFunc(l.out, func(f cause.Fact) bool { return f.Code == "coil-conducts" })
	}
}

// readHot reports whether a reading of an entry is of a part that was hot.
func (c *Call) readHot(entry int) bool {
	c.spend(mostSearched)
	return slices.ContainsFunc(c.readings[max(0, len(c.readings)-mostSearched):], func(r *reading) bool { return r.entry == entry && r.cond.is("hot") })
}

// isPilotPower tells what makes the volts of a standing pilot.
func isPilotPower(name string) bool {
	return among([]string{"thermocouple", "thermopile"}, strings.ToLower(name))
}
