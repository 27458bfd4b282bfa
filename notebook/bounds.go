package notebook

import (
	"fmt"
	"time"
)

// What replaying one file may cost, so that a stranger's file cannot hold up
// the program or fill the machine. Some ten thousand entries fit in.
const (
	// checkPatience bounds the replay of a file that is only looked at. One's
	// own call is opened with openPatience: it must open on a slow machine too.
	checkPatience = 1200 * time.Millisecond
	openPatience  = 30 * time.Second
	maxReplies    = 32 << 20 // bytes of all replies
	// alwaysTaken is how many entries are replayed however busy the machine
	// is: more than a real call has.
	alwaysTaken = 1000
)

// bounds counts what a replay has cost so far.
type bounds struct {
	start    time.Time
	patience time.Duration
	entries  int
	replies  int
}

func newBounds(patience time.Duration) *bounds {
	return &bounds{start: time.Now(), patience: patience}
}

// spend counts one reply and says when it is enough.
func (b *bounds) spend(reply []string) error {
	b.entries++
	for _, l := range reply {
		b.replies += len(l) + 1
	}
	if b.replies > maxReplies {
		return fmt.Errorf("the notebook's replies come to more than the %d MB that are taken", maxReplies>>20)
	}
	if b.entries > alwaysTaken && time.Since(b.start) > b.patience {
		return fmt.Errorf("replaying the notebook takes longer than the %v that are given to it", b.patience)
	}
	return nil
}
