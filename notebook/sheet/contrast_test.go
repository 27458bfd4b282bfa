package sheet

import (
	"maps"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

var variable = regexp.MustCompile(`--([a-z]+): #([0-9a-f]{3}|[0-9a-f]{6});`)

// palettes reads the colours of the style sheet: light, dark and paper, each
// of the latter two laid over the light one.
func palettes(t *testing.T) map[string]map[string]string {
	t.Helper()
	out := map[string]map[string]string{}
	rest := string(style())
	for _, name := range []string{"light", "dark", "paper"} {
		start := strings.Index(rest, ":root {")
		if start < 0 {
			t.Fatalf("no colours for %s", name)
		}
		rest = rest[start+1:]
		colours := maps.Clone(out["light"])
		if colours == nil {
			colours = map[string]string{}
		}
		for _, m := range variable.FindAllStringSubmatch(rest[:strings.Index(rest, "}")], -1) {
			colours[m[1]] = m[2]
		}
		out[name] = colours
	}
	return out
}

// luminance is the relative luminance of WCAG 2.2, definitions (from memory).
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	if len(hex) == 3 {
		hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
	}
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(hex[2*i:2*i+2], 16, 8)
		if err != nil {
			t.Fatal(err)
		}
		c := float64(n) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func TestContrast(t *testing.T) {
	if c := contrast(t, "000", "ffffff"); math.Abs(c-21) > 1e-9 {
		t.Fatalf("black on white is %g, want 21", c)
	}
	const text, graphic = 4.5, 3 // WCAG 2.2, success criteria 1.4.3 and 1.4.11 (from memory)
	for name, colours := range palettes(t) {
		for _, c := range []struct {
			front, back string
			least       float64
		}{
			{"ink", "paper", text}, {"ink", "band", text}, {"quiet", "paper", text}, {"quiet", "doubtback", text}, {"link", "paper", text},
			{"good", "goodback", text}, {"doubt", "doubtback", text}, {"bad", "badback", text}, {"doubt", "paper", text}, {"line", "paper", graphic},
			{"ink", "doubtback", text},
		} {
			front, back := colours[c.front], colours[c.back]
			if front == "" || back == "" {
				t.Fatalf("%s: no colour %s or %s", name, c.front, c.back)
			}
			if got := contrast(t, front, back); got < c.least {
				t.Errorf("%s: %s on %s is %.2f to 1, want %g", name, c.front, c.back, got, c.least)
			}
		}
	}
}
