package notebook

import (
	"strings"
	"testing"
)

// A redacted copy names nobody in what the log holds beside its entries either.
func TestRedactedLooseLines(t *testing.T) {
	n := New(Host{Now: wall})
	for _, l := range []string{"client Petra Placeholder", "unit washer"} {
		if _, err := n.Do(l); err != nil {
			t.Fatal(err)
		}
	}
	whole := string(n.Render())
	for name, content := range map[string]string{
		"as it is":            whole,
		"torn":                whole + "3 2026-03-02T14:00:00+00:00 client Petronella Plac",
		"torn, timed":         whole + "3 2026-03-02T14:00:00+00:00 14:30 client Petronella Plac",
		"torn in a quote":     whole + "3 2026-03-02T14:00:00+00:00 site \"12 Petronella St",
		"unwritten":           whole + "3 2026-03-02T14:00:00+00:00 client Petronella\x00\x00\n",
		"mangled":             whole + "three 2026-03-02T14:00:00+00:00 client Petronella\n3 2026-03-02T14:00:00+00:00 note dry\n",
		"ends before the log": strings.ReplaceAll(whole[:strings.Index(whole, "## Log")], "Petra", "Petronella"),
	} {
		out, err := Redact([]byte(content))
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if strings.Contains(string(out), "Petronella") || strings.Contains(string(out), "Petra") {
			t.Errorf("%s: the copy names the client:\n%s", name, out)
		}
	}
}
