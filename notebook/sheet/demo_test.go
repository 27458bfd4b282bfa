package sheet

import (
	"fmt"
	"math"
	"time"

	"ohmcall/notebook/record"
)

var start = time.Date(2026, 3, 12, 9, 5, 0, 0, time.FixedZone("", 3600))

func at(minutes int) time.Time { return start.Add(time.Duration(minutes) * time.Minute) }

// demo is an invented call with something in every part of the record.
func demo() *record.Record {
	r := &record.Record{
		Header: record.Header{Format: 1, State: "closed", Entries: 46, Started: "2026-03-12T09:05:00+01:00", Ended: "2026-03-12T12:41:00+01:00",
			Technician: "Ada Sample", Client: "Bakery Example & Sons", Unit: "Upright freezer", Model: "DEMO-UF200", Serial: "D-0001",
			Machine: "DEMO-C6", Result: "not proved", Minutes: 216, Cost: 46.5},
		Outcome: []record.Fact{
			{Label: "Complaint", Text: "hums and clicks off, not cold (taken as: hums, trips)"},
			{Label: "Cause found", Text: "start device open, by entries 19, 22 (an inference from the entries named)"},
			{Label: "Work and result", Text: "fitted a new start device; not proved yet: volts while it starts (volt line 112 start)"},
		},
		Identity: []record.Fact{
			{Label: "Technician", Text: "Ada Sample"}, {Label: "Client", Text: "Bakery Example & Sons"}, {Label: "Site", Text: "1 Sample Street, rear kitchen"},
			{Label: "Unit", Text: "Upright freezer"}, {Label: "Model", Text: "DEMO-UF200"}, {Label: "Serial", Text: "D-0001"},
			{Label: "Plate of comp", Text: "volts 115, hz 60, amps 1.2, lra 12, hp 1/6, gas R-600a"},
			{Label: "Meter, ohm", Text: "0.9 % of reading and 2 counts"}, {Label: "Probe leads", Text: "0.2 Ω, taken off every ohm reading"},
		},
		Alerts: []string{
			"Unsafe: earth: 0.9 Ω from plug pin to metal, over the limit of 0.1 Ω",
			"Expectation not met: the start winding is sound (entry 17)",
			"Missing: proof: volts while it starts (volt line 112 start)",
			"The clock goes back at entry 31; entry numbers give the order",
		},
		Cautions: []record.Note{
			{Entry: 8, Text: "Pull the plug and prove the unit dead before you touch a terminal.", Source: "common practice"},
			{Entry: 12, Text: "Discharge the capacitor through a resistor and measure it before you touch its terminals.", Source: "common practice"},
			{Entry: 15, Text: "The unit holds a flammable refrigerant: no flame or spark near it, and its circuit is for licensed hands.", Source: "common practice"},
		},
		Machines: []record.Machine{
			{Name: "comp", State: "sound", Settled: true,
				Pins:  []record.Pin{{Name: "A", Role: "start", Case: "OL (cold)"}, {Name: "B", Role: "common"}, {Name: "C", Role: "run", Case: "OL (cold)"}},
				Pairs: []record.Pair{{A: "A", B: "B", Ohms: "3.45 Ω"}, {A: "A", B: "C", Ohms: "5.9 Ω"}, {A: "B", B: "C", Ohms: "2.5 Ω"}},
				Notes: []string{"common to start and common to run add up to start to run within the meter's limits"}},
			{Name: "evap-fan", State: "incomplete",
				Pins:  []record.Pin{{Name: "white", Role: "common"}, {Name: "black", Role: "high"}, {Name: "blue"}, {Name: "red", Role: "low"}},
				Pairs: []record.Pair{{A: "white", B: "black", Ohms: "48.2 Ω"}, {A: "white", B: "red", Ohms: "96 Ω"}, {A: "black", B: "red", Ohms: "47.9 Ω"}},
				Notes: []string{"blue was read to no other lead"}},
		},
		Wiring: []record.Wire{
			{Entry: 26, Wire: "brown", Role: "start", At: "A"}, {Entry: 27, Wire: "grey", Role: "run", At: "C"},
			{Wire: "-", Role: "-", Note: "no wire of the part goes to common"},
		},
		Verdicts: []record.Verdict{
			{Subject: "comp windings", Word: "sound", Text: "the two windings add up to the pair across both", Limit: "5.95 Ω ± 0.12 Ω", Source: "common practice", Margin: "1.4 × the meter's limit", Entries: []int{13, 14, 15}},
			{Subject: "start device", Word: "failed", Text: "reads open cold", Limit: "2 to 50 Ω cold", Source: "common practice", Margin: "outside by over 99 × the meter's limit", Entries: []int{19, 22}},
			{Subject: "run capacitor C1", Word: "suspect", Text: "at the low end of its tolerance", Limit: "10.8 to 13.2 µF", Source: "common practice", Margin: "0.4 × the meter's limit", Also: []string{"a limit of ±5 % would fail it"}, Entries: []int{18}},
			{Subject: "earth", Word: "failed", Text: "0.9 Ω from plug pin to metal", Limit: "0.1 Ω and the cord's own", Source: "IEC 60335-1 cl. 27.5 (from memory)", Margin: "outside by 12 × the meter's limit", Entries: []int{24}},
			{Subject: "overload", Word: "cannot tell", Text: "it was hot when read", Limit: "closed when cold", Source: "common practice", Entries: []int{21}},
			{Subject: "supply", Word: "sound", Text: "118.2 V with nothing running", Limit: "104 to 127 V", Source: "common practice", Margin: "6.2 × the meter's limit", Entries: []int{9}},
		},
		Sums: []record.Sum{
			{Entry: 16, Text: "R(A,B) + R(B,C)", Value: "5.95 Ω ± 0.07 Ω (k=2)", Meaning: "what start to run should read"},
			{Entry: 17, Text: "R(A,C) > 6 ohm", Value: "not met", Meaning: "the start winding is sound", Met: "not met"},
			{Entry: 28, Text: "power / volts", Value: "0.93 A", Meaning: "running amps from the plate", Struck: "wrong plate"},
			{Entry: 40, Text: "amps < 1.2 A", Value: "met", Meaning: "it runs below its plate amps", Met: "met"},
		},
		Next: "Read the volts while it starts: volt line 112 start",
		Parts: []record.Part{
			{Entry: 25, Name: "start device, 3 pins", Count: 1, Price: 34.5, Priced: true},
			{Entry: 29, Name: "cord clamp", Count: 2, Price: 6, Priced: true},
			{Entry: 30, Name: "run capacitor 12 µF", Count: 1, Price: 18, Priced: true, Struck: "not used after all"},
			{Entry: 33, Name: "cable ties", Count: 4},
		},
		Work: []record.Work{
			{Entry: 8, At: at(6), Kind: "safe", Text: "unplugged, proved dead at the terminals"},
			{Entry: 11, At: at(9), Kind: "saw", Text: "start device rattles, burnt smell"},
			{Entry: 25, At: at(40), Kind: "did", Text: "fitted a new start device"},
			{Entry: 34, At: at(58), Kind: "saw", Text: "starts and runs"},
			{Entry: 35, At: at(59), Kind: "note", Text: "door gasket is torn at the lower corner", Struck: "that was the other freezer"},
		},
		Proof: []record.Fact{
			{Label: "Earth from plug pin to metal", Text: "shown"}, {Label: "The start seen", Text: "shown"}, {Label: "Start surge", Text: "shown"},
			{Label: "Running amps", Text: "shown"}, {Label: "Volts while it starts", Text: "not shown"}, {Label: "Three or more timed temperatures that lead to the target", Text: "shown"},
		},
		Missing: []string{"proof: volts while it starts (volt line 112 start)"},
	}
	for i, s := range []string{"supported", "open", "open", "ruled out", "ruled out", "ruled out", "ruled out"} {
		name := []string{"start device open", "run capacitor weak", "low volts under load", "winding open", "winding to case", "no supply", "control does not call"}[i]
		c := record.Cause{Code: fmt.Sprint("cause-", i), Name: name, State: s}
		if s == "supported" {
			c.For = []int{19, 22}
		} else if s == "ruled out" {
			c.Against = []int{9, 13 + i}
		}
		r.Causes = append(r.Causes, c)
	}
	readings := []record.Reading{
		{Kind: "volt", A: "line", Shown: "118.2 V"}, {Kind: "temp", A: "freezer", Shown: "14 °F"},
		{Kind: "ohm", Of: "comp", A: "A", B: "B", Shown: "3.45 Ω", Condition: "cold"}, {Kind: "ohm", Of: "comp", A: "B", B: "C", Shown: "2.5 Ω", Condition: "cold"},
		{Kind: "ohm", Of: "comp", A: "A", B: "C", Shown: "59 Ω", Condition: "cold", Struck: "probe slipped"}, {Kind: "ohm", Of: "comp", A: "A", B: "C", Shown: "5.9 Ω", Condition: "cold"},
		{Kind: "ohm", Of: "comp", A: "A", B: "case", Shown: "OL", Condition: "cold", Over: true}, {Kind: "ohm", Of: "comp", A: "C", B: "case", Shown: "OL", Condition: "cold", Over: true},
		{Kind: "ohm", A: "start device", Shown: "OL", Condition: "cold", Over: true}, {Kind: "mfd", A: "C1", Shown: "10.9 µF"},
		{Kind: "ohm", A: "overload", Shown: "OL", Condition: "hot", Over: true}, {Kind: "ohm", A: "earth", Shown: "0.9 Ω"},
		{Kind: "amp", A: "comp", Shown: "11.4 A", Condition: "peak"}, {Kind: "amp", A: "comp", Shown: "1.05 A", Condition: "run"},
	}
	curve := record.Curve{Place: "freezer", Unit: "F", Target: -17.8, Verdict: "on course",
		Reason: "the readings settle at -8 °F, which is below 0 °F, after about 190 min (common practice)",
		Fit:    &record.Fit{Final: -22.4, Start: 18.2, Tau: 74}}
	for i, m := range []float64{0, 20, 45, 75, 105, 140} {
		c := -22.4 + 40.6*math.Exp(-m/74) + []float64{.3, -.4, .2, .1, -.3, .2}[i]
		curve.Points = append(curve.Points, record.Point{Minutes: m, Celsius: c, Entry: 36 + i})
		readings = append(readings, record.Reading{Kind: "temp", A: "freezer", Shown: fmt.Sprintf("%.0f °F", c*1.8+32), Condition: "after"})
	}
	r.Curves = []record.Curve{curve}
	for i := range readings {
		readings[i].Entry, readings[i].At = 9+i, at(7+i*9)
		r.Readings = append(r.Readings, readings[i])
	}
	for n := 1; n <= 46; n++ {
		e := record.Entry{N: n, At: at(n * 4), Kind: "ohm", Line: fmt.Sprintf("ohm A B %d.5", n), Reply: []string{fmt.Sprintf("comp A to B: %d.5 Ω.", n), "Roles: incomplete."}}
		if n == 13 {
			e.Struck = "probe slipped"
		}
		r.Log = append(r.Log, e)
	}
	return r
}

var demoRemarks = map[string]string{
	"readings": "## Checked by the workshop\n\nThe *second* reading of start to run counts. ~~Order a compressor.~~\n\n| Part | Stock |\n| --- | ---: |\n| start device | 3 |\n| overload | 0 |\n",
	"proof":    "Call back on Monday:\n\n1. volts while it starts\n2. earth, after the cord is changed\n\nSee [the manual](http://example.test/manual) and `show roles`.",
	"":         "> Keep for the insurer.",
}
