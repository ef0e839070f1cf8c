// What stands nearest to a place, by name: so that words can say on what an animal moves.

const WITHIN_M = 0.6;

export class Near {
  constructor(layout) {
    this.axes = layout.axes ?? [];
    this.outlines = (layout.outlines ?? []).filter((each) => each.group === 'platforms' || each.group === 'panels');
  }

  /** The name of the support, platform or panel at a place, or null where none is near. */
  nameAt(x, y, z) {
    let best = WITHIN_M;
    let name = null;
    for (const axis of this.axes) {
      const away = fromLine(axis.line, x, y, z) - axis.diameterM / 2;
      if (away < best) {
        best = away;
        name = axis.id;
      }
    }
    for (const { id, ring } of this.outlines) {
      const away = fromRing(ring, x, y, z);
      if (away < best) {
        best = away;
        name = id;
      }
    }
    return name;
  }
}

function fromLine(line, x, y, z) {
  let least = Infinity;
  for (let i = 0; i + 5 < line.length; i += 3) {
    const dx = line[i + 3] - line[i];
    const dy = line[i + 4] - line[i + 1];
    const dz = line[i + 5] - line[i + 2];
    const long = dx * dx + dy * dy + dz * dz;
    const along = (x - line[i]) * dx + (y - line[i + 1]) * dy + (z - line[i + 2]) * dz;
    const share = long > 0 ? Math.min(1, Math.max(0, along / long)) : 0;
    least = Math.min(
      least,
      Math.hypot(x - line[i] - share * dx, y - line[i + 1] - share * dy, z - line[i + 2] - share * dz),
    );
  }
  return least;
}

/** How far a place lies off the plane of a ring, if it lies before its inside; else endless. */
function fromRing(ring, x, y, z) {
  let nx = 0;
  let ny = 0;
  let nz = 0;
  for (let i = 0, j = ring.length - 3; i < ring.length; j = i, i += 3) {
    nx += (ring[j + 1] - ring[i + 1]) * (ring[j + 2] + ring[i + 2]);
    ny += (ring[j + 2] - ring[i + 2]) * (ring[j] + ring[i]);
    nz += (ring[j] - ring[i]) * (ring[j + 1] + ring[i + 1]);
  }
  const long = Math.hypot(nx, ny, nz);
  if (long === 0) return Infinity;
  const away = Math.abs(((x - ring[0]) * nx + (y - ring[1]) * ny + (z - ring[2]) * nz) / long);
  const across = Math.abs(nx) > Math.abs(ny) && Math.abs(nx) > Math.abs(nz) ? 0 : Math.abs(ny) > Math.abs(nz) ? 1 : 2;
  const u = across === 0 ? 1 : 0;
  const v = across === 2 ? 1 : 2;
  const at = [x, y, z];
  let inside = false;
  for (let i = 0, j = ring.length - 3; i < ring.length; j = i, i += 3) {
    const above = ring[i + v] > at[v];
    if (above !== ring[j + v] > at[v]) {
      const cross = ring[i + u] + ((at[v] - ring[i + v]) * (ring[j + u] - ring[i + u])) / (ring[j + v] - ring[i + v]);
      if (at[u] < cross) inside = !inside;
    }
  }
  return inside ? away : Infinity;
}
