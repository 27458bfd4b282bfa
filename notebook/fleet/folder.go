package fleet

import (
	"bytes"
	"cmp"
	"fmt"
	"os"
	"path/filepath"
	"slices"
)

// Layout is how the files of a folder are cut.
type Layout string

const (
	// Flat is one file a table: readings.csv.
	Flat Layout = "flat"
	// ByDate is one file a table and day in the folders that column engines
	// take for partitions: table=readings/date=2026-03-02/part-0.csv.
	ByDate Layout = "by-date"
)

// noDate is what partition readers take for an absent value.
const noDate = "__HIVE_DEFAULT_PARTITION__"

const (
	flushPart = 256 << 10 // of one file
	flushAll  = 32 << 20  // of all together
)

// folder writes an export to a new folder. It is filled under another name
// and takes its own when it is complete.
type folder struct {
	dir, temp string
	format    Format
	layout    Layout
	enc       map[*Table]*encoder
	parts     map[string]*part
	held      int
	made      bool
}

// part is a file of the export with what waits to be written to it.
type part struct {
	buf     bytes.Buffer
	started bool
}

// Folder is a sink that writes files of the format to a folder that must not
// exist yet, mode 0700, with the schema text beside them.
func Folder(dir string, format Format, layout Layout) Sink {
	dir = filepath.Clean(dir)
	return &folder{dir: dir, temp: dir + ".tmp", format: format, layout: layout, enc: map[*Table]*encoder{}, parts: map[string]*part{}}
}

func (f *folder) Begin(tables []*Table) error {
	if _, err := os.Lstat(f.dir); err == nil {
		return fmt.Errorf("%s exists; name a folder that does not", f.dir)
	}
	if err := os.Mkdir(f.temp, 0o700); err != nil {
		if os.IsExist(err) {
			return fmt.Errorf("%s is left from an export that was broken off; remove it", f.temp)
		}
		return err
	}
	f.made = true
	var b bytes.Buffer
	if err := SchemaText(&b, tables); err != nil {
		return err
	}
	if err := os.WriteFile(filepath.Join(f.temp, "SCHEMA.md"), b.Bytes(), 0o600); err != nil {
		return err
	}
	for _, t := range tables {
		skip := -1
		if f.layout == ByDate {
			skip = slices.IndexFunc(t.Columns, func(c Column) bool { return c.Name == "date" })
		}
		f.enc[t] = newEncoder(f.format, t, skip)
		if f.layout == Flat {
			// A table without rows still has its file, and its column names.
			f.part(t, "")
		}
	}
	return nil
}

func (f *folder) part(t *Table, date string) (string, *part) {
	name := t.Name + "." + string(f.format)
	if f.layout == ByDate {
		name = filepath.Join("table="+t.Name, "date="+cmp.Or(date, noDate), "part-0."+string(f.format))
	}
	p := f.parts[name]
	if p == nil {
		p = &part{}
		f.enc[t].head(&p.buf)
		f.parts[name] = p
	}
	return name, p
}

func (f *folder) Row(t *Table, date string, values []any) error {
	name, p := f.part(t, date)
	before := p.buf.Len()
	if err := f.enc[t].row(&p.buf, values); err != nil {
		return err
	}
	f.held += p.buf.Len() - before
	if p.buf.Len() > flushPart {
		return f.flush(name, p)
	}
	if f.held > flushAll {
		return f.flushAll()
	}
	return nil
}

func (f *folder) flushAll() error {
	for name, p := range f.parts {
		if err := f.flush(name, p); err != nil {
			return err
		}
	}
	return nil
}

// flush appends what waits; the file is open only meanwhile, since a year
// has more days than a process may have open files.
func (f *folder) flush(name string, p *part) error {
	if p.started && p.buf.Len() == 0 {
		return nil
	}
	path := filepath.Join(f.temp, name)
	if !p.started {
		if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
			return err
		}
	}
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o600)
	if err != nil {
		return err
	}
	_, err = file.Write(p.buf.Bytes())
	if closing := file.Close(); err == nil {
		err = closing
	}
	f.held = max(f.held-p.buf.Len(), 0)
	p.started = true
	p.buf = bytes.Buffer{}
	return err
}

func (f *folder) Commit() error {
	if err := f.flushAll(); err != nil {
		return err
	}
	return os.Rename(f.temp, f.dir)
}

func (f *folder) Abort() {
	// Only what Begin made itself is taken away again.
	if f.made {
		os.RemoveAll(f.temp)
	}
}
