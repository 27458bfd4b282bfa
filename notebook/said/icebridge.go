package said

import "strings"

// thawed gives another name to the bridges of ice in a clause: the slab that joins cubes,
// or cubes frozen together. Where it names a device or a wire, or says what was bridged,
// a bridge stays one, but for its thickness (common practice).
func thawed(clause string, machine bool) string {
	if !strings.Contains(clause, "bridg") {
		return clause
	}
	parts := strings.Split(clause, " and ")
	for i, part := range parts {
		p := iceBridges.get().ReplaceAllString(part, "slab")
		if machine && strings.Contains(p, "bridg") && wordsIn(p)&(held|wiry|led|fused|earthed) == 0 && !bridgesIt.is(p) && (iceWords.is(p) || !bridgePut.is(p)) {
			p = iceBridge.get().ReplaceAllString(p, "slab")
		}
		parts[i] = p
	}
	return strings.Join(parts, " and ")
}

var (
	iceBridge  = pattern{expr: `\bbridg\w*`}
	iceWords   = pattern{expr: `\b(icy|cubes?|slabs?|harvest\w*|batch\w*|evap\w*|grid|freez\w*|thin\w*|thick\w*)\b|\bice( [^m]|[^ ]|$)`}
	iceBridges = pattern{expr: `\b((ice|icy|cubes?|slabs?)( (is|are|was|were|has|have|all|keeps?|stays?))* bridg\w*|bridge (thickness|size|weight))`}
	bridgesIt  = pattern{expr: `\bbridg(e|ed|ing) (it|them|out|across|past|over|the|an?|his|her|this|that|both|its)\b`}
	bridgePut  = pattern{expr: `\b(put|fit|fitt?ed|install\w*|add\w*|used?|made|with|by|left|found|wired?) (an? |the |in |on )*bridge|\bbridged?( is| was)? (in|on|off|between|around|round|removed|taken|wire)|\bbridged\b`}
)
