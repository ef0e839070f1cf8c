// Which signs a picture carries: animals first, then the ways of a card, then places and supports.

import { spot } from 'limbway/film';
import { paintOf, signAt } from 'limbway/ways';
import { energy } from 'limbway/words';

const ROOM_FOR_NAMES_PX = 560;
/** Signs stand above the heads of those who go. */
const RAISED_M = 0.9;

export class Signs {
  constructor({ layout, film, short, t }) {
    this.t = t;
    this.layout = layout;
    this.film = film;
    this.short = short;
    this.plates = layout.animals.map(({ mark, rgb }) => ({ mark, rgb, text: '', strong: false }));
    this.card = null;
    this.goes = spot();
    this.at = [];
    this.texts = [];
    // in the middle of each support
    this.middles = (layout.axes ?? []).map(({ id, line }) => {
      const half = 3 * Math.floor((line.length / 3 - 1) / 2);
      const end = Math.min(half + 3, line.length - 3);
      return { id, x: (line[half] + line[end]) / 2, y: (line[half + 1] + line[end + 1]) / 2, z: (line[half + 2] + line[end + 2]) / 2 };
    });
  }

  /** Draws all signs; toPicture(x, y, z) gives a point of the picture or null. */
  draw(labels, toPicture, now, state, card, dark) {
    if (!state.run) this.#animals(labels, toPicture, now, state.follow);
    if (card) this.#ways(labels, toPicture, card, state.run);
    this.#places(labels, toPicture, dark, state.names);
    if (state.names) this.#supports(labels, toPicture, dark);
  }

  #animals(labels, toPicture, now, follow) {
    for (let i = 0; i < now.length; i++) {
      if (!now[i]) continue;
      const point = toPicture(now[i].x, now[i].topY || now[i].y, now[i].z);
      if (!point) continue;
      const plate = this.plates[i];
      plate.strong = i === follow;
      plate.text = plate.strong ? this.layout.animals[i].name : this.short[i];
      labels.animal(point.x, point.y, plate);
    }
  }

  #ways(labels, toPicture, card, run) {
    if (this.card !== card) {
      this.card = card;
      this.texts = card.ways.map((way) => `${way.name} ${energy(this.t, way.milliJ)}`);
      this.at = card.ways.map((way, i) => signAt(this.film, way.way, card.ways[1 - i]?.way));
    }
    card.ways.forEach((way, i) => {
      const at = run ? this.film.along(way.way, run.ms, this.goes) : this.at[i];
      const point = toPicture(at.x, at.y + (run ? RAISED_M : 0), at.z);
      if (point) labels.way(point.x, point.y, labels.widthPx > ROOM_FOR_NAMES_PX ? this.texts[i] : way.name, paintOf(way).rgb);
    });
  }

  /** Places: their marks, and in a picture with room, or if asked for, their names. */
  #places(labels, toPicture, dark, named) {
    const all = named || labels.widthPx > ROOM_FOR_NAMES_PX;
    for (const place of this.layout.places ?? []) {
      const point = toPicture(place.at[0], place.at[1], place.at[2]);
      if (point) labels.name(point.x, point.y, all ? place.id : '', place.kind, dark);
    }
  }

  #supports(labels, toPicture, dark) {
    for (const { id, x, y, z } of this.middles) {
      const point = toPicture(x, y, z);
      if (point) labels.name(point.x, point.y, id, null, dark);
    }
  }
}
