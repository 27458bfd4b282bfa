package call

import "testing"

// Parts without a price are counted: the cost of parts lacks them.
func TestPartsWithoutAPrice(t *testing.T) {
	for _, x := range []struct {
		lines    []string
		unpriced int
		cost     float64
	}{
		{[]string{"part valve 1 x 20"}, 1, 0},
		{[]string{"part hose, 2, 12.50"}, 0, 25},
		{[]string{"part hose, 2, 12.50", "part clamp", "part wire nut, 3"}, 2, 25},
		{[]string{"part hose, 2, 0", "part clamp", "strike 2 not used"}, 0, 0},
	} {
		if h := applyAll(t, x.lines...).Record().Header; h.Unpriced != x.unpriced || h.Cost != x.cost {
			t.Errorf("%q: %d without a price, cost %v", x.lines, h.Unpriced, h.Cost)
		}
	}
}
