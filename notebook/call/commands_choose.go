package call

import (
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/repair"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

func applyChoose(c *Call, a *args) (*Reply, error) {
	of := c.mainMachine()
	switch a.text("PART") {
	case "run-cap", "start-cap":
		return c.chooseCap(a)
	}
	in := repair.KitIn{Volts: c.plateNumber(of, "volts", "V"), Hertz: c.plateNumber(of, "hz", "Hz"), HP: c.plateNumber(of, "hp", "hp"),
		Metering: repair.Metering(c.plateText(of, "metering")), Gas: c.plateText(of, "gas")}
	switch c.typeOf(of) {
	case "inverter":
		in.Motor = repair.Inverter
	case "three-phase":
		in.Motor = repair.ThreePhase
	case "split-phase":
		in.Motor = repair.SinglePhase
	}
	if m := c.machines[of]; m != nil {
		in.Windings = string(m.result.State)
		if in.Windings == "incomplete" {
			in.Windings = ""
		}
		if in.Windings == "sound" && in.Motor == "" {
			in.Motor = repair.SinglePhase
		}
	}
	if v, ok := c.insulationWord(of); ok && v == "failed" {
		in.Windings = "grounded"
	}
	if p, ok := c.plateAt("", "mfd", "start"); ok && strings.EqualFold(p.name, "start") {
		in.StartLow, _ = p.q.In("uF")
		if p.ranged {
			in.StartHigh, _ = p.hi.In("uF")
		}
	}
	k, name := repair.StartKit(in), "start kit"
	if a.text("PART") == "overload" {
		k, name = repair.Overload(in, c.plateNumber(of, "amps", "A")), "overload"
	}
	r := &Reply{}
	for _, code := range k.Caution {
		c.warn(r, code)
	}
	if k.Refused != "" {
		return r.add(Bad, "No "+name+": "+k.Refused+" ("+k.Source+").").flag(strings.ReplaceAll(name, " ", "-") + "-refused"), nil
	}
	t := &Table{Head: []string{"Label must say", "Value", "Why", "Source"}}
	for _, n := range k.Need {
		t.Rows = append(t.Rows, []string{n.What, n.Value, n.Why, n.Source})
	}
	r.Table = t
	for _, s := range k.Missing {
		r.add(Ask, "Not known yet: "+s+".")
	}
	for _, s := range k.Notes {
		r.add(Plain, strings.ToUpper(s[:1])+s[1:]+endStop(s))
	}
	return r, nil
}

// insulationWord is the worst verdict on a machine's pins to the case.
func (c *Call) insulationWord(of string) (string, bool) {
	worst, found := "", false
	for _, key := range c.subjects {
		j := c.judged[key]
		if j == nil || !strings.HasPrefix(key, "case\x00"+of+"\x00") || c.replacedSince(key, j) {
			continue
		}
		if !found || j.verdict.Word == "failed" {
			worst, found = string(j.verdict.Word), true
		}
	}
	return worst, found
}

func (c *Call) chooseCap(a *args) (*Reply, error) {
	start := a.text("PART") == "start-cap"
	name := "run"
	if start {
		name = "start"
	}
	p, ok := c.plateAt("", "mfd", name)
	if !ok && !start {
		for i := len(c.plates) - 1; i >= 0 && !ok; i-- {
			if c.plates[i].key == "mfd" && !c.plates[i].ranged && c.alive(c.plates[i].entry) {
				p, ok = c.plates[i], true
			}
		}
	}
	if !ok {
		return (&Reply{}).add(Ask, "Write down the old one's marking first: plate mfd "+name+" …"), nil
	}
	if start {
		p.name = "start"
	}
	s, err := capSize(p)
	if err != nil {
		return nil, a.get("PART").errorf("%v", err)
	}
	r := say(s.Text() + " (" + s.Source + ").")
	for _, t := range s.Reasons {
		r.add(Plain, strings.ToUpper(t[:1])+t[1:]+endStop(t))
	}
	return r, nil
}

// assumption is one changed value of the repair-or-replace sum.
type assumption struct {
	entry int
	name  string
	value float64
}

// spokenUnit is a unit of the repair-or-replace sum as people say it.
func spokenUnit(unit string) string {
	switch unit {
	case "":
		return ""
	case "a":
		return " years"
	case "kWh/a":
		return " kWh a year"
	case "1/kWh":
		return " a kWh"
	}
	return " " + unit
}

// worthDoc lists what can be given for the sum.
func worthDoc() string {
	var parts []string
	for _, x := range repair.Assume(true) {
		s := x.Name + ": " + x.Help
		switch {
		case !x.Known:
			s += " (to be given)"
		case x.Value > 0:
			s += " (" + number(x.Value) + spokenUnit(x.Unit) + " taken" + strings.TrimPrefix(x.From, "assumed: common practice") + ")"
		}
		parts = append(parts, s)
	}
	return "Keys: " + strings.Join(parts, "; ") + "."
}

// energyAlike is what is said of energy that is not in the sum.
const energyAlike = "taken as alike for both, and not counted"

// cold reports whether the unit is a household's refrigerator or freezer; where it
// is not named, whether it may be one.
func (c *Call) cold() bool {
	a := c.appliance()
	if a.Unit != "" {
		return said.Has(a.Unit, []string{"fridge", "refrig", "freez"}) && !said.Has(a.Unit, []string{"walk"})
	}
	return !a.Unsealed && !a.Air && !a.OneFan && !a.HeatPumpDryer
}

func applyWorth(c *Call, a *args) (*Reply, error) {
	table := repair.Assume(c.cold())
	var err error
	cost := 0.0
	c.spend(1000 + len(c.parts) + 600*len(c.assumed))
	for _, p := range c.parts {
		if p.priced && c.alive(p.entry) {
			cost += p.price * p.count
		}
	}
	for name, value := range map[string]float64{"parts": cost, "minutes": c.minutes(c.at)} {
		if value > 0 {
			if table, err = table.With(name, value); err != nil {
				return nil, err
			}
		}
	}
	for _, s := range c.assumed {
		if c.alive(s.entry) {
			if table, err = table.With(s.name, s.value); err != nil {
				return nil, err
			}
		}
	}
	var given []assumption
	if a.has(a.cmd.Params[0].Name) {
		parts, err := split(a.first().words)
		if err != nil {
			return nil, err
		}
		for _, w := range parts {
			if len(w) != 2 {
				return nil, w[0].Errorf("an assumption is a name and a number").WithHint("as in: worth age 9, replacement-price 650")
			}
			q, err := quantity.Parse(w[1].Text, "")
			if err != nil || q.UCUM() != "1" {
				return nil, w[1].Errorf("%q is no plain number", w[1].Text)
			}
			if !among(table.Names(), w[0].Text) {
				return nil, withNearest(w[0].Errorf("there is no assumption named %s", w[0].Text), w[0].Text, table.Names())
			}
			t, err := table.With(w[0].Text, q.SI())
			if err != nil {
				return nil, w[1].Errorf("%v", err)
			}
			table = t
			given = append(given, assumption{c.entry, w[0].Text, q.SI()})
		}
	}
	k, err := repair.Compare(table)
	c.assumed = append(c.assumed, given...)
	if err != nil {
		wanted := table.Wanting()
		reply := (&Reply{}).add(Ask, strings.ToUpper(err.Error()[:1])+err.Error()[1:]+", with your own figures: worth "+strings.Join(wanted, " …, ")+" …")
		if among(wanted, "life") {
			reply.add(Plain, "How many years such a machine lasts is assumed of refrigerators and freezers alone.")
		}
		if among(wanted, "repair-cost") {
			reply.add(Plain, "It is also added up from parts, minutes and hour-rate; help worth lists what can be given.")
		}
		return reply, nil
	}
	r := (&Reply{}).add(Good, strings.ToUpper(k.Text[:1])+k.Text[1:]+" ("+record.Money(k.Repair)+" against "+record.Money(k.Replace)+", the worth of what stands at the end taken off).")
	if k.Rule != "" {
		r.add(Plain, strings.ToUpper(k.Rule[:1])+k.Rule[1:]+".")
	}
	c.worths = append(c.worths, worth{c.entry, c.worthText(&k)})
	for _, s := range k.Assumptions {
		head, tail := "Assumed ", " ("+strings.TrimPrefix(s.From, "assumed: ")+")"
		switch {
		case c.wasGiven(s.Name):
			head, tail = "Given ", ""
		case s.From == "given":
			head, tail = "Counted ", ""
		}
		r.add(Plain, head+s.Name+worthValue(s)+", "+s.Help+tail+".")
	}
	if k.Uncounted {
		r.add(Plain, "Energy: "+energyAlike+"; energy-old, energy-new and price-kwh count it.")
	}
	r.add(Plain, "Worth of what stands after the last year: "+record.Money(k.RepairWorth)+" with the repair, "+record.Money(k.ReplaceWorth)+" with the replacement.")
	t := &Table{Head: []string{"Year", "Repair", "Replace", "Repair so far", "Replace so far"}}
	for _, y := range k.Rows {
		t.Rows = append(t.Rows, []string{itoa(y.Year), record.Money(y.Repair), record.Money(y.Replace), record.Money(y.RepairTotal), record.Money(y.ReplaceTotal)})
	}
	r.Table = t
	return r, nil
}
