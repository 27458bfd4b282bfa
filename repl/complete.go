package repl

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

// longestList is how many words Tab lists at most.
const longestList = 48

// Completer fills in what is being typed, from the table of commands and the
// state of the call:
//
//   - On an empty line, or behind a lone command word, it offers the line that
//     is wanted next, without the fact; Tab again offers the one after it.
//   - Behind the first letters of a command it goes through the commands that
//     start with them, readings first, names of the call already given last.
//   - Elsewhere it adds what is certain, and lists what is possible when
//     nothing is.
//   - Where there is nothing to offer it does nothing.
type Completer struct {
	Call func() *call.Call
	// Parts lists parts used in earlier calls on a model; nil for none.
	Parts func(model string) []string
	// Scripts lists the files that `use` can name; nil for none.
	Scripts func() []string
	// Snippets lists the names of the user's own definitions, those with
	// parameters with the bracket behind; nil for none.
	Snippets func() []string

	offered []string // the lines that Tab goes through
	at      int      // the one that is on the line
}

// offer is what can stand at the cursor: the words that fit what is typed of
// them so far.
type offer struct {
	typed string
	words []string
	shown []string // how the words are listed, when not as they are
	then  string   // follows a word that is complete
	first bool     // the first word of a line: Tab goes through the words
}

// Complete takes the line up to the cursor and returns it completed, with the
// words to list when more than one is possible.
func (k *Completer) Complete(head string) (text string, list []string) {
	if script.Clean(head) != head {
		return head, nil
	}
	c := k.Call()
	if len(k.offered) > 0 && head == k.offered[k.at] {
		k.at = (k.at + 1) % len(k.offered)
		return k.offered[k.at], k.choices(c, k.offered[k.at])
	}
	k.offered, k.at = nil, 0
	if strings.TrimSpace(head) == "" || loneWord(head) {
		want := strings.TrimLeft(head, " ")
		for _, s := range c.Suggest() {
			if strings.HasPrefix(s, want) && s != want {
				k.offered = append(k.offered, s)
			}
		}
		if len(k.offered) > 0 {
			return k.offered[0], k.choices(c, k.offered[0])
		}
	}
	o, ok := k.offerAt(c, head)
	if !ok {
		return head, nil
	}
	text, list = o.extend(head)
	if o.first && text == head && len(list) > 1 {
		for _, w := range list {
			k.offered = append(k.offered, strings.TrimSuffix(head, o.typed)+w+o.then)
		}
		return k.offered[0], list
	}
	return text, list
}

// loneWord reports whether a line is one word with a space behind it.
func loneWord(head string) bool {
	s := strings.TrimLeft(head, " ")
	return strings.HasSuffix(s, " ") && !strings.Contains(strings.TrimRight(s, " "), " ") && call.Find(strings.TrimRight(s, " ")) != nil
}

// choices lists what can follow a line that was offered, when it is a finding
// with several outcomes.
func (k *Completer) choices(c *call.Call, line string) []string {
	if !strings.HasPrefix(line, "saw ") {
		return nil
	}
	o, ok := k.offerAt(c, line)
	if !ok {
		return nil
	}
	_, list := o.extend(line)
	return list
}

// extend adds what all fitting words share.
func (o offer) extend(head string) (string, []string) {
	var rest, show []string
	seen := map[string]bool{}
	typed := []rune(o.typed)
	for i, w := range o.words {
		r := []rune(w)
		if len(r) < len(typed) || !strings.EqualFold(string(r[:len(typed)]), o.typed) {
			continue
		}
		if s := string(r[len(typed):]); !seen[s] {
			seen[s] = true
			rest = append(rest, s)
			if o.shown != nil {
				w = o.shown[i]
			}
			show = append(show, w)
		}
	}
	switch len(rest) {
	case 0:
		return head, nil
	case 1:
		if o.typed != "" || rest[0] != "" {
			return head + rest[0] + o.then, nil
		}
		return head, nil
	}
	if s := shared(rest); s != "" {
		return head + s, nil
	}
	return head, shorten(show, len(typed))
}

// shared is the start that all texts have in common.
func shared(texts []string) string {
	s := []rune(texts[0])
	for _, t := range texts[1:] {
		r := []rune(t)
		n := 0
		for n < len(s) && n < len(r) && s[n] == r[n] {
			n++
		}
		s = s[:n]
	}
	return string(s)
}

// shorten cuts a long list of phrases to their next words, and then to what a
// small screen holds.
func shorten(list []string, typed int) []string {
	if len(list) <= longestList/2 {
		return list
	}
	var out []string
	seen := map[string]bool{}
	for _, w := range list {
		r := []rune(w)
		end := typed
		for end < len(r) && r[end] != ' ' {
			end++
		}
		if s := string(r[:end]); !seen[s] {
			seen[s] = true
			out = append(out, s)
		}
	}
	if n := len(out) - longestList; n > 0 {
		out = append(out[:longestList], "and "+strconv.Itoa(n)+" more")
	}
	return out
}

// offerAt finds what can stand at the end of a line.
func (k *Completer) offerAt(c *call.Call, head string) (offer, bool) {
	l, err := script.Parse(head)
	if err != nil {
		return offer{}, false
	}
	spaced := strings.HasSuffix(head, " ")
	if len(l.Words) == 0 || len(l.Words) == 1 && !spaced {
		return k.firstWord(c, l)
	}
	cmd := call.Find(l.Words[0].Text)
	if cmd == nil || l.Words[0].Quoted || len(cmd.Params) == 0 {
		return k.name(c, head)
	}
	rest := strings.TrimLeft(string([]rune(head)[l.Words[0].End-1:]), " ")
	p := cmd.Params[0]
	switch p.Kind {
	case call.Text:
		return phrase(rest, words(p, c), "")
	case call.Free:
		return phrase(rest, words(p, c), "")
	case call.Readings:
		return k.reading(c, cmd, rest)
	case call.Fields:
		return k.field(c, cmd, rest)
	case call.Expression, call.Definition:
		return k.name(c, head)
	}
	typed, i := "", len(l.Words)-1
	if !spaced {
		typed, i = l.Words[len(l.Words)-1].Text, i-1
	}
	if i >= len(cmd.Params) || l.Words[len(l.Words)-1].Quoted && !spaced {
		return offer{}, false
	}
	p = cmd.Params[i]
	then := ""
	if i+1 < len(cmd.Params) {
		then = " "
	}
	o := offer{typed: typed, words: words(p, c), then: then}
	if cmd.Word == "help" && i == 0 && k.Snippets != nil {
		for _, n := range k.Snippets() {
			o.words = append(o.words, strings.TrimSuffix(n, "("))
		}
	}
	switch p.Kind {
	case call.EntryRef:
		for _, n := range o.words {
			o.shown = append(o.shown, n+"  "+entryLine(c, n))
		}
	case call.File:
		if k.Scripts != nil {
			o.words = k.Scripts()
		}
	}
	return o, true
}

func words(p call.Param, c *call.Call) []string {
	if p.Words == nil {
		return nil
	}
	return p.Words(c)
}

func entryLine(c *call.Call, n string) string {
	if i, err := strconv.Atoi(n); err == nil && i >= 1 && i <= c.Len() {
		return c.Entries()[i-1].Line
	}
	return ""
}

// firstWord offers the commands; where none fits, the names of sums.
func (k *Completer) firstWord(c *call.Call, l *script.Line) (offer, bool) {
	o := offer{then: " ", first: true}
	if len(l.Words) == 1 {
		o.typed = l.Words[0].Text
	}
	if o.typed == "" && !l.Stamp.Set && l.Guard == "" {
		return offer{}, false
	}
	var given []string
	for _, cmd := range call.Commands() {
		switch {
		case l.Guard != "" && cmd.Word != "need" && cmd.Word != "expect" && cmd.Word != "note":
		case cmd.Group == call.Who && c.Given(cmd.Word):
			given = append(given, cmd.Word)
		default:
			o.words = append(o.words, cmd.Word)
		}
	}
	o.words = append(o.words, given...)
	if l.Guard == "" {
		o.words = append(o.words, "when")
	}
	for _, w := range o.words {
		if strings.HasPrefix(w, o.typed) {
			return o, true
		}
	}
	return k.name(c, o.typed)
}

// phrase offers whole phrases of which some words are typed.
func phrase(typed string, list []string, then string) (offer, bool) {
	return offer{typed: typed, words: list, then: then}, true
}

// name offers the names that a sum can use, once a letter of one is typed.
func (k *Completer) name(c *call.Call, head string) (offer, bool) {
	r := []rune(head)
	at := len(r)
	for at > 0 && (unicode.IsLetter(r[at-1]) || unicode.IsDigit(r[at-1]) || r[at-1] == '_') {
		at--
	}
	typed := string(r[at:])
	if typed == "" || unicode.IsDigit(r[at]) {
		return offer{}, false
	}
	o := offer{typed: typed}
	var kept []string
	if k.Snippets != nil {
		kept = k.Snippets()
	}
	names := c.SumNames()
	for i, n := range names {
		if c.TakesFunction(n) {
			names[i] += "("
		}
	}
	for _, n := range kept {
		if !slices.ContainsFunc(names, func(own string) bool { return strings.TrimSuffix(own, "(") == strings.TrimSuffix(n, "(") }) {
			names = append(names, n)
		}
	}
	slices.Sort(names)
	for _, n := range names {
		if strings.HasPrefix(n, typed) {
			o.words = append(o.words, n)
		}
	}
	return o, true
}

// reading offers points, the pairs wanted first, and behind a value the
// conditions.
func (k *Completer) reading(c *call.Call, cmd *call.Command, rest string) (offer, bool) {
	parts := strings.Split(rest, ",")
	part := strings.TrimLeft(parts[len(parts)-1], " ")
	taken := func(points string) bool {
		for _, p := range parts[:len(parts)-1] {
			if strings.HasPrefix(strings.TrimLeft(p, " "), points+" ") {
				return true
			}
		}
		return false
	}
	points := words(cmd.Params[0], c)
	first, _, second := strings.Cut(part, " ")
	var pairs []string
	for _, w := range c.SecondPoints(cmd.Word) {
		if second && !strings.EqualFold(w, first) {
			pairs = append(pairs, first+" "+w)
		}
	}
	for _, list := range [][]string{points, pairs} {
		list = slices.DeleteFunc(slices.Clone(list), taken)
		for _, w := range list {
			if len(part) <= len(w) && strings.EqualFold(w[:len(part)], part) {
				return offer{typed: part, words: list, then: " "}, true
			}
		}
	}
	fields := strings.Fields(part)
	typed := ""
	if !strings.HasSuffix(part, " ") && len(fields) > 0 {
		typed, fields = fields[len(fields)-1], fields[:len(fields)-1]
	}
	for i, w := range fields {
		if i > 0 && call.IsValue(cmd.Word, w) {
			return offer{typed: typed, words: call.Conditions()}, true
		}
	}
	return offer{}, false
}

// field offers the keys of `key value` pairs, and the words that a value can
// be; for a part, the parts known.
func (k *Completer) field(c *call.Call, cmd *call.Command, rest string) (offer, bool) {
	parts := strings.Split(rest, ",")
	part := strings.TrimLeft(parts[len(parts)-1], " ")
	if cmd.Word == "part" {
		if len(parts) > 1 {
			return offer{}, false
		}
		list := words(cmd.Params[0], c)
		if k.Parts != nil {
			list = append(list, k.Parts(c.Model())...)
		}
		return phrase(part, list, "")
	}
	if key, value, ok := strings.Cut(part, " "); ok {
		return offer{typed: strings.TrimLeft(value, " "), words: c.FieldValues(cmd.Word, key)}, true
	}
	return offer{typed: part, words: words(cmd.Params[0], c), then: " "}, true
}
