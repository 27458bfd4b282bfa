// Command speed measures the figures that ohmcall promises, as ratios within
// one run where a bare figure would only tell of the machine, and prints them
// as one table. Run it on an idle machine: go run ./cmd/speed
package main

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
)

// figure is one row of the table.
type figure struct {
	what, bound, measured string
	met                   bool
}

func main() {
	if err := report(); err != nil {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

func report() error {
	dir, err := os.MkdirTemp("", "ohmcall-speed")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	bin := filepath.Join(dir, "ohmcall")
	hello := filepath.Join(dir, "hello")
	if err := build(dir, bin, hello); err != nil {
		return err
	}
	var all []figure
	for _, part := range []func(dir, bin, hello string) ([]figure, error){start, replies, replays, fleets, inProcess} {
		rows, err := part(dir, bin, hello)
		if err != nil {
			return err
		}
		all = append(all, rows...)
	}
	fmt.Printf("%s/%s, %d processors, %s\n\n", runtime.GOOS, runtime.GOARCH, runtime.NumCPU(), runtime.Version())
	widths := [3]int{}
	rows := [][3]string{{"figure", "bound", "measured"}}
	for _, f := range all {
		m := f.measured
		if !f.met {
			m += "  MISSED"
		}
		rows = append(rows, [3]string{f.what, f.bound, m})
	}
	for _, r := range rows {
		for i, c := range r {
			widths[i] = max(widths[i], len([]rune(c)))
		}
	}
	for i, r := range rows {
		fmt.Println("| " + pad(r[0], widths[0]) + " | " + pad(r[1], widths[1]) + " | " + pad(r[2], widths[2]) + " |")
		if i == 0 {
			fmt.Println("|" + strings.Repeat("-", widths[0]+2) + "|" + strings.Repeat("-", widths[1]+2) + "|" + strings.Repeat("-", widths[2]+2) + "|")
		}
	}
	return nil
}

func pad(s string, n int) string { return s + strings.Repeat(" ", n-len([]rune(s))) }

// atMost makes a figure that must not exceed its bound.
func atMost(what string, bound, measured float64, unit string) figure {
	return figure{what, fmt.Sprintf("at most %.4g%s", bound, unit), fmt.Sprintf("%.3g%s", measured, unit), measured <= bound}
}
