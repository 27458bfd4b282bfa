package call

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

// refreshMachine reads a machine's windings anew and tells what is new.
func (c *Call) refreshMachine(of string, reply *Reply) {
	m := c.machines[of]
	if m == nil {
		m = &machine{name: of}
		c.machines[of] = m
	}
	was := m.result
	m.result = c.inferWindings(of, math.MaxInt)
	res := m.result
	prefix := ""
	if of != defaultMachine {
		prefix = of + ": "
	}
	for i, n := range res.Notes {
		if among(m.shown, n) {
			continue
		}
		tone := Plain
		if i == 0 {
			tone = toneOf(res)
		}
		if strings.HasPrefix(n, "Recorded: ") {
			continue
		}
		if strings.HasPrefix(n, "Wanted next") || strings.HasPrefix(n, "Still wanted") {
			tone = Ask
		}
		reply.add(tone, prefix+n)
	}
	m.shown = res.Notes
	for _, code := range res.Cautions {
		c.warn(reply, code)
	}
	if res.State != winding.Sound && res.State != winding.Incomplete {
		reply.flag(string(res.State))
	}
	if len(res.Repeats) > 0 {
		reply.flag("jump")
	}
	if res.Sheet.Contradicts {
		reply.flag("sheet-contradicts")
	}
	if len(res.Conflicts) > 0 {
		reply.flag("marking-conflict")
	}
	if res.Settled && !was.Settled {
		reply.flag("roles-settled")
		reply.Table = c.rolesTable(m)
	}
	if res.State == winding.Sound && res.Settled && kindOf(of) != winding.Fan && c.failsToStart() && c.sayOnce("free to turn "+of) {
		reply.add(Plain, "Sound windings do not mean that it is free to turn.")
	}
	if c.mixedHeat(of, math.MaxInt) {
		reply.add(Warn, fmt.Sprintf("Some pairs were read hot: taken as %d to %d °C (common practice) and corrected to %d °C (copper, K 234.5). Closer: write at 65C behind each.", hotLeast, hotMost, coldTemperature)).flag("hot-and-cold")
	}
	if text := c.againstLetters(of); text != "" && !was.Settled {
		reply.add(Warn, text+".").flag("marking-conflict")
	}
	c.judgeWindings(of, res)
	reply.Windings = append(reply.Windings, windingsOf(m))
}

// againstLetters says that pins called by the letters of a compressor's cover come out
// otherwise by the ohms, "" when they do not, or a marking has settled it.
func (c *Call) againstLetters(of string) string {
	m := c.machines[of]
	if m == nil || !m.result.Settled || kindOf(of) != winding.Compressor || len(m.result.Roles) != len(letterRoles) {
		return ""
	}
	var is []string
	for _, pin := range m.result.Pins {
		role := m.result.Roles[pin]
		switch want := letterRoles[strings.ToLower(pin)]; {
		case want == "":
			return ""
		case want != role:
			is = append(is, pin+" as "+string(role))
		}
	}
	if len(is) == 0 || slices.ContainsFunc(c.marks, func(k mark) bool { return k.of == of && c.alive(k.entry) && k.entry > c.renewedAt(of) }) {
		return ""
	}
	return "By the ohms " + strings.Join(is, " and ") + ", against the letters: probes exchanged, or letters that are only names; mark settles it before a wire goes on (mark S start)"
}

//go:noinline
func toneOf(res winding.Result) Tone {
	switch res.State {
	case winding.Sound:
		return Good
	case winding.Incomplete:
		return Plain
	case winding.TooClose, winding.DoesNotAddUp, winding.EqualWindings, winding.OpenUnplaced, winding.OverloadOpen:
		return Warn
	}
	return Bad
}

func windingsOf(m *machine) Windings {
	roles := make(map[string]string, len(m.result.Roles))
	for pin, role := range m.result.Roles {
		roles[pin] = string(role)
	}
	return Windings{Of: m.name, Pins: m.result.Pins, Roles: roles, Settled: m.result.Settled,
		State: string(m.result.State), Notes: m.result.Notes}
}

// windingProof are the readings that a machine's windings rest on: those to the
// case only when one of them shows a ground.
func windingProof(res winding.Result) []winding.Reading {
	if res.State == winding.Grounded {
		return res.Proof
	}
	return slices.DeleteFunc(slices.Clone(res.Proof), func(r winding.Reading) bool {
		return strings.EqualFold(r.A, caseName) || strings.EqualFold(r.B, caseName)
	})
}

// windingSource names what the answer on a machine's windings rests on.
func windingSource(of string, res winding.Result) string {
	switch res.State {
	case winding.OverloadOpen, winding.OpenUnplaced:
		return "ice-machine operation manual 80-0111-9 p. 176; chiller service manual p. 12 (overload between terminal C and motor common)"
	case winding.Grounded:
		return "bulletin AE4-1294 (2010), megohm values of compressors"
	case winding.Sound, winding.TooClose, winding.DoesNotAddUp:
		if kindOf(of) == winding.Compressor && len(res.Pins) == 3 && !res.Alike {
			return "Compressor Common-Run-Start, a distributor's technician bulletin (2020); the tolerance is the meter's"
		}
	}
	return "common practice"
}

// judgeWindings takes down what a machine's windings amount to now.
func (c *Call) judgeWindings(of string, res winding.Result) {
	key := "wind\x00" + of
	v, ok := c.windingVerdict(of, res)
	if !ok {
		c.unjudge(key)
		return
	}
	j := c.judged[key]
	if j == nil {
		j = c.judging(key)
	}
	c.settle(j, v)
}

// windingVerdict turns what a machine's windings amount to into a verdict, false
// when too little of them was read.
func (c *Call) windingVerdict(of string, res winding.Result) (verdict.Verdict, bool) {
	v := verdict.Verdict{Subject: "windings", Text: "", Source: windingSource(of, res), Caution: res.Cautions}
	for _, f := range res.Facts {
		if f != winding.FactNoGround { // the pins to the case have verdicts of their own
			v.Fact = append(v.Fact, f)
		}
	}
	for _, p := range windingProof(res) {
		v.Entries = append(v.Entries, p.V.Entry)
	}
	for _, m := range res.Marked {
		v.Entries = append(v.Entries, m.Entry)
	}
	sort.Ints(v.Entries)
	v.Entries = slices.Compact(v.Entries)
	if len(res.Notes) > 0 {
		v.Text = res.Notes[0]
	}
	switch res.State {
	case winding.Sound:
		v.Word = verdict.Sound
		switch {
		case among(res.Facts, winding.FactIsolated):
			v.Word = verdict.CannotTell
		case among(res.Facts, factOpenHot):
			v.Word = verdict.Suspect
		}
	case winding.Incomplete:
		return v, false
	case winding.TooClose, winding.OpenUnplaced, winding.EqualWindings, winding.OverloadOpen:
		v.Word = verdict.CannotTell
		if among(res.Facts, winding.FactOpenCold) {
			v.Word = verdict.Suspect
		}
	case winding.DoesNotAddUp, winding.NotAWinding:
		v.Word = verdict.Suspect
	default:
		v.Word = verdict.Failed
	}
	// What condemns a winding is not the sum of its readings.
	if g := res.Gap; g != nil && g.Tolerance > 0 && !res.Disputed && res.State != winding.EqualWindings && !res.Alike && v.Word != verdict.Failed {
		v.Limit = "start + run within " + twoDigits(g.Tolerance) + " Ω of the highest pair"
		v.Margin, v.Judged = (g.Tolerance-math.Abs(g.Ohms))/g.Tolerance, true
	}
	return c.named(of, v), true
}

// rejudgeAll makes all judgements anew, after something changed that they
// all rest on, and tells those that changed.
func (c *Call) rejudgeAll(reply *Reply) *Reply {
	c.rejudge(reply)
	return c.finish(reply)
}

// reread is rejudgeAll once earlier readings themselves count otherwise: what
// work was done for is found anew too.
func (c *Call) reread(reply *Reply) *Reply {
	c.rejudge(reply)
	c.remend()
	return c.finish(reply)
}

func (c *Call) rejudge(reply *Reply) {
	names := map[string]bool{}
	c.spend(200 * len(c.machines))
	for of := range c.machines {
		names[of] = true
	}
	for _, of := range sortedNames(names) {
		m := c.machines[of]
		was := m.result
		m.result = c.inferWindings(of, math.MaxInt)
		if was.State == m.result.State && was.Settled == m.result.Settled && maps.Equal(was.Roles, m.result.Roles) && slices.Equal(was.Notes, m.result.Notes) {
			c.tellPlateOhms(of, reply) // the plate may have come after the readings
			continue
		}
		c.refreshMachine(of, reply)
		c.tellPlateOhms(of, reply)
	}
	c.resubject()
	for _, key := range append([]string(nil), c.subjects...) {
		kind, name, _ := strings.Cut(key, "\x00")
		if kind == "wind" {
			continue
		}
		if j, changed := c.judge(kind, name); changed && j != nil {
			c.tellVerdict(j, reply)
		}
	}
}

// windingKind is the kind of subject that compares a winding with the ohms
// of its plate or service sheet.
const windingKind = "plate-ohms"

// comparePlate judges one winding, named by its role, against the plate's
// ohms, both at 25 °C; false when either is not known.
func (c *Call) comparePlate(of, role string) (verdict.Verdict, bool) {
	p, ok := c.plateAt(of, "ohms", role)
	m := c.machines[of]
	if !ok || !strings.EqualFold(p.name, role) || m == nil || !m.result.Settled {
		return verdict.Verdict{}, false
	}
	tol := p.tol
	if tol == 0 {
		tol = plateOhmsTolerance
	}
	ohms, _ := p.q.In("ohm")
	for _, w := range m.result.Windings {
		a, b := string(m.result.Roles[w.From]), string(m.result.Roles[w.To])
		if (a == role || b == role) && (a == "common" || b == "common") && !w.Value.Over {
			value := w.Value
			if _, now := c.last2(pairKey(of, w.From, w.To)); readHot(now) && !c.mixedHeat(of, math.MaxInt) {
				value = fromHot(value, now.res)
			}
			v := winding.Compare(role+" winding", value, ohms, tol)
			v.Text = strings.TrimSuffix(v.Text, ".")
			switch other := c.sheetOf(of, role, p); {
			case v.Word == verdict.Failed && !value.Over && math.Abs(value.X-other) <= other*tol/100+value.Half():
				v.Word, v.Fact, v.Text = verdict.Suspect, []string{sheetExchanged}, role+" winding reads "+number(value.X)+" Ω, what the sheet gives the other: start and run are exchanged there or here; mark settles it"
			case v.Word == verdict.Failed && !value.Over && value.Hi < farBelowSheet*ohms:
				v.Fact = []string{"winding-low"}
			}
			if p.tol == 0 {
				v.Source += "; ±10 % assumed (common practice)"
			}
			v.Entries = append(v.Entries, p.entry)
			sort.Ints(v.Entries)
			return c.named(of, v), true
		}
	}
	return verdict.Verdict{}, false
}

// farBelowSheet is the share of the sheet's ohms below which no cold explains what a
// winding reads: copper loses a fifth of its ohms from 25 °C to -26 °C (common practice).
const farBelowSheet = 0.8

// sheetOf is what the plate gives the other of start and run, beside one row of it; 0
// when it gives it nothing.
func (c *Call) sheetOf(of, role string, beside plate) float64 {
	other := map[string]string{"start": "run", "run": "start"}[role]
	p, ok := c.plateAt(of, "ohms", other)
	if !ok || !strings.EqualFold(p.name, other) || p.entry < c.renewedAt(of) || beside.entry < c.renewedAt(of) {
		return 0
	}
	ohms, _ := p.q.In("ohm")
	return ohms
}

// sheetExchanged is that a winding reads what the sheet gives the other.
const sheetExchanged = "sheet-exchanged"

// exchanged says that the sheet gives each winding what the other reads, "" when it does
// not: which pin is start is not settled then.
func (c *Call) exchanged() string {
	of := c.mainMachine()
	run, start := c.judged[windingKind+"\x00"+of+"\x00run"], c.judged[windingKind+"\x00"+of+"\x00start"]
	if run == nil || start == nil || !among(run.verdict.Fact, sheetExchanged) || !among(start.verdict.Fact, sheetExchanged) {
		return ""
	}
	return "start and run by the ohms are run and start by the sheet (" + entryList(start.verdict.Entries) + "); a marking settles it before a wire goes on"
}

// plateOhmsTolerance is taken, in percent, when a plate's ohms were typed
// without one (common practice).
const plateOhmsTolerance = 10

// tellPlateOhms compares the windings with the plate and tells what changed.
func (c *Call) tellPlateOhms(of string, reply *Reply) {
	for _, role := range []string{"start", "run"} {
		if j, changed := c.judge(windingKind, of+"\x00"+role); changed {
			c.tellVerdict(j, reply)
		}
	}
}

// failsToStart reports whether the machine was found not to start.
func (c *Call) failsToStart() bool {
	for _, code := range []string{"does-not-start", "clicks", "hums", "cuts-out"} {
		for _, n := range c.seenAt[code] {
			if c.alive(n) {
				return true
			}
		}
	}
	return false
}

// mixedHeat reports whether the pairs that count before an entry were read
// partly hot, with no temperature to correct them by.
func (c *Call) mixedHeat(of string, before int) bool {
	hot, other := false, false
	for _, now := range c.pairsOf(of, before) {
		hot = hot || readHot(now)
		other = other || !now.over && now.b != caseName && !readHot(now)
	}
	return hot && other
}

// disputes is said of a marking that the readings go against.
const disputes = "the readings add up and contradict the marking"

// disputed reports whether they do on the machine that the call is about.
func (c *Call) disputed() bool {
	m := c.machines[c.mainMachine()]
	return m != nil && m.result.Disputed
}

// windingEntries are what the windings of a machine rest on, its markings too.
func (c *Call) windingEntries(of string) []int {
	v, _ := c.windingVerdict(of, c.machines[of].result)
	return v.Entries
}
