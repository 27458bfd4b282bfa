package judge

import (
	"math"

	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// PhasesIn is the volts between every two of three legs, before fuse and
// contactor or at the machine.
type PhasesIn struct {
	Place   string  // as the legs are called: L1 L2 L3
	Machine bool    // read at the machine
	Called  bool    // while it was called on
	Nominal float64 // volts of the plate, 0 when it has none
	Pairs   [3]measure.Value
	Names   [3]string // of the leg that each pair leaves out
}

// Unbalance is, in percent, how far the volts between three legs may lie from
// their average, of the average: NEMA MG 1 tells not to run a motor beyond 5 and
// to derate it beyond 1 (from memory; the formula as reprinted in a motor
// protector's specifications, p. 5: 203, 210 and 212 V are 2.5 %).
const (
	mostUnbalance = 5.0
	ratedBalance  = 1.0
	smallest      = 1e-9 // so that nothing is divided by 0 V
	phaseSource   = "NEMA MG 1, largest deviation from the average by the average; 5 % from memory"
)

// lostShare is the share of the highest pair below which a pair has lost a leg:
// one that floats reads about half (common practice).
const lostShare = 0.75

// Where both pairs of one leg are low alike, below fedBackShare of the third and within
// alikeShare of each other, that leg is fed back through a motor that runs on the other
// two, or hangs on a burnt joint (common practice).
const fedBackShare, alikeShare = 0.85, 0.08

// fedBack is the pair without the leg that is fed back, -1 when none is.
func fedBack(pairs [3]measure.Value) int {
	for i, p := range pairs {
		q, r := pairs[(i+1)%3], pairs[(i+2)%3]
		if math.Max(q.Hi, r.Hi) < fedBackShare*p.Lo && math.Abs(q.X-r.X) < alikeShare*p.X {
			return i
		}
	}
	return -1
}

// Phases judges the volts of three legs: whether one is lost, and how far they
// are from balanced.
func Phases(in PhasesIn) verdict.Verdict {
	part, all := "phase", "phases"
	if in.Machine {
		part, all = "leg", "legs"
	}
	subject := "legs " + in.Place
	var high, avg float64
	for _, p := range in.Pairs {
		if p.Over {
			return cannot(subject, "a number is needed for each pair", in.Pairs[:]...)
		}
		high, avg = math.Max(high, p.Lo), avg+p.X/3
	}
	u := unbalance(in.Pairs)
	out := begin(subject, u, atMost(mostUnbalance), "%", phaseSource)
	out.Entries = entries(in.Pairs[:]...)
	var lost []int
	for i, p := range in.Pairs {
		if p.Hi < lostShare*high {
			lost = append(lost, i)
		}
	}
	back := fedBack(in.Pairs)
	x := num(tenth(u.X)) + " % unbalanced round " + quantity(avg, "V")
	switch {
	case high < LegNominal*absentShare:
		out.Word, out.Text = verdict.CannotTell, "no volts on any leg"
		out.Limit, out.Judged = "", false
		if in.Machine && in.Called {
			out.Fact = []string{"control-not-calling"}
		} else if !in.Machine {
			out.Fact = []string{"supply-absent"}
		}
	case len(lost) > 0 || back >= 0:
		out.Word, out.Fact, out.Source = verdict.Failed, []string{part + "-lost"}, commonPractice
		out.Limit, out.Judged = "", false
		const off = ": keep it off, on two legs it burns out"
		out.Text = "a leg is lost" + off
		if len(lost) == 2 { // the pair between the two legs that are there leaves it out
			out.Text = "leg " + in.Names[3-lost[0]-lost[1]] + " is lost" + off
		} else if back >= 0 {
			out.Text = "leg " + in.Names[back] + " is lost behind a fuse or joint and fed back through the motor" + off
		}
	default:
		out.Word, out.Text = atMost(mostUnbalance).word(u), x
		switch {
		case out.Word == verdict.Sound && u.Lo > ratedBalance:
			out.Word = verdict.Suspect
			out.Text += ": more than a motor is rated for, and enough to trip an overload under load"
		case out.Word == verdict.Sound:
			out.Fact = []string{all + "-sound"}
		case out.Word == verdict.Failed:
			out.Fact = []string{all + "-unbalanced"}
		default:
			out.Text += ", too near the limit to say: read all three on one range"
		}
		if u.X > ratedBalance {
			out.Also = []string{"above 1 % a motor is derated (NEMA MG 1, from memory)"}
		}
		if level := in.level(); in.Nominal > 0 && level.Word == verdict.Failed && out.Word != verdict.Failed {
			level.Subject, level.Also = subject, append(level.Also, x)
			return level
		}
	}
	return out
}

// level judges the middle of the three pairs against the plate.
func (in *PhasesIn) level() verdict.Verdict {
	var mid measure.Value
	for _, p := range in.Pairs {
		mid.X, mid.Lo, mid.Hi = mid.X+p.X/3, mid.Lo+p.Lo/3, mid.Hi+p.Hi/3
	}
	v := Supply(SupplyIn{Volts: mid, Nominal: in.Nominal, Edition: "plate"})
	v.Entries = entries(in.Pairs[:]...)
	return v
}

// unbalance is the largest deviation from the average, in percent of it, with
// the bounds that those of the pairs allow.
func unbalance(pairs [3]measure.Value) measure.Value {
	of := func(v [3]float64) float64 { return formula.Unbalance(v[0], v[1], v[2]) }
	out := measure.Value{X: of([3]float64{pairs[0].X, pairs[1].X, pairs[2].X})}
	var off, top float64 // so far at least one lies from the average
	for i, p := range pairs {
		q, r := pairs[(i+1)%3], pairs[(i+2)%3]
		top += p.Hi / 3
		off = max(off, (2*p.Lo-q.Hi-r.Hi)/3, (q.Lo+r.Lo-2*p.Hi)/3)
		off = max(off, (p.Lo-q.Hi)/2, (q.Lo-p.Hi)/2) // one of two that far apart, wherever the third is
	}
	for corner := range 1 << len(pairs) {
		var v [3]float64
		for i, p := range pairs {
			v[i] = p.Lo
			if corner>>i&1 == 1 {
				v[i] = p.Hi
			}
		}
		out.Hi = math.Max(out.Hi, of(v))
	}
	out.Lo = min(out.X, 100*off/max(top, smallest))
	return out
}
