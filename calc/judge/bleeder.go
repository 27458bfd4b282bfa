package judge

import (
	"fmt"
	"math"
)

// Bleeder is the sum for discharging a capacitor through a resistor.
type Bleeder struct {
	Peak    float64 // V, when it is cut off at the crest of the sine
	Joules  float64 // stored at that moment, ½CV²
	Seconds float64 // down to safeVolts
	Watts   float64 // in the resistor at first
	Text    string
	Source  string
}

// safeVolts is the voltage to which a capacitor on up to 600 V is discharged
// (NEC 460.6: 50 V within one minute).
const safeVolts = 50.0

// dischargeOhms is the resistor that the Hermetic Compressor Service Handbook
// gives for the purpose (p. 69).
const dischargeOhms = 20_000.0

// BleederFor sums the discharge of microfarads charged by volts (rms) through
// r ohms; r of 0 stands for dischargeOhms. It is false when a value is not
// positive.
func BleederFor(microfarads, volts, r float64) (Bleeder, bool) {
	if r == 0 {
		r = dischargeOhms
	}
	if !(microfarads > 0 && volts > 0 && r > 0) {
		return Bleeder{}, false
	}
	b := Bleeder{Peak: volts * math.Sqrt2,
		Source: "NEC 460.6 (50 V within one minute); " + handbookCap + " (20 000 Ω)"}
	c := microfarads * 1e-6
	b.Joules = c * b.Peak * b.Peak / 2
	b.Watts = b.Peak * b.Peak / r
	if b.Peak > safeVolts {
		b.Seconds = r * c * math.Log(b.Peak/safeVolts)
	}
	b.Text = fmt.Sprintf("%s through %s falls from %.3g V to %s V in %.2g s; prove it with a meter",
		quantity(microfarads, "µF"), ohms(r), b.Peak, num(safeVolts), b.Seconds)
	return b, true
}
