// Formulas that are too wide for their place are set smaller, down to two
// thirds; what is wider still can be scrolled.
const smallest = 0.62;

/** Fits each box of formulas; its style sheet multiplies the letters by --fit. */
export function fit(boxes) {
  for (const box of boxes) box.style.setProperty("--fit", "1");
  const shares = boxes.map((box) => (box.clientWidth / Math.max(1, ...[...box.querySelectorAll("math")].map((m) => m.scrollWidth))) * 0.98);
  boxes.forEach((box, i) => shares[i] < 0.98 && box.style.setProperty("--fit", String(Math.max(smallest, shares[i]))));
}
