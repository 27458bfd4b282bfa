package call

import (
	"math"
	"sort"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/pulldown"
	"ohmcall/notebook/record"
)

// curveKey says what a set of curves was made from.
type curveKey struct {
	complaint                               string
	since, before, readings, struck, meters int
	set                                     *reading
}

// curves fits the temperatures read between two entries, place by place.
func (c *Call) curves(since, before int) []record.Curve {
	key := curveKey{c.complaint(), since, before, len(c.bySubjectKind["temp"]), len(c.struck), len(c.meters), nil}
	if c.keepsWine() {
		key.set = c.setPoint()
	}
	if c.curveKey == key {
		return c.curveMemo
	}
	c.spend(14 * len(c.bySubjectKind["temp"]))
	var places []string
	points := map[string][]*reading{}
	for _, r := range c.bySubjectKind["temp"] {
		if r.entry <= since || r.entry >= before || !c.alive(r.entry) || r.over {
			continue
		}
		if points[r.a] == nil {
			places = append(places, r.a)
		}
		points[r.a] = append(points[r.a], r)
	}
	var out []record.Curve
	for _, p := range places {
		if list := byTime(points[p]); len(list) >= fewestForCourse {
			c.spend(1000 * min(len(list), mostPoints))
			out = append(out, c.curve(p, thin(list)))
		}
	}
	c.curveKey, c.curveMemo = key, out
	return out
}

// byTime puts readings in the order in which they happened, which is not that
// in which they were written down; of two at one time the later entry counts.
func byTime(rs []*reading) []*reading {
	sort.SliceStable(rs, func(i, k int) bool { return rs[i].at.Before(rs[k].at) })
	var out []*reading
	for i, r := range rs {
		if i+1 == len(rs) || rs[i+1].at.After(r.at) {
			out = append(out, r)
		}
	}
	return out
}

// mostPoints is how many readings of one curve are fitted.
const mostPoints = 48

// thin takes readings evenly out of too many, the first and the last kept.
func thin(rs []*reading) []*reading {
	if len(rs) <= mostPoints {
		return rs
	}
	out := make([]*reading, mostPoints)
	for i := range out {
		out[i] = rs[i*(len(rs)-1)/(mostPoints-1)]
	}
	return out
}

// fewestToTell is how many readings it takes to say that a cabinet will or will
// not come down: three always lie on some curve, so nothing would contradict it.
const fewestToTell = 4

// enoughToTell is from how many readings the reply says why it is still too
// early; before, that is no surprise.
const enoughToTell = 5

func (c *Call) curve(place string, rs []*reading) record.Curve {
	target := *targetOf(c.spaceOf(place))
	set := c.setPoint()
	wine := c.spaceOf(place) == judge.Wine
	if wine && set != nil {
		target = pulldown.Target{Name: "wine cooler", Celsius: c.value(set).X + judge.SetBand, Source: "the set point" + atEntry(set.entry) + "; within 2 K of it is common practice", Coldest: pulldown.Refrigerator.Coldest}
	}
	k := record.Curve{Place: place, Unit: "C", Target: target.Celsius}
	if rs[0].q.UCUM() == "[degF]" {
		k.Unit = "F"
	}
	var pts []pulldown.Point
	for _, r := range rs {
		x, _ := r.q.In("degC")
		m := r.at.Sub(rs[0].at).Minutes()
		k.Points = append(k.Points, record.Point{Minutes: m, Celsius: x, Entry: r.entry})
		pts = append(pts, pulldown.Point{Minutes: m, Celsius: x, U: c.standard(r)})
	}
	fit, err := pulldown.Fit(pts)
	if err != nil {
		k.Verdict, k.Reason = string(pulldown.TooEarly), err.Error()
		return k
	}
	show := func(x float64) string { return degrees(x, k.Unit) }
	j := fit.Judge(target, show)
	if j.State != pulldown.Proved && j.State != pulldown.TooEarly && len(pts) < fewestToTell {
		j.State, j.Reason = pulldown.TooEarly, "three readings always lie on some curve, a fourth tells: "+j.Reason
	}
	if (j.State == pulldown.TooEarly || j.State == pulldown.WillNotReach) && keeps(pts, target, c.value(rs[len(rs)-1]), show) {
		j.State, j.Reason = pulldown.Proved, "it came down to its target, and is no warmer since than between two runs; common practice"
	}
	k.Verdict, k.Reason = string(j.State), j.Reason+" ("+target.Source+")"
	if wine && set == nil {
		k.Verdict, k.Reason = string(pulldown.TooEarly), judge.WantsSet
	} else if last := c.value(rs[len(rs)-1]); target == pulldown.Refrigerator && last.Lo <= 0 && (c.complaint() == "too-cold" || last.Hi < 0) {
		k.Verdict, k.Reason = stillFreezes, "the last reading, "+show(last.X)+", is not surely above freezing (common practice)"
	}
	if j := pulldown.Rises(pts, target, show); j.State != "" {
		k.Verdict, k.Reason = string(j.State), j.Reason
	}
	k.Plot = pulldown.Chart{Width: 60, Height: 14, Target: &target, Fahrenheit: k.Unit == "F"}.Draw(fit)
	if fit.Tells(target) {
		k.Fit = &record.Fit{Final: fit.Final.Value, Start: fit.Start.Value, Tau: fit.Tau.Value}
	}
	return k
}

// stillFreezes is what a curve of the fresh-food part proves that ends below
// freezing: it keeps the target and freezes the food.
const stillFreezes = "still freezes"

// courseFacts turns a curve's verdict into the vocabulary of causes.
var courseFacts = map[string]string{
	string(pulldown.Proved): "cools-down", string(pulldown.OnCourse): "pulls-down-on-course", string(pulldown.WillNotReach): "will-not-reach", string(pulldown.RisesAgain): "does-not-cool", string(pulldown.Warms): "does-not-cool",
}

// fewestForCourse is how many timed temperatures of a place make a course.
const fewestForCourse = 3

// timed counts the readings of a place's temperature since the last repair.
func (c *Call) timed(r *reading) int {
	n, since := 0, c.since()
	for _, o := range c.byKey[r.key()] {
		if o.entry > since && c.alive(o.entry) && !o.over {
			n++
		}
	}
	return n
}

// tellCourse adds where a pull-down stands.
func (c *Call) tellCourse(r *reading, reply *Reply) {
	if n := c.timed(r); n == fewestForCourse-1 && c.spaceOf(r.a) != "" {
		reply.add(Ask, "Pull-down of "+r.a+": two timed readings; a fourth tells whether it is on course.")
	}
	for _, k := range c.curves(c.since(), math.MaxInt) {
		if k.Place != r.a {
			continue
		}
		tone := Plain
		switch k.Verdict {
		case string(pulldown.Proved), string(pulldown.OnCourse):
			tone = Good
		case string(pulldown.WillNotReach), string(pulldown.RisesAgain), string(pulldown.Warms), stillFreezes:
			tone = Bad
		}
		text := "Pull-down of " + k.Place + ": " + k.Verdict + "; " + k.Reason + "."
		if k.Verdict == string(pulldown.TooEarly) && k.Reason != judge.WantsSet && len(k.Points) < enoughToTell && !strings.HasPrefix(k.Reason, pulldown.WasColder) {
			text = "Pull-down of " + k.Place + ": too early to say; show curve tells more."
		}
		reply.add(tone, text).flag("pull-down-" + strings.ReplaceAll(k.Verdict, " ", "-"))
	}
}

// standsCold reports whether a reading of no current is of a machine that nobody says was
// called on, whose place a course shows to be cold, or that was seen to cycle off.
func (c *Call) standsCold(r *reading) bool {
	if r.over || r.cond.is("peak") || r.cond.is("start") || c.value(r).Lo > 0 || c.machineFor(r.a) != c.mainMachine() || c.appliance().Unsealed {
		return false
	}
	since := c.since()
	if off := c.lastOf(c.seenAt["cycles-off"], c.entry); off > since && (off > r.entry || !r.cond.is("run")) {
		return true
	}
	return since > 0 && r.entry > since && !r.cond.is("run") && c.cameDown()
}

// keepsBy is how many kelvin above its target a freezer goes between two runs of its
// compressor (common practice); of other places what the thermometer may be off is enough.
const keepsBy = 2.8

// keeps reports whether the coldest of some readings proves a target, and what was read
// since is no warmer than a place becomes while its control holds it.
func keeps(pts []pulldown.Point, target pulldown.Target, last measure.Value, show func(float64) string) bool {
	low := 0
	for i := range pts {
		if pts[i].Celsius <= pts[low].Celsius {
			low = i
		}
	}
	most := target.Celsius
	if target == pulldown.Freezer {
		most += keepsBy
	}
	if low+1 < fewestForCourse || low+1 == len(pts) || last.X > most {
		return false
	}
	fit, err := pulldown.Fit(pts[:low+1])
	return err == nil && fit.Judge(target, show).State == pulldown.Proved
}
