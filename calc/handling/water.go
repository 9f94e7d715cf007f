package handling

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Steam tables at one atmosphere, kg/m³.
const (
	waterCold    = 998.2  // water at 20 °C
	waterBoiling = 958.4  // water at 100 °C
	steamBoiling = 0.598  // steam at 100 °C
	steamGas     = 461.5  // gas constant of steam, J/(kg·K)
	atmosphere   = 101325 // Pa
)

// steam is what trapped water becomes, in volumes of steam per volume of water.
type steam struct {
	boiling quantity.Number // boiling water to steam at 100 °C
	cold    quantity.Number // cold water to steam at 100 °C
	hot     quantity.Number // cold water to steam at the metal's temperature, as an ideal gas
}

// expansion works out the steam volumes at one atmosphere. Steam shut in under
// metal is far denser for an instant, and that is what throws the metal: the
// ratios say how much it will want to be, not how fast it gets there.
func expansion(pourAt quantity.Temperature, p *working.Paper) steam {
	tables := source.IAPWS.Memory("saturation at one atmosphere")
	cold := p.Const("rho_w", "density of water at 20 °C", waterCold, "kg/m^3", tables)
	boiling := p.Const("rho_b", "density of water at 100 °C", waterBoiling, "kg/m^3", tables)
	vapour := p.Const("rho_v", "density of steam at 100 °C", steamBoiling, "kg/m^3", tables)
	gas := p.Const("R_v", "gas constant of steam", steamGas, "J/(kg*K)", tables)
	pressure := p.Const("p_a", "pressure of the air", atmosphere, "Pa", source.BIPM.Memory("standard atmosphere"))
	T := p.Give("T", "pouring temperature", pourAt, "K")
	return steam{
		boiling: quantity.Number(p.Step("X_b", "steam from boiling water", boiling/vapour, "1", "rho_b / rho_v", source.Derived("the same mass before and after"))),
		cold:    quantity.Number(p.Step("X_c", "steam from cold water, at 100 °C", cold/vapour, "1", "rho_w / rho_v", source.Derived("the same mass before and after"))),
		hot:     quantity.Number(p.Step("X_h", "steam from cold water, at the metal's temperature", cold*gas*T/pressure, "1", "rho_w * R_v * T / p_a", source.Derived("ideal gas"))),
	}
}
