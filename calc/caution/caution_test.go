package caution

import (
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"
)

func TestTableIsCompleteAndPlain(t *testing.T) {
	word := regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)
	seen := map[string]bool{}
	for _, c := range All() {
		if !word.MatchString(c.Code) || seen[c.Code] {
			t.Errorf("code %q is malformed or stands twice", c.Code)
		}
		seen[c.Code] = true
		if n := utf8.RuneCountInString(c.Text); n == 0 || n > 120 {
			t.Errorf("%s: text has %d runes, want 1 to 120", c.Code, n)
		}
		if !strings.HasSuffix(c.Text, ".") || strings.Contains(c.Text, ". ") {
			t.Errorf("%s: want one sentence: %q", c.Code, c.Text)
		}
		if c.Source == "" {
			t.Errorf("%s: no source", c.Code)
		}
		if got, ok := Text(c.Code); !ok || got != c {
			t.Errorf("Text(%q) = %v, %v", c.Code, got, ok)
		}
	}
	if _, ok := Text("no-such-code"); ok {
		t.Error("an unknown code was found")
	}
}

// No caution may teach how to get round a protective device.
func TestNothingDefeatsAProtector(t *testing.T) {
	for _, c := range All() {
		for _, bad := range []string{"bypass", "jumper", "bridge", "defeat", "screwdriver"} {
			if strings.Contains(strings.ToLower(c.Text), bad) {
				t.Errorf("%s speaks of %q", c.Code, bad)
			}
		}
	}
}

func TestAllIsACopy(t *testing.T) {
	All()[0].Text = "changed"
	if All()[0].Text == "changed" {
		t.Error("a caller can change the table")
	}
}
