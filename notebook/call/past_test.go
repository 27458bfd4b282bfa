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
