// Shows a replay in an element of the page; what the page calls.

import { el } from 'limbway/dom';
import { Film } from 'limbway/film';
import { Ground } from 'limbway/ground';
import { shortNames } from 'limbway/labels';
import { Player } from 'limbway/player';
import { Sky } from 'limbway/sky';
import { Teller } from 'limbway/tell';
import { speaker } from 'limbway/words';

/**
 * Shows the layouts of the data in an element.
 *
 * @param root an element, which is emptied
 * @param data the data of the page, see docs/replay-data.md
 * @param options { layouts: numbers, default all; compact: no lists; card: number of a card that is shown at first;
 *   controls: false for none; flat: true for the flat drawing }
 * @returns a handle, see the end of this file
 */
export function mount(root, data, options = {}) {
  const t = speaker(data.texts);
  root.classList.add('rp');
  const numbers = (options.layouts ?? data.layouts.map((_, i) => i)).filter((i) => data.layouts[i]);
  if (numbers.length === 0) {
    root.replaceChildren(el('p', {}, t('nothing')));
    return null;
  }
  const scenes = numbers.map((number) => scene(data, number, t));
  const flat = options.flat || location.hash === '#flat';
  const player = new Player(root, data, scenes, t, { compact: false, card: null, controls: true, ...options, flat });
  return handle(player);
}

function scene(data, number, t) {
  const layout = data.layouts[number];
  const film = new Film(layout, new Ground(layout));
  const sky = layout.sun ? new Sky(layout.sun) : null;
  const teller = new Teller(data, layout, film, sky, t);
  return { number, layout, film, sky, teller, modes: data.modes, t, short: shortNames(layout.animals) };
}

function handle(player) {
  const { act } = player;
  return {
    play: () => act.play(true),
    pause: () => act.play(false),
    /** Milliseconds since midnight before day 1. */
    setClock: (ms) => act.seek(ms),
    clock: () => player.clock.ms,
    /** How many times faster than life. */
    setSpeed: (times) => act.speed(times),
    /** The name of an animal, or null for none. */
    follow: (name) => act.follow(name),
    /** 'overview', 'above', 'side' or the name of a viewpoint. */
    view: (name) => act.view(name),
    heat: () => act.heat(),
    showCard: (layout, index) => act.showCard(layout, index),
    /** Both ways of a card gone at once; settles when both were. */
    playWays: (layout, index) => {
      act.showCard(layout, index);
      return act.runWays();
    },
    onchange: (listener) => player.listeners.push(listener),
    stats: () => player.stats(),
    dispose: () => player.dispose(),
  };
}
