package pulldown

// What a door or a defrost does to the air of a cabinet is over within the hour and
// rises by less (common practice).
const (
	risenBy  = 3.0  // K
	risenFor = 60.0 // min
)

// WasColder begins what is said of a place that is warmer than it was.
const WasColder = "it was at "

// Rises judges a place that was colder and is above its target again: it rises again
// when two readings are surely warmer, the last no colder than the one before, and more
// than a defrost has passed; until then it is too early. What was never colder warms, when
// no reading of an hour or more is surely colder than the one before. The state is ""
// when it is not warmer.
func Rises(points []Point, t Target, show func(celsius float64) string) Judgement {
	low, last := points[0], points[len(points)-1]
	for _, p := range points {
		if p.Celsius <= low.Celsius {
			low = p
		}
	}
	before := points[max(0, len(points)-2)]
	most := low.Celsius + 2*low.U + risenBy
	switch cold, warm := show(low.Celsius), show(last.Celsius); {
	case low == points[0] && last.Minutes-low.Minutes >= risenFor && last.Celsius-2*last.U > max(low.Celsius+2*low.U, t.Celsius) && !falls(points):
		return Judgement{State: Warms, Reason: "it was at " + cold + " and is at " + warm + ": it grows warmer (common practice)"}
	case low == points[0] || last.Celsius-2*last.U <= max(most, t.Celsius):
		return Judgement{}
	case before.Celsius-2*before.U <= most || last.Celsius < before.Celsius-2*before.U || last.Minutes-low.Minutes < risenFor:
		return Judgement{State: TooEarly, Reason: WasColder + cold + " and is at " + warm + " again: a door, a defrost, or it does not hold; read again (common practice)"}
	default:
		return Judgement{State: RisesAgain, Reason: "it came down to " + cold + " and is back at " + warm + ": it does not hold (common practice)"}
	}
}

// falls reports whether a reading is surely colder than the one before.
func falls(points []Point) bool {
	for i := 1; i < len(points); i++ {
		if p := points[i-1]; points[i].Celsius+2*points[i].U < p.Celsius-2*p.U {
			return true
		}
	}
	return false
}
