package cause

import (
	"slices"
	"testing"
)

// An oven that stays cold is asked about what explains a cold oven before
// vents, which explain one that heats slowly.
func TestSignsSayWhatIsTestedFirst(t *testing.T) {
	for _, c := range []struct {
		name, complaint, facts string
		heard                  []string
		next                   string
	}{
		{"seen cold", "no-heat", "does-not-heat supply-sound light-works", nil, "heater-ohms"},
		{"said cold", "no-heat", "supply-sound light-works", []string{"does-not-heat"}, "heater-ohms"},
		{"said slow", "no-heat", "supply-sound light-works", []string{"heats-slowly"}, "airflow"},
		{"nothing said", "no-heat", "supply-sound", nil, "airflow"},
		{"two legs take no lamp", "no-heat", "does-not-heat two-legs", nil, "heater-ohms"},
	} {
		r := Weigh(c.complaint, facts(c.facts), c.heard...)
		if r.Next == nil || r.Next.Code != c.next {
			t.Errorf("%s: next %v (%s), want %s", c.name, r.Next, r.NextWhy, c.next)
		}
	}
}

// What the customer said explains and does nothing else.
func TestHeardEliminatesNothing(t *testing.T) {
	all := make([]string, 0, len(seen()))
	for _, f := range seen() {
		all = append(all, f.Code)
	}
	randomWeighings(t, 500, func(c Complaint, f []Fact, r Result) {
		h := Weigh(c.Code, f, all...)
		for i := range r.Standings {
			if r.Standings[i].State != h.Standings[i].State || len(r.Standings[i].For) != len(h.Standings[i].For) {
				t.Fatalf("%s: %s is %s, with hearsay %s", c.Code, r.Standings[i].Cause.Code, r.Standings[i].State, h.Standings[i].State)
			}
		}
	})
}

func TestHeard(t *testing.T) {
	for text, want := range map[string][]string{
		"clicks and does not cool":    {"clicks", "does-not-cool"},
		"stays cold, does not heat":   {"does-not-heat"},
		"not heating":                 {"does-not-heat"},
		"never hums":                  nil,
		"the light works, no cooling": {"does-not-cool", "light-works"},
		"":                            nil,
	} {
		if got := Heard(text); !slices.Equal(got, want) {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// A reading that could not tell is not asked for again while another test
// tells, and is when none does.
func TestUndecidedIsRepeatedLast(t *testing.T) {
	base := "does-not-heat two-legs heater-undecided heater-insulation-sound sensor-sound switch-closed airflow-clear connections-sound"
	r := Weigh("no-heat", facts(base))
	if r.Next == nil || r.Next.Code == "heater-ohms" || r.Repeat {
		t.Errorf("first: %v (%s)", r.Next, r.NextWhy)
	}
	r = Weigh("no-heat", facts(base+" supply-sound sag-sound thermostat-closed limit-undecided"))
	if r.Next == nil || r.Next.Code != "heater-ohms" && r.Next.Code != "limit-ohms" || !r.Repeat {
		t.Errorf("last: %v, repeat %v (%s)", r.Next, r.Repeat, r.NextWhy)
	}
}

// An ordinary meter looks first, the insulation tester where that found nothing.
func TestOrdinaryMeterBeforeTheTester(t *testing.T) {
	f := "trips-only-when-called residual-trips holds-unplugged plug-to-plug-sound cord-sound"
	seen := map[string]int{}
	for step := 1; step < 12; step++ {
		r := Weigh("trips-breaker", facts(f))
		if r.Next == nil {
			break
		}
		seen[r.Next.Code] = step
		switch r.Next.Code {
		case "case-ohms":
			f += " insulation-no-gross-fault"
		case "heater-case":
			f += " heater-no-gross-fault"
		case "insulation-tester":
			f += " insulation-sound"
		case "heater-tester":
			f += " heater-insulation-sound"
		case "winding-ohms":
			f += " windings-sound"
		case "other-load":
			f += " holds-with-other-load"
		default:
			step = 12 // both are behind it, or the check below fails
		}
	}
	for first, then := range map[string]string{"case-ohms": "insulation-tester", "heater-case": "heater-tester"} {
		if seen[first] == 0 || seen[then] == 0 || seen[first] > seen[then] {
			t.Errorf("%s at step %d, %s at step %d", first, seen[first], then, seen[then])
		}
	}
}

// It does not start, is left alone for a while and starts: nothing in that
// contradicts itself.
func TestStartsAfterAWait(t *testing.T) {
	r := Weigh("no-start", facts("does-not-start starts-after-wait"))
	if len(r.Contradictions) > 0 || !slices.Contains(r.Codes(Supported), "pressure-unequalised") {
		t.Errorf("contradictions %v, supported %v", r.Contradictions, r.Codes(Supported))
	}
}

func TestPersists(t *testing.T) {
	for _, c := range []struct {
		complaint, code string
		want            bool
	}{
		{"no-start", "clicks", true}, {"no-start", "hums", true}, {"no-start", "silent", true}, {"no-start", "starts-and-runs", false},
		{"no-start", "windings-sound", false}, {"no-start", "cond-fan-runs", false}, {"no-heat", "does-not-heat", true}, {"no-heat", "heats-up", false},
		{"no-cool", "will-not-reach", true}, {"no-cool", "cools-down", false}, {"no such", "clicks", false},
	} {
		if got := Persists(c.complaint, c.code); got != c.want {
			t.Errorf("%s, %s: %v", c.complaint, c.code, got)
		}
	}
	for code := range passing() {
		if f, ok := Lookup(code); !ok || f.Code != code {
			t.Errorf("%s is not in the vocabulary", code)
		}
	}
}
