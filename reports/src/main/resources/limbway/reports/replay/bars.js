// Energies of ways as stacked bars at one scale, and the same as a table of numbers.

import { el } from 'limbway/dom';
import { energy, inkOn, number } from 'limbway/words';
import { paintOf } from 'limbway/ways';

/** Shares of a bar below which its number would not fit. */
const ROOM_FOR_NUMBER = 0.13;

/** A figure with one bar for each way of a card. */
export function bars(card, modes, t) {
  const most = Math.max(1, ...card.ways.map((way) => way.milliJ));
  const figure = el('div', { class: 'rp-bars' });
  for (const way of card.ways) {
    const bar = el('div', { class: 'rp-bar-line', 'aria-hidden': 'true' });
    for (const { part, milliJ } of way.parts) {
      const { rgb, doing } = modeOf(modes, part);
      const piece = el('span', { class: 'rp-bar-part', title: `${doing} ${energy(t, milliJ)}` });
      piece.style.width = `${(100 * milliJ) / most}%`;
      piece.style.background = rgb;
      piece.style.color = inkOn(rgb);
      if (milliJ / most > ROOM_FOR_NUMBER) piece.textContent = energy(t, milliJ);
      bar.append(piece);
    }
    figure.append(
      el('div', { class: 'rp-bar-head' },
        swatch(way),
        el('span', {}, way.name),
        el('span', { class: 'rp-quiet' }, t('card.times', { n: number(card.taken?.[way.kind] ?? 0) })),
        el('strong', {}, energy(t, way.milliJ))),
      bar,
    );
  }
  figure.append(table(card, modes, t));
  return figure;
}

/** A piece of the line by which a way is drawn. */
export function swatch(way) {
  const { rgb, dash } = paintOf(way);
  const line = el('span', { class: 'rp-swatch', 'aria-hidden': 'true' });
  line.style.background = dash.length
    ? `repeating-linear-gradient(90deg, ${rgb} 0 ${dash[0]}px, transparent ${dash[0]}px ${dash[0] + dash[1]}px)`
    : rgb;
  return line;
}

/** The mode that a part of an energy is booked under. */
function modeOf(modes, part) {
  return modes.find((mode) => mode.part === part) ?? { rgb: '#777777', doing: part };
}

function table(card, modes, t) {
  const parts = [];
  for (const way of card.ways) {
    for (const { part } of way.parts) if (!parts.includes(part)) parts.push(part);
  }
  const head = el('tr', {}, el('th', { scope: 'col' }, t('card.part')));
  for (const way of card.ways) head.append(el('th', { scope: 'col' }, way.name));
  const body = el('tbody');
  for (const part of parts) {
    const { rgb, doing } = modeOf(modes, part);
    const chip = el('span', { class: 'rp-chip', 'aria-hidden': 'true' });
    chip.style.background = rgb;
    const row = el('tr', {}, el('th', { scope: 'row' }, chip, doing));
    for (const way of card.ways) {
      const of = way.parts.find((each) => each.part === part);
      row.append(el('td', {}, of ? energy(t, of.milliJ) : t('none')));
    }
    body.append(row);
  }
  const total = el('tr', { class: 'rp-total' }, el('th', { scope: 'row' }, t('card.total')));
  for (const way of card.ways) total.append(el('td', {}, energy(t, way.milliJ)));
  body.append(total);
  return el('table', {}, el('caption', {}, t('card.energy')), el('thead', {}, head), body);
}
