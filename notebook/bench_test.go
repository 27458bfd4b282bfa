package notebook

import (
	"fmt"
	"testing"
	"time"

	"ohmcall/notebook/call"
)

// longCall gives the lines of a call of any length, as a day of measuring
// with repeats, notes, sums and strikes would give.
func longCall(entries int) []string {
	lines := []string{"fault clicks and does not cool", "unit refrigerator", "client Petra Placeholder",
		"plate volts 115, hz 60, amps 1.2, lra 12, hp 1/6, gas R-600a", "meter ohm 0.9% 2", "saw clicks", "safe"}
	for i := 0; len(lines) < entries; i++ {
		switch i % 12 {
		case 0:
			lines = append(lines, fmt.Sprintf("ohm A B %.2f", 3.4+float64(i%7)/100))
		case 1:
			lines = append(lines, fmt.Sprintf("ohm B C %.2f", 2.5+float64(i%5)/100))
		case 2:
			lines = append(lines, fmt.Sprintf("ohm A C %.2f", 5.9+float64(i%9)/100))
		case 3:
			lines = append(lines, fmt.Sprintf("volt line %.1f", 117+float64(i%20)/10))
		case 4, 8, 10:
			lines = append(lines, fmt.Sprintf("note reading %d taken with the door shut and the fan on", i))
		case 5:
			lines = append(lines, fmt.Sprintf("amp comp %.2f run", 1.1+float64(i%9)/100))
		case 6:
			lines = append(lines, "120V / ohm(A, B)")
		case 7:
			lines = append(lines, fmt.Sprintf("mfd C1 %.1f", 11+float64(i%20)/10))
		case 9:
			lines = append(lines, "saw cond-fan runs")
		case 11:
			lines = append(lines, fmt.Sprintf("watt comp %d", 100+i%30))
		}
	}
	return lines
}

func callOf(lines []string) *call.Call {
	c := call.New()
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	for i, l := range lines {
		if _, err := c.Apply(at.Add(time.Duration(i)*20*time.Second), l); err != nil {
			panic(l + ": " + err.Error())
		}
	}
	return c
}

// BenchmarkReplay gives the cost of one entry of a call of each length,
// replayed from its file and checked.
func BenchmarkReplay(b *testing.B) {
	for _, n := range []int{50, 1000, 10000} {
		c := callOf(longCall(n))
		m := New(Host{Now: time.Now})
		m.call = c
		content := m.Render()
		b.Run(fmt.Sprintf("check/%d", n), func(b *testing.B) {
			for b.Loop() {
				r, err := Check(content)
				if err != nil || len(r.Faults) > 0 {
					b.Fatal(err, r.Faults)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*n), "µs/entry")
		})
		b.Run(fmt.Sprintf("load/%d", n), func(b *testing.B) {
			for b.Loop() {
				if _, err := load(Host{Now: time.Now}, content); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*n), "µs/entry")
		})
		b.Run(fmt.Sprintf("render/%d", n), func(b *testing.B) {
			for b.Loop() {
				m.Render()
			}
		})
	}
}
