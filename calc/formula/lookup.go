package formula

import (
	"fmt"
	"math"
)

// curve is a thermistor's table as a person typed it: pairs of temperature
// (°C) and resistance (ohm), one after the other.
type curve []float64

func (c curve) pairs() int            { return len(c) / 2 }
func (c curve) temp(i int) float64    { return c[2*i] }
func (c curve) ohms(i int) float64    { return c[2*i+1] }
func (c curve) inverse(i int) float64 { return 1 / (c.temp(i) + zeroC) }
func (c curve) log(i int) float64     { return math.Log(c.ohms(i)) }

// check finds the first pair that breaks the order of a thermistor's table:
// temperatures rise and resistances fall.
func (c curve) check() error {
	for i := 1; i < c.pairs(); i++ {
		what := ""
		switch {
		case c.temp(i) <= c.temp(i-1):
			what = "its temperature is not above the one before"
		case c.ohms(i) >= c.ohms(i-1):
			what = "its resistance is not below the one before"
		default:
			continue
		}
		return fmt.Errorf("pair %d (%.6g degC, %.6g ohm) breaks the table: %s", i+1, c.temp(i), c.ohms(i), what)
	}
	return nil
}

// edge lets the last bit of a rounded number at a table's end pass.
const edge = 1e-9

// Between two pairs the logarithm of the resistance is taken as straight over
// the inverse of the absolute temperature, which is what one B value means.

func (c curve) tempAt(ohms float64) (float64, error) {
	if err := c.check(); err != nil {
		return 0, err
	}
	last := c.pairs() - 1
	if ohms > c.ohms(0)*(1+edge) || ohms < c.ohms(last)*(1-edge) {
		return 0, fmt.Errorf("the table runs from %.6g to %.6g ohm", c.ohms(0), c.ohms(last))
	}
	i := 0
	for i < last-1 && ohms < c.ohms(i+1) {
		i++
	}
	part := (math.Log(ohms) - c.log(i)) / (c.log(i+1) - c.log(i))
	return celsius(c.inverse(i) + part*(c.inverse(i+1)-c.inverse(i)))
}

func (c curve) ohmsAt(t float64) (float64, error) {
	if err := c.check(); err != nil {
		return 0, err
	}
	last := c.pairs() - 1
	if t < c.temp(0)-edge || t > c.temp(last)+edge {
		return 0, fmt.Errorf("the table runs from %.6g to %.6g degC", c.temp(0), c.temp(last))
	}
	i := 0
	for i < last-1 && t > c.temp(i+1) {
		i++
	}
	part := (1/(t+zeroC) - c.inverse(i)) / (c.inverse(i+1) - c.inverse(i))
	return math.Exp(c.log(i) + part*(c.log(i+1)-c.log(i))), nil
}

var tablePair = []Param{ntcNamed("t"), ohmParam("r", "resistance at t")}

const (
	lookupValid    = "two pairs or more, coldest first; refuses a reading outside the table and says which pair breaks its order"
	lookupEquation = "ln R straight over 1/T between neighbouring pairs, T in kelvin"
	lookupSource   = "IEC 60539-1, definition of the B value, applied between neighbours"
	lookupCall     = "0C, 32650ohm, 25C, 10kohm, 50C, 3603ohm)"
)

var sampleTable = []any{0.0, 32650.0, 25.0, 10000.0, 50.0, 3603.0}

var lookups = []Formula{
	{
		Name: "ntc_table_temp", Topic: ntcTopic, Unit: "degC", Params: joined([]Param{ntcOhms}, tablePair), Repeat: 2, Groups: 2,
		Help:     "temperature of a thermistor (NTC) from its resistance and pairs of the maker's table",
		Equation: lookupEquation, Valid: lookupValid, Source: lookupSource,
		Example: Example{Call: "ntc_table_temp(10kohm, " + lookupCall, Args: joined([]any{10000.0}, sampleTable), Want: 25, Tol: 1e-9,
			Text: "10 kohm is a pair of this table, at 25 degC"},
		Fn: func(a Args) (float64, error) { return curve(a.Num[1:]).tempAt(a.Num[0]) },
	},
	{
		Name: "ntc_table_ohms", Topic: ntcTopic, Unit: "ohm", Params: joined([]Param{ntcTemp}, tablePair), Repeat: 2, Groups: 2,
		Help:     "resistance of a thermistor (NTC) at a temperature from pairs of the maker's table",
		Equation: lookupEquation, Valid: lookupValid, Source: lookupSource,
		Example: Example{Call: "ntc_table_ohms(10C, " + lookupCall, Args: joined([]any{10.0}, sampleTable), Want: 19835.4, Tol: 0.1,
			Text: "this table gives 19.8 kohm at 10 degC"},
		Fn: func(a Args) (float64, error) { return curve(a.Num[1:]).ohmsAt(a.Num[0]) },
	},
}
