package quantity

import (
	"math"
	"strings"
	"testing"
)

func read(t testing.TB, text string) Q {
	t.Helper()
	q, err := Parse(text, "")
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return q
}

var verbs = map[string]func(a, b Q) (Q, error){
	"+": Add, "-": Sub, "*": Mul, "/": Div, "^": Pow, "min": Min, "max": Max,
}

func TestArithmetic(t *testing.T) {
	rows := []struct{ a, verb, b, want string }{
		{"120V", "/", "3.45ohm", "34.8 A"},
		{"3.45ohm", "+", "2.5ohm", "5.95 Ω"},
		{"900mA", "+", "200mA", "1.100 A"},
		{"120V", "*", "12A", "1.44 kW"},
		{"1.2A", "*", "3.45ohm", "4.14 V"},
		{"5V", "/", "2V", "2.5"},
		{"150W", "*", "24h", "3.6 kWh"},
		{"3min", "+", "30s", "3.50 min"},
		{"2", "*", "50ft", "100 ft"},
		{"5%", "*", "120V", "6 V"},
		{"3V", "^", "2", "9 V²"},
		{"4ohm", "^", "0.5", ""},
		{"100ohm", "*", "47uF", "4.7 ms"},
		{"1kohm", "/", "50ft", "65.6 Ω/m"},
		{"1", "/", "60Hz", "16.67 ms"},
		// Plain numbers are shown whole; of one that goes on, six digits.
		{"12345", "*", "12345", "152399025"},
		{"1234.56", "*", "12", "14814.72"},
		{"0.1", "*", "3", "0.3"},
		{"1.1", "*", "1.1", "1.21"},
		{"99999", "*", "99999", "9.999800001e9"},
		{"1", "/", "3", "0.333333"},
		{"200000", "/", "3", "66666.7"},
		{"1", "/", "1024", "0.0009765625"},
		{"2", "^", "0.5", "1.41421"},
		{"75F", "-", "40F", "35 Fdiff"},
		{"25C", "-", "5C", "20 K"},
		{"25C", "-", "5F", "40.0 K"},
		{"20C", "+", "5K", "25 °C"},
		{"5K", "+", "20C", "25 °C"},
		{"40psi", "-", "5psi", "35 psid"},
		{"40psi", "-", "1bar", "25 psid"},
		{"40psi", "+", "5psid", "45 psi"},
		{"54.7psia", "/", "19.7psia", "2.77665"},
		{"20psia", "*", "2", "40 psia"},
		{"25C", "max", "80F", "80 °F"},
		{"3V", "min", "200mV", "200 mV"},
		{"0.1V", "+", "0.2V", "0.3 V"},
		// A percentage of a number is a number, of a percentage one; of 1 it may be added.
		{"85", "*", "15%", "12.75"},
		{"24.50", "*", "7%", "1.715"},
		{"107%", "*", "24.50", "26.215"},
		{"5%", "*", "5%", "0.25 %"},
		{"50%", "/", "2", "25 %"},
		{"50%", "/", "5%", "10"},
		{"5%", "+", "5%", "10 %"},
		{"1", "+", "7%", "1.07"},
		{"120V", "+", "5%", "!120V * (1 + 10%)"},
		// Rates, areas and energies in the units typed.
		{"20Fdiff", "/", "10min", "2 Fdiff/min"},
		{"80", "/", "1h", "80 1/h"},
		{"3", "/", "1min", "3 1/min"},
		{"1", "/", "20ms", "50 Hz"},
		{"1.0inWC", "-", "0.2inWC", "0.8 inWCd"},
		{"50L", "/", "8min", "6.25 L/min"},
		{"20psid", "/", "10min", "2 psid/min"},
		{"12in", "*", "12in", "144 in²"},
		{"12in", "^", "2", "144 in²"},
		{"500W", "*", "10s", "5 kJ"},
		{"360W", "*", "30min", "180 Wh"},
		{"2.5A", "*", "2s", "5 A·s"},
		{"75F", "+", "10", "!such as 10Fdiff"},
		{"70psi", "+", "10", "!such as 10psid"},
		{"20C", "-", "5", "!such as 5K"},
		{"75F", "min", "70", "!such as 70°F"},
		// and what is refused, with part of the words
		{"120V", "+", "3ohm", "!V and Ω cannot be added"},
		{"120V", "-", "3ohm", "!V and Ω cannot be subtracted"},
		{"3V", "+", "2", "!V and a plain number cannot be added"},
		{"20C", "+", "30C", "!two temperatures cannot be added"},
		{"40psi", "+", "5psi", "!two gauge pressures cannot be added"},
		{"40psi", "+", "5psia", "!one is gauge and the other absolute"},
		{"40psi", "-", "5psia", "!cannot be subtracted"},
		{"5K", "-", "20C", "!cannot be taken from"},
		{"20C", "*", "2", "!zero is arbitrary"},
		{"40psi", "/", "5psi", "!(40psi in psia)"},
		{"5V", "/", "0ohm", "!division by zero"},
		{"0", "^", "-1", "!division by zero"},
		{"1e300", "*", "1e300", "!too large"},
		{"-4", "^", "0.5", "!root of a negative"},
		{"3V", "^", "2s", "!a power must be a plain number"},
		{"3m", "^", "60", "!too high a power"},
		{"3V", "min", "2A", "!V and A cannot be compared"},
		{"3psi", "max", "2psia", "!cannot be compared"},
	}
	for _, r := range rows {
		q, err := verbs[r.verb](read(t, r.a), read(t, r.b))
		switch words, refused := strings.CutPrefix(r.want, "!"); {
		case r.want == "":
			if err == nil && q.Dim() == read(t, r.a).Dim() {
				t.Errorf("%s %s %s = %v", r.a, r.verb, r.b, q)
			}
		case refused:
			if err == nil || !strings.Contains(err.Error(), words) {
				t.Errorf("%s %s %s = %v, error %v; want %q", r.a, r.verb, r.b, q, err, words)
			}
		case err != nil || q.String() != r.want:
			t.Errorf("%s %s %s = %q, %v; want %q", r.a, r.verb, r.b, q.String(), err, r.want)
		}
	}
}

// A share of nothing is a fault for who asks; what is stored is worked out.
func TestShareFault(t *testing.T) {
	for _, r := range []struct {
		a, b  string
		fault bool
	}{
		{"24.50", "7%", true}, {"7%", "24.50", true}, {"0.9", "5%", true},
		{"1", "7%", false}, {"7%", "1", false}, {"5%", "5%", false}, {"80", "5", false}, {"120V", "3V", false},
	} {
		err := ShareFault(read(t, r.a), read(t, r.b))
		if (err != nil) != r.fault || r.fault && !strings.Contains(err.Error(), "80 * (1 + 10%)") {
			t.Errorf("%s and %s: %v", r.a, r.b, err)
		}
	}
}

// Factors by NIST SP 811 and UCUM: 1 psi = 6.894757 kPa, 1 inHg = 3.386389
// kPa, 1 atm = 14.696 psi, [HP] = 745.6999 W (from memory, UCUM factors seen).
func TestConversions(t *testing.T) {
	rows := []struct {
		text, unit string
		want       float64
		within     float64
	}{
		{"1psi", "kPa", 6.894757, 5e-7},
		{"1inHg", "kPa", 3.38638, 5e-6},
		{"0psi", "psia", 14.696, 5e-4},
		{"14.69595psia", "psi", 0, 1e-5},
		{"1hp", "W", 745.6999, 5e-5},
		{"32F", "degC", 0, 1e-9},
		{"212F", "degC", 100, 1e-9},
		{"40F", "degC", 4.4444, 5e-5},
		{"-40C", "degF", -40, 1e-9},
		{"-2F", "degF", -2, 0},
		{"1800rpm", "Hz", 30, 1e-12},
		{"1kWh", "J", 3.6e6, 0},
		{"1ft", "in", 12, 0},
		{"1lb", "oz", 16, 0},
		{"18Fdiff", "K", 10, 1e-12},
		{"47uF", "mfd", 47, 0},
		{"100ohm", "kohm", 0.1, 0},
		{"1/2 hp", "hp", 0.5, 0},
		{"180deg", "", math.Pi, 1e-11},
		// NIST SP 811, B.8 (from memory): 1 ton of refrigeration 3516.853 W, 1 ft³/min
		// 0.4719474 L/s, 1 US gal/min 3.785412 L/min, 1 mmHg 133.3224 Pa.
		{"1 ton", "W", 3516.853, 5e-4},
		{"1cfm", "L/s", 0.4719474, 5e-8},
		{"1gpm", "L/min", 3.785412, 5e-7},
		{"1000micron", "kPaa", 0.133322, 5e-7},
		{"500micron", "Paa", 66.661, 5e-4}, // 1 mmHg = 133.322 Pa
		{"500micron", "torr", 0.5, 1e-9},
		{"500micron", "mbara", 0.66661, 5e-6},
		{"500micron", "inHga", 0.019685, 5e-7}, // half a millimetre of 25.4 in an inch
		{"500micron", "bara", 0.00066661, 5e-9},
		{"10mbar", "kPa", 1, 1e-12},
		{"250Pa", "mbar", 2.5, 1e-12},
	}
	for _, r := range rows {
		got, err := read(t, r.text).In(r.unit)
		if err != nil || math.Abs(got-r.want) > r.within {
			t.Errorf("%s in %s = %v, %v; want %v", r.text, r.unit, got, err, r.want)
		}
	}
	for _, r := range [][2]string{{"3V", "ohm"}, {"5K", "degC"}, {"25C", "K"}, {"5psid", "psi"}, {"3V", "nonsense"}, {"3", "V"}} {
		if got, err := read(t, r[0]).In(r[1]); err == nil {
			t.Errorf("%s in %s = %v, want a refusal", r[0], r[1], got)
		}
	}
}

// UCUM codes, case-sensitive: UCUM essence, as in the table of units.
func TestUCUM(t *testing.T) {
	rows := map[string]string{
		"3.45ohm": "Ohm", "3.4kohm": "kOhm", "2.2Mohm": "MOhm", "47uF": "uF", "12mfd": "uF", "5mA": "mA", "25C": "Cel",
		"-2F": "[degF]", "1hp": "[HP]", "40psi": "[psi]", "7": "1", "60Hz": "Hz", "100kPa": "kPa",
		"5inHg": "[in_i'Hg]", "2kWh": "kW.h", "3Btu": "[Btu_IT]", "5K": "K", "5%": "%",
	}
	for text, code := range rows {
		q := read(t, text)
		if got := q.UCUM(); got != code {
			t.Errorf("%s has the code %q, want %q", text, got, code)
		}
		v, unit, u := q.Shown()
		if unit != code || u != 0 || text[0] != '-' && text[:1] > "9" || v == 0 {
			t.Errorf("%s shown as %v %s u %v", text, v, unit, u)
		}
	}
}

// Every symbol in the table reads back as its own unit, and every unit has
// what help and records need.
func TestUnitTable(t *testing.T) {
	for _, u := range Units() {
		if u.UCUM == "" || u.Help == "" || u.Quantity == "" {
			t.Errorf("%v is incomplete", u)
		}
		for _, s := range u.Symbols {
			if s == "F" && u.UCUM == "F" {
				s = "uF"
			}
			got, err := ParseUnit(s)
			if err != nil || got.Quantity() != u.Quantity {
				t.Errorf("%q reads as %v, %v", s, got, err)
			}
		}
	}
	for text, want := range map[string]string{"ohm/ft": "Ω/ft", "V*s": "V·s", "m^2": "m²", "1/K": "1/K", "kWh/day": "kWh/day", "W/degC": "W/K", "N.m": "N·m"} {
		u, err := ParseUnit(text)
		if err != nil || u.Symbol() != want {
			t.Errorf("%s is %v, %v; want %s", text, u, err, want)
		}
	}
	for _, bad := range []string{"ohm/", "/s", "V*", "V^x", "V^99", "zz/s", strings.Repeat("m^9*", 14) + "m"} {
		if u, err := ParseUnit(bad); err == nil {
			t.Errorf("%s is %v", bad, u.Symbol())
		}
	}
}

func TestPrinting(t *testing.T) {
	rows := []struct {
		text string
		u    float64
		want string
	}{
		{"34.7826A", 0.2, "34.8 ± 0.4 A (k=2)"},
		{"3.45ohm", 0.03, "3.45 ± 0.06 Ω (k=2)"},
		{"3.45ohm", 0.06, "3.45 ± 0.12 Ω (k=2)"},
		{"3400ohm", 15, "3400 ± 30 Ω (k=2)"},
		{"-2F", 1, "-2.0 ± 2.0 °F (k=2)"},
		{"1234V", 600, "1200 ± 1200 V (k=2)"},
		{"0.0V", 0.05, "0.00 ± 0.10 V (k=2)"},
	}
	for _, r := range rows {
		if got := read(t, r.text).WithU(r.u, 1).String(); got != r.want {
			t.Errorf("%s with u %v prints %q, want %q", r.text, r.u, got, r.want)
		}
	}
	if got := Number(0).String(); got != "0" {
		t.Errorf("zero prints %q", got)
	}
	if got := must(New(1.5e12, "psi")).String(); got != "1.5e12 psi" {
		t.Errorf("a large value prints %q", got)
	}
}

// A reading used twice is the same reading: its doubt cancels or doubles.
func TestSourcesStayTogether(t *testing.T) {
	x := read(t, "3.45ohm").WithU(0.03, 7)
	if d := must(Sub(x, x)); !d.Exact() || d.SI() != 0 {
		t.Errorf("x - x = %v", d)
	}
	if s := must(Add(x, x)); math.Abs(s.U()-0.06) > 1e-15 {
		t.Errorf("u(x + x) = %v", s.U())
	}
	if r := must(Div(x, x)); !r.Exact() || r.SI() != 1 {
		t.Errorf("x / x = %v", r)
	}
	y := read(t, "3.45ohm").WithU(0.03, 8)
	if s := must(Add(x, y)); math.Abs(s.U()-0.03*math.Sqrt2) > 1e-15 {
		t.Errorf("u(x + y) = %v", s.U())
	}
	if c := corr(x, y); c != 0 {
		t.Errorf("apart, yet correlated %v", c)
	}
	if c := corr(x, must(Neg(x))); c != -1 {
		t.Errorf("corr(x, -x) = %v", c)
	}
	if q := must(Pow(x, Number(2))); math.Abs(q.U()-2*3.45*0.03) > 1e-12 {
		t.Errorf("u(x²) = %v", q.U())
	}
	if q := must(Sqrt(must(Mul(x, x)))); math.Abs(q.U()-0.03) > 1e-12 || q.String() != "3.45 ± 0.06 Ω (k=2)" {
		t.Errorf("√(x·x) = %v", q)
	}
	if q := must(x.Convert("kohm")); math.Abs(q.U()-0.03) > 1e-15 {
		t.Errorf("converted u = %v", q.U())
	}
}

func TestApplyRefuses(t *testing.T) {
	log := func(x []float64) (float64, error) { return math.Log(x[0]), nil }
	rows := []struct {
		q    Q
		in   []string
		want string
	}{
		{read(t, "3V"), []string{"ohm"}, "cannot be turned"},
		{Number(0), []string{""}, "too large"},
		{Number(-1), []string{""}, "not a number"},
		{Number(1), nil, "1 values given, 0 wanted"},
		{Number(1), []string{"zz"}, "not a unit"},
	}
	for _, r := range rows {
		if q, err := Apply(log, r.in, "", r.q); err == nil || !strings.Contains(err.Error(), r.want) {
			t.Errorf("log of %v = %v, %v; want %q", r.q, q, err, r.want)
		}
	}
	// A bare number takes the unit asked for; at a limit of fn one side will do.
	half := func(x []float64) (float64, error) {
		if x[0] > 5 {
			return 0, fault("above five")
		}
		return 2 * x[0], nil
	}
	q, err := Apply(half, []string{"mA"}, "V", Number(5).WithU(0.1, 1))
	if err != nil || math.Abs(q.SI()-10) > 1e-9 || math.Abs(q.U()-0.2) > 1e-6 {
		t.Errorf("one-sided: %v, %v", q, err)
	}
}
