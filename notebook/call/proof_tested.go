package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// testedThere is the last entry, of those that show a leak to be gone since one that
// tells of it, whose test was at the place told of or where was worked since: of a test
// elsewhere nothing follows (common practice).
func (c *Call) testedThere(a *alarm, told, n int) int {
	if told == 0 {
		return n
	}
	list := c.seenAt[a.code]
	if at := c.lastAt("fault"); at > 0 && c.heard(a.code) {
		list = append([]int{at}, list...)
	}
	for _, at := range list[max(0, len(list)-mostSaid):] {
		if at < told && c.alive(at) && c.testedOf(a, at) == 0 {
			return 0
		}
	}
	return c.testedOf(a, told)
}

// testedOf is the last test that may clear what one entry tells of, 0 when each was
// elsewhere.
func (c *Call) testedOf(a *alarm, told int) int {
	smell := a.code == "gas-smell"
	text := c.line(told)
	if smell {
		text += c.leaksFound(told)
	}
	n := 0
	for _, code := range a.cleared {
		for _, at := range c.seenAt[code] {
			c.spend(1)
			if at <= max(told, n) || !c.alive(at) {
				continue
			}
			more := ""
			if !smell {
				more = ", " + c.worksAfter(a, told, at)
			}
			elsewhere := said.Elsewhere
			if a.code == "smoke" {
				elsewhere = said.NoSmokeAt
			}
			if !elsewhere(c.line(at), text+more, smell) {
				n = at
			}
		}
	}
	return n
}

// leaksFound are the lines of leaks that were found since a smell of gas was told of, or
// stood then.
func (c *Call) leaksFound(smelt int) (text string) {
	list := c.seenAt["gas-leak"]
	for i := len(list) - 1; i >= max(0, len(list)-mostSaid); i-- {
		if c.alive(list[i]) && (list[i] > smelt || c.lastOf(c.seenAt["no-gas-leak"], smelt) < list[i]) {
			text += ", leak " + c.line(list[i])
		}
	}
	return text
}

// line is an entry's line, also where it is just being read.
func (c *Call) line(entry int) string {
	if entry <= len(c.entries) {
		return c.entries[entry-1].Line
	}
	for i := len(c.works) - 1; i >= 0 && c.works[i].entry == entry; i-- {
		return c.works[i].text
	}
	return ""
}

// worksAfter are the words of the last work between two entries that can mend a danger.
func (c *Call) worksAfter(a *alarm, told, until int) string {
	text := ""
	for i, n := len(c.works)-1, 0; i >= 0 && c.works[i].entry > told && n < mostSaid; i-- {
		c.spend(20)
		if w := &c.works[i]; w.entry < until && (w.kind == "did" || w.kind == "part") && c.alive(w.entry) && said.MendsIt(a.code, c.line(told), w.text) {
			text, n = text+", "+w.text, n+1
		}
	}
	return text
}

// mendsDanger reports whether between two entries work was done that can be what mends a
// danger, by the words of both.
func (c *Call) mendsDanger(a *alarm, told, until int) bool {
	if c.lastOf(c.mended, until) < told && a.code != "gas-leak" {
		return false
	}
	if a.code == "smoke" {
		if places := c.burntPlaces(told); places != nil {
			return !slices.ContainsFunc(places, func(place string) bool { return !c.mendsPlace(a, place, told, until) })
		}
	}
	return c.mendsPlace(a, "", told, until)
}

// burntPlaces are those of which one entry tells, where all entries tell of more than one;
// a single one is mended with what it hangs on.
func (c *Call) burntPlaces(told int) (own []string) {
	several := false
	list := c.seenAt["smoke"]
	own = said.BurntSupplies(c.line(told))
	for _, n := range list[max(0, len(list)-mostSaid):] {
		c.spend(400)
		if len(own) == 0 || !c.alive(n) {
			continue
		}
		for _, other := range said.BurntSupplies(c.line(n)) {
			several = several || !said.SamePlace(own[0], other)
		}
	}
	if !several {
		return nil
	}
	return own
}

// mendsPlace reports whether such work was done at one burnt place, "" any.
func (c *Call) mendsPlace(a *alarm, place string, told, until int) bool {
	for i := len(c.works) - 1; i >= 0 && c.works[i].entry >= told; i-- {
		c.spend(100)
		w := &c.works[i]
		if place != "" && !said.SamePlace(place, w.text) {
			continue
		}
		if w.entry > until || !c.alive(w.entry) || w.kind == "note" && a.code != "gas-leak" || !said.MendsIt(a.code, c.entries[told-1].Line, w.text) {
			continue
		}
		if w.kind == "note" && said.Mended(w.text) || (w.kind == "did" || w.kind == "part") && slices.Contains(c.mended, w.entry) {
			return true
		}
	}
	return false
}

// loadToRead is the reading that is still wanted of a load, "" when since an entry each of
// which anything was read, and each that shocks ask for, has no path to the metal. What an
// ohm-meter cannot tell counts beside hardly any volts on the metal under power; where
// heaters are all that there may be, no motor is asked for (common practice).
func (c *Call) loadToRead(since int) string {
	c.spend(200 * len(c.subjects))
	enough := toCase[:2]
	if c.lastShown([]string{"metal-quiet"}) > since {
		enough = toCase
	}
	var sound []string
	for _, key := range c.subjects {
		if j := c.judged[key]; j != nil && intersects(j.verdict.Fact, enough) && lastEntry(j.verdict) > since {
			sound = append(sound, key)
		}
	}
	for _, of := range c.machineNames() {
		for _, p := range c.machines[of].result.Pins {
			if key := "case\x00" + of + "\x00"; !among(sound, key+p) && !among(sound, key+winding.OtherEnd(p)) {
				return "ohm " + p + " case … test 500V"
			}
		}
	}
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if c.judged[key] != nil && (kind == "sheath" || kind == "part" && isHeater(name)) && !among(sound, "sheath\x00"+name) {
			return "ohm " + name + " case … test 500V"
		}
	}
	a := c.appliance()
	for _, n := range cause.Missing("shocks", c.facts(math.MaxInt)) {
		if intersects(n.Any, toCase) && !((a.Still || a.Elements) && among(n.Any, "insulation-sound")) {
			if among(n.Any, "heater-none") {
				return n.What + ": ohm heater case … test 500V, or saw no heater where there is none"
			}
			return n.What + ": ohm … case … test 500V"
		}
	}
	return ""
}

// proofOf is what shows that an alarm is gone, of a shock what is still to be read.
func (c *Call) proofOf(a *alarm, since int) string {
	if a.code == "shock" && c.lastShown(a.cleared) > since {
		if load := c.loadToRead(since); load != "" {
			return "that what gave the shock is gone (still " + load + ", or OL with volt case earth … run)"
		}
	}
	return a.proof
}
