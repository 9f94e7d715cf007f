// The words for states, levels and origins, once.

export const stateWords = {
  blank: "not filled in",
  needs: "more wanted",
  fault: "check entry",
  stop: "stop",
  mind: "mind",
  fine: "fine",
};

export const levelWords = { stop: "Stop", mind: "Mind", note: "Note" };

export const originWords = {
  given: "typed in",
  default: "printed default",
  constant: "constant",
  table: "table",
  result: "worked out",
  linked: "from another sheet",
};

/** "a length", "an angle". */
export const withArticle = (noun) => (/^[aeiou]/i.test(noun) ? "an " : "a ") + noun;

/** A unit in a sentence: "in mm", but not "in in". */
export const unitWord = (unit) => ({ in: "inches", ft: "feet" })[unit] ?? unit;

/** Keeps every number with its unit when the line breaks. */
export const together = (text) => text.replaceAll(/(\d) (?=\D)/g, "$1\u00a0");

/** "at_origin" as a heading: "At origin". */
export const heading = (key) => (key.charAt(0).toUpperCase() + key.slice(1)).replaceAll("_", " ");

export const caution =
  "Pourwright gives arithmetic and reminders. It cannot see your shop. Local codes, and licensed or experienced people on the spot, decide whether and how you pour.";
