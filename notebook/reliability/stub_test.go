package reliability

func mutations(w *watch, c string) {}
