package winding

import (
	"cmp"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"ohmcall/calc/measure"
)

// number prints x in at most five significant digits, without trailing zeros.
func number(x float64) string {
	if x != 0 && math.Abs(x) < 1e-4 {
		return "0"
	}
	s := strconv.FormatFloat(x, 'g', 5, 64)
	if strings.ContainsRune(s, 'e') {
		s = strconv.FormatFloat(x, 'f', 0, 64)
	}
	return strings.Replace(s, "-", "−", 1)
}

// ohms prints a resistance with its unit.
func ohms(x float64) string {
	switch a := math.Abs(x); {
	case a >= 1e6:
		return number(x/1e6) + " MΩ"
	case a >= 1e3:
		return number(x/1e3) + " kΩ"
	}
	return number(x) + " Ω"
}

// rounded prints a computed resistance: two digits are as many as its
// uncertainty deserves.
func rounded(x float64) string {
	if x == 0 {
		return "0 Ω"
	}
	scale := math.Pow(10, 1-math.Floor(math.Log10(math.Abs(x))))
	return ohms(math.Round(x*scale) / scale)
}

// percent prints a share with as many digits as it deserves.
func percent(p float64) string {
	p = math.Abs(p)
	digits := 0
	if p < 1 {
		digits = 1
	}
	return strconv.FormatFloat(p, 'f', digits, 64) + " %"
}

// reads prints a reading with its unit, "about" before a rough one.
func reads(v measure.Value) string {
	switch {
	case v.Over:
		return "OL"
	case v.Rough:
		return "about " + ohms(v.X)
	}
	return ohms(v.X)
}

// bare is reads without the unit.
func bare(v measure.Value) string {
	if v.Rough {
		return "about " + number(v.X)
	}
	return number(v.X)
}

// between prints a computed value: its bounds when they say more than one
// number would.
func between(v measure.Value) string {
	lo, hi := max(v.Lo, 0), v.Hi
	return "about " + ohms(round3(max(v.X, 0))) + " (" + strings.TrimSuffix(rounded(lo), " Ω") + " to " + rounded(hi) + ")"
}

// list joins words: "A, B and C".
func list(words []string, last string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
	}
}

// roleOrder is the order in which roles are named.
var roleOrder = []Role{Common, Start, Run, High, MediumHigh, Medium, MediumLow, Low, Main, Auxiliary, Protector}

// named says the roles: "B is common, A is start, C is run".
func named(roles map[string]Role) string {
	type lead struct {
		order int
		pin   string
	}
	leads := make([]lead, 0, 8)
	for pin, role := range roles {
		leads = append(leads, lead{slices.Index(roleOrder, role), pin})
	}
	sort.Slice(leads, func(i, k int) bool {
		return cmp.Or(cmp.Compare(leads[i].order, leads[k].order), cmp.Compare(leads[i].pin, leads[k].pin)) < 0
	})
	var out strings.Builder
	out.Grow(20 * len(leads))
	for i, l := range leads {
		role := string(roles[l.pin])
		last := i == len(leads)-1 || leads[i+1].order != l.order
		first := i == 0 || leads[i-1].order != l.order
		switch {
		case i == 0:
		case first:
			out.WriteString(", ")
		case last:
			out.WriteString(" and ")
		default:
			out.WriteString(", ")
		}
		out.WriteString(l.pin)
		switch {
		case first && last:
			out.WriteString(" is " + role)
		case last:
			out.WriteString(" are " + role)
		}
	}
	return out.String()
}
