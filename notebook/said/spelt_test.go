package said

import (
	"strings"
	"testing"
)

// TestSlipsOfDangerAreHeard leaves a letter out of a danger's words, or exchanges
// two: they are heard as the right ones, and the text without slips stays what it is.
func TestSlipsOfDangerAreHeard(t *testing.T) {
	for typed, want := range map[string]string{
		"customer got a shok":      "customer got a shock",
		"Elctric SHCOK, saw smoek": "Elctric shock, saw smoke",
		"gas smel, buring":         "gas smell, burning",
		"jumpred out, bridgd":      "jumpered out, bridged",
		"köln smoek für":           "köln smoke für",
		"smoek":                    "smoke",
		"":                         "",
		"grille missin, hangin by a wire, drippin":  "grille missing, hanging by a wire, dripping",
		"runnin within the basin, rain again, thin": "running within the basin, rain again, thin",
		"limit jumperd, plug charrd, wires twistd":  "limit jumpered, plug charred, wires twisted",
		"swapd it, scrapd, taped, jumpd":            "swapped it, scraped, taped, jumped",
		"board and cord cold, shop crowd, build":    "board and cord cold, shop crowd, build",
		"erth pin, no grond":                        "earth pin, no ground",
		"lea lek gas":                               "lea lek gas",
	} {
		if got := spelt(typed); got != want {
			t.Errorf("%q: %q, want %q", typed, got, want)
		}
	}
	for _, w := range strings.Fields(alarmWords + miswords) {
		if got := spelt("a " + w + " b"); got != "a "+w+" b" {
			t.Errorf("%s is taken for %q", w, got)
		}
	}
	for _, w := range strings.Fields(alarmWords) {
		for i := range w {
			slip := w[:i] + w[i+1:]
			if got := spelt(slip); len(slip) > 3 && !strings.Contains(" "+alarmWords+miswords, " "+slip+" ") && !strings.Contains(" "+alarmWords+" ", " "+got+" ") {
				t.Errorf("%s is not heard: %s", slip, got)
			}
		}
	}
	for _, text := range []string{"got a shok", "saw smoek", "gas smel in kitchen"} {
		if len(Alarms(text, ApplianceOf("gas range", ""), false)) == 0 {
			t.Errorf("%q is no danger", text)
		}
	}
	for _, text := range []string{"limit jumpred out", "overload bypased", "limt bridgd at the limit"} {
		if !TakesOut(text) {
			t.Errorf("%q takes nothing out", text)
		}
	}
	for _, text := range []string{"socks in the drum", "parking brake", "sell it, caped", "spar tree, tinge of red"} {
		if len(Alarms(text, ApplianceOf("gas range", ""), false)) > 0 || TakesOut(text) {
			t.Errorf("%q is a danger", text)
		}
	}
}
