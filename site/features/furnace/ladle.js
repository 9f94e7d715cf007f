// The ladle as it should stand now, seen from the side, tipped about its lip;
// the metal in it is level with the lip.
import { h } from "../../shared/draw.js";

const lip = [150, 92]; // where the ladle turns
const outline = [[-104, 0], [-92, 118], [-12, 118], [0, 0]]; // of the inside upright, seen from the lip
const ticks = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90];

const turned = (degrees) => {
  const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return ([x, y]) => [x * cos - y * sin, x * sin + y * cos];
};
const path = (points) => "M" + points.map(([x, y]) => `${(lip[0] + x).toFixed(1)} ${(lip[1] + y).toFixed(1)}`).join("L");

/** Draws it at a tilt in degrees; next is the tilt of the next beat. */
export function drawnLadle(degrees, next, label) {
  const wall = outline.map(turned(degrees));
  const ray = (d, a, b) => {
    const [x, y] = turned(d)([-1, 0]);
    return `M${(lip[0] + a * x).toFixed(1)} ${(lip[1] + a * y).toFixed(1)}L${(lip[0] + b * x).toFixed(1)} ${(lip[1] + b * y).toFixed(1)}`;
  };
  return h(
    "svg:svg",
    { class: "tilt-drawing", viewBox: "-20 -50 230 240", role: "img", "aria-label": label },
    h("svg:path", { key: "metal", class: "tilt-metal", d: path(below(wall)) + "Z" }),
    h("svg:path", { key: "wall", class: "tilt-wall", d: path(wall) }),
    ticks.map((d) => h("svg:path", { key: "t" + d, class: "tilt-tick", d: ray(d, 122, d % 30 ? 130 : 138) })),
    next !== null && h("svg:path", { key: "next", class: "tilt-next", d: ray(next, 118, 144) }),
    h("svg:path", { key: "hand", class: "tilt-hand", d: ray(degrees, 20, 132) }),
    degrees > 0 && h("svg:path", { key: "stream", class: "tilt-stream", d: `M${lip[0]} ${lip[1]}q10 4 12 30v64` }),
  );
}

/** The part of an outline that lies below the lip. */
function below(points) {
  const out = [];
  points.forEach((b, i) => {
    const a = points.at(i - 1);
    if (a[1] < 0 !== b[1] < 0) out.push([a[0] + ((b[0] - a[0]) * -a[1]) / (b[1] - a[1]), 0]);
    if (b[1] >= 0) out.push(b);
  });
  return out.length > 2 ? out : [[0, 0], [0, 0]];
}
