package repl

import (
	"fmt"
	"io"
	"slices"
	"testing"
	"time"

	"ohmcall/repl/term"
)

// thousand is a call of 1,000 entries, stored nowhere.
func thousand(b *testing.B) *typist {
	b.Helper()
	p := newTypist()
	lines := []string{"fault clicks and does not cool", "plate volts 115, hz 60", "ohm A B 3.45", "ohm A C 6.5", "ohm B C 3.1"}
	for i := len(lines); i < 1000; i++ {
		switch i % 5 {
		case 0:
			lines = append(lines, fmt.Sprintf("temp freezer %d.%dC", i%20, i%10))
		case 1:
			lines = append(lines, fmt.Sprintf("volt line 11%d.%d", i%8, i%10))
		case 2:
			lines = append(lines, "120V / 3.45ohm")
		case 3:
			lines = append(lines, fmt.Sprintf("ohm A B 3.4%d", i%10))
		default:
			lines = append(lines, fmt.Sprintf("note remark %d", i))
		}
	}
	for _, l := range lines {
		if _, err := p.n.Do(l); err != nil {
			b.Fatal(l, err)
		}
	}
	return p
}

// percentiles reports the times of single runs in microseconds.
func percentiles(b *testing.B, took []time.Duration) {
	slices.Sort(took)
	b.ReportMetric(float64(took[len(took)/2].Nanoseconds())/1e3, "p50-µs")
	b.ReportMetric(float64(took[len(took)*99/100].Nanoseconds())/1e3, "p99-µs")
}

// BenchmarkEnterToReply takes a typed line to its shown reply in a call of
// 1,000 entries, without a disk.
func BenchmarkEnterToReply(b *testing.B) {
	for _, line := range []string{"note x", "120V / 3.45ohm", "volt line 118.2", "ohm A B 3.45"} {
		b.Run(line, func(b *testing.B) {
			p := thousand(b)
			t := &talk{n: p.n, p: &term.Printer{Out: io.Discard, Err: io.Discard, Width: 80}, person: true}
			var took []time.Duration
			for b.Loop() {
				start := time.Now()
				t.take(line)
				took = append(took, time.Since(start))
			}
			percentiles(b, took)
		})
	}
}

// BenchmarkCompletion presses Tab in a call of 1,000 entries, with the parts
// of 1,000 notebooks known.
func BenchmarkCompletion(b *testing.B) {
	for _, head := range []string{"", "ohm ", "saw c", "part st", "120V / cap_", "strike "} {
		b.Run("line:"+head, func(b *testing.B) {
			k := thousand(b).k
			var parts []string
			for i := range 1000 {
				parts = append(parts, fmt.Sprintf("start device SAMPLE-%d", i))
			}
			k.Parts = func(string) []string { return parts }
			var took []time.Duration
			for b.Loop() {
				k.offered = nil
				start := time.Now()
				k.Complete(head)
				took = append(took, time.Since(start))
			}
			percentiles(b, took)
		})
	}
}
