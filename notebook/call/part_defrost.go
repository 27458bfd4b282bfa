package call

import (
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
)

// judgeDefrost judges a defrost thermostat by how cold it was. A reading that
// decides nothing leaves standing what an earlier one of the same part did.
func judgeDefrost(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	rep, last := c.repairs(), latest(rs)
	out := c.defrost(name, last)
	for i := len(rs) - 2; i >= 0 && out.Word == verdict.CannotTell && phase(rep, rs[i].entry) == phase(rep, last.entry); i-- {
		if v := c.defrost(name, rs[i]); v.Word != verdict.CannotTell {
			v.Also = append(v.Also, "entry "+itoa(last.entry)+": "+out.Text)
			return v
		}
	}
	return out
}

func (c *Call) defrost(name string, r *reading) verdict.Verdict {
	in := judge.DefrostIn{Ohms: c.value(r)}
	if i := strings.IndexAny(name, "0123456789"); i >= 0 {
		in.Name = name[i:]
	}
	switch {
	case r.cond.is("cold"):
		in.State = judge.Cold
	case r.cond.is("hot"):
		in.State = judge.Hot
	}
	in.Want = wanted(r)
	if r.cond.hasAt {
		v := c.temperatureBeside(r)
		in.Celsius = &v
	}
	return judge.Defrost(in)
}

// maybeDefrost tells a limit that may be a defrost thermostat, by the complaint,
// and of which nobody said that it was cold or should be closed.
func (c *Call) maybeDefrost(name string, r *reading) bool {
	return strings.HasPrefix(name, "limit") && cause.KeepsNoCold(c.complaint()) &&
		!r.cond.is("closed") && !r.cond.is("cold") && !(r.cond.hasAt && r.cond.at <= 0)
}
