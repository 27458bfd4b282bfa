package call

import "testing"

// Once the element at a level is known, the level alone is its name.
func TestLevelOfATank(t *testing.T) {
	answers(t, [][2]string{
		{"unit electric water heater; fault no hot water; ohm upper 12.7; ohm upper case OL", "upper-element"},
		{"unit electric water heater; fault no hot water; plate watts upper 4500; ohm upper OL", "upper-element"},
		{"unit electric water heater; fault no hot water; plate watts lower 4500; ohm lower case OL", "lower-element"},
	})
}
