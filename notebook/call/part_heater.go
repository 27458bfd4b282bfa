package call

import (
	"math"
	"slices"
	"strings"
)

// twins are words by which two heaters of one appliance are told apart (common practice).
var twins = [][2]string{{"upper", "lower"}, {"top", "bottom"}, {"inner", "outer"}}

// twinOf is the other of two heaters, by the name of the one, "" of any other.
func twinOf(name string) string {
	name = strings.ToLower(name)
	for _, pair := range twins {
		for i, w := range pair {
			if rest, ok := strings.CutPrefix(name, w+"-"); ok && isHeater(name) {
				return pair[1-i] + "-" + rest
			}
		}
	}
	return ""
}

// unreadBefore reports whether no ohms or amps were read of a part before an entry.
func (c *Call) unreadBefore(name string, before int) bool {
	c.spend(2 * len(c.readings))
	return !slices.ContainsFunc(c.readings, func(r *reading) bool {
		return r.entry < before && c.alive(r.entry) && r.b == "" && (r.quality.word == "ohm" || r.quality.word == "amp") && strings.EqualFold(r.a, name)
	})
}

// twinToRead is a heater of two that was not read, though the other was; "" when none is.
func (c *Call) twinToRead() string {
	for i := len(c.readings) - 1; i >= 0; i-- {
		c.spend(2)
		if r := c.readings[i]; r.quality.word == "ohm" && c.alive(r.entry) {
			if twin := twinOf(r.a); twin != "" && c.unreadBefore(twin, math.MaxInt) {
				return twin
			}
		}
	}
	return ""
}

// heaterWatts are the watts that a heater is held to: its own, else those of the plate,
// on which more may draw. Those of what cools are of its machine (common practice).
func (c *Call) heaterWatts(name string) (watts float64, whole bool) {
	for i := len(c.plates) - 1; i >= 0; i-- {
		c.spend(2)
		if p := c.plates[i]; p.key == "watts" && p.isQ && c.alive(p.entry) && (p.name != "" && sameHeater(p.name, name) || p.of != defaultMachine && sameHeater(p.of, name)) {
			watts, _ = p.q.In("W")
			return watts, false
		}
	}
	a := c.appliance()
	if a.Unit != "" && !a.Unsealed {
		return 0, false
	}
	return c.plateNumber("", "watts", "W"), a.Shares()
}

// oneRating is how far, as a share of their middle, the ends of a range of volts may
// lie apart for its watts to be those of the middle; the watts of a wider one are of its
// ends, 208/240 mostly of the upper (IEC 60335-1 cl. 10.1, from memory; common practice).
const oneRating = 0.1

// heaterVolts are the volts that a heater's watts belong to; low is 0 unless the plate
// has two.
func (c *Call) heaterVolts() (low, volts float64) {
	volts = c.ratedVolts()
	c.spend(2 * len(c.plates))
	for i := range c.plates {
		if p := &c.plates[i]; p.wide && c.alive(p.entry) && p.parted() && p.q.SI() == volts {
			return 2*volts - p.hi.SI(), p.hi.SI()
		}
	}
	return 0, volts
}

// parted reports whether the ends of a range of volts are ratings of their own.
//
//go:noinline
func (v *plate) parted() bool { return v.wide && v.hi.SI() > v.q.SI()*(1+oneRating/2) }
