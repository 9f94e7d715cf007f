// Where in the site the user is, as the part of the address behind "#":
//
//	#/                              start
//	#/settings, #/sources
//	#/rule                          a contraction rule without a plan
//	#/class                         the lessons to choose from
//	#/class/CALCULATOR              a calculator in class
//	#/class/show/DEMONSTRATION
//	#/class/plan/ID/STATION         a station of a plan in class
//	#/compare/ID/ID                 two plans side by side
//	#/shared/CODE                   a plan that the address carries, see share.js
//	#/plan/ID                       the mould
//	#/plan/ID/handling, …/print     safe handling, the sheets for paper
//	#/plan/ID/furnace               the pour as it runs
//	#/plan/ID/share                 the plan as file, link and QR code
//	#/plan/ID/sheet/STATION/ANSWER  a sheet, with one answer's working open
//	#/plan/ID/field/PATH            a sheet, brought to one field

export function read(hash) {
  const [view, plan, page, station, answer] = hash.replace(/^#?\/?/, "").split("/").map(decoded);
  if (view === "settings" || view === "sources" || view === "rule") return { view };
  if (view === "class") return { view, lesson: [plan, page, station].filter(Boolean).join("/") };
  if (view === "compare" && plan && page) return { view, a: plan, b: page };
  if (view === "shared" && plan) return { view, code: plan };
  if (view !== "plan" || !plan) return { view: "start" };
  if (["handling", "print", "furnace", "share"].includes(page)) return { view: "plan", plan, page };
  if (page === "sheet" && station) return { view: "plan", plan, page: "mould", station, answer };
  if (page === "field" && station) return { view: "plan", plan, page: "mould", station: station.split(".")[0], field: station };
  return { view: "plan", plan, page: "mould" };
}

/** A part of an address as it was meant; one cut short in the middle of a letter stands as it is. */
function decoded(part) {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export const to = {
  start: () => "#/",
  settings: () => "#/settings",
  sources: () => "#/sources",
  rule: () => "#/rule",
  lesson: (address) => "#/class" + (address ? "/" + address.split("/").map(encodeURIComponent).join("/") : ""),
  compare: (a, b) => `#/compare/${encodeURIComponent(a)}/${encodeURIComponent(b)}`,
  shared: (code) => "#/shared/" + code,
  plan: (id, page) => `#/plan/${encodeURIComponent(id)}` + (page && page !== "mould" ? "/" + page : ""),
  sheet: (id, station, answer) => `#/plan/${encodeURIComponent(id)}/sheet/${encodeURIComponent(station)}` + (answer ? "/" + encodeURIComponent(answer) : ""),
  field: (id, path) => `#/plan/${encodeURIComponent(id)}/field/${encodeURIComponent(path)}`,
};
