package call

import (
	"strings"

	"ohmcall/calc/cause"
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
		if d := defaultPlace[q.word]; d != "" {
			s += "; none named is " + d
		}
		r.add(Plain, s)
	}
	return r.add(Plain, "  Other names are taken down too; they are judged where the table of parts knows them.")
}

func helpParts(part string) *Reply {
	r := say("ohm PART VALUE judges these; more may follow the name, as in heater2 or limit-hi:")
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

func helpWhen(string) *Reply {
	r := say("when CONDITION: LINE")
	r.add(Plain, "  lets a "+strings.Join(guardable, " or ")+" count only while the condition holds, which is a sum with a yes or a no:")
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
