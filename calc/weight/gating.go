package weight

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var gatingGeometry = source.Derived("a tapered sprue is a frustum, h/3·(A1 + A2 + √(A1·A2)); the rest are bars")

// gating finds the weight of cup, sprue, runners and ingates, and its range.
func (w *weighing) gating() form.Faults {
	const what, from, to = "weight of the gating", "weight of the gating, from", "weight of the gating, to"
	g := w.in.Gating
	switch g.By.V {
	case ByWeight:
		own := w.p.Give("m_g_own", "weight of the gating, stated", g.Mass.V, "kg")
		w.mg = w.p.Step("m_g", what, own, "kg", "m_g_own", ownFigure)
		w.mgLow = w.p.Step("m_g_low", from, own, "kg", "m_g_own", ownFigure)
		w.mgHigh = w.p.Step("m_g_high", to, own, "kg", "m_g_own", ownFigure)
	case BySize:
		V := w.gatingVolume()
		w.mg = w.p.Step("m_g", what, w.rho*V*1e-6, "kg", "rho * V_gating", definition)
		w.mgLow = w.p.Step("m_g_low", from, w.rhoLow*V*1e-6, "kg", "rho_low * V_gating", definition)
		w.mgHigh = w.p.Step("m_g_high", to, w.rhoHigh*V*1e-6, "kg", "rho_high * V_gating", definition)
		w.out.GatingVolume = cm3(V)
	default:
		f, low, high := w.gatingShares()
		w.mg = w.p.Step("m_g", what, f*w.N*w.m, "kg", "f_g * N * m", definition)
		w.mgLow = w.p.Step("m_g_low", from, low*w.N*w.mLow, "kg", "f_g_low * N * m_low", definition)
		w.mgHigh = w.p.Step("m_g_high", to, high*w.N*w.mHigh, "kg", "f_g_high * N * m_high", definition)
	}
	if g.By.V != BySize {
		w.out.GatingVolume = cm3(w.p.Step("V_gating", "volume of the gating", w.mg/w.rho*1e6, "cm^3", "m_g / rho", definition))
	}
	w.out.GatingMass = kg(w.mg)
	return nil
}

func (w *weighing) gatingShares() (f, low, high float64) {
	const what, from, to = "gating over castings", "gating over castings, from", "gating over castings, to"
	if own := w.in.Gating.Share; own.Known() {
		return w.p.Give("f_g", what, own.V, "1"), w.p.Give("f_g_low", from, own.V, "1"), w.p.Give("f_g_high", to, own.V, "1")
	}
	t := gatingShare(w.a.Family)
	return w.p.Lookup("f_g", what, float64(t.V), "1", t.Source, t.Note),
		w.p.Lookup("f_g_low", from, float64(t.Low), "1", t.Source, t.Note),
		w.p.Lookup("f_g_high", to, float64(t.High), "1", t.Source, t.Note)
}

func (w *weighing) gatingVolume() float64 {
	g := w.in.Gating
	A1 := working.GiveOpt(w.p, "A_st", "sprue, area at the top", g.SprueTop, "cm^2")
	A2 := working.GiveOpt(w.p, "A_sb", "sprue, area at the foot", g.SprueBottom, "cm^2")
	h := working.GiveOpt(w.p, "h_s", "sprue, height", g.SprueHeight, "cm")
	Ar := working.GiveOpt(w.p, "A_run", "runner, cross-section", g.RunnerArea, "cm^2")
	Lr := working.GiveOpt(w.p, "L_run", "runners, length together", g.RunnerLength, "cm")
	Ag := working.GiveOpt(w.p, "A_gate", "ingate, cross-section", g.GateArea, "cm^2")
	Lg := working.GiveOpt(w.p, "L_gate", "ingate, length", g.GateLength, "cm")
	n := w.p.Number("n_gate", "ingates", float64(g.GateCount.V), "1")
	V0 := working.GiveOpt(w.p, "V_rest", "basin, well and the rest", g.Rest, "cm^3")
	sprue := w.p.Step("V_sprue", "sprue", h/3*(A1+A2+math.Sqrt(A1*A2)), "cm^3", "h_s / 3 * (A_st + A_sb + sqrt(A_st * A_sb))", gatingGeometry)
	runner := w.p.Step("V_run", "runners", Ar*Lr, "cm^3", "A_run * L_run", gatingGeometry)
	gates := w.p.Step("V_gates", "ingates", n*Ag*Lg, "cm^3", "n_gate * A_gate * L_gate", gatingGeometry)
	return w.p.Step("V_gating", "volume of the gating", sprue+runner+gates+V0, "cm^3", "V_sprue + V_run + V_gates + V_rest", adding)
}

// melt adds up what is poured, what is melted and what is charged.
func (w *weighing) melt() form.Faults {
	p := w.p
	pour := p.Step("m_pour", "metal to pour", w.N*w.m+w.mr+w.mg, "kg", "N * m + m_r + m_g", balance)
	if pour > heaviest {
		return form.Faults{{Field: w.massField(), Label: "Metal to pour", Value: quantity.Text(kg(pour)),
			Why: working.Say("the mould would take %v: %v in castings, %v in risers, %v in gating. This is meant for moulds up to %v", kg(pour), kg(w.N*w.m), kg(w.mr), kg(w.mg), kg(heaviest))}}
	}
	fs := working.GiveOpt(p, "f_s", "spill and skimmings over metal poured", w.in.Spill, "1")
	fp := working.GiveOpt(p, "f_p", "pig reserve over metal poured", w.in.Pig, "1")
	heel := working.GiveOpt(p, "m_heel", "heel and skull", w.in.Heel, "kg")
	loss, lossLow, lossHigh := w.meltLoss()

	yield := p.Step("Y", "yield", w.N*w.m/pour, "1", "N * m / m_pour", definition)
	spill := p.Step("m_spill", "spill and skimmings", fs*pour, "kg", "f_s * m_pour", definition)
	pig := p.Step("m_pig", "reserve for the pig mould", fp*pour, "kg", "f_p * m_pour", definition)
	melt := p.Step("m_melt", "metal to melt", pour+spill+pig+heel, "kg", "m_pour + m_spill + m_pig + m_heel", balance)
	charge := p.Step("m_charge", "charge to weigh out", melt/(1-loss), "kg", "m_melt / (1 - f_l)", balance)
	lost := p.Step("m_loss", "melting loss", loss*charge, "kg", "f_l * m_charge", balance)

	low := p.Step("m_pour_low", "metal to pour, from", w.N*w.mLow+w.mr*w.rhoLow/w.rho+w.mgLow, "kg", "N * m_low + m_r * rho_low / rho + m_g_low", balance)
	high := p.Step("m_pour_high", "metal to pour, to", w.N*w.mHigh+w.mr*w.rhoHigh/w.rho+w.mgHigh, "kg", "N * m_high + m_r * rho_high / rho + m_g_high", balance)
	chargeLow := p.Step("m_charge_low", "charge, from", (low*(1+fs+fp)+heel)/(1-lossLow), "kg", "(m_pour_low * (1 + f_s + f_p) + m_heel) / (1 - f_l_low)", balance)
	chargeHigh := p.Step("m_charge_high", "charge, to", (high*(1+fs+fp)+heel)/(1-lossHigh), "kg", "(m_pour_high * (1 + f_s + f_p) + m_heel) / (1 - f_l_high)", balance)

	liquid := w.a.DensityLiquid
	rhoL := p.Lookup("rho_l", "density of the liquid metal", quantity.In(liquid.V, "kg/m^3"), "kg/m^3", liquid.Source, liquid.Note)
	Vl := p.Step("V_l", "metal to pour, liquid volume", pour/rhoL*1e6, "cm^3", "m_pour / rho_l", definition)

	o := &w.out
	o.Poured, o.PouredVolume, o.Yield = kg(pour), cm3(Vl), share(yield)
	o.Spill, o.Pig, o.Heel, o.Melt, o.Lost, o.Charge = kg(spill), kg(pig), kg(heel), kg(melt), kg(lost), kg(charge)
	o.PouredLow, o.PouredHigh, o.ChargeLow, o.ChargeHigh = kg(low), kg(high), kg(chargeLow), kg(chargeHigh)
	return nil
}

func (w *weighing) meltLoss() (f, low, high float64) {
	const what, from, to = "share of the charge lost in melting", "share lost, from", "share lost, to"
	if own := w.in.MeltLoss; own.Known() {
		return w.p.Give("f_l", what, own.V, "1"), w.p.Give("f_l_low", from, own.V, "1"), w.p.Give("f_l_high", to, own.V, "1")
	}
	t := w.a.MeltLoss
	least, most := t.Span()
	return w.p.Lookup("f_l", what, float64(t.V), "1", t.Source, t.Note),
		w.p.Lookup("f_l_low", from, float64(least), "1", t.Source, t.Note),
		w.p.Lookup("f_l_high", to, float64(most), "1", t.Source, t.Note)
}

// massField is the input field to change first where the mould is too heavy.
func (w *weighing) massField() string {
	if w.mr > w.N*w.m {
		return "risers"
	}
	return map[Route]string{FromSolids: "solids", FromPattern: "pattern_mass", DrownedPattern: "displaced_mass", DrownedCasting: "displaced_mass", Stated: "mass"}[w.in.Route.V]
}
