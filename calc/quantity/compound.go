package quantity

import (
	"strconv"
	"strings"

	"ohmcall/calc/source"
)

// compound collects the parts of a unit such as ohm/ft.
type compound struct {
	dim      Dim
	factor   float64
	up, down []string
	upU      []string
	downU    []string
}

func (c *compound) take(word string, sign, col int) error {
	name, power, has := strings.Cut(strings.TrimSpace(word), "^")
	n := 1
	if has {
		var err error
		if n, err = strconv.Atoi(power); err != nil || n < 1 || n > 9 {
			return source.Errorf(col, col+len([]rune(word)), "%q is not a whole power from 1 to 9", source.Short(power))
		}
	}
	if name == "1" {
		name = ""
	} else if name == "" {
		return unknownUnit("", col)
	}
	u, ok := unitNamed(name)
	if !ok {
		return unknownUnit(name, col)
	}
	if u.kind == Point {
		u = u.difference()
	}
	c.add(u, sign*n)
	return nil
}

// add multiplies the compound by u to the power n.
func (c *compound) add(u *Unit, n int) {
	if c.factor == 0 {
		c.factor = 1
	}
	count, sign := n, int8(1)
	if n < 0 {
		count, sign = -n, -1
	}
	for range count {
		c.dim = c.dim.plus(u.dim, sign)
		if sign > 0 {
			c.factor *= u.factor
		} else {
			c.factor /= u.factor
		}
	}
	if u.symbol == "" || n == 0 {
		return
	}
	symbol, code := u.symbol, u.ucum
	if strings.ContainsAny(code, "./") && (count > 1 || sign < 0) {
		code = "(" + code + ")"
	}
	if count > 1 {
		symbol += superscripts.Replace(strconv.Itoa(count))
		code += strconv.Itoa(count)
	}
	if sign > 0 {
		c.up, c.upU = append(c.up, symbol), append(c.upU, code)
	} else {
		c.down, c.downU = append(c.down, symbol), append(c.downU, code)
	}
}

func (c *compound) unit() (*Unit, error) {
	if !c.dim.bounded() {
		return nil, source.Errorf(0, 0, "the unit's powers are too high")
	}
	u := &Unit{dim: c.dim, factor: c.factor}
	u.symbol, u.ucum = strings.Join(c.up, "·"), strings.Join(c.upU, ".")
	if len(c.down) > 0 {
		if u.symbol == "" {
			u.symbol = "1"
		}
		u.symbol += "/" + strings.Join(c.down, "/")
		u.ucum += "/" + strings.Join(c.downU, "/")
	}
	if u.ucum == "" {
		u.ucum = "1"
	}
	return u, nil
}

// carriers are the units that a result without a unit of its own may be
// written in, times or over a power of one of the partners: V·s, W/K, Ω/m.
var (
	carriers = []string{"Ω", "V", "A", "W", "J", "kg", "m", "s", "Hz"}
	partners = []string{"s", "m", "K", "kg", "A", "V"}
)

// unitFor is the unit in which a result of the bounded dimension d is shown.
func unitFor(d Dim, k Kind) *Unit {
	if d == (Dim{}) {
		return plain
	}
	if u := units().firstOf[dimKind{d, k}]; u != nil {
		return u
	}
	if u := units().composed[dimKind{d, k}]; u != nil {
		return u
	}
	c := compound{factor: 1}
	for _, up := range [...]bool{true, false} {
		for i, e := range d {
			if e != 0 && (e > 0) == up {
				c.add(units().bySpelling[baseSymbols[i]], int(e))
			}
		}
	}
	u, _ := c.unit() // d is bounded, so is its unit
	return u
}

func (x *index) compose() {
	put := func(c compound) {
		u, _ := c.unit() // powers this low always fit
		if k := (dimKind{u.dim, Plain}); x.composed[k] == nil {
			x.composed[k] = u
		}
	}
	for _, a := range carriers {
		for _, n := range [...]int{2, 3} {
			c := compound{}
			c.add(x.bySpelling[a], n)
			put(c)
		}
	}
	for _, a := range carriers {
		for _, b := range partners {
			for _, n := range [...]int{-1, 1, -2, 2, -3} {
				c := compound{}
				c.add(x.bySpelling[a], 1)
				c.add(x.bySpelling[b], n)
				if a != b {
					put(c)
				}
			}
		}
	}
}
