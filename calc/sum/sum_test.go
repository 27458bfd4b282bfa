package sum

import "ohmcall/calc/source"

var missing = source.Errorf(0, 0, "there is no such reading")
