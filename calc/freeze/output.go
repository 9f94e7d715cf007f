package freeze

import "pourwright/calc/quantity"

// Output is how long the section takes.
type Output struct {
	Modulus  quantity.Length `json:"modulus" label:"Modulus" step:"M" hint:"Volume over cooled surface"`
	Time     quantity.Time   `json:"time" label:"Freezing time" step:"t" hint:"Chvorinov's rule, middle of the band"`
	TimeLow  quantity.Time   `json:"time_low" label:"Freezing time, at least" step:"t_lo"`
	TimeHigh quantity.Time   `json:"time_high" label:"Freezing time, at most" step:"t_hi"`

	Constant     quantity.Opt[quantity.FreezingConstant] `json:"constant" label:"Freezing constant" step:"C" hint:"In t = C (V/A)²"`
	ConstantLow  quantity.Opt[quantity.FreezingConstant] `json:"constant_low" label:"Freezing constant, low end" step:"C_lo" hint:"No superheat, sand that takes heat readily"`
	ConstantHigh quantity.Opt[quantity.FreezingConstant] `json:"constant_high" label:"Freezing constant, high end" step:"C_hi" hint:"All the superheat, sand that takes heat slowly"`

	Rounded quantity.Opt[quantity.Time] `json:"rounded" label:"Freezing time of the round shape" step:"t_r" hint:"Heat spreads outward into more and more sand, so round shapes beat the plain rule"`

	Effective  quantity.Opt[quantity.Temperature] `json:"effective" label:"Effective freezing temperature" step:"T_e"`
	Superheat  quantity.Opt[quantity.TempDiff]    `json:"superheat" label:"Superheat" step:"Delta_T"`
	Effusivity quantity.Opt[quantity.Effusivity]  `json:"effusivity" label:"Heat effusivity of the mould" step:"b"`

	Chilled     Exact `json:"chilled"`
	Moulded     Exact `json:"moulded"`
	Superheated Exact `json:"superheated"`
}

// Exact is one of Neumann's solutions for a flat wall as deep as the modulus.
type Exact struct {
	Name string                             `json:"name" label:"Exact solution for a flat wall"`
	Root quantity.Opt[quantity.Number]      `json:"root" label:"Root" step:"phi"`
	Face quantity.Opt[quantity.Temperature] `json:"face" label:"Temperature of the mould face" step:"T_i"`
	Time quantity.Opt[quantity.Time]        `json:"time" label:"Freezing time" step:"t_x"`
}
