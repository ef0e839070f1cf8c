// The list of trips of a day, those over the ground first; each opens its card.

import { button, choice, el, say } from 'limbway/dom';
import { timeOfDay } from 'limbway/words';

const MORE = 50;
const NO_CARD = 65535;

export class Trips {
  /**
   * @param scenes per layout: its number, layout, film and teller
   * @param atFirst how many trips are shown until more are asked for
   * @param open called with (layout number, trip) when an entry is chosen
   */
  constructor(scenes, t, atFirst, open) {
    this.scenes = scenes;
    this.t = t;
    this.atFirst = atFirst;
    this.open = open;
    this.day = -1;
    this.animal = '';
    this.layout = 0;
    this.shown = this.atFirst;
    this.list = el('ol', { class: 'rp-trips' });
    this.count = el('p', { class: 'rp-quiet' });
    this.more = button(t('trips.more'), () => {
      this.shown += MORE;
      this.#fill();
    });
    const names = [...new Set(scenes.flatMap((scene) => scene.layout.animals.map(({ name }) => name)))];
    const who = choice(t('trips.animal'), [['', t('trips.all')], ...names.map((name) => [name, name])], (name) => {
      this.animal = name;
      this.shown = this.atFirst;
      this.#fill();
    });
    const fields = el('div', { class: 'rp-row' }, names.length > 1 ? who.box : null);
    if (scenes.length > 1) {
      fields.append(choice(t('layout'), scenes.map(({ layout }, i) => [i, layout.name]), (value) => {
        this.layout = Number(value);
        this.shown = this.atFirst;
        this.#fill();
      }).box);
    }
    this.root = el('section', { class: 'rp-list' }, el('h3', {}, t('trips.title')), fields, this.count, this.list, this.more);
  }

  showDay(day) {
    if (day === this.day) return;
    this.day = day;
    this.shown = this.atFirst;
    this.#fill();
  }

  #fill() {
    const { t } = this;
    const { layout, film } = this.scenes[this.layout];
    const trips = film.tripsOfDay(this.day)
      .filter((trip) => !this.animal || layout.animals[film.trips.animal[trip]].name === this.animal);
    const onGround = (trip) => film.wayOnGround[film.trips.way[trip]];
    const ground = trips.filter(onGround);
    const ordered = [...ground, ...trips.filter((trip) => !onGround(trip))];
    say(this.count, trips.length === 0
      ? t('trips.none')
      : t('trips.count', { all: trips.length, ground: ground.length }));
    this.list.replaceChildren(...ordered.slice(0, this.shown).map((trip) => this.#entry(trip, onGround(trip))));
    this.more.hidden = ordered.length <= this.shown;
  }

  #entry(trip, ground) {
    const { t } = this;
    const { layout, film, teller } = this.scenes[this.layout];
    const animal = layout.animals[film.trips.animal[trip]];
    const chip = el('span', { class: 'rp-mark', 'aria-hidden': 'true' }, animal.mark ?? '');
    chip.style.color = animal.rgb;
    const from = teller.placeName(film.trips.from[trip]) ?? t('trips.somewhere');
    const to = teller.placeName(film.trips.to[trip]) ?? t('trips.somewhere');
    const number = this.layout;
    return el('li', {},
      el('button', { type: 'button', class: ground ? 'rp-trip rp-over-ground' : 'rp-trip', onclick: () => this.open(number, trip) },
        el('span', { class: 'rp-time' }, timeOfDay(film.trips.startMs[trip])),
        el('span', {}, chip, ` ${animal.name}`),
        el('span', { class: 'rp-way' }, t('trips.way', { from, to })),
        el('span', { class: 'rp-where' }, t(ground ? 'trips.over' : 'trips.off')
          + (film.trips.card[trip] === NO_CARD ? '' : ` · ${t('trips.hasCard')}`))));
  }
}

export { NO_CARD };
