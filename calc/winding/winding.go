// Package winding infers from ohm readings between the leads of a machine
// which lead is which, and whether the windings can be sound.
//
// Three leads are read as a split-phase machine: the highest pair is start to
// run through both windings, the lead outside it is common; of the other two
// the higher to common is start, the lower is run. All six ways to name three
// leads are tried and those that the readings rule out are dropped, so what is
// left over is what is certain, also when readings are missing.
//
// Four and more leads are read as a network of windings in series. Leads that
// read open to each other fall into isolated groups; leads that read near zero
// are one point joined by a protector or a jumper. In each group a tree is
// grown lead by lead, nearest first: each new lead is tried as the far end of a
// winding from every lead already placed, as a tap on every winding and as a
// branching point, and a tree is dropped as soon as the sum along one of its
// paths leaves the bounds of that pair's reading. Unless the probe leads'
// resistance was declared, every pair may hold up to half an ohm of it. When no
// tree fits, a joint that is not brought out is tried. One tree left is
// reported as the network; several are listed with the one reading that parts
// them best. The names of its leads then follow the usual arrangements of
// tapped motors, and only when a single one of them fits.
//
// Every decision rests on guaranteed bounds: a meter within its specification
// cannot make a settled role wrong. A marking printed on the housing outranks
// the ranking. The package does not judge insulation (calc/judge does) and
// knows nothing of files, time or terminals.
package winding

import (
	"slices"
	"strings"

	"ohmcall/calc/measure"
)

// Case is the name of the metal shell among the pins.
const Case = "case"

// Role says what a lead is for.
type Role string

// The roles a lead can have. The first three are those of a single-phase
// compressor; a capacitor lead of a fan motor is its start lead.
const (
	Common     Role = "common"
	Start      Role = "start"
	Run        Role = "run"
	High       Role = "high"
	MediumHigh Role = "medium-high"
	Medium     Role = "medium"
	MediumLow  Role = "medium-low"
	Low        Role = "low"
	Main       Role = "main"      // either end of an isolated main winding
	Auxiliary  Role = "auxiliary" // either end of an isolated start winding
	Protector  Role = "protector" // the lead of a protector brought out by itself
)

// Kind is what the machine is, as far as it changes the judgement.
type Kind string

// The kinds of machine. Unknown is judged as a compressor.
const (
	Unknown    Kind = ""
	Compressor Kind = "compressor"
	Fan        Kind = "fan"
	Motor      Kind = "motor"
)

// State is what the readings amount to.
type State string

// The states of a machine's windings.
const (
	Incomplete    State = "incomplete"
	Sound         State = "sound"
	TooClose      State = "too-close"
	DoesNotAddUp  State = "does-not-add-up"
	OpenWinding   State = "open-winding"
	OverloadOpen  State = "overload-open"
	OpenUnplaced  State = "open-unplaced"
	Shorted       State = "shorted"
	Grounded      State = "grounded"
	EqualWindings State = "equal-windings"
	NotAWinding   State = "not-a-winding"
)

// Facts that a state of the windings establishes.
const (
	FactSound        = "windings-sound"
	FactOpen         = "winding-open"
	FactProtector    = "protector-open"
	FactOpenUnplaced = "windings-open-unplaced"
	FactThrough      = "protector-closed" // a pair reads through common
	FactShorted      = "winding-shorted"
	FactGrounded     = "winding-grounded"
	FactNoGround     = "insulation-no-gross-fault"
	FactEqual        = "windings-equal"
	FactDoNotAddUp   = "windings-do-not-add-up"
	FactOdd          = "windings-odd"      // sound by themselves, run low beside start
	FactTooHigh      = "windings-too-high" // the highest of three exceeds the sum of the others
	FactNotAWinding  = "not-a-winding"
	FactOpenCold     = "open-cold"         // what is open was read cold
	FactIsolated     = "windings-isolated" // whole groups, and no diagram says that they are apart
)

// Pair names two pins; the order means nothing.
type Pair [2]string

// String gives the pair as a tech writes it.
//
//go:noinline
func (p Pair) String() string { return p[0] + "–" + p[1] }

// Reading is one ohm reading between two pins, in ohms, the resistance of the
// probe leads already taken off.
type Reading struct {
	A, B string
	V    measure.Value
}

// Pair is the pair that was read.
func (r Reading) Pair() Pair { return Pair{r.A, r.B} }

// Mark is a marking printed on the housing.
type Mark struct {
	Pin   string
	Role  Role
	Entry int
}

// Diagram is what a wiring diagram says of windings.
type Diagram string

// What a diagram can say.
const (
	Isolated Diagram = "isolated"
	Joined   Diagram = "joined"
)

// Input is everything known of one machine.
type Input struct {
	Readings      []Reading     // unstruck, in entry order; the last of a pair counts
	Marks         []Mark        // in entry order; the last of a pin counts
	Pins          []string      // further pins known by name but not yet read or marked
	Leads         int           // how many leads the machine has; 0 when not known
	Meter         measure.Meter // to say which accuracy was assumed
	Probes        float64       // ohms already taken off every reading
	Kind          Kind
	EqualByDesign bool   // a reversing motor: main and auxiliary are alike
	StartLead     bool   // one lead is known to be for a start winding or capacitor
	Sheet         *Sheet // ohms of a nameplate or service sheet; nil when there are none
	// Diagram says what the wiring diagram shows of groups that read open to each
	// other: Isolated or Joined, "" when nobody has looked.
	Diagram Diagram
	// RatedVolts are those of the plate, 0 when not known: what is a ground to the
	// case depends on them, see judge.Grounded.
	RatedVolts float64
	// Cold says that what is open was read when the machine had cooled, so that no
	// protector is waited for; Soon that it was cold and nobody knows for how long it
	// had no power; Again that it was read open before, some time ago.
	Cold, Soon, Again bool
	// Tested are the pins read to the case with an insulation tester, of which
	// it cannot be said that the meter proves nothing.
	Tested []string
}

// Winding is one piece of the network: a winding, or a protector or jumper
// that reads near zero.
type Winding struct {
	From, To string // pins; a joint that is not brought out is "joint", "C/P" two leads on one point
	Name     string
	Value    measure.Value
	computed bool // from sums: the pair itself was not read
}

// Option is one possibility for a pair not read yet.
type Option struct {
	Roles map[string]Role // what the pins would then be; may be part of them
	Value measure.Value   // what the pair would read, in ohms
	Text  string          // one sentence
}

// Prediction is what two readings say of the third pair.
type Prediction struct {
	Pair    Pair
	Certain []string // what holds whatever the third pair reads, a sentence each
	Options []Option
}

// Gap compares the two lower of three readings with the highest.
type Gap struct {
	Ohms      float64 // the two lower minus the highest
	Percent   float64 // of the highest
	Tolerance float64 // ohms that the three readings' limits allow
	Beyond    bool    // the gap exceeds the tolerance
	Lead      float64 // the same lead resistance on all pairs that would explain it; 0 when none does
}

// Repeat is a pair that was read again with a jump beyond both limits.
type Repeat struct {
	Pair     Pair
	Was, Now measure.Value
}

// Result is what the readings and markings amount to.
type Result struct {
	Pins        []string // sorted, without the case
	Roles       map[string]Role
	Settled     bool // every role is certain
	Alike       bool // windings that are all alike: its pins have no roles
	State       State
	Notes       []string  // plain sentences, the headline first
	Proof       []Reading // the readings that the answer rests on
	Marked      []Mark    // the markings that the answer rests on
	Windings    []Winding
	Candidates  [][]Winding // networks that fit equally well, when more than one does
	Wanted      []Pair      // pairs still wanted, the best first
	Next        string      // the next step as a sentence, empty when nothing is wanted
	Predictions []Prediction
	Gap         *Gap    // nil unless three pairs were read
	Sheet       BySheet // what a sheet adds to roles that are not settled
	Repeats     []Repeat
	Disputed    bool // the readings add up, and make another pin common than the marking
	Conflicts   []string
	Facts       []string
	Cautions    []string // codes of calc/caution
}

//go:noinline
func (r *Result) note(s ...string) { r.Notes = append(r.Notes, s...) }

//go:noinline
func (r *Result) fact(s ...string) { r.Facts = once(r.Facts, s) }

//go:noinline
func (r *Result) caution(s ...string) { r.Cautions = once(r.Cautions, s) }

// once appends the codes that are not there yet.
//
//go:noinline
func once(have, codes []string) []string {
	for _, c := range codes {
		if !slices.Contains(have, c) {
			have = append(have, c)
		}
	}
	return have
}

func isCase(pin string) bool { return strings.EqualFold(pin, Case) }
