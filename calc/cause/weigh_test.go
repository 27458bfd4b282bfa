package cause

import (
	"slices"
	"strings"
	"testing"
)

func TestContradictionIsShownNotAveraged(t *testing.T) {
	f := facts("hums windings-sound winding-open")
	r := Weigh("no-start", f)
	if want := []Contradiction{{f[1], f[2]}}; !slices.Equal(r.Contradictions, want) {
		t.Fatalf("contradictions %v, want %v", r.Contradictions, want)
	}
	for _, c := range []string{"winding-open", "winding-shorted", "drive-fault"} {
		if !slices.Contains(r.Codes(Open), c) {
			t.Errorf("%s is decided by a disputed fact", c)
		}
	}
	if r.Next == nil || r.Next.Code != "winding-ohms" || !r.Repeat {
		t.Errorf("next %v, repeat %v: want the disputed reading again", r.Next, r.Repeat)
	}
	why := strings.Join(Why("winding-open", r), "\n")
	for _, want := range []string{"for: winding open (entry 3), disputed by windings sound (entry 2)", "against: windings sound (entry 2), disputed by winding open (entry 3)"} {
		if !strings.Contains(why, want) {
			t.Errorf("%q lacks %q", why, want)
		}
	}
}

// A dispute over a live reading waits while a dead test still tells.
func TestLiveDisputeWaitsForDeadTests(t *testing.T) {
	r := Weigh("no-start", facts("clicks supply-sound supply-low"))
	if r.Next == nil || r.Next.Danger == Live || len(r.Contradictions) != 1 {
		t.Errorf("next %+v, contradictions %v", r.Next, r.Contradictions)
	}
}

func TestNothingLeft(t *testing.T) {
	all := "clicks" + goodGear + " no-start-on-other-outlet no-start-after-wait amps-none"
	r := Weigh("no-start", facts(all))
	if !r.Exhausted || r.Next == nil || !r.Repeat || r.Repair != nil {
		t.Fatalf("exhausted %v, next %v, repair %v", r.Exhausted, r.Next, r.Repair)
	}
	if !slices.Contains(r.Next.Outcomes, "windings-sound") || !strings.Contains(r.NextWhy, "windings sound (entry 2)") {
		t.Errorf("repeats %s: %s", r.Next.Code, r.NextWhy)
	}
	if Weigh("no-start", facts("clicks"+goodGear)).Exhausted {
		t.Error("exhausted although causes are left")
	}
}

func TestCured(t *testing.T) {
	r := Weigh("no-start", facts("starts-and-runs surge-sound amps-sound"))
	if !r.Cured || r.Exhausted || r.Next != nil || r.Repair != nil || !strings.Contains(r.NextWhy, "starts and runs (entry 1)") {
		t.Errorf("%+v", r)
	}
	if !slices.Contains(r.Codes(RuledOut), "compressor-seized") {
		t.Error("a machine that starts and runs is not seized")
	}
}

// A seized compressor is ruled out by a start and by nothing that is read with
// the power off.
func TestOnlyARunRulesOutSeized(t *testing.T) {
	c, _ := By("compressor-seized")
	for _, x := range Tests() {
		for _, o := range x.Outcomes {
			if x.Danger == Dead && slices.Contains(c.Contradicts, o) {
				t.Errorf("%s rules out a seized compressor by %s", x.Code, o)
			}
		}
	}
}

// An ohmmeter's word on insulation yields to an insulation tester's.
func TestTesterOutranksOhmmeter(t *testing.T) {
	r := Weigh("trips-breaker", facts("residual-trips insulation-no-gross-fault insulation-failed"))
	if got := r.Codes(Supported); !slices.Equal(got, []string{"winding-grounded"}) || len(r.Contradictions) > 0 {
		t.Errorf("supported %v, contradictions %v", got, r.Contradictions)
	}
	r = Weigh("trips-breaker", facts("residual-trips insulation-no-gross-fault"))
	if !slices.Contains(r.Codes(RuledOut), "winding-grounded") || !slices.Contains(r.Codes(Open), "insulation-weak") {
		t.Errorf("ruled out %v", r.Codes(RuledOut))
	}
}

// A grounded machine is never to be energised again: no test that does so is
// proposed, whatever else was found.
func TestGroundedIsNeverEnergised(t *testing.T) {
	for _, bad := range grounded {
		for _, s := range scenarios {
			r := Weigh(s.complaint, facts(bad+" "+s.facts))
			if r.Next == nil {
				continue
			}
			switch r.Next.Code {
			case "other-outlet", "rest", "start-sag", "start-amps", "call-volts", "test-device", "test-kit", "other-circuit":
				t.Errorf("%s with %s: %s is proposed", s.name, bad, r.Next.Code)
			}
		}
	}
}

// A live test on the machine comes only after its insulation was looked at.
func TestLiveTestWaitsForInsulation(t *testing.T) {
	f := facts("clicks cond-fan-runs comp-hot windings-sound start-device-sound overload-closed start-cap-none run-cap-none wiring-matches connections-sound no-start-on-other-outlet no-start-after-wait")
	r := Weigh("no-start", f)
	if r.Next == nil || r.Next.Code != "case-ohms" {
		t.Fatalf("next %v: %s", r.Next, r.NextWhy)
	}
	r = Weigh("no-start", append(f, Fact{Code: "insulation-sound", Entry: 20}))
	if r.Next == nil || r.Next.Code != "start-amps" || !strings.Contains(r.NextWhy, "no dead test") {
		t.Errorf("next %v: %s", r.Next, r.NextWhy)
	}
}

// When no test parts what is left, one that bears on all of it is better than
// none.
func TestWhatNoTestPartsIsStillTested(t *testing.T) {
	r := Weigh("no-cool", facts("starts-and-runs evap-fan-none frost-even vents-clear condenser-clean gasket-sound normal-use standing-pressure-sound sensor-sound"))
	if got := r.Codes(Open); !slices.Equal(got, []string{"cond-fan-failed", "cond-fan-unfed"}) {
		t.Fatalf("open %v", got)
	}
	if r.Next == nil || r.Next.Code != "cond-fan-look" || !strings.HasPrefix(r.NextWhy, "no test parts what is left") {
		t.Errorf("next %v: %s", r.Next, r.NextWhy)
	}
}

func TestFaultBesideTheReason(t *testing.T) {
	r := Weigh("no-start", facts("clicks"+goodGearBut("start-device-sound", "start-device-failed")+" no-start-on-other-outlet no-start-after-wait no-start-with-test-device no-start-with-kit"))
	for i := range r.Standings {
		if s := &r.Standings[i]; s.Cause.Code == "start-device-failed" && (!s.Beside || s.State != RuledOut) {
			t.Errorf("failed start device: beside %v, %s", s.Beside, s.State)
		}
	}
	if r.Repair == nil || r.Repair.Code != "compressor-seized" || !strings.Contains(r.NextWhy, "also shown, though not the reason: start device") {
		t.Errorf("repair %v: %s", r.Repair, r.NextWhy)
	}
	if why := Why("start-device-failed", r); len(why) == 0 || !strings.Contains(why[0], "mend it as well") {
		t.Errorf("why: %q", why)
	}
}

func TestComplaintFromFacts(t *testing.T) {
	for first, want := range map[string]string{"clicks": "no-start", "does-not-cool": "no-cool", "freezes-food": "too-cold", "all-dead": "no-power", "cuts-out": "hums-trips",
		"temp-above": "leaks-ices", "frost-partial": "leaks-ices"} {
		if r := Weigh("", []Fact{{Code: "windings-sound", Entry: 1}, {Code: "supply-sound", Entry: 5}, {Code: first, Entry: 2}, {Code: "water-on-floor", Entry: 4}}); r.Complaint != want {
			t.Errorf("%s opens %q, want %q", first, r.Complaint, want)
		}
	}
	for code, want := range map[string]string{"temp-above": "no-cool", "frost-partial": "no-cool", "oil-stain": "no-cool", "frost-even": ""} {
		if r := Weigh("", facts("windings-sound "+code)); r.Complaint != want {
			t.Errorf("%s alone opens %q, want %q", code, r.Complaint, want)
		}
	}
	r := Weigh("", facts("windings-sound winding-open"))
	if r.Complaint != "" || len(r.Standings) != 0 || len(r.Contradictions) != 1 {
		t.Errorf("without a complaint: %+v", r)
	}
	if r := Weigh("no-such", facts("clicks")); r.Complaint != "" || r.Next != nil {
		t.Errorf("an unknown complaint was weighed: %+v", r)
	}
}

func TestUnknownCodesCountForNothing(t *testing.T) {
	a, b := Weigh("no-start", facts("clicks")), Weigh("no-start", append(facts("clicks"), Fact{Code: "no-such-code", Entry: 2}))
	if !slices.Equal(a.Codes(Open), b.Codes(Open)) || a.NextWhy != b.NextWhy {
		t.Error("a code outside the vocabulary changed the result")
	}
	if a, b := Weigh("no-start", facts("insulation-no-gross-fault")), Weigh("no-start", facts("no-gross-ground")); !slices.Equal(a.Codes(RuledOut), b.Codes(RuledOut)) {
		t.Error("a synonym counts for something else")
	}
}

func TestWhyNamesEntriesAndSource(t *testing.T) {
	r := Weigh("no-start", []Fact{{Code: "clicks", Entry: 3}, {Code: "windings-sound", Entry: 8}})
	why := Why("winding-open", r)
	if want := []string{
		"winding open is ruled out: it cannot stand beside what was found",
		"against: windings sound (entry 8)",
		"source: chiller service manual, p. 12 (overload between terminal C and motor common)",
	}; !slices.Equal(why, want) {
		t.Errorf("%q", why)
	}
	if why := strings.Join(Why("compressor-seized", r), "\n"); !strings.Contains(why, "for: clicks (entry 3)") || !strings.Contains(why, "is open: what was found fits it") {
		t.Errorf("%q", why)
	}
	if Why("heater-failed", r) != nil {
		t.Error("a cause that was not weighed is explained")
	}
}

func TestCallerMayKeepTheFacts(t *testing.T) {
	f := []Fact{{Code: "windings-sound", Entry: 9}, {Code: "clicks", Entry: 1}}
	kept := slices.Clone(f)
	r := Weigh("no-start", f)
	if !slices.Equal(f, kept) {
		t.Error("the caller's facts were sorted")
	}
	for i := range r.Standings {
		_ = append(r.Standings[i].For, Fact{Code: "hums", Entry: 99})
	}
	if again := Weigh("no-start", f); !slices.Equal(again.Standings[0].For, r.Standings[0].For) {
		t.Error("standings share memory")
	}
}

func BenchmarkWeigh(b *testing.B) {
	f := facts("clicks comp-hot cond-fan-runs long-cord light-works outlet-works plugged-direct room-normal condenser-clean gasket-sound" +
		" windings-sound insulation-no-gross-fault start-device-suspect overload-closed start-cap-none run-cap-none wiring-matches connections-sound supply-sound no-start-after-wait")
	if len(f) != 20 {
		b.Fatalf("%d facts, want 20", len(f))
	}
	b.ReportAllocs()
	for b.Loop() {
		Weigh("no-start", f)
	}
}

// A capacitor that reads dead is a cause where a complaint has it not among its own and
// the machine needs it; not where it is no reason for it, and not while it is disputed.
func TestDeadCapacitorIsACauseByItself(t *testing.T) {
	for _, x := range []struct {
		complaint string
		facts     []string
		supported bool
	}{
		{"no-dry", []string{"run-cap-failed"}, true},
		{"no-cool", []string{"run-cap-failed", "frost-none"}, true},
		{"no-drain", []string{"run-cap-failed"}, true},
		{"hp-no-heat", []string{"start-cap-failed"}, true},
		{"no-dry", []string{"run-cap-suspect"}, false},
		{"no-dry", []string{"run-cap-sound"}, false},
		{"no-dry", []string{"run-cap-sound", "run-cap-failed"}, false},
		{"leaks-water", []string{"run-cap-failed"}, false},
		{"no-dry", []string{"run-cap-failed", "amps-none"}, false},
	} {
		var facts []Fact
		for i, code := range x.facts {
			facts = append(facts, Fact{Code: code, Entry: i + 1})
		}
		r := Weigh(x.complaint, facts)
		got := r.Codes(Supported)
		if is := slices.Contains(got, "run-cap-failed") || slices.Contains(got, "start-cap-failed"); is != x.supported {
			t.Errorf("%s, %q: %q", x.complaint, x.facts, got)
		}
	}
}
