package notebook

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/call"
)

// fewestCalls is how many whole calls the collection must hold.
const fewestCalls = 25

// TestCalls plays each invented call as a technician would type it and holds
// the call, after each line, against what the trade expects of it. An
// expectation is a line that starts with `#!`; why it is expected stands above
// it in the script.
func TestCalls(t *testing.T) {
	scripts, err := filepath.Glob("testdata/calls/*.call")
	if err != nil {
		t.Fatal(err)
	}
	if len(scripts) < fewestCalls {
		t.Errorf("%d calls, want at least %d", len(scripts), fewestCalls)
	}
	for _, s := range scripts {
		t.Run(strings.TrimSuffix(filepath.Base(s), ".call"), func(t *testing.T) { playCall(t, s) })
	}
}

// playCall applies a script line by line and checks its expectations, then
// the page: it must check clean, and played again give the same bytes.
func playCall(t *testing.T, name string) {
	content, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	p := &played{n: New(Host{Now: wall})}
	expected := 0
	lines := ScriptLines(content)
	for i, line := range lines {
		if want, ok := strings.CutPrefix(line, "#!"); ok {
			expected++
			if fault := p.fault(strings.Fields(want)); fault != "" {
				t.Errorf("%s:%d: %s: %s", name, i+1, strings.TrimSpace(want), fault)
			}
			continue
		}
		if fault := p.do(line); fault != "" {
			t.Errorf("%s:%d: %s: %s", name, i+1, line, fault)
		}
	}
	if expected < 5 {
		t.Errorf("%s expects %d things only", name, expected)
	}
	if !p.n.Call().Closed() {
		t.Errorf("%s does not end with close", name)
	}
	for _, v := range p.n.Call().Record().Verdicts {
		if v.Word == string(verdict.Failed) && strings.HasSuffix(v.Margin, "inside") {
			t.Errorf("%s: %s failed inside its limit %s", name, v.Subject, v.Limit)
		}
	}
	page := p.n.Render()
	r, err := Check(page)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range r.Faults {
		t.Errorf("%s: the page: %s", name, f)
	}
	again := &played{n: New(Host{Now: wall})}
	for _, line := range lines {
		again.do(line)
	}
	if !bytes.Equal(page, again.n.Render()) {
		t.Errorf("%s: a second run gives other bytes: %s", name, firstDifference(string(again.n.Render()), string(page)))
	}
}

// played is a call in the middle of its script.
type played struct {
	n        *Notebook
	last     call.Entry
	standing *standing // of the causes now; nil when not asked since the last line
}

// standing is where the causes are.
type standing struct {
	state map[string]string // by code
	next  string
}

func (p *played) do(line string) (fault string) {
	entries, err := p.n.Do(line)
	switch {
	case err == call.ErrBlank:
		return ""
	case err != nil:
		return "refused: " + err.Error()
	case len(entries) > 0:
		p.last, p.standing = entries[len(entries)-1], nil
	}
	return ""
}

// causes asks a copy of the call, so that the asking is no entry of it.
func (p *played) causes() *standing {
	if p.standing != nil {
		return p.standing
	}
	c := call.New()
	for _, e := range p.n.Call().Entries() {
		c.Apply(e.At, e.Line)
	}
	s := &standing{state: map[string]string{}}
	p.standing = s
	e, err := c.Apply(p.last.At, "causes")
	if err != nil || e.Reply.Table == nil {
		return s
	}
	for _, code := range e.Reply.Causes.RuledOut {
		s.state[code] = string(cause.RuledOut)
	}
	for _, code := range e.Reply.Causes.Open { // those supported among them
		k, _ := cause.By(code)
		for _, row := range e.Reply.Table.Rows {
			if row[0] == k.Name {
				s.state[code] = row[1]
			}
		}
	}
	s.next = e.Reply.Causes.Next
	return s
}

// fault checks one expectation; "" says that it is met.
func (p *played) fault(want []string) string {
	if len(want) == 0 {
		return "no expectation"
	}
	what := strings.Join(want[1:], " ")
	switch want[0] {
	case "supported", "open", "ruled-out":
		return differ(orNone(p.causes().state[what]), want[0])
	case "gone": // ruled out, or no longer among the causes weighed
		if s := p.causes().state[what]; s == string(cause.Open) || s == string(cause.Supported) {
			return "it is " + s
		}
		return ""
	case "next":
		return holds(p.causes().next, what)
	case "not-next":
		return lacks(p.causes().next, what)
	case "reply":
		return holds(p.last.Reply.Plain(), what)
	case "not-reply":
		return lacks(p.last.Reply.Plain(), what)
	case "flag":
		if !slices.Contains(p.last.Reply.Flags, what) {
			return fmt.Sprintf("the flags are %v", p.last.Reply.Flags)
		}
		return ""
	case "no-flag":
		if slices.Contains(p.last.Reply.Flags, what) {
			return fmt.Sprintf("the flags are %v", p.last.Reply.Flags)
		}
		return ""
	}
	return p.recordFault(want, what)
}

// recordFault checks an expectation that the record answers.
func (p *played) recordFault(want []string, what string) string {
	r := p.n.Call().Record()
	switch want[0] {
	case "result":
		return differ(r.Header.Result, what)
	case "left":
		return differ(r.Header.Left, what)
	case "outcome":
		for _, f := range r.Outcome {
			what = strings.TrimPrefix(what, f.Label+": ")
		}
		return holds(fmt.Sprint(r.Outcome), what)
	case "first-alert":
		return holds(append(r.Alerts, "")[0], what)
	case "alert":
		return holds(strings.Join(r.Alerts, "\n"), what)
	case "not-alert":
		return lacks(strings.Join(r.Alerts, "\n"), what)
	case "missing":
		if what == "none" {
			return differ(strings.Join(r.Missing, "; "), "")
		}
		return holds(strings.Join(r.Missing, "; "), what)
	case "found":
		var found []string
		for _, k := range r.Causes {
			if k.State == string(cause.Supported) {
				found = append(found, k.Code)
			}
		}
		if !slices.Contains(found, what) {
			return fmt.Sprintf("found was %v", found)
		}
		return ""
	case "state":
		for _, m := range r.Machines {
			if m.Name == want[1] {
				return differ(m.State, strings.Join(want[2:], " "))
			}
		}
		return "no such machine was read"
	case "role":
		for _, m := range r.Machines {
			for _, pin := range m.Pins {
				if pin.Name == want[1] {
					return differ(orNone(pin.Role), want[2])
				}
			}
		}
		return "no such pin was read"
	}
	return "no such expectation"
}

func orNone(s string) string {
	if s == "" {
		return "not listed"
	}
	return s
}

func differ(is, want string) string {
	if is == want {
		return ""
	}
	return fmt.Sprintf("it is %q", is)
}

func holds(is, fragment string) string {
	if strings.Contains(is, fragment) {
		return ""
	}
	return fmt.Sprintf("it is %q", is)
}

func lacks(is, fragment string) string {
	if strings.Contains(is, fragment) {
		return fmt.Sprintf("it is %q", is)
	}
	return ""
}

// howPlate is what a plate must say for the example readings of the tests.
const howPlate = "plate volts 115, amps 1.2, lra 12, watts 450, r25 10k, beta 3950, gas R-600a, mfd start 88-108"

// howElse is what else must be known for the example of a test.
var howElse = map[string][]string{
	"interlocks": {"unit microwave oven"},
	"air-split":  {"unit window air conditioner"}, "air-rise": {"unit room heat pump", "saw set to heat"}, "phases": {"plate volts 230, phase 3"}, "legs": {"plate volts 230, phase 3"}, "igniter-amps": {"plate igniter 3.2-3.6"},
	"fan-noise": {"unit fridge", "fault noisy"},
}

// TestProposedLinesLead types, in a call of its own, the line that each
// proposed test gives as an example: it has to be taken, and to establish
// something that the test is made for.
func TestProposedLinesLead(t *testing.T) {
	for _, x := range cause.Tests() {
		p := &played{n: New(Host{Now: wall})}
		for _, line := range append([]string{howPlate, "plate mfd C1 12 5%", "volt line 118.2"}, append(howElse[x.Code], x.How)...) {
			if fault := p.do(line); fault != "" {
				t.Fatalf("%s: %s: %s", x.Code, line, fault)
			}
		}
		got := append([]string(nil), p.last.Reply.Flags...)
		for _, w := range p.last.Reply.Windings {
			got = append(got, "windings-"+w.State)
		}
		for i, f := range got {
			if k, ok := cause.Lookup(f); ok {
				got[i] = k.Code
			}
		}
		if !slices.ContainsFunc(got, func(f string) bool { return slices.Contains(x.Outcomes, f) || slices.Contains(x.Vague, f) }) {
			t.Errorf("%s: %q establishes %v, none of %v", x.Code, x.How, got, x.Outcomes)
		}
	}
}
