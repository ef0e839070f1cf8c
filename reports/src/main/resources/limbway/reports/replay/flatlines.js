// Trails, ways and bodies of the flat drawing.

import { ON_GROUND, STILL } from 'limbway/film';
import { ON_GROUND_RGB } from 'limbway/paints';
import { eachMove, paintOf } from 'limbway/ways';

export class FlatLines {
  constructor(layout, film, modes) {
    this.animals = layout.animals;
    this.film = film;
    this.modes = modes;
  }

  /** A piece from one place to another. */
  #piece(c, view, ax, ay, az, bx, by, bz) {
    c.beginPath();
    c.moveTo(view.x + (view.across ? ay : ax) * view.scale, view.y + view.sign * (view.down === 1 ? ay : az) * view.scale);
    c.lineTo(view.x + (view.across ? by : bx) * view.scale, view.y + view.sign * (view.down === 1 ? by : bz) * view.scale);
    c.stroke();
  }

  /** The trails of all, or of the one that is followed, from a time back. */
  trails(c, view, ms, backMs, follow) {
    for (let animal = 0; animal < this.film.tracks.length; animal++) {
      if (backMs > 0 && (follow < 0 || follow === animal)) {
        this.#trail(c, view, animal, ms, backMs, true);
        this.#trail(c, view, animal, ms, backMs, false);
      }
    }
    c.globalAlpha = 1;
    c.setLineDash([]);
  }

  #trail(c, view, animal, ms, backMs, edge) {
    const { film } = this;
    const track = film.tracks[animal];
    let key = film.keyAt(track, ms);
    c.setLineDash([]);
    for (; key > 0 && track.t[key - 1] >= ms - backMs; key--) {
      const mode = track.mode[key];
      if (mode === STILL) continue;
      const ground = (mode & ON_GROUND) !== 0;
      const kind = this.modes[mode & ~ON_GROUND];
      c.globalAlpha = (1 - 0.65 * Math.min(1, (ms - track.t[key]) / backMs)) * (edge && !ground ? 0.55 : 1);
      c.lineWidth = edge ? (ground ? 8 : 5) : 2.6;
      c.strokeStyle = edge ? (ground ? ON_GROUND_RGB : '#ffffff') : kind?.rgb ?? '#333333';
      if (!edge) c.setLineDash(kind?.dash ?? []);
      const a = 3 * track.hold[key - 1];
      const b = 3 * track.hold[key];
      const { holds } = film;
      this.#piece(c, view, holds[a], holds[a + 1], holds[a + 2], holds[b], holds[b + 1], holds[b + 2]);
    }
  }

  /** The ways of a card, and while they are gone, who goes them. */
  ways(c, view, card, run, ghost) {
    const ways = [...card.ways].sort((a, b) => (a.kind > b.kind ? 1 : -1));
    for (const pass of [0, 1]) {
      for (const way of ways) {
        const { rgb, dash } = paintOf(way);
        c.strokeStyle = pass ? rgb : '#ffffff';
        c.lineWidth = pass ? 4 : 7;
        c.setLineDash(pass ? dash : []);
        c.beginPath();
        eachMove(this.film, way.way, (ax, ay, az, bx, by, bz) => {
          c.moveTo(view.x + ax * view.scale, view.y + view.sign * (view.down === 1 ? ay : az) * view.scale);
          c.lineTo(view.x + bx * view.scale, view.y + view.sign * (view.down === 1 ? by : bz) * view.scale);
        });
        c.stroke();
      }
    }
    c.setLineDash([]);
    for (const way of run ? card.ways : []) {
      this.#dot(c, view, this.film.along(way.way, run.ms, ghost), paintOf(way).rgb, 8);
    }
  }

  dots(c, view, now) {
    for (let i = 0; i < now.length; i++) {
      if (now[i]) this.#dot(c, view, now[i], this.animals[i].rgb, 6);
    }
  }

  #dot(c, view, at, rgb, radius) {
    c.beginPath();
    c.arc(view.x + at.x * view.scale, view.y + view.sign * (view.down === 1 ? at.y : at.z) * view.scale, radius, 0, 7);
    c.fillStyle = rgb;
    c.fill();
    c.strokeStyle = '#222222';
    c.lineWidth = 1.5;
    c.stroke();
  }
}
