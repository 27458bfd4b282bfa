package call

import (
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// place is one kind of part or point that a reading without two pins names.
// Any name that starts with one of its words is of that kind: heater and
// heater2 are heaters.
type place struct {
	words []string
	help  string
	judge func(c *Call, name string, rs []*reading, before int) verdict.Verdict
}

// partPlaces is the table of the parts that an ohm reading can name.
var partPlaces []place

func init() {
	partPlaces = []place{
		{otherSensors, "sensor that is no thermistor, whose sheet says what it reads", judgeOtherSensor},
		{[]string{"ptc", "start-device"}, "start device, across its disc", judgePTC},
		{[]string{"relay-coil", "relay-contact", "relay"}, "current relay", judgeRelay},
		{[]string{"potential-coil", "potential-contact"}, "potential relay", judgePotential},
		{[]string{"contactor-pole"}, "pole of a contactor, closed while it is pulled in", judgePath(judge.Pole)},
		{[]string{"overload", "protector"}, "outside overload protector", judgeOverload},
		{[]string{"heater", "defrost-heater", "element", "bake", "broil", "ring", "hotplate", "grill"}, "heater element", judgeHeater},
		{[]string{"defrost-thermostat", "bimetal", "defrost-limit"}, "defrost thermostat, which conducts when it is cold", judgeDefrost},
		{[]string{"limit", "thermal-fuse", "tco"}, "thermal limit or fuse", judgePath(judge.Limit)},
		{[]string{"thermostat"}, "thermostat contact", judgePath(judge.Thermostat)},
		{[]string{"sensor", "ntc", "thermistor"}, "thermistor sensor", judgeNTC},
		{[]string{"pt100", "pt1000", "rtd"}, "platinum sensor", judgePlatinum},
		{[]string{"earth", "ground"}, "protective earth, plug pin to metal", judgeEarth},
		{[]string{"cap", "run-cap", "start-cap", "c1", "c2"}, "capacitor on the ohm range", judgeCapOhms},
		{[]string{"cord"}, "one conductor of the cord", judgePath(judge.Cord)},
		{[]string{"plug"}, "between the plug's supply pins, with everything switched on", judgePlug},
		{[]string{"fuse"}, "the appliance's fuse", judgePath(judge.Fuse)},
		{[]string{"speed-switch", "speed"}, "speed switch, at the speed that is set", judgePath(judge.Speed)},
		{[]string{"monitor-switch"}, "monitor switch of a microwave oven, open with the door shut", judgeMonitor},
		{[]string{"pressure-switch", "vacuum-switch"}, "pressure switch of a burner's draft, closed while the inducer runs; elsewhere any switch", judgePath(judge.Draft)},
		{[]string{"switch", "door-switch", "interlock", "timer-contact"}, "switch or interlock", judgePath(judge.Switched)},
		{[]string{"flame-sensor", "flame-switch"}, "flame sensor of a burner, which conducts when it is cold", judgeFlame},
		{[]string{"flame-rod", "flame-probe"}, "flame rod of a burner, which is open on ohms", judgeRod},
		{[]string{"igniter"}, "hot-surface igniter of a burner", judgeIgniter},
		{[]string{"tacho"}, "tachogenerator of a motor", judgeTacho},
		{[]string{"timer", "defrost-timer", "transformer-primary", "transformer-secondary"}, "motor of a timer, or winding of a transformer", judgeWound},
		{[]string{"solenoid", "valve", "coil", "gas-valve"}, "coil of a solenoid or valve", judgeCoil},
		{[]string{"lamp", "light", "bulb"}, "lamp: a filament conducts", judgeLamp},
		{[]string{"ice-maker", "module", "board", "pcb", "display", "control", "electrode", "transformer"}, "assembly or electronics, which no ohms judge as a whole", judgeAssembly},
	}
}

// partOf finds the kind of part that a name means: by how it starts, else by
// its last word: the belt-switch is a switch, and the heater-fuse no heater.
func partOf(name string) *place {
	p := partStarting(name)
	i := strings.LastIndexByte(name, '-')
	if p != nil && p.words[0] == "solenoid" && i > 2 && partStarting(name[i+1:]) == partStarting("sensor") {
		return partStarting("sensor") // the coil-sensor is a sensor
	}
	if i < 2 || isShell(name[i+1:]) || p != nil && (!among(forerunners, p.words[0]) || among(p.words, canonical(name))) {
		return p
	}
	if last := partStarting(name[i+1:]); last != nil && (p == nil || last.words[0] != "solenoid" || p.words[0] == "ice-maker") {
		return last
	}
	return p
}

// forerunners are the places whose words also stand before the name of another part,
// by their first word: the light-switch is no lamp, the control-relay no control.
var forerunners = []string{"heater", "lamp", "ice-maker", "timer"}

func partStarting(name string) *place {
	name = canonical(name)
	for i := range partPlaces {
		for _, w := range partPlaces[i].words {
			if strings.HasPrefix(name, w) {
				return &partPlaces[i]
			}
		}
	}
	return nil
}

// heaterOf names the heater whose sheath an ohm reading to the case is about,
// "" when it is about something else.
func heaterOf(r *reading) string {
	if r.b != caseName {
		return ""
	}
	for _, name := range []string{r.a, r.of} {
		if isHeater(name) {
			return strings.ToLower(name)
		}
	}
	return ""
}

//go:noinline
func isHeater(name string) bool {
	p := partOf(name)
	return p != nil && p.words[0] == "heater"
}

// judgeSheath judges a heater to its sheath. What an ordinary meter cannot
// prove it can still have looked at.
func (c *Call) judgeSheath(name string, r *reading) verdict.Verdict {
	if name == "heater" {
		name = ""
	}
	out := judge.HeaterToCase(name, c.value(r), r.cond.test, c.appliance().Immersed)
	if out.Word == verdict.CannotTell && r.cond.test == 0 {
		out.Fact = []string{"heater-no-gross-fault"}
	}
	return out
}

// placeWords are offered for completion after each kind of reading.
//
//go:noinline
func placeWords(word string) []string {
	switch word {
	case "ohm":
		var out []string
		for _, p := range partPlaces {
			out = append(out, p.words[0])
		}
		return out
	case "volt":
		return []string{"line", "comp", "cap", "L", "N"}
	case "amp":
		return []string{"comp", "cond-fan", "evap-fan", "heater"}
	case "mfd":
		return []string{"C1", "start-cap", "run-cap"}
	case "temp":
		return []string{"freezer", "fridge", "room", "oven", "comp"}
	case "psi":
		return []string{"suction", "discharge"}
	}
	return []string{"unit"}
}

//go:noinline
func latest(rs []*reading) *reading { return rs[len(rs)-1] }

func judgeRod(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	return judge.FlameRod(strings.Trim(strings.TrimPrefix(strings.TrimPrefix(strings.TrimPrefix(name, "flame-rod"), "flame-probe"), "flame-sensor"), "-"), c.value(latest(rs)))
}

// judgeFlame judges what is called a flame sensor: in a furnace or boiler that is
// a rod, elsewhere a switch that the heat of the flame opens.
func judgeFlame(c *Call, name string, rs []*reading, before int) verdict.Verdict {
	if c.appliance().Furnace {
		return judgeRod(c, name, rs, before)
	}
	return judgePath(judge.Flame)(c, name, rs, before)
}

// isRod tells a rod that a flame is sensed with, by whatever it is called.
func (c *Call) isRod(name string) bool {
	name = strings.ToLower(name)
	return startsWithAny(name, rods) || c.appliance().Furnace && strings.HasPrefix(name, "flame-sens")
}

var rods = []string{"flame-rod", "flame-probe"}

// burns reports whether the appliance burns gas, by its name or its complaint.
func (c *Call) burns() bool {
	a := c.appliance()
	return a.Gas || a.Furnace && !a.Electric || among(said.Burners, c.complaint())
}

// judgeMonitor judges the switch that blows the fuse of a microwave oven when its
// interlocks stick: closed and open are said of the door (common practice).
func judgeMonitor(c *Call, _ string, rs []*reading, _ int) verdict.Verdict {
	return inBoth(rs, func(r *reading) verdict.Verdict {
		want := wanted(r)
		switch want {
		case "closed":
			want = "open"
		case "open":
			want = "closed"
		}
		v := judge.Switch(judge.SwitchIn{Path: judge.Switched, Name: "monitor-switch", Ohms: c.value(r), Want: want})
		v.Fact = nil // it lies beside the circuit
		switch {
		case want == "" && v.Word == verdict.CannotTell:
			v.Text += ": open with the door shut, closed with it open; write closed or open of the door behind it"
		case want == "open" && v.Word == verdict.Failed:
			v.Fact = []string{"monitor-closed"}
		case want == "open" && v.Word == verdict.Sound:
			v.Fact = []string{"monitor-opens"}
		}
		return v
	})
}

func judgePTC(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	if c.appliance().Unsealed && c.plateText("", "start") != discDevice {
		return judge.NotHere(name, "no PTC starts a motor here; of one in a lock or a heater its sheet gives the ohms", c.value(r))
	}
	in := judge.PTCIn{Name: name, Ohms: c.value(r), Volts: c.ratedVolts()}
	switch {
	case r.cond.is("hot") || r.cond.is("run"):
		in.State = judge.Hot
	case r.cond.is("cold"):
		in.State = judge.Cold
	}
	return judge.PTC(in)
}

// plainRelay judges a relay that starts no compressor: a coil, or a contact
// that is closed when the coil is fed or when it is not.
func plainRelay(c *Call, name string, r *reading) verdict.Verdict {
	name = strings.TrimPrefix(name, "relay")
	name = strings.Trim(strings.TrimPrefix(strings.TrimPrefix(name, "-contact"), "-coil"), "-")
	if relayPart(r) == judge.Coil {
		return judge.RelayCoil(name, c.value(r))
	}
	return judge.Switch(judge.SwitchIn{Path: judge.Relay, Name: name, Ohms: c.value(r), Want: wanted(r)})
}

// wanted is how a contact should be by the condition typed.
func wanted(r *reading) string {
	switch {
	case r.cond.is("open"):
		return "open"
	case r.cond.is("closed"):
		return "closed"
	}
	return ""
}

func judgePotential(c *Call, name string, rs []*reading, before int) verdict.Verdict {
	all := c.relayValues("potential", name, before)
	if all[judge.Coil] != nil && all[judge.Contact] != nil {
		if !strings.EqualFold(all[judge.Coil].a, name) {
			return verdict.Verdict{}
		}
		return judge.PotentialRelayWhole("", c.value(all[judge.Coil]), c.value(all[judge.Contact]))
	}
	r := latest(rs)
	return judge.PotentialRelay(judge.RelayIn{Part: relayPart(r), Ohms: c.value(r)})
}

func judgeOverload(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	in := judge.OverloadIn{Name: name, Ohms: c.value(r)}
	if r.cond.is("cold") || r.cond.hasAt && r.cond.at < measure.CoolBelow {
		in.State = judge.Cold
	} else if r.cond.is("hot") || r.cond.hasAt {
		in.State = judge.Hot
	}
	return judge.Overload(in)
}

func judgeHeater(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	watts, whole := c.heaterWatts(name)
	in := judge.HeaterIn{Name: name, Ohms: c.value(r), Watts: watts, Whole: whole,
		Hot: r.cond.is("hot") || r.cond.is("run"), Series: judge.Alone}
	in.Low, in.Volts = c.heaterVolts()
	if p, ok := c.plateAt("", "ohms", name); ok {
		in.Tolerance = p.tol
	}
	if strings.Contains(name, "circuit") {
		in.Series = judge.WithThermostat
	}
	if among([]string{"heater", "element"}, name) || twinOf(name) != "" {
		in.Coils = coilsOf(strings.ToLower(c.last("unit")))
	}
	return judge.Heater(in)
}

// sameHeater takes bake and bake-element for one.
func sameHeater(a, b string) bool {
	return strings.EqualFold(heaterName.Replace(a), heaterName.Replace(b))
}

var heaterName = strings.NewReplacer("-element", "", "-heater", "", "element", "heater")

// coilsOf is how many coils the watts of an appliance's plate may be of: two in some
// dryers, up to four in a furnace (common practice).
func coilsOf(unit string) int {
	switch {
	case strings.Contains(unit, "dryer"):
		return 2
	case strings.Contains(unit, "furnace"), strings.Contains(unit, "air handler"):
		return 4
	}
	return 1
}

// judgePath judges a contact or conductor. What it should be is the condition
// typed, closed or open; a cord, a fuse and a limit should be closed.
//
//go:noinline
func judgePath(path judge.Path) func(*Call, string, []*reading, int) verdict.Verdict {
	one := func(c *Call, name string, r *reading) verdict.Verdict {
		in := judge.SwitchIn{Path: path, Ohms: c.value(r)}
		if name != strings.ReplaceAll(string(path), " ", "-") {
			in.Name = name
		}
		hot, closed, acted := r.cond.is("hot"), r.cond.is("closed"), false
		if path == judge.Draft && !c.burns() {
			in.Path = judge.Switched // of a washer
		}
		switch {
		case r.cond.is("open"):
			in.Want = "open"
		case path == judge.Flame && !closed && (hot || r.cond.is("run") || r.cond.hasAt && r.cond.at > flameHot):
			if r.over { // else it may have cooled and closed again
				in.Want = "open"
			}
		case path == judge.Thermostat && !closed && c.pastItsMark(r):
			in.Want = "open"
		case path == judge.Limit && hot && !closed:
			// A limit that has just acted is open; it is read again when cool.
			if acted = among(heatLost, c.complaint()); acted {
				in.Want = "closed"
			}
		case path == judge.Limit && r.over && c.maybeDefrost(canonical(name), r):
			// In a machine that cools the limit may be the one that is open when warm.
		case closed || path == judge.Cord || path == judge.Fuse || path == judge.Limit || path == judge.Flame, in.Path == judge.Draft && r.cond.is("run"):
			in.Want = "closed"
		}
		if v := in.Ohms; path == judge.Switched && isLock(name) && !v.Over && v.Lo > lockCoil {
			return judge.NotHere(name, r.shown()+" is the coil or PTC of the lock, whose sheet gives it; its contact is read as door-switch", v)
		}
		out := judge.Switch(in)
		if acted && out.Word == verdict.Failed {
			out.Word, out.Text = verdict.Suspect, hotLimit
		}
		if path == judge.Switched && in.Want == "open" && out.Word == verdict.Failed && c.isInterlock(strings.ToLower(name)) {
			out.Caution = append(out.Caution, c.danger(stuckDoor).caution)
		}
		if r.over && path == judge.Limit && strings.Contains(name, "roll") {
			out.Also = append(out.Also, rolledOut)
		}
		if out.Word == verdict.Failed && path == judge.Switched && strings.Contains(name, "door") && cools(c.last("unit")) {
			return judge.NotHere(out.Subject, out.Text+" for a fan; a lamp's is open with the door shut: see what it feeds", in.Ohms)
		}
		return out
	}
	return func(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
		if path != judge.Switched {
			return one(c, name, latest(rs))
		}
		return inBoth(rs, func(r *reading) verdict.Verdict { return one(c, name, r) })
	}
}

// inBoth judges a contact by the last reading in each of its two states: what it fails
// in one stands, whatever it does in the other.
func inBoth(rs []*reading, one func(*reading) verdict.Verdict) verdict.Verdict {
	now := latest(rs)
	v, state := one(now), wanted(now)
	for i := len(rs) - 2; i >= 0 && state != ""; i-- {
		if s := wanted(rs[i]); s == "" || s == state {
			continue
		}
		w := one(rs[i])
		if w.Word == verdict.Failed && v.Word != verdict.Failed {
			v, w = w, v
			v.Text += atEntry(rs[i].entry)
		}
		v.Fact, v.Entries = append(v.Fact, w.Fact...), []int{rs[i].entry, now.entry}
		break
	}
	return v
}

// markMost is above what any thermostat of a dryer or of water opens at, in °C: 175 °F
// (common practice). An oven's goes far beyond.
const markMost = 79.4

// pastItsMark reports whether a thermostat was read in what is hotter than it is to let
// it become.
func (c *Call) pastItsMark(r *reading) bool {
	a := c.appliance()
	return a.Unsealed && !a.Elements && (r.cond.is("hot") && c.complaint() == "too-hot" || r.cond.hasAt && r.cond.at > markMost)
}

// heatLost are the complaints for which a limit that is open when hot is the reason
// looked for.
var heatLost = []string{said.GasQuits, said.FanOn}

// flameHot is from where on a switch that senses a flame's heat should have opened, in
// °C: far above any room, and below what the burner gives it (common practice).
const flameHot = 100

// hotLimit is said of a limit that was read open when hot: it may have had to open.
const hotLimit = "open when hot: it cuts the burner; find what heats it (vent, filter, blower), then read it again when cool"

// rolledOut is what an open rollout switch speaks of.
const rolledOut = "a rollout switch opens where flame leaves the burner: burner, flue and heat exchanger are looked at before it is reset (common practice)"

// lockCoil is what no contact of a lock reads and each coil or PTC of one does, in
// ohms (common practice).
const lockCoil = 20

func isLock(name string) bool {
	return strings.Contains(name, "lock") || strings.Contains(name, "latch")
}

// cools tells a refrigerator or freezer by what it is called: of its door switches
// one feeds a lamp and one a fan.
func cools(unit string) bool {
	unit = strings.ToLower(unit)
	return strings.Contains(unit, "fridge") || strings.Contains(unit, "refriger") || strings.Contains(unit, "freezer")
}

// judgePlug judges the ohms between the plug's supply pins.
func judgePlug(c *Call, _ string, rs []*reading, _ int) verdict.Verdict {
	return judge.Plug(c.value(latest(rs)))
}

func judgeEarth(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	r := latest(rs)
	v := judge.Earth(judge.EarthIn{Part: strings.TrimPrefix(strings.TrimPrefix(name, "earth"), "-"), Ohms: c.value(r), WithCord: true, TestAmps: r.cond.amps})
	if p := c.probes(); p > 0 && !r.over && !r.derived {
		v.Text = twoDigits(c.value(r).X) + " Ω, " + r.shown() + " less " + number(p) + " Ω of the leads: " + v.Text
	}
	return v
}

func judgeCapOhms(c *Call, name string, rs []*reading, _ int) verdict.Verdict {
	in := judge.CapOhmsIn{Name: name, Kind: judge.RunKind, Bleeder: c.plateNumber("", "bleeder", "ohm")}
	if strings.HasPrefix(strings.ToLower(name), "start") {
		in.Kind = judge.StartKind
	}
	for _, r := range rs {
		in.Readings = append(in.Readings, c.value(r))
	}
	return judge.CapOhms(in)
}

// ratedHertz is the plate's frequency of the machine at hand, else of any.
func (c *Call) ratedHertz() float64 {
	if v := c.plateNumber(c.machineAtHand(), "hz", "Hz"); v > 0 {
		return v
	}
	return c.plateNumber("", "hz", "Hz")
}

// voltsOf is the plate's volts of a machine, else of any.
func (c *Call) voltsOf(of string) float64 {
	if v := c.plateNumber(of, "volts", "V"); v > 0 {
		return v
	}
	return c.plateNumber("", "volts", "V")
}

// ratedVolts is the plate's volts of the main machine, else of any.
func (c *Call) ratedVolts() float64 { return c.voltsOf(c.machineAtHand()) }
