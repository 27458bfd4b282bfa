package call

import (
	"slices"
	"strings"

	"ohmcall/calc/measure"
)

// sites are the places that a sensor or a thermometer can be of, by a part of
// their names: what is read at one of them is not the temperature of a sensor that
// sits in another. A sensor that names no place may sit in those before namedSites,
// the rest are pipes, coils and moving air (common practice).
var sites = [][]string{
	{"room", "ambient", "kitchen"}, {"freezer"}, {"fridge", "refrigerator", "fresh"}, {"oven"}, {"water", "tub", "tank"}, {"drum", "dryer", "exhaust"},
	{"evap", "evaporator", "coil", "defrost"}, {"discharge"}, {"suction"}, {"liquid"}, {"comp", "compressor"}, {"cond", "condenser"},
	{"supply"}, {"return"}, {"outdoor", "outside"}, {"flue"},
}

const namedSites = 6 // as they stand in the table: common practice

// siteOf is the site that a name speaks of, -1 when it speaks of none.
func siteOf(name string) int {
	parts := strings.Split(strings.ToLower(name), "-")
	return slices.IndexFunc(sites, func(words []string) bool {
		return slices.ContainsFunc(parts, func(p string) bool { return among(words, strings.TrimRight(p, "0123456789")) })
	})
}

// isCold tells a site that is one of the cold places of an appliance.
func isCold(site int) bool { return site == 1 || site == 2 }

// mayHave reports whether a sensor of a site can have the temperature of another: of
// a pipe, a coil or moving air only where its name says so.
func mayHave(sensor, temp int) bool {
	return temp == sensor || temp < 0 || sensor < 0 && temp < namedSites
}

// temperatureBeside is the temperature at which a sensor was read: `ice`, `at 0C`,
// or that read last of what it may sit in, a little before it and with no work
// between: a new one has the temperature of where it came from. Of two cold places
// a sensor that names neither may sit in either, and has none.
func (c *Call) temperatureBeside(r *reading) measure.Value {
	if r.cond.hasAt {
		return c.temperatureOf(r, nil)
	}
	rep, sensor, read := c.repairs(), siteOf(r.a), -1
	fits := func(t *reading) bool {
		c.spend(20)
		at := siteOf(t.a)
		if phase(rep, t.entry) != phase(rep, r.entry) || !mayHave(sensor, at) || isCold(read) && (!isCold(at) || at == read) {
			return false
		}
		read = at
		return true
	}
	v := c.temperatureOf(r, fits)
	if !v.Over && sensor < 0 && isCold(read) && !c.temperatureOf(r, fits).Over {
		return measure.Open(0)
	}
	return v
}

// notBeside says why the temperature read last before a sensor is not held against
// it, and what can be; "" when none was read.
func (c *Call) notBeside(r *reading) string {
	at := c.temperatureOf(r, func(*reading) bool { return true })
	if at.Over {
		return ""
	}
	of := ""
	if siteOf(r.a) < 0 {
		of = ", call the sensor by its place, as freezer-sensor,"
	}
	return "that of entry " + itoa(at.Entry) + " is of another place or of before the work, or the sensor may sit in either of two: read it anew where the sensor is" + of + " once it has taken it on (temp …), or the sensor in ice water (ohm " + r.a + " … ice)"
}
