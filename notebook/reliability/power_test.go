//go:build linux

package reliability

import (
	"fmt"
	"math/rand/v2"

	"ohmcall/notebook"
)

// power is T3: a session on a disk that may lose power after every step; each
// state in which the disk can then be found is opened, and some are gone on
// with, so that the power also fails while a crash is being mended.
func power(w *watch) {
	rounds, each := 14, 6
	if long {
		rounds, each = 70, 15
	}
	for round := range rounds {
		r := rand.New(rand.NewPCG(uint64(round), 8))
		var files map[string][]byte
		var sure []string // acknowledged in the states that are gone on with
		for range 3 {
			files, sure = powerSession(w, r, files, sure, each)
			if files == nil || w.red() {
				break
			}
		}
		if w.red() {
			return
		}
	}
}

// powerSession types some lines and gives one of the states seen, with the
// entries it holds, for the next session to begin from.
func powerSession(w *watch, r *rand.Rand, files map[string][]byte, sure []string, each int) (map[string][]byte, []string) {
	p := newPowerFS(files)
	typed, acked := append([]string(nil), sure...), append([]string(nil), sure...)
	var next map[string][]byte
	var nextSure []string
	seen := 0
	p.each = func() {
		for range each {
			state := p.after(r)
			w.count("states", 1)
			have, err := openState(state, acked, typed)
			if err != nil {
				w.fault("state %d of the session, %d of %d lines acknowledged: %v", w.counts["states"], len(acked), len(typed), err)
				continue
			}
			if seen++; have != nil && r.IntN(seen) == 0 {
				next, nextSure = state, have
			}
		}
	}
	host := p.host()
	open := notebook.Create
	if files["call.md"] != nil {
		open = notebook.Open
	}
	n, err := open(host, "call.md")
	if err != nil {
		w.fault("the file does not open: %v", err)
		return nil, nil
	}
	for i := range 4 + r.IntN(6) {
		line := fmt.Sprintf("note %d of %d %0*d", i, len(typed), 1+r.IntN(900), i)
		if i%3 == 0 {
			line = fmt.Sprintf("ohm A B %d.%02d", 3+i, len(typed))
		}
		typed = append(typed, line)
		if _, err := n.Do(line); err != nil {
			w.fault("%s: %v", line, err)
			return nil, nil
		}
		acked = append(acked, line)
	}
	if err := n.Close(); err != nil {
		w.fault("close: %v", err)
	}
	return next, nextSure
}

// openState opens what a loss of power left and gives the lines it holds.
func openState(state map[string][]byte, acked, typed []string) ([]string, error) {
	p := newPowerFS(state)
	if state["call.md"] == nil {
		// The first entry makes the file.
		return nil, holds(acked, typed, nil)
	}
	n, err := notebook.Open(p.host(), "call.md")
	if err != nil {
		return nil, err
	}
	have := []string{}
	for _, e := range n.Call().Entries() {
		have = append(have, e.Line)
	}
	if err := holds(acked, typed, have); err != nil {
		return nil, err
	}
	if _, err := n.Do("note typed after the loss of power"); err != nil {
		return nil, err
	}
	if err := n.Close(); err != nil {
		return nil, err
	}
	if err := checks(p.now("call.md")); err != nil {
		return nil, fmt.Errorf("mended: %w", err)
	}
	return have, nil
}
