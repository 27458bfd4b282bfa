package formula

import "testing"

func TestMeterLimitPublished(t *testing.T) {
	checkPublished(t, []published{
		{"meter_limit", []any{120.0, 1.0, 3.0, 0.1}, 1.5, 1e-9, "Fluke knowledge article KA-03135, ±(1 % + 3)"},
		{"meter_limit", []any{100.0, 2.0, 2.0, 0.1}, 2.2, 1e-9, "Fluke, digital multimeter accuracy and precision, 97.8 to 102.2 V"},
		{"meter_limit", []any{120.0, 0.7, 2.0, 0.1}, 1.04, 1e-9, "electrical-contractor forum, 118.96 to 121.04 V"},
		{"meter_limit", []any{32.0, 2.5, 3.0, 0.01}, 0.83, 1e-9, "KPU physics laboratory sheet"},
		{"meter_limit", []any{4.7, 0.9, 2.0, 0.1}, 0.242, 0.0005, "computed"},
		{"meter_limit", []any{-120.0, 1.0, 3.0, 0.1}, 1.5, 1e-9, "the limit has no sign"},
	})
	// A percentage written without its sign is a hundred times as much.
	checkRefusals(t, []refusal{{"meter_limit", []any{120.0, 100.0, 3.0, 0.1}, "percent must be at most 20 %"}})
}
