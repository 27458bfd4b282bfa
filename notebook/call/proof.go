package call

import (
	"slices"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

var (
	proofEarth = proofWanted{"earth from plug pin to metal (ohm earth …)", func(c *Call, since int) shown {
		return read("ohm", "earth")(c, max(since, c.shutAt()))
	}}
	proofStart      = proofWanted{"the start seen (saw starts)", startSeen}
	proofSurge      = proofWanted{"start surge (amp comp … peak)", read("amp", "", "peak", "start")}
	proofAmps       = proofWanted{"running amps (amp comp … run)", machineRuns}
	proofAnyAmps    = proofWanted{"running amps (amp comp … run)", running}
	proofSag        = proofWanted{"volts while it starts (volt line … start)", read("volt", "", "start", "peak")}
	proofTemps      = proofWanted{"three timed temperatures that reach the target, or four that lead to it (temp PLACE …)", course(true)}
	proofNotFrozen  = proofWanted{"three or more timed temperatures, the last above freezing and at its target (temp PLACE …)", course(false)}
	proofHeaterAmps = proofWanted{"running amps (amp heater … run)", running}
	proofMotorAmps  = proofWanted{"running amps (amp motor … run)", running}
	proofHeat       = proofWanted{"the temperature it reaches (temp PLACE …)", heat}
	proofDry        = proofWanted{"that it stays dry (saw water line dry, saw drain clear)", seen("water-line-dry", "drain-clear", "hose-clear", "pan-sound", "level", "flange-dry", "joints-dry", "body-dry", "relief-shut", "tank-dry", "gear-dry")}
	proofLegs       = proofWanted{"volts of the three legs at the machine under load (volt T1 T2 … run, T2 T3 …, T1 T3 …)", whole((*Call).atLegs)}
	proofNewHeater  = proofWanted{"the new heater to its sheath, before power (ohm heater case …)", newHeater}
	proofNewPins    = proofWanted{"pins of the new machine to case, before power (ohm A case …)", newPins}
)

// legsAmps are those of a machine on three phases, leg by leg.
const legsAmps = "running amps (amp L1 … run, L2 … run, L3 … run)"

// proofs lists what proves a repair, by complaint; "" is for all others.
var proofs = []struct {
	complaint string
	points    []*proofWanted
}{
	{"no-start", []*proofWanted{&proofEarth, &proofStart, &proofSurge, &proofAmps, &proofSag, &proofTemps}},
	{"hums-trips", []*proofWanted{&proofEarth, &proofStart, &proofSurge, &proofAmps, &proofSag, &proofTemps}},
	{"no-cool", []*proofWanted{&proofEarth, &proofAmps, &proofTemps}},
	{"fridge-warm", []*proofWanted{&proofEarth, &proofAmps, &proofTemps}},
	{"runs-always", []*proofWanted{&proofEarth, &proofAmps, &proofTemps}},
	{"too-cold", []*proofWanted{&proofEarth, &proofNotFrozen}},
	{"no-heat", []*proofWanted{&proofEarth, &proofHeaterAmps, &proofHeat}},
	{said.NoWaves, []*proofWanted{&proofEarth, &proofHeat}},
	{"leaks-ices", []*proofWanted{&proofEarth, &proofDry}},
	{"leaks-water", []*proofWanted{&proofEarth, &proofDry}},
	{"leaks-disposer", []*proofWanted{&proofEarth, &proofDry}},
	{"leaks-tank", []*proofWanted{&proofDry}},
	{"leaks-condensate", []*proofWanted{&proofEarth, &proofDry}},
	{"leaks-oil", []*proofWanted{&proofEarth, &proofDry}},
	{"smelly-water", []*proofWanted{&proofEarth, &proofGone}},
	{"motor-dead", []*proofWanted{&proofEarth, &proofStart, &proofMotorAmps}},
	{said.NoDrain, []*proofWanted{&proofEarth, &proofDrains, &proofPump}},
	{said.NoDry, []*proofWanted{&proofEarth, &proofAmps, &proofCoil}},
	{said.ACWarm, []*proofWanted{&proofEarth, &proofAmps, &proofAir}},
	{said.ACDead, []*proofWanted{&proofEarth, &proofAmps, &proofAir}},
	{said.NoHeatPump, []*proofWanted{&proofEarth, &proofAmps, &proofRise}},
	{said.ThreePhase, []*proofWanted{&proofEarth, &proofStart, &proofAmps, &proofLegs}},
	{"gas-no-heat", []*proofWanted{&proofEarth, &proofHeat}},
	{"furnace-no-heat", []*proofWanted{&proofEarth, &proofHeat}},
	{"pilot-out", []*proofWanted{&proofEarth, &proofHeat}},
	{"stops-early", []*proofWanted{&proofEarth, &proofMotorAmps}},
	{"stops-mid", []*proofWanted{&proofEarth, &proofMotorAmps}},
	{"no-spin", []*proofWanted{&proofEarth, &proofMotorAmps}},
	{"no-tumble", []*proofWanted{&proofEarth, &proofMotorAmps}},
	{"shocks", []*proofWanted{&proofEarth}},
	{"no-zone", []*proofWanted{&proofEarth, &proofCooks}},
	{"no-blower", []*proofWanted{&proofEarth, &proofAnyAmps}},
	{"blows-fuse", []*proofWanted{&proofEarth}},
	{"", []*proofWanted{&proofEarth, &proofAnyAmps}},
}

// proofsOf are the points that prove a repair for a complaint.
//
//go:noinline
func proofsOf(complaint string) ([]*proofWanted, bool) {
	for _, p := range proofs {
		if p.complaint == complaint {
			return p.points, true
		}
	}
	return nil, false
}

// seenProofs are the findings that prove a repair, by complaint, beside earth and
// what else the complaint has in proofs.
var seenProofs = []struct {
	complaint, what string
	codes           []string
}{
	{"no-spin", "the drum seen to turn (saw spins, or saw drum turns)", []string{"spins", "drum-turns"}},
	{"no-tumble", "the drum seen to turn (saw drum turns)", []string{"drum-turns"}},
	{"ac-drips", "that it stays dry (saw drain clear, or saw water line dry)", []string{"drain-clear", "water-line-dry"}},
	{"wont-run", "the start seen (saw starts)", []string{"starts-and-runs", "agitates", "drum-turns", "spins", "fills"}},
	{"door-locked", "the door seen to unlock (saw door unlocks)", []string{"door-unlocks"}},
	{"oven-locked", "the door seen to unlock (saw door unlocks)", []string{"door-unlocks"}},
	{"no-clean", "that it washes clean (saw washes clean)", []string{"cleans"}},
	{"no-fill", "that it fills to its level (saw fills)", []string{"fills"}},
	{"overfills", "that it fills to its level (saw fills)", []string{"fills"}},
	{"noisy", "the noise gone (saw runs quietly)", []string{"quiet-now"}},
	{"noisy-fan", "the noise gone (saw runs quietly)", []string{"quiet-now"}},
	{"noisy-cold", "the noise gone (saw runs quietly)", []string{"quiet-now"}},
	{"poor-ice", "ice made and dropped (saw makes ice)", []string{"makes-ice"}},
	{"no-ice", "ice made and dropped (saw makes ice)", []string{"makes-ice"}},
	{"never-ends", "the end of a cycle seen (saw cycles off)", []string{"cycles-off"}},
	{"no-blower", "the fan seen to run (saw blower runs)", []string{"blower-runs"}},
	{"pump-on", "the end of a cycle seen (saw cycles off)", []string{"cycles-off"}},
	{said.RunsOn, "the end of a cycle seen (saw cycles off)", []string{"cycles-off"}},
	{"stops-early", "the end of a cycle seen (saw cycles off)", []string{"cycles-off"}},
	{"stops-mid", "the end of a cycle seen (saw cycles off)", []string{"cycles-off"}},
	{"slow-dry", "that it dries (saw dries)", []string{"dries"}},
	{"gas-no-heat", proofFlame.what, []string{"flame-lights"}},
	{"furnace-no-heat", proofFlame.what, []string{"flame-lights"}},
	{"pilot-out", proofFlame.what, []string{"flame-lights"}},
	{said.ZoneCold, "the zone seen to grow warm (saw heats)", []string{"heats-up"}},
	{said.GasQuits, "that it keeps its heat (saw keeps heating, or saw dries)", []string{"heat-kept", "dries", "heat-right"}},
	{"draws-poorly", "that it draws (saw draws well)", []string{"draws-well"}},
	{"keeps-sparking", "that it sparks to light only (saw stops sparking)", []string{"spark-stops"}},
	{said.FanOn, "the blower seen to stop (saw cycles off)", []string{"cycles-off", "blower-lets-go"}},
	{"too-hot", "that it holds the temperature that is set (saw holds its temperature, or temp set … and three readings of it)", []string{"heat-right"}},
}

// heated is the temperature in °C from which an appliance that should heat
// can be said to: above what a room has, below what a dryer blows (common
// practice).
const heated = 50

// heatedWater is that of tap water, which no one sets as hot: 120 °F (49 °C) is
// the usual most against scalding (common practice).
const heatedWater = 40

// fillsHot is that hot water was seen to come in, or read.
func fillsHot(c *Call, since int) shown {
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry > since; i-- {
		c.spend(2)
		if f := c.findings[i]; f.code == "fills" && c.alive(f.entry) && said.Has(f.text, []string{"hot"}) {
			return shown{held: true, text: f.text + atEntry(f.entry)}
		}
	}
	return heat(c, since)
}

// proofList is what proves a repair of this call. An inverter starts its
// compressor softly: it has neither surge nor sag. An appliance without a
// compressor has its motor's amps and no cold. Where only fans were worked on,
// theirs are the amps that count, and each is seen to run; the machine that did
// not start is then proved by starting. A part that breaks a circuit is read
// again once it was replaced.
func (c *Call) proofList() []proofWanted {
	kind := c.kindFound()
	list, ok := proofsOf(kind)
	for _, p := range seenProofs {
		if p.complaint != c.complaint() {
			continue
		}
		if !ok {
			list, ok = []*proofWanted{&proofEarth}, true
		}
		held := seen(p.codes...)
		if p.complaint == "no-fill" && said.Has(c.last("fault"), []string{"hot"}) {
			p.what, held = "that it fills hot (saw fills hot, or temp water …)", fillsHot
		}
		if p.codes[0] == "heat-right" {
			if held = holdsHeat; c.openBurner() {
				p.what, held = "that its heat goes off as it is set (saw burner cycles)", seen("heat-stops", "heat-right")
			}
		}
		list = append(slices.Clone(list), &proofWanted{p.what, held})
	}
	if !ok {
		list, _ = proofsOf("")
	}
	if also, _ := proofsOf(c.complaint()); kind == said.ThreePhase && slices.Contains([]string{"no-cool", "runs-always", said.ACWarm, said.NoHeatPump}, c.complaint()) {
		list = slices.Clone(list) // what it was called for is proved too
		for _, p := range also {
			if !slices.Contains(list, p) {
				list = append(list, p)
			}
		}
	}
	list = c.fittedProved(c.alsoProved(list, kind != ""))
	of, inverter := c.mainMachine(), c.driven(c.mainMachine())
	fans, only := c.fansWorkedOn()
	dried, dries := c.dries()
	closed := c.closedUp()
	var out []proofWanted
	if kindOf(of) != winding.Fan && partOf(of) == nil && (of == defaultMachine && !c.appliance().Unsealed || c.machines[of] != nil) && c.renewedAt(of) > 0 {
		out = append(out, proofNewPins)
	}
	if c.heaterRenewed() > 0 {
		out = append(out, proofNewHeater)
	}
	for _, known := range list {
		p, has := *known, true
		if c.appliance().HighVolts {
			if p, has = inMicrowaves(p); !has {
				continue
			}
		}
		switch p.what {
		case proofEarth.what:
			if c.appliance().NoMains || closed {
				continue
			}
		case proofSurge.what, proofSag.what:
			if inverter || c.appliance().Unsealed || only || c.onlyWorkOn(cleaning) || c.onlyWorkOn(controls) {
				continue
			}
		case proofStart.what:
			if c.appliance().Fan() && !c.onThreePhases() {
				p.what = fanProofs[0].runs.what
			}
		case proofMotorAmps.what, proofPump.what:
			if c.besideMotor() {
				continue
			}
			if c.appliance().Fan() && !c.onThreePhases() {
				p = proofFan
			}
		case proofHeaterAmps.what, proofHeat.what:
			if c.surface() {
				if p.what == proofHeat.what {
					p = proofWarms
				} else {
					p = proofSurface
				}
			} else if w := &proofFed; c.onlyWorkOn(feeders) {
				if p.what == proofHeat.what {
					w = &proofWarms
				}
				p = *w
			}
		case proofTemps.what, proofCoil.what:
			if c.appliance().Unsealed || only && slices.ContainsFunc(list, func(o *proofWanted) bool { return o.what == proofStart.what }) {
				continue
			}
			if dries {
				p = dried
			}
		case proofAmps.what:
			if a := c.appliance(); only || closed || a.Oil || a.Gas && (a.Elements || a.Still) { // nothing draws any that only burns gas
				continue
			}
			switch {
			case c.appliance().Unsealed && c.appliance().Fan() && !c.onThreePhases():
				p = proofFan
			case c.appliance().Unsealed && c.appliance().Wired:
				p = proofHeaterAmps
			case c.appliance().Unsealed:
				p = proofMotorAmps
			}
		}
		if p.what == proofEarth.what && c.appliance().Plugless() {
			p.what = strings.Replace(p.what, "plug pin", "its earth terminal", 1)
		}
		p.what = strings.Replace(p.what, "PLACE", c.placesOfProof(), 1)
		if of != defaultMachine && partOf(of) == nil {
			p.what = strings.Replace(p.what, "amp motor", "amp "+of, 1)
			if c.complaint() == said.ThreePhase {
				p.what = strings.Replace(p.what, "amp comp", "amp "+of, 1)
			}
		}
		if c.onThreePhases() && among([]string{proofAmps.what, proofMotorAmps.what}, p.what) {
			p.what = legsAmps
		}
		out = append(out, p)
	}
	for _, f := range fans {
		if c.appliance().OneFan {
			f.runs.what, f.amps.what = fanProofs[0].runs.what, fanProofs[0].amps.what
		}
		out = append(out, f.runs, f.unread())
	}
	return slices.Concat(out, c.rereads(), c.tightProofs(), c.alarmProofs())
}

// proofPlaces names the place whose temperature proves a repair, by a word of
// the complaint or the unit; the first that fits counts.
var proofPlaces = []struct{ word, place string }{
	{"microwave", "water"}, {"dryer", "dryer"}, {"washer", "water"}, {"washing", "water"}, {"water heater", "water"},
	{"oven", "oven"}, {"range", "oven"}, {"cooker", "oven"}, {"bake", "oven"}, {"broil", "oven"}, {"hob", "burner"}, {"cooktop", "burner"}, {"stove", "oven"},
	{"furnace", "supply"}, {"boiler", "water"},
	{"freezer", "freezer"}, {"fridge", "fridge"}, {"refrig", "fridge"}, {"fresh food", "fridge"},
	{"walk-in", "box"}, {"walk in", "box"}, {"display", caseName}, {"merchand", caseName}, {"cooler", "cooler"},
}

func (c *Call) placeOfProof() string {
	complaint := c.complaint()
	if complaint == "too-cold" {
		return "fridge"
	}
	for i, text := range []string{said.Troubled(c.last("fault")), c.last("unit")} {
		if read := c.onlySpace(); i > 0 && read != "" {
			return read
		}
		for _, p := range proofPlaces {
			if strings.Contains(strings.ToLower(text), p.word) {
				return p.place
			}
		}
	}
	if complaint == "no-heat" {
		return "oven"
	}
	return "freezer"
}

// placesOfProof is that place, or both where both are complained of.
func (c *Call) placesOfProof() string {
	if c.complaint() != "too-cold" && len(c.ill()) > 1 {
		return "freezer …, fridge"
	}
	return c.placeOfProof()
}

// onlySpace is the one cold place whose temperature was read, "" when it is none
// or several.
func (c *Call) onlySpace() string {
	only := ""
	for _, r := range c.bySubjectKind["temp"] {
		c.spend(2)
		switch {
		case !c.alive(r.entry) || r.a == only:
		case only != "":
			return ""
		default:
			only = r.a
		}
	}
	return only
}

// energised are facts that only a machine under power can give; of one that
// must not be energised they are not wanted.
var energised = []string{"starts-and-runs", "amps-sound", "amps-agree", "breaker-holds", "cools-down", "heats-up"}

// proofMissing lists what is not proved since the last repair.
func (c *Call) proofMissing() []string {
	rep := c.repairs()
	if len(rep) == 0 {
		return nil
	}
	since := c.provedSince()
	if g := c.grounds(); g != "" {
		return []string{g + " replaced, or read again and sound; until then it must not be energised"}
	}
	var out []string
	if n := c.seenAgain(); n > 0 && c.lastOf(c.unsupplied, c.entry) == n {
		out = append(out, partAwaited+atEntry(n))
	} else if n > 0 {
		out = append(out, "that the complaint is gone: it was "+c.againBy(n)+" again, entry "+itoa(n)+" ("+c.goneBy(n)+")")
	}
	for _, j := range c.verdictsWith(inDoubt...) {
		out = append(out, "the insulation settled: "+j.verdict.Subject+" is "+string(j.verdict.Word)+" ("+entryList(j.verdict.Entries)+")")
	}
	first, told := len(out), ""
	for _, p := range c.proofList() {
		switch s := p.held(c, since); {
		case s.held:
		case s.text != "":
			out, told = append(out, p.what+": "+s.text), told+s.text+"; "
		default:
			out = append(out, p.what)
		}
	}
	if clash := c.wiresClash(); clash != "" {
		out = append(out, "the wiring settled: "+clash+" (saw wiring right, when it is as the part's diagram has it)")
	}
	for _, u := range c.toRead() {
		if u.feared {
			what, _, _ := strings.Cut(u.about.may, " or ")
			out = append(out, "an answer, for it may be "+what+": "+quoted(clip(u.text, 60))+atEntry(u.entry)+": "+u.about.answers)
		}
	}
	return slices.Insert(out, first, c.newBad(since, told)...)
}

// shutAt is the last entry by which what was open was only shut, 0 when none is: that
// wants the earth alone.
func (c *Call) shutAt() int {
	for i := len(c.works) - 1; i >= 0; i-- {
		c.spend(20)
		if w := &c.works[i]; w.kind == "did" && said.Has(w.text, []string{"back on"}) && said.Has(w.text, []string{"cover", "panel", "lid"}) && c.alive(w.entry) && said.Undone(w.text) {
			return w.entry
		}
	}
	return 0
}

// heldLong is how long after the work a machine still runs when the breaker
// that tripped after a while is said to hold (common practice).
const heldLong = 30 * time.Minute

// heldSince reports whether the breaker was shown to hold since the last repair:
// by sound running amps, a while after it where it had tripped late.
func (c *Call) heldSince() bool {
	since := c.since()
	if since == 0 || c.seenAgain() > 0 || !running(c, since).held {
		return false
	}
	late := slices.ContainsFunc(c.seenAt["trips-later"], c.alive) || among(c.appliance().Heard, "trips-later")
	last := c.lastAfter(since, func(r *reading) bool { return r.quality.word == "amp" || r.quality.word == "temp" })
	return !late || last.at.Sub(c.entries[since-1].At) >= heldLong
}

// since is the entry from which temperatures belong together: the last
// repair, or the beginning.
//
//go:noinline
func (c *Call) since() int {
	if rep := c.repairs(); len(rep) > 0 {
		return rep[len(rep)-1]
	}
	return 0
}

// provedSince is the entry from which on readings and findings prove the last
// work: that itself, or, where it takes a weak supply away, the test without it
// which came before.
func (c *Call) provedSince() int {
	since := c.since()
	cut := c.secondSupply(since)
	c.spend(len(c.works))
	if cut > 0 && phase(c.repairs(), cut) == phase(c.repairs(), since) {
		if i := slices.IndexFunc(c.works, func(w work) bool { return w.entry == since }); i >= 0 && cause.Mends("supply-weak", c.works[i].text) {
			return cut
		}
	}
	return since
}
