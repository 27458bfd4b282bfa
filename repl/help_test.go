package repl

import "ohmcall/notebook/call"

func commandWords() []string {
	var out []string
	for _, c := range call.Commands() {
		out = append(out, c.Word)
	}
	return out
}
