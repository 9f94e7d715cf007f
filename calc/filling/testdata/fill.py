"""The filling of a mould once more, by SciPy's integrators: the same physics
written anew in the level y itself. Cases come as JSON on standard input, the
fill times and the levels at half of them go out."""
import json
import sys

from scipy.integrate import solve_ivp
from scipy.optimize import brentq

G = 9.81


def flow(case, b, y):
    """Flow from the basin at b into the cavity at y through choke and gates."""
    gates = [(z, case["discharge"] * a) for z, a in case["gates"]]
    total = sum(a for _, a in case["gates"])
    choke = min(case["choke"] or total, total)
    before = (1 / choke**2 - 1 / total**2) / case["discharge"] ** 2

    def out(p):
        return sum(ca * (2 * G * (p - max(y, z))) ** 0.5 for z, ca in gates if p > max(y, z))

    lowest = max(y, min(z for z, _ in gates))
    if b <= lowest:
        return 0.0
    if before <= 0:
        return out(b)
    p = brentq(lambda p: (2 * G * (b - p) / before) ** 0.5 - out(p), lowest, b, xtol=1e-16, rtol=1e-14)
    return out(p)


def area(case, y):
    foot = 0.0
    for height, a0, a1 in case["slices"]:
        if y < foot + height * (1 - 1e-13):
            return a0 + (a1 - a0) * (y - foot) / height
        foot += height
    return a1


def fill(case):
    H, ladle, basin, floor = case["level"], case["ladle"], case["basin"], case["floor"]

    def rate(t, x, where):
        y, b = x
        # A stage may look past the end of its slice: hold it inside.
        inside = min(max(y, where[0]), where[1] * (1 - 1e-12))
        if ladle == 0:
            return [flow(case, H, y) / area(case, inside), 0.0]
        if basin == 0:
            return [min(flow(case, H, y), ladle) / area(case, inside), 0.0]
        q = flow(case, min(max(b, floor), H), y)
        db = (ladle - q) / basin
        if b >= H and db > 0:
            db = 0.0
        if b <= floor and db < 0:
            q, db = ladle, 0.0
        return [q / area(case, inside), db]

    stops, foot = set(), 0.0
    for height, _, _ in case["slices"]:
        foot += height
        stops.add(foot)
    top = foot
    stops |= {z for z, _ in case["gates"] if 0 < z < top}
    t, x, trail = 0.0, [0.0, H], []
    start = 0.0
    for stop in sorted(stops):
        if stop - start < 1e-12:
            continue

        def reached(t, x, where):
            return x[0] - stop

        reached.terminal = True
        s = solve_ivp(rate, (t, t + 1e6), x, method="DOP853", args=((start, stop),), events=reached,
                      rtol=1e-11, atol=1e-14, max_step=case["step"], dense_output=True)
        assert s.status == 1, s.message
        trail.append((t, s.t[-1], s.sol))
        t, x = s.t[-1], [stop, s.y[1][-1]]
        start = stop
    half = t / 2
    for t0, t1, sol in trail:
        if t0 <= half <= t1:
            return {"time": t, "half": float(sol(half)[0]), "basin": float(x[1])}


print(json.dumps([fill(case) for case in json.load(sys.stdin)]))
