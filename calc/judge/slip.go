package judge

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// slipFactor is how far from the expected window a reading may be after the
// shift and still look like a slip of range rather than a bad part (common practice).
const slipFactor = 1.5

// powerOfTen tells when a reading misses the window and would meet it if it
// had been read three or six places off, as when the k of a range is left
// out. Such a reading is suspected, never condemned. A fraction of an ohm
// that may be zero is a short: only a range of ohms shows it.
func powerOfTen(v measure.Value, w window) string {
	if v.Over || v.X <= 0 || w.lo <= 0 || w.place(v) == inside || v.X < 1 && v.Lo <= 0 {
		return ""
	}
	wide := window{w.lo / slipFactor, w.hi * slipFactor}
	if wide.holds(v.X) {
		return ""
	}
	for _, k := range []float64{1e3, 1e6, 1e-3, 1e-6} {
		if wide.holds(v.X * k) {
			return fmt.Sprintf("%s is as expected but for a factor of %s: check the meter's range and unit, and repeat",
				ohms(v.X), num(math.Max(k, 1/k)))
		}
	}
	return ""
}

// WrongRange judges the digits as they stood on the display, such as `003`
// on a 2000k range or `0.003M`: a number padded with zeros, or a single count
// of kilohms or megohms, says that a lower range was meant. It is false when
// nothing speaks for that. Zero is no sign of it, since a short reads zero on
// every range.
func WrongRange(display string) (verdict.Verdict, bool) {
	text := strings.Trim(strings.TrimSpace(display), "~+-")
	digits := strings.TrimRight(text, "kKMΩ ")
	whole, fraction, _ := strings.Cut(digits, ".")
	all := whole + fraction
	if all == "" || strings.Trim(all, "0123456789") != "" {
		return verdict.Verdict{}, false
	}
	counts := strings.TrimLeft(all, "0")
	padded := len(whole) > 1 && whole[0] == '0'
	single := len(counts) == 1 && len(all) > 1 && strings.ContainsAny(text[len(digits):], "kKM")
	if counts == "" || len(counts) > 6 || !padded && !single {
		return verdict.Verdict{}, false
	}
	return verdict.Verdict{Subject: "meter range", Word: verdict.Suspect,
		Limit: "no leading zeros on the display", Source: commonPractice,
		Text: "only the counts " + counts + " show: choose the lowest range that does not read OL, and repeat"}, true
}

// OnWrongRange softens a verdict on a reading whose display speaks for a wrong
// range: what failed is suspected and not condemned until it is repeated.
func OnWrongRange(v verdict.Verdict) verdict.Verdict {
	if v.Word != verdict.Failed {
		return v
	}
	v.Word = verdict.Suspect
	v.Text = "the display speaks for a wrong range, repeat on the lowest that does not read OL; else " + v.Text
	var facts []string
	for _, f := range v.Fact {
		for _, end := range []string{"-failed", "-open", "-shorted"} {
			if part, ok := strings.CutSuffix(f, end); ok && slices.Contains(rangeDoubted, part) {
				facts = append(facts, fact(part, v.Word))
				break
			}
		}
	}
	v.Fact = facts
	return v
}

// rangeDoubted are the parts of which it is a fact of its own that they are
// suspect.
var rangeDoubted = []string{"heater", "sensor", "start-device", "start-cap", "run-cap"}
