package call

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"slices"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones of the tests, on a machine that has none

	"ohmcall/notebook/record"
)

// flat is all that a call amounts to, as comparable text.
func flat(v any) string {
	b, err := json.Marshal(v)
	if err != nil {
		return err.Error()
	}
	return string(b)
}

func applyAll(t testing.TB, lines ...string) *Call {
	t.Helper()
	c := New()
	for _, l := range lines {
		must(t, c, l)
	}
	return c
}

// rolesOf gives the roles of the machine at hand as text.
func rolesOf(c *Call) string {
	m := c.machines[c.machineAtHand()]
	var parts []string
	for _, p := range m.result.Pins {
		parts = append(parts, p+"="+string(m.result.Roles[p]))
	}
	return string(m.result.State) + " " + strings.Join(parts, " ")
}

// TestWindingChecks replays published examples through typed lines.
func TestWindingChecks(t *testing.T) {
	tests := []struct {
		name, lines, want, flag, source string
	}{
		{"additive", "ohm 1 2 11;ohm 1 3 4;ohm 2 3 15", "sound 1=common 2=start 3=run", "",
			"distributor technician bulletin Compressor Common-Run-Start (2020)"},
		{"the sum misses", "ohm 1 2 7;ohm 2 3 8;ohm 1 3 6", "does-not-add-up 1= 2= 3=", "does-not-add-up",
			"common practice: the order of readings that miss their sum by so much tells nothing"},
		{"the sum misses by less", "ohm 1 2 7.0;ohm 2 3 11.0;ohm 1 3 6.0", "does-not-add-up 1=common 2=start 3=run", "does-not-add-up", "common practice"},
		{"equal windings", "ohm 1 2 7.0;ohm 2 3 7.0;ohm 1 3 7.0", "equal-windings 1= 2= 3=", "equal-windings",
			"Heating and Cooling Essentials (2022) §25, three-phase windings have the same resistance"},
		{"protector open, marked", "mark C common;mark S start;mark R run;ohm C S OL;ohm C R OL;ohm S R 15", "overload-open C=common R=run S=start", "overload-open",
			"chiller manual p. 12, overload between terminal C and motor common"},
		{"two open on unmarked pins", "ohm A B OL;ohm A C OL;ohm B C 6.5", "open-unplaced A= B= C=", "open-unplaced",
			"follows from the four wirings that give these readings"},
		{"rough and short", "ohm A B 3.45;ohm A C ~6.5;ohm B C 2.5", "sound A=start B=common C=run", "roles-settled",
			"common practice: highest pair is start-run"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := New()
			var last Entry
			for _, l := range strings.Split(tt.lines, ";") {
				last = must(t, c, l)
			}
			if got := rolesOf(c); got != tt.want {
				t.Errorf("got %q, want %q (%s)", got, tt.want, tt.source)
			}
			if tt.flag != "" && !slices.Contains(last.Reply.Flags, tt.flag) {
				t.Errorf("the flag %s is not raised, only %v", tt.flag, last.Reply.Flags)
			}
		})
	}
}

// TestOrderAndNames holds for random machines that the roles depend neither
// on the order in which readings were typed nor on the pins' names.
func TestOrderAndNames(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for range 300 {
		run := 1 + rng.Float64()*9
		start := run * (1.02 + rng.Float64()*5)
		pairs := [][3]string{{"c", "s", fmt.Sprintf("%.2f", start)}, {"c", "r", fmt.Sprintf("%.2f", run)}, {"s", "r", fmt.Sprintf("%.2f", run+start)}}
		outcome := func(names map[string]string, order []int) string {
			c := New()
			for _, i := range order {
				p := pairs[i]
				a, b := names[p[0]], names[p[1]]
				if rng.Intn(2) == 0 {
					a, b = b, a
				}
				must(t, c, "ohm "+a+" "+b+" "+p[2])
			}
			m := c.machines[defaultMachine]
			var s string
			for _, role := range []string{"c", "s", "r"} {
				s += role + "=" + string(m.result.Roles[names[role]]) + " "
			}
			return s + string(m.result.State)
		}
		want := outcome(map[string]string{"c": "A", "s": "B", "r": "C"}, []int{0, 1, 2})
		for range 4 {
			n := []string{"A", "B", "C", "1", "x", "zz"}
			rng.Shuffle(len(n), func(i, j int) { n[i], n[j] = n[j], n[i] })
			if got := outcome(map[string]string{"c": n[0], "s": n[1], "r": n[2]}, rng.Perm(3)); got != want {
				t.Fatalf("%v: got %q, want %q", pairs, got, want)
			}
		}
	}
}

// TestStrikeIsAsIfNeverSaid holds that a struck line leaves the call as if
// it had not been typed, but for the record of it.
func TestStrikeIsAsIfNeverSaid(t *testing.T) {
	base := []string{"fault clicks", "ohm A B 3.45", "ohm B C 2.5", "ohm A C 6.0", "saw clicks"}
	for _, wrong := range []string{"ohm A B 34.5", "mark A run", "saw starts", "plate volts 230", "meter ohm 5% 9", "probes 0.9", "volt line 90", "did nothing", "ohm ptc OL cold", "temp freezer 3C"} {
		c := applyAll(t, append(append([]string{}, base...), wrong, "strike 6 slip")...)
		clean := applyAll(t, base...)
		if a, b := rolesOf(c), rolesOf(clean); a != b {
			t.Errorf("%s: roles %q, want %q", wrong, a, b)
		}
		if a, b := flat(c.facts(1<<60)), flat(clean.facts(1<<60)); a != b {
			t.Errorf("%s: facts %s, want %s", wrong, a, b)
		}
		a, b := c.Record(), clean.Record()
		if x, y := flat(a.Verdicts), flat(b.Verdicts); x != y {
			t.Errorf("%s: verdicts %s, want %s", wrong, x, y)
		}
		if x, y := flat(a.Header.Missing), flat(b.Header.Missing); x != y {
			t.Errorf("%s: missing %s, want %s", wrong, x, y)
		}
		if !strings.Contains(flat(a.Log), "slip") {
			t.Errorf("%s: the strike is not legible", wrong)
		}
	}
}

// TestReplay holds that the same lines at the same times give the same
// entries and the same record.
func TestReplay(t *testing.T) {
	c := started(t)
	for _, l := range []string{"saw clicks", "volt line 118.2", "next", "causes", "missing", "show", "roles", "close"} {
		must(t, c, l)
	}
	again := New()
	for _, e := range c.Entries() {
		got, err := again.Apply(e.At, e.Line)
		if err != nil {
			t.Fatal(err)
		}
		if stored := again.Entries()[got.N-1]; flat(stored.Reply) != flat(e.Reply) {
			t.Errorf("%s: %s\nreplayed: %s", e.Line, flat(e.Reply), flat(stored.Reply))
		}
	}
	if flat(c.Record()) != flat(again.Record()) {
		t.Error("the records differ")
	}
}

// TestSums checks what a technician types at the prompt.
func TestSums(t *testing.T) {
	c := applyAll(t, "meter ohm 0.9% 2", "ohm A B 4.7", "temp freezer -2F", "temp fridge 4C")
	tests := []struct{ in, want string }{
		{"120V / 3.45ohm", "= 34.8 A"},
		{"ohm(A, B)", "= 4.70 ± 0.28 Ω (k=2)"}, // ±(0.9 % + 2) of 4.7 Ω is ±0.242 Ω, u = 0.140 Ω: reference values, computed
		{"ohm(B, A) - ohm(A, B)", "= 0.0 Ω"},
		{"temp(fridge) - temp(freezer) > 20K", "yes"},
		{"75F in degC", "= 23.9 °C"},
	}
	for _, tt := range tests {
		e := must(t, c, tt.in)
		if got := e.Reply.Lines[0].Text; got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.in, got, tt.want)
		}
	}
	_, err := c.Apply(nine, "120V + 3ohm")
	if err == nil || !strings.Contains(err.Error(), "V") || !strings.Contains(err.Error(), "Ω") {
		t.Errorf("volts and ohms were added, or the units are not named: %v", err)
	}
}

// TestExpand checks how a reading carries on.
func TestExpand(t *testing.T) {
	tests := []struct{ before, in, want string }{
		{"ohm A B 3.4", "C 6.5", "ohm A C 6.5"},
		{"ohm A B 3.4", "B C 2.5", "ohm B C 2.5"},
		{"ohm A B 3.4", "C 6.5, B C 2.5 cold", "ohm A C 6.5 cold, B C 2.5 cold"},
		{"ohm A B 3.4", "case OL", "ohm A case OL"},
		{"ohm A case OL", "B OL", "ohm B case OL"},
		{"ohm A B 3.4", "14:30 C ~6.5", "14:30 ohm A C ~6.5"},
		{"temp freezer 12C", "fridge 5C", "temp fridge 5C"},
		{"ohm A B 3.4", "120V / 3ohm", "120V / 3ohm"},
		{"ohm A B 3.4", "note C 6.5", "note C 6.5"},
		{"ohm A B 3.4", "hello there 3", "hello there 3"},
		{"temp freezer 5F", "v line 118", "v line 118"},
		{"amp comp 1.2", "line 118", "line 118"},
		{"ohm 1 2 7", "3 6", "ohm 1 3 6"},
		{"note x", "C 6.5", "C 6.5"},
	}
	for _, tt := range tests {
		c := applyAll(t, tt.before)
		if got := c.Expand(tt.in); got != tt.want {
			t.Errorf("after %q, %q became %q, want %q", tt.before, tt.in, got, tt.want)
		}
	}
}

// TestClock checks times before lines and `date`.
func TestClock(t *testing.T) {
	wall := func() time.Time { return time.Date(2026, 5, 6, 7, 8, 9, 999, time.UTC) }
	c := New()
	step := func(line, want string) {
		t.Helper()
		at := c.Clock(line, wall)
		if got := at.Format("2006-01-02T15:04:05Z07:00"); got != want {
			t.Errorf("%s: at %s, want %s", line, got, want)
		}
		if _, err := c.Apply(at, line); err != nil {
			t.Fatal(err)
		}
	}
	step("note live", "2026-05-06T07:08:09Z")
	step("date 2026-03-02 09:00 -05:00", "2026-03-02T09:00:00-05:00")
	step("note pinned", "2026-03-02T09:00:00-05:00")
	step("+40min note later", "2026-03-02T09:40:00-05:00")
	step("note stays", "2026-03-02T09:40:00-05:00")
	step("14:30 note clock", "2026-03-02T14:30:00-05:00")
	step("date now", "2026-03-02T14:30:00-05:00")
	step("note live again", "2026-05-06T07:08:09Z")
	step("06:50 note written down late", "2026-05-06T06:50:00Z")
}

// A time before a line is what the clock on the wall shows, also on the days on
// which the clocks change (tz database: New York on 2026-03-08 and 2026-11-01,
// Berlin on 2026-03-29; from memory).
func TestClockWhereClocksChange(t *testing.T) {
	for _, tt := range []struct{ zone, wall, line, want string }{
		{"America/New_York", "2026-03-08 15:00", "14:30 note x", "2026-03-08T14:30:00-04:00"},
		{"America/New_York", "2026-03-08 15:00", "01:30 note x", "2026-03-08T01:30:00-05:00"},
		{"America/New_York", "2026-11-01 15:00", "14:30 note x", "2026-11-01T14:30:00-05:00"},
		{"America/New_York", "2026-03-09 00:20", "23:50 note x", "2026-03-08T23:50:00-04:00"},
		{"America/New_York", "2026-03-08 00:20", "23:50 note x", "2026-03-07T23:50:00-05:00"},
		{"Europe/Berlin", "2026-03-29 12:00", "11:15 note x", "2026-03-29T11:15:00+02:00"},
		{"Asia/Kolkata", "2026-03-29 12:00", "11:15 note x", "2026-03-29T11:15:00+05:30"},
	} {
		zone, err := time.LoadLocation(tt.zone)
		if err != nil {
			t.Fatal(err)
		}
		wall, err := time.ParseInLocation("2006-01-02 15:04", tt.wall, zone)
		if err != nil {
			t.Fatal(err)
		}
		if got := New().Clock(tt.line, func() time.Time { return wall }).Format("2006-01-02T15:04:05-07:00"); got != tt.want {
			t.Errorf("%s at %s in %s: %s, want %s", tt.line, tt.wall, tt.zone, got, tt.want)
		}
	}
}

// mostFuzzed is how many lines of one text are typed.
const mostFuzzed = 12

// FuzzApply types any lines behind a call that has begun, on the eve of a change
// of the clocks: a refused line leaves the call as it was, and what was taken
// replays from what would be stored of it.
func FuzzApply(f *testing.F) {
	zone, err := time.LoadLocation("America/New_York")
	if err != nil {
		zone = time.UTC
	}
	wall := func() time.Time { return time.Date(2026, 3, 7, 23, 50, 0, 0, zone) }
	var before string
	for _, cmd := range Commands() {
		for _, e := range cmd.Examples {
			f.Add(e)
			f.Add(before + "\n" + e + "\n+15min " + e)
			before = e
		}
	}
	for _, s := range []string{"120V / 3.45ohm", "C 6.5", "14:30 temp freezer -2F", "ohm A B (ohm(A,B)+1ohm)", "when is(gas, \"R-600a\"): need safe",
		"saw relay rattles\non heater\nohm 1 2 14.4", "on ptc\nohm 1 2 8\nsaw device rattles\nstrike 3 slip", "did replaced relay\nunit gas oven\nvolt line 118 run\nproof",
		"date 2026-11-01 00:30 -04:00\n02:30 note x\ndate now\n23:59 note y"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c := started(t)
		for i, line := range strings.Split(text, "\n") {
			if i == mostFuzzed {
				break
			}
			at, err := time.Parse(record.TimeLayout, c.Clock(line, wall).Format(record.TimeLayout))
			if err != nil {
				continue // of a year that has no four digits
			}
			n, before := c.Len(), flat(c.Record())
			if e, err := c.Apply(at, c.Expand(line)); (err != nil || e.N == 0) && (c.Len() != n || flat(c.Record()) != before) {
				t.Fatalf("%q was refused and changed the call", line)
			}
		}
		again := New()
		for _, e := range c.Entries() {
			got, err := again.Apply(e.At, e.Line)
			if err != nil || flat(again.Entries()[got.N-1].Reply) != flat(e.Reply) {
				t.Fatalf("%q does not replay: %v", e.Line, err)
			}
		}
	})
}

// The record gives each reading the doubt that it has in sums (JCGM 100:2008,
// 4.3.7 for what a meter shows; from memory).
func TestReadingIsRecordedWithTheDoubtOfSums(t *testing.T) {
	c := applyAll(t, "meter ohm 1% 3", "ohm A B 3.45", "ohm A C (ohm(A, B) + 1ohm)", "ohm B C ~2.5", "volt line 120", "temp freezer -2F", "temp fridge (temp(freezer) + 20K)")
	for i, r := range c.Record().Readings {
		u, err := c.quantityOf(c.readings[i]).UIn(c.readings[i].quality.unit)
		if err != nil || u <= 0 || math.Abs(r.U-u) > 1e-9 {
			t.Errorf("%s %s: recorded %g, in sums %g, %v", r.Kind, r.Shown, r.U, u, err)
		}
	}
}

func TestHotIsCorrected(t *testing.T) {
	// 4.00 Ω cold is 4.99 Ω at 89.6 °C; without correction the pairs would
	// not add up.
	c := applyAll(t, "ohm A B 4.99 hot", "ohm B C 2.00 cold", "ohm A C 6.00 cold")
	if got := rolesOf(c); got != "sound A=start B=common C=run" {
		t.Errorf("mixed: %s", got)
	}
	cold := applyAll(t, "ohm A B 4.99", "ohm B C 2.00", "ohm A C 6.00")
	if got := rolesOf(cold); !strings.HasPrefix(got, "does-not-add-up") {
		t.Errorf("the control adds up: %s", got)
	}
	c = applyAll(t, "plate ohms start 4.00 5%", "ohm A B 4.99 at 89.6C", "ohm B C 2.50 at 89.6C", "ohm A C 7.49 at 89.6C")
	if v := c.judged[windingKind+"\x00compressor\x00start"]; v == nil || v.verdict.Word != "sound" {
		t.Errorf("at a temperature the sheet is not met: %+v", v)
	}
	c = applyAll(t, "plate ohms start 4.00 5%", "ohm A B 4.99 hot", "ohm B C 2.50 hot", "ohm A C 7.49 hot")
	if v := c.judged[windingKind+"\x00compressor\x00start"]; v == nil || v.verdict.Word == "failed" {
		t.Errorf("hot ohms condemn a sound winding: %+v", v)
	}
}

// TestWindingFactsNameTheirReadings holds that what the windings rule out is
// laid to the readings of the pairs, not to those of the case behind them.
func TestWindingFactsNameTheirReadings(t *testing.T) {
	c := applyAll(t, "fault clicks", "ohm A B 3.45", "ohm A C 5.95", "ohm B C 2.50", "ohm A case OL, B case OL, C case OL")
	for _, k := range c.Record().Causes {
		switch k.Code {
		case "winding-open":
			if k.State != "ruled-out" || len(k.Against) != 1 || k.Against[0] != 4 {
				t.Errorf("winding-open is %s by %v", k.State, k.Against)
			}
		case "winding-grounded":
			if k.State != "ruled-out" || len(k.Against) != 1 || k.Against[0] != 5 {
				t.Errorf("winding-grounded is %s by %v", k.State, k.Against)
			}
		}
	}
	half := applyAll(t, "fault clicks", "ohm A B 3.45", "ohm A C 5.95")
	if got := half.Standing(); !strings.Contains(got.Plain(), "Next: read B–C") {
		t.Errorf("with two pairs read it says:\n%s", got.Plain())
	}
}
