package cause

import "ohmcall/calc/caution"

// Facts that show that frost does not build up beyond measure.
// Partial frost is no such: ice may lie in one place, the rest bare.
var notIced = []string{"frost-none", "frost-even"}

// coldRows are those of them that need no more, in the form of gasRows.
const coldRows = `
set-wrong | control set too cold | set-coldest | runs-all-the-time freezes-food | no-sealed-system set-normal does-not-cool | set it to its middle range and read the temperatures a day later | set, dial, turn
heavy-use | much warm food or a door opened often | heavy-use | runs-all-the-time cools-slowly frost-heavy pulls-down-on-course water-inside | no-sealed-system normal-use will-not-reach condenser-cold | give it a day with the door shut and read the temperatures again | explain, advis, told, show
room-hot | room hotter than the appliance is made for | room-hot | runs-all-the-time cools-slowly comp-hot amps-high | no-sealed-system room-normal | move it or cool the room | move, room, ventilat
gasket-leaks | door gasket does not seal | gasket-leaks | runs-all-the-time frost-heavy water-inside cools-slowly | no-gasket gasket-sound condenser-cold | clean, warm and shape the gasket or replace it; set the door and the feet | gasket, seal, door
lamp-stays-on | inside lamp stays on and heats | lamp-stays-on | runs-all-the-time cools-slowly | no-sealed-system lamp-goes-off | replace the door switch or set what should press it | lamp, light, door switch
vents-blocked | air passages inside blocked or damper stuck shut | vents-blocked damper-stuck-shut | cools-slowly does-not-cool frost-even evap-fan-runs freezer-cold | no-sealed-system vents-clear frost-none condenser-cold | free the passages; replace a damper that does not move | vent, passage, duct, damper, air
condenser-dirty | condenser matted or without room to breathe | condenser-dirty | comp-hot cuts-out runs-all-the-time cools-slowly amps-high condenser-warm split-small | no-sealed-system condenser-clean condenser-cold | clean the condenser and give it the room that its installation sheet asks for | clean cond, clean coil, wash cond, wash coil, hosed cond, hosed coil, rins cond, rins coil, blew cond, blew coil, brush, vacuum, dust
cond-fan-failed | condenser fan motor failed or jammed | cond-fan-stopped cond-fan-windings-failed cond-fan-stiff | comp-hot cuts-out runs-all-the-time cools-slowly amps-high condenser-warm cond-fan-volts-present | no-sealed-system cond-fan-runs cond-fan-none fan-shared cond-fan-volts-absent condenser-cold | replace the fan motor with one of its volts, watts and turning direction; free what jams the blade | cond fan, fan motor, fan blade, fan replac
cond-fan-unfed | condenser fan gets no supply | cond-fan-stopped cond-fan-volts-absent | comp-hot cuts-out runs-all-the-time cond-fan-windings-sound | no-sealed-system cond-fan-runs cond-fan-none fan-shared cond-fan-volts-present cond-fan-windings-failed cond-fan-stiff condenser-cold | mend the wire, connector or control output that should feed the fan | cond fan, wir, connector, harness, board
evap-fan-failed | evaporator fan motor failed or jammed | evap-fan-stopped evap-fan-windings-failed evap-fan-stiff | does-not-cool cools-slowly runs-all-the-time frost-heavy evap-fan-volts-present freezer-cold | no-sealed-system evap-fan-runs evap-fan-none evap-fan-volts-absent | replace the fan motor with one of its volts and turning direction; thaw ice that jams the blade and look for why it formed | evap fan, fan motor, fan blade, freezer fan, fan replac
evap-fan-unfed | evaporator fan gets no supply | evap-fan-stopped evap-fan-volts-absent | does-not-cool cools-slowly runs-all-the-time evap-fan-windings-sound freezer-cold | no-sealed-system evap-fan-runs evap-fan-none evap-fan-volts-present evap-fan-windings-failed evap-fan-stiff | check the door switch first, then the wire, connector or control output that should feed the fan | evap fan, wir, connector, harness, door switch, board
drain-blocked | defrost drain blocked | drain-blocked | water-inside frost-heavy water-on-floor | no-sealed-system drain-clear | thaw and flush the drain; set its heater or strip so that it stays open | drain
pan-cracked | drain pan cracked or out of place | pan-cracked | water-on-floor | pan-sound | set or replace the pan | pan
water-line-leaks | water tube, valve or hose leaks | water-line-leaks | water-on-floor water-inside | water-line-dry | shut the water off; replace the tube, valve or hose | tube, line, valve, hose
not-level | cabinet leans | not-level | water-on-floor water-inside gasket-leaks noisy | level | set the feet so that doors close by themselves and water runs to the drain | level, feet, foot
thermostat-stuck | thermostat does not open | thermostat-stuck-closed | runs-all-the-time freezes-food too-hot | thermostat-opens cycles-off thermostat-open does-not-cool | replace the thermostat; set its bulb where the old one sat | thermostat, control
damper-stuck | air damper stuck open | damper-stuck-open | freezes-food | no-sealed-system damper-moves damper-none damper-stuck-shut | free or replace the damper | damper
restriction | drier or capillary tube restricted | restriction-frost | does-not-cool cools-slowly runs-all-the-time frost-partial frost-none does-not-dry condenser-cold glass-bubbles amps-low suction-low will-not-reach leak-not-found split-small coil-partial coil-iced coil-warm rise-small does-not-heat heats-slowly | rise-cooled rise-sound rise-large no-sealed-system restriction-none frost-even frost-heavy suction-normal suction-high freezes-food pulls-down-on-course cools-down split-sound split-large coil-cold | replace drier or capillary tube, evacuate and charge by weight: by a person certified for the refrigerant only | drier, capillary, cap tube, filter
`

// coldCauses are the causes for which a machine that runs does not cool, never
// stops, cools too much, ices up or leaks.
var coldCauses = []Cause{
	{
		Code: "compressor-off", Name: "compressor does not run", Consequence: true,
		Predicts:    []string{"does-not-dry", "does-not-cool", "amps-none", "amps-locked-rotor", "comp-cold", "pressures-level", "split-small", "coil-warm", "does-not-heat", "rise-small"},
		ShownBy:     []string{"clicks", "does-not-start", "silent", "hums"},
		Contradicts: []string{"rise-cooled", "no-sealed-system", "starts-and-runs", "runs-all-the-time", "cycles-off", "cools-down", "cools-slowly", "freezes-food", "amps-sound", "amps-agree", "amps-low", "frost-even", "frost-heavy", "pressures-apart", "split-sound", "rise-sound", "coil-cold", "coil-iced", "coil-partial"},
		Fix:         "take it as a machine that does not start",
		Work:        "start, compressor",
		Source:      commonPractice,
	},
	{
		Code: "evaporator-iced", Name: "evaporator packed with ice", Consequence: true,
		Predicts:    []string{"does-not-cool", "cools-slowly", "runs-all-the-time", "water-inside", "freezer-cold"},
		ShownBy:     []string{"frost-heavy"},
		Contradicts: with("no-sealed-system frost-partial", notIced),
		Fix:         "thaw it gently, with no sharp tool near the tubing, then look for why it formed: defrost, drain, gasket, fan",
		Work:        "thaw, defrost, ice",
		Note:        "ice is what is found, not the cause: a fan that stands, a defrost that fails, a drain or a door lets it grow",
		Source:      commonPractice,
	},
	{
		Code: "heater-failed", Name: "heater failed",
		Predicts:    []string{"frost-heavy", "defrost-dead-by-hand", "does-not-heat", "heats-slowly", "heater-suspect", "heater-volts-present"},
		ShownBy:     []string{"heater-open", "heater-failed"},
		Contradicts: with("other-dead heater-none heater-sound heater-volts-absent defrost-runs-by-hand heats-up", notIced),
		Fix:         "replace it with a heater of the same volts and watts; look for why a limit beside it did not act",
		Work:        "heater, element, bake, broil, igniter",
		Source:      "ohms from watts and volts; power limits IEC 60335-1 cl. 10.1 (from memory)",
	},
	{
		Code: "limit-open", Name: "thermal limit, fuse or defrost thermostat open",
		Predicts:    []string{"frost-heavy", "defrost-dead-by-hand", "does-not-heat", "airflow-blocked", "heater-volts-absent", "igniter-dark"},
		ShownBy:     []string{"limit-open"},
		Contradicts: with("limit-closed heater-volts-present defrost-runs-by-hand heats-up igniter-glows flame-lights", notIced),
		Fix:         "replace it with one of the same rating, after what made it open is found; never bridge it",
		Work:        "limit, thermal, thermostat, fuse, bimetal, cutoff",
		Note:        "a defrost thermostat conducts only when it is cold: measure it below its marked temperature",
		Source:      commonPractice,
	},
	{
		Code: "defrost-control-failed", Name: "defrost timer or control does not start a defrost",
		Predicts:    []string{"frost-heavy", "defrost-runs-by-hand"},
		ShownBy:     []string{"defrost-never-starts"},
		Contradicts: with("no-sealed-system defrost-starts-itself", notIced),
		Fix:         "replace the timer or control, after heater and limit have been proved",
		Work:        "timer, control, board",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				defrost-starts-itself | defrost starts itself, defrost starts by itself, defrost starts on its own, defrost started itself, defrost started by itself, defrost started on its own | a defrost started without help in due time | defrost-never-starts
				defrost-never-starts | defrost never starts, no defrost in a day | no defrost started by itself in due time |`,
			Test: Test{Code: "defrost-wait", Name: "leave it a day and see whether a defrost starts by itself", How: "saw defrost starts itself",
				Outcomes: []string{"defrost-starts-itself", "defrost-never-starts"}, Effort: 5, Danger: Look, On: cold},
		},
	},
	{
		Code: "control-stuck", Name: "control or its relay keeps calling",
		Predicts:    []string{"runs-all-the-time", "freezes-food"},
		ShownBy:     []string{"control-calls-when-cold"},
		Contradicts: []string{"control-stops-when-cold", "cycles-off", "thermostat-stuck-closed", "does-not-cool"},
		Fix:         "replace the control or relay, after its sensor has been proved",
		Work:        "control, board, relay",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				control-calls-when-cold | control calls when cold, still calls when cold | the control still gives volts to the machine below its set point | control-stops-when-cold cycles-off
				control-stops-when-cold | control stops when cold, stops calling when cold | the control takes the volts off at its set point |`,
			Test: Test{Code: "control-cold", Name: "volts from the control to the machine below the set point", How: "saw control stops when cold",
				Outcomes: []string{"control-stops-when-cold", "control-calls-when-cold"}, Effort: 3, Danger: Live, Caution: []string{caution.MainsLive}},
		},
	},
	{
		Code: "sensor-failed", Name: "temperature sensor off its curve",
		Predicts:    []string{"runs-all-the-time", "freezes-food", "sensor-suspect"},
		ShownBy:     []string{"sensor-failed", "sensor-reads-warm", "sensor-open"},
		Contradicts: []string{"sensor-sound", "sensor-reads-cold"},
		Fix:         "read it at its own plug, then replace the sensor with one of the same curve",
		Work:        "sensor, thermistor, ntc, rtd, probe",
		Note:        "by a sensor that reads too cold the control stops too early: that is no reason for this complaint",
		Source:      "ice water at 0 C as the check point, common practice",
	},
	{
		Code: "sensor-cold", Name: "temperature sensor reads too cold",
		ShownBy:     []string{"sensor-reads-cold", "sensor-open"},
		Predicts:    []string{"sensor-failed", "sensor-suspect", "does-not-cool", "cools-slowly", "cycles-off"},
		Note:        "by it the control stops the machine too early",
		Contradicts: []string{"sensor-sound", "sensor-reads-warm", "runs-all-the-time", "frost-none", "frost-partial", "frost-heavy", "condenser-cold", "will-not-reach", "coil-iced"},
		Fix:         "read it at its own plug, then replace the sensor with one of the same curve",
		Work:        "sensor, thermistor, ntc, rtd, probe",
		Source:      "ice water at 0 C as the check point, common practice",
	},
	{
		Code: "refrigerant-low", Name: "refrigerant leak: charge too low",
		Predicts:    []string{"does-not-cool", "cools-slowly", "runs-all-the-time", "frost-partial", "frost-none", "oil-stain", "does-not-dry", "condenser-cold", "glass-bubbles", "amps-low", "suction-low", "will-not-reach", "pulls-down-slowly", "standing-pressure-none", "split-small", "coil-partial", "coil-iced", "coil-warm", "rise-small", "does-not-heat", "heats-slowly"},
		ShownBy:     []string{"leak-found"},
		Contradicts: []string{"rise-cooled", "rise-sound", "rise-large", "no-sealed-system", "leak-not-found", "frost-even", "frost-heavy", "suction-normal", "suction-high", "freezes-food", "pulls-down-on-course", "cools-down", "split-sound", "split-large", "coil-cold"},
		Fix:         "find and mend the leak, new drier, evacuate and charge by weight: by a person certified for the refrigerant only",
		Work:        "leak, braz, charg, refrigerant",
		Source:      "40 CFR 82.154 and 82.161 (certified persons, no venting)",
	},
	{
		Code: "air-in-system", Name: "air or a wrong gas in the sealed system",
		Predicts:    []string{"does-not-cool", "cools-slowly", "runs-all-the-time", "amps-high", "comp-hot", "cuts-out", "suction-high", "will-not-reach", "split-small"},
		ShownBy:     []string{"standing-pressure-high"},
		Contradicts: []string{"no-sealed-system", "standing-pressure-sound", "standing-pressure-none", "condenser-cold", "amps-low", "freezes-food", "pulls-down-on-course", "cools-down", "split-sound", "split-large"},
		Fix:         "recover, find where air came in, new drier, evacuate and charge by weight: by a person certified for the refrigerant only",
		Work:        "evacuat, charg, recover",
		Note:        "look for it only where the system was opened before",
		Source:      commonPractice,
	},
	{
		Code: "compressor-weak", Name: "compressor runs but does not pump",
		Predicts:    []string{"does-not-cool", "cools-slowly", "runs-all-the-time", "frost-partial", "frost-none", "does-not-dry", "condenser-cold", "amps-low", "suction-high", "pressures-level", "will-not-reach", "leak-not-found", "restriction-none", "split-small", "coil-warm", "rise-small", "does-not-heat", "heats-slowly"},
		Contradicts: []string{"rise-cooled", "rise-sound", "rise-large", "amps-locked-rotor", "no-sealed-system", "suction-low", "suction-normal", "frost-even", "frost-heavy", "freezes-food", "pulls-down-on-course", "cools-down", "split-sound", "split-large", "coil-cold", "coil-partial", "coil-iced"},
		Fix:         "replace the compressor, by a person certified for the refrigerant",
		Work:        "compressor",
		Note:        "a compressor is condemned only after leak and restriction are ruled out",
		Source:      commonPractice,
	},
}
