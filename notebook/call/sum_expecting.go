package call

import (
	"cmp"
	"errors"

	"ohmcall/calc/source"
	"ohmcall/calc/sum"
	"ohmcall/notebook/script"
)

// expectation is a judgement written down with its outcome. One that wants for
// a reading waits, and is judged when that is there.
type expectation struct {
	entry   int
	worked  int // in which entry it was worked out
	line    *script.Line
	text    string
	col     int // of text in the line
	meaning string
	waits   string  // what it still waits for
	from    []basis // what the outcome rests on
	by      string
	met     sum.Truth
	why     string // why it cannot be told
}

// mostWaiting is how many expectations may wait: each is looked at anew with
// every reading.
const mostWaiting = 100

func applyExpect(c *Call, a *args) (*Reply, error) {
	p := a.get("CONDITION")
	e := &expectation{entry: c.entry, line: a.line, text: p.text, col: p.col, meaning: a.text("MEANING")}
	r := &Reply{}
	err := c.workOut(e, r)
	if err == nil {
		return r, nil
	}
	if !unreadYet(err) {
		return nil, err
	}
	if len(c.waiting) >= mostWaiting {
		return nil, p.errorf("at most %d expectations can wait for a reading", mostWaiting)
	}
	e.waits = faultOf(err)
	c.waiting = append(c.waiting, e)
	return r.add(Ask, "Waiting: "+e.meaning+"; "+e.waits+".").flag("expectation-waits"), nil
}

// workOut works an expectation out as things are, and says what it came to.
func (c *Call) workOut(e *expectation, r *Reply) error {
	met, err := c.guard(e.line)
	if err != nil {
		return err
	}
	if g := guarded(met, "nothing expected"); g != nil {
		r.Lines = append(r.Lines, g.Lines...)
		return nil
	}
	s := &scope{c: c, text: e.text}
	if e.met, err = sum.Condition(e.text, s); err != nil {
		return shifted(err, e.col)
	}
	e.from, e.by, e.waits, e.worked = s.used, s.by(), "", c.entry
	c.expects = append(c.expects, e)
	c.tellOutcome(e, r)
	for _, d := range s.doubts() {
		r.add(Warn, d)
	}
	return nil
}

func (c *Call) tellOutcome(e *expectation, r *Reply) {
	what := e.meaning
	if e.entry != c.entry {
		what += atEntry(e.entry)
	}
	switch e.met {
	case sum.Yes:
		r.add(Good, "Met: "+what+".").flag("expectation-met")
	case sum.No:
		r.add(Bad, "Not met: "+what+".").flag("expectation-not-met")
	default:
		r.add(Ask, "Cannot tell: "+what+"; "+cmp.Or(e.why, tooClose)+".").flag("expectation-unsure")
	}
}

// judgeWaiting judges the expectations whose readings are there now.
func (c *Call) judgeWaiting(r *Reply) {
	list := c.waiting
	c.waiting = nil
	for _, e := range list {
		var err error
		if c.alive(e.entry) {
			if err = c.workOut(e, r); err == nil {
				continue
			}
			e.waits = faultOf(err)
		}
		if err == nil || unreadYet(err) {
			c.waiting = append(c.waiting, e)
			continue
		}
		e.met, e.why, e.waits = sum.Unsure, e.waits, "" // such as OL, which is no number
		c.expects = append(c.expects, e)
		c.tellOutcome(e, r)
	}
}

// unreadYet reports whether a condition only wants for a reading or a plate
// value that may come later.
func unreadYet(err error) bool {
	var at *source.Error
	return errors.As(err, &at) && at.Early
}

// faultOf is what is wrong, without the hint.
func faultOf(err error) string {
	var at *source.Error
	if errors.As(err, &at) {
		return at.Msg
	}
	return err.Error()
}
