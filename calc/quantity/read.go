package quantity

import (
	"fmt"
	"strings"
)

var kinds = []*Kind{
	lengthKind, areaKind, volumeKind, massKind, densityKind, timeKind, temperatureKind, tempDiffKind, angleKind, ratioKind,
	numberKind, speedKind, forceKind, pressureKind, volumeFlowKind, massFlowKind, energyKind, powerKind, specificEnergyKind,
	specificHeatKind, conductivityKind, effusivityKind, freezingConstantKind, angularSpeedKind, heatFluxKind, surfaceTensionKind,
	distanceKind, moneyKind, priceKind, viscosityKind,
}

// Kinds lists every kind of quantity.
func Kinds() []*Kind { return append([]*Kind(nil), kinds...) }

// Read understands a typed text as a kind named at run time. keep is the text
// with the unit that a bare number was taken in, fit to be saved; shown is the
// value as Format writes it. entry may be empty for the kind's own unit.
func Read(kind, text, entry string, system System) (keep, shown string, err error) {
	for _, k := range kinds {
		if k.Name != kind {
			continue
		}
		if entry == "" {
			entry = k.Entry(system)
		}
		if _, ok := k.unit(entry); !ok {
			return "", "", fmt.Errorf("a %s has no unit %q", kind, entry)
		}
		si, half, err := ParseSpread(k, text, system, entry)
		if err != nil {
			return "", "", err
		}
		keep, shown = strings.TrimSpace(text), Format(value{k, si}, system)
		middle, width, spread := cutSpread(text)
		if spread {
			shown += " ± " + FormatHalf(k, half, system)
			switch {
			case !BareNumber(k, middle):
			case BareNumber(k, width):
				keep = strings.TrimSpace(keep + " " + entry)
			case k != ratioKind && strings.HasSuffix(width, "%"):
				keep = middle + " " + entry + " ± " + width
			}
		} else if BareNumber(k, text) {
			keep = strings.TrimSpace(keep + " " + entry)
		}
		return keep, shown, nil
	}
	return "", "", fmt.Errorf("there is no quantity called %q", kind)
}

// value is a quantity whose kind is known only at run time.
type value struct {
	kind *Kind
	si   float64
}

func (v value) Kind() *Kind { return v.kind }
func (v value) SI() float64 { return v.si }

// Value makes a quantity of a kind known only at run time.
func Value(k *Kind, si float64) Any { return value{k, si} }

// Gap makes the difference of two values of a kind, such as a plus and minus:
// between temperatures that is a temperature difference.
func Gap(k *Kind, si float64) Any {
	if k == temperatureKind {
		k = tempDiffKind
	}
	return value{k, si}
}

// Scales reports whether a share of a value of this kind says anything: it does
// not of a temperature, whose nought is arbitrary, nor of what is a share
// itself.
func Scales(k *Kind) bool { return k != temperatureKind && k != ratioKind }
