package said

import "testing"

// TestOpened tells the work that opens a joint of gas or refrigerant from that
// beside it.
func TestOpened(t *testing.T) {
	for text, want := range map[string]Joint{
		"replaced gas valve": GasJoint, "fitted new gas regulator": GasJoint, "resealed gas union": GasJoint, "new gas hose": GasJoint, "tightened gas fitting": GasJoint,
		"replaced pilot": BurnerJoint, "replaced manifold": BurnerJoint, "resealed pipe joint": BurnerJoint, "replaced regulator": BurnerJoint, "replaced the valve": BurnerJoint,
		"changed the orifices": BurnerJoint, "replaced safety valve": BurnerJoint, "replaced bake valve": BurnerJoint,
		"replaced gas valve coils": "", "opened gas cock": "", "relit the pilot": "", "ordered gas valve": "", "checked gas valve": "", "replaced drain valve": "", "replaced igniter": "",
		"cleaned flame sensor": "", "shut the gas cock": "",
		"fitted new compressor, brazed, charged 40g": RefrigerantJoint, "replaced compressor": RefrigerantJoint, "new drier": RefrigerantJoint, "replaced evaporator": RefrigerantJoint,
		"replaced condenser coil": RefrigerantJoint, "replaced capillary": RefrigerantJoint, "replaced cap tube": RefrigerantJoint, "replaced expansion valve": RefrigerantJoint,
		"charged with 40 g": RefrigerantJoint, "recharged": RefrigerantJoint, "brazed a joint": RefrigerantJoint, "repaired leak, new drier, evacuated": RefrigerantJoint,
		"replaced evaporator fan": "", "replaced condenser fan motor": "", "replaced compressor relay": "", "replaced evaporator thermistor": "", "cleaned condenser": "",
		"cut out drier with torch": RefrigerantJoint, "unbrazed the drier with a torch": RefrigerantJoint, "opened system": RefrigerantJoint, "opened the sealed system": RefrigerantJoint, "sweated joint": RefrigerantJoint,
		"sweated in the new drier": RefrigerantJoint, "charged r134a 100g": RefrigerantJoint, "used r134a to top up": RefrigerantJoint, "charged propane": RefrigerantJoint, "unsweated the suction line": RefrigerantJoint,
		"opened the panel": "", "cut out the old plug": "", "used a 20k resistor": "", "charged the battery": "", "sweated the job": "", "cut off drier belt": "",
		"insulation tape on the suction line renewed": "", "wrapped new foam on the suction line": "", "brazed the suction line and renewed its insulation": RefrigerantJoint, "charged the customer": "", "vacuumed the condenser": "", "replaced dryer belt": "", "thawed the evaporator and replaced the heater": "", "new drier belt": "", "soldered a wire": "", "compressor must be replaced": "",
	} {
		got := Joint("")
		for _, j := range Opened(text, false) {
			got += j
		}
		if got != want {
			t.Errorf("%q opens %q, want %q", text, got, want)
		}
	}
	for text, want := range map[string]int{"gas valve": 1, "compressor SAMPLE-C1": 1, "drier": 1, "compressor start device": 0, "evaporator fan": 0, "gas valve coil": 0, "run capacitor": 0} {
		if got := len(Opened(text, true)); got != want {
			t.Errorf("part %q opens %d, want %d", text, got, want)
		}
	}
}

// Words of work name the gas that was put in, and no other.
func TestCharged(t *testing.T) {
	for text, want := range map[string]string{
		"charged r134a 100g": "r134a", "charged with R-600a": "r-600a", "used r134a to top up": "r134a", "charged propane": "propane", "topped up with r290": "r290",
		"brazed, evacuated, recharged 60g isobutane": "isobutane", "added 20 g of r 134a": "r 134a",
		"recovered r134a": "", "vented r600a": "", "put on r290 label": "", "used r134a gauge hoses": "", "ordered r134a": "", "charged 60g": "", "put r290 leak detector away": "",
	} {
		if got := Charged(text); got != want {
			t.Errorf("%q charges %q, want %q", text, got, want)
		}
	}
}

// Refrigerants that burn are told from those that burn less well, and from neither.
func TestNamedGases(t *testing.T) {
	for text, want := range map[string][2]bool{
		"r600a leak": {true, false}, "flammable refrig leak": {true, false}, "hydrocarbon sniffer": {true, false}, "R-290 box": {true, false},
		"r32 unit": {false, true}, "system is R-454B": {false, true}, "a2l sensor": {false, true}, "r410a charge": {}, "model r3200": {}, "": {},
	} {
		if got := [2]bool{NamesFire(text), NamesMild(text)}; got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
