// The height of the ground at a place, from the triangles that are drawn.

import { places, row } from 'limbway/data';

export class Ground {
  constructor(layout) {
    const part = layout.parts.find((each) => each.finish === 'ground');
    this.at = part ? places(layout, part.places) : new Float32Array(0);
    this.corners = part ? row(part.indices) : [];
    this.lowM = Infinity;
    let highM = -Infinity;
    for (let i = 1; i < this.at.length; i += 3) {
      this.lowM = Math.min(this.lowM, this.at[i]);
      highM = Math.max(highM, this.at[i]);
    }
    if (this.lowM === Infinity) this.lowM = 0;
    this.level = highM - this.lowM < 0.01;
  }

  /** The height at a place of the plan; outside the ground its lowest height. */
  heightAt(x, z) {
    if (this.level) return this.lowM;
    const { at, corners } = this;
    for (let i = 0; i < corners.length; i += 3) {
      const a = 3 * corners[i];
      const b = 3 * corners[i + 1];
      const c = 3 * corners[i + 2];
      const abx = at[b] - at[a];
      const abz = at[b + 2] - at[a + 2];
      const acx = at[c] - at[a];
      const acz = at[c + 2] - at[a + 2];
      const area = abx * acz - acx * abz;
      if (area === 0) continue;
      const u = ((x - at[a]) * acz - (z - at[a + 2]) * acx) / area;
      const v = ((z - at[a + 2]) * abx - (x - at[a]) * abz) / area;
      if (u >= -1e-3 && v >= -1e-3 && u + v <= 1.002) {
        return at[a + 1] + u * (at[b + 1] - at[a + 1]) + v * (at[c + 1] - at[a + 1]);
      }
    }
    return this.lowM;
  }
}
