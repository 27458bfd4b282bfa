package call

import (
	"math/rand/v2"
	"strings"
	"testing"
)

// pieces are what lines are made of, right and wrong: points, values, conditions,
// signs, empty names, words of every kind of command.
const pieces = `A B C case csae L1 L2 T1 N line comp ptc ol relay relay-coil heater bake earth fan evap-fan cond-fan freezer fridge suction C1 run-cap start-cap plug door-switch
3.4 3,4 0 -1 OL ol >200M ~6.5 4k7 3R4 118 118V 45uF 45 mfd 1.2A 200F -18C 5inHg 500microns 1e9 NaN () (1+2) 10% 3s
run start hot cold peak open closed dc test 500V at 25C before after once upright "" "A B" ' " # , ; = + * / ( ) - : . ... … ° Ω é 14:30 +40min
volts amps watts hz lra gas R-600a type inverter black white common run start off on with for new replaced jumper no not bad good 1 2 99 strike undo oops in degC`

// TestRandomLines types each such piece behind each command's word, and lines of several,
// one after the other: whatever comes, it is answered or refused.
func TestRandomLines(t *testing.T) {
	n := 30_000
	if testing.Short() {
		n = 5_000
	}
	words := strings.Fields(pieces)
	commands := append(commandWords(), "", "")
	var lines []string
	for _, c := range commands {
		for _, w := range words {
			lines = append(lines, strings.TrimSpace(c+" "+w))
		}
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range n {
		line := commands[r.IntN(len(commands))]
		for range r.IntN(7) {
			if line != "" && r.IntN(6) > 0 {
				line += " "
			}
			line += words[r.IntN(len(words))]
		}
		lines = append(lines, line)
	}
	c := New()
	for i, line := range lines {
		if i%40 == 0 {
			c = New()
		}
		func() {
			defer func() {
				if p := recover(); p != nil {
					t.Errorf("%q: %v", line, p)
				}
			}()
			full := c.Expand(line)
			if c.Doubtful(full) == nil {
				c.Apply(nine, full)
			}
		}()
	}
}
