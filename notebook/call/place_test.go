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
