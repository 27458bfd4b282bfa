package sample

import (
	"cmp"
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// builder types a call.
type builder struct {
	rec *record.Record
	at  time.Time
	r   *rand.Rand
}

// line adds an entry and returns its number.
func (b *builder) line(kind, text string, reply ...string) int {
	b.at = b.at.Add(time.Duration(15+b.r.IntN(80)) * time.Second)
	n := len(b.rec.Log) + 1
	b.rec.Log = append(b.rec.Log, record.Entry{N: n, At: b.at, Line: text, Kind: kind, Reply: reply})
	return n
}

// read adds a reading with its line.
func (b *builder) read(kind, of, x, y string, value float64, unit, shown, cond string, reply ...string) int {
	text := kind + " " + x
	if y != "" {
		text += " " + y
	}
	text += " " + number(value)
	if kind == "temp" {
		text += "C"
	}
	if cond != "" {
		text += " " + cond
	}
	n := b.line(kind, text, reply...)
	b.rec.Readings = append(b.rec.Readings, record.Reading{Entry: n, At: b.at, Kind: kind, Of: of, A: x, B: y, Value: value, Unit: unit,
		U: value * 0.01 / math.Sqrt(3), Shown: number(value) + " " + shown, Condition: cond})
	return n
}

func (b *builder) judge(subject, word, text, limit string, entries ...int) {
	b.rec.Verdicts = append(b.rec.Verdicts, record.Verdict{Subject: subject, Word: word, Text: text, Limit: limit, Source: "common practice",
		Margin: number(round(1+9*b.r.Float64())) + " × the meter's limit", Entries: entries})
}

func (b *builder) work(kind, text string, reply ...string) {
	n := b.line(kind, kind+" "+text, reply...)
	b.rec.Work = append(b.rec.Work, record.Work{Entry: n, At: b.at, Kind: kind, Text: text})
}

func (b *builder) who(h *record.Header) {
	for _, f := range []struct{ word, label, text string }{
		{"tech", "Technician", h.Technician}, {"client", "Client", h.Client}, {"site", "Site", h.Site}, {"unit", "Unit", h.Unit},
		{"model", "Model", h.Model}, {"serial", "Serial", h.Serial}, {"fault", "Complaint", h.Complaint},
	} {
		b.line(f.word, f.word+" "+f.text, f.label+": "+f.text+".")
		b.rec.Identity = append(b.rec.Identity, record.Fact{Label: f.label, Text: f.text})
	}
	b.line("plate", "plate model "+h.Machine+", volts 230, hz 50, gas R-600a", "Plate of compressor: model "+h.Machine+", volts 230, hz 50, gas R-600a.",
		"Flammable refrigerant: no flame, no spark, only work by a licensed technician on the circuit.")
	b.rec.Identity = append(b.rec.Identity, record.Fact{Label: "Plate of compressor", Text: "model " + h.Machine + ", volts 230, hz 50, gas R-600a"})
	b.line("meter", "meter ohm 0.9% 2", "Meter, ohm: 0.9 % of reading and 2 counts.")
}

func (b *builder) evidence(m machine, f fault) {
	b.work("saw", f.saw, "Seen: "+f.saw+".", "Supported so far: "+cmp.Or(f.cause, "nothing alone")+" (an inference from entry "+strconv.Itoa(len(b.rec.Log)+1)+").")
	v := b.read("volt", "", "L", "N", round(222+12*b.r.Float64()), "V", "V", "", "Supply: within 10 % of the plate.")
	b.judge("supply", "good", "within 10 % of the plate", "207 V to 253 V", v)
	b.work("safe", "plug pulled, proved dead", "Isolated and proved dead.")
	b.rec.Cautions = append(b.rec.Cautions, record.Note{Entry: len(b.rec.Log), Text: "Discharge the capacitor through a resistor before touching its terminals", Source: "common practice"})
	wobble := func(x float64) float64 { return round(x * (0.97 + 0.06*b.r.Float64())) }
	run, start := wobble(m.run), wobble(m.start)
	both := round(run + start)
	e1 := b.read("ohm", "compressor", "A", "B", run, "Ohm", "Ω", "cold", "Two pairs are still wanted: A C, B C.")
	e2 := b.read("ohm", "compressor", "A", "C", start, "Ohm", "Ω", "cold", "One pair is still wanted: B C.")
	e3 := b.read("ohm", "compressor", "B", "C", both, "Ohm", "Ω", "cold", "A is common, B is run, C is start: the highest pair lies opposite common, the lower of the others is the run winding.",
		fmt.Sprintf("The two windings add up: %s + %s = %s Ω.", number(run), number(start), number(both)))
	b.rec.Machines = append(b.rec.Machines, record.Machine{Name: "compressor", State: "sound", Settled: true,
		Pins: []record.Pin{{Name: "A", Role: "common", Case: "over range"}, {Name: "B", Role: "run"}, {Name: "C", Role: "start"}},
		Pairs: []record.Pair{{A: "A", B: "B", Ohms: number(run) + " Ω"}, {A: "A", B: "C", Ohms: number(start) + " Ω"},
			{A: "B", B: "C", Ohms: number(both) + " Ω"}}})
	b.judge("windings of compressor", "good", "the pairs add up and none is open", "sum within the meter's limits", e1, e2, e3)
	b.rec.Header.Ohms = []string{"common-run " + number(run), "common-start " + number(start)}
	c := b.line("ohm", "ohm A case OL", "No path to the case within the meter's range.")
	b.rec.Readings = append(b.rec.Readings, record.Reading{Entry: c, At: b.at, Kind: "ohm", Of: "compressor", A: "A", B: "case", Unit: "Ohm", Over: true, Shown: "over range"})
	b.judge("winding to case", "good", "no path within the meter's range; an insulation tester sees more", "above 2 MΩ", c)
	n := b.line("sum", "230V / "+number(run)+"ohm", "= "+number(round(230/run))+" A ± 0.6 A (k=2)")
	b.rec.Sums = append(b.rec.Sums, record.Sum{Entry: n, Text: "230V / " + number(run) + "ohm", Value: number(round(230/run)) + " A", Number: round(230 / run), Unit: "A", U: 0.3})
}

func (b *builder) repair(f fault) {
	state := "supported"
	if f.cause == "" {
		state = "open"
	}
	b.rec.Causes = append(b.rec.Causes,
		record.Cause{Code: f.kind, Name: cmp.Or(f.cause, "cause not placed"), State: state, For: []int{10, 14}},
		record.Cause{Code: "winding-open", Name: "winding open", State: "ruled out", Against: []int{13, 14, 15}},
		record.Cause{Code: "winding-grounded", Name: "winding grounded to the case", State: "ruled out", Against: []int{16}})
	if f.did == "" {
		b.rec.Missing = append(b.rec.Missing, "a cause that stands alone", "volts while it starts (volt line 112 start)")
		return
	}
	b.work("did", f.did, "Done: "+f.did+".", "Wanted as proof: earth, the start seen, running amps, three timed temperatures.")
	if f.part != "" {
		n := b.line("part", fmt.Sprintf("part %s, 1, %s", f.part, number(f.price)), "Part: 1 x "+f.part+", "+record.Money(f.price)+".")
		b.rec.Parts = append(b.rec.Parts, record.Part{Entry: n, Name: f.part, Count: 1, Price: f.price, Priced: true})
		b.rec.Header.Parts, b.rec.Header.Cost = []string{"1 x " + f.part}, f.price
	}
	e := b.read("ohm", "", "earth", "", round(0.05+0.04*b.r.Float64()), "Ohm", "Ω", "", "Earth: below the limit.")
	b.judge("earth continuity", "good", "plug pin to metal below the limit", "0.1 Ω", e)
	a := b.read("amp", "", "comp", "", round(0.8+0.5*b.r.Float64()), "A", "A", "run", "Running amps: below the plate.")
	b.judge("running amps", "good", "below the plate's rated amps", "1.3 A", a)
	t := 9 + 6*b.r.Float64()
	for i := range 4 {
		b.at = b.at.Add(12 * time.Minute)
		b.read("temp", "", "fridge", "", round(t-2.4*float64(i)), "Cel", "°C", "after", "Pull-down of fridge: on course.")
	}
	b.rec.Proof = append(b.rec.Proof, record.Fact{Label: "Earth from plug pin to metal", Text: "shown"}, record.Fact{Label: "Running amps", Text: "shown"})
	if b.r.IntN(5) == 0 {
		b.rec.Missing = append(b.rec.Missing, "proof: the start seen (saw starts)")
	}
}

func (b *builder) finish(f fault) {
	b.line("close", "close", "The call is closed.")
	h := &b.rec.Header
	h.State, h.Entries, h.Missing = "closed", len(b.rec.Log), b.rec.Missing
	h.Started, h.Ended = b.rec.Log[0].At.Format(page.TimeLayout), b.at.Format(page.TimeLayout)
	h.Minutes = int(math.Round(b.at.Sub(b.rec.Log[0].At).Minutes()))
	switch {
	case f.did == "" && b.r.IntN(3) == 0:
		h.Result, h.Unsafe = "unsafe", []string{"dead tests without a word that the unit was made safe"}
	case f.did == "":
		h.Result = "no repair"
	case len(h.Missing) > 0:
		h.Result = "not proved"
	default:
		h.Result = "proved"
	}
	for _, s := range h.Unsafe {
		b.rec.Alerts = append(b.rec.Alerts, "Unsafe: "+s)
	}
	for _, s := range h.Missing {
		b.rec.Alerts = append(b.rec.Alerts, "Missing: "+s)
	}
	b.rec.Outcome = []record.Fact{{Label: "Complaint", Text: f.words}, {Label: "Cause found", Text: cmp.Or(f.cause, "not found") + " (an inference from the entries named)"},
		{Label: "Work and result", Text: cmp.Or(f.did, "no repair written down") + "; " + h.Result}}
}
