package sum

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// TestSlipsShowWhatWasMeant types a slip of each row, alone and inside a longer sum,
// with what each reading of it is worth: what is shown is worth one of these, and
// none of them is left out. The values are the arithmetic of what is typed.
func TestSlipsShowWhatWasMeant(t *testing.T) {
	rows := []struct{ text, meant string }{
		{"1,200W/240V", "5A; 5mA"},
		{"10A*1,000ohm", "10kV; 10V"},
		{"2,200 ohm * 2A", "4400V; 4.4V"},
		{"1,234,567W", "1234567W"},
		{"10,000ohm + 1,500ohm", "11500ohm; 11.5ohm"},
		{"1,234 + 5", "1239; 6.234"},
		{"3,45 + 2,5", "5.95"},
		{"mean(3,4, 3,6)", "3.5; 4"},
		{"max(10 inHg, 5inHg)", "-5inHg; 10inHga"},
		{"mean(3,4; 5)", "4.2; 4"},
		{"mean(3; 5)", "4"},
		{"mean(12 000, 13 000)", "12500; 6.25"},
		{"mean(120 240)", "120240; 180"},
		{"mean(10 20 30)", "20"},
		{"12 000 W / 240V", "50A"},
		{"1h15 * 80", "100h"},
		{"80 * 1h15min", "100h"},
		{"2h15min", "2.25h"},
		{"2h 15min * 80", "180h"},
		{"80 * 12h 30min", "1000h"},
		{"2 * 5ft 3in", "10.5ft"},
		{"5ft 3in", "5.25ft"},
		{`10'6" * 2`, "21ft"},
		{`2 * 10'6"`, "21ft"},
		{`10'6"`, "10.5ft"},
		{"2 * 10ft 6 in", "21ft"},
		{"10 ft 6 in", "10.5ft"},
		{"1/2 + 1/4 in", "0.75in"},
		{"3 in", "3in"},
		{`4"`, "4in"},
		{"4 in wc", "4inWC"},
		{"20% off 85", "68"},
		{"20% off 80 + 5", "68"},
		{"85 less 20%", "68"},
		{"80 + 5 less 20%", "68"},
		{"100 plus 7%", "107"},
		{"90 + 10 plus 7%", "107"},
		{"3 squared", "9"},
		{"3 cubed", "27"},
		{"avg(3, 5)", "4"},
		{"= 3 + 4", "7"},
		{"3 + 4 =", "7"},
		{"12 x 3", "36"},
		{"5% of 120V", "6V"},
		{"75 F to C", "75degF"},
		{"75 deg F in C", "75degF"},
		{"75 degrees F in C", "75degF"},
		{"3 * 1 1/2hp", "4.5hp"},
		{"9hp / 1 1/2 hp", "6"},
		{"1-1/2hp", "1.5hp"},
		{"1/2A in mA", "500mA"},
		{"10 k + 5", "10005"},
		{"2pi", "6.283185307179586"},
		{"12.5pi * 2", "78.53981633974483"},
		{"1 / 2pi", "0.15915494309189535"},
		{"60 / 2 pi", "9.549296585513721"},
		{"3supply", "354.6V"},
		{"10k || 15k", "10k"},
		{"10k || 15k || 20k", "10k"},
		{"12'000", "12000"},
		{"1'200'000 + 1", "1200001"},
		{"240V²", "57600V^2"},
		{"2m³", "2m^3"},
		{"10 ft² * 3", "30ft^2"},
		{"10cm²", "10cm^2"},
		{"3³", "27"},
		{"supply² / 10ohm", "1397.124W"},
		{"12 / 3 i", "2"},
		{"2 * √9", "6"},
		{"√(9) + 1", "4"},
		{"3 <> 4", "yes"},
		{"~6.5ohm + 3ohm", "9.5ohm"},
		{"$20 * 3", "60"},
		{"1.5h * $80", "120"},
		{"$80 * 1.5 hr", "120"},
		{"90min * $80", "120"},
		{"3 KWH * $0.17", "0.51"},
		{"0.5 inWC + 0.3 inWC", "0.8inWCd"},
		{"30psi + 5psi", "35psi"},
		{"30psi / (0.5psi/ft)", "60ft"},
		{"68psi * 110%", "74.8psid"},
		{"14 in * 25 in", "350in^2"},
		{"3 in + (5 in)", "8in"},
		{"40L / 8L/min", "5min"},
		{"100L / 8.5 L/min + 1h", "4305.882352941177s"},
		{"20kW / 4186J/kg/K", "4.777830864787386kg*K/s"},
		{"10mV/A", "10mohm"},
		{"wire_drop(10, 1.5mm2, 10)", "1.5"},
		{"wire_ohms(1.5mm², 10)", "1.5"},
		{"wire_drop(10, 5, 2.5 mm²)", "2.5"},
		{"wire_drop(1/0, 10)", "0"},
		{"wire_drop(2/0, 10)", "-1"},
		{"wire_ohms(3/0, 10)", "-2"},
		{"wire_drop(4/0, 10) * 2", "-6"},
		{"1m^3 in m3", "1m^3"},
		{"2m^3", "2m^3; 8m^3"},
		{"3.14 * 0.5in ^ 2", "0.785in^2; 1.57in^2"},
	}
	env := scope(t)
	env.Funcs["parallel_r"] = Func{Name: "parallel_r", Params: []Param{{Name: "r", Many: true}}, Call: func(a []Value) (Value, error) { return a[0], nil }}
	for _, name := range []string{"wire_drop_mm2", "wire_ohms_mm2", "wire_drop", "wire_ohms"} {
		env.Funcs[name] = Func{Name: name, Params: []Param{{Name: "r", Many: true}}, Call: func(a []Value) (Value, error) {
			for _, v := range a {
				if v.(quantity.Q).Dim() != (quantity.Dim{}) {
					return nil, source.Errorf(0, 0, "%s takes plain numbers", name)
				}
			}
			return a[0], nil
		}}
	}
	env.Values["i"] = eval(t, "2", nil).(quantity.Q)
	met := map[string]bool{}
	for _, r := range rows {
		err := Doubtful(r.text, env)
		if err == nil {
			_, err = Eval(r.text, env)
		}
		e, ok := err.(*source.Error)
		if !ok || !strings.HasPrefix(e.Hint, "write ") {
			t.Errorf("%s: %v, want a fault with what works", r.text, err)
			continue
		}
		left := strings.Split(r.meant, "; ")
		for one := range strings.SplitSeq(strings.TrimPrefix(e.Hint, "write "), ", or ") {
			v, at := eval(t, one, env), -1
			for i, m := range left {
				if worth(t, v, m) {
					at = i
				}
			}
			if at < 0 {
				t.Errorf("%s: shown is %s, which is %s; meant is %s", r.text, one, shown(v), r.meant)
				continue
			}
			left = append(left[:at], left[at+1:]...)
			for _, s := range slips() {
				if strings.Contains(e.Msg, s.of) && s.put(r.text) == one {
					met[s.of+s.from.String()+s.to] = true
				}
			}
		}
		if len(left) > 0 {
			t.Errorf("%s: %s, which lacks %s", r.text, e.Hint, strings.Join(left, "; "))
		}
	}
	for _, s := range slips() {
		if !met[s.of+s.from.String()+s.to] {
			t.Errorf("no row here has the slip %s|%s|%s: what it shows is worth what is not known", s.of, s.from, s.to)
		}
	}
}

// worth reports whether a value is the one that a text names.
func worth(t *testing.T, v Value, text string) bool {
	t.Helper()
	q, ok := v.(quantity.Q)
	if !ok {
		return shown(v) == text
	}
	number := text[:len(text)-len(strings.TrimLeft(text, "-0123456789."))]
	var want quantity.Q
	var err error
	if unit := text[len(number):]; strings.ContainsAny(unit, "*/^") {
		base := eval(t, number, nil).(quantity.Q)
		want, err = quantity.New(base.SI(), unit)
	} else {
		want, err = quantity.Parse(text, "")
	}
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return q.Dim() == want.Dim() && math.Abs(q.SI()-want.SI()) <= 1e-9*math.Abs(want.SI())
}
