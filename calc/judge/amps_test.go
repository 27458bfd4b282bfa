package judge

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// +15 % on motor-operated input: IEC 60335-1 cl. 10.2 (from memory); the
// other limits are common practice.
func TestAmps(t *testing.T) {
	for _, c := range []struct {
		name       string
		x, half    float64
		plate, lra float64
		word       verdict.Word
		facts      []string
	}{
		{"sound", 1.15, 0.04, 1.2, 12, verdict.Sound, []string{"amps-sound"}},
		{"high", 1.6, 0.04, 1.2, 12, verdict.Failed, []string{"amps-high"}},
		{"low", 0.4, 0.03, 1.2, 12, verdict.Suspect, []string{"amps-low"}},
		{"none", 0.01, 0.03, 1.2, 12, verdict.Failed, []string{"amps-none"}},
		{"near LRA", 11, 0.2, 1.2, 12, verdict.Failed, []string{"amps-locked-rotor"}},
		{"six times, no LRA", 7, 0.2, 1.2, 0, verdict.Suspect, []string{"amps-locked-rotor"}},
		{"near the limit", 1.37, 0.04, 1.2, 12, verdict.CannotTell, nil},
		{"no plate", 1.15, 0.04, 0, 0, verdict.CannotTell, nil},
	} {
		got := Amps(AmpsIn{Name: "comp", Run: within(c.x, c.half), Plate: c.plate, LRA: c.lra})
		check(t, c.name, got, c.word, c.facts...)
		if slices.Contains(got.Fact, "amps-locked-rotor") && !strings.Contains(got.Text, "inferred") {
			t.Errorf("%s: an inference is not worded as one: %q", c.name, got.Text)
		}
	}
}

func TestSurge(t *testing.T) {
	for _, c := range []struct {
		name       string
		x          float64
		plate, lra float64
		stays      bool
		word       verdict.Word
		facts      []string
	}{
		{"normal start", 11, 1.2, 12, false, verdict.Sound, []string{"surge-sound"}},
		{"stays at LRA", 11, 1.2, 12, true, verdict.Failed, []string{"amps-locked-rotor"}},
		{"stays at LRA on a weak supply", 9, 1.2, 12, true, verdict.Failed, []string{"amps-locked-rotor"}},
		{"stays, only running amps known", 7, 1.2, 0, true, verdict.Suspect, []string{"amps-locked-rotor"}},
		{"stays, well under", 3, 1.2, 12, true, verdict.CannotTell, nil},
		{"stays, near the limit", 8.45, 1.2, 12, true, verdict.CannotTell, nil},
		{"far above LRA", 19, 1.2, 12, false, verdict.Suspect, nil},
		{"no plate", 11, 0, 0, true, verdict.CannotTell, nil},
	} {
		got := Surge(SurgeIn{Name: "comp", Peak: within(c.x, 0.2), Plate: c.plate, LRA: c.lra, Stays: c.stays})
		check(t, c.name, got, c.word, c.facts...)
		if slices.Contains(got.Fact, "amps-locked-rotor") &&
			(!strings.Contains(got.Text, "inferred") || !slices.Contains(got.Caution, caution.ProtectorStays)) {
			t.Errorf("%s: %q, cautions %v", c.name, got.Text, got.Caution)
		}
	}
}

// The overload opens in seconds: refrigerator service text.
func TestTrip(t *testing.T) {
	for _, c := range []struct {
		name          string
		seconds, amps float64
		word          verdict.Word
		facts         []string
	}{
		{"does its work", 8, 11, verdict.Sound, []string{"amps-locked-rotor"}},
		{"slow at locked rotor", 120, 11, verdict.Suspect, []string{"amps-locked-rotor"}},
		{"opens within the plate", 90, 1.1, verdict.Suspect, nil},
		{"opens on a high current", 90, 3, verdict.CannotTell, nil},
	} {
		got := Trip(TripIn{Seconds: within(c.seconds, 1), Amps: within(c.amps, 0.1), Plate: 1.2, LRA: 12})
		check(t, c.name, got, c.word, c.facts...)
	}
	check(t, "no plate", Trip(TripIn{Seconds: measure.Exact(8), Amps: measure.Exact(11)}), verdict.CannotTell)
}
