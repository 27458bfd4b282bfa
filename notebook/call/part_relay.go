package call

import (
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

func relayPart(r *reading) judge.RelayPart {
	switch {
	case strings.Contains(r.a, "coil"):
		return judge.Coil
	case r.cond.is("inverted"):
		return judge.Inverted
	}
	return judge.Contact
}

// relayValues are the last readings of the parts of a relay like one, that of the same machine, before an entry; the
// relay is judged whole once all were read. After a repair it is another
// relay, of which the old readings say nothing.
func (c *Call) relayValues(family, like string, before int) map[judge.RelayPart]*reading {
	out := map[judge.RelayPart]*reading{}
	rep, now := c.repairs(), 0
	c.spend(14 * len(c.readings))
	for _, r := range c.readings {
		if r.quality.word == "ohm" && r.b == "" && strings.HasPrefix(strings.ToLower(r.a), family) && c.alive(r.entry) && r.entry < before && c.gearOf(r.a) == c.gearOf(like) {
			if p := phase(rep, r.entry); p > now {
				clear(out)
				now = p
			}
			out[relayPart(r)] = r
		}
	}
	return out
}

// noStartRelay reports whether a relay of this appliance is one that a control
// works: where nothing is sealed, and in air conditioners and heat pumps unless the
// plate says that a relay starts them (common practice).
func (c *Call) noStartRelay() bool {
	is := c.appliance()
	return is.Unsealed || (is.Air || strings.Contains(strings.ToLower(is.Unit), "heat pump")) && c.plateText("", "start") != relayDevice
}

func judgeRelay(c *Call, name string, rs []*reading, before int) verdict.Verdict {
	if c.noStartRelay() {
		return plainRelay(c, name, latest(rs))
	}
	all := c.relayValues("relay", name, before)
	if all[judge.Coil] != nil && all[judge.Contact] != nil && all[judge.Inverted] != nil {
		if !strings.EqualFold(all[judge.Coil].a, name) { // it is said once, of the coil
			return verdict.Verdict{}
		}
		return judge.CurrentRelayWhole("", c.value(all[judge.Coil]), c.value(all[judge.Contact]), c.value(all[judge.Inverted]))
	}
	r := latest(rs)
	out := judge.CurrentRelay(judge.RelayIn{Part: relayPart(r), Ohms: c.value(r)})
	switch {
	case relayPart(r) != judge.Contact:
	case out.Word == verdict.Sound && all[judge.Inverted] == nil:
		out.Word, out.Text = verdict.CannotTell, "open upright, as it must be, which is half the test: "+turnedOver
		if !r.cond.is("upright") {
			out.Text = "open, right if it stood upright, which is half the test: " + turnedOver
		}
	case out.Word != verdict.Sound && !r.over && !r.cond.is("upright"):
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = r.shown() + ": welded if it stood upright, sound if turned over, or its coil: write upright, inverted or relay-coil"
	}
	return out
}

// turnedOver asks for the half of a current relay's test that a stuck or burnt
// contact fails.
const turnedOver = "now turned over, where it must close: ohm relay 0.2 inverted"

// halfRelay is what is still to be read of a current relay whose contact was
// found open upright, or read without a word of how it was held, "" when nothing is.
func (c *Call) halfRelay() string {
	if c.noStartRelay() {
		return ""
	}
	all := c.relayValues("relay", "relay-"+c.gearMachine(), c.entry+1)
	switch r := all[judge.Contact]; {
	case r == nil || all[judge.Inverted] != nil || phase(c.repairs(), r.entry) < len(c.repairs()):
	case r.over && r.cond.is("upright"):
		return turnedOver
	case !r.cond.is("upright"):
		return "the relay in both positions: ohm relay-contact OL upright, relay-contact 0.2 inverted"
	}
	return ""
}

// A start device is a current relay or a disc by its plate, else by what was
// read of it.
const (
	relayDevice = "relay"
	discDevice  = "ptc"
)

// startDevice is the kind of start device, "" when nothing tells.
func (c *Call) startDevice(before int) string {
	if t := c.plateText(c.mainMachine(), "start"); t == relayDevice || t == discDevice {
		return t
	}
	kind := ""
	for _, r := range c.bySubjectKind["part"] {
		if r.entry >= before || !c.alive(r.entry) {
			continue
		}
		_, name := c.subject(r) // of pins of a part at hand, the part
		if !c.ownGear(name) {
			continue
		}
		switch partOf(name).words[0] {
		case "relay-coil":
			kind = relayDevice
		case "ptc":
			kind = discDevice
		}
	}
	return kind
}

// saysDisc tells words that name the disc itself.
var saysDisc = said.Lazily(`(?i)\b(ptc|disc|disk|pill)\b`)

// rattling settles what a start device that rattles tells: the plunger of a
// sound current relay does, a disc does only when it is broken.
func (c *Call) rattling(facts []cause.Fact, before int) []cause.Fact {
	if !slices.ContainsFunc(facts, func(f cause.Fact) bool { return f.Code == "relay-rattles" || f.Code == "device-rattles" }) {
		return facts
	}
	kind := c.startDevice(before)
	out := facts[:0:0]
	for _, f := range facts {
		switch {
		case f.Code == "relay-rattles" && kind == discDevice:
			f.Code = "device-rattles"
		case f.Code == "device-rattles" && kind == relayDevice && !saysDisc().MatchString(c.wordsSeen(f.Entry)):
			f.Code = "relay-rattles"
		}
		out = append(out, f)
	}
	return out
}

// wordsSeen are the words of a finding.
func (c *Call) wordsSeen(entry int) string {
	i := sort.Search(len(c.findings), func(i int) bool { return c.findings[i].entry >= entry })
	if i < len(c.findings) && c.findings[i].entry == entry {
		return c.findings[i].text
	}
	return ""
}

// tellRattle says what a rattle is worth, when it is worth nothing.
func (c *Call) tellRattle(codes []string, r *Reply) {
	for _, f := range c.rattling(factsOf(codes, c.entry), c.entry+1) {
		if f.Code == "relay-rattles" {
			r.add(Ask, "No evidence: the plunger of a sound current relay rattles (common practice). Read it: ohm relay OL upright, relay 0.2 inverted. Only a disc is broken when it rattles: saw ptc rattles.")
		}
	}
}

//go:noinline
func factsOf(codes []string, entry int) []cause.Fact {
	var out []cause.Fact
	for _, code := range codes {
		out = append(out, cause.Fact{Code: code, Entry: entry})
	}
	return out
}
