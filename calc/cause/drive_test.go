package cause

import "testing"

// A machine with a start capacitor or with unlike windings has no drive, so no
// drive's lamp is asked for; one with three like windings has.
func TestDriveLampIsOfADrive(t *testing.T) {
	const tried = "does-not-start insulation-no-gross-fault supply-sound wiring-matches connections-sound rested "
	const locked = tried + "run-cap-none amps-locked-rotor no-start-with-test-device no-start-on-other-outlet "
	for words, want := range map[string]bool{
		locked + "windings-sound start-cap-sound":                     false,
		locked + "windings-sound start-cap-sound no-start-after-wait": false,
		locked + "windings-sound start-cap-sound comp-hot":            false,
		tried + "windings-equal driven":                               true,
	} {
		r := Weigh("no-start", facts(words))
		if got := r.Next != nil && r.Next.Code == "drive-lamp"; got != want {
			t.Errorf("%s: the drive's lamp is next: %t", words, got)
		}
	}
}
