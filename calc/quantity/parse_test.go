package quantity

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/source"
)

// letterRows are values of IEC 60062:2016+A1:2019.
var parseRows = []struct {
	text, unit string
	si, res    float64 // SI value and worth of the last digit
	shown      string
}{
	{"3.45", "ohm", 3.45, 0.01, "3.45 Ω"},
	{"6.50", "ohm", 6.5, 0.01, "6.50 Ω"},
	{"6.5k", "ohm", 6500, 100, "6.5 kΩ"},
	{"3.4K", "ohm", 3400, 100, "3.4 kΩ"},
	{"2.2M", "ohm", 2.2e6, 1e5, "2.2 MΩ"},
	{"12m", "ohm", 0.012, 0.001, "12 mΩ"},
	{"3.4k", "", 3400, 100, "3400"},
	{"12m", "", 12, 1, "12 m"},
	{"3R4", "", 3.4, 0.1, "3.4 Ω"},
	{"R47", "", 0.47, 0.01, "0.47 Ω"},
	{"4R7", "ohm", 4.7, 0.1, "4.7 Ω"},
	{"4k7", "", 4700, 100, "4.7 kΩ"},
	{"47K3", "", 47300, 100, "47.3 kΩ"},
	{"4M7", "ohm", 4.7e6, 1e5, "4.7 MΩ"},
	{"4n7", "", 4.7e-9, 1e-10, "4.7 nF"},
	{"1u0", "", 1e-6, 1e-7, "1.0 µF"},
	{"1µ0", "mfd", 1e-6, 1e-7, "1.0 µF"},
	{"118.2V", "V", 118.2, 0.1, "118.2 V"},
	{"118.2 V", "V", 118.2, 0.1, "118.2 V"},
	{"0.2ohm", "", 0.2, 0.1, "0.2 Ω"},
	{"47uF", "", 47e-6, 1e-6, "47 µF"},
	{"47uf", "", 47e-6, 1e-6, "47 µF"},
	{"11.8", "mfd", 11.8e-6, 1e-7, "11.8 mfd"},
	{"14A", "", 14, 1, "14 A"},
	{"14 amps", "", 14, 1, "14 A"},
	{"60Hz", "", 60, 1, "60 Hz"},
	{"50ft", "", 15.24, 0.3048, "50 ft"},
	{"3min", "", 180, 60, "3 min"},
	{"-2F", "degF", 254.26111, 5.0 / 9, "-2 °F"},
	{"25C", "", 298.15, 1, "25 °C"},
	{"-18", "degC", 255.15, 1, "-18 °C"},
	{"40psi", "", 275790.29, 6894.757, "40 psi"},
	{"5%", "", 0.05, 0.01, "5 %"},
	{"1/6 hp", "", 124.28331, 0, "0.1667 hp"},
	{"1/6hp", "", 124.28331, 0, "0.1667 hp"},
	{"1/6", "hp", 124.28331, 0, "0.1667 hp"},
	{"1e3", "V", 1000, 1000, "1000 V"},
	{".5", "V", 0.5, 0.1, "0.5 V"},
	{"5K", "", 5, 1, "5 K"},
	{" 7 ", "V", 7, 1, "7 V"},
	// A blank before the unit changes nothing, written out it is the same.
	{"35 uf", "", 35e-6, 1e-6, "35 µF"},
	{"22.5 a", "", 22.5, 0.1, "22.5 A"},
	{"5.4 kw", "", 5400, 100, "5.4 kW"},
	{"5 mh", "", 5e-3, 1e-3, "5 mH"},
	{"75 f", "degF", 297.03889, 5.0 / 9, "75 °F"},
	{"10 megohm", "ohm", 1e7, 1e6, "10 MΩ"},
	{"2.2meg", "", 2.2e6, 1e5, "2.2 MΩ"},
	{"20 mbar", "", 2000, 100, "20 mbar"},
	{"400 cfm", "", 0.188778977, 4.71947443e-4, "400 cfm"},
}

func TestParse(t *testing.T) {
	for _, r := range parseRows {
		q, err := Parse(r.text, r.unit)
		if err != nil {
			t.Errorf("%q in %q: %v", r.text, r.unit, err)
			continue
		}
		if near(q.SI(), r.si, 1e-7) != "" || near(q.res, r.res, 1e-6) != "" || q.String() != r.shown {
			t.Errorf("%q in %q = %v, last digit %v, %q; want %v, %v, %q", r.text, r.unit, q.SI(), q.res, q.String(), r.si, r.res, r.shown)
		}
		if !q.Exact() {
			t.Errorf("%q has an uncertainty that nobody gave it", r.text)
		}
		// What is printed reads back as the same value, to its last digit.
		if again, err := Parse(q.String(), r.unit); err != nil || math.Abs(again.SI()-q.SI()) > max(q.res/2, 1e-3*math.Abs(q.SI())) || again.Kind() != q.Kind() {
			t.Errorf("%q prints as %q, which reads as %v, %v", r.text, q.String(), again, err)
		}
	}
}

func near(got, want, rel float64) string {
	if math.Abs(got-want) <= rel*math.Abs(want) {
		return ""
	}
	return "not near"
}

func TestParseRefuses(t *testing.T) {
	rows := []struct {
		text, unit string
		col, end   int
		msg        string // part of message and hint
	}{
		{"", "ohm", 1, 1, "missing"},
		{"abc", "ohm", 1, 4, "not a number"},
		{"118V", "ohm", 1, 5, "118V is not a resistance"},
		{"  3.4 zz", "", 7, 9, "not understood"},
		{"3.4zz", "", 4, 6, "not a unit"},
		{"3.4ohn", "", 4, 7, "did you mean ohm?"},
		{"47farad", "", 3, 8, "uF, nF, pF or mfd"},
		{"2mw", "", 2, 4, "mega"},
		{"5V3", "", 1, 4, "4k7"},
		{"4k7J", "", 4, 5, "not understood"},
		{"1/0 hp", "", 3, 4, "division by zero"},
		{"1e999", "", 1, 6, "out of range"},
		{"5K", "degC", 1, 3, "not a temperature"},
		{"OL", "ohm", 1, 3, "not a number"},
		{"~6.5", "ohm", 1, 5, "not a number"},
		{"3,4", "ohm", 2, 4, "not understood"},
		{"--3", "ohm", 2, 4, "not a number"},
		{"7F", "mfd", 1, 3, "capacitance"},
		{strings.Repeat("1", 500), "ohm", 1, 501, "too long"},
	}
	for _, r := range rows {
		q, err := Parse(r.text, r.unit)
		e, ok := err.(*source.Error)
		if !ok {
			t.Errorf("%q in %q = %v, error %v; want a fault", r.text, r.unit, q, err)
			continue
		}
		if e.Col != r.col || e.End != r.end && r.text != "" || !strings.Contains(e.Error(), r.msg) {
			t.Errorf("%q in %q: %d-%d %q; want %d-%d %q", r.text, r.unit, e.Col, e.End, e.Error(), r.col, r.end, r.msg)
		}
	}
}

func TestScanStopsAtTheLiteral(t *testing.T) {
	rows := []struct {
		text string
		n    int
		want string
	}{
		{"120V / 3.45ohm", 4, "120 V"},
		{"47 uF*2", 5, "47 µF"},
		{"12 in ft", 2, "12"},
		{"1/6 hp + 2W", 6, "0.1667 hp"},
		{"1/60Hz", 1, "1"},
		{"3 min(1)", 1, "3"},
		{"75degF in degC", 6, "75 °F"},
		{"3.4k)", 4, "3400"},
		{"x", 0, "0"},
		{".", 0, "0"},
	}
	for _, r := range rows {
		q, n, err := Scan([]rune(r.text))
		if err != nil || n != r.n || q.String() != r.want {
			t.Errorf("Scan(%q) = %q, %d, %v; want %q, %d", r.text, q.String(), n, err, r.want, r.n)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, r := range parseRows {
		f.Add(r.text, r.unit)
	}
	f.Fuzz(func(t *testing.T, text, unit string) {
		q, err := Parse(text, unit)
		if err != nil {
			e, ok := err.(*source.Error)
			if !ok {
				t.Fatalf("%q in %q: %T", text, unit, err)
			}
			if n := len([]rune(text)); unit == "" && (e.Col < 1 || e.Col > n+1 || e.End < e.Col || e.End > n+2) {
				t.Fatalf("%q: columns %d-%d of %d", text, e.Col, e.End, n)
			}
			return
		}
		if math.IsNaN(q.SI()) || math.IsInf(q.SI(), 0) {
			t.Fatalf("%q is %v", text, q.SI())
		}
		if q.String() == "" {
			t.Fatalf("%q prints nothing", text)
		}
	})
}
