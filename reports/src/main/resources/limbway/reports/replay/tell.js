// In words: what each animal does at a time, and where the sun stands.

import { STILL, spot } from 'limbway/film';
import { Near } from 'limbway/near';
import { number } from 'limbway/words';

const POINTS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'];
const NO_PLACE = 65535;

export class Teller {
  constructor(data, layout, film, sky, t) {
    this.data = data;
    this.layout = layout;
    this.film = film;
    this.sky = sky;
    this.t = t;
    this.near = new Near(layout);
    this.here = spot();
    this.sunAt = { azimuthDeg: 0, elevationDeg: 0 };
  }

  placeName(place) {
    return place === NO_PLACE ? null : this.layout.places?.[place]?.id ?? null;
  }

  /** One sentence about one animal. */
  sentence(animal, ms) {
    const { t, film, data } = this;
    const name = this.layout.animals[animal].name;
    const at = film.at(animal, ms, this.here);
    if (!at) return t('tell.absent', { name });
    const where = t(at.ground ? 'tell.onGround' : 'tell.offGround');
    if (at.mode !== STILL) {
      // looked for in the middle of the move, where it is plain on what it is made
      const word = data.modes[at.mode]?.word;
      const to = this.placeName(film.trips.to[at.trip]);
      const over = `over.${word}`;
      if (at.ground && t.has(over)) {
        const text = to ? t('tell.overTo', { name, does: t(over), to }) : t('tell.over', { name, does: t(over) });
        return this.#because(text, film.trips.motive[at.trip]);
      }
      const on = at.ground ? t('tell.theGround') : this.near.nameAt(at.x, at.y, at.z) ?? t('tell.something');
      const does = t(`does.${word}`, { on });
      const text = to ? t('tell.movesTo', { name, does, to, where }) : t('tell.moves', { name, does, where });
      return this.#because(text, film.trips.motive[at.trip]);
    }
    const { stays } = film;
    const place = at.stay < 0 ? null : this.placeName(stays.place[at.stay]);
    const on = at.ground ? t('tell.theGround') : this.near.nameAt(at.x, at.y, at.z) ?? t('tell.something');
    if (at.stay >= 0 && stays.waiting[at.stay]) return t('tell.waits', { name, at: place ?? on, where });
    const motive = at.stay < 0 ? null : data.motives[stays.motive[at.stay]];
    const key = `stays.${motive}`;
    return motive && t.has(key) ? t(key, { name, at: place ?? on, where }) : t('tell.stays', { name, at: place ?? on, where });
  }

  #because(text, motive) {
    const key = `because.${this.data.motives[motive]}`;
    return this.t.has(key) ? this.t('tell.because', { text, why: this.t(key) }) : text;
  }

  /** Where the sun stands. */
  sun(ms) {
    const { t } = this;
    if (!this.sky) return t('sun.none');
    const { azimuthDeg, elevationDeg } = this.sky.at(ms, this.sunAt);
    if (elevationDeg <= 0) return t(elevationDeg > -6 ? 'sun.dusk' : 'sun.night');
    const point = POINTS[Math.round(azimuthDeg / 45) % 8];
    return t('sun.up', { height: number(elevationDeg), direction: t(`sun.${point}`) });
  }
}
