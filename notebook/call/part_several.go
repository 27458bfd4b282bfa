package call

import (
	"cmp"
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

// onePer are the kinds of part of which a machine has one, those of a compressor first:
// two names for it are
// one part, and what they say can contradict.
var onePer = []string{"ptc", "relay-coil", "potential-coil", "overload", "defrost-thermostat", "plug"}

// whichPart says of which kind the part of a subject is, of those of which an
// appliance has several, and which of them; "" for any other subject.
func whichPart(kind, name string) (family, part string) {
	switch kind {
	case "part":
		if p := partOf(name); !among(onePer, p.words[0]) {
			return p.words[0], partID(name)
		}
	case "sheath", "volt", "amp":
		if isHeater(name) {
			return "heater", partID(name)
		}
		if kind == "volt" && isPilotPower(name) {
			return "thermocouple", name
		}
		if kind == "volt" && breaksCircuit(name) {
			return partOf(name).words[0], partID(name)
		}
	case "mfd", "capload":
		return "cap", partID(name)
	case "temp":
		if strings.HasPrefix(strings.ToLower(name), "freezer") {
			return coldSpace, "freezer"
		}
		return coldSpace, "" // which is called many things
	}
	return "", ""
}

// isCompressor tells one of several compressors by the name it was put at hand by: its
// own, or that of the space which it cools.
func (c *Call) isCompressor(of string) bool {
	return of != defaultMachine && (kindOf(of) == winding.Compressor || c.spaceOf(of) != "")
}

// isGear tells a part that starts or protects a compressor, of which each has its own.
func isGear(name string) bool {
	p := partOf(name)
	return p != nil && among(onePer[:4], p.words[0])
}

// gearOf is the one of several compressors to which such a part belongs by its name, ""
// when it names none.
func (c *Call) gearOf(name string) string {
	for i := 0; i < len(c.atHand) && isGear(name); i++ {
		h := &c.atHand[i]
		c.spend(2)
		base, _, _ := strings.Cut(h.value, "-comp")
		if c.isCompressor(h.value) && c.alive(h.entry) && strings.Contains(strings.ToLower(name), strings.ToLower(base)) {
			return h.value
		}
	}
	return ""
}

// gearAtHand names such a part after the one of several compressors that is at hand.
func (c *Call) gearAtHand(name string) string {
	if at := c.machineAtHand(); c.isCompressor(at) && isGear(name) && c.gearOf(name) == "" {
		return canonical(name) + "-" + at
	}
	return name
}

// ownGear reports whether such a part is that of the machine that the call is about, as
// far as its name tells.
func (c *Call) ownGear(name string) bool {
	of := c.gearOf(name)
	return of == "" || of == c.gearMachine()
}

// gearMachine is that machine, the first compressor where it is a fan.
func (c *Call) gearMachine() string {
	of := c.mainMachine()
	if of == defaultMachine || c.isCompressor(of) {
		return of
	}
	return cmp.Or(c.firstCompressor(), of)
}

// firstCompressor is the first of several that was put at hand, "" when none was.
func (c *Call) firstCompressor() string {
	for _, h := range c.atHand {
		if c.spend(2); c.isCompressor(h.value) && c.alive(h.entry) {
			return h.value
		}
	}
	return ""
}

// coldSpace are the compartments, which have targets of their own.
const coldSpace = "space"

// partID is a part's name in the table with the number behind it. The switches
// of an appliance are parts of their own, by whatever name.
func partID(name string) string {
	name = strings.ToLower(name)
	known := canonical(name)
	if known == name || known == "switch" {
		return name
	}
	for _, s := range []string{"fuse", "tco", "cut", "roll"} { // beside a limit that sets itself again
		if known == "limit" && strings.Contains(name, s) {
			known += "-" + s
		}
	}
	return known + name[len(strings.TrimRight(name, "0123456789")):]
}

// partFact is what one of several parts of a kind says.
type partFact struct {
	cause.Fact
	family, part string
	word         verdict.Word
}

// someFuses reports whether single ones of the fuses of three legs were read whole,
// and not each: they say nothing of the others.
func someFuses(facts []partFact) bool {
	var parts []string
	for _, f := range facts {
		if f.Code == "fuse-sound" && !among(parts, f.part) {
			parts = append(parts, f.part)
		}
	}
	return len(parts) < 3 && !among(parts, "fuse")
}

// severalParts leaves out what a better part of a kind says where a worse one
// says what cannot stand beside it: two parts do not contradict each other, and
// the sound one speaks for itself alone.
func (c *Call) severalParts(facts []partFact) []cause.Fact {
	var told []partFact // of each family and code the first two parts
	for _, f := range facts {
		n := 0
		for _, g := range told {
			if g.family == f.family && g.Code == f.Code {
				n++
				if g.part == f.part {
					n = 2
				}
			}
		}
		if n < 2 {
			told = append(told, f)
		}
	}
	c.spend(50 * len(facts) * len(told))
	repairs := c.repairs()
	var out []cause.Fact
	for _, f := range facts {
		if !slices.ContainsFunc(told, func(g partFact) bool {
			return g.family == f.family && g.part != f.part && g.word.Worse(f.word) && excludes(f.Code, g.Code) &&
				(f.family != coldSpace || phase(repairs, g.Entry) == phase(repairs, f.Entry))
		}) {
			out = append(out, f.Fact)
		}
	}
	return out
}

// partsNamed names the parts that show a cause, ": bake", where their names say
// more than the kind or others of it were read; else it is "".
func (c *Call) partsNamed(s *cause.Standing) string {
	var names []string
	for _, f := range shows(s) {
		i := sort.Search(len(c.readings), func(i int) bool { return c.readings[i].entry >= f.Entry })
		for ; i < len(c.readings) && c.readings[i].entry == f.Entry; i++ {
			kind, name := c.subject(c.readings[i])
			family, part := whichPart(kind, name)
			if family == "" || among(names, part) || strings.Contains(" "+s.Cause.Name+" ", " "+part+" ") || part == family && !c.hasOther(family, part) {
				continue
			}
			if v, ok := c.verdictOn(kind, name, f.Entry+1); ok && among(v.Fact, f.Code) {
				names = append(names, part)
			}
		}
	}
	if len(names) == 0 {
		return ""
	}
	return ": " + strings.Join(names, ", ")
}

// hasOther reports whether another part of a kind was read.
func (c *Call) hasOther(family, part string) bool {
	c.spend(100 * len(c.subjects))
	return slices.ContainsFunc(c.subjects, func(key string) bool {
		j := c.judged[key]
		return j != nil && j.family == family && j.part != part
	})
}
