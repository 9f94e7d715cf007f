package quantity

import (
	"math"
	"strconv"
)

// Currency marks an amount of money as it is shown: the reader's currency takes
// its place at the door, and nothing is ever converted.
const Currency = "¤"

// Money is an amount in the user's own currency, which is never named. Its
// zero value is nothing.
type Money float64

var moneyKind = newKind(Kind{
	Name: "money",
	Units: []Unit{
		{Symbol: "", num: 1, den: 1},
	},
	Metric: "", US: "", Canonical: "",
	metric: []rung{{math.Inf(1), ""}},
	us:     []rung{{math.Inf(1), ""}},
	digits: 3, decimals: 2,
})

// Kind describes money: its units and how it is shown.
func (q Money) Kind() *Kind { return moneyKind }

// SI is the bare number in the user's currency.
func (q Money) SI() float64 { return float64(q) }

// String shows the amount with two decimals.
func (q Money) String() string { return Format(q, Metric) }

// MarshalText writes the value so that it reads back exactly.
func (q Money) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads.
func (q *Money) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Money](string(text), Metric)
	return err
}

// Price is money per mass, in the user's currency per kilogram.
type Price float64

var priceKind = newKind(Kind{
	Name: "price",
	Units: []Unit{
		{Symbol: "per kg", num: 1, den: 1, names: []string{"/kg", "money/kg"}},
		{Symbol: "per t", num: 1, den: 1000, names: []string{"/t"}},
		{Symbol: "per lb", num: 100000000, den: 45359237, names: []string{"/lb"}},
	},
	Metric: "per kg", US: "per lb", Canonical: "per kg",
	metric: []rung{{math.Inf(1), "per kg"}},
	us:     []rung{{math.Inf(1), "per lb"}},
	digits: 3, decimals: 2,
})

// Kind describes price: its units and how it is shown.
func (q Price) Kind() *Kind { return priceKind }

// SI is the bare number in the user's currency per kilogram.
func (q Price) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Price) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Price) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Price) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Price](string(text), Metric)
	return err
}

// appendMoney shows two decimals, as a till does, and more only where two
// would show nothing of the amount.
func appendMoney(to []byte, x float64) []byte {
	if x < 0 {
		to, x = append(to, '-'), -x
	}
	to = append(to, Currency...)
	if x >= 0.1 && x < 1e15 {
		return strconv.AppendFloat(to, x, 'f', 2, 64)
	}
	return appendNumber(to, x, 3, 2)
}
