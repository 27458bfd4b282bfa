package call

import (
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// One sound heater of two rules out nothing of the other, which is then the next to read;
// and one coil of two is held to what one may have (common practice).
func TestOneHeaterOfTwo(t *testing.T) {
	const tank = "unit electric water heater|fault no hot water|plate volts 240, watts upper 4500, watts lower 4500|"
	const dryer = "unit electric dryer|fault no heat|plate volts 240, watts 5400|"
	for _, x := range []struct {
		lines string
		state cause.State
		next  string
	}{
		{tank + "ohm lower-element 12.9", cause.Open, "ohm upper-element 12.8"},
		{tank + "ohm upper-element 12.8", cause.Open, "ohm lower-element 12.8"},
		{tank + "ohm lower-element 12.9|ohm upper-element 12.8", cause.RuledOut, ""},
		{tank + "ohm lower-element 12.9|ohm upper-element OL", cause.Supported, ""},
		{tank + "ohm lower-element 12.9|ohm upper-element case OL", cause.Open, "ohm upper-element 12.8"},
		{dryer + "ohm inner-element 21", cause.Open, ""},
		{dryer + "ohm inner-element OL", cause.Supported, ""},
		{dryer + "ohm heater 10.6", cause.RuledOut, ""},
		{"unit electric oven|fault bake element cold|plate volts 240, watts bottom-element 2500|ohm bottom-element 23", cause.RuledOut, ""},
	} {
		c := New()
		for l := range strings.SplitSeq(x.lines, "|") {
			must(t, c, l)
		}
		r := c.weigh(1 << 30)
		for _, s := range r.Standings {
			if s.Cause.Code == "heater-failed" && s.State != x.state {
				t.Errorf("%s: %v, want %v", x.lines, s.State, x.state)
			}
		}
		if got := must(t, c, "next").Reply.Plain(); x.next != "" && !strings.Contains(got, x.next) {
			t.Errorf("%s: %s", x.lines, got)
		}
	}
}
