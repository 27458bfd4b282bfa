package cause

import (
	"slices"
	"strings"
	"testing"
)

func TestFindFinding(t *testing.T) {
	rows := []struct{ text, code, matched string }{
		{"clicks", "clicks", "clicks"},
		{"cond-fan runs", "cond-fan-runs", "cond fan runs"},
		{"Condenser Fan  runs", "cond-fan-runs", "cond fan runs"},
		{"plugged in extension lead", "long-cord", "plugged in extension lead"},
		{"plugged straight in wall", "plugged-direct", "plugged straight in wall"},
		{"relay contacts burnt", "device-burnt", "relay contacts burnt"},
		{"condenser packed with lint", "condenser-dirty", "cond packed with lint"},
		{"comp buzzing", "hums", "comp buzzing"},
		{"comp hot", "comp-hot", "comp hot"},
		{"comp hot, over 80 C", "comp-hot", "comp hot"},
		{"frost none", "frost-none", "frost none"},
		{"frost partial", "frost-partial", "frost partial"},
		{"frost heavy", "frost-heavy", "frost heavy"},
		{"no start on other outlet", "no-start-on-other-outlet", "no start on other outlet"},
		{"no start", "does-not-start", "no start"},
		{"won’t start", "does-not-start", "doesn't start"},
		{"wont start", "does-not-start", "doesn't start"},
		{"runs all the time", "runs-all-the-time", "runs all the time"},
		{"runs", "starts-and-runs", "runs"},
		{"clicks every three minutes", "clicks", "clicks"},
		{"clicks no more", "", ""},
		{"water on the control board", "", ""},
		{"water on wires", "", ""},
		{"water on", "tap-open", "water on"},
		{"water on at the valve", "tap-open", "water on"},
		{"burner stays on when knob is off", "heats-when-off", "burner stays on when knob off"},
		{"burner stays on", "", ""},
		{"element glows with knob off", "heats-when-off", "element glows with knob off"},
		{"element glows", "heats-up", "element glows"},
		{"oven wouldnt shut off", "heats-when-off", "oven doesn't shut off"},
		{"shock absorbers worn", "suspension-worn", "damper worn"},
		{"igniter sparks", "igniter-glows", "igniter spark"},
		{"sparks at the relay", "smoke", "sparks"},
		{"frost heavy not seen", "", ""},
		{"owner says it clicks", "", ""},
		// What limits a good finding leaves nothing of it; a bad one stays.
		{"starts sometimes", "", ""},
		{"starts after 3 tries", "", ""},
		{"starts hard", "", ""}, {"starts every other try", "", ""}, {"starts 2 out of 5 times", "", ""}, {"starts some days", "", ""}, {"starts most of the time", "", ""},
		{"starts every time", "starts-and-runs", "starts"}, {"starts right away", "starts-and-runs", "starts"}, {"starts with hard start kit", "starts-with-kit", "starts with hard start kit"},
		{"runs backwards", "turns-wrong-way", "runs backwards"},
		{"comp runs 2 min then off on overload", "", ""},
		{"cools down to 45F only", "", ""},
		{"cools down slowly", "cools-slowly", "cools down slowly"},
		{"cooling fan stuck", "", ""},
		{"connections tight except common", "", ""},
		{"gasket sound except lower corner", "", ""},
		{"frost even on half of coil", "", ""},
		{"frost partial, only at the inlet", "frost-partial", "frost partial"},
		{"condenser warm only at first pass", "", ""},
		{"evap fan runs slow", "", ""},
		{"drive fault none", "", ""},
		{"no gas smell except at the valve", "", ""},
		{"gas smell only when lit", "gas-smell", "gas smell"},
		{"clicks sometimes", "clicks", "clicks"},
		{"spins slowly", "", ""},
		{"cond fan runs when I push it", "", ""},
		{"drains when I lift the hose", "", ""},
		{"no leak found yet", "", ""},
		{"trips when heat comes on", "trips-only-when-called", "trips when heat comes on"},
		{"drum turns only when pushed", "", ""},
		{"drum turns free by hand", "load-free", "drum turns free by hand"},
		{"trips breaker", "breaker-tripped", "trips breaker"},
		{"trips gfci", "residual-trips", "trips gfci"},
		{"starts but trips", "cuts-out", "starts but trips"},
		// What names nothing is left out; what says more or less is not taken for it.
		{"still clicks", "clicks", "clicks"},
		{"condenser fan is still", "cond-fan-stopped", "cond fan still"},
		{"the drain is blocked", "drain-blocked", "drain blocked"},
		{"gas is on", "gas-on", "gas on"},
		{"compressor hums loudly", "noisy", "comp hums loudly"},
		{"compressor humming but running", "", ""},
		{"hums and won't start", "hums", "hums and doesn't start"},
		{"rattles on shut down", "", ""},
		{"rattles at start up", "noisy", "rattles"},
		{"flame goes out after a minute", "", ""},
		{"flame goes out after 10 seconds", "flame-drops-out", "flame goes out"},
		{"flame lights and drops out after 4 s", "flame-drops-out", "flame lights and drops out"},
		{"breaker holds with heat off", "", ""},
		{"breaker holds", "breaker-holds", "breaker holds"},
		{"on extension cord", "long-cord", "on extension"},
		{"phases reversed", "turns-wrong-way", "phases reversed"},
		{"single phasing", "single-phasing", "single phasing"},
		{"suction pressure low", "suction-low", "suction pressure low"},
		{"evap half frosted", "frost-partial", "evap half frosted"},
		{"filter filthy", "airflow-blocked", "filter dirty"},
		{"belt snapped", "belt-broken", "belt broken"},
		{"pump doesn't run", "does-not-start", "pump doesn't run"},
		{"heat goes off at set point", "heat-stops", "heat goes off at set point"},
		{"dispenser gives full stream", "water-filter-clear", "dispenser gives full stream"},
		{"heating element OL", "heater-open", "heating element ol"},
		{"heating relay sticks", "", ""},
		{"water on kitchen floor", "water-on-floor", "water on kitchen floor"},
		{"water on the counter", "", ""},
		{"level switch sticks", "", ""},
		{"cycles on overload", "cuts-out", "cycles on overload"},
		{"cycles on hi limit", "", ""},
		{"bubbles in sight glass", "glass-bubbles", "bubbles in sight glass"},
		{"drains blocked", "drain-blocked", "drains blocked"},
		{"runs constantly", "runs-all-the-time", "runs constantly"},
		{"compressor running hot", "comp-hot", "comp running hot"},
		{"running amps high", "", ""},
		{"no ice on coil", "", ""},
		{"the compressor isn't running", "does-not-start", "comp not running"},
		{"compressor is not starting", "does-not-start", "comp not starting"},
		{"thermal fuse blown", "limit-open", "thermal fuse blown"},
		{"only 120 at block", "leg-missing", "only 120 at block"},
		{"ignitor cracked", "igniter-open", "igniter cracked"},
		{"trips safety switch", "residual-trips", "trips safety switch"},
		{"gpo dead", "outlet-dead", "gpo dead"},
		{"door seal perished", "gasket-leaks", "door seal perished"},
		{"bra wire in pump", "load-jammed", "bra wire in pump"},
		{"", "", ""},
		{"---", "", ""},
	}
	for _, r := range rows {
		code, matched, ok := FindFinding(r.text)
		if code != r.code || matched != r.matched || ok != (r.code != "") {
			t.Errorf("%q gives %q by %q (%v), want %q by %q", r.text, code, matched, ok, r.code, r.matched)
		}
	}
}

// Every wording in the table finds its own code.
func TestEveryWordingIsFound(t *testing.T) {
	for _, f := range Findings() {
		for _, w := range f.Words {
			if code, _, ok := FindFinding(w); !ok || code != f.Code {
				t.Errorf("%q gives %q, want %s", w, code, f.Code)
			}
		}
	}
}

func TestFindFindings(t *testing.T) {
	for text, want := range map[string]string{
		"both fans run":                     "cond-fan-runs evap-fan-runs",
		"Both fans running fine":            "cond-fan-runs evap-fan-runs",
		"fans are running":                  "cond-fan-runs evap-fan-runs",
		"both fans stopped":                 "cond-fan-stopped evap-fan-stopped",
		"cond-fan runs, evap-fan stopped":   "cond-fan-runs evap-fan-stopped",
		"clicks, every 3 minutes":           "clicks",
		"clicks, clicks":                    "clicks",
		"starts, cuts out":                  "cuts-out",
		"clicks, no start":                  "clicks does-not-start",
		"both fans, and the lamp":           "",
		"nothing that anybody has named so": "",
		// Two findings in one breath, and none where either half is none.
		"igniter glows but no flame":  "igniter-glows flame-none",
		"agitates but wont spin":      "agitates does-not-spin",
		"drum turns no heat":          "drum-turns does-not-heat",
		"pump runs and fills":         "pump-runs fills",
		"starts and runs":             "starts-and-runs",
		"fills and drains constantly": "",
		"cools but slowly":            "",
		"both fans going":             "cond-fan-runs evap-fan-runs",
	} {
		if got := strings.Join(FindFindings(text), " "); got != want {
			t.Errorf("FindFindings(%q) = %q, want %q", text, got, want)
		}
	}
}

func FuzzFindFinding(f *testing.F) {
	for _, x := range seen() {
		f.Add(x.Words[0])
	}
	f.Fuzz(func(t *testing.T, text string) {
		code, matched, ok := FindFinding(text)
		if !ok {
			if code != "" || matched != "" {
				t.Fatalf("%q: %q by %q without a finding", text, code, matched)
			}
			return
		}
		if _, known := Lookup(code); !known {
			t.Fatalf("%q gives the unknown code %q", text, code)
		}
		if again, _, _ := FindFinding(matched); again != code {
			t.Fatalf("%q matched %q, which gives %q", text, matched, again)
		}
	})
}

func TestMatch(t *testing.T) {
	rows := []struct{ text, want string }{
		{"clicks, does not cool", "no-start no-cool"},
		{"Fridge clicks every few minutes", "no-start"},
		{"compressor does not start", "no-start"},
		{"hums and trips", "hums-trips"},
		{"runs but does not cool", "no-cool"},
		{"not cooling", "no-cool"},
		{"freezer warm", "no-cool"},
		{"runs all the time", "runs-always"},
		{"never stops", "runs-always"},
		{"too cold, freezes food", "too-cold"},
		{"no power at all", "no-power"},
		{"completely dead", "no-power"},
		{"trips the breaker", "trips-breaker"},
		{"leaks water on floor", "leaks-ices"},
		{"ice in the freezer bottom", "leaks-ices"},
		{"oven does not heat", "no-heat"},
		{"dryer won't heat", "no-heat"},
		{"drum does not turn", "motor-dead"},
		{"oven does not heat, light and clock work", "no-heat"},
		{"fridge is warm, freezer fan scrapes", "no-cool"},
		{"dishwasher wont drain", "no-drain"},
		{"drain pump hums, water stays in", "no-drain hums-trips leaks-ices"},
		{"washer full of water", "no-drain"},
		{"shock from door", "shocks"},
		{"bucket stays empty", "no-dry"},
		{"fridge doesnt cool", "no-cool"},
		{"ice cream soft", "no-cool"},
		{"freezer iced up", "leaks-ices"},
		{"dryer takes too long", "no-heat"},
		{"compressor short cycles", "hums-trips"},
		{"freezer not cold enough, frost heavy on back wall", "no-cool leaks-ices"},
		{"fridge warm freezer fine, fan not running", "no-cool motor-dead"},
		{"fridge is warm, compressor not running", "no-start no-cool"},
		{"no spin", "motor-dead"},
		{"smells odd", ""},
		{"does not smell good when the doors turn", ""},
		{"", ""},
	}
	for _, r := range rows {
		var codes []string
		for _, h := range Hits(r.text) {
			c := h.Complaint
			codes = append(codes, c.Code)
		}
		if got := strings.Join(codes, " "); got != r.want {
			t.Errorf("%q matches %q, want %q", r.text, got, r.want)
		}
	}
}

func TestRefine(t *testing.T) {
	for _, r := range []struct{ complaint, facts, want string }{
		{"no-start", "protector-reset windings-sound", "hums-trips"},
		{"no-start", "protector-open", "no-start"},
		{"no-cool", "protector-reset", "no-cool"},
		{"no-cool", "overload-reset", "hums-trips"},
		{"no-cool", "overload-reset cools-slowly", "no-cool"},
		{"no-power", "breaker-tripped", "trips-breaker"},
		{"no-heat", "breaker-tripped", "trips-breaker"},
		{"no-heat", "breaker-tripped breaker-holds", "no-heat"},
		{"no-heat", "breaker-tripped leg-missing", "no-heat"},
		{"no-power", "breaker-tripped supply-sound", "no-power"},
		{"no-cool", "clicks", "no-start"},
		{"no-cool", "silent", "no-start"},
		{"no-cool", "hums", "hums-trips"},
		{"no-cool", "hums starts-and-runs", "no-cool"},
		{"no-cool", "leg-lost", "three-phase"},
		{"runs-always", "phases-unbalanced", "three-phase"},
		{"runs-always", "temp-above", "no-cool"},
		{"runs-always", "temp-above cycles-off", "runs-always"},
		{"leaks-ices", "breaker-tripped", "leaks-ices"},
		{"", "protector-reset", ""},
	} {
		if got := Refine(r.complaint, facts(r.facts)); got != r.want {
			t.Errorf("%q with %s is %q, want %q", r.complaint, r.facts, got, r.want)
		}
	}
	for _, b := range becomes {
		for _, code := range append([]string{b.complaint}, b.from...) {
			if _, known := ComplaintBy(code); !known {
				t.Errorf("%v become %s: %s is unknown", b.from, b.complaint, code)
			}
		}
		for _, code := range append(b.facts, b.unless...) {
			if _, known := Lookup(code); !known {
				t.Errorf("%v become %s: the fact %s is unknown", b.from, b.complaint, code)
			}
		}
	}
}

func TestMissing(t *testing.T) {
	whats := func(list []Need) (w []string) {
		for _, n := range list {
			w = append(w, n.What)
		}
		return w
	}
	got := whats(Missing("no-start", facts("clicks supply-low winding-open")))
	if want := []string{"each pin to case", "start device or run capacitor", "running amps"}; !slices.Equal(got, want) {
		t.Errorf("missing %q, want %q", got, want)
	}
	if Missing("no-such", nil) != nil {
		t.Error("an unknown complaint needs something")
	}
	for _, c := range Complaints() {
		if got := Missing(c.Code, nil); len(got) != len(c.Need) {
			t.Errorf("%s: %d of %d needs missing at the start", c.Code, len(got), len(c.Need))
		}
	}
}
