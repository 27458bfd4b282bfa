package call

import (
	"strings"
	"testing"
)

// TestSumOfReadingReadAgain holds that a named sum whose reading was read again since
// says so where it is used, and the record too, and what compares the two does not.
func TestSumOfReadingReadAgain(t *testing.T) {
	const split = "temp return 75F; temp supply 55F; let split = temp(return) - temp(supply); "
	for _, r := range []struct{ lines, again, met string }{
		{split + "split", "", ""},
		{split + "temp supply 62F; split", "split rests on supply 55 °F (entry 2), read again as 62 °F (entry 4).", ""},
		{split + `temp supply 62F; expect split > 15Fdiff "good"`, "split rests on supply 55 °F (entry 2), read again as 62 °F (entry 4).", "in doubt"},
		{split + `temp supply 62F; let split = temp(return) - temp(supply); expect split < 20Fdiff "good"`, "", "met"},
		{split + "temp supply 62F; strike 4 misread; split", "", ""},
		{split + "temp supply 55F; split", "", ""},
		{split + "temp supply 62F after; split", "", ""},
		{split + "let half = split / 2; temp supply 62F; half", "half rests on supply 55 °F (entry 2), read again as 62 °F (entry 5).", ""},
		{`let was = 1 A; amp comp 1.1 run; amp comp 1.4 run; was`, "", ""},
		{`ohm A B 3.5; let ohms = ohm(A, B); def double(x) = x * ohms; ohm B A 5.5; double(2)`, "ohms rests on A–B 3.5 Ω (entry 1), read again as 5.5 Ω (entry 4).", ""},
		{`ohm A B 3.5; let ohms = ohm(A, B); ohm A B OL; ohms`, "ohms rests on A–B 3.5 Ω (entry 1), read again as OL (entry 3).", ""},
		{`temp freezer 40F; let was = temp(freezer); temp freezer 20F; expect was - temp(freezer) > 10Fdiff "falls"`, "", "met"},
		{`temp freezer 40F; let was = temp(freezer); expect was > 30F "warm"; temp freezer 20F; show`, "", "met"},
		{`temp supply (20C + 3Cdiff); let s = temp(supply); temp supply 30C; s`, "s rests on supply ", ""},
	} {
		lines := strings.Split(r.lines, "; ")
		c := applyAll(t, lines[:len(lines)-1]...)
		e := must(t, c, lines[len(lines)-1])
		reply := e.Reply.Plain()
		rec := c.Record()
		got := ""
		for _, s := range rec.Sums {
			if s.Met != "" {
				got = s.Met
			}
		}
		if has := strings.Contains(reply, r.again); !has || r.again == "" && strings.Contains(reply, "read again as") || got != r.met {
			t.Errorf("%s: %q, %q\n%s", r.lines, r.again, got, reply)
		}
		if last := rec.Sums[len(rec.Sums)-1]; r.again != "" && !strings.Contains(last.Meaning, "read again as") {
			t.Errorf("%s: the record has %q", r.lines, last.Meaning)
		}
	}
}
