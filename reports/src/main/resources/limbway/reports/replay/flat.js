// One layout drawn flat, where there is no WebGL or none is wanted: the plan, and below it the view from the south.

import { el } from 'limbway/dom';
import { spot } from 'limbway/film';
import { FlatHeat } from 'limbway/flatheat';
import { FlatLines } from 'limbway/flatlines';
import { Labels } from 'limbway/labels';
import { Signs } from 'limbway/signs';
import { daylightAt } from 'limbway/sky';
import { spread } from 'limbway/spread';

const MARGIN_PX = 14;
const FILLS = {
  ground: '#e9e7dc', platforms: '#c2b59b', crowns: 'rgba(127,154,118,.3)', barriers: '#b9b4ac', wires: 'rgba(181,83,74,.35)',
  panels: 'rgba(110,119,128,.2)', covers: 'rgba(107,100,114,.3)', obstacles: '#9f9b92',
  buildings: '#9c968f', neighbours: 'rgba(102,127,102,.3)',
};
const ORDER = ['ground', 'buildings', 'obstacles', 'barriers', 'doors', 'wires', 'platforms', 'crowns', 'neighbours', 'panels', 'covers'];
/** Lines that are no areas: live strands and sills. */
const STROKES = { wires: '#7a2f28', doors: '#c9a24b' };

export class Flat {
  constructor(picture, scene) {
    const { layout, film, sky, modes } = scene;
    this.mode = '2d';
    this.layout = layout;
    this.film = film;
    this.sky = sky;
    this.sunAt = { azimuthDeg: 0, elevationDeg: 60 };
    this.picture = picture;
    this.canvas = el('canvas', { class: 'rp-scene' });
    this.over = el('canvas', { class: 'rp-over' });
    picture.append(this.canvas, this.over);
    this.context = this.canvas.getContext('2d');
    this.labels = new Labels(this.over);
    this.signs = new Signs(scene);
    this.lines = new FlatLines(layout, film, modes);
    this.heat = new FlatHeat(layout);
    this.still = document.createElement('canvas');
    this.now = layout.animals.map(() => null);
    this.here = layout.animals.map(() => spot());
    this.ghost = spot();
    this.point = { x: 0, y: 0 };
    this.views = { plan: this.#view(0, 2, 1), side: this.#view(0, 1, -1) };
    this.shown = 'overview';
    this.resize();
  }

  /** A view shows two of the three axes; the second goes down the picture, or up it. */
  #view(across, down, sign) {
    const view = { across, down, sign, scale: 1, x: 0, y: 0, visible: true };
    view.px = (at) => view.x + at[across] * view.scale;
    view.py = (at) => view.y + sign * at[down] * view.scale;
    return view;
  }

  resize() {
    this.widthPx = Math.max(1, this.picture.clientWidth);
    this.heightPx = Math.max(1, this.picture.clientHeight);
    this.ratio = Math.min(2, window.devicePixelRatio || 1);
    for (const canvas of [this.canvas, this.over, this.still]) {
      canvas.width = Math.round(this.widthPx * this.ratio);
      canvas.height = Math.round(this.heightPx * this.ratio);
    }
    this.#fit();
  }

  /** Both views at one scale, the plan above, the side below; one of them alone if asked for. */
  #fit() {
    const b = this.layout.bounds;
    const { plan, side } = this.views;
    plan.visible = this.shown !== 'side';
    side.visible = this.shown !== 'above';
    const wide = b[3] - b[0];
    const deep = plan.visible ? b[5] - b[2] : 0;
    const high = side.visible ? b[4] - b[1] : 0;
    const gaps = MARGIN_PX * (plan.visible && side.visible ? 4 : 2);
    const scale = Math.min((this.widthPx - 2 * MARGIN_PX) / wide, (this.heightPx - gaps - 12) / (deep + high));
    const left = (this.widthPx - wide * scale) / 2 - b[0] * scale;
    const spare = (this.heightPx - gaps - (deep + high) * scale) / 2;
    Object.assign(plan, { scale, x: left, y: spare + MARGIN_PX - b[2] * scale });
    const top = spare + (plan.visible ? 3 * MARGIN_PX + deep * scale : MARGIN_PX);
    Object.assign(side, { scale, x: left, y: top + b[4] * scale });
    this.stillFor = null;
  }

  tick() {
    return false;
  }

  show(view) {
    this.shown = view;
    this.#fit();
  }

  #drawStill(heat) {
    if (this.stillFor === heat) return;
    this.stillFor = heat;
    const c = this.still.getContext('2d');
    c.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    c.clearRect(0, 0, this.widthPx, this.heightPx);
    for (const view of [this.views.plan, this.views.side]) {
      if (!view.visible) continue;
      this.#outlines(c, view);
      if (heat && view === this.views.plan) this.heat.cells(c, view);
      if (heat) this.heat.outlines(c, view);
      this.#axes(c, view, heat);
    }
  }

  #outlines(c, view) {
    const rings = [...(this.layout.outlines ?? [])];
    rings.sort((a, b) => ORDER.indexOf(a.group) - ORDER.indexOf(b.group));
    for (const { group, ring, closed } of rings) {
      const area = closed !== false;
      trace(c, view, ring, area);
      c.fillStyle = FILLS[group] ?? '#cccccc';
      if (area) c.fill();
      c.strokeStyle = area ? 'rgba(60,64,70,.45)' : STROKES[group] ?? '#55595e';
      c.lineWidth = area ? 1 : 2;
      c.stroke();
    }
  }

  #axes(c, view, heat) {
    c.lineCap = 'round';
    c.lineJoin = 'round';
    for (const axis of this.layout.axes ?? []) {
      trace(c, view, axis.line, false);
      c.strokeStyle = heat ? this.heat.of(axis.id) : '#75624f';
      c.lineWidth = Math.max(heat ? 3 : 1.6, axis.diameterM * view.scale);
      c.stroke();
    }
  }

  draw(ms, state) {
    const { context: c, film } = this;
    this.#drawStill(state.heat);
    const elevation = this.sky ? this.sky.at(ms, this.sunAt).elevationDeg : 60;
    const dim = 1 - daylightAt(elevation);
    c.setTransform(1, 0, 0, 1, 0, 0);
    c.fillStyle = '#f6f6f2';
    c.fillRect(0, 0, this.canvas.width, this.canvas.height);
    c.drawImage(this.still, 0, 0);
    c.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    c.fillStyle = `rgba(52,60,78,${(0.35 * dim).toFixed(3)})`;
    c.fillRect(0, 0, this.widthPx, this.heightPx);
    for (let i = 0; i < this.now.length; i++) this.now[i] = film.at(i, ms, this.here[i]);
    spread(this.now);
    const card = state.card ? this.layout.cards[state.card.index] : null;
    this.labels.begin(this.widthPx, this.heightPx, this.ratio);
    for (const view of [this.views.plan, this.views.side]) {
      if (!view.visible) continue;
      if (!card) this.lines.trails(c, view, ms, state.trailMs, state.follow);
      if (card) this.lines.ways(c, view, card, state.run, this.ghost);
      if (!state.run) this.lines.dots(c, view, this.now);
      const toPicture = (x, y, z) => {
        this.point.x = view.px([x, y, z]);
        this.point.y = view.py([x, y, z]);
        return this.point;
      };
      this.signs.draw(this.labels, toPicture, this.now, state, card, false);
    }
    return false;
  }

  stats() {
    return { drawCalls: 0, triangles: 0 };
  }

  dispose() {
    this.canvas.remove();
    this.over.remove();
  }
}

/** Lays a path through places, three numbers each. */
export function trace(c, view, line, closed) {
  c.beginPath();
  for (let i = 0; i < line.length; i += 3) {
    const x = view.x + line[i + view.across] * view.scale;
    const y = view.y + view.sign * line[i + view.down] * view.scale;
    if (i === 0) c.moveTo(x, y);
    else c.lineTo(x, y);
  }
  if (closed) c.closePath();
}
