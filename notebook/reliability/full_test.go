//go:build linux

package reliability

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"golang.org/x/sys/unix"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// full is T6: the size of files is bounded, so that writes fail as they do on
// a full disk, part of them written.
func full(w *watch) {
	dir := w.dir()
	out, err := helperCommand("full", dir).Output()
	w.must(err)
	var r struct {
		Limits int
		Faults []string
	}
	w.must(json.Unmarshal(out, &r))
	w.count("limits", r.Limits)
	for _, f := range r.Faults {
		w.fault("%s", f)
	}
	// The program itself, at some of the limits.
	for limit := 256; limit < 8192; limit += 797 {
		name := filepath.Join(w.dir(), "call.md")
		c := helperCommand("limit", fmt.Sprint(limit), program, "run", "-", "-o", name, "--json")
		c.Stdin = strings.NewReader(strings.Join(lines(40), "\n") + "\n")
		var errs bytes.Buffer
		c.Stderr = &errs
		out, err := c.Output()
		var acked []string
		for _, a := range acks(out) {
			acked = append(acked, a.Line)
		}
		if err == nil || !strings.Contains(errs.String(), "file too large") {
			w.fault("limit %d: the program said %v %s", limit, err, errs.String())
		}
		if !notebook.Exists(name) {
			if len(acked) > 0 {
				w.fault("limit %d: the file is gone", limit)
			}
			continue
		}
		have, err := stored(name)
		if err == nil {
			err = holds(acked, acked, have)
		}
		if err != nil {
			w.fault("limit %d: %v", limit, err)
		}
		if s := strays(filepath.Dir(name)); len(s) > 0 {
			w.fault("limit %d: left behind: %v", limit, s)
		}
	}
}

// fullChild goes through the limits; the limit holds for its whole process.
func fullChild(dir string) int {
	var faults []string
	limits := 0
	const step = 64
	for size := step; size <= 200*64; size += step {
		limits++
		if err := fullOnce(filepath.Join(dir, fmt.Sprint(size)+".md"), uint64(size)); err != nil {
			faults = append(faults, fmt.Sprintf("limit %d: %v", size, err))
		}
		if len(faults) > 5 {
			break
		}
	}
	json.NewEncoder(os.Stdout).Encode(map[string]any{"Limits": limits, "Faults": faults})
	return 0
}

func bound(size uint64) error {
	limit := unix.Rlimit{Cur: size, Max: unix.RLIM_INFINITY}
	return unix.Setrlimit(unix.RLIMIT_FSIZE, &limit)
}

func fullOnce(name string, size uint64) error {
	if err := bound(size); err != nil {
		return err
	}
	defer bound(unix.RLIM_INFINITY)
	host := notebook.Host{FS: journal.Disk{}, Now: time.Now}
	n, err := notebook.Create(host, name)
	if err != nil {
		return err
	}
	var acked []string
	all := lines(60)
	for _, l := range all {
		if _, err = n.Do(l); err != nil {
			break
		}
		acked = append(acked, l)
	}
	if err != nil {
		content, readErr := os.ReadFile(name)
		if len(acked) == 0 {
			if readErr == nil {
				return fmt.Errorf("there is a file although it could not be made")
			}
			return n.Close()
		}
		if readErr != nil || !bytes.HasSuffix(content, []byte("\n")) {
			return fmt.Errorf("a torn tail stays: %v", readErr)
		}
	}
	// A close that cannot rewrite keeps the file as it is; then there is room.
	if len(acked)%2 == 0 {
		if err := n.Close(); err != nil {
			bound(unix.RLIM_INFINITY)
			have, err := stored(name)
			if err != nil {
				return err
			}
			return holds(acked, acked, have)
		}
		return nil
	}
	if err := bound(unix.RLIM_INFINITY); err != nil {
		return err
	}
	if _, err := n.Do("note there is room again"); err != nil {
		return err
	}
	acked = append(acked, "note there is room again")
	if err := n.Close(); err != nil {
		return err
	}
	have, err := stored(name)
	if err != nil {
		return err
	}
	content, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	if err := checks(content); err != nil {
		return err
	}
	return holds(acked, acked, have)
}
