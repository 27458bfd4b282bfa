package sheet

import (
	"bytes"
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"

	"github.com/gomarkdown/markdown"
	"github.com/gomarkdown/markdown/ast"
	"github.com/gomarkdown/markdown/html"
	"github.com/gomarkdown/markdown/parser"

	"ohmcall/notebook/page"
)

// remark is what a person wrote at one place of the notebook.
type remark struct {
	Place string
	HTML  template.HTML
}

// newRemarks renders the remarks in the order of the notebook's parts.
func newRemarks(remarks map[string]string) []remark {
	order := append([]string{""}, page.PartIDs()...)
	var rest []string
	for id := range remarks {
		if !slices.Contains(order, id) {
			rest = append(rest, id)
		}
	}
	slices.Sort(rest)
	var out []remark
	read := 0
	for _, id := range append(order, rest...) {
		src := remarks[id]
		if strings.TrimSpace(src) == "" {
			continue
		}
		if read += len(src); read > mostMarkdown {
			out = append(out, remark{place(id), template.HTML("<pre>" + template.HTMLEscapeString(src) + "</pre>")})
			continue
		}
		out = append(out, remark{place(id), template.HTML(toHTML(src))})
	}
	return out
}

// mostMarkdown is how many bytes of remarks on one page are read as Markdown:
// a tree of it takes two hundred times its room. What goes beyond stands there
// as it was typed.
const mostMarkdown = 256 << 10

// place says where in the notebook a remark stands.
func place(id string) string {
	switch h := headingOf(id); {
	case id == "":
		return "At the top"
	case id == "title":
		return "Under the title"
	case h != "":
		return "Under “" + h + "”"
	}
	return "Under “" + id + "”"
}

// Raw HTML, links, images and reference definitions are no syntax in a
// remark: they stay on the page as they were typed, and nothing of them can
// become active. While it is parsed their signs are noncharacters, which
// Unicode (23.7, Noncharacters; from memory) sets aside for such inner use.
var (
	hide   = strings.NewReplacer("\uFDD0", "\uFFFD", "\uFDD1", "\uFFFD", "\uFDD2", "\uFFFD", "<", "\uFDD0", "[", "\uFDD1", "]", "\uFDD2")
	reveal = strings.NewReplacer("\uFDD0", "&lt;", "\uFDD1", "[", "\uFDD2", "]")
)

// toHTML renders one remark: CommonMark with GFM's tables and strikethrough.
func toHTML(src string) string {
	p := parser.NewCommonMarkWithExtensions(parser.Tables | parser.Strikethrough)
	doc := p.Parse([]byte(hide.Replace(src)))
	shape(doc)
	out := markdown.Render(doc, html.NewRenderer(html.RendererOptions{Flags: html.UseXHTML | html.SkipHTML | html.SkipImages | html.SkipLinks, RenderNodeHook: render}))
	return reveal.Replace(string(out))
}

const remarkLevel = 3 // of the heading above a remark

// shape fits the headings of a remark below the heading of its place without
// leaving out a level.
func shape(doc ast.Node) {
	last := remarkLevel
	ast.WalkFunc(doc, func(n ast.Node, entering bool) ast.WalkStatus {
		if h, ok := n.(*ast.Heading); ok && entering {
			h.Level = min(remarkLevel+h.Level, last+1, 6)
			last = h.Level
		}
		return ast.GoToNext
	})
}

// render writes code without a class of the writer's choice and what was
// written on its fence above it, and tables that name their columns as such
// and can be scrolled by keyboard.
func render(w io.Writer, n ast.Node, entering bool) (ast.WalkStatus, bool) {
	switch n := n.(type) {
	case *ast.CodeBlock:
		if info := bytes.TrimSpace(n.Info); len(info) > 0 {
			fmt.Fprintf(w, "<p class=\"aside\">%s</p>\n", template.HTMLEscapeString(string(info)))
		}
		fmt.Fprintf(w, "<pre><code>%s</code></pre>\n", template.HTMLEscapeString(string(n.Literal)))
	case *ast.Table:
		if entering {
			io.WriteString(w, `<div class="scroll" role="group" aria-label="Table in the remarks" tabindex="0"><table><caption>Table in the remarks</caption>`+"\n")
		} else {
			io.WriteString(w, "</table></div>\n")
		}
	case *ast.TableCell:
		tag, scope := "td", ""
		if n.IsHeader {
			tag, scope = "th", ` scope="col"`
		}
		if !entering {
			fmt.Fprintf(w, "</%s>\n", tag)
			break
		}
		class := ""
		if n.Align == ast.TableAlignmentRight || n.Align == ast.TableAlignmentCenter {
			class = fmt.Sprintf(` class="%s"`, n.Align)
		}
		fmt.Fprintf(w, "<%s%s%s>", tag, scope, class)
	default:
		return ast.GoToNext, false
	}
	return ast.GoToNext, true
}
