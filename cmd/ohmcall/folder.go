package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
)

// folderName is the notebooks folder in the home directory: visible, since
// the records are the user's own files.
const folderName = "ohmcall-calls"

// snippetFile holds the user's own definitions, in the notebooks folder.
const snippetFile = "snippets.call"

// folder is the notebooks folder: the flag, the environment, or the default.
func (a *app) folder() (string, error) {
	if a.dir != "" {
		return a.dir, nil
	}
	if d := os.Getenv("OHMCALL_DIR"); d != "" {
		return d, nil
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "", usageError{fmt.Errorf("there is no home directory; name a folder with --dir or OHMCALL_DIR")}
	}
	return filepath.Join(home, folderName), nil
}

// makeFolder makes the notebooks folder, for its owner alone.
func makeFolder(dir string) error {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return fmt.Errorf("the notebooks folder cannot be made: %w", err)
	}
	return nil
}

// freeName is a name in the folder that no file bears yet, nor is about to.
func freeName(dir, base string) string {
	base = strings.TrimSuffix(base, ".md")
	name := filepath.Join(dir, base+".md")
	for i := 2; notebook.Exists(name) || journal.Claimed(name); i++ {
		name = filepath.Join(dir, base+"-"+strconv.Itoa(i)+".md")
	}
	return name
}

// host ties a notebook to this machine.
func (a *app) host(dir string, beside ...string) notebook.Host {
	own := a.snippets(dir)
	a.own = own
	return notebook.Host{
		FS:  journal.Disk{},
		Now: time.Now,
		Script: func(name string) ([]byte, error) {
			content, err := readScript(name, append(beside, dir))
			if err != nil && own[name] != "" {
				err = fmt.Errorf("%s is a snippet that was kept, and no file: it is there in every call, type it in a sum", name)
			}
			if filepath.Base(name) == snippetFile {
				content = newest(content)
			}
			return content, err
		},
		Keep:     func(line string) error { return a.keep(dir, own, line) },
		Snippets: own,
	}
}

// keep adds a definition to the user's own. An earlier one of its name stays
// in the file, as all that was ever kept does, and counts no more.
func (a *app) keep(dir string, own map[string]string, line string) error {
	name, _ := call.Defines(line)
	old := own[name]
	if old == line {
		return nil
	}
	if err := keepSnippet(dir, line); err != nil {
		return err
	}
	own[name] = line
	if old != "" {
		a.aside = append(a.aside, fmt.Sprintf("It replaces the %s kept before; %s holds both, the newest counts.", cleanName(name), snippetFile))
	}
	return nil
}

// closing brings a notebook's file up to date, and says what happened to it.
func (a *app) closing(n *notebook.Notebook) error {
	err := n.Close()
	a.told(n)
	return err
}

// told says what there is to say of a notebook's file.
func (a *app) told(n *notebook.Notebook) {
	for _, s := range n.News() {
		fmt.Fprintln(a.err, s)
	}
}

// asides gives what there is to say of an entry beside its reply, once.
func (a *app) asides(n *notebook.Notebook, e call.Entry) []string {
	if news := n.News(); len(news) > 0 {
		return news
	}
	if e.Kind == "help" && strings.Contains(e.Line, "snippets") && len(a.own) > 0 {
		return []string{"Kept in " + snippetFile + ": " + strings.Join(a.ownNames(), ", ") + "."}
	}
	if name, ok := call.Defines(e.Line); ok && a.own[name] != "" && a.own[name] != e.Line {
		return []string{"In this call " + cleanName(name) + " is another than the one kept: " + cleanName(a.own[name])}
	}
	if e.Kind == "strike" {
		for i, struck := range n.Call().Entries() {
			name, ok := call.Defines(struck.Line)
			if _, now := n.Call().Struck(i + 1); ok && now && strings.HasPrefix(e.Line, "strike "+strconv.Itoa(i+1)+" ") && a.own[name] == struck.Line {
				return []string{"The " + cleanName(name) + " kept in " + snippetFile + " stands for the calls to come; take its line out there."}
			}
		}
	}
	if e.Kind != "keep" {
		return nil
	}
	said := a.aside
	a.aside = nil
	return said
}

// ownCalls are the names of the user's snippets as a sum begins with them.
func (a *app) ownCalls() []string {
	out := a.ownNames()
	for i, name := range out {
		if n := strings.IndexByte(name, '('); n >= 0 {
			out[i] = name[:n+1]
		}
	}
	return out
}

// ownNames are the names of the user's snippets, those of sums with their
// parameters.
func (a *app) ownNames() []string {
	var out []string
	for name, line := range a.own {
		if d, ok := strings.CutPrefix(line, "def "); ok {
			name, _, _ = strings.Cut(d, "=")
		}
		out = append(out, cleanName(strings.TrimSpace(name)))
	}
	slices.Sort(out)
	return out
}

// newest blanks the definitions that a later one of the same name replaces.
func newest(content []byte) []byte {
	lines := notebook.ScriptLines(content)
	later := map[string]bool{}
	for i := len(lines) - 1; i >= 0; i-- {
		if name, ok := call.Defines(lines[i]); ok {
			if later[name] {
				lines[i] = ""
			}
			later[name] = true
		}
	}
	return []byte(strings.Join(lines, "\n"))
}

// readScript finds a file of lines: as named, else in the folders given.
func readScript(name string, folders []string) ([]byte, error) {
	names := []string{name}
	if !filepath.IsAbs(name) {
		for _, d := range folders {
			names = append(names, filepath.Join(d, name))
		}
	}
	var fault error
	for _, n := range names {
		b, err := (journal.Disk{}).ReadFile(n)
		if err == nil {
			return b, nil
		}
		if fault == nil && !os.IsNotExist(err) {
			fault = err
		}
	}
	if fault == nil {
		elsewhere := slices.DeleteFunc(slices.Clone(folders), func(s string) bool { return s == "." || s == "" })
		slices.Sort(elsewhere)
		elsewhere = slices.Compact(elsewhere)
		fault = fmt.Errorf("there is no file %s here, nor in %s", name, strings.Join(elsewhere, " or "))
		if filepath.Ext(name) == "" {
			if _, err := readScript(name+".call", folders); err == nil {
				fault = fmt.Errorf("%w; %s.call is there: use %[2]s.call", fault, name)
			}
		}
	}
	return nil, fault
}

// snippets reads the user's own definitions, of several of one name the last.
// A line that defines nothing is told and passed over.
func (a *app) snippets(dir string) map[string]string {
	content, err := (journal.Disk{}).ReadFile(filepath.Join(dir, snippetFile))
	if err != nil {
		if !os.IsNotExist(err) {
			fmt.Fprintf(a.err, "ohmcall: your snippets cannot be read: %v\n", err)
		}
	}
	out := map[string]string{}
	for i, line := range notebook.ScriptLines(content) {
		name, ok := call.Defines(line)
		if ok {
			out[name] = strings.TrimSpace(line)
			continue
		}
		if t := strings.TrimSpace(line); t != "" && !strings.HasPrefix(t, "#") {
			fmt.Fprintf(a.err, "ohmcall: %s line %d defines nothing and is passed over\n", snippetFile, i+1)
		}
	}
	return out
}

// keepSnippet adds a definition to the user's own, on a line of its own
// whatever the file ends with; what was written of it in part is cut off again.
func keepSnippet(dir, line string) error {
	if err := makeFolder(dir); err != nil {
		return err
	}
	f, err := os.OpenFile(filepath.Join(dir, snippetFile), os.O_RDWR|os.O_CREATE|os.O_APPEND, 0o600)
	if err != nil {
		return err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return err
	}
	var last [1]byte
	if n, _ := f.ReadAt(last[:], max(0, info.Size()-1)); n > 0 && last[0] != '\n' {
		line = "\n" + line
	}
	if _, err = f.WriteString(line + "\n"); err != nil {
		f.Truncate(info.Size())
		return err
	}
	return f.Sync()
}
