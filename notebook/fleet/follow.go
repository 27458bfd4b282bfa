package fleet

import (
	"cmp"
	"slices"
	"strings"
	"time"
	"unicode"

	"ohmcall/notebook/record"
)

// callBackDays is how many days after a call another one on the same unit is a
// call-back.
const callBackDays = 30

// visit is what finds the calls that follow on each other, also outside the
// filter.
type visit struct {
	unit
	path, started string
	day           time.Time
	result        string
	state         State
	unsafe        bool
	returns       bool // another call is to be expected
	row           int  // -1 when the filter leaves it out
}

func newVisit(it *Item, same texts) visit {
	h := &it.Header
	return visit{row: -1, path: it.Path, started: clip(h.Started), unit: unitOf(h),
		result: same.clip(h.Result), state: it.State, unsafe: len(h.Unsafe) > 0, returns: h.Returns()}
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
	kinds        int // of appliance, see kindsOf
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
		u.model, u.kinds, u.known = folded(u.model), kindsOf(u.words), true
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

// kinds are the words for kinds of appliance.
var kinds = [][]string{
	{"dishwash"},
	{"washer", "washing", "laundry"},
	{"dryer", "drier", "tumbl"},
	{"fridge", "refrig", "freez", "cooler", "chiller"},
	{"dehumid"},
	{"air con", "aircon", "air-con", "a/c", "split", "window unit"},
	{"oven", "range", "cooker", "stove", "hob", "cooktop"},
	{"microwave"},
	{"water heater"},
	{"furnace", "boiler"},
	{"ice m", "icem"},
}

// kindsOf is the set of the kinds that words name.
func kindsOf(words string) int {
	set := 0
	words = strings.ToLower(words)
	for i, list := range kinds {
		if slices.ContainsFunc(list, func(w string) bool { return strings.Contains(words, w) }) {
			set |= 1 << i
			words = strings.ReplaceAll(words, "dishwasher", "")
		}
	}
	return set
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
func (d *Digest) findFollowing(visits []visit) {
	order(visits, func(a, b *visit) int {
		return cmp.Or(strings.Compare(a.serial, b.serial), a.day.Compare(b.day), strings.Compare(a.started, b.started), strings.Compare(a.path, b.path))
	})
	for i := range visits {
		v := &visits[i]
		before := true // the one at hand is the last before it
		for k := i - 1; k >= max(0, i-mostBefore) && visits[k].serial == v.serial; k-- {
			o := &visits[k]
			if !o.same(&v.unit) {
				continue
			}
			if before {
				d.follows(o, v)
			}
			before = false
			if o.unsafe && o.row >= 0 && v.proves() && !d.Rows[o.row].MadeGood {
				d.Rows[o.row].MadeGood = true
				d.Rows[o.row].followedBy(v)
			}
		}
	}
}

// follows tells two calls, one after the other, of each other.
func (d *Digest) follows(o, v *visit) {
	days := int(v.day.Sub(o.day).Hours() / 24)
	if !o.returns && !o.unsafe && days > callBackDays {
		return
	}
	if o.row >= 0 {
		d.Rows[o.row].followedBy(v)
	}
	switch {
	case o.returns && v.row >= 0:
		d.Rows[v.row].Return, d.Rows[v.row].ReturnOf = &days, o.path
	case !o.returns && days <= callBackDays:
		if v.row >= 0 {
			d.Rows[v.row].CallBack, d.Rows[v.row].Earlier = &days, o.path
		}
		if o.row >= 0 {
			d.Rows[o.row].LaterOn, d.Rows[o.row].Later = v.day.Format(time.DateOnly), v.path
		}
	}
}

//go:noinline
func (r *Row) followedBy(v *visit) {
	r.FollowedOn, r.Followed, r.FollowedAs = v.day.Format(time.DateOnly), v.path, v.told()
}
