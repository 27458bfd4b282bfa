package call

import (
	"slices"
	"strings"
	"testing"
)

// What was struck is gone: the call stands as if it had not been typed.
func TestStruckLeavesNothing(t *testing.T) {
	for name, x := range map[string]struct {
		lines  []string
		struck int // the line that is struck behind the lines before after
		after  []string
	}{
		"a smell of gas, and the cock shut since": {[]string{"unit gas dryer", "fault does not heat", "saw gas smell", "saw igniter glows"}, 3, []string{"saw gas off"}},
		"a need met by a finding":                 {[]string{"fault clicks", "need saw", "saw clicks"}, 3, nil},
		"a need met by a plate":                   {[]string{"fault clicks", "need plate", "plate volts 115"}, 3, nil},
		"what was read of a unit not touched":     {[]string{"fault clicks", "ohm heater 30"}, 2, []string{"close called off, nobody home"}},
		"a machine put at hand":                   {[]string{"unit washer", "fault hums", "on pump"}, 3, []string{"plate amps 1", "show"}},
		"what hid the reason for a repair":        {[]string{"fault clicks", "saw clicks", "ohm ptc OL cold", "ohm ptc 5 cold", "did replaced start device"}, 4, []string{"saw clicks"}},
	} {
		with := applyAll(t, slices.Concat(x.lines, []string{"strike " + itoa(x.struck) + " slip"}, x.after)...)
		bare := applyAll(t, slices.Concat(slices.Delete(slices.Clone(x.lines), x.struck-1, x.struck), x.after)...)
		got, want := stands(with), stands(bare)
		if got != want {
			t.Errorf("%s: after the strike\n%s\nwithout the line\n%s", name, got, want)
		}
	}
}

// stands is where a call stands, the numbers of its entries left out, and the
// cautions: each is given once, whatever becomes of the line that it came with.
func stands(c *Call) string {
	e, err := c.Apply(c.at, "next")
	if err != nil {
		return err.Error()
	}
	told := slices.DeleteFunc(e.Reply.PlainLines(), func(s string) bool { return strings.HasPrefix(s, "Caution:") })
	text := strings.Join(append(told, c.missing()...), "\n") + "\n" + c.result()
	return strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return -1
		}
		return r
	}, text)
}

// What was found before a repair may mean another thing by what is found after it,
// whether it was asked for in between or not.
func TestFoundIsNoOlderThanWhatIsKnown(t *testing.T) {
	lines := []string{"unit walk-in cooler, three phase", "fault does not start", "volt L1 L2 231, L2 L3 5, L1 L3 4", "did tightened terminals", "show", "saw fuse open"}
	want := stands(applyAll(t, slices.Concat(lines, []string{"tech Tessa Template"})...))
	if got := stands(applyAll(t, lines...)); got != want {
		t.Errorf("it stands so\n%s\nand after a line that bears on nothing so\n%s", got, want)
	}
}
