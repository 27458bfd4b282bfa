// Package sqlite writes an export as an SQLite database. It is a package of
// its own because its engine is large: a program that does not import it
// does not carry it.
package sqlite

import (
	"database/sql"
	"errors"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"

	_ "modernc.org/sqlite" // the database/sql driver "sqlite"

	"ohmcall/notebook/fleet"
)

type sink struct {
	path, temp string
	made       bool
	db         *sql.DB
	tx         *sql.Tx
	insert     map[*fleet.Table]*sql.Stmt
}

// File is a sink that writes a new database, mode 0600, in one transaction.
// It is written under another name and takes its own when it is complete; a
// file that has the name already is an error unless replace is set.
func File(path string, replace bool) (fleet.Sink, error) {
	info, err := os.Lstat(path)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return nil, fmt.Errorf("%s is not a regular file", path)
	case err == nil && !replace:
		return nil, fmt.Errorf("%s exists; name a file that does not", path)
	case err != nil && !errors.Is(err, os.ErrNotExist):
		return nil, err
	}
	return &sink{path: path, temp: path + ".tmp", insert: map[*fleet.Table]*sql.Stmt{}}, nil
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
	abs, err := filepath.Abs(s.temp)
	if err != nil {
		return err
	}
	// The file is thrown away when anything fails, so no journal is kept; it
	// is synced whole before it takes its name.
	name := url.URL{Scheme: "file", Path: filepath.ToSlash(abs),
		RawQuery: "_pragma=foreign_keys(1)&_pragma=journal_mode(off)&_pragma=synchronous(off)"}
	if s.db, err = sql.Open("sqlite", name.String()); err != nil {
		return err
	}
	s.db.SetMaxOpenConns(1)
	if s.tx, err = s.db.Begin(); err != nil {
		return err
	}
	for _, q := range fleet.SQLPreamble(tables) {
		if _, err := s.tx.Exec(q); err != nil {
			return err
		}
	}
	for _, t := range tables {
		marks := strings.TrimSuffix(strings.Repeat("?, ", len(t.Columns)), ", ")
		if s.insert[t], err = s.tx.Prepare("INSERT INTO " + t.Name + " VALUES (" + marks + ")"); err != nil {
			return err
		}
	}
	return nil
}

func (s *sink) Row(t *fleet.Table, _ string, values []any) error {
	args := make([]any, len(values))
	for i, v := range values {
		args[i] = fleet.SQLValue(v)
	}
	_, err := s.insert[t].Exec(args...)
	return err
}

func (s *sink) Commit() error {
	if err := s.tx.Commit(); err != nil {
		return err
	}
	if err := s.db.Close(); err != nil {
		return err
	}
	s.db = nil
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

func (s *sink) Abort() {
	if s.db != nil {
		if s.tx != nil {
			s.tx.Rollback()
		}
		s.db.Close()
		s.db = nil
	}
	if s.made {
		os.Remove(s.temp)
	}
}
