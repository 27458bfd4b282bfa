package call

import (
	"strings"
	"testing"
)

// Work after which three legs may come in another order is proved by how it turns:
// common practice.
func TestRotationProved(t *testing.T) {
	const (
		pump  = "unit three-phase pump; fault turns backwards; saw turns wrong way; "
		swap  = "did swapped L1 and L2; saw starts"
		split = "unit three-phase rooftop split; fault no cool; did replaced compressor"
	)
	for lines, want := range map[string]bool{
		pump + swap:                                     true,
		pump + swap + "; saw turns right way":           false,
		pump + swap + "; saw rotation correct":          false,
		pump + "saw rotation right; " + swap:            true,
		pump + "did rewired the disconnect; saw starts": true,
		"unit three-phase exhaust fan; fault weak draft, blows backward after motor change; did swapped two phases": true,
		"unit three-phase pump; fault does not run; did new motor":                                                  true,
		"unit three-phase pump; fault does not run; did reversed two leads":                                         true,
		"unit three-phase pump; fault does not run; did new motor overload":                                         false,
		"unit three-phase pump; fault does not run; did swapped the L1 fuse":                                        false,
		"unit three-phase pump; fault does not run; did new contactor":                                              false,
		"unit pump; fault does not run; did new motor":                                                              false,
		split:                                   true,
		split + "; saw frost even":              false,
		split + "; temp return 80F, supply 60F": false,
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		if missing := strings.Join(c.proofMissing(), "; "); strings.Contains(missing, "the rotation seen") != want {
			t.Errorf("%s: rotation missing %t, want %t: %q", lines, !want, want, missing)
		}
	}
	c := applyAll(t, strings.Split(pump+swap, "; ")...)
	if missing := strings.Join(c.missing(), "; "); strings.Contains(missing, "windings") || strings.Contains(missing, "to case") {
		t.Errorf("swapped legs want the windings read: %q", missing)
	}
}
