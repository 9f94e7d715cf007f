// What can be tapped instead of typed.

/** Why a hold point is set aside: [answer, reason]. */
export const reasons = [
  ["not-applicable", "Does not apply to this pour"],
  ["yes", "Answered on the printed list"],
  ["no", "Done another way, and looked at by the person in charge"],
  ["no", "Not done; the person in charge decides to go on"],
  ["no", "Somebody stands by for it"],
];

/** Why a pour begins without its list. */
export const listless = ["Another list is used, and answered", "The person in charge decides to go on"];

export const remarks = ["Ran smoothly", "The stream broke", "Slag went in", "Splashed beside the sprue", "Flashed at the joint", "Blew at a vent or riser", "Risers came up full", "Risers stayed low", "Metal looked cold", "Poured too fast", "Ladle ran short", "Basin kept full"];

export const kinds = { tapped: "Ladle full", reading: "Read", start: "Begun", stop: "Full", remark: "Remark", trouble: "Trouble", hold: "Hold point", clock: "Clock", closed: "Closed" };
