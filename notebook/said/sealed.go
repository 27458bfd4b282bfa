package said

// sealedWork are words of work on a sealed system; soldering is, unless it is
// of something electrical.
var (
	sealedWork = []string{"purged", "vented", "vent the gas", "vent the charge", "vent refrigerant", "braz", "recharg", "charged with", "recover", "evacuat", "new compressor", "replaced compressor",
		"replaced the compressor", "cut the tube", "piercing", "access valve", "drier"}
	electrical = []string{"wire", "lamp", "lead", "board", "terminal", "connector", "plug", "switch", "contact", "relay"}
)

// OpensSystem reports whether words are of work on a sealed system.
func OpensSystem(text string) bool {
	return Has(text, sealedWork) || Has(text, []string{"solder"}) && !Has(text, electrical)
}
