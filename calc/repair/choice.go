package repair

import (
	"fmt"
	"math"
	"strings"
)

// Assumption is one number of the repair-or-replace sum, with where it came
// from, so that it can be seen and changed by its name.
type Assumption struct {
	Name  string
	Value float64
	Unit  string // "a" for years, "" for money
	Help  string
	From  string // "given", or "assumed: common practice"
	Known bool   // it has a value
}

const assumed = "assumed: " + commonPractice

// Assumptions is the whole list, in the order of its table.
type Assumptions []Assumption

// The two that nobody can assume for a customer are left without a value; the
// rest are common practice and changeable. Life and energy are a refrigerator's or
// freezer's, see Assume.
var assumptionTable = Assumptions{
	{Name: "repair-cost", Help: "the repair; parts and minutes at the hour's rate unless given"},
	{Name: "parts", Help: "the parts used", From: "none priced", Known: true},
	{Name: "minutes", Unit: "min", Help: "of work", From: "none noted", Known: true},
	{Name: "hour-rate", Help: "money for an hour of work", From: "not given, so work is not counted", Known: true},
	{Name: "replacement-price", Help: "a like machine, delivered"},
	{Name: "disposal", Help: "taking the old machine away", From: assumed, Known: true},
	{Name: "age", Unit: "a", Value: 8, Help: "of the machine now", From: assumed, Known: true},
	{Name: "life", Unit: "a", Value: 13, Help: lifeHelp, From: ofCold, Known: true},
	{Name: "life-after-repair", Unit: "a", Value: 2, Help: "at least, also past the expected life", From: assumed, Known: true},
	{Name: "energy-old", Unit: "kWh/a", Value: 500, Help: "the machine as repaired", From: ofCold, Known: true},
	{Name: "energy-new", Unit: "kWh/a", Value: 400, Help: "the replacement", From: ofCold, Known: true},
	{Name: "price-kwh", Unit: "1/kWh", Value: 0.17, Help: "money for one kilowatt-hour", From: assumed, Known: true},
	{Name: "years", Unit: "a", Value: 10, Help: "the years looked at, whole", From: assumed, Known: true},
}

// Alike is where the energy of a machine comes from that was taken as the other's.
const Alike = "not given, so taken alike for both"

const (
	ofCold   = assumed + " for a refrigerator or freezer"
	lifeHelp = "expected of a machine of this kind"
)

// Assume gives the list with what can be assumed filled in. Of what is no
// refrigerator or freezer nobody can say the life, and the energy is taken alike
// for the old and the new machine.
func Assume(cold bool) Assumptions {
	out := append(Assumptions(nil), assumptionTable...)
	for i := range out {
		switch x := &out[i]; {
		case cold || x.From != ofCold:
		case x.Name == "life":
			x.Value, x.From, x.Known = 0, "", false
		default:
			x.Value, x.From = 0, Alike
		}
	}
	return out
}

// With returns the list with the named value changed and marked as given.
func (a Assumptions) With(name string, value float64) (Assumptions, error) {
	if math.IsNaN(value) || math.IsInf(value, 0) || value < 0 {
		return nil, fmt.Errorf("%s must be a number of zero or more", name)
	}
	if name == "years" && (value != math.Trunc(value) || value < 1 || value > 40) {
		return nil, fmt.Errorf("years must be whole, 1 to 40")
	}
	if name == "life" && value < 1 {
		return nil, fmt.Errorf("life must be one year or more")
	}
	out := append(Assumptions(nil), a...)
	for i := range out {
		if out[i].Name == name {
			out[i].Value, out[i].From, out[i].Known = value, "given", true
			return out, nil
		}
	}
	return nil, fmt.Errorf("there is no assumption named %s", name)
}

// Names lists what can be changed.
func (a Assumptions) Names() []string {
	var out []string
	for _, x := range a {
		out = append(out, x.Name)
	}
	return out
}

// Wanting lists what nobody can assume and is still without a value.
func (a Assumptions) Wanting() []string {
	var out []string
	for _, x := range a.costed() {
		if !x.Known {
			out = append(out, x.Name)
		}
	}
	return out
}

//go:noinline
func (a Assumptions) value(name string) float64 {
	for _, x := range a {
		if x.Name == name {
			return x.Value
		}
	}
	return math.NaN()
}

// YearRow is the money of one year and up to it, both ways. Year 0 is now.
type YearRow struct {
	Year                      int
	Repair, Replace           float64 // in that year
	RepairTotal, ReplaceTotal float64 // up to and with it
}

// Comparison is the sum, both ways, over the years looked at.
type Comparison struct {
	Rows []YearRow
	// What the machine that stands at the end is still worth: its price in
	// proportion to the life left.
	RepairWorth, ReplaceWorth float64
	Repair, Replace           float64 // totals less that worth
	LaterPurchase             int     // year in which the repaired machine is replaced, 0 when not within the years
	// BreakEven is the year in which replacing has cost no more than
	// repairing so far, 1 at the earliest, 0 when that does not come within
	// the years.
	BreakEven int
	// BreakEvenRepair is the repair cost at which both ways cost the same;
	// negative when replacing is cheaper even if the repair were free.
	BreakEvenRepair float64
	Text            string
	Rule            string      // the trade's rule of thumb, for comparison
	Uncounted       bool        // the energy is alike for both, and not counted
	Assumptions     Assumptions // those that entered the sum
}

// costed fills in the repair's cost from its parts and minutes when it was
// not given and they amount to anything.
func (a Assumptions) costed() Assumptions {
	cost := a.value("parts") + a.value("minutes")/60*a.value("hour-rate")
	if cost <= 0 {
		return a
	}
	out := append(Assumptions(nil), a...)
	for i := range out {
		if out[i].Name == "repair-cost" && !out[i].Known {
			out[i].Value, out[i].From, out[i].Known = cost, fromWork, true
		}
	}
	return out
}

// even gives both machines the energy of one of them when the other's is not known.
func (a Assumptions) even() Assumptions {
	out := append(Assumptions(nil), a...)
	for i := range out {
		if x := &out[i]; x.From == Alike {
			x.Value = max(a.value("energy-old"), a.value("energy-new"))
		}
	}
	return out
}

// entered leaves out what the sum does not rest on: what a given repair cost
// stands for, and what is multiplied by nothing or lies below what decides.
func (a Assumptions) entered() Assumptions {
	made, work := false, a.value("minutes")*a.value("hour-rate") > 0
	energy := max(a.value("energy-old"), a.value("energy-new"))*a.value("price-kwh") > 0
	var out Assumptions
	for _, x := range a {
		made = made || x.Name == "repair-cost" && x.From == fromWork
		enters := true
		switch x.Name {
		case "parts":
			enters = made && x.Value > 0
		case "minutes", "hour-rate":
			enters = made && work
		case "disposal":
			enters = x.Value > 0
		case "life-after-repair":
			enters = a.value("life")-a.value("age") < x.Value
		case "energy-old", "energy-new", "price-kwh":
			enters = energy
		}
		if enters {
			out = append(out, x)
		}
	}
	return out
}

// fromWork is where a repair's cost comes from that was not given.
const fromWork = "parts and work"

// Compare adds up both ways. The repaired machine serves for what is left of
// its expected life, but at least life-after-repair, and is then replaced at
// the same price; the machine repaired is worth nothing at the end. Money is
// not discounted. The values are the caller's own or common practice.
func Compare(a Assumptions) (Comparison, error) {
	missing := a.Wanting()
	if a = a.costed(); len(missing) > 0 {
		return Comparison{}, fmt.Errorf("the sum needs %s", strings.Join(missing, " and "))
	}
	a = a.even()
	years := int(a.value("years"))
	life, price := a.value("life"), a.value("replacement-price")+a.value("disposal")
	left := math.Max(life-a.value("age"), a.value("life-after-repair"))
	oldYear, newYear := a.value("energy-old")*a.value("price-kwh"), a.value("energy-new")*a.value("price-kwh")
	c := Comparison{Assumptions: a.entered(), Uncounted: oldYear+newYear == 0}
	repair, replace := owner{at: left, energy: oldYear}, owner{at: life, energy: newYear}
	row := YearRow{Repair: a.value("repair-cost"), Replace: price}
	for year := 0; ; year++ {
		row.Year = year
		row.RepairTotal += row.Repair
		row.ReplaceTotal += row.Replace
		c.Rows = append(c.Rows, row)
		if year > 0 && c.BreakEven == 0 && row.ReplaceTotal <= row.RepairTotal {
			c.BreakEven = year
		}
		if year == years {
			break
		}
		bought := repair.bought
		row.Repair = repair.pass(price, life, newYear)
		row.Replace = replace.pass(price, life, newYear)
		if c.LaterPurchase == 0 && repair.bought > bought {
			c.LaterPurchase = year + 1
		}
	}
	worth := a.value("replacement-price") / life
	c.ReplaceWorth = worth * math.Max(0, replace.at)
	if repair.bought > 0 {
		c.RepairWorth = worth * math.Max(0, repair.at)
	}
	c.Repair, c.Replace = row.RepairTotal-c.RepairWorth, row.ReplaceTotal-c.ReplaceWorth
	c.BreakEvenRepair = a.value("repair-cost") + c.Replace - c.Repair
	c.Text = c.sentence(years)
	c.Rule = ruleOfThumb(a)
	return c, nil
}

// owner follows one machine and those bought after it.
type owner struct {
	at     float64 // years of life left
	energy float64 // money a year
	bought int
}

// pass lives through one year and gives what it costs. A machine that dies
// within the year is replaced in it, and its energy counts by the part.
func (o *owner) pass(price, life, newYear float64) float64 {
	cost, rest := 0.0, 1.0
	for o.at < rest {
		cost += o.energy*o.at + price
		rest -= o.at
		o.at, o.energy = life, newYear
		o.bought++
	}
	o.at -= rest
	return cost + o.energy*rest
}

func (c Comparison) sentence(years int) string {
	d := c.Replace - c.Repair
	if math.Round(d) == 0 {
		return fmt.Sprintf("over %d years both ways cost the same", years)
	}
	way := "repairing"
	if d < 0 {
		way = "replacing"
	}
	return fmt.Sprintf("over %d years %s costs %.0f less", years, way, math.Abs(d))
}

func ruleOfThumb(a Assumptions) string {
	price := a.value("replacement-price")
	if price <= 0 {
		return ""
	}
	share := 100 * a.value("repair-cost") / price
	says := "repair"
	if share > 50 && a.value("age") > a.value("life")/2 {
		says = "replace"
	}
	return fmt.Sprintf("rule of thumb (%s): %.0f %% of the price of a new one at %s of %s years says %s",
		commonPractice, share, short(a.value("age")), short(a.value("life")), says)
}
