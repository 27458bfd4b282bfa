package said

import (
	"strings"
	"sync"
)

// tag is what a word is to a protective device: each bit one thing that it may be.
// Which words have which, and how far apart they may stand, is common practice.
type tag uint64

// The tags, and what a step says besides: all of it common practice.
const (
	device  tag = 1 << iota // a device that may well be off, or out to be seen
	guarded                 // one that is there to protect, and may not
	kept                    // what is held as devices are
	theDev                  // a device with an article before it
	fixed                   // a device that is fastened to what it feels
	mark                    // what tells one of a kind from another
	ofDoor                  // the mark of a switch that protects
	ofFlame                 // the mark of a valve that protects
	earthed                 // earth
	wiry                    // wires and what they end in
	part                    // a part of a device that is not it
	fused                   // fuse, breaker
	bit                     // metal that carries past a device
	clip                    // metal that is ordinary elsewhere
	bond                    // the names of a bridge
	grip                    // what bound a device as it should not be
	magnet                  // one of these that belongs to some devices
	bound                   // held so
	weak                    // held, of which more has to be said
	bend                    // bent
	shorts                  // shorted
	bare                    // means a bridge without more words
	leap                    // jumped
	takes                   // took off or out
	undoes                  // disabled
	joined                  // joined, of wires
	puts                    // put there
	runs                    // run as it is
	across                  // past, over
	there                   // where something was
	inside                  // in
	with                    // with, by
	toward                  // to, on
	of                      // of, from
	instead                 // instead, in place
	closed                  // shut, as a valve may be
	led                     // wired
	knob                    // a part of a device that is held for it
	shut                    // in a state in which it does nothing
	off                     // not there
	outOf                   // out
	left                    // left so
	breaker                 // one that trips at a leak to earth
	circuit                 // what a device is out of
	without                 // without, with no
	covered                 // a cover
	no                      // not so
	modal                   // not done yet
	faulty                  // of what a no is that is a fault
	so                      // what stood before is the reason
	two                     //
	three                   //
	adapter                 //
	bigger                  // of more amps
	number                  //
	other                   // what has bypasses, jumpers and bridges of its own
	broken                  // what is said of a wire to be mended
	fresh                   // new

	piped  // what water and air go past
	base   // the plain form of a verb
	filler // says nothing

	near  tag = 1 << 61 // of a step: up to two words may stand before
	far   tag = 1 << 62 // up to five
	final tag = 1 << 63 // the clause may end here
	held      = device | kept | knob
)

// tagged are the words by their tags. A verb with ! stands for its forms: taped,
// taping.
var tagged = []struct {
	is    tag
	words string
}{
	{device, "switch sw hps lps"},
	{device | fixed, "thermostat stat tstat aquastat"},
	{device | guarded, "overload ol protector interlock rollout safeties eco tco"},
	{device | guarded | fixed, "limit limiter cutout cutoff lwco"},
	{device | guarded | mark | fixed, "thermal"},
	{device | guarded | fused, "fuse tf"},
	{fused | kept, "breaker bkr brkr"},
	{kept, "contactor relay lock latch reed microswitch holder"},
	{kept | breaker, "rcd gfci gfi elcb rcbo afci lcdi alci"},
	{knob, "button plunger actuator lever tab"},
	{kept | fixed, "thermocouple"},
	{kept | mark | ofFlame, "safety"},
	{device | guarded | kept | mark | ofFlame, "float"},
	{mark | ofDoor, "door lid spill flood"},
	{mark | ofFlame, "flame pilot gas"},
	{mark, "line main mains pressure high hi low cycling primary secondary monitor defrost inlet top upper bottom lower front rear bake broil drum blower magnetron cavity glass current air belt light lamp selector water level fan motor compressor comp pump heater start cold cord element operating resettable manual auto roll vacuum vent flue 1 loss"},
	{kept | other, "valve"},
	{earthed, "earth ground gnd grnd grd"},
	{wiry, "lead terminal contact contacts connector spade bonding"},
	{wiry, "pin prong"},
	{wiry | bit, "wire"},
	{wiry | bit, "strap"},
	{led, "wired hardwired rewired fed"},
	{part, "box panel bracket screw gasket plate hook handle face knob block spring strike fault tester arm"},
	{bit, "foil tinfoil nail coin penny solder copper bolt staple washer paperclip fork"},
	{clip, "clip screwdriver alligator croc crocodile screw"},
	{bit | bond, "link bridge shunt loop"},
	{grip, "tape tie ziptie wedge stick matchstick toothpick peg string elastic band epoxy clothespin cardboard glue cork rag wood rubber stone brick"},
	{magnet, "magnet"},
	{bound, "tape! pin! clamp! wedge! prop! strap! loop! link! tied tying foiled tiewrapped ziptied cabletied glue! superglue! silicone! epoxy! chock! wire-tied"},
	{weak, "held hold holding kept keeping jam! force! push! press! "},
	{bend, "bent bending"},
	{shorts, "short!"},
	{bare, "bypased bypassd bypasd byp bypd jumperd jmpd jmprd jmpr jumpr bypass! jumper! bypass jumper shunt defeat bridge! defeat! shunted shunting cheater hotwire! fool! trick! cheated"},
	{bond, "bypass jumper jmpr"},
	{bare | leap, "jumped jumping"},
	{takes, "took take remove taken taking remove! cut cutting lift! broke clip! pull! unbridge! unbypass! unjumper! untape! unlink! unstrap! unshunt! release! let freed undid undone restore! peel!"},
	{takes | off, "missing gone disconnect! unhook! unplug!"},
	{takes | undoes, "snip! chop!"},
	{takes, "sawn sawed"},
	{undoes, "disable! defeat! delete! eliminate! overrode overridden overriden overriding nullify! nullified neutralise! neutralize! deactivate! circumvent! gut!"},
	{joined, "join! twist! butt! piggyback! splice! loop! link! wirenut! nut! marry! married together"},
	{puts, "put stuck used using use placed found fitted fit left with"},
	{runs, "run ran running runs works working power powered left operate! heating heats spins"},
	{across, "across over round around past"},
	{there, "behind where"},
	{inside | shut, "in"},
	{inside, "into inside"},
	{with, "with w by for while"},
	{toward, "to on onto against at"},
	{of, "of from"},
	{instead, "instead place lieu"},
	{shut | closed, "shut closed open down"},
	{shut, "on up"},
	{off, "off"},
	{outOf, "out"},
	{left, "left leave leaving"},
	{circuit, "circuit series loop string through thru"},
	{without, "without wo wout"},
	{covered, "cover"},
	{no, "no not never nothing none nobody nor neither cannot cant didnt dont wont isnt wasnt doesnt havent hasnt arent werent couldnt wouldnt shouldnt"},
	{modal, "ask can will shall should must may might could would asked against instead rather"},
	{modal | so, "need"},
	{modal, "wants want wanted wish wished refused refuses refuse declined declines"},
	{faulty, "tripping trip good heat heating cool cooling working continuity ok spin start starting power flame hot dice luck joy part spare stock"},
	{so, "so bc until till unless anyway hence therefore"},
	{instead, "straight direct directly"},
	{two, "2 two ungrounded unearthed"},
	{three, "3 three third"},
	{adapter, "adapter adaptor adapt"},
	{bigger, "bigger larger oversize! oversized stronger higher heavier uprated upsized upped"},
	{piped | other, "filter economizer economiser econ softener duct damper humidifier"},
	{other, "replacement drive diag diagnostic diagnostics post header tube line rectifier kit port hose plug neutral bonding factory diode harness nut brush rack diagram cutter mixing tempering pipe coil suction liquid evaporator evap bulb shelf wall sheath tank outlet rc rh jp setting board shelf bar setpoint meter jp1 jp2 jp3 jp4"},
	{other, "needle belt reading amps pressure temp temperature volts voltage drum chain current gauge load"},
	{broken, "loose broken snapped sheared burnt burned corroded melted damaged frayed bare chafed pinched"},
	{fresh, "new fresh"},
	{theDev, "the a an its this that both all his her my"},
	{filler, "is was are were been be has have had now just some old it them which again still very temporarily temporary temp i we he she they"},
}

// tags are the words of the table and their forms (common practice).
var tags = sync.OnceValue(func() map[string]tag {
	out := map[string]tag{}
	for _, row := range tagged {
		for _, w := range strings.Fields(row.words) {
			stem, verb := strings.CutSuffix(w, "!")
			if !verb {
				out[w] |= row.is
				continue
			}
			out[stem] |= base
			short := strings.TrimSuffix(stem, "e")
			for _, form := range []string{short + "ed", short + "ing", stem + stem[len(stem)-1:] + "ed", stem + stem[len(stem)-1:] + "ing"} {
				out[form] |= row.is
			}
		}
	}
	return out
})

// tagOf gives the tags of a word, or of the one of which it is several.
func tagOf(word string) tag {
	for _, end := range [...]string{"", "s", "es"} {
		if one, is := strings.CutSuffix(word, end); is {
			if t := tags()[one]; t != 0 {
				return t
			}
		}
	}
	if word[0] >= '0' && word[0] <= '9' {
		return number
	}
	return 0
}

// eachWord calls a function with the tags of each word of a text in lower case:
// of letters and digits, and of those with marks in them that the table has so.
func eachWord(text string, do func(word string, is tag)) {
	for i := 0; i < len(text); {
		end, marked := i, i
		for end < len(text) && wordly(text[end]) {
			end++
		}
		if end == i {
			i++
			continue
		}
		for marked = end; marked < len(text) && (wordly(text[marked]) || strings.IndexByte(marks, text[marked]) >= 0); {
			marked++
		}
		word := text[i:end]
		if marked > end {
			if t := tagOf(unmarked.Replace(text[i:marked])); t != 0 && t != number {
				do(word, t)
				i = marked
				continue
			}
		}
		do(word, tagOf(word))
		i = end
	}
}

// marks may stand in a word: cut-out, don't, w/o.
const marks = "-'/"

var unmarked = strings.NewReplacer("-", "", "'", "", "/", "")

func wordly(b byte) bool { return b >= 'a' && b <= 'z' || b >= '0' && b <= '9' || b >= 0x80 }

// tagsOf are the tags of a clause's words, without fillers, a device and its marks
// as one.
func tagsOf(clause string, out []tag) []tag {
	article := tag(0)
	first, before := "", ""
	eachWord(clause, func(word string, t tag) {
		n := len(out) - 1
		switch {
		case t == filler:
			return
		case t == theDev:
			article = theDev
			return
		case n < 0:
			first = word
		case (word == "timer" || word == "plate") && before == "bypass":
			out[n] = 0 // a part of its own
			return
		case word == "out" && before == "cut" && out[n]&theDev != 0:
			out[n] = tags()["cutout"] | theDev
			return
		case (word == "prong" || word == "pin") && (before == "round" || before == "third" || before == "3rd"):
			out[n] = earthed // of three that one
		case word == "gone" && (n < 0 || out[n]&(wiry|guarded|earthed) == 0 || out[n]&fused != 0),
			word == "ol" && n >= 0 && out[n]&(bare|takes|outOf|of|inside|toward|across|without|runs|left|joined|undoes|with) == 0:
			t = 0 // blown, and what a meter reads
		case (word == "sw" || word == "switch") && (before == "press" || before == "vent"):
			out[n], t = 0, t|guarded // of pressure
		case before == "too" && (word == "big" || word == "large" || word == "high"):
			t = bigger
		case word == "holds" && out[n]&(device|kept) != 0:
			t = 0 // by itself
		case word == "on" && (before == "pressed" || before == "pushed"):
			t = toward
		case word == "wrapped" && before == "tie":
			t = bound
		case word == "nut" && before == "wire":
			return
		case word == "device" && before == "failure":
			t = kept | mark
		case word == "plug" && (before == "cheater" || before == "bypass" && n > 0 && out[n-1]&(ofDoor|held) != 0):
			return // is what it is without that
		case word == "line" && n > 0 && out[n]&of != 0 && out[n-1]&outOf != 0:
			t = circuit
		case t&part != 0 && out[n]&(held|fused) != 0:
			out[n] = part // a fuse box is no fuse
			article = 0
			return
		case article == 0 && out[n]&(mark|held|fused) != 0 && t&(mark|held|fused) != 0:
			const own = theDev | device | guarded | kept | fixed | fused | ofDoor | ofFlame
			t |= out[n] & own
			out = out[:n]
		}
		out = append(out, t|article)
		article, before = 0, word
	})
	for i := range out {
		t := &out[i]
		if *t&held == 0 {
			*t &^= theDev
		}
		switch {
		case *t&(kept|other) == kept|other && *t&ofFlame != 0:
			*t &^= other
		case *t&(kept|other) == kept|other:
			*t &^= kept
		case *t&device != 0 && *t&ofDoor != 0:
			*t |= guarded
		case *t&modal != 0 && *t&so != 0: // needs the limit bypassed, does not need to
			if i+1 < len(out) && out[i+1]&held != 0 && !(i > 0 && out[i-1]&no != 0) {
				*t = so
			} else {
				*t = modal
			}
		case *t&no != 0 && i+2 < len(out) && out[i+1]&earthed != 0 && out[i+2]&wiry != 0 && out[i+2]&bit == 0, // no ground prong
			*t&no != 0 && (i > 0 && out[i-1]&with != 0 || i+3 < len(out) && out[i+1]&guarded != 0 && out[i+2]&toward != 0 && out[i+3]&mark != 0): // no overload on the compressor
			*t = *t&^no | without
		case *t&no != 0 && i+1 < len(out) && out[i+1]&faulty != 0:
			*t &^= no
		case *t&inside != 0 && i+1 < len(out) && out[i+1]&(with|toward|so|runs) == 0: // held in place
			*t &^= shut
		}
	}
	if len(out) > 1 && out[0]&base != 0 && out[1]&(inside|toward|of|with|across) == 0 { // tape the lid switch
		for _, end := range [...]string{"ed", "d"} {
			out[0] |= tags()[first+end] & (bound | weak | bare | undoes | joined | takes | shorts)
		}
	}
	return out
}
