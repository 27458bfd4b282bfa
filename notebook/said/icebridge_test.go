package said

import (
	"strings"
	"testing"
)

// A bridge of ice is no bypass, and a bypass in a machine that makes ice is no ice:
// common practice.
func TestIceBridge(t *testing.T) {
	for _, x := range []struct {
		of  []bool // what makes ice, or nothing that does
		out bool
		say string
	}{
		{[]bool{true}, false, "thin ice, long harvest, bridge won't drop|bridge breaks slow|bridge fell ok|bridges hang up on evap|bridging too thick|bridge thickness 1/8 inch|adjusted bridge thickness|bridge thickness probe set|" +
			"cubes bridged together|ice bridged in the bin|bridge too thin|left a bridge of ice on the evap|batch bridged and fell late|bridge does not break|bridge weight low|bridge 3 mm|bridge thickness control adjusted"},
		{[]bool{true, false}, false, "ice bridge 3mm|ice bridging, slab too thick|ice bridges in bucket|cubes are bridged"},
		{[]bool{true, false}, true, "bridged the bin switch|bridge across the high pressure switch|bridged the safety limit, bridge of ice fell|" +
			"bridged out the overload|found the high limit bridged|bridged high pressure cutout, ice good|harvest thermostat bridged"},
		{[]bool{false}, true, "bridge won't drop|bridged"},
	} {
		for _, say := range strings.Split(x.say, "|") {
			for _, ice := range x.of {
				if got := len(Out(Guards(1, say, true, ice))) > 0; got != x.out {
					t.Errorf("%q, ice %v: %v", say, ice, got)
				}
			}
		}
	}
}
