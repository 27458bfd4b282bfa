package repair

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"
)

// with sets values in pairs of name and number.
func with(t *testing.T, pairs ...any) Assumptions {
	t.Helper()
	a := Assume(true)
	for i := 0; i < len(pairs); i += 2 {
		var err error
		if a, err = a.With(pairs[i].(string), pairs[i+1].(float64)); err != nil {
			t.Fatal(err)
		}
	}
	return a
}

// What is no refrigerator or freezer has no life and no energy that anybody
// could assume: the life must be given, and the energy of both is alike.
func TestAssumeNothingOfOtherMachines(t *testing.T) {
	a := Assume(false)
	for _, x := range a {
		if (x.Name == "life" || strings.HasPrefix(x.Name, "energy")) && x.Value != 0 {
			t.Errorf("%s is assumed: %+v", x.Name, x)
		}
	}
	set := func(name string, value float64) {
		var err error
		if a, err = a.With(name, value); err != nil {
			t.Fatal(err)
		}
	}
	set("repair-cost", 200)
	set("replacement-price", 900)
	if got := a.Wanting(); len(got) != 1 || got[0] != "life" {
		t.Errorf("wanting %q", got)
	}
	set("life", 10)
	without, err := Compare(a)
	if err != nil || !without.Uncounted {
		t.Fatalf("%+v, %v", without, err)
	}
	for _, x := range without.Assumptions {
		if strings.HasPrefix(x.Name, "energy") || x.Name == "price-kwh" {
			t.Errorf("%s is told and not counted", x.Name)
		}
	}
	set("energy-old", 300)
	with, err := Compare(a)
	if err != nil || with.Uncounted {
		t.Fatalf("%+v, %v", with, err)
	}
	near(t, "the difference, the energy alike", with.Replace-with.Repair, without.Replace-without.Repair)
	if old := Assume(true); old.value("life") != 13 || old.value("energy-old") != 500 {
		t.Errorf("a refrigerator: %+v", old)
	}
}

func near(t *testing.T, name string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-6 {
		t.Errorf("%s = %v, want %v", name, got, want)
	}
}

// Reckoned by hand. Repair 200, new 900, life 10 years, age 6, so 4 years
// left; 500 against 300 kWh at 0.20; 6 years looked at. Repair: 200 now, 100
// in each of four years, then 900 + 60 in the fifth and 60 in the sixth,
// 1620 in all, less 8/10 of 900 = 720: 900. Replace: 900 + 6 × 60 = 1260,
// less 4/10 of 900 = 360: 900.
func TestCompareByHand(t *testing.T) {
	c, err := Compare(with(t, "repair-cost", 200.0, "replacement-price", 900.0, "age", 6.0, "life", 10.0,
		"energy-old", 500.0, "energy-new", 300.0, "price-kwh", 0.2, "years", 6.0))
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []YearRow{
		{0, 200, 900, 200, 900}, {1, 100, 60, 300, 960}, {2, 100, 60, 400, 1020}, {3, 100, 60, 500, 1080},
		{4, 100, 60, 600, 1140}, {5, 960, 60, 1560, 1200}, {6, 60, 60, 1620, 1260},
	} {
		near(t, "repair", c.Rows[i].Repair, want.Repair)
		near(t, "replace", c.Rows[i].Replace, want.Replace)
		near(t, "repair total", c.Rows[i].RepairTotal, want.RepairTotal)
		near(t, "replace total", c.Rows[i].ReplaceTotal, want.ReplaceTotal)
	}
	near(t, "worth after repairing", c.RepairWorth, 720)
	near(t, "worth after replacing", c.ReplaceWorth, 360)
	near(t, "repair", c.Repair, 900)
	near(t, "replace", c.Replace, 900)
	near(t, "break-even repair cost", c.BreakEvenRepair, 200)
	if c.LaterPurchase != 5 || c.BreakEven != 5 || c.Text != "over 6 years both ways cost the same" {
		t.Errorf("later purchase %d, break-even %d, %q", c.LaterPurchase, c.BreakEven, c.Text)
	}
	if len(c.Rows) != 7 || !strings.Contains(c.Rule, "22 %") || !strings.Contains(c.Rule, "says repair") {
		t.Errorf("%d rows, %q", len(c.Rows), c.Rule)
	}
}

// Reckoned by hand. Repair 200, new 900 and 50 to take the old one away, life 4
// years, age 3, so 1 year left, no energy; 6 years looked at. Repair: 200 now, 950
// in the second year and again in the sixth, 2100 in all, less 3/4 of 900 = 675:
// 1425. Replace: 950 now and in the fifth year, 1900, less 2/4 of 900 = 450: 1450.
// At 950 the repair costs as much as the new one from the first year on.
func TestCompareSeveralPurchasesByHand(t *testing.T) {
	given := []any{"replacement-price", 900.0, "disposal", 50.0, "age", 3.0, "life", 4.0, "life-after-repair", 1.0,
		"energy-old", 0.0, "energy-new", 0.0, "price-kwh", 0.2, "years", 6.0}
	c, err := Compare(with(t, append(given, "repair-cost", 200.0)...))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "repair", c.Repair, 1425)
	near(t, "replace", c.Replace, 1450)
	if c.LaterPurchase != 2 || c.BreakEven != 2 {
		t.Errorf("later purchase %d, break-even %d", c.LaterPurchase, c.BreakEven)
	}
	if c, err = Compare(with(t, append(given, "repair-cost", 950.0)...)); err != nil || c.BreakEven != 1 {
		t.Errorf("alike from the first year on: break-even %d, %v", c.BreakEven, err)
	}
}

// A machine that dies within the second year costs half of its own energy of 100
// and half of the new one's 60 in it, and 950: 1030.
func TestCompareWithinAYearByHand(t *testing.T) {
	c, err := Compare(with(t, "repair-cost", 200.0, "replacement-price", 950.0, "age", 2.5, "life", 4.0, "life-after-repair", 1.0,
		"energy-old", 500.0, "energy-new", 300.0, "price-kwh", 0.2, "years", 3.0))
	if err != nil {
		t.Fatal(err)
	}
	for year, want := range []float64{200, 100, 1030, 60} {
		near(t, "repair", c.Rows[year].Repair, want)
	}
}

func TestCompareSaysWhichWay(t *testing.T) {
	c, _ := Compare(with(t, "repair-cost", 80.0, "replacement-price", 900.0, "age", 3.0))
	if !strings.Contains(c.Text, "over 10 years repairing costs") {
		t.Errorf("cheap repair: %q", c.Text)
	}
	c, _ = Compare(with(t, "repair-cost", 700.0, "replacement-price", 900.0, "age", 12.0))
	if !strings.Contains(c.Text, "replacing costs") || !strings.Contains(c.Rule, "says replace") {
		t.Errorf("dear repair of an old machine: %q, %q", c.Text, c.Rule)
	}
	for _, s := range []string{c.Text, c.Rule} {
		if utf8.RuneCountInString(s) > 120 {
			t.Errorf("too long: %q", s)
		}
	}
}

func TestCompareNeedsTheTwoPrices(t *testing.T) {
	_, err := Compare(Assume(true))
	if err == nil || err.Error() != "the sum needs repair-cost and replacement-price" {
		t.Errorf("%v", err)
	}
}

func TestAssumptionsAreSeenAndChangeable(t *testing.T) {
	a := Assume(true)
	for _, x := range a {
		if x.Known == (x.From == "") || x.Help == "" {
			t.Errorf("%s: known %v, from %q", x.Name, x.Known, x.From)
		}
		b, err := a.With(x.Name, 12)
		if err != nil || b.value(x.Name) != 12 || a.value(x.Name) == 12 {
			t.Errorf("%s was not changed in the copy alone: %v", x.Name, err)
		}
		for _, y := range b {
			if y.Name == x.Name && y.From != "given" {
				t.Errorf("%s from %q", x.Name, y.From)
			}
		}
	}
	for _, bad := range []struct {
		name  string
		value float64
	}{{"colour", 1}, {"age", -1}, {"age", math.NaN()}, {"price-kwh", math.Inf(1)}, {"years", 2.5}, {"years", 0}, {"years", 41}, {"life", 0.5}} {
		if _, err := a.With(bad.name, bad.value); err == nil {
			t.Errorf("%s %v was accepted", bad.name, bad.value)
		}
	}
	if len(a.Names()) != len(a) {
		t.Errorf("names %q", a.Names())
	}
}

// Money times a factor is money times that factor; a repair at the
// break-even cost makes both ways equal; the totals add up.
func TestCompareProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 2000 {
		repair, price, kwh := 1000*r.Float64(), 200+1500*r.Float64(), 0.5*r.Float64()
		rest := []any{"age", 20 * r.Float64(), "life", 1 + 20*r.Float64(), "energy-old", 900 * r.Float64(), "energy-new", 600 * r.Float64(),
			"years", float64(1 + r.IntN(40)), "life-after-repair", 4 * r.Float64()}
		sum := func(repair, k float64) Comparison {
			a := with(t, append([]any{"repair-cost", k * repair, "replacement-price", k * price, "price-kwh", k * kwh}, rest...)...)
			c, err := Compare(a)
			if err != nil {
				t.Fatal(err)
			}
			return c
		}
		a, b := sum(repair, 1), sum(repair, 3)
		near(t, "three times repair", b.Repair, 3*a.Repair)
		near(t, "three times replace", b.Replace, 3*a.Replace)
		if a.LaterPurchase != b.LaterPurchase {
			t.Fatalf("later purchase %d and %d", a.LaterPurchase, b.LaterPurchase)
		}
		if a.BreakEvenRepair >= 0 {
			even := sum(a.BreakEvenRepair, 1)
			near(t, "at break-even", even.Repair, even.Replace)
		}
		total := 0.0
		for _, row := range a.Rows {
			total += row.Repair
			near(t, "running total", row.RepairTotal, total)
		}
	}
}

// TestWorkIsCounted holds that parts and minutes make up a repair cost that
// was not given: 24.50 and 75 min at 80 an hour are 124.50 (arithmetic).
func TestWorkIsCounted(t *testing.T) {
	a := Assume(true)
	for _, x := range []struct {
		name  string
		value float64
	}{{"replacement-price", 650}, {"parts", 24.5}, {"minutes", 75}, {"hour-rate", 80}} {
		var err error
		if a, err = a.With(x.name, x.value); err != nil {
			t.Fatal(err)
		}
	}
	k, err := Compare(a)
	if err != nil {
		t.Fatal(err)
	}
	if got := k.Rows[0].Repair; got != 124.5 {
		t.Errorf("the repair costs %g", got)
	}
	if a, err = a.With("repair-cost", 90); err != nil {
		t.Fatal(err)
	}
	if k, err = Compare(a); err != nil || k.Rows[0].Repair != 90 {
		t.Errorf("a given cost is %g (%v)", k.Rows[0].Repair, err)
	}
}

// Only what entered the sum is told of it: the arithmetic of Compare itself.
func TestComparisonTellsWhatEntered(t *testing.T) {
	for _, c := range []struct {
		name  string
		given map[string]float64
		want  string
	}{
		{"a repair cost that was given stands for parts and work", map[string]float64{"repair-cost": 180, "replacement-price": 650, "age": 9, "parts": 24.5, "minutes": 75, "hour-rate": 80},
			"repair-cost replacement-price age life energy-old energy-new price-kwh years"},
		{"added up of parts and work", map[string]float64{"replacement-price": 650, "age": 9, "parts": 24.5, "minutes": 75, "hour-rate": 80, "disposal": 30},
			"repair-cost parts minutes hour-rate replacement-price disposal age life energy-old energy-new price-kwh years"},
		{"work without a rate is not counted", map[string]float64{"replacement-price": 650, "age": 9, "parts": 24.5, "minutes": 75},
			"repair-cost parts replacement-price age life energy-old energy-new price-kwh years"},
		{"an old machine lives on after its repair", map[string]float64{"repair-cost": 180, "replacement-price": 650, "age": 12, "price-kwh": 0},
			"repair-cost replacement-price age life life-after-repair years"},
	} {
		a := Assume(true)
		for name, x := range c.given {
			var err error
			if a, err = a.With(name, x); err != nil {
				t.Fatal(err)
			}
		}
		k, err := Compare(a)
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(k.Assumptions.Names(), " "); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
		// What is left out and is not nothing may be another: the sum stays.
		for _, x := range a {
			if strings.Contains(" "+c.want+" ", " "+x.Name+" ") || x.Value == 0 {
				continue
			}
			other, err := a.With(x.Name, x.Value+1)
			if err != nil {
				t.Fatal(err)
			}
			if again, err := Compare(other); err != nil || again.Repair != k.Repair || again.Replace != k.Replace {
				t.Errorf("%s: %s enters the sum", c.name, x.Name)
			}
		}
	}
}
