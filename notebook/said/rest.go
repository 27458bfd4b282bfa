package said

// OffLong reports whether a text says that a machine had no power for hours.
func OffLong(text string) bool {
	return Has(text, []string{"off", "unplug", "power", "disconnect"}) && offLong.get().MatchString(text)
}

var offLong = pattern{expr: `(?i)\b(off|unplugged|no power|without power|disconnected)\b.{0,20}\b(since|overnight|all (night|day)|yesterday|(last|this) (night|evening|morning)|hours?|hrs?|\d+ ?h|days?|weeks?)\b`}
