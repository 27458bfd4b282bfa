package cause

import "slices"

// causeTable holds every cause once; complaints name them by code.
var causeTable = slices.Concat(startCauses, coldCauses, otherCauses)

// tests holds every test once, in the order in which equals are proposed.
var tests = slices.Concat(startTests, coldTests, otherTests)
