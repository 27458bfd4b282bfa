package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/notebook/fleet/sample"
	"ohmcall/notebook/journal"
)

// unsynced is the disk without its sync, to see what the program itself takes.
type unsynced struct{ journal.Disk }

type unsyncedFile struct{ journal.File }

func (unsyncedFile) Sync() error { return nil }

func (u unsynced) Append(name string) (journal.File, error) {
	f, err := u.Disk.Append(name)
	if err != nil {
		return nil, err
	}
	return unsyncedFile{f}, nil
}

// lines are those of a call of any length: measuring, notes, sums, findings.
func lines(n int) []string {
	out := []string{"fault clicks and does not cool", "unit refrigerator", "plate volts 115, hz 60, amps 1.2, lra 12, hp 1/6, gas R-600a",
		"meter ohm 0.9% 2", "saw clicks", "safe"}
	forms := []func(i int) string{
		func(i int) string { return fmt.Sprintf("ohm A B %.2f", 3.4+float64(i%7)/100) },
		func(i int) string { return fmt.Sprintf("ohm B C %.2f", 2.5+float64(i%5)/100) },
		func(i int) string { return fmt.Sprintf("ohm A C %.2f", 5.9+float64(i%9)/100) },
		func(i int) string { return fmt.Sprintf("volt line %.1f", 117+float64(i%20)/10) },
		func(i int) string { return fmt.Sprintf("note reading %d taken with the door shut", i) },
		func(i int) string { return fmt.Sprintf("amp comp %.2f run", 1.1+float64(i%9)/100) },
		func(int) string { return "120V / ohm(A, B)" },
		func(i int) string { return fmt.Sprintf("mfd C1 %.1f", 11+float64(i%20)/10) },
		func(int) string { return "saw cond-fan runs" },
		func(i int) string { return fmt.Sprintf("watt comp %d", 100+i%30) },
	}
	for i := 0; len(out) < n; i++ {
		out = append(out, forms[i%len(forms)](i))
	}
	return out
}

// replies measures a line from Enter to its reply with 1,000 entries in the
// call, against a bare append and sync of as many bytes.
func replies(dir, _, _ string) ([]figure, error) {
	own, err := timeReplies(filepath.Join(dir, "a.md"), unsynced{})
	if err != nil {
		return nil, err
	}
	synced, err := timeReplies(filepath.Join(dir, "b.md"), journal.Disk{})
	if err != nil {
		return nil, err
	}
	f, err := os.Create(filepath.Join(dir, "bare"))
	if err != nil {
		return nil, err
	}
	f.Close()
	bare, err := (journal.Disk{}).Append(f.Name())
	if err != nil {
		return nil, err
	}
	defer bare.Close()
	block := make([]byte, 200)
	var base []float64
	for range len(synced) {
		began := time.Now()
		if _, err := bare.Write(block); err != nil {
			return nil, err
		}
		if err := bare.Sync(); err != nil {
			return nil, err
		}
		base = append(base, float64(time.Since(began).Microseconds())/1000)
	}
	return []figure{
		atMost("Enter to reply without the sync, 1,000 entries, 99 of 100", 1, quantile(own, 0.99), " ms"),
		{"Enter to reply with the sync, against a bare append and sync", "-", fmt.Sprintf("%.3g times", median(synced)/median(base)), true},
	}, nil
}

func timeReplies(name string, fs journal.FS) ([]float64, error) {
	n, err := notebook.Create(notebook.Host{FS: fs, Now: time.Now}, name)
	if err != nil {
		return nil, err
	}
	defer n.Close()
	var took []float64
	for i, l := range lines(1400) {
		began := time.Now()
		if _, err := n.Do(l); err != nil && !errors.Is(err, call.ErrBlank) {
			return nil, fmt.Errorf("%s: %w", l, err)
		}
		if i >= 1000 {
			took = append(took, float64(time.Since(began).Microseconds())/1000)
		}
	}
	return took, nil
}

// replays measures checking, opening and closing a call of 10,000 entries.
func replays(dir, _, _ string) ([]figure, error) {
	const entries = 10000
	name := filepath.Join(dir, "long.md")
	h := notebook.Host{FS: unsynced{}, Now: time.Now}
	n, err := notebook.Create(h, name)
	if err != nil {
		return nil, err
	}
	for _, l := range lines(entries) {
		if _, err := n.Do(l); err != nil {
			return nil, err
		}
	}
	if err := n.Close(); err != nil {
		return nil, err
	}
	content, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	var check, open, closing []float64
	for range 5 {
		began := time.Now()
		r, err := notebook.Check(content)
		if err != nil || len(r.Faults) > 0 {
			return nil, fmt.Errorf("the long call does not check: %v %v", err, r.Faults)
		}
		check = append(check, float64(time.Since(began).Microseconds())/entries)
		began = time.Now()
		n, err := notebook.Open(notebook.Host{FS: journal.Disk{}, Now: time.Now}, name)
		if err != nil {
			return nil, err
		}
		open = append(open, float64(time.Since(began).Milliseconds()))
		if _, err := n.Do("note one more"); err != nil {
			return nil, err
		}
		began = time.Now()
		if err := n.Close(); err != nil {
			return nil, err
		}
		closing = append(closing, float64(time.Since(began).Milliseconds()))
	}
	return []figure{
		atMost("full replay check, 10,000 entries", 25, median(check), " µs an entry"),
		atMost("opening a notebook of 10,000 entries", 300, median(open), " ms"),
		atMost("closing it", 500, median(closing), " ms"),
	}, nil
}

// fleets compares a digest of 10,000 closed notebooks with sha256sum over
// the same files on the same processors, and its cost with fewer files.
func fleets(dir, bin, _ string) ([]figure, error) {
	big, small := filepath.Join(dir, "big"), filepath.Join(dir, "small")
	for _, d := range []struct {
		dir string
		n   int
	}{{big, 10000}, {small, 1000}} {
		if err := os.Mkdir(d.dir, 0o700); err != nil {
			return nil, err
		}
		if _, err := sample.Write(d.dir, 1, d.n); err != nil {
			return nil, err
		}
	}
	var ours, theirs, few []float64
	memory := 0.0
	for range 5 {
		t, state, err := wall(exec.Command(bin, "digest", "--as", "jsonl", big))
		if err != nil {
			return nil, err
		}
		ours, memory = append(ours, t), max(memory, resident(state))
		t, _, err = wall(exec.Command("sh", "-c", "find "+big+" -name '*.md' -print0 | xargs -0 -n 500 -P $(nproc) sha256sum"))
		if err != nil {
			return nil, err
		}
		theirs = append(theirs, t)
		t, _, err = wall(exec.Command(bin, "digest", "--as", "jsonl", small))
		if err != nil {
			return nil, err
		}
		few = append(few, t)
	}
	return []figure{
		atMost("digest of 10,000 closed notebooks, against sha256sum", 2, median(ours)/median(theirs), " times"),
		atMost("its memory", 150, memory, " MB"),
		{"cost of a notebook at 10,000, against 1,000", "flat", fmt.Sprintf("%.2g times", median(ours)/median(few)/10), median(ours)/median(few)/10 <= 1.2},
	}, nil
}

func wall(c *exec.Cmd) (float64, *os.ProcessState, error) {
	began := time.Now()
	err := c.Run()
	return float64(time.Since(began).Microseconds()) / 1000, c.ProcessState, err
}
