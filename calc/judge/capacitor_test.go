package judge

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Tolerances: Hermetic Compressor Service Handbook p. 69 (±10 % of marked),
// 3, 5 and 6 % as marked on cans (common practice).
func TestRunCap(t *testing.T) {
	for _, c := range []struct {
		name          string
		x, half, mark float64
		tol           float64
		word          verdict.Word
		fact          string
		limit         string
	}{
		{"-24 %", 9.12, 0.12, 12, 6, verdict.Failed, "run-cap-failed", "11.28 to 12.72 µF"},
		{"-24 % and no tolerance on the can", 9.12, 0.12, 12, 0, verdict.Failed, "run-cap-failed", "10.8 to 13.2 µF"},
		{"within 6 %", 34.2, 0.4, 35, 6, verdict.Sound, "run-cap-sound", "32.9 to 37.1 µF"},
		{"-8 % passes at 10", 32.2, 0.4, 35, 10, verdict.Sound, "run-cap-sound", "31.5 to 38.5 µF"},
		{"-8 % fails at 6", 32.2, 0.4, 35, 6, verdict.Failed, "run-cap-failed", "32.9 to 37.1 µF"},
		{"-8 % fails at 5", 32.2, 0.4, 35, 5, verdict.Failed, "run-cap-failed", "33.25 to 36.75 µF"},
		{"-4 % fails at 3", 33.6, 0.2, 35, 3, verdict.Failed, "run-cap-failed", "33.95 to 36.05 µF"},
		{"too near from inside", 33.1, 0.4, 35, 6, verdict.CannotTell, "run-cap-undecided", "32.9 to 37.1 µF"},
		{"too near from outside", 32.7, 0.4, 35, 6, verdict.CannotTell, "run-cap-undecided", "32.9 to 37.1 µF"},
		{"high", 40, 0.4, 35, 6, verdict.Failed, "run-cap-failed", "32.9 to 37.1 µF"},
		{"open", 0.02, 0.03, 35, 6, verdict.Failed, "run-cap-failed", "32.9 to 37.1 µF"},
		{"fan section of 35+5", 4.9, 0.1, 5, 6, verdict.Sound, "run-cap-sound", "4.7 to 5.3 µF"},
	} {
		got := RunCap(RunCapIn{Name: "C1", Measured: within(c.x, c.half), Marked: c.mark, Tolerance: c.tol})
		check(t, c.name, got, c.word, c.fact)
		if got.Limit != c.limit {
			t.Errorf("%s: limit %q, want %q", c.name, got.Limit, c.limit)
		}
		if !slices.Contains(got.Caution, caution.Capacitor) {
			t.Errorf("%s: no discharge caution", c.name)
		}
	}
	check(t, "no marking", RunCap(RunCapIn{Measured: within(5, 0.1)}), verdict.CannotTell, "run-cap-undecided")
	check(t, "over range", RunCap(RunCapIn{Measured: measure.Open(7), Marked: 35}), verdict.CannotTell)
}

func TestRunCapSaysWhatStricterMarkingsWouldSay(t *testing.T) {
	got := RunCap(RunCapIn{Measured: within(32.2, 0.4), Marked: 35})
	if got.Word != verdict.Sound || len(got.Also) != 3 || !strings.Contains(got.Source, "assumed") {
		t.Errorf("%s, also %q, source %q", got.Word, got.Also, got.Source)
	}
	if got = RunCap(RunCapIn{Measured: within(35, 0.4), Marked: 35}); len(got.Also) != 0 {
		t.Errorf("a perfect part: also %q", got.Also)
	}
}

// −0/+20 % of the marked minimum: EIA-463 (from memory).
func TestStartCap(t *testing.T) {
	for _, c := range []struct {
		name         string
		x, half      float64
		low, high    float64
		word         verdict.Word
		fact, source string
	}{
		{"88-108 in the middle", 97, 1, 88, 108, verdict.Sound, "start-cap-sound", "range on the can"},
		{"weak", 70, 1, 88, 108, verdict.Failed, "start-cap-failed", "range on the can"},
		{"too near", 88.5, 1, 88, 108, verdict.CannotTell, "start-cap-undecided", "range on the can"},
		{"a little high", 112, 1, 88, 108, verdict.Suspect, "start-cap-suspect", "range on the can"},
		{"one value marked", 104, 1, 88, 0, verdict.Sound, "start-cap-sound",
			"EIA-463, −0/+20 % of the marked minimum (from memory)"},
	} {
		got := StartCap(StartCapIn{Name: "C2", Measured: within(c.x, c.half), Low: c.low, High: c.high})
		check(t, c.name, got, c.word, c.fact)
		if got.Source != c.source {
			t.Errorf("%s: source %q", c.name, got.Source)
		}
	}
	// A tolerance on the can beats the standard's default: common practice.
	for _, c := range []struct {
		x     float64
		word  verdict.Word
		limit string
	}{
		{55, verdict.Sound, "54 to 66 µF, ±10 % marked on the can"}, {70, verdict.Suspect, "54 to 66 µF, ±10 % marked on the can"},
		{52, verdict.Failed, "54 to 66 µF, ±10 % marked on the can"}, {65.9, verdict.CannotTell, "54 to 66 µF, ±10 % marked on the can"},
	} {
		if got := StartCap(StartCapIn{Measured: within(c.x, 0.9), Low: 60, Tolerance: 10}); got.Word != c.word || got.Limit != c.limit {
			t.Errorf("%v µF of 60 ±10 %%: %s, limit %q", c.x, got.Word, got.Limit)
		}
	}
	if got := StartCap(StartCapIn{Measured: within(55, 0.9), Low: 60}); got.Word != verdict.Failed || got.Limit != "60 to 72 µF, EIA-463, −0/+20 %" {
		t.Errorf("no tolerance: %s, limit %q", got.Word, got.Limit)
	}
	check(t, "open", StartCap(StartCapIn{Measured: within(0.3, 0.3), Low: 88, High: 108}), verdict.Failed,
		"start-cap-failed", "start-cap-open")
	check(t, "range reversed", StartCap(StartCapIn{Measured: within(97, 1), Low: 108, High: 88}), verdict.CannotTell, "start-cap-undecided")
}

// I = ωCV: any text on alternating current. The trade's 2652 is 10⁶/(2π·60).
func TestCapUnderLoad(t *testing.T) {
	for _, c := range []struct{ amps, volts, hz, want, half float64 }{
		{4.2, 330, 60, 33.760, 5e-4}, {4.2, 330, 50, 40.512, 5e-4},
		{2.9, 370, 60, 20.791, 5e-4}, {2.9, 370, 50, 24.949, 5e-4},
		{6.5, 440, 60, 39.186, 5e-4},
		{1, 1, 60, 2652.58, 5e-3}, {1, 1, 50, 3183.10, 5e-3},
	} {
		got, _ := CapUnderLoad(UnderLoadIn{Amps: measure.Exact(c.amps), Volts: measure.Exact(c.volts), Hertz: c.hz, Marked: 35})
		near(t, "µF", got.X, c.want, c.half)
	}
	a, v := within(4.2, 0.1), within(330, 4)
	v.Entry = 8
	got, judged := CapUnderLoad(UnderLoadIn{Name: "C1", Amps: a, Volts: v, Hertz: 60, Marked: 35, Tolerance: 10})
	if !(got.Lo < 33.76*(4.1/4.2) && got.Hi > 33.76*(4.3/4.2)) {
		t.Errorf("bounds %v to %v do not hold the meters' limits", got.Lo, got.Hi)
	}
	check(t, "35 µF under load", judged, verdict.Sound, "run-cap-sound")
	if !slices.Equal(judged.Entries, []int{7, 8}) || !slices.Contains(judged.Caution, caution.MainsLive) {
		t.Errorf("entries %v, cautions %v", judged.Entries, judged.Caution)
	}
	_, judged = CapUnderLoad(UnderLoadIn{Amps: a, Volts: v, Marked: 35})
	check(t, "no hertz", judged, verdict.CannotTell)
}

// Behaviour on an ohm-meter: refrigerator service manual RS1200001 (1998).
func TestCapOhms(t *testing.T) {
	climb := []measure.Value{within(2, 0.4), within(2000, 40), within(2e6, 4e4), measure.Open(7)}
	for _, c := range []struct {
		name     string
		readings []measure.Value
		bleeder  float64
		word     verdict.Word
		facts    []string
	}{
		{"climbs to OL", climb, 0, verdict.CannotTell, nil},
		{"climbs to its bleeder", []measure.Value{within(2, 0.4), within(20000, 400)}, 20000, verdict.CannotTell, nil},
		{"OL at once", []measure.Value{measure.Open(7)}, 0, verdict.Suspect, []string{"start-cap-suspect"}},
		{"OL with a bleeder", []measure.Value{measure.Open(7)}, 15000, verdict.Suspect, []string{"start-cap-suspect"}},
		{"stays at zero", []measure.Value{within(0.4, 0.3), within(0.4, 0.3)}, 0, verdict.Failed, []string{"start-cap-failed", "start-cap-shorted"}},
		{"near zero once", []measure.Value{within(0.4, 0.3)}, 0, verdict.CannotTell, nil},
		{"steady at the bleeder", []measure.Value{within(15100, 200)}, 15000, verdict.CannotTell, nil},
		{"leaky", []measure.Value{within(4000, 40), within(4010, 40)}, 0, verdict.Suspect, []string{"start-cap-suspect"}},
		{"nothing read", nil, 0, verdict.CannotTell, nil},
	} {
		got := CapOhms(CapOhmsIn{Name: "C2", Kind: StartKind, Readings: c.readings, Bleeder: c.bleeder})
		check(t, c.name, got, c.word, c.facts...)
	}
}

// ½CV² and t = RC·ln(V0/V); 20 000 Ω: Hermetic Compressor Service Handbook
// p. 69; 50 V within a minute: NEC 460.6.
func TestBleeder(t *testing.T) {
	b, ok := BleederFor(35, 370, 0)
	if !ok {
		t.Fatal("no sum")
	}
	near(t, "peak", b.Peak, 523.3, 0.05)
	near(t, "energy", b.Joules, 4.7915, 1e-4)
	near(t, "seconds", b.Seconds, 1.644, 5e-4)
	b, _ = BleederFor(45, 440, 15_000)
	near(t, "energy", b.Joules, 8.712, 1e-3)
	near(t, "seconds", b.Seconds, 1.702, 5e-4)
	near(t, "watts", b.Watts, 25.8, 0.05)
	// The largest resistor that keeps NEC 460.6: ELECTRONICON catalogue p. 47.
	b, _ = BleederFor(45, 440, 528_800)
	near(t, "seconds", b.Seconds, 60, 0.02)
	if b, _ = BleederFor(10, 24, 1000); b.Seconds != 0 {
		t.Errorf("already under 50 V, yet %v s", b.Seconds)
	}
	for _, bad := range [][3]float64{{0, 370, 1}, {35, 0, 1}, {35, 370, -1}} {
		if _, ok := BleederFor(bad[0], bad[1], bad[2]); ok {
			t.Errorf("%v was accepted", bad)
		}
	}
}
