package main

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strings"
	"sync/atomic"

	"ohmcall/notebook/call"
	"ohmcall/notebook/fleet"
	"ohmcall/notebook/record"
)

// learned is what the notebooks folder teaches. It is read beside the prompt,
// which never waits for it.
type learned struct {
	known atomic.Pointer[fleet.Known]
	stop  context.CancelFunc
}

// begin reads the folder.
func (l *learned) begin(dir string) {
	ctx, stop := context.WithCancel(context.Background())
	l.stop = stop
	go func() {
		if k, err := fleet.Learn(ctx, dir); err == nil {
			l.known.Store(k)
		}
	}()
}

// parts lists the parts used in earlier calls on a model.
func (l *learned) parts(model string) []string {
	k := l.known.Load()
	if k == nil {
		return nil
	}
	return k.Parts(model)
}

// aside tells what earlier calls on the same model of machine found, when
// the model was written down or its roles have settled.
func (l *learned) aside(c *call.Call, e call.Entry) []string {
	k := l.known.Load()
	if k != nil && e.Kind == "fault" {
		return found(k, c.Complaint())
	}
	if k != nil && e.Kind == "serial" {
		return visited(k, &c.Record().Header)
	}
	if k == nil || e.Kind != "plate" && !slices.Contains(e.Reply.Flags, "roles-settled") {
		return nil
	}
	model, ohms := c.Windings()
	m, ok := k.Lookup(model)
	if !ok || len(m.Ohms) == 0 {
		return nil
	}
	now := map[string]string{}
	for _, o := range ohms {
		between, x, _ := strings.Cut(o, " ")
		now[between] = x
	}
	out := []string{fmt.Sprintf("Your notebooks hold %d calls on %s, as they were closed:", m.Calls, cleanName(m.Name))}
	for _, s := range m.Ohms {
		line := fmt.Sprintf("%s %.3g to %.3g Ω, median %.3g, %d times", s.Between, s.Min, s.Max, s.Median, s.Count)
		if x := now[s.Between]; x != "" {
			line += "; now " + x
		}
		out = append(out, line)
	}
	return out
}

// visited tells of the last call on the same unit.
func visited(k *fleet.Known, of *record.Header) []string {
	v := k.VisitOf(of)
	if v == nil {
		return nil
	}
	h := &v.Header
	day, _, _ := strings.Cut(h.Started, "T")
	text := "Your notebooks hold an earlier call on this serial number, " + day + ": " + cmp.Or(h.Complaint, "no complaint") + "; " + cmp.Or(h.Cause, "cause not found") + "; " + h.Result
	if h.Technician != "" {
		text += "; by " + h.Technician
	}
	if s := v.Told(of); s != "" {
		text += ". This one is a " + s
	}
	return []string{cleanName(text) + ". It is kept in " + cleanName(homeShort(v.Path)) + "."}
}

// fewestCalls is how many calls of a kind it takes to tell what was found in
// them; fewer say nothing.
const fewestCalls = 5

// found tells what earlier calls of the same kind of complaint turned out to
// be, the most frequent causes first.
func found(k *fleet.Known, kind string) []string {
	shares := k.Causes(kind)
	if kind == "" || len(shares) == 0 || shares[0].Of < fewestCalls {
		return nil
	}
	var parts []string
	for _, s := range shares {
		if s.Cause != "" && len(parts) < 3 {
			parts = append(parts, fmt.Sprintf("%s (%d)", cleanName(s.Cause), s.Calls))
		}
	}
	if len(parts) == 0 {
		return nil
	}
	return []string{fmt.Sprintf("Your notebooks hold %d calls of this kind, as they were closed; found was: %s.", shares[0].Of, strings.Join(parts, "; "))}
}
