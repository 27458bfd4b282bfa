package cause

import "fmt"

// Why explains where a cause stands: a line for its state, one for each fact
// for and against it, and its source. It gives nil for a cause that was not
// weighed.
func Why(code string, r Result) []string {
	for i := range r.Standings {
		s := &r.Standings[i]
		if s.Cause.Code != code {
			continue
		}
		lines := []string{s.headline()}
		for _, f := range s.For {
			lines = append(lines, fmt.Sprintf("for: %s (entry %d)%s", plain(f.Code), f.Entry, r.disputes(f)))
		}
		for _, f := range s.Against {
			lines = append(lines, fmt.Sprintf("against: %s (entry %d)%s", plain(f.Code), f.Entry, r.disputes(f)))
		}
		if s.Cause.Note != "" {
			lines = append(lines, "note: "+s.Cause.Note)
		}
		return append(lines, "source: "+s.Cause.Source)
	}
	return nil
}

// headline says the state in one sentence.
func (s *Standing) headline() string {
	name := s.Cause.Name
	switch {
	case s.Beside:
		return name + " is ruled out as the reason for the complaint, yet a finding or reading shows it: mend it as well"
	case s.State == RuledOut:
		return name + " is ruled out: it cannot stand beside what was found"
	case s.Last:
		return name + " is supported: every other listed cause is ruled out, and it predicts what was found"
	case s.State == Supported:
		return name + " is supported: a finding or reading shows it"
	case len(s.For) > 0:
		return name + " is open: what was found fits it, and nothing rules it out"
	}
	return name + " is open: nothing rules it out yet"
}

// disputes names the facts that contradict f.
func (r *Result) disputes(f Fact) string {
	text := ""
	for _, c := range r.Contradictions {
		other := c.B
		if c.B == f {
			other = c.A
		} else if c.A != f {
			continue
		}
		text += fmt.Sprintf(", disputed by %s (entry %d)", plain(other.Code), other.Entry)
	}
	return text
}
