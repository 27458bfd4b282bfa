package call

// Tone says how a line of a reply is meant; a terminal may colour it, the
// words carry it alone.
type Tone int

// The tones.
const (
	Plain   Tone = iota
	Good         // settled, sound, proved
	Warn         // doubt
	Bad          // failed, refused
	Caution      // danger to people
	Ask          // what is wanted next
)

// Line is one line of a reply.
type Line struct {
	Tone Tone
	Text string
}

// Table is a part of a reply that stands in columns.
type Table struct {
	Head []string
	Rows [][]string
}

// Sum is the value of an expression, for programs.
type Sum struct {
	Value float64 // in Unit
	Unit  string  // UCUM code, "1" for a plain number
	U     float64 // standard uncertainty in Unit, 0 when exact
}

// Windings tells what is known of one machine after an entry changed it.
type Windings struct {
	Of      string
	Pins    []string
	Roles   map[string]string
	Settled bool
	State   string
	Notes   []string
}

// Causes tells which causes are left after an entry changed them.
type Causes struct {
	Open     []string
	RuledOut []string
	Next     string
}

// Reply is what a statement answers. It is derived: the same entries give
// the same replies.
type Reply struct {
	Lines    []Line
	Table    *Table // shown under the lines
	Flags    []string
	Sum      *Sum
	Windings []Windings
	Causes   *Causes
}

//go:noinline
func (r *Reply) add(tone Tone, text string) *Reply {
	if text != "" {
		r.Lines = append(r.Lines, Line{tone, text})
	}
	return r
}

//go:noinline
func (r *Reply) flag(codes ...string) *Reply {
	for _, c := range codes {
		if c != "" && !among(r.Flags, c) {
			r.Flags = append(r.Flags, c)
		}
	}
	return r
}

//go:noinline
func say(text string) *Reply { return (&Reply{}).add(Plain, text) }
