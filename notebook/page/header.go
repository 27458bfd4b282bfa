package page

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"ohmcall/notebook/record"
)

// field ties a key of the front matter to its place in the header. The
// front matter is YAML; each value is a JSON scalar or a list of JSON texts
// on one line, which YAML reads as it stands.
type field struct {
	key string
	at  func(*record.Header) any // a pointer
	// always is set for the keys that are written even when empty.
	always bool
}

var fields = []field{
	{"ohmcall", func(h *record.Header) any { return &h.Format }, true},
	{"state", func(h *record.Header) any { return &h.State }, true},
	{"entries", func(h *record.Header) any { return &h.Entries }, true},
	{"started", func(h *record.Header) any { return &h.Started }, false},
	{"ended", func(h *record.Header) any { return &h.Ended }, false},
	{"technician", func(h *record.Header) any { return &h.Technician }, false},
	{"client", func(h *record.Header) any { return &h.Client }, false},
	{"site", func(h *record.Header) any { return &h.Site }, false},
	{"unit", func(h *record.Header) any { return &h.Unit }, false},
	{"model", func(h *record.Header) any { return &h.Model }, false},
	{"serial", func(h *record.Header) any { return &h.Serial }, false},
	{"machine", func(h *record.Header) any { return &h.Machine }, false},
	{"complaint", func(h *record.Header) any { return &h.Complaint }, false},
	{"kind", func(h *record.Header) any { return &h.Kind }, false},
	{"cause", func(h *record.Header) any { return &h.Cause }, false},
	{"result", func(h *record.Header) any { return &h.Result }, false},
	{"left", func(h *record.Header) any { return &h.Left }, false},
	{"minutes", func(h *record.Header) any { return &h.Minutes }, false},
	{"cost", func(h *record.Header) any { return &h.Cost }, false},
	{"unpriced", func(h *record.Header) any { return &h.Unpriced }, false},
	{"missing", func(h *record.Header) any { return &h.Missing }, false},
	{"unsafe", func(h *record.Header) any { return &h.Unsafe }, false},
	{"doubt", func(h *record.Header) any { return &h.Doubt }, false},
	{"said", func(h *record.Header) any { return &h.Said }, false},
	{"parts", func(h *record.Header) any { return &h.Parts }, false},
	{"ohms", func(h *record.Header) any { return &h.Ohms }, false},
	{"redacted", func(h *record.Header) any { return &h.Redacted }, false},
	{"log-sha256", func(h *record.Header) any { return &h.SHA256 }, false},
}

var fieldByKey = func() map[string]*field {
	m := make(map[string]*field, len(fields))
	for i := range fields {
		m[fields[i].key] = &fields[i]
	}
	return m
}()

func writeHeader(b *strings.Builder, h *record.Header) {
	written := *h
	written.Format = record.Format
	h = &written
	b.WriteString("---\n")
	start := b.Len()
	for _, f := range fields {
		v := reflect.ValueOf(f.at(h)).Elem()
		if v.IsZero() && !f.always {
			continue
		}
		b.WriteString(f.key + ": ")
		switch x := v.Interface().(type) {
		case string:
			b.WriteString(quote(x))
		case []string:
			parts := make([]string, len(x))
			for i, s := range x {
				parts[i] = quote(s)
			}
			b.WriteString("[" + strings.Join(parts, ", ") + "]")
		default:
			fmt.Fprint(b, x)
		}
		b.WriteByte('\n')
	}
	if h.State == "closed" {
		b.WriteString(headKey + quote(mark(b.String()[start:])) + "\n")
	}
	b.WriteString("---\n")
}

// headKey begins the last line of a closed notebook's front matter: the short
// digest of the lines before it, so that one that was edited is not believed.
const headKey = "head: "

// Standing is what the digest in a front matter says of the front matter.
type Standing int

const (
	Unmarked Standing = iota // it bears no digest, as those of older programs
	Agrees
	Differs
)

// HeadStanding holds the text between the fences of a front matter against
// the digest that it bears.
func HeadStanding(front []byte) Standing {
	i := bytes.LastIndexByte(front, '\n') + 1
	switch {
	case string(front[i:]) == headKey+`"`+mark(front[:i])+`"`:
		return Agrees
	case bytes.Contains(front, []byte("\n"+headKey)):
		return Differs
	}
	return Unmarked
}

// quote writes a JSON text without the escapes that JSON adds for HTML.
func quote(s string) string {
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(s); err != nil {
		return strconv.Quote(s)
	}
	return strings.TrimSuffix(b.String(), "\n")
}

// readHeader reads the front matter's lines. Unknown keys are left alone: a
// later program may have written them.
func readHeader(lines []string) (record.Header, error) {
	var h record.Header
	for i, line := range lines {
		key, value, ok := strings.Cut(line, ":")
		if !ok {
			if strings.TrimSpace(line) == "" || strings.HasPrefix(line, "#") {
				continue
			}
			return h, fmt.Errorf("line %d of the front matter is not `key: value`", i+2)
		}
		f := fieldByKey[key]
		if f == nil {
			continue
		}
		value = strings.TrimSpace(value)
		at := f.at(&h)
		if to, is := at.(*string); is && plainText(value) {
			*to = value[1 : len(value)-1]
			continue
		}
		if to, is := at.(*int); is && value != "" && value[0] > '0' && value[0] <= '9' {
			if n, err := strconv.Atoi(value); err == nil {
				*to = n
				continue
			}
		}
		if err := json.Unmarshal([]byte(value), at); err != nil {
			return h, fmt.Errorf("line %d of the front matter: %s has a value that cannot be read", i+2, key)
		}
	}
	return h, nil
}

// plainText reports whether a value is a JSON text that stands for itself, as
// nearly all do: they need no reader that costs.
func plainText(s string) bool {
	if len(s) < 2 || s[0] != '"' || s[len(s)-1] != '"' {
		return false
	}
	for _, c := range []byte(s[1 : len(s)-1]) {
		if c < 0x20 || c > 0x7E || c == '"' || c == '\\' {
			return false
		}
	}
	return true
}

// HeaderDifferences says in which keys a header differs from what it should
// be, once that is written and read again. The digest is left out: it is
// compared with the log itself.
func HeaderDifferences(have, want *record.Header) []string {
	var b strings.Builder
	writeHeader(&b, want)
	fresh, _, err := front([]byte(b.String()))
	if err != nil {
		return []string{"it cannot be rebuilt: " + err.Error()}
	}
	want = &fresh
	var out []string
	for _, f := range fields {
		if f.key == "log-sha256" {
			continue
		}
		a, b := reflect.ValueOf(f.at(have)).Elem(), reflect.ValueOf(f.at(want)).Elem()
		if !reflect.DeepEqual(a.Interface(), b.Interface()) {
			out = append(out, fmt.Sprintf("%s is %v, replayed it is %v", f.key, a.Interface(), b.Interface()))
		}
	}
	return out
}
