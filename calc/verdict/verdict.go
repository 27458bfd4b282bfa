// Package verdict is the one shape in which a reading or a part is judged.
package verdict

// Word is the judgement itself.
type Word string

// The four words that a judgement may use.
const (
	Sound      Word = "sound"
	Suspect    Word = "suspect"
	Failed     Word = "failed"
	CannotTell Word = "cannot tell"
)

// Worse reports whether a word is worse news than another: sound, then what cannot
// be told, then suspect, then failed.
//
//go:noinline
func (w Word) Worse(than Word) bool { return w.rank() > than.rank() }

func (w Word) rank() int {
	switch w {
	case CannotTell:
		return 1
	case Suspect:
		return 2
	case Failed:
		return 3
	}
	return 0
}

// CommonPractice is the source of a trade fact that nobody published.
const CommonPractice = "common practice"

// Verdict judges one thing and says what the judgement rests on.
type Verdict struct {
	Subject string   // what is judged, in the trade's words: "run capacitor C1"
	Word    Word     // the judgement
	Text    string   // one sentence: what was found and what it means
	Limit   string   // the limit applied, with its unit: "10.8 to 13.2 µF"
	Source  string   // title and clause, or "common practice", or "from memory"
	Margin  float64  // distance to the limit in units of the reading's guaranteed half-width; negative is outside
	Judged  bool     // Margin is meaningful
	Also    []string // what stricter or differing published limits would say, a sentence each
	Caution []string // codes of the cautions that belong to this step
	Fact    []string // codes of the facts this verdict establishes, see calc/cause
	Entries []int    // the notebook entries it rests on
}
