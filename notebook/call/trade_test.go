package call

import (
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// tradeCase is a short conversation and what the trade expects of it. In says
// what must be in the reply to the last line, not what must not; a state is a
// cause and where it must stand.
type tradeCase struct {
	name, lines string
	in, not     []string
	states      map[string]cause.State
	next        string // a part of the next step
	source      string
}

// testDay is the wall clock of these calls.
func testDay() time.Time { return time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC) }

func checkTrade(t *testing.T, tests []tradeCase) {
	t.Helper()
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := New()
			var last Entry
			for _, l := range strings.Split(tt.lines, "; ") {
				var err error
				if last, err = c.Apply(c.Clock(l, testDay), l); err != nil {
					t.Fatalf("%s: %v", l, err)
				}
			}
			got := last.Reply.Plain()
			for _, s := range tt.in {
				if !strings.Contains(got, s) {
					t.Errorf("%q is not in %q (%s)", s, got, tt.source)
				}
			}
			for _, s := range tt.not {
				if strings.Contains(got, s) {
					t.Errorf("%q is in %q (%s)", s, got, tt.source)
				}
			}
			r := c.weigh(math.MaxInt)
			for code, state := range tt.states {
				if !slices.Contains(r.Codes(state), code) {
					t.Errorf("%s is not %s (%s); supported %v, open %v", code, state, tt.source, r.Codes(cause.Supported), r.Codes(cause.Open))
				}
			}
			if step := c.nextStep(&r); !strings.Contains(step, tt.next) {
				t.Errorf("next is %q, want %q (%s)", step, tt.next, tt.source)
			}
		})
	}
}

// A defrost thermostat is open when warm by design: common practice.
func TestDefrostThermostat(t *testing.T) {
	iced := "fault freezer not cold enough, packed with ice; saw frost heavy; safe; "
	checkTrade(t, []tradeCase{
		{"open and warm", iced + "ohm defrost-thermostat OL at 70F", []string{"cannot tell", "below the temperature marked"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
		{"open, nobody said", iced + "ohm bimetal OL", []string{"cannot tell", "write cold"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
		{"open and cold", iced + "ohm defrost-thermostat OL at -20C", []string{"failed"}, nil,
			map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"closed and warm", iced + "ohm defrost-thermostat 0.2 at 70F", []string{"suspect", "welded"}, nil,
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"cold closed, then warm open: as it must be", iced + "ohm defrost-thermostat 0.2 cold; ohm defrost-thermostat OL at 70F", []string{"sound"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"closed and cold", iced + "ohm defrost-thermostat 0.2 cold", []string{"sound"}, nil,
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"a limit in a freezer may be the defrost thermostat", iced + "ohm limit OL", []string{"cannot tell"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
		{"a limit that should be closed", iced + "ohm limit OL closed", []string{"failed"}, nil,
			map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"a limit that is hot may be open", "fault dryer has no heat; safe; ohm limit OL hot", []string{"cannot tell"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
	})
}

// Two legs of 120 V that are 240 V apart; what a lost one reads is common
// practice, the limits are those of ANSI C84.1-2011 Table 1 (from memory).
func TestSplitPhase(t *testing.T) {
	dryer := "unit electric dryer; fault no heat; "
	checkTrade(t, []tradeCase{
		{"nothing between the legs, one of them read", dryer + "volt L1 L2 3; volt L1 N 119", []string{"read it to neutral too"}, []string{"Cause supported: no supply", "sound, 3"},
			nil, "what each leg gives to neutral, a live test: volt L2 N …", "common practice"},
		{"a lost leg where the complaint counts it among no causes", "unit split air conditioner; fault not cooling; volt L1 L2 121; volt L1 N 121, L2 N 0", nil, nil, nil, "both poles of its breaker", "common practice"},
		{"nothing between two live legs", "unit split air conditioner; fault outdoor unit dead; volt L1 L2 2; volt L1 N 121, L2 N 121", []string{"or both are one"}, nil, nil, "both poles of its breaker", "common practice"},
		{"no supply where the complaint counts it among no causes", "unit split air conditioner; fault not cooling; volt L1 L2 0", nil, nil, nil, "restore the supply", "common practice"},
		{"which is back", "unit split air conditioner; fault not cooling; volt L1 L2 0; volt L1 L2 240", nil, nil, nil, "set to cool", "common practice"},
		{"proved dead is no lost supply", "unit fridge; fault not cold; safe unplugged; volt line 0", nil, nil, nil, "condenser fan runs", "common practice"},
		{"a lost neutral", dryer + "volt L1 N 165, L2 N 75; volt L1 L2 240", nil, []string{"contradict"}, map[string]cause.State{"supply-weak": cause.Open}, "power off at its source and kept off: by 165 and 75 V", "common practice"},
		{"told with the second leg", dryer + "volt L1 N 165; volt L2 N 75", []string{"a poor or lost neutral"}, []string{"Cause supported"}, nil, "kept off", "common practice"},
		{"and mended", dryer + "volt L1 N 165, L2 N 75; did electrician remade the neutral joint; volt L1 N 120, L2 N 119", nil, []string{"lost neutral"}, nil, "earth", "common practice"},
		{"legs that differ a little", dryer + "volt L1 N 122, L2 N 117; volt L1 L2 239", nil, []string{"lost neutral"}, nil, "", "common practice"},
		{"both legs low", dryer + "volt L1 N 104, L2 N 104", nil, []string{"lost neutral"}, nil, "", "common practice"},
		{"a rollout switch that is open", "unit gas furnace; fault no heat; safe switch off; ohm rollout OL", []string{"failed, open where it must be closed", "A rollout switch opens where flame leaves the burner"}, nil, map[string]cause.State{"limit-open": cause.Supported}, "never bridge it", "common practice"},
		{"by its longer name, closed", "unit gas furnace; fault no heat; safe switch off; ohm flame-rollout 0.2", []string{"sound, closed"}, []string{"leaves the burner"}, nil, "", "common practice"},
		{"a limit that is open", "unit gas furnace; fault no heat; safe switch off; ohm limit OL", []string{"failed, open"}, []string{"leaves the burner"}, nil, "", "common practice"},
		{"half between the legs, none of them read", dryer + "volt L1 L2 119", []string{"read each leg to neutral"}, nil,
			nil, "what each leg gives to neutral, a live test: volt L1 N …, L2 N …", "common practice"},
		{"a lost leg without a plate", dryer + "volt L1 L2 118; volt L1 N 119; volt L2 N 0", []string{"that leg is lost", "Cause supported: one leg"}, []string{"sound"},
			map[string]cause.State{"leg-missing": cause.Supported}, "electrician", "common practice"},
		{"half of the volts alone is not sound", dryer + "volt L1 L2 118", []string{"read each leg to neutral"}, []string{"sound"},
			map[string]cause.State{"leg-missing": cause.Open}, "", "common practice"},
		{"the pair after the leg", dryer + "plate volts 240; volt L2 N 0; volt L1 L2 118", []string{"that leg is lost"}, []string{"ghost", "Ruled out"},
			map[string]cause.State{"leg-missing": cause.Supported}, "electrician", "common practice"},
		{"fed back through the element", dryer + "volt L1 N 119, L2 N 118; volt L1 L2 0.4", []string{"fed back"}, nil,
			map[string]cause.State{"leg-missing": cause.Supported}, "", "common practice"},
		{"sound, plate typed last", dryer + "volt L1 L2 240, L1 N 120, L2 N 120; plate volts 240; show verdicts", []string{"supply | sound"}, []string{"ghost", "failed"},
			map[string]cause.State{"leg-missing": cause.RuledOut, "no-supply": cause.RuledOut}, "", "ANSI C84.1-2011"},
		{"sound without a plate", dryer + "volt L1 L2 240", []string{"sound"}, nil,
			map[string]cause.State{"leg-missing": cause.RuledOut}, "", "ANSI C84.1-2011"},
		{"the plate says 208", dryer + "plate volts 208; volt L1 L2 206", []string{"sound"}, nil, nil, "", "ANSI C84.1-2011"},
		{"the plate says 115: one leg feeds it", "fault clicks; plate volts 115; volt L1 L2 118", []string{"supply: sound"}, nil, nil, "", "ANSI C84.1-2011"},
		{"one point called L1 is the supply", "fault clicks; volt L1 N 118", []string{"supply: sound"}, nil, nil, "", "ANSI C84.1-2011"},
		{"a three-wire 230 V supply", "fault no heat; plate volts 230, hz 50; volt L1 N 231", []string{"supply: sound"}, nil, nil, "", "IEC 60038 (from memory)"},
		{"a dead leg proves it dead", dryer + "plate volts 240; volt L1 L2 240; safe breaker off; volt L1 N 0, L2 N 0", nil, []string{"lost", "missing"},
			map[string]cause.State{"leg-missing": cause.RuledOut}, "", "common practice"},
	})
}

// A struck second leg is as if it had never been named.
func TestStruckLeg(t *testing.T) {
	c := applyAll(t, "fault no heat", "volt L1 N 120", "volt L2 N 0", "strike 3 slip")
	if r := c.weigh(math.MaxInt); !slices.Contains(r.Codes(cause.RuledOut), "no-supply") {
		t.Errorf("the volts to neutral are not the supply: open %v", r.Codes(cause.Open))
	}
}

// An ohm-meter finds a gross fault, an insulation tester finds the rest:
// Hermetic Compressor Service Handbook pp. 40-41.
func TestInsulationByTwoMethods(t *testing.T) {
	start := "fault clicks; plate volts 115, gas R-600a, amps 1.1; safe; "
	checkTrade(t, []tradeCase{
		{"a tester does not soften what the meter found", start + "ohm A case 12k; ohm A case 0.1M test 500V", []string{"failed", "grounded"}, []string{"ten times", "dry it"},
			map[string]cause.State{"winding-grounded": cause.Supported}, "do not energise", "Handbook pp. 40-41"},
		{"nor the other way round", start + "ohm A case 12k test 500V; ohm A case OL", []string{"failed"}, []string{"no gross fault found"},
			map[string]cause.State{"winding-grounded": cause.Supported}, "", "Handbook pp. 40-41"},
		{"a better reading does not undo a worse one", start + "ohm A case 12k; ohm A case OL", []string{"suspect", "strike the wrong one"}, []string{"no gross fault found"},
			map[string]cause.State{"winding-grounded": cause.Open}, "settle the insulation", "common practice"},
		{"a struck one is undone", start + "ohm A case 12k; ohm A case OL; strike 4 probe on the wrong pin", []string{"Struck"}, nil,
			map[string]cause.State{"winding-grounded": cause.RuledOut}, "", "common practice"},
		{"work parts them", start + "ohm A case 12k; did cleaned and dried the terminals; ohm A case OL", nil, []string{"strike the wrong one"}, nil, "", "common practice"},
		{"pins to the case come before power", start + "ohm A B 3, A C 8, B C 11; next", []string{"Next: ohms from each pin to bare case: ohm A case OL, B case OL, C case OL"}, nil, nil, "", "common practice"},
		{"a sheath in doubt is settled first", "fault does not heat; plate watts 800, volts 120; safe; ohm heater 18; ohm heater case 0.4M; next", []string{"settle the insulation", "ohm heater case … test 500V"}, nil, nil, "", "common practice"},
		{"insulation in doubt proves nothing", "fault does not heat; plate watts 800, volts 120; safe; ohm heater 18; ohm heater case 0.4M; did replaced thermostat; safe; ohm earth 0.05; amp heater 6.6 run; temp water 140F; missing",
			[]string{"the insulation settled: heater to case is suspect"}, nil, nil, "", "common practice"},
		{"ground is the case", start + "ohm A B 3, A C 8, B C 11; ohm A ground 0", []string{"Grounded: A–case 0"}, []string{"protector lead"},
			map[string]cause.State{"winding-grounded": cause.Supported}, "do not energise", "common practice"},
		{"the earth pin to the shell is the earth path", start + "ohm earth case 0.05", []string{"the earth path is sound"}, []string{"Grounded"}, nil, "", "common practice"},
		{"yesterday's safe is not today's", "date 2026-03-02 16:00; fault clicks; safe; date 2026-03-03 09:00; ohm A B 3; missing", []string{"made safe before the dead tests of entry 5"}, nil, nil, "", "common practice"},
		{"the tester settles what the meter suspects", start + "ohm A case 1.2M; ohm A case 200M test 500V", []string{"sound"}, []string{"suspect"}, nil, "", "Handbook pp. 40-41"},
		{"a meter takes nothing from the tester", start + "ohm A case 200M test 500V; ohm A case OL; show verdicts", []string{"insulation A to case | sound"}, nil, nil, "", "Handbook pp. 40-41"},
		{"nor at a heater's sheath", "fault no heat; safe; ohm heater case 20k test 500V; ohm heater case OL", []string{"failed"}, []string{"no gross fault found"}, nil, "", "AS/NZS 3760 (from memory)"},
		{"no limit passes it", start + "ohm A case 0.115M test 500V", []string{"suspect", "no published limit surely passes it"}, []string{"laxer", "dry it"}, nil, "", "AE4-1294: 1000 Ω/V"},
	})
}

// Contact resistance and lead resistance pass for a short; a winding is
// condemned by a reading that was repeated with the leads zeroed: common
// practice.
func TestAboutZero(t *testing.T) {
	start := "fault wont start; safe; "
	checkTrade(t, []tradeCase{
		{"all three", start + "ohm A B 0.0, A C 0.1, B C 0.1; next", []string{"zero the leads"}, []string{"replace"},
			map[string]cause.State{"winding-shorted": cause.Open}, "read the three pairs again", "common practice"},
		{"one pair, read once", start + "ohm A B 0.0, A C 4.1, B C 4.1; next", []string{"zero the leads"}, []string{"replace"},
			map[string]cause.State{"winding-shorted": cause.Supported}, "before the machine is condemned", "common practice"},
		{"one pair, leads zeroed", "probes 0.1; " + start + "ohm A B 0.1, A C 4.1, B C 4.1; next", nil, nil,
			map[string]cause.State{"winding-shorted": cause.Supported}, "replace the machine", "common practice"},
	})
}

// Groups of leads that read open to each other are whole windings or one
// broken one: only the wiring diagram tells. Common practice.
func TestIsolatedGroups(t *testing.T) {
	drum := "fault drum doesnt turn; on motor; "
	groups := "; safe; ohm 3 4 6.8; ohm 5 6 1.9; ohm 1 3 OL, 1 5 OL, 3 5 OL; ohm 1 2 112"
	checkTrade(t, []tradeCase{
		{"diagram not known", drum + "note" + " no diagram" + groups, []string{"plate windings isolated"}, nil,
			map[string]cause.State{"winding-open": cause.Open, "winding-shorted": cause.Open, "protector-failed": cause.Open}, "", "common practice"},
		{"apart by the diagram", drum + "plate windings isolated" + groups, nil, nil,
			map[string]cause.State{"winding-open": cause.RuledOut}, "", "common practice"},
		{"joined by the diagram", drum + "plate windings joined" + groups, []string{"A winding is open"}, nil,
			map[string]cause.State{"winding-open": cause.Supported}, "", "common practice"},
		{"two groups, lead count not known", drum + "safe; ohm 1 2 2.6; ohm 3 4 5.9; ohm 1 3 OL, 1 4 OL, 2 3 OL, 2 4 OL", nil, nil,
			map[string]cause.State{"winding-open": cause.Open}, "", "common practice"},
		{"two groups, four leads by the plate", drum + "plate leads 4; safe; ohm 1 2 2.6; ohm 3 4 5.9; ohm 1 3 OL, 1 4 OL, 2 3 OL, 2 4 OL", nil, nil,
			map[string]cause.State{"winding-open": cause.RuledOut}, "", "common practice"},
	})
}

// 60 kΩ of a 10 kΩ sensor with beta 3977 is -10.3 °C (IEC 60539-1); what a
// control does by it is common practice.
func TestSensorDirection(t *testing.T) {
	plate := "; plate r25 10k, beta 3977; safe; "
	checkTrade(t, []tradeCase{
		{"reads too cold, box too cold", "fault freezes food in fridge" + plate + "ohm sensor 60k ice",
			[]string{"reads as -10.3 °C, colder", "stops too early", "does not explain the complaint"}, []string{"Cause supported"},
			map[string]cause.State{"sensor-failed": cause.RuledOut}, "", "common practice"},
		{"reads too warm, box too cold", "fault freezes food in fridge" + plate + "ohm sensor 20k ice",
			[]string{"warmer than it is", "goes on too long", "Cause supported"}, []string{"not explain"},
			map[string]cause.State{"sensor-failed": cause.Supported}, "", "common practice"},
		{"reads too cold, box too warm", "fault fridge not cooling" + plate + "ohm sensor 60k ice", []string{"Cause supported: temperature sensor reads too cold"}, nil,
			map[string]cause.State{"sensor-cold": cause.Supported}, "", "common practice"},
		{"reads too cold, oven cold", "fault oven stays cold" + plate + "ohm sensor 60k ice", []string{"does not explain"}, nil,
			map[string]cause.State{"sensor-stops-heat": cause.RuledOut}, "", "common practice"},
		{"a sensor on the evaporator steers the defrost", "fault freezes food in fridge" + plate + "ohm sensor-evap 60k ice", []string{"failed"}, []string{"stops too early"},
			map[string]cause.State{"sensor-failed": cause.Supported}, "", "common practice"},
	})
}

// A start relay belongs to a compressor; elsewhere a relay is a coil and a
// contact. Fig. 14-40 of training manual 14259 for the start relay.
func TestRelayOfWhat(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"an oven's", "fault oven stays cold; safe; ohm relay OL", []string{"relay contact: cannot tell"}, []string{"current relay", "apacitor"}, nil, "", "common practice"},
		{"a dryer's, that should be closed", "unit electric dryer; fault no heat; safe; ohm relay OL closed", []string{"relay contact: failed"}, nil, nil, "", "common practice"},
		{"an oven's coil", "unit oven; fault no heat; safe; ohm relay-coil OL", []string{"relay coil: failed, the coil is open"}, []string{"current relay"}, nil, "", "common practice"},
		{"a refrigerator's", "unit refrigerator; fault clicks; safe; ohm relay OL upright", []string{"current relay contact: cannot tell"}, nil, nil, "", "training manual 14259"},
	})
}

// A breaker that was found tripped is set again: what was read of the supply
// last counts. Common practice.
func TestSupplyComesBack(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"breaker set", "fault dead, nothing works; saw all dead; saw breaker tripped; volt line 119; saw light works", nil, []string{"contradict"},
			map[string]cause.State{"no-supply": cause.RuledOut}, "", "common practice"},
		{"outlet that was dead", "fault dead, nothing works; saw outlet dead; volt line 119", nil, []string{"contradict"},
			map[string]cause.State{"no-supply": cause.RuledOut}, "", "common practice"},
		{"outlet that died", "fault dead, nothing works; volt line 119; saw outlet dead", nil, []string{"contradict"},
			map[string]cause.State{"no-supply": cause.Supported}, "", "common practice"},
		{"read again after it", "fault dead, nothing works; volt line 119; saw outlet dead; volt line 119", nil, []string{"contradict"},
			map[string]cause.State{"no-supply": cause.RuledOut}, "", "common practice"},
		{"breaker found tripped is no dead outlet", "fault dead, nothing works; saw breaker tripped", nil, []string{"nothing works at that outlet"},
			map[string]cause.State{"circuit-fault": cause.Open}, "reset the breaker once only", "common practice"},
		{"and holds again: the complaint is what it was", "fault dead, nothing works; saw breaker tripped; saw breaker holds", nil, nil,
			map[string]cause.State{"no-supply": cause.Open}, "", "common practice"},
		{"dead without a reason and lit", "fault dead, nothing works; saw all dead; saw light works", []string{"These contradict each other"}, nil, nil, "", "follows from the words"},
	})
}

// What contradicts is told once, and stands where a supervisor looks.
func TestContradictionNeedsAttention(t *testing.T) {
	c := applyAll(t, "fault clicks and does not start", "saw clicks", "saw silent")
	if e := must(t, c, "saw long cord"); strings.Contains(e.Reply.Plain(), "contradict") {
		t.Errorf("told again: %q", e.Reply.Plain())
	}
	if !slices.ContainsFunc(c.Record().Alerts, func(s string) bool { return strings.HasPrefix(s, "Contradiction: a click") }) {
		t.Errorf("not among the alerts: %v", c.Record().Alerts)
	}
}

// Every fault found is mended or written down as left: common practice.
func TestEveryCauseFoundIsMended(t *testing.T) {
	found := "fault runs all the time; saw cond-fan stopped; saw condenser dirty; did cleaned condenser; "
	checkTrade(t, []tradeCase{
		{"the fan still stands", found + "next", []string{"condenser fan", "No work is written down for what was found: either condenser fan motor failed or jammed or condenser fan gets no supply (not parted)"},
			[]string{"prove the repair"}, nil, "condenser fan", "common practice"},
		{"and is missing", found + "missing", []string{"work for what was found: either condenser fan"}, nil, nil, "", "common practice"},
		{"told which it is", found + "safe; saw cond-fan stiff; next", []string{"mend: replace the fan motor"}, nil, nil, "", "common practice"},
		{"mended too", found + "did replaced condenser fan motor; next", []string{"prove the repair"}, nil, nil, "", "common practice"},
		{"runs now", found + "saw cond-fan runs; next", []string{"prove the repair"}, nil, nil, "", "common practice"},
		{"work in other words may be for all of it", "fault runs all the time; saw cond-fan stopped; saw condenser dirty; did the usual; next", []string{"prove the repair"}, nil, nil, "", "common practice"},
	})
	for _, f := range applyAll(t, "fault runs all the time", "saw cond-fan stopped", "saw condenser dirty", "did cleaned condenser").Record().Outcome {
		if f.Label == "Work and result" && !strings.Contains(f.Text, "no work is written down for: either condenser fan") {
			t.Errorf("the outcome keeps quiet of the fan: %q", f.Text)
		}
	}
	c := applyAll(t, "fault runs all the time", "saw cond-fan stopped", "did the usual")
	if h := c.Record().Header.Cause; h != "either condenser fan motor failed or jammed or condenser fan gets no supply (not parted)" {
		t.Errorf("the cause found is %q", h)
	}
}

// Other names of the trade for the same parts: common practice.
func TestTradeNames(t *testing.T) {
	none := "none of the parts"
	checkTrade(t, []tradeCase{
		{"hi-limit", "fault no heat; safe; ohm hi-limit OL", []string{"limit hi-limit: failed"}, []string{none}, map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"two words", "fault no heat; safe; ohm high limit OL", []string{"failed"}, []string{none}, nil, "", "common practice"},
		{"tco", "fault no heat; safe; ohm tco OL", []string{"failed"}, []string{none}, map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"cycling thermostat", "fault no heat; safe; ohm cycling-thermostat OL closed", []string{"failed"}, []string{none}, nil, "", "common practice"},
		{"overload", "fault clicks; safe; ohm ol 0.3 cold", []string{"overload", "sound"}, []string{none}, nil, "", "common practice"},
		{"igniter", "fault dryer has no heat; safe; ohm igniter OL", []string{"igniter: failed"}, nil, map[string]cause.State{"igniter-open": cause.Supported}, "", "common practice"},
		{"valve", "fault no water; safe; ohm inlet-valve 1.1k", []string{"cannot tell, not open"}, []string{none}, nil, "", "common practice"},
		{"valve by its sheet", "fault no water; plate ohms valve 1150; safe; ohm valve 1.12k", []string{"coil valve: sound"}, nil, nil, "", "common practice"},
		{"a pump has pins", "fault no drain; safe; ohm pump 12.5", []string{"on pump, then ohm 1 2 12.5"}, nil, nil, "", "follows from the form"},
		{"a slip", "fault no heat; safe; ohm thermstat 0.1", []string{none, "perhaps: thermostat", "help parts"}, nil, nil, "", "follows from the table"},
		{"a finding near the list", "fault fan noise; saw cond-fan odd", []string{"Perhaps: saw cond-fan", "help findings"}, nil, nil, "", "follows from the table"},
		{"the list of findings", "help findings", []string{"brushes worn", "cond-fan stiff", "frost heavy"}, nil, nil, "", "follows from the table"},
		{"the list of parts", "help parts", []string{"thermal-fuse", "hi-limit", "igniter"}, nil, nil, "", "follows from the table"},
	})
}

// A part's other name leads to a part of the table.
func TestAliasesLeadToParts(t *testing.T) {
	for alias, known := range partAliases {
		if !slices.ContainsFunc(partPlaces, func(p place) bool { return slices.Contains(p.words, known) }) {
			t.Errorf("%s leads to %s, which is no part", alias, known)
		}
	}
}

// A fresh-food part is proved above freezing and at 40 °F or below: FDA for the
// 40 °F, common practice for the freezing.
func TestTooColdIsProvedAboveFreezing(t *testing.T) {
	start := "date 2026-03-02 09:00; unit refrigerator; fault freezes food in fridge; safe; did replaced thermostat; "
	checkTrade(t, []tradeCase{
		{"27 °F", start + "12:00 temp fridge 28F; 14:00 temp fridge 27F; 16:00 temp fridge 27F", []string{"still freezes", "not surely above freezing"}, []string{"proved"}, nil, "", "common practice"},
		{"is missing", start + "12:00 temp fridge 28F; 14:00 temp fridge 27F; 16:00 temp fridge 27F; missing", []string{"the last above freezing", "temp fridge …"}, nil, nil, "", "common practice"},
		{"32 °F is too near to say", start + "12:00 temp fridge 28F; 14:00 temp fridge 31F; 16:00 temp fridge 32F", []string{"still freezes"}, []string{"proved"}, nil, "", "common practice"},
		{"37 °F", start + "12:00 temp fridge 45F; 14:00 temp fridge 38F; 16:00 temp fridge 37F; missing", nil, []string{"above freezing"}, nil, "", "FDA"},
		{"27 °F after another complaint", "date 2026-03-02 09:00; fault not cooling; saw comp runs; did topped nothing; 12:00 temp fridge 28F; 14:00 temp fridge 27F; 16:00 temp fridge 27F",
			[]string{"still freezes"}, []string{": proved"}, nil, "", "common practice"},
		{"a freezer at 0 °F is proved", "date 2026-03-02 09:00; fault not cooling; saw comp runs; did cleaned condenser; 12:00 temp freezer 10F; 13:00 temp freezer 2F; 14:00 temp freezer -3F; 15:00 temp freezer -4F",
			[]string{"proved"}, []string{"freezes"}, nil, "", "FDA"},
	})
}

// A sample in the proof list has no number that reads like a limit, and fits
// the appliance.
func TestProofSamples(t *testing.T) {
	for _, tt := range []struct{ lines, want string }{
		{"fault oven stays cold; did replaced element", "(temp oven …)"},
		{"unit electric dryer; fault no heat; did replaced element", "(temp dryer …)"},
		{"fault freezer not cooling; did cleaned condenser", "(temp freezer …)"},
		{"fault fridge not cooling; did cleaned condenser", "(temp fridge …)"},
		{"fault freezes food in fridge; did replaced sensor", "(temp fridge …)"},
	} {
		c := applyAll(t, strings.Split(tt.lines, "; ")...)
		m := strings.Join(c.proofMissing(), "; ")
		if !strings.Contains(m, tt.want) || strings.ContainsAny(m, "0123456789") {
			t.Errorf("%s: %q, want %s and no number", tt.lines, m, tt.want)
		}
		for _, s := range c.Suggest() {
			if strings.Contains(s, "…") {
				t.Errorf("%s: %q is offered to be typed", tt.lines, s)
			}
		}
	}
}

// The best words decide what a complaint is taken for: what does not keep cold
// is not a leak for the frost in it, nor a motor for its fan. Common practice.
func TestComplaintIsTakenByItsBestWords(t *testing.T) {
	for _, tt := range []struct{ fault, want string }{
		{"freezer not cold enough, frost heavy on back wall", "no-cool"},
		{"fridge warm freezer fine, fan not running", "fridge-warm"}, {"fridge warm, freezer ok", "fridge-warm"}, {"freezer cold but fridge warm", "fridge-warm"}, {"freezer warm, fridge ok", "no-cool"}, {"fridge warm, freezer not cold", "no-cool"}, {"fridge and freezer warm", "no-cool"}, {"freezer works but warm", "no-cool"}, {"fridge freezes milk, freezer fine", "too-cold"},
		{"outdoor fan wont run, humming", "motor-dead"},
		{"clicks and does not cool", "no-start"},
		{"ice on the back wall", "leaks-ices"},
	} {
		c := applyAll(t, "fault "+tt.fault)
		if got := c.complaint(); got != tt.want {
			t.Errorf("%s: taken as %s, want %s", tt.fault, got, tt.want)
		}
	}
	checkTrade(t, []tradeCase{
		{"a cold freezer beside", "unit fridge; fault not cooling; temp freezer -18C; temp fridge 12C; next", nil, []string{"refrigerant"}, map[string]cause.State{"refrigerant-low": cause.Open}, "whether the evaporator fan runs", "common practice"},
		{"a freezer that is warm too", "unit fridge; fault not cooling; temp freezer -8C; temp fridge 12C; next", nil, []string{"cold freezer"}, nil, "evaporator fan runs", "common practice"},
		{"a fridge that is cold", "unit fridge; fault not cooling; temp freezer -18C; temp fridge 3C; next", nil, []string{"cold freezer"}, nil, "", "common practice"},
		{"a freezer that has warmed since", "unit fridge; fault not cooling; temp freezer -18C; temp fridge 12C; temp freezer -5C; next", nil, nil, nil, "evaporator fan runs", "common practice"},
		{"by which words, and how to change it", "fault freezer not cold enough, frost heavy on back wall",
			[]string{`by "not cold"`, `leaks or ices up by "frost"`, "fault in other words changes it"}, nil, nil, "", "follows from the table"},
		{"changed", "fault freezer not cold enough, frost heavy; fault ices up", []string{"Taken as: leaks or ices up"}, nil, nil, "", "follows from the table"},
		{"the outdoor fan of a split unit stands", "unit mini split; fault does not cool; saw starts; saw outdoor fan stopped", []string{"condenser fan motor failed or jammed (entry 4)", "condenser fan gets no supply"}, []string{"fan motor or blower"}, nil, "", "common practice"},
		{"of a central one", "unit central air conditioner; fault blows warm; saw cond-fan stopped", []string{"condenser fan gets no supply (entry 3)"}, []string{"fan motor or blower"}, nil, "", "common practice"},
		{"one motor in a window unit", "unit window air conditioner; fault does not cool; saw cond-fan stopped", []string{"fan motor or blower failed or jammed (entry 3)"}, []string{"condenser fan gets"}, nil, "", "common practice"},
		{"an element that works", "unit electric oven; fault bake does not heat, broil ok", []string{"what you see does: saw broil works."}, nil, nil, "", "follows from the table"},
		{"the other one", "unit electric range; fault broil does not heat but bake works", []string{"saw bake works."}, nil, nil, "", "follows from the table"},
		{"a ring", "unit electric range; fault oven does not heat, burners work", []string{"saw other burners work."}, nil, nil, "", "follows from the table"},
		{"none of them", "unit electric oven; fault bake and broil do not heat", nil, []string{"rules nothing out"}, nil, "", "follows from the table"},
		{"what does not work", "unit electric oven; fault does not heat, broil not working", nil, []string{"rules nothing out"}, nil, "", "follows from the table"},
		{"none", "fault E5 on display", []string{"none of the common complaints", "help complaints lists them"}, nil, nil, "", "follows from the table"},
	})
}

// A sensor's table that contradicts R25 and beta judges nothing; 32.65 kΩ at
// 0 °C is the curve of a 10 kΩ sensor (document 29049, from memory).
func TestSensorData(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"asked when typed", "plate r25 10k, beta 3977; plate row 32 32.6k; plate row 0C 32.65k", []string{"is the row meant as 32 °F?"}, nil, nil, "", "IEC 60539-1"},
		{"judges nothing", "plate r25 10k, beta 3977; plate row 32 32.6k; plate row 0C 32.65k; ohm sensor 9.8k at 77F", []string{"cannot tell", "32 °F?"}, []string{"failed"}, nil, "", "IEC 60539-1"},
		{"an oven's, read with a coarse meter", "fault oven stays cold; plate r0 1000; ohm sensor 1080 at 70F", []string{"no gross fault", "finer meter"}, nil, nil, "", "IEC 60751"},
		{"an oven's without data", "fault oven stays cold; ohm sensor 1080 at 70F", []string{"plate r0 1000"}, nil, nil, "", "IEC 60751"},
		{"a bleeder is counted from the volts given", "bleeder_ohms(45uF, 440V, 50V, 60s)", []string{"440 V rms leaves up to 622.3 V", "528.8 kΩ"}, nil, nil, "", "R = t / (C ln(V / Vsafe)) with V = √2 · 440 V"},
	})
}

// A part fitted for a cause that a reading had ruled out wants a look: common
// practice.
func TestWorkForWhatWasRuledOut(t *testing.T) {
	alerts := func(lines ...string) string {
		return strings.Join(applyAll(t, lines...).Record().Alerts, "\n")
	}
	start := []string{"unit electric dryer", "fault no heat", "safe", "saw vent blocked", "ohm limit 0.1 closed"}
	if got := alerts(append(start, "did cleaned vent", "part hi limit kit, 1, 20")...); !strings.Contains(got, "Work for what was ruled out: hi limit kit: thermal limit") {
		t.Errorf("not told: %q", got)
	}
	if got := alerts(append(start, "did cleaned vent")...); strings.Contains(got, "ruled out") {
		t.Errorf("told of the vent: %q", got)
	}
}

// An appliance without a compressor has a motor, and its plate is found from the
// motor; what is jammed is turned first; tap water is hot at 49 °C: common
// practice.
func TestWithoutCompressor(t *testing.T) {
	heater := "unit electric water heater; fault no hot water; plate volts 240, watts 4500; "
	checkTrade(t, []tradeCase{
		{"water heater: its element first", heater + "next", nil, []string{"filter"}, nil, "ohms of the heater", "common practice"},
		{"water heater: two elements to the case", heater + "safe; ohm upper-element case OL, lower-element case OL; plate(volts)", []string{"240 V"}, nil, nil, "", "common practice"},
		{"disposer: turned first", "unit garbage disposer; fault hums, jammed; next", nil, []string{"three pairs"}, nil, "hex key", "common practice"},
		{"disposer: its leads are its motor's", "unit garbage disposer; fault hums, jammed; safe; ohm A B 3.4, B C 7, A C 10.2", []string{"motor: By the readings B is common"}, nil, nil, "", "common practice"},
		{"water hot enough", heater + "safe; ohm heater OL; did replaced the element; temp water 120F; missing", nil, []string{"temperature it reaches"}, nil, "", "common practice"},
	})
}

// Turns shorted in the run winding leave windings that fit each other and start too many
// times run: only the sheet clears them.
func TestRunShortedInPart(t *testing.T) {
	const odd = "unit fridge; fault hums; ohm A B 1.1, A C 14.1, B C 15.2; "
	checkTrade(t, []tradeCase{
		{"start 12.8 times run", odd + "causes", []string{"winding grossly shorted | open | 3"}, nil, nil, "", "common practice"},
		{"beside the sheet", odd + "plate ohms run 1.1; causes", []string{"winding grossly shorted (entr"}, nil, nil, "", "common practice"},
		{"start 3.4 times run", "unit fridge; fault hums; ohm A B 4.1, A C 14.1, B C 18.2; causes", []string{"winding grossly shorted (entry 3)"}, nil, nil, "", "common practice"},
		{"far above the LRA", "unit fridge; fault hums; plate lra 12; ohm A B 4.1, A C 14.1, B C 18.2; amp comp 16.5 peak; trip 3s; causes", []string{"winding grossly shorted | open | 6"}, nil, nil, "", "common practice"},
	})
}

// A room too hot for any cabinet is a cause of what stays warm as of what runs on, read
// or seen; one that is only warm is none.
func TestHotRoom(t *testing.T) {
	const hot = "room hotter than the appliance is made for | supported"
	const clean = "saw condenser clean, cond-fan runs, evap-fan runs, frost even, gasket sound, starts; "
	checkTrade(t, []tradeCase{
		{"read", "unit freezer; fault runs, not cold; temp room 46C; causes", []string{hot + " | 3"}, nil, nil, "", "IEC 62552, from memory"},
		{"read 42 °C", "unit freezer; fault runs, not cold; temp room 42C; causes", nil, []string{"room hotter"}, nil, "", "IEC 62552, from memory"},
		{"read again", "unit freezer; fault runs, not cold; temp room 46C; temp room 24C; causes", nil, []string{"room hotter"}, nil, "", "IEC 62552, from memory"},
		{"stays so beside a warm freezer", "unit freezer; fault runs all the time; saw room hot; " + clean + "temp freezer 20F; causes", []string{hot + " | 3"}, nil, nil, "", "common practice"},
		{"once in its own list", "unit freezer; fault runs all the time; saw room hot; causes", []string{"1 supported"}, nil, nil, "", "common practice"},
		{"an air conditioner's", "unit window ac; fault not cold; temp room 46C; causes", nil, []string{"room hotter"}, nil, "", "common practice"},
		{"a fridge that was warm before the repair", "unit fridge; fault not cold; temp fridge 52F; saw condenser dirty; did cleaned condenser; temp freezer -2F", nil, []string{"taken from here on"}, nil, "", "common practice"},
		{"a fridge that is warm after it", "unit fridge; fault not cold; saw condenser dirty; did cleaned condenser; temp fridge 52F; temp freezer -2F; causes", []string{"air passages"}, nil, nil, "", "common practice"},
	})
}

// A protector inside the shell sits in the line to common: chiller service manual,
// p. 12. What was open to another pin and reads again was none.
func TestProtectorSitsInCommon(t *testing.T) {
	const source = "chiller service manual, p. 12"
	checkTrade(t, []tradeCase{
		{"open to start", "fault clicks; ohm A B 4.0; ohm A C OL, B C OL; ohm A C 9.1, B C 5.2", []string{"B is common"}, []string{"protector has opened", "taken from here on"}, nil, "", source},
		{"open to common", "fault clicks; ohm A B 9.1; ohm A C OL, B C OL; ohm A C 4.0, B C 5.2", []string{"C is common", "protector has opened on heat", "taken from here on as: hums and trips"}, nil, nil, "", source},
	})
}

// One low reading after another is a supply that is gone; a disc that nobody called
// cold is not condemned; 24 V at a coil is a control circuit's; a fan's or heater's
// amps are not the compressor's: common practice.
func TestWhatAReadingIsOf(t *testing.T) {
	const source = "common practice"
	cold := "unit refrigerator; fault warm inside; plate volts 115, amps 1.2; "
	checkTrade(t, []tradeCase{
		{"the second leg lost", "unit dryer; fault no heat; volt L1 L2 241.2; volt L2 N 0.4; volt L1 L2 0.6", []string{"supply: failed"}, nil, map[string]cause.State{"no-supply": cause.Supported}, "", source},
		{"a disc, nobody says cold", "fault clicks; ohm ptc OL", []string{"suspect", "let it cool"}, []string{"failed"}, nil, "", source},
		{"a disc, cold", "fault clicks; ohm ptc OL cold", []string{"failed, open when cold"}, nil, nil, "", source},
		{"a disc that reads hot when cold", "unit refrigerator; fault clicks; plate volts 115; safe; ohm ptc 6k cold", []string{"failed, 6 kΩ is what one reads hot"}, []string{"suspect"}, map[string]cause.State{"start-device-failed": cause.Supported}, "", source},
		{"a disc that reads hot, nobody says cold", "unit refrigerator; fault clicks; plate volts 115; safe; ohm ptc 6k", []string{"suspect", "let it cool"}, []string{"failed"}, map[string]cause.State{"start-device-failed": cause.Open}, "", source},
		{"a coil of 24 V", "unit air conditioner; fault does not cool; plate volts 230; volt coil 26.5 run", []string{"sound, it is given 26.5 V"}, nil, nil, "", source},
		{"a heater beside the compressor", cold + "safe; did replaced bimetal; amp heater 4.1 run; missing", []string{"running amps (amp comp … run)"}, nil, nil, "", source},
		{"no place where there is no compressor", "unit water heater; fault no heat; amp 18.6", []string{"line 18.6 A"}, []string{"comp"}, nil, "", source},
		{"it needs a push", "fault hums; saw starts with a push", []string{"starts when pushed", "runs on when its shaft is given a turn"}[1:], []string{"starts by itself"}, nil, "", source},
		{"pushed only", "fault hums; saw starts only when pushed", []string{"given a turn"}, nil, nil, "", source},
		{"with what it starts", "fault hums; saw starts with a test cord", []string{"not taken as"}, nil, nil, "", source},
		{"does not cool, stands still", "unit fridge; fault not cooling; saw comp not running", []string{"taken from here on as: clicks or stays silent"}, nil, nil, "three pairs", source},
		{"and wants what such a machine wants", "unit fridge; fault not cooling; saw comp not running; missing", []string{"windings of the machine"}, []string{"frost on the evaporator"}, nil, "", source},
		{"and is proved by starting", "unit fridge; fault not cooling; saw comp not running; ohm ptc OL cold; did replaced start device", []string{"the start seen"}, nil, nil, "", source},
		{"a device that reads well and fails under load", "fault clicks; plate volts 115, amps 1.2, lra 12; ohm A B 3.45, A C 9.1, B C 5.7; ohm A case OL, B case OL, C case OL; ohm ptc 5.3 cold; saw starts with test device",
			nil, nil, map[string]cause.State{"start-device-failed": cause.Supported, "compressor-tight": cause.RuledOut}, "", source},
	})
}

// A dryer that stops and starts again when it is cold has a motor that gets too hot; of
// an oven whose broil heats the supply is proved. Common practice throughout.
func TestWhatElseWorksTells(t *testing.T) {
	const (
		dryer = "unit electric dryer; fault shuts off after 10 minutes; "
		oven  = "unit electric oven; fault bake does not work, broil ok; "
	)
	checkTrade(t, []tradeCase{
		{"a dryer that stops", dryer + "next", []string{"vent, filter and air path"}, []string{"leads of the motor"}, nil, "vent", "common practice"},
		{"its vent is clear and it has to cool", dryer + "saw vent clear; saw door switch holds; saw restarts after cooling", nil, nil,
			map[string]cause.State{"ends-it-early": cause.RuledOut, "bearings-worn": cause.Open, "protector-hot": cause.Open}, "drum by hand", "common practice"},
		{"its rollers", dryer + "saw vent clear; saw door switch holds; saw restarts after cooling; saw rollers worn", nil, nil, map[string]cause.State{"bearings-worn": cause.Supported}, "mend: replace bearings", "common practice"},
		{"proved by a cycle", dryer + "saw vent blocked; did cleaned the vent; missing", []string{"the end of a cycle seen", "amp motor"}, nil, nil, "", "common practice"},
		{"the words of a client rule nothing out", oven + "safe", nil, nil, map[string]cause.State{"leg-missing": cause.Open, "heater-failed": cause.Open}, "ohms of the heater", "common practice"},
		{"the broil was seen to heat", oven + "saw broil works", nil, nil, map[string]cause.State{"leg-missing": cause.RuledOut, "no-supply": cause.RuledOut, "heater-failed": cause.Open}, "ohms of the heater", "common practice"},
		{"and the bake element is open", oven + "saw broil works; safe; ohm bake OL", []string{"failed"}, nil, map[string]cause.State{"heater-failed": cause.Supported}, "mend", "common practice"},
		{"a dryer has no other element", "unit electric dryer; fault no heat; next", nil, []string{"another element"}, nil, "", "common practice"},
	})
}

// A pump of two wires is read between them; what is left on runs; of leaks it has to
// be said which were looked for. Common practice.
func TestLinesAsTheyAreTyped(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"a pump that is open", "unit washer; fault wont drain; safe; plate leads 2; ohm 1 2 OL", []string{"The winding reads open"}, nil, map[string]cause.State{"winding-open": cause.Supported}, "", "common practice"},
		{"left on", "unit refrigerator; fault clicks; left on, told client to call", []string{"Left: on"}, nil, nil, "", "common practice"},
		{"no leaks in a fridge", "unit refrigerator; fault not cooling; saw no leaks", []string{"no leak found (a full search of all joints)", "bears on no cause"}, nil, map[string]cause.State{"refrigerant-low": cause.Open}, "", "common practice"},
		{"no leaks of a washer", "unit washer; fault leaks; saw no leaks", []string{"tubes, valve and hoses are dry"}, []string{"joints"}, nil, "", "common practice"},
		{"no leaks at a burner", "unit gas oven; fault no heat; saw no leaks", []string{"saw no gas leak"}, nil, nil, "", "common practice"},
	})
	for text, want := range map[string]string{"on, told client to call": said.Running, "on and cooling": said.Running, "on": said.Running, "on the counter": "", "off": "off"} {
		if got := said.StateLeft(text); got != want {
			t.Errorf("left %s is %q, want %q", text, got, want)
		}
	}
}

// One of three readings that miss their sum by a fifth is so wrong that their order
// tells no roles, and one that is too high shows no short; a smaller doubt stays in
// the head of the roles. Common practice; the triangle of resistances.
func TestReadingsThatDoNotAddUp(t *testing.T) {
	const fridge = "unit fridge; fault clicks, does not start; safe; "
	open := map[string]cause.State{"winding-shorted": cause.Open}
	checkTrade(t, []tradeCase{
		{"no roles", fridge + "ohm A B 3.2, A C 14, B C 5.1", []string{"no role is certain", "bad contact on the highest pair"}, []string{"shorted", "is common"}, open, "read the three pairs again", "common practice"},
		{"none by asking", fridge + "ohm A B 3.2, A C 14, B C 5.1; roles", []string{"not known"}, []string{"shorted", "is common"}, open, "", "common practice"},
		{"no evidence of a short", fridge + "ohm A B 3.2, A C 14, B C 5.1; why winding-shorted", nil, []string{"for:"}, open, "", "common practice"},
		{"an overload is chosen by its machine", fridge + "plate volts 115, amps 1.2; choose overload", []string{"Not known yet: gas", "One that closes when cool"}, []string{"Not known yet: plate amps", "No overload"}, nil, "", "common practice"},
		{"none for a drive", fridge + "plate type inverter; choose overload", []string{"No overload: the drive of an inverter"}, []string{"Not known yet"}, nil, "", "common practice"},
		{"none for a kit", fridge + "ohm A B 9.1, A C 9.2, B C 6.0; choose start-kit", []string{"Windings: does not add up"}, []string{"are does"}, nil, "", "common practice"},
		{"a doubt in the head", fridge + "ohm A B 4.00, A C 11.00, B C 18.00", []string{"Role, in doubt"}, nil, nil, "", "common practice"},
		{"it stays there", fridge + "ohm A B 4.00, A C 11.00, B C 18.00; roles", []string{"Role, in doubt"}, nil, nil, "", "common practice"},
		{"none when they add up", fridge + "ohm A B 4.00, A C 11.00, B C 15.00; roles", nil, []string{"doubt"}, nil, "", "common practice"},
	})
}
