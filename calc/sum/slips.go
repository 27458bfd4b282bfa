package sum

import (
	"regexp"
	"strings"
	"sync"

	"ohmcall/calc/source"
)

// slipRows write what people type as a sum has it: a word of the refusal that a row
// is for, a pattern, and what stands in its place. What comes of it is shown when it
// can be worked out. A reading that is missing, which guards meet often, tries none.
const slipRows = `comma|(\d),(\d{3})\b|$1$2
comma|(\d),(\d)|$1.$2
comma|(\d),(\d)|$1, $2
missing|\b(\d{1,3}) (\d{3})(?: (\d{3}))?\b|$1$2$3
missing|(?i) [xo]f? | * 
missing| to | in 
missing|(?i) ?deg ([fc])\b|$1
unit|(?i) ?degrees ([fc])\b|$1
value|(\d)h(\d+)(?:min)?\b|${1}h + ${2}min
missing|(\d ?(?:h|ft|min|lb|gal)) (\d)|$1 + $2
missing|(\d+) (\d+/\d+) ?([A-Za-z]+)|($1 + $2) * 1$3
cannot|\b(\d+)-(\d+/\d+) ?([A-Za-z]+)|($1 + $2) * 1$3
cannot|(\d+/\d+) ?([A-Za-zΩ]+)|($1) * 1$2
missing|(\d) ([kMG])\b|$1$2
missing|(\d) ([A-Za-z]\w*)|$1 * $2
unit|(\d) ?([A-Za-z]\w*)|$1 * $2
yes or no|^(.+?) ?\Q||\E ?(.+?) ?\Q||\E ?(.+)$|parallel_r($1, $2, $3)
yes or no|^(.+?) ?\Q||\E ?(.+)$|parallel_r($1, $2)
quote|'(\d{3})|$1
text|'(\d{3})|$1
used|²|^2
used|³|^3
used|√ ?([\w.]+)|sqrt($1)
used|√|sqrt
used|<>|!=
used|~|
money|[$€£]|`

type slip struct {
	of, to string
	from   *regexp.Regexp
}

var slips = sync.OnceValue(func() (out []slip) {
	for row := range strings.Lines(slipRows) {
		f := strings.Split(strings.TrimSuffix(row, "\n"), "|")
		n := len(f) - 1
		out = append(out, slip{f[0], f[n], regexp.MustCompile(strings.Join(f[1:n], "|"))})
	}
	return out
})

// instead adds to the fault of a sum one or two texts that work in its place.
func (ev *evaluator) instead(text string, err error) error {
	e, ok := err.(*source.Error)
	if !ok || len(text) > maxBytes {
		return err
	}
	ev.work += 90 * len(text)
	found, hint := "", ""
	for _, s := range slips() {
		t := text
		if strings.Contains(e.Msg, s.of) {
			t = s.from.ReplaceAllString(text, s.to)
		}
		if t == text || t == found {
			continue
		}
		trial := evaluator{env: ev.env}
		c, err := trial.compile(t, nil)
		if err == nil {
			_, err = c.run()
		}
		ev.work += trial.work + 40*len(t)
		switch {
		case err != nil:
		case found != "":
			return e.WithHint("%s, or %s", hint, t)
		default:
			found, hint = t, "write "+t
			e = e.WithHint("%s", hint)
		}
	}
	return e
}
