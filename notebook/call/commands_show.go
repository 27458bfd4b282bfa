package call

import (
	"math"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

func applyShow(c *Call, a *args) (*Reply, error) {
	r := c.Record()
	reply := &Reply{}
	switch a.text("WHAT") {
	case "":
		return c.Standing(), nil
	case "readings":
		reply.Table = &Table{Head: []string{"Entry", "Kind", "Where", "Value", "Condition"}}
		for _, m := range r.Readings {
			at := m.A
			if m.B != "" {
				at += "–" + m.B
			}
			if m.Of != "" && m.Of != defaultMachine {
				at = m.Of + " " + at
			}
			cond := m.Condition
			if m.Struck != "" {
				cond = strings.TrimPrefix(cond+", struck: "+m.Struck, ", ")
			}
			reply.Table.Rows = append(reply.Table.Rows, []string{itoa(m.Entry), m.Kind, at, m.Shown, cond})
		}
	case "verdicts":
		reply.Table = &Table{Head: []string{"What", "Verdict", "Reason", "Limit", "Margin, × doubt"}}
		for _, v := range r.Verdicts {
			reply.Table.Rows = append(reply.Table.Rows, []string{v.Subject, v.Word, v.Text, v.Limit, v.Margin})
		}
	case "sums":
		reply.Table = &Table{Head: []string{"Entry", "Sum", "Value", "Meaning"}}
		for _, s := range r.Sums {
			reply.Table.Rows = append(reply.Table.Rows, []string{itoa(s.Entry), s.Text, s.Value, s.Meaning})
		}
	case "parts":
		reply.Table = &Table{Head: []string{"Entry", "Part", "Count", "Price"}}
		for _, p := range r.Parts {
			price := ""
			if p.Priced {
				price = record.Money(p.Price)
			}
			reply.Table.Rows = append(reply.Table.Rows, []string{itoa(p.Entry), p.Called(), number(p.Count), price})
		}
	case "wiring":
		reply.Table = &Table{Head: []string{"Wire", "Role", "Pin", "Remark"}}
		for _, w := range r.Wiring {
			reply.Table.Rows = append(reply.Table.Rows, []string{w.Wire, w.Role, w.At, w.Note})
		}
	case "cautions":
		for _, k := range r.Cautions {
			reply.add(Caution, k.Text+" ("+k.Source+", given at entry "+itoa(k.Entry)+")")
		}
	case "curve":
		for _, k := range r.Curves {
			reply.add(Plain, k.Place+": "+k.Verdict+"; "+k.Reason+".")
			for _, l := range k.Plot {
				reply.add(Plain, strings.TrimRight(l, " "))
			}
		}
		if len(r.Curves) == 0 {
			reply.add(Ask, "Three timed temperatures of one place make a curve: temp freezer 12C, later temp freezer 8C, …")
		}
	case "log":
		for _, e := range r.Log {
			struck := ""
			if e.Struck != "" {
				struck = "   (struck: " + e.Struck + ")"
			}
			reply.add(Plain, itoa(e.N)+"  "+r.Clock(e.At)+"  "+e.Line+struck)
		}
	}
	if len(reply.Lines) == 0 && (reply.Table == nil || len(reply.Table.Rows) == 0) {
		return (&Reply{}).add(Plain, "None yet."), nil
	}
	return reply, nil
}

// Standing says in a few lines where the call stands.
func (c *Call) Standing() *Reply {
	r := &Reply{}
	if len(c.entries) == 0 {
		return r.add(Plain, "A new call; nothing is written down yet.")
	}
	if s := c.unsafeNow(); s != "" {
		r.add(Warn, s)
	}
	r.add(Plain, itoa(len(c.entries))+" entries, the last at "+c.entries[len(c.entries)-1].At.Format("2006-01-02 15:04")+": "+clip(c.entries[len(c.entries)-1].Line, 60))
	who := strings.Trim(strings.Join([]string{c.last("unit"), c.last("client")}, ", "), ", ")
	if who != "" {
		r.add(Plain, "Unit: "+who)
	}
	if f := c.last("fault"); f != "" {
		r.add(Plain, "Complaint: "+f)
	}
	for _, of := range c.machineNames() {
		m := c.machines[of]
		if len(m.result.Notes) > 0 {
			r.add(toneOf(m.result), of+": "+m.result.Notes[0])
		}
	}
	res := c.weigh(math.MaxInt)
	if names := causeNames(res); len(names) > 0 {
		r.add(Warn, "Cause supported: "+strings.Join(names, "; "))
	} else if n := len(res.Codes(cause.Open)); n > 0 {
		r.add(Plain, itoa(n)+" causes open, "+itoa(len(res.Codes(cause.RuledOut)))+" ruled out")
	}
	if s := c.nextStep(&res); s != "" {
		r.add(Ask, "Next: "+s)
	}
	if m := c.missing(); len(m) > 0 {
		r.add(Ask, "Missing: "+itoa(len(m))+" (missing lists them)")
	}
	return r
}

// unsafeNow says what makes the unit unsafe as it stands and how it was left, ""
// when nothing does.
func (c *Call) unsafeNow() string {
	list := c.unsafe()
	if len(list) == 0 {
		return ""
	}
	for i := range list {
		list[i] = clip(list[i], headerItem)
	}
	left := "how it was left is not written down"
	if as, n := c.leftAs(); n > 0 {
		left = "left " + as + atEntry(n)
		if strings.HasPrefix(list[0], "left ") {
			left = ""
		}
	}
	if n := len(list) - mostTold; n > 0 {
		list = append(list[:mostTold:mostTold], itoa(n)+" more, see the page")
	}
	if left != "" {
		list = append(list, left)
	}
	return "UNSAFE: " + strings.Join(list, "; ")
}

// mostTold is how many things that are unsafe are told at once.
const mostTold = 5

// Drawing shows the terminals of the machine at hand.
func (c *Call) Drawing() []string {
	for _, m := range c.Record().Machines {
		if m.Name == c.machineAtHand() {
			return record.Drawing(m)
		}
	}
	return nil
}
