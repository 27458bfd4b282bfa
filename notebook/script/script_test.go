package script

import (
	"reflect"
	"strings"
	"testing"
	"time"
)

func TestParseWords(t *testing.T) {
	tests := []struct {
		in   string
		want []string
		cols []int
	}{
		{"ohm A B 3.4", []string{"ohm", "A", "B", "3.4"}, []int{1, 5, 7, 9}},
		{"  ohm A B 3.4, A C ~6.5 cold # by hand", []string{"ohm", "A", "B", "3.4", ",", "A", "C", "~6.5", "cold"}, []int{1, 5, 7, 9, 12, 14, 16, 18, 23}},
		{`expect ohm(A, B) < 4ohm "run winding"`, []string{"expect", "ohm(A, B)", "<", "4ohm", "run winding"}, []int{1, 8, 18, 20, 25}},
		{"ohm A B (2.0 + 1.4)", []string{"ohm", "A", "B", "(2.0 + 1.4)"}, []int{1, 5, 7, 9}},
		{"# only a comment", nil, nil},
		{"", nil, nil},
		{"14:30 temp freezer -2F", []string{"temp", "freezer", "-2F"}, []int{7, 12, 20}},
		{"+40min temp freezer -2F", []string{"temp", "freezer", "-2F"}, []int{8, 13, 21}},
		{`when has("plate volts"): need volt line`, []string{"need", "volt", "line"}, []int{26, 31, 36}},
	}
	for _, tt := range tests {
		l, err := Parse(tt.in)
		if err != nil {
			t.Errorf("%q: %v", tt.in, err)
			continue
		}
		var got []string
		var cols []int
		for _, w := range l.Words {
			got, cols = append(got, w.Text), append(cols, w.Col)
		}
		if !reflect.DeepEqual(got, tt.want) || !reflect.DeepEqual(cols, tt.cols) {
			t.Errorf("%q: got %q at %v, want %q at %v", tt.in, got, cols, tt.want, tt.cols)
		}
	}
}

func TestParseParts(t *testing.T) {
	l, err := Parse(`+1h30min when is("gas", "R-600a"): note vent first # and wait`)
	if err != nil {
		t.Fatal(err)
	}
	if !l.Stamp.Set || !l.Stamp.After || l.Stamp.Clock != 90*time.Minute {
		t.Errorf("stamp %+v", l.Stamp)
	}
	if l.Guard != `is("gas", "R-600a")` || l.GuardCol != 15 {
		t.Errorf("guard %q at %d", l.Guard, l.GuardCol)
	}
	if text, col := l.Rest(); text != "vent first # and wait" || col != 41 {
		t.Errorf("rest %q at %d", text, col)
	}
	if got := l.Expression(); got != "note vent first" {
		t.Errorf("expression %q", got)
	}
}

func TestClean(t *testing.T) {
	tests := map[string]string{
		"plain Ω µ é 漢字":      "plain Ω µ é 漢字",
		"a\x1b[31mred":        "a<U+001B>[31mred",
		"bidi\u202Eevil":      "bidi<U+202E>evil",
		"bad\xffbyte":         "bad<0xFF>byte",
		"tab\there\r\n":       "tab here",
		"nul\x00 lone\rcr":    "nul<U+0000> lone<U+000D>cr",
		"filler\u3164x":       "filler<U+3164>x",
		"non\uffff\ufdd0x":    "non<U+FFFF><U+FDD0>x",
		"plane\U0001fffex":    "plane<U+1FFFE>x",
		"varied\U000e0100x":   "varied<U+E0100>x",
		"c1\u009b8m \u2028ls": "c1<U+009B>8m <U+2028>ls",
	}
	for in, want := range tests {
		if got := Clean(in); got != want {
			t.Errorf("Clean(%q) = %q, want %q", in, got, want)
		}
		if got := Clean(Clean(in)); got != want {
			t.Errorf("Clean twice(%q) = %q, want %q", in, got, want)
		}
	}
	for b := 0; b < 256; b++ {
		got := Clean("x" + string([]byte{byte(b)}) + "y")
		if strings.ContainsFunc(got, hostile) {
			t.Errorf("byte %#x survives as %q", b, got)
		}
	}
}

func TestLongLineRefused(t *testing.T) {
	if _, err := Parse(strings.Repeat("a", MaxLine+1)); err == nil {
		t.Error("a line over the limit was taken")
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"ohm A B 3.4", `note "x`, "14:30 when a: b", "+40min", "(((", "ohm 漢 Ω ~3,,", "when x", "#", `a "b" c`} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		l, err := Parse(s)
		if err != nil {
			return
		}
		again, err := Parse(l.Text)
		if err != nil || !reflect.DeepEqual(l, again) {
			t.Fatalf("not stable: %q -> %+v -> %+v (%v)", s, l, again, err)
		}
		n := runes(l.Text)
		for _, w := range l.Words {
			if w.Col < 1 || w.End > n+1 || w.Col >= w.End {
				t.Fatalf("word %+v outside %q", w, l.Text)
			}
		}
		if len(l.Words) > 0 {
			l.Rest()
			l.Expression()
		}
	})
}
