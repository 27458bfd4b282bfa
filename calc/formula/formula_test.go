package formula

import (
	"flag"
	"fmt"
	"math"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// call evaluates a formula by name and stops the test when it is refused.
func call(t *testing.T, name string, args ...any) float64 {
	t.Helper()
	f, ok := Lookup(name)
	if !ok {
		t.Fatalf("no formula %q", name)
	}
	y, err := f.Call(args...)
	if err != nil {
		t.Fatalf("%s%v: %v", name, args, err)
	}
	return y
}

// published is one value that somebody printed, or that the named formula
// gives for inputs that somebody printed.
type published struct {
	name   string
	args   []any
	want   float64
	tol    float64
	source string
}

// checked names the formulas that have met a published value.
var checked = map[string]bool{}

// TestMain fails a complete run in which a formula met no published value.
func TestMain(m *testing.M) {
	code := m.Run()
	if flag.Lookup("test.run").Value.String() == "" && flag.Lookup("test.list").Value.String() == "" && code == 0 {
		for _, f := range All() {
			if !checked[f.Name] {
				fmt.Printf("%s has no check against a published value\n", f.Name)
				code = 1
			}
		}
	}
	os.Exit(code)
}

func checkPublished(t *testing.T, rows []published) {
	t.Helper()
	for _, r := range rows {
		checked[r.name] = true
		if got := call(t, r.name, r.args...); math.Abs(got-r.want) > r.tol || math.IsNaN(got) {
			t.Errorf("%s%v = %.7g, want %g ± %g (%s)", r.name, r.args, got, r.want, r.tol, r.source)
		}
	}
}

// refusal is a call that must be refused with these words.
type refusal struct {
	name string
	args []any
	want string
}

func checkRefusals(t *testing.T, rows []refusal) {
	t.Helper()
	for _, r := range rows {
		f, ok := Lookup(r.name)
		if !ok {
			t.Fatalf("no formula %q", r.name)
		}
		y, err := f.Call(r.args...)
		if err == nil {
			t.Errorf("%s%v = %g, want a refusal with %q", r.name, r.args, y, r.want)
		} else if !strings.Contains(err.Error(), r.want) {
			t.Errorf("%s%v refused with %q, want %q", r.name, r.args, err, r.want)
		}
	}
}

func TestExamples(t *testing.T) {
	for _, f := range All() {
		y, err := f.Call(f.Example.Args...)
		if err != nil {
			t.Errorf("%s: %v", f.Example.Call, err)
			continue
		}
		if math.Abs(y-f.Example.Want) > f.Example.Tol {
			t.Errorf("%s = %.8g, want %g ± %g", f.Example.Call, y, f.Example.Want, f.Example.Tol)
		}
		a, err := f.Lay(f.Example.Args...)
		if err != nil {
			t.Fatal(err)
		}
		if f.Warn != nil && f.Warn(a) != "" {
			t.Errorf("%s: the example warns: %s", f.Name, f.Warn(a))
		}
		if f.Say != nil && f.Say(a, y) == "" {
			t.Errorf("%s: Say is empty", f.Name)
		}
	}
}

// knownUnits are the symbols that the packages above know.
var knownUnits = []string{"", AnyUnit, "ohm", "V", "A", "W", "Hz", "uF", "mH", "degC", "K", "psig",
	"s", "min", "ft", "m", "hp", "J", "%", "rpm", "N.m", "kWh"}

func TestTableIsComplete(t *testing.T) {
	identifier := regexp.MustCompile(`^[a-z][a-z0-9_]{1,15}$`)
	seen := map[string]bool{}
	for _, f := range All() {
		if !identifier.MatchString(f.Name) || seen[f.Name] {
			t.Errorf("%q: not a short new identifier", f.Name)
		}
		seen[f.Name] = true
		for what, text := range map[string]string{"topic": f.Topic, "help": f.Help, "equation": f.Equation,
			"valid": f.Valid, "source": f.Source, "example": f.Example.Text} {
			if text == "" {
				t.Errorf("%s: no %s", f.Name, what)
			}
		}
		if !strings.Contains(f.Valid, "refuse") && !strings.Contains(f.Valid, "warns") {
			t.Errorf("%s: valid says neither that it refuses nor that it warns", f.Name)
		}
		if f.Warn != nil && !strings.Contains(f.Valid, "warns") {
			t.Errorf("%s: can warn and does not say so", f.Name)
		}
		if !strings.HasPrefix(f.Example.Call, f.Name+"(") || f.Example.Tol <= 0 || f.Fn == nil {
			t.Errorf("%s: example or function missing", f.Name)
		}
		if !slices.Contains(knownUnits, f.Unit) {
			t.Errorf("%s: unit %q", f.Name, f.Unit)
		}
		optional := false
		for _, p := range f.Params {
			if p.Name == "" || p.Help == "" || !slices.Contains(knownUnits, p.Unit) {
				t.Errorf("%s: parameter %+v", f.Name, p)
			}
			if optional && !p.Optional {
				t.Errorf("%s: %s is needed after one that is not", f.Name, p.Name)
			}
			optional = p.Optional
			if p.Optional && p.Words != nil && !slices.Contains(p.Words, p.DefaultWord) {
				t.Errorf("%s: default %q is not a word of the list", f.Name, p.DefaultWord)
			}
			if p.Optional && p.Words == nil && p.check(p.Default) != nil {
				t.Errorf("%s: default %g is out of range", f.Name, p.Default)
			}
		}
		if got, ok := Lookup(f.Name); !ok || got.Name != f.Name {
			t.Errorf("%s: not found by its name", f.Name)
		}
	}
}

// Whatever numbers come in, a formula answers with a finite number or an
// error in words.
func TestNeverNaN(t *testing.T) {
	hostile := []float64{0, -1, 1, 1e-300, -1e-300, 1e300, -1e300, math.MaxFloat64, math.SmallestNonzeroFloat64,
		math.NaN(), math.Inf(1), math.Inf(-1), -273.15, 25, 100, 1000}
	for _, f := range All() {
		a, err := f.Lay(f.Example.Args...)
		if err != nil {
			t.Fatal(err)
		}
		check := func() {
			y, err := f.Eval(a)
			if math.IsNaN(y) || math.IsInf(y, 0) {
				t.Errorf("%s%v = %g", f.Name, a.Num, y)
			}
			if err != nil && (err.Error() == "" || strings.Contains(err.Error(), "NaN") || strings.HasSuffix(err.Error(), ".")) {
				t.Errorf("%s%v: error %q", f.Name, a.Num, err)
			}
		}
		for i := range a.Num {
			keep := a.Num[i]
			for _, x := range hostile {
				a.Num[i] = x
				check()
				for j := i + 1; j < len(a.Num); j++ {
					keepJ := a.Num[j]
					for _, z := range hostile {
						a.Num[j] = z
						check()
					}
					a.Num[j] = keepJ
				}
			}
			a.Num[i] = keep
		}
		for _, x := range hostile {
			for i := range a.Num {
				a.Num[i] = x
			}
			check()
		}
	}
}

// Callers differentiate a formula numerically: around its example two steps
// of different size must agree on the slope. The gauge of a wire and the poles
// of a motor are whole numbers and have no slope.
func TestSmooth(t *testing.T) {
	for _, f := range All() {
		a, err := f.Lay(f.Example.Args...)
		if err != nil {
			t.Fatal(err)
		}
		for i, x := range a.Num {
			p := f.At(i)
			if p.Words != nil || p.Name == "gauge" || p.Name == "poles" {
				continue
			}
			slope := func(h float64) float64 {
				defer func() { a.Num[i] = x }()
				a.Num[i] = x + h
				up, err1 := f.Eval(a)
				a.Num[i] = x - h
				down, err2 := f.Eval(a)
				if err1 != nil || err2 != nil {
					// At the end of a range only one side is open.
					a.Num[i] = x
					up, _ = f.Eval(a)
					a.Num[i] = x - h
					if down, err = f.Eval(a); err != nil {
						a.Num[i] = x + h
						down, _ = f.Eval(a)
						return (down - up) / h
					}
					return (up - down) / h
				}
				return (up - down) / (2 * h)
			}
			unit := max(math.Abs(x), 1e-3)
			coarse, fine := slope(1e-4*unit), slope(1e-5*unit)
			if math.Abs(coarse-fine) > 2e-3*math.Abs(fine)+1e-6*math.Abs(f.Example.Want)/unit+1e-9 {
				t.Errorf("%s: slope over %s is %.6g by one step and %.6g by another", f.Example.Call, p.Name, coarse, fine)
			}
		}
	}
}

func TestCallRefusals(t *testing.T) {
	checkRefusals(t, []refusal{
		{"cap_load", []any{4.2}, "cap_load takes 2 to 3 arguments, not 1"},
		{"cap_load", []any{4.2, 330.0, 60.0, 1.0}, "not 4"},
		{"cap_load", []any{4.2, "V"}, "volts must be a number"},
		{"cap_load", []any{4.2, 0.0}, "volts must be above 0 V"},
		{"series_r", []any{4.2}, "takes 2 arguments or more, not 1"},
		{"series_r", []any{4.2, -1.0}, "ohms must be at least 0 ohm"},
		{"volts_peak", []any{}, "takes 1 argument, not 0"},
		{"watts_vi", []any{1.0, 1.0, 1.1}, "pf must be at most 1"},
		{"watts_vi", []any{1.0, 1}, "neither a number nor a word"},
		{"watts_vr", []any{math.NaN(), 1.0}, "volts is not a finite number"},
		{"watts_vr", []any{1e200, 1e-200}, "too large"},
	})
}

func TestSignature(t *testing.T) {
	for name, want := range map[string]string{
		"cap_load":   "cap_load(amps A, volts V, freq Hz = 60)",
		"parallel_r": "parallel_r(ohms ohm, …)",
	} {
		f, _ := Lookup(name)
		if got := f.Signature(); got != want {
			t.Errorf("got %s, want %s", got, want)
		}
	}
}
