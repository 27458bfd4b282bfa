package term

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
)

func shown(p Printer, show func(p *Printer)) string {
	var b bytes.Buffer
	p.Out, p.Err = &b, &b
	show(&p)
	return b.String()
}

// samples hold plain, wide (East Asian), combining and very long text.
var samples = []string{
	"Recorded: A–C 6.5 Ω (±0.095).",
	"The two should match the highest within meter and contact error (common practice), and this goes on for quite a while longer than any screen is wide, on and on.",
	"日本語の長い言葉が続く行はどこで折り返されるべきか、画面の幅に収まらなければならない、まだ続く、まだまだ続く",
	"cafe\u0301 re\u0301sume\u0301 " + strings.Repeat("e\u0301\u0323", 150),
	strings.Repeat("x", 300),
	"readings          ohm volt amp mfd temp watt psi on mark and many more words so that it does not fit",
}

func TestNothingIsWiderThanTheScreen(t *testing.T) {
	for _, w := range []int{40, 60, 80, 200} {
		for _, s := range samples {
			out := shown(Printer{Width: w}, func(p *Printer) {
				p.Say(call.Plain, s)
				p.Reply(&call.Reply{Table: &call.Table{Head: []string{"Cause", "Standing", "For"}, Rows: [][]string{{s, "supported", "3, 4"}, {"start device failed", s, "-"}}}})
				p.Fault(s, source.Errorf(5, 9, "that is no value").WithHint("as in: %s", s))
				p.List([]string{s, "A C", "B C"})
			})
			for _, line := range strings.Split(out, "\n") {
				if got := width(line); got > w {
					t.Errorf("%d columns on a screen of %d: %q", got, w, line)
				}
				if strings.TrimSpace(line) == "" && line != "" {
					t.Errorf("a line of spaces only: %q", line)
				}
			}
		}
	}
}

func TestWrapLosesNothing(t *testing.T) {
	for _, s := range samples {
		for w := 1; w < 120; w++ {
			got := strings.ReplaceAll(strings.Join(wrap(s, w), ""), " ", "")
			if want := strings.ReplaceAll(s, " ", ""); got != want {
				t.Fatalf("at %d columns %q became %q", w, want, got)
			}
		}
	}
}

func TestWideScreenDoesNotSprawl(t *testing.T) {
	out := shown(Printer{Width: 200}, func(p *Printer) { p.Say(call.Plain, samples[1]) })
	for _, line := range strings.Split(out, "\n") {
		if width(line) > widest {
			t.Errorf("%d columns: %q", width(line), line)
		}
	}
}

// TestColumnsAlign holds that a column starts at the same place in every row,
// whatever the width of the characters before it.
func TestColumnsAlign(t *testing.T) {
	rows := [][]string{{"plain", "@1"}, {"日本語", "@2"}, {"cafe\u0301", "@3"}, {"Ωµ–", "@4"}, {"한국어 둘", "@5"}}
	for _, w := range []int{0, 60, 80, 200} {
		out := shown(Printer{Width: w}, func(p *Printer) {
			p.Reply(&call.Reply{Table: &call.Table{Head: []string{"What", "@Value"}, Rows: rows}})
		})
		at := -1
		for _, line := range strings.Split(strings.TrimSpace(out), "\n") {
			i := strings.Index(line, "@")
			if i < 0 {
				continue
			}
			if col := width(line[:i]); at < 0 {
				at = col
			} else if col != at {
				t.Errorf("width %d: the column starts at %d, not %d: %q", w, col, at, line)
			}
		}
		if at < 0 {
			t.Fatalf("no column found in %q", out)
		}
	}
}

func TestFaultPointsAtThePlace(t *testing.T) {
	rows := []struct {
		line     string
		col, end int
		width    int
		want     string
	}{
		{"120V + 3ohm", 6, 7, 80, "  120V + 3ohm\n       ^\n"},
		{"note 日本 x", 9, 10, 80, "  note 日本 x\n            ^\n"},
		{"cafe\u0301 zz", 7, 9, 80, "  cafe\u0301 zz\n       ^^\n"},
		{"ohm A B", 8, 9, 80, "  ohm A B\n         ^\n"},
		{strings.Repeat("a ", 40) + "WRONG" + strings.Repeat(" b", 40), 81, 86, 40,
			"  ...a a a a a a a WRONG b b b b b b b ...\n                    ^^^^^\n"},
	}
	for _, r := range rows {
		got := shown(Printer{Width: r.width}, func(p *Printer) { p.Fault(r.line, source.Errorf(r.col, r.end, "wrong")) })
		got = strings.TrimPrefix(got, "not taken: wrong\n")
		if r.width < 80 {
			// What is asked is that the carets stand under the place.
			lines := strings.Split(got, "\n")
			at, caret := strings.Index(lines[0], "WRONG"), strings.Index(lines[1], "^")
			if at < 0 || at != caret || strings.Count(lines[1], "^") != 5 || width(lines[0]) > r.width {
				t.Errorf("cut to %d columns:\n%s", r.width, got)
			}
			continue
		}
		if got != r.want {
			t.Errorf("%q at %d:\n%swant\n%s", r.line, r.col, got, r.want)
		}
	}
}

func TestFaultOfAnotherLineHasNoCarets(t *testing.T) {
	err := fmt.Errorf("line 3 of the file: %w", source.Errorf(2, 4, "wrong").WithHint("try that"))
	got := shown(Printer{}, func(p *Printer) { p.Fault("use x.call", err) })
	if want := "not taken: line 3 of the file: wrong\nhint: try that\n"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	got = shown(Printer{}, func(p *Printer) { p.Fault("x", errors.Join(errors.New("one"), errors.New("two"))) })
	if want := "not taken: one; two\n"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestColourIsNeverAlone(t *testing.T) {
	for tone := call.Plain; tone <= call.Ask; tone++ {
		plain := shown(Printer{}, func(p *Printer) { p.Say(tone, "mains are live") })
		if strings.Contains(plain, "\x1b") {
			t.Errorf("tone %d is coloured though colour is off: %q", tone, plain)
		}
		if danger := strings.HasPrefix(plain, "Caution: "); danger != (tone == call.Caution) {
			t.Errorf("tone %d reads %q", tone, plain)
		}
		coloured := shown(Printer{Color: true}, func(p *Printer) { p.Say(tone, "mains are live") })
		bare := coloured
		for _, code := range sgr {
			bare = strings.ReplaceAll(bare, "\x1b["+code+"m", "")
		}
		if bare = strings.ReplaceAll(bare, "\x1b[0m", ""); bare != plain {
			t.Errorf("tone %d says %q in colour and %q without", tone, coloured, plain)
		}
	}
}

// A table takes the whole of a wide screen, and on a narrow one words stay
// whole while another column can give way; text stays as narrow as it reads.
func TestTableWidth(t *testing.T) {
	long := strings.Repeat("not shown ", 30)
	table := &call.Table{Head: []string{"Unit", "Missing"}, Rows: [][]string{{"refrigerator temperatures", strings.TrimSpace(long)}}}
	for _, tt := range []struct{ screen, atLeast int }{{200, 190}, {120, 110}, {60, 50}} {
		var b bytes.Buffer
		(&Printer{Out: &b, Width: tt.screen}).Reply(&call.Reply{Table: table, Lines: []call.Line{{Text: long}}})
		widest := 0
		for _, line := range strings.Split(b.String(), "\n") {
			n := len([]rune(line))
			if n > tt.screen {
				t.Errorf("%d columns on %d: %s", n, tt.screen, line)
			}
			if !strings.HasPrefix(line, "not") && !strings.HasPrefix(line, "  ") {
				widest = max(widest, n)
			} else if n > 100 && strings.HasPrefix(line, "not") {
				t.Errorf("text runs over %d columns", n)
			}
		}
		if widest < tt.atLeast {
			t.Errorf("on %d columns the table takes %d", tt.screen, widest)
		}
	}
	var b bytes.Buffer
	(&Printer{Out: &b, Width: 36}).Reply(&call.Reply{Table: &call.Table{Head: []string{"A", "B", "C"},
		Rows: [][]string{{"refrigerator", "temperatures", "one two three four five six"}}}})
	for _, w := range []string{"refrigerator", "temperatures"} {
		if !strings.Contains(b.String(), w) {
			t.Errorf("%s is cut:\n%s", w, b.String())
		}
	}
}

// A table stands where no word in it has to be cut and its texts have room to be
// read, and else as a list, which says all of it.
func TestTableFits(t *testing.T) {
	path := &call.Table{Head: []string{"Date", "File"}, Rows: [][]string{{"2026-03-02", "calls/2026-03-02-0900-call.md of the first visit"}}}
	verdicts := &call.Table{Head: []string{"What", "Verdict", "Reason", "Limit", "Margin, × doubt"}, Rows: [][]string{
		{"windings", "sound", "By the readings B is common, A is start, C is run.", "start + run within 0.48 Ω of the highest pair", "1 inside"},
		{"insulation A to case", "cannot tell", "no gross fault found; an ordinary ohm-meter cannot prove insulation", "at least 2 MΩ (2 MΩ flat)", ""}}}
	const whole = len("2026-03-02") + gap + len("calls/2026-03-02-0900-call.md")
	for _, c := range []struct {
		table   *call.Table
		columns int
		fits    bool
		list    string // its first line as a list
	}{
		{path, 0, true, ""}, {path, 200, true, ""}, {path, whole, true, ""},
		{path, whole - 1, false, "2026-03-02: file"}, {path, 32, false, "2026-03-02: file"},
		{verdicts, 120, true, ""}, {verdicts, 80, true, ""}, {verdicts, 66, false, "windings: verdict sound; reason By the readings B is common, A is"}, {verdicts, 40, false, "windings: verdict sound; reason By the"},
	} {
		var out, errs bytes.Buffer
		p := &Printer{Out: &out, Err: &errs, Width: c.columns}
		p.Reply(&call.Reply{Table: c.table})
		first, _, _ := strings.Cut(out.String(), "\n")
		if p.Fits(c.table) != c.fits || !c.fits && first != c.list || c.fits && !strings.HasPrefix(first, c.table.Head[0]+" ") {
			t.Errorf("%d columns: fits is %v:\n%s", c.columns, !c.fits, out.String())
		}
		for _, row := range c.table.Rows {
			for _, w := range strings.Fields(strings.Join(row, " ")) {
				if !strings.Contains(out.String(), w) {
					t.Errorf("%d columns: %s is cut:\n%s", c.columns, w, out.String())
				}
			}
		}
	}
}
