package winding

import (
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/measure"
)

// machine is one random machine: what its leads are, and what lies between
// them in ohms (infinite when open, absent when not read).
type machine struct {
	truth map[string]Role // empty for a machine without such roles
	ohms  map[Pair]float64
	in    Input
	plain bool // sound, single-phase, unmarked and fully read
}

// look reads x with a meter of 1 % and 3 counts: an auto-ranging one shows 0.01 Ω
// below 60 Ω and 0.1 above, a coarse one 0.1 throughout.
func look(rng *rand.Rand, coarse bool, x float64) measure.Value {
	if math.IsInf(x, 1) {
		return measure.Open(0)
	}
	res := 0.1
	if !coarse && x < 60 {
		res = 0.01
	}
	// The error stays a little inside the limit, for the limit is stated of the
	// reading and the reading is rounded.
	limit := 0.98 * (x*measure.Default.Percent/100 + (measure.Default.Counts-0.5)*res)
	shown := math.Round((x+limit*(2*rng.Float64()-1))/res) * res
	shown = max(shown, 0)
	return measure.Within(shown, measure.Default.Limit(shown, res, false))
}

func logUniform(rng *rand.Rand, lo, hi float64) float64 {
	return lo * math.Exp(rng.Float64()*math.Log(hi/lo))
}

// fill gives every pair the sum along the tree whose windings are given as
// name, name, ohms; a break is an infinite winding.
func (m *machine) fill(edges ...any) {
	m.ohms = map[Pair]float64{}
	next := map[string]map[string]float64{}
	var names []string
	for i := 0; i < len(edges); i += 3 {
		a, b, x := edges[i].(string), edges[i+1].(string), edges[i+2].(float64)
		for _, e := range [][2]string{{a, b}, {b, a}} {
			if next[e[0]] == nil {
				next[e[0]] = map[string]float64{}
				names = append(names, e[0])
			}
			next[e[0]][e[1]] = x
		}
	}
	for i, a := range names {
		dist := map[string]float64{a: 0}
		var walk func(string)
		walk = func(at string) {
			for b, x := range next[at] {
				if _, seen := dist[b]; !seen {
					dist[b] = dist[at] + x
					walk(b)
				}
			}
		}
		walk(a)
		for _, b := range names[i+1:] {
			d, joined := dist[b]
			if !joined {
				d = math.Inf(1)
			}
			m.ohms[Pair{a, b}] = d
		}
	}
	for _, hidden := range []string{"joint", "inside"} {
		for p := range m.ohms {
			if p[0] == hidden || p[1] == hidden {
				delete(m.ohms, p)
			}
		}
	}
}

var csr = map[string]Role{"C": Common, "S": Start, "R": Run}

// random draws a machine. Faults are those that leave the order of the
// windings as wound; turns shorted until start is below run make another
// machine as far as ohms can tell, and only a marking would show it.
func random(rng *rand.Rand) machine {
	run := logUniform(rng, 0.5, 25)
	start := run * (1.02 + 4.98*rng.Float64())
	inf := math.Inf(1)
	m := machine{truth: csr}
	switch k := rng.IntN(100); {
	case k < 60:
		m.plain = true
		m.fill("C", "S", start, "C", "R", run)
	case k < 63: // a protector of some resistance in the common path
		m.fill("C", "joint", 0.3*rng.Float64(), "joint", "S", start, "joint", "R", run)
	case k < 66: // shorted turns
		m.fill("C", "S", run+(start-run)*rng.Float64(), "C", "R", run*(0.3+0.7*rng.Float64()))
	case k < 69: // protector open
		m.fill("C", "joint", inf, "joint", "S", start, "joint", "R", run)
	case k < 72:
		m.fill("C", "S", inf, "C", "R", run)
	case k < 75:
		m.fill("C", "S", start, "C", "R", inf)
	case k < 77:
		m.fill("C", "S", inf, "C", "R", inf)
	case k < 80: // dead short
		m.fill("C", "S", start, "C", "R", 0.02*rng.Float64())
	case k < 86: // three-phase, its windings alike within 2 %
		m.truth = nil
		m.fill("C", "joint", run, "joint", "S", run*(1+0.02*rng.Float64()), "joint", "R", run*(1+0.02*rng.Float64()))
	case k < 88: // isolated windings
		m.truth = map[string]Role{"A": Main, "B": Main, "D": Auxiliary, "E": Auxiliary}
		m.fill("A", "B", run, "D", "E", start)
	case k < 90: // the protector's own lead
		m.truth = map[string]Role{"C": Common, "S": Start, "R": Run, "P": Protector}
		m.fill("P", "C", 0.05*rng.Float64(), "C", "S", start, "C", "R", run)
	default:
		m.fan(rng, run, start)
	}
	m.read(rng)
	return m
}

// fan draws a tapped motor of one of the usual arrangements.
func (m *machine) fan(rng *rand.Rand, main, start float64) {
	m.in.Kind = Fan
	speeds := 2 + rng.IntN(3)
	taps := []string{"T1", "T2", "T3", "T4"}[:speeds]
	m.truth = map[string]Role{"C": Common}
	edges := []any{"C", "T1", main}
	share := 1.0
	withStart := speeds > 3 || rng.IntN(3) > 0
	if !withStart {
		share = 0.5
	}
	for k, tap := range taps {
		m.truth[tap] = speedNames[speeds][k]
		if k > 0 {
			edges = append(edges, taps[k-1], tap, main*share*(0.1+0.9*rng.Float64()))
		}
	}
	if withStart {
		at := []string{"C", "T1", taps[speeds-1]}[rng.IntN(3)]
		edges = append(edges, "S", at, start)
		m.truth["S"] = Start
	}
	if rng.IntN(6) == 0 { // one winding open
		edges[2+3*rng.IntN(len(edges)/3)] = math.Inf(1)
	}
	m.fill(edges...)
}

// read takes the readings, some of them not at all, and marks some pins.
func (m *machine) read(rng *rand.Rand) {
	m.in.Meter = measure.Default
	coarse := rng.IntN(2) == 0
	lead := 0.0
	if rng.IntN(2) == 0 {
		lead = leadsUpTo * rng.Float64()
	}
	skip := 0
	if rng.IntN(4) == 0 {
		skip = rng.IntN(3)
	}
	order := slices.SortedFunc(maps.Keys(m.ohms), func(a, b Pair) int { return strings.Compare(a.String(), b.String()) })
	for _, p := range order { // sorted, so that a seed repeats itself
		m.in.Readings = append(m.in.Readings, Reading{p[0], p[1], look(rng, coarse, m.ohms[p]+lead)})
	}
	rng.Shuffle(len(m.in.Readings), func(i, j int) {
		m.in.Readings[i], m.in.Readings[j] = m.in.Readings[j], m.in.Readings[i]
	})
	m.in.Readings = m.in.Readings[:len(m.in.Readings)-skip]
	m.plain = m.plain && skip == 0
	if m.truth != nil && rng.IntN(5) == 0 {
		m.plain = false
		for _, pin := range []string{"A", "C", "P", "R", "S", "T1"} {
			if role, ok := m.truth[pin]; ok && rng.IntN(3) == 0 {
				m.in.Marks = append(m.in.Marks, Mark{Pin: pin, Role: role})
			}
		}
	}
}

// Every error lies within the meter's stated limits, so no settled role may be
// wrong, and no role that is given at all.
func TestGenerator(t *testing.T) {
	const machines = 100000
	rng := rand.New(rand.NewPCG(20260302, 9))
	plain, close, settled, wrong, networks, named := 0, 0, 0, 0, 0, 0
	for n := range machines {
		m := random(rng)
		r := Infer(m.in)
		if r.Settled {
			settled++
		}
		if len(r.Pins) > 3 && !m.plain {
			networks++
			if r.Settled {
				named++
			}
		}
		for pin, role := range r.Roles {
			if m.truth[pin] != role {
				wrong++
				if wrong < 10 {
					t.Errorf("machine %d: %s is not %s but %q; %s settled %v\n%v\n%q", n, pin, role, m.truth[pin], r.State, r.Settled, m.in, r.Notes)
				}
				break
			}
		}
		if m.plain {
			plain++
			switch r.State {
			case TooClose:
				close++
			case Sound, DoesNotAddUp:
			default:
				t.Fatalf("machine %d is sound and called %s: %v", n, r.State, m.in.Readings)
			}
		}
	}
	t.Logf("%d machines, %d settled, %d with a wrong role; of %d sound ones too close: %.2f %%; %d of %d networks named",
		machines, settled, wrong, plain, 100*float64(close)/float64(plain), named, networks)
	if close*10 > plain {
		t.Errorf("too-close is used for %d of %d sound machines: more than one in ten", close, plain)
	}
	if settled < machines/2 {
		t.Errorf("only %d of %d settled", settled, machines)
	}
}
