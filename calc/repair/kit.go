package repair

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Metering is how the refrigerant is throttled.
type Metering string

// The kinds of metering. The empty one means that nobody said.
const (
	Capillary Metering = "capillary"
	Valve     Metering = "valve"
)

// Motor is what drives the machine.
type Motor string

// The kinds of motor. The empty one means that nobody said.
const (
	SinglePhase Motor = "single-phase"
	ThreePhase  Motor = "three-phase"
	Inverter    Motor = "inverter"
)

// restMinutes is how long a stopped capillary system takes to level its
// pressures (common practice: three to five minutes).
const restMinutes = 5.0

// KitIn is what the plate and the readings say of the machine. Zero values
// stand for what is not known.
type KitIn struct {
	Volts, Hertz, HP  float64
	Metering          Metering
	Motor             Motor
	Windings          string  // state of the windings, as `roles` gives it: "sound", "grounded", …
	RunCap, RunVolts  float64 // marked µF and volts of the run capacitor it has
	StartLow          float64 // marked µF of the start capacitor it has, low end
	StartHigh         float64 // and high end
	StartVolts        float64
	Gas               string  // "R-600a"
	MinutesOff        float64 // since it last ran or tried to, when Rested is set
	Rested            bool    // MinutesOff is known
	PressuresMeasured bool    // and found equal
}

// Requirement is one line of the list to hold against a part's label.
type Requirement struct {
	What, Value, Why, Source string
}

// Kit is what a start kit must be, or why there must be none.
type Kit struct {
	Refused string // the reason, empty when a kit may be chosen
	Source  string // of the refusal
	Need    []Requirement
	Missing []string // what is not known and should be read first
	Notes   []string // sentences that belong beside the list
	Caution []string // codes of calc/caution
}

// StartKit lists what a start kit must be for the machine, or refuses one.
func StartKit(in KitIn) Kit {
	if k, refused := refuse(in); refused {
		return k
	}
	k := Kit{Caution: []string{caution.ProveDead, caution.Capacitor, caution.TerminalsPressed, caution.ProtectorStays}}
	k.addPlate(in)
	k.addKind(in)
	k.addCapacitors(in)
	k.addGas(in)
	k.addPressures(in)
	k.need("overload protector", "the machine's own, or one that the kit's label gives for it",
		"the protector is matched to the motor and stays in its circuit", commonPractice)
	k.need("terminals", "common, start and run named on the kit's own diagram",
		"wires are joined by role, never by colour alone", commonPractice)
	switch in.Windings {
	case "sound":
	case "":
		k.Missing = append(k.Missing, "ohms of the three pairs, and each pin to the case")
	default:
		k.Notes = append(k.Notes, "windings: "+strings.ReplaceAll(in.Windings, "-", " ")+"; settle them before a kit is fitted")
	}
	k.Notes = append(k.Notes, "a kit cannot free a seized compressor and must not be used to hide a weak supply")
	return k
}

// Overload lists what the outside overload of the machine must be, for its plate's amps.
func Overload(in KitIn, amps float64) Kit {
	switch {
	case in.Windings == "grounded":
		return Kit{Refused: "a winding is grounded: never energise it, no overload cures that", Source: commonPractice, Caution: []string{caution.NeverEnergise}}
	case in.Motor == Inverter:
		return Kit{Refused: "the drive of an inverter guards its compressor itself", Source: commonPractice, Caution: []string{caution.InverterLine}}
	}
	k := Kit{Caution: []string{caution.ProveDead, caution.Capacitor, caution.ProtectorStays}}
	k.need("machine", "the number that this machine's plate or parts list gives",
		"it is matched to how this motor heats: amps alone do not choose it", commonPractice)
	what := "its place on the shell, in series with common"
	switch {
	case in.Windings == "equal-windings" && in.Motor == "":
		k.Missing = append(k.Missing, "whether a drive or three phases run it (plate type …)")
	case in.Motor == ThreePhase:
		what = "one for three legs, set to the plate's amps"
	}
	k.need("kind", what, "it has to feel this machine's heat or current", commonPractice)
	if in.Volts > 0 {
		k.need("voltage", "a range that holds "+plain(in.Volts)+" V", "its contacts open at that voltage", commonPractice)
	} else {
		k.Missing = append(k.Missing, "plate volts")
	}
	if amps > 0 {
		k.need("current", "holds at "+plain(amps)+" A, opens on a rotor that stands", "it guards from the one and not from the other", commonPractice)
	} else {
		k.Missing = append(k.Missing, "plate amps")
	}
	k.addGas(in)
	k.Notes = append(k.Notes, "one that closes when cool has done its work: find what made it hot; one inside the machine is not changed by itself")
	return k
}

const commonPractice = verdict.CommonPractice

//go:noinline
func (k *Kit) need(what, value, why, source string) {
	k.Need = append(k.Need, Requirement{what, value, why, source})
}

// refuse gives the reason why no kit may be fitted.
func refuse(in KitIn) (Kit, bool) {
	no := func(reason, source string, codes ...string) (Kit, bool) {
		return Kit{Refused: reason, Source: source, Caution: codes}, true
	}
	switch {
	case in.Windings == "grounded":
		return no("a winding is grounded: never energise it, no start kit cures that",
			"Hermetic Compressor Service Handbook p. 40-41", caution.NeverEnergise)
	case in.Motor == Inverter:
		return no("an inverter starts its compressor itself: line voltage through a kit destroys both",
			"technical service manual for an inverter-compressor refrigerator", caution.InverterLine)
	case in.Motor == ThreePhase:
		return no("a three-phase motor has no start winding for a kit to serve",
			"Heating and Cooling Essentials (2022) §25", caution.ProtectorStays)
	case in.Windings == "equal-windings":
		return no("three equal windings mean three phases or an inverter: a kit is for single phase",
			"Heating and Cooling Essentials (2022) §25", caution.InverterLine)
	case in.Windings == "open-winding" || in.Windings == "open-unplaced":
		return no("a winding or its path is open: no start kit can feed it", commonPractice, caution.ProveDead)
	case in.Windings == "shorted":
		return no("a winding is shorted: a kit would only feed the fault", commonPractice, caution.ProveDead)
	case in.Windings == "not-a-winding":
		return no("the readings are not those of a motor's windings", commonPractice, caution.ProveDead)
	case in.Windings == "overload-open":
		return no("the protector is open: let it cool below "+measure.CoolWords+" and read again first", measure.CoolSource, caution.ProtectorStays)
	}
	return Kit{}, false
}

func (k *Kit) addPlate(in KitIn) {
	if in.Volts > 0 {
		k.need("voltage", "a range that holds "+plain(in.Volts)+" V",
			"its relay and disc are made for one mains voltage", commonPractice)
	} else {
		k.Missing = append(k.Missing, "plate volts")
	}
	if in.Hertz > 0 {
		k.need("frequency", plain(in.Hertz)+" Hz, or 50/60 Hz", "a capacitor's current follows the frequency", "I = ωCV")
	} else {
		k.Missing = append(k.Missing, "plate hertz")
	}
	if in.HP > 0 {
		k.need("horsepower", "a range that holds "+horsepower(in.HP)+" hp",
			"capacitor and relay are matched to the motor's size", commonPractice)
	} else {
		k.Missing = append(k.Missing, "horsepower of the machine")
	}
	if in.Motor == "" {
		k.Missing = append(k.Missing, "proof that the machine is single-phase and not inverter-driven")
	}
	k.need("motor", "single-phase, split-phase or capacitor", "a kit feeds the start winding for a moment", commonPractice)
}

const brochure = "start-kit maker's brochure, p. 3"

func (k *Kit) addKind(in KitIn) {
	switch in.Metering {
	case Capillary:
		k.need("system", "capillary tube", "pressures level while it rests, so a PTC with a start capacitor is mostly enough", brochure)
	case Valve:
		k.need("system", "expansion valve: start capacitor with a potential relay",
			"it may have to start against pressure, and a kit for capillary systems assumes it need not", brochure+"; "+commonPractice)
	default:
		k.Missing = append(k.Missing, "capillary tube or expansion valve")
	}
}

func (k *Kit) addCapacitors(in KitIn) {
	if in.StartLow > 0 {
		if s, err := StartSize(in.StartLow, in.StartHigh, in.StartVolts); err == nil {
			k.need("start capacitor", s.Text(), "it replaces the one of this machine; two start devices are never run side by side", s.Source)
		}
	}
	if in.RunCap > 0 {
		value := "the kit's diagram keeps the run capacitor of " + plain(in.RunCap) + " µF in its place"
		k.need("run capacitor", value, "a kit with a start capacitor does not replace it", brochure)
	}
}

// flammable are the gases of safety classes A2L, A2, A3 and B2L (ASHRAE 34, from
// memory; R-600a, R-290 and R-441A: 79 FR 29682), by their numbers, with the
// hydrocarbons in front.
var flammable = strings.Fields(`600A 600 290 441A 1270 170 436A 436B 432A 443A 429A 430A 431A 433A
	32 152A 143A 1234YF 1234ZE 444A 444B 447A 451A 452B 454A 454B 454C 455A 457A 459A 717`)

// Flammable reports whether a gas named as on a plate burns.
//
//go:noinline
func Flammable(gas string) bool { return burns(gas) >= 0 }

// Hydrocarbon reports whether it is one that may smell of fuel gas, being the same.
func Hydrocarbon(gas string) bool { return Flammable(gas) && burns(gas) < burns("R-32") }

//go:noinline
func burns(gas string) int { return slices.Index(flammable, formula.GasKey(gas)) }

func (k *Kit) addGas(in KitIn) {
	switch {
	case in.Gas == "":
		k.Missing = append(k.Missing, "gas named on the plate")
	case Flammable(in.Gas):
		k.need("flammable gas", "label allows "+in.Gas+": sealed, nothing that sparks in the open",
			"a spark can light leaked gas", "IEC 60335-2-24 cl. 22 (from memory)")
		k.Caution = append(k.Caution, caution.Flammable)
	}
}

func (k *Kit) addPressures(in KitIn) {
	switch {
	case in.PressuresMeasured:
	case in.Metering == Valve:
		k.Notes = append(k.Notes, "an expansion valve may hold the pressures apart: a hard start need not be the start gear ("+commonPractice+")")
	case in.Rested && in.MinutesOff < restMinutes:
		k.Notes = append(k.Notes, fmt.Sprintf(
			"only %s min at rest: pressures may not be level; wait %s min and try again before fitting a kit (%s)",
			plain(in.MinutesOff), plain(restMinutes), commonPractice))
	case !in.Rested:
		k.Notes = append(k.Notes, fmt.Sprintf("let it rest %s min before the trial start, so that the pressures are level (%s)",
			plain(restMinutes), commonPractice))
	}
	k.Notes = append(k.Notes, "a PTC must cool before each further start ("+brochure+")")
}

// plain writes a number without needless digits.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// fractions are the small horsepowers as plates write them, and onPlate how near
// to one of them it is meant (common practice).
var fractions = []struct {
	text  string
	value float64
}{{"1/12", 1.0 / 12}, {"1/10", 0.1}, {"1/8", 0.125}, {"1/6", 1.0 / 6}, {"1/5", 0.2}, {"1/4", 0.25}, {"1/3", 1.0 / 3}, {"1/2", 0.5}, {"3/4", 0.75}}

const onPlate = 0.002 // common practice

// horsepower writes small horsepowers as the fractions of plates.
func horsepower(hp float64) string {
	for _, f := range fractions {
		if d := hp - f.value; d < onPlate && d > -onPlate {
			return f.text
		}
	}
	return strconv.FormatFloat(hp, 'g', 3, 64)
}
