//go:build !race

package sum

const slower = 1
