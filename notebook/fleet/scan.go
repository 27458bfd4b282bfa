package fleet

import (
	"crypto/sha256"
	"encoding/hex"
	"iter"
	"path"
	"runtime"
	"sync"

	"ohmcall/notebook/script"
)

// batch is how many files a worker takes at a time; one when records are
// kept, which may be large.
const batch = 16

// Scan goes through files and folder trees and yields one item a file,
// sorted by path. It reads several files at once; what waits to be yielded
// is bounded.
//
//go:noinline
func Scan(paths []string, o Options) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		files := find(paths, o.Renamed)
		names := naming{byID: map[string]bool{}}
		done := 0
		for items := range inOrder(files, &o) {
			for i := range items {
				names.name(&items[i])
				if !yield(items[i]) {
					return
				}
				if done++; o.Progress != nil {
					o.Progress(done, len(files))
				}
			}
		}
	}
}

// job is a run of files and the place for what they turn out to be.
type job struct {
	files []found
	out   chan []Item
}

// inOrder reads files on several workers and yields the batches in order.
func inOrder(files []found, o *Options) iter.Seq[[]Item] {
	size, workers := batch, o.Workers
	if o.Records {
		size = 1
	}
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	return func(yield func([]Item) bool) {
		jobs := make(chan job)
		due := make(chan job, 2*workers)
		stop := make(chan struct{})
		var running sync.WaitGroup
		var shared large
		running.Go(func() {
			defer close(due)
			defer close(jobs)
			for len(files) > 0 {
				n := min(size, len(files))
				j := job{files[:n], make(chan []Item, 1)}
				files = files[n:]
				select {
				case due <- j:
				case <-stop:
					return
				}
				select {
				case jobs <- j:
				case <-stop:
					return
				}
			}
		})
		for range workers {
			running.Go(func() {
				w := newWorker(o, &shared)
				for j := range jobs {
					items := make([]Item, len(j.files))
					for i, f := range j.files {
						items[i] = w.take(f)
					}
					j.out <- items
				}
			})
		}
		defer running.Wait()
		defer close(stop)
		for j := range due {
			if !yield(<-j.out) {
				return
			}
		}
	}
}

// naming gives each call its name.
type naming struct {
	byID map[string]bool
}

// name sets the ID: the SHA-256 of the log's first line and the file's name
// without its folder, so that it stays while the call grows, is closed, or
// is moved to another folder. When two calls would have the same, the later
// in path order takes its folder in.
func (n *naming) name(it *Item) {
	it.Reason = script.Clean(it.Reason)
	if !it.State.Counts() {
		return
	}
	it.ID = callID(it.first, path.Base(it.Rel))
	for extra := it.Rel; n.byID[it.ID]; extra += "+" {
		it.ID = callID(it.first, extra)
	}
	n.byID[it.ID] = true
	it.first = ""
}

func callID(first, name string) string {
	sum := sha256.Sum256([]byte(first + "\n" + name))
	return hex.EncodeToString(sum[:12])
}
