package call

import (
	"fmt"
	"testing"
	"time"
)

// measured is a call of some two hundred entries, open and without a cause.
func measured(b *testing.B) *Call {
	c := New()
	for _, l := range []string{"fault clicks and does not cool", "plate volts 115, hz 60, amps 1.2, lra 12, watts 550, gas R-600a", "saw clicks",
		"ohm A B 3.45, A C 6.5, B C 9.9", "ohm A case OL, B case OL, C case OL", "ohm ptc 8.2 cold"} {
		enter(b, c, l)
	}
	for i := range 200 {
		enter(b, c, fmt.Sprintf("temp room %d.5C", 20+i%3))
	}
	return c
}

func enter(b *testing.B, c *Call, line string) {
	if _, err := c.Apply(time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC), line); err != nil {
		b.Fatal(err)
	}
}

// What an entry costs in such a call: the reading, its verdict, and the causes
// weighed anew.
func BenchmarkVerdictInCall(b *testing.B) {
	for _, line := range []string{"ohm A B 3.45", "ohm A case 200M test 500V", "ohm heater 24.5", "volt line 118.2", "amp comp 1.15 run", "psi suction 36.2 standing at 25C"} {
		b.Run(line, func(b *testing.B) {
			c, n := measured(b), 0
			b.ReportAllocs()
			for b.Loop() {
				if n++; n%500 == 0 { // not longer than calls are
					b.StopTimer()
					c = measured(b)
					b.StartTimer()
				}
				enter(b, c, line)
			}
		})
	}
}
