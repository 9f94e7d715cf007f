// Where in the site the user is, as the part of the address behind "#":
//
//	#/                              start
//	#/settings, #/sources
//	#/rule                          a contraction rule without a plan
//	#/class                         the lessons to choose from
//	#/class/CALCULATOR              a calculator in class
//	#/class/show/DEMONSTRATION
//	#/class/plan/ID/STATION         a station of a plan in class
//	#/plan/ID                       the mould
//	#/plan/ID/handling, …/print     safe handling, the sheets for paper
//	#/plan/ID/furnace               the pour as it runs
//	#/plan/ID/sheet/STATION/ANSWER  a sheet, with one answer's working open
//	#/plan/ID/field/PATH            a sheet, brought to one field

export function read(hash) {
  const [view, plan, page, station, answer] = hash.replace(/^#?\/?/, "").split("/").map(decodeURIComponent);
  if (view === "settings" || view === "sources" || view === "rule") return { view };
  if (view === "class") return { view, lesson: [plan, page, station].filter(Boolean).join("/") };
  if (view !== "plan" || !plan) return { view: "start" };
  if (page === "handling" || page === "print" || page === "furnace") return { view: "plan", plan, page };
  if (page === "sheet" && station) return { view: "plan", plan, page: "mould", station, answer };
  if (page === "field" && station) return { view: "plan", plan, page: "mould", station: station.split(".")[0], field: station };
  return { view: "plan", plan, page: "mould" };
}

export const to = {
  start: () => "#/",
  settings: () => "#/settings",
  sources: () => "#/sources",
  rule: () => "#/rule",
  lesson: (address) => "#/class" + (address ? "/" + address.split("/").map(encodeURIComponent).join("/") : ""),
  plan: (id, page) => `#/plan/${encodeURIComponent(id)}` + (page && page !== "mould" ? "/" + page : ""),
  sheet: (id, station, answer) => `#/plan/${encodeURIComponent(id)}/sheet/${encodeURIComponent(station)}` + (answer ? "/" + encodeURIComponent(answer) : ""),
  field: (id, path) => `#/plan/${encodeURIComponent(id)}/field/${encodeURIComponent(path)}`,
};
