package repair

import (
	"math"
	"testing"
)

// Same µF and voltage rating not below: trade tip on PSC motors. Equal or up
// to 20 % higher: trade article on selecting motor start capacitors.
func TestSizes(t *testing.T) {
	run, err := RunSize(35, 370, 0)
	if err != nil {
		t.Fatal(err)
	}
	start, err := StartSize(88, 108, 165)
	if err != nil {
		t.Fatal(err)
	}
	single, err := StartSize(100, 0, 250)
	if err != nil {
		t.Fatal(err)
	}
	six, _ := RunSize(35, 370, 6)
	unrated, _ := RunSize(35, 0, 6)
	for _, c := range []struct {
		name      string
		s         Size
		uF, volts float64
		want      bool
	}{
		{"same", run, 35, 370, true},
		{"higher voltage", run, 35, 440, true},
		{"lower voltage", run, 35, 330, false},
		{"40 for 35", run, 40, 440, false},
		{"30 for 35", run, 30, 440, false},
		{"6 % low, 5 % assumed", run, 32.9, 440, false},
		{"6 % low, 6 % on the can", six, 32.9, 440, true},
		{"no voltage known of the old one", unrated, 35, 440, true},
		{"no voltage given", run, 35, 0, true},
		{"start, same", start, 98, 165, true},
		{"start, the low end of the can's own range", start, 88, 165, true},
		{"start, the high end of the can's own range", start, 108, 250, true},
		{"start, 20 % up", start, 117.6, 250, true},
		{"start, over 20 % up", start, 119, 250, false},
		{"single value, over 20 % up", single, 121, 250, false},
		{"single value, less", single, 98, 250, false},
		{"start, less", start, 80, 250, false},
		{"start, lower voltage", start, 88, 125, false},
		{"single value, 20 % up", single, 120, 250, true},
	} {
		if why := c.s.Misfit(c.uF, c.volts); (why == "") != c.want {
			t.Errorf("%s: %q, want fitting %v", c.name, why, c.want)
		}
	}
	if got := run.Text(); got != "35 µF (33.25 to 36.75 would do), 370 V or more" {
		t.Errorf("text %q", got)
	}
	if got := unrated.Text(); got != "35 µF (32.9 to 37.1 would do), voltage rating not below the old one" {
		t.Errorf("text %q", got)
	}
	if got := start.Text(); got != "98 µF, the middle of the marked range, at least 88 and at most 117.6, 165 V or more" {
		t.Errorf("text %q", got)
	}
	if got := single.Text(); got != "100 µF, at most 120, 250 V or more" {
		t.Errorf("text %q", got)
	}
	for _, s := range []Size{run, start} {
		if s.Source == "" || len(s.Reasons) < 2 {
			t.Errorf("%s: source %q, reasons %q", s.Kind, s.Source, s.Reasons)
		}
	}
}

func TestSizesRefuseWhatIsNoMarking(t *testing.T) {
	for _, bad := range []float64{0, -5, math.NaN(), math.Inf(1)} {
		if _, err := RunSize(bad, 370, 5); err == nil {
			t.Errorf("run %v accepted", bad)
		}
		if _, err := StartSize(bad, 0, 250); err == nil {
			t.Errorf("start %v accepted", bad)
		}
	}
	if _, err := StartSize(108, 88, 250); err == nil {
		t.Error("a reversed range was accepted")
	}
	if _, err := RunSize(35, 370, 80); err == nil {
		t.Error("a tolerance of 80 % was accepted")
	}
}

// Ten times the capacitance gives ten times the range.
func TestSizesScale(t *testing.T) {
	for x := 1.5; x < 90; x += 1.3 {
		a, _ := RunSize(x, 370, 6)
		b, _ := RunSize(10*x, 370, 6)
		for _, share := range []float64{0.9, 0.94, 0.95, 1, 1.05, 1.06, 1.1} {
			fa, fb := a.Misfit(share*x, 370), b.Misfit(share*10*x, 370)
			if (fa == "") != (fb == "") {
				t.Fatalf("%v µF at %v: %q, ten times: %q", x, share, fa, fb)
			}
		}
	}
}
