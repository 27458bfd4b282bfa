// Package sample makes notebooks of invented repair calls, for tests and
// benchmarks that need thousands. People, firms, models and serial numbers
// do not exist. A notebook depends only on its seed and number.
//
// The typed lines are of the notebook's language. The replies and the parts
// above the log are made up to be of the usual size and kind; they are not
// what a replay of the lines would give.
package sample

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// machine is an invented compressor with the resistances it was made with.
type machine struct {
	model      string
	run, start float64 // Ω, from common
}

var machines = []machine{
	{"MOCK-C5", 7.9, 19.4}, {"MOCK-C7", 4.6, 14.2}, {"MOCK-C9", 2.5, 8.8}, {"SHAM-K2", 11.6, 24.0},
	{"SHAM-K4", 5.3, 12.7}, {"FICT-V10", 1.4, 5.1}, {"FICT-V14", 0.9, 3.6}, {"NONE-R1", 16.8, 31.5},
}

var (
	technicians = []string{"Tilda Tester", "Max Muster", "Ina Invented", "Otto Ohmless"}
	clients     = []string{"Petra Placeholder", "Canteen Nowhere", "Bakery Figment", "Ida Imaginary", "Hotel Example", "Paul Pretend", "School Sample"}
	units       = []string{"refrigerator, bottom freezer", "chest freezer", "upright freezer", "drinks cooler", "counter refrigerator"}
	models      = []string{"INVENTED-300", "INVENTED-450", "UNREAL-12", "UNREAL-20 X", "PRETEND-7"}
)

// fault is an invented course of a call.
type fault struct {
	words, kind, cause, saw, did, part string
	price                              float64
}

var faults = []fault{
	{"clicks and does not cool", "no-start", "start device or relay failed", "hums, then clicks off", "start device replaced", "start device", 24.5},
	{"dead, light inside is on", "no-start", "run capacitor failed", "no hum at all", "run capacitor replaced", "run capacitor 4 uF", 11.2},
	{"runs all day and stays warm", "no-cool", "condenser matted or without room to breathe", "condenser full of lint", "condenser brushed and blown out", "", 0},
	{"food thaws in the back", "no-cool", "evaporator fan motor failed or jammed", "evaporator fan stands still", "evaporator fan motor replaced", "fan motor", 38},
	{"water under the drawers", "leaks-ices", "defrost drain blocked", "ice over the drain", "drain thawed and flushed", "", 0},
	{"hums and trips", "hums-trips", "", "hums, then clicks off", "", "", 0},
}

// Record makes the record of one closed call.
func Record(seed uint64, n int) *record.Record {
	r := rand.New(rand.NewPCG(seed, uint64(n)))
	start := time.Date(2026, 1, 2, 7+r.IntN(10), r.IntN(60), 0, 0, time.FixedZone("", 3600)).AddDate(0, 0, int(uint(n)*7919%365))
	b := &builder{rec: &record.Record{}, at: start, r: r}
	m, f := machines[r.IntN(len(machines))], faults[r.IntN(len(faults))]
	serial := n
	if r.IntN(12) == 0 {
		serial = n / 2 // another call for an appliance seen before
	}
	h := &b.rec.Header
	h.Technician, h.Client = pick(r, technicians), pick(r, clients)+" "+strconv.Itoa(r.IntN(90)+10)
	h.Site = strconv.Itoa(r.IntN(200)+1) + " Sample Street"
	its := rand.New(rand.NewPCG(seed, uint64(serial))) // what the appliance is goes with its number
	h.Unit, h.Model, h.Serial = pick(its, units), pick(its, models), fmt.Sprintf("DEMO-%06d", serial)
	h.Machine, h.Complaint, h.Kind, h.Cause = m.model, f.words, f.kind, f.cause

	b.who(h)
	b.evidence(m, f)
	b.repair(f)
	b.finish(f)
	return b.rec
}

// File makes one closed notebook and the name it would have in a folder, by
// month.
func File(seed uint64, n int) (name string, content []byte) {
	rec := Record(seed, n)
	return filepath.Join(rec.Header.Started[:7], fmt.Sprintf("%s-%06d.md", rec.Header.Started[:10], n)), page.Render(rec, nil)
}

// Write puts the notebooks 0 to n-1 into a folder and returns their size in
// bytes.
func Write(dir string, seed uint64, n int) (int64, error) {
	var size int64
	for i := range n {
		name, content := File(seed, i)
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
			return size, err
		}
		if err := os.WriteFile(path, content, 0o600); err != nil {
			return size, err
		}
		size += int64(len(content))
	}
	return size, nil
}

func pick(r *rand.Rand, list []string) string { return list[r.IntN(len(list))] }

func round(x float64) float64 { return math.Round(x*100) / 100 }

func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
