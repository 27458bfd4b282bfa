//go:build linux

package reliability

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ohmcall/calc/failpoint"
)

// long asks for the figures of the long run instead of the short ones:
//
//	OHMCALL_LONG=1 go test ./notebook/reliability -timeout 60m
var long = os.Getenv("OHMCALL_LONG") != ""

var update = flag.Bool("update", false, "rewrite the table in DEVELOPERS.md")

// figure is a number that a run must reach, short and long.
type figure struct {
	what        string
	short, long int
}

func (f figure) want() int {
	if long {
		return f.long
	}
	return f.short
}

// row is one promise under test. run works through its cases and reports
// faults to w. Each control is a guard of the program; with it broken the same
// run must report one.
type row struct {
	id, promise string
	figures     []figure
	controls    []failpoint.Point
	run         func(w *watch)
}

// bar is the table. TestReliability runs every row of it, sound and broken,
// and DEVELOPERS.md shows it.
var bar = []row{
	{"T1", "A file cut off at any byte opens with exactly the entries whose lines are whole; its bytes stay until a line is typed",
		[]figure{{"cuts", 6000, 40000}, {"cuts through the program", 24, 200}},
		[]failpoint.Point{failpoint.TornRefused}, truncate},
	{"T2", "After a kill at any instant no acknowledged entry is lost or doubled, and the file opens",
		[]figure{{"kills", 100, 1000}, {"kills while closing", 30, 300}},
		[]failpoint.Point{failpoint.AckFirst}, kill},
	{"T3", "After a loss of power (unsynced data dropped, torn, zeroed, reordered) every acknowledged entry is there",
		[]figure{{"states", 2500, 50000}},
		[]failpoint.Point{failpoint.NoSync, failpoint.NoSyncNew, failpoint.NoSyncDir}, power},
	{"T3b", "Each reply follows the sync of its entry", []figure{{"replies", 10, 10}},
		[]failpoint.Point{failpoint.AckFirst}, order},
	{"T4", "A kill at any call to the system loses nothing",
		[]figure{{"kills", 35, 35}},
		[]failpoint.Point{failpoint.AckFirst}, killEachCall},
	{"T5", "When the Nth call fails, once or for ever, the entry is not acknowledged, the cause is named, earlier entries stay, and a failed sync is never retried",
		[]figure{{"failures", 240, 240}},
		[]failpoint.Point{failpoint.SyncSwallowed, failpoint.WriteSwallowed, failpoint.SyncRetried}, failEachCall},
	{"T5b", "The same through the program, with failures from the system",
		[]figure{{"failures", 16, 64}},
		[]failpoint.Point{failpoint.SyncSwallowed}, failSystem},
	{"T6", "A full disk tears no entry, and the call goes on when there is room again",
		[]figure{{"limits", 200, 200}},
		[]failpoint.Point{failpoint.NotCut}, full},
	{"T7", "A file or folder that cannot be written is told before the first question, nothing is changed, reading works",
		[]figure{{"cases", 4, 4}},
		[]failpoint.Point{failpoint.UnkeptOpened}, readOnly},
	{"T8", "Of two writers one wins, the other is told who; the lock dies with its holder and outlives a rewrite",
		[]figure{{"races", 15, 100}},
		[]failpoint.Point{failpoint.LockInside}, race},
	{"T9", "An interrupted call to the system is not seen by the user",
		[]figure{{"interruptions", 20, 40}, {"signals", 500, 10000}},
		[]failpoint.Point{failpoint.NotRepeated}, interrupt},
	{"T10", "When the clock jumps, entries keep the order in which they were typed",
		[]figure{{"jumps", 36, 36}},
		[]failpoint.Point{failpoint.ByTime}, clocks},
	{"T11", "A notebook replays to the same bytes whatever the zone, language or number of processors",
		[]figure{{"notebooks", 200, 200}, {"settings", 6, 12}},
		[]failpoint.Point{failpoint.MapOrder}, determinism},
	{"T12", "Any file of up to 64 MB is read by any subcommand within 2 s and 200 MB, or refused in words; nothing is written beside it; pipes and devices are refused",
		[]figure{{"files", 75, 180}, {"runs", 75, 1900}, {"odd files", 44, 44}},
		[]failpoint.Point{failpoint.AnythingRead, failpoint.NoBounds}, sizes},
	{"T13", "Control, bidirectional and invisible characters are stored as visible names",
		[]figure{{"texts", 1000, 1000}},
		[]failpoint.Point{failpoint.NotCleaned}, badText},
	{"T14", "No control sequence from data reaches a terminal, a pipe or a page: each behind each command",
		[]figure{{"payloads", 60, 60}, {"lines", 4500, 8500}, {"lines on a terminal", 9000, 17000}, {"pages", 60, 60}},
		[]failpoint.Point{failpoint.NotCleaned, failpoint.ErrorRaw}, escapes},
	{"T15", "Text becomes no markup: an independent reader of Markdown finds the same structure and the same text, no HTML, no link",
		[]figure{{"payloads", 200, 200}},
		[]failpoint.Point{failpoint.NotEscaped, failpoint.BareReplies}, markup},
	{"T16", "Any expression is answered or refused within 50 ms and 16 MB",
		[]figure{{"expressions", 30, 30}},
		[]failpoint.Point{failpoint.NotVetted}, bombs},
	{"T17", "No mutation of a notebook, header, script or conversation panics or breaks an invariant",
		[]figure{{"mutations", 20000, 1000000}, {"conversations", 150, 5000}},
		[]failpoint.Point{failpoint.RarePair}, mutations},
	{"T18", "No name leads out of its folder, links are kept, modes are kept, nothing is left lying about",
		[]figure{{"names", 30, 30}, {"modes", 9, 9}},
		[]failpoint.Point{failpoint.OpenMode, failpoint.LinkReplaced}, paths},
	{"T19", "Reading a stranger's notebook, with any subcommand, opens no socket and writes nothing beside it",
		[]figure{{"subcommands", 11, 11}},
		[]failpoint.Point{failpoint.Socket, failpoint.ReadLocks}, quiet},
	{"T20", "What an editor does to the file while the call is open loses no entry and no remark",
		[]figure{{"cases", 16, 16}},
		[]failpoint.Point{failpoint.HeldTrusted}, edited},
}

// watch collects what a run saw.
type watch struct {
	t       *testing.T
	control string
	faults  []string
	counts  map[string]int
	figures []figure
}

// due is the figure that a run must reach.
func (w *watch) due(what string) int {
	for _, f := range w.figures {
		if f.what == what {
			return f.want()
		}
	}
	w.t.Fatalf("no figure of %s", what)
	return 0
}

// fault reports a broken promise.
func (w *watch) fault(format string, args ...any) {
	if len(w.faults) < 20 {
		w.faults = append(w.faults, fmt.Sprintf(format, args...))
	}
}

func (w *watch) count(what string, n int) { w.counts[what] += n }

// red reports whether a control has shown itself, so that it need not go on.
func (w *watch) red() bool { return w.control != "" && len(w.faults) > 0 }

// must ends the run when the test room itself fails.
func (w *watch) must(err error) {
	w.t.Helper()
	if err != nil {
		w.t.Fatal(err)
	}
}

// dir is a new empty folder.
func (w *watch) dir() string { return w.t.TempDir() }

// quick is a folder in memory where there is one, for what is not about the
// disk.
func (w *watch) quick() string {
	dir, err := os.MkdirTemp("/dev/shm", "reliability")
	if err != nil {
		return w.dir()
	}
	w.t.Cleanup(func() { os.RemoveAll(dir) })
	return dir
}

// TestReliability runs every row sound, and then with each of its guards
// broken. In a broken build it only runs the row, and marks what it notices.
func TestReliability(t *testing.T) {
	fault := os.Getenv(faultVar)
	for _, r := range bar {
		t.Run(r.id, func(t *testing.T) {
			t.Parallel()
			w := &watch{t: t, control: fault, figures: r.figures, counts: map[string]int{}}
			r.run(w)
			if fault != "" {
				for _, f := range w.faults {
					t.Error(redMark + f)
				}
				return
			}
			for _, f := range w.faults {
				t.Error(f)
			}
			for _, f := range r.figures {
				t.Logf("%d %s", w.counts[f.what], f.what)
				if w.counts[f.what] < f.want() {
					t.Errorf("%d %s, at least %d are due", w.counts[f.what], f.what, f.want())
				}
			}
			if len(r.controls) == 0 {
				t.Error("no control")
			}
			for _, c := range r.controls {
				if saw := red(t, r.id, c); saw == "" {
					t.Errorf("control %q stays green: the test proves nothing", c)
				} else {
					t.Logf("control %q: %s", c, saw)
				}
			}
		})
	}
}

// table is the bar in Markdown.
func table() string {
	var b strings.Builder
	b.WriteString("| test | promise | figure (long run) | controls that must turn it red |\n| --- | --- | --- | --- |\n")
	for _, r := range bar {
		var figures []string
		for _, f := range r.figures {
			s := fmt.Sprintf("%s %s", grouped(f.short), f.what)
			if f.long != f.short {
				s += fmt.Sprintf(" (%s)", grouped(f.long))
			}
			figures = append(figures, s)
		}
		fmt.Fprintf(&b, "| %s | %s | %s | %s |\n", r.id, r.promise, strings.Join(figures, ", "), join(r.controls))
	}
	return b.String()
}

func join(points []failpoint.Point) string {
	var out []string
	for _, p := range points {
		out = append(out, string(p))
	}
	return strings.Join(out, "; ")
}

func grouped(n int) string {
	s := fmt.Sprint(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}

// TestReliabilityTable keeps the table in DEVELOPERS.md true; -update
// rewrites it between its marks.
func TestReliabilityTable(t *testing.T) {
	t.Log("\n" + table())
	path := filepath.Join("..", "..", "DEVELOPERS.md")
	content, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	begin, end := []byte("<!-- reliability table -->\n"), []byte("<!-- end of reliability table -->")
	before, rest, ok1 := bytes.Cut(content, begin)
	have, after, ok2 := bytes.Cut(rest, end)
	if !ok1 || !ok2 {
		t.Fatalf("DEVELOPERS.md lacks the marks %q and %q", begin, end)
	}
	if string(have) == table() {
		return
	}
	if !*update {
		t.Fatal("the table in DEVELOPERS.md is not that of bar_test.go; go test ./notebook/reliability -run Table -update rewrites it")
	}
	fresh := bytes.Join([][]byte{before, begin, []byte(table()), end, after}, nil)
	if err := os.WriteFile(path, fresh, 0o644); err != nil {
		t.Fatal(err)
	}
}
