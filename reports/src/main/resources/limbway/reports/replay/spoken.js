// What is read aloud: only when the clock was stopped, stepped or set, and then once.

import { el, say } from 'limbway/dom';

const QUIET_MS = 600;

export class Spoken {
  constructor() {
    this.root = el('p', { class: 'rp-spoken', 'aria-live': 'polite' });
    this.first = true;
  }

  /** Says what words() gives when nothing more happened for a while; null says nothing. */
  soon(words) {
    clearTimeout(this.timer);
    // the page has just been opened, nobody asked
    if (this.first) {
      this.first = false;
      return;
    }
    if (words) this.timer = setTimeout(() => say(this.root, words()), QUIET_MS);
  }
}
