package pulldown

import "math"

// gridSteps is how many values of τ are tried, evenly in its logarithm,
// before the best is refined: steps of a tenth or less, finer than any
// structure chi² has.
const gridSteps = 64

// minimize finds where f is least between low and high, both positive.
func minimize(f func(float64) float64, low, high float64) float64 {
	best, least := 0, math.Inf(1)
	for i := range gridSteps + 1 {
		if y := f(gridded(low, high, i)); y < least {
			best, least = i, y
		}
	}
	x := golden(f, gridded(low, high, max(best-1, 0)), gridded(low, high, min(best+1, gridSteps)), 40)
	if f(x) > least {
		return gridded(low, high, best)
	}
	return x
}

// gridded is the i-th of gridSteps even steps from low to high in their
// logarithm; both ends are exact.
func gridded(low, high float64, i int) float64 {
	switch i {
	case 0:
		return low
	case gridSteps:
		return high
	}
	return low * math.Pow(high/low, float64(i)/gridSteps)
}

// golden narrows down the least f between a and b by so many golden sections.
func golden(f func(float64) float64, a, b float64, sections int) float64 {
	const ratio = 0.6180339887498949
	x1, x2 := b-ratio*(b-a), a+ratio*(b-a)
	y1, y2 := f(x1), f(x2)
	for range sections {
		if y1 < y2 {
			b, x2, y2 = x2, x1, y1
			x1 = b - ratio*(b-a)
			y1 = f(x1)
		} else {
			a, x1, y1 = x1, x2, y2
			x2 = a + ratio*(b-a)
			y2 = f(x2)
		}
	}
	return (a + b) / 2
}

// crossing finds the value between in, which is not above, and out, which is.
func crossing(above func(float64) bool, in, out float64) float64 {
	for range 36 {
		mid := math.Sqrt(in * out)
		if above(mid) {
			out = mid
		} else {
			in = mid
		}
	}
	return in
}

// invert gives the inverse of a symmetric matrix, scaled first because its
// rows carry different units; ok is false where it is as good as singular.
func invert(m [3][3]float64) (inverse [3][3]float64, ok bool) {
	var scale [3]float64
	for i := range m {
		if m[i][i] <= 0 {
			return inverse, false
		}
		scale[i] = 1 / math.Sqrt(m[i][i])
	}
	for i := range m {
		for j := range m {
			m[i][j] *= scale[i] * scale[j]
		}
	}
	cofactor := func(i, j int) float64 {
		a, b, c, d := (i+1)%3, (i+2)%3, (j+1)%3, (j+2)%3
		return m[a][c]*m[b][d] - m[a][d]*m[b][c]
	}
	det := m[0][0]*cofactor(0, 0) + m[0][1]*cofactor(0, 1) + m[0][2]*cofactor(0, 2)
	if det < 1e-13 {
		return inverse, false
	}
	for i := range m {
		for j := range m {
			inverse[i][j] = cofactor(j, i) / det * scale[i] * scale[j]
		}
	}
	return inverse, true
}

// student is the factor of Student's t for 95 % (JCGM 100:2008 Table G.2).
func student(freedom int) float64 {
	return [...]float64{12.71, 4.30, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31}[freedom-1]
}

// chi2Limit is what chi² exceeds once in a hundred fits of sound readings
// (Wilson & Hilferty 1931, within 3 % of the exact quantile).
func chi2Limit(freedom int) float64 {
	const z99 = 2.3263
	v := 2 / (9 * float64(freedom))
	c := 1 - v + z99*math.Sqrt(v)
	return float64(freedom) * c * c * c
}
