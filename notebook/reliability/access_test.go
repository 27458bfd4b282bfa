//go:build linux

package reliability

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// nobody lets a command run as a user without rights, since root's writes
// are not held up by modes.
func nobody(w *watch, c *exec.Cmd) {
	if os.Getuid() != 0 {
		return
	}
	c.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: 65534, Gid: 65534}}
}

// foreignDir is a folder that the user without rights can reach but not write.
func foreignDir(w *watch) string {
	dir, err := os.MkdirTemp("", "reliability")
	w.must(err)
	w.t.Cleanup(func() { os.Chmod(dir, 0o755); os.RemoveAll(dir) })
	w.must(os.Chmod(dir, 0o755))
	return dir
}

// readOnly is T7.
func readOnly(w *watch) {
	for _, kind := range []string{"file", "folder", "missing folder"} {
		dir := foreignDir(w)
		name := filepath.Join(dir, "call.md")
		content := fixtures(w, 4)[0]
		w.must(os.WriteFile(name, content, 0o644))
		switch {
		case kind == "file":
			w.must(os.Chmod(dir, 0o777))
			w.must(os.Chmod(name, 0o444))
		case kind == "folder":
			w.must(os.Chmod(name, 0o666))
			w.must(os.Chmod(dir, 0o555))
		default:
			name = filepath.Join(dir, "nowhere", "call.md")
		}
		w.count("cases", 1)
		for _, c := range []*exec.Cmd{exec.Command(program, "run", "-", "-o", name), exec.Command(program, name)} {
			nobody(w, c)
			c.Dir, c.Env = dir, append(os.Environ(), "OHMCALL_DIR="+dir, "HOME="+dir)
			c.Stdin = strings.NewReader("note typed in vain\n")
			var out, errs bytes.Buffer
			c.Stdout, c.Stderr = &out, &errs
			if err := c.Run(); err == nil || out.Len() > 0 || !strings.Contains(errs.String(), "call.md") {
				w.fault("read-only %s: %v, out %q, error %q", kind, err, out.String(), errs.String())
			}
		}
		if kind == "missing folder" {
			continue
		}
		if have, err := os.ReadFile(name); err != nil || !bytes.Equal(have, content) {
			w.fault("read-only %s: the bytes have changed (%v)", kind, err)
		}
		c := exec.Command(program, "check", name)
		nobody(w, c)
		if out, err := c.CombinedOutput(); err != nil {
			w.fault("read-only %s: reading: %v %s", kind, err, out)
		}
	}
	vanish(w)
}

// vanish removes the folder while the call is open.
func vanish(w *watch) {
	w.count("cases", 1)
	dir := filepath.Join(w.dir(), "calls")
	w.must(os.Mkdir(dir, 0o700))
	name := filepath.Join(dir, "call.md")
	n, err := notebook.Create(notebook.Host{FS: journal.Disk{}, Now: time.Now}, name)
	w.must(err)
	_, err = n.Do("note before")
	w.must(err)
	w.must(os.RemoveAll(dir))
	_, err = n.Do("note after")
	var unsaved *notebook.SaveError
	if !errors.As(err, &unsaved) || !strings.Contains(err.Error(), "call.md") {
		w.fault("vanished folder: %v", err)
	}
	fresh := filepath.Join(w.dir(), "rescued.md")
	if err := n.Move(fresh); err != nil {
		w.fault("vanished folder: %v", err)
		return
	}
	_, err = n.Do("note after")
	w.must(err)
	w.must(n.Close())
	have, err := stored(fresh)
	if err == nil {
		err = holds([]string{"note before", "note after"}, []string{"note before", "note after"}, have)
	}
	if err != nil {
		w.fault("vanished folder: %v", err)
	}
}

// race is T8: two writers start at once on a file whose first entry makes a
// rewrite; a third comes after that rewrite.
func race(w *watch) {
	content := append(fixtures(w, 4)[0], "5 2026-03-02T09:00:00+00:00 note torn"...)
	for k := 0; k < w.due("races") && !w.red(); k++ {
		w.count("races", 1)
		name := filepath.Join(w.dir(), "call.md")
		w.must(os.WriteFile(name, content, 0o600))
		a, b := start(w, keeper(name)), start(w, keeper(name))
		begun := time.Now()
		winner, loser := a, b
		select {
		case <-a.done:
			winner, loser = b, a
		case <-b.done:
		case <-time.After(5 * time.Second):
			w.fault("race %d: nobody gave way", k)
		}
		if took := time.Since(begun); took > time.Second {
			w.fault("race %d: the loser took %v", k, took)
		}
		loser.in.Close()
		loser.cmd.Wait()
		pid := fmt.Sprint(winner.cmd.Process.Pid)
		if loser.cmd.ProcessState.Success() || !strings.Contains(loser.errs.String(), "process "+pid) {
			w.fault("race %d: the loser ended with %v: %s (winner %s)", k, loser.cmd.ProcessState, loser.errs.String(), pid)
		}
		fmt.Fprintln(winner.in, "note from the winner")
		winner.await(1)
		if have, err := read(name); err != nil || len(have) != 5 {
			w.fault("race %d: a reader sees %d entries, %v", k, len(have), err)
		}
		third := keeper(name)
		if out, err := third.CombinedOutput(); err == nil {
			w.fault("race %d: after the rewrite another got in: %s", k, out)
		}
		if k%2 == 0 {
			winner.cmd.Process.Kill()
		}
		winner.in.Close()
		<-winner.done
		winner.cmd.Wait()
		if have, err := stored(name); err != nil || len(have) != 5 {
			w.fault("race %d: after the winner's end: %d entries, %v", k, len(have), err)
		}
	}
}
