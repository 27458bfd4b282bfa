package call

import (
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/record"
)

// sinceCalls are calls whose repair is proved, each line after the minutes before it.
var sinceCalls = map[string]string{
	"fridge": "unit fridge; fault clicks, no cool; plate volts 115, amps 1.3, lra 12.5; volt line 117.5; ohm C S 5.8; ohm C R 4.1; ohm S R 9.9; ohm C case OL; ohm ptc OL cold; did replaced start device; " +
		"ohm ptc 5.0 cold; ohm earth 0.08 test 10A; saw starts; volt line 117.0 start; amp comp 10.0 peak; amp comp 1.10 run; temp freezer 50F; 30 temp freezer 24F; 30 temp freezer 10F; 60 temp freezer -1F; 90 temp freezer -4F",
	"split": "unit split A/C; fault outdoor unit hums, not cooling; plate volts 230, amps 8.0, lra 48; volt line 235; plate mfd HERM 40; mfd HERM 12.0; did replaced run capacitor; mfd HERM 40.2; ohm earth 0.08; " +
		"saw starts; saw blower runs; saw cond-fan runs; amp comp 7.2 run; 20 temp return 78F; temp supply 59F",
	"ice machine": "unit ice machine; fault no ice, compressor runs; saw water pump stopped; ohm pump OL; did replaced water pump; ohm pump 12; ohm earth 0.08; saw starts; saw water pump runs; amp comp 5.0 run; saw makes ice; saw harvests",
}

// later applies lines parted by semicolons, each after the minutes before it.
func later(t *testing.T, c *Call, lines string) (last *Reply) {
	t.Helper()
	at := nine
	if n := len(c.entries); n > 0 {
		at = c.entries[n-1].At
	}
	for line := range strings.SplitSeq(lines, "; ") {
		if m, rest, _ := strings.Cut(line, " "); m[0] >= '0' && m[0] <= '9' {
			d, err := time.ParseDuration(m + "m")
			if err != nil {
				t.Fatal(err)
			}
			at, line = at.Add(d), rest
		}
		e, err := c.Apply(at, line)
		if err != nil {
			t.Fatalf("%s: %v", line, err)
		}
		last = e.Reply
	}
	return last
}

func proved(t *testing.T, name string) *Call {
	t.Helper()
	c := New()
	later(t, c, sinceCalls[name])
	if got := c.result(); got != record.Proved {
		t.Fatalf("%s: %s, %q", name, got, c.proofMissing())
	}
	return c
}

// What is said after a repair was proved takes the proof back when it is of a failure,
// stands when it is good news, a machine at rest or papers, and is asked about when it is
// of the machine or from the client and neither.
func TestSaidAfterItWasProved(t *testing.T) {
	table, err := os.ReadFile("testdata/since.txt")
	if err != nil {
		t.Fatal(err)
	}
	name, want := "", ""
	for line := range strings.Lines(string(table)) {
		line = strings.TrimSpace(line)
		if s, ok := strings.CutPrefix(line, "== "); ok {
			name, want, _ = strings.Cut(s, ", ")
		}
		if name == "" || strings.HasPrefix(line, "== ") {
			continue
		}
		c, got := proved(t, name), "stands"
		switch r := later(t, c, line); {
		case slices.Contains(r.Flags, "not-understood") && c.result() != record.Proved:
			got = "asked"
		case c.result() != record.Proved:
			got = "heard"
		}
		if got != want {
			t.Errorf("%s: %s: %s, want %s: %q", name, line, got, want, c.proofMissing())
		}
	}
}

// What was told or asked about is settled by what its reply says, by what the complaint's
// proof is, and by a temperature that is right where warmth was told of.
func TestSettledAfterItWasProved(t *testing.T) {
	for _, row := range []struct{ name, lines, want string }{
		{"fridge", "note customer called, clicks again; saw no clicks", record.Proved},
		{"fridge", "note customer called, clicks again; saw complaint gone", record.Proved},
		{"fridge", "note customer called, clicks again; saw starts", record.Proved},
		{"fridge", "note customer called, clicks again; saw box cold", record.NotProved},
		{"fridge", "note customer called, clicks again; 60 temp freezer -5F", record.NotProved},
		{"fridge", "1200 note customer called, box warm this morning; 30 temp freezer -5F", record.Proved},
		{"fridge", "1200 note customer called, box warm this morning; 30 temp freezer 20F", record.NotProved},
		{"fridge", "1200 note customer called, box warm this morning; saw box cold", record.Proved},
		{"fridge", "1200 note customer called, box warm this morning; saw no clicks", record.NotProved},
		{"fridge", "1200 note customer called, box warm this morning; saw complaint back", record.NotProved},
		{"fridge", "1200 note customer called, box warm this morning; 30 temp freezer -5F; note checked: box cold, -5F, customer had left door open", record.Proved},
		{"fridge", "note compressor stopped and wont restart; 30 temp freezer -5F", record.NotProved},
		{"fridge", "note ice tray froze overnight; saw complaint gone", record.Proved},
		{"fridge", "note ice tray froze overnight; saw complaint back", record.NotProved},
		{"fridge", "note ice tray froze overnight; strike 22 not so", record.Proved},
		{"fridge", "note ice tray froze overnight; saw no hazard", record.NotProved},
		{"fridge", "saw complaint back; saw complaint gone", record.Proved},
		{"fridge", "saw still there", record.NotProved},
		{"split", "saw hum gone", record.Proved},
		{"split", "note house is 85F; saw cools", record.Proved},
		{"split", "note house is 85F; saw no hum", record.NotProved},
	} {
		c := proved(t, row.name)
		if later(t, c, row.lines); c.result() != row.want {
			t.Errorf("%s: %s: %s, want %s: %q", row.name, row.lines, c.result(), row.want, c.proofMissing())
		}
	}
	c := proved(t, "fridge")
	got := later(t, c, "note ice tray froze overnight; note lady rang, no idea why").Plain()
	if want := "Not understood. If the complaint is back: saw complaint back; else: saw complaint gone."; !strings.Contains(got, want) {
		t.Errorf("%q", got)
	}
	if got := strings.Join(c.Record().Alerts, "\n"); strings.Count(got, "To read: ") != 2 || !strings.Contains(got, "“ice tray froze overnight” (entry 22): it may tell of the complaint again, and is not understood here; saw complaint back or saw complaint gone answers it") {
		t.Errorf("%s", got)
	}
	if got := later(t, c, "saw complaint gone").Plain(); !strings.Contains(got, "Answers what was asked of entries 22, 23.") {
		t.Errorf("%q", got)
	}
	if got := later(t, c, "note box warm again").Plain(); !strings.Contains(got, "until it is seen to be gone (saw complaint gone, or a temperature that is right again)") {
		t.Errorf("%q", got)
	}
}

// Before it is proved nothing is asked, and what is warm is on its way.
func TestBeforeItIsProvedNothingIsAsked(t *testing.T) {
	for _, line := range []string{"note customer says freezer is 40F", "note ice tray froze overnight", "note milk is warm"} {
		c := New()
		later(t, c, "unit fridge; fault clicks, no cool; ohm ptc OL cold; did replaced start device")
		if r := later(t, c, line); len(c.relapsed) > 0 || slices.Contains(r.Flags, "not-understood") {
			t.Errorf("%s: %q", line, r.Plain())
		}
	}
}
