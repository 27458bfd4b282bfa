package call

import (
	"math"

	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// windingFacts translates what a machine's windings amount to into the
// vocabulary of causes.
func (c *Call) windingFacts(of string, before int, add func(string, int)) {
	m := c.machines[of]
	if m == nil {
		return
	}
	res := m.result
	if before != math.MaxInt {
		res = c.inferWindings(of, before)
	}
	at := 0
	if j := c.judged["wind\x00"+of]; j != nil && before == math.MaxInt {
		at = j.since
	} else {
		for _, p := range windingProof(res) {
			at = max(at, p.V.Entry)
		}
	}
	if at == 0 {
		return
	}
	if (of == "cond-fan" || of == "evap-fan" || of == "blower" && c.appliance().Air) && (of != c.mainMachine() || c.complaint() != said.MotorDead && c.complaint() != said.ThreePhase) {
		switch res.State {
		case winding.Sound:
			add(of+"-windings-sound", at)
		case winding.OpenWinding, winding.Shorted, winding.Grounded:
			add(of+"-windings-failed", at)
		case winding.OpenUnplaced:
			if of != "blower" {
				add(of+"-windings-undecided", at)
			}
		}
		if c.complaint() != said.MotorDead {
			return
		}
	}
	if of != c.mainMachine() {
		return
	}
	for _, code := range res.Facts {
		switch code {
		case winding.FactOdd: // unless the sheet has it so
			if _, ok := c.plateAt(of, "ohms", "run"); !ok {
				add(code, at)
			}
		case winding.FactSound:
			add(code, at)
			switch {
			case c.wasOpen(of, before, res.Roles):
				add("protector-reset", at)
			case kindOf(of) == winding.Compressor:
				add("protector-closed", at)
			}
		case winding.FactProtector:
			if among(res.Facts, winding.FactOpenCold) {
				add("protector-open-cold", at)
			} else {
				add(code, at)
			}
		case winding.FactOpenUnplaced:
			add("windings-open-unplaced", at)
			if among(res.Facts, winding.FactOpenCold) {
				add("open-unplaced-cold", at)
			}
		case winding.FactNoGround, winding.FactOpenCold:
		default:
			add(code, at)
		}
	}
}

// wasOpen reports whether both pairs to common, which are finite now, were open
// in earlier readings: the protector has reset. What was open to another pin was
// no protector: it sits in the line to common.
func (c *Call) wasOpen(of string, before int, roles map[string]winding.Role) bool {
	n, since := 0, c.renewedBefore(of, before)
	for _, key := range c.keysOf(of) {
		prev, now := c.pairBefore(key, before)
		if prev != nil && prev.entry > since && prev.over && now != nil && !now.over && (roles[now.a] == winding.Common || roles[now.b] == winding.Common) {
			n++
		}
	}
	return n >= 2
}
