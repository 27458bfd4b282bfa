package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// tradeCase is a short conversation and what the trade expects of it. In says
// what must be in the reply to the last line, not what must not; a state is a
// cause and where it must stand.
type tradeCase struct {
	name, lines string
	in, not     []string
	states      map[string]cause.State
	next        string // a part of the next step
	source      string
}

func checkTrade(t *testing.T, tests []tradeCase) {
	t.Helper()
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := New()
			var last Entry
			for _, l := range strings.Split(tt.lines, "; ") {
				last = must(t, c, l)
			}
			got := last.Reply.Plain()
			for _, s := range tt.in {
				if !strings.Contains(got, s) {
					t.Errorf("%q is not in %q (%s)", s, got, tt.source)
				}
			}
			for _, s := range tt.not {
				if strings.Contains(got, s) {
					t.Errorf("%q is in %q (%s)", s, got, tt.source)
				}
			}
			r := c.weigh(math.MaxInt)
			for code, state := range tt.states {
				if !slices.Contains(r.Codes(state), code) {
					t.Errorf("%s is not %s (%s); supported %v, open %v", code, state, tt.source, r.Codes(cause.Supported), r.Codes(cause.Open))
				}
			}
			if step := c.nextStep(&r); !strings.Contains(step, tt.next) {
				t.Errorf("next is %q, want %q (%s)", step, tt.next, tt.source)
			}
		})
	}
}

// A defrost thermostat is open when warm by design: common practice.
func TestDefrostThermostat(t *testing.T) {
	iced := "fault freezer not cold enough, packed with ice; saw frost heavy; safe; "
	checkTrade(t, []tradeCase{
		{"open and warm", iced + "ohm defrost-thermostat OL at 70F", []string{"cannot tell", "below the temperature marked"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
		{"open, nobody said", iced + "ohm bimetal OL", []string{"cannot tell", "write cold"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
		{"open and cold", iced + "ohm defrost-thermostat OL at -20C", []string{"failed"}, nil,
			map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"closed and warm", iced + "ohm defrost-thermostat 0.2 at 70F", []string{"suspect", "welded"}, nil,
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"cold closed, then warm open: as it must be", iced + "ohm defrost-thermostat 0.2 cold; ohm defrost-thermostat OL at 70F", []string{"sound"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"closed and cold", iced + "ohm defrost-thermostat 0.2 cold", []string{"sound"}, nil,
			map[string]cause.State{"limit-open": cause.RuledOut}, "", "common practice"},
		{"a limit that is hot may be open", "fault dryer has no heat; safe; ohm limit OL hot", []string{"cannot tell"}, []string{"failed"},
			map[string]cause.State{"limit-open": cause.Open}, "", "common practice"},
	})
}
