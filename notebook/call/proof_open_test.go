package call

import (
	"strings"
	"testing"
)

// A device that last read open stays a point of the proof until it is renewed or read
// again, whatever runs and whatever else was renewed: common practice.
func TestOpenDeviceStays(t *testing.T) {
	const (
		dryer  = "unit electric dryer; fault no heat; "
		hot    = "; amp heater 22.4 run; temp exhaust 140F"
		washer = "unit top load washer; fault won't spin; ohm lid-switch OL closed; saw belt broken; "
		tank   = "unit electric water heater; fault no hot water; "
	)
	for lines, want := range map[string]string{
		dryer + "ohm thermal-fuse OL; ohm hi-limit OL; did replaced hi limit; ohm hi-limit 0.10" + hot:                      "thermal-fuse",
		dryer + "ohm thermal-fuse OL; ohm hi-limit OL; did replaced thermal fuse" + hot:                                     "hi-limit",
		dryer + "ohm thermal-fuse OL; ohm hi-limit OL; did replaced hi limit; ohm thermal-fuse 0.10" + hot:                  "",
		dryer + "ohm thermal-fuse OL; ohm hi-limit OL; did replaced hi limit and thermal fuse" + hot:                        "",
		dryer + "ohm thermal-fuse OL; ohm hi-limit OL; did replaced both limits" + hot:                                      "",
		dryer + "ohm tco OL; ohm hi-limit OL; did fitted thermal cut-off kit" + hot:                                         "",
		dryer + "ohm thermal-fuse OL; strike 3 probe slipped; ohm hi-limit OL; did replaced hi limit" + hot:                 "",
		dryer + "ohm thermal-fuse OL; did replaced limit fuse" + hot:                                                        "",
		dryer + "ohm thermal-fuse OL; did mended it" + hot:                                                                  "",
		"unit gas dryer; fault no heat; ohm thermal-fuse OL; ohm thermal-cutoff OL; did new thermal fuse; saw flame lights": "thermal-cutoff",
		"unit microwave; fault dead, no display; ohm fuse OL; ohm tco OL; did new fuse; ohm fuse 0.1; saw heats":            "tco",
		"unit microwave; fault dead, no display; ohm fuse OL; ohm tco OL; did new fuse, new tco; ohm fuse 0.1; saw heats":   "",
		washer + "did new belt; saw spins":                                                                       "lid-switch",
		washer + "did new belt; saw spins; ohm lid-switch 0.1 closed":                                            "",
		washer + "did new belt, new lid switch; saw spins":                                                       "",
		washer + "did replaced lid lock assembly; saw spins":                                                     "",
		tank + "ohm upper-element OL; ohm lower-element OL; did new lower element; temp water 130F":              "upper-element",
		tank + "ohm upper-element OL; ohm lower-element OL; did replaced both elements; temp water 130F":         "",
		tank + "ohm upper-element OL; ohm lower-element OL; did new top element, lower element; temp water 130F": "",
		"unit electric oven; fault no bake; ohm bake OL; ohm broil OL; did new bake element; temp oven 350F":     "broil",
		"unit electric oven; fault no bake; ohm bake OL; did new element; temp oven 350F":                        "",
		"unit dryer; fault drum does not turn; ohm lamp OL; did new belt; saw drum turns":                        "",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		got := ""
		for _, p := range c.proofMissing() {
			if part, _, ok := strings.Cut(p, " renewed, or read again: "); ok {
				got += part
			}
		}
		if got != want {
			t.Errorf("%s: %q is still open, want %q: %q", lines, got, want, c.proofMissing())
		}
	}
}
