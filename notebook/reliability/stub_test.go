package reliability

func clocks(w *watch, c string)      {}
func determinism(w *watch, c string) {}
func sizes(w *watch, c string)       {}
func badText(w *watch, c string)     {}
func escapes(w *watch, c string)     {}
func markup(w *watch, c string)      {}
func bombs(w *watch, c string)       {}
func mutations(w *watch, c string)   {}
func paths(w *watch, c string)       {}
func quiet(w *watch, c string)       {}
func digestChild(a, c string) int    { return 0 }
