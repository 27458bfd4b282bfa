package call

import (
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// lineWords are of line voltage put on a machine (common practice).
var lineWords = said.Lazily(`(?i)\b(test cord|line volt\w*|direct[- ]?test\w*|hot[- ]?shot\w*)\b|\b(ran|run|tried|started|wired|put|fed|hooked|connected|jumped)\b.{0,30}\b(direct(ly)?\b.{0,12}\b(on|to|from|off)\b|(on|to|from) (the )?mains|[12]\d\d ?v(olts?|ac)?\b.{0,20}\b(on|to|across) (u|v|w|the (comp\w*|windings?|pins?)))`)

// lined lists the lines by whose words line voltage stood on a compressor that a drive
// runs, which neither of the two may have borne.
func (c *Call) lined() []string {
	of := c.mainMachine()
	if kindOf(of) != winding.Compressor || !c.driven(of) {
		return nil
	}
	var out []string
	for _, w := range c.works[max(0, len(c.works)-mostRenewals):] {
		if c.saysLined(w) && c.alive(w.entry) && w.entry > c.renewedAt(of) {
			out = append(out, quoted(w.text)+atEntry(w.entry)+": line voltage on a compressor that a drive runs; both are to be proved")
		}
	}
	return out
}

// lineGate are words without one of which none of lineWords is there.
var lineGate = []string{"test cord", "line volt", "direct", "hot", "mains", "0 v", "0v", "5 v", "5v", "8 v", "8v"}

func (c *Call) saysLined(w work) bool {
	c.spend(50 * min(len(w.text), said.MostBytes))
	return said.Has(w.text, lineGate) && (w.kind == "did" || w.kind == "note" || w.kind == "saw") && len(w.text) <= said.MostBytes && lineWords().MatchString(w.text) && !said.Has(w.text, []string{"never", "not ", "n't ", "no "})
}
