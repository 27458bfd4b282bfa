package cause

// Needs that several complaints share.
var (
	needWindings = Need{"windings of the machine, three pairs", []string{"windings-sound", "windings-equal", "winding-open", "winding-shorted",
		"protector-open", "protector-open-cold", "protector-reset", "windings-open-unplaced"}}
	needCase   = Need{"each pin to case", []string{"insulation-sound", "insulation-no-gross-fault", "insulation-suspect", "insulation-failed", "winding-grounded"}}
	needSupply = Need{"volts of the supply", []string{"supply-sound", "supply-low", "supply-high", "supply-absent", "leg-missing"}}
	needStart  = Need{"start observed", []string{"starts-and-runs", "does-not-start", "clicks", "hums", "silent"}}
	needAmps   = Need{"running amps", []string{"amps-none", "amps-low", "amps-sound", "amps-high", "amps-locked-rotor"}}
)

// complaints holds the common complaints, the most specific first: of two that
// match a text equally well the earlier one is meant.
var complaints = []Complaint{
	{
		Code: "no-start", Name: "clicks or stays silent and does not start",
		Words: []string{"click", "clicks", "clicking", "not start", "won't start", "doesn't start", "no start", "compressor not running", "compressor off", "compressor dead"},
		Signs: []string{"clicks", "does-not-start"},
		Cured: []string{"starts-and-runs"},
		Causes: []string{"winding-grounded", "no-supply", "supply-weak", "control-not-calling", "connection-weak", "miswired",
			"start-device-failed", "start-cap-failed", "run-cap-failed", "winding-open", "winding-shorted", "protector-hot", "protector-failed", "overload-failed",
			"pressure-unequalised", "drive-fault", "compressor-seized"},
		Need: []Need{needSupply, needWindings, needCase,
			{"start device", []string{"start-device-sound", "start-device-suspect", "start-device-failed", "device-rattles", "device-burnt", "windings-equal", "drive-fault-shown", "drive-no-fault"}}, needStart, needAmps},
	},
}
