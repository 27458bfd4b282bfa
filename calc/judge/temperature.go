package judge

import (
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Space is a part of a refrigerator.
type Space string

// The spaces that have a published target.
const (
	FreshFood Space = "fresh food"
	Freezer   Space = "freezer"
)

// Targets in °C: 40 °F and 0 °F exactly (FDA, Refrigerator Thermometers: Cold
// Facts about Food Safety).
const (
	FreshFoodCelsius = (40.0 - 32) / 1.8
	FreezerCelsius   = (0.0 - 32) / 1.8
)

// FoodSource is where the targets are published.
const FoodSource = "FDA, Refrigerator Thermometers: Cold Facts about Food Safety"

// TemperatureTarget judges a temperature in °C against the published target.
func TemperatureTarget(space Space, celsius measure.Value) verdict.Verdict {
	w, name := atMost(FreezerCelsius), "0 °F (-18 °C)"
	if space == FreshFood {
		w, name = atMost(FreshFoodCelsius), "40 °F (4 °C)"
	}
	out := begin(string(space)+" temperature", celsius, w, "°C", FoodSource)
	out.Limit = "at most " + name
	if celsius.Over {
		return cannot(out.Subject, "a number is needed, the thermometer is out of its range", celsius)
	}
	switch p := w.place(celsius); {
	case p == inside && space == FreshFood && celsius.Hi < 0:
		out.Word, out.Source = verdict.Suspect, FoodSource+"; not below freezing is "+commonPractice
		out.Text = "below freezing: it keeps the target and freezes the food"
	case p == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, "at or below "+name, []string{"temp-at-target"}
	case p == above:
		out.Word, out.Text, out.Fact = verdict.Failed, "above "+name, []string{"temp-above"}
	default:
		out.Word = verdict.CannotTell
		out.Text = "too near " + name + " to say: read a thermometer that stood for hours in a glass of water"
	}
	return out
}
