//go:build linux

package reliability

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
)

// beast is one hostile file: how its text is made.
type beast struct {
	name string
	text func() string
}

// most is the largest file that is read.
const most = 64 << 20

const (
	zooFront = "---\nohmcall: 1\nstate: \"open\"\nentries: 0\n---\n"
	zooLog   = "\n## Log\n\nThe call is open: the part above is as of entry 0, this log may hold more.\n\n```ohmcall\n"
	zooHead  = zooFront + zooLog
	zooStamp = " 2026-03-02T09:00:00+00:00 "
)

// logOf is a notebook of n entries.
func logOf(n int, line func(i int) string) string {
	var b strings.Builder
	b.WriteString(zooHead)
	for i := 1; i <= n; i++ {
		fmt.Fprintf(&b, "%d%s%s\n", i, zooStamp, line(i))
	}
	return b.String()
}

// filled repeats a unit up to the size that is read.
func filled(start, unit, end string) string {
	return start + strings.Repeat(unit, (most-len(start)-len(end))/len(unit)) + end
}

// crowd is a notebook of as many entries as are read.
func crowd(name string, line func(i int) string) beast {
	return beast{name, func() string { return logOf(page.MaxEntries, line) }}
}

// top is a notebook whose part above the log is what is asked, repeated.
func topOf(name, unit string, bytes int) beast {
	return beast{name, func() string {
		return zooFront + "\n" + strings.Repeat(unit, bytes/len(unit)) + "\n" + zooLog + "1" + zooStamp + "note a\n# Noted.\n"
	}}
}

func turns(list ...string) func(i int) string {
	return func(i int) string { return list[i%len(list)] }
}

// chain is a function that calls the one before it twice.
func chain(i int) string {
	if i == 1 {
		return "a + 1"
	}
	return fmt.Sprintf("f%d(a) + f%d(a)", i-1, i-1)
}

// zoo lists the hostile files. Those of many entries hold as many as are read
// at most, or one more.
func zoo() []beast {
	note := func(int) string { return "note a" }
	sums := hostileSums()
	list := []beast{
		// Dear lines, of which the bound on work is the only guard.
		crowd("a long course", func(i int) string { return fmt.Sprintf("+10min temp freezer -%d.%dF", i%20, i%10) }),

		// Size alone.
		{"line feeds", func() string { return filled(zooHead, "\n", "") }},
		{"one line", func() string { return filled(zooHead+"1"+zooStamp+"note ", "a", "") }},
		{"lines of a megabyte", func() string {
			return zooHead + strings.Repeat("1"+zooStamp+"note "+strings.Repeat("a", 1<<20-100)+"\n", 20)
		}},
		{"no line", func() string { return filled("---\nohmcall: 1\n", "a", "") }},
		{"larger than read", func() string { return filled(zooHead, "\n", "") + strings.Repeat("\n", 1000) }},
		{"one byte larger than read", func() string { s := filled(zooHead, "\n", ""); return s + strings.Repeat("\n", most+1-len(s)) }},
		{"empty", func() string { return "" }},
		{"noise", func() string {
			r := rand.NewChaCha8([32]byte{12})
			b := make([]byte, most)
			r.Read(b)
			return string(b)
		}},
		{"noise in the log", func() string {
			r := rand.NewChaCha8([32]byte{13})
			b := make([]byte, 20<<20)
			r.Read(b)
			return zooHead + string(b)
		}},
		{"noise above the log", func() string {
			r := rand.NewChaCha8([32]byte{14})
			b := make([]byte, 40<<20)
			r.Read(b)
			return zooFront + string(b) + zooLog
		}},
		{"carriage returns", func() string { return strings.ReplaceAll(logOf(page.MaxEntries, note), "\n", "\r\n") }},

		// Front matter.
		{"front matter of many keys", func() string {
			return zooFront[:len(zooFront)-4] + strings.Repeat("missing: [\"a\"]\n", 399_000) + "---\n" + zooLog
		}},
		{"front matter of one list", func() string {
			return zooFront[:len(zooFront)-4] + "missing: [" + strings.Repeat(`"a", `, 12<<20) + "\"a\"]\n---\n" + zooLog
		}},
		{"front matter of one text", func() string {
			return zooFront[:len(zooFront)-4] + "client: \"" + strings.Repeat("a", 60<<20) + "\"\n---\n" + zooLog
		}},
		{"front matter of unknown keys", func() string {
			return zooFront[:len(zooFront)-4] + strings.Repeat("key: 1\n", 490_000) + "---\n" + zooLog
		}},
		{"front matter without an end", func() string { return strings.Repeat("missing: [\"a\"]\n", 499_000) }},
		{"front matter nested", func() string {
			return zooFront[:len(zooFront)-4] + "missing: " + strings.Repeat("[", 60<<20) + "\n---\n" + zooLog
		}},

		// Above the log.
		{"one remark", func() string {
			return zooFront + filled("", "a", "")[:most-1000] + zooLog
		}},
		topOf("lines of remarks", "a remark\n", 4_000_000),
		topOf("words of remarks", "word ", 40<<20),
		topOf("fences", "```\n", 1_600_000),
		topOf("fences never closed", "~~~~ x\n\n", 1_600_000),
		topOf("quotes", "> ", 30<<20),
		topOf("quotes of many lines", strings.Repeat(">", 200)+"\n", 20<<20),
		topOf("lists", "- ", 30<<20),
		{"lists that go deeper", func() string {
			var b strings.Builder
			b.WriteString(zooFront + "\n")
			for i := range 4000 {
				b.WriteString(strings.Repeat(" ", 2*i) + "- a\n")
			}
			return b.String() + zooLog
		}},
		topOf("a megabyte of lists in a list", "- - - - - - - - a\n", 990<<10),
		topOf("a megabyte of emphasis", "*a*\n", 990<<10),
		topOf("a megabyte struck through", "~~a~~ ", 990<<10),
		topOf("a quarter of a megabyte of lists in a list", "- - - - - - - - a\n", 250<<10),
		topOf("brackets", "[", 30<<20),
		topOf("links", "[a](b) ", 20<<20),
		topOf("emphasis", "*a ", 20<<20),
		topOf("emphasis of both kinds", "*a_b ", 20<<20),
		topOf("backticks", "`a``b```c````", 20<<20),
		topOf("headings", "# a\n", 1_600_000),
		topOf("rows of a table", "| a | b |\n", 2_000_000),
		topOf("a wide table", "| a ", 10<<20),
		topOf("HTML", "<a>", 20<<20),
		topOf("entities", "&amp;", 20<<20),
		topOf("sections", "[ohmcall-begin]: #a\n[ohmcall-end]: #a \"x\"\n", 10<<20),
		topOf("sections of their own", "[ohmcall-begin]: #title\nx\n[ohmcall-end]: #title \"x\"\n", 7<<20),
		{"sections of many names", func() string {
			var b strings.Builder
			b.WriteString(zooFront)
			for i := range 160_000 {
				fmt.Fprintf(&b, "[ohmcall-begin]: #s%d\nx\n[ohmcall-end]: #s%d \"x\"\n", i, i)
			}
			return b.String() + zooLog
		}},
		{"remarks of many names", func() string {
			var b strings.Builder
			b.WriteString(zooFront)
			for i := range 120_000 {
				fmt.Fprintf(&b, "[ohmcall-begin]: #s%d\n[ohmcall-end]: #s%d \"x\"\nremark\n", i, i)
			}
			return b.String() + zooLog
		}},
		{"a section never closed", func() string { return zooFront + "[ohmcall-begin]: #title\n" + strings.Repeat("x\n", 400_000) + zooLog }},
		topOf("headings of a log", "\n## Log\n", 1_900_000),
		topOf("logs", "\n## Log\n\n```ohmcall\n", 1_900_000),

		// The log.
		{"replies", func() string {
			return zooHead + "1" + zooStamp + "note a\n" + strings.Repeat("# "+strings.Repeat("r", 120)+"\n", 200_000)
		}},
		{"short replies", func() string { return zooHead + "1" + zooStamp + "note a\n" + strings.Repeat("#\n", 490_000) }},
		{"strays", func() string { return zooHead + strings.Repeat(strings.Repeat("x", 48)+"\n", 490_000) }},
		{"zeros", func() string { return zooHead + strings.Repeat(strings.Repeat("\x00", 48)+"\n", 490_000) }},
		{"closing fences", func() string { return zooHead + "1" + zooStamp + "note a\n" + strings.Repeat("```\n", 400_000) }},
		{"a remark under the log", func() string { return zooHead + "1" + zooStamp + "note a\n```\n" + strings.Repeat("remark ", 3<<20) }},
		crowd("notes", note),
		{"notes one fewer", func() string { return logOf(page.MaxEntries-1, note) }},
		{"one note too many", func() string { return logOf(page.MaxEntries+1, note) }},
		{"long notes", func() string { return logOf(360, func(int) string { return "note " + strings.Repeat("y", 64_000) }) }},
		{"notes of marks", func() string { return logOf(360, func(int) string { return "note " + strings.Repeat("|`<", 21_000) }) }},
		{"notes of combining marks", func() string {
			return logOf(360, func(int) string { return "note e" + strings.Repeat("\u0301", 30_000) })
		}},
		{"notes of controls", func() string { return logOf(360, func(int) string { return "note " + strings.Repeat("\x1b", 60_000) }) }},
		crowd("one number", func(int) string { return "ohm A B 3.4" }),
		crowd("many pins", func(i int) string { return fmt.Sprintf("ohm A%d B%d 3.4", i, i+1) }),
		crowd("all pins", func(i int) string { return fmt.Sprintf("ohm A%d B%d %d", i%20, i%7, 1+i%9) }),
		crowd("many machines", func(i int) string { return []string{fmt.Sprintf("on m%d", i), "ohm A B 3.4"}[i%2] }),
		crowd("many places", func(i int) string { return fmt.Sprintf("volt p%d 118", i) }),
		crowd("shows", turns("show readings", "volt line 118.2")),
		crowd("strikes", func(i int) string { return []string{"note a", fmt.Sprintf("strike %d \"x\"", i-1)}[i%2] }),
		crowd("sums", func(int) string { return strings.Repeat("1+", 200) + "1" }),
		crowd("bombs", func(i int) string { return clipped(sums[i%len(sums)]) }),
		crowd("definitions", func(i int) string { return fmt.Sprintf("let x%d = %d", i, i) }),
		crowd("functions", func(i int) string { return fmt.Sprintf("def g%d(a) = a + %d", i, i) }),
		{"chained functions", func() string {
			return logOf(2000, func(i int) string { return fmt.Sprintf("def f%d(a) = %s", i, chain(i)) })
		}},
		crowd("guards", func(i int) string { return []string{"ohm A B 3.4", "when ohm(A, B) > 2ohm: note a"}[i%2] }),
		crowd("needs", func(i int) string { return fmt.Sprintf("need volt p%d", i) }),
		crowd("needs of a kind", turns("need proof", "need safe", "ohm A B 3", "need volt line")),
		crowd("expectations", func(i int) string { return fmt.Sprintf("expect %d > 2 \"x\"", i) }),
		crowd("repairs", turns("did replaced the start device", "ohm A B 3.4", "part start device, 1, 3.50", "volt line 118")),
		crowd("wires", func(i int) string { return fmt.Sprintf("wire w%d p%d", i, i) }),
		crowd("findings", turns("saw cond-fan runs", "saw a thing", "fault clicks and does not cool", "causes")),
		crowd("plates", func(i int) string { return fmt.Sprintf("plate volts %d, amps 1.2", 110+i%9) }),
		crowd("repairs seen through", turns("fault clicks and does not cool", "did replaced the start device", "saw starts-and-runs", "saw clicks", "missing", "next")),
		crowd("repairs struck", func(i int) string {
			return []string{"ohm A case 0.2", "did replaced the compressor", "ohm A case 200M test 500V", fmt.Sprintf("strike %d", i-1)}[i%4]
		}),
		crowd("grounds", func(i int) string { return fmt.Sprintf("ohm A%d case %dk", i%20, i%7) }),
		crowd("starts", func(i int) string {
			return []string{"volt line 118 rest", fmt.Sprintf("volt line %d start", 90+i%20), "amp start 22", "saw hums"}[i%4]
		}),
		crowd("legs", func(i int) string { return fmt.Sprintf("volt L%d L%d %d", i%4, (i+1)%4, 200+i%40) }),
		crowd("devices", turns("ohm ptc 5.2", "ohm relay coil 1.2", "ohm overload 0.3", "cap run 14.1uF", "why", "worth")),
		crowd("parts of a kind", func(i int) string { return fmt.Sprintf("ohm heater%d %s", i, []string{"17.2", "OL"}[i%2]) }),
		crowd("heaters", turns("plate volts 240, watts 3600", "amp heater 14.9", "volt line 238 run", "ohm bake OL", "ohm broil 17.2", "missing")),
		crowd("fans", turns("unit refrigerator", "did replaced the evap fan", "amp evap-fan 0.1", "temp freezer 3F", "saw evap-fan runs", "missing")),
		crowd("dangers", turns("note it gave a shock", "note smoke from the case", "did restored the cover", "did bypassed the overload", "safe locked out, 0 V", "close")),
		crowd("times", func(i int) string { return fmt.Sprintf("%02d:%02d temp freezer -%dF", i%24, i%60, i%20) }),
		crowd("clients", turns("client A", "unit refrigerator", "model X", "ohm A B 3")),
		crowd("closes", turns("close", "ohm A B 3.4", "note a")),
		crowd("words not known", func(i int) string { return fmt.Sprintf("zzgargle%d blah blah", i) }),
		crowd("names not known", func(i int) string { return fmt.Sprintf("x%d + 1", i) }),
	}
	return list
}

// commandZoo is every command, its examples over and over, alone and among
// readings.
func commandZoo() []beast {
	var list []beast
	for _, c := range call.Commands() {
		list = append(list,
			crowd("examples of "+c.Word, func(i int) string { return c.Examples[i%len(c.Examples)] }),
			crowd("examples of "+c.Word+" among readings", func(i int) string {
				if i%2 == 1 {
					return fmt.Sprintf("ohm A%d B%d %d", i%20, i%7, 1+i%9)
				}
				return c.Examples[i%len(c.Examples)]
			}))
	}
	return list
}

// clipped keeps a line to what fits a crowd.
func clipped(s string) string { return s[:min(len(s), 200)] }
