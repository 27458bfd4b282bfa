package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// cleared are the causes that must be ruled out before what is left of a locked
// rotor is named: windings, insulation, start device and supply.
var cleared = []string{"winding-grounded", "winding-open", "winding-shorted", "start-device-failed", "supply-weak"}

// partsLocked gives, in the order of the trade (common practice), the test that
// parts each cause of a locked rotor from a seized compressor.
var partsLocked = []struct{ cause, test string }{
	{"start-cap-failed", "start-cap"}, {"run-cap-failed", "run-cap"}, {"miswired", "wiring"}, {"pressure-unequalised", "rest"},
}

// lockedNext turns to what is left when a compressor draws locked-rotor current
// with windings, start device and outlet sound. The current flows, so its path
// conducts; what is left is an inference and worded so.
func (c *Call) lockedNext(r *cause.Result, facts []cause.Fact) {
	at := slices.IndexFunc(facts, func(f cause.Fact) bool { return f.Code == "amps-locked-rotor" })
	if at < 0 || r.Next == nil || r.Complaint != "no-start" && r.Complaint != "hums-trips" || len(r.Codes(cause.Supported)) > 0 {
		return
	}
	var left, names []string
	rests := []cause.Fact{facts[at]}
	for i := range r.Standings {
		switch s := &r.Standings[i]; {
		case among(cleared, s.Cause.Code):
			if s.State != cause.RuledOut {
				return
			}
			rests = append(rests, s.Against...)
		case s.State == cause.Open && slices.ContainsFunc(s.For, func(f cause.Fact) bool { return f.Code == "amps-locked-rotor" }):
			left, names = append(left, s.Cause.Code), append(names, s.Cause.Name)
		}
	}
	if !among(left, "compressor-seized") {
		return
	}
	byEntry(rests)
	why := "what is left for a locked rotor, inferred from " + entriesWord(rests) + ": " + strings.Join(names, ", ")
	for _, p := range partsLocked {
		done := slices.ContainsFunc(facts, func(f cause.Fact) bool { return strings.HasPrefix(f.Code, p.test+"-") }) || !c.mayHave(p.test)
		if among(left, p.cause) && !done {
			for _, t := range cause.Tests() {
				if t.Code == p.test && !slices.ContainsFunc(facts, func(f cause.Fact) bool { return among(t.Barred, f.Code) }) {
					r.Next, r.Repeat, r.NextWhy = &t, false, why
					return
				}
			}
		}
	}
	r.NextWhy = why + "; " + r.NextWhy
}

// mayHave reports whether the machine may have the part of a test: a run capacitor
// only when its plate or a marking speaks of one.
func (c *Call) mayHave(test string) bool {
	return test != "run-cap" || c.plateText(c.mainMachine(), "run") == "cap" || c.marked(false)
}

// hasStartCap reports whether a start capacitor was read or is marked: a machine
// with a PTC has none else.
func (c *Call) hasStartCap() bool {
	return c.marked(true) || slices.ContainsFunc(c.subjects, func(key string) bool {
		name, is := strings.CutPrefix(key, "mfd\x00")
		return is && isStartCap(name) && slices.ContainsFunc(c.bySubject[key], func(r *reading) bool { return c.alive(r.entry) })
	})
}

// marked reports whether a plate marks a capacitor, for the start or for the run.
func (c *Call) marked(start bool) bool {
	c.spend(2 * (len(c.plates) + len(c.bySubjectKind["mfd"])))
	return slices.ContainsFunc(c.plates, func(p plate) bool {
		return p.key == "mfd" && c.alive(p.entry) && (p.ranged || isStartCap(p.name)) == start
	})
}

func isStartCap(name string) bool { return strings.HasPrefix(strings.ToLower(name), "start") }
