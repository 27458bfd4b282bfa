package call

import (
	"errors"
	"flag"
	"os"
	"strings"
	"testing"

	"ohmcall/calc/source"
)

var update = flag.Bool("update", false, "write testdata/terse.golden anew")

// shownLines are the lines that a hint offers to be typed.
func shownLines(hint string) []string {
	var out []string
	for _, s := range strings.Split(strings.NewReplacer(", or: ", "; : ", ", or with a point: ", "; : ", ", as in ", "; : ").Replace(hint), "; ") {
		i := strings.LastIndex(s, ": ")
		if i < 0 {
			continue
		}
		word, more, _ := strings.Cut(s[i+2:], " ")
		if Find(word) != nil && more != "" && !strings.Contains(more, "…") {
			out = append(out, s[i+2:])
		}
	}
	return out
}

// TestTerseLines types what technicians type in a hurry on ten kinds of calls,
// each line into a call that has begun, and holds
//
//   - that a line which is taken is stored in a form that is its own: typed
//     again it is the same, and it is answered alike;
//   - that each line which a refusal shows is taken when it is typed;
//   - what each comes to, in testdata/terse.golden (-update after reading it).
func TestTerseLines(t *testing.T) {
	b, err := os.ReadFile("testdata/terse.txt")
	if err != nil {
		t.Fatal(err)
	}
	var fault string
	var got strings.Builder
	lines, hints := 0, 0
	for _, line := range strings.Split(strings.TrimSpace(string(b)), "\n") {
		if strings.HasPrefix(line, "## ") {
			got.WriteString(line + "\n")
			fault = ""
			continue
		}
		if fault == "" {
			fault = line
		}
		lines++
		begun := func() *Call {
			c := New()
			for _, l := range []string{"fault " + strings.TrimPrefix(fault, "fault "), "ohm P Q 5.0"} {
				must(t, c, c.Expand(l))
			}
			return c
		}
		typed := func(line string) (string, string, error) {
			c := begun()
			full := c.Expand(line)
			if err := c.Doubtful(full); err != nil {
				return full, "", err
			}
			e, err := c.Apply(nine, full)
			if err != nil {
				return full, "", err
			}
			return full, e.Reply.Plain(), nil
		}
		full, reply, err := typed(line)
		if err != nil {
			got.WriteString(line + "\n\trefused: " + strings.ReplaceAll(err.Error(), "\n", "\n\t") + "\n")
			var at *source.Error
			if !errors.As(err, &at) {
				t.Fatalf("%q is refused without a place: %v", line, err)
			}
			for _, show := range shownLines(at.Hint) {
				hints++
				if _, _, err := typed(show); err != nil {
					t.Errorf("%q is refused and shows %q, which is refused: %v", line, show, err)
				}
			}
			continue
		}
		if full == line {
			got.WriteString(line + "\n")
		} else {
			got.WriteString(line + "\n\t" + full + "\n")
		}
		again, answer, err := typed(full)
		if err != nil || again != full || answer != reply {
			t.Errorf("%q is stored as %q; typed again it is %q (%v):\n%s\n%s", line, full, again, err, reply, answer)
		}
	}
	if lines < 250 || hints < 40 {
		t.Errorf("%d lines with %d lines in hints", lines, hints)
	}
	const name = "testdata/terse.golden"
	if *update {
		if err := os.WriteFile(name, []byte(got.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	was := strings.Split(string(want), "\n")
	for i, l := range strings.Split(got.String(), "\n") {
		if i >= len(was) || was[i] != l {
			t.Fatalf("%s, line %d: %q is not there now, but %q; -update after reading the difference", name, i+1, was[min(i, len(was)-1)], l)
		}
	}
}

// FuzzExpand types anything behind a call that has begun: what a line is stored
// as is its one form, which typing it again does not change.
func FuzzExpand(f *testing.F) {
	b, err := os.ReadFile("testdata/terse.txt")
	if err != nil {
		f.Fatal(err)
	}
	for _, l := range strings.Split(string(b), "\n") {
		f.Add(l)
	}
	c := New()
	for _, l := range []string{"ohm P Q 5.0", "volt L1 N 120", "ohm P case OL"} {
		if _, err := c.Apply(nine, l); err != nil {
			f.Fatal(err)
		}
	}
	f.Fuzz(func(t *testing.T, line string) {
		if strings.ContainsAny(line, "\n\r") {
			return
		}
		full := c.Expand(line)
		if again := c.Expand(full); again != full {
			t.Errorf("%q is stored as %q, and that as %q", line, full, again)
		}
		c.Doubtful(full)
	})
}
