package cause

import "ohmcall/calc/caution"

// burnerCauses are those of gas burners and of heat that does not stop.
var burnerCauses = []Cause{
	{
		Code: "gas-off", Name: "no gas at the burner",
		ShownBy:     []string{"gas-off"},
		Predicts:    []string{"igniter-glows", "flame-none"},
		Contradicts: []string{"gas-on", "flame-lights", "flame-drops-out"},
		Fix:         "open the appliance's cock; beyond it the gas is its supplier's or a licensed person's",
		Work:        "gas on, cock, supplier",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				gas-off | gas off, gas cock shut, gas shut off, gas tap shut, gas tap off, gas cock off, gas turned off, gas supply off, no gas | the gas is shut off | gas-on
				gas-on | gas on, gas cock open, other burners light, gas supply on, gas cock on, gas turned on, gas tap open, gas tap on, other burners good, other burners fine, burners on top work, cooktop burners work, hob works, hob burners work, cooktop works | the cock is open and another burner has gas |`,
			Test: Test{Code: "gas-cock", Name: "see that the cock is open and another burner has gas", How: "saw gas on",
				Outcomes: []string{"gas-on", "gas-off"}, Effort: 1, Danger: Look, Caution: []string{caution.FuelGas}},
		},
	},
	{
		Code: "igniter-weak", Name: "igniter glows too weakly to open the valve or light",
		ShownBy:     []string{"igniter-weak"},
		Predicts:    []string{"igniter-glows", "flame-none", "igniter-conducts", "heats-slowly"},
		Contradicts: []string{"no-burner", "igniter-strong", "igniter-dark", "igniter-open", "flame-drops-out"},
		Fix:         "replace the igniter by one of its kind",
		Work:        "igniter",
		Note:        "its amps are held against the marking of the valve or igniter",
		Source:      commonPractice,
	},
	{
		Code: "gas-coil-open", Name: "coil of the gas valve open",
		ShownBy:     []string{"coil-open"},
		Predicts:    []string{"igniter-glows", "flame-none", "heats-slowly"},
		Contradicts: []string{"no-burner", "coil-conducts", "flame-lights", "flame-drops-out"},
		Fix:         "replace the coils as a set; the valve itself and its pipes are for licensed persons",
		Work:        "coil, valve",
		Note:        "a coil can open only when it is hot",
		Source:      commonPractice,
	},
	{
		Code: "sensor-heats-on", Name: "temperature sensor reads too cold",
		ShownBy:     []string{"sensor-reads-cold"},
		Predicts:    []string{"too-hot", "sensor-failed", "sensor-suspect"},
		Contradicts: []string{"sensor-sound", "sensor-reads-warm"},
		Fix:         "replace the sensor with one of the same curve",
		Work:        "sensor, thermistor, ntc, rtd, probe",
		Note:        "by it the control heats on too long",
		Source:      "ice water at 0 C as the check point, common practice",
	},
}

// phaseCauses are those of a machine on three phases.
var phaseCauses = []Cause{
	{
		Code: "phase-lost", Name: "a leg of the supply lost",
		ShownBy:     []string{"phase-lost"},
		Predicts:    []string{"single-phasing", "hums", "cuts-out", "amps-locked-rotor", "amps-high", "leg-lost", "comp-hot"},
		Contradicts: []string{"legs-overloaded", "phases-sound", "legs-sound", "fuse-open", "pole-open"},
		Before:      []string{"fuse", "contactor"},
		Fix:         "keep it off, on two legs it burns out; dead, look at the breaker's poles, the fuse of each leg and the contactor (saw fuse open, saw contactor pole open); a leg lost before them is an electrician's or the utility's",
		Work:        "leg, phase, electrician, utility, breaker",
		Source:      commonPractice,
	},
	{
		Code: "contactor-coil-open", Name: "coil of the contactor open",
		ShownBy:     []string{"coil-open", "control-not-calling"},
		Predicts:    []string{"silent", "amps-none", "coil-fed"},
		Contradicts: []string{"coil-conducts", "contactor-unfed", "cond-fan-runs", "hums", "cuts-out", "starts-and-runs", "amps-locked-rotor", "amps-high", "single-phasing", "leg-lost", "legs-sound"},
		Fix:         "replace the coil, or the contactor, with one of its rating and coil volts",
		Work:        "contactor, coil",
		Source:      commonPractice,
		Own: &Own{
			Test: Test{Code: "contactor-coil", Name: "ohms of the contactor's coil, its wires off", How: "ohm contactor-coil 15",
				Outcomes: []string{"coil-conducts", "coil-open"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead}, On: []string{"three-phase", "ac-dead"}},
		},
	},
	{
		Code: "phases-unequal", Name: "volts of the three legs unbalanced",
		ShownBy:     []string{"phases-unbalanced", "legs-unbalanced"},
		Predicts:    []string{"amps-high", "comp-hot", "cuts-out"},
		Contradicts: []string{"phases-sound", "phase-lost", "leg-lost", "single-phasing"},
		Fix:         "tighten and clean the joints of the legs; what is unbalanced at the service is an electrician's or the utility's",
		Work:        "leg, phase, electrician, utility, joint, terminal",
		Source:      "NEMA MG 1: largest deviation from the average by the average; at most 5 % (from memory)",
	},
	{
		Code: "wrong-rotation", Name: "two legs swapped: it turns the wrong way",
		ShownBy:  []string{"turns-wrong-way"},
		Predicts: []string{"after-wiring", "noisy", "amps-low", "pressures-level", "does-not-cool", "cools-slowly", "runs-all-the-time", "split-small", "will-not-reach", "condenser-cold"},
		Contradicts: []string{"one-phase", "rotation-right", "hums", "silent", "phase-lost", "leg-lost", "single-phasing", "amps-none", "amps-locked-rotor", "suction-low", "frost-even", "frost-heavy",
			"pulls-down-on-course", "cools-down", "split-sound", "split-large", "coil-cold", "coil-iced"},
		Fix:    "power off, locked out and proved dead, swap two of the three legs, by who is licensed to; then read amps and pressures again",
		Work:   "swap leg, swap phase, swap two, swap l1 l2, swap l2 l3, swap l1 l3, swap t1 t2, swap t2 t3, swap t1 t3, swap lead, revers leg, revers phase, revers lead, rotation",
		Note:   "a scroll that turns the wrong way is loud, draws little on every leg and raises hardly any pressure, often after work on the wiring or by the utility",
		Source: commonPractice,
		Own: &Own{
			Seen: `
				turns-wrong-way | turns wrong way, turns backwards, runs backwards, wrong rotation, rotation wrong, phase rotation wrong, phase sequence wrong, legs swapped, phases swapped, phases reversed, phase reversed, reverse phase, reversed phase, reverse phased, phase reversal, reverse rotation, reversed rotation, rotation reversed, rotates backwards, rotating backwards, turning backwards, running backwards, runs in reverse, rotates wrong way, rotates the wrong way, turns the wrong way | it turns the wrong way, or its legs come in the wrong order | rotation-right
				rotation-right | rotation right, rotation correct, rotation good, phase rotation right, phase sequence right, phase sequence correct, turns right way, turns the right way, turns correct way, turns in the right direction, runs right way, runs the right way, turns with the arrow | its legs come in the order in which it turns the right way |
				after-wiring | after wiring work, after utility work, after panel work, after electrician, after the electrician, after an electrician, since electrician, since the electrician, after new disconnect, after new panel, after power company | the trouble began after work on the wiring or by the utility |`,
			Test: Test{Code: "rotation", Name: "order of the legs with a phase rotation meter, or two legs swapped with the power off by who is licensed to, then amps and pressures", How: "saw rotation right",
				Outcomes: []string{"rotation-right", "turns-wrong-way"}, Effort: 3, Danger: Live, Caution: []string{caution.MainsLive, caution.HotMoving}, Barred: grounded, On: []string{"three-phase", "ac-warm", "no-cool"}},
		},
	},
}
