// Signs over a picture: which animal is which, what the places are, which way is which. Used by the scene and the flat drawing.

import { inkOn } from 'limbway/words';

const FONT = '600 12px system-ui, -apple-system, "Segoe UI", "Liberation Sans", sans-serif';
const SMALL = '11.5px system-ui, -apple-system, "Segoe UI", "Liberation Sans", sans-serif';
const HIGH = 20;

/** Short names of animals, each another: the name itself if it is short, else its first letters and figures, else its number. */
export function shortNames(animals) {
  const taken = new Set();
  return animals.map(({ name }, number) => {
    const words = name.match(/[\p{L}\p{N}]+/gu) ?? [];
    const letters = words.map((word) => (/^\d+$/.test(word) ? word : Array.from(word)[0].toUpperCase())).join('');
    const first = Array.from(words[0] ?? '');
    const wishes = words.length === 1 && words[0] === name && first.length <= 3
      ? [name]
      : [Array.from(letters).slice(0, 3).join(''), first.slice(0, 3).join(''), first.slice(0, 4).join('')];
    const short = wishes.find((wish) => wish && !taken.has(wish)) ?? String(number + 1);
    taken.add(short);
    return short;
  });
}

/** Signs of one picture. Put each with add…, then draw. */
export class Labels {
  constructor(canvas) {
    this.canvas = canvas;
    this.context = canvas.getContext('2d');
    this.boxes = [];
    this.wide = new Map();
  }

  begin(widthPx, heightPx, ratio) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.context.setTransform(ratio, 0, 0, ratio, 0, 0);
    this.context.clearRect(0, 0, widthPx, heightPx);
    this.boxes.length = 0;
  }

  #measure(text, font) {
    const known = this.wide.get(font + text);
    if (known !== undefined) return known;
    this.context.font = font;
    const wide = this.context.measureText(text).width;
    this.wide.set(font + text, wide);
    return wide;
  }

  #free(x, y, wide, high) {
    return this.boxes.every((b) => x > b.x + b.wide || b.x > x + wide || y > b.y + b.high || b.y > y + high);
  }

  /** The sign of an animal above a point of the picture; signs of animals close together are stacked. */
  animal(x, y, { mark, text, rgb, strong }) {
    if (x < -20 || x > this.widthPx + 20 || y < -20 || y > this.heightPx + 40) return;
    const c = this.context;
    const whole = mark ? `${mark} ${text}` : text;
    const wide = Math.max(24, this.#measure(whole, FONT) + 12);
    const left = Math.min(Math.max(2, x - wide / 2), this.widthPx - wide - 2);
    let top = Math.max(2, y - HIGH - 7);
    for (let tries = 0; tries < 8 && top > 2 && !this.#free(left, top, wide, HIGH); tries++) top = Math.max(2, top - HIGH - 2);
    // no room left above: downwards
    for (let tries = 0; tries < 8 && !this.#free(left, top, wide, HIGH); tries++) top += HIGH + 2;
    this.boxes.push({ x: left, y: top, wide, high: HIGH });
    c.strokeStyle = 'rgba(34,34,34,.75)';
    c.lineWidth = 1;
    c.beginPath();
    c.moveTo(x, top + HIGH);
    c.lineTo(x, y);
    c.stroke();
    this.#plate(left, top, wide, HIGH, HIGH / 2, rgb, strong ? '#111111' : 'rgba(255,255,255,.95)', strong ? 2.5 : 1.5);
    c.fillStyle = inkOn(rgb);
    c.font = FONT;
    c.textAlign = 'center';
    c.textBaseline = 'middle';
    c.fillText(whole, left + wide / 2, top + HIGH / 2 + 0.5);
  }

  /** The sign of a way. */
  way(x, y, text, rgb) {
    const wide = this.#measure(text, FONT) + 14;
    const left = Math.min(Math.max(2, x - wide / 2), this.widthPx - wide - 2);
    let top = Math.min(Math.max(2, y - HIGH - 8), this.heightPx - HIGH - 2);
    for (let tries = 0; tries < 8 && !this.#free(left, top, wide, HIGH); tries++) top += HIGH + 2;
    this.boxes.push({ x: left, y: top, wide, high: HIGH });
    const c = this.context;
    this.#plate(left, top, wide, HIGH, 3, '#ffffff', rgb, 2.5);
    c.fillStyle = '#222222';
    c.font = FONT;
    c.textAlign = 'center';
    c.textBaseline = 'middle';
    c.fillText(text, left + wide / 2, top + HIGH / 2 + 0.5);
  }

  /** The name of a place or of a thing; left out where something else is written. */
  name(x, y, text, glyph, dark) {
    const wide = this.#measure(text, SMALL) + (glyph ? 15 : 4);
    const left = x - 5;
    const top = y - 8;
    if (left < 0 || left + wide > this.widthPx || top < 0 || top + 16 > this.heightPx) return;
    if (!this.#free(left, top, wide, 16)) return;
    this.boxes.push({ x: left, y: top, wide, high: 16 });
    const c = this.context;
    c.lineJoin = 'round';
    c.strokeStyle = dark ? 'rgba(40,46,58,.85)' : 'rgba(255,255,255,.85)';
    c.fillStyle = dark ? '#f2f3f2' : '#2a2e33';
    c.lineWidth = 3;
    if (glyph) mark(c, glyph, x, y);
    c.font = SMALL;
    c.textAlign = 'left';
    c.textBaseline = 'middle';
    c.strokeText(text, x + (glyph ? 9 : 0), y + 0.5);
    c.fillText(text, x + (glyph ? 9 : 0), y + 0.5);
  }

  #plate(x, y, wide, high, round, fill, edge, thick) {
    const c = this.context;
    c.beginPath();
    c.moveTo(x + round, y);
    c.arcTo(x + wide, y, x + wide, y + high, round);
    c.arcTo(x + wide, y + high, x, y + high, round);
    c.arcTo(x, y + high, x, y, round);
    c.arcTo(x, y, x + wide, y, round);
    c.closePath();
    c.fillStyle = fill;
    c.fill();
    c.strokeStyle = edge;
    c.lineWidth = thick;
    c.stroke();
  }
}

/** A small mark for a kind of place: each another shape. */
export function mark(c, kind, x, y) {
  const r = 4.5;
  c.beginPath();
  if (kind === 'food') c.arc(x, y, r, 0, 7);
  else if (kind === 'water') {
    c.moveTo(x, y - r - 1);
    c.lineTo(x + r, y + r - 1);
    c.lineTo(x - r, y + r - 1);
    c.closePath();
  } else if (kind === 'nest') {
    c.moveTo(x - r, y - 2);
    c.arc(x, y - 2, r, Math.PI, 0, true);
    c.closePath();
  } else if (kind === 'shade') c.rect(x - r, y - 2, 2 * r, 4);
  else if (kind === 'retreat') {
    c.moveTo(x, y - r);
    c.lineTo(x + r, y);
    c.lineTo(x, y + r);
    c.lineTo(x - r, y);
    c.closePath();
  } else {
    c.moveTo(x - r, y - r);
    c.lineTo(x + r, y - r);
    c.lineTo(x, y + r);
    c.closePath();
  }
  c.stroke();
  c.fill();
}
