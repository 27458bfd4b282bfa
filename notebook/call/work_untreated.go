package call

import (
	"cmp"
	"math"
	"slices"
	"sort"
	"strings"
	"unicode"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// group is a cause found, or several that exclude each other and rest on the
// same facts, so that one of them is meant and nobody knows which.
type group []*cause.Standing

func (g group) name() string {
	var names []string
	for _, s := range g {
		names = append(names, s.Cause.Name)
	}
	if len(names) == 1 {
		return names[0]
	}
	return "either " + strings.Join(names, " or ") + " (not parted)"
}

// told is the group with the entries that it is inferred from.
func (g group) told() string { return g.name() + ", inferred from " + entriesWord(g.rests()) }

func (g group) rests() []cause.Fact {
	var out []cause.Fact
	for _, s := range g {
		for _, f := range s.For {
			if !slices.Contains(out, f) {
				out = append(out, f)
			}
		}
	}
	byEntry(out)
	return out
}

func byEntry(facts []cause.Fact) {
	sort.SliceStable(facts, func(i, k int) bool { return facts[i].Entry < facts[k].Entry })
}

// groupsOf puts the supported causes that exclude each other together.
func groupsOf(r *cause.Result) []group {
	var out []group
	for i := range r.Standings {
		s := &r.Standings[i]
		if s.State != cause.Supported {
			continue
		}
		at := slices.IndexFunc(out, func(g group) bool {
			return slices.Equal(shows(g[0]), shows(s)) && cause.Apart(g[0].Cause, s.Cause)
		})
		if at < 0 {
			out = append(out, group{s})
		} else {
			out[at] = append(out[at], s)
		}
	}
	sort.SliceStable(out, func(i, k int) bool { return consequence(out[i]) < consequence(out[k]) })
	return out
}

// consequence puts what only follows from another cause behind the others.
func consequence(g group) int {
	if g[0].Cause.Consequence {
		return 1
	}
	return 0
}

// causesOf are the groups found, those that only follow from another cause apart: that
// is then still to be found.
func causesOf(r *cause.Result) (causes, follow []group) {
	list := groupsOf(r)
	n := len(list)
	for n > 0 && consequence(list[n-1]) > 0 {
		n--
	}
	return list[:n], list[n:]
}

// shows are the facts that show a cause by themselves.
func shows(s *cause.Standing) []cause.Fact {
	return slices.DeleteFunc(slices.Clone(s.For), func(f cause.Fact) bool { return !among(s.Cause.ShownBy, f.Code) })
}

// idle lists work that by its words mends nothing that was found or is open, but
// something that was ruled out: either the work or the elimination is wrong.
func (c *Call) idle() []string {
	if len(c.repairs()) == 0 {
		return nil
	}
	found := c.foundOnce()
	var out []string
	for _, w := range c.doneNow() {
		text := w.text
		var against *cause.Standing
		for i := range found.Standings {
			s := &found.Standings[i]
			if s.Cause.Consequence || !c.mends(s.Cause, text) {
				continue
			}
			// What was read after it is of the new part, and judges no work.
			if before := c.beforeWork(c.workAt(w.entry)); s.State != cause.RuledOut || s.Beside || !slices.ContainsFunc(s.Against, func(f cause.Fact) bool { return f.Entry < before }) {
				against = nil
				break
			}
			if against == nil {
				against = s
			}
		}
		if against != nil && !c.withItsDevice(text) {
			out = append(out, text+": "+against.Cause.Name+" is ruled out by "+entriesWord(against.Against))
		}
	}
	return out
}

// didNotEnd lists the repairs after which the complaint was seen again, and that another
// one followed.
func (c *Call) didNotEnd() (out []string) {
	rep, told := c.repairs(), 0
	for i := range c.findings {
		f := &c.findings[i]
		c.spend(20)
		if n := phase(rep, f.entry); n > told && n < len(rep) && c.alive(f.entry) && cause.Persists(c.complaint(), f.code) {
			told = n
			out = append(out, "the work of entry "+itoa(rep[n-1])+" did not end the complaint: "+f.text+atEntry(f.entry))
		}
	}
	return out
}

// replacedSound lists the parts that were replaced though what their meter showed was
// sound: what was wrong with them is not in the record.
func (c *Call) replacedSound() []string {
	var out []string
	for _, w := range c.renewed[max(0, len(c.renewed)-mostRenewals):] {
		if !c.alive(w.entry) || c.saidBefore(w.entry) {
			continue
		}
		for _, key := range c.subjects {
			c.spend(200)
			kind, name, _ := strings.Cut(key, "\x00")
			if kind != "part" && (kind != "mfd" || !said.Has(w.text, []string{"cap"})) || partOf(name) == partOf("earth") || !said.Names(w.text, name) || !numbered(w.text, name) ||
				said.Has(w.text, otherPlaces) && !said.Has(name, otherPlaces) || partOf(name) == partOf("overload") && c.withItsDevice(w.text) {
				continue
			}
			was, read := c.verdictOn(kind, name, w.entry)
			if sheath, bad := c.verdictOn("sheath", name, w.entry); !read || was.Word != verdict.Sound || bad && sheath.Word.Worse(verdict.Sound) && sheath.Word != verdict.CannotTell {
				continue
			}
			out = append(out, name+" was replaced"+atEntry(w.entry)+", and had read sound ("+entryList(was.Entries)+")")
		}
	}
	return out
}

// otherPlaces tell a part from one of its kind: the fuse of the line is not that of the
// high voltage.
var otherPlaces = []string{"hv", "high v", "high-v", "thermal"}

// numbered reports whether a text has what tells one of several like parts apart, where
// its name has that: fuse-l1 is not the fuse L3.
func numbered(text, name string) bool {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	for _, w := range strings.Split(strings.ToLower(name), "-") {
		short := len(w) <= 2 || strings.ContainsAny(w, "0123456789")
		if short && (len(w) == 1 && !onlyDigits(w) || !slices.Contains(words, w)) {
			return false
		}
	}
	return true
}

// mends reports whether work speaks by its words of what mends a cause, and not
// of another machine where the cause is of the one in question.
func (c *Call) mends(k *cause.Cause, text string) bool {
	return cause.Mends(k.Code, text) && !(k.Machine && c.onAnother(text)) && !(k.Code == "high-volts-failed" && c.lineFuse(doneWork{work: work{text: text}}))
}

// onAnother reports whether a text is of a motor other than the machine that the
// call is about. Where that is whatever motor stands still, none is another.
func (c *Call) onAnother(text string) bool {
	main := c.mainMachine()
	if main == defaultMachine && (c.appliance().Unsealed || among(unsealed, c.complaint())) {
		return false
	}
	named := ""
	text = strings.ReplaceAll(strings.ToLower(text), "heat pump", "")
	for _, m := range otherMotors {
		if said.Has(text, m.words) {
			if m.name != "fan" && strings.Contains(main, m.name) || m.name == "fan" && kindOf(main) == winding.Fan && named == "" {
				return false
			}
			named = m.name
		}
	}
	return named != ""
}

// otherMotors are the motors of an appliance by the words for them.
var otherMotors = []struct {
	name  string
	words []string
}{
	{"comp", []string{"compressor"}},
	{"cond-fan", []string{"condenser fan", "cond fan", "cond-fan", "outdoor fan", "outside fan", "od fan"}},
	{"evap-fan", []string{"evaporator fan", "evap fan", "evap-fan", "freezer fan"}},
	{"fan", []string{"fan", "blower"}},
	{"pump", []string{"pump"}},
	{"damper", []string{"damper"}},
	{"timer", []string{"timer"}},
	{"auger", []string{"auger", "ice maker", "icemaker"}},
}

// withItsDevice reports whether a text is of an overload that was fitted with
// its start device, as they come.
func (c *Call) withItsDevice(text string) bool {
	if !said.Has(text, []string{"overload", "protector", "olp"}) {
		return false
	}
	return slices.ContainsFunc(c.doneNow(), func(w doneWork) bool {
		return said.Has(w.text, []string{"start device", "start relay", "start kit", "ptc", "relay"})
	})
}

// doneWork is work done or a part fitted, with whether its words name the work
// for any cause.
type doneWork struct {
	work
	fits bool
}

// doneNow lists what was done and fitted, the latest of it.
func (c *Call) doneNow() []doneWork {
	var out []doneWork
	for _, w := range c.done[max(0, len(c.done)-mostRenewals):] {
		if c.spend(100); c.alive(w.entry) {
			out = append(out, w)
		}
	}
	return out
}

// untreated lists what was found, is still there and has no work written down
// for it, while work was written down for something else. Work in words that
// fit no cause at all may be for any of it.
func (c *Call) untreated() []group {
	if len(c.repairs()) == 0 {
		return nil
	}
	now := c.weigh(math.MaxInt)
	still := now.Codes(cause.Supported)
	if len(still) == 0 {
		return nil
	}
	found := c.foundOnce()
	mended := false
	var out []group
	for _, g := range groupsOf(&found) {
		if c.treats(g) {
			mended = true
			continue
		}
		g = slices.DeleteFunc(g, func(s *cause.Standing) bool {
			return s.Last || s.Cause.Consequence || !among(still, s.Cause.Code)
		})
		if len(g) > 0 {
			out = append(out, g)
		}
	}
	if !mended && !c.worksElsewhere() {
		return nil
	}
	return append(out, c.foundSince(&now, out)...)
}

// failedAlone lists the parts, and the windings of machines that the call is not about,
// that read bad, show no cause by that, and were not renewed since: where work was written down, or the call is closed, they are still there.
func (c *Call) failedAlone() []string {
	if len(c.repairs()) == 0 && !c.Closed() {
		return nil
	}
	var list []*judged
	for _, key := range c.subjects {
		c.spend(2)
		kind, _, _ := strings.Cut(key, "\x00")
		j := c.judged[key]
		if j == nil || j.verdict.Word != verdict.Failed || c.replacedSince(key, j) {
			continue
		}
		if among(oneParts, kind) && len(j.verdict.Fact) == 0 || kind == "wind" && ownerOf(key) != c.mainMachine() || kind == "part" && !c.ownGear(key[len("part\x00"):]) {
			list = append(list, j)
		}
	}
	return told(list, true)
}

// foundSince are the causes that what was read or seen since the last repair shows, and
// that no work was for.
func (c *Call) foundSince(now *cause.Result, told []group) (out []group) {
	since := c.since()
	for _, g := range groupsOf(now) {
		g = slices.DeleteFunc(g, func(s *cause.Standing) bool {
			return s.Last || s.Cause.Consequence || slices.ContainsFunc(shows(s), func(f cause.Fact) bool { return f.Entry <= since }) ||
				slices.ContainsFunc(told, func(o group) bool {
					return slices.ContainsFunc(o, func(t *cause.Standing) bool { return t.Cause.Code == s.Cause.Code })
				})
		})
		if len(g) > 0 && !c.treats(g) {
			out = append(out, g)
		}
	}
	return out
}

// worksElsewhere reports whether all that was done is, by its words, work for
// some cause that was not found.
func (c *Call) worksElsewhere() bool {
	done := c.doneNow()
	return len(done) > 0 && !slices.ContainsFunc(done, func(w doneWork) bool { return !w.fits })
}

// foundKey says what the causes found were worked out from, beside what was
// typed before the repairs: all that gives that another meaning later.
type foundKey struct {
	complaint, main                                                    string
	settled, mended, struck, plates, meters, fields, marks, legs, told int
}

// foundOnce is causeFound, worked out again only when something that it rests on
// has changed: it looks back through every repair.
func (c *Call) foundOnce() cause.Result {
	key := foundKey{c.complaint(), c.mainMachine(), c.settled, len(c.mended), len(c.struck), len(c.plates), len(c.meters), len(c.fields), len(c.marks),
		len(c.secondLeg) + c.legsRead(), len(c.seenAt["gas-smell"]) + len(c.seenAt["gas-leak"]) + len(c.seenAt["pole-open"]) + len(c.seenAt["fuse-open"])}
	if key != c.foundKey {
		c.foundKey = key
		c.found, _ = c.causeFound()
	}
	return c.found
}

// kindFound is the complaint that the call's turned out to be: before a repair by
// what was found then.
func (c *Call) kindFound() string {
	if len(c.repairs()) > 0 {
		return cmp.Or(c.foundOnce().Complaint, c.complaint())
	}
	return cmp.Or(c.weigh(math.MaxInt).Complaint, c.complaint())
}

func (c *Call) treats(g group) bool {
	return slices.ContainsFunc(c.doneNow(), func(w doneWork) bool {
		return slices.ContainsFunc(g, func(s *cause.Standing) bool {
			c.spend(500)
			return c.mends(s.Cause, w.text)
		})
	})
}

// leftToMend weighs what was found and not mended, the facts that show what was
// mended left out.
func (c *Call) leftToMend(left []group) cause.Result {
	var keep []cause.Fact
	var codes []string
	for _, g := range left {
		keep = append(keep, g.rests()...)
		for _, s := range g {
			codes = append(codes, s.Cause.Code)
		}
	}
	r := c.weigh(math.MaxInt)
	facts := slices.Clone(c.weighed.facts)
	for i := range r.Standings {
		s := &r.Standings[i]
		if s.State == cause.Supported && !among(codes, s.Cause.Code) {
			facts = slices.DeleteFunc(facts, func(f cause.Fact) bool {
				return slices.Contains(shows(s), f) && !slices.Contains(keep, f)
			})
		}
	}
	return c.weigh0(r.Complaint, facts)
}
