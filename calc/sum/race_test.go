//go:build race

package sum

// The race detector makes every step several times slower than what people
// run; the bound on time is widened for it alone.
const slower = 10
