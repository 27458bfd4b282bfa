package call

import (
	"math"
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/notebook/said"
)

// reach is what a place can have, in °C; common practice, wide on purpose: a
// reading outside it is asked about, never refused.
type reach struct {
	words    []string
	name     string
	from, to float64
}

// reaches are the places (common practice).
var reaches = []reach{
	{[]string{"freezer"}, "a freezer", -50, 45},
	{[]string{"fridge", "fresh", "cabinet"}, "a fridge", -30, 45},
	{[]string{"room", "ambient", "return"}, "a room", -30, 50},
	{[]string{"oven", "bake", "broil"}, "an oven", -30, 550},
	{[]string{"comp", "motor", "dome", "shell"}, "a machine's shell", -50, 160},
	{[]string{"suction", "discharge", "liquid", "evap", "cond"}, "a cooling circuit", -60, 160},
	{nil, "an appliance", -60, 800},
}

func reachOf(place string) reach {
	place = strings.ToLower(place)
	for _, s := range reaches {
		for _, w := range s.words {
			if strings.HasPrefix(place, w) {
				return s
			}
		}
	}
	return reaches[len(reaches)-1]
}

// waterPlaces are where the water of a boiler is read, whose circuit comes back to it.
var waterPlaces = []string{"boiler", "water", "system", "supply", "return", "static", "fill", "relief"}

// ofWater tells a pressure or temperature of the water of a boiler.
func (c *Call) ofWater(r *reading) bool {
	return startsWithAny(strings.ToLower(r.a), waterPlaces) && said.Has(c.appliance().Unit, []string{"boiler"})
}

// Volts and amps beyond what a household gives, with and without a plate
// (common practice).
const (
	mostVolts    = 520
	mostCapVolts = 1000
	mostAmps     = 200
	timesRated   = 3
	timesLRA     = 2
	timesAmps    = 15
)

// asBare tells a number of a temperature typed without its unit.
func asBare(text string) bool {
	q, err := quantity.Parse(strings.TrimPrefix(text, "~"), "")
	return err == nil && q.Dim() == quantity.Dim{}
}

// tellBare says once in a call, while units has not said otherwise, in which
// unit a bare temperature was taken.
func (c *Call) tellBare(r *reading, reply *Reply) {
	if !r.bare && !r.cond.bare || c.last("units") != "" || !c.sayOnce("celsius") {
		return
	}
	x := strings.TrimSuffix(r.shown(), " °C")
	if !r.bare {
		x = number(r.cond.at)
	}
	reply.add(Ask, x+" is taken as °C. Type "+x+"F for °F, or units F for all that follow.").flag("celsius-assumed")
}

// tellVacuum says once in a call what inches of mercury on a gauge are.
func (c *Call) tellVacuum(r *reading, reply *Reply) {
	if r.quality.word == "psi" && r.x < 0 && r.q.Symbol() == "inHg" && c.sayOnce("vacuum") {
		reply.add(Plain, "Inches of mercury on a compound gauge are a vacuum: "+r.shown()+" is below the air; above it the gauge reads psi.")
	}
}

// tellPlace asks about a place that seems to stand for one that is known.
func tellPlace(r *reading, reply *Reply) {
	name, perhaps := strings.ToLower(r.a), ""
	if reachOf(name).words != nil {
		return
	}
	for _, known := range placeWords("temp") {
		if strings.HasPrefix(known, name) || len(known) > 4 && source.Nearest(name, []string{known}) != "" {
			perhaps += " or " + known
		}
	}
	if perhaps != "" {
		reply.add(Ask, r.a+" is no place that is judged here; perhaps: "+strings.TrimPrefix(perhaps, " or ")+". If it is a slip: strike "+itoa(r.entry)+" misread.").flag("place-unknown")
	}
}

// tellBeyond asks about a value that its place cannot well have.
func (c *Call) tellBeyond(r *reading, reply *Reply) {
	if r.over {
		return
	}
	what, hint := "", ""
	switch r.quality.word {
	case "temp":
		s := reachOf(r.a)
		if c.ofWater(r) {
			s = reachOf("")
		}
		if r.x >= s.from && r.x <= s.to {
			return
		}
		unit := "C"
		if r.q.UCUM() == "[degF]" {
			unit = "F"
		}
		what = s.name + " has, " + degrees(s.from, unit) + " to " + degrees(s.to, unit)
		if asF := (r.x - 32) / 1.8; r.q.UCUM() == "Cel" && asF >= s.from && asF <= s.to {
			hint = "; if it was °F, then: temp " + r.a + " " + number(r.x) + "F"
		}
	case "volt":
		most := float64(mostVolts)
		if v := c.ratedVolts(); v > 0 {
			most = timesRated * v
		}
		if c.isCapacitor(r.a) {
			most = math.Max(most, mostCapVolts)
		}
		if r.x <= most {
			return
		}
		what = "is found there, at most about " + number(most) + " V"
	case "amp":
		most := float64(mostAmps)
		of := c.machineFor(r.a)
		if lra := c.plateNumber(of, "lra", "A"); lra > 0 {
			most = timesLRA * lra
		} else if plate := c.plateNumber(of, "amps", "A"); plate > 0 {
			most = timesAmps * plate
		}
		if r.x <= most {
			return
		}
		what = "flows there, at most about " + number(most) + " A"
	default:
		return
	}
	reply.add(Ask, r.shown()+" is beyond what "+what+" (common practice). If it is a slip: strike "+itoa(c.entry)+" misread"+hint+".").flag("beyond-place")
}
