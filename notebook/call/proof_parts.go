package call

import (
	"slices"
	"strings"

	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// breakers are the parts that break a circuit, or whose like nothing else shows: the words of work for them, what
// they are read as, and the line to type.
var breakers = []struct {
	name, line    string
	words, places []string
	read          []rereading // how its kinds are read, by its name or what was read of the old one
	or            []string    // what may be seen in its place
}{
	{"start device", "ohm ptc … cold", []string{"start device", "ptc", "relay"}, []string{"ptc", "relay-coil", "potential-coil"},
		[]rereading{{"potential-coil", "ohm potential-coil …, potential-contact …", "potential"}, {"relay-coil", "ohm relay-coil …, relay-contact … upright", "current relay"}}, nil},
	{"defrost heater", "ohm defrost-heater …", []string{"defrost heater", "defrost element"}, []string{"heater"}, nil, []string{"defrost-runs-by-hand", "heats-up"}},
	{"overload", "ohm overload … cold", []string{"overload", "olp"}, []string{"overload"}, nil, nil},
	{"monitor switch", "ohm monitor-switch OL closed, then ohm monitor-switch … open", []string{"monitor"}, []string{"monitor-switch"}, nil, nil},
	{"limit or thermal fuse", "ohm limit … closed", []string{"limit", "thermal fuse", "cutoff", "cut-off"}, []string{"limit"}, nil, nil},
}

// Where start devices and overloads stand among breakers, whose rows are common
// practice.
const (
	startDevices = 0
	overloads    = 2
)

// rereading is how a part of one kind is read.
type rereading struct{ kind, line, name string }

// renewedBreaker is the last entry by which such a part was replaced, 0 when none
// was.
func (c *Call) renewedBreaker(words []string) int {
	at, _ := c.breakerRenewed(words)
	return at
}

// breakerRenewed is that entry, and what was said of the work.
func (c *Call) breakerRenewed(words []string) (int, string) {
	for i := len(c.renewed) - 1; i >= max(0, len(c.renewed)-mostRenewals); i-- {
		c.spend(200)
		if w := c.renewed[i]; c.alive(w.entry) && !c.saidBefore(w.entry) && said.Has(w.text, words) {
			return c.workAt(w.entry), strings.ToLower(w.text)
		}
	}
	return 0, ""
}

// rereads are the readings that prove parts which break a circuit and were
// replaced last: each is read before it is fitted or behind it.
func (c *Call) rereads() (out []proofWanted) {
	rep := c.repairs()
	for i, b := range breakers {
		at, text := c.breakerRenewed(b.words)
		if i == overloads && len(rep) > 0 {
			at = c.overloadOpen(rep[len(rep)-1], at)
		}
		if len(rep) > 0 && at >= rep[len(rep)-1] {
			line := b.line
			if i := slices.IndexFunc(b.read, func(s rereading) bool { return strings.Contains(text, s.name) || c.wasRead(s.kind) }); i >= 0 {
				line = b.read[i].line
			}
			if len(b.or) > 0 {
				line += ", or saw forced defrost heats"
			}
			out = append(out, proofWanted{"the new " + b.name + " read (" + line + ")", func(c *Call, since int) shown {
				if s := seen(b.or...)(c, since); s.held {
					return s
				}
				r := c.lastAfter(c.beforeWork(since)-1, func(r *reading) bool { return breaks(r, b.places) && c.ownGear(r.a) })
				s := c.shownBy(r)
				if r == nil && i == startDevices && startSeen(c, since).held {
					if runs := machineRuns(c, since); runs.held {
						return runs // it started the machine, and was out of its circuit once it ran
					}
				}
				if r != nil && s.held && strings.HasSuffix(r.a, "-coil") {
					contact := strings.Replace(r.a, "-coil", "-contact", 1)
					if c.lastAfter(c.beforeWork(since)-1, func(r *reading) bool { return r.a == contact }) == nil {
						return shown{text: "its " + contact + " was not read"}
					}
				}
				if len(b.or) > 0 && r != nil && !r.over { // not open is enough where no plate tells its ohms
					kind, name := c.subject(r)
					v, _ := c.verdictOn(kind, name, r.entry+1)
					s.held = s.held || v.Word == verdict.CannotTell
				}
				return s
			}})
		}
	}
	return out
}

// overloadOpen is the last work, by whatever words, before which an overload was read
// open when cold, or open at all and then replaced: with none in its place the machine
// starts as well. What starts shows that any other conducts.
func (c *Call) overloadOpen(work, renewed int) int {
	r := c.lastAfter(0, func(r *reading) bool {
		return r.entry < c.beforeWork(work) && breaks(r, breakers[overloads].places) && c.ownGear(r.a) && (r.over || renewed < work)
	})
	if r != nil && (renewed >= work || r.over && readsCold(r)) || renewed < work && c.overloadGone() {
		return work
	}
	return 0
}

// overloadGone reports whether by the words of work an overload came off, and none was
// read since: a kit may bring its own, or not.
func (c *Call) overloadGone() bool {
	for i := len(c.works) - 1; i >= max(0, len(c.works)-mostRenewals); i-- {
		c.spend(200)
		if w := &c.works[i]; w.kind == "did" && c.alive(w.entry) && said.Has(w.text, breakers[overloads].words) && said.Has(w.text, discards) &&
			c.lastAfter(w.entry, func(r *reading) bool { return breaks(r, breakers[overloads].places) }) == nil {
			return true
		}
	}
	return false
}

var discards = []string{"remov", "threw", "thrown", "tossed", "binned", "discard", "ditch", "took o", "taken o", "left o"}

// wasRead reports whether the ohms of a part of a kind were read.
func (c *Call) wasRead(kind string) bool {
	return c.lastAfter(0, func(r *reading) bool { return breaks(r, []string{kind}) }) != nil
}

// breaks tells the ohms of a part of some kinds.
func breaks(r *reading, places []string) bool {
	p := partOf(r.a)
	return r.quality.word == "ohm" && p != nil && among(places, p.words[0])
}

// fanProof is what proves work on a fan.
type fanProof struct {
	name       string
	runs, amps proofWanted
}

// unread are its amps, for want of which it is enough that it runs and the unit does
// again what it is there for (common practice).
func (f fanProof) unread() proofWanted {
	read := f.amps.held
	f.amps.held = func(c *Call, since int) shown {
		s := read(c, since)
		if runs := f.runs.held(c, since); (s.text == "" || s.open) && runs.held && c.worksAgain(since) {
			return runs
		}
		return s
	}
	return f.amps
}

var fanProofs = []fanProof{
	{"blower", proofWanted{"the fan seen to run (saw fan runs)", seen("blower-runs")},
		proofWanted{"running amps of the fan (amp fan … run)", read("amp", "blower")}},
	{"cond-fan", proofWanted{"the condenser fan seen to run (saw cond-fan runs)", seen("cond-fan-runs")},
		proofWanted{"running amps of the condenser fan (amp cond-fan … run)", read("amp", "cond-fan")}},
	{"evap-fan", proofWanted{"the evaporator fan seen to run (saw evap-fan runs)", seen("evap-fan-runs")},
		proofWanted{"running amps of the evaporator fan (amp evap-fan … run)", read("amp", "evap-fan")}},
}

// fansWorkedOn are the fans of a machine that cools which were worked on, and
// whether nothing else was.
func (c *Call) fansWorkedOn() (fans []fanProof, only bool) {
	if c.appliance().Unsealed || c.complaint() == said.MotorDead {
		return nil, false
	}
	done := c.doneNow()
	only = len(done) > 0
	for _, w := range done {
		named := ""
		for _, m := range otherMotors {
			if strings.HasSuffix(m.name, "-fan") && said.Has(w.text, m.words) {
				named = m.name
			}
		}
		if main := c.mainMachine(); named == "" && kindOf(main) == winding.Fan && said.Has(w.text, []string{"fan"}) {
			named = main
		}
		if said.Has(w.text, []string{"fan", "blower"}) {
			switch {
			case named == "" && c.fanOutside():
				named = "cond-fan"
			case c.appliance().Air && (named != "cond-fan" || c.appliance().FanShared):
				named = "blower"
			case c.appliance().OneFan:
				named = "cond-fan"
			}
		}
		only = only && named != ""
		if i := slices.IndexFunc(fanProofs, func(f fanProof) bool { return f.name == named }); i >= 0 &&
			!slices.ContainsFunc(fans, func(f fanProof) bool { return f.name == named }) {
			fans = append(fans, fanProofs[i])
		}
	}
	return fans, only && len(fans) > 0
}
