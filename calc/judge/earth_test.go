package judge

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// 0.1 Ω, and 0.2 Ω with a supply cord, at 10 A or more: EN 50106:2008.
func TestEarth(t *testing.T) {
	for _, c := range []struct {
		name  string
		in    EarthIn
		word  verdict.Word
		facts []string
	}{
		{"earth tester", EarthIn{Ohms: within(0.06, 0.01), TestAmps: 10}, verdict.Sound, []string{"earth-continuity-sound"}},
		{"earth tester, too much", EarthIn{Ohms: within(0.15, 0.01), TestAmps: 10}, verdict.Failed, []string{"earth-continuity-failed"}},
		{"the same with the cord", EarthIn{Ohms: within(0.15, 0.01), TestAmps: 10, WithCord: true}, verdict.Sound, []string{"earth-continuity-sound"}},
		{"ohm-meter cannot prove it", EarthIn{Ohms: within(0.2, 0.3)}, verdict.CannotTell, []string{"earth-undecided"}},
		{"ohm-meter reads zero", EarthIn{Ohms: within(0, 0.3)}, verdict.CannotTell, []string{"earth-undecided"}},
		{"less than the leads' own", EarthIn{Ohms: within(-0.06, 0.03)}, verdict.CannotTell, []string{"earth-undecided"}},
		{"the same in tenths", EarthIn{Ohms: within(-0.2, 0.3)}, verdict.CannotTell, []string{"earth-undecided"}},
		{"an earth tester zeroed wrong", EarthIn{Ohms: within(-0.2, 0.01), TestAmps: 10}, verdict.CannotTell, []string{"earth-undecided"}},
		{"a count below nothing", EarthIn{Ohms: within(-0.01, 0.03)}, verdict.Sound, []string{"earth-continuity-sound"}},
		{"fine ohm-meter", EarthIn{Ohms: within(0.05, 0.02)}, verdict.Sound, []string{"earth-continuity-sound"}},
		{"0.7 Ω", EarthIn{Ohms: within(0.7, 0.3)}, verdict.Suspect, []string{"earth-undecided"}},
		{"30 Ω", EarthIn{Ohms: within(30, 0.6)}, verdict.Failed, []string{"earth-continuity-failed"}},
		{"none", EarthIn{Ohms: measure.Open(7)}, verdict.Failed, []string{"earth-continuity-failed"}},
	} {
		got := Earth(c.in)
		check(t, c.name, got, c.word, c.facts...)
		if !slices.Contains(got.Caution, caution.EarthAfter) {
			t.Errorf("%s: cautions %v", c.name, got.Caution)
		}
	}
}

// What cannot be told is said to be so for its own reason: too few digits, or a
// value at the limit.
func TestEarthTooNearIsNotTooCoarse(t *testing.T) {
	for _, c := range []struct {
		x, half float64
		coarse  bool
	}{{0.2, 0.3, true}, {0.1, 0.3, true}, {0.20, 0.032, false}, {0.190, 0.032, false}, {0.17, 0.032, false}} {
		got := Earth(EarthIn{Ohms: within(c.x, c.half), TestAmps: 10, WithCord: true})
		if got.Word != verdict.CannotTell || strings.Contains(got.Text, "too coarse") != c.coarse {
			t.Errorf("%g ± %g: %s, %s", c.x, c.half, got.Word, got.Text)
		}
	}
}

// 50 V AC: IEC 61140, limit of the touch voltage (from memory); what a loaded
// neutral makes: common practice.
func TestMetal(t *testing.T) {
	for _, c := range []struct {
		name  string
		volts measure.Value
		word  verdict.Word
		facts []string
	}{
		{"a leg on the case", within(118, 4), verdict.Failed, []string{"metal-live"}},
		{"half of it, as a filter makes", within(64, 1), verdict.Failed, []string{"metal-live"}},
		{"over the range", measure.Open(5), verdict.Failed, []string{"metal-live"}},
		{"at the limit", within(50, 1), verdict.CannotTell, nil},
		{"more than a neutral", within(20, 1), verdict.Suspect, nil},
		{"a loaded neutral", within(1.5, 0.3), verdict.Sound, []string{"metal-quiet"}},
		{"around the lower limit", within(5, 0.3), verdict.CannotTell, nil},
	} {
		got := Metal(MetalIn{To: "earth", Volts: c.volts})
		check(t, c.name, got, c.word, c.facts...)
		if !slices.Contains(got.Caution, caution.Shock) {
			t.Errorf("%s: cautions %v", c.name, got.Caution)
		}
	}
}

// 40 °F and 0 °F: FDA, Refrigerator Thermometers: Cold Facts about Food Safety.
func TestTemperatureTarget(t *testing.T) {
	for _, c := range []struct {
		name    string
		space   Space
		celsius measure.Value
		word    verdict.Word
		facts   []string
	}{
		{"fresh food 3 °C", FreshFood, within(3, 0.5), verdict.Sound, []string{"temp-at-target"}},
		{"fresh food 9 °C", FreshFood, within(9, 0.5), verdict.Failed, []string{"temp-above"}},
		{"fresh food 4.2 °C", FreshFood, within(4.2, 0.5), verdict.CannotTell, nil},
		{"fresh food freezes", FreshFood, within(-3, 0.5), verdict.Suspect, nil},
		{"freezer -19 °C", Freezer, within(-19, 0.5), verdict.Sound, []string{"temp-at-target"}},
		{"freezer -10 °C", Freezer, within(-10, 0.5), verdict.Failed, []string{"temp-above"}},
		{"freezer -17.5 °C", Freezer, within(-17.5, 0.5), verdict.CannotTell, nil},
		{"exactly 0 °F", Freezer, measure.Exact(FreezerCelsius), verdict.Sound, []string{"temp-at-target"}},
		{"open probe", Freezer, measure.Open(7), verdict.CannotTell, nil},
	} {
		check(t, c.name, TemperatureTarget(c.space, c.celsius), c.word, c.facts...)
	}
	near(t, "40 °F", FreshFoodCelsius, 4.44, 0.005)
	near(t, "0 °F", FreezerCelsius, -17.78, 0.005)
}
