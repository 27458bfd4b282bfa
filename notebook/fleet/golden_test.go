package fleet

import (
	"flag"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"ohmcall/notebook/record"
)

var update = flag.Bool("update", false, "write the golden files anew")

func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != string(want) {
		t.Errorf("%s differs; got:\n%s", name, got)
	}
}

// fixture is a small set of calls with something of everything.
func fixture() []Item {
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.FixedZone("", 3600))
	h := func(day, client, serial, result string, more func(*record.Header)) record.Header {
		h := record.Header{Format: 1, State: "closed", Entries: 3, Started: day + "T09:00:00+01:00", Ended: day + "T10:10:00+01:00", Technician: "Tilda Tester",
			Client: client, Site: "12 Sample Street", Unit: "chest freezer", Model: "INVENTED-300", Serial: serial, Machine: "MOCK-C7",
			Complaint: "clicks and does not cool", Kind: "no-start", Result: result, Minutes: 70}
		if more != nil {
			more(&h)
		}
		return h
	}
	rec := &record.Record{
		Readings: []record.Reading{
			{Entry: 1, At: at, Kind: "ohm", Of: "compressor", A: "A", B: "B", Value: 4.6, Unit: "Ohm", U: 0.035, Shown: "4.6 Ω", Condition: "cold"},
			{Entry: 1, At: at, Kind: "ohm", Of: "compressor", A: "A", B: "case", Unit: "Ohm", Over: true, Shown: "over range"},
			{Entry: 2, At: at, Kind: "temp", A: "freezer", Value: -18.5, Unit: "Cel", U: 0.6, Shown: "-18.5 °C", Struck: "=wrong, \"place\""},
		},
		Verdicts: []record.Verdict{{Subject: "windings", Word: "good", Text: "they add up", Limit: "within ±2 %", Source: "common practice",
			Margin: "3 × the meter's limit", Also: []string{"cold", "dry"}, Entries: []int{1, 2}}},
		Sums: []record.Sum{{Entry: 2, Text: "-2 * 3", Value: "-6", Number: -6, Unit: "1"},
			{Entry: 3, Text: "i < 2A", Value: "met", Meaning: "amps below plate", Met: "met"}},
		Parts: []record.Part{{Entry: 3, Name: "start device", Count: 1, Price: 24.5, Priced: true}, {Entry: 3, Name: "solder", Count: 0.5}},
		Log:   []record.Entry{{N: 1, At: at, Line: "ohm A B 4.6, A case OL", Kind: "ohm", Reply: []string{"one", "two"}}},
	}
	return []Item{
		{Path: "n/a.md", Rel: "a.md", ID: "a1", State: Trusted, Record: rec, Header: h("2026-03-02", "Petra Placeholder", "DEMO-1", "proved", func(h *record.Header) {
			h.Cause, h.Cost, h.Parts, h.Ohms = "start device or relay failed", 24.5, []string{"1 x start device", "0.5 x solder"}, []string{"common-run 4.6"}
		})},
		{Path: "n/b.md", Rel: "b.md", ID: "b2", State: Trusted, Header: h("2026-04-01", "Petra Placeholder", "demo-1 ", "not proved", func(h *record.Header) {
			h.Missing, h.Parts, h.Cost, h.Unpriced, h.Technician = []string{"proof: the start seen"}, []string{"2 x Start Device"}, 49, 1, "Max Muster"
		})},
		{Path: "n/c.md", Rel: "c.md", ID: "c3", State: Changed, Reason: "the log is not what was closed", Header: h("2026-05-02", "=HYPERLINK(\"x\")", "DEMO-1", "unsafe", func(h *record.Header) {
			h.Unsafe, h.Cause, h.Model = []string{"winding to case: grounded | really"}, "winding grounded to the case", "UNREAL-12"
		})},
		{Path: "n/d.md", Rel: "d.md", ID: "d4", State: Open, Reason: "never closed", Header: record.Header{Format: 1, State: "open"}},
		{Path: "n/README.md", Rel: "README.md", State: Foreign, Reason: "not a notebook"},
		{Path: "n/e\n.md", Rel: "e\n.md", State: Bad, Reason: "cut off inside its front matter"},
	}
}

func fixtureItems() func(func(Item) bool) { return slices.Values(fixture()) }
