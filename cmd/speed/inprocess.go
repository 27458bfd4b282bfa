package main

import (
	"fmt"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/quantity"
	"ohmcall/calc/sum"
	"ohmcall/calc/winding"
)

// inProcess measures what has no process of its own.
func inProcess(_, _, _ string) ([]figure, error) {
	a, err := quantity.New(3.45, "ohm")
	if err != nil {
		return nil, err
	}
	b, err := quantity.New(2.5, "ohm")
	if err != nil {
		return nil, err
	}
	a, b = a.WithU(0.03, 1), b.WithU(0.04, 2)
	scope := &sum.Scope{Values: map[string]quantity.Q{"a": a, "b": b}}
	eval := testing.Benchmark(func(t *testing.B) {
		t.ReportAllocs()
		for t.Loop() {
			if _, err := sum.Eval("(a + b) * 1.2A", scope); err != nil {
				t.Fatal(err)
			}
		}
	})
	add := testing.Benchmark(func(t *testing.B) {
		for t.Loop() {
			if _, err := quantity.Add(a, b); err != nil {
				t.Fatal(err)
			}
		}
	})
	three := infer(pins(3))
	eight := infer(pins(8))
	return []figure{
		atMost("a typed sum, compiled and run", 60, float64(eval.NsPerOp())/1000, " µs"),
		atMost("its memory", 40, float64(eval.AllocedBytesPerOp())/1024, " KB"),
		atMost("adding two uncertain quantities", 100, float64(add.NsPerOp()), " ns"),
		atMost("inference of three pins", 20, float64(three.NsPerOp())/1000, " µs"),
		atMost("inference of eight leads", 2000, float64(eight.NsPerOp())/1000, " µs"),
	}, nil
}

// pins are the readings of a chain of n leads with unlike windings between.
func pins(n int) []winding.Reading {
	var out []winding.Reading
	at := 0.0
	place := make([]float64, n)
	for i := range place {
		place[i] = at
		at += 2 + float64(i)*1.7
	}
	for i := range n {
		for j := i + 1; j < n; j++ {
			x := place[j] - place[i]
			out = append(out, winding.Reading{A: fmt.Sprint(i + 1), B: fmt.Sprint(j + 1), V: measure.Within(x, 0.01*x+0.03)})
		}
	}
	return out
}

func infer(rs []winding.Reading) testing.BenchmarkResult {
	return testing.Benchmark(func(t *testing.B) {
		for t.Loop() {
			winding.Infer(winding.Input{Readings: rs, Meter: measure.Default})
		}
	})
}
