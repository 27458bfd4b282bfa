package sum

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/source"
)

func TestParseDef(t *testing.T) {
	rows := []struct {
		text       string
		name, body string
		params     []string
		help       string
	}{
		{"cop(heat, work) = heat / work", "cop", "heat / work", []string{"heat", "work"}, ""},
		{`  sag( v0 ,v1 )=(v0-v1)/v0  "fall of the supply"`, "sag", "(v0-v1)/v0", []string{"v0", "v1"}, "fall of the supply"},
		{`k() = ohm("A", "B") * 2`, "k", `ohm("A", "B") * 2`, nil, ""},
	}
	for _, r := range rows {
		d, err := ParseDef(r.text)
		if err != nil || d.Name != r.name || d.Body != r.body || d.Help != r.help || !slices.Equal(d.Params, r.params) {
			t.Errorf("%s reads as %+v, %v", r.text, d, err)
		}
		if again, err := ParseDef(d.String()); err != nil || again.String() != d.String() {
			t.Errorf("%s prints as %s, which reads as %v, %v", r.text, d, again, err)
		}
	}
}

func TestParseDefRefuses(t *testing.T) {
	rows := []struct {
		text string
		col  int
		want string
	}{
		{"", 1, "name is missing"},
		{"cop = 3", 5, `"(" is missing`},
		{"cop(a, a) = a", 8, "stands twice"},
		{"cop(a,) = a", 7, "parameter's name"},
		{"cop(a b) = a", 7, `")" is missing`},
		{"cop(a) a", 8, `"=" is missing`},
		{"cop(a) =", 9, "the sum is missing"},
		{`cop(a) = a "x" y`, 12, "one text"},
		{`cop(a) = a "x`, 12, "one text"},
		{"sqrt(a) = a", 1, "built in"},
		{"cop(in) = 2", 5, "has a meaning"},
		{"cop(pi) = 2", 5, "built in"},
		{"3x(a) = 2", 1, "name is missing"},
		{"cop(a,b,c,d,e,f,g,h,i,j) = a", 23, "more than 9"},
		{strings.Repeat("x", 5000), 1, "too long"},
		{"f(a) = a" + strings.Repeat("+a", 300), 8, "too long"},
		{`f(a) = a "` + strings.Repeat("x", 300) + `"`, 10, "too long"},
		{"f(a) = a \x1b[2J", 10, "cannot stand"},
		{"f(a) = \xff", 8, "cannot stand"},
	}
	for _, r := range rows {
		d, err := ParseDef(r.text)
		e, ok := err.(*source.Error)
		if !ok || e.Col != r.col || !strings.Contains(e.Error(), r.want) {
			t.Errorf("%.40s: %+v, %v at %d; want %q at %d", r.text, d, err, e.Col, r.want, r.col)
		}
	}
}

func TestCheck(t *testing.T) {
	env := scope(t)
	rows := []struct {
		text, want string
		col        int
	}{
		{"f(a) = a * supply", "", 0},
		{"f(a) = ohm(A, B) / a", "", 0},
		{"f(a) = a * b", "no value named", 12},
		{"f(a) = f(a - 1)", "calls itself", 8},
		{"f(a) = a +", "stops before", 11},
		{"f(a) = twice(a) + wice(a)", "did you mean twice?", 19},
	}
	for _, r := range rows {
		d, err := ParseDef(r.text)
		if err != nil {
			t.Fatal(err)
		}
		err = d.Check(env)
		if r.want == "" {
			if err != nil {
				t.Errorf("%s: %v", r.text, err)
			}
			continue
		}
		if e, ok := err.(*source.Error); !ok || e.Col != r.col || !strings.Contains(e.Error(), r.want) {
			t.Errorf("%s: %+v; want %q at %d", r.text, err, r.want, r.col)
		}
	}
}

func TestReferences(t *testing.T) {
	env := scope(t)
	r, err := References("supply / ohm(A, B) + twice(x) * pi - sqrt(3V) + x", env)
	if err != nil || !slices.Equal(r.Values, []string{"supply", "x"}) || !slices.Equal(r.Funcs, []string{"ohm", "twice"}) {
		t.Errorf("references %+v, %v", r, err)
	}
	d, err := ParseDef("f(a) = a * supply + cop(a, b)")
	if err != nil {
		t.Fatal(err)
	}
	if r, err = d.References(env); err != nil || !slices.Equal(r.Values, []string{"supply", "b"}) || !slices.Equal(r.Funcs, []string{"cop"}) {
		t.Errorf("references of a definition %+v, %v", r, err)
	}
}

func TestNameFault(t *testing.T) {
	for _, ok := range []string{"supply", "Zµ", "v_2", "F"} {
		if e := NameFault(ok); e != nil {
			t.Errorf("%s: %v", ok, e)
		}
	}
	for _, bad := range []string{"", "2v", "_x", "a-b", "and", "in", "sqrt", "pi", strings.Repeat("x", 41)} {
		if NameFault(bad) == nil {
			t.Errorf("%q may be a name", bad)
		}
	}
}
