package said

// Of what the appliance is made for: an extractor draws off the smoke of cooking, a gas
// cooker lights by sparks (common practice).
var (
	drawn     = pattern{expr: `(?i)\b(suck|suction|draw|pull|clear|remov|captur|cook|grill|fry|kitchen|room|house)`}
	lights    = pattern{expr: `(?i)\b(keeps?|kept|constant|contin|non.?stop|stop|quit|always|random|after|knob|off\b|on\b|lit\b|light|igni|burner|electrode|pilot|click|flame|wet\b|harness)`}
	elsewhere = pattern{expr: `(?i)\b(motor|wir|switch($|[^e])|belt|cord|outlet|plug|panel|board|relay|terminal|socket|recep|lamp|bulb|bearing|breaker|element|metal|behind|inside|under|pan\b|foil|transformer|burn(t|ing)|melt|scorch|charred|flames|flash|arc|smell|fire|(from|out of|at|in|off) (the |its )?(fan|hood|blower|unit|machine|back)|(fan|hood|blower|it|unit) (\w+ )?smok)`}
)

// Tame reports whether smoke or sparks that a text speaks of are those with which the
// appliance has to do.
func (a *Appliance) Tame(text string) bool {
	by, spark := &lights, Has(text, []string{"spark"})
	switch smoke := Has(text, []string{"smok"}); {
	case spark == smoke:
		return false
	case smoke && isKind(hoods, a.Unit):
		by = &drawn
	case smoke || !a.Gas || !a.Elements:
		return false
	}
	return by.is(text) && !elsewhere.is(text)
}
