package call

import (
	"strings"
	"testing"
)

// A test or work that names a place clears what was told of there, or of no other place;
// of several that can hurt one that is gone leaves the other.
func TestDangerIsClearedWhereItWasTold(t *testing.T) {
	for _, x := range []struct {
		call        string
		stays, gone string // parted by ||, lines by |
	}{
		{"unit gas range; fault oven wont heat; saw gas leak at the valve stem", "did fixed other joint, soaped ok||did tightened union, soaped it, no bubbles||did replaced igniter|saw no bubbles at the flex",
			"did repacked the valve stem, soaped it, no bubbles||did repacked valve stem|saw gas leak test good"},
		{"unit gas range; fault oven wont heat; saw gas leak at manifold", "did tightened regulator joint, bubble test ok||did sealed the flex, soaped ok", "did sealed manifold joint, bubble test ok||did sealed manifold|saw no gas leak"},
		{"unit gas range; fault oven wont heat; saw gas leak at left orifice", "did cleaned right orifice, soaped ok", "did resealed left orifice, soaped ok"},
		{"unit gas range; fault oven wont heat; note customer smells gas near cooktop", "did regulator joint tightened, no bubbles||did soaped the union, no bubbles",
			"saw no gas leak||did tightened flex, all joints soaped, no bubbles||saw gas leak at the union|did tightened union, soaped the union, no bubbles||did found union loose, tightened it, soaped ok"},
		{"unit gas range; fault oven wont heat; note gas smell at cooktop; note gas smell at regulator", "did tightened the regulator joint, soaped ok", "saw gas leak test good||did all fittings soaped, no bubbles"},
		{"unit gas range; fault oven wont heat; note smell of gas at left front knob; note smell of gas behind range", "saw no gas leak behind range", "saw no gas leak"},
		{"unit gas range; fault smell of gas, oven wont heat", "did soaped the shutoff, no bubbles", "did soaped all joints, no bubbles||did remade union, soap n sniffer clear"},
		{"unit refrigerator; fault not cooling; plate gas R-600a; saw r600a leak at evap", "did replaced evap fan motor|saw no leak found at process tube", "did brazed evap|saw no leak found at evap||saw no leak found"},
		{"unit refrigerator; fault not cooling; plate gas R-600a; saw r600a leak at process tube", "did replaced evap fan motor|saw no leak found at the evap", "did pinched and brazed process tube|saw no leak found at process tube"},
		{"unit electric dryer; fault no heat, smells burnt", "did replaced heater element|saw no smoke from the breaker panel||did replaced heater element|saw no smoke from the vent outside",
			"did replaced heater element|saw no smoke||did replaced heater element|saw no smoke from the heater||did replaced heater element|saw no smoke from the dryer"},
		{"unit electric dryer; fault smoke from motor, no heat", "did replaced motor|saw no smoke at the plug", "did replaced motor|saw no smoke at the motor"},
		{"unit electric dryer; fault no heat; saw terminal block burnt; saw plug melted", "did replaced cord and plug|saw no smoke||did replaced plug|saw no smoke", "did replaced cord and plug, replaced terminal block|saw no smoke||did new block|did new plug|saw no smoke"},
		{"unit electric dryer; fault no heat; saw cord melted; saw terminal block burnt", "did replaced cord|saw no smoke", "did new cord, new terminal block|saw no smoke"},
		{"unit electric dryer; fault no heat; saw terminal block burnt", "did replaced heater element|saw no smoke", "did replaced cord|saw no smoke"},
		{"unit dryer; fault no heat; saw bare wire at block; saw belt guard missing", "saw hazard gone||did sleeved the wire|saw hazard gone", "saw hazards gone||saw no hazard||saw hazard gone|saw hazard gone"},
		{"unit dryer; fault no heat; saw bare wire at block; saw bare wire at block", "did looked at it", "saw hazard gone"},
		{"unit washer; fault wont spin; saw ground screw snapped off in cabinet", "did replaced motor|ohm earth 0.08 test 10A||ohm earth 0.08 test 10A|did fitted new ground screw", "did fitted new ground screw|ohm earth 0.08 test 10A||did drilled, new earth stud|ohm earth 0.05 test 10A"},
	} {
		for i, list := range []string{x.stays, x.gone} {
			for _, then := range strings.Split(list, "||") {
				c := applyAll(t, append(strings.Split(x.call, "; "), strings.Split(then, "|")...)...)
				if stands := len(c.alarms()) > 0; stands != (i == 0) {
					t.Errorf("%s; %s: stands is %t: %v", x.call, then, stands, c.alarms())
				}
			}
		}
	}
}

// Which of several still stands is told.
func TestStillStands(t *testing.T) {
	c := applyAll(t, "unit dryer", "fault no heat", "saw bare wire at block", "saw belt guard missing")
	r := must(t, c, "saw hazard gone")
	if got := r.Reply.Plain(); !strings.Contains(got, "Still stands: “bare wire at block” (entry 3)") {
		t.Errorf("%q", got)
	}
	r = must(t, applyAll(t, "unit washer"), "saw ground bolt sheared")
	if got := r.Reply.Plain(); strings.Contains(got, "felt a shock") || !strings.Contains(got, "without its earth") {
		t.Errorf("%q", got)
	}
}
