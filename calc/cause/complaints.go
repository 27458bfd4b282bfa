package cause

// Needs that several complaints share.
var (
	needWindings = Need{"windings of the machine, three pairs", []string{"windings-sound", "windings-equal", "winding-open", "winding-open-hot", "winding-shorted",
		"protector-open", "protector-open-cold", "protector-reset", "open-unplaced", "windings-isolated", "winding-grounded"}}
	needCase = Need{"each pin to case", []string{"insulation-sound", "insulation-no-gross-fault", "insulation-suspect", "insulation-undecided", "insulation-failed", "winding-grounded"}}
	// needSupply is met by the supply judged or seen to work.
	needSupply = Need{"volts of the supply", []string{"supply-sound", "sag-sound", "supply-low", "supply-high", "supply-absent", "supply-undecided", "leg-missing"}}
	needStart  = Need{"start observed", []string{"starts-and-runs", "runs-all-the-time", "does-not-start", "clicks", "hums", "silent"}}
	needAmps   = Need{"running amps", []string{"amps-none", "amps-low", "amps-sound", "amps-high", "amps-locked-rotor", "amps-agree", "amps-undecided"}}
	// A machine with a run capacitor only has no other start gear.
	needDevice = Need{"start device or run capacitor", []string{"run-cap-sound", "run-cap-suspect", "run-cap-undecided", "run-cap-failed",
		"start-device-sound", "start-device-suspect", "start-device-undecided", "start-device-failed", "device-rattles", "device-burnt",
		"windings-equal", "drive-fault-shown", "drive-no-fault"}}
	needFans     = Need{"condenser fan seen", []string{"cond-fan-runs", "cond-fan-stopped", "cond-fan-none", "no-sealed-system"}}
	needEvapFan  = Need{"evaporator fan seen", []string{"evap-fan-runs", "evap-fan-stopped", "evap-fan-none", "no-sealed-system"}}
	needFrost    = Need{"frost on the evaporator seen", []string{"frost-none", "frost-partial", "frost-even", "frost-heavy", "no-sealed-system", "coil-hidden"}}
	needCold     = Need{"temperatures over time", []string{"cools-down", "temp-at-target", "pulls-down-on-course", "pulls-down-slowly", "will-not-reach", "does-not-cool"}}
	needPullDown = Need{"temperatures over time", []string{"cools-down", "temp-at-target", "pulls-down-on-course", "pulls-down-slowly", "will-not-reach", "does-not-cool", "no-sealed-system"}}
	needEarth    = Need{"earth continuity", []string{"earth-sound", "earth-failed"}}
	needLock     = Need{"lock and latch looked at", []string{"lock-free", "lock-jammed", "unlocks-unpowered"}}
	needHeater   = Need{"ohms of the heater", []string{"heater-sound", "heater-suspect", "heater-undecided", "heater-open", "heater-failed"}}
)

var defrostCauses = []string{"evaporator-iced", "heater-failed", "limit-open", "defrost-control-failed"}

// complaints holds the common complaints, the most specific first: of two that
// match a text alike the earlier one is meant.
var complaints = []Complaint{
	{
		Code: "shocks", Name: "gives a shock",
		Words:  "shock, tingl, zaps, live to touch",
		Signs:  []string{"shock"},
		Causes: []string{"winding-grounded", "wire-at-metal", "heater-grounded", "insulation-weak", "earth-lost"},
		Need: []Need{needEarth, needCase, {"heater to its sheath", []string{"heater-insulation-sound", "heater-no-gross-fault", "heater-insulation-undecided", "heater-insulation-suspect",
			"heater-grounded", "heater-none"}}},
	},
	{
		Code: "no-drain", Name: "a pump that does not drain",
		Words: "drain pump, not drain, won't drain, doesn't drain, no drain, not pump out, won't pump, doesn't pump, water stays in, water stands in, full of water",
		Signs: []string{"does-not-drain"},
		Cured: []string{"drains"},
		Causes: []string{"winding-grounded", "no-supply", "switch-open", "control-not-calling", "level-says-empty", "connection-weak", "load-jammed", "impeller-loose", "hose-blocked",
			"winding-open", "winding-shorted", "motor-seized"},
		Need: []Need{{"impeller looked at", []string{"impeller-sound", "impeller-loose", "load-jammed", "load-free"}},
			{"draining seen", []string{"drains", "does-not-drain"}}, needAmps, needEarth},
	},
	{
		Code: "no-dry", Name: "a heat pump that does not dry",
		Words:  "not dehumidif, no water in bucket, bucket empty, bucket stays empty, not collect",
		Signs:  []string{"does-not-dry"},
		Cured:  []string{"dries"},
		Causes: with("compressor-off airflow-blocked room-cold cond-fan-failed cond-fan-unfed sensor-failed refrigerant-low restriction air-in-system compressor-weak", nil),
		Need:   []Need{needStart, {"fan seen", needFans.Any}, {"filter and air path", []string{"airflow-clear", "airflow-blocked"}}, {needFrost.What, with("coil-iced", needFrost.Any)}, needAmps, needEarth},
	},
	{
		Code: "trips-breaker", Name: "trips the breaker",
		Words: "trips breaker, trips the breaker, breaker trips, breaker keeps trip, pops breaker, pops the breaker, popping breaker, pops fuse, blows fuse, blows the fuse, gfci, rcd, breaker off, tripping breaker",
		Signs: []string{"trips-at-once", "trips-later", "residual-trips", "trips-only-when-called"},
		Cured: []string{"breaker-holds"},
		Causes: []string{"winding-grounded", "circuit-fault", "circuit-overloaded", "cord-shorted", "wires-shorted", "heater-grounded",
			"insulation-weak", "winding-shorted", "compressor-tight", "compressor-seized"},
		Need: []Need{{"breaker with the appliance unplugged", []string{"holds-unplugged", "trips-unplugged"}}, needCase,
			{"breaker holds", []string{"breaker-holds"}}, needEarth},
	},
	{
		Code: "hums-trips", Name: "hums and trips on its overload",
		Words: "hum, buzz, overload, starts and stops, trips after, tries to start, cuts out, kicks off, kicks out, shuts off after, short cycl",
		Signs: []string{"cuts-out", "hums"},
		Cured: []string{"starts-and-runs"},
		Causes: []string{"winding-grounded", "connection-weak", "supply-weak", "miswired", "start-device-failed", "start-cap-failed", "run-cap-failed",
			"cond-fan-failed", "cond-fan-unfed", "condenser-dirty", "winding-open", "winding-shorted", "protector-hot", "protector-failed", "overload-hot", "overload-failed", "pressure-unequalised", "compressor-tight", "compressor-seized"},
		Need: []Need{needSupply, needWindings, needCase, needDevice, needFans, needStart, needAmps},
	},
	{
		Code: "no-start", Name: "clicks or stays silent and does not start",
		Words: "click, comp silent, comp is silent, stays silent, comp not start, not start, won't start, doesn't start, no start, compressor not running, compressor dead, compressor won't run, dead compressor, compressor is dead, not kicking on, not kick, won't kick, comp not running",
		Signs: []string{"clicks", "does-not-start"},
		Cured: []string{"starts-and-runs"},
		Causes: []string{"winding-grounded", "no-supply", "connection-weak", "supply-weak", "control-not-calling", "miswired",
			"start-device-failed", "start-cap-failed", "run-cap-failed", "winding-open", "winding-shorted", "protector-hot", "protector-failed",
			"overload-hot", "overload-failed", "pressure-unequalised", "drive-fault", "compressor-tight", "compressor-seized"},
		Need: []Need{needSupply, needWindings, needCase, needDevice, needStart, needAmps},
	},
	{
		Code: "no-power", Name: "no power",
		Words:  "no power, dead, nothing works, no light, won't turn on, doesn't turn on, not turn on",
		Signs:  []string{"all-dead", "outlet-dead"},
		Cured:  []string{"light-works", "starts-and-runs", "heats-up"},
		Causes: []string{"no-supply", "cord-open", "fuse-open", "switch-open", "limit-open", "connection-weak", "control-dead"},
		Need:   []Need{needSupply, {"cord", []string{"cord-sound", "cord-open", "cord-shorted"}}, needEarth},
	},
	{
		Code: "leaks-ices", Name: "leaks or ices up",
		Words:  "leak, ice in, ice on, ice build, of ice, iced, ices, icing, frost, water on floor, water in, puddle, drips, defrost not, not defrost, doesn't defrost",
		Signs:  []string{"water-inside", "water-on-floor", "frost-heavy", "drain-blocked"},
		Causes: with("drain-blocked pan-cracked water-line-leaks not-level gasket-leaks heavy-use evap-fan-failed evap-fan-unfed", defrostCauses),
		Need:   []Need{needFrost, {"drain", []string{"drain-clear", "drain-blocked"}}, {"gasket", []string{"gasket-sound", "gasket-leaks", "no-gasket"}}, needEarth},
	},
	// The following are taken by the appliance, whose words mean another thing
	// elsewhere.
	{
		Code: "ac-warm", Name: "an air conditioner that does not cool",
		Signs: []string{"split-small"},
		Cured: []string{"split-sound"},
		Causes: []string{"winding-grounded", "set-not-cooling", "compressor-off", "coil-dirty", "coil-iced", "condenser-dirty", "cond-fan-failed", "cond-fan-unfed", "blower-failed", "blower-unfed",
			"selector-open", "control-not-calling", "control-volts-low", "sensor-cold", "connection-weak", "supply-weak", "run-cap-failed", "overload-hot", "overload-failed", "protector-hot", "protector-failed",
			"winding-open", "winding-shorted", "drive-fault", "compressor-tight", "compressor-seized", "wrong-rotation", "refrigerant-low", "restriction", "air-in-system", "compressor-weak"},
		Need: []Need{needStart, {"fan seen", []string{"blower-runs", "blower-stopped"}}, {"filter and coils", []string{"airflow-clear", "airflow-blocked"}},
			{"air it takes in and gives out", []string{"split-sound", "split-small", "split-large"}}, needAmps, needEarth},
	},
	{
		// What switches the outdoor unit, from the thermostat to the contactor.
		Code: "ac-dead", Name: "an outdoor unit that stands, or an air conditioner that does not come on",
		Cured:  []string{"starts-and-runs", "split-sound"},
		Causes: []string{"set-not-cooling", "no-supply", "fuse-open", "pan-drain-blocked", "control-not-calling", "control-volts-low", "contactor-coil-open", "pole-open", "selector-open", "wire-at-metal", "connection-weak"},
		Need:   []Need{needStart, needAmps, needEarth},
	},
	{
		Code: "ac-runs-on", Name: "an air conditioner that does not stop when it should",
		Signs:  []string{"contactor-welded"},
		Cured:  []string{"cycles-off"},
		Causes: []string{"contactor-welded", "thermostat-stuck", "control-stuck"},
		Need:   []Need{{"the contactor without its call", []string{"contactor-drops", "contactor-welded"}}, {"the end of a cycle seen", []string{"cycles-off", "runs-all-the-time"}}, needEarth},
	},
	{
		Code: "hp-no-heat", Name: "a heat pump that does not heat",
		Signs: []string{"rise-small", "rise-cooled", "does-not-heat", "heats-slowly"},
		Cured: []string{"rise-sound", "heats-up"},
		Causes: []string{"set-not-heating", "compressor-off", "airflow-blocked", "outdoor-iced", "cond-fan-failed", "cond-fan-unfed", "blower-failed", "blower-unfed", "control-not-calling",
			"sensor-stops-heat", "connection-weak", "drive-fault", "reversing-stuck", "heater-failed", "refrigerant-low", "restriction", "compressor-weak"},
		Need: []Need{needStart, {"outdoor coil seen", []string{"outdoor-clear", "outdoor-iced"}}, {"outdoor fan seen", []string{"cond-fan-runs", "cond-fan-stopped"}},
			{"air it takes in and gives out", []string{"rise-sound", "rise-small", "rise-cooled", "rise-large"}}, needAmps, needEarth},
	},
	{
		Code: "ac-drips", Name: "an air conditioner that drips",
		Causes: []string{"not-level", "pan-drain-blocked", "pan-cracked", "coil-dirty", "coil-iced"},
		Need:   []Need{{"drain of its pan", []string{"drain-clear", "drain-blocked"}}, {"how it stands", []string{"level", "not-level"}}, needEarth},
	},
	{
		Code: "no-fill", Name: "does not fill, or fills slowly",
		Signs:  []string{"does-not-fill", "fills-slowly"},
		Cured:  []string{"fills"},
		Causes: []string{"tap-shut", "screens-clogged", "switch-open", "control-not-calling", "level-says-full", "connection-weak", "valve-coil-open", "valve-stuck-shut"},
		Need:   []Need{{"tap and screens", []string{"tap-open", "tap-shut", "screens-clean", "screens-clogged"}}, {"filling seen", []string{"fills", "does-not-fill", "fills-slowly"}}, needEarth},
	},
	{
		Code: "overfills", Name: "overfills",
		Signs:  []string{"overfills"},
		Cured:  []string{"fills"},
		Causes: []string{"drain-siphons", "valve-stuck-open", "level-says-empty", "valve-kept-fed"},
		Need:   []Need{{"water with the plug pulled", []string{"fills-unpowered", "no-fill-unpowered"}}, {"filling seen", []string{"fills", "overfills"}}, needEarth},
	},
	{
		Code: "no-clean", Name: "a dishwasher that does not wash clean",
		Signs:  []string{"does-not-clean"},
		Cured:  []string{"cleans"},
		Causes: []string{"tap-shut", "screens-clogged", "arms-blocked", "hose-blocked", "heater-failed"},
		Need: []Need{{"spray arms and filter", []string{"arms-clear", "arms-blocked"}}, {"filling seen", []string{"fills", "does-not-fill", "fills-slowly"}},
			{"the wash seen", []string{"cleans", "does-not-clean"}}, needEarth},
	},
	{
		Code: "no-tumble", Name: "a dryer's drum that does not turn",
		Signs: []string{"drum-stands"},
		Cured: []string{"drum-turns"},
		Causes: []string{"winding-grounded", "no-supply", "switch-open", "limit-open", "control-not-calling", "connection-weak", "load-jammed", "belt-broken",
			"start-device-failed", "run-cap-failed", "winding-open", "winding-shorted", "protector-hot", "protector-failed", "motor-seized"},
		Need: []Need{{"door switch", []string{"switch-closed", "switch-open"}},
			{"the drum seen to turn", []string{"drum-turns", "drum-stands"}}, needAmps, needEarth},
	},
	{
		Code: "no-spin", Name: "a drum that does not turn or spin",
		Signs: []string{"does-not-spin"},
		Cured: []string{"spins", "drum-turns"},
		Causes: []string{"winding-grounded", "no-supply", "switch-open", "control-not-calling", "hose-blocked", "connection-weak", "load-jammed", "belt-broken", "suspension-worn", "clutch-worn", "brushes-worn", "tacho-open",
			"miswired", "start-device-failed", "start-cap-failed", "run-cap-failed", "winding-open", "winding-shorted", "protector-hot", "protector-failed", "drive-fault", "motor-seized"},
		Need: []Need{{"lid or door switch", []string{"switch-closed", "switch-open"}},
			{"the drum seen to turn", []string{"spins", "drum-turns", "does-not-spin", "drum-stands"}}, needAmps, needEarth},
	},
	{
		Code: "wont-run", Name: "will not start",
		Cured:  []string{"starts-and-runs", "agitates", "drum-turns", "spins", "fills"},
		Causes: []string{"set-waiting", "no-supply", "cord-open", "fuse-open", "switch-open", "limit-open", "control-not-calling", "connection-weak", "control-dead"},
		Need:   []Need{needSupply, {"lid or door switch", []string{"switch-closed", "switch-open"}}, needEarth},
	},
	{
		Code: "noisy", Name: "noisy",
		Signs:  []string{"noisy"},
		Cured:  []string{"quiet-now"},
		Causes: []string{"not-level", "object-inside", "belt-broken", "suspension-worn", "bearings-worn"},
		Need:   []Need{{"drum turned by hand", []string{"bearings-sound", "bearings-worn"}}, {"the noise gone", []string{"quiet-now"}}, needEarth},
	},
	{
		Code: "noisy-cold", Name: "an appliance that cools and is noisy",
		Signs:  []string{"noisy"},
		Cured:  []string{"quiet-now"},
		Causes: []string{"not-level", "fan-noisy", "tubes-rattle", "mounts-worn", "compressor-noisy"},
		Need:   []Need{{"each fan listened to", []string{"fans-quiet", "fan-noisy"}}, {"the noise gone", []string{"quiet-now"}}, needEarth},
	},
	{
		Code: "no-ice", Name: "an ice maker that makes no ice",
		Signs: []string{"no-ice-made"},
		Cured: []string{"makes-ice"},
		Causes: []string{"ice-switched-off", "freezer-too-warm", "tap-shut", "water-filter-clogged", "fill-tube-frozen", "control-not-calling", "connection-weak",
			"valve-coil-open", "valve-stuck-shut", "ice-maker-failed"},
		Need: []Need{{"ice maker on, arm down", []string{"ice-arm-down", "ice-arm-up"}}, {"filling seen", []string{"fills", "does-not-fill", "fills-slowly"}},
			{"ice made", []string{"makes-ice"}}, needEarth},
	},
	{
		Code: "never-ends", Name: "does not stop or end its cycle",
		Cured:  []string{"cycles-off"},
		Causes: []string{"timer-stuck", "airflow-blocked", "hose-blocked", "heater-failed", "sensor-stops-heat", "level-says-empty", "level-says-full"},
		Need:   []Need{{"the end of a cycle seen", []string{"cycles-off", "runs-all-the-time"}}, needEarth},
	},
	// The following leak at places of their own, and have no gasket.
	{
		Code: "leaks-disposer", Name: "a disposer that leaks",
		Signs:  []string{"water-on-floor"},
		Cured:  []string{"water-line-dry"},
		Causes: []string{"flange-leaks", "joints-leak", "body-leaks"},
		Need:   []Need{{"where the water comes from", []string{"flange-leaks", "flange-dry", "joints-leak", "joints-dry", "body-leaks", "body-dry"}}, needEarth},
	},
	{
		Code: "leaks-tank", Name: "a water heater that leaks",
		Signs:  []string{"water-on-floor"},
		Cured:  []string{"water-line-dry"},
		Causes: []string{"joints-leak", "relief-opens", "relief-leaks", "tank-leaks"},
		Need:   []Need{{"where the water comes from", []string{"joints-leak", "joints-dry", "relief-opens", "relief-leaks", "relief-shut", "tank-leaks", "tank-dry"}}},
	},
	{
		Code: "leaks-condensate", Name: "a furnace that leaks water",
		Signs:  []string{"water-on-floor"},
		Cured:  []string{"water-line-dry"},
		Causes: []string{"hose-blocked", "joints-leak", "pan-drain-blocked", "pan-cracked"},
		Need:   []Need{{"drain of its condensate", []string{"hose-clear", "hose-blocked", "drain-clear", "drain-blocked"}}, needEarth},
	},
	{
		Code: "leaks-oil", Name: "a washer that leaks oil",
		Causes: []string{"gear-leaks", "bearings-worn", "clutch-worn"},
		Need:   []Need{{"gearcase looked at", []string{"gear-leaks", "gear-dry"}}, needEarth},
	},
	{
		Code: "smelly-water", Name: "hot water that smells",
		Causes: []string{"anode-spent", "water-tepid"},
		Need:   []Need{{"whether the cold water smells too", []string{"cold-smells", "cold-odourless"}}},
	},
	{
		Code: "noisy-fan", Name: "a fan that is noisy",
		Signs:  []string{"noisy"},
		Cured:  []string{"quiet-now"},
		Causes: []string{"object-inside", "wheel-loose", "bearings-worn"},
		Need:   []Need{{"the noise gone", []string{"quiet-now"}}, needEarth},
	},
	{
		Code: "no-blower", Name: "a blower that stands or blows too little",
		Signs:  []string{"blower-stopped"},
		Cured:  []string{"heat-kept"},
		Causes: []string{"airflow-blocked", "belt-broken", "run-cap-failed", "connection-weak", "blower-unfed", "blower-failed"},
		Need:   []Need{{"fan seen", []string{"blower-runs", "blower-stopped"}}, {"filter and air path", []string{"airflow-clear", "airflow-blocked"}}, needAmps, needEarth},
	},
	{
		Code: "pump-on", Name: "a pump of a sump or pan that does not stop",
		Signs:  []string{"runs-all-the-time"},
		Cured:  []string{"cycles-off"},
		Causes: []string{"level-says-full", "check-valve-leaks", "hose-blocked", "impeller-loose"},
		Need:   []Need{{"float or level switch", []string{"level-sound", "level-full", "level-empty"}}, {"the end of a cycle seen", []string{"cycles-off", "runs-all-the-time"}}, needEarth},
	},
	{
		Code: "stops-early", Name: "a dryer that stops before its cycle ends",
		Signs:  []string{"cuts-out", "restarts-at-once", "starts-after-wait"},
		Cured:  []string{"cycles-off", "dries"},
		Causes: []string{"airflow-blocked", "bearings-worn", "protector-hot", "supply-weak", "connection-weak", "door-switch-slips", "ends-it-early", "winding-shorted"},
		Need: []Need{{"vent and filter", []string{"airflow-clear", "airflow-blocked"}}, {"whether it starts again at once", []string{"restarts-at-once", "starts-after-wait"}},
			{"drum turned by hand", []string{"bearings-sound", "bearings-worn"}}, needAmps, needEarth},
	},
	{
		Code: "stops-mid", Name: "a washer that stops before its cycle ends",
		Signs:  []string{"cuts-out", "restarts-at-once", "starts-after-wait"},
		Cured:  []string{"cycles-off"},
		Causes: []string{"hose-blocked", "protector-hot", "supply-weak", "connection-weak", "door-switch-slips", "winding-shorted"},
		Need: []Need{{"drain hose", []string{"hose-clear", "hose-blocked"}}, {"whether it starts again at once", []string{"restarts-at-once", "starts-after-wait"}},
			needAmps, needEarth},
	},
	{
		Code: "slow-dry", Name: "takes too long to dry",
		Cured:  []string{"dries"},
		Causes: []string{"airflow-blocked", "leg-missing", "supply-weak", "heater-failed", "limit-open", "sensor-stops-heat", "control-not-calling", "connection-weak", "igniter-weak", "gas-coil-open"},
		Need:   []Need{{"vent and filter", []string{"airflow-clear", "airflow-blocked"}}, {"heating observed", []string{"heats-up", "heats-slowly", "does-not-heat"}}, needEarth},
	},
	{
		Code: "gas-no-heat", Name: "a gas burner that does not heat",
		Signs: []string{"flame-drops-out", "flame-none"},
		Cured: []string{"flame-lights", "heats-up"},
		Causes: []string{"no-supply", "gas-off", "airflow-blocked", "limit-open", "control-not-calling", "sensor-stops-heat", "connection-weak", "flame-sensor-open",
			"igniter-open", "igniter-weak", "flame-not-sensed", "gas-coil-open"},
		Need: []Need{{"igniter seen or read", []string{"igniter-glows", "igniter-dark", "igniter-open", "igniter-conducts", "igniter-strong", "igniter-weak"}}, {"flame seen", []string{"flame-lights", "flame-drops-out", "flame-none"}}, needEarth},
	},
	{
		Code: "gas-quits", Name: "a gas burner that loses its heat",
		Signs:  []string{"heat-lost"},
		Cured:  []string{"heat-kept", "dries", "heat-right"},
		Causes: []string{"airflow-blocked", "blower-failed", "limit-hot", "cut-early", "connection-weak", "flame-not-sensed", "gas-coil-hot"},
		Need:   []Need{{"vent and filter", []string{"airflow-clear", "airflow-blocked"}}, needEarth},
	},
	{
		Code: "furnace-no-heat", Name: "a gas furnace, boiler or power vent that does not heat",
		Signs: []string{"press-open", "inducer-stopped"},
		Cured: []string{"flame-lights", "heats-up"},
		Causes: []string{"no-supply", "gas-off", "control-not-calling", "switch-open", "airflow-blocked", "limit-open", "connection-weak", "inducer-failed", "draft-poor", "press-open",
			"igniter-open", "flame-not-sensed", "gas-coil-open"},
		Need: []Need{{"flame seen", []string{"flame-lights", "flame-drops-out", "flame-none"}}, needEarth},
	},
	{
		Code: "zone-cold", Name: "a boiler that fires and does not heat a zone",
		Cured:  []string{"heats-up"},
		Causes: []string{"control-not-calling", "connection-weak", "zone-valve-shut", "circulator-failed", "zone-airbound"},
		Need:   []Need{{"zone valve and circulator seen", []string{"zone-opens", "zone-shut", "coil-open", "pump-runs", "circulator-stopped"}}, needEarth},
	},
	{
		Code: "pilot-out", Name: "a gas burner with a standing pilot that does not heat",
		Signs:  []string{"pilot-none", "pilot-weak"},
		Cured:  []string{"flame-lights", "heats-up"},
		Causes: []string{"gas-off", "intake-blocked", "pilot-weak", "thermocouple-weak", "limit-open", "pilot-valve"},
		Need:   []Need{{"pilot seen", []string{"pilot-good", "pilot-weak", "pilot-none"}}, {"intake, arrestor and vent", []string{"airflow-clear", "airflow-blocked"}}},
	},
	{
		Code: "draws-poorly", Name: "a fan that draws too little air",
		Cured:  []string{"draws-well"},
		Causes: []string{"airflow-blocked", "belt-broken", "wrong-rotation", "run-cap-failed"},
		Need:   []Need{{"filter and air path", []string{"airflow-clear", "airflow-blocked"}}, needEarth},
	},
	{
		Code: "keeps-sparking", Name: "a gas burner whose spark does not stop",
		Signs:  []string{"keeps-sparking"},
		Cured:  []string{"spark-stops"},
		Causes: []string{"spark-called", "spark-module"},
		Need:   []Need{{"spark switches parted from their module", []string{"spark-called", "spark-uncalled"}}, needEarth},
	},
	{
		Code: "fan-on", Name: "a blower that does not stop",
		Cured:  []string{"cycles-off"},
		Causes: []string{"fan-set-on", "airflow-blocked", "limit-hot", "blower-relay-stuck"},
		Need:   []Need{{"thermal limit", []string{"limit-closed", "limit-open", "limit-undecided"}}, needEarth},
	},
	{
		Code: "too-hot", Name: "gets too hot, or another heat than is set",
		Signs:  []string{"too-hot", "heats-when-off"},
		Cured:  []string{"heat-right"},
		Causes: []string{"heater-grounded", "airflow-blocked", "sensor-heats-on", "thermostat-stuck", "heat-relay-stuck"},
		Need:   []Need{{"thermostat or sensor", []string{"thermostat-opens", "thermostat-stuck-closed", "sensor-sound", "sensor-suspect", "sensor-undecided", "sensor-failed", "sensor-reads-cold"}}, needEarth},
	},
	{
		Code: "three-phase", Name: "a three-phase machine that does not run, or not as it should",
		Signs: []string{"leg-lost", "phase-lost", "single-phasing"},
		Cured: []string{"starts-and-runs"},
		Causes: []string{"winding-grounded", "no-supply", "phase-lost", "leg-fuse-open", "pole-open", "phases-unequal", "connection-weak", "control-not-calling", "control-volts-low", "contactor-coil-open", "load-jammed", "load-drags",
			"overload-hot", "overload-failed", "winding-open", "winding-shorted", "compressor-seized", "motor-seized", "wrong-rotation"},
		Need: []Need{{"volts of the three legs at the machine", []string{"legs-sound", "legs-unbalanced", "leg-lost"}}, needWindings, needCase, needStart, needAmps},
	},
	{
		Code: "door-locked", Name: "a door that stays locked",
		Signs:  []string{"door-locked"},
		Cured:  []string{"door-unlocks"},
		Causes: []string{"water-left", "level-says-full", "lock-jammed", "connection-weak", "lock-kept"},
		Need:   []Need{needLock, {"water left inside", []string{"drum-empty", "does-not-drain", "drains"}}, needEarth},
	},
	{
		Code: "oven-locked", Name: "an oven's door that stays locked",
		Signs:  []string{"door-locked"},
		Cured:  []string{"door-unlocks"},
		Causes: []string{"sensor-stops-heat", "lock-jammed", "connection-weak", "lock-kept"},
		Need:   []Need{needLock, needEarth},
	},
	{
		Code: "no-waves", Name: "a microwave oven that does not heat",
		Signs:  []string{"does-not-heat", "heats-slowly"},
		Cured:  []string{"heats-up"},
		Causes: []string{"supply-weak", "switch-open", "limit-open", "connection-weak", "control-not-calling", "magnetron-failed", "high-volts-failed"},
		Need: []Need{{"door switches", []string{"switch-closed", "switch-open", "switch-undecided"}}, {"thermal limit", []string{"limit-closed", "limit-open", "limit-undecided"}},
			{"heating observed", []string{"heats-up", "heats-slowly", "does-not-heat"}}, needEarth},
	},
	{
		Code: "no-zone", Name: "an induction zone that does not heat",
		Signs:  []string{"does-not-heat", "heats-slowly"},
		Cured:  []string{"heats-up"},
		Causes: []string{"pan-unfit", "leg-missing", "airflow-blocked", "sensor-stops-heat", "connection-weak", "work-coil-open", "zone-drive-failed"},
		Need:   []Need{{"a pan that another zone heats", []string{"pan-fits", "pan-unfit"}}, {"ohms of the work coil", []string{"coil-conducts", "coil-open"}}, {"heating observed", []string{"heats-up", "heats-slowly", "does-not-heat"}}, needEarth},
	},
	{
		Code: "poor-ice", Name: "an ice machine whose slab is thin, late or does not drop",
		Signs:  []string{"no-ice-made"},
		Cured:  []string{"makes-ice"},
		Causes: with("scaled tap-shut water-filter-clogged slab-pump slab-probe harvest-valve condenser-dirty cond-fan-failed cond-fan-unfed refrigerant-low", nil),
		Need: []Need{{"scale looked for", []string{"scaled", "scale-none"}}, {"thickness of the slab", []string{"slab-right", "slab-wrong"}},
			{"the harvest seen", []string{"harvest-hot", "harvest-cold"}}, {"ice made", []string{"makes-ice"}}, needEarth},
	},
	{
		// Two interlocks end it when the door opens; where they do not, the monitor
		// switch blows the fuse.
		Code: "blows-fuse", Name: "a microwave oven that blows its fuse",
		Cured:  []string{"heats-up"},
		Causes: []string{"interlock-stuck", "monitor-stuck", "cord-shorted", "wires-shorted", "high-volts-failed"},
		Need: []Need{{"each door switch with the door open", []string{"interlock-closed", "interlocks-good"}},
			{"the monitor switch, door shut and open", []string{"monitor-closed", "monitor-opens"}}, needEarth},
	},
	{
		// Taken by the appliance: its words are those of leaks-ices.
		Code: "leaks-water", Name: "leaks water",
		Signs:  []string{"water-on-floor"},
		Causes: []string{"water-line-leaks", "gasket-leaks", "hose-blocked", "seal-leaks", "not-level", "pan-cracked"},
		Need: []Need{{"water tubes, valve and hoses", []string{"water-line-dry", "water-line-leaks"}}, {"gasket", []string{"gasket-sound", "gasket-leaks", "no-gasket"}},
			{"drain hose", []string{"hose-clear", "hose-blocked"}}, needEarth},
	},
	{
		Code: "too-cold", Name: "too cold",
		Words:  "too cold, freezes food, freezing food, food freezes, freezing in fridge, freezes milk, freezes the milk, milk froz, milk freezes, food froz, lettuce freezes, lettuce froz, freezes lettuce, drinks freeze, drinks froz, freezes drinks, freezes eggs, eggs froz, vegetables freeze, vegetables froz, fridge freezes, fridge freezing, freezes veg, freezing veg, veg freezes, freezes vegetables, freezing vegetables, freezing milk",
		Signs:  []string{"freezes-food"},
		Causes: []string{"set-wrong", "damper-stuck", "sensor-failed", "thermostat-stuck", "control-stuck"},
		Need: []Need{{"setting", []string{"set-normal", "set-coldest"}}, {"thermostat or sensor",
			[]string{"thermostat-opens", "thermostat-stuck-closed", "sensor-sound", "sensor-suspect", "sensor-undecided", "sensor-failed"}}, needPullDown},
	},
	{
		Code: "runs-always", Name: "runs all the time",
		Words:  "runs all, never stops, always running, always runs, runs constantly, runs nonstop, running nonstop, running constant, doesn't shut off, not shut off, won't shut off",
		Signs:  []string{"runs-all-the-time"},
		Cured:  []string{"cycles-off"},
		Causes: with("set-wrong heavy-use room-hot gasket-leaks lamp-stays-on condenser-dirty cond-fan-failed cond-fan-unfed evap-fan-failed evap-fan-unfed sensor-failed thermostat-stuck control-stuck refrigerant-low restriction air-in-system compressor-weak", defrostCauses),
		Need:   []Need{needFrost, needFans, needEvapFan, needPullDown, needAmps},
	},
	{
		Code: "no-cool", Name: "runs but does not cool",
		Words:  "not cool, no cool, not chill, won't chill, doesn't chill, don't chill, food thaw, meat thaw, everything thaw, not pull down, won't pull down, not get below, won't get below, not get down, won't get down, temp alarm, product soft, soft product, doesn't cool, won't cool, warm, lukewarm, not cold, isn't cold, not freez, won't freez, doesn't freez, stopped freez, quit freez, stopped cool, quit cool, poor cool, food spoil, not hold temp, ice cream, no cold air",
		Signs:  []string{"does-not-cool", "cools-slowly", "will-not-reach", "pulls-down-slowly"},
		Cured:  []string{"cools-down", "temp-at-target"},
		Causes: with("compressor-off heavy-use vents-blocked condenser-dirty cond-fan-failed cond-fan-unfed evap-fan-failed evap-fan-unfed gasket-leaks sensor-cold wrong-rotation liquid-valve-shut refrigerant-low restriction air-in-system compressor-weak", defrostCauses),
		Need:   []Need{needStart, needFans, needEvapFan, needFrost, needAmps, needPullDown},
	},
	{
		// Taken by what was read or told of its freezer. A holder of cold stays so for
		// hours: it rules nothing out, and the sealed system comes last.
		Code: "fridge-warm", Name: "a fridge that is warm beside a cold freezer",
		Cured:  []string{"cools-down", "temp-at-target"},
		Causes: with("vents-blocked evap-fan-failed evap-fan-unfed evaporator-iced heater-failed limit-open defrost-control-failed sensor-cold gasket-leaks heavy-use condenser-dirty cond-fan-failed cond-fan-unfed compressor-off refrigerant-low restriction air-in-system compressor-weak", nil),
		Need:   []Need{needEvapFan, needFrost, needPullDown},
	},
	{
		// Taken by the appliance, as the next: its words are those of no-cool.
		Code: "absorption-warm", Name: "an absorption cooler that does not cool",
		Signs:  []string{"does-not-cool", "cools-slowly"},
		Cured:  []string{"cools-down", "temp-at-target"},
		Causes: []string{"heater-grounded", "no-supply", "connection-weak", "control-not-calling", "not-level", "back-unaired", "heater-failed", "gasket-leaks", "cooling-unit-blocked"},
		Need:   []Need{needSupply, {"cabinet level", []string{"level", "not-level"}}, {"air at its back", []string{"back-aired", "back-unaired"}}, needHeater, needCold, needEarth},
	},
	{
		Code: "peltier-warm", Name: "a thermoelectric cooler that does not cool",
		Signs:  []string{"does-not-cool", "cools-slowly"},
		Cured:  []string{"cools-down", "temp-at-target"},
		Causes: []string{"no-supply", "connection-weak", "back-unaired", "module-not-fed", "gasket-leaks", "module-failed"},
		Need:   []Need{needSupply, {"fan and fins of its hot side", []string{"back-aired", "back-unaired"}}, {"volts at the module", []string{"module-fed", "module-unfed"}}, needCold},
	},
	{
		Code: "no-heat", Name: "a heater appliance that does not heat",
		Words: "no heat, not heat, doesn't heat, won't heat, not hot, no hot, out of hot water, stays cold, not dry, doesn't dry, won't dry, not get hot, cold water, takes too long, takes forever, heats slow, heat slow, heats up slow, slow to heat, to preheat, slow to warm, slow to bake, preheats slow, long to heat, minutes to heat, min to heat, nothing heats, slow heating, not reach temp, doesn't reach temp, won't reach temp, not bake, no bake, no broil, won't bake, doesn't bake, not broil, won't broil, water cold, two cycles",
		Signs: []string{"does-not-heat", "heats-slowly"},
		Cured: []string{"heats-up"},
		Causes: []string{"heater-grounded", "no-supply", "leg-missing", "supply-weak", "switch-open", "control-not-calling", "sensor-stops-heat",
			"airflow-blocked", "limit-open", "connection-weak", "heater-failed"},
		Need: []Need{needSupply, needHeater, {"heater to its sheath", []string{"heater-insulation-sound", "heater-no-gross-fault", "heater-insulation-undecided", "heater-insulation-suspect", "heater-grounded"}},
			{"thermal limit", []string{"limit-closed", "limit-open", "limit-undecided"}}, {"heating observed", []string{"heats-up", "heats-slowly", "does-not-heat"}}, needEarth},
	},
	{
		Code: "motor-dead", Name: "a motor that does not turn",
		Words: "not turn, not spin, no spin, doesn't spin, won't spin, doesn't turn, won't turn, motor, fan not, drum not",
		Cured: []string{"starts-and-runs"},
		Causes: []string{"winding-grounded", "no-supply", "supply-weak", "switch-open", "control-not-calling", "connection-weak", "miswired", "speed-switch-open", "load-jammed",
			"belt-broken", "brushes-worn", "tacho-open", "start-device-failed", "start-cap-failed", "run-cap-failed", "winding-open", "winding-shorted", "protector-hot",
			"protector-failed", "drive-fault", "motor-seized"},
		Need: []Need{needSupply, needWindings, needCase, {"shaft turned by hand", []string{"shaft-free", "shaft-stuck"}}, needStart, needAmps, needEarth},
	},
}
