package call

import (
	"slices"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/judge"
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// remindBefore gives the reminders that belong before a reading, each once.
func (c *Call) remindBefore(q *quality, rs []*reading, reply *Reply) {
	switch q.word {
	case "ohm", "mfd":
		c.warn(reply, caution.ProveDead)
		if c.appliance().HighVolts && slices.ContainsFunc(rs, inHighVolts) {
			c.warnAgain(reply, caution.HighVoltage)
		}
		if q.word == "mfd" {
			c.warn(reply, caution.Capacitor)
			c.tellDischarge(rs, reply)
		}
		for _, r := range rs {
			if r.cond.test > 0 {
				c.warn(reply, caution.InsulationVolts)
			}
		}
	case "volt":
		if c.appliance().HighVolts && slices.ContainsFunc(rs, inHighVolts) {
			c.warnAgain(reply, caution.HighVoltage)
		}
		if slices.ContainsFunc(rs, func(r *reading) bool { x, _ := r.q.In("V"); return r.over || x > deadVolts }) {
			c.sparking(reply)
		}
		for _, r := range rs {
			if x, _ := r.q.In("V"); r.over || x > deadVolts {
				c.warn(reply, caution.MainsLive)
				c.liveAfterSafe(r, reply)
				if r.b == "" && c.machineFor(r.a) == c.mainMachine() {
					c.energisedAnyway(reply) // its plug may be off: that is warned of, not held against anyone
				}
			}
		}
	case "amp", "watt":
		c.sparking(reply)
		if c.energisedAnyway(reply) {
			c.defied = append(c.defied, c.entry)
		}
		c.warn(reply, caution.MainsLive)
		c.warn(reply, caution.HotMoving)
	case "psi":
		if !c.sealedPressure(rs) {
			if a := c.appliance(); (a.Gas || a.Furnace) && !slices.ContainsFunc(rs, c.ofWater) {
				c.warn(reply, caution.FuelGas)
				for _, r := range rs {
					if !r.over && r.x > burnerMost {
						text := r.shown() + " is more than the gas valve of a household burner is made for, 0.5 psi or 14 inches of water"
						if r.q.Symbol() == "psi" {
							text += "; inches are written so: psi " + r.where() + " " + number(r.x) + "inWC"
						}
						reply.add(Ask, text+".")
					}
				}
			}
			return
		}
		c.warn(reply, caution.SealedSystem)
		if repair.Flammable(c.gas()) {
			c.warn(reply, caution.Flammable)
		}
	}
}

// liveAfterSafe tells volts on what was made safe and not worked on since: its source
// was not the one opened, or it was closed again. The outlet of what is unplugged has
// them, and what is read under load was put under power on purpose.
func (c *Call) liveAfterSafe(r *reading, reply *Reply) {
	n := c.lastOf(c.dead, c.entry-1)
	if !c.deadAt(c.entry-1) || c.entries[n-1].Kind != "safe" || c.lastMended() > n || r.cond.energised() ||
		said.Has(c.entries[n-1].Line, []string{"plug"}) && (isLine(r) || among(atMains, strings.ToLower(r.a))) {
		return
	}
	reply.add(Warn, "Live, though made safe in entry "+itoa(n)+": unless it was put on again on purpose its source is another. Prove it dead before it is touched (safe …).").flag("live-after-safe")
}

// burnerMost is the highest pressure of fuel gas, in psi, for which gas valves of
// household burners are made: 14 inches of water (common practice).
const burnerMost = 0.506

// sealedPressure reports whether pressures are of a sealed system: those of fuel
// gas and of water are not.
func (c *Call) sealedPressure(rs []*reading) bool {
	a := c.appliance()
	return slices.ContainsFunc(rs, func(r *reading) bool { return sideOf(r.a) != "" || r.cond.is("standing") }) || !a.Gas && !a.Furnace && !a.Unsealed
}

// inHighVolts tells volts that only the high-voltage side of a microwave oven can
// have, or that were read there by the name of the place.
func inHighVolts(r *reading) bool {
	where := strings.ToLower(r.where())
	return r.over || r.x > beyondLine || slices.ContainsFunc([]string{"hv", "magnetron", "transformer", "cap", "diode"}, func(w string) bool { return strings.Contains(where, w) })
}

// beyondLine is more than any line of a household has, in volts (common practice).
const beyondLine = 300

// canVolts is the highest voltage that run capacitors of appliances are marked
// with (common practice): a winding lifts it above the line's.
const canVolts = 440

// tellDischarge sums how long the discharge of the largest capacitor read
// takes, once in a call for each size.
func (c *Call) tellDischarge(rs []*reading, reply *Reply) {
	if c.appliance().HighVolts {
		return
	}
	most := 0.0
	for _, r := range rs {
		if p, ok := c.plateAt("", "mfd", r.a); ok {
			if marked, err := p.q.In("uF"); err == nil {
				most = max(most, marked)
			}
		}
		if !r.over {
			most = max(most, r.x)
		}
	}
	if most <= c.discharged {
		return
	}
	c.discharged = most
	if b, ok := judge.BleederFor(most, canVolts, 0); ok {
		reply.add(Plain, "Discharge: "+b.Text+"; reckoned from "+number(canVolts)+" V ("+b.Source+").")
	}
}

// noCapacitor reports whether the plate says of the machine at hand that it has
// neither a start nor a run capacitor. A drive has its own, and what was read or
// marked as one is there.
func (c *Call) noCapacitor() bool {
	of := c.machineAtHand()
	has := func(key string) string { return c.plateText(of, key) }
	c.spend(2 * len(c.plates))
	marked := slices.ContainsFunc(c.plates, func(p plate) bool { return p.key == "mfd" && c.alive(p.entry) })
	return has("start") == "none" && has("run") == "none" && has("type") != "inverter" && !marked && len(c.bySubjectKind["mfd"]) == 0
}
