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

// Wine is kept at what is set, and by no limit of food.
const Wine Space = "wine"

// SetBand is by how many kelvin what keeps wine swings about its set point (common practice).
const SetBand = 2.0

// WantsSet says what is lacking where the set point is not known.
const WantsSet = "wine is kept at what is set, and by no limit of food: temp set …"

// TemperatureAtSet judges a temperature in °C against the set point of what keeps wine.
func TemperatureAtSet(celsius, set measure.Value) verdict.Verdict {
	w := window{set.X - SetBand, set.X + SetBand}
	out := begin("temperature", celsius, w, "°C", commonPractice)
	if out.Entries = entries(celsius, set); celsius.Over {
		return cannot(out.Subject, "a number is needed, the thermometer is out of its range", celsius)
	}
	switch w.place(celsius) {
	case inside:
		out.Word, out.Text, out.Fact = verdict.Sound, "what is set", []string{"temp-at-target"}
	case above:
		out.Word, out.Text, out.Fact = verdict.Failed, "warmer than it is set to", []string{"temp-above"}
	case below:
		out.Word, out.Text = verdict.Suspect, "colder than it is set to"
	default:
		out.Word, out.Text = verdict.CannotTell, "too near its limits to say"
	}
	return out
}

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
