package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// AmpsIn is the running current of a machine and what its plate says.
type AmpsIn struct {
	Name  string
	Run   measure.Value
	Plate float64 // RLA or FLA, 0 when not known
	LRA   float64 // locked-rotor amps, 0 when not known
	Volts float64 // of the plate, 0 when not known: with the amps they are its power
}

// motorInput are the deviations upwards of IEC 60335-1 cl. 10.1 Table 1 for the
// input of motor-operated appliances (from memory), as shares, with a least one
// in watts.
var motorInput = []struct{ upTo, more, moreWatts float64 }{
	{300, 0.2, 0},
	{math.Inf(1), 0.15, 60},
}

// runLimit is the most that a motor may draw by its plate, and its source in
// words. Without volts the power is not known: it is then the strictest share,
// and loose the widest.
func runLimit(plate, volts float64) (most, loose float64, source string) {
	if volts <= 0 {
		first, last := motorInput[0], motorInput[len(motorInput)-1]
		return plate * (1 + last.more), plate * (1 + first.more), motorSource + ", +15 % of the plate, +20 % up to 300 W"
	}
	for _, p := range motorInput {
		if watts := plate * volts; watts <= p.upTo {
			most = plate + max(plate*p.more, p.moreWatts/volts)
			return most, most, fmt.Sprintf("%s, +%s %% of the plate at %s VA", motorSource, num(100*(most/plate-1)), num(watts))
		}
	}
	return plate, plate, motorSource
}

const motorSource = "IEC 60335-1 cl. 10.1 Table 1 (from memory)"

// Shares of the plate current (common practice).
const (
	noneShare = 0.05 // below it nothing runs
	lowShare  = 0.4  // below it the machine runs unloaded
	// lockedShare of the LRA is near enough to it; a rotor that turns draws
	// less, and a weak supply lowers the current of one that is locked.
	lockedShare = 0.7
	// lockedByRun is used without an LRA: a start draws up to 6 times the
	// running amps (refrigerator service text).
	lockedByRun = 4.0
	// startByRun is how many times its running amps a start draws at most
	// (refrigerator service text).
	startByRun = 6.0
	// aboveLRA is what a start stays under, the plate's LRA being nominal
	// (common practice).
	aboveLRA = 1.2
)

const overClamp = "over the clamp's range: take a higher one and read again"

// Amps judges the running current.
func Amps(in AmpsIn) verdict.Verdict {
	subject := named("running amps", in.Name)
	if in.Run.Over {
		return cannot(subject, overClamp, in.Run)
	}
	if in.Plate <= 0 {
		return cannot(subject, "the plate's running amps are needed to judge it: plate amps …", in.Run)
	}
	most, loose, source := runLimit(in.Plate, in.Volts)
	w := window{in.Plate * lowShare, most}
	out := begin(subject, in.Run, w, "A", source+"; lower end "+commonPractice)
	out.Caution = []string{caution.MainsLive, caution.HotMoving}
	x := quantity(in.Run.X, "A")
	locked := in.lockedFrom()
	switch p := w.place(in.Run); {
	case in.Run.Hi < in.Plate*noneShare:
		out.Word, out.Fact = verdict.Failed, []string{"amps-none"}
		out.Text = "no current: it does not run, its path is open, or the clamp is not round one wire alone"
	case p != inside && in.Run.Lo <= 0:
		out.Word = verdict.CannotTell
		if p == below {
			out.Word = verdict.Suspect
		}
		out.Text = x + ", no more than what the clamp may be off: it does not run, or the clamp is not round one wire alone"
	case p == below:
		out.Word, out.Fact = verdict.Suspect, []string{"amps-low"}
		out.Text = fmt.Sprintf("%s is low for a plate of %s: it runs with little load", x, quantity(in.Plate, "A"))
	case p == above && in.Run.Lo >= locked:
		out.Word, out.Fact = in.lockedWord(), []string{"amps-locked-rotor"}
		out.Text = x + " and staying: the rotor is locked or hardly turns (inferred from the current alone)"
		out.Also = append(out.Also, "locked rotor is taken from "+in.lockedRule())
		out.Caution = append(out.Caution, caution.ProtectorStays)
	case p == above && in.Run.Lo <= loose:
		out.Word = verdict.CannotTell
		out.Text = fmt.Sprintf("%s is high for a plate of %s or just allowed: its power tells, plate volts …", x, quantity(in.Plate, "A"))
	case p == above:
		out.Word, out.Fact = verdict.Failed, []string{"amps-high"}
		out.Text = fmt.Sprintf("%s is high for a plate of %s", x, quantity(in.Plate, "A"))
	case p == inside:
		out.Word, out.Fact = verdict.Sound, []string{"amps-sound"}
		out.Text = fmt.Sprintf("%s against a plate of %s", x, quantity(in.Plate, "A"))
	case w.holds(in.Run.X) && in.Run.X <= in.Plate && in.Run.Hi < locked && in.Run.Half() <= w.hi-w.lo: // no rough one
		out.Word, out.Fact = verdict.CannotTell, []string{"amps-agree"}
		out.Text = fmt.Sprintf("%s is within the plate's %s, as near as this clamp tells: running as rated", x, quantity(in.Plate, "A"))
	default:
		out.Word = verdict.CannotTell
		out.Text = x + " is too near the limit to say: " + w.settling(in.Run, "amp", "A")
	}
	return out
}

// settling says which meter would tell a reading that straddles an end.
func (w window) settling(v measure.Value, kind, unit string) string {
	from := math.Inf(1)
	for _, end := range []float64{w.lo, w.hi} {
		if v.Lo < end && end < v.Hi {
			from = min(from, math.Abs(v.X-end))
		}
	}
	from *= 1 - finest // within, not at
	if from < v.X*finest {
		return "take it again later, under the load it usually has"
	}
	digit := math.Pow(10, math.Floor(math.Log10(from)))
	return fmt.Sprintf("a meter within ±%s there would, its accuracy typed: meter %s …", quantity(math.Floor(from/digit)*digit, unit), kind)
}

// finest is how closely meters of the trade read, as a share (common practice).
const finest = 0.01

func (in *AmpsIn) lockedFrom() float64 {
	if in.LRA > 0 {
		return in.LRA * lockedShare
	}
	return in.Plate * lockedByRun
}

// lockedWord is how firmly locked-rotor current may be said: without an LRA
// the limit is a rule of thumb.
func (in *AmpsIn) lockedWord() verdict.Word {
	if in.LRA > 0 {
		return verdict.Failed
	}
	return verdict.Suspect
}

func (in *AmpsIn) lockedRule() string {
	if in.LRA > 0 {
		return fmt.Sprintf("%s %% of the plate's LRA (%s)", num(100*lockedShare), commonPractice)
	}
	return fmt.Sprintf("%s times the plate's amps, no LRA being known (%s)", num(lockedByRun), commonPractice)
}

// Course is what became of a start current.
type Course string

// What is known of a start current after its peak.
const (
	Unwatched  Course = ""            // nothing: neither what the machine did nor a later current
	Started    Course = "started"     // the machine started, or its current fell
	Stayed     Course = "stayed"      // the current did not fall
	NotStarted Course = "not started" // the machine was seen not to start
)

// SurgeIn is the current at start.
type SurgeIn struct {
	Name  string
	Peak  measure.Value
	LRA   float64 // 0 when not known
	Plate float64 // RLA or FLA, used without an LRA; 0 when not known
	Volts float64 // of the plate, 0 when not known
	Then  Course
}

// Surge judges the start current. Every start comes near the LRA, and so does
// a rotor that does not turn: near it only what followed parts the two.
func Surge(in SurgeIn) verdict.Verdict {
	subject := named("start surge", in.Name)
	a := AmpsIn{Plate: in.Plate, LRA: in.LRA}
	locked := a.lockedFrom()
	if in.Peak.Over {
		return cannot(subject, overClamp, in.Peak)
	}
	if locked <= 0 {
		return cannot(subject, "the plate's LRA or running amps are needed to judge it: plate lra …", in.Peak)
	}
	w := atMost(locked)
	out := begin(subject, in.Peak, w, "A", a.lockedRule())
	out.Caution = []string{caution.MainsLive, caution.HotMoving}
	x := quantity(in.Peak.X, "A")
	switch p := w.place(in.Peak); {
	case in.Then == Started && in.Peak.Lo < in.leastOfStart():
		out.Word, out.Text = verdict.CannotTell, x+" is less than it draws running: the start was missed, or the clamp is not round one wire alone"
	case in.Then == Started:
		return in.fell(out)
	case in.Then == Unwatched:
		return in.unwatched(out, locked)
	case p == above:
		out.Word, out.Fact = a.lockedWord(), []string{"amps-locked-rotor"}
		out.Text = x + in.held() + ": the rotor is locked (inferred); seized, no start help, or pressures not equal"
		if in.LRA > 0 && atMost(in.LRA*aboveLRA).place(in.Peak) == above {
			out.Fact = append(out.Fact, "windings-odd")
			out.Text = x + in.held() + ", above the LRA: the rotor is locked, or turns are shorted (inferred)"
		}
		out.Caution = append(out.Caution, caution.ProtectorStays)
	case p == inside:
		out.Word, out.Text = verdict.CannotTell, x+in.held()+", well under locked-rotor current: read it again while it tries to start, on a peak-hold clamp"
		if in.Then == Stayed {
			out.Text = x + " stays but is well under locked-rotor current: judge it as running amps"
		}
	default:
		out.Word, out.Text = verdict.CannotTell, x+in.held()+", near locked-rotor current: repeat with a peak-hold clamp"
	}
	return out
}

// leastOfStart is what a start that came off cannot stay under: what the machine
// draws unloaded, by its plate or else by its LRA.
func (in *SurgeIn) leastOfStart() float64 {
	if in.Plate > 0 {
		return lowShare * in.Plate
	}
	return lowShare * in.LRA / startByRun
}

// held says in words why a start is taken for none.
func (in *SurgeIn) held() string {
	if in.Then == Stayed {
		return " and staying"
	}
	return " and no start seen"
}

// fell judges the current of a start that came off: what speaks of a locked
// rotor when it stays is no limit for it, the plate's LRA is.
func (in *SurgeIn) fell(out verdict.Verdict) verdict.Verdict {
	const falls = "falling within a second or so"
	x := quantity(in.Peak.X, "A")
	out.Word, out.Text, out.Fact = verdict.Sound, x+", and it started: a normal start", []string{"surge-sound"}
	out.Limit, out.Source, out.Judged, out.Margin = falls, commonPractice, false, 0
	if in.LRA <= 0 {
		return out
	}
	return in.overLRA(out, ", "+falls)
}

// overLRA holds a start current against the most that the plate's LRA allows.
func (in *SurgeIn) overLRA(out verdict.Verdict, rest string) verdict.Verdict {
	x := quantity(in.Peak.X, "A")
	w := atMost(in.LRA * aboveLRA)
	out.Limit, out.Source = w.text("A")+rest, commonPractice
	out.Margin, out.Judged = w.margin(in.Peak)
	switch out.Word = w.advisoryWord(in.Peak); out.Word {
	case verdict.Suspect:
		out.Text, out.Fact = x+" is well above the LRA: a shorted turn, a shorted start device, or another load", nil
	case verdict.CannotTell:
		out.Text, out.Fact = x+" may be above the LRA: repeat on a closer clamp", nil
	}
	return out
}

// unwatched judges a start current of which nobody said what followed.
func (in *SurgeIn) unwatched(out verdict.Verdict, locked float64) verdict.Verdict {
	x := quantity(in.Peak.X, "A")
	if in.LRA > 0 && atMost(in.LRA*aboveLRA).place(in.Peak) != inside {
		return in.overLRA(out, "")
	}
	_, running, _ := runLimit(in.Plate, in.Volts)
	w := window{running, locked}
	switch p := w.place(in.Peak); {
	case in.Peak.Hi > locked:
		out.Text = x + " is near locked-rotor current: a start or a locked rotor; whether it falls tells: amp … run, or saw starts"
	case in.Plate <= 0:
		out.Text = x + " is below locked-rotor current; the plate's running amps are needed to part a start from running: plate amps …"
	case p == inside:
		out.Word, out.Fact = verdict.Sound, []string{"surge-sound"}
		out.Text = x + ", above the running amps and well below locked-rotor current: a start; nobody wrote that it falls"
		out.Limit = w.text("A")
		out.Margin, out.Judged = w.margin(in.Peak)
		return out
	default:
		out.Text = x + " is no more than running amps: the peak was missed, or it did not try to start"
	}
	out.Word, out.Limit, out.Source, out.Judged, out.Margin = verdict.CannotTell, "", "", false, 0
	return out
}

// TripIn is how long an overload protector held, and at which current.
type TripIn struct {
	Name       string
	Seconds    measure.Value
	Amps       measure.Value
	Plate, LRA float64
	Volts      float64 // of the plate, 0 when not known
}

// tripWindow is how long a protector holds at locked-rotor current: it opens
// in seconds (refrigerator service text); the figures are common practice.
var tripWindow = window{2, 30}

// TripsLocked reports whether a protector opened as soon as it does on a rotor
// that stands.
func TripsLocked(seconds measure.Value) bool { return !seconds.Over && seconds.Lo <= tripWindow.hi }

// Trip judges the time to trip. A protector that opens at a current within
// the plate is weak or is heated from elsewhere; one that opens at
// locked-rotor current does its work.
func Trip(in TripIn) verdict.Verdict {
	a := AmpsIn{Plate: in.Plate, LRA: in.LRA}
	subject := named("overload trip", in.Name)
	if in.Amps.Over || in.Seconds.Over || a.lockedFrom() <= 0 {
		return cannot(subject, "the amps, the seconds and the plate's LRA or running amps are needed", in.Seconds, in.Amps)
	}
	out := begin(subject, in.Seconds, tripWindow, "s", commonPractice)
	out.Entries = entries(in.Seconds, in.Amps)
	out.Caution = []string{caution.MainsLive, caution.ProtectorStays}
	most, _, source := runLimit(in.Plate, in.Volts)
	switch {
	case in.Amps.Lo >= a.lockedFrom() && tripWindow.place(in.Seconds) == inside:
		out.Word, out.Fact = verdict.Sound, []string{"amps-locked-rotor"}
		out.Text = "it opens within seconds at locked-rotor current: the protector does its work"
	case in.Amps.Lo >= a.lockedFrom():
		out.Word, out.Fact = tripWindow.advisoryWord(in.Seconds), []string{"amps-locked-rotor"}
		out.Text = "an unusual time at locked-rotor current: check that the protector is the right part"
	case in.Plate > 0 && in.Amps.Hi <= most:
		holds := atLeast(most)
		out.Word, out.Limit, out.Source = verdict.Suspect, "opens only above "+quantity(most, "A"), source
		out.Margin, out.Judged = holds.margin(in.Amps)
		out.Text = "it opens at a current within the plate: a weak or wrong protector, or a hot shell"
	default:
		out.Word, out.Judged, out.Margin, out.Limit = verdict.CannotTell, false, 0, ""
		out.Text = "it opens on a high current: find what loads the machine before the protector"
		if in.Plate > 0 && in.Amps.Lo <= most {
			out.Text = "the current is too near the plate's to say: " + atMost(most).settling(in.Amps, "amp", "A")
		}
	}
	return out
}
