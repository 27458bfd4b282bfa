//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"ohmcall/calc/failpoint"
)

// A control is the same row of the same tests, built with the tag `faults` and
// run with one guard of the program broken; see package failpoint.
const (
	faultVar   = "OHMCALL_FAULT"       // the guard that is broken
	programVar = "RELIABILITY_PROGRAM" // the program built that way
	redMark    = "RED: "               // before what a broken run has noticed
)

// built is the folder of what was built for this run.
var built string

func command(name string, args ...string) error {
	if out, err := exec.Command(name, args...).CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, out)
	}
	return nil
}

// broken builds the program and these tests with guards that can be broken.
var broken = sync.OnceValue(func() error {
	if err := command("go", "build", "-tags", "faults", "-o", filepath.Join(built, "broken"), "ohmcall/cmd/ohmcall"); err != nil {
		return err
	}
	return command("go", "test", "-tags", "faults", "-c", "-o", filepath.Join(built, "broken.test"), "ohmcall/notebook/reliability")
})

// red runs a row with a guard broken and gives what it noticed first; "" says
// that it stayed green, which proves the row worthless.
func red(t *testing.T, id string, p failpoint.Point) string {
	if err := broken(); err != nil {
		t.Fatal(err)
	}
	c := exec.Command(filepath.Join(built, "broken.test"), "-test.run", "^TestReliability$/^"+id+"$", "-test.v", "-test.timeout", "10m")
	c.Env = append(os.Environ(), faultVar+"="+string(p), programVar+"="+filepath.Join(built, "broken"))
	out, err := c.CombinedOutput()
	for line := range strings.Lines(string(out)) {
		if _, saw, ok := strings.Cut(line, redMark); ok {
			return strings.TrimSpace(saw)
		}
	}
	if err != nil {
		t.Fatalf("control %q ended with %v and saw nothing:\n%.2000s", p, err, out)
	}
	return ""
}

// TestNoFaultsInProduction holds the ordinary program to having no guard that
// can be broken, and the broken build to having them.
func TestNoFaultsInProduction(t *testing.T) {
	if err := broken(); err != nil {
		t.Fatal(err)
	}
	for file, want := range map[string]bool{program: false, filepath.Join(built, "broken"): true} {
		content, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, text := range []string{faultVar, string(failpoint.NotCleaned), string(failpoint.AckFirst)} {
			if got := bytes.Contains(content, []byte(text)); got != want {
				t.Errorf("%s holds %q: %v", filepath.Base(file), text, got)
			}
		}
	}
}
