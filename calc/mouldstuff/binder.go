package mouldstuff

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Binder names what holds a sand together; it is a choice on forms.
type Binder string

// The binders.
const (
	Clay             Binder = "clay"
	Furan            Binder = "furan"
	PhenolicUrethane Binder = "phenolic-urethane"
	AlkalinePhenolic Binder = "alkaline-phenolic"
	SilicateCO2      Binder = "silicate-co2"
	SilicateEster    Binder = "silicate-ester"
	Oil              Binder = "oil"
	NoBinder         Binder = "none"
)

// Choices lists the codes and names for a form.
func (Binder) Choices() [][2]string {
	out := make([][2]string, len(binders))
	for i, b := range binders {
		out[i] = [2]string{string(b.Code), b.Name}
	}
	return out
}

// Fume is something in the air when the binder is mixed, hardened or burnt.
type Fume string

// The fumes.
const (
	CarbonMonoxide  Fume = "carbon monoxide"
	CarbonDioxide   Fume = "carbon dioxide"
	SulphurDioxide  Fume = "sulphur dioxide"
	Formaldehyde    Fume = "formaldehyde"
	Phenol          Fume = "phenol"
	FurfurylAlcohol Fume = "furfuryl alcohol"
	Isocyanate      Fume = "isocyanate (MDI)"
	Amines          Fume = "amines"
	OilSmoke        Fume = "oil smoke with acrolein"
)

// BinderKind is one binder.
type BinderKind struct {
	// Code in a plan and Name on a screen.
	Code Binder
	Name string
	// Share of binder on sand, by mass; zero for no binder.
	Share figure.Of[quantity.Ratio]
	// Hardener that goes with it, by mass of the binder: acid, ester or catalyst.
	// The whole figure is zero, without a source, where there is none.
	Hardener figure.Of[quantity.Ratio]
	// GasCm3PerG is the gas that a gram of the bonded sand gives off when
	// metal heats it, in cm³, as core-gas tests print it. The whole figure is
	// zero, without a source, where none is known.
	GasCm3PerG figure.Of[quantity.Number]
	// Fumes that the binder is known for.
	Fumes []Fume
	// FumeSource says where the list of fumes is from.
	FumeSource source.Ref
	// MoistureLimit is the water, by mass of the sand, that the mould should
	// not have over when the metal comes. The whole figure is zero, without a
	// source, where no limit is known.
	MoistureLimit figure.Of[quantity.Ratio]
}

// Binders lists the binders in the order of the forms.
func Binders() []*BinderKind { return append([]*BinderKind(nil), binders...) }

// FindBinder returns the binder with the code.
func FindBinder(code Binder) (*BinderKind, bool) {
	for _, b := range binders {
		if b.Code == code {
			return b, true
		}
	}
	return nil, false
}

func gas(v, low, high float64, from source.Ref, note string) figure.Of[quantity.Number] {
	return figure.New[quantity.Number](v, low, high, "", from, note)
}

var (
	// The shares are those of ASM Handbook vol. 15 and the ferrous foundryman's
	// handbook, which agree.
	share     = source.Brown.Memory("binder additions; ASM Handbook vol. 15 agrees")
	coreGas   = source.Brown.Memory("core gas by binder, weakly remembered")
	fumes     = source.NIOSHFoundry.Memory("binders and their emissions")
	clayWater = percent(5, 5, 6, source.Brown.Memory("water in green sand, 2.5 to 5 %"), "some shops go to 6 % for copper alloys and aluminium")
	drySand   = percent(0.2, 0, 0, source.Practice("sand for resin binders is bought dried to 0.2 % and under"), "")
	driedOut  = percent(0.1, 0, 0, source.Practice("must be baked or burnt out dry; 0.1 % is the least that weighing 100 g shows"), "")
)

var binders = []*BinderKind{
	{
		Code: Clay, Name: "Clay (green sand)",
		Share:         percent(8, 6, 10, share, "bentonite in a fresh mix; live clay 5 to 8 %"),
		Fumes:         []Fume{CarbonMonoxide},
		FumeSource:    fumes,
		MoistureLimit: clayWater,
	},
	{
		Code: Furan, Name: "Furan no-bake",
		Share:         percent(1.05, 0.8, 1.3, share, "and an acid hardener, 30 to 60 % of the resin"),
		Hardener:      percent(45, 30, 60, share, "acid; more in the cold"),
		GasCm3PerG:    gas(9.5, 7, 12, coreGas, ""),
		Fumes:         []Fume{FurfurylAlcohol, SulphurDioxide, Formaldehyde, CarbonMonoxide},
		FumeSource:    fumes,
		MoistureLimit: drySand,
	},
	{
		Code: PhenolicUrethane, Name: "Phenolic urethane no-bake",
		Share:         percent(1.15, 0.8, 1.5, share, "both parts together, 55:45 to 60:40"),
		Hardener:      percent(1.7, 0.55, 3, share, "catalyst, 1 to 5 % of part 1, which is 55 to 60 % of both parts"),
		GasCm3PerG:    gas(11, 8, 14, coreGas, "taken like the cold-box form of the same resins"),
		Fumes:         []Fume{Isocyanate, Amines, Phenol, Formaldehyde, CarbonMonoxide},
		FumeSource:    fumes,
		MoistureLimit: drySand,
	},
	{
		Code: AlkalinePhenolic, Name: "Alkaline phenolic, ester-hardened",
		Share:         percent(1.6, 1.2, 2, share, "and an ester, 20 to 25 % of the resin"),
		Hardener:      percent(22.5, 20, 25, share, "ester"),
		GasCm3PerG:    gas(11, 6, 16, source.Practice("range over all resin binders"), "no figure for this binder alone"),
		Fumes:         []Fume{Phenol, Formaldehyde, CarbonMonoxide},
		FumeSource:    fumes,
		MoistureLimit: drySand,
	},
	{
		Code: SilicateCO2, Name: "Sodium silicate, gassed with CO₂",
		Share:      percent(3.75, 3, 4.5, share, ""),
		GasCm3PerG: gas(4, 2, 6, coreGas, ""),
		Fumes:      []Fume{CarbonDioxide},
		FumeSource: fumes,
	},
	{
		Code: SilicateEster, Name: "Sodium silicate, ester-hardened",
		Share:      percent(3, 2.5, 3.5, share, "and an ester, 10 to 12 % of the silicate"),
		Hardener:   percent(11, 10, 12, share, "ester"),
		GasCm3PerG: gas(4, 2, 6, coreGas, ""),
		Fumes:      []Fume{CarbonMonoxide},
		FumeSource: fumes,
	},
	{
		Code: Oil, Name: "Core oil, baked",
		Share:         percent(1.5, 1, 2, share, ""),
		GasCm3PerG:    gas(17.5, 10, 25, coreGas, ""),
		Fumes:         []Fume{OilSmoke, CarbonMonoxide},
		FumeSource:    source.Practice("smoke of drying oils"),
		MoistureLimit: driedOut,
	},
	{
		Code: NoBinder, Name: "None (plaster or investment)",
		Share:         percent(0, 0, 0, source.Practice("sets of itself"), ""),
		FumeSource:    source.Practice("no binder; what is burnt out of the mould is another matter"),
		MoistureLimit: driedOut,
	},
}
