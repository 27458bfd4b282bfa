package winding

import (
	"math/rand/v2"
	"testing"
	"time"

	"ohmcall/calc/measure"
)

func BenchmarkThreePins(b *testing.B) {
	in := Input{Readings: pairs("A", "B", "3.45", "A", "C", "~6.5", "B", "C", "2.5"), Meter: measure.Default}
	b.ReportAllocs()
	for b.Loop() {
		Infer(in)
	}
}

func eight() []Reading {
	var m machine
	m.fill("S", "C", 60.0, "C", "T1", 40.0, "T1", "T2", 7.0, "T2", "T3", 8.0, "T3", "T4", 9.0, "T4", "T5", 10.0, "X", "C", 120.0)
	var in []Reading
	for p, x := range m.ohms {
		in = append(in, Reading{p[0], p[1], measure.Within(x, measure.Default.Limit(x, 0.1, false))})
	}
	sortReadings(in)
	return in
}

func BenchmarkEightLeads(b *testing.B) {
	in := Input{Readings: eight(), Kind: Fan}
	b.ReportAllocs()
	for b.Loop() {
		Infer(in)
	}
}

// Half of the readings leave the most networks to try.
func BenchmarkEightLeadsHalfRead(b *testing.B) {
	in := Input{Readings: eight()[:16], Kind: Fan}
	b.ReportAllocs()
	for b.Loop() {
		Infer(in)
	}
}

// Any network of eight leads, read in part by a coarse meter: the mean, and
// the slowest of all as the best of three.
func BenchmarkEightLeadsAny(b *testing.B) {
	rng := rand.New(rand.NewPCG(7, 9))
	names := []string{"A", "B", "C", "D", "E", "F", "G", "H"}
	var ins []Input
	for range 300 {
		var m machine
		var edges []any
		for i := 1; i < len(names); i++ {
			edges = append(edges, names[i], names[rng.IntN(i)], logUniform(rng, 0.3, 30))
		}
		m.fill(edges...)
		var in Input
		for p, x := range m.ohms {
			in.Readings = append(in.Readings, Reading{p[0], p[1], measure.Within(x, 0.01*x+0.3)})
		}
		sortReadings(in.Readings)
		rng.Shuffle(len(in.Readings), func(i, j int) { in.Readings[i], in.Readings[j] = in.Readings[j], in.Readings[i] })
		in.Readings = in.Readings[:7+rng.IntN(22)]
		ins = append(ins, in)
	}
	var worst time.Duration
	for _, in := range ins {
		best := time.Hour
		for range 3 {
			start := time.Now()
			Infer(in)
			best = min(best, time.Since(start))
		}
		worst = max(worst, best)
	}
	b.ReportAllocs()
	n := 0
	for b.Loop() {
		Infer(ins[n%len(ins)])
		n++
	}
	b.ReportMetric(float64(worst.Microseconds()), "worst-µs")
}
