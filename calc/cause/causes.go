package cause

// causeTables hold every cause once, with the findings and the test that no other
// one asks for; complaints name them by code.
var causeTables = [][]Cause{startCauses, coldCauses, plainColdCauses, otherCauses, plainOtherCauses, airCauses, contactorCauses, heatCauses, wetCauses, burnerCauses, gasCauses, phaseCauses, iceCauses, doorCauses, stillCauses, fuseCauses}

// testTables hold every test that several causes share, in the order in which
// equals are proposed; behind them come those that causes have of their own.
var testTables = [][]Test{startTests, coldTests, otherTests, tradeTests, gasTests}
