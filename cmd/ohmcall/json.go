package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
)

// jsonEntry is one line of `run --json`. Its fields are a contract: others
// may be added, none changed.
type jsonEntry struct {
	N        int            `json:"n"`
	At       string         `json:"at,omitempty"`
	Line     string         `json:"line"`
	Kind     string         `json:"kind,omitempty"`
	OK       bool           `json:"ok"`
	Text     string         `json:"text"`
	Flags    []string       `json:"flags"`
	Value    *float64       `json:"value,omitempty"`
	Unit     string         `json:"unit,omitempty"`
	U        *float64       `json:"u,omitempty"`
	Windings []jsonWindings `json:"windings,omitempty"`
	Causes   *jsonCauses    `json:"causes,omitempty"`
	Error    *jsonError     `json:"error,omitempty"`
}

type jsonWindings struct {
	Of      string            `json:"of"`
	Pins    []string          `json:"pins"`
	Roles   map[string]string `json:"roles"`
	Settled bool              `json:"settled"`
	State   string            `json:"state"`
	Notes   []string          `json:"notes"`
}

type jsonCauses struct {
	Open     []string `json:"open"`
	RuledOut []string `json:"ruled_out"`
	Next     string   `json:"next"`
}

type jsonError struct {
	Col  int    `json:"col"`
	Msg  string `json:"msg"`
	Hint string `json:"hint"`
	Line string `json:"line,omitempty"` // of a file, that col belongs to
}

// jsonPrinter shows entries as JSON Lines.
type jsonPrinter struct {
	out, err io.Writer
}

func (p *jsonPrinter) Entry(e call.Entry) { p.write(jsonOf(e)) }

// Fault implements shower: a refused line is an object too.
func (p *jsonPrinter) Fault(line string, err error) {
	j := jsonEntry{Line: script.Clean(line), Flags: []string{}, Error: &jsonError{Msg: err.Error()}}
	var e *source.Error
	if errors.As(err, &e) {
		j.Error = &jsonError{Col: e.Col, Msg: e.Msg, Hint: e.Hint, Line: e.Line}
	}
	p.write(j)
}

func (p *jsonPrinter) write(j jsonEntry) {
	e := json.NewEncoder(p.out)
	e.SetEscapeHTML(false)
	if err := e.Encode(j); err != nil {
		fmt.Fprintf(p.err, "ohmcall: %v\n", err)
	}
}

func jsonOf(e call.Entry) jsonEntry {
	j := jsonEntry{N: e.N, At: e.At.Format(record.TimeLayout), Line: e.Line, Kind: e.Kind, OK: true,
		Text: e.Reply.Plain(), Flags: append([]string{}, e.Reply.Flags...)}
	if s := e.Reply.Sum; s != nil {
		j.Value, j.Unit, j.U = &s.Value, s.Unit, &s.U
	}
	for _, w := range e.Reply.Windings {
		j.Windings = append(j.Windings, jsonWindings{Of: w.Of, Pins: orEmpty(w.Pins), Roles: w.Roles, Settled: w.Settled, State: w.State, Notes: orEmpty(w.Notes)})
	}
	if c := e.Reply.Causes; c != nil {
		j.Causes = &jsonCauses{Open: orEmpty(c.Open), RuledOut: orEmpty(c.RuledOut), Next: c.Next}
	}
	return j
}

func orEmpty(s []string) []string {
	if s == nil {
		return []string{}
	}
	return s
}
