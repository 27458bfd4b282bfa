package judge

import (
	"slices"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// LegAmpsIn is the running current of two or three legs of a motor on three
// phases, and what its plate says.
type LegAmpsIn struct {
	AmpsIn // its Run and Name are set by LegAmps
	Legs   []measure.Value
	Names  []string
}

// Limits of the current in three legs. A leg below noLeg of the one with most
// carries nothing; the currents of a sound motor lie within mostApart percent of
// their average (common practice).
const (
	noLeg     = 0.1
	mostApart = 10.0
	// farUnder is the share of the plate below which a motor of three legs carries
	// hardly any load.
	farUnder = 0.5
)

// LegAmps judges the currents of a motor's legs together: whether it runs on two
// of them, how far they are apart, and the highest against the plate.
func LegAmps(in LegAmpsIn) verdict.Verdict {
	subject := "running amps"
	for i, v := range in.Legs {
		subject += " " + in.Names[i]
		if v.Over {
			return cannot(subject, overClamp, in.Legs...)
		}
	}
	top, dead := in.Legs[0], ""
	for _, v := range in.Legs {
		if v.X > top.X {
			top = v
		}
	}
	for i, v := range in.Legs {
		if v.Hi < noLeg*top.Lo {
			dead = in.Names[i]
		}
	}
	in.Run, in.Name = top, ""
	out := Amps(in.AmpsIn)
	out.Subject, out.Entries = subject, entries(in.Legs...)
	if dead != "" {
		out.Word, out.Fact, out.Source = verdict.Failed, []string{"leg-lost"}, commonPractice
		out.Limit, out.Judged = "", false
		out.Text = "no current in " + dead + " and " + quantity(top.X, "A") + " in another: it runs on two legs; stop it now"
		return out
	}
	if len(in.Legs) < 3 {
		return out
	}
	if out.Word == verdict.Sound && top.Hi < farUnder*in.Plate {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = quantity(top.X, "A") + " is far under the plate of " + quantity(in.Plate, "A") + ": little load, a weak pump, or it turns the wrong way"
	}
	u := unbalance([3]measure.Value(in.Legs))
	apart := num(tenth(u.X)) + " % apart round " + quantity(mean(in.Legs), "A")
	switch atMost(mostApart).place(u) {
	case above:
		moved := "dead, move all three lines on by one terminal: what stays with its line is the supply's, what moves is the motor's (" + commonPractice + ")"
		if out.Word == verdict.Sound {
			out.Word, out.Fact, out.Text = verdict.Suspect, nil, "the legs are "+apart
			out.Also = append([]string{moved}, out.Also...)
		} else {
			out.Also = append([]string{"the legs are " + apart, moved}, out.Also...)
		}
	case straddles:
		near := "the legs are " + apart + ", too near " + num(mostApart) + " % to say"
		if out.Word != verdict.Sound {
			out.Also = append([]string{near}, out.Also...)
			break
		}
		out.Word, out.Fact, out.Text = verdict.CannotTell, nil, out.Text+"; "+near
		if u.X < mostApart {
			out.Fact = []string{"amps-agree"} // as much as this clamp can show
		}
	default:
		out.Also = append([]string{"the legs are " + apart}, out.Also...)
		if slices.Equal(out.Fact, []string{"amps-high"}) && !slices.ContainsFunc(in.Legs, func(v measure.Value) bool { return v.Lo <= in.Plate }) {
			out.Fact = append(out.Fact, "legs-overloaded")
			out.Also = append(out.Also, "all three are above the plate alike: no leg is open, it is overloaded (inferred): what it drives jams or drags, or the volts are low")
		}
	}
	return out
}

func mean(vs []measure.Value) float64 {
	var sum float64
	for _, v := range vs {
		sum += v.X
	}
	return sum / float64(len(vs))
}
