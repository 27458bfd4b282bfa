package cause

import "sync"

// causeTables hold every cause once, with the findings and the test that no other
// one asks for; complaints name them by code. Those that are rows of text are read
// when first asked for.
var causeTables = sync.OnceValue(func() [][]Cause {
	return [][]Cause{startCauses, coldCauses, causesIn(coldRows), otherCauses, causesIn(otherRows), airCauses, contactorCauses, heatCauses, wetCauses,
		burnerCauses, causesIn(gasRows), phaseCauses, iceCauses, doorCauses, stillCauses, fuseCauses, causesIn(leakRows)}
})

// testTables hold every test that several causes share, in the order in which
// equals are proposed; behind them come those that causes have of their own.
var testTables = sync.OnceValue(func() [][]Test {
	return [][]Test{testsIn(startTestRows), testsIn(coldTestRows), testsIn(otherTestRows), testsIn(tradeTestRows), testsIn(gasTestRows), testsIn(leakTestRows)}
})
