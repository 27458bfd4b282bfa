package notebook

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// worked are the definitions of the snippet collections, each with a value
// that a source or a sum by hand gives.
var worked = map[string][]struct {
	text   string
	want   float64
	unit   string // UCUM
	tol    float64
	source string
}{
	"refrigeration.call": {
		{"fridge_most in degC", 40.0 / 9, "Cel", 1e-9, "FDA: 40 °F; (40 - 32) / 1.8"},
		{"freezer_most in degC", -160.0 / 9, "Cel", 1e-9, "FDA: 0 °F; (0 - 32) / 1.8"},
		{"protector_cold in degC", 440.0 / 9, "Cel", 1e-9, "manual 80-0111-9, p. 176: 120 °F; (120 - 32) / 1.8"},
		{"sag_most", 15, "%", 1e-9, "common practice"},
		{"sag(120V, 102V)", 15, "%", 1e-9, "18 / 120"},
		{"source_of(121.4V, 117.8V, 9.6A)", 0.375, "Ohm", 1e-9, "Ohm's law: 3.6 V / 9.6 A"},
		{"surge_over_run(7.2A, 1.2A)", 6, "1", 1e-9, "7.2 / 1.2"},
		{"start_over_run(8.4ohm, 2.8ohm)", 3, "1", 1e-9, "8.4 / 2.8"},
		{"cap_off(11.4uF, 15uF)", -24, "%", 1e-9, "-3.6 / 15"},
		{"split(75F, 57F)", 18, "[degR]", 1e-9, "75 - 57 °F"},
		{"pull_rate(57F, 21F, 80min)", 15, "K/h", 1e-9, "20 K in 4/3 h"},
		{"duty(20min, 20min)", 50, "%", 1e-9, "20 / 40"},
		{"energy_day(100W, 50%)", 1.2, "kW.h", 1e-9, "100 W · 12 h"},
		{"heat_gain(110W, 50%, 1.2)", 66, "W", 1e-9, "55 W · 1.2"},
	},
	"cooking.call": {
		{"earth_most", 0.2, "Ohm", 1e-9, "EN 50106:2008, as calc/judge applies it"},
		{"sheath_least", 1, "MOhm", 1e-9, "AS/NZS 3760, as quoted by a test-and-tag firm (1 MΩ at 500 V)"},
		{"element_ohms(450W, 120V)", 32, "Ohm", 1e-9, "Joule's and Ohm's laws: 14400 / 450"},
		{"element_amps(3600W, 240V)", 15, "A", 1e-9, "3600 / 240"},
		{"watts_left(208V, 240V)", 75.111, "%", 0.001, "(208 / 240)²; 2704 of 3600 W"},
		{"watts_now(240V, 16ohm)", 3600, "W", 1e-6, "57600 / 16"},
		{"element_off(28.8ohm, 450W, 120V)", -10, "%", 1e-9, "-3.2 / 32"},
		{"joint_watts(20A, 0.05ohm)", 20, "W", 1e-9, "400 · 0.05"},
		{"joint_ohms(1.5V, 15A)", 0.1, "Ohm", 1e-9, "1.5 / 15"},
		{"oven_error(350F, 332F)", -10, "K", 1e-9, "-18 °F / 1.8"},
		{"oven_swing(190C, 170C)", 10, "K", 1e-9, "20 / 2"},
		{"preheat(20C, 180C, 16min)", 10, "K/min", 1e-9, "160 K in 16 min"},
		{"sensor_error(1385.055ohm, 100C)", 0, "K", 0.002, "IEC 60751: 138.5055 Ω at 100 °C for a Pt100"},
	},
	"laundry.call": {
		{"water_heat * 1kg * 1K in J", 4186, "J", 1e-6, "specific heat of water (from memory)"},
		{"earth_most", 0.2, "Ohm", 1e-9, "EN 50106:2008, as calc/judge applies it"},
		{"drum_speed(1700rpm, 50mm, 250mm)", 340, "/min", 1e-9, "1700 / 5"},
		{"slip_share(1800rpm, 1710rpm)", 5, "%", 1e-9, "90 / 1800"},
		{"winding_apart(2.1ohm, 1.9ohm)", 10, "%", 1e-9, "0.2 / 2"},
		{"start_over_main(5.9ohm, 2.95ohm)", 2, "1", 1e-9, "5.9 / 2.95"},
		{"fill_rate(12L, 90s)", 8, "L/min", 1e-9, "12 L in 1.5 min"},
		{"warm_time(10kg, 15C, 60C, 2093W)", 15, "min", 1e-9, "10 · 45 · 4186 / 2093 = 900 s"},
		{"warm_energy(10kg, 15C, 60C)", 0.52325, "kW.h", 1e-9, "1883.7 kJ / 3600"},
		{"dryer_amps(5400W, 240V)", 22.5, "A", 1e-9, "5400 / 240"},
		{"dryer_ohms(5760W, 240V)", 10, "Ohm", 1e-9, "57600 / 5760"},
		{"air_rise(60C, 22C)", 38, "K", 1e-9, "60 - 22"},
		{"water_left(8kg, 5kg)", 60, "%", 1e-9, "3 / 5"},
	},
}

var definition = regexp.MustCompile(`^(let|def) (\w+).*= .*"[^"]+"$`)

// TestSnippets takes each collection into a call and works every definition
// in it; each has a help text.
func TestSnippets(t *testing.T) {
	for name, rows := range worked {
		t.Run(name, func(t *testing.T) {
			content, err := os.ReadFile(filepath.Join("../examples", name))
			if err != nil {
				t.Fatal(err)
			}
			p := &played{n: New(Host{Now: wall, Script: func(string) ([]byte, error) { return content, nil }})}
			for _, line := range []string{"plate gas R-600a", "use " + name} {
				if fault := p.do(line); fault != "" {
					t.Fatalf("%s: %s", line, fault)
				}
			}
			asked := map[string]bool{}
			for _, r := range rows {
				asked[strings.FieldsFunc(r.text, func(c rune) bool { return c == '(' || c == ' ' })[0]] = true
				if fault := p.do(r.text); fault != "" {
					t.Errorf("%s: %s", r.text, fault)
					continue
				}
				s := p.last.Reply.Sum
				if s == nil || math.Abs(s.Value-r.want) > r.tol || s.Unit != r.unit {
					t.Errorf("%s gives %+v, want %v %s (%s)", r.text, s, r.want, r.unit, r.source)
				}
			}
			for _, line := range ScriptLines(content) {
				word, _, _ := strings.Cut(line, " ")
				if word != "let" && word != "def" {
					continue
				}
				m := definition.FindStringSubmatch(line)
				if m == nil {
					t.Errorf("%s: no help text", line)
				} else if !asked[m[2]] {
					t.Errorf("%s is never worked", m[2])
				}
			}
			if len(p.n.Call().Record().Missing) == 0 {
				t.Error("an empty call lacks nothing: the collection needs nothing")
			}
			r, err := Check(p.n.Render())
			if err != nil {
				t.Fatal(err)
			}
			for _, f := range r.Faults {
				t.Error(f)
			}
		})
	}
}

// TestUseOfANotebook holds that whoever uses a notebook for a script is told how
// its definitions come into another call.
func TestUseOfANotebook(t *testing.T) {
	for content, want := range map[string]bool{"---\nohmcall: 1\n---\n": true, "let 3\n": false} {
		n := New(Host{Now: wall, Script: func(string) ([]byte, error) { return []byte(content), nil }})
		_, err := n.Do("use other.md")
		if err == nil || strings.Contains(err.Error(), "keep NAME") != want {
			t.Errorf("%q: %v", content, err)
		}
	}
}
