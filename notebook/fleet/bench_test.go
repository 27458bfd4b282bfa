package fleet

import (
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
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

// digestProcess digests a folder in a process of its own.
func digestProcess(t testing.TB, dir string) (took time.Duration, peakMB float64, totals Totals) {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(self)
	cmd.Env = append(os.Environ(), childDir+"="+dir)
	cmd.Stderr = os.Stderr
	start := time.Now()
	out, err := cmd.Output()
	took = time.Since(start)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(out, &totals); err != nil {
		t.Fatal(err)
	}
	return took, peakMemory(cmd.ProcessState), totals
}

// sha256sum runs coreutils' sha256sum over a folder's files, one process a
// processor.
func sha256sum(b *testing.B, dir string, processes int) time.Duration {
	b.Helper()
	each := 1 << 20
	if processes > 1 {
		each = 500
	}
	cmd := exec.Command("sh", "-c", fmt.Sprintf("find . -name '*.md' -print0 | xargs -0 -n %d -P %d sha256sum >/dev/null", each, processes))
	cmd.Dir = dir
	start := time.Now()
	if out, err := cmd.CombinedOutput(); err != nil {
		b.Fatalf("%v: %s", err, out)
	}
	return time.Since(start)
}

func median3(f func() time.Duration) time.Duration {
	var l []time.Duration
	for range 5 {
		l = append(l, f())
	}
	slices.Sort(l)
	return l[len(l)/2]
}

// BenchmarkDigest holds the digest of closed notebooks against sha256sum
// over the same files on as many processors, each in processes of its own
// and in the same run. The bounds: at most 2 times its wall time and 150 MB
// for 10,000, and the same cost a notebook from 1,000 to 100,000.
func BenchmarkDigest(b *testing.B) {
	for _, n := range []int{1000, 10_000, 100_000} {
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			dir := b.TempDir()
			size, err := sample.Write(dir, 1, n)
			if err != nil {
				b.Fatal(err)
			}
			cores := runtime.GOMAXPROCS(0)
			sha256sum(b, dir, cores) // into the page cache
			for b.Loop() {
				var peak float64
				ours := median3(func() time.Duration {
					took, mb, totals := digestProcess(b, dir)
					if totals.Calls != n {
						b.Fatalf("%d calls of %d", totals.Calls, n)
					}
					peak = max(peak, mb)
					return took
				})
				theirs := median3(func() time.Duration { return sha256sum(b, dir, cores) })
				single := median3(func() time.Duration { return sha256sum(b, dir, 1) })
				b.ReportMetric(float64(ours)/float64(theirs), "ratio")
				b.ReportMetric(float64(ours)/float64(single), "ratio-to-1-core")
				b.ReportMetric(float64(ours.Microseconds())/float64(n), "µs/notebook")
				b.ReportMetric(peak, "peak-MB")
				b.ReportMetric(float64(size)/float64(n), "B/notebook")
			}
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
