package weir

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func Example() {
	out, err := Flow(Input{
		Lip:  flow.Lip{Form: flow.FlatLip, Width: 0.5, Discharge: quantity.Some(quantity.Number(0.62))},
		Head: 0.4,
	}, nil)
	fmt.Println(out.Flow, err)
	// Output: 232 L/s <nil>
}

func TestFlow(t *testing.T) {
	t.Run("V notch of 60°, head 0.22 m, C_d 0.625, hydraulics text (seen)", func(t *testing.T) {
		out, _ := stepcheck.Run(t, Flow, Input{Lip: flow.Lip{Form: flow.NotchLip, Angle: 60 * quantity.Degree, Discharge: quantity.Some(quantity.Number(0.625))}, Head: 0.22})
		require.InDelta(t, 0.01935, float64(out.Flow), 0.000005)
	})
	t.Run("both ways agree", func(t *testing.T) {
		for _, lip := range []flow.Lip{
			{Form: flow.FlatLip, Width: 0.06}, {Form: flow.NotchLip, Angle: 90 * quantity.Degree}, {Form: flow.RoundLip, Radius: 0.03}, {Form: flow.RoundLip, Radius: 0.01},
		} {
			out, _ := stepcheck.Run(t, Flow, Input{Lip: lip, Head: 0.02, Alloy: quantity.Some(alloy.CodeGreyIron)})
			back, _ := stepcheck.Run(t, Flow, Input{Lip: lip, Wanted: quantity.Some(HeadWanted), Flow: out.Flow, Alloy: quantity.Some(alloy.CodeGreyIron)})
			require.InEpsilon(t, 0.02, float64(back.Head), 1e-9)
			require.InEpsilon(t, float64(out.MassFlow.V), float64(back.MassFlow.V), 1e-9)
			require.Len(t, out.Charts[0].Points, 61)
		}
	})
}

func TestFaults(t *testing.T) {
	_, err := Flow(Input{}, nil)
	var faults form.Faults
	require.ErrorAs(t, err, &faults)
	require.True(t, faults.Missing())
	_, err = Flow(Input{Lip: flow.Lip{Form: flow.FlatLip, Width: quantity.Length(math.NaN())}, Head: 0.1}, nil)
	require.Error(t, err)
}

func FuzzFlow(f *testing.F) {
	f.Add("flat", 0.5, 1.0, 0.03, 0.6, true, 0.4, 0.1)
	f.Add("round", 0.5, 1.0, 0.03, 0.6, false, 0.4, 0.1)
	f.Add("notch", 0.5, 2.6, 0.03, 1.0, false, 0.4, 9.9)
	f.Fuzz(func(t *testing.T, shape string, width, angle, radius, cd float64, head bool, h, q float64) {
		in := Input{
			Lip: flow.Lip{Form: flow.LipForm(shape), Width: quantity.Length(width), Angle: quantity.Angle(angle), Radius: quantity.Length(radius),
				Discharge: quantity.Some(quantity.Number(cd))},
			Head: quantity.Length(h), Flow: quantity.VolumeFlow(q),
		}
		if head {
			in.Wanted = quantity.Some(HeadWanted)
		}
		p := &working.Paper{}
		out, err := Flow(in, p)
		if err != nil {
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		_, err = json.Marshal(out)
		require.NoError(t, err)
		require.Positive(t, out.Flow)
		require.Positive(t, out.Head)
		require.Positive(t, out.Speed)
	})
}
