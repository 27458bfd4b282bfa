package judge

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// judgement is one judge with everything but its readings fixed, and the scales
// on which these are drawn.
type judgement struct {
	name   string
	scales []float64
	of     func(v []measure.Value) verdict.Verdict
}

// judgements lists every judge of this package that holds a reading against a
// limit, in each of its conditions.
func judgements(t testing.TB) []judgement {
	t.Helper()
	var out []judgement
	one := func(name string, scale float64, of func(v measure.Value) verdict.Verdict) {
		out = append(out, judgement{name, []float64{scale}, func(v []measure.Value) verdict.Verdict { return of(v[0]) }})
	}
	for _, r := range insulationRules {
		for _, volts := range []float64{0, 100, 500} {
			one("insulation "+r.Code, 1e6, func(v measure.Value) verdict.Verdict {
				return Insulation(InsulationIn{Pin: "A", Ohms: v, TestVolts: volts, RatedVolts: 115, Rule: r.Code})
			})
		}
	}
	one("insulation, no house rule", 1e6, func(v measure.Value) verdict.Verdict {
		return Insulation(InsulationIn{Pin: "A", Ohms: v, TestVolts: 500, RatedVolts: 115})
	})
	for _, tol := range []float64{0, 3, 5, 6, 10} {
		one("run capacitor", 35, func(v measure.Value) verdict.Verdict {
			return RunCap(RunCapIn{Measured: v, Marked: 35, Tolerance: tol})
		})
	}
	one("start capacitor", 97, func(v measure.Value) verdict.Verdict {
		return StartCap(StartCapIn{Measured: v, Low: 88, High: 108})
	})
	out = append(out, judgement{"capacitor under load", []float64{4.2, 330}, func(v []measure.Value) verdict.Verdict {
		_, d := CapUnderLoad(UnderLoadIn{Amps: v[0], Volts: v[1], Hertz: 60, Marked: 35, Tolerance: 6})
		return d
	}})
	for _, s := range []State{Cold, Hot, ""} {
		one("start device "+string(s), 30, func(v measure.Value) verdict.Verdict { return PTC(PTCIn{Ohms: v, State: s, Volts: 115}) })
		one("overload "+string(s), 1, func(v measure.Value) verdict.Verdict { return Overload(OverloadIn{Ohms: v, State: s}) })
	}
	for _, p := range []RelayPart{Coil, Contact, Inverted} {
		one("current relay "+string(p), 2, func(v measure.Value) verdict.Verdict { return CurrentRelay(RelayIn{Part: p, Ohms: v}) })
	}
	for _, p := range []RelayPart{Coil, Contact} {
		one("potential relay "+string(p), 2000, func(v measure.Value) verdict.Verdict { return PotentialRelay(RelayIn{Part: p, Ohms: v}) })
	}
	for _, hot := range []bool{false, true} {
		for _, s := range []Series{Alone, WithThermostat, ""} {
			one("heater", 32, func(v measure.Value) verdict.Verdict {
				return Heater(HeaterIn{Ohms: v, Watts: 450, Volts: 120, Hot: hot, Series: s})
			})
		}
	}
	one("control volts", 20, func(v measure.Value) verdict.Verdict { return Control("transformer-secondary", v, 24) })
	one("heater of two volts", 23, func(v measure.Value) verdict.Verdict {
		return Heater(HeaterIn{Ohms: v, Watts: 2500, Volts: 240, Low: 208, Series: Alone})
	})
	one("heater amps of two volts", 23, func(v measure.Value) verdict.Verdict {
		return HeaterAmps(HeaterAmpsIn{Amps: v, Watts: 5600, Rated: 240, Low: 208, Volts: measure.Exact(240)})
	})
	one("heater of coils", 64, func(v measure.Value) verdict.Verdict {
		return Heater(HeaterIn{Ohms: v, Watts: 450, Volts: 120, Series: Alone, Coils: 3})
	})
	one("one heater of a plate", 32, func(v measure.Value) verdict.Verdict {
		return Heater(HeaterIn{Ohms: v, Watts: 450, Volts: 120, Series: Alone, Whole: true})
	})
	one("amps of one heater of a plate", 3.75, func(v measure.Value) verdict.Verdict {
		return HeaterAmps(HeaterAmpsIn{Amps: v, Watts: 450, Rated: 120, Whole: true})
	})
	one("heater to case", 1e6, func(v measure.Value) verdict.Verdict { return HeaterToCase("", v, 500, false) })
	one("heater amps", 3.75, func(v measure.Value) verdict.Verdict {
		return HeaterAmps(HeaterAmpsIn{Amps: v, Watts: 450, Rated: 120})
	})
	out = append(out, judgement{"heater amps at the volts read", []float64{3.25, 104}, func(v []measure.Value) verdict.Verdict {
		return HeaterAmps(HeaterAmpsIn{Amps: v[0], Watts: 450, Rated: 120, Volts: v[1]})
	}}, judgement{"heater amps at the volts at rest", []float64{3.25, 104}, func(v []measure.Value) verdict.Verdict {
		return HeaterAmps(HeaterAmpsIn{Amps: v[0], Watts: 450, Rated: 120, Volts: v[1], AtRest: true})
	}})
	one("current in the earth", 0.005, func(v measure.Value) verdict.Verdict { return EarthAmps(v) })
	one("igniter amps", 3, func(v measure.Value) verdict.Verdict { return IgniterAmps(IgniterAmpsIn{Amps: v, Low: 3.2}) })
	for _, want := range []string{"", "open", "closed"} {
		one("switch "+want, 1, func(v measure.Value) verdict.Verdict { return Switch(SwitchIn{Path: Switched, Ohms: v, Want: want}) })
	}
	for _, s := range []State{Cold, ""} {
		one("defrost thermostat "+string(s), 1, func(v measure.Value) verdict.Verdict { return Defrost(DefrostIn{Ohms: v, State: s}) })
	}
	leg := measure.Exact(120)
	for _, l2 := range []*measure.Value{nil, &leg} {
		one("legs", 240, func(v measure.Value) verdict.Verdict { return Legs(LegsIn{Pair: v, L1: &leg, L2: l2, Nominal: 240}) })
		one("legs without a plate", 240, func(v measure.Value) verdict.Verdict {
			return Legs(LegsIn{Pair: v, L1: &leg, L2: l2, Nominal: 240, Assumed: true})
		})
	}
	out = append(out, judgement{"air split", []float64{25, 14}, func(v []measure.Value) verdict.Verdict { return AirSplit(v[0], v[1]) }})
	for _, at := range []bool{false, true} {
		out = append(out, judgement{"three legs", []float64{230, 225, 218}, func(v []measure.Value) verdict.Verdict {
			return Phases(PhasesIn{Place: "L1 L2 L3", Machine: at, Pairs: [3]measure.Value(v)})
		}}, judgement{"three legs of a plate", []float64{230, 228, 229}, func(v []measure.Value) verdict.Verdict {
			return Phases(PhasesIn{Place: "L1 L2 L3", Machine: at, Pairs: [3]measure.Value(v), Nominal: 208})
		}})
	}
	for _, p := range []Path{Limit, Switched} {
		one("volts across a "+string(p), 72, func(v measure.Value) verdict.Verdict {
			return Across(AcrossIn{Path: p, Volts: v, Full: 120, Closed: p == Switched})
		})
	}
	one("plug", 2, func(v measure.Value) verdict.Verdict { return Plug(v) })
	table, _, err := NewTable(curve)
	if err != nil {
		t.Fatal(err)
	}
	out = append(out,
		judgement{"sensor by beta", []float64{32e3, 1}, func(v []measure.Value) verdict.Verdict {
			return NTC(NTCIn{Ohms: v[0], Celsius: v[1], R25: 10e3, Beta: 3977})
		}},
		judgement{"sensor by table", []float64{32e3, 1}, func(v []measure.Value) verdict.Verdict {
			return NTC(NTCIn{Ohms: v[0], Celsius: v[1], Table: table})
		}},
		judgement{"sensor, platinum", []float64{100, 1}, func(v []measure.Value) verdict.Verdict {
			return Platinum(PlatinumIn{Ohms: v[0], Celsius: v[1], R0: 100})
		}},
		judgement{"sensor, platinum of a class", []float64{109.73, 25}, func(v []measure.Value) verdict.Verdict {
			return Platinum(PlatinumIn{Ohms: v[0], Celsius: v[1], R0: 100, Class: "B"})
		}},
		judgement{"sag", []float64{120, 112}, func(v []measure.Value) verdict.Verdict { return Sag(SagIn{NoLoad: v[0], Loaded: v[1]}) }},
		judgement{"sag at start", []float64{120, 104}, func(v []measure.Value) verdict.Verdict {
			return Sag(SagIn{NoLoad: v[0], Loaded: v[1], Starting: true})
		}},
		judgement{"trip", []float64{8, 9}, func(v []measure.Value) verdict.Verdict {
			return Trip(TripIn{Seconds: v[0], Amps: v[1], Plate: 1.2, LRA: 12})
		}})
	for _, e := range supplyEditions {
		nominal := 120.0
		if !e.speaksOf(nominal) {
			nominal = e.nominals[0]
		}
		one("supply "+e.Code, nominal, func(v measure.Value) verdict.Verdict {
			return Supply(SupplyIn{Volts: v, Nominal: nominal, Edition: e.Code})
		})
		one("at start "+e.Code, nominal, func(v measure.Value) verdict.Verdict {
			return AtStart(SupplyIn{Volts: v, Nominal: nominal, Edition: e.Code})
		})
	}
	one("feed, called", 60, func(v measure.Value) verdict.Verdict { return Feed(FeedIn{Volts: v, Rated: 115, Called: true}) })
	one("feed", 60, func(v measure.Value) verdict.Verdict { return Feed(FeedIn{Volts: v, Rated: 115}) })
	for _, lra := range []float64{0, 12} {
		one("amps", 3, func(v measure.Value) verdict.Verdict { return Amps(AmpsIn{Run: v, Plate: 1.2, LRA: lra}) })
		one("surge that stays", 10, func(v measure.Value) verdict.Verdict {
			return Surge(SurgeIn{Peak: v, Plate: 1.2, LRA: lra, Then: Stayed})
		})
	}
	one("surge that falls", 12, func(v measure.Value) verdict.Verdict {
		return Surge(SurgeIn{Peak: v, Plate: 1.2, LRA: 12, Then: Started})
	})
	one("surge without a start", 10, func(v measure.Value) verdict.Verdict {
		return Surge(SurgeIn{Peak: v, Plate: 1.2, LRA: 12, Then: NotStarted})
	})
	one("surge that nobody watched", 6, func(v measure.Value) verdict.Verdict { return Surge(SurgeIn{Peak: v, Plate: 1.2, LRA: 12}) })
	for _, amps := range []float64{0, 10} {
		one("earth", 0.2, func(v measure.Value) verdict.Verdict { return Earth(EarthIn{Ohms: v, WithCord: true, TestAmps: amps}) })
	}
	one("thermocouple", 12e-3, func(v measure.Value) verdict.Verdict { return Thermocouple("thermocouple", v) })
	one("thermopile", 0.2, func(v measure.Value) verdict.Verdict { return Thermocouple("thermopile", v) })
	one("flame current", 1e-6, func(v measure.Value) verdict.Verdict { return FlameAmps("", v) })
	one("flame rod", 1e6, func(v measure.Value) verdict.Verdict { return FlameRod("", v) })
	one("neutral to earth", 5, func(v measure.Value) verdict.Verdict { return Neutral(v) })
	for _, between := range []float64{208, 400} {
		for _, others := range []bool{false, true} {
			one("leg of three to neutral", between/math.Sqrt(3), func(v measure.Value) verdict.Verdict {
				return Star(StarIn{Place: "L1–N", Volts: v, Between: between, OthersAreThere: others})
			})
		}
	}
	one("metal", 50, func(v measure.Value) verdict.Verdict { return Metal(MetalIn{To: "earth", Volts: v}) })
	for _, marked := range []float64{0, 1150} {
		one("coil", max(marked, 1), func(v measure.Value) verdict.Verdict { return SmallCoil(CoilIn{Ohms: v, Marked: marked}) })
	}
	one("work coil", 1, func(v measure.Value) verdict.Verdict { return SmallCoil(CoilIn{Ohms: v, Work: true}) })
	one("fresh food", 4, func(v measure.Value) verdict.Verdict { return TemperatureTarget(FreshFood, v) })
	one("wine", 12, func(v measure.Value) verdict.Verdict { return TemperatureAtSet(v, measure.Within(12, 0)) })
	one("freezer", -18, func(v measure.Value) verdict.Verdict { return TemperatureTarget(Freezer, v) })
	out = append(out,
		judgement{"amps of three legs", []float64{10, 10, 10}, func(v []measure.Value) verdict.Verdict {
			return LegAmps(LegAmpsIn{AmpsIn: AmpsIn{Plate: 11.2, LRA: 78, Volts: 360}, Legs: v, Names: []string{"L1", "L2", "L3"}})
		}},
		judgement{"running pressures", []float64{10, 40}, func(v []measure.Value) verdict.Verdict {
			return Pumping(PumpingIn{Suction: v[0], Discharge: v[1]})
		}},
		judgement{"pressures of a freezer", []float64{2, 120}, func(v []measure.Value) verdict.Verdict {
			return Pumping(PumpingIn{Suction: v[0], Discharge: v[1], Air: measure.Exact(24), Gas: "R-134a", AirName: "room", For: Freezes})
		}},
		judgement{"pressures of an air conditioner", []float64{118, 365}, func(v []measure.Value) verdict.Verdict {
			return Pumping(PumpingIn{Suction: v[0], Discharge: v[1], Air: measure.Exact(35), Gas: "R-410A", AirName: "outdoor", For: CoolsAir, Rooms: true})
		}},
		judgement{"pressure at rest", []float64{35, 25}, func(v []measure.Value) verdict.Verdict {
			return AtRest(AtRestIn{PSI: v[0], Celsius: v[1], Gas: "R-600a"})
		}})
	one("start capacitor with a tolerance", 60, func(v measure.Value) verdict.Verdict {
		return StartCap(StartCapIn{Measured: v, Low: 60, Tolerance: 10})
	})
	one("start device that reads high when cold", 1000, func(v measure.Value) verdict.Verdict { return PTC(PTCIn{Ohms: v, State: Cold, Volts: 230}) })
	out = append(out, judgement{"air rise", []float64{20, 34}, func(v []measure.Value) verdict.Verdict { return AirRise(v[0], v[1]) }})
	return out
}

// unbounded are the judges that hold no single reading against a limit, with
// the reason.
var unbounded = map[string]string{
	"CapOhms": "judges how readings follow each other", "CurrentRelayWhole": "joins three verdicts",
	"PotentialRelayWhole": "joins two verdicts", "OnWrongRange": "softens a verdict", "WrongRange": "judges digits", "RelayCoil": "judges open or not",
	"Igniter": "judges open or not", "NotHere": "judges nothing",
}

// A judge that is added is held to the bounds too, or says above why not.
func TestEveryJudgeIsHeldToTheBounds(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	test, err := os.ReadFile("interval_test.go")
	if err != nil {
		t.Fatal(err)
	}
	judges := 0
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Recv != nil || !fn.Name.IsExported() || fn.Type.Results == nil {
				continue
			}
			for _, r := range fn.Type.Results.List {
				sel, ok := r.Type.(*ast.SelectorExpr)
				if !ok || sel.Sel.Name != "Verdict" {
					continue
				}
				judges++
				if unbounded[fn.Name.Name] == "" && !strings.Contains(string(test), fn.Name.Name+"(") {
					t.Errorf("%s is not among the judgements", fn.Name.Name)
				}
			}
		}
	}
	if judges < 25 {
		t.Errorf("only %d judges were seen", judges)
	}
}

// words gives what a judge says at every corner and at points between the
// bounds of its readings, each point without doubt of its own.
func (j judgement) words(v []measure.Value) map[verdict.Word]int {
	out := map[verdict.Word]int{}
	steps := 60
	if len(v) > 1 {
		steps = 20
	}
	at := make([]measure.Value, len(v))
	var walk func(k int)
	walk = func(k int) {
		if k == len(v) {
			out[j.of(at).Word]++
			return
		}
		for i := range steps + 1 {
			at[k] = measure.Exact(v[k].Lo + (v[k].Hi-v[k].Lo)*float64(i)/float64(steps))
			walk(k + 1)
		}
	}
	walk(0)
	return out
}

// A reading with doubt is sound only where every value within its bounds
// would be, failed or suspect only where none would be; and it is one of these
// where all agree. Over all judges,
// random readings and doubts from a thousandth to the whole of the reading.
func TestVerdictHoldsForEveryValueWithinTheBounds(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	seen := map[verdict.Word]int{}
	straddled := 0
	for _, j := range judgements(t) {
		told := map[verdict.Word]bool{}
		for range 300 {
			v := make([]measure.Value, len(j.scales))
			for k, s := range j.scales {
				x := s * (0.5 + r.Float64())
				if r.IntN(3) == 0 {
					x = s * math.Pow(10, 4*r.Float64()-3)
				}
				v[k] = measure.Within(x, math.Abs(x)*math.Pow(10, -3*r.Float64()))
			}
			got := j.of(v)
			seen[got.Word]++
			told[got.Word] = true
			all := j.words(v)
			bad := ""
			switch got.Word {
			case verdict.Sound:
				if len(all) > 1 {
					bad = "a value within the bounds is not sound"
				}
			case verdict.Failed, verdict.Suspect:
				if all[verdict.Sound] > 0 {
					bad = "a value within the bounds is sound"
				}
			case verdict.CannotTell:
				// Between the points looked at a narrow limit may hide.
				if narrow(v) && len(all) == 1 && all[verdict.CannotTell] == 0 {
					bad = "all values within the bounds agree"
				}
			}
			if all[verdict.Sound] > 0 && len(all) > 1 {
				straddled++
			}
			if bad != "" {
				t.Fatalf("%s: %v gives %s (%s, limit %s): %s: %v", j.name, v, got.Word, got.Text, got.Limit, bad, all)
			}
			if margin := got.Margin; got.Judged && (got.Word == verdict.Sound && margin < 1-1e-9 || got.Word == verdict.Failed && margin > -1+1e-9) {
				t.Fatalf("%s: %v gives %s at a margin of %v", j.name, v, got.Word, margin)
			}
			if !got.Judged && got.Limit != "" && !unmeasured[got.Limit] && got.Source != "" {
				t.Fatalf("%s: %v gives %s (%s) against %q without a margin", j.name, v, got.Word, got.Text, got.Limit)
			}
		}
		if len(told) < 2 {
			t.Errorf("%s says nothing but %v", j.name, told)
		}
	}
	for _, w := range []verdict.Word{verdict.Sound, verdict.Suspect, verdict.Failed, verdict.CannotTell} {
		if seen[w] < 200 {
			t.Errorf("%q was said %d times only", w, seen[w])
		}
	}
	if straddled < 2_000 {
		t.Errorf("only %d readings straddled a limit", straddled)
	}
}

// narrow reports whether no reading has more than a hundredth of itself as its
// doubt.
func narrow(v []measure.Value) bool {
	for _, r := range v {
		if r.Half() > math.Abs(r.X)/100 {
			return false
		}
	}
	return true
}

// unmeasured are the limits that are no number to be near to.
var unmeasured = map[string]bool{"open": true, "finite": true, "falling within a second or so": true}
