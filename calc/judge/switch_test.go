package judge

import (
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Continuity of contacts: common practice.
func TestSwitch(t *testing.T) {
	ol, low := measure.Open(7), within(0.2, 0.3)
	for _, c := range []struct {
		name  string
		in    SwitchIn
		word  verdict.Word
		facts []string
	}{
		{"thermostat, nobody said", SwitchIn{Path: Thermostat, Ohms: ol}, verdict.CannotTell, nil},
		{"open where closed", SwitchIn{Path: Thermostat, Ohms: ol, Want: "closed"}, verdict.Failed, []string{"thermostat-open"}},
		{"closed as it must", SwitchIn{Path: Thermostat, Ohms: low, Want: "closed"}, verdict.Sound, []string{"thermostat-closed"}},
		{"open as it must", SwitchIn{Path: Thermostat, Ohms: ol, Want: "open"}, verdict.Sound, []string{"thermostat-opens"}},
		{"closed where open", SwitchIn{Path: Thermostat, Ohms: low, Want: "open"}, verdict.Failed, []string{"thermostat-stuck-closed"}},
		{"12 Ω", SwitchIn{Path: Thermostat, Ohms: within(12, 0.4), Want: "closed"}, verdict.Suspect, nil},
		{"limit", SwitchIn{Path: Limit, Ohms: ol, Want: "closed"}, verdict.Failed, []string{"limit-open"}},
		{"limit that should be open", SwitchIn{Path: Limit, Ohms: ol, Want: "open"}, verdict.Sound, nil},
		{"door", SwitchIn{Path: Switched, Ohms: low, Want: "closed"}, verdict.Sound, []string{"switch-closed"}},
		{"relay at rest, nobody said", SwitchIn{Path: Relay, Ohms: ol}, verdict.CannotTell, nil},
		{"relay that should close", SwitchIn{Path: Relay, Ohms: ol, Want: "closed"}, verdict.Failed, nil},
		{"fuse", SwitchIn{Path: Fuse, Ohms: ol}, verdict.Failed, []string{"fuse-open"}},
		{"cord", SwitchIn{Path: Cord, Ohms: low}, verdict.Sound, []string{"cord-sound"}},
		{"flame sensor, cold", SwitchIn{Path: Flame, Ohms: ol, Want: "closed"}, verdict.Failed, []string{"flame-sensor-open"}},
	} {
		check(t, c.name, Switch(c.in), c.word, c.facts...)
	}
}

// A coil that is open is bad whatever it is for: common practice.
func TestRelayCoil(t *testing.T) {
	check(t, "open", RelayCoil("", measure.Open(7)), verdict.Failed)
	check(t, "some ohms", RelayCoil("bake", within(400, 5)), verdict.CannotTell)
}
