package call

import (
	"slices"
	"testing"
	"time"
)

// An expectation waits for what may still be written down, and for nothing else,
// whatever its words are.
func TestExpectationsWaitForWhatMayCome(t *testing.T) {
	for line, waits := range map[string]bool{
		`expect ohm(A, B) < 5ohm "short"`:              true,
		`expect volt(line, start) > 100V "no sag"`:     true,
		`expect amp(comp) < plate(amps) "by plate"`:    true,
		`expect seen("it was read") "read"`:            false,
		`expect seen("the plate holds no number") "x"`: false,
		`expect nosuch > 1 "x"`:                        false,
	} {
		c := New()
		e, err := c.Apply(time.Unix(0, 0), line)
		if got := err == nil && slices.Contains(e.Reply.Flags, "expectation-waits"); got != waits || waits == (err != nil) {
			t.Errorf("%s waits: %v (%v)", line, got, err)
		}
	}
}
