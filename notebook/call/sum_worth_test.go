package call

import (
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

func outcome(r *record.Record, label string) string {
	for _, f := range r.Outcome {
		if f.Label == label {
			return f.Text
		}
	}
	return ""
}

// The last repair-or-replace sum stands in the outcome with its inputs, as an
// inference, and the client's decision beside it: the sum of the reply itself.
func TestWorthInTheRecord(t *testing.T) {
	c := applyAll(t, "fault does not cool", "worth age 9", "worth repair-cost 180, replacement-price 650", "worth repair-cost 420, replacement-price 600, age 12")
	got := outcome(c.Record(), "Repair or replace")
	for _, want := range []string{"over 10 years replacing costs 362 less", "an inference from these: given repair cost 420, replacement price 600, age 12 years; assumed, by common practice, life 13 years, life after repair 2 years",
		"(entry 4)", "The client's decision is not written down"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q lacks %q", got, want)
		}
	}
	if strings.Contains(got, "minutes") || strings.Contains(got, "disposal") {
		t.Errorf("%q tells of what is not in the sum", got)
	}
	must(t, c, "note client agreed to the repair")
	if got := outcome(c.Record(), "Repair or replace"); !strings.HasSuffix(got, "The client's decision: client agreed to the repair (entry 5)") {
		t.Errorf("%q", got)
	}
	must(t, c, "strike 4 other machine")
	if got := outcome(c.Record(), "Repair or replace"); !strings.Contains(got, "(entry 3)") {
		t.Errorf("%q rests on a struck entry", got)
	}
	if got := outcome(applyAll(t, "fault does not cool", "worth age 9").Record(), "Repair or replace"); got != "" {
		t.Errorf("no sum, and yet %q", got)
	}
}

// What is assumed is said of the machine it is assumed of.
func TestWorthOfOtherMachines(t *testing.T) {
	for _, unit := range []string{"electric dryer", "gas oven", "washing machine", "room air conditioner", "dehumidifier", "walk-in freezer", "heat pump"} {
		c := applyAll(t, "unit "+unit, "worth age 7, repair-cost 100, replacement-price 700")
		if got := flat(c.Entries()[1].Reply); !strings.Contains(got, "The sum needs life") || !strings.Contains(got, "refrigerators and freezers alone") {
			t.Errorf("%s: %s", unit, got)
		}
		must(t, c, "worth life 12")
		if got := flat(c.Entries()[2].Reply) + outcome(c.Record(), "Repair or replace"); strings.Contains(got, "kWh a year") || strings.Count(got, "taken as alike for both, and not counted") != 2 || !strings.Contains(got, "Given life 12 years") {
			t.Errorf("%s: %s", unit, got)
		}
		must(t, c, "worth energy-old 300")
		if got := outcome(c.Record(), "Repair or replace"); !strings.Contains(got, "taken as the other's energy new 300 kWh a year") {
			t.Errorf("%s: %s", unit, got)
		}
	}
	for _, unit := range []string{"refrigerator", "chest freezer"} {
		c := applyAll(t, "unit "+unit, "worth age 7, repair-cost 100, replacement-price 700")
		if got := flat(c.Entries()[1].Reply); !strings.Contains(got, "Assumed life 13 years, expected of a machine of this kind (common practice for a refrigerator or freezer)") {
			t.Errorf("%s: %s", unit, got)
		}
	}
}

// Each sum shows the definitions that held when it was reckoned, though they
// were given another meaning since: arithmetic.
func TestSumsShowTheirDefinitions(t *testing.T) {
	c := applyAll(t, "def half(a) = a / 2", "let base = 120V", "half(base)", "def half(a) = a * 0.5", "let base = 240V", "half(base)", `expect half(base) > 100V "enough"`, "let most = half(base)", "3 + 4")
	want := map[int]string{
		3: "by half(a) = a / 2 (entry 1); base = 120 V (entry 2)",
		6: "by half(a) = a * 0.5 (entry 4); base = 240 V (entry 5)",
		7: "enough, by half(a) = a * 0.5 (entry 4); base = 240 V (entry 5)",
		8: "by half(a) = a * 0.5 (entry 4); base = 240 V (entry 5)",
		9: "",
	}
	for _, s := range c.Record().Sums {
		if w, ok := want[s.Entry]; ok && s.Meaning != w {
			t.Errorf("entry %d: %q, want %q", s.Entry, s.Meaning, w)
		}
	}
}

// However many definitions a sum uses, a few are shown and the others named.
func TestSumsShowFewDefinitions(t *testing.T) {
	lines, sum := []string{}, "0"
	for i := range 9 {
		lines = append(lines, "let x"+itoa(i)+" = "+itoa(i))
		sum += " + x" + itoa(i)
	}
	c := applyAll(t, append(lines, sum)...)
	list := c.Record().Sums
	if got, want := list[len(list)-1].Meaning, "by x0 = 0 (entry 1); x1 = 1 (entry 2); x2 = 2 (entry 3); x3 = 3 (entry 4); more in entries 5, 6, 7, 8, 9"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// A part's serial number has its own place, and parts are counted by their
// names.
func TestPartSerial(t *testing.T) {
	for _, x := range []struct{ line, name, serial string }{
		{"part control board SAMPLE-CB2 serial DEMO-B-0042, 1, 85", "control board SAMPLE-CB2", "DEMO-B-0042"},
		{"part compressor MADE-UP-9 S/N: DEMO 7, 1", "compressor MADE-UP-9", "DEMO 7"},
		{"part serial", "serial", ""},
		{"part board serial", "board serial", ""},
	} {
		r := applyAll(t, "fault does not cool", x.line).Record()
		if p := r.Parts[0]; p.Name != x.name || p.Serial != x.serial || strings.Contains(r.Header.Parts[0], "DEMO") {
			t.Errorf("%s: %+v, header %q", x.line, p, r.Header.Parts)
		}
	}
}
