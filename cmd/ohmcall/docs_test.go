package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/repl/term"
)

var update = flag.Bool("update", false, "rewrite the outputs in the documents")

// documents are the files whose every console and call block is run.
var documents = []string{"README.md", "DEVELOPERS.md"}

// notRun are commands of the documents that this test does not run, and why.
var notRun = map[string]string{
	"go test ./...": "it is what runs this test",
	"go test ./notebook ./notebook/call ./notebook/fleet ./notebook/sheet ./repl ./cmd/ohmcall -update": "it would rewrite what is tested",
	"go test ./notebook/call -run '^$' -fuzz FuzzApply -fuzztime 10s":                                   ".ci/run fuzzes every target",
	".ci/run":            "it runs this test",
	".ci/long":           "it takes hours",
	"go run ./cmd/speed": "its figures are those of the machine",
}

// elided stands in a document for an output that is too long for it; the
// command is run all the same and must succeed.
const elided = "…\n"

// TestDocuments runs the blocks of the documents and compares their output.
// A block marked console holds `$ ` commands of ohmcall and what they print;
// a block marked call holds `> ` lines typed into one call and the replies.
// Any other block is text.
func TestDocuments(t *testing.T) {
	bin := buildBinary(t)
	for _, doc := range documents {
		t.Run(doc, func(t *testing.T) {
			path := filepath.Join("..", "..", doc)
			content, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			got := runBlocks(t, bin, string(content))
			if got == string(content) {
				return
			}
			if *update {
				if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			t.Errorf("%s says otherwise than the program; go test ./cmd/ohmcall -run TestDocuments -update rewrites it\n%s", doc, firstDifference(string(content), got))
		})
	}
}

func firstDifference(a, b string) string {
	la, lb := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range la {
		if i >= len(lb) || la[i] != lb[i] {
			return fmt.Sprintf("line %d: %s\nprogram: %s", i+1, la[i], strings.Join(lb[min(i, len(lb)):min(i+1, len(lb))], ""))
		}
	}
	return "the program prints more"
}

// buildBinary builds the program once.
func buildBinary(t *testing.T) string {
	t.Helper()
	bin := filepath.Join(t.TempDir(), "ohmcall")
	if out, err := exec.Command("go", "build", "-o", bin, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return bin
}

func runBlocks(t *testing.T, bin, text string) string {
	t.Helper()
	home := t.TempDir()
	work := t.TempDir()
	var out strings.Builder
	lines := strings.SplitAfter(text, "\n")
	talk := notebook.New(notebook.Host{Now: func() time.Time { return time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC) }})
	for i := 0; i < len(lines); i++ {
		out.WriteString(lines[i])
		info := strings.TrimSpace(lines[i])
		if info != "```console" && info != "```call" {
			continue
		}
		for i++; i < len(lines) && !strings.HasPrefix(lines[i], "```"); i++ {
			if cmd, ok := strings.CutPrefix(strings.TrimSuffix(lines[i], "\n"), "$ "); ok && info == "```console" {
				out.WriteString(lines[i])
				if notRun[cmd] != "" {
					continue
				}
				if first, _, _ := strings.Cut(cmd, " "); !present(first) {
					t.Logf("NOT RUN, %s is not on this machine: %s", first, cmd)
					for i+1 < len(lines) && !strings.HasPrefix(lines[i+1], "$ ") && !strings.HasPrefix(lines[i+1], "```") {
						i++
						out.WriteString(lines[i])
					}
					continue
				}
				text := runCommand(t, bin, home, work, cmd)
				if i+1 < len(lines) && lines[i+1] == elided {
					text = elided
				}
				out.WriteString(text)
			}
			if line, ok := strings.CutPrefix(strings.TrimSuffix(lines[i], "\n"), "> "); ok && info == "```call" {
				out.WriteString(lines[i])
				out.WriteString(answer(talk, line))
			}
		}
		out.WriteString(lines[i])
	}
	return out.String()
}

// present reports whether a program can be run here; ohmcall itself and go
// always can.
func present(program string) bool {
	if program == "ohmcall" || program == "go" {
		return true
	}
	_, err := exec.LookPath(program)
	return err == nil
}

// answer is what a terminal of 80 columns shows for a line.
func answer(n *notebook.Notebook, line string) string {
	var b bytes.Buffer
	p := &term.Printer{Out: &b, Err: &b, Width: 80}
	entries, err := n.Do(line)
	for _, e := range entries {
		p.Entry(e)
	}
	if err != nil && err != call.ErrBlank {
		p.Fault(line, err)
	}
	return b.String()
}

// runCommand runs a command line of a document. Only ohmcall itself may be
// run, as `ohmcall …` or `go run ./cmd/ohmcall …`, with plain words, quotes,
// and `printf … | ` before it.
func runCommand(t *testing.T, bin, home, work, cmd string) string {
	t.Helper()
	line := strings.ReplaceAll(cmd, "go run ./cmd/ohmcall", "ohmcall")
	c := exec.Command("bash", "-c", line)
	c.Dir = work
	if err := os.Symlink(mustAbs(t, "../../examples"), filepath.Join(work, "examples")); err != nil && !os.IsExist(err) {
		t.Fatal(err)
	}
	c.Env = []string{"HOME=" + home, "PATH=" + filepath.Dir(bin) + ":" + os.Getenv("PATH"), "TZ=UTC"}
	out, err := c.CombinedOutput()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Fatalf("%s: %v", cmd, err)
	}
	return strings.ReplaceAll(strings.ReplaceAll(string(out), home, "~"), "\r\n", "\n")
}

func mustAbs(t *testing.T, p string) string {
	t.Helper()
	a, err := filepath.Abs(p)
	if err != nil {
		t.Fatal(err)
	}
	return a
}
