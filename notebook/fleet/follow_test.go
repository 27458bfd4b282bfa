package fleet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

func TestSerialKey(t *testing.T) {
	for in, want := range map[string]string{
		"DEMO-000 123": "demo000123", "x1": "x1", "A-7": "a7",
		"": "", "none": "", "Not readable": "", "unknown": "", "n/a": "", "illegible": "", "worn off": "", "?": "", "-": "", "0": "", "000": "", "no serial": "", "missing": "", "N/A 0": "",
	} {
		if got := serialKey(in); got != want {
			t.Errorf("%q is compared as %q, want %q", in, got, want)
		}
	}
}

func TestSameUnit(t *testing.T) {
	for _, c := range []struct {
		a, b record.Header
		same bool
	}{
		{record.Header{Serial: "1"}, record.Header{Serial: "1"}, true}, // nothing else known
		{record.Header{Serial: "1"}, record.Header{Serial: "2"}, false},
		{record.Header{}, record.Header{}, false},
		{record.Header{Serial: "1", Model: "DR-7"}, record.Header{Serial: "1", Model: "dr7/a"}, true},
		{record.Header{Serial: "1", Model: "DR-7", Unit: "dryer"}, record.Header{Serial: "1", Model: "F 300", Unit: "dryer"}, false},
		{record.Header{Serial: "1", Model: "DR-7", Unit: "dryer"}, record.Header{Serial: "1", Unit: "tumble dryer"}, true},
		{record.Header{Serial: "1", Unit: "dryer"}, record.Header{Serial: "1", Unit: "fridge freezer"}, false},
		{record.Header{Serial: "1", Unit: "refrigerator"}, record.Header{Serial: "1", Unit: "fridge freezer"}, true},
		{record.Header{Serial: "1", Unit: "washer dryer"}, record.Header{Serial: "1", Unit: "dryer"}, true},
		{record.Header{Serial: "1", Unit: "dishwasher"}, record.Header{Serial: "1", Unit: "washer"}, false},
		{record.Header{Serial: "1", Unit: "dishwasher"}, record.Header{Serial: "1", Unit: "Dish washer"}, true},
		{record.Header{Serial: "1", Unit: "mini-split"}, record.Header{Serial: "1", Unit: "A/C, outdoor unit"}, true},
		{record.Header{Serial: "1", Unit: "window unit"}, record.Header{Serial: "1", Unit: "dehumidifier"}, false},
		{record.Header{Serial: "1", Unit: "gas range"}, record.Header{Serial: "1", Unit: "oven"}, true},
		{record.Header{Serial: "1", Unit: "range hood"}, record.Header{Serial: "1", Unit: "dryer"}, true}, // of no kind that is told
		{record.Header{Serial: "1", Unit: "water heater"}, record.Header{Serial: "1", Unit: "boiler"}, false},
		{record.Header{Serial: "1", Unit: "ice maker"}, record.Header{Serial: "1", Unit: "icemaker"}, true},
		{record.Header{Serial: "1", Unit: "ice maker"}, record.Header{Serial: "1", Unit: "microwave"}, false},
		{record.Header{Serial: "1", Unit: "dryer"}, record.Header{Serial: "1", Unit: "big white thing"}, true},
		{record.Header{Serial: "1", Unit: "dryer", Model: "DR-7"}, record.Header{Serial: "1"}, true},
	} {
		a, b := unitOf(&c.a), unitOf(&c.b)
		if a.same(&b) != c.same || b.same(&a) != c.same {
			t.Errorf("%+v and %+v: want %v", c.a, c.b, c.same)
		}
	}
}

// seen is a call on one unit on a day of March.
func seen(path string, day int, result string, more ...string) Item {
	h := record.Header{Serial: "DEMO-1", Started: fmt.Sprintf("2026-03-%02dT09:00:00+01:00", day), Result: result, Missing: more}
	if result == record.Unsafe {
		h.Unsafe = []string{"insulation"}
	}
	return Item{Path: path, State: Trusted, Header: h}
}

// A call after one that was to be gone on with is no call-back.
func TestReturnsAreNoCallBacks(t *testing.T) {
	for _, r := range record.Results {
		if r.Word == record.Unsafe {
			continue
		}
		d := NewDigest(slices.Values([]Item{seen("a", 1, r.Word), seen("b", 9, record.Proved)}), Filter{})
		count(&d.Totals.CallBacks, r.Returns)
		if d.Totals.CallBacks != 1 || (d.Totals.Returns == 1) != r.Returns {
			t.Errorf("after %s: %+v", r.Word, d.Totals)
		}
		for _, row := range d.Rows {
			told := strings.TrimSuffix(strings.Join(row.remarks(), "; "), "; serial DEMO-1")
			want := map[string]string{"a": "call-back followed on 2026-03-09 by b: proved", "b": "call-back after 8 days"}[row.Path]
			if r.Returns {
				want = map[string]string{"a": "followed on 2026-03-09 by b: proved", "b": "return after 8 days"}[row.Path]
			}
			if told != want {
				t.Errorf("after %s, %s: %q, want %q", r.Word, row.Path, told, want)
			}
		}
	}
	// It is one however late; of an unsafe call it depends on what was done.
	for name, c := range map[string]struct {
		first   Item
		last    int // day of the call that follows
		returns bool
	}{
		"part that came late":    {seen("a", 1, record.Waits), 31, true},
		"left unsafe, untouched": {seen("a", 1, record.Unsafe), 2, true},
		"repaired and unsafe":    {seen("a", 1, record.Unsafe, "proof: running amps"), 2, false},
	} {
		d := NewDigest(slices.Values([]Item{c.first, seen("b", c.last, record.Proved)}), Filter{})
		if (d.Totals.Returns == 1) != c.returns || (d.Totals.CallBacks == 1) == c.returns {
			t.Errorf("%s: %+v", name, d.Totals)
		}
	}
}

// What was left unsafe stands behind what still is once a trusted call has proved
// the unit, and says by which; it is never dropped.
func TestMadeGood(t *testing.T) {
	changed := seen("c", 9, record.Proved)
	changed.State = Changed
	other := seen("c", 9, record.Proved)
	other.Header.Unit, other.Header.Serial = "dryer", "DEMO-2"
	for name, c := range map[string]struct {
		later []Item
		by    string
	}{
		"nothing":              {nil, ""},
		"proved":               {[]Item{seen("c", 9, record.Proved)}, "c"},
		"proved after another": {[]Item{seen("b", 5, record.Waits), seen("c", 31, record.Proved)}, "c"},
		"not proved":           {[]Item{seen("c", 9, record.NotProved)}, ""},
		"unsafe again":         {[]Item{seen("c", 9, record.Unsafe)}, ""},
		"not to be trusted":    {[]Item{changed}, ""},
		"another unit":         {[]Item{other}, ""},
	} {
		still := seen("z", 20, record.Unsafe)
		still.Header.Serial = "DEMO-9"
		items := append([]Item{seen("a", 1, record.Unsafe), still}, c.later...)
		d := NewDigest(slices.Values(items), Filter{})
		i := slices.IndexFunc(d.Rows, func(r Row) bool { return r.Path == "a" })
		z := slices.IndexFunc(d.Rows, func(r Row) bool { return r.Path == "z" })
		if r := d.Rows[i]; r.MadeGood != (c.by != "") || c.by != "" && (r.Followed != c.by || !strings.Contains(strings.Join(r.remarks(), "; "), "made good since, followed on "+r.FollowedOn+" by c: proved")) {
			t.Errorf("%s: %+v", name, r)
		}
		if (i < z) == (c.by != "") || d.Totals.Unsafe < 2 {
			t.Errorf("%s: row %d, the one still unsafe %d, %+v", name, i, z, d.Totals)
		}
		if first := d.First(); !strings.Contains(first, "z") || !strings.Contains(first, "a") {
			t.Errorf("%s: %q", name, first)
		}
	}
}

// Names are one technician's however they are spelled.
func TestTechniciansAreFolded(t *testing.T) {
	a, b, c := seen("a", 1, record.Proved), seen("b", 2, record.Proved), seen("c", 3, record.Proved)
	a.Header.Technician, b.Header.Technician, c.Header.Technician = "Fitz  Larkspur", "fitz larkspur ", "Max Muster"
	d := NewDigest(slices.Values([]Item{a, b, c}), Filter{})
	if rows := d.technicianTable().Rows; len(rows) != 2 || rows[0][0] != "Fitz Larkspur" || rows[0][1] != "2" {
		t.Errorf("%q", rows)
	}
	if d := NewDigest(slices.Values([]Item{a, b, c}), Filter{Technician: "FITZ LARK"}); len(d.Rows) != 2 {
		t.Errorf("%d are picked", len(d.Rows))
	}
}

// On a screen a danger stands with all its words, and an open call with what
// comes next.
func TestScreenCutsNoDanger(t *testing.T) {
	a := seen("a", 1, record.Unsafe)
	a.State, a.next = Open, "leave its cock shut"
	danger := "by its words a protective device may be out of its circuit, entry 14: bridged the thermal cutout with a wire until the part comes, as type B of it is on order"
	a.Header.Unsafe, a.Header.Doubt = []string{danger, "second", "third", "fourth"}, []string{danger}
	d := NewDigest(slices.Values([]Item{a}), Filter{})
	calls, _ := d.Screen()
	for name, text := range map[string]string{"lines": strings.Join(d.Rows[0].Brief(), "\n"), "table": strings.Join(calls.Rows[0], "\n")} {
		for _, want := range []string{"unsafe: " + danger + "; second; third; fourth", "in doubt: " + danger, "next: leave its cock shut", "serial DEMO-1"} {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is not in %q", name, want, text)
			}
		}
	}
}
