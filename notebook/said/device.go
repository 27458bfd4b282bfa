package said

import (
	"slices"
	"strings"
	"sync"
)

// deviceWords are the words that name a device of protection, or what is bridged
// like one: kinds, then marks that tell one of a kind from another, each with other
// words for it behind it.
const (
	deviceKinds = `overload protector ol|limit limiter|thermostat stat aquastat|fuse tf|switch sw|interlock|cutout cutoff tco eco lwco|thermal|earth ground gnd grnd grd|cover guard|lock latch|breaker bkr brkr|rcd gfci gfi elcb rcbo afci|lcdi alci|contactor|thermocouple|rollout|float|sensor rod|control|relay|timer`
	deviceMarks = `thermal|line main mains|door|lid|pressure press pres|flow|sail|vacuum vac|vent|high hi|low|cycling|safety|primary|secondary|monitor|defrost|inlet|outlet|top upper|bottom lower|front|rear|bake|broil|drum|blower|magnetron|` +
		`cavity|glass|current|air|belt|flame|light lamp|selector|water|level|fan|motor|compressor comp|pump|heater|terminal|start|cold|plug|cord|1|2|3`
	// deviceParts are of a device and are not it, nor are its wires a new one.
	deviceParts = ` holder bracket knob harness screw screws block box actuator plunger lever spring button gasket plate strike hook handle face `
	deviceWires = ` wire wires lead leads terminal terminals connector connectors clip `
	// followers stand behind the word for a kind and name no other: limit switch.
	followers = ` switch thermostat lock `
	// several are the kinds of which a machine has more than one, so that a new one
	// is that which was out only when it is called so.
	several = ` fuse switch thermostat breaker cover relay control sensor `
)

// lexicons are the plain words for kinds and for marks by each word for them.
var lexicons = sync.OnceValues(func() (kinds, marks map[string]string) { return lexicon(deviceKinds), lexicon(deviceMarks) })

//go:noinline
func lexicon(table string) map[string]string {
	out := map[string]string{}
	for _, row := range strings.Split(table, "|") {
		words := strings.Fields(row)
		for _, w := range words {
			out[w] = words[0]
		}
	}
	return out
}

// anyDevice is a pattern of the words that name a device.
func anyDevice() string {
	return `(?:` + strings.ReplaceAll(deviceKinds+`|`+deviceMarks, " ", "|") + `|cut-?out|cut-?off|roll-?out)(?:e?s)?`
}

// look gives the plain word for one of a lexicon, "" when it has none.
//
//go:noinline
func look(lexicon map[string]string, word string) string {
	for _, end := range []string{"", "s", "es"} {
		if plain := lexicon[strings.TrimSuffix(word, end)]; plain != "" {
			return plain
		}
	}
	return ""
}

// devicesOf lists the devices that a clause names, each by its marks and its kind:
// thermal fuse. Of what is new those are left out of which a wire alone is.
//
//go:noinline
func devicesOf(clause string, fresh bool) []string {
	for _, w := range []string{"cut-out", "cut-off", "roll-out", "t-stat"} {
		clause = strings.ReplaceAll(clause, w, strings.Replace(w, "-", "", 1))
	}
	clause = sides.Replace(strings.ReplaceAll(clause, "the cut out", "the cutout") + " ")
	words := strings.FieldsFunc(clause, func(r rune) bool { return (r < 'a' || r > 'z') && !isDigit(r) })
	words = append(words, "")
	kinds, marks := lexicons()
	var out []string
	name := ""
	for i := 0; i < len(words)-1; i++ {
		kind, next := look(kinds, words[i]), look(kinds, words[i+1])
		switch mark := look(marks, words[i]); {
		case kind != "" && (next == "" || next == kind || holds(followers, next)):
			for ; next != "" && (next == kind || holds(followers, next)); next = look(kinds, words[i+1]) {
				i++
			}
			if n := words[i+1]; len(n) == 1 && isDigit(rune(n[0])) {
				name += n + " "
				i++
			}
			if after := words[i+1]; !holds(deviceParts, after) && !(fresh && kind != "earth" && holds(deviceWires, after)) {
				out = append(out, name+kind)
			}
			name = ""
		case mark != "":
			name += mark + " "
		case kind != "":
			name += kind + " "
		default:
			name = ""
		}
	}
	return out
}

// sides are the short names of the switches at the two sides of a compressor.
var sides = strings.NewReplacer("hps ", "high pressure switch ", "lps ", "low pressure switch ", "hp sw", "high pressure sw", "lp sw", "low pressure sw")

//go:noinline
func holds(list, word string) bool { return word != "" && strings.Contains(list, " "+word+" ") }

// isBack reports whether a device that came back is the one that was out: of its
// kind, and not marked as another of that kind. A new one of a kind that a
// machine has several of has to be marked as that was.
//
//go:noinline
func isBack(was, now string, fresh bool) bool {
	cut := strings.LastIndex(was, " ") + 1
	kind, marks := was[cut:], was[:cut]
	others, same := strings.CutSuffix(" "+now, " "+kind)
	if !same {
		return false
	}
	if kind == "overload" || kind == "limit" || kind == "cutout" {
		marks, others = strings.ReplaceAll(marks, "thermal ", ""), strings.ReplaceAll(others, " thermal", "")
	}
	return within(marks, others) || within(others, marks) && !(fresh && holds(several, kind))
}

//go:noinline
func within(some, all string) bool {
	return !slices.ContainsFunc(strings.Fields(some), func(s string) bool { return !holds(" "+all+" ", s) })
}
