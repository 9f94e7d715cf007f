package form

import (
	"encoding/json"
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
)

// flask is a question with every sort of field.
type flask struct {
	Width   quantity.Length                   `json:"width" label:"Width" hint:"Inside" min:"50 mm" max:"2 m" part:"The box"`
	Mass    quantity.Mass                     `json:"mass" label:"Mass" max:"5 t" link:"the weight"`
	Spill   quantity.Opt[quantity.Ratio]      `json:"spill" label:"Spill" default:"5 %" min:"0 %" max:"50 %"`
	Shrink  quantity.Opt[quantity.Ratio]      `json:"shrink" label:"Contraction" unit:"mm/m,in/ft" min:"0 %" max:"5 %"`
	Cool    quantity.Opt[quantity.TempDiff]   `json:"cool" label:"Temperature drop" min:"0 K"`
	Cope    quantity.Opt[quantity.Length]     `json:"cope" label:"Cope height" min:"10 mm"`
	Boxes   int                               `json:"boxes" label:"Boxes" min:"1" max:"20"`
	Spares  quantity.Opt[int]                 `json:"spares" label:"Spare boxes" default:"2" min:"0"`
	Sand    string                            `json:"sand" label:"Sand" choices:"green:Green sand|dry:Dry sand"`
	Route   quantity.Opt[string]              `json:"route" label:"Route" choices:"solids:By solids|stated:Stated" default:"stated"`
	Stated  quantity.Mass                     `json:"stated" label:"Stated mass" when:"route=stated" min:"1 g"`
	Deeper  quantity.Opt[quantity.Length]     `json:"deeper" label:"Deeper" when:"vented=yes"`
	Vented  bool                              `json:"vented" label:"Vented"`
	Turned  quantity.Opt[bool]                `json:"turned" label:"Turned over" default:"yes"`
	Name    string                            `json:"name" label:"Name" need:"yes" max:"12"`
	Remarks string                            `json:"remarks" label:"Remarks"`
	Lid     lid                               `json:"lid" label:"Lid"`
	Cores   []core                            `json:"cores" label:"Cores" max:"3"`
	Solids  []core                            `json:"solids" label:"Solids" when:"route=solids" min:"1"`
	Heat    quantity.Opt[quantity.Effusivity] `json:"heat" label:"Heat effusivity"`
	hidden  int
}

type lid struct {
	Thick quantity.Length `json:"thick" label:"Lid thickness" min:"5 mm"`
}

type core struct {
	Size  quantity.Length               `json:"size" label:"Core size" min:"5 mm"`
	Print quantity.Opt[quantity.Length] `json:"print" label:"Print length" default:"20 mm"`
	Holes []hole                        `json:"holes" label:"Holes"`
}

type hole struct {
	Bore quantity.Length `json:"bore" label:"Bore" min:"1 mm"`
}

const whole = `{"width":"420","mass":"16 1/2 lb","boxes":2,"sand":"green","stated":"3 kg","name":"Plaque",
	"lid":{"thick":"12 mm"},"cores":[{"size":"30 mm","holes":[{"bore":"3 mm"}]}]}`

func read(t *testing.T, text string, system quantity.System) (flask, Faults) {
	t.Helper()
	in, decoded := Decode[flask]([]byte(text), system)
	in, ready := Ready(in)
	return in, Merge(decoded, ready)
}

func fields(faults Faults) []string {
	out := []string{}
	for _, f := range faults {
		out = append(out, f.Field)
	}
	return out
}

func TestWholeInput(t *testing.T) {
	in, faults := read(t, whole, quantity.Metric)
	require.NoError(t, faults.Err())
	require.Equal(t, 420*quantity.Millimetre, in.Width)
	require.InDelta(t, 16.5, quantity.In(in.Mass, "lb"), 1e-12)
	require.Equal(t, quantity.Opt[quantity.Ratio]{V: 0.05, State: quantity.Defaulted}, in.Spill)
	require.Equal(t, quantity.Opt[int]{V: 2, State: quantity.Defaulted}, in.Spares)
	require.Equal(t, quantity.Opt[string]{V: "stated", State: quantity.Defaulted}, in.Route)
	require.Equal(t, quantity.Opt[bool]{V: true, State: quantity.Defaulted}, in.Turned)
	require.False(t, in.Cope.Known())
	require.Equal(t, 3*quantity.Millimetre, in.Cores[0].Holes[0].Bore)
	require.Equal(t, quantity.Opt[quantity.Length]{V: 20 * quantity.Millimetre, State: quantity.Defaulted}, in.Cores[0].Print)
}

// A bare number, as text or as a JSON number, is taken in the field's own
// entry unit under the system; a unit that is written wins.
func TestBareNumber(t *testing.T) {
	for _, row := range []struct {
		text   string
		system quantity.System
		width  float64 // mm
		shrink float64 // share
	}{
		{`{"width":"420","shrink":"10.5"}`, quantity.Metric, 420, 0.0105},
		{`{"width":420,"shrink":10.5}`, quantity.Metric, 420, 0.0105},
		{`{"width":"16 1/2","shrink":"1/8"}`, quantity.US, 419.1, 1.0 / 96},
		{`{"width":16.5,"shrink":0.125}`, quantity.US, 419.1, 1.0 / 96},
		{`{"width":"42 cm","shrink":"1.05 %"}`, quantity.US, 420, 0.0105},
	} {
		in, faults := Decode[flask]([]byte(row.text), row.system)
		require.Empty(t, faults)
		require.InDelta(t, row.width, quantity.In(in.Width, "mm"), 1e-9, row.text)
		require.InDelta(t, row.shrink, float64(in.Shrink.V), 1e-12, row.text)
		require.Equal(t, quantity.Given, in.Shrink.State)
	}
}

// Zero in a field that must be given is said to be wrong, not to be missing:
// something was typed there. Where zero is an answer it is taken.
func TestZero(t *testing.T) {
	_, faults := read(t, `{"width":"0","mass":0,"boxes":0,"spill":"0 %","cool":"0 K","spares":0}`, quantity.Metric)
	said := map[string]Fault{}
	for _, f := range faults {
		said[f.Field] = f
	}
	require.Equal(t, "0 is not allowed here; it must lie between 50 mm and 2000 mm", said["width"].Why.String())
	require.False(t, said["width"].Missing)
	require.Equal(t, "0", said["width"].Value)
	require.Equal(t, "0 is not allowed here; it must be at most 5000 kg", said["mass"].Why.String())
	require.Equal(t, "0 is not allowed here; it must lie between 1 and 20", said["boxes"].Why.String())
	require.NotContains(t, said, "spill")
	require.NotContains(t, said, "cool")
	require.NotContains(t, said, "spares")
	type counted struct {
		N int             `json:"n" label:"N"`
		L quantity.Length `json:"l" label:"L"`
	}
	_, bare := Decode[counted]([]byte(`{"n":0,"l":0}`), quantity.Metric)
	require.Equal(t, "0 is not allowed here; it must be 1 or more", bare[0].Why.String())
	require.Equal(t, "0 is not allowed here; it must not be zero", bare[1].Why.String())
}

// Every fault is named at once, and what is right beside them is read.
func TestAllFaultsAtOnce(t *testing.T) {
	in, faults := read(t, `{"width":"wide","mass":"3 kg","boxes":2.5,"sand":"wet","stated":"3 mm","name":"A name that is far too long",
		"vented":"perhaps","lid":{"thick":"1 mm","colour":"red"},"cores":[{"size":"30 mm"},{"size":true,"print":"1,200"},{}],"zeal":1,"age":2}`, quantity.Metric)
	require.ElementsMatch(t, []string{"width", "boxes", "sand", "stated", "name", "vented", "lid.thick", "lid.colour",
		"cores[1].size", "cores[1].print", "cores[2].size", "zeal", "age"}, fields(faults))
	require.Equal(t, 3*quantity.Kilogram, in.Mass)
	require.Equal(t, 30*quantity.Millimetre, in.Cores[0].Size)
	for _, f := range faults {
		require.NotEmpty(t, f.Label)
		require.NotEmpty(t, f.Why.String())
		require.Equal(t, f.Field == "cores[2].size", f.Missing, f.Field)
	}
	require.False(t, faults.Missing())
	// The same input gives the same faults in the same order.
	for range 20 {
		_, again := read(t, `{"zeal":1,"age":2,"bee":3,"cow":4}`, quantity.Metric)
		require.Equal(t, []string{"age", "bee", "cow", "zeal"}, fields(again)[:4])
	}
}

func TestEmptyInput(t *testing.T) {
	for _, text := range []string{`{}`, `null`, `{"width":"","mass":null,"boxes":" ","name":"","lid":null,"cores":null}`} {
		_, faults := read(t, text, quantity.Metric)
		require.ElementsMatch(t, []string{"width", "mass", "boxes", "sand", "stated", "name", "lid.thick"}, fields(faults), text)
		require.True(t, faults.Missing())
	}
	require.False(t, Faults{}.Missing())
	require.NoError(t, Faults{}.Err())
}

func TestNotJSON(t *testing.T) {
	for _, text := range []string{``, `{`, `{"width":}`, `[1,2]`, `"text"`, `7`, `{} {}`, `{"width":NaN}`} {
		in, decoded := Decode[flask]([]byte(text), quantity.Metric)
		_, ready := Ready(in)
		faults := Merge(decoded, ready)
		require.Len(t, faults, 1, text)
		require.Equal(t, "Input", faults[0].Label)
	}
}

// A value of the wrong JSON sort is a fault of its own field only.
func TestWrongSorts(t *testing.T) {
	_, faults := read(t, `{"width":[1],"mass":{"kg":3},"boxes":"two","sand":5,"stated":true,"name":7,"vented":3,"lid":"oak","cores":{"size":1},"remarks":false}`, quantity.Metric)
	require.ElementsMatch(t, []string{"width", "mass", "boxes", "sand", "stated", "name", "vented", "lid", "cores", "remarks"}, fields(faults))
	said := map[string]string{}
	for _, f := range faults {
		said[f.Field] = f.Value + ": " + f.Why.String()
	}
	require.Equal(t, `{"kg":3}: a number with its unit is wanted here`, said["mass"])
	require.Equal(t, `oak: named fields are wanted here, between { and }`, said["lid"])
	require.Equal(t, `two: “two” is not a whole number`, said["boxes"])
}

func TestNaNAndInfinityFail(t *testing.T) {
	good, faults := read(t, whole, quantity.Metric)
	require.Empty(t, faults)
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		in := good
		in.Width = quantity.Length(v)
		in.Spill = quantity.Some(quantity.Ratio(v))
		in.Cope = quantity.Some(quantity.Length(v)) // has no upper bound
		in.Heat = quantity.Some(quantity.Effusivity(v))
		in.Cores = []core{{Size: quantity.Length(v)}}
		_, faults := Ready(in)
		require.Equal(t, []string{"width", "spill", "cope", "cores[0].size", "heat"}, fields(faults))
	}
}

func TestRange(t *testing.T) {
	good, _ := read(t, whole, quantity.Metric)
	at := func(width quantity.Length) Faults {
		in := good
		in.Width = width
		_, faults := Ready(in)
		return faults
	}
	require.Empty(t, at(50*quantity.Millimetre))
	require.Empty(t, at(2*quantity.Metre))
	over := at(2100 * quantity.Millimetre)
	require.Equal(t, "width: 2100 mm is out of range; it must lie between 50 mm and 2000 mm", over.Error())
	require.Equal(t, "Width: 82.677 in is out of range; it must lie between 1.969 in and 78.74 in", over[0].In(quantity.US))
	require.Equal(t, "2100 mm", over[0].Value)
	// Where rounding hides the difference it is written out.
	require.Contains(t, at(2000.001*quantity.Millimetre).Error(), "2000.001 mm is out of range")
	require.Contains(t, at(-3*quantity.Millimetre).Error(), "-3 mm is out of range")

	in := good
	in.Boxes, in.Spares = 21, quantity.Some(-1)
	_, faults := Ready(in)
	require.Equal(t, "21 is out of range; it must lie between 1 and 20", faults[0].Why.String())
	require.Equal(t, "-1 is out of range; it must be at least 0", faults[1].Why.String())
}

// A field whose condition does not hold is neither wanted, nor checked, nor
// read out as a fault; an absent neighbour counts as its default.
func TestWhen(t *testing.T) {
	_, faults := read(t, `{"route":"solids","stated":"nonsense"}`, quantity.Metric)
	require.NotContains(t, fields(faults), "stated")
	require.Contains(t, fields(faults), "solids")
	require.True(t, faults[len(faults)-1].Missing)
	_, faults = read(t, `{"route":"stated","solids":"nonsense"}`, quantity.Metric)
	require.Contains(t, fields(faults), "stated")
	require.NotContains(t, fields(faults), "solids")
	_, faults = read(t, `{}`, quantity.Metric)
	require.Contains(t, fields(faults), "stated")
	_, faults = read(t, `{"deeper":"nonsense"}`, quantity.Metric)
	require.NotContains(t, fields(faults), "deeper")
	for _, yes := range []string{`true`, `"yes"`} {
		_, faults = read(t, `{"vented":`+yes+`,"deeper":"nonsense"}`, quantity.Metric)
		require.Contains(t, fields(faults), "deeper")
	}
}

func TestChoices(t *testing.T) {
	in, faults := Decode[flask]([]byte(`{"sand":"dry"}`), quantity.Metric)
	require.Empty(t, faults)
	require.Equal(t, "dry", in.Sand)
	_, faults = read(t, `{"sand":"wet"}`, quantity.Metric)
	require.Contains(t, faults.Error(), "sand: “wet” is not one of the choices: green, dry")
	_, faults = read(t, `{"route":"sideways"}`, quantity.Metric)
	require.Contains(t, faults.Error(), "route: “sideways” is not one of the choices")
}

func TestListLimits(t *testing.T) {
	_, faults := read(t, `{"cores":[{"size":"9 mm"},{"size":"9 mm"},{"size":"9 mm"},{"size":"x"}]}`, quantity.Metric)
	require.Contains(t, faults.Error(), "cores: 4 entries are too many; at most 3")
	in := flask{Cores: make([]core, 4)}
	_, faults = Ready(in)
	require.Contains(t, faults.Error(), "cores: 4 entries are too many; at most 3")
	long := `{"cores":[{"size":"9 mm","holes":[`
	for range 1100 {
		long += `{"bore":"2 mm"},`
	}
	_, faults = read(t, long[:len(long)-1]+`]}]}`, quantity.Metric)
	require.Contains(t, faults.Error(), "cores[0].holes: 1100 entries are too many; at most 1000")
}

// Ready fills defaults in its own copy: the caller's lists stay as they were.
func TestReadyLeavesTheCallersListsAlone(t *testing.T) {
	in := flask{Cores: []core{{Size: 30 * quantity.Millimetre}}}
	out, _ := Ready(in)
	require.Equal(t, quantity.Defaulted, out.Cores[0].Print.State)
	require.False(t, in.Cores[0].Print.Known())
}

// Ready of what is ready changes nothing.
func TestReadyTwice(t *testing.T) {
	once, faults := read(t, whole, quantity.Metric)
	require.Empty(t, faults)
	twice, faults := Ready(once)
	require.Empty(t, faults)
	require.Equal(t, once, twice)
}

func TestDescribe(t *testing.T) {
	byKey := map[string]Field{}
	for _, f := range Describe(reflect.TypeFor[flask](), quantity.US) {
		byKey[f.Key] = f
	}
	require.Equal(t, Field{Key: "width", Sort: Quantity, Label: "Width", Hint: "Inside", Part: "The box", Kind: "length", Unit: "in", Min: "1.969 in", Max: "78.74 in"}, byKey["width"])
	require.Equal(t, "the weight", byKey["mass"].Link)
	require.Equal(t, Field{Key: "spill", Sort: Quantity, Label: "Spill", Kind: "share", Unit: "%", Min: "0 %", Max: "50 %", Default: "5 %", Optional: true}, byKey["spill"])
	require.Equal(t, "in/ft", byKey["shrink"].Unit)
	require.Equal(t, Field{Key: "boxes", Sort: Count, Label: "Boxes", Min: "1", Max: "20"}, byKey["boxes"])
	require.Equal(t, []Option{{"green", "Green sand"}, {"dry", "Dry sand"}}, byKey["sand"].Choices)
	require.Equal(t, &When{"route", []string{"stated"}}, byKey["stated"].When)
	require.Equal(t, Tick, byKey["vented"].Sort)
	require.Equal(t, Words, byKey["name"].Sort)
	require.False(t, byKey["name"].Optional)
	require.True(t, byKey["remarks"].Optional)
	require.True(t, byKey["cores"].Optional)
	require.False(t, byKey["solids"].Optional)
	require.Equal(t, Group, byKey["lid"].Sort)
	require.Equal(t, "thick", byKey["lid"].Fields[0].Key)
	require.Equal(t, "bore", byKey["cores"].Fields[2].Fields[0].Key)
	require.Len(t, byKey, 20)
	metric := Describe(reflect.TypeFor[flask](), quantity.Metric)
	require.Equal(t, "mm/m", metric[3].Unit)
	_, err := json.Marshal(metric)
	require.NoError(t, err)
}

// A slip in a tag is a panic that names the struct and the field.
func TestBadTagsPanic(t *testing.T) {
	for says, in := range map[string]any{
		"no json name": struct{ A int }{},
		"bound": struct {
			A quantity.Length `json:"a" min:"wide"`
		}{},
		"default": struct {
			A quantity.Opt[quantity.Length] `json:"a" default:"3 kg"`
		}{},
		"when without =": struct {
			A int `json:"a" when:"b"`
		}{},
		"no form can show": struct {
			A float64 `json:"a"`
		}{},
	} {
		func() {
			defer func() { require.Contains(t, recover(), says) }()
			schemaOf(reflect.TypeOf(in))
			t.Errorf("no panic for %T", in)
		}()
	}
}

func FuzzDecode(f *testing.F) {
	for _, text := range []string{whole, `{}`, `null`, `[]`, `{"width":"½","cores":[null,{},{"holes":[{}]}]}`, `{"boxes":1e300,"spares":-0.0}`, `{"lid":[],"cores":[[]]}`} {
		f.Add([]byte(text), true)
		f.Add([]byte(text), false)
	}
	f.Fuzz(func(t *testing.T, text []byte, us bool) {
		system := quantity.Metric
		if us {
			system = quantity.US
		}
		in, decoded := Decode[flask](text, system)
		in, ready := Ready(in)
		for _, fault := range Merge(decoded, ready) {
			require.NotEmpty(t, fault.In(system))
		}
		if Merge(decoded, ready).Err() == nil {
			require.True(t, quantity.Finite(float64(in.Width)) && in.Width >= 50*quantity.Millimetre)
			_, again := Ready(in)
			require.Empty(t, again)
		}
	})
}
