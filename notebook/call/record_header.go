package call

import (
	"slices"

	"ohmcall/notebook/record"
)

// What the front matter holds of a text, in runes, and of a list: it is for
// programs that go through many files, and is read up to a size only. The
// sections and the log have all of it.
const (
	headerText = 1000
	headerItem = 300
	headerList = 100
)

// brief cuts a header to what front matter holds.
func brief(h *record.Header) {
	for _, s := range []*string{&h.Technician, &h.Client, &h.Site, &h.Unit, &h.Model, &h.Serial, &h.Machine, &h.Complaint, &h.Cause} {
		*s = clip(*s, headerText)
	}
	for _, l := range []*[]string{&h.Missing, &h.Unsafe, &h.Doubt, &h.Said, &h.Parts, &h.Ohms} {
		if n := len(*l); n > headerList {
			*l = append((*l)[:headerList-1:headerList-1], "and "+itoa(n-headerList+1)+" more")
		}
		if slices.ContainsFunc(*l, func(s string) bool { return len(s) > headerItem }) {
			*l = slices.Clone(*l)
			for i, s := range *l {
				(*l)[i] = clip(s, headerItem)
			}
		}
	}
}
