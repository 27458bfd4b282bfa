package winding

import (
	"maps"
	"slices"
	"strings"
	"testing"
)

func TestPartial(t *testing.T) {
	r := Infer(Input{})
	if r.State != Incomplete || r.Next == "" {
		t.Errorf("nothing read: %s %q", r.State, r.Next)
	}
	r = Infer(Input{Readings: pairs("A", "B", "3.45")})
	if r.State != Incomplete || r.Next != "read A or B to the third pin" {
		t.Errorf("one reading: %s %q", r.State, r.Next)
	}
	r = Infer(Input{Readings: pairs("A", "B", "3.45"), Pins: []string{"C"}})
	if want := []Pair{{"A", "C"}, {"B", "C"}}; !slices.Equal(r.Wanted, want) {
		t.Errorf("one reading, three pins: wanted %v", r.Wanted)
	}
}

func TestPrediction(t *testing.T) {
	type option struct {
		x     float64
		roles map[string]Role
	}
	tests := []struct {
		name    string
		in      []Reading
		marks   []Mark
		certain string
		roles   map[string]Role
		options []option
	}{
		{"sum or difference", pairs("A", "B", "3.45", "A", "C", "~6.5"), nil, "C is not common", nil, []option{
			{9.95, map[string]Role{"A": Common, "C": Start, "B": Run}},
			{3.05, map[string]Role{"B": Common}}, // 3.45 and about 3.05 are too close to rank
		}},
		{"start certain either way", pairs("A", "B", "15.0", "B", "C", "4.0"), nil, "A is start", map[string]Role{"A": Start}, []option{
			{19, map[string]Role{"A": Start, "B": Common, "C": Run}},
			{11, map[string]Role{"A": Start, "C": Common, "B": Run}},
		}},
		{"common marked", pairs("A", "B", "15.0", "B", "C", "4.0"), []Mark{{"C", Common, 1}}, "C is common",
			map[string]Role{"A": Start, "C": Common, "B": Run}, []option{{11, map[string]Role{"A": Start, "C": Common, "B": Run}}}},
		{"alike", pairs("A", "B", "4.0", "A", "C", "4.0"), nil, "", nil, []option{
			{8, map[string]Role{"A": Common}}, {0, nil}, {4, nil},
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := Infer(Input{Readings: tt.in, Marks: tt.marks})
			if r.State != Incomplete || !maps.Equal(r.Roles, tt.roles) || len(r.Predictions) != 1 {
				t.Fatalf("%s %v %v", r.State, r.Roles, r.Predictions)
			}
			p := r.Predictions[0]
			if p.Pair != r.Wanted[0] {
				t.Errorf("predicts %v, wants %v", p.Pair, r.Wanted)
			}
			if s := strings.Join(p.Certain, "\n"); !strings.Contains(s, tt.certain) {
				t.Errorf("certain %q, want %q", s, tt.certain)
			}
			if len(p.Options) != len(tt.options) {
				t.Fatalf("options %v", p.Options)
			}
			for i, o := range p.Options {
				w := tt.options[i]
				if !near(o.Value.X, w.x) || !maps.Equal(o.Roles, w.roles) {
					t.Errorf("option %d: %v %v, want %v %v", i, o.Value.X, o.Roles, w.x, w.roles)
				}
				if !slices.Contains(r.Notes, o.Text) {
					t.Errorf("%q is not among the notes", o.Text)
				}
			}
		})
	}
}

func TestTwoLeads(t *testing.T) {
	for _, tt := range []struct {
		shows string
		state State
	}{{"75.0", Sound}, {"OL", OpenWinding}, {"0.0", Shorted}} {
		if r := Infer(Input{Readings: pairs("A", "B", tt.shows), Kind: Fan, Leads: 2}); r.State != tt.state {
			t.Errorf("%s: %s, want %s", tt.shows, r.State, tt.state)
		}
	}
}

// A small fan or pump has one winding and two leads (common practice): of one
// pair it is asked whether there is a third.
func TestTwoLeadsAsked(t *testing.T) {
	for _, tt := range []struct {
		kind  Kind
		leads int
		asked bool
	}{{Fan, 0, true}, {Motor, 0, true}, {Fan, 4, false}, {Compressor, 0, false}, {Unknown, 0, false}} {
		for _, shows := range []string{"75.0", "OL"} {
			r := Infer(Input{Readings: pairs("A", "B", shows), Kind: tt.kind, Leads: tt.leads})
			if got := strings.Contains(r.Next, "plate leads 2"); got != tt.asked || r.State != Incomplete {
				t.Errorf("%s of %d leads, %s: %s, next %q", tt.kind, tt.leads, shows, r.State, r.Next)
			}
		}
	}
}
