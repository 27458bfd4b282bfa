package call

import (
	"slices"

	"ohmcall/calc/verdict"
)

// judgementsTold are the judgements that the readings of one line bear on, each
// told once.
type judgementsTold struct {
	c        *Call
	reply    *Reply
	done     map[string]bool
	caseWord verdict.Word // of the first pin to the case
	likewise []string     // pins of which that word is told together
}

// tell says what a reading is judged to be, and what it asks for.
func (t *judgementsTold) tell(r *reading) {
	c, reply, word := t.c, t.reply, r.quality.word
	kind, name := c.subject(r)
	if key := kind + "\x00" + name; kind != "" && kind != "wind" && !t.done[key] {
		t.done[key] = true
		if !t.judged(r, kind, name) {
			return
		}
	}
	if c.ofHighVolts(r) {
		reply.add(Ask, r.where()+" is written down; nothing here judges the high-voltage side: it is for who is trained and equipped for it.")
	} else if (kind == "" || kind == motorKind && !r.over) && word == "ohm" && r.b == "" {
		reply.add(Ask, unknownPart(r))
	} else if kind == "" && r.cond.is(directWord) {
		reply.add(Ask, "Direct volts are written down; of them only those at a fan are judged.")
	} else if kind == "" && word == "temp" {
		tellPlace(r, reply)
	}
	c.suspectRange(r, reply)
	if word == "temp" {
		if c.tellCourse(r, reply); r.a == "set" && c.keepsWine() {
			c.rejudge(reply)
		}
	}
	c.tellLineSums(r, reply)
	c.tellLoneAir(r, reply)
}

// judged judges what a reading bears on and tells it; false when another line says
// it for several pins.
func (t *judgementsTold) judged(r *reading, kind, name string) bool {
	c := t.c
	was := c.verdictTold(kind + "\x00" + name)
	j, _ := c.judge(kind, name)
	if kind == splitKind && j != nil && !slices.Contains(j.verdict.Entries, r.entry) {
		return true // it is of those before, which stand
	}
	if kind == "case" && j != nil && r.of != "" {
		switch now := j.verdict.Word; {
		case now == verdict.CannotTell && r.cond.test == 0: // the windings' own note has said it, once for all pins
			t.reply.flag(j.verdict.Fact...)
			return false
		case now == t.caseWord:
			t.likewise = append(t.likewise, r.a)
			t.reply.flag(j.verdict.Fact...)
			return false
		default:
			t.caseWord = now
		}
	}
	// Of a temperature the course counts: the moment is told when it says
	// something new, and after a repair only when it freezes.
	news := j != nil && (j.verdict.Word != was.Word || j.verdict.Text != was.Text)
	if kind != "temp" || news && (len(c.repairs()) == 0 || j.verdict.Word == verdict.Suspect) {
		c.tellVerdict(j, t.reply)
	}
	if kind == "leg" { // what lies between the legs is judged by each of them
		was := c.verdictTold(supplyKey)
		if j, _ := c.judge("supply", "line"); j != nil && j.verdict.Text != was.Text {
			c.tellVerdict(j, t.reply)
		}
	}
	return true
}

// verdictTold is the verdict on a subject as it stands.
func (c *Call) verdictTold(key string) verdict.Verdict {
	if j := c.judged[key]; j != nil {
		return j.verdict
	}
	return verdict.Verdict{}
}
