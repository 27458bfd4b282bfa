package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// endingHints says what can stand behind close.
func endingHints() string {
	var out []string
	for i := range said.Endings {
		if h := said.Endings[i].Hint; h != "" {
			out = append(out, h)
		}
	}
	return strings.Join(out, ", ")
}

// heardEnding is an ending with the entry that says it.
type heardEnding struct {
	*said.Ending
	entry   int
	text    string
	closing bool
}

// hearEnding notes what a text says of how the call ends and of how the unit
// was left.
func (c *Call) hearEnding(text string, closing bool) {
	c.spend(60 * min(len(text), said.MostBytes))
	if closing {
		c.spend(400 * min(len(text), said.MostBytes))
	}
	var heard []*said.Ending
	for _, clause := range said.Clauses(text) {
		heard = append(heard, said.Stops(clause, text, closing)...)
		if left := said.Left(clause); left != "" {
			c.set("left", left)
		}
	}
	for _, e := range said.Strongest(heard) {
		c.endings = append(c.endings, heardEnding{e, c.entry, text, closing})
	}
}

// ending is why the call stops short of its repair, nil when nothing says so
// or work came after it. Of several the last counts. Who waits for the client
// before closing, and reads or sees something then, does not wait any more.
func (c *Call) ending() *heardEnding {
	last := c.lastMended()
	for i := len(c.endings) - 1; i >= max(0, len(c.endings)-mostRenewals); i-- {
		if e := &c.endings[i]; e.entry >= last && c.alive(e.entry) && (e.closing || !e.Passes() || !c.establishedBetween(e.entry, math.MaxInt)) {
			return e
		}
	}
	return nil
}

// fuller is the last line of the same ending that says more of it than its word.
func (c *Call) fuller(e *heardEnding) *heardEnding {
	if e == nil {
		return nil
	}
	last := c.lastMended()
	for i := len(c.endings) - 1; i >= max(0, len(c.endings)-mostRenewals); i-- {
		o := &c.endings[i]
		if o.Result == e.Result && o.entry >= last && c.alive(o.entry) && strings.Contains(o.text, " ") {
			return o
		}
	}
	return e
}

// partAwaited is what proves nothing before it came.
const partAwaited = "the part that is waited for, fitted and seen to work"

// awaited is the text that names the part that is waited for: the first that
// speaks of it since the last work.
func (c *Call) awaited() string {
	last := c.lastMended()
	for i := max(0, len(c.endings)-mostRenewals); i < len(c.endings); i++ {
		if e := &c.endings[i]; e.Result == record.Waits && e.entry >= last && c.alive(e.entry) {
			return e.text + atEntry(e.entry)
		}
	}
	return ""
}

// ofUse are causes that are none of the unit: it is sound, and used or set otherwise than
// it is made for.
const ofUse = "pan-unfit heavy-use set-wrong set-not-cooling set-not-heating fan-set-on ice-switched-off"

// faultless tells of a cause that was found in a call that ends as without a fault,
// "" when none was.
func (c *Call) faultless() string {
	if e := c.stopped(); e == nil || e.Result != record.NoFault {
		return ""
	}
	now := c.weigh(math.MaxInt)
	for _, g := range groupsOf(&now) {
		if !g[0].Last && !strings.Contains(ofUse, g[0].Cause.Code) {
			return "it ends as without a fault, and a cause is found: " + g.told()
		}
	}
	return ""
}

// lastMended is the last entry of work that counts, 0 when there is none.
func (c *Call) lastMended() int {
	last := 0
	for i := len(c.mended) - 1; i >= 0; i-- {
		if n := c.mended[i]; c.alive(n) {
			if last = max(last, c.workAt(n)); c.placed[n] == (placed{}) {
				break
			}
		}
	}
	return last
}

// stopped is the ending of a call in which nothing more is done: unrepaired, or
// half-way for want of a part.
func (c *Call) stopped() *heardEnding {
	e := c.ending()
	if e == nil || len(c.repairs()) > 0 && (e.Result != record.Waits || len(c.proofMissing()) == 0) {
		return nil
	}
	return e
}

func leftWords(*Call) []string {
	var out []string
	for _, s := range said.States {
		out = append(out, s.Name)
	}
	return out
}

func leftCommand() Command {
	return Command{
		Word: "left", Group: Mends,
		Params:   []Param{{Name: "STATE", Kind: Text, Words: leftWords}},
		Help:     "how the unit is left: running, off, unplugged, tagged out or taken away",
		Doc:      "It is also heard in what is said while closing: close client declined, unit left unplugged. Right after close it belongs to the closing.",
		Examples: []string{"left running", "left tagged out, key with the client"},
		apply: func(c *Call, a *args) (*Reply, error) {
			t := a.text("STATE")
			state := said.StateLeft(t)
			if state == "" && said.Has(t, []string{"unsafe", "not safe"}) {
				return nil, a.get("STATE").errorf("%q says that it is unsafe, and not how it is left", clip(t, 40)).
					WithHint("saw %s; then how it is left: left tagged out", t)
			}
			if state == "" || said.NotLeft(said.Clauses(t)[0]) && len(c.alarmsIn(t, false)) == 0 {
				return nil, a.get("STATE").errorf("%q is no state in which a unit is left", clip(t, 40)).
					WithHint("one of: %s; and in your own words what else there is to say of it", strings.Join(leftWords(c), ", "))
			}
			c.hearEnding(t, true)
			c.set("left", t)
			r := say("Left: " + t + ".")
			c.told(r, t, false)
			c.guards(r, t)
			c.worry(r, t)
			if state == said.Running && c.energisedAnyway(r) {
				c.defied = append(c.defied, c.entry)
			}
			if state == said.Running {
				for _, s := range c.alarms() {
					t := cautionOf(s.caution)
					r.add(Caution, "Caution: left running, and "+s.text+". "+t.Text).flag("caution-" + t.Code)
				}
			}
			return r, nil
		},
	}
}

// leftAs is how the unit was left at the end of the visit at hand, with the
// entry that says it; 0 when none does or work came after it.
func (c *Call) leftAs() (text string, entry int) {
	for i := len(c.fields) - 1; i >= 0; i-- {
		c.spend(1)
		f := c.fields[i]
		if f.key == "left" && c.alive(f.entry) && f.entry >= max(c.lastMended(), c.reopened) {
			return f.value, f.entry
		}
	}
	return "", 0
}

// WantsLeft reports whether a closed call wants to be told how the unit was left.
func (c *Call) WantsLeft() bool { return c.Closed() && c.leftMatters() }

// answersLeft reports whether a text that is no line of its own tells, behind a closing
// that lacks it, how the unit was left.
func (c *Call) answersLeft(text string) bool {
	if !c.Closed() || said.StateLeft(text) == "" || said.NotLeft(text) || !c.leftMatters() {
		return false
	}
	_, err := c.Parse(text)
	return err != nil
}

// leftMatters reports whether the record is not whole without how the unit was
// left: it is unsafe, or was touched and not repaired.
func (c *Call) leftMatters() bool {
	if _, n := c.leftAs(); n > 0 {
		return false
	}
	e := c.stopped()
	return len(c.unsafe()) > 0 || e != nil && e.Result != record.NoFault && (e.Result != record.CalledOff || c.touched())
}

// touched reports whether anything was read, seen or made safe.
func (c *Call) touched() bool {
	return slices.ContainsFunc(c.readings, func(r *reading) bool { return c.alive(r.entry) }) ||
		slices.ContainsFunc(c.findings, func(f finding) bool { return c.alive(f.entry) }) || c.lastOf(c.dead, c.entry) > 0
}
