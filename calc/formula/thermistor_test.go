package formula

import (
	"math"
	"testing"
)

func TestThermistorPublished(t *testing.T) {
	const definition = "IEC 60539-1 definition of the B value, computed"
	var rows []published
	for _, c := range []struct {
		beta, temp, ohms, tol float64
	}{
		{3977, 0, 33900, 5}, {3977, 10, 20272, 1}, {3977, 25, 10000, 1e-6}, {3977, 50, 3563, 0.5}, {3977, 85, 1070, 0.5},
		{3950, 0, 33621, 1}, {3950, 10, 20175, 1}, {3950, 50, 3588, 0.5}, {3950, 85, 1087, 0.5}, {3950, 100, 698, 0.5},
		{3435, -20, 77523, 1}, {3435, 0, 28704, 1}, {3435, 10, 18410, 1}, {3435, 50, 4101, 0.5}, {3435, 85, 1451, 0.5}, {3435, 100, 987, 0.5},
	} {
		rows = append(rows,
			published{"ntc_ohms", []any{c.temp, 10e3, c.beta}, c.ohms, c.tol, definition},
			published{"ntc_temp", []any{c.ohms, 10e3, c.beta}, c.temp, 0.03, definition})
	}
	const curve = "manufacturer's table, 10 kΩ, B25/85 3977 (from memory); three-point fit of Steinhart & Hart 1968, computed"
	fit := func(x float64) []any { return joined([]any{x}, samplePoints) }
	rows = append(rows,
		published{"ntc3_temp", fit(19872), 10.001, 0.001, curve},
		published{"ntc3_temp", fit(12488), 20.000, 0.001, curve},
		published{"ntc3_temp", fit(5330), 39.997, 0.001, curve},
		published{"ntc3_ohms", fit(10), 19873, 3, curve},
		published{"ntc3_ohms", fit(20), 12488, 2, curve},
		published{"ntc3_ohms", fit(30), 8059, 2, curve},
		published{"ntc3_ohms", fit(40), 5330, 1, curve},
		// A table looked up between neighbours comes close to the maker's
		// own value in the middle.
		published{"ntc_table_temp", []any{12488.0, 10.0, 19873.0, 25.0, 10000.0, 40.0, 5330.0}, 20, 0.05, curve},
		published{"ntc_table_temp", []any{8059.0, 10.0, 19873.0, 25.0, 10000.0, 40.0, 5330.0}, 30, 0.05, curve},
		published{"ntc_table_ohms", []any{30.0, 10.0, 17926.0, 25.0, 10000.0, 40.0, 5834.0}, 8315, 12, "manufacturer's table, 10 kΩ, B25/50 3380 (from memory)"},
	)
	checkPublished(t, rows)
}

func TestSteinhartCoefficients(t *testing.T) {
	for _, c := range []struct {
		points  []float64
		a, b, c float64
		source  string
	}{
		{[]float64{0, 32554, 25, 10000, 50, 3605}, 1.1351066e-3, 2.3293284e-4, 9.409643e-8, "Steinhart & Hart 1968, computed"},
		{[]float64{5, 25000, 25, 10000, 45, 4000}, 2.1085082e-3, 7.9792047e-5, 6.5350763e-7, "encyclopaedia demonstration set, computed"},
	} {
		s, err := fitSteinhart(c.points)
		if err != nil {
			t.Fatal(err)
		}
		for _, pair := range [][2]float64{{s.a, c.a}, {s.b, c.b}, {s.c, c.c}} {
			if math.Abs(pair[0]-pair[1]) > 1e-6*pair[1] {
				t.Errorf("%v: got %.8g, want %.8g (%s)", c.points, pair[0], pair[1], c.source)
			}
		}
	}
}

func TestThermistorRoundTrips(t *testing.T) {
	table := []any{-20.0, 96360.0, 0.0, 32555.0, 25.0, 10000.0, 60.0, 2490.0}
	for c := -20.0; c <= 60; c += 0.5 {
		ohms := call(t, "ntc_ohms", c, 5e3, 3500.0, 20.0)
		if got := call(t, "ntc_temp", ohms, 5e3, 3500.0, 20.0); math.Abs(got-c) > 1e-9 {
			t.Errorf("B value: %g °C comes back as %g", c, got)
		}
		ohms = call(t, "ntc3_ohms", joined([]any{c}, samplePoints)...)
		if got := call(t, "ntc3_temp", joined([]any{ohms}, samplePoints)...); math.Abs(got-c) > 1e-9 {
			t.Errorf("three points: %g °C comes back as %g", c, got)
		}
		ohms = call(t, "ntc_table_ohms", joined([]any{c}, table)...)
		if got := call(t, "ntc_table_temp", joined([]any{ohms}, table)...); math.Abs(got-c) > 1e-9 {
			t.Errorf("table: %g °C comes back as %g", c, got)
		}
	}
	for i := range len(table) / 2 {
		if got := call(t, "ntc_table_temp", joined([]any{table[2*i+1]}, table)...); math.Abs(got-table[2*i].(float64)) > 1e-9 {
			t.Errorf("pair %d is looked up as %g °C", i+1, got)
		}
	}
}

func TestThermistorRefusals(t *testing.T) {
	checkRefusals(t, []refusal{
		{"ntc_temp", []any{0.001, 10e3, 3977.0}, "shorted or another type"},
		{"ntc_temp", []any{1e12, 10e3, 3977.0}, "open or another type"},
		{"ntc_ohms", []any{301.0, 10e3, 3977.0}, "temp must be at most 300 degC"},
		{"ntc3_temp", []any{5e3, 0.0, 10e3, 25.0, 20e3, 50.0, 3e3}, "points 1 and 2 do not fit a thermistor"},
		{"ntc3_temp", []any{5e3, 0.0, 30e3, 25.0, 10e3, 25.0, 3e3}, "points 2 and 3 do not fit a thermistor"},
		{"ntc3_temp", []any{5e3, 0.0, 10001.0, 25.0, 10000.0, 50.0, 100.0}, "no thermistor's curve"},
		{"ntc_table_temp", []any{5e3, 0.0, 30e3}, "takes 5 arguments and more in groups of 2, not 3"},
		{"ntc_table_temp", []any{5e3, 0.0, 30e3, 25.0, 10e3, 50.0}, "not 6"},
		{"ntc_table_temp", []any{5e3, 0.0, 30e3, 25.0, 10e3, 50.0, 12e3}, "pair 3 (50 degC, 12000 ohm) breaks the table: its resistance is not below"},
		{"ntc_table_ohms", []any{5.0, 0.0, 30e3, 25.0, 10e3, 20.0, 3e3}, "pair 3 (20 degC, 3000 ohm) breaks the table: its temperature is not above"},
		{"ntc_table_temp", []any{40e3, 0.0, 30e3, 25.0, 10e3}, "the table runs from 30000 to 10000 ohm"},
		{"ntc_table_ohms", []any{26.0, 0.0, 30e3, 25.0, 10e3}, "the table runs from 0 to 25 degC"},
	})
}

func TestThermistorWarnings(t *testing.T) {
	for name, args := range map[string][]any{
		"ntc_ohms":  {-20.0, 10e3, 3977.0},
		"ntc_temp":  {96360.0, 10e3, 3977.0},
		"ntc3_temp": joined([]any{96360.0}, samplePoints),
		"ntc3_ohms": joined([]any{-20.0}, samplePoints),
	} {
		f, _ := Lookup(name)
		a, err := f.Lay(args...)
		if err != nil {
			t.Fatal(err)
		}
		if f.Warn(a) == "" {
			t.Errorf("%s%v gives no warning", name, args)
		}
	}
}
