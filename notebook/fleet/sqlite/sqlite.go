// Package sqlite writes an export as an SQLite database. It is a package of
// its own because its engine is large: a program that does not import it
// does not carry it.
package sqlite

import (
	"errors"
	"fmt"
	"os"
	"strings"

	"zombiezen.com/go/sqlite"

	"ohmcall/notebook/fleet"
	"ohmcall/notebook/journal"
)

// inserter puts one row into its table.
type inserter func(values []any) error

// sink holds the engine by what it does and not by its types: an interface that
// leads to them would keep all their methods in the program.
type sink struct {
	path, temp string
	made       bool
	exec       func(query string) error
	prepare    func(query string) (inserter, error)
	shut       func() error // nil while no database is open
	insert     map[*fleet.Table]inserter
}

// magic is what a database begins with (SQLite, Database File Format, 1.3 The
// Database Header, from memory).
const magic = "SQLite format 3\x00"

// File is a sink that writes a new database, mode 0600, in one transaction.
// It is written under another name and takes its own when it is complete; a
// file that has the name already is an error unless replace is set and it is a
// database.
func File(path string, replace bool) (fleet.Sink, error) {
	info, err := os.Lstat(path)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return nil, fmt.Errorf("%s is not a regular file", path)
	case err == nil && !replace:
		return nil, fmt.Errorf("%s exists; name a file that does not", path)
	case err != nil && !errors.Is(err, os.ErrNotExist):
		return nil, err
	case !journal.Begins(path, magic):
		return nil, fmt.Errorf("%s is no database and stays as it is", path)
	}
	return &sink{path: path, temp: path + ".tmp", insert: map[*fleet.Table]inserter{}}, nil
}

func (s *sink) Begin(tables []*fleet.Table) error {
	f, err := os.OpenFile(s.temp, os.O_RDWR|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		if os.IsExist(err) {
			return fmt.Errorf("%s is left from an export that was broken off; remove it", s.temp)
		}
		return err
	}
	s.made = true
	if err := f.Close(); err != nil {
		return err
	}
	if err := s.open(); err != nil {
		return err
	}
	// The file is thrown away when anything fails, so no journal is kept; it
	// is synced whole before it takes its name.
	setup := []string{"PRAGMA foreign_keys = 1", "PRAGMA journal_mode = off", "PRAGMA synchronous = off", "BEGIN"}
	for _, q := range append(setup, fleet.SQLPreamble(tables)...) {
		if err := s.exec(q); err != nil {
			return err
		}
	}
	for _, t := range tables {
		marks := strings.TrimSuffix(strings.Repeat("?, ", len(t.Columns)), ", ")
		if s.insert[t], err = s.prepare("INSERT INTO " + t.Name + " VALUES (" + marks + ")"); err != nil {
			return err
		}
	}
	return nil
}

func (s *sink) open() error {
	db, err := sqlite.OpenConn(s.temp, sqlite.OpenReadWrite)
	if err != nil {
		return err
	}
	s.shut = db.Close
	s.exec = func(query string) error {
		stmt, _, err := db.PrepareTransient(query)
		if err != nil {
			return err
		}
		defer stmt.Finalize()
		return run(stmt)
	}
	s.prepare = func(query string) (inserter, error) {
		stmt, err := db.Prepare(query)
		return func(values []any) error { return insert(stmt, values) }, err
	}
	return nil
}

func run(stmt *sqlite.Stmt) error {
	for {
		if more, err := stmt.Step(); err != nil || !more {
			return err
		}
	}
}

func (s *sink) Row(t *fleet.Table, _ string, values []any) error { return s.insert[t](values) }

func insert(stmt *sqlite.Stmt, values []any) error {
	for i, v := range values {
		switch v := fleet.SQLValue(v).(type) {
		case nil:
			stmt.BindNull(i + 1)
		case string:
			stmt.BindText(i+1, v)
		case int64:
			stmt.BindInt64(i+1, v)
		case int:
			stmt.BindInt64(i+1, int64(v))
		case float64:
			stmt.BindFloat(i+1, v)
		default:
			return fmt.Errorf("a database has no column for %T", v)
		}
	}
	if err := run(stmt); err != nil {
		return err
	}
	return stmt.Reset()
}

func (s *sink) Commit() error {
	if err := s.exec("COMMIT"); err != nil {
		return err
	}
	if err := s.close(); err != nil {
		return err
	}
	f, err := os.OpenFile(s.temp, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	err = f.Sync()
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err != nil {
		return err
	}
	return os.Rename(s.temp, s.path)
}

// close closes the database, if one is open.
func (s *sink) close() error {
	if s.shut == nil {
		return nil
	}
	err := s.shut()
	s.shut = nil
	return err
}

func (s *sink) Abort() {
	s.close()
	if s.made {
		os.Remove(s.temp)
	}
}
