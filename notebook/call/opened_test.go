package call

import (
	"slices"
	"strings"
	"testing"

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
