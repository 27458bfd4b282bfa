package fleet

import "testing"

// Trigger characters: OWASP ASVS 1.2.10 names = + - @ tab and NUL; carriage
// return and the full-width forms are from memory. What becomes of numbers was
// seen in a spreadsheet engine by .ci/export-check.
func TestCell(t *testing.T) {
	for _, c := range []struct{ in, want string }{
		{"", ""}, {"plain", "plain"}, {"a=b", "a=b"}, {"O'Sample", "O'Sample"},
		{"=1+1", "'=1+1"}, {"+1+1", "'+1+1"}, {"-1+1", "'-1+1"}, {"@SUM(A1)", "'@SUM(A1)"},
		{"\tx", "'\tx"}, {"\rx", "'\rx"}, {"\nx", "'\nx"}, {"\x00x", "'\x00x"},
		{"＝1", "'＝1"}, {"＋1", "'＋1"}, {"－1", "'－1"}, {"＠x", "'＠x"},
		{"  =1+1", "'  =1+1"}, {"\u00a0@x", "'\u00a0@x"},
		{"-12.5", "-12.5"}, {"0", "0"}, {"7", "7"}, {"123456789012345", "123456789012345"},
		{"+3", "'+3"}, {"-1e-3", "'-1e-3"}, {"-2E+07", "'-2E+07"}, {"000123", "'000123"}, {"1.50", "'1.50"}, {"1e5", "'1e5"}, {"1234567890123456", "'1234567890123456"}, {"007F", "007F"},
		{"15 %", "'15 %"}, {"5%", "'5%"}, {"15 % of 3", "15 % of 3"},
		{"-", "'-"}, {"-+5", "'-+5"}, {"-.5", "'-.5"}, {"-5.", "'-5."}, {"-1e", "'-1e"}, {"-1 ", "'-1 "}, {"-1e5x", "'-1e5x"},
		{"-2F", "'-2F"}, {" -2", "' -2"}, {"--2", "'--2"},
	} {
		if got := Cell(c.in); got != c.want {
			t.Errorf("Cell(%q) = %q, want %q", c.in, got, c.want)
		}
	}
}
