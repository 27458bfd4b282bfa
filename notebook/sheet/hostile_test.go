package sheet

import (
	"bytes"
	stdhtml "html"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/html"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// attacks are texts that became markup, script, a request or a disguise in
// some page or other. Kinds of attack as in the OWASP "Cross Site Scripting
// Prevention Cheat Sheet" and "XSS Filter Evasion Cheat Sheet" (from memory)
// and CVE-2021-42574.
var attacks = []string{
	`<script>alert(1)</script>`, `</script><script>alert(1)</script>`, `<img src=x onerror=alert(1)>`, `<svg onload=alert(1)>`,
	`<iframe src="http://example.test/"></iframe>`, `<object data="http://example.test/">`, `<embed src="http://example.test/">`,
	`<link rel="stylesheet" href="http://example.test/a.css">`, `<style>@import "http://example.test/a.css";</style>`, `</style><b>`,
	`<base href="http://example.test/">`, `<meta http-equiv="refresh" content="0;url=http://example.test/">`, `<a href="javascript:alert(1)">x</a>`,
	`<form action="http://example.test/"><input name=a>`, `<video src=http://example.test/ autoplay>`, `<details open ontoggle=alert(1)>`,
	`<math><mi xlink:href="data:x,<script>alert(1)</script>">`, `<template><script>alert(1)</script></template>`, `<noscript><p title="</noscript><img src=x>">`,
	`</title><script>alert(1)</script>`, `</textarea><b>`, `</desc></svg><b>`, `</pre></details><b>`, `</td></tr></table><b>`, `<!-- `, `--><b>`, `<![CDATA[<b>]]>`, `<?php b ?>`,
	`" onmouseover="alert(1)`, `' onmouseover='alert(1)`, "` onmouseover=`alert(1)", `"><b>`, `'><b>`, `"/><b>`, `&lt;b&gt;`, `&#60;b&#62;`, `&quot;><b>`,
	`{{.}}`, `{{template "plot" .}}`, `${alert(1)}`, `<% b %>`, `[x](javascript:alert(1))`, `[x](JaVaScRiPt:alert(1))`, `[x](&#106;avascript:alert(1))`, `[x](http://example.test/)`,
	`![x](http://example.test/a.png)`, `![x](data:image/svg+xml;base64,AAAA)`, `<http://example.test/>`, `<javascript:alert(1)>`, `<someone@example.test>`,
	`http://example.test/`, `www.example.test`, "[x]: javascript:alert(1)\n\n[x]", "[x][y]\n\n[y]: http://example.test/", "``` <b>\n<b>\n```", "~~~x\" onclick=\"alert(1)\n<b>\n~~~",
	"# x {onclick=alert(1)}", "x\n===\n<b>", "| <b> | x |\n| --- | ---: |\n| <script> | [x](javascript:1) |", "- [ ] <b>", "> <b>\n> <script>", "<div\nonclick=alert(1)>\n\n*x*\n\n</div>",
	"\x1b[2J\x1b]0;x\x07", "a\x00b", "a\rb", "\u202eevil\u202c", "\u2066a\u2069", "a\u200bb", "a\u2028b\u2029c", "\ufeffa", "\xff\xfe<b>", "\xc0\xbcscript\xc0\xbe", "\u0085\u009b31m", "\U000E0041",
	"\uff1cscript\uff1e", strings.Repeat("<b>", 200), strings.Repeat("W", 3000), "e" + strings.Repeat("\u0301", 1000), strings.Repeat("[", 300), strings.Repeat("*", 301),
}

// payloads are the attacks as they stand and behind ends of the places that
// text could stand in.
func payloads() []string {
	out := slices.Clone(attacks)
	for _, lead := range []string{`">`, "</s></code></text>\n\n"} {
		for _, a := range attacks {
			out = append(out, lead+a)
		}
	}
	return out
}

// elements lists what may stand on a page, with the attributes each may have
// beside id, class, role, tabindex and aria-*.
var elements = map[string]string{
	"html": "lang", "head": "", "meta": "charset http-equiv content name", "title": "", "style": "", "body": "",
	"a": "href", "header": "", "nav": "", "main": "", "section": "", "article": "", "footer": "", "h1": "", "h2": "", "h3": "", "h4": "", "h5": "", "h6": "",
	"p": "", "span": "", "strong": "", "em": "", "s": "", "del": "", "code": "", "pre": "", "br": "", "hr": "", "blockquote": "", "div": "",
	"ul": "", "ol": "start", "li": "value", "dl": "", "dt": "", "dd": "", "time": "datetime", "details": "", "summary": "", "figure": "", "figcaption": "",
	"table": "", "caption": "", "thead": "", "tbody": "", "tfoot": "", "tr": "", "th": "scope", "td": "",
	"svg": "viewBox", "desc": "", "line": "x1 y1 x2 y2", "circle": "cx cy r", "path": "d", "rect": "x y width height transform",
	"text": "x y dx dy text-anchor transform",
}

var (
	anchor = regexp.MustCompile(`^#[a-z]+(-[0-9]+)?$`)
	number = regexp.MustCompile(`^-?[0-9]+$`)
	tags   = regexp.MustCompile(`^[a-z -]*$`)
)

// inspect reads a page as a browser does and returns its elements in order,
// its text nodes, and whatever is not allowed.
func inspect(t testing.TB, doc []byte) (shape, texts, faults []string) {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(doc))
	if err != nil {
		t.Fatal(err)
	}
	for n := range root.Descendants() {
		switch n.Type {
		case html.TextNode:
			texts = append(texts, n.Data)
		case html.CommentNode:
			faults = append(faults, "comment "+n.Data)
		case html.ElementNode:
			shape = append(shape, n.Data)
			more, ok := elements[n.Data]
			if !ok {
				faults = append(faults, "element "+n.Data)
			}
			for _, a := range n.Attr {
				if !allowed(a, strings.Fields("id class role tabindex aria-label aria-labelledby "+more)) {
					faults = append(faults, n.Data+" "+a.Key+"="+a.Val)
				}
			}
		}
	}
	return shape, texts, faults
}

func allowed(a html.Attribute, names []string) bool {
	if a.Namespace != "" || !slices.Contains(names, a.Key) {
		return false
	}
	switch a.Key {
	case "href":
		return anchor.MatchString(a.Val)
	case "start", "value":
		return number.MatchString(a.Val)
	case "class", "scope":
		return tags.MatchString(a.Val)
	}
	return true
}

// fill sets every text of a record, and counts them.
func fill(v reflect.Value, s string) int {
	switch v.Kind() {
	case reflect.String:
		v.SetString(s)
		return 1
	case reflect.Pointer:
		if !v.IsNil() {
			return fill(v.Elem(), s)
		}
	case reflect.Slice:
		n := 0
		for i := range v.Len() {
			n += fill(v.Index(i), s)
		}
		return n
	case reflect.Struct:
		if v.Type() == reflect.TypeFor[time.Time]() {
			return 0
		}
		n := 0
		for i := range v.NumField() {
			n += fill(v.Field(i), s)
		}
		return n
	}
	return 0
}

// tail makes a text too long for every drawing, so that each field of it is
// on the page as often whatever stands before.
var tail = strings.Repeat("z", 40)

func TestHostileFields(t *testing.T) {
	list := payloads()
	if len(list) < 200 {
		t.Fatalf("%d payloads, want 200", len(list))
	}
	render := func(s string) []byte {
		r := demo()
		r.Log = r.Log[:4]
		if n := fill(reflect.ValueOf(r), s+tail); n < 250 {
			t.Fatalf("%d texts are set, want 250", n)
		}
		return mustRender(t, r, nil)
	}
	count := func(texts []string, s string) int {
		n := 0
		for _, x := range texts {
			n += strings.Count(x, s)
		}
		return n
	}
	wantShape, texts, faults := inspect(t, render("plain"))
	wantCount := count(texts, "plain"+tail)
	if len(faults) > 0 || wantCount < 150 {
		t.Fatalf("plain text: %d on the page, faults %q", wantCount, faults)
	}
	for _, s := range list {
		doc := render(s)
		shape, texts, faults := inspect(t, doc)
		if len(faults) > 0 {
			t.Errorf("%.60q: %q", s, faults[0])
		}
		if !slices.Equal(shape, wantShape) {
			t.Errorf("%.60q changes the elements of the page", s)
		}
		if got := count(texts, onPage(s)+tail); got != wantCount {
			t.Errorf("%.60q stands %d times on the page, want %d", s, got, wantCount)
		}
		if err := wellFormed(doc); err != nil {
			t.Errorf("%.60q: %v", s, err)
		}
		raw(t, s, doc)
	}
}

// onPage is how a text reads on a page.
func onPage(s string) string {
	s = strings.ReplaceAll(s, "\x00", "\uFFFD")
	return stdhtml.UnescapeString(string(clean([]byte(stdhtml.EscapeString(s)))))
}

var hidden = regexp.MustCompile(`[\x00-\x08\x0b-\x1f\x7f-\x{9f}\x{ad}\x{61c}\x{200b}-\x{200f}\x{2028}-\x{202e}\x{2060}-\x{206f}\x{feff}]`)

func raw(t *testing.T, s string, doc []byte) {
	t.Helper()
	if m := hidden.Find(doc); m != nil {
		t.Errorf("%.60q leaves %q in the page", s, m)
	}
}

func TestHostileRemarks(t *testing.T) {
	r := &record.Record{}
	for _, s := range payloads() {
		remarks := map[string]string{s: s}
		for _, id := range append(page.PartIDs(), "", "log") {
			remarks[id] = s
		}
		doc := mustRender(t, r, remarks)
		_, texts, faults := inspect(t, doc)
		if len(faults) > 0 {
			t.Errorf("%.60q: %q", s, faults[0])
		}
		if err := wellFormed(doc); err != nil {
			t.Errorf("%.60q: %v", s, err)
		}
		all := strings.Join(texts, "")
		for _, word := range []string{"alert(1)", "http://example.test/", "<script>", "javascript:"} {
			if strings.Contains(s, word) && strings.Count(all, word) < len(remarks)-1 {
				t.Errorf("%.60q: %q is not on the page as text", s, word)
			}
		}
		raw(t, s, doc)
	}
}

// TestInspectorSees shows that the inspection above finds what it looks for.
func TestInspectorSees(t *testing.T) {
	for _, bad := range []string{
		`<script>x</script>`, `<img src="x"/>`, `<iframe></iframe>`, `<link href="x"/>`, `<a href="http://example.test/">x</a>`, `<a href="javascript:x">x</a>`,
		`<p onclick="x">x</p>`, `<p style="x">x</p>`, `<svg><a xlink:href="x">x</a></svg>`, `<svg><use href="#x"/></svg>`, `<!-- x -->`,
	} {
		if _, _, faults := inspect(t, []byte("<!DOCTYPE html><html><body>"+bad)); len(faults) == 0 {
			t.Errorf("%s passes", bad)
		}
	}
}

func FuzzRender(f *testing.F) {
	for _, s := range attacks {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		r := &record.Record{
			Header: record.Header{Unit: s, Result: s}, Outcome: []record.Fact{{Label: s, Text: s}}, Alerts: []string{s},
			Machines: []record.Machine{{Name: s, Pins: []record.Pin{{Name: s, Role: s}}, Pairs: []record.Pair{{A: s, B: s, Ohms: s}}}},
		}
		doc := mustRender(t, r, map[string]string{"": s, "log": s})
		if _, _, faults := inspect(t, doc); len(faults) > 0 {
			t.Errorf("%q", faults)
		}
		if err := wellFormed(doc); err != nil {
			t.Error(err)
		}
	})
}
