package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// What is said of a start kit: that it was tried, that there is none or one is wanted,
// and that it was no help.
var (
	kitNamed  = pattern{expr: `(?i)\b(hard[ -]?start(er)?( kit)?|start(er|ing)?[ -]?(kit|assist|booster)|boost(er)? kit|(3|three)[ -]?in[ -]?(1|one)( (hard )?start(er)?)?( kit)?)\b`}
	kitAbsent = pattern{expr: `(?i)\b(no|without|needs?|needing|wants?|order\w*|recommend\w*|quot\w+|try|buy|took|take|remov\w+) ((a|an|the|his|new|old|off|out) )*$`}
	kitFailed = pattern{expr: `(?i)\b(no (go|help|start|change|difference|luck|good|joy|effect|better)|(did|do|does|will|would)(n'?t| not) (help|work|start|go|run|do|turn|kick)|wo(n'?t|uld not) (start|go|run)|not (start|help|work|runn)\w*|still (hum|buzz|lock|trip|click|dead|no|not|won'?t|stuck|the same|draw|pull|seiz)\w*|same (thing|result|again)|(does|did) nothing|nothing|stay\w* locked|useless|failed to start)\b`}
	kitHelps  = pattern{expr: `(?i)\b(starts|started|runs|running|ran|works|fires)\b`}
)

// KitTried puts what is said of a start kit that was no help in the words of its
// finding, with what else the line has found.
func KitTried(text string) string {
	if !Has(strings.ToLower(text), []string{"kit", "hard", "assist", "3 in", "3-in", "three in", "booster"}) || kitHelps.get().MatchString(text) {
		return text
	}
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;.", r) })
	at := slices.IndexFunc(parts, func(p string) bool { return kitNamed.get().MatchString(p) })
	if at < 0 || len(cause.FindFindings(parts[at])) > 0 && !kitFailed.get().MatchString(text) {
		return text
	}
	named := kitNamed.get().FindStringIndex(parts[at])
	if kitAbsent.get().MatchString(parts[at][:named[0]]) || !kitFailed.get().MatchString(strings.Join(parts[at:], ",")) && !kitFailed.get().MatchString(parts[at][:named[0]]) {
		return text
	}
	var out []string
	for i, p := range parts {
		p = strings.ReplaceAll(strings.TrimSpace(p), "hums and trips", "hums, trips")
		switch {
		case i == at:
			out = append(out, "no start with start kit")
		case len(cause.FindFindings(p)) > 0 || !kitFailed.get().MatchString(p):
			out = append(out, p)
		}
	}
	return strings.Join(out, ", ")
}
