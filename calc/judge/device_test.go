package judge

import (
	"slices"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// 3 to 10 Ω at 70 to 80 °F and an infinite reading when broken: refrigerator
// service manual, starting device operation. Wider ranges: common practice.
func TestPTC(t *testing.T) {
	for _, c := range []struct {
		name  string
		v     measure.Value
		state State
		volts float64
		word  verdict.Word
		facts []string
	}{
		{"5 Ω cold", within(5, 0.3), Cold, 115, verdict.Sound, []string{"start-device-sound"}},
		{"OL cold", measure.Open(7), Cold, 115, verdict.Failed, []string{"start-device-failed"}},
		{"OL, nobody said", measure.Open(7), "", 115, verdict.Suspect, []string{"start-device-suspect"}},
		{"zero cold", within(0.2, 0.3), Cold, 115, verdict.Failed, []string{"start-device-failed"}},
		{"35 Ω on 115 V", within(35, 0.7), Cold, 115, verdict.Suspect, []string{"start-device-suspect"}},
		{"35 Ω on 230 V", within(35, 0.7), Cold, 230, verdict.Sound, []string{"start-device-sound"}},
		{"edge", within(3.1, 0.3), Cold, 115, verdict.CannotTell, []string{"start-device-undecided"}},
		{"6 kΩ cold", within(6e3, 120), Cold, 115, verdict.Failed, []string{"start-device-failed"}},
		{"6 kΩ cold on 230 V", within(6e3, 120), Cold, 230, verdict.Failed, []string{"start-device-failed"}},
		{"6 kΩ, nobody said", within(6e3, 120), "", 115, verdict.Suspect, []string{"start-device-suspect"}},
		{"1 kΩ cold, near the limit", within(1010, 20), Cold, 115, verdict.Suspect, []string{"start-device-suspect"}},
		{"300 Ω cold", within(300, 6), Cold, 230, verdict.Suspect, []string{"start-device-suspect"}},
		{"50 kΩ hot", within(50e3, 1e3), Hot, 115, verdict.Sound, nil},
		{"8 Ω hot", within(8, 0.4), Hot, 115, verdict.Suspect, []string{"start-device-suspect"}},
		{"400 Ω hot", within(400, 8), Hot, 115, verdict.CannotTell, nil},
	} {
		check(t, c.name, PTC(PTCIn{Ohms: c.v, State: c.state, Volts: c.volts}), c.word, c.facts...)
	}
}

// Current relay contacts are normally open, potential relay contacts
// normally closed: training manual 14259, fig. 14-40.
func TestRelays(t *testing.T) {
	ol := measure.Open(7)
	failed := []string{"start-device-failed"}
	for _, c := range []struct {
		name  string
		got   verdict.Verdict
		word  verdict.Word
		facts []string
	}{
		{"current coil", CurrentRelay(RelayIn{Part: Coil, Ohms: within(0.6, 0.3)}), verdict.Sound, nil},
		{"current coil open", CurrentRelay(RelayIn{Part: Coil, Ohms: ol}), verdict.Failed, failed},
		{"current upright open", CurrentRelay(RelayIn{Part: Contact, Ohms: ol}), verdict.Sound, nil},
		{"current upright welded", CurrentRelay(RelayIn{Part: Contact, Ohms: within(0.2, 0.3)}), verdict.Failed, failed},
		{"current inverted closed", CurrentRelay(RelayIn{Part: Inverted, Ohms: within(0.2, 0.3)}), verdict.Sound, nil},
		{"current inverted open", CurrentRelay(RelayIn{Part: Inverted, Ohms: ol}), verdict.Failed, failed},
		{"current upright 400 Ω", CurrentRelay(RelayIn{Part: Contact, Ohms: within(400, 8)}), verdict.Suspect,
			[]string{"start-device-suspect"}},
		{"potential coil", PotentialRelay(RelayIn{Part: Coil, Ohms: within(5200, 60)}), verdict.Sound, nil},
		{"potential coil open", PotentialRelay(RelayIn{Part: Coil, Ohms: ol}), verdict.Failed, failed},
		{"potential coil low", PotentialRelay(RelayIn{Part: Coil, Ohms: within(80, 1)}), verdict.Suspect,
			[]string{"start-device-suspect"}},
		{"potential contact closed", PotentialRelay(RelayIn{Part: Contact, Ohms: within(0.2, 0.3)}), verdict.Sound, nil},
		{"potential contact open", PotentialRelay(RelayIn{Part: Contact, Ohms: ol}), verdict.Failed, failed},
		{"potential contact 30 Ω", PotentialRelay(RelayIn{Part: Contact, Ohms: within(30, 0.6)}), verdict.Suspect,
			[]string{"start-device-suspect"}},
	} {
		check(t, c.name, c.got, c.word, c.facts...)
	}
}

func TestRelayIsSoundOnlyAsAWhole(t *testing.T) {
	coil, low, ol := within(0.6, 0.3), within(0.2, 0.3), measure.Open(8)
	got := CurrentRelayWhole("K1", coil, ol, low)
	check(t, "current relay", got, verdict.Sound, "start-device-sound")
	if !slices.Equal(got.Entries, []int{7, 8}) {
		t.Errorf("entries %v", got.Entries)
	}
	check(t, "welded", CurrentRelayWhole("K1", coil, low, low), verdict.Failed, "start-device-failed")
	// At rest: whether it picks up no ohm-meter sees (common practice).
	check(t, "potential relay", PotentialRelayWhole("K1", within(5200, 60), low), verdict.Sound, "start-device-undecided")
	check(t, "potential relay open", PotentialRelayWhole("K1", within(5200, 60), ol), verdict.Failed, "start-device-failed")
}

// Cool to below 120 °F before trusting an open protector: ice-machine
// operation manual 80-0111-9 p. 176.
func TestOverload(t *testing.T) {
	for _, c := range []struct {
		name  string
		v     measure.Value
		state State
		word  verdict.Word
		facts []string
	}{
		{"closed", within(0.2, 0.3), Cold, verdict.Sound, []string{"overload-closed"}},
		{"open hot", measure.Open(7), Hot, verdict.CannotTell, []string{"overload-open"}},
		{"open cold", measure.Open(7), Cold, verdict.Failed, []string{"overload-open"}},
		{"open", measure.Open(7), "", verdict.Suspect, nil},
		{"3 Ω", within(3, 0.3), Cold, verdict.Suspect, []string{"overload-closed"}},
		{"3 kΩ", within(3000, 40), Cold, verdict.Suspect, nil},
	} {
		got := Overload(OverloadIn{Ohms: c.v, State: c.state})
		check(t, c.name, got, c.word, c.facts...)
		if !slices.Contains(got.Caution, caution.ProtectorStays) {
			t.Errorf("%s: cautions %v", c.name, got.Caution)
		}
	}
}
