package call

import (
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// What the words of an appliance mean in it: a spark that does not stop, the air and ice
// of a dehumidifier, the outdoor fan of an air conditioner, one pair of three that is low.
// Common practice throughout.
func TestWordsOfItsOwn(t *testing.T) {
	const source = "common practice"
	state := func(s cause.State, codes ...string) map[string]cause.State {
		out := map[string]cause.State{}
		for _, c := range codes {
			out[c] = s
		}
		return out
	}
	const (
		iced  = "unit dehumidifier; fault runs all day, very little water in bucket; saw evap coil iced"
		three = "unit rooftop unit 10 ton three phase; fault trips breaker on compressor start; plate volts 460, phase 3, amps 16; safe off; "
		legs  = "ohm T1 T2 1.12, T2 T3 0.56, T1 T3 1.11; ohm T1 case OL, T2 case OL, T3 case OL"
	)
	checkTrade(t, []tradeCase{
		{"it sparks on", "unit gas range; fault igniter keeps sparking even when burner is off", []string{"whose spark does not stop"}, []string{"Caution: Smoke"}, nil, "harness", source},
		{"it clicks on", "unit gas cooktop; fault burners click nonstop; saw spark switch wet", nil, []string{"motor"}, state(cause.Supported, "spark-called"), "dry and clean", source},
		{"after it is lit", "unit gas range; fault keeps clicking after burner is lit; saw sparks with harness off", nil, nil, state(cause.Supported, "spark-module"), "replace the module", source},
		{"it is proved", "unit gas range; fault keeps clicking; saw spark switch wet; did cleaned spark switches; saw stops sparking; missing", nil, []string{"Missing: proof: that it sparks"}, nil, "", source},
		{"it clicks and does not light", "unit gas range; fault keeps clicking but wont light", []string{"does not heat"}, nil, nil, "igniter glows", source},
		{"a fridge that clicks on", "unit fridge; fault keeps clicking", nil, []string{"spark"}, nil, "", source},
		{"an electric range", "unit electric range; fault element keeps sparking", []string{"Caution: Smoke"}, []string{"spark does not stop"}, nil, "", source},

		{"a hood that draws nothing", "unit restaurant exhaust hood fan; fault fan runs but no suction, kitchen full of smoke; saw belt broken", []string{"Cause supported: belt"}, []string{"Caution: Smoke"}, state(cause.Supported, "belt-broken"), "replace the belt", source},
		{"a hood by its smoke", "unit exhaust hood; fault doesn't clear smoke from cooking", []string{"draws too little"}, []string{"Caution: Smoke"}, state(cause.Open, "airflow-blocked", "belt-broken"), "filter", source},
		{"a hood on three phases", "unit three phase exhaust fan; fault barely pulls air", nil, nil, state(cause.Open, "wrong-rotation"), "", source},
		{"its motor smokes", "unit range hood; fault motor smokes", []string{"Caution: Smoke"}, nil, nil, "power off", source},
		{"it does not turn", "unit exhaust fan; fault fan does not turn", []string{"a motor that does not turn"}, nil, nil, "", source},

		{"ice tells nothing of the charge", iced, nil, nil, state(cause.Open, "refrigerant-low", "restriction", "room-cold", "airflow-blocked", "sensor-failed"), "", source},
		{"ice by other words", "unit dehumidifier; fault bucket stays empty; saw iced over", nil, nil, state(cause.Open, "refrigerant-low", "restriction"), "", source},
		{"its fan by another name", iced + "; saw blower runs", nil, nil, state(cause.RuledOut, "cond-fan-failed", "cond-fan-unfed"), "", source},
		{"its fan stands", iced + "; saw blower stopped", nil, nil, state(cause.Supported, "cond-fan-failed"), "", source},
		{"a cold room", "unit dehumidifier; fault runs but bucket never fills; temp room 58F", nil, nil, state(cause.Supported, "room-cold"), "warmer room", source},
		{"a warm room", iced + "; temp room 75F", nil, nil, state(cause.RuledOut, "room-cold"), "", source},
		{"a room on the edge", iced + "; temp room 65F", nil, nil, state(cause.Open, "room-cold"), "", source},
		{"a freezer packed with ice", "unit freezer; fault not cooling; saw evap coil iced", nil, nil, state(cause.RuledOut, "refrigerant-low", "restriction"), "", source},

		{"a pair at half of its plate", three + "plate ohms 1.12; " + legs + "; ohm T2 case OL; roles", []string{"T2–T3 reads far below the 1.12 Ω"}, nil, state(cause.Supported, "winding-shorted"), "its leads off at the contactor", source},
		{"read again", three + "plate ohms 1.12; " + legs + "; ohm T2 T3 0.55", nil, nil, state(cause.Supported, "winding-shorted"), "replace the machine", source},
		{"without a plate", three + legs, nil, nil, state(cause.Open, "winding-shorted"), "its leads off at the contactor", source},
		{"within its plate", three + "plate ohms 1.15; ohm T1 T2 1.12, T2 T3 1.10, T1 T3 1.11", []string{"read alike"}, []string{"far below"}, state(cause.RuledOut, "winding-shorted"), "", source},

		{"the outdoor fan", "unit central air conditioner; fault not cooling; saw cond-fan stopped; ohm fan OL", []string{"cond-fan: failed"}, []string{"blower"}, nil, "", source},
		{"the indoor fan", "unit central air conditioner; fault not cooling; saw blower stopped; ohm fan OL", []string{"blower OL"}, nil, nil, "", source},
	})
}

// A capacitor that read sound is no fan that did, and one motor is one fan.
func TestSoundCapacitorIsNoFan(t *testing.T) {
	const ac = "unit central air conditioner; fault not cooling, outdoor fan dead; plate volts 230, mfd herm 40, mfd fan 5; mfd fan 5.0, herm 40.2; saw cond-fan stopped; saw cond-fan stiff; "
	for _, work := range []string{"did replaced condenser fan motor", "did replaced condenser fan motor; part fan motor 1/4 hp, 1, 120", "did replaced fan motor"} {
		r := applyAll(t, strings.Split(ac+work, "; ")...).Record()
		got := strings.Join(r.Alerts, "\n") + strings.Join(r.Missing, "\n")
		if strings.Contains(got, "had read sound") || strings.Contains(got, "the fan seen to run") || !strings.Contains(got, "the condenser fan seen to run") {
			t.Errorf("%s: %s", work, got)
		}
	}
}
