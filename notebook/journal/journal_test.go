package journal

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func create(t *testing.T, content string) *Journal {
	t.Helper()
	j, err := Create(Disk{}, filepath.Join(t.TempDir(), "call.md"), []byte(content))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { j.Close() })
	return j
}

func content(t *testing.T, j *Journal) string {
	t.Helper()
	b, err := os.ReadFile(j.Name())
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// TestAppendAndRewrite keeps one file through both.
func TestAppendAndRewrite(t *testing.T) {
	j := create(t, "a\n")
	for _, step := range []struct {
		do   func() error
		want string
	}{
		{func() error { return j.Append([]byte("b\n")) }, "a\nb\n"},
		{func() error { return j.Rewrite([]byte("c\n")) }, "c\n"},
		{func() error { return j.Append([]byte("d\n")) }, "c\nd\n"},
	} {
		if err := step.do(); err != nil {
			t.Fatal(err)
		}
		if got := content(t, j); got != step.want || j.Moved() {
			t.Errorf("%q, want %q; moved %v", got, step.want, j.Moved())
		}
	}
}

// TestMoved notices what others do to the file.
func TestMoved(t *testing.T) {
	tests := map[string]func(name string) error{
		"removed":  os.Remove,
		"cut":      func(name string) error { return os.Truncate(name, 1) },
		"appended": func(name string) error { return os.WriteFile(name, []byte("a\nmore\n"), 0o600) },
		"replaced": func(name string) error {
			if err := os.WriteFile(name+"2", []byte("a\n"), 0o600); err != nil {
				return err
			}
			return os.Rename(name+"2", name)
		},
		"a link": func(name string) error {
			if err := os.Rename(name, name+"2"); err != nil {
				return err
			}
			return os.Symlink(name+"2", name)
		},
	}
	for what, do := range tests {
		j := create(t, "a\n")
		if err := do(j.Name()); err != nil {
			t.Fatal(err)
		}
		if !j.Moved() {
			t.Errorf("%s: not noticed", what)
		}
		if err := j.Rewrite([]byte("whole\n")); err != nil {
			t.Errorf("%s: %v", what, err)
		}
		if got := content(t, j); got != "whole\n" || j.Moved() {
			t.Errorf("%s: %q after the rewrite, moved %v", what, got, j.Moved())
		}
	}
}

// TestClaim makes no file until there is something to write, and holds the
// name until then.
func TestClaim(t *testing.T) {
	name := filepath.Join(t.TempDir(), "call.md")
	j, err := Claim(Disk{}, name)
	if err != nil {
		t.Fatal(err)
	}
	defer j.Close()
	if _, err := os.Lstat(name); !os.IsNotExist(err) || !Claimed(name) || j.Moved() {
		t.Errorf("a claim: %v, claimed %v, moved %v", err, Claimed(name), j.Moved())
	}
	var held *LockedError
	if _, err := Claim(Disk{}, name); !errors.As(err, &held) {
		t.Errorf("a second claim: %v", err)
	}
	if err := j.Append([]byte("a\n")); !errors.Is(err, errNotMade) {
		t.Errorf("appended to a claim: %v", err)
	}
	if err := os.WriteFile(name, []byte("another's"), 0o600); err != nil {
		t.Fatal(err)
	}
	if !j.Moved() {
		t.Error("another's file took the name and was not noticed")
	}
	if err := j.Rewrite([]byte("a\n")); err != nil {
		t.Fatal(err)
	}
	if err := j.Append([]byte("b\n")); err != nil || content(t, j) != "a\nb\n" {
		t.Errorf("%v, %q", err, content(t, j))
	}
	j.Close()
	if Claimed(name) {
		t.Error("the claim outlives its holder")
	}
}

// TestCreateKeepsWhatIsThere refuses a name that is taken, by whatever.
func TestCreateKeepsWhatIsThere(t *testing.T) {
	dir := t.TempDir()
	file, link := filepath.Join(dir, "file"), filepath.Join(dir, "link")
	if err := os.WriteFile(file, []byte("x"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(filepath.Join(dir, "nowhere"), link); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{file, link, dir} {
		if _, err := Create(Disk{}, name, []byte("y")); !errors.Is(err, os.ErrExist) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if b, _ := os.ReadFile(file); string(b) != "x" {
		t.Errorf("the file holds %q", b)
	}
}

// TestSecondWriter is refused, told who holds the file, and let in afterwards.
func TestSecondWriter(t *testing.T) {
	j := create(t, "a\n")
	_, _, err := Open(Disk{}, j.Name())
	var locked *LockedError
	if !errors.As(err, &locked) || locked.PID != os.Getpid() {
		t.Fatalf("%v", err)
	}
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
	again, b, err := Open(Disk{}, j.Name())
	if err != nil || !bytes.Equal(b, []byte("a\n")) {
		t.Fatalf("%q %v", b, err)
	}
	if err := again.Close(); err != nil {
		t.Fatal(err)
	}
	if list, _ := filepath.Glob(filepath.Join(filepath.Dir(j.Name()), ".*")); len(list) > 0 {
		t.Errorf("left behind: %v", list)
	}
	if err := again.Append(nil); !errors.Is(err, ErrDead) {
		t.Errorf("after closing: %v", err)
	}
}

// badSync fails every sync of what is appended.
type badSync struct{ Disk }

func (b badSync) Append(name string) (File, error) {
	f, err := b.Disk.Append(name)
	return badFile{f}, err
}

type badFile struct{ File }

var errSync = errors.New("sync failed")

func (badFile) Sync() error { return errSync }

// TestDeadAfterFailedSync acknowledges nothing more on a file whose sync has
// failed once.
func TestDeadAfterFailedSync(t *testing.T) {
	j, err := Create(badSync{}, filepath.Join(t.TempDir(), "call.md"), []byte("a\n"))
	if err != nil {
		t.Fatal(err)
	}
	defer j.Close()
	if err := j.Append([]byte("b\n")); !errors.Is(err, errSync) {
		t.Errorf("%v", err)
	}
	for range 2 {
		if err := j.Append([]byte("c\n")); !errors.Is(err, ErrDead) || !errors.Is(err, errSync) {
			t.Errorf("%v", err)
		}
	}
	if err := j.Rewrite([]byte("d\n")); !errors.Is(err, ErrDead) {
		t.Errorf("%v", err)
	}
	if got := content(t, j); strings.Contains(got, "c") {
		t.Errorf("written all the same: %q", got)
	}
}
