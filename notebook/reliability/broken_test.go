//go:build linux

package reliability

import (
	"io"
	"os"
	"syscall"

	"golang.org/x/sys/unix"

	"ohmcall/notebook/journal"
)

type unixRusage = syscall.Rusage

// brokenFS is the disk with one fault put into what the journal does with it.
type brokenFS struct {
	journal.Disk
	control string
}

func (b brokenFS) ReadFile(name string) ([]byte, error) {
	if b.control == "whatever is there is read" {
		f, err := os.Open(name)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		return io.ReadAll(f)
	}
	return b.Disk.ReadFile(name)
}

func (b brokenFS) Append(name string) (journal.File, error) {
	f, err := b.Disk.Append(name)
	return b.wrap(f), err
}

func (b brokenFS) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if b.control == "temporary files are made with mode 0644" {
		f, err := os.OpenFile(name+".new", os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o644)
		if err != nil {
			return nil, err
		}
		return plainFile{f}, nil
	}
	f, err := b.Disk.CreateTemp(name, mode)
	return b.wrap(f), err
}

func (b brokenFS) Lock(name string) (io.Closer, error) {
	if b.control != "the lock is on the notebook itself" {
		return b.Disk.Lock(name)
	}
	f, err := os.OpenFile(name, os.O_RDWR, 0)
	if err != nil {
		return b.Disk.Lock(name)
	}
	if err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB); err != nil {
		f.Close()
		return nil, &journal.LockedError{Name: name}
	}
	return f, nil
}

func (b brokenFS) wrap(f journal.File) journal.File {
	if f == nil {
		return nil
	}
	return brokenFile{f, b.control}
}

type plainFile struct{ *os.File }

type brokenFile struct {
	journal.File
	control string
}

func (f brokenFile) Write(p []byte) (int, error) {
	n, err := f.File.Write(p)
	if f.control == "errors of write are swallowed" {
		return len(p), nil
	}
	return n, err
}

func (f brokenFile) Sync() error {
	if f.control == "interrupted calls are not repeated" {
		fd, err := os.OpenFile(f.Name(), os.O_WRONLY, 0)
		if err != nil {
			return err
		}
		defer fd.Close()
		return unix.Fdatasync(int(fd.Fd()))
	}
	err := f.File.Sync()
	if f.control == "errors of sync are swallowed" {
		return nil
	}
	return err
}

func (f brokenFile) Truncate(size int64) error {
	if f.control == "what was half written is not cut off" {
		return nil
	}
	return f.File.Truncate(size)
}
