package said

// halfway tells work that leaves the thing as it was: what was put in is not wired, what
// held it out is there still, or no device is in its place (common practice).
var halfway = pattern{expr: `
(loose still|still loose|on painted|painted screw|ground\w* .*neutral)\b
(not|never|\w+n't) (yet |been )*(wired|connected|hooked|landed|in (line|circuit|it))\b
(neutral|wires?|leads?) not on\b
one (wire|lead) off\b
not (in|on|fitted) yet\b
un(wired|hooked|landed|connected)\b
(wires?|leads?|spades) (is |are |was |were )*((still|left) \w+|hanging|loose|capped|looped|shorted|bridged)\b
(wires?|leads?|it|wired) (\w+ )?(past|around|out of)( it)?( circuit)?(,|$)
no (power|wires?|leads?) (to|on|in) it\b
no (\w+ )?(fuse|limit|switch|sw|cutout|overload|eco|interlock) (in|on|fitted)\b
elec\w* (to|will|com)
wiring (to be )?by\b
(tape|tie|jumper|bypass|plug|wire|loop|cap|strap|link|primary|secondary|side)s? (is |are )?still \w+
(falls off again|but broke|floating|wrong (end|one|side)|locked in (manual|hand))\b
\d of \d (bolt|screw|nut)
no (bolts|screws) in\b
gap (big|large|wide)
(pipe|line|discharge|outlet) (is )?(capped|plugged|valved)\b
(replaced|swapped|changed|exchanged) (\w+ ){0,3}?(w|with|by|for|to) (a |an |the |some |cust\w* |brass |pipe |steel )*(plug|cap|nipple|bushing|(gate|ball) valve|toggle|tape|slug|hose|drain|wire ?nut)s?\b
`}
