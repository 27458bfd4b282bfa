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
	"io"
	"os"

	"ohmcall/calc/failpoint"
)

var (
	errTooLarge   = fmt.Errorf("larger than the %d MB that are read", MaxFile>>20)
	errNotRegular = errors.New("not a regular file")
	errDirectory  = errors.New("is a directory")
	errNotMade    = errors.New("the file is not made yet")
)

// ErrDead is returned once a sync or a write has failed: what the system
// wrote since is unknown, so nothing more is acknowledged on this file.
var ErrDead = errors.New("the file can no longer be trusted after a failed write")

// Journal is one file held for writing. It is not safe for concurrent use.
type Journal struct {
	fs   FS
	name string
	file File
	lock io.Closer
	size int64
	dead error
}

// Read reads a file without holding it.
func Read(fs FS, name string) ([]byte, error) {
	if failpoint.On(failpoint.ReadLocks) {
		if l, err := fs.Lock(name); err == nil {
			defer l.Close()
		}
	}
	return fs.ReadFile(name)
}

// Begins reports whether a file may be written over: it begins as those of its
// kind do, or holds nothing, or is not there.
func Begins(name, as string) bool {
	f, err := os.OpenFile(name, os.O_RDONLY|noWait, 0)
	if err != nil {
		return errors.Is(err, os.ErrNotExist)
	}
	defer f.Close()
	head := make([]byte, len(as))
	n, err := io.ReadFull(f, head)
	return err == nil && string(head) == as || n == 0 && err == io.EOF
}

// Open locks the existing file against other writers and reads it.
func Open(fs FS, name string) (*Journal, []byte, error) {
	l, err := fs.Lock(name)
	if err != nil {
		return nil, nil, err
	}
	content, err := fs.ReadFile(name)
	if err != nil {
		l.Close()
		return nil, nil, err
	}
	f, err := fs.Append(name)
	if err != nil {
		l.Close()
		return nil, nil, err
	}
	return &Journal{fs: fs, name: name, file: f, lock: l, size: int64(len(content))}, content, nil
}

// Claim locks a name that no file bears. The first Rewrite makes the file,
// mode 0600; until then there is nothing to append to.
func Claim(fs FS, name string) (*Journal, error) {
	l, err := fs.Lock(name)
	if err != nil {
		return nil, err
	}
	if _, err := fs.Stat(name); err == nil {
		l.Close()
		return nil, &os.PathError{Op: "create", Path: name, Err: os.ErrExist}
	}
	return &Journal{fs: fs, name: name, lock: l}, nil
}

// Create makes a new file with the content; it fails when a file of that name
// exists.
func Create(fs FS, name string, content []byte) (*Journal, error) {
	j, err := Claim(fs, name)
	if err != nil {
		return nil, err
	}
	if err := j.Rewrite(content); err != nil {
		j.Close()
		return nil, err
	}
	return j, nil
}

// Name is the file's name.
func (j *Journal) Name() string { return j.name }

// Err is nil as long as the file can be trusted, else ErrDead with its cause.
func (j *Journal) Err() error {
	if j.dead == nil {
		return nil
	}
	return fmt.Errorf("%w: %w", ErrDead, j.dead)
}

// Append adds b at the end and returns when it is on disk. After an error
// nothing of b counts: a partial write is cut off again where that is still
// possible, and when the state of the file is unknown every later call
// returns ErrDead.
func (j *Journal) Append(b []byte) error {
	if err := j.Err(); err != nil {
		return err
	}
	if j.file == nil {
		return errNotMade
	}
	b = failpoint.Late(b)
	if _, err := j.file.Write(b); err != nil && !failpoint.On(failpoint.WriteSwallowed) {
		if failpoint.On(failpoint.NotCut) {
			return err
		}
		if cut := j.file.Truncate(j.size); cut != nil {
			j.dead = err
		}
		return err
	}
	if failpoint.On(failpoint.NoSync) {
		j.size += int64(len(b))
		return nil
	}
	err := j.file.Sync()
	if err != nil && failpoint.On(failpoint.SyncRetried) {
		err = j.file.Sync()
	}
	if err != nil && !failpoint.On(failpoint.SyncSwallowed) {
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
	if err := j.Err(); err != nil {
		return err
	}
	return j.replace(content, j.mode())
}

// Moved reports whether the name bears another file than the one that is held,
// or one of another length, or, when none was made yet, any: a program that is
// no writer of ours, such as an editor, has replaced, cut or removed it. What is
// appended then would be lost; Rewrite puts the whole content in place again.
func (j *Journal) Moved() bool {
	if j.dead != nil || failpoint.On(failpoint.HeldTrusted) {
		return false
	}
	named, err := j.fs.Stat(j.name)
	if j.file == nil {
		return err == nil
	}
	if err != nil {
		return true
	}
	held, err := j.file.Stat()
	return err != nil || !j.fs.SameFile(named, held) || held.Size() != j.size
}

// mode is what the replaced file's mode is to be: that of the file that bears
// the name, else that of the one held.
func (j *Journal) mode() os.FileMode {
	if info, err := j.fs.Stat(j.name); err == nil && info.Mode().IsRegular() {
		return info.Mode().Perm()
	}
	if j.file != nil {
		if info, err := j.file.Stat(); err == nil {
			return info.Mode().Perm()
		}
	}
	return 0o600
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
	if !failpoint.On(failpoint.NoSyncNew) {
		if err := temp.Sync(); err != nil && !failpoint.On(failpoint.SyncSwallowed) {
			return fail(err)
		}
	}
	if err := temp.Close(); err != nil {
		return fail(err)
	}
	created := j.file == nil
	if !created {
		// Some systems cannot replace a file that is open.
		j.file.Close()
		j.file = nil
	}
	err = j.fs.Rename(temp.Name(), j.name)
	if err != nil {
		j.fs.Remove(temp.Name())
	} else {
		j.size = int64(len(content))
		if !failpoint.On(failpoint.NoSyncDir) {
			err = j.fs.SyncDir(j.name)
		}
		if err != nil {
			err = fmt.Errorf("%s: %w", j.name, err) // it names the folder only
			j.dead = err
		}
	}
	if err != nil && created {
		return err
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
	j.lock.Close()
	return err
}
