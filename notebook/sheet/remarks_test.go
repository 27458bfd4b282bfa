package sheet

import (
	"strings"
	"testing"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

func TestRemarkMarkdown(t *testing.T) {
	for _, c := range []struct{ src, want string }{
		{"*a* **b** ~~c~~ `d`", "<p><em>a</em> <strong>b</strong> <del>c</del> <code>d</code></p>"},
		{"# a", "<h4>a</h4>"},
		{"### a\n\n# b\n\n###### c", "<h4>a</h4>\n<h4>b</h4>\n<h5>c</h5>"},
		{"a <b>c</b>", "<p>a &lt;b&gt;c&lt;/b&gt;</p>"},
		{"[a](http://example.test/)", "<p>[a](http://example.test/)</p>"},
		{"![a](http://example.test/)", "<p>![a](http://example.test/)</p>"},
		{"<http://example.test/>", "<p>&lt;http://example.test/&gt;</p>"},
		{"[a]: http://example.test/", "<p>[a]: http://example.test/</p>"},
		{"```sh x\n<b>\n```", "<p class=\"aside\">sh x</p>\n<pre><code>&lt;b&gt;\n</code></pre>"},
		{"3. a\n4. b", "<ol start=\"3\">\n<li>a</li>\n<li>b</li>\n</ol>"},
		{"| a | b |\n| - | -: |\n| 1 | 2 |", "<div class=\"scroll\" role=\"group\" aria-label=\"Table in the remarks\" tabindex=\"0\"><table><caption>Table in the remarks</caption>\n" +
			"<thead>\n<tr><th scope=\"col\">a</th>\n<th scope=\"col\" class=\"right\">b</th>\n</tr>\n</thead>\n\n" +
			"<tbody>\n<tr><td>1</td>\n<td class=\"right\">2</td>\n</tr>\n</tbody>\n</table></div>"},
	} {
		got := newRemarks(map[string]string{"": c.src})
		if s := strings.TrimSpace(string(got[0].HTML)); s != c.want {
			t.Errorf("%q gives\n%s\nwant\n%s", c.src, s, c.want)
		}
	}
}

func TestRemarksStandInOrder(t *testing.T) {
	got := newRemarks(map[string]string{"log": "l", "later": "x", "readings": "r", "title": "t", "": "top", "proof": " \n"})
	var places []string
	for _, r := range got {
		places = append(places, r.Place)
	}
	const want = "At the top|Under the title|Under “Readings”|Under “later”|Under “Log”"
	if s := strings.Join(places, "|"); s != want {
		t.Errorf("got %s, want %s", s, want)
	}
}

// TestEveryPartHasItsHeading holds the page and the notebook file together.
func TestEveryPartHasItsHeading(t *testing.T) {
	for _, id := range page.PartIDs() {
		if id != "title" && headingOf(id) == "" {
			t.Errorf("the notebook's part %q has no heading on the page", id)
		}
	}
}

// TestHeadingsLeaveOutNoLevel reads the outline as a screen reader does.
func TestHeadingsLeaveOutNoLevel(t *testing.T) {
	for _, remarks := range []map[string]string{demoRemarks, {"": "###### deep\n\n# shallow"}, nil} {
		shape, _, _ := inspect(t, mustRender(t, demo(), remarks))
		last, ones := 0, 0
		for _, e := range shape {
			if len(e) != 2 || e[0] != 'h' || e[1] < '1' || e[1] > '6' {
				continue
			}
			level := int(e[1] - '0')
			if level > last+1 {
				t.Errorf("a heading of level %d follows one of level %d", level, last)
			}
			if level == 1 {
				ones++
			}
			last = level
		}
		if ones != 1 {
			t.Errorf("%d headings of level 1, want 1", ones)
		}
	}
}

func TestStruckIsSeenAndSaid(t *testing.T) {
	r := &record.Record{
		Readings: []record.Reading{{Shown: "59 Ω", Condition: "cold", Struck: "probe slipped"}},
		Sums:     []record.Sum{{Value: "7 A", Struck: "wrong plate"}},
		Work:     []record.Work{{Text: "swept", Struck: "other unit"}},
		Parts:    []record.Part{{Name: "fuse", Count: 2, Price: 4, Priced: true, Struck: "not used"}},
		Log:      []record.Entry{{N: 1, Line: "ohm A B 59", Struck: "typing"}},
	}
	doc := string(mustRender(t, r, nil))
	for _, want := range []string{
		"<s>59 Ω</s>", "(struck: probe slipped)", "<s>7 A</s>", "(struck: wrong plate)", "<s>swept</s>", "(struck: other unit)",
		"<s>fuse</s>", "<s>8.00</s>", "(struck: not used)", "<s><code>ohm A B 59</code></s>", "(struck: typing)",
	} {
		if !strings.Contains(doc, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
	if strings.Contains(doc, "Total") {
		t.Error("a struck part is in the total")
	}
}

func TestEntriesAreLinkedOnlyWhenThere(t *testing.T) {
	r := &record.Record{Verdicts: []record.Verdict{{Entries: []int{1, 2}}}, Log: []record.Entry{{N: 1}, {N: 1}}}
	doc := string(mustRender(t, r, nil))
	if !strings.Contains(doc, `<a href="#entry-1">1</a>, 2<`) {
		t.Error("entry 1 is not linked, or entry 2 is")
	}
	if n := strings.Count(doc, `id="entry-1"`); n != 1 {
		t.Errorf("the anchor of entry 1 stands %d times, want once", n)
	}
}

// What is longer than is read as Markdown stands there as it was typed.
func TestLongRemarksStandAsTyped(t *testing.T) {
	short, long := "*a* <b>\n", strings.Repeat("*a* <b>\n", mostMarkdown/8)
	got := newRemarks(map[string]string{"": short, "title": long})
	if len(got) != 2 || !strings.Contains(string(got[0].HTML), "<em>a</em>") {
		t.Fatalf("the short one: %.200q", got)
	}
	if h := string(got[1].HTML); !strings.HasPrefix(h, "<pre>*a* &lt;b&gt;\n") || strings.Contains(h, "<b>") || strings.Contains(h, "<em>") {
		t.Errorf("the long one: %.200q", h)
	}
}
