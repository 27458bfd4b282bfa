package said

import "strings"

// What is said of a start kit that was tried in vain, of one that is not there or did
// help, and the clause in which it stands.
var (
	kitClause = pattern{expr: `(?i)[^,;.]*\b(hard[ -]?start(er)?|start(er|ing)?[ -]?(kit|assist|booster)|boost(er)? kit|(3|three)[ -]?in[ -]?(1|one))\b[^,;.]*`}
	kitVain   = pattern{expr: `(?i)\b(no (go|help|start|change|difference|luck|good|joy|effect|better)|(did|do|does|will|wo|would|is)(n'?t| not) (help|work|start|go|run|do|turn|kick)|not (start|help|work)\w*|still (hum|buzz|lock|trip|click|dead|no|won'?t|stuck|the same|draw|pull|seiz)\w*|same (thing|result|again)|nothing|useless|failed to start)\b`}
	kitElse   = pattern{expr: `(?i)\b(starts|started|runs|running|ran|works|with (hard|start|kit|boost)|(no|without|needs?|wants?|order\w*|recommend\w*|quot\w+|try|buy|took|take|remov\w+) ((a|an|the|his|new|old|off|out) )*(hard[ -]?start|start(er)?[ -]?(kit|assist|boost)|boost|3|three)\b)`}
)

// KitTried puts what is said of a start kit that was no help in the words of its
// finding.
func KitTried(text string) string {
	if low := strings.ToLower(text); !Has(low, []string{"kit", "hard", "assist", "3 in", "3-in", "three in", "booster"}) || !kitClause.get().MatchString(low) || !kitVain.get().MatchString(low) || kitElse.get().MatchString(low) {
		return text
	}
	return kitClause.get().ReplaceAllString(strings.ReplaceAll(text, "hums and trips", "hums, trips"), "no start with start kit")
}
