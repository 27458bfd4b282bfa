package notebook

import (
	"errors"
	"fmt"
	"time"

	"ohmcall/calc/failpoint"
	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
)

// What one call may hold and replaying it may cost, so that a stranger's file
// cannot hold up the program or fill the machine. It is counted, not timed:
// every machine takes the same files. A live call is held to the same, so that
// what was written can be opened again. Work ends most calls first: at 25,000 notes,
// 2,500 timed temperatures, 1,000 lines that each open something new (measured;
// TestFullCall logs its own).
const (
	maxWork     = 350_000_000 // steps of call.Work: about a second
	maxLog      = 16 << 20    // bytes of all lines and replies
	maxLogLines = 250_000
	replyWork   = 8 // steps for each byte of a reply
)

// reserve is the part of the bounds, one in so many, that a live call keeps
// free for its closing.
const reserve = 16

// ErrFull is returned when a call has come to its bounds.
var ErrFull = errors.New("the call is as long as one call may be")

// bounds counts what a call's entries have cost so far.
type bounds struct{ entries, work, log, lines int }

// apply applies a line and counts it with its reply, and the work that they
// took. A line that is only for the screen is not of the log.
func (b *bounds) apply(c *call.Call, at time.Time, line string) (call.Entry, error) {
	before := c.Work()
	e, err := c.Apply(at, line)
	if err == nil && e.N == 0 {
		return e, nil
	}
	lines, size := 1, len(line)
	if err == nil {
		size = len(e.Line)
		for _, l := range e.Reply.Lines {
			size += len(l.Text) + 3
		}
		lines += len(e.Reply.Lines)
	}
	b.entries++
	b.lines += lines
	b.log += size + 40
	b.work += c.Work() - before + replyWork*size
	return e, err
}

// over says which bound is exceeded, keeping free what is asked.
func (b *bounds) over(free int) error {
	if failpoint.On(failpoint.NoBounds) {
		return nil
	}
	limit := func(n int) int {
		if free > 0 {
			return n - n/free
		}
		return n
	}
	switch {
	case b.entries > limit(page.MaxEntries):
		return fmt.Errorf("%w: %d entries", ErrFull, page.MaxEntries)
	case b.work > limit(maxWork):
		return fmt.Errorf("%w: replaying it takes more work than is given to one", ErrFull)
	case b.log > limit(maxLog):
		return fmt.Errorf("%w: its lines and replies come to %d MB", ErrFull, maxLog>>20)
	case b.lines > limit(maxLogLines):
		return fmt.Errorf("%w: its log has %d lines", ErrFull, maxLogLines)
	}
	return nil
}
