package reply

import (
	"math"
	"strconv"

	"pourwright/calc/working"
)

// bands writes what is shaded behind a chart, in the units of its axes.
func (w *Writer) bands(bands []working.Band, xScale, yScale func(float64) float64) {
	w.Key("bands")
	w.Raw("[")
	for _, b := range bands {
		w.Next()
		scale, across := xScale, yScale
		if b.Upright {
			scale, across = yScale, xScale
		}
		w.Raw("{")
		w.Pair("label", b.Label)
		w.Key("upright")
		w.Raw(strconv.FormatBool(b.Upright))
		w.Key("low")
		w.rounded(scale(b.Low))
		w.Key("high")
		w.rounded(scale(b.High))
		if b.To > b.From {
			w.Key("from")
			w.rounded(across(b.From))
			w.Key("to")
			w.rounded(across(b.To))
		}
		w.Raw("}")
	}
	w.Raw("]")
}

// bars writes a picture of named stretches.
func (w *Writer) bars(b working.Bars) {
	largest := 0.0
	for _, r := range b.Rows {
		largest = max(largest, math.Abs(r.From), math.Abs(r.To))
	}
	for _, band := range b.Bands {
		largest = max(largest, math.Abs(band.High))
	}
	w.Raw("{")
	w.Pair("label", b.Label)
	w.Pair("xLabel", b.Axis.Label)
	scale, unit := func(v float64) float64 { return v }, ""
	if len(b.Rows)+len(b.Bands) > 0 {
		scale, unit = axisScale(b.Axis.Kind, largest, w.System)
	}
	w.Pair("xUnit", unit)
	if len(b.Bands) > 0 {
		w.bands(b.Bands, scale, scale)
	}
	w.Key("bars")
	w.Raw("[")
	for _, r := range b.Rows {
		w.Next()
		w.Raw("{")
		w.Pair("name", r.Name)
		w.Pair("kind", r.Kind)
		w.Key("from")
		w.rounded(scale(r.From))
		w.Key("to")
		w.rounded(scale(r.To))
		w.Raw("}")
	}
	w.Raw("]}")
}
