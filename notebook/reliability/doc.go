// Package reliability holds the tests of the whole program: that nothing
// acknowledged is lost and that nothing hostile gets in. It has no code of its
// own. Each row of its table (bar_test.go) is a promise, the figure it was
// held to, and its controls: guards of the program that, broken on purpose in a
// build of their own, must turn the very same run red. The tests need Linux and strace.
//
// The short figures are those of plain `go test`; the long run is
//
//	OHMCALL_LONG=1 go test ./notebook/reliability -timeout 60m
package reliability
