package judge

import (
	"testing"

	"ohmcall/calc/measure"
)

// One verdict of each judge in turn, on a reading in the middle of its scale.
func BenchmarkVerdict(b *testing.B) {
	all := judgements(b)
	in := make([][]measure.Value, len(all))
	for i, j := range all {
		for _, s := range j.scales {
			in[i] = append(in[i], measure.Within(s, max(s, -s)/50))
		}
	}
	b.ReportAllocs()
	n := 0
	for b.Loop() {
		all[n%len(all)].of(in[n%len(all)])
		n++
	}
}

// The dearest: a sensor by its table, whose rows are checked too.
func BenchmarkSensorByTable(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		table, _, err := NewTable(curve)
		if err != nil {
			b.Fatal(err)
		}
		NTC(NTCIn{Ohms: measure.Within(32.6e3, 350), Celsius: measure.Within(0, 0.2), Table: table})
	}
}
