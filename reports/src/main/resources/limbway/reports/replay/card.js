// The card of a trip: the chosen way and its rival, what each costs, why, and what would turn it.

import { bars, swatch } from 'limbway/bars';
import { button, el, say } from 'limbway/dom';
import { duration, number } from 'limbway/words';

export class Card {
  /** @param act what the card can ask for: runWays(), close(), step(by) */
  constructor(data, t, act) {
    this.data = data;
    this.t = t;
    this.act = act;
    this.root = el('section', { class: 'rp-card', hidden: true });
  }

  hide() {
    this.root.hidden = true;
  }

  show(layoutNumber, index, { closable, several }) {
    const { t, act } = this;
    const layout = this.data.layouts[layoutNumber];
    const card = layout.cards[index];
    this.card = card;
    this.root.hidden = false;
    const title = el('h3', { class: 'rp-card-title', tabindex: '-1' }, t('card.title', { from: card.from, to: card.to, body: card.body }));
    this.runButton = button(t(card.ways.length > 1 ? 'card.run' : 'card.runOne'), act.runWays, { class: 'rp-strong' });
    this.progress = card.ways.map((way) => {
      const text = el('span', { class: 'rp-run-text' });
      const fill = el('span', { class: 'rp-run-fill' });
      return { way, text, fill, box: el('div', { class: 'rp-run', 'aria-hidden': 'true' }, swatch(way), el('span', { class: 'rp-run-bar' }, fill), text) };
    });
    this.root.replaceChildren(
      ...[
        el('div', { class: 'rp-row' },
          closable && button(t('card.back'), act.close),
          layout.cards.length > 1 && button(t('card.next'), () => act.step(1), { 'aria-keyshortcuts': 'c' })),
        title,
        this.data.layouts.length > 1 && several ? el('p', { class: 'rp-quiet' }, t('card.layout', { layout: layout.name })) : null,
        el('p', { class: 'rp-quiet' }, this.#taken()),
        card.doors ? el('p', { class: 'rp-quiet' }, card.doors) : null,
        card.sentence ? el('p', {}, capital(card.sentence)) : null,
        card.mend ? el('p', {}, el('strong', {}, t('card.mend')), ' ', card.mend) : null,
        card.ways.length < 2 ? el('p', {}, t('card.oneWay')) : null,
        bars(card, this.data.modes, t),
        this.#lengths(),
        el('div', { class: 'rp-row' }, this.runButton),
        ...this.progress.map((each) => each.box),
        this.#flip(),
        card.command ? el('details', {}, el('summary', {}, t('card.command')), el('pre', {}, card.command)) : null,
      ].filter(Boolean),
    );
    this.run(null);
    return title;
  }

  #taken() {
    const { t, card } = this;
    const above = card.taken?.above ?? 0;
    const ground = card.taken?.ground ?? 0;
    return t('card.taken', { ground: number(ground), above: number(above), all: number(ground + above) });
  }

  #lengths() {
    const { t, card } = this;
    const list = el('ul', { class: 'rp-plain' });
    for (const way of card.ways) {
      list.append(el('li', {}, t('card.length', {
        way: way.name, metres: number(way.lengthM, 1), time: duration(t, way.seconds),
      })));
    }
    return list;
  }

  #flip() {
    const { t, card } = this;
    if (!card.flip) return card.flipNote ? el('p', { class: 'rp-quiet' }, card.flipNote) : null;
    return el('div', { class: 'rp-flip' },
      el('p', {}, el('strong', {}, t('card.flip')), ' ', capital(card.flip.sentence)),
      card.flip.change ? el('pre', {}, card.flip.change) : null);
  }

  /** How far the ones who go the ways have come; null while nobody does. */
  run(run) {
    const { t } = this;
    for (const { way, text, fill, box } of this.progress ?? []) {
      const seconds = run ? Math.min(run.ms / 1000, way.seconds) : 0;
      box.classList.toggle('rp-off', !run);
      fill.style.width = `${way.seconds > 0 ? (100 * seconds) / way.seconds : 0}%`;
      say(text, t('card.running', { at: number(seconds), of: number(way.seconds) }));
    }
  }
}

const capital = (text) => (text ? text[0].toUpperCase() + text.slice(1) : '');
