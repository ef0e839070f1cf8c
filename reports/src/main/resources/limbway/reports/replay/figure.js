// The elements of one layout on the page: its picture, the strip of its day, its words.

import { el } from 'limbway/dom';
import { Strip } from 'limbway/strip';

/** Makes the elements of a layout; nothing is drawn yet. */
export function figure(scene, player, t) {
  const { layout } = scene;
  const picture = el('div', {
    class: 'rp-picture', tabindex: '0', role: 'img', 'aria-label': t('picture', { layout: layout.name }),
  });
  const note = el('p', { class: 'rp-note', hidden: true });
  const sun = el('span', { class: 'rp-sun' });
  const strip = new Strip(scene, (ms) => player.act.seek(ms));
  const lines = layout.animals.map((animal, i) => {
    const mark = el('span', { class: 'rp-mark', 'aria-hidden': 'true' }, animal.mark ?? scene.short[i]);
    mark.style.color = animal.rgb;
    const text = el('span');
    return { text, root: el('li', {}, mark, ' ', text) };
  });
  const words = el('ul', { class: 'rp-words', 'aria-label': t('words') }, ...lines.map((line) => line.root));
  words.style.setProperty('--animals', String(lines.length));
  // a picture that scrolls the page by the wheel does not also zoom, unless it has the focus
  picture.addEventListener('pointerdown', () => picture.focus({ preventScroll: true }));
  const outer = el('div', { class: 'rp-frame' }, picture);
  outer.addEventListener('wheel', (event) => {
    if (!event.ctrlKey && document.activeElement !== picture) event.stopPropagation();
  }, { capture: true, passive: true });
  const root = el('figure', { class: 'rp-stage' },
    el('figcaption', {}, el('strong', {}, layout.name), sun), outer, note);
  const several = player.scenes.length > 1;
  const told = el('div', { class: 'rp-told' },
    several ? el('strong', {}, layout.name) : null,
    strip.canvas,
    layout.animals.length ? words : el('p', { class: 'rp-quiet' }, t('noAnimals')),
    scene.film.tripCount === 0 ? el('p', { class: 'rp-quiet' }, t('trips.never')) : null);
  return { scene, root, told, picture, note, sun, strip, words, lines };
}
