package formula

import "strings"

// gasWords are gases by their names.
var gasWords = map[string]string{"ISOBUTANE": "600A", "ISOBUTAN": "600A", "BUTANE": "600", "PROPANE": "290", "PROPENE": "1270", "PROPYLENE": "1270",
	"LPG": "290", "HYDROCARBON": "290", "AMMONIA": "717"}

// gasLeads are the letters before a gas's number, joined to it.
var gasLeads = strings.NewReplacer("R ", "R", "R-", "R", "HC ", "HC", "HC-", "HC")

// GasKey is the number of the first gas that a text names, by which names as on
// plates are compared: R-600a, r600A 45g, HC600a and isobutane are 600A.
func GasKey(gas string) string {
	text := strings.ToUpper(gasLeads.Replace(strings.ToUpper(gas)))
	for word := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(" ,;/()-", r) }) {
		if n, ok := gasWords[word]; ok {
			return n
		}
		for _, lead := range []string{"HCFC", "HFC", "HFO", "CFC", "HC", "R"} {
			if n, ok := strings.CutPrefix(word, lead); ok {
				word = n
				break
			}
		}
		if word != "" && word[0] >= '0' && word[0] <= '9' {
			return word
		}
	}
	return strings.TrimSpace(text)
}
