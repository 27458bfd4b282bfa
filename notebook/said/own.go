package said

// Of what the appliance is made for: an extractor draws off the smoke of cooking, a gas
// cooker lights by sparks (common practice).
var (
	drawn     = pattern{expr: `(?i)\b(suck|suction|draw|pull|clear|remov|captur|cook|grill|fry|kitchen|room|house)`}
	lights    = pattern{expr: `(?i)\b(keeps?|kept|constant|contin|non.?stop|stop|quit|always|random|after|knob|off\b|on\b|lit\b|light|igni|burner|electrode|pilot|click|flame|wet\b|harness)`}
	elsewhere = pattern{expr: `(?i)\b(motor|wir|switch($|[^e])|belt|cord|outlet|plug|panel|board|relay|terminal|socket|recep|lamp|bulb|bearing|breaker|element|metal|behind|inside|under|pan\b|foil|transformer|burn(t|ing)|melt|scorch|arc|smell|fire|(from|out of|at|in|off) (the |its )?(fan|hood|blower|unit|machine|back)|(fan|hood|blower|it|unit) (\w+ )?smok)`}
)

// Tame reports whether smoke or sparks that a text speaks of are those with which the
// appliance has to do.
func (a *Appliance) Tame(text string) bool {
	by := &lights
	switch {
	case Has(text, []string{"spark"}) && a.Gas && a.Elements:
	case Has(text, []string{"smok"}) && isKind(hoods, a.Unit):
		by = &drawn
	default:
		return false
	}
	return by.is(text) && !elsewhere.is(text)
}
