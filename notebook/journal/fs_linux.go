package journal

import (
	"errors"
	"os"
	"path/filepath"

	"golang.org/x/sys/unix"

	"ohmcall/calc/failpoint"
)

// syncData uses fdatasync: the size is metadata that it must write, the
// times are not. The raw call does not retry after a signal, so this does.
func syncData(f *os.File) error {
	for {
		err := unix.Fdatasync(int(f.Fd()))
		switch err {
		case nil:
			return nil
		case unix.EINTR:
			if failpoint.On(failpoint.NotRepeated) {
				return err
			}
		default:
			return &os.PathError{Op: "fdatasync", Path: f.Name(), Err: err}
		}
	}
}

// SyncDir implements FS.
func (Disk) SyncDir(name string) error {
	d, err := os.Open(filepath.Dir(name))
	if err != nil {
		return err
	}
	defer d.Close()
	return dirSynced(d.Sync())
}

// dirSynced passes over a file system that knows no syncing of directories:
// there is nothing more that could be asked of it.
func dirSynced(err error) error {
	if errors.Is(err, unix.EINVAL) || errors.Is(err, unix.ENOTSUP) {
		return nil
	}
	return err
}
