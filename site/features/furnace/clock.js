// Keeps the time since tapping. Two clocks of the device are asked: the time
// of day, which goes on while the page is closed or the device asleep but can
// be set; and the page's own, which cannot be set but ends with the page and
// may stand still in sleep. While both agree there is nothing to decide. Where
// they part, time in which the page was out of sight counts as gone by (the
// device slept); a step in plain sight, or one back, is the time of day being
// set, and does not count. Either way it is told, and can be taken the other
// way.

const apart = 1000; // ms by which the clocks may differ between two looks
const keep = 1000; // ms between two marks on the device
const longest = 24 * 3600; // s; a record is not followed for longer

const key = (id) => "pourwright.clock." + id;

export class Clock {
  #id;
  #told;
  #at = 0; // s since tapping at the last look
  #wall = 0; // ms, the two clocks then
  #mono = 0;
  #marked = 0;
  #hidden = false; // whether the page was out of sight since the last look

  /** told(kind, seconds) is told that the clocks parted: "slept", "set" or "back" (while the page was closed). */
  constructor(id, told) {
    this.#id = id;
    this.#told = told;
  }

  /** Begins at 0. */
  start() {
    this.#from(0);
    this.mark();
  }

  /** Goes on from the mark on the device; without one, from the last entry of the record. */
  resume(events) {
    const entry = events.findLast((e) => e.at && e.clock);
    const known = [this.#marks(), entry && { at: parseFloat(entry.at), wall: Date.parse(entry.clock) }].find((k) => Number.isFinite(k?.at) && Number.isFinite(k.wall));
    const last = known ?? { at: 0, wall: Date.now() };
    const gone = (Date.now() - last.wall) / 1000;
    this.#from(Math.min(last.at + Math.max(gone, 0), longest));
    if (gone < -apart / 1000) this.#told("back", -gone);
  }

  /** Seconds since tapping. */
  now() {
    const wall = Date.now();
    const mono = performance.now();
    const off = wall - this.#wall - (mono - this.#mono);
    const slept = off > apart && this.#hidden;
    this.#at = Math.min(this.#at + (mono - this.#mono + (slept ? off : 0)) / 1000, longest);
    this.#wall = wall;
    this.#mono = mono;
    this.#hidden = document.visibilityState === "hidden";
    if (mono - this.#marked > keep) this.mark();
    if (Math.abs(off) > apart) this.#told(slept ? "slept" : "set", off / 1000);
    return this.#at;
  }

  /** Takes a step of the clocks the other way, but not to before the last entry. */
  shift(seconds, entry) {
    this.#at = Math.min(Math.max(this.#at + seconds, entry), longest);
    this.mark();
  }

  /** The page goes out of sight, perhaps for good. */
  hide() {
    this.now();
    this.#hidden = true;
    this.mark();
  }

  #from(at) {
    this.#at = at;
    this.#wall = Date.now();
    this.#mono = performance.now();
  }

  /** Notes on the device how late it is: after every entry, and now and then. */
  mark() {
    this.#marked = this.#mono;
    try {
      localStorage.setItem(key(this.#id), JSON.stringify({ at: this.#at, wall: this.#wall }));
    } catch {
      // Full or closed: the entries of the record have the time too.
    }
  }

  #marks() {
    try {
      return JSON.parse(localStorage.getItem(key(this.#id)));
    } catch {
      return null;
    }
  }
}

/** Minutes and seconds, for a figure that is read from afar. */
export function span(seconds) {
  const whole = Math.floor(Math.abs(seconds) + 1e-9);
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (n) => String(n).padStart(2, "0");
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}

/** The value of a curve at a moment, on the straight line between its points; null outside it. */
export function along(points, x) {
  if (!points?.length || x < points[0][0] || x > points.at(-1)[0]) return null;
  const i = points.findIndex(([at]) => at >= x);
  if (i === 0) return points[0][1];
  const [[x0, y0], [x1, y1]] = [points[i - 1], points[i]];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
