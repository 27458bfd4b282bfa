package call

import "regexp"

// respelling writes one way of typing as the language has it.
type respelling struct {
	of       string // the command that it is for, "" for all readings
	from, to string
	re       *regexp.Regexp
}

// Behind a number that a comma follows without a space: conditions, and no
// number but theirs, up to the next comma.
const tail = `((?: (?:at|test) \S+| [^\d, ~>-][^, ]*)*)(,|$)`

// decimalComma takes 3,4 for 3.4; a comma that parts readings has a space
// behind it, or a point. Three digits behind a comma can be thousands too.
const (
	decimalComma = `( [~>]?-?\d+),(\d{1,2}[^\d., ]*)` + tail
	twoWays      = `^(.* )([~>]?-?\d+),(\d{3,}[^\d., ]*)` + tail
)

// respellings are for one reading or for what stands behind another command, in
// this order.
var respellings = []respelling{
	{from: ` ?[:=]+( |$)`, to: `$1`},
	{from: `([A-Za-z])[:=]([\d.~>-])`, to: `$1 $2`},
	{from: `\.$`},
	{from: `(?i)^(?:to|at|of|on|across|is|was) `},
	{from: `(?i)^([~-]?[\d.]\S*) (?:at|on|across) ([a-z]\S*)$`, to: `$2 $1`},
	{from: `≥|>=`, to: `>`},
	{from: `≈`, to: `~`},
	{from: `(^| )(?:[–—]|(?i:minus|neg|negative) )(\d)`, to: `$1-$2`},
	{of: "psi", from: `(?i)^vac(?:uum)? (\d[\d.]* ?(?:microns?|m?torr))`, to: `suction $1`},
	{of: "psi", from: `(?i)(^| )vac(?:uum)? -?(\d[\d.]*)(?: ?in(?:ches)?(?: ?hg)?)?( |$)`, to: `$1-${2}inHg$3`},
	{of: "psi", from: `(?i)(^| )(~?)(\d[\d.]*)(?: ?in(?:ches)?(?: of)?(?: ?hg| mercury)?(?:(?: of)? vac(?:uum)?)?| ?vac(?:uum)?)( |$)`, to: `$1$2-${3}inHg$4`}, // a compound gauge has no others
	{of: "psi", from: `(?i)(-\d[\d.]* ?inhg) vac(?:uum)?( |$)`, to: `$1$2`},
	{from: `(?i)(^| )(?:about|approx|around|roughly|circa|ca|~)\.? (\d)`, to: `$1~$2`},
	{from: `(?i)(\d) ?meg(?:a?ohm)?s?( |$)`, to: `${1}M$2`},
	{of: "ohm", from: `(?i)(\d) ?gig(?:a?-?ohm)?s?( |$)`, to: `${1}G$2`},
	{of: "ohm", from: `(?i)(\d) ?k(?:ilo)?-?ohms?( |$)`, to: `${1}k$2`},
	{of: "ohm", from: `(\d) ?(?:m|(?i:milli-?ohms?))( |$)`, to: `${1}m$2`},
	{of: "ohm", from: `(?i)( [~>]?\d[\d.]*[kMG]| OL) (\d+ ?k?V)( |$)`, to: `$1 test $2$3`},
	{of: "ohm", from: `(?i) test(\d)`, to: ` test $1`},
	{of: "ohm", from: `(?i) in ice(?: water)?$`, to: ` ice`},
	{of: "psi", from: `(?i)(\d) ?m(?:illi)?torrs?( |$)`, to: `$1 microns$2`}, // 1.000 micron (from memory)
	{from: `(?i)(\d) ?vac( |$)`, to: `${1}V$2`},
	{of: "volt", from: `(?i)(\d) ?v?dc( |$)`, to: `${1}V dc$2`},
	{of: "volt", from: `(?i)(\d ?m?v) dc( |$)`, to: `$1 dc$2`},
	{from: `(?i)(\d) ?microfarads?( |$)`, to: `${1}uF$2`},
	{from: `(?i)(\d) ?seconds?( |$)`, to: `${1}s$2`},
	{from: `(?i)(\d) ?amps?( |$)`, to: `${1}A$2`},
	{from: `(?i)(\d) ?volts?( |$)`, to: `${1}V$2`},
	{from: `(?i)(\d) ?watts?( |$)`, to: `${1}W$2`},
	{from: `(?i)(\d) ?ohms?( |$)`, to: `${1}ohm$2`},
	{from: `(?i)(\d) ?deg(?:rees?)?( |$)`, to: `$1$2`},
	{from: `(?i)(\d) ?(?:omhs?|ohsm?)( |$)`, to: `${1}ohm$2`},
	{from: `(\d)°( |$)`, to: `$1$2`},
	{of: "temp", from: `(?i)(^| )(~?)(\d[\d.]*)(?: ?°?([FC]))? below(?: zero| 0[FC]?)?( (?:before|after|run|cold|hot)\b.*|$)`, to: `$1$2-$3$4$5`},
	{of: "ohm", from: `(\d) ?K( |$)`, to: `${1}k$2`},
	{from: `(^| )([~>-]?[\d.]*\d) ([kMG])( |$)`, to: `$1$2$3$4`},
	{from: `(^| )(\d\S*)\+( |$)`, to: `$1>$2$3`},
	{from: `(^| )(?:>|(?i:over)) (\d\S*M)`, to: `$1>$2`},
	{from: `(?i) (?:o/l|infinite|infinity)( |$)`, to: ` OL$1`},
	{from: ` @ ?(\d)`, to: ` at $1`},
	{of: "ohm", from: `(?i) at (\d+ ?k?V)( |$)`, to: ` test $1$2`},
	{from: `(?i) running( |$)`, to: ` run$1`},
	{from: `(?i) (?:(?:at|on) start(?:ing|-?up)?|start(?:ing|-?up))( |$)`, to: ` start$1`},
	{from: `(?i) (?:inrush|surge)( |$)`, to: ` peak$1`},
	{of: "amp", from: `(?i) lra( |$)`, to: ` peak$1`},
	{of: "amp", from: `(?i) (?:locked|stalled)(?: rotor)?( |$)`, to: ` run$1`}, // it stays
	{from: `(?i) afterwards?( |$)`, to: ` after$1`},
	{of: "ohm", from: `(?i) (?:(?:with|when|at) )?(?:the )?(?:door|lid)(?: is)? shut$`, to: ` closed`},
	{of: "ohm", from: `(?i) (?:(?:with|when|at) )?(?:the )?(?:door|lid)(?: is)? (open|closed)$`, to: ` $1`},
	{of: "ohm", from: `(?i)^hot (?:(?:leg|wire|pin|prong|blade|conductor) )?(?:to )?(case|gnd|grd|ground|earth|chassis|frame|shell|cabinet|metal|g) `, to: `L $1 `}, // the conductor
	{of: "ohm", from: `(?i)^(?:l|live|hot) (?:to )?(?:n|neutral) ([\d.~>o])`, to: `plug $1`},
	{of: "volt", from: `(?i)^hot (?:(?:leg|wire|pin|prong|blade|conductor) )?(?:to )?(case|gnd|grd|ground|earth|chassis|frame|shell|cabinet|metal|neutral|n|g) `, to: `L $1 `},
	{of: "volt", from: `(?i)^(l[123]?) (?:to )?neutral `, to: `$1 N `},
	{of: "ohm", from: `(?i)^(all|each) (?:pins?|leads?|windings?) `, to: `$1 `},
	{of: "ohm", from: `(?i)^(push|press) to (start) `, to: `$1-to-$2 `},
	{of: "ohm", from: `(?i) to (case|gnd|ground|chassis|frame|shell) `, to: ` $1 `},
	{from: `^(\S+) (?:(?i:to|and)|[&–—-]) (\S+ [\d.~>oO-])`, to: `$1 $2`},
	{from: `(?i)(^| )htr `, to: `${1}heater `},
	{from: `(?i)(^| )elem `, to: `${1}element `},
	{from: `(?i)^mtr `, to: `motor `},
	{of: "temp", from: `(?i)^(?:fz|frz\.?) `, to: `freezer `},
	{of: "temp", from: `(?i)^cab `, to: `cabinet `},
	{from: `(?i)^def `, to: `defrost `},
	{from: `(?i)(fan|pump|blower) motor `, to: `$1 `},
	{from: `(?i)^fan (cond|evap) `, to: `$1-fan `},
	{of: "temp", from: `(?i)^(?:frz|frzr) `, to: `freezer `},
	{of: "temp", from: `(?i)^(?:ff|refrig) `, to: `fridge `},
	// Two pins; NO, NC and PE are points, RF and HV stand before a part.
	{of: "ohm", from: `^([A-MQ-Z])([A-Z]) ([\d.~>O(]|(?i:case|gnd|gro|chas|fram|shel|eart|hot |cold ))`, to: `$1 $2 $3`},
	{of: "ohm", from: `(?i)^(?:start|current) relay (coil|contact) `, to: `relay-$1 `},
	{of: "ohm", from: `(?i)timer (?:motor|coil) `, to: `timer `}, // what of it is read as a whole
	{of: "ohm", from: `(?i) pressed( |$)`, to: ` closed$1`},
	{of: "ohm", from: `(?i)^(com|common|start|run)[–/>-](com|common|start|run) `, to: `$1 $2 `},
	{of: "ohm", from: `(?i)^(?:(?:motor|comp|compressor) )?(run|start|main|aux)(?: winding)? ([\d.~>o])`, to: `common $1 $2`}, // what is read from common to it
	{of: "ohm", from: `(?i) case `, to: ` case `},
	{of: "ohm", from: `(?i)^(\S+) g (\S+ test )`, to: `$1 case $2`}, // a tester stands between a pin and earth
	{of: "ohm", from: `(?i)^(\S{3,}) sw `, to: `$1-switch `},
	// A switch is read at what is set.
	{of: "ohm", from: `(?i)^(speed-switch) (\S+) (low|med|medium|high)$`, to: `$1-$3 $2 closed`},
	{of: "ohm", from: `(?i)^(\S*switch\S*|\S*thermostat) (\S+) (?:switched |turned |set )?off$`, to: `$1 $2 open`},
	{of: "ohm", from: `(?i)valve coil `, to: `valve `},
	{of: "ohm", from: `(?i)^valve (hot|cold) `, to: `valve-$1 `},
	{of: "ohm", from: `(?i)^(hot|cold) (?:water )?valve `, to: `valve-$1 `},
	{of: "ohm", from: `(?i)^(inlet|water|fill) valve (hot|cold) `, to: `$1-valve-$2 `},
	{of: "ohm", from: `(?i)^([a-z]{3,}) t?stat `, to: `$1-thermostat `},
	{of: "ohm", from: `(?i)^(hot|cold) (switch|element|heater|thermostat|sensor|thermistor|relay|igniter) ([\d.~>o]\S*)$`, to: `$2 $3 $1`},
	{of: "ohm", from: `(?i) frozen$`, to: ` cold`},
	{of: "ohm", from: `(?i)^(` + colour + `)[–/-](` + colour + `) `, to: `$1 $2 `},
	{of: "ohm", from: `^(\S+)[–/>-]((?i:case|gnd|ground|chassis|frame|shell)) `, to: `$1 $2 `},
	{of: "amp", from: `(?i)^(?:motor|comp|compressor)[ -](?:leg )?([lt][123]|[uvw]) ([\d.~>])`, to: `$1 $2`}, // one of its legs
	{of: "mfd", from: `(?i)^c[–/>-](\S+) `, to: `$1 `},
	{of: "mfd", from: `(?i)^(hv|\w{3,}) cap(?:acitor)? `, to: `$1-cap `},
	{of: "mfd", from: `(?i)^cap(?:acitor)? (start|run) `, to: `$1-cap `},
	{of: "mfd", from: `(?i)^cap(?:acitor)? (fan|herm|comp) `, to: `$1 `},
	// Of a can with two sections both are read to C.
	{of: "mfd", from: `^(?i:c|com|common) ([A-Za-z]\S* [\d.~])`, to: `$1`},
	{of: "mfd", from: `^([A-Za-z]\S*) (?i:c|com|common) ([\d.~])`, to: `$1 $2`},
	{of: "ohm", from: `^(\w\d?)[–/>+-](\w\d?) `, to: `$1 $2 `},
	{of: "volt", from: `^(\w\d?)[–/>-](\w\d?) `, to: `$1 $2 `},
	{of: "wire", from: `(?i) (?:to )?(?:pin|lead|terminal) (\S+)$`, to: ` $1`},
	{of: "part", from: `^([^,]+, ?\d+, ?[$€£]?\d+),(\d\d)$`, to: `$1.$2`},
	{of: "wire", from: `^(\S+?)(?:=| (?:to|is|[–=>-]+) )(\S+)$`, to: `$1 $2`},
	{of: "mark", from: `^(\S+?)(?:=| (?:to|is|[–=>-]+) )(\S+)$`, to: `$1 $2`},
	{of: "mark", from: `(?i) c(?:om)?$`, to: ` common`},
	{of: "mark", from: `(?i) s$`, to: ` start`},
	{of: "mark", from: `(?i) r$`, to: ` run`},
	{of: "plate", from: `(?i)(^|, ?)mfd cap(?:acitor)? (fan|herm|comp) `, to: `${1}mfd $2 `},
	{of: "plate", from: `(?i)(^|, ?)igniter (?:amps?|current|draws?) `, to: `${1}igniter `},
	{of: "plate", from: `(^|, ?)(\w+) ?[=:] ?`, to: `$1$2 `},
	{of: "part", from: `, ?[$€£](\d)`, to: `, $1`},
	{of: "units", from: `(?i)^(?:°|deg ?)?f\w*$`, to: `F`},
	{of: "units", from: `(?i)^(?:°|deg ?)?c\w*$`, to: `C`},
	{of: "choose", from: `(?i)^(?:start|hard)[ -](?:device|relay|kit|start)$`, to: `start-kit`},
	{of: "choose", from: `(?i)^(run|start)[ -]cap\w*$`, to: `$1-cap`},
	{of: "limit", from: `(?i)(\d) ?meg\w*$`, to: `${1}M`},
	{of: "meter", from: `%\+(\d)`, to: `% $1`},
	{of: "meter", from: `(\d) ?(?:d|dgts?|digits?|counts?)$`, to: `$1`},
	{of: "volt", from: `^(?i)(l[123]?|n)[–/>-]?(l[123]?|n) `, to: `$1 $2 `},
	{of: "volt", from: `(?i)^(l[123]?|n)[ –/>-](?:pe|e) `, to: `$1 earth `},
	// A part, its count and its price without commas; a part's number ends in digits.
	{of: "part", from: `^([^,]*\S \d) [$€£]?(\d+),(\d\d)$`, to: `$1 $2.$3`},
	{of: "part", from: `^(\d) ?[x×] ([^,]*[A-Za-z][^,]*) [$€£]?(\d+\.\d\d)$`, to: `$2, $1, $3`},
	{of: "part", from: `(?i)^([^,]*\S) (\d) [$€£]?(\d+\.\d\d),? ((?:serial|s/?n) [^\s,]+)$`, to: `$1 $4, $2, $3`},
	{of: "part", from: `^([^,]*\S) 1 [$€£]?(\d+\.\d\d)$`, to: `$1, 1, $2`},
	{of: "part", from: `^([^,]* \S*(?:[A-Za-z-]\S*\d|\d\S*[A-Za-z-])\S*) ([2-9]) [$€£]?(\d+\.\d\d)$`, to: `$1, $2, $3`},
}

const colour = `black|blk|white|wht|red|blue|blu|yellow|yel|green|grn|orange|orn|brown|brn|purple|gray|grey|pink`
