package said

import (
	"strings"
	"testing"
)

// Ways to hold a device out of its circuit, a line each: common practice.
const takenOut = `
jumper on the limit as on the sheet
fitted hard start kit, no overload fitted
new ptc with no overload installed
bypassed the limit wire with a new wire
thermal cutoff has a wire across it
paper clip in the limit, limit has a paperclip across
float taken out because it stuck
high limit clipped out because it nuisance tripped
customer snipped the round prong off the plug
wire nut across the cycling stat for the weekend
drum fuse is a bit of copper wire
manual reset button jammed in with epoxy
owner keeps a clothespin on the door switch
tie wrapped the float up so it fills
prior svc left clip lead on limit
lid sw plugged w/ shorting plug
defrost term stat twisted out
thermal fuse cut out, wires butted
client tapes the lid switch down
client uses a magnet on the reed
limit wires piggybacked
took lid lock out of circuit for now
oven door lock switch wired closed
earth pin sawn off
left the cut out shorted so she has hot water tonight
compressor overload gone, wires straight on the pins
clipped leads off TF & butt spliced em
no overload on comp, wired direct
pulled overload and ran comp on hard start only
float sw unhooked bc pan sensor nuisance trips
limit disconnected
flame failure device tied open with wire
monitor switch snipped out
lid bypass plug installed at lock
owner's son wired straight past the thermostat
wired the heater past the limit
found screwdriver stuck in the cutoff
ground prong was broken off, used as is
put tape over the door switch so it runs
put in a wire instead of the thermal fuse
fitted a wire in place of the thermal fuse
run with the overload shorted
ran it with the overload shorted
took out the ECO and joined its wires
clamped the flame safety valve open
pinned the contactor in with a stick
lid lock held shut with a magnet
strap across the thermostat
cut out the thermal cut-out and spliced
bent the hi-limit so it never opens
tinfoil round thermal fuse
thermocouple tied off
put a bolt where the fuse should be
3rd prong gone
third prong missing
gnd pin snapped off cord
no ground prong
hi press sw twisted together
OL jumped
left running OL out
limit by passed
limit gone
spill switch unplugged
blocked vent switch unplugged
fuse foiled
jmpr on limit
copper wire in the fuse holder
wrapped the fuse with tin foil
wrapped the blown fuse in foil
nail in place of the fuse
soldered a wire across the thermal fuse
solder across the limit contacts
thermal fuse replaced by a piece of wire
fuse replaced with a bit of copper
door switch plunger taped down
taped the door switch plunger in
tape on lid switch
tape the lid switch shut
zip-tied the door latch
cable-tied the float switch up
tied up the float switch
wedged a matchstick in the door switch
matchstick wedged in lid switch
jammed the door switch shut with cardboard
glued the lid switch down
superglued the microswitch
stuck a magnet on the lid switch
used a magnet to fool the lid switch
magnet on reed so it runs lid open, put magnet on reed switch
held the contactor in
held contactor in to test compressor
held the contactor in by hand for a minute
contactor held in with a screwdriver
pushed the contactor in to test
propped the flame sensor relay closed with a stick
relay wedged shut
reset button taped down
reset button of overload held in with tape
clip lead across the limit
alligator clips across high limit
croc clip across the pressure switch
screwdriver across the thermostat terminals
link on thermostat terminals, link across the stat
bridge across the door switch
put a loop across the limit
shorted across the overload
shorted out the limit
short out the limit
shorted the thermostat to run
shorted limit wires to test
link out the limit
bridge door switch
jumper thermal fuse
bypass the lid switch
joined the two limit wires
joined the wires of the limit
twisted the wires of the thermal fuse together
limit wires twisted together
spliced round the limit
spliced out the thermal fuse
wire-nutted the limit wires together
cut the limit out and joined the ends
removed the thermal fuse and spliced the wires
snipped out the overload and twisted the leads together
took the high limit out of the circuit
took overload out of the loop
ran without the overload
ran it with no overload
running with no thermal fuse
overrode the high limit
disabled the door interlock
eliminated the limit switch
deleted the thermal fuse
hot-wired the compressor past the overload
wired the heater straight through
20A fuse in place of 15A
oversized fuse fitted
fuse is oversized
put in a bigger breaker
breaker uprated to larger
swapped 15 amp fuse for 30 amp
cut off the ground prong
snipped the earth pin
earth wire cut
ground strap missing
lifted the earth to stop RCD tripping
fuse no good so bypassed it
would not start until jumped the overload
won't run unless lid switch is bypassed
runs only with the lid switch bypassed
no power to board jumpered the fuse
not working so taped the lid switch
limit bridged by last man
customer taped the interlock
thermostat jumped R to W
used paper clip across door switch
coin behind the fuse
penny behind the fuse
foil round fuse
washer across fuse terminals
bypassed thermistor with a resistor
bypassed gas valve
taped the limit to test
cut the door switch wires and twisted them together
lever of the lid switch tied down
lid switch actuator held down with tape
flame safeguard bypassed
clamped the gas valve open
wedged the safety valve
pinned the pilot safety open
by-passed flame rollout
unit runs with overload jumpered
left limit unplugged
limit left out
rollout switch taped
float tied up
limit shorted out
wired round the switch
left the overload off
left out the thermostat
overload off
overload left off
earth wire left off
cover left off
ran with the cover off
swapped fuse for a bigger one
two pin adapter
used two prong adapter
ungrounded adapter
3 to 2 adapter
wired fan limit out of the circuit to keep it running
LID SW magnet taped in place
ran it on a piece of #14 in place of the fuse link
operating thermostat shorted w/ foil, was like that
put cheater plug on it so client can use it
gfi wont reset so they ran cord to non gfi outlet
overload has been taken out by previous owner
thermal fuse missing
high limit stuck, clipped it out for now
replaced 15A bkr with 30A
limit clipped out for now
fuse still jumped from last guy, left it
needs thermal fuse jumpered for now
limit thermostat taken out, wires joined
took thermostat out, twisted the wires together
ran comp w/o overload
hardwired past the overload
hard-wired round the limit
rewired around the high limit
put a spade to spade on the cutout
put lead to lead at the limit
cut off lcdi plug, fitted plain plug
cut the gfci off the cord
gfci outlet replaced with plain one
swapped lcdi plug for a standard plug
lcdi plug cut off
chopped off the lcdi head
ran dryer with thermal fuse wires joined
gutted the thermal fuse
thermal fuse gutted
fed the heater direct, no thermostat
heater wired straight off L1
wired the element directly
rubber band round the door latch
rubber band on the lid lock
overload cut out of line
limit taken out of the circuit
switch wires twisted
ran with float disconnected
ran it with the float switch unplugged
runs with limit out
float switch held up with string
shorted out to test the door switch
shorted it out to run
pushed the door switch in with tape
held lid switch down with a stick
limit taken out and its wires joined
held the lid switch down, then taped it
held the door lock shut wedged it
cut out the door switch for now, wire nutted the wires
took limit out, left it out
replaced thermal fuse and put a nickel behind it
put a penny behind it
thermostat not hooked up
replaced element with generic, hi limit never reconnected
runs when limit jumped
jumped harvest thermostat
motor runs when jumpered
bypassed hp in harvest
harvest motor cycles, jumper left on
jumped the float to start the harvest
jumped t-stat
took limit out, tested open, left out
took limit out, ran it
clamped the flame safety valve open
held the contactor in to test, ran
`

// Lines of every day in words that could take a device out.
const nothingOut = `
jumper on the board set by the sheet for 90 s blower delay
jumper W to R on the board set by the sheet
jumper pin set to 120 s as the sheet says
DIP jumper J3 is in place per the sheet
jumper Y-Y1 factory fitted, left in
bypassed the old thermostat wire with a new run of cable
bypassed the broken splice with a new wire
breaker size right for the wire
breaker is 30 A on 10 gauge, right for it
wire nut on the cycling stat lead replaced
put a wire nut on the limit wire
new overload and relay pressed on
note bypass plate in the blower housing
wired new fan motor direct replacement
door switch holds in
float holds closed, drains
pushed float up by hand, pump ran
held float up, pump ran
limit clipped in place
removed old limit, fitted new one, spliced wires with crimp
took limit and thermal fuse out to get at motor, refitted both
switch wired normally open
put the jumper wires away, none left on
jumped up on roof to clear vent
tested thermal fuse unplugged
ohmed the limit disconnected
limit disconnected, tested open
lid switch unplugged, reads closed
flame failure device renewed
fitted bypass plug
no overload trip
no fuse in the van
customer asks if the limit can be bypassed, said no
replaced high pressure switch, not jumped
set mixing valve, bypass shut
bypass closed
bypass valve shut
bypassed the water filter with the plug
water filter bypass fitted
fitted filter bypass plug
economizer bypass open
bypassed the economizer
duct bypass closed
bypass duct damper stuck
bypass humidifier cleaned
hot gas bypass valve replaced
replaced the bypass tube
replaced the bridge rectifier
bridge rectifier shorted
jumper kit fitted
moved board jumper to 240 V, set board jumper
removed factory jumper
neutral bonding jumper in place
3-wire cord
jumper wire for 3-wire cord
tape over insulation
taped the insulation
thermistor taped to the tube
taped the thermistor to the suction line
taped the defrost thermostat to the evaporator tube
defrost thermostat clipped to the coil
strapped the thermostat to the tube
thermocouple taped to the oven shelf
taped the wires
taped the wires at the door switch
tape over the fuse terminals wires
tied the harness back
tied the wires away from the belt
replaced the wire to the thermostat
wire off thermostat
broken wire in the door switch
loose wire at the limit
burnt wire across the terminals
replaced switch lead
replaced thermostat wires
repaired the limit wires
replaced shorted switch
door switch shorted
shorted windings
capacitor discharged, shorted the terminals with a resistor
compressor shorted to ground
measured across the thermostat
meter leads across the limit
checked for jumpers
checked for bypassed safeties
looked for a bypass
no jumpers found
nothing bypassed
none of the switches are jumpered
door switch not bypassed
limits were not taped or bridged
did not bypass anything
didn't bypass the limit
told client not to bypass the lid switch
told customer never run with cover off
customer asked me to bypass the lid switch, declined
refused to bypass the interlock
will not bypass the limit
warned against bypassing the limit
must not be jumpered
instead of bypassing replaced the limit
needle jumped
zone bypass set right
bypass loop valved ok
bypass set per book
jumped r to w to call heat
pressure jumped to 200
belt jumped off the pulley
amps jumped to 12
freed the stuck door switch
found relay stuck
relay stuck closed
contactor stuck
contacts welded shut
replaced jammed lid lock
door latch jammed
bent the switch tab back
straightened bent lever of the door switch
bent pin in plug
door hook bent
lid lock strike bent
adjusted the door switch
thermostat held with two screws
limit held by clip
put the thermostat in place
replaced clip on thermistor
removed the belt
fan guard held with screws
pressed the reset button
reset the overload
held pilot button in for a minute, lit
pushed the door switch by hand, light off
checked switch with light
float switch moves freely
replaced fuse with new
replaced fuse
replaced fuse with same rating
replaced 15A fuse with 15A
fuse box cover on
fuse blown
no fuse blown
overload open
overload tripped
runs without overload tripping
ran 20 min without tripping
breaker off, locked out
breaker panel cover refitted
switched off at the wall switch
turned off the breaker
earth good
earth wire tight
earth clamp cleaned
ground strap refitted
earth strap across the hinge fitted
outlet ground missing
gasket strap replaced
tub straps replaced
suspension spring and rod
shipping bolts out
removed coin from pump
nail in the pump
paper clip in the pump
foil in the microwave
foil on the oven floor
magnet in door gasket weak
new magnet in door
magnetron replaced, thermal cutout good
tape on box
door tape removed
heat tape replaced
drain loop raised
control circuit checked
spliced in a new thermal fuse
spliced new wires to the limit
crimped new terminals on the limit
soldered a joint on board
soldered the relay terminals
copper tube brazed
cap shorted
straight through drain hose fitted
wired the new contactor
wired the thermostat as per diagram
connected the pressure switch hose
reconnected the float switch
light switch off
thermostat set to off
cover on
replaced the lid
door lock will not release
lid lock stays shut
link arm replaced
damper linkage freed
chain loop adjusted
wedge under foot
shim under leg
cardboard under the machine
rubber seal stuck
prop rod fitted
two pin plug replaced
gas adapter fitted
hose adapter leaks
jumper wire kit fitted
bypassed nothing
jumper post on the board set to 60 Hz
moved the jumper header
jumpered none
earth link fitted
taped thermostat wires
held door switch closed, fan runs
held lid switch shut
held the door switch in by hand to spin
pushed lid switch down with a finger, spins
took limit out, tested open
took the thermal fuse out, reads OL
pulled thermostat out, checked good
bypass timer set
jumped the diag pins for service mode
float switch moves, took it out to clean
limit bad, took it out
screw missing
checked bypass timer
defrost jumper on board JP1 cut as per tech sheet
shorted out the old element
element shorted out
motor shorted out
used jumper leads of the meter
jumper lead of my meter broke
pressure jumped from 60 to 200
wired range direct to the breaker
wired the oven straight to the junction box
gfci tripped
reset the gfci
replaced gfci
replaced gfci outlet
unplugged from the gfci outlet
unplugged the lcdi plug
tested lcdi plug, trips
does not need the limit jumpered
does not need to be jumpered
need to bypass nothing
held the contactor in to test, let go
held the contactor in, released it
taped the lid switch to test, took it off again
jumped the fuse to test, taken off
bypass the dryer door with a magnet for test, taken off
spade loose at the limit
harvest motor cycles ok when jumped
jumped T and H, harvests
cycles when jumped at T and H
jumped T-H to start harvest
bond strap in place 3 wire
jumper L1 to coil per print
jumper 2-3 factory
R to Rc jumper on tstat
W2 jumpered to W1 per install manual
press sw opens pump off
thermal fuse gone
no ground on 3 prong type
heater reads OL
limit OL
ejector turns when jumped at the test points
nickel found behind the drum
put a wire behind it
drain hose not hooked up
thermostat not hooked up wrong
new ptc, no overload tripping now
no overload fitted yet so none read
float moves freely
ran with float up, shut off well
overload cut out after 5 min
`

// What takes a device out is heard, what is harmless in the same words is not.
func TestGuardsAreHeard(t *testing.T) {
	for text, want := range map[string]bool{takenOut: true, nothingOut: false} {
		for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
			if got := TakesOut(line) && len(Out(Guards(0, line, true, false))) > 0; got != want {
				t.Errorf("%q: out %v", line, got)
			}
		}
	}
}

// Each way, and each that is quiet, is shown by a line: what no line shows, nobody
// can know to be right.
func TestEachWayIsUsed(t *testing.T) {
	var clauses []string
	for _, line := range strings.Split(takenOut+nothingOut, "\n") {
		for _, c := range Clauses(line) {
			clauses = append(append(clauses, c), strings.Split(c, " and ")...)
		}
	}
	for _, list := range [][][]tag{outs, quiets} {
		for i, way := range list {
			shown := false
			for _, c := range clauses {
				words := tagsOf(c, nil)
				at, _ := match(words, way)
				shown = shown || at >= 0
			}
			if !shown {
				t.Errorf("no line shows way %d of %d", i, len(list))
			}
		}
	}
}
