package call

import (
	"strings"

	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// onDrive is the type of a machine that a drive feeds, onDrives are its pins.
const onDrive = "inverter"

var onDrives = []string{"U", "V", "W"}

// typeOf is the type that the plate gives a machine; a compressor without one, and
// without a capacitor, is on a drive where the appliance is called so.
func (c *Call) typeOf(of string) string {
	t := c.plateText(of, "type")
	if a := c.appliance(); t == "" && a.Inverter && !a.Unsealed && kindOf(of) == winding.Compressor && !c.marked(false) {
		return onDrive
	}
	return t
}

// driven reports whether a machine is fed by a drive: by its plate, or by three
// like windings, its own or those of the one that it replaced.
func (c *Call) driven(of string) bool {
	if c.typeOf(of) == onDrive {
		return true
	}
	m := c.machines[of]
	if m == nil || c.onThreePhases() {
		return false
	}
	at := c.renewedAt(of)
	return m.result.State == winding.EqualWindings || at > 0 && c.inferWindings(of, at).State == winding.EqualWindings
}

// partLoad takes no small difference of the air for a fault where a drive may turn the
// compressor slowly and nobody complains of too little (common practice).
func (c *Call) partLoad(v *verdict.Verdict) {
	if k := c.complaint(); k == said.ACWarm || k == said.NoHeatPump || v.Word != verdict.Suspect || len(v.Fact) != 1 || !among([]string{"split-small", "rise-small"}, v.Fact[0]) || v.Text[0] == '-' || c.typeOf(c.mainMachine()) != onDrive {
		return
	}
	v.Word, v.Fact = verdict.CannotTell, nil
	v.Text, _, _ = strings.Cut(v.Text, ":")
	v.Text += ": usual while a drive turns it slowly; at full load it tells"
}
