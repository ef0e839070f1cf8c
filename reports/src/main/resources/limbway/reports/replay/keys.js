// Keys that act while the replay has the focus.

import { el } from 'limbway/dom';

const TYPED = new Set(['SELECT', 'TEXTAREA']);
const OWN_SPACE = new Set(['BUTTON', 'SUMMARY', 'A', 'INPUT']);

/** Lets keys act on a replay; act holds one function for each deed. */
export function listen(root, act) {
  const deeds = {
    ' ': () => act.toggle(),
    ArrowLeft: (shift) => (shift ? act.turn(-0.15, 0) : act.step(-1)),
    ArrowRight: (shift) => (shift ? act.turn(0.15, 0) : act.step(1)),
    ArrowUp: (shift) => (shift ? act.turn(0, 0.1) : act.step(10)),
    ArrowDown: (shift) => (shift ? act.turn(0, -0.1) : act.step(-10)),
    '[': () => act.faster(-1),
    ']': () => act.faster(1),
    '+': () => act.zoom(1.2),
    '=': () => act.zoom(1.2),
    '-': () => act.zoom(1 / 1.2),
    f: () => act.followNext(),
    v: () => act.viewNext(),
    h: () => act.heat(),
    n: () => act.names(),
    c: () => act.cardNext(1),
  };
  root.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || TYPED.has(event.target.tagName)) return;
    const name = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    if (name === ' ' && OWN_SPACE.has(event.target.tagName)) return;
    // a slider moves by its own arrows
    if (event.target.tagName === 'INPUT' && name.startsWith('Arrow')) return;
    const deed = deeds[name];
    // up and down move the page where the picture has no focus
    if (!deed || ((name === 'ArrowUp' || name === 'ArrowDown') && !event.target.closest?.('.rp-picture'))) return;
    event.preventDefault();
    deed(event.shiftKey);
  });
}

/** What the keys do, for reading. */
export function keyHelp(t) {
  const list = el('dl', { class: 'rp-keys' });
  for (const key of ['space', 'arrows', 'upDown', 'speed', 'follow', 'view', 'heat', 'names', 'card', 'turn', 'zoom']) {
    list.append(el('div', {}, el('dt', {}, el('kbd', {}, t(`key.${key}`))), el('dd', {}, t(`keys.${key}`))));
  }
  return el('details', {}, el('summary', {}, t('keys.title')), el('p', { class: 'rp-quiet' }, t('keys.where')), list);
}
