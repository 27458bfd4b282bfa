package call

import (
	"slices"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// proofRotation is what work wants after which three legs may come in another order. What
// cools shows that a scroll turns right, and a piston does not care (common practice).
var proofRotation = proofWanted{"the rotation seen (saw turns right way)", func(c *Call, since int) shown {
	s := goodSince(c.lastShown(turnsRight), since)
	if !s.held && !c.appliance().Unsealed {
		s = proofTemps.held(c, since)
	}
	return s
}}

// turnsRight is what no machine shows that turns the wrong way.
var turnsRight = []string{"rotation-right", "split-sound", "pressures-apart", "frost-even"}

// turningWrong are words of a complaint that swapped legs mend.
var turningWrong = []string{"backward", "wrong way", "wrong direction", "rotation", "revers"}

func swapped(w doneWork) bool { return cause.Mends("wrong-rotation", w.text) }

// onlySwapped reports whether the one work is on legs: the windings are as they were.
func (c *Call) onlySwapped() bool {
	done := c.doneNow()
	return len(done) == 1 && c.onThreePhases() && swapped(done[0])
}

// rotationAsked reports whether the legs of a machine on three phases may have come in
// another order since: it turned wrong, they were swapped, or its motor is new.
func (c *Call) rotationAsked() bool {
	if !c.onThreePhases() {
		return false
	}
	if c.lastShown([]string{"turns-wrong-way"}) > 0 || said.Has(c.last("fault"), turningWrong) || max(c.renewedAt(c.mainMachine()), c.renewedAt("motor"), c.renewedAt("compressor")) > 0 {
		return true
	}
	return slices.ContainsFunc(c.doneNow(), swapped)
}
