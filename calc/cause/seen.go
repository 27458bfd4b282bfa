package cause

import "strings"

// seen is the part of the vocabulary that a technician types after `saw`.
var seen = []Finding{
	// How the machine answers when it is called on.
	{"clicks", []string{"clicks", "click", "clicking", "clicks on and off", "it clicks", "relay clicks", "relay clicking"}, "a click now and then from the start gear or the overload, and no start", []string{"silent"}},
	{"hums", []string{"hums", "hum", "humming", "buzzes", "buzzing", "comp hums", "motor hums", "comp humming", "motor humming", "compressor hums", "compressor humming", "pump hums", "pump humming", "drain pump hums"}, "hums or buzzes and does not turn", []string{"silent"}},
	{"silent", []string{"silent", "no sound", "quiet", "comp silent", "no noise", "pump silent", "pump dead"}, "no sound from the machine although it is called on", []string{"starts-and-runs"}},
	{"does-not-start", []string{"no start", "does not start", "comp does not start", "doesn't start", "won't start", "not starting", "comp not running", "compressor not running", "comp off", "compressor off", "not running"}, "the machine does not start", []string{"starts-and-runs"}},
	{"starts-and-runs", []string{"starts and runs", "starts", "comp runs", "compressor runs", "runs", "motor runs", "running", "it runs", "runs now", "it starts", "unit starts", "comp starts", "compressor starts", "motor starts", "comp running", "compressor running"}, "the machine starts by itself and keeps running", nil},
	{"cuts-out", []string{"cuts out", "trips overload", "trips out", "starts and trips", "hums and trips", "trips"}, "the overload takes the machine off after a few seconds or minutes", nil},
	{"runs-all-the-time", []string{"runs all the time", "never stops", "runs nonstop", "runs continuously"}, "the compressor never cycles off", []string{"cycles-off", "short-cycles"}},
	{"cycles-off", []string{"cycles off", "cycles", "cycles normally"}, "the compressor reaches its set point and stops", nil},
	{"short-cycles", []string{"short cycles", "short cycling"}, "runs for a minute or two at a time", nil},
	{"comp-hot", []string{"comp hot", "compressor hot", "comp very hot", "comp runs hot", "compressor runs hot"}, "the compressor's shell is too hot to keep a hand on", []string{"comp-cold"}},
	{"comp-cold", []string{"comp cold", "compressor cold", "comp cool", "comp at room temperature"}, "the compressor's shell is at room temperature", nil},
	{"restarted-soon", []string{"restarted soon", "restart too soon", "plugged back in", "power blip", "power cut"}, "called on again within minutes of stopping", nil},
	{"starts-after-wait", []string{"starts after wait", "starts after waiting", "starts after ten minutes"}, "starts after a rest of ten minutes or more", []string{"no-start-after-wait", "does-not-start"}},
	{"no-start-after-wait", []string{"no start after wait", "no start after waiting", "does not start after wait"}, "does not start after a rest of ten minutes or more", []string{"starts-and-runs"}},
	{"starts-on-other-outlet", []string{"starts on other outlet", "starts on another outlet", "runs on another outlet"}, "starts when plugged straight into a good outlet", []string{"no-start-on-other-outlet"}},
	{"no-start-on-other-outlet", []string{"no start on other outlet", "no start on another outlet", "same on other outlet", "same on another outlet"}, "does the same when plugged straight into a good outlet", nil},
	{"starts-with-test-device", []string{"starts with test device", "starts with test relay", "starts with start kit", "starts with new relay", "starts with hard start kit", "starts with hard start", "starts with kit"}, "starts with a start device known to be good", []string{"no-start-with-test-device"}},
	{"no-start-with-test-device", []string{"no start with test device", "no start with test relay", "no start with start kit", "no start with new relay", "no start with hard start kit", "no start with hard start", "no start with kit"}, "does not start with a start device known to be good", []string{"starts-and-runs"}},
	{"long-cord", []string{"long cord", "extension cord", "extension lead", "shared outlet"}, "fed through an extension cord or a loaded circuit", []string{"plugged-direct"}},
	{"plugged-direct", []string{"plugged direct", "no extension cord", "own outlet"}, "plugged straight into an outlet of its own", nil},

	// Start gear, wires and terminals.
	{"device-rattles", []string{"device rattles", "start device rattles", "ptc rattles", "disc rattles", "starter rattles"}, "the start device rattles when shaken: its disc is broken", []string{"start-device-sound"}},
	{"relay-rattles", []string{"relay rattles", "current relay rattles", "start relay rattles"}, "the relay rattles when shaken, as the plunger of a sound current relay does", nil},
	{"device-burnt", []string{"device burnt", "relay burnt", "start device burnt", "relay smells burnt", "burnt relay", "burnt start device",
		"relay broken", "relay cracked", "relay sticks", "relay stuck", "relay welded", "broken relay", "cracked relay",
		"ptc burnt", "ptc broken", "ptc cracked", "start device broken", "start device cracked", "device broken", "device cracked"},
		"the start device is burnt, cracked or broken, or its contact sticks", []string{"start-device-sound"}},
	{"connection-loose", joints("connection", "terminal", "connector", "spade", "lug", "wire", "joint"), "a loose, burnt or corroded connection", []string{"connections-sound"}},
	{"connections-sound", []string{"connections tight", "terminals tight", "connections good", "terminals good", "connectors good", "connections sound"}, "the connections are clean and tight", nil},
	{"wiring-wrong", []string{"wiring wrong", "miswired", "wires swapped", "wired wrong"}, "a wire serves the wrong pin or terminal", []string{"wiring-matches"}},
	{"wiring-matches", []string{"wiring right", "wiring matches", "wired right", "wiring correct"}, "each wire serves the role that its diagram gives", nil},
	{"start-cap-none", []string{"no start cap", "no start capacitor"}, "the machine has no start capacitor", []string{"start-cap-sound", "start-cap-failed", "start-cap-open", "start-cap-shorted", "start-cap-suspect"}},
	{"run-cap-none", []string{"no run cap", "no run capacitor"}, "the machine has no run capacitor", []string{"run-cap-sound", "run-cap-failed", "run-cap-suspect"}},
	{"drive-fault-shown", []string{"drive fault", "drive flashes fault", "inverter fault", "inverter flashes"}, "the inverter drive shows a fault by its own lamp or display", []string{"drive-no-fault", "drive-none", "windings-sound"}},
	{"drive-no-fault", []string{"drive no fault", "no drive fault", "inverter no fault"}, "the inverter drive shows no fault", []string{"drive-none"}},
	{"drive-none", []string{"no drive", "no inverter"}, "the machine has no inverter drive", nil},

	// Fans, condenser, air.
	{"cond-fan-runs", []string{"cond-fan runs", "condenser fan runs"}, "the condenser fan runs", []string{"cond-fan-stopped", "cond-fan-none", "all-dead"}},
	{"cond-fan-stopped", []string{"cond-fan stopped", "condenser fan stopped", "cond-fan still", "condenser fan still", "cond-fan not running", "condenser fan not running", "cond-fan dead", "condenser fan dead"}, "the condenser fan stands still", []string{"cond-fan-none"}},
	{"cond-fan-none", []string{"no cond-fan", "no condenser fan"}, "the condenser has no fan", nil},
	{"cond-fan-stiff", []string{"cond-fan stiff", "condenser fan stiff", "cond-fan jammed", "condenser fan jammed"}, "the condenser fan does not turn freely by hand", []string{"cond-fan-runs", "cond-fan-none"}},
	{"cond-fan-free", []string{"cond-fan free", "condenser fan free", "cond-fan turns freely", "condenser fan turns freely"}, "the condenser fan turns freely by hand", []string{"cond-fan-stiff", "cond-fan-none"}},
	{"evap-fan-free", []string{"evap-fan free", "evaporator fan free", "evap-fan turns freely", "evaporator fan turns freely"}, "the evaporator fan turns freely by hand", []string{"evap-fan-stiff", "evap-fan-none"}},
	{"evap-fan-stiff", []string{"evap-fan stiff", "evaporator fan stiff", "evap-fan jammed", "evaporator fan jammed"}, "the evaporator fan does not turn freely by hand", []string{"evap-fan-runs", "evap-fan-none"}},
	{"evap-fan-runs", []string{"evap-fan runs", "evaporator fan runs", "freezer fan runs"}, "the evaporator fan runs", []string{"evap-fan-stopped", "evap-fan-none", "all-dead"}},
	{"evap-fan-stopped", []string{"evap-fan stopped", "evaporator fan stopped", "freezer fan stopped", "evap-fan still", "evap-fan not running", "evaporator fan not running", "freezer fan not running", "evap-fan dead"}, "the evaporator fan stands still with its door switch held in", []string{"evap-fan-none"}},
	{"evap-fan-none", []string{"no evap-fan", "no evaporator fan"}, "the evaporator has no fan", nil},
	{"condenser-dirty", []string{"condenser dirty", "condenser blocked", "condenser clogged", "dirty condenser", "coil dirty", "dirty coil", "cond dirty", "coils dirty", "dirty coils"}, "the condenser is matted with dust or has no room to breathe", []string{"condenser-clean"}},
	{"condenser-clean", []string{"condenser clean", "cond clean", "coils clean", "condenser coil clean"}, "the condenser is clean and has room to breathe", nil},
	{"condenser-warm", []string{"condenser warm", "condenser hot", "discharge hot"}, "the condenser grows warm over its length", []string{"condenser-cold"}},
	{"condenser-cold", []string{"condenser cold", "condenser barely warm", "discharge cool"}, "the condenser stays near room temperature while the compressor runs", nil},
	{"room-hot", []string{"room hot", "hot room", "in the sun"}, "the room is hotter than the appliance is made for", []string{"room-normal"}},
	{"room-normal", []string{"room normal", "room cool"}, "the room is within what the appliance is made for", nil},

	// Frost, doors, water.
	{"frost-none", []string{"frost none", "no frost", "evaporator bare"}, "no frost on the evaporator after a long run", []string{"frost-partial", "frost-even", "frost-heavy"}},
	{"frost-partial", []string{"frost partial", "frost at inlet only", "frost patchy", "partial frost", "frost half", "half frost", "frost on first pass only"}, "frost on a part of the evaporator only", []string{"frost-even", "frost-heavy"}},
	{"frost-even", []string{"frost even", "frost normal", "frost thin", "even frost"}, "a thin, even frost over the whole evaporator", []string{"frost-heavy"}},
	{"frost-heavy", []string{"frost heavy", "evaporator iced", "iced up", "ice on evaporator", "heavy frost", "frosted over", "iced over", "ice on back wall", "coil iced", "evap iced", "fan hits ice"}, "the evaporator is packed with frost or ice", nil},
	{"restriction-frost", []string{"restriction frost", "frost at drier", "drier cold", "cap tube frosted"}, "frost or a cold spot at the drier or the capillary tube", []string{"restriction-none"}},
	{"restriction-none", []string{"drier warm", "no restriction", "hiss at stop"}, "drier as warm as the condenser, and a hiss of pressures levelling when it stops", nil},
	{"oil-stain", []string{"oil stain", "oily joint", "oil trace", "oil at joint", "oil"}, "oil at a joint or on the tubing", nil},
	{"leak-found", []string{"leak found", "bubbles", "leak detector alarms"}, "a leak detector or bubbles showed a leak", []string{"leak-not-found"}},
	{"leak-not-found", []string{"no leak found", "leak check clean"}, "a full search of all joints found no leak", nil},
	{"gasket-leaks", []string{"gasket leaks", "gasket torn", "gasket bad", "seal torn", "door seal bad", "door seal torn", "torn gasket", "door not closing"}, "the door gasket does not seal", []string{"gasket-sound"}},
	{"gasket-sound", []string{"gasket sound", "gasket good", "door seals", "door seal good"}, "the door gasket seals all round", nil},
	{"heavy-use", []string{"heavy use", "door opened often", "warm food loaded", "new load"}, "much warm food or a door opened often", []string{"normal-use"}},
	{"normal-use", []string{"normal use"}, "no unusual load and no unusual door openings", nil},
	{"lamp-stays-on", []string{"lamp stays on", "light stays on"}, "the inside lamp stays on with the door shut", []string{"lamp-goes-off"}},
	{"lamp-goes-off", []string{"lamp goes off", "light goes off"}, "the inside lamp goes off with the door shut", nil},
	{"water-inside", []string{"water inside", "water in cabinet", "water in compartment"}, "water stands inside the cabinet", nil},
	{"water-on-floor", []string{"water on floor", "puddle"}, "water on the floor", nil},
	{"drain-blocked", []string{"drain blocked", "drain frozen", "drain clogged", "blocked drain", "frozen drain", "clogged drain"}, "the defrost drain does not take water", []string{"drain-clear"}},
	{"drain-clear", []string{"drain clear", "drain open"}, "the defrost drain takes water freely", nil},
	{"pan-cracked", []string{"pan cracked", "drain pan cracked", "pan missing", "pan off"}, "the drain pan is cracked or out of place", []string{"pan-sound"}},
	{"pan-sound", []string{"pan sound", "pan good", "drain pan good"}, "the drain pan is whole and in place", nil},
	{"water-line-leaks", []string{"water line leaks", "water valve leaks", "tube drips", "hose leaks"}, "a water tube, valve or hose drips", []string{"water-line-dry"}},
	{"water-line-dry", []string{"water line dry", "hoses dry", "no water line"}, "tubes, valve and hoses are dry, or there are none", nil},
	{"not-level", []string{"not level", "leans forward"}, "the cabinet leans so that doors or drain do not work", []string{"level"}},
	{"level", []string{"level", "stands level"}, "the cabinet stands level", nil},

	// Cooling and its controls.
	{"cools-down", []string{"cools down", "cools", "cooling", "pulls down"}, "pulls down to its set point", []string{"does-not-cool", "cools-slowly"}},
	{"cools-slowly", []string{"cools slowly", "pulls down slowly", "cools a little"}, "gets cooler but does not reach its set point in due time", []string{"does-not-cool"}},
	{"does-not-cool", []string{"does not cool", "no cooling", "not cooling", "warm inside", "doesn't cool"}, "does not get cooler while it runs", nil},
	{"freezes-food", []string{"freezes food", "too cold", "fridge freezes"}, "the fresh-food part freezes", []string{"does-not-cool"}},
	{"set-coldest", []string{"set to coldest", "set too cold", "dial at coldest"}, "the control is set to its coldest", []string{"set-normal"}},
	{"set-normal", []string{"set normal", "dial at middle"}, "the control is set to its middle range", nil},
	{"damper-stuck-open", []string{"damper stuck open", "damper open"}, "the air damper stays open", []string{"damper-moves", "damper-stuck-shut", "damper-none"}},
	{"damper-stuck-shut", []string{"damper stuck shut", "damper shut"}, "the air damper stays shut", []string{"damper-moves", "damper-none"}},
	{"damper-moves", []string{"damper moves"}, "the air damper opens and closes", []string{"damper-none"}},
	{"damper-none", []string{"no damper"}, "there is no air damper", nil},
	{"vents-blocked", []string{"vents blocked", "food against vents"}, "food or ice blocks the air passages inside", []string{"vents-clear"}},
	{"vents-clear", []string{"vents clear"}, "the air passages inside are free", nil},
	{"defrost-runs-by-hand", []string{"defrost runs by hand", "forced defrost heats"}, "a defrost started by hand heats the evaporator", []string{"defrost-dead-by-hand"}},
	{"defrost-dead-by-hand", []string{"defrost dead by hand", "forced defrost dead"}, "a defrost started by hand does not heat", nil},
	{"defrost-starts-itself", []string{"defrost starts itself", "defrost starts by itself"}, "a defrost started without help in due time", []string{"defrost-never-starts"}},
	{"defrost-never-starts", []string{"defrost never starts", "no defrost in a day"}, "no defrost started by itself in due time", nil},

	// Power, switches, tripping.
	{"all-dead", []string{"all dead", "nothing works", "completely dead", "lamp dark"}, "no lamp, no display, no sound at all", []string{"light-works", "clicks", "hums", "starts-and-runs"}},
	{"light-works", []string{"light works", "lamp works", "display on", "display lit"}, "a lamp or display of the appliance works", nil},
	{"outlet-works", []string{"outlet works", "lamp works at outlet", "outlet live"}, "another appliance works at the same outlet", []string{"outlet-dead"}},
	{"outlet-dead", []string{"outlet dead", "outlet off"}, "nothing works at that outlet", []string{"supply-sound", "supply-low", "supply-high", "light-works", "starts-and-runs", "clicks", "hums", "cond-fan-runs", "evap-fan-runs"}},
	{"breaker-tripped", []string{"breaker tripped", "breaker off", "tripped breaker", "breaker was tripped", "breaker was off"}, "the breaker was found tripped or off", nil},
	{"trips-at-once", []string{"trips at once", "breaker trips at once", "trips immediately", "breaker trips immediately"}, "the breaker trips the moment the appliance is switched on", []string{"trips-later", "breaker-holds"}},
	{"trips-later", []string{"trips later", "breaker trips later", "breaker trips after a while"}, "the breaker trips after minutes", []string{"breaker-holds"}},
	{"breaker-holds", []string{"breaker holds", "breaker reset and holds", "reset and holds", "breaker stays on"}, "the breaker holds with everything connected and called on", nil},
	{"residual-trips", []string{"residual trips", "gfci trips", "gfci tripped", "rcd trips", "rcd tripped", "earth leakage trips"}, "it is the residual-current (ground-fault) device that trips", nil},
	{"trips-only-when-called", []string{"trips only when called", "trips when heater starts", "trips when comp starts", "trips when motor starts"}, "the breaker trips only when a load of the appliance is called on", []string{"breaker-holds", "trips-unplugged"}},
	{"trips-unplugged", []string{"trips unplugged", "breaker trips unplugged"}, "the breaker trips with the appliance unplugged", []string{"holds-unplugged"}},
	{"holds-unplugged", []string{"holds unplugged", "breaker holds unplugged"}, "the breaker holds with the appliance unplugged", nil},
	{"trips-with-other-load", []string{"trips with other load", "other appliance trips it"}, "another appliance of like load trips the breaker as well", []string{"holds-with-other-load"}},
	{"holds-with-other-load", []string{"holds with other load", "other appliance holds"}, "the breaker holds another appliance of like load", nil},
	{"other-outlet-holds", []string{"holds on other circuit", "holds on another circuit"}, "the appliance does not trip another circuit", []string{"other-outlet-trips"}},
	{"other-outlet-trips", []string{"trips other circuit", "trips on other circuit", "trips on another circuit"}, "the appliance trips another circuit as well", nil},

	// Heating appliances and motors.
	{"heats-up", []string{"heats up", "heats", "heating", "heater heats", "element heats", "element glows"}, "gets hot", []string{"does-not-heat", "heats-slowly"}},
	{"heats-slowly", []string{"heats slowly", "lukewarm"}, "gets warm but not to its set point", []string{"does-not-heat"}},
	{"does-not-heat", []string{"does not heat", "no heat", "stays cold", "doesn't heat", "not heating", "won't heat", "not hot", "not heat"}, "does not get warm", nil},
	{"heater-none", []string{"no heater"}, "the appliance has no heater", []string{"heater-sound", "heater-suspect", "heater-open", "heater-failed", "heater-grounded", "heater-insulation-sound"}},
	{"fuse-none", []string{"no fuse"}, "the appliance has no fuse of its own", []string{"fuse-sound", "fuse-open"}},
	{"airflow-blocked", []string{"airflow blocked", "vent blocked", "lint blocked", "filter blocked", "vent clogged", "filter dirty", "filter clogged", "lint clogged"}, "the air or water path is blocked", []string{"airflow-clear"}},
	{"airflow-clear", []string{"airflow clear", "vent clear", "filter clean"}, "the air or water path is free", nil},
	{"shaft-free", []string{"shaft free", "turns by hand", "turns freely", "spins by hand", "spins freely", "turns over by hand"}, "the shaft turns freely by hand", []string{"shaft-stuck"}},
	{"shaft-stuck", []string{"shaft stuck", "stuck by hand", "does not turn by hand"}, "the shaft does not turn by hand, uncoupled from its load", nil},
	{"starts-when-pushed", []string{"starts when pushed", "spins when pushed", "runs when pushed"}, "runs on when its shaft is given a turn with a tool", []string{"silent"}},
	{"one-speed-dead", []string{"one speed dead", "dead on one speed", "dead on high", "dead on low", "dead on medium", "runs on high only", "runs on low only", "one speed only"}, "the motor runs, but not on every speed", []string{"silent", "all-dead"}},
	{"speed-switch-none", []string{"no speed switch", "one speed motor"}, "the motor has one speed, or its speeds are set by the control", []string{"speed-switch-closed", "speed-switch-open", "one-speed-dead"}},
	{"load-jammed", []string{"load jammed", "pump jammed", "drum jammed", "blade jammed", "impeller jammed", "impeller stuck", "impeller blocked", "jammed impeller",
		"glass in sump", "glass in pump", "pump blocked", "object in pump", "coin in pump", "bone in pump"}, "what the motor drives is jammed", []string{"load-free"}},
	{"load-free", []string{"load free", "pump free", "drum free", "drum turns by hand", "drum turns freely", "blade free", "impeller free", "impeller turns"}, "what the motor drives turns freely", nil},

	// Draining, drying.
	{"drains", []string{"drains", "drains now", "pumps out", "water goes out", "empties"}, "the pump takes the water out", []string{"does-not-drain", "load-jammed", "impeller-loose", "hose-blocked"}},
	{"does-not-drain", []string{"does not drain", "doesn't drain", "won't drain", "not draining", "water stays in", "water stands in", "does not pump out"}, "the water stays in", nil},
	{"pump-runs", []string{"pump runs", "drain pump runs", "pump running", "pump starts"}, "the motor of the pump runs", []string{"load-jammed"}},
	{"impeller-sound", []string{"impeller sound", "impeller good", "impeller clean", "impeller whole"}, "the impeller is whole, sits tight on its shaft and turns", []string{"load-jammed", "impeller-loose"}},
	{"impeller-loose", []string{"impeller loose", "impeller broken", "broken impeller", "loose impeller", "impeller off"}, "the impeller is broken or loose on its shaft", nil},
	{"hose-blocked", []string{"hose blocked", "drain hose blocked", "hose kinked", "drain hose kinked", "air gap blocked", "standpipe blocked", "trap blocked"}, "the way of the water behind the pump is blocked", []string{"hose-clear"}},
	{"hose-clear", []string{"hose clear", "drain hose clear", "air gap clear", "standpipe clear"}, "the way of the water behind the pump is free", nil},
	{"dries", []string{"dries", "water in bucket", "collects water"}, "takes the water out of air or clothes", []string{"does-not-dry"}},
	{"does-not-dry", []string{"does not dry", "doesn't dry", "not drying", "still damp", "no water in bucket", "bucket empty", "collects no water"}, "takes no water out of air or clothes", nil},

	// Dangers.
	{"wire-at-metal", []string{"wire at metal", "wire touches metal", "chafed wire", "wire chafed", "pinched wire", "wire pinched", "bare wire", "chewed wire", "wire chewed"}, "a wire is chafed or pinched and touches the metal", []string{"wires-clear"}},
	{"wires-clear", []string{"wires clear of metal", "wires clear", "harness sound"}, "no wire is chafed or pinched at the metal", nil},
	{"shock", []string{"shock", "shocks", "electric shock", "gives a shock", "got a shock", "tingles", "tingle", "metal is live"}, "somebody felt a shock from its metal", nil},
	{"smoke", []string{"smoke", "smokes", "smoking", "sparks", "sparking", "arcing", "burning smell", "smells burnt", "smell of burning", "burnt smell"}, "smoke, sparks or a smell of burning", nil},
	{"gas-smell", []string{"gas smell", "smell of gas", "smells of gas", "smells gas"}, "a smell of gas", nil},
	{"belt-broken", []string{"belt broken", "belt off", "belt slips"}, "the belt is broken, off or slips", []string{"belt-sound"}},
	{"belt-sound", []string{"belt good", "belt sound", "no belt"}, "the belt is on and tight, or there is none", nil},
	{"brushes-worn", []string{"brushes worn", "brush worn", "worn brushes", "brush stuck"}, "the carbon brushes are worn or stuck", []string{"brushes-sound"}},
	{"brushes-sound", []string{"brushes good", "brushes sound", "no brushes"}, "the carbon brushes are long and move freely, or there are none", nil},

	// Air conditioners.
	{"blower-runs", []string{"blower runs", "indoor fan runs", "fan motor runs"}, "the fan blows", []string{"blower-stopped", "all-dead"}},
	{"blower-stopped", []string{"blower stopped", "blower still", "blower dead", "blower not running", "blower does not run"}, "the fan stands still", nil},
	{"blower-stiff", []string{"blower stiff", "blower jammed"}, "the fan does not turn freely by hand", []string{"blower-runs"}},
	{"coil-cold", []string{"evap coil cold", "coil cold", "coil sweats", "coil cold and wet"}, "the evaporator coil is cold and wet over its whole face", []string{"coil-partial", "coil-warm", "coil-iced"}},
	{"coil-partial", []string{"coil cold in part", "coil partly cold"}, "the evaporator coil is cold in a part only", []string{"coil-warm"}},
	{"coil-warm", []string{"coil warm", "evap coil warm"}, "the evaporator coil is as warm as the room", []string{"coil-iced"}},
	{"coil-iced", []string{"evap coil iced", "coil frozen", "coil iced over", "evap coil frozen"}, "ice on the evaporator coil of an air conditioner", nil},
	{"set-to-cool", []string{"set to cool"}, "it is set to cool and below the room's temperature", []string{"set-off-cool"}},
	{"set-off-cool", []string{"set to fan only", "set to fan", "set too warm"}, "it is set to fan only or above the room's temperature", nil},
	{"rested", []string{"rested 10 min", "rested ten minutes", "rested 15 min", "rested 20 min", "rested 30 min", "rested an hour", "rested overnight", "stood overnight"}, "it stood for ten minutes or more before this start", []string{"restarted-soon"}},
	{"cap-bulging", []string{"cap bulging", "capacitor bulging", "cap swollen", "cap leaks oil", "cap burst", "capacitor burst", "bulging cap"}, "a capacitor's can is swollen, leaks or has burst", nil},

	// Drums, water, noises.
	{"spins", []string{"spins"}, "the drum spins", []string{"does-not-spin"}},
	{"does-not-spin", []string{"does not spin", "no spin", "won't spin"}, "the drum does not spin", nil},
	{"agitates", []string{"agitates", "washes", "tumbles to and fro"}, "the motor turns agitator or drum in the wash", []string{"all-dead"}},
	{"drum-turns", []string{"drum turns", "tumbles"}, "the drum turns", []string{"drum-stands", "all-dead"}},
	{"drum-stands", []string{"drum stands", "drum does not turn", "drum not turning", "does not tumble"}, "the drum stands", []string{"spins"}},
	{"does-not-fill", []string{"does not fill", "no water", "no water comes in", "won't fill", "not filling"}, "no water comes in", []string{"fills"}},
	{"fills", []string{"fills", "water comes in"}, "water comes in in due time", []string{"fills-slowly", "overfills"}},
	{"fills-slowly", []string{"fills slowly", "trickles in"}, "water comes in too slowly", []string{"does-not-fill"}},
	{"overfills", []string{"overfills", "keeps filling"}, "water comes in beyond its level", []string{"does-not-fill"}},
	{"tap-shut", []string{"tap shut", "tap closed", "water off", "low water pressure"}, "the tap is shut or gives little", []string{"tap-open"}},
	{"tap-open", []string{"tap open", "water on"}, "the tap is open and gives a full stream into a bucket", nil},
	{"screens-clogged", []string{"screens clogged", "screen clogged", "screens dirty", "screen dirty", "fill hose kinked"}, "the inlet screens or the fill hose are clogged", []string{"screens-clean"}},
	{"screens-clean", []string{"screens clean", "screen clean"}, "inlet screens and fill hose are free", nil},
	{"fills-unpowered", []string{"fills with power off", "fills unplugged"}, "water runs in with the plug pulled", []string{"no-fill-unpowered"}},
	{"no-fill-unpowered", []string{"stops with power off", "stops filling unplugged"}, "the water stops when the plug is pulled", nil},
	{"level-full", []string{"level says full", "pressure switch says full", "float stuck up", "float stuck"}, "the level sensing reports a full tub that is empty", []string{"level-sound", "level-empty"}},
	{"level-empty", []string{"level says empty", "pressure switch says empty", "float stuck down", "pressure hose off"}, "the level sensing reports nothing at a full tub", []string{"level-sound"}},
	{"level-sound", []string{"level sensing good", "pressure switch good", "float moves"}, "the level sensing reports the water as it stands", nil},
	{"clutch-worn", []string{"clutch worn", "clutch slips", "coupling broken", "coupler broken"}, "clutch, brake or coupling slips or is broken", []string{"clutch-sound"}},
	{"clutch-sound", []string{"clutch good", "coupling good", "no clutch"}, "clutch, brake and coupling hold, or there are none", nil},
	{"noisy", []string{"noisy", "bangs", "squeals", "grinds", "rattles"}, "it makes a noise that it should not", []string{"quiet-now"}},
	{"quiet-now", []string{"runs quietly", "noise gone"}, "it runs without the noise", nil},
	{"bearings-worn", []string{"bearings worn", "bearing worn", "bearing bad", "rollers worn", "drum has play"}, "the drum has play or rumbles by hand", []string{"bearings-sound"}},
	{"bearings-sound", []string{"bearings good", "bearing good", "rollers good"}, "the drum turns by hand without play or rumble", nil},
	{"object-inside", []string{"object inside", "coin in drum", "object in drum", "object in blower"}, "a loose object lies in drum, pump or blower", []string{"no-object"}},
	{"no-object", []string{"no object", "nothing loose inside"}, "nothing loose in drum, pump or blower", nil},
	{"suspension-worn", []string{"suspension worn", "spring broken", "springs worn", "damper worn", "shipping bolts in"}, "the tub's springs or dampers are worn, or it is still bolted", []string{"suspension-sound"}},
	{"suspension-sound", []string{"suspension good", "springs good"}, "the tub hangs level and is damped", nil},
	{"timer-stuck", []string{"timer stuck", "timer does not advance"}, "timer or control stays where it is", []string{"timer-advances"}},
	{"timer-advances", []string{"timer advances"}, "timer or control goes on", nil},

	// Burners and heat.
	{"igniter-glows", []string{"igniter glows", "igniter glowing", "igniter on"}, "the igniter glows when heat is called for", []string{"igniter-dark", "igniter-open"}},
	{"igniter-dark", []string{"igniter dark", "no glow", "igniter no glow", "igniter does not glow", "igniter not glowing", "igniter dead"}, "the igniter stays dark when heat is called for", []string{"flame-lights"}},
	{"igniter-weak", []string{"igniter weak", "igniter glows weakly", "igniter glows orange", "igniter amps low"}, "the igniter draws less than its valve or marking asks for", []string{"igniter-strong", "igniter-dark"}},
	{"igniter-strong", []string{"igniter strong", "igniter amps good"}, "the igniter draws what its valve or marking asks for", nil},
	{"flame-lights", []string{"flame lights", "burner lights", "flame on"}, "a flame follows the glow", []string{"flame-none", "does-not-heat", "gas-off"}},
	{"flame-none", []string{"no flame", "flame does not light", "burner does not light"}, "no flame follows", nil},
	{"gas-off", []string{"gas off", "gas cock shut", "gas shut off"}, "the gas is shut off", []string{"gas-on"}},
	{"gas-on", []string{"gas on", "gas cock open", "other burners light"}, "the cock is open and another burner has gas", nil},
	{"too-hot", []string{"too hot", "overheats", "runs too hot"}, "it gets hotter than it is set to", []string{"heat-right", "does-not-heat", "heats-slowly"}},
	{"heat-right", []string{"heat right", "holds its temperature", "temperature right"}, "it holds the temperature that is set", nil},
	{"heats-when-off", []string{"heats when off", "still calls when hot", "heat stays on", "element stays on"}, "the heat stays on above the set point or with the control off", []string{"heat-stops"}},
	{"heat-stops", []string{"heat stops when hot", "heat stops at set point", "element goes off"}, "the heat goes off at the set point", nil},
	{"pole-open", []string{"pole open", "contactor burnt", "contactor pole open", "contactor pitted", "contactor pole burnt"}, "a pole of the contactor is open or burnt", []string{"pole-sound"}},
	{"pole-sound", []string{"contactor good", "poles good"}, "the contactor pulls in and each pole passes its volts", nil},
	{"fuse-open", []string{"fuse blown", "fuse open", "blown fuse"}, "the appliance's fuse is open", []string{"fuse-sound"}},
	{"switch-open", []string{"lid switch broken", "lid switch open", "lid lock broken", "door switch broken", "door latch broken", "switch broken", "lid switch bad", "selector switch broken"}, "the switch or door interlock does not conduct when it should", []string{"switch-closed"}},
	{"heater-open", []string{"element broken", "heater broken", "element burnt through", "broken element"}, "the heater is open", []string{"heater-sound", "heater-suspect"}},

	// Read with a meter or gauge, and judged by the technician.
	{"control-calls-when-cold", []string{"control calls when cold", "still calls when cold"}, "the control still gives volts to the machine below its set point", []string{"control-stops-when-cold", "cycles-off"}},
	{"control-stops-when-cold", []string{"control stops when cold", "stops calling when cold"}, "the control takes the volts off at its set point", nil},
	{"control-fed-and-dead", []string{"control fed but dead", "control has supply and is dead"}, "the control has its supply and answers nothing", []string{"control-unfed", "light-works"}},
	{"control-unfed", []string{"control not fed", "no supply at control"}, "the control has no supply", nil},
	{"cord-shorted", []string{"cord shorted", "cord pins touch"}, "two conductors of the cord touch", nil},
	{"suction-low", []string{"suction low", "suction in vacuum"}, "suction pressure below what the gas should show", []string{"suction-normal", "suction-high"}},
	{"suction-normal", []string{"suction normal"}, "suction pressure as the gas should show", []string{"suction-high"}},
	{"suction-high", []string{"suction high"}, "suction pressure above what the gas should show", nil},
}

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
