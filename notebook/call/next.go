package call

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

// nextStep is the next test as one line, "" when there is nothing to do.
func (c *Call) nextStep(r *cause.Result) string {
	left := c.untreated()
	switch {
	case c.alarmNext(false) != "":
		return c.alarmNext(false)
	case len(c.bridged()) > 0:
		return "put back what is out of its circuit before power returns, " + c.bridged()[0]
	case len(c.farOver()) > 0:
		v := c.farOver()[0].verdict
		return "power off at its source and kept off: " + v.Text + " (" + entryList(v.Entries) + ")"
	case c.neutralPoor() != "":
		return c.neutralPoor()
	case r.Next == nil && r.Repair == nil && c.alarmNext(true) != "":
		return c.alarmNext(true)
	case c.appliance().HighVolts && r.Repair == nil && (r.Next == nil || r.Next.Danger == cause.Live):
		return "nothing here judges the high-voltage side of a microwave oven: dead tests of plug, fuse, door switches and cut-outs only, the rest by who is trained and equipped for it"
	case len(c.repairs()) > 0 && c.grounds() != "":
		return "do not energise: " + c.grounds() + " stands; replace it or read it again"
	case c.drawsTooMuch() != "":
		return c.drawsTooMuch()
	case len(left) > 0 && !c.persists():
		rest := c.leftToMend(left)
		switch {
		case rest.Next != nil:
			return c.proposed(rest.Next)
		case rest.Repair != nil:
			return c.mending(rest.Repair)
		}
		return "mend what was found besides: " + left[0].name()
	case len(c.repairs()) > 0 && !c.persists():
		if m := c.proofMissing(); len(m) > 0 {
			return "prove the repair: " + m[0]
		}
		return ""
	case c.grounds() != "" && r.Repair == nil && (r.Next == nil || r.Next.Danger != cause.Dead):
		return "do not energise: " + c.grounds() + "; take the loads off one by one and read again until the path to the metal is gone"
	case c.settleInsulation() != "":
		return c.settleInsulation()
	case r.Repair == nil && c.legsWanted() != "":
		return c.legsWanted()
	case r.Repair == nil && c.supplyLost(r) != "":
		return c.supplyLost(r)
	case r.Repair == nil && c.openStill(r) != "":
		return c.openStill(r)
	case r.Repair == nil && c.caseFirst(r.Next) != "":
		return c.caseFirst(r.Next)
	case c.readAgain(r) != "":
		return c.readAgain(r)
	case r.Repair == nil && c.coldFirst() != "":
		return c.coldFirst()
	case r.Repair == nil && c.halfRelay() != "":
		return c.halfRelay()
	case r.Next != nil && r.Next.Code == "winding-ohms" && c.tooClose():
		again := "read the three pairs again on a finer range with the leads zeroed (probes)"
		if c.onThreePhases() {
			return again
		}
		return again + ", or look for markings (mark A common)"
	case c.disputed():
		return "settle which pin is common first: " + disputes + "; look at it again and read the three pairs again, then strike the one that is wrong"
	case c.gapWide():
		return "read the three pairs again, contacts clean and leads zeroed: they do not add up, so one of them is wrong and the roles rest on it"
	case r.Next != nil && r.Next.Code == "winding-ohms" && c.pairWanted() != "":
		return c.pairWanted()
	case r.Next != nil && r.Next.Danger != cause.Live && c.onThreePhases() && c.lastShown([]string{"phase-lost", "leg-lost"}) > c.lastMended():
		return "keep it off, on two legs it burns out: " + c.proposed(r.Next)
	case r.Next != nil:
		return c.proposed(r.Next)
	case r.Repair != nil:
		return c.mending(r.Repair)
	}
	for _, of := range c.machineNames() {
		if n := c.machines[of].result.Next; n != "" {
			return n
		}
	}
	return ""
}

// drawsTooMuch is the step when a machine that was mended runs and draws far more
// than its plate allows, "" when none does.
func (c *Call) drawsTooMuch() string {
	for _, j := range c.verdictsWith("amps-high", "amps-locked-rotor") {
		if n := lastEntry(j.verdict); len(c.repairs()) > 0 && n > c.lastMended() && j.verdict.Word == verdict.Failed {
			return "switch it off: " + j.verdict.Text + atEntry(n) + "; see whether the start device and its capacitor drop out, and what loads it"
		}
	}
	return ""
}

// pairWanted is the pair still to be read on a machine of which some were.
func (c *Call) pairWanted() string {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil || m.result.State != winding.Incomplete || len(windingProof(m.result)) == 0 {
		return ""
	}
	return c.onFirst(of) + m.result.Next
}

// onFirst is what to type before a line of a machine that is not at hand.
func (c *Call) onFirst(of string) string {
	if of == c.machineAtHand() {
		return ""
	}
	return "on " + of + ", then "
}

// readAgain asks for the pairs once more before anything rests on them: all of
// about zero, or a short that was read once with leads that were not zeroed.
func (c *Call) readAgain(r *cause.Result) string {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil {
		return ""
	}
	zero, again := m.result.State == winding.TooClose, c.readTwice(of)
	for _, now := range c.pairsOf(of, math.MaxInt) {
		if now.b != caseName {
			v := c.value(now)
			zero = zero && !v.Over && v.Lo <= 0
		}
	}
	switch {
	case zero:
		return "zero the leads (hold the probes together, then: probes 0.2), scrape the pins and read the three pairs again on the lowest range"
	case c.onThreePhases() && !again && m.result.Alike && (r.Repair == nil || r.Repair.Code == "winding-shorted") && among(m.result.Facts, winding.FactDoNotAddUp):
		return "no power: dead and locked out, its leads off at the contactor, read its three pairs again, and each to the case (test 500V)"
	case r.Repair != nil && r.Repair.Code == "winding-shorted" && m.result.State == winding.Shorted && !again && c.probes() == 0:
		return "before the machine is condemned: zero the leads (probes 0.2) and read the pairs again"
	}
	return ""
}

// tooClose reports whether the pins of the machine that the call is about
// were all read and cannot be told apart.
func (c *Call) tooClose() bool {
	m := c.machines[c.mainMachine()]
	return m != nil && m.result.State == winding.TooClose
}

// wideGap is the gap, in percent of the highest pair, from which the readings
// are taken again before anything is wired by them: more than contacts and
// probe leads make (common practice).
const wideGap = 15

// gapWide reports whether the three pairs of the machine that the call is
// about miss their sum by far and none of them was read again.
//
//go:noinline
func (c *Call) gapWide() bool {
	m := c.machines[c.mainMachine()]
	if m == nil || m.result.State != winding.DoesNotAddUp || m.result.Gap != nil && math.Abs(m.result.Gap.Percent) < wideGap ||
		m.result.Gap == nil && !among(m.result.Facts, winding.FactTooHigh) {
		return false
	}
	return !c.readTwice(m.name) && c.alike(m.name, math.MaxInt) != alikeAll // three like pairs are what they are
}

// readTwice reports whether a pair of a machine was read again, the case not
// among the pins.
func (c *Call) readTwice(of string) bool {
	since := c.renewedAt(of)
	return slices.ContainsFunc(c.keysOf(of), func(key string) bool {
		prev, now := c.last2(key)
		return prev != nil && prev.entry > since && now.b != caseName
	})
}

func applyNext(c *Call, _ *args) (*Reply, error) {
	r := c.weigh(math.MaxInt)
	reply := &Reply{}
	step := c.nextStep(&r)
	if step == "" {
		without := "Nothing is left to test: "
		if c.complaint() == "" && len(c.repairs()) == 0 && c.last("fault") != "" {
			without = "No test can be named: "
		}
		reply.add(Ask, without+cmp.Or(c.closingWord(), "write down the complaint with fault …")+".")
	} else {
		reply.add(Ask, "Next: "+step+".")
		// What was weighed belongs to the step that came of it only.
		weighed := r.Next != nil && strings.Contains(step, c.proposed(r.Next)) || r.Repair != nil && step == c.mending(r.Repair)
		if r.NextWhy != "" && weighed {
			reply.add(Plain, strings.ToUpper(r.NextWhy[:1])+r.NextWhy[1:]+endStop(r.NextWhy))
		}
		if r.Next != nil && weighed {
			if s := c.forecast(r.Next).sentence(); s != "" {
				reply.add(Plain, s)
			}
		}
		if left := c.untreated(); len(left) > 0 && !c.persists() {
			reply.add(Plain, "No work is written down for what was found: "+left[0].told()+".")
		}
		if len(c.repairs()) > 0 && c.persists() {
			reply.add(Plain, "The complaint was seen again after the repair: what the machine did before it, and what the repair was made for, count no more.")
		}
		if c.settleInsulation() != "" {
			c.warn(reply, caution.InsulationVolts)
		} else if step == c.legsWanted() {
			c.warn(reply, caution.MainsLive)
		} else if r.Next != nil && weighed {
			for _, code := range r.Next.Caution {
				c.warn(reply, code)
			}
		}
	}
	reply.Causes = &Causes{Open: append(r.Codes(cause.Supported), r.Codes(cause.Open)...), RuledOut: r.Codes(cause.RuledOut), Next: step}
	return reply, nil
}

func (c *Call) closingWord() string {
	switch {
	case len(c.repairs()) > 0:
		return "close ends the call"
	case c.complaint() != "":
		return "no listed test parts what is left; causes shows it"
	case c.last("fault") != "":
		return "no listed complaint fits the words of fault; saw … tells what you find, or fault … in other words"
	}
	return ""
}
