package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// TestTightness wants a leak test of every joint that work opened, of fuel gas and
// of refrigerant that burns or not, after it (common practice).
func TestTightness(t *testing.T) {
	gas := []string{"client Sample", "unit gas oven", "fault oven stays cold", "safe unplugged"}
	lit := []string{"saw igniter glows", "saw flame lights", "temp oven 350F", "ohm earth 0.05"}
	for name, x := range map[string]struct {
		lines   []string
		want    string // part of what is missing, "" for nothing
		caution string // a flag that one of the replies has
	}{
		"a gas valve":           {slices.Concat(gas, []string{"part gas valve, 1, 90", "did replaced gas valve"}, lit), "every gas joint", "caution-fuel-gas"},
		"a pilot":               {slices.Concat(gas, []string{"did replaced pilot"}, lit), "every gas joint", "caution-fuel-gas"},
		"tested before":         {slices.Concat(gas, []string{"saw no gas leak", "did replaced gas valve"}, lit), "every gas joint", "caution-fuel-gas"},
		"tested after":          {slices.Concat(gas, []string{"did replaced gas valve"}, lit, []string{"saw no gas leak"}), "", ""},
		"tested, in few words":  {slices.Concat(gas, []string{"did replaced gas valve"}, lit, []string{"saw no leak found"}), "", ""},
		"other work after":      {slices.Concat(gas, []string{"did replaced gas valve", "saw igniter dark", "did replaced igniter"}, lit), "every gas joint", ""},
		"an igniter":            {slices.Concat(gas, []string{"did replaced igniter"}, lit), "", ""},
		"struck":                {slices.Concat(gas, []string{"did replaced gas valve", "did replaced igniter", `strike 5 "the igniter"`}, lit), "", ""},
		"a water valve":         {[]string{"unit washer", "fault does not fill", "did replaced valve"}, "-every gas joint", ""},
		"a compressor":          {[]string{"unit fridge", "fault not cooling", "plate gas R-600a", "safe", "did fitted new compressor, brazed, charged 40g"}, "every refrigerant joint", "caution-flammable-gas"},
		"one that does not":     {[]string{"unit fridge", "fault not cooling", "plate gas R-134a", "safe", "part compressor C1, 1, 90"}, "every refrigerant joint", "caution-sealed-system"},
		"an evaporator":         {[]string{"unit fridge", "fault not cooling", "did replaced evaporator"}, "every refrigerant joint", "caution-sealed-system"},
		"a compressor, tested":  {[]string{"unit fridge", "fault not cooling", "did replaced compressor", "saw no leak found"}, "-every refrigerant joint", ""},
		"no gas leak, they say": {[]string{"unit fridge", "fault not cooling", "did replaced compressor", "saw no gas leak"}, "-every refrigerant joint", ""},
		"a fan":                 {[]string{"unit fridge", "fault not cooling", "did replaced evaporator fan"}, "-every refrigerant joint", ""},
	} {
		c := applyAll(t, x.lines...)
		m := strings.Join(c.missing(), "; ")
		not, absent := strings.CutPrefix(x.want, "-")
		if x.want == "" && m != "" || absent && strings.Contains(m, not) || !absent && !strings.Contains(m, x.want) {
			t.Errorf("%s: missing %s", name, m)
		}
		if !absent && (c.result() == record.Proved) != (x.want == "") {
			t.Errorf("%s: result %s", name, c.result())
		}
		if x.caution != "" && !slices.ContainsFunc(c.entries[2:], func(e Entry) bool { return slices.Contains(e.Reply.Flags, x.caution) }) {
			t.Errorf("%s: no %s", name, x.caution)
		}
	}
}

// TestGasShutForWork takes a cock shut for work for no cause of the fault, and one
// that was found shut for it (common practice).
func TestGasShutForWork(t *testing.T) {
	const found = "no gas at the burner"
	for lines, want := range map[string]bool{
		"saw gas off": true,
		"saw igniter glows; saw no flame; saw gas off":                       true,
		"plate igniter 3.2-3.6; amp igniter 3.4; saw gas off":                true,
		"plate igniter 3.2-3.6; amp igniter 2.6; saw gas off":                false,
		"saw gas off; plate igniter 3.2-3.6; amp igniter 2.6":                true,
		"safe unplugged; saw gas off":                                        false,
		"saw gas off; safe unplugged":                                        false,
		"safe gas off; saw gas off":                                          false,
		"saw flame lights then goes out; saw gas off":                        false,
		"saw gas on; saw gas off":                                            false,
		"did replaced igniter; saw gas off":                                  false,
		"saw igniter weak; saw gas off; strike 3 slip":                       true,
		"saw igniter weak; saw gas off":                                      false,
		"ohm igniter OL; saw gas off":                                        false,
		"plate igniter 3.2-3.6; amp igniter 2.6; strike 4 slip; saw gas off": true,
	} {
		c := applyAll(t, append([]string{"unit gas oven", "fault oven stays cold"}, strings.Split(lines, "; ")...)...)
		weighed := c.weigh(math.MaxInt)
		if got := strings.Contains(c.Record().Header.Cause, found) || slices.Contains(weighed.Codes(cause.Supported), "gas-off"); got != want {
			t.Errorf("%s: no gas is the cause %v, want %v (%s)", lines, got, want, c.Record().Header.Cause)
		}
	}
	c := applyAll(t, "unit gas oven", "fault oven stays cold", "safe gas off")
	if len(c.dead) > 0 {
		t.Error("a gas cock takes the power off")
	}
	if _, err := c.Apply(nine, "gas off"); err == nil || !strings.Contains(hintOf(err), "safe unplugged, gas off") {
		t.Errorf("gas off: %v", err)
	}
	must(t, c, "safe unplugged, gas off")
}
