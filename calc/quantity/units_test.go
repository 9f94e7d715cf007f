package quantity

import (
	"fmt"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// gnuSI is each kind's SI unit in the words of GNU units.
var gnuSI = map[*Kind]string{
	lengthKind: "m", distanceKind: "m", areaKind: "m^2", volumeKind: "m^3", massKind: "kg", densityKind: "kg/m^3", timeKind: "s",
	tempDiffKind: "K", angleKind: "radian", ratioKind: "1", numberKind: "1", speedKind: "m/s", forceKind: "N", pressureKind: "Pa",
	volumeFlowKind: "m^3/s", massFlowKind: "kg/s", energyKind: "J", powerKind: "W", specificEnergyKind: "J/kg",
	specificHeatKind: "J/(kg K)", conductivityKind: "W/(m K)", effusivityKind: "W^2 s/(m^4 K^2)", freezingConstantKind: "s/m^2",
	angularSpeedKind: "radian/s", heatFluxKind: "W/m^2", surfaceTensionKind: "N/m", viscosityKind: "Pa s",
	priceKind: "1/kg",
}

// gnuWords are spellings of ours that GNU units does not know or reads
// otherwise (its h is Planck's constant, its rad a dose, its pct a peck).
var gnuWords = map[string]string{
	`"`: "inch", "″": "inch", "''": "inch", "'": "foot", "′": "foot",
	"sq mm": "mm^2", "sq cm": "cm^2", "sq m": "m^2", "sq in": "in^2", "sq ft": "ft^2", "cu in": "in^3", "cu ft": "ft^3",
	"h": "hour", "kWh": "kW hour", "kW h": "kW hour", "kW·h": "kW hour", "kWh/t": "kW hour/t", "Btu/h": "btu/hour", "BTU/h": "btu/hour", "btu/h": "btu/hour",
	"C": "degC", "° C": "degC", "deg C": "degC", "℃": "degC", "F": "degF", "° F": "degF", "deg F": "degF", "℉": "degF",
	"°": "degree", "rad": "radian", "rad/s": "radian/s", "%": "percent", "per cent": "percent", "pct": "percent",
	"of 1": "1", "fraction": "1", "": "1", "×": "1",
	"kg/h": "kg/hour", "lb/h": "lb/hour", "per kg": "1/kg", "money/kg": "1/kg", "/kg": "1/kg", "per t": "1/t", "/t": "1/t", "per lb": "1/lb", "/lb": "1/lb",
	"lb force": "lbf", "lb f": "lbf", "J/kgK": "J/(kg K)", "kJ/kgK": "kJ/(kg K)", "J/gK": "J/(g K)", "Btu/lbF": "btu/(lb degF)", "W/mK": "W/(m K)",
	// squared, since GNU units takes no half powers of base units
	"W·s½/(m²·K)": "(W/(m^2 K))^2 s", "W·s^0.5/(m²·K)": "(W/(m^2 K))^2 s", "W*s^0.5/(m^2*K)": "(W/(m^2 K))^2 s", "J/(m²·K·s^0.5)": "(J/(m^2 K))^2/s",
}

var gnuSpelling = strings.NewReplacer("°C", "degC", "°F", "degF", "°", "degree", "·", "*", "²", "^2", "³", "^3", "Btu", "btu", "BTU", "btu")

// conversion is one question to GNU units, and our own answer.
type conversion struct {
	what, have, want string
	ours             float64
}

func conversions() []conversion {
	var out []conversion
	for _, k := range Kinds() {
		if k == temperatureKind || k == moneyKind {
			continue // below: scales with their own zero; a currency without a name
		}
		for _, u := range k.Units {
			for _, name := range append([]string{u.Symbol}, u.names...) {
				have, ok := gnuWords[name]
				if !ok {
					have = gnuSpelling.Replace(name)
				}
				scale := u.to(1)
				if k == effusivityKind {
					scale *= scale
				}
				out = append(out, conversion{k.Name + " " + name, have, gnuSI[k], scale})
			}
		}
	}
	for symbol, scale := range map[string]string{"°C": "tempC", "°F": "tempF", "K": "tempK"} {
		for _, x := range []float64{1, 32, 1380, 2516} {
			out = append(out, conversion{"temperature " + symbol, fmt.Sprintf("%s(%v)", scale, x), "tempK", temperatureKind.mustUnit(symbol).to(x)})
		}
	}
	return out
}

// Every unit of every kind under every name, against an independent program:
// GNU units (Debian package units).
func TestUnitsAgainstGNUUnits(t *testing.T) {
	if _, err := exec.LookPath("units"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("the program GNU units is missing: apt-get install units")
		}
		t.Skip("NOT CHECKED: no unit was compared with GNU units, which is missing: apt-get install units")
	}
	all := conversions()
	var questions strings.Builder
	for _, c := range all {
		fmt.Fprintln(&questions, c.have)
		fmt.Fprintln(&questions, c.want)
	}
	units := exec.Command("units", "--quiet", "--terse", "--output-format", "%.17g")
	units.Stdin = strings.NewReader(questions.String())
	out, err := units.CombinedOutput()
	require.NoError(t, err)
	answers := strings.Split(strings.TrimSpace(string(out)), "\n")
	for i, c := range all {
		require.Less(t, i, len(answers), "GNU units said no more")
		theirs, err := strconv.ParseFloat(strings.TrimSpace(answers[i]), 64)
		require.NoError(t, err, "GNU units on %s, asked as %q in %q", c.what, c.have, c.want)
		require.InEpsilon(t, theirs, c.ours, 1e-12, "%s, asked as %q in %q", c.what, c.have, c.want)
	}
}
