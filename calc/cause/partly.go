package cause

import "strings"

// Whether a danger is gone is told by the whole of a line: what was not reached, or is
// yet to come, may stand behind its comma. Which words say so is common practice.
var (
	// partly tells of a test that did not go all the way.
	partly = lazily(`(?i)\b(did not|could not|cannot|(?:did|could|have|has|was|were|ca)n'?t) (?:been |get |all )*(?:test|check|reach|look|soap|do|try|measure)\w*|\bnot (?:yet |all |been )*(?:test|check|reach|look|soap|done|tried|measured)\w*` +
		`|\bso far\b|\b(?:apart|aside) from\b|\bother than\b|\bexcept\w*|\bbut (?:for|not)\b|\ball but\b|\bonly\b|\b(?:with|by) (?:my |the |his )*nose\b|\bby (?:ear|smell)\b|\bminus\b|\b(?:still|yet) to\b|\bhalf of\b|\bpartly\b|\b(?:without|no) (?:soap|detector|tester|meter)\b|\b(?:not|un)[ -]?(?:sure|certain)\b|\b(?:no|skipped) (?:leak|soap|bubble) (?:test|check)\b|\bno vac\b|\bstill (?:smell|leak|hiss|bubbl)\w*|\bsmell (?:is )?still\b` +
		`|\b(?:with|w) (?:the )?(?:gas|supply|cock|meter|tank|burner|furnace|boiler|heater|unit|it) (?:shut|off|turned off|closed)\b|\b(?:gas|cock|meter|shut-?off|valve) (?:is |was |still )?(?:shut|off|turned off|closed)\b|\byesterday\b|\blast (?:night|week|visit|time|month|year)\b|\b(?:window|door)s? (?:was |were |is |are |left )*open\b|\?`)
	// ahead tells of an end that is hoped for, or hangs on something.
	ahead = lazily(`(?i)\b(?:soon|next|tomorrow|later|when|if|once|until|unless|as far as|to (?:come|be|follow)|still|yet|will|would|should|must|could|needs?|wants?|hope\w*|promis\w*|pending|almost|nearly|maybe|perhaps|probably|with (?:rubber|gloves|care|caution)|(?:mon|tues?|wed|wednes|thurs?|fri|satur|sat|sun)(?:day)?|tmrw?|tmw|2moro\w*|on order|says?|said|comes?|arriv\w+|after (?:the |a |new )*parts?)\b|\?`)
)

// Partly gives the words of a text by which a test is not whole, "" when none does.
//
//go:noinline
func Partly(text string) string { return partly().FindString(text) }

// undone gives the words of a text that leave nothing of a finding by which a danger is
// gone, "" when none does.
//
//go:noinline
func undone(code, text string) string {
	if !strings.Contains(" no-gas-leak leak-not-found no-co no-spill no-outlet-wrong no-hazard no-called-unsafe ", " "+code+" ") {
		return ""
	}
	by := Partly(text)
	if by == "" && (code == "no-hazard" || code == "no-called-unsafe") {
		by = ahead().FindString(text)
	}
	return by
}
