package cause

// causeTables hold every cause once; complaints name them by code.
var causeTables = [][]Cause{startCauses, coldCauses, otherCauses, airCauses, wetCauses, burnerCauses, phaseCauses}

// testTables hold every test once, in the order in which equals are proposed.
var testTables = [][]Test{startTests, coldTests, otherTests, tradeTests}
