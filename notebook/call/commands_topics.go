package call

import (
	"cmp"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// topic is a page of help on what is no command.
type topic struct {
	word, also string
	page       func(part string) *Reply // nil where help itself has it
	narrows    bool                     // a word behind it picks a part
}

// topics are the pages, in the order in which help names them.
var topics []topic

func init() {
	topics = []topic{
		{word: "language", page: func(string) *Reply { return Language() }},
		{word: "formulas", narrows: true},
		{word: "units"},
		{word: "points", also: "point", page: helpPoints},
		{word: "parts", page: helpParts, narrows: true},
		{word: "findings", also: "finding", page: helpFindings, narrows: true},
		{word: "when", also: "conditions", page: helpWhen},
		{word: "time", also: "times", page: helpTime},
		{word: "complaints", also: "complaint", page: helpComplaints, narrows: true},
		{word: "cautions", also: "caution", page: helpCautions, narrows: true},
		{word: "snippets", also: "snippet", page: helpSnippets},
		{word: "keys", also: "key", page: helpKeys},
	}
}

func topicOf(word string) *topic {
	for i := range topics {
		if topics[i].word == word || topics[i].also == word && word != "" {
			return &topics[i]
		}
	}
	return nil
}

func helpPoints(string) *Reply {
	r := say("Points are what the probes stand on or the clamp goes round.")
	r.add(Plain, "  Pins take any short name: A, 1, red. Two pins: ohm A B 3.4. Letter case makes no other pin.")
	r.add(Plain, "  case is the metal shell: ohm A case OL.")
	r.add(Plain, "  A part has one name: ohm heater 32; help parts lists those that are judged.")
	for _, q := range qualities {
		if q.word == "ohm" {
			continue
		}
		s := "  " + pad(q.word, 6) + strings.Join(placeWords(q.word), ", ")
		if d := defaultPlace(q.word); d != "" {
			s += "; none named is " + d
		}
		r.add(Plain, s)
	}
	return r.add(Plain, "  Other names are taken down too; they are judged where the table of parts knows them.")
}

func helpParts(part string) *Reply {
	r := say("ohm PART VALUE judges these; more may stand before or behind the name, as in belt-switch, heater2 or limit-hi:")
	for i := range partPlaces {
		p := &partPlaces[i]
		narrowed(r, part, strings.Join(p.names(), ", "), p.help)
	}
	return r
}

func helpFindings(part string) *Reply {
	r := say("saw knows these, by these or like words; anything else bears on no cause. help findings fan picks some:")
	for _, f := range cause.Findings() {
		narrowed(r, part, f.Words[0], f.Help)
	}
	return r
}

// narrowed adds a row when it speaks of what is asked for.
func narrowed(r *Reply, part, name, help string) {
	if strings.Contains(strings.ToLower(name+" "+help), strings.ToLower(part)) {
		r.add(Plain, "  "+name+": "+help)
	}
}

func helpComplaints(part string) *Reply {
	r := say("fault takes the customer's words; these complaints are known by these or like words. help complaints cool picks some:")
	for _, k := range cause.Complaints() {
		narrowed(r, part, k.Name, cmp.Or(k.Words, "told from others by what the appliance is called"))
	}
	return r
}

func helpCautions(part string) *Reply {
	r := say("These are said once in a call, at the step that they belong to. None takes the place of local codes or a licence:")
	for _, k := range caution.All() {
		narrowed(r, part, strings.ReplaceAll(k.Code, "-", " "), k.Text+" ("+k.Source+")")
	}
	return r
}

// helpSnippets shows the commands of sums that give names.
func helpSnippets(string) *Reply {
	r := say("A snippet is a value or a sum with a name. help NAME shows one of yours.")
	for _, w := range []string{"let", "def", "keep", "use"} {
		r.Lines = append(r.Lines, commandHelp(Find(w)).Lines...)
	}
	return r
}

// promptKeys are the keys of the prompt that do more than type.
var promptKeys = [][]string{
	{"Tab", "fills in what is wanted next, or what the letters typed can mean; again for the next"},
	{"Up, Down", "lines typed before, a refused one too"},
	{"Ctrl-R", "searches them"},
	{"Ctrl-C", "drops the line"},
	{"Ctrl-D", "stops and leaves the call open; so do quit and exit"},
	{"Enter", "alone shows the rest of an answer that was longer than the screen"},
}

func helpKeys(string) *Reply {
	r := say("Keys at the prompt; those of a plate are in help plate:")
	for _, k := range promptKeys {
		r.add(Plain, "  "+pad(k[0], 10)+k[1])
	}
	return r
}

func helpWhen(string) *Reply {
	r := say("when CONDITION: LINE")
	r.add(Plain, "  lets a need count only while the condition holds, and takes an expect or a note down only if it holds when typed (an expect whose reading is still to come waits for it); it is a sum with a yes or a no:")
	for _, f := range callFuncs {
		r.add(Plain, "  "+pad(f.usage, 24)+f.help)
	}
	r.add(Plain, "  Values compare with < <= == and join with and, or, not: amp(comp) < 2A and not seen(\"clicks\")")
	for _, e := range []string{`when is(gas, "R-600a"): need safe`, `when has("ohm A case"): expect ohm(A, B) < 10ohm "the main winding"`} {
		r.add(Plain, "    "+e)
	}
	return r
}

func helpTime(string) *Reply {
	r := say("A time before a line says when it happened:")
	r.add(Plain, "  14:30 temp freezer -2F    at that time of the day of the entry before")
	r.add(Plain, "  +40min temp freezer -9F   so long after the entry before, not after now; +2h, +90s, +1h30min")
	r.add(Plain, "  Readings noted on paper at 10, 20 and 30 minutes are +10min, +10min, +10min, or their times of day.")
	return r.add(Plain, "  date 2026-03-02 09:00 sets the day; date now returns to the clock on the wall.")
}
