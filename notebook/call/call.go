// Package call holds what a sequence of typed lines amounts to: one repair
// call.
//
// Apply is the only way in. It is pure: the call so far, the time and the
// line decide the reply, so that replaying a record gives the same replies on
// any machine. The package reads no file, no clock and no terminal.
//
// Every command is declared once, in the tables of the commands_*.go files;
// see Command. A Call is not safe for concurrent use.
package call

import (
	"errors"
	"slices"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/repair"
	"ohmcall/calc/source"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// Entry is one applied line.
type Entry struct {
	N     int
	At    time.Time
	Line  string // as stored: cleaned
	Kind  string // the command word, or "sum"
	Reply *Reply
}

// Call is one repair call. The zero value is not usable; see New.
type Call struct {
	entries []Entry
	struck  map[int]string // reason by entry

	typedIn
	workDone
	sumsMade
	ended
	judgements

	at     time.Time // of the entry being applied
	entry  int       // its number
	steps  int       // see Work
	hinted int       // words not known that were looked for

	memos
}

// typedIn is what was typed of the machine.
type typedIn struct {
	fields        []text // client, site, unit, model, serial, fault, tech
	plates        []plate
	readings      []*reading
	byKey         map[string][]*reading
	keys          []string // of byKey, in the order of first use
	bySubject     map[string][]*reading
	bySubjectKind map[string][]*reading
	legReads      map[string][]int // entries of volts between legs, by their pair
	secondLeg     []*reading       // volts that name the second leg of a supply
	wasSplit      bool             // how resubject last filed them
	doorOpen      []*reading       // ohms of a switch read with what works it open
	struckLate    []int            // strikes of what stood in the call when it was closed
	rooms         []*reading       // temperatures of the room
	wasPhased     bool
	marks         []mark
	atHand        []text // machine at hand, in Value
	findings      []finding
	seenCodes     []string         // of the findings, in the order first seen
	seenAt        map[string][]int // entries by code
	dead          []int            // entries that prove the unit dead
	live          []int            // entries that show it live
	sparked       []int            // entries of something under power while gas could burn
	defied        []int            // entries that show a machine energised that should not be
	meters        []meter
	jumps         []jump
	units         []jump // changes of the unit to one of another kind, after work
	clocks        []clock
}

// workDone is what was done and fitted.
type workDone struct {
	mended     []int // entries of did and part
	relapsed   []int // entries that tell of a failure after them
	unsupplied []int // those of them that tell only of a part that is waited for
	warmed     []int // those that tell of warmth where it should be cold
	faredAt    int   // the entry whose words were read for how the machine does
	faredText  string
	faredOf    said.Fare        // and what they say
	placed     map[int]placed   // of mended, those that count from another entry on
	mendedWhat map[int][]string // the facts that showed what each was done for
	works      []work
	parts      []part
	wires      []wire
	done       []doneWork // as its words tell it
	renewed    []work     // of it, what was replaced by new
	capsFitted []fittedCap
	opened     []opening    // joints of a gas
	guarding   []said.Guard // what took a protective device out, or put it back
	unread     []unread     // what was asked about as what may be a danger
	fires      []int        // the entries that name a refrigerant which burns
	mild       []int        // those that name one that burns less well
}

// sumsMade is what was worked out and what was asked of the call.
type sumsMade struct {
	defs       []definition
	sums       []sumLine
	revalued   map[string]int // see revalue
	needs      []need
	expects    []*expectation
	waiting    []*expectation
	assumed    []assumption
	worths     []worth // the repair-or-replace sums that came to something
	discharged float64 // µF of the largest capacitor whose discharge was summed
}

// ended is how the call ended, or its file was found.
type ended struct {
	closed   []int
	reopened int           // the entry that last opened it again
	endings  []heardEnding // why it stops short, as heard
	broken   []int         // entries that say that the file was not as it was closed
	spoken   []work        // notes of a danger that only the head of a damaged file told
}

// judgements is what it amounts to, and what of that was said.
type judgements struct {
	machines  map[string]*machine
	judged    map[string]*judged
	subjects  []string // keys of judged, in the order of first use
	settled   int      // how often the facts of a judgement changed
	caution   []cautioned
	warned    map[string]int // the entry at which each caution was last given
	standing  standing       // causes as last shown
	proofTold string         // the proof last asked for
	said      map[string]int // the entry at which what is said once was said
}

// memos are what a call remembers of its own work, each with what it was worked
// out from. Nothing is lost with them; TestRememberedIsWorkedOutAnew holds that
// each is what working it out anew gives.
type memos struct {
	curveKey  curveKey // of curveMemo
	curveMemo []record.Curve
	phases    phasesMemo
	weighed   weighed
	foundKey  foundKey        // of found
	found     cause.Result    // what the repairs were for, see foundOnce
	is        *said.Appliance // what the words for unit and complaint tell
	isAt      [2]int          // fields and struck entries when it was told
	phased    phased
	spokeText string // of spokeOf
	spokeIn   *said.Appliance
	spokeWork bool
	spokeOf   []*said.Alarm
}

// text is a plain fact with the entry that holds it.
type text struct {
	key, value string
	entry      int
}

// machine is one machine whose pins are read.
type machine struct {
	name   string
	result winding.Result
	shown  []string // notes given in earlier replies
}

// judged is the verdict on one subject as it stands.
type judged struct {
	verdict      verdict.Verdict
	family, part string // see whichPart
	// since is the entry that established its facts: a later reading that
	// says the same again leaves it.
	since int
}

type cautioned struct {
	code  string
	entry int
}

// New starts an empty call.
//
//go:noinline
func New() *Call {
	return &Call{
		struck:     map[int]string{},
		typedIn:    typedIn{byKey: map[string][]*reading{}, seenAt: map[string][]int{}, bySubject: map[string][]*reading{}, bySubjectKind: map[string][]*reading{}},
		judgements: judgements{machines: map[string]*machine{}, judged: map[string]*judged{}, warned: map[string]int{}, said: map[string]int{}},
		workDone:   workDone{mendedWhat: map[int][]string{}, placed: map[int]placed{}},
	}
}

// ErrBlank is returned for a line that holds nothing but a comment: it is no
// entry.
var ErrBlank = errors.New("nothing but a comment")

// Entries lists the applied lines.
func (c *Call) Entries() []Entry { return c.entries }

// Len is how many entries the call holds.
func (c *Call) Len() int { return len(c.entries) }

// Struck gives the reason for which an entry was struck.
func (c *Call) Struck(n int) (string, bool) {
	reason, ok := c.struck[n]
	return reason, ok
}

// alive reports whether what an entry said still counts.
//
//go:noinline
func (c *Call) alive(entry int) bool {
	c.steps++
	if len(c.struck) == 0 {
		return true
	}
	_, gone := c.struck[entry]
	return !gone
}

// Statement is a line that parses as something this call can be asked to
// apply.
type Statement struct {
	Line    *script.Line
	Command *Command // nil for a sum
	args    *args
}

// Kind is the command word, or "sum".
func (s *Statement) Kind() string {
	if s.Command == nil {
		return "sum"
	}
	return s.Command.Word
}

// Word is argument i as typed, "" when there is none.
func (s *Statement) Word(i int) string {
	if i+1 >= len(s.Line.Words) {
		return ""
	}
	return s.Line.Words[i+1].Text
}

// Parse reads a line without applying it. The error is ErrBlank or a
// *source.Error with a place in the cleaned line.
func (c *Call) Parse(text string) (*Statement, error) {
	l, err := script.Parse(text)
	if err != nil {
		return nil, err
	}
	if l.Blank() {
		if l.Stamp.Set || l.Guard != "" {
			return nil, source.Errorf(1, 1+len([]rune(l.Text)), "nothing follows the time or the condition").
				WithHint("as in: 14:30 temp freezer -2F")
		}
		return nil, ErrBlank
	}
	s := &Statement{Line: l}
	first := l.Words[0]
	if cmd := Find(first.Text); cmd != nil && !first.Quoted {
		if l.Guard != "" && !among(guardable, cmd.Word) {
			return nil, first.Errorf("%s cannot stand behind a condition", cmd.Word).
				WithHint("when guards need, expect and note")
		}
		s.Command = cmd
		if s.args, err = c.bind(cmd, l); err != nil {
			return nil, err
		}
		return s, nil
	}
	if l.Guard != "" {
		return nil, first.Errorf("%q cannot stand behind a condition", first.Text).WithHint("when guards need, expect and note")
	}
	if err := c.unknownWord(l); err != nil {
		return nil, err
	}
	return s, nil
}

// guardable are the commands that a condition may guard.
var guardable = []string{"need", "expect", "note"}

//go:noinline
func clip(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return string(r[:n-1]) + "…"
}

// Apply applies a line at the time given and returns the entry. On an error
// the call is as it was. A statement whose command is shown only (see
// Command.Screen) answers with an entry numbered 0 and adds none.
func (c *Call) Apply(at time.Time, text string) (Entry, error) {
	c.spend(1000 + 40*len(text))
	s, err := c.Parse(text)
	if err != nil {
		return Entry{}, err
	}
	c.at, c.entry = at, len(c.entries)+1
	closed := c.Closed()
	reopens := closed && !s.ofClosing()
	e := Entry{N: c.entry, At: at, Line: s.Line.Text, Kind: s.Kind()}
	if s.Command == nil {
		e.Reply, err = c.applySum(s.Line)
	} else {
		e.Reply, err = s.Command.apply(c, s.args)
	}
	if err != nil {
		return Entry{}, err
	}
	if s.Command != nil && (s.Command.Group == Reads || s.Command.Word == "plate") {
		c.judgeWaiting(e.Reply)
	}
	if s.Command != nil && s.Command.Screen {
		e.N = 0
		return e, nil
	}
	if s.Line.Stamp.Set && len(e.Reply.Lines) > 0 {
		// What a time before a line came to must be seen: + adds up.
		first := max(0, slices.IndexFunc(e.Reply.Lines, func(l Line) bool { return l.Tone != Caution }))
		layout := "15:04"
		if len(c.entries) > 0 && !c.sameDay(c.entry-1, c.entry) {
			layout = "2006-01-02 15:04"
		}
		e.Reply.Lines[first].Text = "At " + at.Format(layout) + ": " + e.Reply.Lines[first].Text
	}
	if reopens && e.Kind != "close" {
		c.reopened = c.entry
		if repair.Flammable(c.gas()) { // it may be another day, and another person
			c.warnAgain(e.Reply, caution.Flammable)
		}
		e.Reply.Lines = append([]Line{{Warn, "The call was closed; this line opens it again."}}, e.Reply.Lines...)
	}
	if closed && e.Kind == "left" {
		e.Reply.add(Plain, "It belongs to the closing: the call stays closed.")
	}
	c.entries = append(c.entries, e)
	if e.Reply.Table != nil || e.Reply.Windings != nil || e.Reply.Causes != nil {
		// The log holds the lines; the rest is for whoever typed.
		c.entries[len(c.entries)-1].Reply = &Reply{Lines: e.Reply.Lines, Flags: e.Reply.Flags, Sum: e.Reply.Sum}
	}
	return e, nil
}

// Asks reports whether a statement only asks. Of worth the record keeps the sum.
func (s *Statement) Asks() bool {
	return s.Command != nil && (s.Command.Group == Asks && s.Command.Word != "worth" || s.Command.Screen)
}

// ofClosing reports whether a statement leaves a closed call closed: a question,
// and how the unit was left.
func (s *Statement) ofClosing() bool { return s.Asks() || s.Kind() == "left" }

// Screens reports whether a statement only shows something and is no entry.
func (s *Statement) Screens() bool { return s.Command != nil && s.Command.Screen }

// Clock is the time that an entry written now would get: the wall clock, or
// what `date` and the times before lines have set. wall is asked only when
// the call follows the wall clock.
func (c *Call) Clock(text string, wall func() time.Time) time.Time {
	l, err := script.Parse(text)
	base, pinned := c.now(wall)
	if err != nil || !l.Stamp.Set {
		if l != nil && err == nil && len(l.Words) > 1 && l.Words[0].Text == "date" {
			if t, ok := parseDate(l.Words[1:]); ok {
				return t
			}
		}
		return base
	}
	prev := base
	if n := len(c.entries); n > 0 {
		prev = c.entries[n-1].At
	}
	if l.Stamp.After {
		return prev.Add(l.Stamp.Clock)
	}
	day := prev
	if !pinned {
		day = base
	}
	// Not midnight and so much later: where the clocks change that is another hour.
	t := time.Date(day.Year(), day.Month(), day.Day(), 0, 0, int(l.Stamp.Clock/time.Second), 0, day.Location())
	switch {
	case !pinned && t.Sub(base) > ahead:
		return t.AddDate(0, 0, -1) // written down after midnight
	case pinned && prev.Sub(t) > 12*time.Hour:
		return t.AddDate(0, 0, 1)
	}
	return t
}

// ahead is by how much a time before a line may be later than the clock on
// the wall, as another clock may be.
const ahead = 10 * time.Minute

// Ahead reports whether an entry of a call that follows the wall clock lies
// ahead of it.
func (c *Call) Ahead(e Entry, wall time.Time) bool {
	_, pinned := c.now(func() time.Time { return wall })
	return !pinned && e.At.Sub(wall) > ahead
}

// Pinned reports whether the call follows a time that `date` has set.
func (c *Call) Pinned() bool {
	_, pinned := c.now(func() time.Time { return time.Time{} })
	return pinned
}

// now is the call's present: pinned by `date` or running with the wall.
func (c *Call) now(wall func() time.Time) (t time.Time, pinned bool) {
	for i := len(c.clocks) - 1; i >= 0; i-- {
		if k := c.clocks[i]; c.alive(k.entry) {
			if k.wall {
				break
			}
			if n := len(c.entries); n > 0 {
				return c.entries[n-1].At, true
			}
			return k.at, true
		}
	}
	return wall().Truncate(time.Second), false
}

// clock is a `date` line.
type clock struct {
	entry int
	at    time.Time
	wall  bool
}
