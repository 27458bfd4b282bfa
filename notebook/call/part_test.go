package call

import (
	"strings"
	"testing"
	"time"
)

// A sensor has the temperature of what it sits in when it is read: neither that of
// a pipe nor one of another hour.
func TestTemperatureBesideASensor(t *testing.T) {
	for _, x := range []struct {
		lines string
		told  bool
	}{
		{"temp fridge 25C; ohm sensor 10.0k", true},
		{"+10min temp fridge 25C; +10min ohm sensor 10.0k", true},
		{"temp fridge 5C; +90min ohm sensor 10.0k", false},
		{"temp discharge 70C; ohm sensor 10.0k", false},
		{"temp fridge 25C; temp discharge 70C; ohm sensor 10.0k", true},
		{"temp discharge 25C; ohm discharge-sensor 10.0k", true},
		{"temp fridge 5C; +90min ohm sensor 10.0k at 25C", true},
	} {
		c := atTheirTimes(t, append([]string{"date 2026-06-01 09:00", "fault freezes food", "plate r25 10k, beta 3977"}, strings.Split(x.lines, "; ")...)...)
		if got := c.established("sensor-sound"); got != x.told || c.established("sensor-failed") {
			t.Errorf("%s: sound %v, failed %v", x.lines, got, c.established("sensor-failed"))
		}
	}
}

// atTheirTimes applies lines as they come, each at the time before it.
func atTheirTimes(t *testing.T, lines ...string) *Call {
	t.Helper()
	c := New()
	for _, l := range lines {
		if _, err := c.Apply(c.Clock(l, time.Now), l); err != nil {
			t.Fatalf("%s: %v", l, err)
		}
	}
	return c
}

// What stands beside a reading is of the same thing: no cabinet's cold of a system
// at rest, no fan's amps of the compressor's overload.
func TestJudgedByTheSameThing(t *testing.T) {
	for _, x := range []struct{ lines, fact, never string }{
		{"plate gas R-134a; temp freezer -18C; psi suction 80 standing", "", "standing-pressure-high"},
		{"plate gas R-134a; temp room 25C; temp freezer -18C; psi suction 81.8 standing", "standing-pressure-sound", ""},
		{"plate watts 5000, volts 240; volt line 180 run; +3h amp heater 20.8 run", "", "amps-high"},
		{"plate amps 1.2, lra 12; amp comp 10 start; amp cond-fan 0.15 run; trip 8s", "amps-locked-rotor", ""},
	} {
		c := atTheirTimes(t, append([]string{"date 2026-06-01 09:00", "fault hums and trips"}, strings.Split(x.lines, "; ")...)...)
		last := c.judged[c.subjects[len(c.subjects)-1]]
		if v := last.verdict; x.fact != "" && !among(v.Fact, x.fact) || x.never != "" && among(v.Fact, x.never) {
			t.Errorf("%s: %s, %s %v", x.lines, v.Word, v.Text, v.Fact)
		}
	}
}
