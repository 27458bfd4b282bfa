package call

import (
	"strings"
	"testing"
)

// What one line of work puts right, and what it leaves or undoes: the last state that is
// told counts, and one thing removed clears one thing (common practice).
func TestClearedByItsOwnWork(t *testing.T) {
	for _, x := range []struct {
		unit, told string // lines parted by |
		then       string // lines parted by |, each sequence by ||
		gone       bool
	}{
		// Two are bridged: a bare bridge off beside a new part is that part's.
		{"dryer", "saw thermal fuse bypassed|saw belt switch jumpered", "did new thermal fuse fitted, jumper out||did jumper out, new thermal fuse in||did replaced thermal fuse and took jumper off||did new belt switch, bridge off", false},
		{"dryer", "saw thermal fuse and high limit both jumped", "did new thermal fuse in, jumper off", false},
		{"dryer", "saw thermal fuse bypassed|saw belt switch jumpered", "did new thermal fuse fitted, jumper out|did jumper off||did new thermal fuse fitted, jumpers out||did jumper out, new thermal fuse in|did new belt switch, jumper off", true},
		{"dryer", "saw thermal fuse bypassed", "did new fuse in, jumper out||did jumper out, new motor", true},
		// On again, whatever the verb.
		{"washer", "did bridged lid switch", "did bridge out, then back in||did bypass out, put it in again||did bridge off, bridge over it again||did jumper off, tripped, clipped it back across||did bridge out, lid switch in, bridge back on", false},
		{"washer", "did bridged lid switch", "did bridge out, lid switch back in circuit||did bridge out, back in circuit||did bridge out n lid switch back on||did bridge off, told them never to put the bridge back on", true},
		{"dryer", "saw thermal fuse jumped", "did new thermal fuse blew, clip back in||did replaced thermal fuse, popped twice so wire back across it||did new thermal fuse, tripped, wire back on||did new thermal fuse, bad, jumped it over||did new thermal fuse, bad, wires back togther", false},
		{"dryer", "saw thermal fuse jumped", "did jumper off, wires back on the fuse||did new thermal fuse, wires back on", true},
		{"central air conditioner", "did left disconnect cover off", "did put cover back, fell off again||did cover back on then off again, wont fit||did cover on, came off, left it off", false},
		{"central air conditioner", "did left disconnect cover off", "did cover back on||did put cover back, fell off, put it back on w screws", true},
		{"electric water heater", "note tpr capped off", "did cap off n back on, dripped too much||did cap off, back on||did plug off and back on", false},
		{"electric water heater", "note tpr capped off", "did cap off, new tpr, piped to floor||did cap off", true},
		// What was only moved.
		{"refrigerator", "saw ext lead hot under carpet", "did ext lead removed from carpet n ran under door||did lead removed, laid along the wall||did ext cord out from under rug, now behind the sofa||did moved the lead to the side", false},
		{"refrigerator", "saw ext lead hot under carpet", "did binned the lead, plugged str8 in wall||did threw ext lead out||did lead removed", true},
		// Fuel gas at another appliance, and the machine's own.
		{"refrigerator", "saw r600a leak at evap|note gas smell at the range next to it", "did brazed the joint, no leak found||did brazed the joint, sniffer quiet||did new evap in, leak tested ok|saw no leak found||saw gas leak test good at the range", false},
		{"refrigerator", "saw r600a leak at evap|note gas smell at the range next to it", "did brazed the joint, no leak found|saw gas leak test good at the range", true},
		{"refrigerator", "note smell of gas from the stove", "did new drier, leak test good", false},
		{"refrigerator", "note smell of gas from the stove", "saw gas leak test good||note gas leak test good at the stove", true},
		{"gas range", "saw gas leak at union", "did new igniter, gas leak test good at igniter||did new flex, no bubbles at flex||did leak test good", false},
		{"gas range", "saw gas leak at union", "did remade union, no bubbles||did new union, soaped it, no bubbles", true},
		// A cracked exchanger is not mended by a reading or beside it.
		{"gas furnace", "saw crack in heat exchanger", "did cleaned burners, co 0 ppm, spill test good||did new burners, spill test good, co 0 ppm||did replaced inducer, co 0 ppm, no spill||did new heat exchanger gasket, co 0 ppm, spill test good||did quoted new heat exchanger, co 0 ppm, spill test good", false},
		{"gas furnace", "saw crack in heat exchanger", "did new heat exchanger in, co 0 at register||did heat exchanger replaced, spill test good, co 0 ppm||did replaced furnace, co 0 ppm, draft good", true},
		{"gas water heater", "saw flue off the draft hood", "did propped flue w a brick, co 0||did duct taped the flue up, co 0 ppm||did put flue back loose, co 0 ppm, draft good||did new burner, draft good", false},
		{"gas water heater", "saw flue off the draft hood", "did screwed flue back on, mirror test draws fine||did flue refitted 3 screws, draft test good", true},
		{"gas furnace", "note co 120ppm at register", "did cleaned burners n flue, co 0 ppm||did opened window, co 0 after 20 min||did new filter, co 0 ppm after 20 min", false},
		{"gas furnace", "note co 120ppm at register", "did cleaned burners n flue, co now 0 ppm after 20 min", true},
		// What is burnt is mended there, or in what feeds it.
		{"refrigerator", "saw plug melted round one prong", "did replaced evap fan motor|saw no smoke||did replaced evap fan motor, no smoke||did replaced evap fan motor, plugged in, no smoke||saw no smoke", false},
		{"refrigerator", "saw plug melted round one prong", "did new cord n plug||did new cord fitted, plug cool after 30 min run||did fitted new plug|saw no smoke", true},
		{"dryer", "saw scorch marks on terminal block", "did replaced heater element|saw no smoke", false},
		{"dryer", "saw scorch marks on terminal block", "did replaced terminal block|saw no smoke||did new terminal block and cord|saw no smoke", true},
		{"dryer", "saw smell of burning", "did no smell, left it so||did new heater, still smells||did new heater, no smoke yet, watch it||did new heater ordered, no smell now", false},
		{"dryer", "saw smell of burning", "did new heater, ran an hour no smoke no smell||did replaced motor, no smell after full cycle", true},
		// Drips on what is live; a grille; a wire rubbed through.
		{"dishwasher", "saw leak dripping on junction box", "did put a towel under it||did dried the box, box dry||did new hose, still drips, box dry", false},
		{"dishwasher", "saw leak dripping on junction box", "did new inlet hose, box dried out, no drips full cycle||did replaced hose, junction box dry, no leak now", true},
		{"central air conditioner", "note fan grille missing", "did new grille wrong size, left off||did grille ordered||did guard fitted, rubbed, took it off", false},
		{"central air conditioner", "note fan grille missing", "did fitted new grille||did grille back on||did new guard fitted tight", true},
	} {
		for _, then := range strings.Split(x.then, "||") {
			lines := append([]string{"unit " + x.unit, "fault does not work"}, strings.Split(x.told, "|")...)
			c := applyAll(t, append(lines, strings.Split(then, "|")...)...)
			if got := len(c.alarms())+len(c.bridged()) == 0; got != x.gone {
				t.Errorf("%s: %s, %s: gone %v, want %v: %v, %q", x.unit, x.told, then, got, x.gone, c.alarms(), c.bridged())
			}
		}
	}
}

// A test that a line of work tells of is of after that work: it contradicts nothing.
func TestWorkAndItsTestContradictNothing(t *testing.T) {
	for _, x := range []struct {
		lines string // parted by |
		is    bool
	}{
		{"unit gas range|fault no heat|saw bubbles at flex connector|did new flex, soaped it, no bubbles", false},
		{"unit gas range|fault no heat|note smelt gas behind it|did remade union, no bubbles", false},
		{"unit electric water heater|fault no hot water|note tpr capped off|did cap off, new tpr, piped to floor", false},
		{"unit gas range|fault no heat|saw gas leak at union|saw gas leak test good", true},
	} {
		c := applyAll(t, strings.Split(x.lines, "|")...)
		if got := len(c.weigh(1<<30).Contradictions) > 0; got != x.is {
			t.Errorf("%s: contradictions %v, want %v", x.lines, got, x.is)
		}
	}
}

// What is quoted is what was typed.
func TestGuardIsQuotedAsTyped(t *testing.T) {
	c := applyAll(t, "unit dryer", "fault no heat", "saw thermal fuse jumperd w a paper clip")
	if got := strings.Join(c.bridged(), "; "); !strings.Contains(got, "jumperd w a paper clip; when it is: did paper clip out") {
		t.Error(got)
	}
}
