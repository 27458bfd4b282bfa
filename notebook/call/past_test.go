package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// What runs past a protective device that is bridged says nothing of that device:
// common practice.
func TestSeenPastABridge(t *testing.T) {
	const source = "common practice"
	const furnace = "unit gas furnace; fault no heat; safe off; "
	open, shown, out := cause.Open, cause.Supported, cause.RuledOut
	checkTrade(t, []tradeCase{
		{"read open, then found bridged", furnace + "ohm limit OL; saw limit jumpered by previous tech; saw flame lights", nil, []string{"does not explain"}, map[string]cause.State{"limit-open": shown, "igniter-open": out, "gas-off": out}, "", source},
		{"found bridged", furnace + "saw limit jumpered out by previous guy; saw igniter glows; saw flame lights", nil, nil, map[string]cause.State{"limit-open": open, "press-open": open, "igniter-open": out}, "", source},
		{"the flame came first", furnace + "saw flame lights; saw limit jumpered out by previous guy", nil, nil, map[string]cause.State{"limit-open": open}, "", source},
		{"a pressure switch", furnace + "saw pressure switch jumpered; saw flame lights", nil, nil, map[string]cause.State{"press-open": open, "inducer-failed": out}, "", source},
		{"it conducts by itself", furnace + "saw limit jumpered by previous tech; saw flame lights; ohm limit 0.1", nil, nil, map[string]cause.State{"limit-open": out}, "", source},
		{"a flame once the bridge is off", furnace + "saw limit jumpered by previous tech; did removed jumper; saw flame lights", nil, nil, map[string]cause.State{"limit-open": out}, "", source},
		{"no bridge", furnace + "saw flame lights", nil, nil, map[string]cause.State{"limit-open": out, "press-open": out}, "", source},
		{"an earth that is off bridges nothing", furnace + "saw ground wire cut off; saw flame lights", nil, nil, map[string]cause.State{"limit-open": out}, "", source},
	})
	for lines, lacks := range map[string]string{
		furnace + "saw limit jumpered out by previous guy; saw igniter glows; saw flame lights; did removed jumper, replaced limit": "ruled out",
		furnace + "ohm limit OL; saw limit jumpered by previous tech; saw flame lights; did removed jumper, replaced limit":         "ruled out",
	} {
		r := applyAll(t, strings.Split(lines, "; ")...).Record()
		if slices.ContainsFunc(r.Alerts, func(s string) bool { return strings.Contains(s, lacks) }) {
			t.Errorf("%s: %q", lines, r.Alerts)
		}
	}
}

// A zone of a boiler that fires, an outdoor unit that stands, and a compressor that hums:
// common practice.
func TestOrdersOfComfort(t *testing.T) {
	const source = "common practice"
	open, shown, out := cause.Open, cause.Supported, cause.RuledOut
	const zone, dead = "a boiler that fires and does not heat a zone", "an outdoor unit that stands"
	const upstairs = "unit hot water boiler gas; fault no heat upstairs zone, boiler fires fine; safe off; "
	const ac = "unit central air conditioner; "
	const tripping = ac + "fault breaker trips when ac starts; plate volts 230, amps 15, lra 80, mfd herm 45, mfd fan 5; safe off; "
	const humming = ac + "fault outdoor unit hums and shuts off after a few seconds; plate volts 230, amps 15, lra 80, mfd herm 45, mfd fan 5; safe off; "
	const stands = ac + "fault indoor blower runs, outdoor unit dead, house 82 degrees; "
	checkTrade(t, []tradeCase{
		{"a zone", "unit hot water boiler gas; fault no heat upstairs zone, boiler fires fine", []string{zone}, nil, map[string]cause.State{"zone-valve-shut": open}, "see its valve open", source},
		{"bedrooms", "unit gas boiler; fault no heat in bedrooms, boiler running ok", []string{zone}, nil, nil, "", source},
		{"one of several", "unit boiler; fault one zone cold, other zones heat fine, burner runs", []string{zone}, nil, nil, "", source},
		{"radiators", "unit boiler; fault boiler hot but radiators cold; saw circulator stopped; saw zone valve opens", nil, nil, map[string]cause.State{"circulator-failed": open, "zone-valve-shut": out}, "", source},
		{"its valve's coil", upstairs + "ohm zone-valve OL; causes", nil, []string{"gas valve", "inducer"}, map[string]cause.State{"zone-valve-shut": shown}, "replace its head", source},
		{"the coil of its gas valve", upstairs + "ohm gas-valve OL", nil, []string{"supported"}, map[string]cause.State{"zone-valve-shut": open}, "", source},
		{"its proof", upstairs + "ohm zone-valve OL; did replaced zone valve coil", []string{"the zone seen to grow warm"}, []string{"a flame seen"}, nil, "", source},
		{"air", upstairs + "saw air in zone", nil, nil, map[string]cause.State{"zone-airbound": shown}, "", source},
		{"upstairs", "unit gas boiler; fault upstairs stays cold", []string{zone}, nil, nil, "", source},
		{"nothing heats", "unit gas boiler; fault no heat in any zone", nil, []string{zone}, nil, "", source},
		{"the boiler does not fire", "unit gas boiler; fault radiators cold, boiler not firing", nil, []string{zone}, nil, "", source},
		{"a contactor in a furnace", "unit gas furnace; fault no heat; safe off; ohm contactor-coil OL, zone-valve OL", nil, []string{"supported"}, map[string]cause.State{"gas-coil-open": open}, "", source},
		{"a gas valve in a furnace", "unit gas furnace; fault no heat; safe off; ohm gas-valve OL", nil, nil, map[string]cause.State{"gas-coil-open": shown}, "", source},

		{"trips at the start, its capacitor weak", tripping + "mfd herm 18, fan 4.9; causes", nil, []string{"cord or plug", "heater"}, map[string]cause.State{"run-cap-failed": shown}, "", source},
		{"trips at the start, its capacitor sound", tripping + "mfd herm 44.8, fan 4.9", nil, []string{"supported"}, map[string]cause.State{"compressor-tight": open}, "open its disconnect", source},
		{"an oven that trips has no capacitor", "unit electric oven; fault breaker trips; causes", nil, []string{"capacitor"}, nil, "unplug", source},
		{"hums, all sound, and starts with a kit", humming + "mfd herm 44.8, fan 4.9; ohm C R 0.9, C S 2.1, R S 3.0; ohm C case OL, R case OL, S case OL; saw starts with kit", nil, nil, map[string]cause.State{"compressor-tight": shown, "compressor-seized": out}, "", source},
		{"starts with a kit, its capacitor not read", humming + "saw starts with kit", nil, nil, map[string]cause.State{"compressor-tight": open, "compressor-seized": out}, "", source},

		{"the outdoor unit", ac + "fault indoor blower runs, outdoor unit dead, house 82 degrees", []string{dead}, nil, nil, "how it is set", source},
		{"the outside unit", ac + "fault inside blows but outside unit not running", []string{dead}, nil, nil, "", source},
		{"a blank thermostat", ac + "fault ac not coming on, thermostat blank", []string{dead}, nil, nil, "", source},
		{"nothing on it", ac + "fault nothing on the thermostat, ac wont come on", []string{dead}, nil, nil, "", source},
		{"frozen", ac + "fault ac froze up", []string{"an air conditioner that does not cool"}, nil, nil, "", source},
		{"it hums", ac + "fault outdoor unit won't start, just hums", []string{"an air conditioner that does not cool"}, nil, nil, "", source},
		{"its fan alone", ac + "fault outdoor fan dead, not cooling", []string{"an air conditioner that does not cool"}, nil, nil, "", source},
		{"it does not stop", ac + "fault outdoor unit wont shut off", nil, []string{dead}, nil, "", source},
		{"its contactor called and open", stands + "volt Y C 26.1 run; safe off; ohm contactor-coil OL", nil, nil, map[string]cause.State{"contactor-coil-open": shown, "control-not-calling": out}, "the contactor", source},
		{"not called", stands + "volt Y C 0.0 run", nil, nil, map[string]cause.State{"contactor-coil-open": out, "pole-open": out, "control-not-calling": open}, "", source},
		{"no control volts, its fuse open", ac + "fault ac not coming on, thermostat blank; volt R C 0.0; safe off; ohm fuse OL", nil, nil, map[string]cause.State{"fuse-open": shown, "control-volts-low": shown}, "fuse", source},
		{"a chewed wire", stands + "saw y wire chewed by weed eater", nil, []string{"none of the listed"}, map[string]cause.State{"wire-at-metal": shown}, "", source},
		{"a float switch", stands + "saw float switch tripped, drain pan full", nil, []string{"none of the listed"}, map[string]cause.State{"pan-drain-blocked": shown}, "drain", source},
		{"not cooling, its contactor's coil open", ac + "fault not cooling; safe off; ohm contactor-coil OL", nil, nil, map[string]cause.State{"contactor-coil-open": shown}, "", source},
		{"a reversing valve's coil is no contactor's", ac + "fault not cooling; safe off; ohm reversing-valve OL", nil, []string{"supported"}, nil, "", source},

		{"a valve on both legs, no plate", "unit ice machine; fault slab does not drop; volt hot-gas-valve 236 run", []string{"of 230 V"}, []string{"115 V"}, nil, "", source},
		{"a valve on one leg, no plate", "unit ice machine; fault slab does not drop; volt hot-gas-valve 118 run", []string{"of 115 V"}, nil, nil, "", source},
	})
}
