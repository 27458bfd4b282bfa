package call

import (
	"os"
	"strings"
	"testing"
)

// toldIn gives the dangers and bridges that a line tells of in an appliance.
func toldIn(t *testing.T, in, line string) string {
	t.Helper()
	unit, gas, _ := strings.Cut(in, " of ")
	lines := []string{"unit " + unit}
	if !strings.HasPrefix(line, "fault") {
		lines = append(lines, "fault does not work")
	}
	if gas != "" {
		lines = append(lines, "plate gas "+gas)
	}
	c := applyAll(t, append(lines, line)...)
	var out []string
	for _, a := range c.alarms() {
		out = append(out, a.code)
	}
	if len(c.bridged()) > 0 {
		out = append(out, "bridged")
	}
	return strings.Join(out, " ")
}

// Words of the trade and of clients for what can hurt, the finding that they are heard
// as, and words that are those of a danger and tell of none: common practice. The
// appliance stands before the line.
func TestDangersOfTheTrade(t *testing.T) {
	told, err := os.ReadFile("../said/testdata/dangers.txt")
	if err != nil {
		t.Fatal(err)
	}
	want, rows := "", 0
	for row := range strings.Lines(string(told)) {
		row = strings.TrimSuffix(row, "\n")
		in, line, _ := strings.Cut(row, "|")
		switch codes, is := strings.CutPrefix(row, "=="); {
		case is:
			want = strings.TrimSpace(codes)
		case !strings.HasPrefix(row, "#"):
			rows++
			if got := toldIn(t, in, line); got != want {
				t.Errorf("%s: %q, want %q", row, got, want)
			}
		}
	}
	if rows < 400 {
		t.Errorf("%d rows", rows)
	}
}
