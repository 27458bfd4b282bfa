package source

import "testing"

func TestNearest(t *testing.T) {
	words := []string{"ohm", "volt", "amp", "temp", "replaced"}
	for word, want := range map[string]string{
		"omh": "ohm", "ohn": "ohm", "OHM": "ohm", "vlot": "volt", "tmep": "temp", "replced": "replaced", "repalced": "replaced",
		"o": "", "xyz": "", "qqqq": "", "": "", string(make([]byte, 100)): "",
	} {
		if got := Nearest(word, words); got != want {
			t.Errorf("%q: %q, want %q", word, got, want)
		}
	}
	if got := Nearest("volt", nil); got != "" {
		t.Errorf("of nothing: %q", got)
	}
}

func TestShiftKeepsAnUnknownPlace(t *testing.T) {
	at := Errorf(3, 5, "%d is wrong", 7)
	if moved := at.Shift(4); moved.Col != 7 || moved.End != 9 || at.Col != 3 {
		t.Errorf("moved to %d, %d; the first is at %d", moved.Col, moved.End, at.Col)
	}
	if moved := Errorf(0, 0, "wrong").Shift(4); moved.Col != 0 || moved.End != 0 {
		t.Errorf("a fault without a place got one: %d, %d", moved.Col, moved.End)
	}
	if hinted := at.WithHint("try %d", 8); hinted.Error() != "7 is wrong (try 8)" || at.Hint != "" {
		t.Errorf("%q; the first hints %q", hinted.Error(), at.Hint)
	}
}

func TestShort(t *testing.T) {
	if got := Short("äääääääääääääääääääääääää"); got != "ääääääääääääääääääääääää…" {
		t.Errorf("%q", got)
	}
	if got := Short("word"); got != "word" {
		t.Errorf("%q", got)
	}
}
