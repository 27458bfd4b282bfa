package record

import (
	"slices"
	"strings"
)

// Beyond is what a head says of the end of a call that the header which the log
// amounts to no longer shows, in words; "" for nothing. It is for a file whose
// log was cut off or changed since the head was written.
func (h *Header) Beyond(now *Header) string {
	var out []string
	if list := h.unsafeBeyond(now); len(list) > 0 {
		out = append(out, "unsafe: "+strings.Join(list, "; "))
	}
	if h.Left != "" && h.Left != now.Left {
		out = append(out, "left "+h.Left)
	}
	if h.Result != "" && h.Result != now.Result {
		out = append(out, "result "+h.Result)
	}
	return strings.Join(out, "; ")
}

//go:noinline
func (h *Header) unsafeBeyond(now *Header) []string {
	var out []string
	for _, s := range h.Unsafe {
		if !slices.Contains(now.Unsafe, s) {
			out = append(out, s)
		}
	}
	return out
}

// Remember gives a record whose log is not whole what the head still says: a
// danger counts as long as nobody has looked, and who and what it is stays.
func (r *Record) Remember(h *Header) {
	now := &r.Header
	var alerts []string
	for _, s := range h.unsafeBeyond(now) {
		s = Remembered + s
		now.Unsafe = append(now.Unsafe, s)
		alerts = append(alerts, "Unsafe: "+s)
	}
	r.Alerts = append(alerts, r.Alerts...)
	if len(now.Unsafe) > 0 {
		now.Result = Unsafe
	}
	if now.Left == "" {
		now.Left = h.Left
	}
	for _, f := range [][2]*string{{&now.Started, &h.Started}, {&now.Technician, &h.Technician}, {&now.Client, &h.Client}, {&now.Site, &h.Site}, {&now.Unit, &h.Unit},
		{&now.Model, &h.Model}, {&now.Serial, &h.Serial}, {&now.Machine, &h.Machine}, {&now.Complaint, &h.Complaint}, {&now.Kind, &h.Kind}} {
		if *f[0] == "" {
			*f[0] = *f[1]
		}
	}
}

// Remembered begins what only the head of a file still tells.
const Remembered = "its head spoke of: "
