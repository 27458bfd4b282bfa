package call

import (
	"math"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

func (c *Call) judgeMfd(name string, rs []*reading) verdict.Verdict {
	v := c.value(latest(rs))
	p, known := c.marking(name, latest(rs))
	marked := 0.0
	if known {
		marked, _ = p.q.In("uF")
	}
	var out verdict.Verdict
	if strings.HasPrefix(strings.ToLower(name), "start") || p.ranged {
		in := judge.StartCapIn{Name: name, Measured: v, Low: marked, Tolerance: p.tol}
		if p.ranged {
			in.High, _ = p.hi.In("uF")
		}
		out = judge.StartCap(in)
	} else {
		out = judge.RunCap(judge.RunCapIn{Name: name, Measured: v, Marked: marked, Tolerance: p.tol})
	}
	switch {
	case !known:
		out.Text = "the marked µF is needed to judge it: plate mfd " + name + " …"
	case p.name == "" && otherCan(v, marked) && !(c.onlyRunCap(name) && v.Hi < marked):
		out = verdict.Verdict{Subject: out.Subject, Word: verdict.CannotTell, Caution: out.Caution, Entries: out.Entries,
			Text: latest(rs).shown() + farOff + ", " + p.text + "; name the can that is marked so: plate mfd " + name + " …"}
	}
	return out
}

const farOff = " is far from the one marking typed"

// smallestCan is below what any capacitor of a motor is marked, in µF: what
// reads less is open, whichever it is (common practice).
const smallestCan = 1

// otherCan reports whether a capacitance is so far from a marking that it may
// be that of another can.
func otherCan(v measure.Value, marked float64) bool {
	return !v.Over && v.Hi >= smallestCan && (v.Hi < marked/2 || v.Lo > marked*2)
}

// onlyRunCap reports whether a name is that of the run capacitor of a machine that
// has one: an air conditioner has a second, of its fan, often in the same can.
func (c *Call) onlyRunCap(name string) bool {
	return strings.HasPrefix(strings.ToLower(name), "run") && !c.appliance().Air
}

// onlyRunMark is the marking of the run capacitor where no other is typed: what is
// called a capacitor and no more is that one then. It counts as one without a name.
func (c *Call) onlyRunMark() (p plate, ok bool) {
	for _, m := range c.plates {
		c.spend(2)
		if m.key != "mfd" || !c.alive(m.entry) {
			continue
		}
		if !strings.HasPrefix(strings.ToLower(m.name), "run") {
			return plate{}, false
		}
		p, ok = m, true
	}
	p.name = ""
	return p, ok
}

// plainCap reports whether a name says no more than the run capacitor, of which a machine
// has one: an old and a new one may be called by two of them.
func (c *Call) plainCap(name string) bool {
	return !c.appliance().Air && among([]string{"cap", "capacitor", "c1", "run", "run-cap", "run-capacitor", "new-cap", "new-run-cap"}, strings.ToLower(name))
}

// marking is what is marked on a capacitor. A marking typed without a name is
// that of the capacitor read first; another needs its own. Each of several compressors
// has one.
func (c *Call) marking(name string, r *reading) (plate, bool) {
	p, ok := c.plateAt("", "mfd", name)
	if !ok && c.plainCap(name) {
		p, ok = c.onlyRunMark()
	}
	if !ok || p.name != "" {
		return p, ok
	}
	if at := c.compressorAt(r.entry); at != "" && p.of != at && c.isCompressor(p.of) {
		return c.plateAt(at, "mfd", name) // not that of the other compressor
	}
	var first *reading
	for _, kind := range []string{"mfd", "capload"} {
		for _, r := range c.bySubjectKind[kind] {
			if c.alive(r.entry) {
				if first == nil || r.index < first.index {
					first = r
				}
				break
			}
		}
	}
	if first != nil && !strings.EqualFold(first.a, name) && !(c.plainCap(first.a) && c.plainCap(name)) {
		return plate{}, false
	}
	return p, true
}

// compressorAt is the one of several compressors that was at hand before an entry, ""
// when none was.
func (c *Call) compressorAt(entry int) string {
	c.spend(2 * len(c.atHand))
	for i := len(c.atHand) - 1; i >= 0; i-- {
		h := &c.atHand[i]
		if h.entry >= entry || !c.alive(h.entry) {
			continue
		}
		if c.isCompressor(h.value) {
			return h.value
		}
		break
	}
	return ""
}

// judgeCapLoad judges a capacitor by the amps through it and the volts
// across it while it works.
func (c *Call) judgeCapLoad(name string, rs []*reading) (verdict.Verdict, bool) {
	var amps, volts *reading
	for _, r := range rs {
		if r.quality.word == "amp" {
			amps = r
		} else {
			volts = r
		}
	}
	if amps == nil || volts == nil || amps.over || volts.over {
		return verdict.Verdict{}, false
	}
	hz := c.ratedHertz()
	assumed := hz == 0
	if assumed {
		hz = 60
	}
	in := judge.UnderLoadIn{Name: name, Amps: c.value(amps), Volts: c.value(volts), Hertz: hz}
	if p, ok := c.marking(name, amps); ok && !p.ranged {
		in.Marked, _ = p.q.In("uF")
		in.Tolerance = p.tol
	}
	got, v := judge.CapUnderLoad(in)
	v.Text = "under load it is " + number(math.Round(got.X*100)/100) + " µF; " + v.Text
	if assumed {
		v.Text += "; 60 Hz assumed"
	}
	return v, true
}
