//go:build linux

package reliability

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"time"
	_ "time/tzdata" // the zones, wherever the tests run

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
)

// clocks is T10: the wall clock jumps in the middle of a call.
func clocks(w *watch) {
	jumps := []time.Duration{-time.Second, -time.Hour, -24 * time.Hour, -60 * 365 * 24 * time.Hour, time.Hour, 24 * time.Hour,
		365 * 24 * time.Hour, 74 * 365 * 24 * time.Hour}
	bases := []string{"2026-03-08T01:59:50", "2028-02-28T23:59:50", "2026-11-01T01:59:50", "1970-01-01T00:00:00"}
	for _, zone := range []string{"UTC", "Asia/Kathmandu", "America/St_Johns"} {
		loc, err := time.LoadLocation(zone)
		w.must(err)
		for i := range 12 {
			w.count("jumps", 1)
			at, err := time.ParseInLocation("2006-01-02T15:04:05", bases[i%len(bases)], loc)
			w.must(err)
			p := newPowerFS(nil)
			host := p.host()
			host.Now = func() time.Time { at = at.Add(7 * time.Second); return at }
			n, err := notebook.Create(host, "call.md")
			w.must(err)
			typed := lines(8)
			for k, l := range typed {
				if k == 4 {
					at = at.Add(jumps[i%len(jumps)])
				}
				if _, err := n.Do(l); err != nil {
					w.fault("%s, jump %v: %v", zone, jumps[i%len(jumps)], err)
				}
			}
			w.must(n.Close())
			content := p.now("call.md")
			f, err := page.Read(content)
			w.must(err)
			for k, e := range f.Entries {
				if e.N != k+1 || e.Line != typed[k] {
					w.fault("%s, jump %v: entry %d stands at place %d", zone, jumps[i%len(jumps)], e.N, k+1)
				}
			}
			if err := checks(content); err != nil {
				w.fault("%s, jump %v: %v", zone, jumps[i%len(jumps)], err)
			}
			if f.Header.Minutes < 0 {
				w.fault("%s, jump %v: %d minutes", zone, jumps[i%len(jumps)], f.Header.Minutes)
			}
		}
	}
}

// corpus is a set of notebooks: the example and the calls, whole and broken
// off at some of their lines.
func corpus(w *watch) map[string][]byte {
	scripts, err := filepath.Glob("../testdata/calls/*.call")
	w.must(err)
	scripts = append(scripts, "../../examples/no-start.call")
	out := map[string][]byte{}
	for cutAt := 100; cutAt > 0; cutAt -= 9 {
		for _, s := range scripts {
			content, err := os.ReadFile(s)
			w.must(err)
			n := notebook.New(notebook.Host{Now: func() time.Time { return time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC) }})
			typed := notebook.ScriptLines(content)
			for _, l := range typed[:len(typed)*cutAt/100] {
				n.Do(l) // the calls' own tests tell what is refused
			}
			out[fmt.Sprintf("%s-%d", filepath.Base(s), cutAt)] = n.Render()
			if len(out) >= w.due("notebooks") {
				return out
			}
		}
	}
	return out
}

// determinism is T11.
func determinism(w *watch) {
	books := corpus(w)
	dir := w.dir()
	want := map[string]string{}
	for name, b := range books {
		w.must(os.WriteFile(filepath.Join(dir, name), b, 0o600))
		want[name] = sum(b)
	}
	w.count("notebooks", len(books))
	settings := 0
	for _, tz := range []string{"UTC", "Asia/Kathmandu", "America/St_Johns"} {
		for _, lang := range []string{"C", "en_US.UTF-8"} {
			for _, procs := range []string{"1", "2"} {
				if w.red() || !long && (lang == "C") != (procs == "1") {
					continue
				}
				settings++
				c := helperCommand("digest", dir)
				c.Env = append(c.Env, "TZ="+tz, "LANG="+lang, "LC_ALL="+lang, "GOMAXPROCS="+procs)
				out, err := c.Output()
				w.must(err)
				have := map[string]string{}
				w.must(json.Unmarshal(out, &have))
				for name, sum := range want {
					if have[name] != sum {
						w.fault("%s replays otherwise with TZ=%s LANG=%s GOMAXPROCS=%s: %s", name, tz, lang, procs, have[name])
					}
				}
			}
		}
	}
	w.count("settings", settings)
}

func sum(b []byte) string {
	s := sha256.Sum256(b)
	return hex.EncodeToString(s[:])
}

// digestChild replays the notebooks of a folder twice and prints what came
// out.
func digestChild(dir string) int {
	list, err := filepath.Glob(filepath.Join(dir, "*"))
	if err != nil {
		return 1
	}
	out := map[string]string{}
	for _, name := range list {
		b, err := os.ReadFile(name)
		if err != nil {
			return 1
		}
		first, err := replayed(b)
		if err == nil {
			var second []byte
			if second, err = replayed(first); err == nil && !bytes.Equal(first, second) {
				err = fmt.Errorf("a second replay differs")
			}
		}
		if err != nil {
			out[filepath.Base(name)] = err.Error()
			continue
		}
		out[filepath.Base(name)] = sum(first)
	}
	json.NewEncoder(os.Stdout).Encode(out)
	return 0
}

func replayed(content []byte) ([]byte, error) {
	r, err := notebook.Check(content)
	if err != nil {
		return nil, err
	}
	if len(r.Faults) > 0 {
		return nil, fmt.Errorf("%s", r.Faults[0])
	}
	return page.Render(r.Record, nil), nil
}

var _ journal.FS = (*powerFS)(nil)
