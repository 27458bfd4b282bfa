package cause

import (
	"slices"
	"testing"
)

// onCourse tells whether a test is one of a course that the facts call for.
func onCourse(complaint string, x *Test, f []Fact) bool {
	return slices.ContainsFunc(courses(), func(c Course) bool {
		return slices.Contains(c.On, complaint) && slices.Contains(c.Tests, x.Code) && !slices.ContainsFunc(c.When, func(w string) bool {
			return !slices.ContainsFunc(f, func(x Fact) bool { return x.Code == w && !disputedBy(x, f) })
		})
	})
}

// A course names what is known, and what it energises was looked at for a path
// to the metal before.
func TestCourses(t *testing.T) {
	for _, c := range courses() {
		if len(c.On) == 0 || len(c.Tests) == 0 || c.Source == "" {
			t.Errorf("%v lacks a complaint, a test or a source", c)
		}
		for _, code := range c.On {
			p := tables().complaint[code]
			if p == nil {
				t.Fatalf("%v is taken in the unknown complaint %s", c, code)
			}
			for i, code := range c.Tests {
				at := slices.IndexFunc(p.trials, func(x trial) bool { return x.Code == code })
				if at < 0 {
					t.Errorf("%s: the course's test %s bears on nothing", p.Code, code)
					continue
				}
				for fault, look := range map[string]string{"winding-grounded": "case-ohms", "heater-grounded": "heater-case"} {
					x := p.trials[at].Test
					if x.Danger == Live && slices.Contains(x.Barred, fault) && slices.Contains(p.Causes, fault) && !slices.Contains(c.Tests[:i], look) && !slices.Contains(c.When, "heater-volts-present") {
						t.Errorf("%s: %s energises before %s", p.Code, code, look)
					}
				}
			}
		}
		for _, code := range c.When {
			if f, ok := Lookup(code); !ok || f.Code != code {
				t.Errorf("%v waits for the unknown %s", c, code)
			}
		}
	}
}

// What is known, and what the trade does next: common practice throughout.
func TestTheTradeGoesInThisOrder(t *testing.T) {
	for _, c := range []struct{ name, complaint, facts, next, repair string }{
		{"clicks, windings sound: the case", "no-start", "clicks cond-fan-runs windings-sound", "case-ohms", ""},
		{"then the start device, while all is open and dead", "no-start", "clicks cond-fan-runs windings-sound insulation-no-gross-fault", "start-device", ""},
		{"then the run capacitor: what clicks has a closed overload", "no-start", "clicks cond-fan-runs windings-sound insulation-no-gross-fault start-device-sound", "run-cap", ""},
		{"silent, and the fan stands too: the control", "no-start", "silent light-works cond-fan-stopped windings-sound insulation-no-gross-fault", "thermostat", ""},
		{"a rotor that stands: the case", "hums-trips", "hums amps-locked-rotor supply-sound", "case-ohms", ""},
		{"then its windings", "hums-trips", "hums amps-locked-rotor supply-sound insulation-no-gross-fault", "winding-ohms", ""},
		{"then what starts it", "hums-trips", "amps-locked-rotor supply-sound insulation-no-gross-fault windings-sound", "start-device", ""},
		{"heavy frost: the fan", "no-cool", "frost-heavy", "evap-fan-look", ""},
		{"heavy frost, the fan runs: a forced defrost", "no-cool", "frost-heavy evap-fan-runs", "defrost-by-hand", ""},
		{"and before the gasket where it ices up", "leaks-ices", "frost-heavy evap-fan-runs", "defrost-by-hand", ""},
		{"the forced defrost is dead: the heater", "no-cool", "frost-heavy evap-fan-runs gasket-sound defrost-dead-by-hand", "heater-ohms", ""},
		{"the heater is sound: the defrost thermostat", "no-cool", "frost-heavy evap-fan-runs defrost-dead-by-hand heater-sound", "defrost-thermostat", ""},
		{"the forced defrost heats: does it start by itself", "no-cool", "frost-heavy evap-fan-runs defrost-runs-by-hand", "defrost-wait", ""},
		{"the defrost is sound: the gasket after all", "no-cool", "frost-heavy evap-fan-runs defrost-runs-by-hand defrost-starts-itself", "gasket", ""},

		{"bare and cold, all running: the amps", "no-cool", bareAndCold, "running-amps", ""},
		{"then oil and leaks", "no-cool", bareAndCold + " amps-low", "leak-search", ""},
		{"amps that tell nothing", "no-cool", bareAndCold + " amps-undecided", "leak-search", ""},
		{"then drier and capillary", "no-cool", bareAndCold + " amps-low leak-not-found", "restriction-look", ""},
		{"then a person licensed for it", "no-cool", bareAndCold + " one-phase no-pump-down amps-low leak-not-found restriction-none", "", "compressor-weak"},
		{"bare and cold, the fan not seen", "no-cool", "starts-and-runs frost-none condenser-cold", "evap-fan-look", ""},

		{"a sound element: its sheath", "no-heat", "does-not-heat heater-sound limit-closed", "heater-case", ""},
		{"then its volts", "no-heat", "does-not-heat heater-sound limit-closed heater-no-gross-fault", "heater-volts", ""},
		{"no volts: what is upstream", "no-heat", "does-not-heat heater-sound limit-closed heater-no-gross-fault heater-volts-absent", "thermostat", ""},
		{"volts and no heat: the joints", "no-heat", "does-not-heat heater-sound heater-no-gross-fault heater-volts-present", "connections", ""},
		{"an element that leaks is not energised", "no-heat", "does-not-heat heater-sound heater-grounded", "", "heater-grounded"},

		{"a pump: the impeller", "no-drain", "hums", "impeller", ""},
		{"jammed", "no-drain", "hums load-jammed", "", "load-jammed"},
		{"not jammed: to case", "no-drain", "hums impeller-sound", "case-ohms", ""},
		{"its leads", "no-drain", "silent impeller-sound insulation-no-gross-fault", "winding-ohms", ""},
		{"its volts", "no-drain", "silent impeller-sound insulation-no-gross-fault windings-sound switch-closed supply-sound", "call-volts", ""},
		{"open", "no-drain", "silent impeller-sound insulation-no-gross-fault winding-open", "", "winding-open"},
		{"it runs: the hose", "no-drain", "pump-runs impeller-sound insulation-no-gross-fault windings-sound", "hose", ""},

		{"a breaker found tripped", Refine("no-power", facts("breaker-tripped")), "breaker-tripped", "unplugged", ""},
		{"it holds unplugged: nothing is tried before the looks with the power off", Refine("no-power", facts("breaker-tripped")), "breaker-tripped holds-unplugged", "plug-pins", ""},
		{"a shock, the earth path too near to say: the windings", "shocks", "shock earth-undecided", "case-ohms", ""},
		{"a shock and no earth: what leaks is looked for before", "shocks", "shock earth-failed", "case-ohms", ""},
		{"a shock and no earth, all looked at", "shocks", "shock earth-failed insulation-no-gross-fault heater-none wires-clear", "", "earth-lost"},
		{"a shock: the earth path", "shocks", "shock", "earth", ""},
		{"nothing else fits an oven's outlet", "no-heat", "wired-in does-not-heat", "heater-ohms", ""},
	} {
		r := Weigh(c.complaint, facts(c.facts))
		next, repair := "", ""
		if r.Next != nil {
			next = r.Next.Code
		}
		if r.Repair != nil {
			repair = r.Repair.Code
		}
		if next != c.next || repair != c.repair {
			t.Errorf("%s: next %q, repair %q (%s), want %q and %q", c.name, next, repair, r.NextWhy, c.next, c.repair)
		}
	}
}

const bareAndCold = "starts-and-runs cond-fan-runs evap-fan-runs frost-none condenser-cold"

// Volts at the heater say where the way to it is open: common practice.
func TestVoltsAtTheHeater(t *testing.T) {
	for _, c := range []struct{ facts, out string }{
		{"heater-sound heater-volts-absent", "heater-failed supply-weak"},
		{"heater-volts-present", "no-supply leg-missing switch-open control-not-calling sensor-stops-heat limit-open"},
	} {
		r := Weigh("no-heat", facts("does-not-heat "+c.facts))
		got := r.Codes(RuledOut)
		for _, want := range facts(c.out) {
			if !slices.Contains(got, want.Code) {
				t.Errorf("%s: %s is not ruled out", c.facts, want.Code)
			}
		}
		if slices.Contains(got, "connection-weak") || slices.Contains(got, "airflow-blocked") {
			t.Errorf("%s rules out %v", c.facts, got)
		}
	}
}

// Words of the trade for a joint of the wiring that is bad, and for pumps and
// dangers.
func TestTradeWords(t *testing.T) {
	for text, want := range map[string]string{
		"burnt spade on heater": "connection-loose", "spade burnt": "connection-loose", "spade broken": "connection-loose", "broken spade": "connection-loose",
		"connection burnt": "connection-loose", "burnt wire": "connection-loose", "melted connector": "connection-loose", "wire off heater": "connection-loose",
		"burnt terminal at heater": "connection-loose", "loose spade": "connection-loose", "lug loose": "connection-loose", "terminals burnt": "connection-loose",
		"wires off": "", "wire": "",
		"drains": "drains", "pump runs": "pump-runs", "impeller jammed": "load-jammed", "glass in sump": "load-jammed", "drain hose kinked": "hose-blocked",
		"shock": "shock", "shock from door": "shock", "smoke": "smoke", "gas smell": "gas-smell", "no smoke": "no-smoke", "smoke no more": "",
	} {
		if code, _, _ := FindFinding(text); code != want {
			t.Errorf("%q is %q, want %q", text, code, want)
		}
	}
}
