package call

import (
	"strconv"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/source"
)

// lineSums are the sums that take a line's temperature against the saturation at
// its pressure: the side that the gauge reads, and what the line is called.
var lineSums = []struct {
	name, word, side string
	lines            []string
}{
	{"superheat", "Superheat", "suction", []string{"suction", "suction-line"}},
	{"subcooling", "Subcooling", "discharge", []string{"liquid", "liquid-line"}},
}

// tellLineSums offers superheat and subcooling once a pressure and the temperature
// of its line were read of one moment, by the gas of the plate.
func (c *Call) tellLineSums(last *reading, reply *Reply) {
	gas := c.gas()
	name, known := formula.GasNamed(gas)
	if !known {
		return
	}
	for _, s := range lineSums {
		gauge := func(r *reading) bool { return r.quality.word == "psi" && sideOf(r.a) == s.side && r.cond.is("run") }
		line := func(r *reading) bool { return r.quality.word == "temp" && among(s.lines, strings.ToLower(r.a)) }
		if !gauge(last) && !line(last) {
			continue
		}
		c.spend(2000 + 4*len(c.readings))
		since := c.since()
		p, t := c.lastAfter(since, gauge), c.lastAfter(since, line)
		if p == nil || t == nil || p.over || t.over || p.at.Sub(t.at).Abs() > besideFor {
			continue
		}
		text := s.name + "(" + strconv.Quote(name) + ", psi(" + quotedPlace(p.a) + "), temp(" + quotedPlace(t.a) + "))"
		v, err := c.evalQuantity(text, 1)
		if err != nil {
			continue
		}
		reply.add(Plain, s.word+" "+v.String()+" by "+name+", the gas of the plate ("+entryList([]int{min(p.entry, t.entry), max(p.entry, t.entry)})+"). It is kept once it is written: "+text)
	}
}

// tellLoneAir asks for the other temperature of the air where that at hand is of another
// time than it.
func (c *Call) tellLoneAir(last *reading, reply *Reply) {
	if last.quality.word != "temp" || !c.ofAir(last) {
		return
	}
	other := airTaken
	if among(airTaken, strings.ToLower(last.a)) {
		other = airGiven
	}
	c.spend(2 * len(c.readings))
	if o := c.lastAfter(c.since(), func(r *reading) bool { return r.quality.word == "temp" && among(other, strings.ToLower(r.a)) }); o != nil && c.timePassed(o.entry, last.entry) > airFor {
		reply.add(Ask, "The "+o.a+" air"+atEntry(o.entry)+" is of another time: temp "+o.a+" … beside it.")
	}
}

// quotedPlace is a place as a sum names it.
func quotedPlace(p string) string {
	if strings.Contains(p, "-") {
		return strconv.Quote(p)
	}
	return p
}

// gasSums are the sums whose first argument is the gas, with the commas of those that
// are typed without it.
var gasSums = []struct{ name, commas string }{{"superheat", ","}, {"subcooling", ","}, {"sat_temp", ""}, {"sat_press", ""}}

// gasless finds a sum by the gas that does not name it: where its arguments begin, 0
// when there is none.
func (c *Call) gasless(text string) (at int, sum string) {
	for _, s := range gasSums {
		from := strings.Index(text, s.name+"(")
		if from < 0 || from > 0 && isNameByte(text[from-1]) {
			continue
		}
		_, own := c.defined(s.name)
		if at = from + len(s.name) + 1; !own && commasOf(strings.TrimLeft(text[at:], " ")) == len(s.commas) {
			return at, s.name
		}
	}
	return 0, ""
}

// withGas writes the gas of the plate into the sums of a typed line that go by it and
// do not name it.
func (c *Call) withGas(text string) string {
	name, known := formula.GasNamed(c.gas())
	for range gasSums {
		if at, _ := c.gasless(text); at > 0 && known {
			text = text[:at] + strconv.Quote(name) + ", " + strings.TrimLeft(text[at:], " ")
		}
	}
	return text
}

// noGas refuses such a sum while no plate names a gas that is known here.
func (c *Call) noGas(text string) error {
	at, sum := c.gasless(text)
	if at == 0 {
		return nil
	}
	from := len([]rune(text[:at])) - len(sum)
	return source.Errorf(from, from+len(sum), "%s goes by the gas, and no plate names one that is known here", sum).
		WithHint(`plate gas … names it for the call, and then this line is taken; or name it here: %s"…", %s`, text[:at], strings.TrimLeft(text[at:], " "))
}

func isNameByte(b byte) bool {
	return b == '_' || b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z'
}

// commasOf counts the commas of a list of arguments up to its end, -1 when it has none,
// is empty or begins with a name in quotes or a gas.
func commasOf(text string) int {
	depth, commas := 1, 0
	if text == "" || strings.ContainsAny(text[:1], `"'Rr)`) {
		return -1
	}
	for i := 0; i < len(text); i++ {
		switch text[i] {
		case '(':
			depth++
		case ')':
			if depth--; depth == 0 {
				return commas
			}
		case ',':
			if depth == 1 {
				commas++
			}
		}
	}
	return -1
}
