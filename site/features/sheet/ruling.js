// Which answers of a station rule the work, in the order in which they are
// wanted: they stand large at the head of its sheet, and they alone go on paper.
// Of a list the columns that matter are named.

const ruling = {
  metal: ["name", "pour_temperature", "superheat", "liquidus", "solidus", "min_wall"],
  iron: ["kind", "ce", "saturation", "liquidus_low", "liquidus_high", "reaches", "strength_low", "manganese_short", "ferromanganese"],
  pattern: ["contraction", "rule", "grade", "rma", { dimensions: ["name", "pattern", "raw", "stock", "draft"] }],
  cores: ["lift", "to_cope", "cores_mass", "sand_mass", "binder_mass", { cores: ["name", "chaplets", "print_wanted", "vent_diameter"] }],
  weight: ["mass", "poured", "charge", "yield", "modulus", { risers: ["name", "diameter", "height", "neck_diameter", "mass"] }],
  feeding: ["shrinkage", "risers_volume", { order: ["rank", "name", "time"], risers: ["name", "diameter", "height", "neck_diameter"] }],
  mould: ["cope_mass", "drag_mass", "sand_mass", "top", "bottom", "side"],
  pour: ["time", "shortest", "longest", "reckoned", "flow_rate", "ingate_speed", "choke", "hold_together", "weights_surged"],
  gating: ["ratio", "choke", "sprue_top", "sprue_foot", "runner_width", "runner_height", "ingates", "ingate_width", "ingate_thickness", "ingate_speed", "basin_depth"],
  filling: ["fill_time", "flow_mean", "rise_most", "ingate_most", "front_end", "front_worst", "lift_surged"],
  holddown: ["surged", "cope_weight", "needed_surge", "closing", "closing_x", "closing_y", "clamps_wanted", "box_length", "box_width"],
  charge: ["kept", "charge", "loss", "cost", { materials: ["name", "mass", "share"], additions: ["name", "mass"] }],
  melting: ["tap", "fuel", "fuel_low", "fuel_high", "electric", "time_low", "time_high"],
  ladle: ["holds_mass", "metal", "freeboard", "carried", "per_person", "flow", "start_tilt", "end_tilt", { marks: ["poured", "time", "tilt", "left"] }],
  ladleheat: ["tap_needed", "tap_needed_high", "start", "end", "wait", "holds", "holds_low"],
  order: ["tap_low", "tap_high", "start", "worst", "in_hand", "ladles", { moulds: ["name", "begin", "end", "cold"] }],
  cooling: ["recommended", "recommended_temperature", "earliest", "freezing", "open"],
  shop: ["moulds", "castings", "reached", "metal", "charge", "sand", "cost", "per_good"],
  lifting: ["limit", "index"],
  handling: ["open_holds", "standoff", "carried_each", "filter", "filter_up_to", "spill_sand", "heat_limit"],
};

const entries = (station) => (ruling[station] ?? []).flatMap((e) => (typeof e === "string" ? [[e]] : Object.entries(e)));

/**
 * The ruling answers of a station that are known, as [key], or [key, columns]
 * for a list; a list that is empty is left out.
 */
export const rulingOf = (station, answers) => entries(station).filter(([key, columns]) => (columns ? answers[key]?.length > 0 : answers[key] && !answers[key].unknown));
