package winding

import (
	"math"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

func TestToTemp(t *testing.T) {
	// Computed from R2/R1 = (234.5+t2)/(234.5+t1), the constant of copper in UL
	// text and IEEE 112.
	for _, tt := range []struct{ r, from, to, want float64 }{
		{4.20, 40, 25, 3.9705},
		{4.000, 20, 40, 4.3143},
		{6.000, 76.9, 25, 5.000},
	} {
		got := ToTemp(measure.Within(tt.r, 0.1), tt.from, tt.to)
		if math.Abs(got.X-tt.want) > 6e-5*tt.want {
			t.Errorf("%v Ω from %v to %v °C: %v, want %v", tt.r, tt.from, tt.to, got.X, tt.want)
		}
		if !(got.Lo < got.X && got.X < got.Hi) {
			t.Errorf("bounds lost: %+v", got)
		}
	}
	if !ToTemp(measure.Open(3), 60, 25).Over {
		t.Error("an open reading must stay open")
	}
}

func TestCompare(t *testing.T) {
	tests := []struct {
		v      measure.Value
		word   verdict.Word
		margin float64
	}{
		{measure.Within(4.1, 0.05), verdict.Sound, 4.1},
		{measure.Within(4.3, 0.05), verdict.CannotTell, 0.1},
		{measure.Within(4.5, 0.05), verdict.Failed, -3.9},
		{measure.Within(3.5, 0.05), verdict.Failed, -7.9},
		{measure.Open(2), verdict.Failed, 0},
	}
	for _, tt := range tests {
		d := Compare("start winding", tt.v, 4.1, 5)
		if d.Word != tt.word || !near(d.Margin, tt.margin) {
			t.Errorf("%+v: %s margin %v, want %s %v", tt.v, d.Word, d.Margin, tt.word, tt.margin)
		}
		if d.Limit == "" || d.Source == "" || d.Text == "" {
			t.Errorf("unexplained: %+v", d)
		}
	}
}
