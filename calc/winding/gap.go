package winding

import (
	"math"
	"strconv"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// gapDetail is a Gap with the readings it comes from.
type gapDetail struct {
	*Gap
	low, mid, high measure.Value
	sum            measure.Value
	least          float64 // the least that the gap can be, in ohms
}

// gap compares the two lower readings with the highest. A positive gap is what
// one resistance in every pair leaves (each reading holds it once, the sum
// twice); a negative one cannot come from leads.
func (x *three) gap() gapDetail {
	v := x.values()
	if v[0].X > v[1].X {
		v[0], v[1] = v[1], v[0]
	}
	if v[1].X > v[2].X {
		v[1], v[2] = v[2], v[1]
	}
	if v[0].X > v[1].X {
		v[0], v[1] = v[1], v[0]
	}
	if n, ok := x.marked(); ok { // the marked start–run is the pair to add up to
		v = [3]measure.Value{x.t.v(n.c, n.r), x.t.v(n.c, n.s), x.t.v(n.s, n.r)}
	}
	d := gapDetail{Gap: &Gap{}, low: v[0], mid: v[1], high: v[2], sum: v[0].Plus(v[1])}
	d.Ohms = d.sum.X - d.high.X
	d.Percent = math.Abs(d.Ohms) / d.high.X * 100
	d.Tolerance = d.sum.Half() + d.high.Half()
	d.Beyond = !d.sum.Agrees(d.high)
	d.least = d.sum.Lo - d.high.Hi
	if d.Beyond && d.Ohms > 0 && d.least <= leadsUpTo {
		d.Lead = d.Ohms
	}
	return d
}

// leads is the most that the probe leads may still add to a reading, in ohms.
func (in Input) leads() float64 {
	if in.Probes > 0 {
		return 0
	}
	return leadsUpTo
}

// plainGap is the gap, in percent of the highest reading, from which a plain
// word is due even when the readings' limits allow it (common practice: no
// percentage is published).
const plainGap = 5

// noRolesGap is the gap, in percent of the highest reading, from which one of the
// three is so wrong that their order tells no roles (common practice).
const noRolesGap = 20

// leads reports whether what the probe leads have, or what was taken off for them,
// explains the gap: it is in every pair, and leaves their order as it is.
func (x *three) leads(g *gapDetail) bool {
	return g.Lead > 0 && g.Lead+x.in.Probes <= leadsUpTo || g.Ohms < 0 && x.in.Probes > 0 && g.high.Lo-g.sum.Hi <= x.in.Probes
}

// addUpFact is the fact of readings that do not add up. Windings of whatever kind
// read no more between two pins than over the third (the triangle of resistances).
//
//go:noinline
func (g *gapDetail) addUpFact() string {
	if g.Ohms < 0 {
		return FactTooHigh
	}
	return FactDoNotAddUp
}

// gapNote says how the sum compares.
func (x *three) gapNote(g gapDetail) {
	sum := bare(g.mid) + " + " + bare(g.low)
	res := x.res
	if math.Abs(g.Ohms) < 1e-9*g.high.X {
		res.note(sum + " adds up to " + reads(g.high) + ".")
		return
	}
	word := " exceeds "
	if g.Ohms < 0 {
		word = " falls short of "
	}
	text := sum + word + reads(g.high) + " by " + ohms(round3(math.Abs(g.Ohms))) + " (" + percent(g.Percent) + ")"
	res.note(text + "; the readings' limits allow " + rounded(g.Tolerance) + ".")
	if g.Beyond || g.Percent >= plainGap {
		res.note("The two should match the highest within meter and contact error (common practice).")
	}
	if !g.Beyond {
		return
	}
	switch {
	case g.Ohms > 0 && x.leads(&g):
		p := strconv.FormatFloat(math.Round((g.Lead+x.in.Probes)*100)/100, 'g', -1, 64)
		res.note("Probe leads of "+p+" Ω in every pair would explain it: short the probes, read them, enter `probes "+p+"`.",
			"A protector with half of that in the common path would read so too.")
	case g.Ohms > 0:
		res.note("That is more than probe leads have (0.2 to " + ohms(leadsUpTo) + "): clean the pins, read all again.")
		if g.high.Hi < 2*g.low.Lo {
			res.note("A three-phase machine with a fault can read so too: see its nameplate before anything is connected.")
			res.caution(caution.InverterLine)
		}
	case x.leads(&g):
		res.note("Leads cannot do this, but " + ohms(x.in.Probes) + " taken off for the probes may be too much: short them and read.")
	default:
		res.note("Leads cannot do this: suspect a bad contact on the highest pair, or a slip; read all three again.")
	}
}

// round3 keeps three significant digits.
func round3(x float64) float64 {
	if x == 0 {
		return 0
	}
	scale := math.Pow(10, 2-math.Floor(math.Log10(math.Abs(x))))
	return math.Round(x*scale) / scale
}
