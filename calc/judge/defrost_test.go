package judge

import (
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Open at room temperature by design, closed below the marked temperature:
// common practice.
func TestDefrost(t *testing.T) {
	ol, low := measure.Open(7), within(0.2, 0.3)
	at := func(c float64) *measure.Value { v := within(c, 1); return &v }
	undecided, open, closed := []string{"limit-undecided"}, []string{"limit-open"}, []string{"limit-closed"}
	for _, c := range []struct {
		name  string
		in    DefrostIn
		word  verdict.Word
		facts []string
	}{
		{"open at 70 °F", DefrostIn{Ohms: ol, Celsius: at(21.1)}, verdict.CannotTell, undecided},
		{"open when hot", DefrostIn{Ohms: ol, State: Hot}, verdict.CannotTell, undecided},
		{"open, nobody said", DefrostIn{Ohms: ol}, verdict.CannotTell, undecided},
		{"open in ice water: some close only below", DefrostIn{Ohms: ol, Celsius: at(0)}, verdict.CannotTell, undecided},
		{"open when cold", DefrostIn{Ohms: ol, State: Cold}, verdict.Failed, open},
		{"open at -18 °C", DefrostIn{Ohms: ol, Celsius: at(-18)}, verdict.Failed, open},
		{"open where closed", DefrostIn{Ohms: ol, Want: "closed"}, verdict.Failed, open},
		{"closed when cold", DefrostIn{Ohms: low, State: Cold}, verdict.Sound, closed},
		{"closed at -18 °C", DefrostIn{Ohms: low, Celsius: at(-18)}, verdict.Sound, closed},
		{"closed at 70 °F", DefrostIn{Ohms: low, Celsius: at(21.1)}, verdict.Suspect, closed},
		{"closed when hot", DefrostIn{Ohms: low, State: Hot}, verdict.Suspect, closed},
		{"closed, nobody said", DefrostIn{Ohms: low}, verdict.CannotTell, closed},
		{"the thermometer decides, not the word", DefrostIn{Ohms: ol, State: Cold, Celsius: at(20)}, verdict.CannotTell, undecided},
		{"12 Ω", DefrostIn{Ohms: within(12, 0.4), State: Cold}, verdict.Suspect, nil},
	} {
		check(t, c.name, Defrost(c.in), c.word, c.facts...)
	}
}
