package cause

// leakRows are the causes of what leaks, smells or is noisy at places of its own, in the
// form of gasRows: common practice.
const leakRows = `
flange-leaks | its flange in the sink leaks | flange-leaks | water-on-floor | flange-dry | take it down, clean flange and sink, set it in fresh putty or on its new gasket, and draw its ring up evenly | flange, putty, mount, gasket
joints-leak | a joint, hose or fitting at it leaks | joints-leak | water-on-floor | joints-dry | tighten or replace the joint, hose or fitting; what is soldered, or carries house pressure, is a plumber's | joint, hose, fitting, elbow, clamp, nipple, union, drain valve, humidifier, plumber, gasket, element
body-leaks | seal of its shaft leaks, or its body is holed | body-leaks | water-on-floor | body-dry | replace the disposer: water has reached its motor | dispos, replac
relief-opens | relief valve opens: too hot, or pressure too high with nowhere for the water to expand | relief-opens | too-hot water-on-floor | relief-shut relief-leaks | read the water's heat and the house pressure; mend a thermostat that sticks, have a plumber see to pressure and expansion tank; the valve is never plugged, capped or set higher | relief, t&p, thermostat, expansion, pressure, regulator, plumber
relief-leaks | relief valve does not seat | relief-leaks | water-on-floor | relief-shut relief-opens | replace it with one of the tank's rating, its pipe open and down; it is never plugged or capped | relief, t&p
tank-leaks | tank leaks | tank-leaks | water-on-floor | tank-dry | shut water and power or gas off and replace the heater: a tank is not patched | tank, heater, replac
gear-leaks | seal of the gearcase leaks oil | gear-leaks | noisy | gear-dry | replace the gearcase with its seals, and see to brake and clutch that the oil has reached | gear, transmission, seal
anode-spent | anode spent, or of a kind that this water makes smell | anode-spent | cold-odourless | anode-sound cold-smells | replace the anode, by one of zinc and aluminium or a powered one where the water makes it smell; flush and disinfect the tank by its sheet | anode, rod, flush, disinfect, chlorin
water-tepid | its water stands tepid or unused, and bacteria grow in it | water-tepid | cold-odourless | water-kept-hot cold-smells | set it by its sheet, 60 C where a mixing valve guards against scalding, run it through and disinfect it | set, flush, disinfect, chlorin, thermostat
wheel-loose | wheel or blade loose, bent or dirty | wheel-loose | noisy | wheel-sound | clean the wheel, set and tighten it on its shaft, or replace it | wheel, blade, clean, screw
set-waiting | set to wait or locked: delay start, child lock, demo mode, programme at off | set-waiting | silent light-works | set-to-run | take the delay, lock or demo mode out by its booklet, and show the user | delay, lock, demo, set, explain, show
check-valve-leaks | check valve leaks or is missing: the water runs back | check-leaks | runs-all-the-time short-cycles | check-holds cycles-off | clean or replace the check valve, its arrow with the flow | check valve, non return, valve
`

// leakTestRows are their tests, in the form of startTestRows.
const leakTestRows = `
leak-flange | dry it all, run water, and look at the flange in the sink with a torch and a paper towel | saw sink flange dry | 1l | flange-dry flange-leaks |  | hot-and-moving | leaks-disposer
leak-joints | dry its joints, hoses and fittings and look which grows wet first | saw fittings dry | 1l | joints-dry joints-leak |  | hot-and-moving | leaks-disposer leaks-tank leaks-condensate
leak-body | fill the sink, let it run, look from below at body and vents | saw body dry | 1l | body-dry body-leaks |  | hot-and-moving | leaks-disposer
relief-look | feel the pipe of the relief valve: dry, or wet always, or only while it heats | saw relief valve dry | 2l | relief-shut relief-opens relief-leaks |  | hot-and-moving | leaks-tank
tank-look | dry the pan, see fittings and relief valve dry, and look whether water comes from the jacket | saw tank dry | 3l | tank-dry tank-leaks |  | hot-and-moving | leaks-tank
cold-smell | run cold water into a glass, and hot into another, and smell each | saw only hot water smells | 1l | cold-odourless cold-smells |  | hot-and-moving | smelly-water
tepid-look | read how it is set and what comes at the tap, and ask how long it stood unused | saw water kept hot | 1l | water-kept-hot water-tepid |  | hot-and-moving | smelly-water
set-look | read its display: no delay, child lock or demo mode, and a programme chosen | saw set to run | 1l | set-to-run set-waiting |  | hot-and-moving | wont-run
check-valve | let the pump stop and listen whether the water runs back into the pit | saw check valve holds | 1l | check-holds check-leaks |  | hot-and-moving | pump-on
gear-look | tip it back, power and water off, and look below for oil at gearcase and shaft | saw no oil at gearcase | 2d | gear-dry gear-leaks |  | prove-dead hot-and-moving | leaks-oil
anode-look | water and power or gas off, pressure let out: take the anode out and look at it | saw anode good | 4d | anode-sound anode-spent |  | prove-dead hot-and-moving | smelly-water
wheel-look | power off, look at wheel and blade and turn them by hand | saw wheel good | 1d | wheel-sound wheel-loose |  | prove-dead hot-and-moving | noisy-fan
`
