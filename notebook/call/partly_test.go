package call

import (
	"strings"
	"testing"
)

// A test that left a place out, and an end that is yet to come, take no danger off; the
// whole of one does (common practice).
func TestPartlyGone(t *testing.T) {
	for _, x := range []struct {
		call        string
		stays, gone string // parted by |
	}{
		{"unit gas range; fault no heat; saw smell of gas",
			"saw no gas leak at the meter, did not test inside|saw no gas leak at the range, did not check the line|saw no gas leak found so far|saw no gas leak found, one joint not reached|saw no gas leak with my nose" +
				"|saw gas leak test good, regulator still to test|saw no gas leak with the gas off|saw no gas leak, not sure|saw no gas leak, windows open|did leak test good on one joint only|did gas leak test good apart from the hose|did gas leak test good, could not reach the union|note no gas leak so far",
			"saw no gas leak|saw no gas leak, did not see a bubble|saw gas leak test good, all joints soaped|saw gas leak test good, meter did not move|saw no gas leak at the range and the line|did tightened the union, gas leak test good|note could not reach her before, gas leak test good"},
		{"unit gas furnace; fault no heat; saw co alarm", "saw spill test good, co 0 ppm, did not test upstairs|saw spill test good, co 0 ppm with the furnace off|saw spill test good, co 0 ppm so far|did spill test good, co 0 ppm with window open",
			"saw spill test good, co 0 ppm|saw spill test good, co 0 ppm when hot"},
		{"unit dryer; fault no heat; note fan guard missing", "saw hazard gone soon|saw hazard gone next week|saw hazard gone as soon as they buy a guard|saw hazard gone when they fit a guard|saw hazard gone if they buy it|saw hazard gone, guard still to come|saw hazard gone? customer wants it so|saw hazard gone by friday|saw hazard gone as far as they say",
			"saw hazard gone|saw hazard gone, new guard on with four bolts|saw hazard gone after the guard was fitted"},
		{"unit conveyor motor; fault does not run; note belt guard missing", "did new belt fitted|did guard ordered|did guard to be refitted|did new guard when it comes|did guard not put back|did fitted guard bracket|note guard back on|did guard refitted except on the left side",
			"did guard refitted|did made and bolted on a new belt guard|did belt guard back|did guard back on, hazard gone"},
		{"unit electric water heater; fault no hot water; note relief valve plugged", "did replaced the thermostat|did fitted new pipe to the relief valve|did new relief valve pipe|did relief valve to be replaced|did quoted new relief valve",
			"did replaced the relief valve and ran its pipe to the floor|did new relief valve on, hazard gone|did plug taken out and new T&P fitted|did new relief valve"},
		{"unit electric water heater; fault no hot water; note relief valve plugged; note bare wires at the element", "did replaced the relief valve|saw hazard gone", "saw hazards gone|saw both hazards gone|saw no hazard"},
		{"unit electric water heater; fault no hot water; note relief valve plugged, cord chewed", "did replaced the relief valve", "saw hazard gone"},
		{"unit dryer; fault no heat; saw unsafe", "saw safe to use with rubber shoes|saw safe to use if they mind the cord|saw safe to use when mended", "saw safe to use|saw safe to use, cord renewed"},
	} {
		for i, lines := range []string{x.stays, x.gone} {
			for _, line := range strings.Split(lines, "|") {
				c := applyAll(t, append(strings.Split(x.call, "; "), line)...)
				if stands := len(c.alarms()) > 0; stands != (i == 0) {
					t.Errorf("%s; %s: stands is %t", x.call, line, stands)
				}
			}
		}
	}
}
