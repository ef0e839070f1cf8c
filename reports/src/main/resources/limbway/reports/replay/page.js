// The elements of a replay on the page: pictures, controls, words, lists; tells the player what was asked for.

import { Card } from 'limbway/card';
import { Controls } from 'limbway/controls';
import { el, say } from 'limbway/dom';
import { figure } from 'limbway/figure';
import { Flat } from 'limbway/flat';
import { keyHelp } from 'limbway/keys';
import { trailLegend, useLegend } from 'limbway/legend';
import { Spoken } from 'limbway/spoken';
import { Stage } from 'limbway/stage';
import { Trips } from 'limbway/trips';
import { timeOfDay } from 'limbway/words';

/** How many trips are listed at first, and the width from which there is room for more. */
const FEW_TRIPS = 12;
const MANY_TRIPS = 30;
const ROOMY_PX = 700;

export class Page {
  constructor(root, player, t) {
    const { scenes, options, data, act } = player;
    this.root = root;
    this.player = player;
    this.t = t;
    this.names = [...new Set(scenes.flatMap(({ layout }) => layout.animals.map(({ name }) => name)))];
    this.spoken = new Spoken();
    this.figures = scenes.map((scene) => figure(scene, player, t));
    this.pictures = this.figures.map((figure) => figure.picture);
    this.controls = options.controls
      ? new Controls({ days: player.clock.days, names: this.names, views: player.views }, t, act)
      : null;
    this.card = new Card(data, t, {
      runWays: () => act.runWays(),
      close: () => {
        act.closeCard();
        this.side.querySelector('button, select')?.focus({ preventScroll: true });
      },
      step: (by) => act.cardNext(by),
    });
    const atFirst = scenes.length > 1 || root.clientWidth < ROOMY_PX ? FEW_TRIPS : MANY_TRIPS;
    this.trips = options.compact ? null : new Trips(scenes, t, atFirst, (layout, trip) => this.#openTrip(layout, trip));
    this.use = useLegend(scenes.map(({ layout }) => layout), t);
    this.side = el('div', { class: 'rp-side' }, this.card.root, this.trips?.root ?? '');
    if (scenes.every(({ layout }) => !layout.cards?.length)) {
      this.trips?.root.append(el('p', { class: 'rp-quiet' }, t('noCards')));
    } else if (scenes.some(({ layout }) => layout.cardsLeftOut > 0)) {
      this.trips?.root.append(el('p', { class: 'rp-quiet' }, t('cardsLeftOut')));
    }
    const hasSide = (this.hasSide = !options.compact || options.card !== null);
    root.classList.toggle('rp-alone', !hasSide);
    root.classList.toggle('rp-many', scenes.length > 1);
    // what stood there for those without scripts is what goes on paper
    const before = [...root.children];
    root.replaceChildren(
      el('div', { class: 'rp-main' },
        el('div', { class: 'rp-stages' }, ...this.figures.map((figure) => figure.root)),
        this.controls?.root ?? '',
        el('div', { class: 'rp-stages' }, ...this.figures.map((figure) => figure.told)),
        options.compact ? '' : this.#legends(scenes)),
      hasSide ? this.side : '',
      this.spoken.root,
      el('div', { class: 'rp-print' }, ...(before.length ? before : [el('p', {}, t('print'))])),
    );
    this.narrow = window.matchMedia('(max-width: 61.99rem)');
    this.narrow.addEventListener('change', this.#placeCard);
    this.#placeCard();
    this.resize();
  }

  /** Beside the picture where there is room, else right below it. */
  #placeCard = () => {
    if (this.narrow.matches || this.figures.length > 1 || !this.hasSide) this.root.querySelector('.rp-stages').after(this.card.root);
    else this.side.prepend(this.card.root);
  };

  #legends(scenes) {
    const { t } = this;
    const films = scenes.map(({ film }) => film);
    return el('div', { class: 'rp-legends' }, this.use, trailLegend(this.player.data.modes, films, t), keyHelp(t));
  }

  #openTrip(layout, trip) {
    this.player.act.openTrip(layout, trip);
    if (this.player.state.card) {
      this.title?.focus({ preventScroll: true });
    }
    if (this.narrow.matches) this.root.scrollIntoView({ block: 'start' });
  }

  /** The pictures in space, or flat where that cannot be or is not wanted. */
  makeStages() {
    const { player, t } = this;
    const inSpace = !player.options.flat && Stage.possible();
    const stages = this.figures.map(({ scene, picture, note }) => {
      if (inSpace) {
        try {
          const stage = new Stage(picture, scene, () => player.invalidate(), () => player.moved(stage));
          return stage;
        } catch (refused) {
          picture.replaceChildren();
        }
      }
      if (!player.options.flat) say(note, t('noWebGl'));
      note.hidden = Boolean(player.options.flat);
      return new Flat(picture, scene);
    });
    if (stages.some((stage) => stage.mode === '2d')) this.controls?.flat();
    return stages;
  }

  resize() {
    this.figures.forEach((figure) => figure.strip.resize());
  }

  /** At each picture: the time. */
  draw(clock, state) {
    this.controls?.tick(clock);
    for (const { strip, scene } of this.figures) {
      strip.draw(clock.ms, clock.span, state.followName === null ? -1 : this.#numberOf(scene, state.followName));
    }
    if (state.run) this.card.run(state.run);
  }

  #numberOf(scene, name) {
    return scene.layout.animals.findIndex((animal) => animal.name === name);
  }

  /** In words what each animal does. */
  tell(clock, state) {
    for (const { scene, lines, sun } of this.figures) {
      lines.forEach((line, i) => {
        const sentence = scene.teller.sentence(i, clock.ms);
        say(line.text, sentence);
        line.root.title = sentence;
        line.root.classList.toggle('rp-followed', scene.layout.animals[i].name === state.followName);
      });
      say(sun, scene.teller.sun(clock.ms));
    }
    this.spoken.soon(clock.playing ? null : () => this.#aloud(clock, state));
  }

  /** What is read aloud: the time, and all animals or the one that is followed. */
  #aloud(clock, state) {
    const parts = [timeOfDay(clock.ms, true)];
    for (const { scene, lines } of this.figures) {
      if (this.figures.length > 1) parts.push(scene.layout.name);
      lines.forEach((line, i) => {
        const followed = scene.layout.animals[i].name === state.followName;
        if (followed || state.followName === null) parts.push(line.text.textContent);
      });
    }
    return parts.join('. ');
  }

  dispose() {
    this.narrow.removeEventListener('change', this.#placeCard);
    this.root.replaceChildren();
  }

  /** When something changed: buttons, lists, the card. */
  show(clock, state) {
    this.controls?.show(clock, state);
    this.use.hidden = !state.heat;
    this.trips?.showDay(clock.day);
    if (state.card !== this.shownCard) {
      this.shownCard = state.card;
      if (state.card) {
        this.title = this.card.show(state.card.layout, state.card.index, { closable: Boolean(this.trips), several: this.figures.length > 1 });
      } else this.card.hide();
      if (this.trips) this.trips.root.hidden = Boolean(state.card);
    }
    this.card.run(state.run);
  }
}
