package call

import (
	"slices"
	"strings"
	"testing"
)

// What is bridged is named, with the words that clear it, wherever it is told of;
// when it is back, nowhere: common practice.
func TestBridgedIsNamedUntilItIsBack(t *testing.T) {
	const clear = "when it is: did jumper off"
	before := []string{"client Petra Placeholder", "unit dryer", "fault no heat"}
	for _, line := range []string{"did jumpered thermal fuse to test", "saw thermal fuse jumpered", "note found thermal fuse jumpered"} {
		c := applyAll(t, before...)
		if got := must(t, c, line).Reply.Plain(); !strings.Contains(got, clear) {
			t.Errorf("%s: %q does not hold %q", line, got, clear)
		}
		for _, ask := range []string{"next", "missing", "close"} {
			if got := must(t, c, ask).Reply.Plain(); !strings.Contains(got, clear) || !strings.Contains(got, "(entry 4") && !strings.Contains(got, "entry 4") {
				t.Errorf("%s, %s: %q does not hold %q", line, ask, got, clear)
			}
		}
		for _, back := range []string{"did jumper off", "did removed the jumper", "did replaced thermal fuse", "did put the fuse back", "did thermal fuse was refitted", "note jumper removed"} {
			c := applyAll(t, append(slices.Clone(before), line, back)...)
			if list := c.bridged(); len(list) > 0 {
				t.Errorf("%s, %s: %v", line, back, list)
			}
			if got := must(t, c, "missing").Reply.Plain() + must(t, c, "next").Reply.Plain() + must(t, c, "close").Reply.Plain(); strings.Contains(got, "circuit") || c.Record().Header.Result == "unsafe" {
				t.Errorf("%s, %s: %s; %s", line, back, c.Record().Header.Result, got)
			}
		}
		for _, other := range []string{"did replaced line fuse", "did refitted door switch", "note replaced thermal fuse", "part thermal fuse, 1, 9", "ohm limit 0.1 closed"} {
			c := applyAll(t, append(slices.Clone(before), line, other)...)
			if len(c.bridged()) == 0 || c.Record().Header.Result != "unsafe" {
				t.Errorf("%s, %s: it counts as back", line, other)
			}
		}
	}
}

// What is read of earth while its pin is cut off the plug puts no pin back.
func TestEarthReadWithoutItsPin(t *testing.T) {
	for line, want := range map[string]int{"note ground wire left off": 0, "note ground pin cut off the plug": 1, "fault dead, ground prong cut off the plug": 1} {
		lines := []string{"unit washer", line, "safe plug pulled, 0 V", "ohm earth 0.05 test 10A"}
		if got := len(applyAll(t, lines...).bridged()); got != want {
			t.Errorf("%s: %d", line, got)
		}
		if got := applyAll(t, append(lines, "did fitted new plug")...).bridged(); len(got) > 0 {
			t.Errorf("%s, new plug: %v", line, got)
		}
	}
}

// A client tells of a bridge in the complaint too; what is out of order there is a
// fault.
func TestBridgedByTheComplaint(t *testing.T) {
	for line, want := range map[string]bool{
		"fault no heat, the door interlock is taped": true, "fault water drips, float switch was cut out by the last man": true, "fault no heat, they put a bigger breaker in": true,
		"fault float switch cut out and spliced": true, "fault cover left off, live parts open": true, "fault earth wire is off at the compressor": true, "fault breaker too big for the wire": true,
		"fault no heat, thermostat is out": false, "fault high limit cut out": false, "fault door switch pushed in but nothing": false, "fault float stuck up": false, "fault cord pulled out": false, "fault overload trips": false,
		"fault runs only with the lid switch bypassed": true, "fault does not heat, last man jumpered the fuse": true, "fault no heat, fuse out": false, "fault light switch off": false} {
		if got := len(applyAll(t, "unit washer", line).bridged()) > 0; got != want {
			t.Errorf("%s: %v", line, got)
		}
	}
}

// A jumper put on or taken off is a test: what was looked for is looked for still.
func TestBridgeIsNoRepair(t *testing.T) {
	c := applyAll(t, "unit dryer", "fault no heat", "did jumpered thermal fuse", "did took the jumper off")
	if n := c.repairs(); len(n) > 0 {
		t.Errorf("repairs %v", n)
	}
	if got := must(t, c, "next").Reply.Plain(); strings.Contains(got, "prove the repair") {
		t.Error(got)
	}
}

// The earth path that is read from pin to metal is back; behind an adapter it is not
// read: common practice.
func TestEarthReadIsBack(t *testing.T) {
	for line, back := range map[string]bool{"did disconnected ground wire": true, "did used cheater cord": false, "did jumpered thermal fuse": false} {
		c := applyAll(t, "unit washer", "fault no spin", line, "ohm earth 0.05")
		if got := len(c.bridged()) == 0; got != back {
			t.Errorf("%s: back %v, want %v", line, got, back)
		}
	}
}
