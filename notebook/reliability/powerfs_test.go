//go:build linux

package reliability

import (
	"io"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"slices"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// block is what a disk writes at once, in bytes.
const block = 512

// powerFS is a file system in memory that knows, beside what programs see,
// what a disk may hold after a loss of power: files and names have a durable
// image and the changes since their last sync.
type powerFS struct {
	names   map[string]*inode // as programs see them
	durable map[string]*inode // after the last sync of the directory
	pending []rename          // changes of names since then
	// each is called after every step that changes anything.
	each func()
}

// rename is a change of names, whole or not at all: a name gets an inode
// (nil removes it) and another may go.
type rename struct {
	name string
	to   *inode
	gone string
}

type inode struct {
	data    []byte
	durable []byte
	pending []write
	mode    os.FileMode
}

type write struct {
	at   int
	data []byte // nil cuts the file at at
}

func newPowerFS(files map[string][]byte) *powerFS {
	p := &powerFS{names: map[string]*inode{}, durable: map[string]*inode{}, each: func() {}}
	for name, b := range files {
		i := &inode{data: slices.Clone(b), durable: slices.Clone(b), mode: 0o600}
		p.names[name], p.durable[name] = i, i
	}
	return p
}

// host is a notebook's machine on this file system, with a clock that goes.
func (p *powerFS) host() notebook.Host {
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	return notebook.Host{FS: p, Now: func() time.Time { at = at.Add(7 * time.Second); return at }}
}

// now is what programs see under a name.
func (p *powerFS) now(name string) []byte {
	if i := p.names[name]; i != nil {
		return slices.Clone(i.data)
	}
	return nil
}

// after is one state in which the disk may be found after a loss of power.
// Each unsynced change of a name is there or not; of each unsynced write any
// blocks are there, the others read as zeros or as before, and the file may
// have any of the lengths it had.
func (p *powerFS) after(r *rand.Rand) map[string][]byte {
	names := maps.Clone(p.durable)
	for _, c := range p.pending {
		if r.IntN(2) == 0 {
			continue
		}
		if c.to == nil {
			delete(names, c.name)
			continue
		}
		names[c.name] = c.to
		if c.gone != "" {
			delete(names, c.gone)
		}
	}
	out := map[string][]byte{}
	for name, i := range names {
		out[name] = i.after(r)
	}
	return out
}

func (i *inode) after(r *rand.Rand) []byte {
	b := slices.Clone(i.durable)
	keep := len(i.pending)
	how := r.IntN(4)
	if how == 0 {
		keep = r.IntN(keep + 1) // in order, the last torn
	}
	for k, w := range i.pending[:keep] {
		if w.data == nil {
			if how == 0 || r.IntN(2) == 0 {
				b = b[:min(w.at, len(b))]
			}
			continue
		}
		end := w.at + len(w.data)
		if how == 0 && k == keep-1 {
			end = w.at + r.IntN(len(w.data)+1)
		}
		if how == 1 && r.IntN(2) == 0 {
			continue // this write is dropped, later ones are not
		}
		if end > len(b) {
			b = append(b, make([]byte, end-len(b))...)
		}
		for from := w.at; from < end; {
			to := min((from/block+1)*block, end)
			if how < 2 || r.IntN(2) == 0 {
				copy(b[from:to], w.data[from-w.at:])
			}
			from = to
		}
	}
	return b
}

func (p *powerFS) step() { p.each() }

func (p *powerFS) ReadFile(name string) ([]byte, error) {
	i := p.names[name]
	if i == nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	}
	return slices.Clone(i.data), nil
}

func (p *powerFS) Append(name string) (journal.File, error) {
	i := p.names[name]
	if i == nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	}
	return &powerFile{p, name, i}, nil
}

func (p *powerFS) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	i := &inode{mode: mode}
	temp := "." + name + ".tmp"
	p.names[temp] = i
	p.pending = append(p.pending, rename{name: temp, to: i})
	p.step()
	return &powerFile{p, temp, i}, nil
}

func (p *powerFS) Rename(from, to string) error {
	i := p.names[from]
	if i == nil {
		return &fs.PathError{Op: "rename", Path: from, Err: fs.ErrNotExist}
	}
	p.names[to] = i
	delete(p.names, from)
	p.pending = append(p.pending, rename{name: to, to: i, gone: from})
	p.step()
	return nil
}

func (p *powerFS) Remove(name string) error {
	delete(p.names, name)
	p.pending = append(p.pending, rename{name: name})
	p.step()
	return nil
}

func (p *powerFS) SyncDir(string) error {
	p.durable, p.pending = maps.Clone(p.names), nil
	p.step()
	return nil
}

func (p *powerFS) Lock(string) (io.Closer, error) { return io.NopCloser(nil), nil }

func (p *powerFS) Stat(name string) (os.FileInfo, error) {
	i := p.names[name]
	if i == nil {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrNotExist}
	}
	return powerInfo{name, i}, nil
}

func (p *powerFS) SameFile(a, b os.FileInfo) bool { return a.Sys() == b.Sys() }

type powerInfo struct {
	name string
	i    *inode
}

func (f powerInfo) Name() string       { return f.name }
func (f powerInfo) Size() int64        { return int64(len(f.i.data)) }
func (f powerInfo) Mode() os.FileMode  { return f.i.mode }
func (f powerInfo) ModTime() time.Time { return time.Time{} }
func (f powerInfo) IsDir() bool        { return false }
func (f powerInfo) Sys() any           { return f.i }

type powerFile struct {
	p    *powerFS
	name string
	i    *inode
}

func (f *powerFile) Write(b []byte) (int, error) {
	f.i.pending = append(f.i.pending, write{len(f.i.data), slices.Clone(b)})
	f.i.data = append(f.i.data, b...)
	f.p.step()
	return len(b), nil
}

func (f *powerFile) Sync() error {
	f.i.durable, f.i.pending = slices.Clone(f.i.data), nil
	f.p.step()
	return nil
}

func (f *powerFile) Truncate(size int64) error {
	f.i.pending = append(f.i.pending, write{at: int(size)})
	f.i.data = f.i.data[:size]
	f.p.step()
	return nil
}

func (f *powerFile) Name() string               { return f.name }
func (f *powerFile) Stat() (os.FileInfo, error) { return powerInfo{f.name, f.i}, nil }
func (f *powerFile) Close() error               { return nil }
