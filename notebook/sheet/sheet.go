// Package sheet renders a call as one HTML file to read and to print. The
// file carries its own style and drawings, asks for nothing over a network
// and needs no script; a content security policy in it forbids both.
//
// Whatever people wrote is text on the page and can become no element, link
// or style. The same record gives the same bytes.
package sheet

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"strings"
	"sync"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

//go:embed sheet.tmpl sheet.css
var files embed.FS

// layout is parsed when the first page is asked for.
var layout = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("sheet.tmpl").Funcs(template.FuncMap{
		"amount": page.Amount,
		"money":  record.Money,
		"iso":    iso,
		"spoken": page.Spoken,
		"tone":   tone,
		"point":  point,
		"long":   func(s string) bool { return page.Width(s) > 48 },
		"times":  func(count, price float64) float64 { return count * price },
	}).ParseFS(files, "sheet.tmpl"))
})

var style = sync.OnceValue(func() template.CSS {
	css, err := files.ReadFile("sheet.css")
	if err != nil {
		panic(err) // the file is part of the program
	}
	return template.CSS(css)
})

// sections are the headings of the page in their order: those of the parts of the
// notebook file, under which its remarks are filed, and two of its own.
func sections() []section {
	var out []section
	for _, id := range page.PartIDs() {
		if h := page.Heading(id); h != "" {
			out = append(out, section{id, h})
		}
	}
	return append(out, section{"remarks", "Remarks written by hand"}, section{"log", "Log"})
}

type section struct{ ID, Heading string }

func headingOf(id string) string {
	for _, s := range sections() {
		if s.ID == id {
			return s.Heading
		}
	}
	return ""
}

// mostEntries is how long a call may be that is laid out on a page.
const mostEntries = 30_000

// Render writes the page of a call. The remarks are what people wrote by
// hand into the notebook file, Markdown by the name of the part before it;
// "" is the place before the first part. Told are facts that the call itself does
// not hold, as that it is a call-back.
func Render(r *record.Record, remarks map[string]string, warning string, told ...record.Fact) ([]byte, error) {
	if len(r.Log) > mostEntries {
		return nil, fmt.Errorf("the call has %d entries; a page is written of at most %d", len(r.Log), mostEntries)
	}
	var b bytes.Buffer
	if err := layout().Execute(&b, newView(r, remarks, warning, told)); err != nil {
		return nil, err
	}
	return clean(b.Bytes()), nil
}

func iso(t time.Time) string { return t.Format(page.TimeLayout) }

// point parts the word on a point of the proof from what it rests on.
func point(text string) [2]string {
	word, rest, ok := strings.Cut(text, ": ")
	if !ok || tone(word) == "plain" {
		return [2]string{text}
	}
	return [2]string{word, ": " + rest}
}

// tone sorts a word of judgement into one of four classes of the style
// sheet. The word itself always stands on the page.
func tone(word string) string {
	for _, r := range record.Results {
		if r.Word == word {
			return r.Tone
		}
	}
	switch strings.ToLower(word) {
	case "sound", "on course", "met", "shown":
		return "good"
	case "suspect", "too early", "not shown", "taken":
		return "doubt"
	case "failed", "will not reach", "rises again", "warms", "not met":
		return "bad"
	}
	return "plain"
}
