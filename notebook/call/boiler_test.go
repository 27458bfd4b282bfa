package call

import (
	"strings"
	"testing"
)

// The water of a boiler is neither its fuel nor the air of a room: common practice.
func TestWaterOfABoiler(t *testing.T) {
	const fuel, room = "more than the gas valve", "beyond what a room has"
	for _, x := range []struct{ unit, line, says, not string }{
		{"gas boiler hydronic", "psi boiler 14", "14 psi", fuel},
		{"gas boiler", "psi water 12", "12 psi", "Fuel gas"},
		{"gas boiler", "psi gas 3", fuel, ""},
		{"gas boiler", "psi manifold 2", fuel, ""},
		{"gas furnace", "psi supply 2", fuel, ""},
		{"gas boiler", "temp return 149F", "149 °F", room},
		{"gas boiler", "temp room 149F", room, ""},
		{"gas furnace", "temp return 149F", room, ""},
		{"gas boiler", "amp circ 0.9", "those of the appliance", "compressor"},
		{"gas boiler", "saw circ turns", "the motor of the pump runs", ""},
		{"gas boiler", "saw circulator running", "the motor of the pump runs", ""},
		{"gas boiler", "saw circ turns freely", "not taken", ""},
		{"electric dryer", "saw mtr starts", "the machine starts", ""},
		{"electric dryer", "saw mtr tries to start", "none of the listed", ""},
	} {
		c := applyAll(t, "unit "+x.unit, "fault no heat", "plate volts 120, amps 3")
		e, err := c.Apply(testDay(), x.line)
		if err != nil {
			t.Fatal(err)
		}
		if got := e.Reply.Plain(); !strings.Contains(got, x.says) || x.not != "" && strings.Contains(got, x.not) {
			t.Errorf("%s, %s: %s", x.unit, x.line, got)
		}
	}
}
