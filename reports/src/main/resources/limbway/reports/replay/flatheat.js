// Use as colours in the flat drawing.

import { row } from 'limbway/data';
import { USE_RGB, useStep } from 'limbway/paints';

const QUIET = '#b9bcba';

export class FlatHeat {
  constructor(layout) {
    this.outlinesOf = layout.outlines ?? [];
    this.seconds = new Map((layout.use?.supports ?? []).map((use) => [use.id, use.secondsPerAnimalDay]));
    this.ground = layout.use?.ground;
    this.cellSeconds = this.ground ? row(this.ground.secondsPerAnimalDay) : [];
  }

  of(id) {
    const step = useStep(this.seconds.get(id) ?? 0);
    return step < 0 ? QUIET : USE_RGB[step];
  }

  /** Platforms and panels, coloured by use. */
  outlines(c, view) {
    for (const { id, ring } of this.outlinesOf) {
      const step = useStep(this.seconds.get(id) ?? 0);
      if (step < 0) continue;
      c.beginPath();
      for (let i = 0; i < ring.length; i += 3) {
        c.lineTo(view.x + ring[i + view.across] * view.scale, view.y + view.sign * ring[i + view.down] * view.scale);
      }
      c.closePath();
      c.fillStyle = USE_RGB[step];
      c.fill();
    }
  }

  /** The squares of the ground that are used; in the plan only. */
  cells(c, view) {
    const { ground, cellSeconds } = this;
    for (let i = 0; i < cellSeconds.length; i++) {
      const step = useStep(cellSeconds[i]);
      if (step < 0) continue;
      const x = ground.x0 + (i % ground.nx) * ground.cellM;
      const z = ground.z0 + Math.floor(i / ground.nx) * ground.cellM;
      c.fillStyle = USE_RGB[step];
      c.fillRect(view.x + x * view.scale, view.y + z * view.scale, ground.cellM * view.scale, ground.cellM * view.scale);
    }
  }
}
