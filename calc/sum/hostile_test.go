package sum

import (
	"fmt"
	"math"
	"runtime"
	"strings"
	"testing"
	"time"

	"ohmcall/calc/quantity"
)

// The bounds that no text may break, whatever it says.
const (
	hostileTime  = slower * 50 * time.Millisecond
	hostileBytes = 16 << 20
)

// quickest is the time of the fastest of up to three runs, so that another
// program's turn is not counted; one run within the bound is enough.
func quickest(bound time.Duration, run func()) time.Duration {
	best := time.Duration(math.MaxInt64)
	for i := 0; i < 3 && best > bound; i++ {
		start := time.Now()
		run()
		best = min(best, time.Since(start))
	}
	return best
}

// hostile are texts made to take the program's time, memory or life.
func hostile() map[string]string {
	deep := func(open, middle, end string, n int) string {
		return strings.Repeat(open, n) + middle + strings.Repeat(end, n)
	}
	return map[string]string{
		"brackets to the limit":      deep("(", "1", ")", 255),
		"brackets past the limit":    deep("(", "1", ")", 300000),
		"brackets never closed":      strings.Repeat("(", 512),
		"signs":                      strings.Repeat("-", 511) + "1",
		"nots":                       strings.Repeat("!", 507) + "true",
		"pow tower":                  strings.Repeat("9^", 255) + "9",
		"pow tower of fractions":     strings.Repeat("1.1^", 120) + "9",
		"pow of a unit":              "(1m^9)^9^9",
		"chained comparisons":        deep("1<(", "1", ")<1", 80),
		"chained, joined":            deep("(1<", "1", "<1)<1", 70),
		"choices":                    strings.Repeat("1<2?", 80) + "1" + strings.Repeat(":1", 80),
		"long line":                  strings.Repeat("1+", 1<<20) + "1",
		"long number":                strings.Repeat("9", 500),
		"long exponent":              "1e" + strings.Repeat("9", 400),
		"long name":                  strings.Repeat("x", 512),
		"long text":                  "ohm(" + strings.Repeat("A", 500) + ", B)",
		"sum to the limit":           strings.Repeat("1V+", 170) + "1V",
		"product to the limit":       strings.Repeat("1m*", 170) + "1m",
		"product of doubts":          strings.Repeat("r*", 255) + "r",
		"nested loops":               "all(1..500, all(1..500, all(1..500, true)))",
		"let and loops":              "let a=1..500; all(a, all(a, all(a, true)))",
		"range":                      "1..999999",
		"repeat":                     `repeat("x", 1000000)`,
		"reduce":                     `reduce(1..24, #acc + #acc, "aaaa")`,
		"matches":                    `"aaaaaaaaaaaaaaaa" matches "(a*)*b"`,
		"environment":                "$env",
		"environment, member":        `$env["r"].v`,
		"pipe":                       "r | map(# + 1)",
		"map literal":                "{a: 1}.a",
		"array":                      "[1, 2, 3][0:2]",
		"clock":                      "now()",
		"comment":                    "1 /* " + strings.Repeat("x", 400),
		"raw text":                   "`" + strings.Repeat("x", 400) + "`",
		"bytes":                      "b'abc'",
		"scope operator":             "::sqrt(4)",
		"optional chain":             "r?.v ?? 3",
		"sequence":                   "1; 2; 3",
		"if":                         "if true {1} else {2}",
		"closure":                    "map(r, {# * 2})",
		"not text":                   "\x00\xff\xfe(\x80",
		"wide":                       strings.Repeat("Ω", 256),
		"division by nothing":        strings.Repeat("(1/", 100) + "0" + strings.Repeat(")", 100),
		"chain that doubles":         "d15(1)",
		"long bodies, often":         "e14(1)",
		"many definitions":           "f0(1)" + manyCalls(70),
		"chain that doubles, deep":   "d40(1)",
		"itself":                     "loop(1)",
		"each other":                 "ping(1)",
		"many calls":                 strings.Repeat("d5(", 100) + "1" + strings.Repeat(")", 100),
		"nested functions":           strings.Repeat("sqrt(", 80) + "r" + strings.Repeat(")", 80),
		"generated names":            "_0 + _1",
		"hidden functions":           "_add(1, 2)",
		"unit without end":           "1 in " + strings.Repeat("m*", 250) + "m",
		"unit of high power":         "1 in m^9*m^9*m^9*m^9*m^9*m^9*m^9*m^9",
		"literal after literal":      strings.Repeat("1V ", 170),
		"letter codes":               strings.Repeat("4k7+", 127) + "4k7",
		"points of many kinds":       "temp(" + strings.Repeat("a,", 240) + "b)",
		"quotes":                     strings.Repeat("'", 511),
		"commas":                     "max(" + strings.Repeat(",", 500) + ")",
		"every value of an argument": "max(" + strings.Repeat("1,", 250) + "2)",
	}
}

func manyCalls(n int) string {
	s := ""
	for i := range n {
		s += fmt.Sprintf("+f%d(1)", i+1)
	}
	return s
}

func hostileScope(t testing.TB) *Scope {
	s := scope(t)
	s.Values["r"] = quantity.Number(1.0001).WithU(0.01, 1)
	put := func(name, body string) {
		s.Defs[name] = Def{Name: name, Params: []string{"x"}, Body: body}
	}
	put("d0", "x + 1")
	for i := 1; i <= 40; i++ {
		put(fmt.Sprintf("d%d", i), fmt.Sprintf("d%d(x) + d%d(x)", i-1, i-1))
	}
	put("e0", "x"+strings.Repeat("*r", 255))
	for i := 1; i <= 14; i++ {
		put(fmt.Sprintf("e%d", i), fmt.Sprintf("e%d(x) + e%d(x)", i-1, i-1))
	}
	for i := range 100 {
		put(fmt.Sprintf("f%d", i), "x"+strings.Repeat("*r", 255))
	}
	put("loop", "loop(x - 1)")
	put("ping", "pong(x)")
	put("pong", "ping(x)")
	return s
}

// TestHostile holds the bounds on what an evaluation takes.
func TestHostile(t *testing.T) {
	env := hostileScope(t)
	texts := hostile()
	if len(texts) < 30 {
		t.Fatalf("only %d hostile texts", len(texts))
	}
	for name, text := range texts {
		best := quickest(hostileTime, func() { Eval(text, env) })
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		Eval(text, env)
		runtime.ReadMemStats(&after)
		bytes := after.TotalAlloc - before.TotalAlloc
		t.Logf("%-28s %v %d kB", name, best, bytes>>10)
		if best > hostileTime || bytes > hostileBytes {
			t.Errorf("%s: %v, %d kB", name, best, bytes>>10)
		}
	}
}

// What must not be callable or readable is refused, not merely fast.
func TestHostileIsRefused(t *testing.T) {
	env := hostileScope(t)
	texts := hostile()
	for _, name := range []string{"nested loops", "let and loops", "range", "repeat", "reduce", "matches", "environment",
		"environment, member", "pipe", "map literal", "array", "clock", "raw text", "bytes", "scope operator", "optional chain",
		"sequence", "if", "closure", "not text", "chained comparisons", "chain that doubles", "long bodies, often", "many definitions", "chain that doubles, deep", "itself",
		"each other", "generated names", "hidden functions", "brackets past the limit", "long line", "pow tower"} {
		text, ok := texts[name]
		if !ok {
			t.Fatalf("no hostile text %q", name)
		}
		if v, err := Eval(text, env); err == nil {
			t.Errorf("%s: %.40s = %v", name, text, v)
		}
	}
}
