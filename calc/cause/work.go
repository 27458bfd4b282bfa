package cause

import (
	"slices"
	"strings"
)

// Mends reports whether a text of work, or the name of a part fitted, speaks
// of what mends a cause: it does when each word of one of the cause's phrases
// begins a word of the text.
func Mends(code, text string) bool {
	c, ok := By(code)
	if !ok {
		return false
	}
	if ofAnother(code, text) {
		return false
	}
	words := strings.Fields(apartCap(code, strings.Join(Fold(text), " ")))
	for phrase := range strings.SplitSeq(c.Work, ", ") {
		all := phrase != ""
		for _, p := range strings.Fields(phrase) {
			found := false
			for _, w := range words {
				found = found || strings.HasPrefix(w, p)
			}
			all = all && found
		}
		if all {
			return true
		}
	}
	return false
}

// others are causes whose words of work fit another part of the same machine too: what the
// other is called, and what their own is (common practice).
var others = []struct {
	code       string
	other, own []string
}{
	{"harvest-valve", []string{"water", "inlet", "float", "dump", "fill", "regulat", "head pressure", "drain", "purge", "liquid", "expansion", "txv"}, []string{"harvest", "hot gas", "hot-gas", "hotgas"}},
	{"scaled", []string{"condenser", "cond coil"}, []string{"scal", "lime", "evap", "distribut", "probe", "machine"}},
}

// ofAnother reports whether the words of work name such another part, and not a cause's own.
func ofAnother(code, text string) bool {
	has := func(list []string) bool {
		return slices.ContainsFunc(list, func(w string) bool { return strings.Contains(text, w) })
	}
	for i := range others {
		if o := &others[i]; o.code == code {
			text = strings.ToLower(text)
			return has(o.other) && !has(o.own)
		}
	}
	return false
}

// apartCap takes out of the words of work a capacitor that is another part than that of a
// cause: a start capacitor is no start device, and none for running. A hard start is a
// device whatever follows.
func apartCap(code, text string) string {
	switch {
	case !strings.Contains(text, " cap"):
	case code == "start-cap-failed" && !strings.Contains(text, "start"):
		return strings.ReplaceAll(text, "run cap", "")
	case code == "run-cap-failed" && !strings.Contains(text, "run"), code != "start-cap-failed" && !strings.Contains(text, "hard start"):
		return strings.ReplaceAll(text, "start cap", "")
	}
	return text
}

// MendsSomething reports whether the words of what was done name the work for
// any cause.
func MendsSomething(text string) bool {
	for _, c := range tables().causes {
		if Mends(c.Code, text) {
			return true
		}
	}
	return false
}

// Apart reports whether two causes cannot both be there: one predicts what the
// other contradicts.
func Apart(a, b *Cause) bool {
	v := vocabulary()
	fits := func(c *Cause) set { return v.set(c.Code, append(append([]string(nil), c.Predicts...), c.ShownBy...)) }
	shared := v.set(a.Code, a.ShownBy).and(v.set(b.Code, b.ShownBy))
	return fits(a).minus(shared).meets(v.set(b.Code, b.Contradicts)) || fits(b).minus(shared).meets(v.set(a.Code, a.Contradicts))
}
