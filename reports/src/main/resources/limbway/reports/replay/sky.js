// Where the sun stands at a time; knows nothing of drawing.

import { row } from 'limbway/data';

const DAY_MS = 86_400_000;
const RAD = Math.PI / 180;

export class Sky {
  constructor(sun) {
    this.everyMs = sun.everyMin * 60_000;
    this.azimuthDeg = row(sun.azimuthDeg);
    this.elevationDeg = row(sun.elevationDeg);
  }

  /** Fills an object with the azimuth (from north over east) and the elevation at a time, both in degrees. */
  at(ms, place) {
    const count = this.elevationDeg.length;
    const of = (((ms % DAY_MS) + DAY_MS) % DAY_MS) / this.everyMs;
    const before = Math.min(count - 1, Math.floor(of));
    const after = Math.min(count - 1, before + 1);
    const share = Math.min(1, of - before);
    const turn = ((((this.azimuthDeg[after] - this.azimuthDeg[before]) % 360) + 540) % 360) - 180;
    place.azimuthDeg = (this.azimuthDeg[before] + share * turn + 360) % 360;
    place.elevationDeg =
      this.elevationDeg[before] + share * (this.elevationDeg[after] - this.elevationDeg[before]);
    return place;
  }

  /** From when to when the sun is up, in milliseconds after midnight; null where it is not. */
  daylight() {
    let from = -1;
    let to = -1;
    for (let i = 0; i < this.elevationDeg.length; i++) {
      if (this.elevationDeg[i] > 0) {
        if (from < 0) from = i * this.everyMs;
        to = i * this.everyMs;
      }
    }
    return from < 0 ? null : { from, to };
  }
}

/** The direction towards the sun: x east, y up, z south. */
export function towards({ azimuthDeg, elevationDeg }, vector) {
  const level = Math.cos(elevationDeg * RAD);
  vector.x = Math.sin(azimuthDeg * RAD) * level;
  vector.y = Math.sin(elevationDeg * RAD);
  vector.z = -Math.cos(azimuthDeg * RAD) * level;
  return vector;
}

/** How much daylight there is, from 0 (night) to 1, through dusk. */
export function daylightAt(elevationDeg) {
  return Math.min(1, Math.max(0, (elevationDeg + 6) / 12));
}
