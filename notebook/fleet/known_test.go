package fleet

import (
	"context"
	"math"
	"math/rand/v2"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

func TestParseOhms(t *testing.T) {
	for _, c := range []struct {
		in      string
		between string
		ohms    float64
		ok      bool
	}{
		{"start-common 4.1", "common-start", 4.1, true},
		{"common-start 4.1", "common-start", 4.1, true},
		{" run-start 12 Ω", "run-start", 12, true},
		{"medium-high-common 7", "common-medium-high", 7, true},
		{"common-medium-low 7", "common-medium-low", 7, true},
		{"common-run", "", 0, false}, {"common 4", "", 0, false}, {"-run 4", "", 0, false}, {"common- 4", "", 0, false},
		{"common-run 0", "", 0, false}, {"common-run -4", "", 0, false}, {"common-run NaN", "", 0, false},
		{"common-run Inf", "", 0, false}, {"common-run 4k", "", 0, false}, {"", "", 0, false},
	} {
		between, x, ok := parseOhms(c.in)
		if between != c.between || x != c.ohms || ok != c.ok {
			t.Errorf("%q: %q %v %v", c.in, between, x, ok)
		}
	}
}

// The figures are worked by hand: of 2, 3, 4, 5, 90 the median is 4 and the
// distances from it are 2, 1, 0, 1, 86, of which the median is 1.
func TestSpread(t *testing.T) {
	got := spread("common-run", []float64{90, 2, 5, 3, 4})
	if got != (Spread{"common-run", 5, 4, 2, 90, 1}) {
		t.Errorf("%+v", got)
	}
	if got := spread("x", []float64{1, 2, 4, 8}); got.Median != 3 || got.MAD != 1.5 {
		t.Errorf("even count: %+v", got)
	}
	if got := median([]float64{math.MaxFloat64, math.MaxFloat64}); math.IsInf(got, 0) {
		t.Error("the median of large numbers overflows")
	}
}

func TestKnown(t *testing.T) {
	headers := []record.Header{
		{Machine: "MOCK-C7", Kind: "no-start", Cause: "start device or relay failed", Ohms: []string{"common-run 4.6", "common-start 14"}},
		{Machine: "mock-c7 ", Kind: "no-start", Cause: "start device or relay failed", Ohms: []string{"run-common 4.8", "nonsense"}},
		{Machine: "MOCK-C7", Kind: "no-start"},
		{Machine: "", Kind: "no-cool", Ohms: []string{"common-run 1"}},
	}
	var want Model
	for try := range 5 {
		rand.New(rand.NewPCG(uint64(try), 1)).Shuffle(len(headers), func(i, j int) { headers[i], headers[j] = headers[j], headers[i] })
		k := &Known{}
		for i := range headers {
			k.Add(&headers[i])
		}
		m, ok := k.Lookup(" mock-C7")
		if try == 0 {
			want = m
		}
		if !ok || !reflect.DeepEqual(m, want) || m.Calls != 3 || len(m.Ohms) != 2 || m.Ohms[0].Count != 2 || k.Calls != 4 {
			t.Errorf("%v %+v", ok, m)
		}
		if shares := k.Causes("no-start"); len(shares) != 2 || shares[0].Calls != 2 || shares[0].Of != 3 || shares[1].Cause != "" {
			t.Errorf("shares %+v", shares)
		}
	}
	empty := &Known{}
	if _, ok := empty.Lookup("MOCK-C7"); ok {
		t.Error("an empty store knows a model")
	}
	if empty.Causes("no-start") != nil {
		t.Error("an empty store knows causes")
	}
	k := &Known{}
	k.Add(&headers[0])
	if _, ok := k.Lookup(""); ok {
		t.Error("the empty model is known")
	}
}

func TestLearn(t *testing.T) {
	dir, names := sampleFiles(t, 60)
	write(t, dir, "README.md", []byte("# Read me\n"))
	write(t, dir, "open.md", openCall("client Petra"))
	write(t, dir, "cut.md", one(61, "", "")[:90])
	// Nobody's call is as long; reading it would cost the prompt.
	write(t, dir, "long.md", append(one(62, "", ""), strings.Repeat("x", 1<<20)...))
	// Only what was closed so teaches, and once.
	write(t, dir, "edited.md", one(63, "result: \"", "result: \"un"))
	write(t, dir, "log.md", one(64, "ohm", "amp"))
	k, err := Learn(context.Background(), dir)
	if err != nil || k.Calls != 60 {
		t.Fatalf("%d calls, %v", k.Calls, err)
	}
	full := &Known{}
	for it := range Scan([]string{dir}, Options{}) {
		if it.State == Trusted && filepath.Base(it.Path) != "long.md" {
			full.Add(&it.Header)
		}
	}
	for it := range Scan(names, Options{}) {
		a, ok := k.Lookup(it.Header.Machine)
		b, _ := full.Lookup(it.Header.Machine)
		if !ok || !reflect.DeepEqual(a, b) {
			t.Errorf("%s: learned %+v, scanned %+v", it.Header.Machine, a, b)
		}
		if !slices.ContainsFunc(a.Ohms, func(s Spread) bool { return s.Between == "common-run" && s.MAD < s.Median/10 }) {
			t.Errorf("%s: %+v", it.Header.Machine, a)
		}
	}
	if _, err := Learn(context.Background(), filepath.Join(dir, "missing")); err == nil {
		t.Error("a missing folder is no error")
	}
	gone, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := Learn(gone, dir); err == nil {
		t.Error("a cancelled context is no error")
	}
}

// TestPartsOfAModel counts parts by the models of machine and appliance.
func TestPartsOfAModel(t *testing.T) {
	k := &Known{}
	for _, h := range []record.Header{
		{Machine: "MADE-UP 16", Model: "INVENTED-300", Parts: []string{"1 x start device", "2 x screw"}},
		{Machine: "made-up 16", Parts: []string{"1 x start device"}},
		{Machine: "OTHER", Parts: []string{"1 x fan"}},
	} {
		k.Add(&h)
	}
	if got := k.Parts("Made-Up 16"); !slices.Equal(got, []string{"start device", "screw"}) {
		t.Errorf("machine: %q", got)
	}
	if got := k.Parts("INVENTED-300"); !slices.Equal(got, []string{"screw", "start device"}) {
		t.Errorf("appliance: %q", got)
	}
	if got := k.Parts("unknown"); len(got) != 0 {
		t.Errorf("unknown: %q", got)
	}
}
