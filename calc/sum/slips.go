package sum

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ohmcall/calc/source"
)

// slipRows write what people type as a sum has it: a word of the refusal that a row
// is for, a pattern, and what stands in its place. What comes of it is shown when it
// can be worked out. A reading that is missing, which guards meet often, tries none.
const slipRows = `is |(?i)([\d.]+) ?(?:in(?:ch(?:es)?)?\.?|") ?w\.?[cg]\b\.?|${1}inWC
a vacuum|(?i)(^|[^-−\d.])([\d.]+) ?inHg\b|$1-${2}inHg
a vacuum|(?i)(\d) ?inHg\b|${1}inHga
quote|(\d+)' ?(\d+)"|${1}ft + ${2}in
quote|(\d)"( ?[-+*/)]|$)|${1}in$2
missing|(\d) ?ft (\d+) in$|${1}ft + ${2}in
two gauge|([\d.]) ?inWC\b|${1}inWCd
two gauge|([\d.]) ?(psi|kPa|bar)g?$|$1${2}d
starts at|([\d.]) ?(psi|kPa|bar|inWC)g?\b|$1${2}d
after in|(\d) in( ?[-+*/)]|$)|${1}in$2
after in|^(.*[-+*/].*) in$|($1) * 1in
zero|\b(wire_(?:drop|ohms)\()1/0|${1}0
zero|\b(wire_(?:drop|ohms)\()2/0|${1}-1
zero|\b(wire_(?:drop|ohms)\()3/0|${1}-2
zero|\b(wire_(?:drop|ohms)\()4/0|${1}-3
unit|\b(c?m|mm|in|ft)([23])\b|$1^$2
power|([\d.]+) ?([a-z]+) ?\^ ?(\d)|($1 * 1$2^$3)
power|([\d.]+) ?([a-z]+) ?\^ ?(\d)|($1$2)^$3
missing|(?i)([\d.]+) ?% off (?:of )?(.+)$|$2 * (1 - $1%)
unit|(?i)^(.+?) (?:less|minus) ([\d.]+) ?%$|$1 * (1 - $2%)
unit|(?i)^(.+?) plus ([\d.]+) ?%$|$1 * (1 + $2%)
unit| squared|^2
unit| cubed|^3
function named|\b(?:avg|average)\(|mean(
compare|^ *= *|
compare| *=+ *$|
";"|(\d),(\d+); ?|$1.$2, 
";"|; ?|, 
comma|(\d),(\d{3})\b|$1$2
comma|(\d),(\d)|$1.$2
comma|\b(\d{1,3}),(\d{3})(?:,(\d{3}))?(\D|$)|$1$2$3$4
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
missing|(\d) (\d)|$1, $2
value|/([VAW])\b|/1$1
is not |\b(wire_(?:drop|ohms))\(([^,()]+, ?)?([\d.]+) ?mm[2²],? ?|${1}_mm2($3, $2
is not |\b(wire_(?:drop|ohms))\((.+), ?([\d.]+) ?mm[2²]\)|${1}_mm2($3, $2)
both by|/( ?)(\d[\d.]* ?[A-Za-zΩ]+(?:/[A-Za-z]+)+)|/$1($2)
yes or no|^(.+?) ?\Q||\E ?(.+?) ?\Q||\E ?(.+)$|parallel_r($1, $2, $3)
yes or no|^(.+?) ?\Q||\E ?(.+)$|parallel_r($1, $2)
quote|'(\d{3})|$1
text|'(\d{3})|$1
used|([\d.]+) ?(m|mm|cm|in|ft)²|($1 * 1$2^2)
used|([\d.]+) ?(m|mm|cm|in|ft)³|($1 * 1$2^3)
used|(\d|[)ΩA-Z]|ohm|[a-z_]{4,}|\b[a-ln-z])²|$1^2
used|(\d|[)A-Z]|[a-z_]{4,}|\b[a-ln-z])³|$1^3
used|√ ?([\w.]+)|sqrt($1)
used|√|sqrt
used|<>|!=
used|~|
money|(?i)(\d ?)(h|hr|hours?|kWh) ?\* ?[$€£]([\d.]+)|$1$2 * $3/$2
money|(?i)[$€£]([\d.]+) ?\* ?([\d.]+ ?)(h|hr|hours?|kWh)\b|$1/$3 * $2$3
money|(?i)(\d ?min) ?\* ?[$€£]([\d.]+)|$1 * $2/h
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
	ev.work += 180 * len(text)
	found, hint := "", ""
	if name, _, misfit := strings.Cut(e.Msg, " wants "); misfit {
		return ev.reordered(text, name, e)
	}
	for _, s := range slips() {
		t := text
		if strings.Contains(e.Msg, s.of) {
			t = s.put(text)
		}
		if t == text || t == found {
			continue
		}
		switch {
		case !ev.works(t):
		case found != "":
			return e.WithHint("%s, or %s", hint, t)
		default:
			found, hint = t, "write "+t
			if e = e.WithHint("%s", hint); s.of == "money" {
				return e
			}
		}
	}
	return e
}

// works reports whether a text can be worked out.
func (ev *evaluator) works(text string) bool {
	trial := evaluator{env: ev.env}
	c, err := trial.compile(text, nil)
	if err == nil {
		_, err = c.run()
	}
	ev.work += trial.work + 40*len(text)
	return err == nil
}

// reordered adds to the fault of a call that has another unit than is wanted the
// one order of its values that works, or else what it takes, with its example.
func (ev *evaluator) reordered(text, name string, e *source.Error) error {
	inner, whole := strings.CutPrefix(strings.TrimSuffix(text, ")"), name+"(")
	if values := strings.Split(inner, ","); whole && len(values) <= 4 && !strings.ContainsAny(inner, "()") {
		var found []string
		orders(values, 0, func(values []string) {
			if t := name + "(" + strings.Join(values, ", ") + ")"; len(found) < 2 && !slices.Contains(found, t) && ev.works(t) {
				found = append(found, t)
			}
		})
		if len(found) == 1 {
			return e.WithHint("write %s", found[0])
		}
	}
	if ev.env != nil && e.Hint == "" {
		if f, ok := ev.env.Func(name); ok && f.Example != "" {
			return e.WithHint("%s, as in %s", f.Usage(), f.Example)
		}
	}
	return e
}

// orders gives each order of values from the one at a place on.
func orders(values []string, at int, each func([]string)) {
	if at == len(values) {
		each(values)
	}
	for i := at; i < len(values); i++ {
		values[at], values[i] = strings.TrimSpace(values[i]), strings.TrimSpace(values[at])
		orders(values, at+1, each)
		values[at], values[i] = values[i], values[at]
	}
}

// put writes the row's text for what it finds. A sum that is not all of the line,
// and a product that something is divided by, stand in brackets, as do the parts of
// a sum that is multiplied.
func (s *slip) put(text string) string {
	open, plus := strings.HasPrefix(s.to, "("), strings.Contains(s.to, " + ")
	if !open && !plus && !strings.Contains(s.to, " * ") || s.to == " * " {
		return s.from.ReplaceAllString(text, s.to)
	}
	out, done := "", 0
	for _, m := range s.from.FindAllStringSubmatchIndex(text, -1) {
		from, to := m[0], m[1]
		to -= len(text[from:to]) - len(strings.TrimRight(text[from:to], " "))
		for from > done && strings.ContainsRune("0123456789.", rune(text[from-1])) {
			from--
		}
		for to < len(text) && (wordRune(rune(text[to])) || text[to] == '.') {
			to++
		}
		if from < done {
			continue
		}
		mid := s.to
		for n := 1; n < len(m)/2; n++ {
			name := "$" + strconv.Itoa(n)
			if m[2*n] >= 0 && strings.Contains(mid, name+" * ") && strings.ContainsAny(text[m[2*n]:m[2*n+1]], "+-") {
				mid = strings.Replace(mid, name, "("+name+")", 1)
			}
		}
		mid = text[from:m[0]] + string(s.from.ExpandString(nil, mid, text, m)) + text[min(m[1], to):to]
		before := strings.TrimRight(text[:from], " ")
		if plus && !open && (from > 0 || to < len(text)) || strings.HasSuffix(before, "/") {
			mid = "(" + mid + ")"
		}
		out += text[done:from] + mid
		done = to
	}
	return out + text[done:]
}
