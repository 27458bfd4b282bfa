package call

import (
	"strings"
	"testing"
)

// TestNoPinByAnotherKind types each word that stands for another kind of reading,
// and each short key of a plate, behind the ohms of a pair: none becomes a pin.
func TestNoPinByAnotherKind(t *testing.T) {
	c := New()
	must(t, c, "ohm A B 5.1")
	var words []string
	for _, r := range rathers {
		words = append(words, strings.Fields(r.words)...)
	}
	for _, k := range plateKeys {
		if len(k.word) <= 3 && partOf(k.word) == nil {
			words = append(words, k.word)
		}
	}
	for _, w := range words {
		for _, typed := range []string{w + " 5", strings.ToUpper(w) + " 5"} {
			if full := c.Expand(typed); strings.HasPrefix(full, "ohm ") && !strings.EqualFold(w, "ac") {
				t.Errorf("%q is taken for %q", typed, full)
			}
		}
	}
	if len(words) < 20 {
		t.Errorf("%d words", len(words))
	}
}

// TestPairsWithoutBlank holds that two pins stay two where one of them is known.
func TestPairsWithoutBlank(t *testing.T) {
	for line, want := range map[string]string{"AC 5": "ohm A C 5", "BC 5": "ohm B C 5", "XY 5": "ohm X Y 5", "HP 5": "HP 5", "AC 118": "AC 118", "BC 118": "ohm B C 118"} {
		c := New()
		must(t, c, "ohm A B 5.1")
		if got := c.Expand(line); got != want {
			t.Errorf("%q is taken for %q, want %q", line, got, want)
		}
	}
}

// TestPlaceUnknown holds which places are asked about.
func TestPlaceUnknown(t *testing.T) {
	answers(t, [][2]string{
		{"temp fr 12C", "fr is no place that is judged here; perhaps: freezer or fridge. If it is a slip: strike 1 misread."},
		{"temp frezer 12C", "perhaps: freezer."},
		{"temp ro 20C", "perhaps: room."},
	})
	for _, line := range []string{"temp freezer -18C", "temp fridge2 4C", "temp vent 60C", "temp coil 4C", "temp water 40C", "temp compressor 60C", "temp suction 4C"} {
		c := New()
		if e := must(t, c, line); strings.Contains(e.Reply.Plain(), "no place that is judged") {
			t.Errorf("%s: %s", line, e.Reply.Plain())
		}
	}
}
