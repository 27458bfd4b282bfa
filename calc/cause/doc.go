// Package cause keeps the list of causes that are still possible for a
// complaint, says which facts rule each in or out, and names the one test that
// parts best what is left.
//
// The method is consistency-based. A fact is a code with the number of the
// notebook entry that established it. Each cause lists the facts that it
// predicts, those that show it by themselves, and those that it cannot stand
// beside. A cause is ruled out by a fact that it cannot stand beside, and by
// nothing else; no weight and no percentage is invented. Facts that exclude
// each other are reported as a contradiction, and until one of the two is
// settled neither of them rules out or shows anything.
//
// All trade knowledge is in tables: the causes (causes_*.go) with what each is
// told by alone, what several are told by, which is the shared vocabulary
// (seen.go, judged.go) and the shared tests (tests_*.go), the order of the tests
// (courses.go) and the complaints (complaints.go). The package is pure: it reads
// no file, no clock and no terminal, and what it returns does not depend on the
// order of the facts.
package cause
