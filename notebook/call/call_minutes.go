package call

import (
	"math"
	"strings"
	"time"
)

// pause is the longest time between two entries that counts as work: a call that
// was left open over night was not worked on all the while.
const pause = 4 * time.Hour

// minutes is how long was worked on the call until a time: from its first line
// that is not a date, without what lies between a closing and the line that
// opened it again, and without pauses.
func (c *Call) minutes(until time.Time) float64 {
	c.spend(len(c.entries))
	var worked time.Duration
	var last time.Time // zero while nobody works
	add := func(at time.Time, set bool) {
		if at.Before(last) && !set {
			return // it was typed beside a time that lies ahead: that counts, until the clock is set
		}
		if gap := at.Sub(last); !last.IsZero() && gap <= pause {
			worked += gap
		}
		last = at
	}
	closed := false
	for i, e := range c.entries {
		cmd := Find(e.Kind)
		asks := cmd != nil && cmd.Group == Asks
		clock := e.Kind == "date" && (i == 0 || strings.HasSuffix(e.Line, " now")) // it stands at the time before
		if last.IsZero() && (clock || asks && i > 0 || closed && e.Kind == "left") {
			continue
		}
		add(e.At, e.Kind == "date")
		if closed = e.Kind == "close"; closed {
			last = time.Time{}
		}
	}
	if !last.IsZero() {
		add(until, false)
	}
	return math.Max(0, math.Round(worked.Minutes()))
}
