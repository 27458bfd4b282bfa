//go:build !linux

package journal

import (
	"os"
	"path/filepath"
	"runtime"
)

func syncData(f *os.File) error { return f.Sync() }

// SyncDir implements FS. Windows keeps directory entries durable itself and
// refuses to sync a directory.
func (Disk) SyncDir(name string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	d, err := os.Open(filepath.Dir(name))
	if err != nil {
		return err
	}
	defer d.Close()
	return d.Sync()
}
