// The day as a strip: for each animal a line, marked where it travels, on the ground or above.

import { el } from 'limbway/dom';
import { ON_GROUND, STILL } from 'limbway/film';
import { ABOVE_RGB, ON_GROUND_RGB } from 'limbway/paints';
import { timeOfDay } from 'limbway/words';

const LANE_PX = 15;
const LEFT_PX = 46;
const HOURS_PX = 15;
const HOUR_MS = 3_600_000;
const EVERY_HOURS = [1, 2, 3, 6];
const LEAST_HOUR_PX = 44;

export class Strip {
  constructor({ layout, film, short }, seek) {
    this.layout = layout;
    this.film = film;
    this.short = short;
    this.canvas = el('canvas', { class: 'rp-strip', 'aria-hidden': 'true' });
    this.high = layout.animals.length * LANE_PX + HOURS_PX;
    this.canvas.style.height = `${this.high}px`;
    this.still = document.createElement('canvas');
    this.canvas.addEventListener('pointerdown', (event) => {
      if (event.offsetX < LEFT_PX || !this.span) return;
      const share = (event.offsetX - LEFT_PX) / (this.widthPx - LEFT_PX);
      seek(this.span.from + share * (this.span.to - this.span.from));
    });
  }

  resize() {
    this.widthPx = Math.max(1, this.canvas.clientWidth);
    this.ratio = Math.min(2, window.devicePixelRatio || 1);
    for (const canvas of [this.canvas, this.still]) {
      canvas.width = Math.round(this.widthPx * this.ratio);
      canvas.height = Math.round(this.high * this.ratio);
    }
    this.span = null;
  }

  #x(ms) {
    return LEFT_PX + ((ms - this.span.from) / (this.span.to - this.span.from)) * (this.widthPx - LEFT_PX);
  }

  #drawStill(follow) {
    const c = this.still.getContext('2d');
    c.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    c.clearRect(0, 0, this.widthPx, this.high);
    c.font = '11px system-ui, -apple-system, "Segoe UI", "Liberation Sans", sans-serif';
    c.textBaseline = 'middle';
    this.layout.animals.forEach((animal, i) => {
      const y = i * LANE_PX + LANE_PX / 2;
      c.fillStyle = animal.rgb;
      c.fillText(animal.mark ?? '', 2, y + 0.5);
      c.fillStyle = '#222222';
      c.globalAlpha = follow < 0 || follow === i ? 1 : 0.4;
      c.fillText(this.short[i], 16, y + 0.5);
      c.fillStyle = '#e6e6e1';
      c.fillRect(LEFT_PX, y - 0.5, this.widthPx - LEFT_PX, 1);
      this.#lane(c, this.film.tracks[i], y);
      c.globalAlpha = 1;
    });
    this.#hours(c);
  }

  #lane(c, track, y) {
    for (const ground of [false, true]) {
      c.fillStyle = ground ? ON_GROUND_RGB : ABOVE_RGB;
      for (let key = 1; key < track.t.length; key++) {
        const mode = track.mode[key];
        if (mode === STILL || ((mode & ON_GROUND) !== 0) !== ground) continue;
        if (track.t[key] < this.span.from || track.t[key - 1] > this.span.to) continue;
        const x = this.#x(track.t[key - 1]);
        const wide = Math.max(ground ? 2 : 1.2, this.#x(track.t[key]) - x);
        // ground hangs below the line and above stands on it, so that they differ without colour
        c.fillRect(x, ground ? y : y - 5, wide, ground ? 6 : 5);
      }
    }
  }

  #hours(c) {
    const hourPx = (HOUR_MS / (this.span.to - this.span.from)) * (this.widthPx - LEFT_PX);
    const every = EVERY_HOURS.find((hours) => hours * hourPx >= LEAST_HOUR_PX) ?? 6;
    c.fillStyle = '#666666';
    c.textAlign = 'center';
    const first = Math.ceil(this.span.from / HOUR_MS / every) * every;
    for (let hour = first; hour * HOUR_MS <= this.span.to; hour += every) {
      const x = this.#x(hour * HOUR_MS);
      c.fillRect(x, 0, 0.5, this.high - HOURS_PX);
      if (x > LEFT_PX + 14 && x < this.widthPx - 16) c.fillText(timeOfDay(hour * HOUR_MS), x, this.high - 6);
    }
    c.textAlign = 'left';
  }

  draw(ms, span, follow) {
    if (this.span !== span || this.follow !== follow) {
      this.span = span;
      this.follow = follow;
      this.#drawStill(follow);
    }
    const c = this.canvas.getContext('2d');
    c.setTransform(1, 0, 0, 1, 0, 0);
    c.clearRect(0, 0, this.canvas.width, this.canvas.height);
    c.drawImage(this.still, 0, 0);
    c.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    c.fillStyle = '#111111';
    c.fillRect(this.#x(ms) - 1, 0, 2, this.high - HOURS_PX);
  }
}
