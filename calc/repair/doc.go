// Package repair holds the sums and lists between a finding and its repair:
// what a start kit must be, how a capacitor is sized, whether a part's wires
// serve each role once, and what repairing costs against replacing.
//
// It keeps no catalogue and no colour code. What it asks of a part is a list
// to hold against the label of the part in hand, whose own instructions and
// the local code come first. Nothing here proposes to bridge or to leave out
// a protective device.
package repair
