package notebook

import (
	"fmt"
	"time"
)

// What replaying one file may cost, so that a stranger's file cannot hold up
// the program or fill the machine. Some ten thousand entries fit in.
const (
	patience   = time.Second
	maxReplies = 32 << 20 // bytes of all replies
	// alwaysTaken is how many entries are replayed however busy the machine
	// is: about as many as a real call has.
	alwaysTaken = 100
)

// bounds counts what a replay has cost so far.
type bounds struct {
	start   time.Time
	entries int
	replies int
}

func newBounds() *bounds { return &bounds{start: time.Now()} }

// spend counts one reply and says when it is enough.
func (b *bounds) spend(reply []string) error {
	b.entries++
	for _, l := range reply {
		b.replies += len(l) + 1
	}
	if b.replies > maxReplies {
		return fmt.Errorf("the notebook's replies come to more than the %d MB that are taken", maxReplies>>20)
	}
	if b.entries > alwaysTaken && time.Since(b.start) > patience {
		return fmt.Errorf("replaying the notebook takes longer than the %v that are given to it", patience)
	}
	return nil
}
