package call

import (
	"cmp"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/calc/cause"
)

// typedLines are the lines of the examples and of the calls of the tests, every
// finding, what is typed in a hurry, and what changes the worth of what was read.
func typedLines(t testing.TB) []string {
	t.Helper()
	lines := []string{"probes 0.3", "probes 0.5", "limit 10M", "limit 1000/V", "limit c84-2006", "units F", "meter ohm 0.5% 1", "meter temp 0.2C",
		"unit washer", "unit electric oven", "unit refrigerator", "unit window air conditioner", "fault clicks, does not start", "fault no heat", "fault too cold",
		"plate volts 115", "plate volts 240", "plate type three-phase", "plate run cap", "plate start none", "plate amps 1.2, lra 12",
		"on heater", "ohm 1 2 14.4", "on comp", "saw relay rattles", "saw gas smell", "saw no gas smell", "did replaced relay", "part start relay",
		"volt line 218 run", "volt bake 231 run", "amp bake 9.3 run", "plate watts 2500, volts 240", "trip overload 7s", "amp comp 11.5 start", "volt comp 96 start"}
	for _, dir := range []string{"../../examples/*.call", "../testdata/calls/*.call"} {
		files, _ := filepath.Glob(dir)
		if len(files) == 0 {
			t.Fatal("no calls in ", dir)
		}
		for _, f := range files {
			b, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			for _, l := range strings.Split(string(b), "\n") {
				if l != "" && l[0] != '#' && !strings.HasPrefix(l, "use") && !strings.HasPrefix(l, "date") {
					lines = append(lines, l)
				}
			}
		}
	}
	for _, f := range cause.Findings() {
		lines = append(lines, "saw "+f.Code)
	}
	for _, c := range Commands() {
		lines = append(lines, c.Examples...)
	}
	b, err := os.ReadFile("testdata/terse.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range strings.Split(string(b), "\n") {
		if !strings.HasPrefix(l, "#") {
			lines = append(lines, New().Expand(l))
		}
	}
	return lines
}

// remembered is what a call keeps of its own work.
func remembered(c *Call) string {
	all := []any{c.appliance(), c.onThreePhases(), c.repairs(), c.curves(c.since(), math.MaxInt), c.weigh(math.MaxInt)}
	if len(c.repairs()) > 0 {
		all = append(all, c.foundOnce())
	}
	return flat(all)
}

func forget(c *Call) {
	c.memos = memos{}
}

// randomCall applies so many lines in an order of its own, strikes among them.
func randomCall(t *testing.T, lines []string, seed uint64, long int, after func(c *Call, line string)) *Call {
	t.Helper()
	rng := rand.New(rand.NewPCG(1, seed))
	c := New()
	var typed []string
	defer func() {
		if fault := recover(); fault != nil {
			t.Fatalf("%v after\n%s", fault, strings.Join(typed, "\n"))
		}
	}()
	for k := range long {
		l := lines[rng.IntN(len(lines))]
		if rng.IntN(10) == 0 && c.Len() > 2 {
			l = "strike " + itoa(1+rng.IntN(c.Len())) + " slip"
		}
		typed = append(typed, l)
		if _, err := c.Apply(nine.Add(time.Duration(k)*7*time.Minute), l); err != nil {
			typed = typed[:len(typed)-1]
			continue
		}
		after(c, l)
	}
	return c
}

// TestRememberedIsWorkedOutAnew: what a call remembers of its own work is what
// comes of working it out anew, whatever was typed in whatever order.
func TestRememberedIsWorkedOutAnew(t *testing.T) {
	lines := typedLines(t)
	for seed := range uint64(150) {
		randomCall(t, lines, seed, 40, func(c *Call, l string) {
			kept := remembered(c)
			if forget(c); remembered(c) != kept {
				t.Errorf("seed %d: something remembered is stale after %q", seed, l)
			}
		})
	}
}

// TestVerdictsOfAnyOrder: a verdict is what its readings come to now, whatever
// was typed after them that it rests on too. What is at hand says of which
// machine a plate's value is meant, and is left as it is.
func TestVerdictsOfAnyOrder(t *testing.T) {
	lines := slices.DeleteFunc(typedLines(t), func(l string) bool { return strings.HasPrefix(l, "on ") })
	for seed := range uint64(150) {
		randomCall(t, lines, seed, 40, func(c *Call, l string) {
			for _, key := range c.subjects {
				kind, name, _ := strings.Cut(key, "\x00")
				j := c.judged[key]
				if v, ok := c.verdictOn(kind, name, math.MaxInt); kind != "wind" && (ok != (j != nil) || ok && flat(j.verdict) != flat(v)) {
					t.Errorf("seed %d: after %q %s is as it was before: %s", seed, l, strings.ReplaceAll(key, "\x00", " "), flat(v))
				}
			}
		})
	}
	// The order of two lines is no fact.
	for _, tt := range []struct{ before, a, b, key string }{
		{"unit electric oven; fault no heat; plate watts 2500, volts 240", "volt line 218 run", "amp bake 9.3 run", "amp\x00bake"},
		{"fault no heat; plate watts 2500, volts 240", "volt bake 218 run", "amp bake 9.3 run", "amp\x00bake"},
		{"", "ohm relay OL", "unit electric oven", "part\x00relay"},
		{"", "ohm relay OL", "fault oven does not heat", "part\x00relay"},
		{"plate amps 1.2, lra 12", "amp comp 12 run", "trip overload 7s", "trip\x00overload"},
		{"fault compressor does not start", "volt comp 120 run", "ohm U V 12.4, V W 12.4, U W 12.5", "volt\x00comp"},
		{"", "ohm potential-coil 5.2k", "ohm potential-contact OL", "part\x00potential-coil"},
	} {
		var got [2]string
		for i, order := range [][]string{{tt.a, tt.b}, {tt.b, tt.a}} {
			c := applyAll(t, append(strings.Split(cmp.Or(tt.before, "note nothing"), "; "), order...)...)
			v := c.judged[tt.key].verdict
			got[i] = string(v.Word) + ", " + v.Text
		}
		if got[0] != got[1] {
			t.Errorf("%s, then %s: %s; the other way round: %s", tt.a, tt.b, got[0], got[1])
		}
	}
}

// TestLaterWordsCountForWhatIsRemembered: what gives the lines before it another
// meaning is no reading, and counts all the same.
func TestLaterWordsCountForWhatIsRemembered(t *testing.T) {
	const burnt = "fault clicks, does not start; plate volts 115, amps 1.2, lra 12; ohm A B 3.45, A C 5.95, B C 2.5; " +
		"ohm A case 5M test 500V, B case 5M test 500V, C case 5M test 500V; ohm ptc 0.9 cold; saw terminal burnt; did replaced burnt terminal"
	const locked = "unit refrigerator; fault clicks and wont start; plate amps 1.2, lra 12; volt line 120; volt line 118 start; saw no start; amp comp 12 peak; " +
		"ohm C S 7.4, C R 2.1, S R 9.4; ohm C case OL, S case OL, R case OL; ohm overload 0.1; ohm ptc 8"
	for _, tt := range []struct{ lines, last string }{
		{burnt, "probes 0.5"}, {burnt, "limit 10M"}, {burnt, "unit washer"}, {burnt, "meter ohm 15% 5"}, {burnt, "plate lra 30"},
		{locked, "plate run cap"}, {locked, "plate mfd C1 12 5%"},
	} {
		c := applyAll(t, strings.Split(tt.lines, "; ")...)
		remembered(c)
		must(t, c, tt.last)
		kept := remembered(c)
		if forget(c); remembered(c) != kept {
			t.Errorf("after %s something remembered is stale", tt.last)
		}
	}
}
