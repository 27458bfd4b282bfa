package said

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	Finding        string // the code of what was found by these words
	quick          string // words without one of which the rows are not looked at
	said, harmless rows
	absent         bool // it is itself that something is not there, or not to be
}

// rows are wordings, a row each, made into one pattern when they are first asked for.
type rows struct {
	text string
	once sync.Once
	made *regexp.Regexp
}

// list are the rows, each as a pattern.
func (r *rows) list() []string {
	list := strings.Fields(strings.NewReplacer(" ", "\x00", "\n", " ").Replace(inRows().Replace(r.text)))
	for i, row := range list {
		if row = strings.ReplaceAll(row, "\x00", " "); row[0] != '^' {
			row = `\b` + row
		}
		list[i] = row
	}
	return list
}

//go:noinline
func (r *rows) match(clause string) bool {
	r.once.Do(func() {
		if r.text != "" {
			r.made = regexp.MustCompile(strings.Join(r.list(), "|"))
		}
	})
	return r.made != nil && r.made.MatchString(clause)
}

// gone tells a clause of a danger that is no more, or never was.
var gone = pattern{expr: `\b(mended|repaired|fixed|cured|gone|cleared|tested (good|tight|ok)|no longer|no more|any ?more|not|never|without|nothing|free of)\b|n't\b`}

// wordings are those of the findings of alarms, each with a space on both sides, and
// behind them the words without one of which each is not looked for.
var wordings = sync.OnceValue(func() [][]string {
	out := make([][]string, len(alarms), len(alarms)+len(alarms))
	for i := range alarms {
		f, _ := cause.Lookup(alarms[i].Finding)
		for _, w := range f.Words {
			out[i] = append(out[i], " "+strings.Join(cause.Fold(w), " ")+" ")
		}
		out = append(out, strings.Split(alarms[i].quick, "|"))
	}
	return out
})

// Alarms gives the dangers that a text speaks of.
func Alarms(text string) []*Alarm {
	var out []*Alarm
	if text = strings.ToLower(text[:min(len(text), MostBytes)]); !Has(text, anyAlarm()) {
		return nil
	}
	said := wordings()
	clauses := Clauses(cause.Calmed(text))
	for i, clause := range clauses {
		if none := noneOf.get(); none.MatchString(clause) || i+1 < len(clauses) && none.MatchString("checked? "+clauses[i+1]) && looksFor.get().MatchString(clause) {
			continue
		}
		clause = " " + strings.Join(cause.Fold(clause), " ") + " "
		for i := range alarms {
			if a := &alarms[i]; Has(clause, said[len(alarms)+i]) && a.spokenOf(clause, said[i]) && !slices.Contains(out, a) {
				out = append(out, a)
			}
		}
	}
	return out
}

// noneOf tells a clause that asks and says no, looksFor one of what was looked for.
var (
	noneOf   = pattern{expr: `\?\s*(\w+ ){0,3}(no|none|nope|nil|negative)$`}
	looksFor = pattern{expr: `\b(check\w*|test\w*|asked|looked|search\w*|any)\b|\?$`}
)

// spokenOf reports whether a clause speaks of the danger, by its pattern or by a
// wording of its finding, and does not say that it is none or no more.
func (a *Alarm) spokenOf(clause string, wordings []string) bool {
	said := a.said.match(clause)
	for i := 0; i < len(wordings) && !said; i++ {
		said = strings.Contains(clause, wordings[i]) && !strings.Contains(clause, " no"+wordings[i])
	}
	return said && !a.harmless.match(clause) && (a.absent || !gone.get().MatchString(clause))
}

// anyAlarm are the words without one of which no danger is spoken of.
var anyAlarm = sync.OnceValue(func() []string {
	var out []string
	for _, quick := range wordings()[len(alarms):] {
		out = append(out, quick...)
	}
	return out
})

// MadeSafe reports whether words begin with how a unit is made safe.
func MadeSafe(text string) bool { return madeSafe.get().MatchString(text) && !NotSafe(text) }

var madeSafe = pattern{expr: `(?i)^(it |unit |power |plug )?(is |was )?(un ?plugged|isolated|locked (out|off)|tagged out|disconnected( it| the unit| power|$|,)|discharged|shut ?off|(switched|turned) off|killed (the )?power|pulled (the )?(plug|disconnect)|power (is )?off|plug (is )?(out|pulled))\b`}

// NotSafe reports whether words are no statement that a unit was made safe.
func NotSafe(text string) bool { return notSafe.get().MatchString(text) }

var notSafe = pattern{expr: `(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`}

// Decides reports whether a text is of what the client wants to be done.
func Decides(text string) bool { return decides.get().MatchString(text[:min(len(text), LongClause)]) }

var decides = pattern{expr: `(?i)\b(client|customer|owner|tenant|landlord)\b.{0,40}\b(declin|refus|agree|accept|approv|decid|want|chose|choos|prefer|goes|go ahead|buy|bought|will)|^declin`}
