package formula

import "testing"

func TestHeaterPublished(t *testing.T) {
	const joule = "Joule's and Ohm's laws, computed"
	rows := []published{{"heater_watts", []any{3600.0, 240.0, 208.0}, 2704, 1e-9, joule}}
	for _, h := range []struct{ volts, watts, ohms, amps float64 }{
		{120, 450, 32.00, 3.750}, {240, 3600, 16.00, 15.00}, {230, 2000, 26.45, 8.696}, {115, 250, 52.90, 2.174},
	} {
		rows = append(rows,
			published{"heater_ohms", []any{h.watts, h.volts}, h.ohms, 0.005, joule},
			published{"heater_amps", []any{h.watts, h.volts, h.volts}, h.amps, 0.0005, joule},
			published{"heater_watts", []any{h.watts, h.volts, h.volts}, h.watts, 1e-9, joule})
	}
	checkPublished(t, rows)
}
