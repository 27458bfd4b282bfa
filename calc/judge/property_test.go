package judge

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// draw makes a random reading around a scale, sometimes open or exact.
func draw(r *rand.Rand, scale float64) measure.Value {
	switch r.IntN(12) {
	case 0:
		return measure.Open(1 + r.IntN(40))
	case 1:
		return measure.Exact(scale)
	}
	x := scale * math.Pow(10, 3*r.Float64()-1.5)
	v := measure.Within(x, x*math.Pow(10, -2.5*r.Float64()-0.5)+0.01*scale*r.Float64())
	v.Entry = 1 + r.IntN(40)
	return v
}

// randomVerdicts judges one random reading of every kind there is.
func randomVerdicts(r *rand.Rand) []verdict.Verdict {
	pick := func(x ...float64) float64 { return x[r.IntN(len(x))] }
	state := []State{Cold, Hot, ""}[r.IntN(3)]
	_, load := CapUnderLoad(UnderLoadIn{Name: "C1", Amps: draw(r, 4), Volts: draw(r, 330), Hertz: pick(0, 50, 60),
		Marked: pick(0, 35), Tolerance: pick(0, 3, 6)})
	rules := []string{"", "1000/V", "0.5M", "1M+kV", "2M", "5M", "none"}
	table, _, _ := NewTable(curve)
	t := draw(r, 10)
	seq := []measure.Value{draw(r, pick(0.3, 100)), draw(r, pick(0.3, 10_000)), draw(r, 1e6)}
	return []verdict.Verdict{
		Insulation(InsulationIn{Pin: "A", Ohms: draw(r, 1e6), TestVolts: pick(0, 100, 250, 500, 1000), RatedVolts: pick(0, 115, 460),
			Rule: rules[r.IntN(len(rules))], HouseOhms: pick(0, 0, 3e6)}),
		RunCap(RunCapIn{Name: "C1 fan section", Measured: draw(r, 35), Marked: pick(0, 35), Tolerance: pick(0, 3, 5, 6, 10)}),
		StartCap(StartCapIn{Name: "C2", Measured: draw(r, 97), Low: pick(0, 88), High: pick(0, 108)}),
		load,
		CapOhms(CapOhmsIn{Name: "C2", Kind: []CapKind{RunKind, StartKind}[r.IntN(2)], Readings: seq[:r.IntN(4)], Bleeder: pick(0, 15_000)}),
		Neutral(draw(r, 10)),
		PTC(PTCIn{Name: "P", Ohms: draw(r, 10), State: state, Volts: pick(0, 115, 230)}),
		CurrentRelay(RelayIn{Name: "K", Part: []RelayPart{Coil, Contact, Inverted}[r.IntN(3)], Ohms: draw(r, 1)}),
		PotentialRelay(RelayIn{Name: "K", Part: []RelayPart{Coil, Contact}[r.IntN(2)], Ohms: draw(r, pick(1, 5000))}),
		CurrentRelayWhole("K", draw(r, 1), draw(r, 1), draw(r, 1)),
		PotentialRelayWhole("K", draw(r, 5000), draw(r, 1)),
		Overload(OverloadIn{Ohms: draw(r, 0.5), State: state}),
		Heater(HeaterIn{Name: "defrost", Ohms: draw(r, 32), Watts: pick(0, 450, 150, 20), Volts: pick(0, 120), Hot: r.IntN(2) == 0,
			Tolerance: pick(0, 5), Series: []Series{Alone, WithThermostat, ""}[r.IntN(3)]}),
		HeaterToCase("defrost", draw(r, 1e6), pick(0, 500), false),
		Switch(SwitchIn{Path: []Path{Thermostat, Limit, Switched, Speed, Fuse, Cord}[r.IntN(6)], Ohms: draw(r, 0.5), Want: []string{"", "open", "closed"}[r.IntN(3)]}),
		NTC(NTCIn{Name: "evaporator", Ohms: draw(r, 15e3), Celsius: t, R25: pick(0, 10_000), Beta: 3977}),
		NTC(NTCIn{Ohms: draw(r, 15e3), Celsius: t, Table: table}),
		Platinum(PlatinumIn{Ohms: draw(r, 105), Celsius: t, R0: pick(0, 100), Class: []string{"", "A", "B", "C"}[r.IntN(4)]}),
		Supply(SupplyIn{Place: "line", Volts: draw(r, 120), Nominal: pick(0, 115, 120, 230, 240), Edition: []string{"", "service", "plate"}[r.IntN(3)]}),
		Sag(SagIn{Place: "line", NoLoad: draw(r, 120), Loaded: draw(r, 110), Amps: draw(r, 10), Starting: r.IntN(2) == 0, CountsHalf: pick(0, 0.3)}),
		Amps(AmpsIn{Run: draw(r, pick(0.001, 2)), Plate: pick(0, 1.2), LRA: pick(0, 12)}),
		Surge(SurgeIn{Peak: draw(r, 10), Plate: pick(0, 1.2), LRA: pick(0, 12), Then: []Course{Unwatched, Started, Stayed, NotStarted}[r.IntN(4)]}),
		Trip(TripIn{Seconds: draw(r, 10), Amps: draw(r, 8), Plate: pick(0, 1.2), LRA: pick(0, 12)}),
		Earth(EarthIn{Part: "cabinet", Ohms: draw(r, 0.2), WithCord: r.IntN(2) == 0, TestAmps: pick(0, 10, 25)}),
		Plug(draw(r, 2)),
		Feed(FeedIn{Place: "comp", Volts: draw(r, 60), Rated: pick(0, 115), Called: r.IntN(2) == 0, Fed: "control-calling", Unfed: "control-not-calling"}),
		Pumping(PumpingIn{Suction: draw(r, 5), Discharge: draw(r, 60), Gas: "R-600a", Air: measure.Within(20+20*r.Float64(), 1), AirName: "room", For: []Evaporator{"", CoolsAir, Freezes}[r.IntN(3)]}),
		AtRest(AtRestIn{PSI: draw(r, 36), Celsius: measure.Within(40*r.Float64(), r.Float64()), Gas: []string{"", "R-600a", "R600a", "R-404A"}[r.IntN(4)]}),
		TemperatureTarget([]Space{FreshFood, Freezer}[r.IntN(2)], measure.Within(60*r.Float64()-30, r.Float64())),
	}
}

// Whatever is judged: a word of the four, one plain sentence, a source with
// every judgement, margins that agree with the word, known cautions.
func TestEveryVerdictKeepsThePromises(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	words := map[verdict.Word]int{}
	facts := map[string]bool{}
	for range 8_000 {
		for _, v := range randomVerdicts(r) {
			words[v.Word]++
			if n := utf8.RuneCountInString(v.Text); n == 0 || n > 120 || strings.HasSuffix(v.Text, ".") || strings.Contains(v.Text, ". ") {
				t.Fatalf("%s: %q is not one sentence of at most 120 runes (%d)", v.Subject, v.Text, n)
			}
			if strings.Contains(v.Text+v.Limit, "NaN") || strings.Contains(v.Text+v.Limit, "Inf") || strings.Contains(v.Text, "%!") {
				t.Fatalf("%s: %q, limit %q", v.Subject, v.Text, v.Limit)
			}
			if v.Word != verdict.CannotTell && (v.Source == "" || v.Limit == "" && v.Judged) {
				t.Fatalf("%s: %q has source %q and limit %q", v.Subject, v.Text, v.Source, v.Limit)
			}
			if v.Judged && v.Word == verdict.Sound && v.Margin < 1-1e-6 || v.Judged && v.Word == verdict.Failed && v.Margin > -1+1e-6 {
				t.Fatalf("%s: %s at a margin of %v (%s, %s)", v.Subject, v.Word, v.Margin, v.Text, v.Limit)
			}
			if math.IsNaN(v.Margin) || math.IsInf(v.Margin, 0) {
				t.Fatalf("%s: margin %v", v.Subject, v.Margin)
			}
			for _, c := range v.Caution {
				if _, ok := caution.Text(c); !ok {
					t.Fatalf("%s: no caution %q", v.Subject, c)
				}
			}
			for _, f := range v.Fact {
				facts[f] = true
				if v.Word == verdict.CannotTell && (strings.HasSuffix(f, "-suspect") || strings.HasSuffix(f, "-failed") || strings.HasSuffix(f, "-sound")) {
					t.Fatalf("%s: %s with the fact %s", v.Subject, v.Word, f)
				}
				bad := strings.HasSuffix(f, "-failed") || strings.HasSuffix(f, "-suspect") || strings.HasSuffix(f, "-grounded")
				if v.Word == verdict.Sound && bad || v.Word == verdict.Failed && strings.HasSuffix(f, "-sound") {
					t.Fatalf("%s: %s with the fact %s", v.Subject, v.Word, f)
				}
			}
		}
	}
	for _, w := range []verdict.Word{verdict.Sound, verdict.Suspect, verdict.Failed, verdict.CannotTell} {
		if words[w] == 0 {
			t.Errorf("nothing was %s", w)
		}
	}
	for _, f := range strings.Fields(vocabulary) {
		if !facts[f] {
			t.Errorf("the fact %s was never raised", f)
		}
		delete(facts, f)
	}
	for f := range facts {
		t.Errorf("the fact %s is not of the shared vocabulary", f)
	}
}

// vocabulary is what the causes may rely on from this package.
const vocabulary = `sensor-open sensor-reads-cold sensor-reads-warm insulation-sound insulation-no-gross-fault insulation-suspect insulation-failed
	supply-sound supply-low supply-usable supply-high supply-far-over neutral-poor supply-absent sag-sound sag-deep
	start-cap-sound start-cap-suspect start-cap-failed start-cap-open start-cap-shorted run-cap-sound run-cap-suspect run-cap-failed
	start-device-sound start-device-suspect start-device-failed overload-open overload-closed
	surge-sound amps-locked-rotor windings-odd amps-sound amps-agree amps-high amps-low amps-none
	heater-sound heater-open heater-failed heater-suspect heater-insulation-sound heater-grounded
	thermostat-open thermostat-closed thermostat-stuck-closed thermostat-opens limit-closed limit-open
	switch-closed switch-open fuse-sound fuse-open cord-sound cord-open
	sensor-sound sensor-failed sensor-suspect earth-continuity-sound earth-continuity-failed temp-at-target temp-above
	plug-to-plug-sound plug-to-plug-shorted control-calling control-not-calling
	pressures-apart pressures-level suction-low suction-normal suction-high discharge-beyond standing-pressure-sound standing-pressure-high standing-pressure-none
	insulation-undecided supply-undecided sag-undecided start-cap-undecided run-cap-undecided start-device-undecided
	heater-undecided heater-insulation-undecided heater-insulation-suspect speed-switch-closed speed-switch-open speed-switch-undecided thermostat-undecided limit-undecided switch-undecided fuse-undecided
	cord-undecided sensor-undecided earth-undecided`
