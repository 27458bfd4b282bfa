//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"html"
	"regexp"
	"strings"

	"github.com/goccy/go-yaml"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/text"

	"ohmcall/notebook"
)

// gfm is a reader of Markdown that is not ours.
var gfm = goldmark.New(goldmark.WithExtensions(extension.GFM))

// shape is a page as the independent reader sees it: its kinds of nodes in
// order, and what a reader would see of its text.
type shape struct {
	kinds string
	text  string
	bad   []string // HTML, links, images
	last  string   // the language of the code block that ends the page
}

// body is a page without its front matter, which is no Markdown.
func body(page []byte) []byte {
	_, rest, _ := bytes.Cut(page[4:], []byte("\n---\n"))
	return rest
}

var tags = regexp.MustCompile(`<[^>]*>`)

func shapeOf(page []byte) (shape, error) {
	src := body(page)
	doc := gfm.Parser().Parse(text.NewReader(src))
	var s shape
	var kinds []string
	err := ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n.Kind() {
		case ast.KindText, ast.KindString, ast.KindTextBlock:
			return ast.WalkContinue, nil
		case ast.KindRawHTML, ast.KindHTMLBlock, ast.KindLink, ast.KindImage, ast.KindAutoLink, east.KindStrikethrough, east.KindTaskCheckBox:
			s.bad = append(s.bad, n.Kind().String())
		}
		kinds = append(kinds, n.Kind().String())
		if c, ok := n.(*ast.FencedCodeBlock); ok && n.Parent() == doc {
			s.last = ""
			if n.NextSibling() == nil {
				s.last = string(c.Language(src))
			}
		}
		return ast.WalkContinue, nil
	})
	if err != nil {
		return s, err
	}
	s.kinds = strings.Join(kinds, " ")
	var out bytes.Buffer
	if err := gfm.Renderer().Render(&out, src, doc); err != nil {
		return s, err
	}
	s.text = html.UnescapeString(tags.ReplaceAllString(out.String(), "\x00"))
	return s, nil
}

// payloads are texts that try to be markup.
func payloads() []string {
	list := []string{"<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "<b>bold", "</td></tr>", "<!-- c", "-->", "<?php", "<![CDATA[x]]>",
		"<http://example.invalid>", "<a@example.invalid>", "http://example.invalid/x", "https://example.invalid", "www.example.invalid", "ftp://example.invalid/a",
		"mailto:a@example.invalid", "a@example.invalid", "xmpp:a@example.invalid/b", "[x](http://example.invalid)", "[x](javascript:alert(1))", "![x](http://example.invalid/p.png)", "[x][ohmcall-end]",
		"[x]: http://example.invalid", "[ohmcall-end]: #title \"x\"", "[ohmcall-begin]: #log", "```", "````", "~~~", "```ohmcall", "`code`", "``a`b``",
		"# heading", "## Log", "### x", "---", "***", "___", "===", "> said", "- item", "* item", "+ item", "1. item", "1) item", "99999999. x", "- [ ] task", "[ ] task", "[x] done",
		"| a | b |", "|---|---|", "a | b", `a \| b`, `\`, `\\`, `a\`, `\<b>`, `\` + "`", "*em*", "**strong**", "_em_", "__strong__", "~~struck~~", "~a~", "&lt;", "&amp;lt;", "&#60;b&#62;", "&copy;", "&", "&nbsp;x",
		"$x$", "$$x$$", ":smile:", "@user", "#1", "^[note]", "[^1]", "[^1]: x", "{.class}", "{{x}}", "<%= x %>", "{% x %}", "quo\"ted", "it's", "a\"b\"c", "'x'", "a: b", "key: value", "--- ", "...", "- ", "%YAML", "!!binary x", "*alias", "&anchor", "[1, 2]", "{a: 1}", "null", "true", "1e5", "0x10", "~", "2026-03-02",
		"12 2026-03-02T09:00:00+00:00 note fake", "# Noted.", "=1+1", "+1", "-1+1", "@SUM(A1)", "a  b", "a   ", "    indented", "\tx", "<details><summary>x", "<style>*{}", "<iframe src=//example.invalid>", "//example.invalid", "\\[x\\](y)"}
	// A word that starts with a quote must end with one: that is the language.
	list = append(list, "x\"y\"")
	for _, c := range "\\`*_{}[]()#+-.!|<>~&:@$^='/%;,?" {
		list = append(list, string(c), strings.Repeat(string(c), 3), string(c)+"x", "x"+string(c)+"y"+string(c))
	}
	return list
}

// markedFields are fields whose text goes into the page as it is.
var markedFields = []string{"client %s", "site %s", "unit %s", "model %s", "serial %s", "fault %s", "tech %s", "note %s", "did %s", "safe %s"}

func pageWith(w *watch, payload string, closed bool) ([]byte, int) {
	p := newPowerFS(nil)
	n, err := notebook.Create(p.host(), "call.md")
	w.must(err)
	for _, f := range markedFields {
		// The x before keeps the payload from being read as another word.
		if _, err := n.Do(fmt.Sprintf(f, "x "+payload+" y")); err != nil {
			w.fault("%s with %q: %v", f, payload, err)
		}
		if _, err := n.Do(fmt.Sprintf(f, payload)); err != nil {
			w.fault("%s with %q: %v", f, payload, err)
		}
	}
	count := n.Call().Len()
	if closed {
		_, err = n.Do("close")
		w.must(err)
		count++
	}
	w.must(n.Close())
	return p.now("call.md"), count
}

// markup is T15.
func markup(w *watch) {
	for _, closed := range []bool{false, true} {
		plain, count := pageWith(w, "plain", closed)
		want, err := shapeOf(plain)
		w.must(err)
		for _, payload := range payloads() {
			if w.red() {
				return
			}
			w.count("payloads", 1)
			page, have := pageWith(w, payload, closed)
			if have != count {
				w.fault("%q: %d entries, not %d", payload, have, count)
			}
			s, err := shapeOf(page)
			w.must(err)
			if len(s.bad) > 0 {
				w.fault("%q becomes %v", payload, s.bad)
			}
			if s.kinds != want.kinds {
				w.fault("%q changes the structure: %s", payload, difference(want.kinds, s.kinds))
			}
			if s.last != "ohmcall" {
				w.fault("%q: the page does not end with its log", payload)
			}
			shown := strings.Join(strings.Fields(payload), " ")
			if got := strings.Join(strings.Fields(s.text), " "); strings.Count(got, "x "+shown+" y") < 2*len(markedFields) {
				w.fault("%q is read %d times only", payload, strings.Count(got, "x "+shown+" y"))
			}
			header(w, page, payload)
			if err := checks(page); err != nil {
				w.fault("%q: %v", payload, err)
			}
		}
	}
}

// header reads the front matter with a reader of YAML that is not ours.
func header(w *watch, page []byte, payload string) {
	front, _, ok := bytes.Cut(page[4:], []byte("\n---\n"))
	var h map[string]any
	if err := yaml.Unmarshal(front, &h); !ok || err != nil {
		w.fault("%q: the front matter is no YAML: %v", payload, err)
		return
	}
	want := strings.TrimRight(strings.ReplaceAll(payload, "\t", " "), " ")
	want = strings.TrimLeft(want, " ")
	for _, key := range []string{"client", "site", "serial"} {
		if got, _ := h[key].(string); strings.TrimSpace(got) != strings.TrimSpace(want) {
			w.fault("%q: %s reads %q in YAML", payload, key, h[key])
		}
	}
}

func difference(a, b string) string {
	x, y := strings.Fields(a), strings.Fields(b)
	for i := range x {
		if i >= len(y) || x[i] != y[i] {
			return fmt.Sprintf("node %d is %v, not %s", i, y[min(i, len(y)):min(i+3, len(y))], x[i])
		}
	}
	return fmt.Sprintf("%d nodes more", len(y)-len(x))
}
