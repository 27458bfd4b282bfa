package call

import (
	"strconv"
	"strings"

	"ohmcall/calc/repair"
)

// markedAs finds a capacitor's marking in words: 45uF, 45/5 µF, 88-108 mfd.
var markedAs = lazily(`(\d+(?:\.\d+)?)(?:\s*([-–/+])\s*(\d+(?:\.\d+)?))?\s*(?:[uµμ]f|mfd)\b`)

// ratedAt finds its volts: 370V, 370/440 VAC.
var ratedAt = lazily(`\b(?:\d+\s*/\s*)?(\d+)\s*v(?:ac)?\b`)

// fittedCap is a capacitor that a line says was fitted, with one marking.
type fittedCap struct {
	entry int
	text  string // lower case
	uF    []float64
	volts float64 // 0 when the line gives none
}

func (f *fittedCap) words() []string {
	return strings.FieldsFunc(f.text, func(r rune) bool { return r == ' ' || r == '-' || r == ',' })
}

// capFitted reads the marking of the capacitor that words say was fitted. Words
// with no marking or with several, as of the old one beside the new, tell none,
// nor do words of what was read.
func capFitted(entry int, text string) (fittedCap, bool) {
	f := fittedCap{entry: entry, text: strings.ToLower(text)}
	if !strings.Contains(f.text, "cap") || strings.Contains(f.text, "read") || strings.Contains(f.text, "measur") {
		return f, false
	}
	found := markedAs().FindAllStringSubmatch(f.text, 2)
	if len(found) != 1 {
		return f, false
	}
	m := found[0]
	for i, s := range []string{m[1], m[3]} {
		if x, err := strconv.ParseFloat(s, 64); err == nil && (i == 0 || m[2] == "/" || m[2] == "+") {
			f.uF = append(f.uF, x)
		}
	}
	if v := ratedAt().FindAllStringSubmatch(f.text, 2); len(v) == 1 {
		f.volts, _ = strconv.ParseFloat(v[0][1], 64)
	}
	return f, true
}

// stead is the plate's marking that a section of a fitted capacitor stands in
// for: the one of its name, else the only one.
func (c *Call) stead(f fittedCap, section int) (plate, bool) {
	if len(f.uF) == 2 {
		return c.plateAt("", "mfd", []string{"herm", "fan"}[section])
	}
	var only plate
	n := 0
	c.spend(2 * len(c.plates))
	for _, p := range c.plates {
		if p.key != "mfd" || !c.alive(p.entry) {
			continue
		}
		if p.name != "" && among(f.words(), strings.TrimSuffix(strings.ToLower(p.name), "-cap")) {
			return p, true
		}
		if n == 0 || !sameName(p.name, only.name) {
			n++
		}
		only = p
	}
	return only, n == 1
}

// misfit says why one section of a fitted capacitor does not suit in place of
// what the plate says, and how that is known; "" when it suits.
func misfit(p plate, uF, volts float64) string {
	s, err := capSize(p)
	if err != nil {
		return ""
	}
	why := s.Misfit(uF, volts)
	if why == "" {
		return ""
	}
	return s.Kind + " capacitor, " + why + " (" + s.Source + "), the old one's marking: entry " + itoa(p.entry)
}

// capSize is the range that would do in place of a capacitor marked so.
func capSize(p plate) (repair.Size, error) {
	lo, err := p.q.In("uF")
	if err != nil {
		return repair.Size{}, err
	}
	if !p.ranged && p.name != "start" {
		return repair.RunSize(lo, p.rated, p.tol)
	}
	hi := 0.0
	if p.ranged {
		hi, _ = p.hi.In("uF")
	}
	return repair.StartSize(lo, hi, p.rated)
}

// misfits lists what the capacitors fitted from an entry on do not suit by, the
// last fitted in each place.
func (c *Call) misfits(from int) []string {
	var out []string
	seen := map[string]bool{}
	for i := len(c.capsFitted) - 1; i >= max(0, len(c.capsFitted)-mostRenewals); i-- {
		f := c.capsFitted[i]
		if f.entry < from || !c.alive(f.entry) {
			continue
		}
		c.spend(2000)
		for n, uF := range f.uF {
			p, ok := c.stead(f, n)
			if !ok || seen[p.name] {
				continue
			}
			seen[p.name] = true
			if why := misfit(p, uF, f.volts); why != "" {
				out = append(out, why+", fitted: entry "+itoa(f.entry))
			}
		}
	}
	return out
}
