package sheet

import (
	"bytes"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/renderer/html"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"ohmcall/notebook/page"
)

// remark is what a person wrote at one place of the notebook.
type remark struct {
	Place string
	HTML  template.HTML
}

// markdown reads remarks. Raw HTML, links, images and reference definitions
// are no syntax here: they stay on the page as they were typed, and nothing
// of them can become active.
var markdown = goldmark.New(
	goldmark.WithParser(parser.NewParser(
		parser.WithBlockParsers(
			util.Prioritized(parser.NewSetextHeadingParser(), 100),
			util.Prioritized(parser.NewThematicBreakParser(), 200),
			util.Prioritized(parser.NewListParser(), 300),
			util.Prioritized(parser.NewListItemParser(), 400),
			util.Prioritized(parser.NewCodeBlockParser(), 500),
			util.Prioritized(parser.NewATXHeadingParser(), 600),
			util.Prioritized(parser.NewFencedCodeBlockParser(), 700),
			util.Prioritized(parser.NewBlockquoteParser(), 800),
			util.Prioritized(parser.NewParagraphParser(), 1000),
		),
		parser.WithInlineParsers(
			util.Prioritized(parser.NewCodeSpanParser(), 100),
			util.Prioritized(parser.NewEmphasisParser(), 500),
		),
		parser.WithASTTransformers(util.Prioritized(shaper{}, 1000)),
	)),
	goldmark.WithExtensions(
		extension.NewTable(extension.WithTableCellAlignMethod(extension.TableCellAlignNone)),
		extension.Strikethrough,
	),
	goldmark.WithRendererOptions(
		html.WithXHTML(),
		renderer.WithNodeRenderers(util.Prioritized(blocks{}, 100)),
	),
)

// newRemarks renders the remarks in the order of the notebook's parts.
func newRemarks(remarks map[string]string) ([]remark, error) {
	order := append([]string{""}, page.PartIDs()...)
	var rest []string
	for id := range remarks {
		if !slices.Contains(order, id) {
			rest = append(rest, id)
		}
	}
	slices.Sort(rest)
	var out []remark
	for _, id := range append(order, rest...) {
		src := remarks[id]
		if strings.TrimSpace(src) == "" {
			continue
		}
		var b bytes.Buffer
		if err := markdown.Convert([]byte(src), &b); err != nil {
			return nil, err
		}
		out = append(out, remark{place(id), template.HTML(b.String())})
	}
	return out, nil
}

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

// shaper fits a remark into the page: its headings go on below the heading
// of its place without leaving out a level, and its tables name their
// columns as such.
type shaper struct{}

const remarkLevel = 3 // of the heading above a remark

func (shaper) Transform(doc *ast.Document, _ text.Reader, _ parser.Context) {
	last := remarkLevel
	// The walker returns no error, so neither does the walk.
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Heading:
			n.Level = min(remarkLevel+n.Level, last+1, 6)
			last = n.Level
		case *east.TableCell:
			if n.Parent().Kind() == east.KindTableHeader {
				n.SetAttributeString("scope", []byte("col"))
			}
			if n.Alignment == east.AlignRight || n.Alignment == east.AlignCenter {
				n.SetAttributeString("class", []byte(n.Alignment.String()))
			}
		}
		return ast.WalkContinue, nil
	})
}

// blocks renders code without a class of the writer's choice, what was
// written on its fence above it, and tables that can be scrolled by keyboard.
type blocks struct{}

func (blocks) RegisterFuncs(reg renderer.NodeRendererFuncRegisterer) {
	reg.Register(ast.KindCodeBlock, renderCode)
	reg.Register(ast.KindFencedCodeBlock, renderCode)
	reg.Register(east.KindTable, renderTable)
}

func renderCode(w util.BufWriter, source []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		_, err := w.WriteString("</code></pre>\n")
		return ast.WalkContinue, err
	}
	if f, ok := n.(*ast.FencedCodeBlock); ok && f.Info != nil {
		info := util.EscapeHTML(f.Info.Segment.Value(source))
		if _, err := fmt.Fprintf(w, "<p class=\"aside\">%s</p>\n", info); err != nil {
			return ast.WalkStop, err
		}
	}
	if _, err := w.WriteString("<pre><code>"); err != nil {
		return ast.WalkStop, err
	}
	for i := range n.Lines().Len() {
		line := n.Lines().At(i)
		if _, err := w.Write(util.EscapeHTML(line.Value(source))); err != nil {
			return ast.WalkStop, err
		}
	}
	return ast.WalkContinue, nil
}

func renderTable(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	s := "</table></div>\n"
	if entering {
		s = `<div class="scroll" role="group" aria-label="Table in the remarks" tabindex="0"><table><caption>Table in the remarks</caption>` + "\n"
	}
	_, err := w.WriteString(s)
	return ast.WalkContinue, err
}
