package call

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/pulldown"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// coldAfter is how long after the work a cabinet tells of it: no part that was fitted
// chills one within minutes (common practice).
const coldAfter = 30 * time.Minute

// bothInOne are names of an appliance of two places, which say of neither that it is ill.
var bothInOne = said.Lazily(`(fridge|refrigerator)\W{0,3}freezer|freezer\W{0,3}(fridge|refrigerator)|freezer (on|at) (the )?(top|bottom)`)

// keepsWine tells an appliance that keeps what is not food, at a temperature of its own.
func (c *Call) keepsWine() bool { return said.Has(c.last("unit"), []string{"wine"}) }

// setPoint is what the appliance was read to be set to, nil when nobody did.
func (c *Call) setPoint() *reading {
	return c.lastAfter(0, func(r *reading) bool { return r.quality.word == "temp" && !r.over && strings.EqualFold(r.a, "set") })
}

// ill are the cold places that the complaint is about by its words, nil when they tell
// none from the other or the unit has but one.
func (c *Call) ill() (out []judge.Space) {
	if unit := c.last("unit"); c.keepsWine() || said.Has(unit, []string{"freezer"}) && !said.Has(unit, []string{"fridge", "refrig", "combi"}) {
		return nil
	}
	fault := strings.ToLower(c.last("fault"))
	troubled := said.Troubled(fault)
	if among([]string{"no-start", "hums-trips"}, c.complaint()) && said.Has(fault, []string{"freezer"}) == said.Has(troubled, []string{"freezer"}) && said.Has(fault, []string{"fridge"}) == said.Has(troubled, []string{"fridge"}) {
		return nil // what does not start cools neither
	}
	for _, text := range []string{troubled, fault} {
		text = bothInOne().ReplaceAllString(text, "")
		if said.Has(text, []string{"freezer"}) {
			out = append(out, judge.Freezer)
		}
		if said.Has(text, []string{"fridge", "refrig", "fresh food"}) {
			out = append(out, judge.FreshFood)
		}
		if len(out) > 0 {
			break
		}
	}
	return out
}

// good reports whether a course proves the cold of its place.
func good(k *record.Curve) bool {
	return k.Verdict == string(pulldown.Proved) || k.Verdict == string(pulldown.OnCourse)
}

// course makes a proof of the course of a temperature, in the place complained of and
// long enough after the work; a freezer's counts when wanted, and so does a place that
// is left too warm beside it.
//
//go:noinline
func course(freezerToo bool) func(*Call, int) shown {
	return func(c *Call, since int) shown {
		var told, proved []string
		var held []judge.Space
		out, late := shown{}, false
		curves, ill := c.curves(since, math.MaxInt), c.ill()
		for i := range curves {
			k := &curves[i]
			last := k.Points[len(k.Points)-1]
			space := c.spaceOf(k.Place)
			text := k.Place + " " + degrees(last.Celsius, k.Unit) + ", " + k.Verdict + atEntry(last.Entry)
			switch {
			case k.Verdict == string(pulldown.RisesAgain), k.Verdict == string(pulldown.Warms):
				return shown{text: text}
			case good(k) && (freezerToo || space != judge.Freezer):
				held, told, proved = append(held, space), append(told, text), append(proved, k.Place)
				r := c.lastAfter(since, func(r *reading) bool { return r.entry == last.Entry })
				late = late || since == 0 || r.at.Sub(c.entries[since-1].At) >= coldAfter || last.Minutes >= coldAfter.Minutes()
			case len(ill) == 0 || slices.Contains(ill, space):
				out.text = text
			}
		}
		if !freezerToo {
			ill = nil
		}
		if warm := c.warmBeside(since, proved); freezerToo && len(held) > 0 && warm != nil {
			return shown{text: warm.a + " " + warm.shown() + atEntry(warm.entry) + ", still too warm"}
		}
		for _, space := range ill {
			if len(held) > 0 && !slices.Contains(held, space) {
				return shown{text: cmp.Or(out.text, strings.Join(told, "; ")+", and the complaint is about the "+strings.Replace(string(space), string(judge.FreshFood), "fridge", 1))}
			}
		}
		if len(held) == 0 {
			return out
		}
		out.held, out.text = late, strings.Join(told, "; ")
		if !late {
			out.text += ", but by the clock of the record less than half an hour after the work" + atEntry(since) + "; with its time before it: +60min temp …"
		}
		return out
	}
}

// warmBeside is the last temperature of a cold place that no course proves, where it is
// surely above its target; nil when none is.
func (c *Call) warmBeside(since int, proved []string) *reading {
	all := c.bySubjectKind["temp"]
	for i := len(all) - 1; i >= 0 && all[i].entry > since; i-- {
		c.spend(4)
		r := all[i]
		if space := c.spaceOf(r.a); space != "" && space != judge.Wine && c.alive(r.entry) && !r.over && !slices.Contains(proved, r.a) {
			if c.value(r).Lo > targetOf(space).Celsius {
				return r
			}
			proved = append(proved, r.a)
		}
	}
	return nil
}

func targetOf(space judge.Space) *pulldown.Target {
	if space == judge.Freezer {
		return &pulldown.Freezer
	}
	return &pulldown.Refrigerator
}

var proofDefrost = proofWanted{"a defrost seen (saw defrost starts itself, or saw forced defrost heats)", func(c *Call, since int) shown {
	if s := seen("defrost-starts-itself", "defrost-runs-by-hand")(c, since); s.held {
		return s
	}
	return c.shownBy(c.lastAfter(since, func(r *reading) bool { return r.quality.word == "amp" && ofDefroster(r.a) }))
}}

// proofReverses is wanted of a heat pump: a coil that was thawed by hand warms the rooms
// for hours whether its defrost works or not (common practice).
var proofReverses = proofWanted{"a defrost of the outdoor coil seen (saw defrost starts itself, or saw forced defrost heats)", func(c *Call, since int) shown {
	s := seen("defrost-starts-itself", "defrost-runs-by-hand")(c, since)
	if n := c.lastShown([]string{"outdoor-clear"}); n > since && said.Has(c.line(n), []string{"defrost"}) {
		s = shown{held: true, text: "the outdoor coil was cleared by a defrost" + atEntry(n)}
	}
	return s
}}

// outdoorDefrostMended reports whether work was done on the defrost of a heat pump, or on
// the ice of its outdoor coil.
func (c *Call) outdoorDefrostMended() bool {
	iced := len(c.seenAt["outdoor-iced"]) > 0 || c.complaint() == said.NoHeatPump && said.Has(" "+c.last("fault"), []string{" ice", " icing", "frost", "frozen"})
	return said.Has(c.last("unit"), []string{"heat pump", "heatpump"}) && (c.workOn(ofDefrost) || iced && (c.workOn(mayDefrost) || c.workOn(ofIce)))
}

// ofDefroster tells the heater of a defrost.
func ofDefroster(place string) bool {
	return isHeater(place) || strings.HasPrefix(strings.ToLower(place), "defrost")
}

// ofCircuit are words of work on the sealed system, ofCold of what lets the cold in or
// calls for it, ofDefrost of what defrosts by itself, mayDefrost of what may where ice
// was found; ofIce say that ice was only taken away, and noDefrost what has none.
var (
	ofCircuit  = []string{"recharg", "drier", "capillary", "cap tube", "refrigerant", "evacuat", "sealed system"}
	ofCold     = []string{"damper", "thermostat", "cold control", "sensor", "thermistor"}
	ofDefrost  = []string{"defrost timer", "defrost control", "defrost board", "defrost heater", "defrost element", "defrost thermostat", "defrost sensor", "defrost limit", "defrost fuse", "defrost bimetal", "bimetal", "adaptive defrost"}
	mayDefrost = []string{"board", "timer", "control", "sensor", "thermistor", "limit", "thermal fuse", "heater"}
	ofIce      = []string{"thaw", "defrosted", "deiced", "de-iced", "melted"}
	noDefrost  = []string{"manual defrost", "chest", "not frost free"}
)

// defrostMended reports whether the work was on the defrost, or did no more than take its
// ice away.
func (c *Call) defrostMended() bool {
	if said.Has(c.last("unit"), noDefrost) {
		return false
	}
	iced := len(c.seenAt["frost-heavy"]) > 0 || c.complaint() != "no-ice" && said.Has(" "+c.last("fault"), []string{" ice", " icing", "frost"})
	thawed, other := false, false
	for _, w := range c.doneNow() {
		switch text := w.text; {
		case said.Has(text, ofDefrost), iced && said.Has(text, mayDefrost):
			return true
		case said.Has(text, ofIce) && !said.Has(text, []string{"drain"}):
			thawed = true
		default:
			other = true
		}
	}
	return thawed && !other
}

// fittedProved is a list of proofs with what the parts that were fitted to an appliance
// which keeps cold want besides, whatever the complaint was (common practice).
func (c *Call) fittedProved(list []*proofWanted) []*proofWanted {
	if a := c.appliance(); a.Unsealed || a.Air || a.OneFan || a.HighVolts {
		if a.Air && c.outdoorDefrostMended() {
			list = append(slices.Clip(list), &proofReverses)
		}
		return list
	}
	var also []*proofWanted
	switch {
	case c.renewedAt(defaultMachine) > 0:
		also = []*proofWanted{&proofStart, &proofSurge, &proofAmps, &proofSag, &proofTemps}
	case c.workOn(ofCircuit):
		also = []*proofWanted{&proofAmps, &proofTemps}
	case c.workOn(ofCold):
		also = []*proofWanted{&proofTemps}
	}
	if c.defrostMended() {
		if also = append(also, &proofDefrost); c.complaint() == "leaks-ices" || cause.KeepsNoCold(c.complaint()) {
			also = append(also, &proofTemps)
		}
		if !said.Has(strings.ToLower(c.last("fault")), []string{"water", "leak", "drip", "puddle", "wet"}) {
			list = slices.DeleteFunc(slices.Clone(list), func(p *proofWanted) bool { return p == &proofDry })
		}
	}
	list = slices.Clip(list)
	for _, p := range also {
		if !wants(list, p) && !(p == &proofTemps && wants(list, &proofNotFrozen)) && !(p == &proofAmps && wants(list, &proofAnyAmps)) {
			list = append(list, p)
		}
	}
	return list
}

// proofWords says what proved the work: the courses of the places complained of first.
func (c *Call) proofWords(r *record.Record) string {
	ill := c.ill()
	out := ""
	for i := range r.Curves {
		k := &r.Curves[i]
		if !good(k) || len(ill) > 0 && !slices.Contains(ill, c.spaceOf(k.Place)) {
			continue
		}
		first, last := k.Points[0].Celsius, k.Points[len(k.Points)-1].Celsius
		verb := " is at "
		if first > k.Target {
			verb = " came down to "
		}
		if out != "" {
			out += ", "
		}
		if out += "the " + k.Place + verb + degrees(last, k.Unit); k.Verdict == string(pulldown.OnCourse) {
			out = "the " + k.Place + " is at " + degrees(last, k.Unit) + " and on course to its target"
		}
	}
	if out == "" {
		return "every point is shown"
	}
	return out + ", and every other point is shown"
}
