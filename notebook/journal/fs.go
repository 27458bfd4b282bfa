package journal

import (
	"io"
	"os"
	"path/filepath"

	"ohmcall/calc/failpoint"
)

// FS is what the journal needs of a file system, so that tests can lose
// power between any two steps.
type FS interface {
	// ReadFile reads a whole regular file.
	ReadFile(name string) ([]byte, error)
	// Append opens an existing file for writing at its end.
	Append(name string) (File, error)
	// Lock keeps other writers from name until it is closed. It does not
	// wait: a *LockedError says that another holds it.
	Lock(name string) (io.Closer, error)
	// CreateTemp makes a new file beside name, mode as given.
	CreateTemp(name string, mode os.FileMode) (File, error)
	// Rename puts oldname in the place of newname.
	Rename(oldname, newname string) error
	// Remove deletes a file.
	Remove(name string) error
	// SyncDir makes the directory entries beside name durable.
	SyncDir(name string) error
	// Stat describes what bears the name; it follows no link.
	Stat(name string) (os.FileInfo, error)
	// SameFile reports whether two descriptions are of one file.
	SameFile(a, b os.FileInfo) bool
}

// File is an open file of an FS.
type File interface {
	io.Writer
	Name() string
	Stat() (os.FileInfo, error)
	Sync() error
	Truncate(size int64) error
	Close() error
}

// Disk is the real file system.
type Disk struct{}

// MaxFile is the largest notebook that is read, in bytes.
const MaxFile = 64 << 20

// ReadFile implements FS. It refuses what is not a regular file and what is
// larger than MaxFile before reading any of it.
func (Disk) ReadFile(name string) ([]byte, error) {
	info, err := os.Stat(name)
	if err != nil {
		return nil, err
	}
	if err := readable(name, info); err != nil {
		return nil, err
	}
	f, err := os.OpenFile(name, os.O_RDONLY|noWait, 0)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	// The file may have been exchanged between the two looks at it.
	if info, err = f.Stat(); err != nil {
		return nil, err
	}
	if err := readable(name, info); err != nil {
		return nil, err
	}
	buf := make([]byte, 0, info.Size()+1)
	for {
		n, err := f.Read(buf[len(buf):cap(buf)])
		buf = buf[:len(buf)+n]
		if err == io.EOF {
			return buf, nil
		}
		if err != nil {
			return nil, err
		}
		if len(buf) > MaxFile && !failpoint.On(failpoint.AnythingRead) {
			return nil, &os.PathError{Op: "read", Path: name, Err: errTooLarge}
		}
		if len(buf) == cap(buf) {
			buf = append(buf, 0)[:len(buf)]
		}
	}
}

func readable(name string, info os.FileInfo) error {
	switch {
	case failpoint.On(failpoint.AnythingRead):
		return nil
	case info.IsDir():
		return &os.PathError{Op: "read", Path: name, Err: errDirectory}
	case !info.Mode().IsRegular():
		return &os.PathError{Op: "read", Path: name, Err: errNotRegular}
	case info.Size() > MaxFile:
		return &os.PathError{Op: "read", Path: name, Err: errTooLarge}
	}
	return nil
}

// Append implements FS.
func (Disk) Append(name string) (File, error) {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_APPEND, 0)
	if err != nil {
		return nil, err
	}
	return diskFile{f}, nil
}

// Lock implements FS.
func (Disk) Lock(name string) (io.Closer, error) {
	l, err := acquire(name)
	if err != nil {
		return nil, err
	}
	return l, nil
}

// CreateTemp implements FS. The file must not exist and no link is followed.
// It goes to the group of the file that it will replace, where that may be.
func (Disk) CreateTemp(name string, mode os.FileMode) (File, error) {
	temp := beside(name, ".tmp")
	f, err := os.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if os.IsExist(err) {
		// Left by a process that was killed; the caller holds the lock.
		if err := os.Remove(temp); err != nil {
			return nil, err
		}
		f, err = os.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	}
	if err != nil {
		return nil, err
	}
	if !keepGroup(f, name) {
		// What was meant for one group must not become another's.
		mode &^= 0o070
	}
	if failpoint.On(failpoint.OpenMode) {
		mode = 0o644
	}
	if mode != 0o600 {
		if err := f.Chmod(mode); err != nil {
			f.Close()
			os.Remove(temp)
			return nil, err
		}
	}
	return diskFile{f}, nil
}

// Rename implements FS.
func (Disk) Rename(oldname, newname string) error { return os.Rename(oldname, newname) }

// Remove implements FS.
func (Disk) Remove(name string) error { return os.Remove(name) }

// Stat implements FS.
func (Disk) Stat(name string) (os.FileInfo, error) { return os.Lstat(name) }

// SameFile implements FS.
func (Disk) SameFile(a, b os.FileInfo) bool { return os.SameFile(a, b) }

// beside names a hidden file of the journal's own in the folder of name.
func beside(name, suffix string) string {
	return filepath.Join(filepath.Dir(name), "."+filepath.Base(name)+suffix)
}

type diskFile struct{ *os.File }

// Sync makes the file's data durable.
func (f diskFile) Sync() error { return syncData(f.File) }
