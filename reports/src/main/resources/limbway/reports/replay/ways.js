// The two ways of a route card: their lines, where their signs stand, and one who goes each.

import { spot } from 'limbway/film';
import { WAYS } from 'limbway/paints';

/** Calls piece(ax, ay, az, bx, by, bz, fromM, toM) for each move of a way. */
export function eachMove(film, way, piece) {
  const { start, hold } = film.ways;
  const { holds } = film;
  let along = 0;
  for (let i = start[way] + 1; i < start[way + 1]; i++) {
    const a = 3 * hold[i - 1];
    const b = 3 * hold[i];
    const long = Math.hypot(holds[b] - holds[a], holds[b + 1] - holds[a + 1], holds[b + 2] - holds[a + 2]);
    piece(holds[a], holds[a + 1], holds[a + 2], holds[b], holds[b + 1], holds[b + 2], along, along + long);
    along += long;
  }
}

/** Colour and dash of a way of a card. */
export const paintOf = (way) => WAYS[way.kind] ?? WAYS.above;

/** Where the sign of a way stands best: at the hold that is farthest from the other way. */
export function signAt(film, way, rival) {
  const { start, hold } = film.ways;
  const { holds } = film;
  const at = spot();
  let best = -1;
  const middle = Math.floor((start[way] + start[way + 1]) / 2);
  let chosen = hold[middle];
  if (rival !== undefined) {
    for (let i = start[way]; i < start[way + 1]; i++) {
      let least = Infinity;
      const a = 3 * hold[i];
      for (let k = start[rival]; k < start[rival + 1]; k++) {
        const b = 3 * hold[k];
        least = Math.min(least, Math.hypot(holds[a] - holds[b], holds[a + 1] - holds[b + 1], holds[a + 2] - holds[b + 2]));
      }
      if (least > best + 0.05) {
        best = least;
        chosen = hold[i];
      }
    }
  }
  return film.between(chosen, chosen, 0, at);
}

/** Real seconds in which the longer of two ways is gone. */
const SHOWN_S = 9;

/** Both ways of a card gone at once, with time. */
export class Run {
  constructor(film, card, stepping) {
    this.card = card;
    this.longestMs = Math.max(1, ...card.ways.map((way) => film.wayMs[way.way]));
    this.ms = 0;
    this.stepping = stepping;
    this.wait = 0;
    this.ended = new Promise((resolve) => (this.end = resolve));
  }

  /** Lets real time pass; returns whether anything moved. */
  tick(seconds) {
    if (this.stepping) {
      this.wait += seconds;
      if (this.wait < 1) return false;
    }
    const pass = this.stepping ? 1 : seconds;
    this.wait = 0;
    this.ms = Math.min(this.longestMs, this.ms + (pass / SHOWN_S) * this.longestMs);
    return true;
  }

  get done() {
    return this.ms >= this.longestMs;
  }
}
