package call

import (
	"strings"
	"testing"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
)

func linesOf(t *testing.T, lines ...string) *Call {
	t.Helper()
	c := New()
	for _, l := range lines {
		if _, err := c.Apply(time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC), l); err != nil {
			t.Fatalf("%s: %v", l, err)
		}
	}
	return c
}

// What a sound part is said to read is judged sound by the judge of that part,
// when the line proposed is typed; and each limit told has its source.
func TestForecasts(t *testing.T) {
	plate := []string{"plate volts 115, hz 60, amps 1.2, lra 12, watts 450, r25 10k, beta 3977, gas R-600a, mfd start 88-108, mfd C1 12 5%", "temp room 25C"}
	codes := map[string]bool{}
	judged := 0
	for _, x := range cause.Tests() {
		codes[x.Code] = true
		c := linesOf(t, plate...)
		f := c.forecast(&x)
		if v := f.verdict; v.Limit != "" && v.Source == "" {
			t.Errorf("%s: the limit %s has no source", x.Code, v.Limit)
		}
		if s := f.sentence(); f.line != "" && !strings.HasPrefix(s, "Expected: ") {
			t.Errorf("%s: %q", x.Code, s)
		}
		if f.line == "" || f.verdict.Word == "" {
			continue
		}
		if _, err := c.Apply(time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC), f.line); err != nil {
			t.Errorf("%s: %s: %v", x.Code, f.line, err)
			continue
		}
		n := len(c.entries)
		for _, key := range c.subjects {
			j := c.judged[key]
			if j == nil || j.verdict.Entries[len(j.verdict.Entries)-1] != n {
				continue
			}
			judged++
			if w := j.verdict.Word; w != verdict.Sound && w != verdict.CannotTell {
				t.Errorf("%s: %s is %s: %s", x.Code, f.line, w, j.verdict.Text)
			}
		}
	}
	for code := range forecasts {
		if !codes[code] {
			t.Errorf("%s is no test", code)
		}
	}
	if judged < 5 {
		t.Errorf("only %d lines were judged", judged)
	}
}

// The numbers follow the plate: 2400 W at 240 V is 24 Ω (V²/P), a 10 kΩ sensor
// of beta 3977 has 33.9 kΩ in ice water (IEC 60539-1), 240 V is two legs.
func TestForecastFollowsThePlate(t *testing.T) {
	for _, x := range []struct{ code, plate, line, say string }{
		{"heater-ohms", "plate volts 240, watts 2400", "ohm heater 24", "19.43 to 26.67 Ω"},
		{"heater-ohms", "plate volts 240", "", "plate watts and volts are needed"},
		{"sensor-ohms", "plate r25 10k, beta 3977", "ohm sensor 33.9k ice", "±10 %"},
		{"sensor-ohms", "plate r0 1000", "ohm sensor 1000 ice", "IEC 60751"},
		{"sensor-ohms", "plate volts 115", "", "from its sheet"},
		{"supply-volts", "plate volts 240", "volt L1 L2 240", "216 to 252 V"},
		{"run-cap", "plate mfd C1 35 6%", "mfd C1 35", "32.9 to 37.1 µF"},
		{"run-cap", "plate mfd herm 40, mfd fan 5", "mfd herm 40", "36 to 44 µF"},
		{"run-cap", "plate mfd fan 5", "mfd fan 5", "4.5 to 5.5 µF"},
		{"start-cap", "plate mfd start 88-108", "mfd start 88", "88 to 108 µF"},
		{"start-amps", "plate amps 1.2, lra 12", "", "0.48 to 1.38 A"},
		{"heater-amps", "plate volts 240, watts 2400", "amp heater 10 run", "9 to 10.5 A"},
		{"start-device", "plate volts 230", "", "3 to 100 Ω"},
		{"winding-ohms", "plate ohms start 8.4 5%, ohms run 3.1 5%", "", "by the sheet start 8.4 5%, run 3.1 5%"},
	} {
		c := linesOf(t, x.plate)
		f := c.forecast(&cause.Test{Code: x.code})
		if f.line != x.line || !strings.Contains(f.sentence(), x.say) {
			t.Errorf("%s with %s: %q, %q", x.code, x.plate, f.line, f.sentence())
		}
	}
}

// The house may choose a published rule or its own ohms; nonsense is refused.
func TestHouseLimit(t *testing.T) {
	for _, x := range []struct{ rule, word string }{
		{"10M", "failed"}, {"5M", "sound"}, {"0.5M", "sound"}, {"2M", "sound"},
	} {
		c := linesOf(t, "plate volts 115", "meter ohm 2% 2", "limit "+x.rule, "ohm A case 7.50M test 500V")
		if j := c.judged["case\x00compressor\x00A"]; j == nil || string(j.verdict.Word) != x.word {
			t.Errorf("limit %s: %+v, want %s", x.rule, j, x.word)
		}
	}
	for _, bad := range []string{"limit 5ohm", "limit -3M", "limit much"} {
		if _, err := New().Apply(time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC), bad); err == nil {
			t.Errorf("%s was taken", bad)
		}
	}
}
