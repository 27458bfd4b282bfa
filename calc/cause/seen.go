package cause

import "strings"

// seenRows is the part of the vocabulary that a technician types after `saw` and
// that several causes share; what one alone is told by stands in its Own. It has
// a line for each finding with its code, what is typed for it, what it means, and
// the codes that it excludes. It is text because a line costs the program a fifth
// of what a literal does.
const seenRows = `
# How the machine answers when it is called on.
clicks | clicks, click, clicking, clicks on and off, it clicks, relay clicks, relay clicking | a click now and then from the start gear or the overload, and no start | silent
hums | hums, hum, humming, buzzes, buzzing, comp hums, motor hums, comp humming, motor humming, pump hums, pump humming, drain pump hums, hums but not running, hums but does not run, hums and won't start, hums won't start, hums but won't start, hums but does not turn, hums not running, comp buzzing, comp buzzes, motor buzzing, motor buzzes | hums or buzzes and does not turn | silent
silent | silent, no sound, quiet, comp silent, no noise, pump silent, pump dead, dead silent, completely silent, makes no sound, no hum, drain pump dead, drain pump silent, motor silent, motor dead | no sound from the machine although it is called on | starts-and-runs
does-not-start | no start, does not start, comp not starting, motor not starting, comp does not start, not starting, comp not running, comp off, not running, hums but no start, it hums but no start, pump doesn't run, pump not running, pump not turning, pump doesn't turn, motor doesn't run, motor not running, comp doesn't run, hums loudly but does not start | the machine does not start | starts-and-runs
starts-and-runs | starts and runs, starts, starts by itself, runs by itself, starts when called, runs when called, comp runs, runs, motor runs, running, it runs, runs now, it starts, unit starts, comp starts, motor starts, comp running, started and running, started and runs, started up, started right up, started fine, condensing unit runs, condensing unit running, up and running | the machine starts by itself and keeps running |
cuts-out | cuts out, trips overload, trips out, starts and trips, hums and trips, trips, starts and cuts out, starts then stops, starts but trips, starts then trips, runs then trips, runs then stops, runs then cuts out, comp starts and trips, starts but cuts out, trips on overload, off on overload, hums loudly and trips, hums loudly then trips, tripping on overload, trips on olp, trips olp, tripping overload, tripping out, cutting out, cuts out on overload, cycles on overload, cycling on overload, short cycling on overload, short cycling on olp, cycles on olp, cycling on olp, comp trips on overload, compressor trips overload, compressor trips out, compressor cuts out, comp short cycling on olp, compressor short cycling on overload, comp cycling on overload | the overload takes the machine off after a few seconds or minutes | starts-and-runs
runs-all-the-time | runs all the time, never stops, runs nonstop, runs continuously, running 24/7, runs 24/7, running all the time, runs constantly, running constantly, running nonstop, running non stop, runs non stop, won't shut off, won't cycle off, never shuts off, never cycles off, running continuously, comp runs constantly, compressor runs all the time | the compressor never cycles off | cycles-off short-cycles
cycles-off | cycles off, cycles, cycles normally, cycled off | it reaches its set point and stops |
short-cycles | short cycles, short cycling | runs for a minute or two at a time |
comp-hot | comp hot, comp very hot, comp runs hot, compressor running hot, compressor overheating, compressor burning hot, compressor too hot, hot compressor, compressor bloody hot, shell hot, shell too hot | the compressor's shell is hot | comp-cold
comp-cold | comp cold, comp cool, comp at room temperature, shell cold, shell cool, shell has cooled | the compressor's shell is cold |
restarted-soon | restarted soon, restart too soon, plugged back in, power blip, power cut | called on again within minutes of stopping |
starts-after-wait | starts after wait, starts after waiting, starts after ten minutes, restarts after cooling, restarts when cool, starts again when cool | starts after a rest | no-start-after-wait
no-start-after-wait | no start after wait, no start after waiting, does not start after wait | does not start after a rest | starts-and-runs
starts-on-other-outlet | starts on other outlet, starts on another outlet, runs on another outlet | starts when plugged straight into a good outlet | no-start-on-other-outlet
no-start-on-other-outlet | no start on other outlet, no start on another outlet, same on other outlet, same on another outlet | does the same when plugged straight into a good outlet |
starts-with-test-device | starts with test device, starts with test ptc, starts with test relay, starts with new relay, starts with new start device, starts with new ptc, starts with another start device | starts with a start device of its kind known to be good | no-start-with-test-device
no-start-with-test-device | no start with test device, no start with test ptc, no start with test relay, no start with new relay, no start with new start device, no start with new ptc, no start with another start device | does not start with a start device of its kind known to be good | starts-and-runs
starts-with-kit | starts with start kit, starts with hard start kit, starts with hard start, starts with kit, starts with boost, runs with start kit, runs with hard start, starts only with start kit, starts only with hard start, starts up with hard start | starts with a start kit, which gives more torque than its own start device | no-start-with-kit
starts-bypassed | starts with overload bypassed, runs with overload bypassed, starts with overload jumpered, runs with overload jumpered | starts with its overload out of the circuit, which it must not stay | silent
no-start-with-kit | no start with start kit, no start with hard start kit, no start with hard start, no start with kit, no start with boost | does not start with a start kit either | starts-and-runs
long-cord | long cord, long extension cord, extension cord, extension lead, shared outlet, on an extension cord, on extension, on ext cord, plugged into extension cord, plugged into extension lead, on power strip, power strip, plugged into power strip, on power bar, power bar, plugged into power bar, plugged in extension lead, plugged in extension cord, fed by extension cord, on long extension | fed through an extension cord or a loaded circuit | plugged-direct
plugged-direct | plugged direct, no extension cord, own outlet, plugged straight in wall, plugged straight into wall, straight into the wall, straight in the wall, plugged into wall outlet, direct in wall | plugged straight into an outlet of its own |

# Start gear, wires and terminals.
device-rattles | device rattles, start device rattles, ptc rattles, disc rattles, starter rattles | the start device rattles when shaken: its disc is broken | start-device-sound
relay-rattles | relay rattles, current relay rattles, start relay rattles | the relay rattles when shaken, as the plunger of a sound current relay does |
device-burnt | device burnt, relay burnt, start device burnt, relay smells burnt, burnt relay, burnt start device, relay broken, relay cracked, relay sticks, relay stuck, relay welded, broken relay, cracked relay, ptc burnt, ptc broken, ptc cracked, start device broken, start device cracked, device broken, device cracked, relay contacts burnt, relay contacts welded, relay contacts burned | the start device is burnt, cracked or broken, or its contact sticks | start-device-sound
connection-loose | joints of connection conn terminal connector spade lug wire joint | a loose, burnt or corroded connection | connections-sound
connections-sound | connections tight, terminals tight, connections good, terminals good, connectors good, connections sound, conn tight, conns tight, connection tight, all connections tight, conns good, wiring tight | the connections are clean and tight |
wiring-wrong | wiring wrong, miswired, wires swapped, wired wrong | a wire serves the wrong pin or terminal | wiring-matches
wiring-matches | wiring right, wiring matches, wired right, wiring correct, wiring good per diagram, wiring per diagram, wired per diagram | each wire serves the role that its diagram gives |
start-cap-none | no start cap | the machine has no start capacitor | start-cap-sound start-cap-failed start-cap-open start-cap-shorted start-cap-suspect
run-cap-none | no run cap | the machine has no run capacitor | run-cap-sound run-cap-failed run-cap-suspect
drive-fault-shown | drive fault, drive flashes, drive led flashes, drive flashes fault, drive led blinks, drive lamp blinks, led blinks, led flashes, lamp blinks, inverter fault, inverter flashes | the inverter drive shows a fault by its own lamp or display | drive-no-fault drive-none windings-sound
drive-no-fault | drive no fault, no drive fault, inverter no fault | the inverter drive shows no fault | drive-none
drive-none | no drive, no inverter | the machine has no inverter drive |

# Fans, condenser, air.
cond-fan-runs | cond-fan runs, cond-fan running, cond-fan works, outdoor fan runs, outdoor fan running, cond-fan blowing, cond-fan turning, cond-fan spinning | the condenser fan runs | cond-fan-stopped cond-fan-none all-dead
cond-fan-stopped | cond-fan stopped, cond-fan still, cond-fan not running, cond-fan stalled, cond-fan not turning, cond-fan dead, outdoor fan not turning, outdoor fan stopped, outdoor fan dead, outdoor fan does not turn, outdoor fan does not run, outdoor fan not running, outside fan stopped, outside fan not turning, condenser fan not spinning, cond-fan does not spin, cond-fan does not turn, cond-fan does not run, cond-fan off, cond-fan quit, cond-fan not working, cond-fan not blowing, cond-fan stands | the condenser fan stands still | cond-fan-none
fan-shared | one fan motor, one motor for both fans, both fans on one motor | one motor turns both fans |
cond-fan-none | no cond-fan | the condenser has no fan |
cond-fan-stiff | cond-fan stiff, cond-fan jammed, cond-fan seized, cond-fan motor seized, condenser fan motor jammed | the condenser fan does not turn freely by hand | cond-fan-runs cond-fan-none
cond-fan-free | cond-fan free, cond-fan turns freely | the condenser fan turns freely by hand | cond-fan-stiff cond-fan-none
evap-fan-free | evap-fan free, evap-fan turns freely | the evaporator fan turns freely by hand | evap-fan-stiff evap-fan-none
evap-fan-stiff | evap-fan stiff, evap-fan jammed, evap-fan seized, evap-fan motor seized, evap-fan iced, evap-fan frozen, evap-fan stuck in ice | the evaporator fan does not turn freely by hand | evap-fan-runs evap-fan-none
evap-fan-runs | evap-fan runs, evap-fan running, evap-fan works, freezer fan runs, evap fans running, evap fans run, evap-fan blowing, evap-fan blows, evap-fan turning, evap-fan spinning, evap fans blowing | the evaporator fan runs | evap-fan-stopped evap-fan-none all-dead
evap-fan-stopped | evap-fan stopped, freezer fan stopped, evap-fan still, evap-fan not running, evap-fan stalled, evap-fan not turning, evap-fan not spinning, freezer fan not running, evap-fan dead, evap-fan does not spin, evap-fan does not turn, evap-fan does not run, evap-fan off, evap-fan quit, evap-fan not working, evap-fan not blowing, evap-fan stands, one evap fan of 2 not turning, one of 2 evap fans not turning, one evap fan stopped, one evap fan dead, one evap fan not turning, one evap fan not running | the evaporator fan stands still; with the door open that tells something only while its switch is held in | evap-fan-none
evap-fan-none | no evap-fan | the evaporator has no fan |
condenser-dirty | condenser dirty, condenser blocked, dirty condenser, coil dirty, dirty coil, coils dirty, dirty coils, condenser coil dirty, outdoor coil dirty, condenser plugged, condenser coil clogged, condenser caked, condenser coil matted, coil matted, coils matted, outdoor coil matted, condenser full of dust, condenser full of lint, coil caked, coils caked, coil full of dust, coil full of lint, coils full of dust, condenser matted, condenser covered in dust, condenser full of hair, condenser coil plugged, outdoor coil clogged, condenser packed with lint, condenser packed, condenser packed with dust, condenser packed with dirt | the condenser is matted with dust or has no room to breathe | condenser-clean
condenser-clean | condenser clean, coils clean, condenser coil clean | the condenser is clean and has room to breathe |
condenser-warm | condenser warm, condenser hot, discharge hot | the condenser is warm | condenser-cold
condenser-cold | condenser cold, condenser barely warm, discharge cool | the condenser is cold or barely warm; it tells something only while the compressor runs |
room-hot | room hot, hot room, in the sun | the room is hotter than the appliance is made for | room-normal
room-cold | room cold, cold room, room too cold, basement cold | the room is colder than the appliance works in | room-normal room-hot
room-normal | room normal, room cool | the room is within what the appliance is made for |

# Frost, doors, water.
frost-none | frost none, no frost, evaporator bare | no frost on the evaporator; it tells something only after a long run | frost-partial frost-even frost-heavy
frost-partial | frost partial, frost at inlet only, frost patchy, partial frost, frost half, half frost, frost on first pass only, half frosted, partly frosted, frosted half, evap half frosted, evap partly frosted, evap frosted half way, coil half frosted, frost on half, frost pattern partial, frost at inlet, frosted at inlet only, frost only on first, frost only on the first, frost on first 2 rows, frost on first two rows, frosted first pass only, frost at top only, frost only at inlet, frost only at top | frost on a part of the evaporator only | frost-even frost-heavy
frost-even | frost even, frost normal, frost thin, even frost | a thin, even frost over the whole evaporator | frost-heavy
frost-heavy | frost heavy, evaporator iced, iced up, ice on evaporator, heavy frost, frosted over, iced over, ice on back wall, coil iced, fan hits ice, block of ice on evap, evap blocked with ice, evap frozen, evap full of ice, evap solid ice, evap block of ice, evap frosted solid, evap frosted over, icing up, freezing up, solid ice on evap, evap packed with ice | the evaporator is packed with frost or ice |
restriction-frost | restriction frost, frost at drier, drier cold, cap tube frosted, frosted at drier, liquid line frosted at drier, drier frosted, capillary frosted, cap tube frost, frost on cap tube, capillary frost | frost or a cold spot at the drier or the capillary tube | restriction-none
restriction-none | drier warm, no restriction, hiss at stop | no sign of a restriction at the drier or the capillary tube |
glass-bubbles | bubbles in sight glass, bubbles in the sight glass, bubbles in glass, sight glass bubbles, sight glass bubbling, sight glass flashing, sight glass foams, sight glass foaming, bubbling sight glass | bubbles in the sight glass: little charge, or a restriction before it |
oil-stain | oil stain, oily joint, oil trace, oil at joint, oil | oil at a joint or on the tubing |
leak-found | leak found, bubbles, leak detector alarms, refrigerant leak, leaks refrigerant, leak at joint, leaking refrigerant, leak on suction line, leak in evap, leak in condenser, leak in sealed system, pinhole leak, pinhole in evap, evaporator punctured, punctured evaporator, flare leaking, flare nut leaking, flare leaks, leak at flare, leak in coil, coil leaking, leak at schrader, schrader leaks, schrader leaking, leak at valve core, valve core leaks, valve core leaking, leak at core, leak at service valve, service valve leaks, service valve leaking, leak at service port, leak at braze, leak at brazed joint, braze leaks, leak at drier, drier leaks, leak at u bend, leak at access valve, access valve leaks, leak on liquid line, leak at distributor, leak again | a leak detector or bubbles showed a leak | leak-not-found
leak-not-found | no leak found, leak check clean, no leaks found, no refrigerant leaks, no refrigerant leak, no leak detected, no leaks detected, all joints no bubbles, no bubbles at joints, no bubbles on joints, no bubbles at any joint, no bubbles anywhere, leak check no bubbles, leak check good, leak check passed, leak test clean, leak test good, leak test passed, bubble test clean, bubble test good, bubble test passed, soap test good, soap test clean | a full search of all joints found no leak |
gasket-leaks | gasket leaks, gasket torn, gasket bad, seal torn, door seal bad, door seal torn, torn gasket, door not closing, door gasket split, door seal perished, door seal split, door seal ripped, door gasket torn, door gasket ripped, door gasket worn, door gasket leaking, door not sealing, door doesn't seal, door doesn't close, gasket split, gasket ripped, gasket perished, gasket worn, gasket not sealing, gasket doesn't seal, gasket leaking, door seal gone, door seal not sealing, door seal leaking, seal perished, door seal worn, door ajar, door not shutting, door boot torn, boot torn, door boot ripped, bellows torn, door bellows torn, door boot split, bellow torn, bellow split, bellows split, boot split, bellow ripped, bellows leaking, boot leaking | the door gasket does not seal | gasket-sound
gasket-sound | gasket sound, gasket good, door seals, door seal good | the door gasket seals all round |
heavy-use | heavy use, door opened often, warm food loaded, new load | much warm food or a door opened often | normal-use
normal-use | normal use | no unusual load and no unusual door openings |
lamp-stays-on | lamp stays on, light stays on | the inside lamp stays on with the door shut | lamp-goes-off
lamp-goes-off | lamp goes off, light goes off | the inside lamp goes off with the door shut |
water-inside | water inside, water in cabinet, water in compartment | water stands inside the cabinet |
water-on-floor | water on floor, water on the floor, water under, puddle, water in base, water in the base, water on kitchen floor, water on the kitchen floor, water on laundry floor, water all over floor, water over floor, water leaking on floor, leaking on floor, leaks on floor | water on the floor |
drain-blocked | drain blocked, drain frozen, blocked drain, frozen drain, drains blocked, drain tube frozen, drain tube blocked, drain hole blocked, drain hole frozen, defrost drain iced, defrost drain blocked, defrost drain frozen, drain line clogged, condensate drain blocked, condensate line blocked, drain iced, drain pan clogged, float switch tripped, float tripped, drain pan full, pan full, pan full of water | the drain does not take water | drain-clear
drain-clear | drain clear, drain open | the defrost drain takes water freely |
pan-cracked | pan cracked, drain pan cracked, pan missing, pan off | the drain pan is cracked or out of place | pan-sound
pan-sound | pan sound, pan good, drain pan good | the drain pan is whole and in place |
water-line-leaks | water line leaks, water valve leaks, tube drips, hose leaks, inlet hose leaks, fill hose leaks, drain hose leaks, hose leaking, drain hose split, hose split, inlet valve leaks, water valve leaking, tube leaks, tube leaking, water line leaking, inlet hose leaking, drain hose leaking, drain hose cracked, hose clamp off, hose clamp loose, clamp off, leak at drain hose, leak at hose, leak at inlet hose, leak at fill hose, leak at inlet valve, leak at hose clamp, inlet valve leaking | a water tube, valve or hose drips | water-line-dry
water-line-dry | water line dry, hoses dry, no water line | tubes, valve and hoses are dry, or there are none |
not-level | not level, leans forward | the cabinet leans so that doors or drain do not work | level
level | level, stands level | the cabinet stands level |

# Cooling and its controls.
cools-down | cools down, cools, cooling, pulls down | pulls down to its set point | does-not-cool cools-slowly
cools-slowly | cools slowly, pulls down slowly, cools a little, cools down slowly, cools too slowly | gets cooler but does not reach its set point in due time | does-not-cool
does-not-cool | does not cool, no cooling, not cooling, warm inside | does not get cooler |
freezes-food | freezes food, too cold, fridge freezes | the fresh-food part freezes | does-not-cool
set-coldest | set to coldest, set too cold, dial at coldest | the control is set to its coldest | set-normal
set-normal | set normal, dial at middle | the control is set to its middle range |
damper-stuck-open | damper stuck open, damper open, damper won't close, damper frozen open | the air damper stays open | damper-moves damper-stuck-shut damper-none
damper-stuck-shut | damper stuck shut, damper shut, damper stuck closed, damper frozen shut, damper iced shut, damper closed, damper frozen closed, damper won't open | the air damper stays shut | damper-moves damper-none
damper-moves | damper moves | the air damper opens and closes | damper-none
damper-none | no damper | there is no air damper |
vents-blocked | vents blocked, food against vents | food or ice blocks the air passages inside | vents-clear
vents-clear | vents clear | the air passages inside are free |
defrost-runs-by-hand | defrost runs by hand, forced defrost heats, manual defrost heats, defrost heats, defrost works, defrost heater glows, heater glows in manual defrost, heater glows in forced defrost, frost melting in manual defrost, frost melting in forced defrost, ice melting off coil, ice melting off evap, frost melting off coil, forced defrost runs, forced defrost works, forced defrost clears coil, forced defrost clears the coil, defrost cycle runs, defrost cycle works, defrost clears coil, defrost clears the coil, defrost clears outdoor coil, defrost melts ice | a defrost that is on heats the evaporator | defrost-dead-by-hand
defrost-dead-by-hand | defrost dead by hand, forced defrost dead, defrost no heat, no defrost heat | a defrost started by hand does not heat |

# Power, switches, tripping.
all-dead | all dead, nothing works, completely dead, lamp dark, no sign of life, no signs of life, dead as a doornail, no lights, no lights no display | no lamp, no display, no sound at all | light-works clicks hums starts-and-runs
light-works | light works, lamp works, display on, display lit | a lamp or display of the appliance works |
outlet-works | outlet works, lamp works at outlet, outlet live, outlet good, power at outlet, power at the outlet | another appliance works at the same outlet | outlet-dead
outlet-dead | outlet dead, outlet off, no power at outlet, no power at the outlet, no power at socket, no power at wall, no power at receptacle, socket dead, power point dead, gpo dead, no volts at outlet, wall socket dead, receptacle dead, outlet has no power | nothing works at that outlet | supply-sound supply-low supply-high light-works starts-and-runs clicks hums cond-fan-runs evap-fan-runs
breaker-tripped | breaker tripped, breaker off, tripped breaker, breaker was tripped, breaker was off, trips breaker, trips the breaker, breaker trips, trips its breaker, blows fuse, blows the fuse, tripping breaker, tripping the breaker, trips mcb, tripping mcb, trips main, trips main breaker, trips the main, trips the mcb, trips fuse, mcb tripped, mcb trips, breaker half tripped, keeps tripping breaker, keeps tripping the breaker | the breaker trips, or was found tripped or off |
trips-at-once | trips at once, breaker trips at once, trips immediately, breaker trips immediately | the breaker trips the moment the appliance is switched on | trips-later breaker-holds
trips-later | trips later, breaker trips later, breaker trips after a while | the breaker trips after a while | breaker-holds
breaker-holds | breaker holds, breaker reset and holds, reset and holds, breaker stays on | the breaker holds |
residual-trips | residual trips, gfci trips, gfci tripped, rcd trips, rcd tripped, earth leakage trips, trips gfci, trips the gfci, trips rcd, trips the rcd, trips earth leakage, tripping rcd, tripping gfci, tripping earth leakage, tripping the rcd, tripping the gfci, tripping safety switch, trips safety switch, trips the safety switch, trips rcbo, tripping rcbo, trips elcb, elcb trips, rcbo trips, safety switch trips, safety switch tripped | it is the residual-current (ground-fault) device that trips |
trips-only-when-called | trips only when called, trips when heater starts, trips when comp starts, trips when motor starts, trips when heat comes on, trips when the heat comes on, trips when element comes on, tripping when it heats, trips when it heats, trips when heating, trips on heat, tripping when heat comes on | the breaker trips only when a load of the appliance is called on | breaker-holds trips-unplugged
trips-unplugged | trips unplugged, breaker trips unplugged | the breaker trips with the appliance unplugged | holds-unplugged
holds-unplugged | holds unplugged, breaker holds unplugged | the breaker holds with the appliance unplugged |
trips-with-other-load | trips with other load, other appliance trips it | another appliance of like load trips the breaker as well | holds-with-other-load
holds-with-other-load | holds with other load, other appliance holds | the breaker holds another appliance of like load |
other-outlet-holds | holds on other circuit, holds on another circuit | the appliance does not trip another circuit | other-outlet-trips
other-outlet-trips | trips other circuit, trips on other circuit, trips on another circuit | the appliance trips another circuit as well |

# Heating appliances and motors.
heats-up | heats up, heats, heating, heater heats, element heats, element glows, heater glows, heating element glows, bake element glows, broil element glows, element red, burner glows, heating element works | gets hot | does-not-heat heats-slowly
heats-slowly | heats slowly, heats slow, heats up slowly, heats up slow, slow to heat, slow to heat up, slow to preheat, lukewarm | gets warm but not to its set point | does-not-heat
does-not-heat | does not heat, no heat, stays cold, not heating, not hot, not heat, element not heating, elements not heating, element doesn't heat, stone cold, heater not heating | does not get warm |
heater-none | no heater, no electric heater | the appliance has no electric heater | heater-sound heater-suspect heater-open heater-failed heater-grounded heater-insulation-sound
fuse-none | no fuse | the appliance has no fuse of its own | fuse-sound fuse-open
bake-heats | bake works, bake heats, bake good, bake element heats, bake element works | the bake element heats | all-dead
broil-heats | broil works, broil heats, broil good, broiler works, grill works, grill heats, broil element heats, broil element works | the broil element or grill heats | all-dead
other-heats | other element heats, other elements heat, other elements work, other rings work, other rings heat, other burners work, other burners heat, top burners work, oven works | another element of the same appliance heats: it has its supply, both legs of it | other-dead all-dead leg-missing supply-absent outlet-dead
other-dead | no element heats, all elements dead, nothing heats, other elements dead, broil dead too, bake dead too | no element of the appliance heats: what all share is gone | heats-up
airflow-blocked | airflow blocked, vent blocked, lint blocked, filter blocked, filter dirty, lint in vent, lint packed in vent, vent full of lint, duct blocked, duct crushed, vent crushed, vent hose crushed, lint filter blocked, filter plugged, dirty filter, clogged filter, blocked vent, duct full of lint, foil duct crushed, aluminium foil duct crushed, lint filter dirty, lint screen dirty, lint screen blocked, lint trap full, lint filter full, air filter dirty, air filter clogged, vent restricted, exhaust blocked, airflow restricted, filters dirty, filters blocked, filter full of lint, filter full, filter full of food, filter full of dust, vent full, duct restricted, vent duct clogged, vent line clogged, vent hose clogged, evap coil plugged, evap coil dirty, evap coil blocked, indoor coil dirty, indoor coil blocked, blower wheel dirty, blower wheel clogged, return air blocked, return grille blocked, vent plugged, duct plugged, exhaust plugged, vent packed, vent hood blocked, flame arrestor blocked, flame arrestor plugged, flame arrestor dirty, flame arrestor screen blocked, flame arrestor screen plugged, intake screen plugged, intake screen blocked, air intake screen plugged, air intake screen blocked, air intake plugged, air intake blocked | the air or water path is blocked | airflow-clear
airflow-clear | airflow clear, vent clear, filter clean, flame arrestor clean, intake screen clean, air intake clear | the air or water path is free |
shaft-free | shaft free, turns by hand, turns freely, spins by hand, spins freely, turns over by hand, turns free by hand, turns easily by hand, turns good by hand, motor turns freely, motor turns by hand | the shaft turns freely by hand | shaft-stuck
shaft-stuck | shaft stuck, stuck by hand, does not turn by hand | the shaft does not turn by hand; it tells of the motor only when uncoupled from its load |
starts-when-pushed | starts when pushed, spins when pushed, runs when pushed, starts with a push, starts with push, starts only when pushed, starts if pushed, starts by hand, runs if pushed, runs if i push it, starts if i push it, runs if i spin it, starts if i spin it, runs when spun, starts when spun, spins if pushed, needs a push, needs a push to start, fan starts when pushed, fan starts with a push, motor starts when pushed, blade starts when pushed, fan runs when pushed, fan starts with push, drum turns if pushed, needs a spin to start | runs on when its shaft is given a turn with a tool | silent
one-speed-dead | one speed dead, dead on one speed, dead on high, dead on low, dead on medium, runs on high only, runs on low only, one speed only | the motor runs, but not on every speed | silent all-dead
speed-switch-none | no speed switch, one speed motor | the motor has one speed, or its speeds are set by the control | speed-switch-closed speed-switch-open one-speed-dead
load-jammed | load jammed, coin stuck in pump, sock jammed in drain pump, sock jammed in pump, pump filter full, pump trap full, filter full of coins, trap full, pump jammed, drum jammed, blade jammed, blade stuck, fan blade stuck, impeller jammed, impeller stuck, impeller blocked, jammed impeller, glass in sump, glass in pump, glass in impeller, glass in trap, sock in pump, pump blocked, object in pump, coin in pump, bone in pump, pump filter blocked, sock in impeller, object in impeller, coin in impeller, drum seized, pump seized, bra wire in pump, bra wire in drum, object stuck in pump, sock stuck in pump, screw in pump, hair in pump, hairpin in pump, string in impeller, foreign object in pump, impeller seized, money in pump, toy in pump, toothpick in pump | what the motor drives is jammed | load-free
load-drags | bearing dragging, bearings dragging, bearing drags, bearings drag, pump bearing dragging, motor bearing dragging, load drags, load dragging, pump drags, impeller rubs, shaft drags, pump stiff, hard to turn by hand | what the motor drives turns, but drags | load-free
load-free | load free, pump free, drum free, drum turns by hand, drum turns freely, blade free, impeller free, impeller turns, drum turns free by hand, drum turns freely by hand, drum turns easily by hand, drum turns good by hand, drum turns fine by hand, drum spins freely by hand, drum spins by hand, drum spins free by hand, drum spins easily by hand | what the motor drives turns freely |

# Draining, drying.
drains | drains, drains now, pumps out, water goes out, empties, drained in, drained good, drained fast, drained twice, drained fully, tub drained, pump drains, pump drained, pumped out, water out in, water gone in, tub empties, tub empty in, empties tub, emptied in | the pump takes the water out | does-not-drain load-jammed impeller-loose hose-blocked
does-not-drain | does not drain, not draining, water stays in, water stands in, does not pump out, water left in drum, water left in tub, full of water, tub full of water, drum full of water, not pumping out, water not draining, water won't drain, standing water | the water stays in |
pump-runs | pump runs, drain pump runs, pump running, pump starts, circ runs, circ turns, circ running, circ pump runs, circulator runs, circulator turns, circulator running | the motor of the pump runs | load-jammed
impeller-sound | impeller sound, impeller good, impeller clean, impeller whole | the impeller is whole, sits tight on its shaft and turns | load-jammed impeller-loose
impeller-loose | impeller loose, impeller broken, broken impeller, loose impeller, impeller off | the impeller is broken or loose on its shaft |
dries | dries, water in bucket, collects water, water drips in bucket, water dripping in bucket, drips in bucket, dripping in bucket, water drips in, bucket fills, bucket filling, pint in, pints in | takes the water out of air or clothes | does-not-dry
does-not-dry | does not dry, not drying, still damp, no water in bucket, bucket empty, collects no water | takes no water out of air or clothes |

# Dangers.
shock | shock, shocks, electric shock, gives a shock, got a shock, gave me a shock, shocked me, tingles, tingle, got a tingle, metal is live, case is live | somebody felt a shock from its metal |
called-unsafe | unsafe, not safe, dangerous, red tagged | it was called unsafe |
no-called-unsafe | safe to use, safe to run, safe now | it was called safe to use | called-unsafe
no-shock | no shock, no shocks, no tingle, no shock any more, shock gone, shock is gone, tingle gone | nobody feels a shock from its metal any more | shock
hazard | hazard, bare wires, exposed wires | something that can hurt whoever is near | no-hazard
no-hazard | hazard gone, no hazard, hazard made good, hazard fixed, hazard mended, hazard removed | what could hurt is gone |
complaint-back | complaint back, complaint still there, still there, complaint there, fault back, fault still there, complaint again | what was complained of is back | complaint-gone
complaint-gone | complaint gone, complaint not back, fault gone, gone, gone now, complaint cured | what was complained of is gone |
runs-open | runs with door open, runs with the door open, runs with lid open | it runs with its door or lid open | no-runs-open
no-runs-open | stops when door opens, stops when the door opens, stops with door open, stops when door is opened, stops when lid opens, stops when the lid opens, stops with lid open, does not run with door open, does not start with door open, does not spin with lid open | it stops when its door or lid opens |
interlock-closed | interlock stuck closed, interlock stuck shut, interlock stays closed, interlock welded, interlock welded closed, interlock doesn't open, interlock shorted, door interlock stuck closed, door interlock welded, door switch stuck closed, door switch stuck shut, door switch stays closed, door switch welded, door switch welded closed, door switch doesn't open, door switch shorted, primary switch stuck closed, primary switch welded, primary interlock stuck closed, secondary switch stuck closed, secondary switch welded, secondary interlock stuck closed, lid switch stuck closed, lid switch stays closed, lid switch welded, lid switch shorted | a switch of the door or lid conducts with it open | interlocks-good
radiates | microwaves leak, leaks radiation, leakage too high | microwaves can come out of the oven | no-radiates
no-radiates | leakage test good, leakage test passed, no microwave leakage, leakage within limits | the leakage of microwaves was measured and is within its limit |
outlet-wrong | open ground, outlet not grounded, no ground at the outlet, reversed polarity | the outlet has no earth, or its line and neutral are swapped | no-outlet-wrong
earth-off | earth wire off, ground wire off, earth wire loose, ground wire loose, not earthed, not grounded | an earth wire of the appliance is off, loose or broken |
no-outlet-wrong | outlet wired right, outlet grounded, outlet earthed, outlet tester good, polarity right, polarity good, polarity correct, ground good at outlet | the outlet has its earth, and line and neutral in their places |
no-smoke | no smoke, no burning smell, no burnt smell, no smell of burning, no more smoke, nothing smokes | neither smoke nor a smell of burning | smoke
no-gas-smell | no gas smell, no smell of gas, no gas smelled, no gas odor | no smell of gas | gas-smell
no-gas-leak | no gas leak, gas leak test good, gas tight, gas leak test clean, no bubbles at gas, gas joints tight, no bubbles | a leak test of the fuel gas found none | gas-leak gas-smell
gas-leak | gas leak, gas leaks, leaking gas, leaks gas, gas leaking, leak at gas, leak at the gas, leak of gas | fuel gas leaks |
co | co alarm, co alarm sounding, co detector, carbon monoxide, co found, co in the room, heat exchanger cracked, cracked heat exchanger, flue blocked, blocked flue, flue disconnected, flue off, flue open, chimney blocked, burner sooted, soot, flue gas in the room | what makes or spills carbon monoxide, or a warning of it | no-co
no-co | no co, co clear, no carbon monoxide, co zero, co 0 ppm, co meter 0 ppm, co 0, carbon monoxide 0 ppm, 0 ppm co | a meter found no carbon monoxide |
no-spill | spill test good, spill test passed, no spillage, no spill, no spilling, drafts good, flue draws, draft good, draft test good, combustion test good, combustion good | flue and burner were tested and spill nothing |
smoke | smoke, smokes, smoking, sparks, sparking, arcing, burning smell, smells burnt, smell of burning, burnt smell | smoke, sparks or a smell of burning |
gas-smell | gas smell, smell of gas, smells of gas, smells gas, smell gas, i smell gas, gas odor, odor of gas, smelled gas, strong gas smell | a smell of gas |

# Air conditioners.
blower-runs | blower runs, indoor fan runs, fan motor runs | the fan blows | blower-stopped all-dead
blower-stopped | blower stopped, blower still, blower dead, blower not running, blower does not run, indoor fan not running, indoor fan dead, indoor fan stopped, indoor fan not turning, blower not turning, indoor blower not running, no blower | the fan stands still |
blower-stiff | blower stiff, blower jammed, blower seized, blower motor seized, fan motor seized | the fan does not turn freely by hand | blower-runs
coil-cold | evap coil cold, coil cold, coil sweats, coil cold and wet | the evaporator coil is cold and wet over its whole face | coil-partial coil-warm coil-iced
coil-partial | coil cold in part, coil partly cold | the evaporator coil is cold in a part only | coil-warm
coil-warm | coil warm, evap coil warm | the evaporator coil is as warm as the room | coil-iced
coil-iced | evap coil iced, coil frozen, coil iced over, evap coil frozen, coil freezing, coil icing, indoor coil frozen, indoor coil iced, evap coil freezing | ice on the evaporator coil of an air conditioner or dehumidifier | frost-none frost-even
rested | rested 10 min, rested ten minutes, rested 15 min, rested 20 min, rested 30 min, rested an hour, rested overnight, stood overnight | it stood for ten minutes or more before this start | restarted-soon
cap-bulging | cap bulging, cap swollen, cap leaks oil, cap burst, bulging cap, cap bulged, cap blown, cap domed, cap leaking, cap split | a capacitor's can is swollen, leaks or has burst |
start-cap-bulging | start cap bulging, start cap bulged, start cap swollen, start cap burst, start cap blown, start cap domed, start cap leaking, start cap split | the start capacitor's can is swollen, leaks or has burst |
run-cap-bulging | run cap bulging, run cap bulged, run cap swollen, run cap burst, run cap blown, run cap domed, run cap leaking, run cap split, dual cap bulging, dual cap bulged, dual cap swollen | the run capacitor's can is swollen, leaks or has burst |

# Drums, water, noises.
spins | spins | the drum spins | does-not-spin
does-not-spin | does not spin, no spin | the drum does not spin |
agitates | agitates, washes, tumbles to and fro | the motor turns agitator or drum in the wash | all-dead
drum-turns | drum turns, tumbles, drum spinning, drum turning, drum rotates | the drum turns | drum-stands all-dead
drum-stands | drum stands, drum does not turn, drum not turning, does not tumble, drum won't spin, drum not spinning, drum not moving | the drum stands | spins
cleans | washes clean, dishes clean, comes out clean, cleans good | a wash comes out clean | does-not-clean
does-not-clean | does not clean, does not wash clean, not cleaning, dishes dirty, dishes not clean | a wash does not come out clean |
does-not-fill | does not fill, no water, no water comes in, not filling, no fill | no water comes in | fills
fills | fills, fills hot, fills hot and cold, fills with hot, fills with hot water, hot fills, hot water comes in, water comes in, water fills, valve fills, mold full, mould full, mold fills, mold filled, mould filled | water comes in in due time | fills-slowly overfills
fills-slowly | fills slowly, water fills slowly, water fills slow, trickles in, fills slow, slow fill, filling slowly, slow to fill | water comes in too slowly | does-not-fill
overfills | overfills, keeps filling, overfilling, over filling, overflows, overflowing, over fills, fills too high | water comes in beyond its level | does-not-fill
fills-unpowered | fills with power off, fills unplugged, water valve leaks by, inlet valve leaks by, water valve leaking by, inlet valve leaking by, water valve passes, inlet valve passes | water runs in with the plug pulled, or its valve not fed | no-fill-unpowered
no-fill-unpowered | stops with power off, stops filling unplugged | the water stops when the plug is pulled |
level-full | level says full, pressure switch says full, float stuck up, float stuck, float stuck high, float stuck on, float hung up, float jammed up, float switch stuck, float switch stuck up, float switch stuck on, float switch stuck closed, float switch hung up | level sensing or float reports water that is not there | level-sound level-empty
level-empty | level says empty, pressure switch says empty, float stuck down, float stuck low, float stuck off, float jammed down, float switch stuck down, float switch stuck off, float switch stuck open, float switch hung down, pressure hose off | level sensing or float does not report the water that is there | level-sound
flange-leaks | sink flange leaks, flange leaks, leak at sink flange, leaks at sink flange, leaks at flange, flange leaking, sink flange leaking, mounting ring leaks, putty gone | water comes by the flange in the sink | flange-dry
flange-dry | sink flange dry, flange dry | the flange in the sink is dry |
joints-leak | fittings leak, fitting leaks, fitting leaking, drain elbow leaks, dishwasher hose leaks, dishwasher hose leaking, elbow leaks, union leaks, union leaking, nipple leaks, nipple leaking, inlet nipple leaks, drain valve leaks, drain valve drips, drain valve leaking, element gasket leaks, element gasket leaking, anode fitting leaks, anode port leaks, cold inlet leaks, hot outlet leaks, humidifier leaks, humidifier leaking, leak at fitting, leak at union, leak at nipple, leak at drain valve, leak at element, leak at anode, leak at humidifier, dielectric union leaks, condensate hose off, condensate hose cracked, condensate tube cracked | a joint, hose or fitting at it leaks | joints-dry
joints-dry | fittings dry, joints dry, all fittings dry, all joints dry | its joints, hoses and fittings are dry |
body-leaks | body leaks, disposer body leaks, disposal body leaks, leaks from bottom of disposer, leaks from bottom, housing cracked, leaks from reset button, shaft seal leaks | water comes out of its body | body-dry
body-dry | body dry, disposer dry, housing dry | its body is dry |
relief-opens | relief valve opens, relief valve sprays, relief valve pops, relief valve spraying, relief valve popping off, relief valve drips when heating, relief valve drips while it heats, t p opens, t p valve opens, t p valve sprays, relief valve discharges, t p valve discharges | the relief valve lets water out while it heats | relief-shut
relief-leaks | relief valve leaks, relief valve drips, relief valve leaking, relief valve dripping, relief valve passes, relief valve weeps, t p valve leaks, t p valve drips, t p valve leaking, t p leaks, t p drips | the relief valve drips without a reason | relief-shut relief-opens
relief-shut | relief valve dry, relief valve good, relief valve shut, t p valve dry, relief pipe dry | the relief valve is shut and dry |
tank-leaks | tank leaks, tank leaking, tank rusted through, leak from jacket, water from jacket, water from inside jacket, tank seam leaks, inner tank leaks, tank pinhole, tank split, tank weeping | the tank itself leaks | tank-dry
tank-dry | tank dry, tank good, no water from jacket, tank sound | no water comes out of the tank itself |
gear-leaks | gearcase leaks, gearcase leaking, gearcase seal leaks, gearcase seal leaking, transmission leaks, transmission leaking, transmission seal leaks, oil at gearcase, oil under transmission, oil from gearcase, oil from transmission, oil on clutch, oil on belt | oil comes out of the gearcase | gear-dry
gear-dry | no oil at gearcase, gearcase dry, transmission dry, no oil from gearcase | the gearcase is dry |
cold-smells | cold water smells too, cold smells too, cold water smells, both smell, both hot and cold smell | the cold water smells as well: it is the house's, or the well's |
cold-odourless | only hot water smells, only hot smells, cold water doesn't smell, cold does not smell, cold water fine | only the hot water smells | cold-smells
anode-spent | anode spent, anode gone, anode eaten, anode rod gone, anode rod eaten, anode rod spent, anode corroded, anode rod corroded, anode used up, magnesium anode, anode eaten away, no anode | the anode is spent, or of a kind that this water makes smell | anode-sound
anode-sound | anode good, anode rod good | the anode is whole, and of the kind for this water |
water-tepid | set low, water kept tepid, tank stood unused, house empty for weeks, unused for weeks, vacant for weeks, thermostat set low | its water is kept tepid, or stood for weeks | water-kept-hot
water-kept-hot | water kept hot, set hot, used daily, tank used daily | its water is kept hot and used |
wheel-loose | wheel loose, blade loose, blade bent, wheel dirty, fan wheel loose, fan wheel dirty, fan blade loose, fan blade bent, blower wheel loose, blower wheel rubs, wheel rubs, blade rubs, blade dirty | wheel or blade is loose, bent or dirty | wheel-sound
wheel-sound | wheel good, wheel tight, blade good, fan wheel good, fan blade good, blower wheel good | wheel and blade are clean, straight and tight |
check-leaks | check valve leaks, check valve stuck open, check valve bad, no check valve, check valve missing, check valve passes, water runs back | the water runs back from the pipe into the pit | check-holds
check-holds | check valve holds, check valve good, no water runs back | the check valve holds the water in the pipe |
hose-deep | siphons, siphoning, syphons, siphons out, drain hose too deep, drain hose too low, drain hose too far down, drain hose shoved too far down, drain hose pushed too far down, drain hose down standpipe, drain hose on floor, drains while it fills, drains while filling, no high loop | the water runs out by its drain hose while it fills | hose-high
hose-high | drain hose high enough, drain hose height good, standpipe good, high loop good | the drain hose hangs as high as it should, with air round it |
level-sound | level sensing good, pressure switch good, float moves | the level sensing reports the water as it stands |
no-ice-made | no ice, no ice made, makes no ice, does not make ice, no cubes, not making ice | the ice maker makes no ice | makes-ice
makes-ice | makes ice, ice made, ice drops, drops ice, cubes drop, made ice, ice dropped, dropped ice, first batch dropped, batch dropped, first harvest dropped, cubes dropped, making ice | the ice maker makes ice and drops it |
noisy | noisy, bangs, squeals, grinds, rattles, hums loudly, hums loud, comp hums loudly, compressor hums loud, compressor humming loudly, motor hums loudly, loud hum | it makes a noise that it should not | quiet-now
quiet-now | runs quietly, noise gone, quiet now, no noise now, no more noise, runs quiet | it runs without the noise |

# Burners and heat.
heat-lost | heat lost, goes cold again, heat quits, heats then goes cold, heats then quits | the heat comes and is lost after minutes | heat-kept
heat-kept | keeps heating, burner relights, relights when hot | the heat stays, or the burner lights again when hot |
quits-glowing | glows when hot no flame, igniter glows when hot | hot, the igniter glows again and no flame follows | quits-dark
quits-dark | dark when hot, igniter dark when hot | hot, the igniter stays dark |
zone-shut | zone valve stuck, zone valve shut, zone valve stuck shut, zone valve doesn't open, zone valve not opening, zone valve dead, zone valve head dead, zone valve motor dead | the zone valve does not open | zone-opens
zone-opens | zone valve opens, zone valve open, zone valve works | the zone valve opens, and the pipe behind it grows hot |
airbound | airbound, air bound, air locked, airlocked, air in zone, air in pipes, air in lines, zone air bound | air stands in the pipes | zone-bled
circulator-stopped | circulator stopped, circulator dead, circulator not running, circulator not turning, circulator doesn't run, circulator silent | the circulator stands | pump-runs
zone-bled | zone bled, no air in zone, no air in pipes, bled clean | the zone was bled, and only water comes |
pilot-good | pilot good, pilot lights, pilot lit, pilot flame good | the pilot burns well | pilot-weak pilot-none
pilot-weak | pilot weak, pilot small, pilot flame small, pilot flame weak, pilot yellow, pilot orifice dirty, pilot dirty | the pilot is too weak for its thermocouple | pilot-none
pilot-none | no pilot, pilot does not light, pilot won't light, no pilot flame | the pilot does not light with its button held |
draws-well | draws well, draws air, draws smoke, pulls air, pulls smoke | it draws the air off | airflow-blocked belt-broken
keeps-sparking | keeps sparking, keeps clicking, still sparking, still clicking, sparks nonstop, clicks nonstop | it sparks though nothing calls for it | spark-stops
spark-stops | stops sparking, stops clicking, sparking stopped, clicking stopped, no more clicking, sparks only to light | it sparks to light, and no longer |
spark-called | spark switch shorted, spark switch wet, spark switches wet, spark switch stuck, ignition switch shorted, ignition switch wet, igniter switch shorted, igniter switch wet, spark harness wet, spark harness shorted, stops with harness off | a spark switch or its harness calls with each knob off | spark-uncalled
spark-uncalled | sparks with harness off, clicks with harness off, spark module bad, spark module shorted | the module sparks on without its switches |
thermocouple-weak | thermocouple weak, thermocouple dead, thermopile weak | thermocouple or thermopile gives too little | thermocouple-sound
thermocouple-sound | thermocouple good, thermopile good | the thermocouple or thermopile gives enough |
press-open | pressure switch open, pressure switch stuck open, pressure switch not closing, pressure switch won't close | the pressure switch does not close | press-closed
press-closed | pressure switch closed, pressure switch closes | it closes with the inducer |
draft-enough | draft enough, flue and hose clear | the draft is above the marking of the pressure switch | draft-poor
draft-poor | draft poor, draft low, intake blocked, intake pipe blocked, vent terminal blocked, pressure switch hose off, pressure switch hose cracked, pressure switch hose blocked | the pressure switch gets too little draft |
inducer-runs | inducer runs, inducer running, inducer on | the inducer runs | inducer-stopped
inducer-stopped | inducer stopped, inducer not running, inducer does not run, inducer dead, no inducer | the inducer stands though heat is called |
fan-set-on | fan set on, fan set to on, fan switch on | the thermostat's fan stands at on | fan-set-auto
fan-set-auto | fan set auto, fan set to auto, fan on auto | the thermostat's fan stands at auto |
blower-kept-on | blower runs with g off, blower runs with thermostat off, blower relay stuck | it runs though nothing calls it and the limit is closed | blower-lets-go
blower-lets-go | blower stops with g off, blower stops with thermostat off | it stops once nothing calls it |
igniter-glows | igniter glows, igniter glowing, igniter on, igniter sparks, sparks at igniter, sparks at the igniter, sparks at electrode, electrode sparks | the igniter glows or sparks when heat is called for | igniter-dark igniter-open
igniter-dark | igniter dark, no glow, igniter no glow, igniter does not glow, igniter not glowing, igniter dead, no spark, igniter no spark, electrode not sparking, igniter not sparking, igniter not working | the igniter stays dark when heat is called for | flame-lights
igniter-weak | igniter weak, weak igniter, igniter dim, igniter glows weakly, igniter glows but weak, igniter amps low | the igniter glows weakly or draws less than its valve or marking asks for | igniter-strong igniter-dark
igniter-strong | igniter strong, igniter amps good | the igniter draws what its valve or marking asks for |
flame-lights | flame lights, burner lights, flame on, lights, burners light, oven lights, oven burner lights, main burner lights | a flame follows the glow | flame-none does-not-heat gas-off
flame-drops-out | flame drops out, flame goes out, lights then goes out, lights and goes out, lights then shuts off, lights and shuts off, flame lights then goes out, burner lights then goes out, flame lost, flame lights then drops out, lights then drops out, lights and drops out, burner lights then drops out, flame lights then out, flame lights and goes out, flame lights but goes out, flame lights but drops out, burner lights but goes out, flame lights and drops out, flame lights and dies, flame lights then dies, lights then dies, lights and dies, flame dies, burner lights and drops out, burner lights and goes out, burner lights then dies, flame lights then goes off, flame comes on then goes out, flame comes on and goes out, burner comes on then goes out, flame won't stay lit, burner won't stay lit, flame won't stay on | a flame lights and goes out again within seconds | flame-none
flame-none | no flame, flame does not light, burner does not light, no ignition, doesn't ignite, doesn't light, spark but no flame, flame does not come on, gas doesn't ignite | no flame follows |
too-hot | too hot, overheats, runs too hot, oven too hot, oven overheating, overheating, over heating, oven overheats, oven runs hot, gets too hot, burns food, burning food | it gets hotter than it is set to | heat-right does-not-heat heats-slowly
heat-right | heat right, holds its temperature, temperature right, holds temp, holds set temp, oven holds set temp, holds set point, temp good, oven temp good, temp right, temp on target | it holds the temperature that is set |
heats-when-off | heats when off, heats when turned off, heats even when off, heats even when turned off, heats with motor off, heats with the motor off, heats with drum stopped, heats on air fluff, heats on fluff, heats in air fluff, heater stays on, burner stuck on, burner stuck on high, element stuck on, element stuck on high, heats after it stops, still calls when hot, heat stays on, element stays on, burner stays on with knob off, burner stays on when knob off, burner stays on with control off, burner stays on when control off, oven stays on, bake element stays on, surface element stays on, element on with control off, bake element on with control off, element glows with control off, element glows with knob off, burner glows with knob off, element doesn't shut off, burner doesn't shut off, burner doesn't turn off, oven doesn't shut off | the heat stays on above the set point or with the control off | heat-stops
heat-welded | infinite switch welded, infinite switch stuck, infinite switch stuck on, infinite switch shorted, infinite switch contacts welded, burner switch welded, burner switch stuck on, element switch welded, heater relay welded, heater relay stuck, heater relay stuck closed, heat relay welded, heat relay stuck, heat relay stuck closed, bake relay welded, bake relay stuck, bake relay stuck closed, element relay welded, element relay stuck, relay stuck closed, relay stuck on, relay contact welded, sequencer welded, sequencer stuck, sequencer stuck closed, sequencer stuck on | the contact of a switch or relay of the heat is welded |
thermostat-stuck-closed | thermostat welded, thermostat welded closed, thermostat welded shut, thermostat stuck closed, thermostat stuck shut, thermostat stuck on, thermostat doesn't open, thermostat not opening, thermostat never opens, thermostat contacts welded, thermostat shorted, upper thermostat stuck closed, upper thermostat welded, upper thermostat stuck on, lower thermostat stuck closed, lower thermostat welded, lower thermostat stuck on, cycling thermostat stuck closed, cycling thermostat welded, cycling thermostat doesn't open, cycling thermostat stuck on, operating thermostat stuck closed, operating thermostat doesn't open | the thermostat still conducts where it should have opened | thermostat-opens thermostat-open
heat-stops | heat stops when hot, burner cycles, burner cycles off, burner cycles good, heat stops at set point, element goes off, heat goes off at set point, heat goes off at setpoint, heater goes off at set point, element cycles off, heat cycles off | the heat goes off at the set point |
single-phasing | single phasing, single phased, single phase only, on two legs, runs on two legs, lost a phase, phase lost, phase missing, missing phase, missing a phase, lost phase, dropped a phase, one phase out, one phase missing, one phase down | it is on two of its three legs | legs-sound
pole-open | pole open, contactor burnt, contactor pole open, contactor pole burnt, contactor pitted, contacts pitted, contactor contacts burnt, contactor contacts pitted, contactor points burnt, contactor points pitted | a pole of the contactor is open or burnt | pole-sound
pole-sound | contactor good, poles good | the contactor pulls in and each pole passes its volts |
fuse-open | fuse open, fuse blown, blown fuse | the appliance's fuse is open | fuse-sound
switch-open | switch open, lid switch broken, lid switch open, lid lock broken, door switch broken, door latch broken, switch broken, lid switch bad, selector switch broken, door switch faulty, door switch open, door switch dead, lid switch faulty, lid lock faulty, lid lock clicks but doesn't lock, lid lock bad, lid lock dead, door lock faulty, door lock broken, door interlock broken, door interlock faulty, door won't lock, door not locking, lid won't lock, door lock not engaging, door latch worn, interlock open, selector switch burnt, start switch broken, start switch faulty | the switch or door interlock does not conduct when it should | switch-closed
heater-open | heater open, element open, element broken, heater broken, element burnt through, broken element, bake element burnt through, element burned out, heater burnt out, bake element broken, heater element broken, heating element open, heating element OL, heating element broken, heating element burnt out, heating element dead, element OL, element OC, element blown, heater OL, heater OC, bake element open, bake element burnt out, bake element blown, bake element OL, broil element open, broil element burnt out, broil element broken, grill element open, grill element burnt out, fan element open, fan element burnt out, fan element blown, oven element burnt out, oven element open, heating coil broken, defrost heater open, defrost heater OL, defrost heater OC, defrost heater burnt out, defrost heater broken, defrost element open, defrost element OC, defrost heater blown | the heater is open | heater-sound heater-suspect

# Read with a meter or gauge, and judged by the technician.
leg-missing | one leg missing, one leg dead, one pole dead, one pole out, one pole no volts, breaker pole dead, breaker pole bad, half the breaker dead, missing a leg, missing leg, leg missing, lost a leg, lost one leg, lost leg, one leg lost, one leg down, one leg out, only one leg, only 120v, only 120 at block, only 120 at terminal block, 120v only, only 120 volts | one of two supply legs is missing | supply-absent
igniter-open | igniter broken, igniter cracked, igniter open, igniter OL, igniter OC, igniter burnt out, broken igniter, cracked igniter, igniter element broken | the igniter is broken | igniter-conducts
limit-open | thermal fuse open, thermal fuse blew, blew thermal fuse, blew a thermal fuse, blew the thermal fuse, blows thermal fuse, blows thermal fuses, blows the thermal fuse, blows its thermal fuse, blowing thermal fuse, blowing thermal fuses, blowing the thermal fuse, thermal fuse blows, thermal cutoff open, eco open, eco tripped, eco popped, reset button popped, reset button tripped, reset button out, reset popped, reset tripped, red button popped, red button tripped, thermal fuse blown, thermal fuse OL, thermal fuse OC, blown thermal fuse, thermal cut out open, thermal cutout open, high limit open, hi limit open, limit switch open, defrost thermostat open, tco open, thermal limit open, hi limit tripped, high limit tripped, thermal cutout tripped, thermal cut out tripped, bimetal open, defrost bimetal open | the thermal limit, fuse or defrost thermostat is open when it should conduct |
coil-open | coil open, gas valve coil open, gas valve coils open, valve coil open, inlet valve coil open, gas coil open, gas coils open, valve coil OL, inlet valve OL, contactor coil open, contactor coil OL | the coil of a valve or contactor is open | coil-conducts
cord-shorted | cord shorted, cord pins touch | two conductors of the cord touch |
liquid-valve-opens | liquid solenoid opens, liquid solenoid clicks, liquid line solenoid opens, liquid line solenoid clicks | the valve of the liquid line opens when cold is called for | liquid-valve-shut
liquid-valve-shut | liquid solenoid stuck, liquid solenoid dead, liquid solenoid stuck shut, liquid line solenoid stuck, liquid line solenoid dead, pumps down and stays off | the valve of the liquid line stays shut though cold is called for |
suction-low | suction low, suction in vacuum, suction pressure low, low suction, suction press low, low side low, low side pressure low, pulls into vacuum, low side in vacuum, running in vacuum, low back pressure, back pressure low | suction pressure below what the gas should show | suction-normal suction-high
suction-normal | suction normal, suction pressure normal, suction good, suction pressure good | suction pressure as the gas should show | suction-high
suction-high | suction high, suction pressure high, high suction, low side high, low side pressure high | suction pressure above what the gas should show |
`

// joints gives what is typed for a joint of the wiring that is bad: each thing
// with each state, in either order, the plain one first.
func joints(things ...string) []string {
	out := []string{things[0] + " loose"}
	for _, thing := range things {
		for _, state := range []string{"loose", "burnt", "broken", "melted", "corroded", "charred", "burnt off", "off"} {
			for _, name := range []string{thing, thing + "s"} {
				if w := name + " " + state; w != out[0] && (state != "off" || name == thing) {
					out = append(out, w)
				}
				if !strings.HasSuffix(state, "off") {
					out = append(out, state+" "+name)
				}
			}
		}
	}
	return out
}
