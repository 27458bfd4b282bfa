package sum

import (
	"strings"
	"testing"

	"ohmcall/calc/source"
)

// TestSlips types what people write otherwise than a sum has it: each is refused
// with what works, and what is shown works.
func TestSlips(t *testing.T) {
	rows := []struct{ text, mark, want string }{
		{"3,45 + 2,5",
			" ^", "3.45 + 2.5"},
		{"1,234 + 5",
			" ^", "1234 + 5, or 1.234 + 5"},
		{"1,234.5 V",
			" ^", "1234.5 V"},
		{"10,000 ohm",
			"  ^", "10000 ohm, or 10.000 ohm"},
		{"mean(3,4, 3,6)",
			"      ^", "mean(3.4, 3.6), or mean(3, 4, 3, 6)"},
		{"sum(24,50, 18,00)",
			"      ^", "sum(24.50, 18.00), or sum(24, 50, 18, 00)"},
		{"mean(3.4, 3,6)",
			"           ^", "mean(3.4, 3.6), or mean(3.4, 3, 6)"},
		{"reactance(4,7uF, 60)",
			"           ^", "reactance(4.7uF, 60)"},
		{"400cfm in m3/h",
			"          ^^", "400cfm in m^3/h"},
		{"12 000 W",
			"   ^^^^^", "12000 W"},
		{"1 000 000 W",
			"  ^^^", "1000000 W"},
		{"12'000",
			"  ^", "12000"},
		{"1'200'000 + 1",
			" ^^^^^", "1200000 + 1"},
		{"240V²",
			"    ^", "240V^2"},
		{"2 * √3",
			"    ^", "2 * sqrt(3)"},
		{"√(9) + 1",
			"^", "sqrt(9) + 1"},
		{"75 F to C",
			"     ^^", "75 F in C"},
		{"75 deg F in C",
			"       ^", "75F in C"},
		{"75 degrees F in C",
			"   ^^^^^^^", "75F in C"},
		{"2h 15min",
			"   ^^^^^", "2h + 15min"},
		{"2h15min",
			"^^^^^^^", "2h + 15min"},
		{"5ft 3in",
			"    ^^^", "5ft + 3in"},
		{"2pi",
			" ^^", "2 * pi"},
		{"2 pi",
			"  ^^", "2 * pi"},
		{"3supply",
			" ^^^^^^", "3 * supply"},
		{"10 k",
			"   ^", "10k"},
		{"1 1/2hp",
			"  ^^^^^", "(1 + 1/2) * 1hp"},
		{"1 1/2 hp",
			"  ^^^^^^", "(1 + 1/2) * 1hp"},
		{"1-1/2hp",
			" ^", "(1 + 1/2) * 1hp"},
		{"1/2A in mA",
			"     ^^", "(1/2) * 1A in mA"},
		{"1/2 A in mA",
			"      ^^", "(1/2) * 1A in mA"},
		{"1/2h in min",
			"     ^^", "(1/2) * 1h in min"},
		{"~6.5ohm + 3ohm",
			"^", "6.5ohm + 3ohm"},
		{"10k || 15k",
			"^^^", "parallel_r(10k, 15k)"},
		{"10k || 15k || 20k",
			"^^^", "parallel_r(10k, 15k, 20k)"},
		{"5% of 120V",
			"   ^^", "5% * 120V"},
		{"12 x 3",
			"   ^", "12 * 3"},
		{"1.5h * $80",
			"       ^", "1.5h * 80/h"},
		{"30psi * 2.31ft/psi",
			"      ^", "30psid * 2.31ft/psi"},
		{"$20 * 3",
			"^", "20 * 3"},
		{"4 in wc",
			"     ^^", "4inWC"},
		{`0.5"wc`,
			"   ^", "0.5inWC"},
		{"3.5 inch w.c. in psi",
			"         ^", "3.5inWC in psi"},
		{`4"`,
			" ^", "4in"},
		{`10'6"`,
			"  ^", "10ft + 6in"},
		{"10 ft 6 in",
			"      ^", "10ft + 6in"},
		{"1/2 + 1/4 in",
			"            ^", "(1/2 + 1/4) * 1in"},
		{"20% off 85",
			"    ^^^", "85 * (1 - 20%)"},
		{"85 less 20%",
			"   ^^^^", "85 * (1 - 20%)"},
		{"3 squared",
			"  ^^^^^^^", "3^2"},
		{"avg(3, 5)",
			"^^^", "mean(3, 5)"},
		{"= 3 + 4",
			"^", "3 + 4"},
		{"mean(3,4;5)",
			"        ^", "mean(3.4, 5), or mean(3,4, 5)"},
		{"10inHg in psi",
			"^^^^^^", "-10inHg in psi, or 10inHga in psi"},
		{"max(10 inHg, 5psi)",
			"    ^^^^^^^", "max(-10inHg, 5psi)"},
		{"reactance(60Hz, 47uF)",
			"          ^^^^", "reactance(47uF, 60Hz)"},
	}
	env := scope(t)
	env.Funcs["parallel_r"] = Func{Name: "parallel_r", Params: []Param{{Name: "r", Many: true}}, Call: func(a []Value) (Value, error) { return a[0], nil }}
	for _, r := range rows {
		err := Doubtful(r.text, env)
		if err == nil {
			_, err = Eval(r.text, env)
		}
		e, ok := err.(*source.Error)
		if !ok {
			t.Errorf("%s: %v, want a fault", r.text, err)
			continue
		}
		col := strings.Index(r.mark, "^") + 1
		end := col + strings.Count(r.mark, "^")
		if e.Col != col || e.End != end || e.Hint != "write "+r.want {
			t.Errorf("%s: %d-%d %v; want %d-%d (write %s)", r.text, e.Col, e.End, e, col, end, r.want)
		}
		for one := range strings.SplitSeq(r.want, ", or ") {
			eval(t, one, env)
		}
	}
}

// TestNoSlips holds where nothing else is shown, and what is a list.
func TestNoSlips(t *testing.T) {
	env := scope(t)
	for text, want := range map[string]string{
		"10inHg + 5psi":  "inches of mercury on a gauge are a vacuum (-10inHg is below the air, 10inHga is above a vacuum)",
		"12 foo":         `"foo" is not a unit known here`,
		"12 mw":          `"mw" is not a unit known here (capital M is mega, small m is milli: MW or mW)`,
		"12 cfn":         `"cfn" is not a unit known here (did you mean cfm?)`,
		"3 ± 2":          `"±" is not used in sums (the doubt of a reading is its meter's; of numbers work out both ends: 10 - 1 and 10 + 1)`,
		"ohm(1,2, 3)":    "ohm wants 2 values, not 3 (ohm(point, point))",
		"ohm(temp(x))":   `"(" cannot stand in a name (the point is a name: ohm(point, point))`,
		"within(3, 4V)":  "in within: a plain number and V cannot be compared (values have their units, such as 4V: within(x, limit))",
		"100 to 3":       "an operator such as + or * is missing before to",
		"80 + 5%":        "a plain number and % cannot be added (a share is taken of something: 80 * 5%",
		"80 - 5%":        "a plain number and % cannot be added",
		"twice(80 - 5%)": "a plain number and % cannot be added",
		"3V + nothing":   `there is no value named "nothing" (nothing is a function: write nothing(…))`,
		"120V / (3 + A)": `there is no value named "A"`,
		"120V/R":         `there is no value named "R"`,
		"3.4k + 2M2":     "a plain number and MΩ cannot be added (a unit stands directly after its number, such as 3400Ω)",
		"10 + 4.7kohm":   "a plain number and kΩ cannot be added (a unit stands directly after its number, such as 10Ω or 10kΩ)",
	} {
		err := Doubtful(text, env)
		if err == nil {
			_, err = Eval(text, env)
		}
		if err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%s: %v, want %s", text, err, want)
		}
	}
	// A stored line of either kind is what it was.
	for text, want := range map[string]string{"24.50 + 7%": "24.57", "max(1,2, 3)": "3", "-300C + 500K": "200 °C", "40m/8m/s": "5 Hz", "2m^3": "8000 L", "10inHg in psi": "4.91 psi"} {
		if got := shown(eval(t, text, env)); got != want || Doubtful(text, env) == nil {
			t.Errorf("%s = %s, %v; want %s and a doubt", text, got, Doubtful(text, env), want)
		}
	}
	for text, want := range map[string]string{"max(1,2,3)": "3", "max(1, 2, 3)": "3", "sum(24,50)": "74", "max(1,2.5)": "2.5", "-10inHg in psi": "-4.91 psi", "10inHga in psia": "4.91 psia", "0inHg": "0 inHg", "5psi in inHg": "10.18 inHg"} {
		if got := shown(eval(t, text, env)); got != want || Doubtful(text, env) != nil {
			t.Errorf("%s = %s, %v; want %s", text, got, Doubtful(text, env), want)
		}
	}
}
