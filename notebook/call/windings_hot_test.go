package call

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// What is open when hot is waited for and read again; what is still open when cold
// is not, and copper that cooled has not jumped. Common practice, and below 120 °F
// for a protector: ice-machine operation manual 80-0111-9 p. 176.
func TestOpenHotThenCold(t *testing.T) {
	const (
		at     = "unit fridge; fault clicks, no cool; plate start ptc, run none; "
		hot    = at + "saw shell hot; ohm A B OL hot, A C OL hot, B C 9.8 hot; "
		silent = at + "saw shell hot; ohm A B OL, A C OL, B C 9.8; "
		cold   = "ohm A B OL cold, A C OL cold, B C 7.9 cold"
		sound  = at + "ohm A B 3.4, A C 7.5, B C 10.8, A case OL, B case OL, C case OL; "
		wait   = "let it cool below 49 °C (120 °F), which can take hours, and read again: ohm "
		rest   = "leave it without power for 15 min or more and read again, for what opens inside does so before the shell is warm (had it none for long: note unplugged since …): ohm "
		decide = "replace it or decide"
	)
	both := map[string]cause.State{"protector-failed": cause.Supported, "winding-open": cause.Supported, "protector-hot": cause.RuledOut}
	waits := map[string]cause.State{"protector-failed": cause.Open, "winding-open": cause.Open, "protector-hot": cause.Open}
	checkTrade(t, []tradeCase{
		{"hot", hot + "show", nil, nil, waits, wait + "A B … cold, A C … cold; until then: ", "common practice"},
		{"hot by its shell", silent + "show", nil, nil, waits, wait + "A B … cold, A C … cold", "common practice"},
		{"common marked and reading through", at + "mark A common; ohm A B 3.4, A C OL, B C OL", []string{"A protector in common is closed"}, nil,
			map[string]cause.State{"protector-failed": cause.RuledOut, "protector-hot": cause.RuledOut, "winding-open": cause.Open}, "read again what is open, below", "common practice"},
		{"common marked and reading through, cold", at + "mark A common; ohm A B 3.4 cold, A C OL cold, B C OL cold", []string{"A winding is open at C"}, []string{"Read again"},
			map[string]cause.State{"protector-failed": cause.RuledOut, "protector-hot": cause.RuledOut, "winding-open": cause.Supported}, "", "common practice"},
		{"common marked and open", at + "mark A common; ohm A B OL, A C OL, B C 9.8", []string{"let it cool below"}, []string{"is closed"}, map[string]cause.State{"protector-hot": cause.Supported}, "", "common practice"},
		{"of one that nobody felt it is not said", at + "ohm A B OL, A C OL, B C 9.8", []string{"let it cool below"}, nil, waits, "read again what is open, below", "common practice"},
		{"still open, by the word", hot + "+120min " + cold, []string{"Open though cold: a protector failed open, or a winding or lead is open (inferred)"}, []string{"let it cool", "jump"}, both, decide, "80-0111-9 p. 176"},
		{"still open, by its shell", silent + "+120min saw shell cold; ohm A B OL, A C OL, B C 7.9", []string{"Open though cold"}, []string{"let it cool", "jump"}, both, decide, "80-0111-9 p. 176"},
		{"the shell felt behind it", silent + "+120min ohm A B OL, A C OL, B C 7.9; saw shell cold; roles", []string{"Open though cold"}, []string{"let it cool"}, both, decide, "80-0111-9 p. 176"},
		{"at once", hot + cold, []string{"Cold, and perhaps not for long"}, []string{"Open though cold"}, waits, "leave it without power for 15 min", "common practice"},
		{"its shell hot a minute ago", at + "saw shell too hot to touch; +1min " + cold, []string{"Cold, and perhaps not for long"}, []string{"Open though cold", "Cause supported"}, nil, "leave it without power for 15 min", "common practice"},
		{"still open, and nobody says whether it is cold", hot + "+120min ohm A B OL, A C OL, B C 9.6", []string{"Open still: if it is below 49 °C", "with cold behind each pair"}, []string{"Open though cold"}, waits, "", "common practice"},
		{"one pair of two cold", hot + "+120min ohm A B OL cold; ohm A C OL", nil, []string{"Open though cold"}, waits, "", "common practice"},
		{"the shell is hot again", silent + "+60min saw shell cold; +60min saw shell hot; ohm A B OL, A C OL, B C 7.9", nil, []string{"Open though cold"}, waits, wait, "common practice"},
		{"a shell felt long before", silent + "+60min saw shell cold; +60min ohm A B OL, A C OL, B C 7.9", nil, []string{"Open though cold"}, waits, "", "common practice"},
		{"marked", at + "mark A common; " + strings.TrimPrefix(hot, at) + "+120min " + cold, []string{"Open though cold: the protector failed open, or the lead to common is open (inferred)"}, []string{"let it cool", "jump"},
			map[string]cause.State{"protector-failed": cause.Supported, "protector-hot": cause.RuledOut}, "one inside the shell condemns the machine", "80-0111-9 p. 176"},
		{"a lead of a pump", "unit washer; fault does not drain; on pump; plate leads 2; note unplugged since yesterday; ohm 1 2 OL cold", []string{"Open though cold: a protector in series failed open"}, []string{"let it cool"}, nil, "mend: replace the machine", "common practice"},
		{"of which nobody knows how long it rested", "unit washer; fault does not drain; on pump; plate leads 2; ohm 1 2 OL cold", []string{"Cold, and perhaps not for long"}, []string{"Open though cold"}, nil, "first let it cool and measure once more", "common practice"},
		{"cold from the first, a minute after a try perhaps", at + cold, []string{"Cold, and perhaps not for long"}, []string{"Open though cold"}, waits, rest + "A B … cold, A C … cold", "common practice"},
		{"and by its degrees", at + "ohm A B OL at 21C, A C OL at 21C, B C 7.9", nil, []string{"Open though cold"}, waits, rest + "A B … cold, A C … cold", "common practice"},
		{"and felt so", at + "saw shell cold; " + cold, nil, []string{"Open though cold"}, waits, rest + "A B … cold, A C … cold", "common practice"},
		{"common marked", at + "mark A common; " + cold, nil, []string{"Open though cold"}, map[string]cause.State{"protector-failed": cause.Supported, "protector-hot": cause.Supported}, rest + "A B … cold, A C … cold", "common practice"},
		{"read so twice, in time", at + cold + "; +20min " + cold, []string{"Open though cold"}, nil, both, decide, "common practice"},
		{"read so twice, at once", at + cold + "; " + cold, nil, []string{"Open though cold"}, waits, rest, "common practice"},
		{"read so twice, tried between", at + cold + "; +20min trip 8s; " + cold, nil, []string{"Open though cold"}, waits, rest, "common practice"},
		{"dead before", at + "safe unplugged; +20min " + cold, []string{"Open though cold"}, nil, both, decide, "common practice"},
		{"told of a rest", at + "note unplugged since yesterday; " + cold, []string{"Open though cold"}, nil, both, decide, "common practice"},
		{"told of it behind", at + cold + "; note it was unplugged overnight; roles", []string{"Open though cold"}, nil, both, decide, "common practice"},
		{"told of a short one", at + "note unplugged since 5 min; " + cold, nil, []string{"Open though cold"}, waits, rest, "common practice"},
		{"an open start winding is no protector", at + "mark A start; " + cold + "; ohm A case OL, B case OL, C case OL", nil, []string{"perhaps not for long"}, map[string]cause.State{"winding-open": cause.Supported}, "mend: replace the machine", "80-0111-9 p. 176"},
		{"all three", at + "note unplugged since yesterday; ohm A B OL cold, A C OL cold, B C OL cold", []string{"Open though cold"}, []string{"let it cool"}, map[string]cause.State{"protector-failed": cause.Supported}, decide, "common practice"},
		{"it has closed", hot + "+120min ohm A B 2.3 cold, A C 5.6 cold, B C 7.9 cold", []string{"A is common"}, []string{"jump", "Open"}, map[string]cause.State{"protector-hot": cause.Supported}, "", "common practice"},
		{"copper falls less than that", hot + "+120min ohm A B OL cold, A C OL cold, B C 3.9 cold", []string{"B–C was 9.8 Ω, now 3.9 Ω: a jump"}, nil, nil, "", "copper, K 234.5"},
		{"and does not rise", hot + "+120min ohm A B OL cold, A C OL cold, B C 12.8 cold", []string{"a jump"}, nil, nil, "", "copper, K 234.5"},
		{"cold both times it is a jump", at + "ohm A B 2.3 cold, A C 7.5 cold, B C 9.8 cold; +120min ohm B C 7.9 cold", []string{"a jump"}, nil, nil, "", "common practice"},
		{"at once it is a jump", at + "ohm A B 2.3, A C 7.5, B C 9.8; ohm B C 7.9", []string{"a jump"}, nil, nil, "", "common practice"},

		{"an overload hot", sound + "ohm overload OL hot", []string{"open while hot is its work"}, nil, map[string]cause.State{"overload-hot": cause.Open}, wait + "overload 0.4 cold; until then: ", "80-0111-9 p. 176"},
		{"it speaks for heat", sound + "ohm overload OL hot; why overload-hot", []string{"for: overload open (entry "}, nil, nil, "", "common practice"},
		{"open, and nobody felt it, speaks for nothing yet", sound + "ohm overload OL; why overload-hot", nil, []string{"for:"}, nil, "", "common practice"},
		{"an overload on a hot shell", sound + "saw shell hot; ohm overload OL", nil, nil, nil, wait + "overload 0.4 cold", "80-0111-9 p. 176"},
		{"an overload closed", sound + "saw shell hot; ohm overload 0.2", nil, nil, nil, "start device", "common practice"},
		{"an overload open, nobody felt it", sound + "ohm overload OL", []string{"let it cool"}, nil, nil, "start device", "common practice"},
		{"read again and failed", sound + "ohm overload OL hot; +120min ohm overload OL cold", []string{"failed, open when cold"}, nil, map[string]cause.State{"overload-hot": cause.RuledOut}, "mend: replace it with the overload", "80-0111-9 p. 176"},
		{"replaced", sound + "ohm overload OL hot; did replaced overload", nil, nil, nil, "prove the repair", "common practice"},
		{"cooled and not read again", sound + "saw shell hot; ohm overload OL; +60min saw shell cold", nil, nil, map[string]cause.State{"overload-hot": cause.Open, "overload-failed": cause.Open}, "read again what was open, now that it is cold: ohm overload 0.4 cold", "common practice"},
		{"cold from the first", sound + "saw shell cold", nil, nil, map[string]cause.State{"overload-hot": cause.RuledOut, "protector-hot": cause.RuledOut}, "", "common practice"},
	})
}

// What is open for certain is not said to look like a protector that closes again.
func TestOpenForCertain(t *testing.T) {
	const wait = "; first let it cool and measure once more, as an open protector looks alike on unmarked pins"
	for lines, want := range map[string]string{
		"unit washer; fault does not drain; on pump; ohm 1 2 OL":                                                    "mend: replace the machine" + wait,
		"unit washer; fault does not drain; on pump; ohm 1 2 OL cold":                                               "mend: replace the machine" + wait,
		"unit washer; fault does not drain; note unplugged since yesterday; on pump; ohm 1 2 OL cold":               "mend: replace the machine",
		"unit washer; fault does not drain; on pump; ohm 1 2 OL cold; note it was unplugged all night":              "mend: replace the machine",
		"unit fridge; fault clicks; mark A start; ohm A B OL, A C OL, B C 7.9; ohm A case OL, B case OL, C case OL": "mend: replace the machine",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		r := c.weigh(math.MaxInt)
		if got := c.nextStep(&r); got != want {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
	}
}
