package quantity

import (
	"math"
	"strings"
)

// decl declares one unit once: how it is written and printed, its UCUM code,
// and its size in SI (SI = value·factor + offset).
type decl struct {
	symbols  []string // the first is printed
	ucum     string
	what     string // the quantity, as a message names it
	dim      Dim
	kind     Kind
	factor   float64
	offset   float64
	prefixes string // letters that may stand before it
	auto     string // those that printing chooses among, besides none
	diff     string // the unit in which two of its points differ
	prefixed bool   // never written without a prefix
	fraction bool   // `1/6 hp` is a sixth of it
	help     string
}

var (
	dimLength      = Dim{1}
	dimMass        = Dim{0, 1}
	dimTime        = Dim{0, 0, 1}
	dimCurrent     = Dim{0, 0, 0, 1}
	dimTemp        = Dim{0, 0, 0, 0, 1}
	dimFrequency   = Dim{0, 0, -1}
	dimForce       = Dim{1, 1, -2}
	dimEnergy      = Dim{2, 1, -2}
	dimPower       = Dim{2, 1, -3}
	dimVoltage     = Dim{2, 1, -3, -1}
	dimResistance  = Dim{2, 1, -3, -2}
	dimCapacitance = Dim{-2, -1, 4, 2}
	dimInductance  = Dim{2, 1, -2, -2}
	dimPressure    = Dim{-1, 1, -2}
	dimVolume      = Dim{3}
	dimFlow        = Dim{3, 0, -1}
)

// Factors that several units share. The international units of length, mass
// and force are exact; inch of mercury and of water by UCUM m[Hg] and
// m[H2O]; horsepower 550 ft·lbf/s and the IT Btu by UCUM. PSI is the pound per
// square inch in pascals, ZeroC 0 °C in kelvin (NIST SP 811, from memory).
const (
	inch   = 0.0254
	foot   = 12 * inch
	pound  = 0.45359237
	PSI    = pound * 9.80665 / (inch * inch)
	inHg   = 133322.0 * inch
	inWC   = 9806.65 * inch
	hp     = 550 * foot * pound * 9.80665
	btu    = 1055.05585262
	ZeroC  = 273.15
	degree = 5.0 / 9
	zeroF  = ZeroC - 32*degree
)

// decls is the table of units. Within a dimension and kind the first one is
// used for results that no operand suggests a unit for.
var decls = []decl{
	{symbols: []string{""}, ucum: "1", what: "plain number", factor: 1, help: "plain number"},
	{symbols: []string{"%"}, ucum: "%", what: "percentage", factor: 0.01, help: "percent"},
	{symbols: []string{"°", "deg"}, ucum: "deg", what: "angle", factor: math.Pi / 180, help: "degree of an angle"},
	{symbols: []string{"Ω", "ohm", "ohms", "R", "\u2126"}, ucum: "Ohm", what: "resistance", dim: dimResistance, factor: 1, prefixes: "umkMG", auto: "mkM", help: "ohm"},
	{symbols: []string{"V", "volt", "volts", "VAC", "VDC"}, ucum: "V", what: "voltage", dim: dimVoltage, factor: 1, prefixes: "umk", auto: "mk", help: "volt"},
	{symbols: []string{"A", "amp", "amps"}, ucum: "A", what: "current", dim: dimCurrent, factor: 1, prefixes: "numk", auto: "umk", help: "ampere"},
	{symbols: []string{"W", "watt", "watts"}, ucum: "W", what: "power", dim: dimPower, factor: 1, prefixes: "mkM", auto: "mkM", help: "watt"},
	{symbols: []string{"VA"}, ucum: "V.A", what: "power", dim: dimPower, factor: 1, prefixes: "k", auto: "k", help: "volt-ampere, apparent power"},
	{symbols: []string{"hp"}, ucum: "[HP]", what: "power", dim: dimPower, factor: hp, fraction: true, help: "horsepower, 550 ft·lbf/s"},
	{symbols: []string{"Btuh"}, ucum: "[Btu_IT]/h", what: "power", dim: dimPower, factor: btu / 3600, help: "Btu per hour"},
	{symbols: []string{"kBtuh", "MBH"}, ucum: "1000.[Btu_IT]/h", what: "power", dim: dimPower, factor: 1000 * btu / 3600, help: "thousand Btu per hour"},
	{symbols: []string{"ton", "tons"}, ucum: "12000.[Btu_IT]/h", what: "power", dim: dimPower, factor: 12000 * btu / 3600, help: "ton of cooling"},
	{symbols: []string{"Hz"}, ucum: "Hz", what: "frequency", dim: dimFrequency, factor: 1, prefixes: "mkMG", auto: "mkMG", help: "hertz"},
	{symbols: []string{"rpm"}, ucum: "/min", what: "frequency", dim: dimFrequency, factor: 1.0 / 60, help: "turns per minute"},
	{symbols: []string{"F"}, ucum: "F", what: "capacitance", dim: dimCapacitance, factor: 1, prefixes: "pnu", auto: "pnu", prefixed: true, help: "farad, only as uF, nF, pF or mfd"},
	{symbols: []string{"mfd", "MFD"}, ucum: "uF", what: "capacitance", dim: dimCapacitance, factor: 1e-6, help: "microfarad as the trade writes it"},
	{symbols: []string{"H"}, ucum: "H", what: "inductance", dim: dimInductance, factor: 1, prefixes: "num", auto: "um", help: "henry"},
	{symbols: []string{"°C", "degC", "C"}, ucum: "Cel", what: "temperature", dim: dimTemp, kind: Point, factor: 1, offset: ZeroC, diff: "K", help: "degree Celsius on a thermometer"},
	{symbols: []string{"°F", "degF", "F"}, ucum: "[degF]", what: "temperature", dim: dimTemp, kind: Point, factor: degree, offset: zeroF, diff: "Fdiff", help: "degree Fahrenheit on a thermometer"},
	{symbols: []string{"K", "Kdiff", "Cdiff"}, ucum: "K", what: "temperature difference", dim: dimTemp, factor: 1, help: "kelvin, a temperature difference in Celsius degrees"},
	{symbols: []string{"Fdiff"}, ucum: "[degR]", what: "temperature difference", dim: dimTemp, factor: degree, help: "a temperature difference in Fahrenheit degrees"},
	{symbols: []string{"psi", "psig"}, ucum: "[psi]", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: PSI, diff: "psid", help: "pound per square inch, gauge"},
	{symbols: []string{"psia"}, ucum: "[psi]", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: PSI, diff: "psid", help: "pound per square inch, absolute"},
	{symbols: []string{"kPa", "kPag"}, ucum: "kPa", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: 1e3, diff: "kPad", help: "kilopascal, gauge"},
	{symbols: []string{"kPaa"}, ucum: "kPa", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: 1e3, diff: "kPad", help: "kilopascal, absolute"},
	{symbols: []string{"MPa", "MPag"}, ucum: "MPa", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: 1e6, diff: "kPad", help: "megapascal, gauge"},
	{symbols: []string{"MPaa"}, ucum: "MPa", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: 1e6, diff: "kPad", help: "megapascal, absolute"},
	{symbols: []string{"Pa", "Pag"}, ucum: "Pa", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: 1, diff: "kPad", help: "pascal, gauge"},
	{symbols: []string{"mbar", "mbarg"}, ucum: "mbar", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: 100, diff: "bard", help: "millibar, gauge"},
	{symbols: []string{"micron", "microns"}, ucum: "um[Hg]", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: inHg / inch * 1e-6, diff: "kPad", help: "micron of mercury, absolute"},
	{symbols: []string{"bar", "barg"}, ucum: "bar", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: 1e5, diff: "bard", help: "bar, gauge"},
	{symbols: []string{"bara"}, ucum: "bar", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: 1e5, diff: "bard", help: "bar, absolute"},
	{symbols: []string{"Paa"}, ucum: "Pa", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: 1, diff: "kPad", help: "pascal, absolute"},
	{symbols: []string{"mbara"}, ucum: "mbar", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: 100, diff: "bard", help: "millibar, absolute"},
	{symbols: []string{"torr"}, ucum: "mm[Hg]", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: inHg / inch * 1e-3, diff: "kPad", help: "torr, a millimetre of mercury, absolute"},
	{symbols: []string{"inHga"}, ucum: "[in_i'Hg]", what: "absolute pressure", dim: dimPressure, kind: Absolute, factor: inHg, diff: "psid", help: "inch of mercury, absolute"},
	{symbols: []string{"inHg"}, ucum: "[in_i'Hg]", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: inHg, diff: "psid", help: "inch of mercury, gauge; a vacuum is negative"},
	{symbols: []string{"inWC"}, ucum: "[in_i'H2O]", what: "gauge pressure", dim: dimPressure, kind: Gauge, factor: inWC, diff: "inWCd", help: "inch of water column, gauge"},
	{symbols: []string{"kPad"}, ucum: "kPa", what: "pressure difference", dim: dimPressure, factor: 1e3, help: "kilopascal, a difference"},
	{symbols: []string{"psid"}, ucum: "[psi]", what: "pressure difference", dim: dimPressure, factor: PSI, help: "pound per square inch, a difference"},
	{symbols: []string{"bard"}, ucum: "bar", what: "pressure difference", dim: dimPressure, factor: 1e5, help: "bar, a difference"},
	{symbols: []string{"inWCd"}, ucum: "[in_i'H2O]", what: "pressure difference", dim: dimPressure, factor: inWC, help: "inch of water column, a difference"},
	{symbols: []string{"s", "sec"}, ucum: "s", what: "time", dim: dimTime, factor: 1, prefixes: "num", auto: "um", help: "second"},
	{symbols: []string{"min"}, ucum: "min", what: "time", dim: dimTime, factor: 60, help: "minute"},
	{symbols: []string{"h", "hr"}, ucum: "h", what: "time", dim: dimTime, factor: 3600, help: "hour"},
	{symbols: []string{"day", "days"}, ucum: "d", what: "time", dim: dimTime, factor: 86400, help: "day"},
	{symbols: []string{"m"}, ucum: "m", what: "length", dim: dimLength, factor: 1, help: "metre"},
	{symbols: []string{"mm"}, ucum: "mm", what: "length", dim: dimLength, factor: 1e-3, help: "millimetre"},
	{symbols: []string{"cm"}, ucum: "cm", what: "length", dim: dimLength, factor: 1e-2, help: "centimetre"},
	{symbols: []string{"km"}, ucum: "km", what: "length", dim: dimLength, factor: 1e3, help: "kilometre"},
	{symbols: []string{"in", "inch"}, ucum: "[in_i]", what: "length", dim: dimLength, factor: inch, fraction: true, help: "inch"},
	{symbols: []string{"ft", "feet"}, ucum: "[ft_i]", what: "length", dim: dimLength, factor: foot, fraction: true, help: "foot"},
	{symbols: []string{"J"}, ucum: "J", what: "energy", dim: dimEnergy, factor: 1, prefixes: "mkM", auto: "mkM", help: "joule"},
	{symbols: []string{"Wh"}, ucum: "W.h", what: "energy", dim: dimEnergy, factor: 3600, prefixes: "kM", auto: "k", help: "watt-hour"},
	{symbols: []string{"Btu"}, ucum: "[Btu_IT]", what: "energy", dim: dimEnergy, factor: btu, help: "British thermal unit (IT)"},
	{symbols: []string{"kBtu"}, ucum: "1000.[Btu_IT]", what: "energy", dim: dimEnergy, factor: 1000 * btu, help: "thousand British thermal units (IT)"},
	{symbols: []string{"N"}, ucum: "N", what: "force", dim: dimForce, factor: 1, prefixes: "k", auto: "k", help: "newton"},
	{symbols: []string{"kg"}, ucum: "kg", what: "mass", dim: dimMass, factor: 1, help: "kilogram"},
	{symbols: []string{"g"}, ucum: "g", what: "mass", dim: dimMass, factor: 1e-3, help: "gram"},
	{symbols: []string{"lb"}, ucum: "[lb_av]", what: "mass", dim: dimMass, factor: pound, fraction: true, help: "pound"},
	{symbols: []string{"oz"}, ucum: "[oz_av]", what: "mass", dim: dimMass, factor: pound / 16, fraction: true, help: "ounce"},
	{symbols: []string{"L"}, ucum: "L", what: "volume", dim: dimVolume, factor: 1e-3, prefixes: "m", auto: "", help: "litre"},
	{symbols: []string{"gal"}, ucum: "[gal_us]", what: "volume", dim: dimVolume, factor: 231 * inch * inch * inch, fraction: true, help: "US gallon"},
	{symbols: []string{"L/min"}, ucum: "L/min", what: "flow", dim: dimFlow, factor: 1e-3 / 60, help: "litre per minute"},
	{symbols: []string{"gpm"}, ucum: "[gal_us]/min", what: "flow", dim: dimFlow, factor: 231 * inch * inch * inch / 60, help: "US gallon per minute"},
	{symbols: []string{"cfm"}, ucum: "[cft_i]/min", what: "flow", dim: dimFlow, factor: foot * foot * foot / 60, help: "cubic foot per minute"},
}

// aliases are units written out, with the symbol that each is.
var aliases = strings.Fields("meg MΩ megohm MΩ megohms MΩ kilohm kΩ kilohms kΩ microfarad µF microfarads µF kilowatt kW " +
	"hertz Hz horsepower hp percent % second s seconds s minute min minutes min hour h hours h inches in liters L gallons gal " +
	"milliohm mΩ milliohms mΩ gigohm GΩ gigohms GΩ millivolt mV millivolts mV milliamp mA milliamps mA microamp µA microamps µA mTorr micron Torr torr")

// prefix is a decimal multiple as written and as UCUM codes it.
type prefix struct {
	letters []string // the first is printed
	ucum    string
	exp     int8
}

var prefixes = []prefix{
	{[]string{"p"}, "p", -12},
	{[]string{"n"}, "n", -9},
	{[]string{"\u00b5", "u", "\u03bc"}, "u", -6},
	{[]string{"m"}, "m", -3},
	{[]string{"k"}, "k", 3},
	{[]string{"M"}, "M", 6},
	{[]string{"G"}, "G", 9},
}
