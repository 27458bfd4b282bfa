package judge

import (
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Path is a part whose whole work is to conduct or not.
type Path string

// The parts that Switch knows.
const (
	Thermostat Path = "thermostat"   // operates in use
	Limit      Path = "limit"        // thermal limit, thermal fuse, defrost thermostat
	Switched   Path = "switch"       // switch or door interlock
	Speed      Path = "speed switch" // at the speed that is set
	Fuse       Path = "fuse"
	Relay      Path = "relay contact"
	Cord       Path = "cord" // one conductor from end to end
	Flame      Path = "flame sensor"
	Draft      Path = "pressure switch" // of a burner's draft
	Pole       Path = "contactor pole"
)

// SwitchIn is the ohms across such a part.
type SwitchIn struct {
	Path Path
	Name string
	Ohms measure.Value
	Want string // "closed" or "open" in the state it was read in, "" when nobody said
}

// switchFacts are the facts for each part: closed and open where it must be
// closed, then closed and open where it must be open. An empty one is no
// fact that the causes know.
var switchFacts = []struct {
	path  Path
	codes [4]string
}{
	{Thermostat, [4]string{"thermostat-closed", "thermostat-open", "thermostat-stuck-closed", "thermostat-opens"}},
	{Limit, [4]string{"limit-closed", "limit-open", "", ""}},
	{Switched, [4]string{"switch-closed", "switch-open", "", ""}},
	{Speed, [4]string{"speed-switch-closed", "speed-switch-open", "", ""}},
	{Fuse, [4]string{"fuse-sound", "fuse-open", "", ""}},
	{Cord, [4]string{"cord-sound", "cord-open", "", ""}},
	{Flame, [4]string{"flame-sensor-closed", "flame-sensor-open", "", ""}},
	{Draft, [4]string{"press-closed", "press-open", "", ""}},
	{Pole, [4]string{"", "pole-open", "", ""}}, // one that is closed says nothing of the others
}

// switchFact is one of the facts for a part, "" when it is none.
//
//go:noinline
func switchFact(path Path, column int) string {
	for _, f := range switchFacts {
		if f.path == path {
			return f.codes[column]
		}
	}
	return ""
}

// Switch says whether a part conducts, and judges that when it is known
// whether it should. A fuse and a cord always should.
func Switch(in SwitchIn) verdict.Verdict {
	w := atMost(contactOhms)
	out := begin(named(string(in.Path), in.Name), in.Ohms, w, "Ω", commonPractice)
	out.Caution = []string{caution.ProveDead, caution.ProtectorStays}
	want := in.Want
	if in.Path == Fuse || in.Path == Cord {
		want = "closed"
	}
	column := 0
	if want == "open" {
		out.Limit, out.Judged, out.Margin = "open", false, 0
		column = 2
	}
	is := ""
	switch {
	case in.Ohms.Over:
		is = "open"
		column++
	case w.place(in.Ohms) == inside:
		is = "closed"
	}
	switch {
	case is == "":
		out.Word, out.Text = w.advisoryWord(in.Ohms), ohms(in.Ohms.X)+" across it: short the probes and repeat, else a burnt contact"
		if out.Word == verdict.CannotTell {
			out.Fact = []string{fact(strings.ReplaceAll(string(in.Path), " ", "-"), out.Word)}
		}
		return out
	case want == "":
		out.Word, out.Text = verdict.CannotTell, is+"; it depends on heat and setting whether it should be"
		if in.Path == Relay || in.Path == Pole {
			out.Text = is + "; it depends on the coil whether it should be: write open or closed behind the value"
		}
		return out
	case want == is:
		out.Word, out.Text = verdict.Sound, is+", as it must be"
	default:
		out.Word, out.Text = verdict.Failed, is+" where it must be "+want
	}
	if code := switchFact(in.Path, column); code != "" {
		out.Fact = []string{code}
	}
	return out
}
