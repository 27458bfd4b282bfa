package sum

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// scope is what a call holds when these sums are typed: three ohm readings
// with their doubt, two temperatures, a value and definitions.
func scope(t testing.TB) *Scope {
	t.Helper()
	s := &Scope{Values: map[string]quantity.Q{}, Funcs: map[string]Func{}, Defs: map[string]Def{}}
	readings := map[string]quantity.Q{}
	for i, r := range [][2]string{{"A B", "3.45ohm"}, {"A C", "6.5ohm"}, {"B C", "2.5ohm"}, {"1 2", "4k7"}, {"evap-fan run", "31.8ohm"}, {"freezer", "-2F"}} {
		q, err := quantity.Parse(r[1], "")
		if err != nil {
			t.Fatal(err)
		}
		if i < 3 {
			q = q.WithU(0.03, uint64(i+1))
		}
		readings[r[0]] = q
	}
	find := func(a []Value) (Value, error) {
		words := make([]string, len(a))
		for i, v := range a {
			words[i] = v.(string)
		}
		q, ok := readings[strings.Join(words, " ")]
		if !ok {
			return nil, source.Errorf(0, 0, "there is no reading at %s", strings.Join(words, " "))
		}
		return q, nil
	}
	point := Param{Name: "point", Text: true}
	s.Funcs["ohm"] = Func{Name: "ohm", Params: []Param{point, point}, Call: find}
	s.Funcs["temp"] = Func{Name: "temp", Params: []Param{point}, Call: find}
	s.Funcs["reactance"] = Formula("reactance", "of a capacitor", []Param{{Name: "capacitance", Unit: "uF"}, {Name: "frequency", Unit: "Hz", Optional: true}}, "ohm",
		func(x []float64) (float64, error) {
			f := 60.0
			if len(x) > 1 {
				f = x[1]
			}
			if x[0] <= 0 {
				return 0, source.Errorf(0, 0, "a capacitance is above zero")
			}
			return 1 / (2 * math.Pi * f * x[0] * 1e-6), nil
		})
	s.Funcs["seen"] = Func{Name: "seen", Params: []Param{{Name: "finding", Text: true}}, Result: YesNo,
		Call: func(a []Value) (Value, error) { return a[0] == "coil (rear), 3/4 iced; \u00bdin thick", nil }}
	s.Values["supply"] = eval(t, "118.2V", nil).(quantity.Q)
	for _, d := range []string{"cop(heat, work) = heat / work \"ratio\"", "within(x, limit) = abs(x) <= limit", "twice(x) = cop(x, 0.5)", "nothing() = supply * 0"} {
		def, err := ParseDef(d)
		if err != nil {
			t.Fatal(err)
		}
		s.Defs[def.Name] = def
	}
	return s
}

func eval(t testing.TB, text string, env Env) Value {
	t.Helper()
	v, err := Eval(text, env)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return v
}

func shown(v Value) string {
	switch v := v.(type) {
	case quantity.Q:
		return v.String()
	case Truth:
		return v.String()
	}
	return "?"
}

func TestEval(t *testing.T) {
	env := scope(t)
	rows := []struct{ text, want string }{
		{"120V / 3.45ohm", "34.8 A"},
		{"(3.45ohm+2.5ohm)*1.2A", "7.14 V"},
		{"ohm(A, B) + ohm(B, C)", "5.95 ± 0.08 Ω (k=2)"},
		{"ohm(A,B) - ohm(A,B)", "0.00 Ω"},
		{"ohm(A, C) - (ohm(A, B) + ohm(B, C))", "0.55 ± 0.10 Ω (k=2)"},
		{"120V / ohm(A, B)", "34.8 ± 0.6 A (k=2)"},
		{"ohm(1, 2)", "4.7 kΩ"},
		{"ohm(evap-fan, run)", "31.8 Ω"},
		{"ohm('A', \"B\")", "3.45 ± 0.06 Ω (k=2)"},
		{"temp(freezer) in degC", "-18.9 °C"},
		{"temp(freezer) < 0F", "yes"},
		{"temp(freezer) < 0F and ohm(B, C) > 3ohm", "no"},
		{"not (supply < 104V) ? supply : 120V", "118.2 V"},
		{"supply in kV", "0.1182 kV"},
		{"75degF in degC", "23.9 °C"},
		{"1/6 hp in W", "124.3 W"},
		{"1/6 hp + 10W", "0.1801 hp"},
		{"120V / 3.45 Ohm", "34.8 A"},
		{"10 Amps * 120 Volts", "1.2 kW"},
		{"3/8 in in mm", "9.52 mm"},
		{"3 in in mm", "76.2 mm"},
		{"1/2 lb", "0.5 lb"},
		{"1/2 gal in L", "1.893 L"},
		{"0.1MPa in bar", "1 bar"},
		{"-2F", "-2 °F"},
		{"-2F in degC", "-18.9 °C"},
		{"75F - -2F", "77 Fdiff"},
		{"75F-2F", "73 Fdiff"},
		{"2*-3", "-6"},
		{"-2^2", "-4"}, // the power binds first
		{"2**3**2", "512"},
		{"1/(2*pi*60Hz*47uF)", "56.4 Ω"},
		{"reactance(47)", "56.4 Ω"},
		{"reactance(47uF, 50Hz)", "67.7 Ω"},
		{"reactance(0.047mfd in nF, 50)", "67.7 kΩ"},
		{"(40psi in psia) / (5psi in psia)", "2.77702"},
		{"sum(1V, 2V, 3V)", "6 V"},
		{"mean(20C, 30C)", "25 °C"},
		{"rms(3V, 4V)", "3.54 V"},
		{"min(3V, 200mV)", "200 mV"},
		{"max(3, 7, 5)", "7"},
		{"round(34.78A)", "35 A"},
		// Behind a slash a unit is one of it; what has a value is not.
		{"8 L/min in gal/min", "2.11 gal/min"},
		{"8L/min * 10min", "80 L"},
		{"12000 btu/h in kW", "3.52 kW"},
		{"9.81 m/s^2", "9.81 m/s²"},
		{"3ohm/ft * 50ft", "150 Ω"},
		{"12V/supply", "0.101523"},
		{"supply/min * 2min", "236 V"},
		{"50gal*8.33lb/gal", "416 lb"},
		{"0.31/kWh * 2kWh", "0.62"},
		{"2kWh * 0.31/kWh", "0.62"},
		{"0.31/kwh", "0.31 1/kWh"},
		{"4186J/kg/K", "4190 J/kg/K"},
		{"4.186kJ/kg/K * 2kg * 10K", "83.7 kJ"},
		{"12Btu/lb", "12 Btu/lb"},
		{"1Btu/lb/F * 50lb * 10Fdiff in Btu", "500 Btu"},
		{"500lb / (8.33lb/gal) in gal", "60 gal"},
		{"5W/m/K", "5 W/m/K"},
		{"240 v * 22.5 a", "5.4 kW"},
		{"75 f in c", "23.9 °C"},
		// In a unit that was typed, where no other suggests itself.
		{"(40F - 20F)/10min", "2 Fdiff/min"},
		{"1200rpm*3in/12in", "300 rpm"},
		{"0.5*35uF*(370V)^2", "2.4 J"},
		{"120V / 3.45ohm / 2", "17.39 A"},
		{"1200rpm*3in/12in in Hz", "5 Hz"},
		{"24.50 + 24.50 * 7%", "26.215"},
		{"120V * (1 - 10%)", "108 V"},
		{"round(34.78A, 1)", "34.8 A"},
		{"u(ohm(A, B))", "30 mΩ"},
		{"exact(ohm(A, B))", "3.45 Ω"},
		{"sqrt(ohm(A, B) * ohm(A, B))", "3.45 ± 0.06 Ω (k=2)"},
		{"exp(1)", "2.71828"},
		{"ln(exp(2))", "2"},
		{"log10(1000)", "3"},
		{"sin(30deg)", "0.5"},
		{"asin(0.5)", "30 °"},
		{"100W * 24h", "2.4 kWh"},
		{"5% * 120V", "6 V"},
		{"120 V × 2 ÷ 3 ohm − 1A", "79 A"},
		{"3V ≤ 4V", "yes"},
		{"3.4k", "3400"},
		{"cop(300W, 100W)", "3"},
		{"cop(cop(8W, 2W), 2)", "2"},
		{"twice(ohm(A, B))", "6.90 ± 0.12 Ω (k=2)"},
		{"within(3V - 5V, 2V)", "yes"},
		{"nothing()", "0 V"},
		{`seen("coil (rear), 3/4 iced; ½in thick")`, "yes"},
		{"seen(coil) or seen(door)", "no"},
		{"2J in N.m", "2 N·m"},
		{"true", "yes"},
		// A comparison is told where the doubt of the difference, k = 2
		// (JCGM 100:2008, 6.3.1, from memory), leaves one answer.
		{"ohm(A, B) > 3.38ohm", "yes"},
		{"ohm(A, B) > 3.40ohm", "cannot tell"},
		{"ohm(A, B) > 3.50ohm", "cannot tell"},
		{"ohm(A, B) > 3.52ohm", "no"},
		{"ohm(A, B) == 3.45ohm", "cannot tell"},
		{"ohm(A, B) != 3.6ohm", "yes"},
		{"not (ohm(A, B) > 3.5ohm)", "cannot tell"},
		{"ohm(A, B) == ohm(A, B)", "yes"},
		{"ohm(A, B) * 2 > ohm(A, B) + 3.44ohm", "cannot tell"},
		{"ohm(A, B) > 3.5ohm and ohm(B, C) > 3ohm", "no"},
		{"ohm(A, B) > 3.5ohm or ohm(A, C) > 3ohm", "yes"},
		{"ohm(A, B) > 3.5ohm and ohm(A, C) > 3ohm", "cannot tell"},
		{"ohm(A, B) > 3.5ohm ? ohm(A, C) > 3ohm : ohm(B, C) < 3ohm", "yes"},
		{"ohm(A, B) > 3.5ohm ? true : ohm(B, C) > 3ohm", "cannot tell"},
		{"within(ohm(A, B) - 3.4ohm, 0.05ohm)", "cannot tell"},
		{"within(ohm(A, B) - 3.4ohm, 1ohm)", "yes"},
		{strings.Repeat("ohm(A, B) > 3.5ohm or ", 12) + "true", "cannot tell"},
	}
	for _, r := range rows {
		v, err := Eval(r.text, env)
		if err != nil || shown(v) != r.want {
			t.Errorf("%s = %s, %v; want %s", r.text, shown(v), err, r.want)
		}
	}
}

// The place is written under the text: every row's second string marks the
// columns that the fault must bound.
func TestFaultsPointAtWhatWasTyped(t *testing.T) {
	env := scope(t)
	rows := []struct{ text, mark, want string }{
		{"120V + 3ohm",
			"     ^", "V and Ω cannot be added"},
		{"47uF + 3.4k * 2V",
			"     ^", "F and V cannot be added"},
		{"  sqroot(4ohm)",
			"  ^^^^^^", "did you mean sqrt?"},
		{"1V / (2ohm - 2ohm)",
			"   ^", "division by zero"},
		{"supplly * 2",
			"^^^^^^^", "did you mean supply?"},
		{"cop + 1",
			"^^^", "write cop(…)"},
		{"3.4zz + 1",
			"   ^^", "not a unit"},
		{"4V + 47farad",
			"       ^^^^^", "uF, nF, pF or mfd"},
		{"75F in degCC",
			"       ^^^^^", "did you mean degC?"},
		{"3V in ohm",
			"   ^^", "V cannot be turned into Ω"},
		{"µF + 1",
			"^^", "no value named"},
		{"(2µF + 3",
			"^", "not closed"},
		{"2µF) + 3",
			"   ^", "never opened"},
		{"3V 4V",
			"   ^^", "operator"},
		{"3V supply",
			"   ^^^^^^", "operator"},
		{"3V + * 4V",
			"     ^", "* is not expected here"},
		{"3V +",
			"    ^", "stops before a value"},
		{"ohm(A, Z)",
			"^^^", "no reading at A Z"},
		{"ohm(A)",
			"^^^", "2 values, not 1"},
		{"ohm(A, )",
			"       ^", "point is missing"},
		{"ohm(A, B]C)",
			"        ^", "cannot stand in a name"},
		{"reactance(3V)",
			"          ^^", "reactance wants capacitance in µF, not 3 V"},
		{"reactance(47uF, 2 * 3V)",
			"                ^^^^^^", "reactance wants frequency in Hz, not 6 V"},
		{"reactance(0)",
			"^^^^^^^^^", "above zero"},
		{"cop(1V, 0V) + 2",
			"^^^", "in cop: division by zero"},
		{"sqrt(3V < 4V)",
			"     ^^^^^^^", "a value is wanted here, not a yes or no"},
		{"3V and 4V",
			"^^", "compare it"},
		{"sqrt('A')",
			"     ^^^", "not a name"},
		{"1V < 2V < 3V",
			"        ^", "two values are compared at a time"},
		{"1V < 2A",
			"   ^", "V and A cannot be compared"},
		{"3V == 3A",
			"   ^^", "V and A cannot be compared"},
		{"x = 3",
			"  ^", "== compares"},
		{"3V in kW * 2",
			"      ^^^^^^", "brackets"},
		{"20C + 30C",
			"    ^", "two temperatures cannot be added"},
		{"2 * 20C",
			"  ^", "zero is arbitrary"},
		{"9^9^9^9",
			"   ^", "too large"},
		{"ln(-1)",
			"^^", "ln of -1 does not exist"},
		{"round(3, 0.5)",
			"         ^^^", "whole number"},
		{"ohm(\"A\\\\\", B)",
			"      ^", "cannot stand in a text"},
		{"let x = 3",
			"^^^", "let is not used"},
		{"a..b",
			" ^", "point"},
		{"3V // 2",
			"   ^^", "not used in sums"},
		{"", "^", "nothing to work out"},
		{"   ", "^^^", "nothing to work out"},
	}
	for _, r := range rows {
		v, err := Eval(r.text, env)
		e, ok := err.(*source.Error)
		if !ok {
			t.Errorf("%s = %v, %v; want a fault", r.text, shown(v), err)
			continue
		}
		col := strings.Index(r.mark, "^") + 1
		end := col + strings.Count(r.mark, "^")
		if e.Col != col || e.End != end || !strings.Contains(e.Error(), r.want) {
			t.Errorf("%s: %d-%d %q; want %d-%d %q", r.text, e.Col, e.End, e.Error(), col, end, r.want)
		}
	}
}

func TestQuantityAndCondition(t *testing.T) {
	if q, err := Quantity("3V + 2V", nil); err != nil || q.String() != "5 V" {
		t.Errorf("a quantity is %v, %v", q, err)
	}
	if _, err := Quantity("3V > 2V", nil); err == nil {
		t.Error("a comparison passed for a quantity")
	}
	if b, err := Condition("3V > 2V", nil); err != nil || b != Yes {
		t.Errorf("a condition is %v, %v", b, err)
	}
	if _, err := Condition("3V", nil); err == nil {
		t.Error("a quantity passed for a condition")
	}
}

// Every built-in function has a line of help and can be called.
func TestTable(t *testing.T) {
	for _, f := range Functions() {
		if f.Help == "" {
			t.Errorf("%s has no help", f.Name)
		}
		v, err := Eval(f.Name+"(1)", nil)
		if _, ok := v.(quantity.Q); !ok {
			t.Errorf("%s(1) = %v, %v", f.Name, v, err)
		}
		if NameFault(f.Name) == nil {
			t.Errorf("%s may be shadowed", f.Name)
		}
	}
	f := builtins["round"]
	if got := f.Usage(); got != "round(x, [decimals])" {
		t.Errorf("usage is %s", got)
	}
}

// The doubt of a function's result is the slope times the doubt put in.
func TestFunctionsCarryDoubt(t *testing.T) {
	x := quantity.Number(0.5).WithU(0.001, 1)
	env := &Scope{Values: map[string]quantity.Q{"x": x}}
	rows := []struct {
		text  string
		slope float64
	}{
		{"sin(x)", math.Cos(0.5)},
		{"exp(x)", math.Exp(0.5)},
		{"ln(x)", 2},
		{"sqrt(x)", 0.5 / math.Sqrt(0.5)},
		{"x^3", 0.75},
		{"abs(-x)", 1},
		{"mean(x, 0.7)", 0.5},
		{"max(x, 0.1)", 1},
		{"round(x, 1)", 1},
		{"asin(x)", 1 / math.Sqrt(0.75)}, // an angle is kept in radians
	}
	for _, r := range rows {
		q := eval(t, r.text, env).(quantity.Q)
		if want := math.Abs(r.slope) * 0.001; math.Abs(q.U()-want) > 1e-6*want {
			t.Errorf("u of %s = %v, want %v", r.text, q.U(), want)
		}
	}
}
