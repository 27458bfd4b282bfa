package repl

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/call"
)

// prepared is a completer in a call that holds the lines given.
func prepared(t testing.TB, lines ...string) *Completer {
	t.Helper()
	p := newTypist()
	for _, l := range lines {
		if _, err := p.n.Do(l); err != nil {
			t.Fatalf("%q: %v", l, err)
		}
	}
	p.k.Parts = func(model string) []string {
		if model == "INVENTED-300" {
			return []string{"start device SAMPLE-SD1", "thermostat SAMPLE-T9"}
		}
		return nil
	}
	p.k.Scripts = func() []string { return []string{"refrigeration.call", "laundry.call"} }
	p.k.Snippets = func() []string { return []string{"my_sag(", "my_tariff"} }
	return p.k
}

func TestCompletion(t *testing.T) {
	pins := []string{"ohm A B 3.45", "ohm A C 6.5"}
	rows := []struct {
		name  string
		lines []string
		head  string
		want  string
		list  []string // words that must be listed; nil when nothing may be
	}{
		{"a new call wants its client", nil, "", "client ", nil},
		{"then what follows it", []string{"client Petra Placeholder"}, "", "site ", nil},
		{"the third pin has no name yet", []string{"ohm A B 3.45"}, "", "ohm A ", nil},
		{"the pair wanted", pins, "", "ohm B C ", nil},
		{"the pair wanted, behind the word", pins, "ohm ", "ohm B C ", nil},
		{"only one command", nil, "vol", "volt ", nil},
		{"readings before other words", nil, "o", "ohm ", []string{"ohm", "on"}},
		{"a command behind a time", nil, "14:30 tem", "14:30 temp ", nil},
		{"a command behind a condition", nil, `when is(gas, "R-600a"): ne`, `when is(gas, "R-600a"): need `, nil},
		{"a pin of the pair wanted", pins, "ohm B ", "ohm B C ", nil},
		{"pins in either case", pins, "ohm b ", "ohm b C ", nil},
		{"a second reading, the first is taken", pins, "ohm B C 3.1, B c", "ohm B C 3.1, B case ", nil},
		{"a condition", nil, "amp comp 14 p", "amp comp 14 peak", nil},
		{"a place", nil, "temp fr", "temp fr", []string{"freezer", "fridge"}},
		{"a finding of several words", nil, "saw cond-fan r", "saw cond-fan runs", nil},
		{"what the findings share", nil, "saw comp ", "saw comp ", []string{"comp hot", "comp cold"}},
		{"a key of the plate", nil, "plate volts 115, am", "plate volts 115, amps ", nil},
		{"a word of the plate", nil, "plate start p", "plate start ptc", nil},
		{"a part of this model's earlier calls", []string{"model INVENTED-300"}, "part th", "part thermostat SAMPLE-T9", nil},
		{"no part of another model", []string{"model OTHER-1"}, "part th", "part th", nil},
		{"a file", nil, "use ref", "use refrigeration.call", nil},
		{"entries with their text", pins, "strike ", "strike ", []string{"2  ohm A C 6.5", "1  ohm A B 3.45"}},
		{"a choice", nil, "show read", "show readings", nil},
		{"a role", pins, "mark A com", "mark A common", nil},
		{"a function in a sum", nil, "120V / cap_l", "120V / cap_load(", nil},
		{"a name of this call", []string{"let drop = 3V"}, "2 * dro", "2 * drop", nil},
		{"a kept function", nil, "2 * my_s", "2 * my_sag(", nil},
		{"a kept value", nil, "2 * my_t", "2 * my_tariff", nil},
		{"a kept name that the call has taken in", []string{"def my_sag(a) = a"}, "2 * my_s", "2 * my_sag(", nil},
		{"help on a kept name", nil, "help my_s", "help my_sag ", nil},
		{"help on a name of this call", []string{"let drop = 3V"}, "help dro", "help drop ", nil},
		{"a name in expect", []string{"let drop = 3V"}, "expect dro", "expect drop", nil},
	}
	for _, r := range rows {
		got, list := prepared(t, r.lines...).Complete(r.head)
		if got != r.want {
			t.Errorf("%s: %q becomes %q, want %q (listed %q)", r.name, r.head, got, r.want, list)
		}
		if r.list == nil && len(list) > 0 {
			t.Errorf("%s: lists %q", r.name, list)
		}
		for _, w := range r.list {
			if !slices.Contains(list, w) {
				t.Errorf("%s: %q is not listed in %q", r.name, w, list)
			}
		}
	}
}

// TestSilence holds that Tab does nothing where there is nothing to offer.
func TestSilence(t *testing.T) {
	k := prepared(t, "client Petra Placeholder", "ohm A B 3.45")
	for _, head := range []string{
		"client Otto", "note anything goes ", "did replaced ", "ohm A B 3.4", "120V / ", "120V / 3", "xyzzy", "xyzzy plugh ", "strike 1 ",
		`expect 1 < 2 "mean`, "part start device, 1, ", "meter ohm 0.9% 2", "close ", "safe ", "unit refrig", "ohm \x1b[A ", "# remark ", "note \u202e", "C 6.5",
	} {
		if got, list := k.Complete(head); got != head || len(list) > 0 {
			t.Errorf("%q becomes %q and lists %q", head, got, list)
		}
	}
}

// TestTabGoesThroughWhatIsWanted holds that Tab on its own offer goes on to
// the next and comes round.
func TestTabGoesThroughWhatIsWanted(t *testing.T) {
	k := prepared(t, "fault clicks and does not cool", "ohm A B 3.45", "ohm A C 6.5", "ohm B C 3.1")
	var seen []string
	line := ""
	for range 40 {
		line, _ = k.Complete(line)
		if slices.Contains(seen, line) {
			break
		}
		seen = append(seen, line)
	}
	for _, want := range []string{"ohm A case ", "ohm B case ", "ohm C case ", "client "} {
		if !slices.Contains(seen, want) {
			t.Errorf("%q is not offered: %q", want, seen)
		}
	}
	if line != seen[0] {
		t.Errorf("Tab comes round to %q, not to %q", line, seen[0])
	}
}

// TestOfferNeverHoldsAFact holds that what Tab offers is not a whole entry
// with a value or a finding in it: those only a person can know.
func TestOfferNeverHoldsAFact(t *testing.T) {
	for _, complaint := range []string{"clicks and does not cool", "does not heat", "leaks water", "drum does not turn", "trips the breaker", "runs all the time"} {
		for _, more := range [][]string{nil, {"ohm A B 3.45"}, {"did replaced a part"}} {
			p := newTypist()
			for _, l := range append([]string{"fault " + complaint}, more...) {
				if _, err := p.n.Do(l); err != nil {
					t.Fatal(err)
				}
			}
			for _, s := range p.n.Call().Suggest() {
				word, _, _ := strings.Cut(s, " ")
				cmd := call.Find(word)
				if cmd == nil {
					t.Errorf("%q is offered and is no command", s)
					continue
				}
				if _, err := p.n.Call().Parse(s); err == nil && cmd.Word != "safe" && cmd.Word != "close" && !strings.HasSuffix(s, " ") {
					t.Errorf("%q is offered as a whole line", s)
				}
				if slices.Contains(readingWords, word) && strings.ContainsAny(s, "~.") {
					t.Errorf("%q holds a value", s)
				}
			}
		}
	}
}
