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
		"charged the customer": "", "vacuumed the condenser": "", "replaced dryer belt": "", "thawed the evaporator and replaced the heater": "", "new drier belt": "", "soldered a wire": "", "compressor must be replaced": "",
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
