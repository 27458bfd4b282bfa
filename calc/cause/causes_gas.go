package cause

import "strings"

// gasRows are the causes of a burner that loses its heat, of a spark, of a standing pilot, of a
// furnace's draft and of its blower, a cold room's, and such as need no more: code | name | shown by | predicts | contradicts |
// repair | work. They are text, as seenRows are, for what that spares.
const gasRows = `
gas-coil-hot | coil of the gas valve opens when it is hot | coil-open | heat-lost quits-glowing flame-none heats-slowly | coil-conducts quits-dark | replace the coils as a set; valve and pipes are for licensed persons | coil, valve
limit-hot | limit open, or opening on heat | limit-open | heat-lost quits-dark airflow-blocked short-cycles rise-large runs-all-the-time igniter-dark | limit-closed quits-glowing | find what makes it hot (vent, filter, blower) and mend that; one that stays open cold is replaced; never bridge it | limit, thermal, thermostat, cutoff
cut-early | thermostat, sensor or control cuts the heat too early | thermostat-open sensor-failed sensor-reads-warm | heat-lost quits-dark sensor-suspect | quits-glowing thermostat-closed | replace the thermostat or sensor; a control only after them | thermostat, sensor, thermistor, control, board
pilot-weak | pilot flame weak or its orifice dirty | pilot-weak pilot-none | thermocouple-weak flame-none flame-drops-out | pilot-good gas-off | have pilot, orifice and air path cleaned by who is licensed to | pilot, orifice
thermocouple-weak | thermocouple or thermopile weak | thermocouple-weak | pilot-good flame-drops-out | thermocouple-sound pilot-none gas-off | replace it, its tip in the pilot flame; never hold the valve open | thermocouple, thermopile
intake-blocked | air intake, flame arrestor or vent blocked | airflow-blocked draft-poor | pilot-weak flame-drops-out limit-open | airflow-clear | clean it; it makes carbon monoxide: have draft and air tested before it is used | intake, arrest, screen, vent, lint, flue, air, clean
pilot-valve | valve does not hold or open though its thermocouple is sound |  | thermocouple-sound pilot-good | thermocouple-weak pilot-none pilot-weak gas-off | have the valve replaced by a licensed person; it is not opened | valve, licensed
press-open | pressure switch does not close | press-open | igniter-dark | press-closed igniter-glows flame-lights flame-drops-out | find why (inducer, flue, intake, hose, condensate); replace it only once the draft was measured; never bridge it | pressure switch
draft-poor | flue, intake, hose or drain of the condensate blocked | draft-poor hose-blocked drain-blocked | press-open co igniter-dark | draft-enough press-closed igniter-glows flame-lights flame-drops-out | clear it; have draft and air tested, for it makes carbon monoxide | flue, vent, intake, hose, nest, trap, drain, condensate
inducer-failed | inducer does not run | inducer-stopped | press-open igniter-dark | inducer-runs press-closed igniter-glows flame-lights flame-drops-out | fed and still, replace it; not fed, look at limit, control and wires | inducer, draft motor
fan-set-on | fan switched to run all the time | fan-set-on |  | fan-set-auto | set the fan to auto, or its manual switch back | set, auto, thermostat, switch
zone-valve-shut | zone valve does not open: its head or coil failed, or it sticks | coil-open zone-shut | does-not-heat valve-volts-present | zone-opens | fed and shut, replace its head, or have the valve replaced; not fed, look at the zone's thermostat and wires | zone valve, zone head, valve head, actuator, coil
circulator-failed | circulator stands, or turns loose | shaft-stuck | does-not-heat circulator-stopped hums | pump-runs | fed and still, free it or replace it with one of its head and flow; not fed, look at what switches it | circulat, pump, cartridge, impeller
zone-airbound | air in the zone's pipes, or a valve in them shut | airbound | does-not-heat heats-slowly | zone-bled | open what is shut, bleed the zone, and see that the boiler holds its pressure | bleed, bled, purg, opened
spark-called | a spark switch or its harness wet, dirty or shorted | spark-called | keeps-sparking | spark-uncalled | dry and clean switches and harness, or replace the harness as a set | switch, harness, dried, dry out
spark-module | spark module sparks without a call | spark-uncalled | keeps-sparking | spark-called | see first that a lit flame is sensed (electrode, cap, ground of the burner), then replace the module | module, board
room-cold | room colder than the appliance works in | room-cold | does-not-dry coil-iced frost-partial | no-sealed-system room-normal room-hot | use it in a warmer room, or one made for cold rooms | move, room, explain, advis
blower-relay-stuck | blower's relay, fan switch or control stuck closed | blower-kept-on |  | blower-lets-go | replace the relay, fan switch or control that keeps it on | relay, control, board, fan switch
liquid-valve-shut | valve of the liquid line (pump-down) does not open | liquid-valve-shut | does-not-cool cools-slowly suction-low frost-none short-cycles will-not-reach | no-pump-down liquid-valve-opens frost-even frost-heavy suction-normal suction-high cools-down pulls-down-on-course | replace a coil that is open; with no volts on it look at thermostat and defrost clock; the valve itself is for a person certified for the refrigerant | solenoid, coil, valve
drain-siphons | drain hose too deep or too low: the water runs out as it comes in | hose-deep | overfills level-sound | hose-high | hang the drain hose as high as its sheet asks for, not deep in the standpipe and with air round it | drain hose, standpipe, high loop
igniter-open | igniter broken | igniter-open | igniter-dark does-not-heat | igniter-conducts igniter-glows flame-lights flame-drops-out | replace the igniter by one of its kind; touch no part that glows | igniter
flame-sensor-open | flame sensor open | flame-sensor-open | igniter-dark | flame-sensor-closed igniter-glows flame-lights flame-drops-out | replace the flame sensor; never bridge it | flame sens, radiant
flame-not-sensed | flame burns and is not sensed | flame-weak | flame-drops-out short-cycles | no-burner no-flame-rod flame-sensed flame-none igniter-dark | clean the flame rod, and see its porcelain, its wire and the ground of the burner; never bridge it | flame, rod, ground, clean
heat-relay-stuck | switch, relay or control keeps the heat on | heats-when-off heat-welded | too-hot | heat-stops does-not-heat | replace the switch, relay or control that keeps it on, after heater, thermostat and sensor have been proved | relay, control, board, switch, sequencer
`

// gasTestRows are their tests, in the form of startTestRows.
const gasTestRows = `
after-quit | let it run until the heat goes, then watch whether the igniter glows again | saw glows when hot no flame | 3l | quits-glowing quits-dark |  | fuel-gas hot-and-moving | gas-quits
pilot-look | light the pilot by its label and look at its flame | saw pilot good | 1l | pilot-good pilot-weak pilot-none |  | fuel-gas hot-and-moving | pilot-out
thermocouple | millivolts of thermocouple or thermopile, its pilot lit, button held | volt thermocouple 25mV | 2l | thermocouple-sound thermocouple-weak |  | fuel-gas hot-and-moving | pilot-out
inducer-look | call for heat and see whether the inducer runs | saw inducer runs | 1l | inducer-runs inducer-stopped |  | fuel-gas hot-and-moving | furnace-no-heat
draft | look at flue, intake, hose and condensate trap, read the draft against the switch's marking | saw draft enough | 2l | draft-enough draft-poor |  | fuel-gas hot-and-moving | furnace-no-heat
zone-look | let that zone alone call: see its valve open, and feel the pipe on both sides of it | saw zone valve opens | 1l | zone-opens zone-shut |  | fuel-gas hot-and-moving | zone-cold
circulator-look | let the zone call, and hear and feel whether the circulator runs | saw circulator runs | 1l | pump-runs circulator-stopped |  | fuel-gas hot-and-moving | zone-cold
bleed | bleed the zone until water comes without air, and read the boiler's pressure | saw zone bled | 2l | zone-bled airbound |  | fuel-gas hot-and-moving | zone-cold
fan-set | read the fan setting of the thermostat | saw fan set to auto | 1l | fan-set-auto fan-set-on |  | fuel-gas hot-and-moving | fan-on
spark-look | power off, pull the harness of the spark switches; power on, see whether it sparks on | saw sparks with harness off | 2l | spark-called spark-uncalled |  | fuel-gas hot-and-moving | keeps-sparking
fan-uncalled | take the thermostat's call away and see whether the blower stops after its delay | saw blower stops with g off | 2l | blower-lets-go blower-kept-on |  | fuel-gas hot-and-moving | fan-on
liquid-valve | call for cold, hear and feel the valve of the liquid line open | saw liquid solenoid opens | 1l | liquid-valve-opens liquid-valve-shut |  | fuel-gas hot-and-moving | no-cool
siphon | look how high and how deep the drain hose hangs, and whether water runs out of it while it fills | saw drain hose high enough | 1l | hose-high hose-deep |  | fuel-gas hot-and-moving | overfills
`

func causesIn(rows string) []Cause {
	out := make([]Cause, strings.Count(rows, "\n")-1)
	for i := range out {
		c, f := &out[i], cells(&rows)
		c.Code, c.Name, c.Fix, c.Work, c.Source = f[0], f[1], f[5], f[6], commonPractice
		c.ShownBy, c.Predicts, c.Contradicts = strings.Fields(f[2]), strings.Fields(f[3]), strings.Fields(f[4])
	}
	return out
}

// testsIn reads rows of tests: code | name | what to type | effort and danger | outcomes |
// what settles nothing | cautions | complaints in which alone | when | barred by | source of a number. The last
// ones may be wanting. $ stands before the name of a list.
func testsIn(rows string) []Test {
	var out []Test
	lists := strings.NewReplacer("$cold", strings.Join(cold, " "), "$grounded", strings.Join(grounded, " "), "$undriven", strings.Join(noDrive, " "))
	for row := range strings.Lines(strings.TrimPrefix(rows, "\n")) {
		var f [11]string
		copy(f[:], strings.Split(strings.TrimSuffix(lists.Replace(row), "\n"), " | "))
		t := Test{Code: f[0], Name: f[1], How: f[2], Effort: int(f[3][0] - '0'), Source: f[10]}
		t.Danger = Danger(strings.IndexByte("ldL", f[3][1]))
		for i, field := range []*[]string{&t.Outcomes, &t.Vague, &t.Caution, &t.On, &t.When, &t.Barred} {
			*field = strings.Fields(f[4+i])
		}
		out = append(out, t)
	}
	return out
}

// cells takes the next row off a table.
//
//go:noinline
func cells(rows *string) []string {
	row, rest, _ := strings.Cut((*rows)[1:], "\n")
	*rows = "\n" + rest
	return strings.Split(row, " | ")
}
