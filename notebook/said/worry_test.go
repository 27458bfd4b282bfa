package said

import (
	"strings"
	"testing"
)

// Of what no list understands, words of danger or of a protective device are asked
// about, and those that say that all is well are not: common practice.
func TestWorries(t *testing.T) {
	for text, want := range map[string]bool{`
both limit wires on one terminal
fitted the lid back, no lid switch
estop drops nothing, contactor stays
safeties not in circuit
cooktop limiter cut away
fused at 40, plate says 25
dryer on 50A brkr
removed lid switch, tied its two wires
terminal melted
outlet warm
flames too high, licking the knob
door latch not holding
lid opens and the tub still spins
neutral floating at the range
L1 spade brown and brittle
three prong plug with one missing
receptacle crumbles when touched
relay welded and still powering the heater
no cover on the box
overload is lying on the floor
fan blade cracked and wobbling
kid sticks fingers in the open back
resistor put in for the thermistor
put a 40A breaker in
swapped fuse for a 30A
changed the breaker to 50 amp
bumped it with two phases
ran it on two legs
fired it up with tank empty
water coming out of the upper access cover`: true, `
client happy
bypassed the old thermostat wire with a new run of cable
overload restored to the circuit
low water cutoff back in circuit
new 30 A fuses in the disconnect as on the plate
lid switch cleaned, stops at once when lid is lifted
customer shocked at the price
estop tested, drops the contactor
breaker is 30 A on 10 gauge, right for it
float moves free
burner caps put back in place, flame even all round
ground strap moved off neutral for the 4 wire cord as the sheet wants
fuse was good, broken wire at the motor mended
flue drawn well, all joints screwed
all safeties in circuit and working
cleaned the lid switch, lid stops the drum
customer shown the temperatures
no leaks
plugged in and running
breaker on
left off at the breaker
gas shut off
vent cleaned to the outside
no burnt smell
earth reads fine
replaced thermal fuse
new limit fitted, old one thrown out
burner flame blue and steady
tightened the terminal block
tested limit, opens when hot
took the limit out to read it
wires tight at the block
float moves freely
exhaust air is warm and strong
ice maker arm was up, put down
dog in the house, keep the gate closed
flammable gas, room aired
replaced 15 A fuse with 15 A
put in the same 30A breaker
fitted new 15A fuse
put new 15A plug top and tag
two phases at the panel good
tank empty, drained for the element
tank full, breaker on
water in the access road
all rollouts closed
limits closed, all in circuit
lwco opens on low water
lid sw opens
interlocks all 3 open w door
20A fuse per tag
fuses match the plate
burnt cheese on the bottom
fire ext on wall
reset the eco, holds
no jumpers anywhere
element shuts off on thermostat
thermostat cuts out at 155F
plugged it in
plugged the unit back in
old run cap was bulging
forced a defrost, watched it melt
customer said no smell of burning
OL trips at 6`: false} {
		for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
			if (Worries(line) > Calm) != want {
				t.Errorf("%q: asked about %t", line, !want)
			}
		}
	}
}

// What names a danger, or takes out what protects, is feared; of things that are dangerous
// only when they are not as they should be, and of what was mended, the words are doubted.
func TestWorriesAreFearedOrDoubted(t *testing.T) {
	for text, want := range map[string]Worry{`
glass hob cracked right across
bobby pin across the limit
breaker hot
60 A fuses on a 30 A circuit
earth prong has been broken off the plug
door lock connector charred
door glass shatered, shards in cavity
latch busted, still cooks when ajar
cap still sittin at 1900V after 10 min
insul cut under strain relief
forgot to retighten lugs
tub spring broke
couldnt find the rear cover screws
harness hanging in the drum path
disconnect pull out wont break one leg`: Feared, `
thermostat stuck on
float switch stuck up
coil plugged with lint
tightened loose wire at C terminal
vent pipe blocked by a nest
contactor chatters`: Doubted, `
removed extension cord, plugged straight in
vent was full of lint, cleaned to the wall
no bare wires, all insul good
3 prong plug good, ground pin there
hi limit in place
fuse L3 blown
contactor does not pull in
lid switch clicks
lid-switch closes
lid gasket torn at the hinge
eco not tripped
back panel on, harness clipped clear of the drum
spark module is new
old run cap was bulging
customer said no smell of burning
limit not bypassed, all ok`: Calm} {
		for line := range strings.SplitSeq(strings.TrimSpace(text), "\n") {
			if got := Worries(line); got != want {
				t.Errorf("%q: %d, want %d", line, got, want)
			}
		}
	}
}
