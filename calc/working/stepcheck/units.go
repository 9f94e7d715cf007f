package stepcheck

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// dims are the exponents of metre, kilogram, second, kelvin and currency.
// Angles and shares have none.
type dims [5]float64

func (d dims) plus(e dims, sign float64) dims {
	for i := range d {
		d[i] += sign * e[i]
	}
	return d
}

func (d dims) times(n float64) dims {
	for i := range d {
		d[i] *= n
	}
	return d
}

func (d dims) same(e dims) bool {
	for i := range d {
		if math.Abs(d[i]-e[i]) > 1e-9 {
			return false
		}
	}
	return true
}

func (d dims) String() string {
	var parts []string
	for i, n := range d {
		if n != 0 {
			parts = append(parts, fmt.Sprintf("%s^%.4g", [...]string{"m", "kg", "s", "K", "money"}[i], n))
		}
	}
	if parts == nil {
		return "none"
	}
	return strings.Join(parts, " ")
}

// unit is a scale, an offset for °C and °F, and a dimension.
type unit struct {
	scale, offset float64
	dims          dims
}

func (u unit) amount(v float64) amount {
	si := (v + u.offset) * u.scale
	return rounded(si, 0x1p-52*math.Abs(u.offset*u.scale), u.dims)
}

// base units, kept apart from package quantity on purpose: a slip in one table
// does not hide a slip in the other.
var base = map[string]unit{
	"1": {1, 0, dims{}}, "%": {0.01, 0, dims{}}, "rad": {1, 0, dims{}}, "deg": {math.Pi / 180, 0, dims{}},
	"m": {1, 0, dims{1}}, "mm": {1e-3, 0, dims{1}}, "cm": {1e-2, 0, dims{1}}, "in": {0.0254, 0, dims{1}}, "ft": {0.3048, 0, dims{1}},
	"L":  {1e-3, 0, dims{3}},
	"kg": {1, 0, dims{0, 1}}, "g": {1e-3, 0, dims{0, 1}}, "lb": {0.45359237, 0, dims{0, 1}}, "t": {1000, 0, dims{0, 1}},
	"s": {1, 0, dims{0, 0, 1}}, "min": {60, 0, dims{0, 0, 1}}, "h": {3600, 0, dims{0, 0, 1}},
	"K": {1, 0, dims{0, 0, 0, 1}}, "degC": {1, 273.15, dims{0, 0, 0, 1}}, "degF": {5.0 / 9, 459.67, dims{0, 0, 0, 1}},
	"N": {1, 0, dims{1, 1, -2}}, "kN": {1e3, 0, dims{1, 1, -2}}, "lbf": {4.4482216152605, 0, dims{1, 1, -2}},
	"Pa": {1, 0, dims{-1, 1, -2}}, "kPa": {1e3, 0, dims{-1, 1, -2}}, "MPa": {1e6, 0, dims{-1, 1, -2}},
	"J": {1, 0, dims{2, 1, -2}}, "kJ": {1e3, 0, dims{2, 1, -2}}, "MJ": {1e6, 0, dims{2, 1, -2}}, "kWh": {3.6e6, 0, dims{2, 1, -2}},
	"W": {1, 0, dims{2, 1, -3}}, "kW": {1e3, 0, dims{2, 1, -3}},
	"money": {1, 0, dims{0, 0, 0, 0, 1}},
}

// parseUnit reads a unit such as "kg/m^3", "J/(kg*K)" or "s/kg^0.5".
func parseUnit(text string) (unit, error) {
	if text == "" {
		return base["1"], nil
	}
	out := unit{1, 0, dims{}}
	sign, inside := 1.0, false
	// The pouring rules take cube roots of masses; no decimal is a third.
	rest := strings.ReplaceAll(text, "^(1/3)", "^"+strconv.FormatFloat(1.0/3, 'g', -1, 64))
	for rest != "" {
		switch {
		case rest[0] == '*':
			rest = rest[1:]
			if !inside {
				sign = 1
			}
		case rest[0] == '/':
			sign, rest = -1, rest[1:]
		case rest[0] == '(':
			inside, rest = true, rest[1:]
		case rest[0] == ')':
			inside, rest = false, rest[1:]
		default:
			i := strings.IndexAny(rest, "*/()")
			if i < 0 {
				i = len(rest)
			}
			name, power, raised := strings.Cut(rest[:i], "^")
			rest = rest[i:]
			n := 1.0
			if raised {
				var err error
				if n, err = strconv.ParseFloat(power, 64); err != nil {
					return out, fmt.Errorf("unit %q: %v", text, err)
				}
			}
			b, ok := base[name]
			if !ok {
				return out, fmt.Errorf("unit %q: %q is not known", text, name)
			}
			if b.offset != 0 {
				if name != text {
					return out, fmt.Errorf("unit %q: a temperature scale cannot be part of a unit", text)
				}
				return b, nil
			}
			out.scale *= math.Pow(b.scale, sign*n)
			out.dims = out.dims.plus(b.dims.times(n), sign)
		}
	}
	return out, nil
}
