// Package caution is the table of warnings that belong to steps of danger.
//
// A caution is named by a code in the verdicts and causes that raise it, so
// that its wording and its source stand in one place. None of them replaces
// the local code or a licence, and none of them blocks a step.
package caution

// The codes. A verdict carries the codes of the step it was taken in.
const (
	ProveDead        = "prove-dead"
	Capacitor        = "capacitor-discharge"
	Flammable        = "flammable-gas"
	TerminalsPressed = "terminals-under-pressure"
	HotMoving        = "hot-and-moving"
	MainsLive        = "mains-live"
	EarthAfter       = "earth-after-repair"
	SealedSystem     = "sealed-system"
	NeverEnergise    = "never-energise-grounded"
	InverterLine     = "inverter-never-line-voltage"
	InsulationVolts  = "insulation-test-volts"
	ProtectorStays   = "protector-stays"
	Shock            = "shock-felt"
	Smoke            = "smoke-or-sparks"
	GasSmell         = "gas-smell"
	HighVoltage      = "high-voltage"
	FuelGas          = "fuel-gas"
	FillFirst        = "fill-first"
	Monoxide         = "carbon-monoxide"
	Unsafe           = "unsafe"
	Radiation        = "microwaves"
	Outlet           = "outlet-wrong"
	EarthOff         = "earth-off"
)

// Caution is one warning.
type Caution struct {
	Code   string // lower-case words joined by hyphens
	Text   string // one sentence
	Source string // title and clause, or "common practice"
}

var table = []Caution{
	{ProveDead,
		"Disconnect every source, lock it out and prove it dead at the terminals before you read ohms.",
		"29 CFR 1910.333(b)(2)(ii) and (iv), as in WAC 296-24-975"},
	{Capacitor,
		"Discharge the capacitor through a resistor and prove it near zero volts before you touch it.",
		"29 CFR 1910.333(b)(2)(ii)(C), as in WAC 296-24-975; Hermetic Compressor Service Handbook p. 69 (20 000 Ω resistor)"},
	{Flammable,
		"The gas is flammable: air the room and check for a leak before anything that can spark.",
		"common practice; exempt from the venting ban yet flammable, 79 FR 29682"},
	{TerminalsPressed,
		"Compressor terminals can blow out under pressure: keep the cover on under power and stand to one side.",
		"Hermetic Compressor Service Handbook p. 40"},
	{HotMoving,
		"Keep clear of hot pipes, heaters and fan blades; anything automatic may start without warning.",
		"common practice"},
	{MainsLive,
		"This is a live test: use rated probes, one hand where you can, and only if you are qualified to.",
		"29 CFR 1910.333 (qualified person); common practice"},
	{EarthAfter,
		"Prove the earth path from the plug pin to every metal part after the repair, before power returns.",
		"IEC 60335-1 cl. 27.5 (from memory); EN 50106:2008 (0.2 Ω with supply cord, 0.1 Ω without)"},
	{SealedSystem,
		"Opening the sealed system is for persons certified under local law; refrigerant must not be vented.",
		"40 CFR 82.154 and 82.161"},
	{NeverEnergise,
		"Never energise what is grounded or may be; of a compressor, stand out of line with its terminals.",
		"Hermetic Compressor Service Handbook p. 40-41"},
	{InverterLine,
		"Never apply line voltage to an inverter compressor, not even for a moment.",
		"technical service manual for an inverter-compressor refrigerator (line voltage forbidden)"},
	{InsulationVolts,
		"An insulation tester shocks and harms electronics: unplug the boards, never test under vacuum, then discharge.",
		"common practice"},
	{ProtectorStays,
		"Leave every protective device in its circuit: a protector that trips is a symptom.",
		"common practice"},
	{Shock,
		"Somebody felt a shock: isolate at the supply, touch no metal before, and prove the earth path first.",
		"common practice"},
	{Smoke,
		"Smoke, sparks or burning: isolate at the supply, and give no power back before the burnt place is found.",
		"common practice"},
	{GasSmell,
		"Gas smelled: switch nothing on or off, no flame, air the room; fuel gas is for its supplier's emergency line.",
		"common practice"},
	{Monoxide,
		"Carbon monoxide kills unnoticed: get everybody out, air the place, leave the burner off; the rest is for the licensed.",
		"common practice"},
	{Unsafe,
		"What is unsafe stays off and labelled, and its user is told; local rules say who else is.",
		"common practice"},
	{Radiation,
		"A microwave oven that works with its door open burns unseen: pull the plug, and nobody uses it until it was tested.",
		"21 CFR 1030.10(c) (5 mW/cm² at 5 cm; two interlocks that end it when the door opens)"},
	{Outlet,
		"An outlet without earth, or with its wires swapped, protects nobody: the unit stays off it, an electrician mends it.",
		"common practice"},
	{EarthOff,
		"Metal without its earth can turn live and trip nothing: isolate at the supply, and mend the earth before power returns.",
		"common practice"},
	{HighVoltage,
		"A microwave oven's capacitor kills, unplugged too: leave its high voltage to the trained; never measure it live.",
		"common practice"},
	{FuelGas,
		"Fuel gas: shut its cock before work; leaks, gas valves and gas pipes are for licensed persons only.",
		"common practice"},
	{FillFirst,
		"Fill the tank before power, until a hot tap runs without air: an element under power in the dry burns out at once.",
		"common practice"},
}

// Text returns the caution with the code; false when there is none.
func Text(code string) (Caution, bool) {
	for _, c := range table {
		if c.Code == code {
			return c, true
		}
	}
	return Caution{}, false
}

// All returns every caution in the order of the table.
func All() []Caution { return append([]Caution(nil), table...) }
