package winding

import (
	"testing"

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
