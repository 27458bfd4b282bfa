package call

import (
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// What a line says of how the call ends: the meaning of the words themselves.
func TestEndingsAreHeard(t *testing.T) {
	for _, x := range []struct{ line, want string }{
		{"note client declined the repair", record.Declined},
		{"note owner turned the quote down", record.Declined},
		{"note customer does not want the repair", record.Declined},
		{"note too dear for her", record.Declined},
		{"note client wants to buy a new one", record.Declined},
		{"note client wants a new one", record.Declined},
		{"note client wants a call before noon", ""},
		{"note client has not declined", ""},
		{"note client asks whether she should buy a new one", ""},
		{"note customer bought it used last year", ""},
		{"note the fridge was sold to them in 2019 by a dealer", ""},
		{"note heat is too expensive for her to use", ""},
		{"note customer wants to buy the extended plan", ""},
		{"note client bought a used one", record.Declined},
		{"note the fridge was sold", record.CalledOff},
		{"note refused to start twice while I stood there", record.Declined + "?"},
		{"did ordered a door gasket", record.Waits},
		{"did replaced the start relay; ordered a door gasket", record.Waits},
		{"note waiting for the board", record.Waits},
		{"note the part is on order", record.Waits},
		{"did waited for it to cool", ""},
		{"note waiting for the client to decide", record.Undecided},
		{"close cust will think about it", record.Undecided},
		{"close awaiting approval", record.Undecided},
		{"note client decided for the repair", ""},
		{"note waiting for it to cool", ""},
		{"note she thinks it is the relay", ""},
		{"note cust declined", record.Declined},
		{"note client declined the service plan", ""},
		{"note client declined the repair for now", record.Declined},
		{"note client declined due to the price", record.Declined},
		{"close client will replace it himself", record.Declined},
		{"close cust buying new one", record.Declined},
		{"close customer said no", record.Declined},
		{"close not worth fixing", record.NotWorth},
		{"close beyond economical repair", record.NotWorth},
		{"close advised to replace the fridge", record.NotWorth},
		{"note advised her to replace the filter yearly", ""},
		{"note worth a second look", ""},
		{"close needs electrician", record.PassedOn},
		{"close client to call a licensed electrician", record.PassedOn},
		{"close needs a gas fitter", record.PassedOn},
		{"note the electrician was here last week", ""},
		{"note the breaker order is odd", ""},
		{"close cust doesnt want to spend it", record.Declined},
		{"close wants new one instead", record.Declined},
		{"close told her buy new", record.NotWorth},
		{"close ran outta time, back tmrw", record.Unfinished},
		{"close had to leave, other call", record.Unfinished},
		{"close no part on truck", record.Waits},
		{"close wrong part came", record.Waits},
		{"close dog wouldnt let me in", record.CalledOff},
		{"close landlord has the key", record.CalledOff},
		{"close she was asleep", record.CalledOff},
		{"close knocked 3 times nobody there", record.CalledOff},
		{"close she fixed it herself, turned the knob", record.NoFault},
		{"note told her buy new filters", ""},
		{"note the wrong part was fitted years ago", ""},
		{"note nobody home", record.CalledOff},
		{"note no one was at home", record.CalledOff},
		{"note no answer at the door", record.CalledOff},
		{"note unit unplugged and gone", record.CalledOff},
		{"note client cancelled the visit", record.CalledOff},
		{"note the cancel button is worn", ""},
		{"note the noise is gone", ""},
		{"note the fridge was scrapped", record.CalledOff},
		{"close passed on to a certified person", record.PassedOn},
		{"close handed over to the gas fitter", record.PassedOn},
		{"note the flame passed on to the igniter", ""},
		{"close no fault found", record.NoFault},
		{"note no fault found at the board", ""},
		// As they are typed in a hurry, in several countries.
		{"close NFF", record.NoFault},
		{"close could not reproduce", record.NoFault},
		{"close couldn't duplicate complaint", record.NoFault},
		{"close working on arrival", record.NoFault},
		{"close not working on arrival", ""},
		{"close user error, door was open", record.NoFault},
		{"close restored to normal operation", ""},
		{"close fixed, tested ok", ""},
		{"close BER, comp grounded", record.NotWorth},
		{"close condemned", record.NotWorth}, {"close unit condemned, not worth it", record.NotWorth}, {"close sealed unit condemned, start winding open, customer declines", record.Declined},
		{"close scrap", record.NotWorth},
		{"close customer scrapping unit", record.Declined},
		{"close refused repair", record.Declined},
		{"note cust refused estimate", record.Declined},
		{"close est declined", record.Declined},
		{"close decl", record.Declined},
		{"close customer refused entry", record.CalledOff},
		{"close customer cancelled", record.CalledOff},
		{"close cancelled by customer", record.CalledOff},
		{"close rescheduled", record.CalledOff},
		{"close cust not in", record.CalledOff},
		{"close unable to gain access", record.CalledOff},
		{"close quote given", record.Undecided},
		{"close gave estimate 320", record.Undecided},
		{"close quote given, needs new board", record.Undecided},
		{"close quote given, declined", record.Declined},
		{"close declined, quoted 450", record.Declined},
		{"close awaiting warranty authorization", record.Undecided},
		{"close cust will call back", record.Undecided},
		{"close office will call back", ""},
		{"close need to order board", record.Waits},
		{"close needs new pump", record.Waits},
		{"close parts required", record.Waits},
		{"close no parts needed", ""},
		{"close does not need a new board", ""},
		{"close awaiting pump", record.Waits},
		{"note needs a new gasket some day", ""},
		{"left off, waiting for the board", record.Waits},
		{"left unplugged, cust to decide", record.Undecided},
		{"close called electrician", record.PassedOn},
		{"close sparky needed", record.PassedOn},
		{"note customer called electrician last week", ""},
		{"close refer to manufacturer", record.PassedOn},
		{"close escalated to senior tech", record.Unfinished},
		{"close out of time, to return", record.Unfinished},
		{"close part ordered, return visit", record.Waits},
		{"close no return trip needed", ""},
		{"close board NLA", record.NotWorth},
		{"close parts no longer available", record.NotWorth},
		{"close told customer to replace", record.NotWorth},
		{"close too old to repair", record.NotWorth},
		{"close cust supplying part", record.Waits},
		{"close landlord approval needed", record.Undecided},
		{"close gas tech needed", record.PassedOn},
		{"close hvac contractor needed", record.PassedOn},
		{"close duplicate booking", record.CalledOff},
		{"note called off the dog", ""},
		{"note no access to back of unit", ""},
		{"note customer refused to sign", ""},
		{"note customer refused old part", ""},
		{"note passed on the message to office", ""},
		{"note referred to wiring diagram", ""},
		{"note customer bought new water filter", ""},
		{"note order number 4512", ""},
		{"note cancel button stuck", ""},
	} {
		c := applyAll(t, "fault does not cool", x.line)
		got := ""
		if e := c.ending(); e != nil {
			got = e.Result
		}
		if want := strings.TrimSuffix(x.want, "?"); strings.HasSuffix(x.want, "?") {
			if got == want {
				t.Errorf("%q is heard as %q", x.line, got)
			}
		} else if got != want {
			t.Errorf("%q: %q, want %q", x.line, got, want)
		}
	}
}

// Who waits for the client, or stood before a shut door, does so no more once
// something was read, seen or done; what is said while closing stays.
func TestEndingsThatPass(t *testing.T) {
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"note waiting for customer to clear the garage", "close"}, record.Undecided},
		{[]string{"note waiting for customer to clear the garage", "temp freezer 4C", "close"}, record.NoRepair},
		{[]string{"note waiting for customer to clear the garage", "saw cond-fan runs", "close"}, record.NoRepair},
		{[]string{"note waiting for the client to decide", "temp freezer 4C", "close"}, record.Undecided},
		{[]string{"note nobody home", "saw cond-fan runs", "close"}, record.NoRepair},
		{[]string{"saw cond-fan runs", "note nobody home", "close"}, record.CalledOff},
		{[]string{"saw cond-fan runs", "close waiting for customer to clear the garage"}, record.Undecided},
		{[]string{"note waiting for customer", "temp freezer 4C", "left off, waiting for the relay", "close"}, record.Waits},
		{[]string{"note waiting for customer", "close NFF"}, record.NoFault},
		{[]string{"close incomplete"}, record.Unfinished},
	} {
		if got := applyAll(t, append([]string{"fault does not cool"}, x.lines...)...).result(); got != x.want {
			t.Errorf("%q: %s, want %s", x.lines, got, x.want)
		}
	}
}

// A call that ends as without a fault does not pass over a cause that it found.
func TestFaultless(t *testing.T) {
	for _, x := range []struct {
		lines []string
		want  bool
	}{
		{[]string{"unit refrigerator", "fault clicks and does not cool", "ohm ptc OL cold", "close nff"}, true},
		{[]string{"unit refrigerator", "fault clicks and does not cool", "ohm ptc 5 cold", "close nff"}, false},
		{[]string{"unit refrigerator", "fault clicks and does not cool", "ohm ptc OL cold", "close declined"}, false},
		{[]string{"unit induction cooktop", "fault new pan does nothing", "saw pan not magnetic", "close no fault"}, false},
		{[]string{"unit induction cooktop", "fault new pan does nothing", "saw pan not magnetic", "saw igbt shorted", "close no fault"}, true},
	} {
		r := applyAll(t, x.lines...).Record()
		if got := strings.Contains(strings.Join(r.Alerts, "\n"), "it ends as without a fault"); got != x.want {
			t.Errorf("%q: %q", x.lines, r.Alerts)
		}
	}
}

// Each ending has its row in the one table of results, and a close that says it
// by its hint is heard.
func TestEndingsAreResults(t *testing.T) {
	for _, e := range said.Endings {
		if record.ResultRank(e.Result) >= len(record.Results) || !slices.ContainsFunc(record.Results, func(r record.Result) bool { return r.Word == e.Result }) {
			t.Errorf("%s is no result", e.Result)
		}
		if e.Hint == "" {
			continue // more words for a result that another row has
		}
		if c := applyAll(t, "fault does not cool", strings.TrimSuffix(e.Hint, " …")); c.result() != e.Result {
			t.Errorf("%s: %s", e.Hint, c.result())
		}
	}
}

// How a unit was left, by its own command or in what is said: the words
// themselves. Work after it, or another visit, makes it void.
func TestLeft(t *testing.T) {
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"left running"}, "running"},
		{[]string{"left running, client was offered a new one"}, "running"},
		{[]string{"left running, with the light off"}, "running"},
		{[]string{"left running, the date is on its tag"}, "running"},
		{[]string{"left switched off, it was running before"}, "off"},
		{[]string{"left off, client was told not to have it running"}, "off"},
		{[]string{"left tagged out, key with the client"}, "tagged out"},
		{[]string{"left unplugged and tagged"}, "tagged out"},
		{[]string{"left tagged do not use"}, "tagged out"},
		{[]string{"left off and customer told not to use"}, "off"},
		{[]string{"left on"}, "running"},
		{[]string{"left plugged in"}, "running"},
		{[]string{"left in garage on trolley, unplugged"}, "unplugged"},
		{[]string{"left out of service"}, "tagged out"},
		{[]string{"left gas isolated"}, "off"},
		{[]string{"left off at the wall switch"}, "off"},
		{[]string{"close unit left unplugged"}, "unplugged"},
		{[]string{"close passed on to the gas supplier, left off"}, "off"},
		{[]string{"note left it running"}, "running"},
		{[]string{"note left cover off"}, ""},
		{[]string{"close left with the gauges off"}, ""},
		{[]string{"note the light was left on"}, ""},
		{[]string{"left unplugged", "did replaced start relay"}, ""},
		{[]string{"left unplugged", "temp freezer -18C"}, "unplugged"},
		{[]string{"left unplugged", "close", "temp freezer -18C"}, ""},
		{[]string{"left unplugged", "close", "next"}, "unplugged"},
		{[]string{"left unplugged", "strike 2 slip"}, ""},
		{[]string{"close waits for a part, pump ordered", "left unplugged"}, "unplugged"},
		{[]string{"close waits for a part, pump ordered", "missing", "left unplugged", "left off at the wall switch"}, "off"},
	} {
		if got := applyAll(t, append([]string{"fault does not cool"}, x.lines...)...).Record().Header.Left; got != x.want {
			t.Errorf("%q: left %q, want %q", x.lines, got, x.want)
		}
	}
	for _, line := range []string{"left sideways", "left not running"} {
		if _, err := New().Apply(time.Unix(0, 0), line); err == nil {
			t.Errorf("%s is taken", line)
		}
	}
}

// The time between a closing and what opens the call again is no work.
func TestTimeAway(t *testing.T) {
	c := New()
	at := time.Date(2026, 6, 4, 9, 0, 0, 0, time.UTC)
	for _, x := range []struct {
		after time.Duration
		line  string
	}{
		{0, "fault does not heat"}, {20 * time.Minute, "close"}, {time.Hour, "next"}, {5 * 24 * time.Hour, "note here again"}, {5*24*time.Hour + 10*time.Minute, "close"},
	} {
		if _, err := c.Apply(at.Add(x.after), x.line); err != nil {
			t.Fatal(err)
		}
	}
	if got := c.Record().Header.Minutes; got != 30 {
		t.Errorf("%d minutes, want 20 and 10", got)
	}
}

// A call that was left open over night counts as one that was closed meanwhile.
func TestPauses(t *testing.T) {
	for name, x := range map[string]struct {
		lines []string
		want  int
	}{
		"open over night":      {[]string{"date 2026-06-04 16:00", "fault clicks", "+40min note stopped", "date 2026-06-05 08:00", "+30min note done"}, 70},
		"closed over night":    {[]string{"date 2026-06-04 16:00", "fault clicks", "+40min close", "date 2026-06-05 08:00", "+30min note done"}, 70},
		"opened at the prompt": {[]string{"date 2026-06-04 09:00", "fault clicks", "+10min close", "date now", "note here again"}, 10},
		"lunch":                {[]string{"date 2026-06-04 09:00", "fault clicks", "+240min note on", "+5min note done"}, 245},
		"longer":               {[]string{"date 2026-06-04 09:00", "fault clicks", "+241min note on", "+5min note done"}, 5},
		"clock goes back":      {[]string{"date 2026-06-04 09:00", "fault clicks", "+60min note on", "date 2026-06-04 09:30", "note done"}, 30},
		"a time typed ahead":   {[]string{"date 2026-06-04 09:00", "fault clicks", "+10min saw clicks", "10:40 temp fridge 5", "09:12 note typed late", "09:13 close"}, 100},
		"two dates first":      {[]string{"date 2026-06-04 09:00", "date 2026-06-04 08:00", "fault clicks", "+10min note done"}, 10},
		"left after":           {[]string{"date 2026-06-04 09:00", "fault clicks", "+10min close", "+30min left off", "+60min note on", "+5min note done"}, 15},
		"asked after":          {[]string{"date 2026-06-04 09:00", "fault clicks", "+10min close", "+30min next", "+60min note on", "+5min note done"}, 15},
	} {
		c := New()
		for _, l := range x.lines {
			if _, err := c.Apply(c.Clock(l, time.Now), l); err != nil {
				t.Fatal(name, err)
			}
		}
		if got := c.Record().Header.Minutes; got != x.want {
			t.Errorf("%s: %d minutes, want %d", name, got, x.want)
		}
	}
}

// How the unit was left, said behind a closing, belongs to it; any other line
// opens the call again, and the record says by which.
func TestLeftBehindTheClosing(t *testing.T) {
	for _, x := range []struct {
		lines    []string
		state    string
		reopened int
		work     string // in the outcome
	}{
		{[]string{"close"}, "closed", 0, "no repair written down"},
		{[]string{"close", "left unplugged"}, "closed", 0, "no repair written down"},
		{[]string{"close", "left unplugged", "missing", "left off"}, "closed", 0, "no repair written down"},
		{[]string{"close", "left unplugged", "note here again"}, "open", 4, "no repair written down; unfinished: the call was closed, then opened again (entry 4)"},
		{[]string{"close", "note here again", "left unplugged"}, "open", 3, "no repair written down; unfinished: the call was closed, then opened again (entry 3)"},
		{[]string{"close", "note here again", "close"}, "closed", 0, "no repair written down"},
		{[]string{"left unplugged"}, "open", 0, "no repair written down; unfinished: the call was never closed"},
	} {
		r := applyAll(t, append([]string{"fault does not cool"}, x.lines...)...).Record()
		work := ""
		for _, o := range r.Outcome {
			if o.Label == "Work and result" {
				work = o.Text
			}
		}
		if r.Header.State != x.state || r.Reopened != x.reopened || work != x.work {
			t.Errorf("%q: %s, opened again by %d, %q; want %s, %d, %q", x.lines, r.Header.State, r.Reopened, work, x.state, x.reopened, x.work)
		}
	}
}

// What is left running with a danger that nothing shows to be gone brings its
// caution once more, closed or not; what is gone or left off does not.
func TestLeftRunningWithADanger(t *testing.T) {
	for lines, want := range map[string]string{
		"fault smells gas; close; left running":                                      "caution-gas-smell",
		"fault does not heat; saw gas smell; left running":                           "caution-gas-smell",
		"fault does not heat; saw gas smell; close; left running":                    "caution-gas-smell",
		"fault does not heat; saw gas leak; close; left running":                     "caution-gas-smell",
		"fault gave me a shock; close; left running":                                 "caution-shock-felt",
		"fault does not heat; saw smoke; left running":                               "caution-smoke-or-sparks",
		"fault does not heat; saw gas smell; saw no gas leak; close; left running":   "",
		"fault does not heat; saw gas smell; close; left unplugged":                  "",
		"fault does not heat; close; left running":                                   "",
		"fault does not heat; saw gas smell; strike 3 misheard; close; left running": "",
	} {
		c := applyAll(t, append([]string{"unit gas oven"}, strings.Split(lines, "; ")...)...)
		got := strings.Join(c.entries[len(c.entries)-1].Reply.Flags, " ")
		if want == "" && strings.Contains(got, "caution-") || !strings.Contains(got, want) {
			t.Errorf("%s: flags %q, want %q", lines, got, want)
		}
	}
}
