// Where each animal came along in the last minutes: colour and dash by mode, a broad edge where it was on the ground.

import { Color } from 'three';
import { ON_GROUND, STILL, spot } from 'limbway/film';
import { dashOf, dashUnitM, ON_GROUND_RGB } from 'limbway/paints';

const ROOM = 6000;
const UNDER = new Color('#ffffff');
const GROUND = new Color(ON_GROUND_RGB);
const PLUMB = new Color('#3b4350');

export class Trails {
  constructor(layout, film, modes, strokes, lift) {
    this.film = film;
    this.strokes = strokes;
    this.lift = lift;
    this.colours = modes.map((mode) => new Color(mode.rgb));
    const unitM = dashUnitM(layout.bounds);
    this.dashes = modes.map((mode) => dashOf(mode, unitM));
    this.here = spot();
  }

  /** Lays the trails of all animals, or of the one that is followed, from a time back. */
  lay(ms, backMs, follow, now) {
    const { film } = this;
    if (backMs > 0) {
      for (const edge of [true, false]) {
        for (let animal = 0; animal < film.tracks.length; animal++) {
          if (follow < 0 || follow === animal) this.#trail(animal, ms, backMs, edge);
        }
      }
    }
    for (let animal = 0; animal < now.length; animal++) {
      if (now[animal]) this.#plumb(now[animal], animal === follow);
    }
  }

  #trail(animal, ms, backMs, edge) {
    const { film, strokes, lift } = this;
    const { holds } = film;
    const track = film.tracks[animal];
    const last = film.keyAt(track, ms);
    if (last < 0) return;
    const end = film.at(animal, ms, this.here);
    let alongM = 0;
    const stop = Math.min(track.t.length - 1, end.moving ? last + 1 : last);
    const from = ms - backMs;
    let first = stop;
    while (first > 0 && track.t[first - 1] >= from) first--;
    for (let key = Math.max(1, first); key <= stop && strokes.count < ROOM; key++) {
      const mode = track.mode[key];
      if (mode === STILL) continue;
      const a = 3 * track.hold[key - 1];
      const b = 3 * track.hold[key];
      const part = key > last;
      const bx = part ? end.x : holds[b];
      const by = part ? end.y : holds[b + 1];
      const bz = part ? end.z : holds[b + 2];
      const longM = Math.hypot(bx - holds[a], by - holds[a + 1], bz - holds[a + 2]);
      const age = Math.min(1, Math.max(0, (ms - Math.min(ms, track.t[key])) / backMs));
      const alpha = 1 - 0.65 * age;
      const ground = (mode & ON_GROUND) !== 0;
      const kind = mode & ~ON_GROUND;
      if (edge) {
        strokes.add(
          holds[a], holds[a + 1] + lift, holds[a + 2], bx, by + lift, bz,
          ground ? GROUND : UNDER, ground ? alpha : 0.55 * alpha, ground ? 7.5 : 5.5,
        );
      } else {
        strokes.add(
          holds[a], holds[a + 1] + lift, holds[a + 2], bx, by + lift, bz,
          this.colours[kind] ?? PLUMB, alpha, 3, alongM, alongM + longM, this.dashes[kind],
        );
      }
      alongM += longM;
    }
  }

  /** The line from an animal down to the ground, and a ring below the one that is followed. */
  #plumb(at, followed) {
    const { film, strokes } = this;
    const y = film.ground.heightAt(at.x, at.z) + 0.04;
    if (at.y - y > 0.3) strokes.add(at.x, at.y, at.z, at.x, y, at.z, PLUMB, 0.5, 1.2);
    const sides = 20;
    const radius = followed ? 0.75 : 0.22;
    for (let i = 0; i < sides; i++) {
      const a = (2 * Math.PI * i) / sides;
      const b = (2 * Math.PI * (i + 1)) / sides;
      strokes.add(
        at.x + radius * Math.cos(a), y, at.z + radius * Math.sin(a),
        at.x + radius * Math.cos(b), y, at.z + radius * Math.sin(b),
        PLUMB, followed ? 0.9 : 0.5, followed ? 2.2 : 1.2,
      );
    }
  }
}
