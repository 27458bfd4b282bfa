package call

import (
	"cmp"
	"math"
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/sum"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// Record draws the call up as plain data, from which every page and export
// is made.
func (c *Call) Record() *record.Record {
	r := &record.Record{}
	c.spend(80*len(c.entries) + 200*len(c.readings))
	found, before := c.causeFound()
	r.CausesBefore = before
	c.drawEvidence(r)
	c.drawWork(r)
	c.drawCauses(r, found)
	c.drawProof(r)
	r.Missing = c.missing()
	r.Alerts = c.alerts(r)
	for _, s := range r.Alerts {
		if word, what, _ := strings.Cut(s, ": "); among(doubtWords, word) {
			r.Header.Doubt = append(r.Header.Doubt, what)
		}
	}
	c.drawHeader(r, found)
	brief(&r.Header)
	c.drawOutcome(r, found)
	r.Log = make([]record.Entry, 0, len(c.entries))
	for _, e := range c.entries {
		r.Log = append(r.Log, record.Entry{N: e.N, At: e.At, Line: e.Line, Kind: e.Kind, Reply: e.Reply.PlainLines(), Struck: c.struck[e.N]})
	}
	return r
}

// PlainLines is a reply as it stands in the log.
func (r *Reply) PlainLines() []string {
	if r == nil {
		return nil
	}
	var out []string
	for _, l := range r.Lines {
		out = append(out, l.Text)
	}
	return out
}

// Plain is a reply as plain text, its table included.
func (r *Reply) Plain() string {
	lines := r.PlainLines()
	if r.Table != nil {
		for _, row := range append([][]string{r.Table.Head}, r.Table.Rows...) {
			lines = append(lines, strings.Join(row, " | "))
		}
	}
	return strings.Join(lines, "\n")
}

// mostRepairs is how many repairs are looked back at for the cause.
const mostRepairs = 32

// causeFound says what the call was mended for: the causes supported when
// the last repair began that mended one, or now when nothing was repaired. A
// cause that a fact shows comes before one that is merely left: a sound new
// part rules out the old one's fault, while what it had caused still stands. A
// cause that only follows from another, such as ice, comes last. before is the
// repair before which they stood so, 0 when nothing was repaired.
func (c *Call) causeFound() (found cause.Result, before int) {
	rep := c.repairs()
	for _, counts := range []func(*cause.Standing) bool{
		func(s *cause.Standing) bool { return !s.Cause.Consequence && !s.Last },
		func(s *cause.Standing) bool { return !s.Cause.Consequence },
		func(*cause.Standing) bool { return true },
	} {
		for i := len(rep) - 1; i >= max(0, len(rep)-mostRepairs); i-- {
			if r := c.weigh(c.beforeWork(rep[i])); supports(&r, counts) {
				return r, rep[i]
			}
		}
	}
	if len(rep) > 0 {
		return c.weigh(c.beforeWork(rep[0])), rep[0]
	}
	return c.weigh(math.MaxInt), 0
}

// supports reports whether a cause that counts is supported.
func supports(r *cause.Result, counts func(*cause.Standing) bool) bool {
	for i := range r.Standings {
		if s := &r.Standings[i]; s.State == cause.Supported && counts(s) {
			return true
		}
	}
	return false
}

func (c *Call) drawEvidence(r *record.Record) {
	for _, of := range c.machineNames() {
		if at := c.renewedAt(of); at > 0 {
			old := c.inferWindings(of, at)
			c.drawMachine(r, record.Machine{Name: of + ", before entry " + itoa(at), State: windingState(old.State)}, of, old, at)
		}
		c.drawMachine(r, record.Machine{Name: of, State: c.stateWords(of)}, of, c.machines[of].result, math.MaxInt)
	}
	r.Readings = make([]record.Reading, 0, len(c.readings))
	for _, m := range c.readings {
		v := record.Reading{Entry: m.entry, At: m.at, Kind: m.quality.word, Of: m.of, A: m.a, B: m.b,
			Unit: m.quality.ucum, Over: m.over, Shown: m.shown(), Condition: m.cond.String(), Struck: c.struck[m.entry]}
		if !m.over {
			v.Value = m.x
			v.U = c.standard(m)
		}
		r.Readings = append(r.Readings, v)
	}
	for _, key := range c.subjects {
		j := c.judged[key]
		if v, ok := c.before(key, j); ok {
			r.Verdicts = append(r.Verdicts, drawn(v))
		}
		if j == nil {
			continue
		}
		v := j.verdict
		if since := c.since(); since > 0 && v.Word == verdict.Failed && len(v.Entries) > 0 && v.Entries[len(v.Entries)-1] < since &&
			(!intersects(v.Fact, barring) || c.replacedSince(key, j)) {
			v.Subject += " (before the repair)"
		}
		if kind, name, _ := strings.Cut(key, "\x00"); kind == "temp" && v.Word != verdict.Sound && c.onCourse(name) {
			v.Text += "; on course to its target by the timed readings"
		}
		r.Verdicts = append(r.Verdicts, drawn(v))
	}
	for _, s := range c.sums {
		out := record.Sum{Entry: s.entry, Text: s.text, Value: s.value, Meaning: joined(s.by, c.inDoubt(s.from, s.entry)), Struck: c.struck[s.entry]}
		if s.out != nil {
			out.Number, out.Unit, out.U = s.out.Value, s.out.Unit, s.out.U
		}
		r.Sums = append(r.Sums, out)
	}
	for _, d := range c.defs {
		if d.isFunc {
			continue
		}
		v, unit, u := d.value.Shown()
		r.Sums = append(r.Sums, record.Sum{Entry: d.entry, Text: d.name, Value: d.value.String(), Meaning: joined(joined(d.help, d.by), c.inDoubt(d.from, math.MaxInt)), Number: v, Unit: unit, U: u, Struck: c.struck[d.entry]})
	}
	for _, e := range append(slices.Clip(c.expects), c.waiting...) {
		row := record.Sum{Entry: e.entry, Text: e.text, Meaning: joined(joined(e.meaning, e.by), e.waits), Struck: c.struck[e.entry]}
		row.Met = [...]string{sum.Yes: "met", sum.No: "not met", sum.Unsure: "cannot tell"}[e.met]
		if s := c.inDoubt(e.from, e.worked); s != "" {
			row.Met, row.Meaning = "in doubt", joined(row.Meaning, s)
		} else if e.waits != "" {
			row.Met = "waiting"
		}
		row.Value = row.Met
		r.Sums = append(r.Sums, row)
	}
	sort.SliceStable(r.Sums, func(i, j int) bool { return r.Sums[i].Entry < r.Sums[j].Entry })
}

// onCourse reports whether the timed temperatures of a place lead to its target.
func (c *Call) onCourse(place string) bool {
	return slices.ContainsFunc(c.curves(c.since(), math.MaxInt), func(k record.Curve) bool {
		return k.Place == place && courseFacts[k.Verdict] == "pulls-down-on-course"
	})
}

func drawn(v verdict.Verdict) record.Verdict {
	out := record.Verdict{Subject: v.Subject, Word: string(v.Word), Text: v.Text, Limit: v.Limit, Source: v.Source, Also: v.Also, Entries: v.Entries}
	if v.Judged {
		out.Margin = marginShort(v.Margin)
	}
	return out
}

func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + ", " + b
}

// drawMachine draws up what was read of a machine before an entry.
func (c *Call) drawMachine(r *record.Record, out record.Machine, of string, res winding.Result, before int) {
	out.Settled, out.Notes = res.Settled, res.Notes
	if p := c.probes(); p > 0 {
		out.Notes = append(slices.Clip(out.Notes), "Drawn are the ohms as read; what is said of them has the probe leads' "+number(p)+" Ω taken off.")
	}
	toCase := map[string]string{}
	for _, now := range c.pairsOf(of, before) {
		if now.b != caseName {
			out.Pairs = append(out.Pairs, record.Pair{A: now.a, B: now.b, Ohms: now.shown()})
			continue
		}
		toCase[now.a] = now.shown()
		if s := now.cond.String(); s != "" {
			toCase[now.a] += " (" + s + ")"
		}
	}
	for _, p := range res.Pins {
		out.Pins = append(out.Pins, record.Pin{Name: p, Role: roleOf(&res, p), Case: toCase[p]})
	}
	if len(out.Pairs) > 0 || len(out.Pins) > 0 {
		r.Machines = append(r.Machines, out)
	}
}

// before gives what a verdict said of a machine that was replaced since, when
// it was not sound: the new one's has taken its place.
func (c *Call) before(key string, now *judged) (v verdict.Verdict, ok bool) {
	of := ownerOf(key)
	at := c.renewedAt(of)
	if at == 0 || now != nil && lastEntry(now.verdict) < at {
		return v, false
	}
	switch kind, name, _ := strings.Cut(key, "\x00"); kind {
	case "wind":
		v, ok = c.windingVerdict(of, c.inferWindings(of, at))
	case "case":
		v, ok = c.verdictOn(kind, name, at)
	}
	v.Subject += " (before the repair)"
	return v, ok && v.Word != verdict.Sound
}

func pairKey(of, a, b string) string {
	r := reading{quality: qualityOf("ohm"), of: of, a: a, b: b}
	return r.key()
}

// marginText says how far inside or outside its limit a reading lies, in
// units of its own doubt.
func marginText(m float64) string {
	x, side, _ := strings.Cut(marginShort(m), " ")
	return side + " by " + strings.Replace(x, ">", "over ", 1) + " × its doubt"
}

// marginShort is marginText for a column whose head names the unit.
func marginShort(m float64) string {
	side := " inside"
	if m < 0 {
		side, m = " outside", -m
	}
	if m > 99 {
		return ">99" + side
	}
	x := math.Round(m*10) / 10
	if m < 1 && x == 1 {
		x = math.Floor(m*10) / 10 // less than its doubt is not told as all of it
	}
	return number(x) + side
}

func (c *Call) drawWork(r *record.Record) {
	for _, w := range c.works {
		kind := w.kind
		if kind == ofTheFile {
			kind = "note" // as it was typed
		}
		r.Work = append(r.Work, record.Work{Entry: w.entry, At: w.at, Kind: kind, Text: w.text, Struck: c.struck[w.entry]})
	}
	for _, p := range c.parts {
		r.Parts = append(r.Parts, record.Part{Entry: p.entry, Name: p.name, Serial: p.serial, Count: p.count, Price: p.price, Priced: p.priced, Struck: c.struck[p.entry]})
	}
	for _, t := range c.wirings() {
		for _, row := range t.Rows {
			role, pin := row.Role, row.Pin
			if row.Other != "" {
				role, pin = "-", row.Other
			}
			r.Wiring = append(r.Wiring, record.Wire{Entry: row.Entry, Wire: row.Wire, Role: cmp.Or(role, "not known"), At: pin})
		}
		for _, p := range t.Problems {
			r.Wiring = append(r.Wiring, record.Wire{Wire: "-", Role: "-", Note: p})
		}
	}
	for _, k := range c.caution {
		if t, ok := caution.Text(k.code); ok {
			r.Cautions = append(r.Cautions, record.Note{Entry: k.entry, Text: t.Text, Source: t.Source})
		}
	}
	for _, f := range identityFields {
		v := c.last(f.word)
		if f.word == "tech" {
			v = strings.Join(c.technicians(true), ", ")
		}
		if v != "" && f.word != "fault" {
			r.Identity = append(r.Identity, record.Fact{Label: f.label, Text: v})
		}
	}
	c.drawPlates(r)
	for _, q := range qualities {
		m := c.meterFor(q.word)
		if m.Assumed || m.entry == 0 {
			continue
		}
		text := number(m.Percent) + " % of reading and " + number(m.Counts) + map[bool]string{true: " count", false: " counts"}[m.Counts == 1]
		if q.word == "temp" {
			text = "±" + number(m.fixed) + " K"
		}
		r.Identity = append(r.Identity, record.Fact{Label: "Meter, " + q.word, Text: text})
	}
	if p := c.last("probes"); p != "" {
		r.Identity = append(r.Identity, record.Fact{Label: "Probe leads", Text: p + " Ω, taken off every ohm reading"})
	}
}

// drawPlates tells the plate of each machine: of what was typed again the last, and
// with it what stood there before the repair.
func (c *Call) drawPlates(r *record.Record) {
	slot := func(p *plate) string {
		if p.key == "row" {
			return p.of + "\x00" + p.text
		}
		return p.of + "\x00" + p.key + "\x00" + p.name
	}
	last, of := map[string]*plate{}, map[string]string{}
	for i := range c.plates {
		if p := &c.plates[i]; c.alive(p.entry) {
			last[slot(p)] = p
		}
	}
	var names []string
	rep := c.repairs()
	for i := range c.plates {
		p := &c.plates[i]
		if !c.alive(p.entry) {
			continue
		}
		if !among(names, p.of) {
			names = append(names, p.of)
		}
		now, old := last[slot(p)], ""
		if now != p {
			if old = " (before the repair)"; now.text == p.text || phase(rep, p.entry) == phase(rep, now.entry) {
				continue
			}
		}
		if of[p.of] != "" {
			of[p.of] += ", "
		}
		of[p.of] += p.key + " " + p.text + old
	}
	for _, n := range names {
		r.Identity = append(r.Identity, record.Fact{Label: "Plate of " + c.owner(n), Text: of[n]})
	}
}

func (c *Call) drawCauses(r *record.Record, found cause.Result) {
	for _, state := range []cause.State{cause.Supported, cause.Open, cause.RuledOut} {
		for i := range found.Standings {
			s := &found.Standings[i]
			if s.State != state {
				continue
			}
			r.Causes = append(r.Causes, record.Cause{Code: s.Cause.Code, Name: s.Cause.Name, State: string(s.State),
				For: entryNumbers(s.For), Against: entryNumbers(s.Against), Fix: s.Cause.Fix})
		}
	}
	now := c.weigh(math.MaxInt)
	r.Next = c.nextStep(&now)
}

func entryNumbers(facts []cause.Fact) []int {
	var out []int
	for _, f := range facts {
		if len(out) == 0 || out[len(out)-1] != f.Entry {
			out = append(out, f.Entry)
		}
	}
	return out
}

func (c *Call) drawProof(r *record.Record) {
	rep := c.repairs()
	r.Curves = c.curves(c.since(), math.MaxInt)
	if len(rep) == 0 {
		return
	}
	since := c.provedSince()
	for _, p := range c.proofList() {
		label := p.point()
		r.Proof = append(r.Proof, record.Fact{Label: strings.ToUpper(label[:1]) + label[1:], Text: p.held(c, since).words()})
	}
}

func (c *Call) drawHeader(r *record.Record, found cause.Result) {
	h := &r.Header
	h.State, h.Entries = "open", len(c.entries)
	if c.Closed() {
		h.State = "closed"
	} else {
		r.Reopened = c.reopened
	}
	if n := len(c.entries); n > 0 {
		h.Started, h.Ended = c.entries[0].At.Format(record.TimeLayout), c.entries[n-1].At.Format(record.TimeLayout)
		for _, e := range c.entries {
			if e.Kind != "date" {
				h.Started = e.At.Format(record.TimeLayout)
				break
			}
		}
		h.Minutes = int(c.minutes(c.entries[n-1].At))
	}
	h.Technician, h.Client, h.Site = strings.Join(c.technicians(false), ", "), c.last("client"), c.last("site")
	h.Unit, h.Model, h.Serial = c.last("unit"), c.last("model"), c.last("serial")
	h.Complaint, h.Kind = c.last("fault"), found.Complaint
	h.Machine = c.plateText(c.mainMachine(), "model")
	h.Cause = strings.Join(causeNames(found), "; ")
	h.Missing, h.Unsafe = r.Missing, c.unsafe()
	for _, p := range c.parts {
		if !c.alive(p.entry) {
			continue
		}
		h.Parts = append(h.Parts, number(p.count)+" x "+p.name)
		if p.priced {
			h.Cost += p.count * p.price
		} else {
			h.Unpriced++
		}
	}
	h.Result, h.Said = c.result(), c.wordsSince()
	if as, n := c.leftAs(); n > 0 {
		h.Left = said.StateLeft(as)
	}
	h.Ohms = c.windingOhms()
	h.Redacted = c.redacted()
}

// windingOhms are the ohms between roles of the machine that the call is
// about, once its roles are settled: "common-run 2.5".
func (c *Call) windingOhms() []string {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil {
		return nil
	}
	res := m.result
	if at := c.renewedAt(of); at > 0 {
		// The plate that the call knows is the old one's, until another is typed.
		if p, ok := c.plateAt(of, "model", ""); !ok || p.entry < at {
			res = c.inferWindings(of, at)
		}
	}
	if !res.Settled {
		return nil
	}
	var out []string
	for _, w := range res.Windings {
		a, b := res.Roles[w.From], res.Roles[w.To]
		if a != "" && b != "" && !w.Value.Over {
			out = append(out, string(a)+"-"+string(b)+" "+number(w.Value.X))
		}
	}
	return out
}

// Complaint is the code of the complaint that the call is taken to be about, ""
// when its words fit none.
func (c *Call) Complaint() string { return c.complaint() }

// Windings is the plate's model of the machine that the call is about, with
// its ohms between roles, as other calls on the model are compared by.
func (c *Call) Windings() (model string, ohms []string) {
	return c.plateText(c.mainMachine(), "model"), c.windingOhms()
}

func causeNames(found cause.Result) []string {
	var out []string
	causes, _ := causesOf(&found)
	for _, g := range causes {
		out = append(out, g.name())
	}
	return out
}
