// Package journal keeps one file safe on disk: appended to entry by entry,
// and now and then replaced whole. It moves bytes and knows nothing of what
// they mean.
//
// The one assumption about the machine: a sync that returns without error
// has reached the disk, and a rename within a directory is atomic.
package journal

import (
	"errors"
	"fmt"
	"os"
)

var (
	errTooLarge   = fmt.Errorf("larger than the %d MB that are read", MaxFile>>20)
	errNotRegular = errors.New("not a regular file")
	errDirectory  = errors.New("is a directory")
)

// ErrDead is returned once a sync or a write has failed: what the system
// wrote since is unknown, so nothing more is acknowledged on this file.
var ErrDead = errors.New("the file can no longer be trusted after a failed write")

// Journal is one file held for writing. It is not safe for concurrent use.
type Journal struct {
	fs   FS
	name string
	file File
	lock *lock
	size int64
	dead error
}

// Read reads a file without holding it.
func Read(fs FS, name string) ([]byte, error) { return fs.ReadFile(name) }

// Open locks the existing file against other writers and reads it.
func Open(fs FS, name string) (*Journal, []byte, error) {
	l, err := acquire(name)
	if err != nil {
		return nil, nil, err
	}
	content, err := fs.ReadFile(name)
	if err != nil {
		l.release()
		return nil, nil, err
	}
	f, err := fs.Append(name)
	if err != nil {
		l.release()
		return nil, nil, err
	}
	return &Journal{fs: fs, name: name, file: f, lock: l, size: int64(len(content))}, content, nil
}

// Create makes a new file with the content, mode 0600; it fails when a file
// of that name exists.
func Create(fs FS, name string, content []byte) (*Journal, error) {
	l, err := acquire(name)
	if err != nil {
		return nil, err
	}
	if _, err := fs.Mode(name); err == nil {
		l.release()
		return nil, &os.PathError{Op: "create", Path: name, Err: os.ErrExist}
	}
	j := &Journal{fs: fs, name: name, lock: l}
	if err := j.replace(content, 0o600); err != nil {
		l.release()
		return nil, err
	}
	return j, nil
}

// Name is the file's name.
func (j *Journal) Name() string { return j.name }

// Append adds b at the end and returns when it is on disk. After an error
// nothing of b counts: a partial write is cut off again where that is still
// possible, and when the state of the file is unknown every later call
// returns ErrDead.
func (j *Journal) Append(b []byte) error {
	if j.dead != nil {
		return fmt.Errorf("%w: %w", ErrDead, j.dead)
	}
	if _, err := j.file.Write(b); err != nil {
		if cut := j.file.Truncate(j.size); cut != nil {
			j.dead = err
		}
		return err
	}
	if err := j.file.Sync(); err != nil {
		// The kernel may have marked the lost pages clean: a second sync
		// would succeed and lie. Never retry on this descriptor.
		j.dead = err
		return err
	}
	j.size += int64(len(b))
	return nil
}

// Rewrite replaces the whole content: the old or the new content is on disk
// at every moment, and the file's mode is kept.
func (j *Journal) Rewrite(content []byte) error {
	if j.dead != nil {
		return fmt.Errorf("%w: %w", ErrDead, j.dead)
	}
	mode, err := j.fs.Mode(j.name)
	if err != nil {
		return err
	}
	return j.replace(content, mode)
}

func (j *Journal) replace(content []byte, mode os.FileMode) error {
	temp, err := j.fs.CreateTemp(j.name, mode)
	if err != nil {
		return err
	}
	fail := func(err error) error {
		temp.Close()
		j.fs.Remove(temp.Name())
		return err
	}
	if _, err := temp.Write(content); err != nil {
		return fail(err)
	}
	if err := temp.Sync(); err != nil {
		return fail(err)
	}
	if err := temp.Close(); err != nil {
		return fail(err)
	}
	if j.file != nil {
		// Some systems cannot replace a file that is open.
		j.file.Close()
		j.file = nil
	}
	err = j.fs.Rename(temp.Name(), j.name)
	if err != nil {
		j.fs.Remove(temp.Name())
	} else {
		j.size = int64(len(content))
		if err = j.fs.SyncDir(j.name); err != nil {
			j.dead = err
		}
	}
	f, openErr := j.fs.Append(j.name)
	if openErr != nil {
		j.dead = openErr
		return errors.Join(err, openErr)
	}
	j.file = f
	return err
}

// Close lets go of the file.
func (j *Journal) Close() error {
	var err error
	if j.file != nil {
		err = j.file.Close()
		j.file = nil
	}
	j.dead = os.ErrClosed
	j.lock.release()
	return err
}
