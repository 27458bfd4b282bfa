package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// IEC 60539-1, beta equation; values computed from it.
func TestBetaOhms(t *testing.T) {
	for _, c := range []struct{ beta, celsius, want float64 }{
		{3977, 0, 33900}, {3977, 10, 20272}, {3977, 25, 10000}, {3977, 50, 3563}, {3977, 85, 1070},
		{3950, 0, 33621}, {3950, 10, 20175}, {3950, 50, 3588}, {3950, 85, 1087}, {3950, 100, 698},
		{3435, -20, 77523}, {3435, 0, 28704}, {3435, 10, 18410}, {3435, 50, 4101}, {3435, 85, 1451}, {3435, 100, 987},
	} {
		near(t, "ohms", BetaOhms(10_000, c.beta, c.celsius), c.want, 0.51)
	}
}

// IEC 60751:2008 and ASTM E1137 tables.
func TestPlatinumOhms(t *testing.T) {
	for _, c := range []struct{ celsius, want float64 }{
		{-200, 18.52}, {-100, 60.26}, {-50, 80.31}, {0, 100}, {25, 109.735}, {50, 119.40},
		{100, 138.5055}, {200, 175.86}, {300, 212.05}, {400, 247.09}, {600, 313.71}, {850, 390.48},
	} {
		near(t, "ohms", formula.PlatinumOhms(100, c.celsius), c.want, 0.0051)
		near(t, "ohms of 1000", formula.PlatinumOhms(1000, c.celsius), 10*c.want, 0.051)
	}
}

// Class limits at 100 °C: 0.35 K for A and 0.80 K for B (IEC 60751).
func TestPlatinum(t *testing.T) {
	at := measure.Exact(100)
	for _, c := range []struct {
		name  string
		ohm   measure.Value
		class string
		word  verdict.Word
		facts []string
	}{
		{"0.3 K high, class A", measure.Exact(formula.PlatinumOhms(100, 100.3)), "A", verdict.Sound, []string{"sensor-sound"}},
		{"0.4 K high, class A", measure.Exact(formula.PlatinumOhms(100, 100.4)), "A", verdict.Failed, []string{"sensor-failed", "sensor-reads-warm"}},
		{"0.7 K high, class B", measure.Exact(formula.PlatinumOhms(100, 100.7)), "", verdict.Sound, []string{"sensor-sound"}},
		{"0.9 K high, class B", measure.Exact(formula.PlatinumOhms(100, 100.9)), "B", verdict.Failed, []string{"sensor-failed", "sensor-reads-warm"}},
		{"meter too coarse", within(138.5, 1.7), "B", verdict.CannotTell, []string{"sensor-undecided"}},
		{"open", measure.Open(7), "B", verdict.Failed, []string{"sensor-failed"}},
		{"shorted", within(0.2, 0.3), "B", verdict.Failed, []string{"sensor-failed"}},
		{"138 kΩ", within(138.5e3, 1e3), "B", verdict.Suspect, []string{"sensor-suspect"}},
		{"unknown class", within(138.5, 0.1), "Q", verdict.CannotTell, []string{"sensor-undecided"}},
	} {
		check(t, c.name, Platinum(PlatinumIn{Ohms: c.ohm, Celsius: at, R0: 100, Class: c.class}), c.word, c.facts...)
	}
}

// Rows of a published 10 kΩ curve (Vishay document 29049, from memory).
var curve = []Point{{-40, 332100}, {-20, 96360}, {0, 32555}, {10, 19873}, {20, 12488}, {25, 10000},
	{30, 8059}, {40, 5330}, {50, 3605}, {60, 2490}, {85, 1070}, {100, 677}}

func TestNTC(t *testing.T) {
	table, doubts, err := NewTable(curve)
	if err != nil || len(doubts) != 0 {
		t.Fatal(doubts, err)
	}
	ice, room := measure.Within(0, 0.2), measure.Within(22, 1)
	beta := func(o, c measure.Value) NTCIn { return NTCIn{Ohms: o, Celsius: c, R25: 10_000, Beta: 3977} }
	for _, c := range []struct {
		name  string
		in    NTCIn
		word  verdict.Word
		facts []string
	}{
		{"in ice water, by table", NTCIn{Ohms: within(32.6e3, 350), Celsius: ice, Table: table}, verdict.Sound, []string{"sensor-sound"}},
		{"good part judged by beta alone", beta(within(32.6e3, 350), ice), verdict.Sound, []string{"sensor-sound"}},
		{"drifted", beta(within(45e3, 500), ice), verdict.Failed, []string{"sensor-failed", "sensor-reads-cold"}},
		{"open", beta(measure.Open(7), ice), verdict.Failed, []string{"sensor-failed", "sensor-open"}},
		{"shorted at no known temperature", beta(within(0.2, 0.3), measure.Open(0)), verdict.Failed, []string{"sensor-failed"}},
		{"shorted, no data", NTCIn{Ohms: within(0.2, 0.3), Celsius: ice}, verdict.Failed, []string{"sensor-failed"}},
		{"a contact called a sensor", NTCIn{Ohms: within(0.2, 0.3), Celsius: ice, Switch: true}, verdict.CannotTell, []string{"sensor-undecided"}},
		{"shorted", beta(within(0.3, 0.3), ice), verdict.Failed, []string{"sensor-failed"}},
		{"one count of a 2000k range", beta(within(33, 3), ice), verdict.Suspect, []string{"sensor-suspect"}},
		{"a thermometer good to 1 K is too coarse for a table's 5 %", NTCIn{Ohms: within(11.4e3, 150), Celsius: room, Table: table}, verdict.CannotTell, []string{"sensor-undecided"}},
		{"outside the table", NTCIn{Ohms: within(400, 10), Celsius: measure.Exact(130), Table: table}, verdict.CannotTell, []string{"sensor-undecided"}},
		{"no data", NTCIn{Ohms: within(400, 10), Celsius: ice}, verdict.CannotTell, []string{"sensor-undecided"}},
		{"no data, open", NTCIn{Ohms: measure.Open(7), Celsius: ice}, verdict.Suspect, []string{"sensor-suspect", "sensor-open"}},
		{"near the limit", beta(within(37e3, 600), ice), verdict.CannotTell, []string{"sensor-undecided"}},
	} {
		check(t, c.name, NTC(c.in), c.word, c.facts...)
	}
}

// 60 kΩ of a 10 kΩ sensor with beta 3977 is -10.3 °C: 1/T = 1/298.15 +
// ln 6 / 3977. 96.36 kΩ is -20 °C by the published curve, 138.5055 Ω of a
// Pt100 100 °C (IEC 60751).
func TestPretends(t *testing.T) {
	table, _, err := NewTable(curve)
	if err != nil {
		t.Fatal(err)
	}
	ice := measure.Within(0, 0.2)
	for _, c := range []struct {
		name string
		got  verdict.Verdict
		fact string
		text string
	}{
		{"beta", NTC(NTCIn{Ohms: within(60e3, 700), Celsius: ice, R25: 10_000, Beta: 3977}), "sensor-reads-cold", "reads as -10.3 °C, colder"},
		{"table", NTC(NTCIn{Ohms: within(96.36e3, 700), Celsius: ice, Table: table}), "sensor-reads-cold", "reads as -20 °C, colder"},
		{"table, the other way", NTC(NTCIn{Ohms: within(10e3, 70), Celsius: ice, Table: table}), "sensor-reads-warm", "reads as 25 °C, warmer"},
		{"platinum", Platinum(PlatinumIn{Ohms: within(138.5055, 0.1), Celsius: measure.Within(80, 0.2), R0: 100, Class: "B"}), "sensor-reads-warm", "reads as 100 °C, warmer"},
	} {
		check(t, c.name, c.got, verdict.Failed, "sensor-failed", c.fact)
		if !strings.Contains(c.got.Text, c.text) {
			t.Errorf("%s: %q does not say %q", c.name, c.got.Text, c.text)
		}
	}
	beyond := NTC(NTCIn{Ohms: within(2, 0.1), Celsius: ice, R25: 10_000, Beta: 3977})
	check(t, "beyond what a control sees", beyond, verdict.Failed, "sensor-failed")
}

// A table and R25 with beta describe one part; 32.55 kΩ at 0 °C is the published
// curve of the 10 kΩ sensor above, at 32 °C it would read 7.4 kΩ.
func TestTableAgainstBeta(t *testing.T) {
	whole, _, err := NewTable(curve)
	if err != nil {
		t.Fatal(err)
	}
	if d := Against(whole, 10_000, 3977); len(d) > 0 {
		t.Errorf("the published curve is doubted: %q", d)
	}
	slipped, _, err := NewTable([]Point{{0, 32_650}, {32, 32_600}})
	if err != nil {
		t.Fatal(err)
	}
	if d := Against(slipped, 10_000, 3977); len(d) != 1 || !strings.Contains(d[0], "meant as 32 °F") {
		t.Errorf("doubts %q", d)
	}
	got := NTC(NTCIn{Ohms: within(9.8e3, 100), Celsius: measure.Within(25, 0.2), Table: slipped, R25: 10_000, Beta: 3977})
	check(t, "nothing is judged by it", got, verdict.CannotTell, "sensor-undecided")
}

// 1082.1 Ω is due at 21.1 °C of a Pt1000 (IEC 60751): a meter of 1 % cannot
// part ±3 K of it.
func TestCoarseMeterSaysSo(t *testing.T) {
	got := Platinum(PlatinumIn{Ohms: within(1080, 14), Celsius: measure.Within(21.1, 1), R0: 1000})
	check(t, "coarse", got, verdict.CannotTell, "sensor-undecided")
	if !strings.Contains(got.Text, "no gross fault") || !strings.Contains(got.Text, "meter ohm") {
		t.Errorf("text %q", got.Text)
	}
	fine := Platinum(PlatinumIn{Ohms: within(1080, 4), Celsius: measure.Within(21.1, 0.3), R0: 1000})
	check(t, "fine", fine, verdict.Sound, "sensor-sound")
	nothing := NTC(NTCIn{Ohms: within(1080, 14), Celsius: measure.Within(21.1, 1)})
	if !strings.Contains(nothing.Text, "plate r0 1000") {
		t.Errorf("without data: %q", nothing.Text)
	}
}

// A sensor of any size is judged alike: all ohms times a factor, same words.
func TestNTCScales(t *testing.T) {
	for x := 20e3; x < 60e3; x += 317 {
		a := NTC(NTCIn{Ohms: within(x, x*0.01), Celsius: measure.Within(0, 0.5), R25: 10e3, Beta: 3977})
		b := NTC(NTCIn{Ohms: within(x/2, x*0.005), Celsius: measure.Within(0, 0.5), R25: 5e3, Beta: 3977})
		if a.Word != b.Word {
			t.Fatalf("%v Ω: %s, half: %s", x, a.Word, b.Word)
		}
		near(t, "margin", b.Margin, a.Margin, 1e-6)
	}
}

func TestTableInterpolates(t *testing.T) {
	every, _, _ := NewTable(curve)
	for _, p := range curve {
		got, ok := every.Ohms(p.Celsius)
		if !ok {
			t.Fatalf("%v °C is not covered", p.Celsius)
		}
		near(t, "row", got, p.Ohms, p.Ohms*1e-12)
	}
	coarse, _, _ := NewTable([]Point{{0, 32555}, {20, 12488}, {40, 5330}})
	got, _ := coarse.Ohms(10) // the row left out says 19873
	near(t, "between rows", got, 19873, 19873*0.005)
	if got, ok := every.Ohms(-41); !ok || got < 332100 || got > 360_000 {
		t.Errorf("a thermometer's doubt beyond the end row gave %v", got)
	}
	if _, ok := every.Ohms(-43); ok {
		t.Error("a value below the table was made up")
	}
	if _, ok := (Table{}).Ohms(0); ok {
		t.Error("an empty table gave a value")
	}
}

func TestTableCatchesMisprints(t *testing.T) {
	with := func(i int, ohms float64) []Point {
		p := append([]Point(nil), curve...)
		p[i].Ohms = ohms
		return p
	}
	for _, c := range []struct {
		name string
		rows []Point
		want string
	}{
		{"a digit dropped", with(4, 1248), "20 °C"},
		{"a digit doubled", with(6, 80590), "30 °C"},
		{"the same temperature twice", append(curve[:3:3], Point{0, 30000}), "two rows"},
		{"one row", curve[:1], "two rows or more"},
		{"an impossible value", with(3, 0), "10 °C"},
		{"chaos", []Point{{0, 5}, {10, 1}, {20, 6}, {30, 2}, {40, 7}, {50, 3}}, "more than one row"},
	} {
		_, _, err := NewTable(c.rows)
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q in it", c.name, err, c.want)
		}
	}
	// The order is kept and the curve still bends: 9.9k printed as 19.9k would
	// break the order, 12.9k for 19.9k does not.
	_, doubts, err := NewTable(with(3, 12900))
	if err != nil || len(doubts) != 1 || !strings.Contains(doubts[0], "10 °C") {
		t.Errorf("doubts %q, %v", doubts, err)
	}
	// A platinum table rises and is as good.
	if _, doubts, err := NewTable([]Point{{0, 100}, {100, 138.51}, {200, 175.86}, {300, 212.05}}); err != nil || len(doubts) != 0 {
		t.Errorf("rising table: %q, %v", doubts, err)
	}
}

// The rows may be given in any order.
func TestTableIgnoresOrder(t *testing.T) {
	back := append([]Point(nil), curve...)
	for i, j := 0, len(back)-1; i < j; i, j = i+1, j-1 {
		back[i], back[j] = back[j], back[i]
	}
	a, _, _ := NewTable(curve)
	b, _, err := NewTable(back)
	if err != nil {
		t.Fatal(err)
	}
	x, _ := a.Ohms(33)
	y, _ := b.Ohms(33)
	near(t, "ohms", y, x, 0)
}

func TestWrongRange(t *testing.T) {
	for display, want := range map[string]bool{
		"003": true, "013": true, "00.3": true, "0.003M": true, "0.03 MΩ": true, "0.3M": true,
		"3.4": false, "0.3": false, "0.2": false, "118": false, "0": false, "00": false, "000": false, "0.0": false,
		"4.7k": false, "3k": false, "OL": false, "": false, "4k7": false, "0.47M": false, "~6.5": false, "1e3": false,
	} {
		got, ok := WrongRange(display)
		if ok != want {
			t.Errorf("%q: %v, want %v", display, ok, want)
		}
		if ok && got.Word != verdict.Suspect {
			t.Errorf("%q: %s, want suspected and not condemned", display, got.Word)
		}
	}
}

// `003` on a 2000k range is suspected, not condemned; what is not failed stays.
func TestOnWrongRange(t *testing.T) {
	burnt := Heater(HeaterIn{Ohms: within(3, 0.3), Watts: 450, Volts: 120, Series: Alone})
	check(t, "before", burnt, verdict.Failed, "heater-failed")
	check(t, "heater", OnWrongRange(burnt), verdict.Suspect, "heater-suspect")
	check(t, "sensor", OnWrongRange(NTC(NTCIn{Ohms: within(3, 0.3), Celsius: measure.Exact(0), R25: 10e3, Beta: 3977})), verdict.Suspect, "sensor-suspect")
	check(t, "contact", OnWrongRange(CurrentRelay(RelayIn{Part: Contact, Ohms: within(0.3, 0.3)})), verdict.Suspect, "start-device-suspect")
	check(t, "sound", OnWrongRange(Heater(HeaterIn{Ohms: within(32, 0.3), Watts: 450, Volts: 120})), verdict.Sound, "heater-sound")
	check(t, "no fact of its own", OnWrongRange(Switch(SwitchIn{Path: Fuse, Ohms: measure.Open(7)})), verdict.Suspect)
}
