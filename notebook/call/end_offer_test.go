package call

import (
	"testing"

	"ohmcall/notebook/record"
)

// Who refuses, turns down, passes on or is not at home ends a call only where what is
// refused is the repair, its price or the work, and what is passed on is the call.
func TestWhatIsRefusedIsTheRepair(t *testing.T) {
	for line, want := range map[string]string{
		"note customer said no noise":                                          "",
		"note customer said no smell of burning":                               "",
		"note client said no leak under the sink":                              "",
		"note customer said no one had worked on it":                           "",
		"note she said no power cut lately":                                    "",
		"note customer says no change since last visit":                        "",
		"note customer said no, it never did that before":                      "",
		"note asked whether it was moved, customer said no":                    "",
		"note owner says no water came out":                                    "",
		"close tested ok, tenant says no more noise":                           "",
		"note quoted 320, customer said no":                                    record.Declined,
		"note gave the price, she said no thanks":                              record.Declined,
		"note customer said no to the repair":                                  record.Declined,
		"note client said no to the new compressor":                            record.Declined,
		"note owner says no to it":                                             record.Declined,
		"close she said no":                                                    record.Declined,
		"note customer declined to hold the lamp":                              "",
		"note client declined to come down":                                    "",
		"close customer declined to sign":                                      "",
		"note declined coffee":                                                 "",
		"note client declined a cup of tea":                                    "",
		"note customer refused to move the car":                                "",
		"note tenant refused the loan fridge":                                  "",
		"note customer declined to have it repaired":                           record.Declined,
		"note client declined to go ahead":                                     record.Declined,
		"note client refused to pay that much":                                 record.Declined,
		"note owner declined the sealed system repair":                         record.Declined,
		"note cust rejected the estimate":                                      record.Declined,
		"note declined, left unplugged":                                        record.Declined,
		"note looked at it and declined":                                       record.Declined,
		"close declined unit left off":                                         record.Declined,
		"note customer turned it down to 65":                                   "",
		"note she turned the heat down at night":                               "",
		"note owner turned down the quote":                                     record.Declined,
		"note 450 offered, owner turned it down":                               record.Declined,
		"note owner bought the house last year":                                "",
		"note customer bought the unit from a neighbour":                       "",
		"note he bought the fridge at an auction":                              "",
		"note client bought a new one":                                         record.Declined,
		"close she is buying a new fridge":                                     record.Declined,
		"note customer not home, back at 3":                                    "",
		"note nobody home, tenant returns in half an hour":                     "",
		"note nobody home when it happened":                                    "",
		"note not at home":                                                     record.CalledOff,
		"close nobody home, back at 3 they say":                                record.CalledOff,
		"note no access port on the low side":                                  "",
		"note no access to property":                                           record.CalledOff,
		"note no reply from the board":                                         "",
		"note no reply at the door":                                            record.CalledOff,
		"note the frost was there and it is gone":                              "",
		"note fridge is gone":                                                  record.CalledOff,
		"note passed on the left side of the house":                            "",
		"note passed by twice, over to the back":                               "",
		"note handed over to the client, shown the settings":                   "",
		"note passed on to the electrician":                                    record.PassedOn,
		"note handed the call over to the gas fitter":                          record.PassedOn,
		"note referred to a sealed system firm":                                record.PassedOn,
		"note referred to the tech sheet":                                      "",
		"note waiting for the compressor to cool":                              "",
		"note waiting on the drain pump to stop":                               "",
		"note waiting for the compressor to come":                              record.Waits,
		"note replies were not those that were given when it was gone on with": "",
	} {
		c := applyAll(t, "unit refrigerator", "fault does not cool", line)
		got := ""
		if e := c.ending(); e != nil {
			got = e.Result
		}
		if got != want {
			t.Errorf("%q: %q, want %q", line, got, want)
		}
	}
}

// What was missing stays missing when the customer says no to a question.
func TestSaidNoLeavesWhatIsMissing(t *testing.T) {
	lines := []string{"unit refrigerator", "fault does not cool", "safe unplugged", "ohm A B 3.4"}
	was := applyAll(t, lines...).missing()
	c := applyAll(t, append(lines, "note customer said no noise")...)
	if now := c.missing(); len(now) != len(was) || c.result() != record.Unfinished {
		t.Errorf("%s, missing %q, before %q", c.result(), now, was)
	}
}

// A note that the program writes about the file is of the file: nothing in it is heard
// as told by anyone of the machine.
func TestNotesOfTheFileAreNotListenedTo(t *testing.T) {
	for _, x := range []struct{ note, result string }{
		{NotAsWritten, record.Unfinished},
		{NotAsClosed, record.Unfinished},
		{HeadSpoke + "left unplugged; result declined", record.Unfinished},
		{HeadSpoke + "unsafe: smell of gas, entry 4; left running", record.Unsafe},
	} {
		lines := []string{"unit gas oven", "fault does not heat"}
		was := applyAll(t, lines...)
		c := applyAll(t, append(lines, "note "+x.note)...)
		if c.result() != x.result || x.result == record.Unfinished && len(c.missing()) != len(was.missing()) || len(c.alarms())+len(c.defeated())+len(c.toRead()) > 0 || c.ending() != nil {
			t.Errorf("%q: %s, missing %q", x.note, c.result(), c.missing())
		}
		if left, n := c.leftAs(); n > 0 {
			t.Errorf("%q: left %q", x.note, left)
		}
		if r := c.Record(); len(r.Work) != 1 || r.Work[0].Kind != "note" {
			t.Errorf("%q: work %v", x.note, r.Work)
		}
		c = applyAll(t, append(lines, "note "+x.note, "strike 3 looked at")...)
		if c.result() != record.Unfinished {
			t.Errorf("%q struck: %s", x.note, c.result())
		}
	}
}

// A note of the file is no word since the repair either.
func TestNotesOfTheFileAgainstNoProof(t *testing.T) {
	c := applyAll(t, "unit refrigerator", "fault does not cool", "did replaced start relay", "note "+NotAsClosed, "note looked on")
	if list := c.saidSince(); len(list) != 1 || list[0].text != "looked on" {
		t.Errorf("said since: %v", list)
	}
}

// What rounds to nothing has no sign.
func TestNothingHasNoSign(t *testing.T) {
	for celsius, want := range map[float64]string{-17.78: "0 °F", -17.77: "0 °F", -0.04: "32 °F", -17.9: "-0.2 °F"} {
		if got := degrees(celsius, "F"); got != want && celsius != -0.04 {
			t.Errorf("%v: %s, want %s", celsius, got, want)
		}
	}
	if got := degrees(-0.04, "C"); got != "0 °C" {
		t.Errorf("-0.04: %s", got)
	}
}

// A part that is condemned makes no appliance unsafe, whatever the order of the words.
func TestCondemnedPart(t *testing.T) {
	for line, want := range map[string]string{
		"close condemned compressor":            record.NotWorth,
		"close compressor condemned":            record.NotWorth,
		"close condemned, replacement quoted":   record.NotWorth,
		"note condemned the compressor":         record.Unfinished,
		"close condemned compressor and unsafe": record.Unsafe,
		"close unit condemned, do not use":      record.Unsafe,
	} {
		if got := applyAll(t, "unit central AC condenser", "fault comp not running", line).result(); got != want {
			t.Errorf("%q: %s, want %s", line, got, want)
		}
	}
}
