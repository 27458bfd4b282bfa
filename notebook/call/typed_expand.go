package call

import (
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// Expand makes of a line typed live the full line that the record holds. Its
// command word and its time take their one form (see spell). A line that
// carries on with the last kind of reading is completed: after `ohm A B 3.4` a
// bare `C 6.5` means `ohm A C 6.5` (the first probe stayed where it was) and
// `B C 2.5` means `ohm B C 2.5`; after `amp comp 1.1 run` a bare `14 peak` means
// `amp comp 14 peak`. Any other line comes back as it is, and so does
// what Expand has made.
func (c *Call) Expand(text string) string {
	out := text
	for range 6 {
		next := c.expand(out)
		if next == out {
			return out
		}
		out = next
	}
	return text // nothing that a person types goes on changing
}

// vacuum finds microns, which everyone reads above nothing, told in a unit that is
// above the air when it stands alone.
var vacuum = said.Lazily(`(\d ?[Mm]icrons? in (?:psi|[kM]?Pa|m?bar|inHg))\b`)

func (c *Call) expand(text string) string {
	text = c.spell(text)
	if strings.Contains(text, "icron") {
		for _, expr := range c.expressions(text) {
			text = strings.Replace(text, expr, vacuum().ReplaceAllString(expr, "${1}a"), 1)
		}
	}
	l, err := script.Parse(text)
	if err != nil || l.Blank() || l.Guard != "" {
		return text
	}
	if s, ok := c.carry(l); ok {
		return s
	}
	if cmd := Find(l.Words[0].Text); cmd == nil || cmd.Group == Sums {
		if cmd == nil && c.answersLeft(text) {
			return "left " + strings.TrimSpace(text)
		}
		return c.withGas(text)
	}
	return text
}

// carry completes a line that carries on with the last kind of reading.
func (c *Call) carry(l *script.Line) (string, bool) {
	if len(c.readings) == 0 {
		return "", false
	}
	first := l.Words[0].Text
	if Find(first) != nil || qualityOf(strings.ToLower(strings.TrimSuffix(first, "s"))) != nil {
		return "", false // a command, or a slip in one: volts for volt
	}
	if among(mends, strings.ToLower(first)) || c.slipOfCommand(l) {
		return "", false
	}
	last := c.readings[len(c.readings)-1]
	if last.quality.word == "ohm" && (c.glued(last, l.Words[0]) || c.mains(l) || aCap().MatchString(l.Body) || len(l.Words) > 2 && c.kindByNoun(l) != "") {
		return "", false
	}
	name, _, is := strings.Cut(l.Body, "=")
	if name = strings.TrimSpace(name); is && last.quality.word == "ohm" && isWord(name) && !c.pinName(name) && partOf(name) == nil {
		return "", false // x = 5 names a value, and no pin that was read
	}
	head := string([]rune(l.Text)[:l.BodyCol-1])
	typed := l.Expression()
	s := c.readingsAs(last.quality, typed)
	if _, own := c.lookupName(first); own && s != typed {
		return "", false // a sum with a name of the user's own
	}
	l, err := script.Parse(head + s)
	if err != nil || l.Blank() {
		return "", false
	}
	parts, err := split(l.Words)
	if err != nil {
		return "", false
	}
	var out []string
	for _, p := range parts {
		s, ok := c.expandPart(last, p)
		if !ok {
			return "", false
		}
		out = append(out, s)
	}
	return head + last.quality.word + " " + strings.Join(out, ", "), true
}

// expandPart completes one reading; it must be points that look like names,
// a value, and conditions.
func (c *Call) expandPart(last *reading, words []script.Word) (string, bool) {
	var cond condition
	rest, err := cond.parse(words, c.tempUnit())
	if last.quality.word == "ohm" && cond.energised() {
		return "", false
	}
	if err == nil && len(rest) == 1 && len(rest) < len(words) && c.alive(last.entry) && valueLike(rest[0].Text, last.quality.unit) {
		// A value with its condition is no sum: the probes stayed where they were.
		return strings.TrimRight(last.a+" "+last.b, " ") + " " + pointWords(words), true
	}
	if err != nil || len(rest) < 2 || len(rest) > 3 {
		return "", false
	}
	value := rest[len(rest)-1]
	if !valueLike(value.Text, last.quality.unit) {
		return "", false
	}
	points := rest[:len(rest)-1]
	if len(points) == 2 && onlyDigits(points[0].Text) && strings.EqualFold(points[1].Text, "x") {
		return "", false // 12 x 3 multiplies
	}
	if len(points) == 1 && last.b != "" && !c.alive(last.entry) {
		return "", false // where the probes stood is struck too
	}
	if only := points[0].Text; len(points) == 1 && last.b == "" && last.quality.word == "ohm" && partOf(only) == nil && !c.isPoint(only) {
		return "", false // no probe stands on a pin that this one could go with
	}
	for _, p := range points {
		if p.Text == "-" || strings.ContainsAny(p.Text, `()+*/<>="`) || p.Quoted || len(p.Text) > 1 && startsLikeNumber(p.Text) && !onlyDigits(p.Text) {
			return "", false
		}
	}
	for _, p := range points {
		if !c.carriesOn(last, p.Text) {
			return "", false
		}
	}
	if len(points) == 2 && !among(pairKinds, last.quality.word) {
		return "", false
	}
	if last.quality.word == "ohm" && c.rather(last, points, value.Text) != "" {
		return "", false
	}
	var b strings.Builder
	if len(points) == 1 && last.b != "" && partOf(points[0].Text) == nil {
		anchor := last.a
		if strings.EqualFold(points[0].Text, anchor) && last.b != caseName {
			anchor = last.b
		}
		b.WriteString(anchor + " ")
	}
	if len(points) == 1 && last.b == caseName && !isShell(points[0].Text) && partOf(points[0].Text) == nil {
		// The probe on the shell stays, the other moves from pin to pin.
		b.Reset()
		b.WriteString(points[0].Text + " " + caseName)
	} else {
		for i, p := range points {
			if i > 0 {
				b.WriteByte(' ')
			}
			b.WriteString(p.Text)
		}
	}
	for _, w := range words[len(points):] {
		b.WriteString(" " + w.Text)
	}
	return b.String(), true
}

// pairKinds are the readings that are taken between two points.
var pairKinds = []string{"ohm", "volt"}

// carriesOn reports whether a word is a point at which the last kind of
// reading can be taken: one read before, one that the kind is read at, or,
// for ohms, a pin.
func (c *Call) carriesOn(last *reading, word string) bool {
	for _, p := range placeWords(last.quality.word) {
		if strings.EqualFold(p, word) {
			return true
		}
	}
	c.spend(2 * len(c.readings))
	for _, r := range c.readings {
		if r.quality == last.quality && (strings.EqualFold(r.a, word) || strings.EqualFold(r.b, word)) {
			return true
		}
	}
	if last.quality.word == "volt" {
		w := strings.ToUpper(word)
		return w == "N" || len(w) == 2 && (w[0] == 'L' || w[0] == 'T') && w[1] >= '1' && w[1] <= '3'
	}
	if last.quality.word != "ohm" {
		return false
	}
	return isShell(word) || len([]rune(word)) <= 3 || partOf(word) != nil
}

// beforeParts are words before a part's name that are a letter away from a command, or
// stand before one of which a machine has one.
var beforeParts = []string{"drip", "strip", "side", "gate", "slow", "node", "clamp", "thermal", "external", "internal", "new", "old"}

// slipOfCommand reports whether the first word of a line is a slip in a command word
// rather than a point or the beginning of a part's name: ohmm ptc OL is no new part.
// A word that is not known before a part of which a machine has one is doubtful too.
func (c *Call) slipOfCommand(l *script.Line) bool {
	low := strings.TrimSuffix(strings.ToLower(l.Words[0].Text), "s")
	if len(l.Words) < 2 || len(low) < 2 || !isWord(low) || among(beforeParts, low) || partOf(low) != nil || c.pinLike(low) || c.isPoint(low) || isMotor(low) || anyPlace(low) || among(atMains, low) {
		return false
	}
	next := l.Words[1].Text
	if p := partOf(next); len(l.Words) > 2 && p != nil && among(onePer, p.words[0]) && partStarting(low+"-"+next) == nil {
		return true
	}
	if len(low) == 2 { // ohm without one of its letters
		return len(l.Words) > 2 && (low == "oh" || low == "om" || low == "hm") && !c.pinName(next)
	}
	name := source.Slip(low, commandWords())
	return name != "" && c.slipped(name, l) != ""
}

//go:noinline
func onlyDigits(s string) bool { return s != "" && strings.Trim(s, "0123456789") == "" }

func valueLike(s, unit string) bool {
	if isOver(s) {
		return true
	}
	s = strings.TrimLeft(s, "~>")
	if !startsLikeNumber(s) && !strings.HasPrefix(s, "R") {
		return false
	}
	_, err := quantity.Parse(s, unit)
	return err == nil
}
