package judge

import (
	"slices"
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
		{"ohm-meter cannot prove it", EarthIn{Ohms: within(0.2, 0.3)}, verdict.CannotTell, nil},
		{"ohm-meter reads zero", EarthIn{Ohms: within(0, 0.3)}, verdict.CannotTell, nil},
		{"fine ohm-meter", EarthIn{Ohms: within(0.05, 0.02)}, verdict.Sound, []string{"earth-continuity-sound"}},
		{"0.7 Ω", EarthIn{Ohms: within(0.7, 0.3)}, verdict.Suspect, nil},
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
		{"fresh food 9 °C", FreshFood, within(9, 0.5), verdict.Failed, nil},
		{"fresh food 4.2 °C", FreshFood, within(4.2, 0.5), verdict.CannotTell, nil},
		{"fresh food freezes", FreshFood, within(-3, 0.5), verdict.Suspect, nil},
		{"freezer -19 °C", Freezer, within(-19, 0.5), verdict.Sound, []string{"temp-at-target"}},
		{"freezer -10 °C", Freezer, within(-10, 0.5), verdict.Failed, nil},
		{"freezer -17.5 °C", Freezer, within(-17.5, 0.5), verdict.CannotTell, nil},
		{"exactly 0 °F", Freezer, measure.Exact(FreezerCelsius), verdict.Sound, []string{"temp-at-target"}},
		{"open probe", Freezer, measure.Open(7), verdict.CannotTell, nil},
	} {
		check(t, c.name, TemperatureTarget(c.space, c.celsius), c.word, c.facts...)
	}
	near(t, "40 °F", FreshFoodCelsius, 4.44, 0.005)
	near(t, "0 °F", FreezerCelsius, -17.78, 0.005)
}
