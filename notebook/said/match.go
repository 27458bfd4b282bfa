package said

import "slices"

func union(words []tag) (all tag) {
	for _, t := range words {
		all |= t
	}
	return all
}

// mayBe reports whether tags are enough for any of several ways.
func mayBe(all tag, ways [][]tag) bool {
	return slices.ContainsFunc(ways, func(way []tag) bool {
		for _, step := range way {
			if step&final == 0 && step&all == 0 {
				return false
			}
		}
		return true
	})
}

// match finds the first place where the words go a way: where it begins and ends,
// -1 when nowhere.
func match(words []tag, way []tag) (at, end int) {
	for i, t := range words {
		if t&way[0] != 0 {
			if end := follow(words, i+1, way[1:]); end >= 0 {
				return i, end
			}
		}
	}
	return -1, -1
}

// follow gives the end of what goes on from a place, -1 when it does not.
func follow(words []tag, from int, way []tag) int {
	if len(way) == 0 || from == len(words) && way[0]&final != 0 {
		return from
	}
	gap := 0
	switch {
	case way[0]&near != 0:
		gap = 2
	case way[0]&far != 0:
		gap = 5
	}
	for i := from; i <= from+gap && i < len(words); i++ {
		if words[i]&way[0] != 0 {
			if end := follow(words, i+1, way[1:]); end >= 0 {
				return end
			}
		}
	}
	return -1
}

// hush takes out of the words from a place what a quiet way speaks of: its first,
// and what is no device and no wire.
func hush(words []tag, at int, way []tag) {
	words[at] = 0
	for _, step := range way[1:] {
		for at++; at < len(words) && words[at]&step == 0; {
			at++
		}
		if at < len(words) {
			words[at] &= held | wiry | theDev | guarded | fused
		}
	}
}

// retracted reports whether what the words from a place on say is denied before its
// end, or wished for.
func retracted(words []tag, at, end int) bool {
	not := false
	for i, t := range words[:end-1] {
		if i > at && t&instead != 0 {
			continue
		}
		switch {
		case t&so != 0, i < at && t&takes != 0: // what is not taken off is there
			not = false
		case t&no != 0, t&modal != 0 && at-i <= 4:
			not = true
		}
	}
	return not && !(end < len(words) && words[end]&(off|takes) != 0)
}
