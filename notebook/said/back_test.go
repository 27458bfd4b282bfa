package said

import (
	"strings"
	"testing"
)

// guardsOf reads lines as a call does: one that begins with note is no work.
func guardsOf(lines ...string) []Guard {
	var list []Guard
	for i, line := range lines {
		text, note := strings.CutPrefix(line, "note ")
		list = append(list, Guards(i+1, text, !note, false)...)
	}
	return Out(list)
}

// A device counts as back when it is named, or its bridge is off, or a new one is in
// its place; never by another device, nor by what is yet to be done. The ways in
// which this is said are common practice.
func TestPutBack(t *testing.T) {
	for _, x := range []struct {
		out  string
		back string // parted by |
		left bool   // it is out still
	}{
		{"jumpered thermal fuse to test", "removed the jumper|removed jumper|jumper off|jumper removed|jumper is off|jumper was removed|jumper has been taken off|took jumper off again|took the jumper wire off|pulled the jumper|jumper wire removed|lifted the jumper" +
			"|took off the jumper|jumper off thermal fuse|removed jumper from thermal fuse|jumper out|unjumpered|bypass removed|bypass off|removed the bypass|removed thermal fuse jumper|remove jumper|take jumper off|got rid of the jumper" +
			"|note jumper removed|note jumper off|note removed jumper|note took the jumper off|jumper removed from the thermal fuse|removed test lead|removed test jumper|jumper came off|jumper no longer on|jumper taken off|pulled jumper wire|jumper gone|took jumper back off|clip lead off|jumpers off", false},
		{"jumpered thermal fuse to test", "replaced thermal fuse|replaced the thermal fuse|thermal fuse replaced|new thermal fuse fitted|fitted new thermal fuse|fitted a new thermal fuse|installed thermal fuse|thermal fuse was replaced|new thermal fuse|replaced blown thermal fuse|swapped thermal fuse" +
			"|replaced motor and thermal fuse|replaced thermal fuse and limit|replaced thermal fuse with new|replaced thermal fuse, tested ok|replace thermal fuse|thermal fuse renewed|replaced the jumper with a new thermal fuse|replaced jumper by fuse|removed jumper and fitted new fuse", false},
		{"jumpered thermal fuse to test", "put the fuse back|put fuse back|put back the thermal fuse|fuse back|fuse back in|fuse is back in circuit|refitted thermal fuse|thermal fuse refitted|reconnected thermal fuse|thermal fuse reconnected|wired thermal fuse in again|wired the fuse back in|thermal fuse wired in again" +
			"|thermal fuse in circuit again|reinstalled fuse|thermal fuse was put back|fuse has been reconnected|put the old fuse back in|connected fuse again|old fuse back in|reconnected the fuse wires|wires back on thermal fuse|note fuse back in circuit|fuse refitted|reconnect fuse", false},
		{"jumpered thermal fuse to test", "replaced motor|replaced line fuse|replaced fuse|replaced door switch|refitted door switch|limit back|line fuse back in|put the panel back|put the belt back|power restored|restored power|replaced fuse holder|replaced thermal fuse bracket|removed the belt" +
			"|removed jumper from door switch|removed the jumper from the board|took the tape off|did not remove the jumper|jumper not removed|jumper still on|forgot to remove jumper|jumper to be removed|will remove jumper|need to remove the jumper|jumper must come off|ordered thermal fuse|thermal fuse to be replaced" +
			"|thermal fuse not back in|fuse not put back|tested thermal fuse good|checked thermal fuse|customer to replace thermal fuse|replaced belt on the thermal fuse side|replaced the bypass valve|note remove jumper|note replace thermal fuse|note customer replaced thermal fuse last year|put the fuse cover back|turned power back on|replaced thermal fuse wires|reset the breaker" +
			"|removed the screws|jumper off when part arrives|will take the jumper off|unless jumper removed|removed limit put jumper in|ran with jumper on power off|replaced jumper|replaced jumper wire|put the jumper back on|jumper moved to limit|jumper left in|jumper off tomorrow|customer wants jumper off|reconnected motor at the fuse|removed blown fuse|took fuse out|fuse reads closed|new thermal fuse ordered|got thermal fuse|recommend new thermal fuse|thermal fuse needs replacing|breaker back on|back in service|fuse replaced|new fuse", true},
		{"jumpered thermal fuse to test", "replaced thermal fuse with a jumper|replaced thermal fuse, left jumper on|replaced thermal fuse with wire|replaced thermal fuse but jumper still on|jumpered thermal fuse again", true},
		{"bypassed the high limit", "jumper off after customer gets part|jumper off once new switch is here|jumper off after lunch|put high limit back on order|high limit back ordered|high limit back in truck|high limit back in the van, none in stock|jumper off?|high limit back?|jumper off as soon as it is delivered", true},
		{"bypassed the high limit", "jumper off after test|took the jumper off after the test|high limit back in, truck restocked", false},
		{"bridged door switch", "did refitted door switch|refitted door switch|replaced door switch|door switch replaced|put the door switch back|door switch back in|bridge off|bridge removed|removed the bridge|jumper off|fitted new door switch|put the switch back|new door switch in", false},
		{"bridged door switch", "replaced lid switch|refitted lid switch|replaced switch|replaced light switch|replaced door|replaced door gasket|refitted the door|replaced door latch|door switch tested ok|replaced door switch bracket", true},
		{"wedged the door switch", "took the wedge out|wedge out|removed wedge|tape off|replaced door switch|freed it, door switch back", false},
		{"taped lid switch shut", "tape off|removed the tape|took the tape off the lid switch|untaped the lid switch|tape removed|replaced lid switch", false},
		{"taped lid switch shut", "jumper off|removed the jumper|replaced lid", true},
		{"foil in the fuse", "foil out|removed foil|took the foil out|fitted new fuse|foil removed, new fuse in|removed the foil and fitted a fuse", false},
		{"bypassed the high limit", "replaced high limit|replaced limit|replaced hi limit|replaced hi-limit thermostat|limit back in circuit|bypass out|removed bypass|replaced high-limit switch|reconnected limit", false},
		{"bypassed the high limit", "replaced thermostat|replaced rollout limit|low limit back|replaced fuse", true},
		{"bypassed overload to test", "replaced start device and overload|replaced relay and overload|new overload fitted|overload back|overload protector refitted|replaced compressor overload", false},
		{"bypassed overload to test", "replaced start relay|replaced compressor|ran, cools", true},
		{"disconnected ground wire", "reconnected ground wire|ground wire back on|ground reconnected|reconnected earth|earth connected|ground wire is connected again|ground back", false},
		{"disconnected ground wire", "replaced the plug|reconnected the wires|reconnected motor|ground checked", true},
		{"cut ground pin off plug", "replaced plug|replaced the cord|new plug fitted|fitted new cord|new cord", false},
		{"used cheater cord", "cheater off|took the cheater off|adapter off|removed the adapter", false},
		{"left the terminal cover off", "cover back on|refitted terminal cover|terminal cover on|put the cover back|terminal cover refitted|cover on", false},
		{"replaced 15A fuse with 20A", "replaced 20A fuse with 15A|fitted correct fuse|fitted 15A fuse|put the 15A fuse back", false},
		{"jumpered thermal fuse and high limit", "removed jumpers|both jumpers off|removed jumper from fuse and limit|replaced thermal fuse and high limit", false},
		{"jumpered thermal fuse and high limit", "replaced thermal fuse|replaced high limit|removed jumper from thermal fuse|fuse back", true},
		{"jumpered thermal fuse, high limit and door switch", "replaced thermal fuse, high limit|limit back, fuse back", true},
		{"found thermal fuse jumpered by others, replaced", "", false},
		{"found a jumper on the thermal fuse, removed it, fitted new fuse", "", false},
		{"found a jumper on the thermal fuse, took it off", "", false},
		{"bypassed the thermostat R to Y to test, wire removed after", "", false},
		{"found a jumper on the thermal fuse, left it", "", true},
		{"bypassed the limit, removed it", "", true},
		{"jumpered the thermal fuse, took it out", "", true},
		{"put a wire across the limit, removed it", "", false},
		{"jumpered thermal fuse, removed the panel", "", true},
		{"ran it with the overload shorted", "overload back|replaced overload|removed the jumper", false},
		{"pinned the contactor in with a stick", "stick out|removed the stick|contactor back|replaced contactor", false},
		{"lid lock held shut with a magnet", "removed the magnet|magnet off|lid lock back", false},
		{"thermal fuse was bridged, fitted new one", "", false},
		{"jumped thermal fuse to test, motor bad, replaced it", "", true},
		{"jumped thermal fuse to test, replaced motor", "", true},
		{"bypassed limit, reconnected it", "", false},
		{"jumpered the thermal fuse", "original wiring restored|restored the original wiring|wiring restored|wires put back as they were|factory wiring back|wired it back as found", false},
		{"jumpered the thermal fuse", "restored the wiring diagram|original wiring not restored|will restore original wiring|checked the original wiring|let go|released it|restored the clock", true},
		{"taped lid switch shut", "original wiring restored|let go of the lid switch|released the lid lock", true},
		{"left overload off", "original wiring restored", true},
		{"fed the heater direct", "original wiring restored|jumper off", false},
		{"held the contactor in to test", "let go of the contactor|let go|let it go|released it|released the contactor|contactor back", false},
		{"held the contactor in to test", "let go of the drum|jumper off|did not let go|released the belt", true},
		{"held the contactor in with tape", "let go|released it", true},
		{"held the contactor in to test, let go", "", false},
		{"held the contactor in to test, released it", "", false},
		{"held the contactor in, taped it, let go", "", true},
		{"held door switch closed, taped it", "", true},
		{"held door switch closed and taped it", "", true},
		{"held door switch closed and tested", "", false},
		{"taped the lid switch to test, took it off again", "", false},
		{"jumped the fuse to test, taken off", "", false},
		{"jumped the fuse to test, took it off again", "", false},
		{"jumped the fuse, taken off", "", true},
		{"jumped the fuse to test, took the panel off", "", true},
		{"bypassed the door with a magnet for test, taken off", "", false},
		{"clamped the flame safety valve open", "tape off|clamp off|removed the clamp|took the clamp off", false},
		{"rubber band round the door latch", "removed the rubber band|band off|took band off|door latch back", false},
		{"cut off lcdi plug", "fitted new lcdi plug|lcdi plug replaced|lcdi back", false},
		{"cut off lcdi plug", "fitted plain plug|fitted new plug|new cord|replaced fuse", true},
		{"jumpered thermal fuse and high limit", "put everything back except the thermal fuse|reconnected all but the thermal fuse|put back all save the high limit|put back all bar the high limit|fitted everything again apart from the high limit|put back everything other than the fuse|all jumpers off but the high limit|all jumpers off except one|put all back w/o the fuse", true},
		{"taped door switch", "put the door back on without the switch|door back on without its switch|put the door back minus the switch|put it back without the switch", true},
		{"taped door switch", "put the door switch back without the tape", false},
		{"jumped out thermal fuse", "removed the jumper and put a longer one in|removed the jumper, put a longer one in|took the old jumper off and made a better one|swapped jumper for a fatter wire|replaced the jumper with a new one|replaced jumper with a wire|jumper off, wire nut on|removed the jumper and fitted a new one", true},
		{"jumped out thermal fuse", "removed the jumper and fitted a new fuse|replaced the jumper with a good 15 A fuse|removed jumper, put the wires back|removed the jumper and fixed the cover with a clip|jumper off and a bit of lint cleaned|took the jumper off the fuse and fitted a new one|removed the jumper and used the proper fuse", false},
		{"breaker too big for the wire, 50 A on 10 gauge", "new breaker 60 A|swapped the breaker for a 60|replaced breaker same size|jumper off|replaced breaker|breaker back on|new breaker 40 A", true},
		{"breaker too big for the wire, 50 A on 10 gauge", "electrician changed the breaker to 30 A|replaced breaker with the correct one|fitted 30 A breaker|fitted correct breaker", false},
		{"upped the fuses from 30 to 60", "fitted 60 A fuses|replaced fuses|fitted 40 A fuses", true},
		{"upped the fuses from 30 to 60", "fitted 30 A fuses|fitted correct fuse", false},
		{"put in a bigger breaker", "fitted breaker 30 A|replaced breaker", true},
		{"put in a bigger breaker", "fitted the right breaker", false},
		{"lid switch bypassed with a jumper", "new lid switch in and the jumper thrown away|jumper binned", false},
		{"ECO bypassed", "took my wire off the ECO and fitted a new one", false},
		{"low water cutoff jumpered", "low water cutoff back in circuit|lwco back in circuit, tested", false},
		{"low water cutoff jumpered", "water back on|low water cutoff not back in circuit|lwco should be put back in circuit", true},
		{"hi-limit was bypassed by the last man, wired back in as made", "", false},
		{"bypassed hi-limit for a minute to prove it, back in circuit now", "", false},
		{"bypassed hi-limit for a minute, back in bed", "", true},
		{"float taken out, cleaned and put back", "", false},
		{"float taken out, cleaned, drain put back", "", true},
		{"limit taken out, motor bad, replaced it", "", true},
		{"limit jumped r to w", "", true},
		{"removed jumper to test then reinstalled", "", true},
		{"pulled jumper, put jumper back", "", true},
		{"took jumper off then put her back on", "", true},
		{"took jumper off limit, it tripped, stuck jumper back on", "jumper off|removed the jumper", false},
		{"took jumper off, put limit back", "", false},
		{"took jumper off, reinstalled the limit", "", false},
		{"took jumper off, put it back in circuit", "", false},
		{"hi limit jumped", "tried to get jumper off|nearly had jumper off, screw stripped|half got jumper off|almost got jumper off|started taking jumper off|removed jumper temporarily|jumper off, limit not in yet|pulled jumper, soldered the leads|new limit in, wires still nutted|limit back in well, leads capped|limit back but not wired|new limit in, leads not landed|new limit mounted, wiring by elec next wk|limit back on, no power to it|new limit in, no wires to it|limit back in my pocket|limit back in the drawer|new limit in the mail|new limit in, electrician to wire|new limit in, one wire off|limit back in, bypass plug still there|limit replaced w a pipe nipple", true},
		{"hi limit jumped", "new limit in, wires crimped on|new limit in, leads landed|limit wired back in, still 240 V|jumper off, limit screwed on, wires on|replaced limit w a new one, tape on the harness", false},
		{"hi limit jumped", "jumper off, back on after test|jumper off, wont heat, put it back|took jumper out, tripped, rejumped it|pulled jumper, no heat so stuck it back in|jumper off, boss put it back|jumper off, put back till fri|took jumper out n put it back|jumper off, put jumper back", true},
		{"hi limit jumped", "jumper off, put limit back in circuit|jumper off, limit back on|jumper off, put it back in circuit|jumper off, limit put back and tested|took jumper off, wires back on limit", false},
		{"door switch taped", "tape off, holding w magnet instead|pulled tape, used zip tie|tape off, magnet on", true},
		{"hi limit jumped", "jumper off, tied wires together|jumper off, nutted leads together|jumper off, wires under one screw|jumper off, leads wirenutted|jumper off, nail in", true},
		{"fuse wrapped in foil", "foil out, copper in|foil out, nail in", true},
		{"fuse wrapped in foil", "foil out, fuse in|foil out, new fuse in", false},
		{"hi limit jumped", "jumper off when part in|jumper off mon|limit back tues|limit back on fri|new limit 2moro|new limit tmrw|new limit mon|new limit on truck|new limit in cart|new limit in van|new limit in shop|new limit approved|limit back next trip|jumper off when he comes", true},
		{"hi limit jumped", "quoted jumper removal and new limit 180|quoted new limit and jumper out|recommended new limit, jumper out|priced new limit n jumper out|told them new limit, jumper off|advised new limit and jumper off", true},
		{"hi limit jumped", "quoted new limit, took jumper off|told cust, jumper off|recommended new belt, removed jumper|jumper off when done|jumper off when finished", false},
		{"press switch jumped", "jumper off flow switch|jumper off vacuum switch", true},
		{"press switch jumped", "jumper off pressure switch|replaced pressure switch|new press switch in|jumper off press sw", false},
		{"hps jumped", "jumper off lps|replaced lps", true},
		{"hps jumped", "jumper off hps|jumper off high pressure switch|replaced hps|jumper off", false},
		{"lid switch bypassed", "new lid switch, still spins lid up|new lid switch, dont work|jumper off, spins lid up|jumper off, lid switch dead|jumper off, lid sw no good", true},
		{"lid switch bypassed", "jumper off, old lid switch bad, new one in and lid switch back|jumper off, pump dead|new lid switch, old one dead|jumper off, door lock bad, lid switch back|new lid switch, stops when lid opens", false},
		{"lwco jumped", "jumper out, lwco wont kill burner|jumper off, lwco bad|jumper off, lwco doesnt work", true},
		{"limit jumped", "jumper off, limit stuck closed|new limit, limit wont open|new limit, never opens|new limit, wrong temp", true},
		{"overload jumped", "jumper off, OL dont trip", true},
		{"ground prong missing", "new plug, no ground hooked|new plug 2 prong|new plug end, 2 wire|new cord 2 wire|new 2 prong cord|new cord, green not hooked|new plug, ground left off|new cord thur|new cord, no place to ground it", true},
		{"ground prong missing", "new plug|new 3 prong plug|new cord, ground hooked up|replaced cord", false},
		{"limits jumped", "took 1 jumper off|one jumper off", true},
		{"limits jumped", "took 2 jumpers off|both jumpers off|jumpers off", false},
		{"limit jumpered", "jumper tossed|yanked jumper|snipped jumper|jumper in trash|lost the jumper|new limit in, jumper tossed|new hi limit in, jumper ditched|chgd limit", false},
		{"float switch tied up", "untied float|untied the float switch", false},
		{"float switch tied up", "untied float, tied it again|belt untied", true},
		{"jumped it out to run a test", "jumper wire for the test taken off|took the jumper off|removed jumper from motor terminals", false},
	} {
		for _, back := range strings.Split(x.back, "|") {
			lines := []string{x.out}
			if back != "" {
				lines = append(lines, back)
			}
			if left := guardsOf(lines...); len(left) > 0 != x.left {
				t.Errorf("%q, %q: out is %v, want %v", x.out, back, left, x.left)
			}
		}
	}
}

// Of several that are out one that is named, or the last, is back.
func TestPutBackOneOfSeveral(t *testing.T) {
	for _, x := range []struct {
		lines, left string // parted by |
	}{
		{"jumpered thermal fuse|jumpered door switch|removed jumper", "jumpered thermal fuse"},
		{"jumpered thermal fuse|jumpered door switch|removed jumpers", ""},
		{"jumpered thermal fuse|jumpered door switch|jumper off thermal fuse", "jumpered door switch"},
		{"jumpered thermal fuse|jumpered line fuse|put the fuse back", "jumpered thermal fuse"},
		{"jumpered thermal fuse|jumpered line fuse|put the line fuse back|put the thermal fuse back", ""},
		{"jumpered thermal fuse|note thermal fuse still jumpered|jumper off", ""},
		{"jumpered thermal fuse|taped lid switch shut|jumper off", "taped lid switch shut"},
		{"bypassed primary switch|bypassed secondary switch|replaced primary switch", "bypassed secondary switch"},
		{"jumpered door switch 1|replaced door switch 2", "jumpered door switch 1"},
		{"jumpered door switch 1|replaced door switch 1", ""},
		{"replaced thermal fuse|jumpered thermal fuse to test", "jumpered thermal fuse to test"},
		{"hi limit and thermal fuse both jumped|put new thermal fuse in", "hi limit and thermal fuse both jumped"},
		{"hi limit and thermal fuse both jumped|jumper off the fuse", "hi limit and thermal fuse both jumped"},
		{"lwco and aquastat jumped|lwco jumper off", "lwco and aquastat jumped"},
		{"hi limit and thermal fuse both jumped|new thermal fuse in|new hi limit in", ""},
		{"hi limit and thermal fuse both jumped|jumpers off", ""},
		{"hi limit and thermal fuse jumped|removed jumper from hi limit and thermal fuse", ""},
		{"disconnected ground wire|jumpered fuse|jumper off", "disconnected ground wire"},
		{"bridged the overload|fed the heater direct|overload back", "fed the heater direct"},
	} {
		var left []string
		for _, g := range guardsOf(strings.Split(x.lines, "|")...) {
			left = append(left, g.Text)
		}
		if got := strings.Join(left, "|"); got != x.left {
			t.Errorf("%s: left %q, want %q", x.lines, got, x.left)
		}
	}
}

// What is said to clear a guard does: typed as work, it leaves nothing out.
func TestWhatClearsAGuardDoes(t *testing.T) {
	for _, lines := range [][]string{
		{"jumpered thermal fuse"}, {"bypassed the high limit"}, {"taped lid switch shut"}, {"foil in the fuse"}, {"used cheater cord"}, {"disconnected ground wire"},
		{"left the terminal cover off"}, {"left overload off"}, {"removed the thermal fuse from the circuit"}, {"replaced 15A fuse with 20A"}, {"swapped fuse for bigger one"},
		{"put 30A breaker in place of 20A"}, {"wired round the door switch"}, {"penny behind the fuse"}, {"cut ground pin off plug"}, {"door switch out"}, {"jumped it"}, {"breaker too big for the wire"}, {"upped the fuses from 30 to 60"},
		{"twisted the two limit wires together"}, {"pressure switch held with tape"}, {"disabled the lid lock"}, {"left without its cover"}, {"fitted 3 to 2 prong adapter"},
		{"cut off lcdi plug"}, {"fed the heater direct"}, {"limit taken out, wires joined"}, {"ran with float disconnected"}, {"rubber band round the door latch"}, {"held the contactor in"},
		{"clamped the flame safety valve open"}, {"hardwired past the overload"}, {"gutted the thermal fuse"}, {"overload cut out of line"}, {"put a spade to spade on the cutout"},
		{"jumpered thermal fuse", "jumpered door switch"}, {"jumpered thermal fuse", "taped lid switch shut", "left overload off"}, {"jumpered thermal fuse, limit and door switch"},
	} {
		list := guardsOf(lines...)
		if len(list) == 0 {
			t.Errorf("%v: nothing is out", lines)
		}
		all := lines
		for i := range list {
			all = append(all, list[i].Clears(list))
		}
		if left := guardsOf(all...); len(left) > 0 {
			t.Errorf("%v: still out after %v", all, left)
		}
	}
}
