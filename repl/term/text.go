package term

import (
	"strings"

	"github.com/rivo/uniseg"
)

// width is how many columns a text takes on the screen.
//
//go:noinline
func width(s string) int { return uniseg.StringWidth(s) }

// wrap breaks a line at spaces so that each part fits; what follows the first
// part hangs under its text. A word wider than the screen is cut. A width
// below 1 does not wrap.
func wrap(s string, columns int) []string {
	s = strings.TrimRight(s, " ")
	if columns < 1 || width(s) <= columns {
		return []string{s}
	}
	hang := hanging(s, columns)
	var out []string
	for line, indent := s, 0; ; indent = hang {
		head, rest := fit(line, columns-indent)
		out = append(out, strings.Repeat(" ", indent)+head)
		if rest == "" {
			return out
		}
		line = rest
	}
}

// hanging is the column under which the further parts of a line stand: that
// of the text after a first gap of two or more spaces, else two more than
// the line's own indent.
func hanging(s string, columns int) int {
	body := strings.TrimLeft(s, " ")
	indent := len(s) - len(body)
	if i := strings.Index(body, "  "); i > 0 {
		text := strings.TrimLeft(body[i:], " ")
		if at := width(s) - width(text); at <= columns/2 {
			return at
		}
	}
	return min(indent+2, columns/2)
}

// fit divides a text into what fits into the columns, at a space where there
// is one, and the rest.
func fit(s string, columns int) (head, rest string) {
	columns = max(columns, 1)
	if width(s) <= columns {
		return s, ""
	}
	indent := len(s) - len(strings.TrimLeft(s, " "))
	space, used, at, state := -1, 0, 0, -1
	for tail := s; tail != ""; {
		var cluster string
		var w int
		cluster, tail, w, state = uniseg.FirstGraphemeClusterInString(tail, state)
		if cluster == " " && at >= indent && used <= columns {
			space = at
		}
		if used+w > columns && at > 0 {
			break
		}
		used += w
		at += len(cluster)
	}
	if space > 0 {
		return strings.TrimRight(s[:space], " "), strings.TrimLeft(s[space:], " ")
	}
	return s[:at], strings.TrimLeft(s[at:], " ")
}

// pointAt gives a line and, under it, carets below the runes from col up to
// end (from 1). Both are cut to the columns around the place; cut ends show
// as three dots.
func pointAt(line string, col, end, columns int) (shown, carets string) {
	r := []rune(line)
	from := min(max(col-1, 0), len(r))
	to := min(max(end-1, from), len(r))
	before, marked, after := string(r[:from]), string(r[from:to]), string(r[to:])
	if columns > 0 {
		const margin, dots = 2, "..."
		room := max(columns-margin-2*len(dots), 4)
		if width(line) > columns-margin {
			if width(marked) > room/2 {
				marked, after = fitStart(marked, room/2), dots
			}
			if left := (room - width(marked)) / 2; width(before) > left {
				before = dots + fitEnd(before, left)
			}
			if left := room - width(strings.TrimPrefix(before, dots)) - width(marked); after != dots && width(after) > left {
				after = fitStart(after, left) + dots
			}
		}
	}
	return before + marked + after, strings.Repeat(" ", width(before)) + strings.Repeat("^", max(width(marked), 1))
}

// fitStart is the longest start of a text that fits.
func fitStart(s string, columns int) string {
	at, used, state := 0, 0, -1
	for tail := s; tail != ""; {
		var cluster string
		var w int
		cluster, tail, w, state = uniseg.FirstGraphemeClusterInString(tail, state)
		if used+w > columns {
			break
		}
		used += w
		at += len(cluster)
	}
	return s[:at]
}

// fitEnd is the longest end of a text that fits.
func fitEnd(s string, columns int) string {
	for s != "" && width(s) > columns {
		_, s, _, _ = uniseg.FirstGraphemeClusterInString(s, -1)
	}
	return s
}

// columns lays words out in columns of equal width, two spaces apart; items
// that have columns of their own stand one on a line.
func columns(items []string, screen int) []string {
	widestItem := 0
	for _, s := range items {
		widestItem = max(widestItem, width(s))
	}
	perLine := 1
	if screen > 0 && !strings.Contains(strings.Join(items, "\n"), "  ") {
		perLine = max(1, (screen+2)/(widestItem+2))
	}
	var out []string
	for len(items) > 0 {
		n := min(perLine, len(items))
		var b strings.Builder
		for i, s := range items[:n] {
			b.WriteString(s)
			if i < n-1 {
				b.WriteString(strings.Repeat(" ", widestItem+2-width(s)))
			}
		}
		out = append(out, wrap(b.String(), screen)...)
		items = items[n:]
	}
	return out
}
