package trade

import (
	"errors"
	"math"
	"strings"
	"testing"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

// scope lends formulas to a sum.
type scope struct {
	more  []formula.Formula
	notes []string
	use   Use
}

func (s *scope) Lookup(string) (quantity.Q, bool) { return quantity.Q{}, false }
func (s *scope) Def(string) (sum.Def, bool)       { return sum.Def{}, false }
func (s *scope) Names() []string                  { return nil }
func (s *scope) Spent(int)                        {}
func (s *scope) Note(string)                      {}
func (s *scope) Func(name string) (sum.Func, bool) {
	use := s.use
	use.Note = func(t string) { s.notes = append(s.notes, t) }
	for i := range s.more {
		if s.more[i].Name == name {
			return Func(&s.more[i], use), true
		}
	}
	if f, ok := formula.Lookup(name); ok {
		return Func(f, use), true
	}
	return sum.Func{}, false
}

// TestEveryExample types each formula's worked example as a sum. The values
// are the table's own; calc/formula holds them against published ones.
func TestEveryExample(t *testing.T) {
	for _, f := range formula.All() {
		q, err := sum.Quantity(f.Example.Call, &scope{})
		if err != nil {
			t.Errorf("%s: %v", f.Example.Call, err)
			continue
		}
		unit := f.Unit
		if unit == formula.AnyUnit {
			unit = q.Symbol()
		}
		got, err := q.In(unit)
		if err != nil {
			t.Errorf("%s: %v", f.Example.Call, err)
			continue
		}
		want, tol := f.Example.Want, f.Example.Tol
		if f.Unit == formula.AnyUnit {
			// The example's number is in the unit of its arguments.
			shown, _, _ := q.Shown()
			got = shown
		}
		if math.Abs(got-want) > tol+1e-9*math.Abs(want) {
			t.Errorf("%s gives %g %s, want %g ± %g", f.Example.Call, got, unit, want, tol)
		}
	}
}

// TestUncertaintyIsCarried checks one formula by hand: for C = I/(2πfU) the
// relative uncertainties of amps and volts add in quadrature (JCGM 100:2008,
// 5.1.6; from memory).
func TestUncertaintyIsCarried(t *testing.T) {
	amps, err := quantity.New(4.2, "A")
	if err != nil {
		t.Fatal(err)
	}
	volts, err := quantity.New(330, "V")
	if err != nil {
		t.Fatal(err)
	}
	s := &sum.Scope{Values: map[string]quantity.Q{"a": amps.WithU(0.042, 1), "v": volts.WithU(6.6, 2)}}
	f, _ := formula.Lookup("cap_load")
	s.Funcs = map[string]sum.Func{"cap_load": Func(f, Use{})}
	q, err := sum.Quantity("cap_load(a, v)", s)
	if err != nil {
		t.Fatal(err)
	}
	x, _ := q.In("uF")
	u, _ := q.UIn("uF")
	if math.Abs(x-33.760) > 0.001 { // reference values §3, computed
		t.Errorf("got %g µF", x)
	}
	if want := x * math.Hypot(0.01, 0.02); math.Abs(u-want) > 1e-6*want {
		t.Errorf("got u = %g, want %g", u, want)
	}
}

// TestRecipeFormula adds a formula as a developer would: one entry of the
// table is all that a sum needs.
func TestRecipeFormula(t *testing.T) {
	s := &scope{more: []formula.Formula{{
		Name: "twice_ohms", Topic: "example", Unit: "ohm",
		Params: []formula.Param{{Name: "ohms", Unit: "ohm", Help: "any resistance"}},
		Help:   "twice a resistance", Equation: "2·R", Valid: "everywhere", Source: "arithmetic",
		Fn:  func(a formula.Args) (float64, error) { return 2 * a.Num[0], nil },
		Say: func(formula.Args, float64) string { return "doubled" },
	}}}
	q, err := sum.Quantity("twice_ohms(3.4ohm) in kohm", s)
	if err != nil {
		t.Fatal(err)
	}
	if x, _ := q.In("ohm"); math.Abs(x-6.8) > 1e-9 {
		t.Errorf("got %g", x)
	}
	if strings.Join(s.notes, "") != "Doubled." {
		t.Errorf("notes %q", s.notes)
	}
	if _, err := sum.Quantity("twice_ohms(3V)", s); err == nil {
		t.Error("volts were taken for ohms")
	}
}

// TestUse holds what a place may settle: the supply's frequency, and the unit
// of temperatures. Values are the formulas' own, turned by hand.
func TestUse(t *testing.T) {
	tests := []struct {
		use        Use
		call, want string
		notes      string
	}{
		// C = I/(2πfU), any alternating-current text: 40.51 at 50 Hz, 33.76 at 60.
		{Use{}, "cap_load(4.2A, 330V)", "33.8 µF", "At 60 Hz."},
		{Use{Hertz: 50}, "cap_load(4.2A, 330V)", "40.5 µF", "At 50 Hz, from the plate."},
		{Use{Hertz: 50}, "cap_load(4.2A, 330V, 60Hz)", "33.8 µF", "At 60 Hz."},
		{Use{Hertz: 50}, "reactance_c(35uF)", "90.9 Ω", "At 50 Hz, from the plate."},
		// 75, 60, 50 °F in equal steps of time tend to 30: 60 − 10·10/(15 − 10).
		{Use{}, "cool_final(75F, 60F, 50F)", "30 °F", ""},
		{Use{Temp: "degC"}, "cool_final(75F, 60F, 50F)", "-1.1 °C", ""},
		{Use{Temp: "degF"}, "cool_final(75, 60, 50)", "30 °F", ""},
		{Use{}, "cool_final(20C, 15C, 12C)", "7.5 °C", ""},
		{Use{Temp: "degF"}, "cool_final(20C, 15C, 12C)", "45.5 °F", ""},
		{Use{Temp: "degF"}, "75F in degC", "23.9 °C", ""},
		{Use{}, `winding_rise(4ohm, 22C, 5.2ohm, 26C, "copper-235")`, "73.1 K", "k = 235"},
		{Use{Temp: "degF"}, `winding_rise(4ohm, 22C, 5.2ohm, 26C, "copper-235")`, "131.6 Fdiff", "k = 235"},
		// R-134a boils at 40 °F under 35.05 psig (published table in calc/formula).
		{Use{}, `superheat("R-134a", 35.05psig, 52F)`, "12 Fdiff", "gauge at sea level"},
		{Use{}, `superheat("R-134a", 35.05psig, 10C)`, "5.6 K", "gauge at sea level"},
		{Use{}, `superheat("R-134a", 35.05psig, 38F)`, "-2 Fdiff", "do not fit each other"},
		{Use{Temp: "degF"}, `subcooling("R-134a", 124.2psig, 90)`, "10 Fdiff", "gauge at sea level"},
		{Use{}, "energy_cost(120W, 0.16, 45%)", "75.69", ""}, // 0.12 kW · 8760 h · 0.45 · 0.16 = 75.6864
	}
	for _, tt := range tests {
		s := &scope{use: tt.use}
		q, err := sum.Quantity(tt.call, s)
		if err != nil {
			t.Errorf("%s: %v", tt.call, err)
			continue
		}
		if notes := strings.Join(s.notes, ""); q.String() != tt.want || !strings.Contains(notes, tt.notes) {
			t.Errorf("%s with %+v: %s %q, want %s %q", tt.call, tt.use, q, notes, tt.want, tt.notes)
		}
	}
}

// A call that has another unit than is wanted is told the one order of its values
// that works, or what it takes, with an example; what is shown works.
func TestOrderIsShown(t *testing.T) {
	for call, want := range map[string]string{
		"wire_drop(15A,50ft,14)":                      "write wire_drop(14, 50ft, 15A)",
		"wire_drop(10m,1.5mm2,10A)":                   "write wire_drop_mm2(1.5, 10m,10A)",
		"wire_drop(1.5 mm², 10m, 10A)":                "write wire_drop_mm2(1.5, 10m, 10A)",
		"wire_drop(10m, 10A, 2.5mm2)":                 "write wire_drop_mm2(2.5, 10m, 10A)",
		"wire_drop_mm2(1.5mm^2, 10m, 10A)":            "wire_drop_mm2(mm2, length, amps, [temp], [metal]), as in wire_drop_mm2(1.5, 10m, 10A)",
		"discharge_time(35uF, 20kohm, 300V, 50V)":     "write discharge_time(20kohm, 35uF, 300V, 50V)",
		"2 * discharge_time(35uF, 20kohm, 300V, 50V)": "discharge_time(ohms, cap, volts, safe), as in discharge_time(20kohm, 35uF, 523.3V, 34V)",
		"cap_load(330V, 4.2A)":                        "write cap_load(4.2A, 330V)",
		"energy_cost(1.2kWh,0.17)":                    "energy_cost(watts, price, [duty]), as in energy_cost(270W, 0.11, 4/24)",
		"1 + energy_cost(1.2kWh,0.17)":                "energy_cost(watts, price, [duty]), as in energy_cost(270W, 0.11, 4/24)",
	} {
		_, err := sum.Quantity(call, &scope{})
		var at *source.Error
		if !errors.As(err, &at) || at.Hint != want {
			t.Errorf("%s: %v, want the hint %s", call, err, want)
		}
		shown := strings.TrimPrefix(want, "write ")
		if _, example, ok := strings.Cut(want, "as in "); ok {
			shown = example
		}
		if _, err := sum.Quantity(shown, &scope{}); err != nil {
			t.Errorf("%s is shown and refused: %v", shown, err)
		}
	}
}

// TestTheArgumentIsMarked holds that a fault of an argument points at it.
func TestTheArgumentIsMarked(t *testing.T) {
	for call, want := range map[string]string{
		"cap_load(4.2V, 330V)":       "4.2V: cap_load wants amps in A, not 4.2 V",
		"cap_load(4.2A, -3V)":        "-3V: volts must be above 0 V",
		"ntc_temp(5k, 10k, 12V)":     "12V: ntc_temp wants beta in K, not 12 V",
		"1 + cap_load(4.2A, 330ohm)": "330ohm: cap_load wants volts in V, not 330 Ω",
		"energy_year(150,40)":        "40: duty must be at most 100 %: a percentage has its sign, as in 40%",
		"energy_year(150, 4000000)":  "4000000: duty must be at most 100 %",
	} {
		_, err := sum.Quantity(call, &scope{})
		var at *source.Error
		if !errors.As(err, &at) {
			t.Errorf("%s: %v", call, err)
			continue
		}
		if got := string([]rune(call)[at.Col-1:at.End-1]) + ": " + at.Msg; got != want {
			t.Errorf("%s is refused at %q, want %q", call, got, want)
		}
	}
	bare, err := sum.Quantity("ntc_temp(5k, 10k, 3435)", &scope{})
	kelvin, err2 := sum.Quantity("ntc_temp(5k, 10k, 3435K)", &scope{})
	if err != nil || err2 != nil || bare.String() != kelvin.String() {
		t.Errorf("a B value of 3435 gives %v (%v), of 3435K %v (%v)", bare, err, kelvin, err2)
	}
}
