package fleet

import (
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"testing"
	"time"

	"ohmcall/notebook/fleet/sample"
)

// childDir makes the test binary digest a folder and say what it cost, so
// that a process of its own is measured, start included.
const childDir = "OHMCALL_FLEET_TEST_DIGEST"

func TestMain(m *testing.M) {
	if dir := os.Getenv(childDir); dir != "" {
		d := NewDigest(Scan([]string{dir}, Options{}), Filter{})
		json.NewEncoder(os.Stdout).Encode(d.Totals)
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// cost is what a process took, children included.
type cost struct{ wall, cpu time.Duration }

func run(t testing.TB, cmd *exec.Cmd) ([]byte, cost) {
	t.Helper()
	cmd.Stderr = os.Stderr
	start := time.Now()
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	return out, cost{time.Since(start), cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()}
}

// digestProcess digests a folder in a process of its own.
func digestProcess(t testing.TB, dir string) (c cost, peakMB float64, totals Totals) {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(self)
	cmd.Env = append(os.Environ(), childDir+"="+dir)
	out, c := run(t, cmd)
	if err := json.Unmarshal(out, &totals); err != nil {
		t.Fatal(err)
	}
	return c, peakMemory(cmd.ProcessState), totals
}

// sha256sum runs coreutils' sha256sum over a folder's files, one process a
// processor, each over its share of them.
func sha256sum(t testing.TB, dir string, files int) cost {
	t.Helper()
	cores := runtime.GOMAXPROCS(0)
	share := min((files+cores-1)/cores, 5000)
	cmd := exec.Command("sh", "-c", fmt.Sprintf("find . -name '*.md' -print0 | xargs -0 -n %d -P %d sha256sum >/dev/null", share, cores))
	cmd.Dir = dir
	_, c := run(t, cmd)
	return c
}

// BenchmarkDigest holds the digest of closed notebooks against sha256sum
// over the same files on as many processors, each in processes of its own,
// turn by turn. The bounds: at most 2 times its wall time and 150 MB for
// 10,000, and the same cost a notebook from 1,000 to 100,000.
func BenchmarkDigest(b *testing.B) {
	for _, n := range []int{1000, 10_000, 100_000} {
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			dir := b.TempDir()
			size, err := sample.Write(dir, 1, n)
			if err != nil {
				b.Fatal(err)
			}
			sha256sum(b, dir, n) // into the page cache
			var wall, cpu, each []float64
			peak := 0.0
			for b.Loop() {
				ours, mb, totals := digestProcess(b, dir)
				if totals.Calls != n {
					b.Fatalf("%d calls of %d", totals.Calls, n)
				}
				theirs := sha256sum(b, dir, n)
				peak = max(peak, mb)
				wall = append(wall, float64(ours.wall)/float64(theirs.wall))
				cpu = append(cpu, float64(ours.cpu)/float64(theirs.cpu))
				each = append(each, float64(ours.cpu.Microseconds())/float64(n))
			}
			b.ReportMetric(median(wall), "wall-ratio")
			b.ReportMetric(median(cpu), "cpu-ratio")
			b.ReportMetric(median(each), "cpu-µs/notebook")
			b.ReportMetric(peak, "peak-MB")
			b.ReportMetric(float64(size)/float64(n), "B/notebook")
		})
	}
}

func BenchmarkLearn(b *testing.B) {
	dir := b.TempDir()
	const n = 5000
	if _, err := sample.Write(dir, 1, n); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		k, err := Learn(b.Context(), dir)
		if err != nil || k.Calls != n {
			b.Fatal(k.Calls, err)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N)/n, "µs/notebook")
}

func BenchmarkExport(b *testing.B) {
	dir := b.TempDir()
	const n = 500
	if _, err := sample.Write(dir, 1, n); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		items := Scan([]string{dir}, Options{Replay: sampleReplay, Records: true})
		if _, err := Export(items, Stream(io.Discard), Tables(true)); err != nil {
			b.Fatal(err)
		}
		out := filepath.Join(b.TempDir(), "out")
		if _, err := Export(items, Folder(out, CSV, ByDate), Tables(true)); err != nil {
			b.Fatal(err)
		}
	}
}
