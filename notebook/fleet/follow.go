package fleet

import (
	"cmp"
	"strings"
	"time"
	"unicode"

	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// callBackDays is how many days after a call another one on the same unit is a
// call-back.
const callBackDays = 30

// Follow is what calls on the same unit, one after the other, tell of each other.
type Follow struct {
	// CallBack is the days since the last call on the same unit, when no more
	// than callBackDays and that call was not one after which another is to be
	// expected; nil otherwise. Earlier is that call.
	CallBack *int   `json:"call_back_days"`
	Earlier  string `json:"call_back_of"`
	// LaterOn and Later are the date and the path of the call-back that
	// followed on this call, "" when none did.
	LaterOn string `json:"called_back_on"`
	Later   string `json:"called_back_by"`
	// Return and ReturnOf are the like of a call after which this one was to be
	// expected, however long ago.
	Return   *int   `json:"return_days"`
	ReturnOf string `json:"return_of"`
	// FollowedOn, Followed and FollowedAs are the date, the path and the result
	// of the call that followed: of an unsafe one, the first that made it good,
	// else the next.
	FollowedOn string `json:"followed_on"`
	Followed   string `json:"followed_by"`
	FollowedAs string `json:"followed_result"`
	// MadeGood says that a later call proved the repair of the unit that this
	// one left unsafe.
	MadeGood bool `json:"made_good"`

	// cells are the texts of followColumns, nil when nothing is told.
	cells []string
}

// followColumns are the columns of an export for it.
var followColumns = []Column{
	{"call_back_days", Integer, "d", "days since the call before on the unit, " + days(callBackDays) + " at most, when no other was to be expected after it; this and what follows rest on the front matter of the calls", true},
	{"call_back_id", Text, "", "call_id of that call", true},
	{"called_back_on", Date, "", "date of the call-back on this call", true},
	{"called_back_id", Text, "", "call_id of that call-back", true},
	{"return_days", Integer, "d", "days since a call on the unit after which another was to be expected", true},
	{"return_id", Text, "", "call_id of that call", true},
	{"followed_on", Date, "", "date of the next call; of an unsafe one, of the first that made it good", true},
	{"followed_id", Text, "", "call_id of that call", true},
	{"followed_result", Text, "", "result of that call", true},
	{"made_good", Boolean, "", "a later call proved the unit that this one left unsafe", false},
}

// put sets texts from a column on.
//
//go:noinline
func (f *Follow) put(at int, texts ...string) {
	if f.cells == nil {
		f.cells = make([]string, len(followColumns))
	}
	copy(f.cells[at:], texts)
}

// cell is the value of a column; f may be nil.
func (f *Follow) cell(column int) any {
	switch name := followColumns[column].Name; {
	case name == "made_good":
		return f != nil && f.MadeGood
	case f == nil || f.cells == nil:
	case name == "call_back_days" && f.CallBack != nil:
		return int64(*f.CallBack)
	case name == "return_days" && f.Return != nil:
		return int64(*f.Return)
	default:
		return absent(f.cells[column])
	}
	return nil
}

// visit is what finds the calls that follow on each other, also outside the
// filter.
type visit struct {
	unit
	*Follow           // nil when the filter leaves it out
	path, started, id string
	day               time.Time
	result            string
	state             State
	unsafe            bool
	returns           bool // another call is to be expected
}

func newVisit(it *Item, same texts) *visit {
	h := &it.Header
	return &visit{path: it.Path, id: it.ID, day: day(h), started: clip(h.Started), unit: unitOf(h),
		result: same.clip(h.Result), state: it.State, unsafe: len(h.Unsafe) > 0, returns: h.Returns()}
}

// day is the date of a call, the zero time of one that has none.
//
//go:noinline
func day(h *record.Header) time.Time {
	at, err := time.Parse(time.DateOnly, date(h))
	if err != nil {
		return time.Time{}
	}
	return at
}

// proves reports whether a call shows that the unit is sound.
func (v *visit) proves() bool {
	return v.state == Trusted && v.result == record.Proved && !v.unsafe
}

// told is how the call ended, as another tells of it.
//
//go:noinline
func (v *visit) told() string {
	text := cmp.Or(v.result, "no result")
	if v.state != Trusted {
		text += ", " + string(v.state)
	}
	return text
}

// unit is by what two calls are known to be on the same appliance.
type unit struct {
	serial       string // as serialKey gives it
	model, words string
	kinds        int // of appliance
	known        bool
}

// unitOf is the appliance of a call.
//
//go:noinline
func unitOf(h *record.Header) unit {
	return unit{serial: clip(serialKey(h.Serial)), model: clip(h.Model), words: clip(h.Unit)}
}

// learn works out what is only wanted of units that share a serial number.
func (u *unit) learn() {
	if !u.known {
		u.model, u.kinds, u.known = folded(u.model), said.Kinds(u.words), true
	}
}

// same reports whether two calls are on one appliance: the serial number is
// the same, and so is the model where both have one, else nothing in the words
// for the unit says that it is another kind of appliance. Makers number their
// own: two appliances may well bear the same number.
func (u *unit) same(o *unit) bool {
	if u.serial == "" || u.serial != o.serial {
		return false
	}
	u.learn()
	o.learn()
	if u.model != "" && o.model != "" {
		return strings.HasPrefix(u.model, o.model) || strings.HasPrefix(o.model, u.model)
	}
	return u.kinds == 0 || o.kinds == 0 || u.kinds&o.kinds != 0
}

// folded is a text by its letters and digits.
//
//go:noinline
func folded(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, s)
}

// serialKey is a serial number as it is compared: letters and digits. Words, and
// noughts, stand for none: "not readable", "n/a", "000".
func serialKey(s string) string {
	if s = folded(s); strings.ContainsFunc(s, func(r rune) bool { return r != '0' && unicode.IsDigit(r) }) {
		return s
	}
	return ""
}

// mostBefore is how many calls on one serial number are looked through.
const mostBefore = 100

// findFollowing looks, for each call, at the one before it on the same unit, and
// tells both; and for each unsafe one at the one that made it good.
func findFollowing(visits []*visit) {
	order(visits, func(x, y **visit) int {
		a, b := *x, *y
		if c := strings.Compare(a.serial, b.serial); c != 0 {
			return c
		}
		return cmp.Or(a.day.Compare(b.day), strings.Compare(a.started, b.started), strings.Compare(a.path, b.path))
	})
	for i, v := range visits {
		before := true // the one at hand is the last before it
		for k := i - 1; k >= max(0, i-mostBefore) && visits[k].serial == v.serial; k-- {
			o := visits[k]
			if !o.same(&v.unit) {
				continue
			}
			if before {
				o.follows(v)
			}
			before = false
			if o.unsafe && o.Follow != nil && v.proves() && !o.MadeGood {
				o.MadeGood = true
				o.followedBy(v)
			}
		}
	}
}

const aReturn = "return"

// manner is what a call is to the one before it on the same unit, days before:
// "call-back", or "return" when another was to be expected, "" when neither.
func manner(returns bool, days int) string {
	switch {
	case returns:
		return aReturn
	case days <= callBackDays:
		return calledBack
	}
	return ""
}

// follows tells a call and the one after it of each other.
func (v *visit) follows(later *visit) {
	days := int(later.day.Sub(v.day).Hours() / 24)
	is := manner(v.returns, days)
	if is == "" && !v.unsafe {
		return
	}
	v.followedBy(later)
	switch {
	case is == aReturn && later.Follow != nil:
		later.Return, later.ReturnOf = &days, v.path
		later.put(5, v.id)
	case is == calledBack:
		if later.Follow != nil {
			later.CallBack, later.Earlier = &days, v.path
			later.put(1, v.id)
		}
		if v.Follow != nil {
			v.LaterOn, v.Later = later.day.Format(time.DateOnly), later.path
			v.put(2, v.LaterOn, later.id)
		}
	}
}

func (v *visit) followedBy(later *visit) {
	if v.Follow != nil {
		v.FollowedOn, v.Followed, v.FollowedAs = later.day.Format(time.DateOnly), later.path, later.told()
		v.put(6, v.FollowedOn, later.id, v.FollowedAs)
	}
}
