package cause

import "strings"

// workWords holds, by cause, the words of work that mends it: a text speaks of
// it when each word of one phrase begins a word of the text. They tell whether
// anything was done about a cause, not whether it was done well.
var workWords = map[string][]string{
	"compressor-off":         {"start", "compressor"},
	"set-wrong":              {"set", "dial", "turn"},
	"heavy-use":              {"explain", "advis", "told", "show"},
	"room-hot":               {"move", "room", "ventilat"},
	"gasket-leaks":           {"gasket", "seal", "door"},
	"lamp-stays-on":          {"lamp", "light", "door switch"},
	"vents-blocked":          {"vent", "passage", "duct", "damper", "air"},
	"condenser-dirty":        {"clean cond", "clean coil", "brush", "vacuum", "dust"},
	"cond-fan-failed":        {"cond fan", "fan motor", "fan blade", "fan replac"},
	"cond-fan-unfed":         {"cond fan", "wir", "connector", "harness", "board"},
	"evap-fan-failed":        {"evap fan", "fan motor", "fan blade", "freezer fan", "fan replac"},
	"evap-fan-unfed":         {"evap fan", "wir", "connector", "harness", "door switch", "board"},
	"evaporator-iced":        {"thaw", "defrost", "ice"},
	"heater-failed":          {"heater", "element", "bake", "broil", "igniter"},
	"limit-open":             {"limit", "thermal", "thermostat", "fuse", "bimetal", "cutoff"},
	"defrost-control-failed": {"timer", "control", "board"},
	"drain-blocked":          {"drain"},
	"pan-cracked":            {"pan"},
	"water-line-leaks":       {"tube", "line", "valve", "hose"},
	"not-level":              {"level", "feet", "foot"},
	"thermostat-stuck":       {"thermostat", "control"},
	"control-stuck":          {"control", "board", "relay"},
	"sensor-failed":          {"sensor", "thermistor", "ntc", "rtd", "probe"},
	"sensor-cold":            {"sensor", "thermistor", "ntc", "rtd", "probe"},
	"damper-stuck":           {"damper"},
	"refrigerant-low":        {"leak", "braz", "charg", "refrigerant"},
	"restriction":            {"drier", "capillary", "cap tube", "filter"},
	"air-in-system":          {"evacuat", "charg", "recover"},
	"compressor-weak":        {"compressor"},
	"leg-missing":            {"leg", "breaker", "electrician", "supply", "outlet", "wir"},
	"cord-open":              {"cord", "plug"},
	"fuse-open":              {"fuse"},
	"switch-open":            {"switch", "lock", "latch", "interlock"},
	"control-dead":           {"control", "board"},
	"circuit-fault":          {"electrician", "outlet", "circuit", "breaker", "wir"},
	"circuit-overloaded":     {"electrician", "outlet", "circuit", "breaker", "wir"},
	"cord-shorted":           {"cord", "plug"},
	"wires-shorted":          {"wir", "harness"},
	"heater-grounded":        {"heater", "element", "bake", "broil"},
	"insulation-weak":        {"compressor", "motor", "machine", "pump"},
	"airflow-blocked":        {"vent", "filter", "duct", "lint", "fan", "air", "flue"},
	"speed-switch-open":      {"switch", "selector"},
	"load-jammed":            {"pump", "drum", "jam", "blade", "clear", "took out"},
	"belt-broken":            {"belt"},
	"brushes-worn":           {"brush"},
	"motor-seized":           {"motor", "bearing", "pump"},
	"winding-grounded":       {"compressor", "motor", "machine", "pump", "fan"},
	"no-supply":              {"breaker", "outlet", "supply", "electrician", "fuse", "plug"},
	"supply-weak":            {"cord", "outlet", "electrician", "supply", "circuit", "plug"},
	"control-not-calling":    {"thermostat", "control", "board", "sensor", "timer"},
	"connection-weak":        {"terminal", "connect", "wir", "lug", "joint", "plug"},
	"miswired":               {"wir", "rewir"},
	"start-device-failed":    {"start", "relay", "ptc", "device", "kit"},
	"start-cap-failed":       {"cap"},
	"run-cap-failed":         {"cap"},
	"winding-open":           {"compressor", "motor", "machine", "pump", "fan"},
	"winding-shorted":        {"compressor", "motor", "machine", "pump", "fan"},
	"protector-hot":          {"cool", "fan", "condenser", "protector"},
	"protector-failed":       {"protector", "compressor", "motor"},
	"overload-hot":           {"cool", "fan", "condenser", "overload"},
	"overload-failed":        {"overload", "start device", "compressor"},
	"pressure-unequalised":   {"rest", "wait", "plug", "thermostat", "timer"},
	"drive-fault":            {"drive", "inverter", "board"},
	"compressor-tight":       {"kit", "compressor", "start"},
	"compressor-seized":      {"compressor"},
}

// Mends reports whether a text of work, or the name of a part fitted, speaks
// of what mends a cause.
func Mends(code, text string) bool {
	words := fold(text)
	for _, phrase := range workWords[code] {
		all := true
		for _, p := range strings.Fields(phrase) {
			found := false
			for _, w := range words {
				found = found || strings.HasPrefix(w, p)
			}
			all = all && found
		}
		if all {
			return true
		}
	}
	return false
}

// Apart reports whether two causes cannot both be there: one predicts what the
// other contradicts.
func Apart(a, b *Cause) bool {
	v := vocabulary()
	fits := func(c *Cause) set { return v.set(append(append([]string(nil), c.Predicts...), c.ShownBy...)) }
	shared := v.set(a.ShownBy).and(v.set(b.ShownBy))
	return fits(a).minus(shared).meets(v.set(b.Contradicts)) || fits(b).minus(shared).meets(v.set(a.Contradicts))
}
