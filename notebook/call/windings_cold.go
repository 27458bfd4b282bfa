package call

import (
	"math"
	"strings"

	"ohmcall/calc/measure"
	"ohmcall/calc/winding"
)

// readsCold tells a reading taken on a machine at which a protector has closed
// again.
//
//go:noinline
func readsCold(r *reading) bool {
	return r.cond.is("cold") || r.cond.hasAt && r.cond.at < measure.CoolBelow
}

// keysOf lists the pairs read on a machine, in the order of first reading.
//
//go:noinline
func (c *Call) keysOf(of string) []string {
	var out []string
	prefix := "ohm\x00" + of + "\x00"
	c.spend(8 * len(c.keys))
	for _, k := range c.keys {
		if strings.HasPrefix(k, prefix) && c.byKey[k][0].b != "" {
			out = append(out, k)
		}
	}
	return out
}

// pairsOf gives the last reading of each pair of a machine before an entry, the
// case among the pins; what was read before the machine was replaced is of
// another one.
func (c *Call) pairsOf(of string, before int) []*reading {
	var out []*reading
	since := c.renewedBefore(of, before)
	for _, key := range c.keysOf(of) {
		if _, now := c.pairBefore(key, before); now != nil && now.entry > since {
			out = append(out, now)
		}
	}
	return out
}

func (c *Call) pairBefore(key string, before int) (prev, now *reading) {
	if before == math.MaxInt {
		return c.last2(key)
	}
	for _, r := range c.byKey[key] {
		if r.entry < before && c.alive(r.entry) {
			prev, now = now, r
		}
	}
	return prev, now
}

// coldTemperature is to what winding readings taken `at` a temperature are
// corrected before they are compared, in °C.
const coldTemperature = 25

// coldValue is a winding reading corrected to 25 °C when its temperature was
// given. Readings to the case are not corrected.
func (c *Call) coldValue(r *reading) measure.Value {
	v := c.value(r)
	if r.cond.hasAt && r.b != caseName && !v.Over {
		v = winding.ToTemp(v, r.cond.at, coldTemperature)
		v.X = asFine(v.X, r.res)
	}
	return v
}

// A part read `hot`, with no temperature, is taken to lie between these
// temperatures in °C (common practice for windings that have just run).
const (
	hotLeast = 50
	hotMost  = 100
)

// fromHot corrects a winding read hot to 25 °C, with the doubt of not knowing
// how hot it was.
func fromHot(v measure.Value, res float64) measure.Value {
	if v.Over {
		return v
	}
	out := winding.ToTemp(v, (hotLeast+hotMost)/2, coldTemperature)
	out.X = asFine(out.X, res)
	out.Lo = winding.ToTemp(v, hotMost, coldTemperature).Lo
	out.Hi = winding.ToTemp(v, hotLeast, coldTemperature).Hi
	return out
}

// asFine keeps no more digits than were read: the others are of the sum.
func asFine(x, res float64) float64 {
	if res > 0 {
		x = math.Round(x/res) * res
	}
	return x
}

// readHot tells a pair that was read hot with no temperature to correct it by.
//
//go:noinline
func readHot(r *reading) bool {
	return r != nil && !r.over && r.b != caseName && r.cond.is("hot") && !r.cond.hasAt
}
