// What the lines and colours mean, in words.

import { el } from 'limbway/dom';
import { ON_GROUND_RGB, USE_FROM_S, USE_RGB } from 'limbway/paints';
import { duration } from 'limbway/words';

const SVG = 'http://www.w3.org/2000/svg';

function svg(tag, attributes) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** A piece of line as the trails are drawn. */
function sample(rgb, dash, edge) {
  const picture = svg('svg', { width: 40, height: 14, viewBox: '0 0 40 14', 'aria-hidden': 'true' });
  if (edge) picture.append(svg('line', { x1: 2, y1: 7, x2: 38, y2: 7, stroke: edge, 'stroke-width': 9 }));
  if (rgb) picture.append(svg('line', { x1: 2, y1: 7, x2: 38, y2: 7, stroke: rgb, 'stroke-width': 3.2, 'stroke-dasharray': (dash ?? []).join(' ') }));
  return picture;
}

/** The legend of trails: only modes that occur. */
export function trailLegend(modes, films, t) {
  const used = new Set();
  for (const film of films) for (const mode of film.ways.mode) used.add(mode & 127);
  const list = el('ul', { class: 'rp-legend' });
  list.append(el('li', {}, sample(null, null, ON_GROUND_RGB), t('legend.ground')));
  modes.forEach((mode, i) => {
    if (used.has(i)) list.append(el('li', {}, sample(mode.rgb, mode.dash), mode.word));
  });
  list.append(el('li', {}, sample('#3b4350', [2, 3]), t('legend.plumb')));
  list.append(el('li', {}, t('legend.strip')));
  return el('div', { class: 'rp-key' }, el('h3', {}, t('legend.trails')), list);
}

/** The legend of use, with the seconds at which each step begins, and the most used supports as numbers. */
export function useLegend(layouts, t) {
  const list = el('ul', { class: 'rp-legend' });
  USE_RGB.forEach((rgb, i) => {
    const chip = el('span', { class: 'rp-chip', 'aria-hidden': 'true' });
    chip.style.background = rgb;
    const from = duration(t, USE_FROM_S[i]);
    const next = USE_FROM_S[i + 1];
    list.append(el('li', {}, chip, next ? t('use.step', { from, to: duration(t, next) }) : t('use.most', { from })));
  });
  const box = el('div', { class: 'rp-key rp-use', hidden: true }, el('h3', {}, t('use.title')), el('p', { class: 'rp-quiet' }, t('use.unit')), list);
  for (const layout of layouts) {
    const ranked = [...(layout.use?.supports ?? [])]
      .filter((use) => use.secondsPerAnimalDay > 0)
      .sort((a, b) => b.secondsPerAnimalDay - a.secondsPerAnimalDay)
      .slice(0, 6);
    const text = ranked.length
      ? ranked.map((use) => t('use.one', { id: use.id, time: duration(t, use.secondsPerAnimalDay) })).join(' · ')
      : t('use.none');
    box.append(el('p', { class: 'rp-quiet' }, t('use.ranking', { layout: layout.name, list: text })));
  }
  return box;
}
