// Package failpoint names the guards that the tests of reliability break on
// purpose, to show that they notice. An ordinary build has none of it: On is
// false there, known when compiling, and what it stands before is left out.
// Only a build with the tag `faults` can break a guard, one at a time.
package failpoint

// Point is a guard that can be broken, in words that end "what if …".
type Point string

// The points. Each stands at one place in the program.
const (
	AckFirst    Point = "the reply is given before the write"
	TornRefused Point = "a torn last line is refused"

	NoSync         Point = "no sync after an entry"
	NoSyncNew      Point = "no sync before the rename"
	NoSyncDir      Point = "no sync of the directory"
	SyncSwallowed  Point = "errors of sync are swallowed"
	WriteSwallowed Point = "errors of write are swallowed"
	SyncRetried    Point = "a sync that failed is tried again"
	NotCut         Point = "what was half written is not cut off"
	NotRepeated    Point = "interrupted calls are not repeated"
	LockInside     Point = "the lock is on the notebook itself"
	OpenMode       Point = "temporary files are made with mode 0644"
	LinkReplaced   Point = "a link is replaced by a file"
	HeldTrusted    Point = "the file held is trusted blindly"
	AnythingRead   Point = "whatever is there is read"
	ReadLocks      Point = "reading takes the lock"
	UnkeptOpened   Point = "a file that cannot be written is opened all the same"
	NoBounds       Point = "a replay has no bounds"
	ByTime         Point = "entries are ordered by time"
	MapOrder       Point = "a map is walked in its own order"
	NotCleaned     Point = "text is stored as it came"
	ErrorRaw       Point = "the text of an error is printed as it came"
	NotEscaped     Point = "cells are not escaped"
	BareReplies    Point = "replies stand bare in the log"
	NotVetted      Point = "the evaluator's own limits only"
	RarePair       Point = "a seeded panic on a rare pair of bytes"
	Socket         Point = "a socket is opened"
)
