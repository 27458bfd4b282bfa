package main

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"ohmcall": main})
}

// TestScripts drives the program as a person or another program does.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(e *testscript.Env) error {
			e.Setenv("HOME", e.WorkDir)
			e.Setenv("TZ", "UTC")
			e.Setenv("EXAMPLES", mustAbs(t, "../../examples"))
			return os.Unsetenv("OHMCALL_DIR")
		},
	})
}
