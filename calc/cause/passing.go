package cause

import "sync"

// passing holds the codes of what an appliance did at the time: how it starts,
// runs, sounds, draws, heats and cools. Once it does the same again after a
// repair, what it did before says nothing of the machine as it is now, while a
// part that was measured and not touched stays as it was.
var passing = codeSet(
	"clicks", "hums", "silent", "does-not-start", "starts-and-runs", "starts-bypassed", "cuts-out", "runs-all-the-time", "cycles-off", "short-cycles",
	"comp-hot", "comp-cold", "restarted-soon", "starts-after-wait", "no-start-after-wait", "starts-on-other-outlet",
	"no-start-on-other-outlet", "starts-with-test-device", "no-start-with-test-device", "starts-with-kit", "kit-or-gear", "no-start-with-kit", "drive-fault-shown", "drive-no-fault",
	"cond-fan-runs", "cond-fan-stopped", "evap-fan-runs", "evap-fan-stopped", "condenser-warm", "condenser-cold",
	"frost-none", "frost-partial", "frost-even", "frost-heavy", "cools-down", "cools-slowly", "does-not-cool", "freezes-food",
	"defrost-runs-by-hand", "defrost-dead-by-hand", "defrost-starts-itself", "defrost-never-starts",
	"all-dead", "light-works", "trips-at-once", "trips-later", "breaker-holds", "residual-trips", "trips-only-when-called",
	"heats-up", "heats-slowly", "does-not-heat", "starts-when-pushed", "control-calls-when-cold", "control-stops-when-cold",
	"suction-low", "suction-normal", "suction-high", "pressures-apart", "pressures-level",
	"sag-sound", "sag-deep", "sag-undecided", "control-calling", "control-not-calling",
	"amps-none", "amps-undecided", "amps-agree", "amps-low", "amps-sound", "amps-high", "legs-overloaded", "overloaded", "amps-locked-rotor", "surge-sound",
	"pump-runs", "drains", "does-not-drain", "dries", "does-not-dry", "shock", "heater-volts-present", "heater-volts-absent",
	"cond-fan-volts-present", "cond-fan-volts-absent", "evap-fan-volts-present", "evap-fan-volts-absent",
	"spins", "does-not-spin", "agitates", "drum-turns", "drum-stands", "does-not-fill", "fills", "fills-slowly", "overfills", "noisy", "quiet-now", "makes-ice", "no-ice-made", "door-locked", "door-unlocks",
	"blower-runs", "blower-stopped", "blower-volts-present", "blower-volts-absent", "coil-cold", "coil-partial", "coil-warm", "coil-iced", "rested",
	"heat-lost", "heat-kept", "quits-glowing", "quits-dark", "pilot-good", "pilot-weak", "pilot-none", "press-open", "press-closed", "inducer-runs", "inducer-stopped", "igniter-glows", "igniter-dark", "flame-lights", "flame-drops-out", "flame-none", "flame-sensed", "flame-weak", "too-hot", "heat-right", "heats-when-off", "heat-stops", "valve-volts-present", "valve-volts-absent",
	"split-sound", "split-small", "split-large", "rise-sound", "rise-small", "rise-cooled", "rise-large", "outdoor-iced", "outdoor-clear", "restarts-at-once", "door-slips", "door-holds", "bake-heats", "broil-heats", "other-heats", "other-dead", "leg-lost", "single-phasing", "legs-sound", "legs-unbalanced",
	"pulls-down-on-course", "pulls-down-slowly", "will-not-reach", "temp-above", "freezer-cold", "temp-at-target",
)

// codeSet is a set that is made when first asked.
//
//go:noinline
func codeSet(codes ...string) func() map[string]bool {
	return sync.OnceValue(func() map[string]bool {
		m := make(map[string]bool, len(codes))
		for _, c := range codes {
			m[c] = true
		}
		return m
	})
}

// Passing reports whether a fact tells what the appliance did at the time,
// which a repair may have changed as a whole.
func Passing(code string) bool { return passing()[code] }

// Cures reports whether a fact says that a complaint is gone.
func Cures(complaint, code string) bool {
	p := tables().complaint[complaint]
	n, ok := vocabulary().number[code]
	return p != nil && ok && p.cured.has(n)
}

// Persists reports whether a fact says that a complaint is still there: it is
// a sign of it, or of another that the same would cure, or cannot be true
// beside the cure.
func Persists(complaint, code string) bool {
	p := tables().complaint[complaint]
	n, ok := vocabulary().number[code]
	if p == nil || !ok || p.cured.has(n) {
		return false
	}
	for _, q := range tables().plans {
		if q.signs.has(n) && (q == p || q.cured.meets(p.cured)) {
			return true
		}
	}
	return vocabulary().excludes[n].meets(p.cured)
}
