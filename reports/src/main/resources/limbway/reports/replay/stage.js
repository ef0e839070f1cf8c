// One layout as a scene: what stands there, light, animals, trails, ways; drawn only when asked.

import { BasicShadowMap, Color, PCFSoftShadowMap, Scene, Vector3, WebGLRenderer } from 'three';
import { Animals } from 'limbway/animals';
import { Cameras } from 'limbway/cameras';
import { el } from 'limbway/dom';
import { spot } from 'limbway/film';
import { Heat } from 'limbway/heat';
import { Labels } from 'limbway/labels';
import { dashUnitM } from 'limbway/paints';
import { drawing } from 'limbway/parts';
import { Signs } from 'limbway/signs';
import { Strokes } from 'limbway/strokes';
import { Sun } from 'limbway/sun';
import { Trails } from 'limbway/trails';
import { eachMove, paintOf } from 'limbway/ways';

const GHOSTS = 2;
const NOBODY = [];
const PLAIN_RATIO = 0.75;

export class Stage {
  /** Whether this browser draws in space. */
  static possible() {
    const context = document.createElement('canvas').getContext('webgl2');
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  }

  /** @throws where the browser refuses after all */
  constructor(picture, scene, changed, moved) {
    const { layout, film, sky, modes } = scene;
    this.mode = '3d';
    this.layout = layout;
    this.film = film;
    this.picture = picture;
    this.canvas = el('canvas', { class: 'rp-scene' });
    this.over = el('canvas', { class: 'rp-over' });
    this.renderer = new WebGLRenderer({ canvas: this.canvas, antialias: true, powerPreference: 'low-power' });
    this.renderer.info.autoReset = false;
    this.renderer.shadowMap.enabled = Boolean(sky);
    this.renderer.shadowMap.type = PCFSoftShadowMap;
    this.renderer.shadowMap.autoUpdate = false;
    picture.append(this.canvas, this.over);
    this.labels = new Labels(this.over);
    this.scene = new Scene();
    this.scene.matrixAutoUpdate = false;
    const small = picture.clientWidth < 600;
    this.sun = new Sun(this.scene, layout.bounds, sky, small ? 1024 : 2048);
    this.drawings = layout.parts.map((part) => drawing(layout, part));
    this.scene.add(...this.drawings);
    this.sun.surroundings(film.ground.lowM);
    this.animals = new Animals(layout, film, modes, GHOSTS);
    this.ghost = spot();
    this.lines = new Strokes(9000, { nearerM: 0.45 });
    this.cardLines = new Strokes(2400, { through: true });
    this.scene.add(this.animals.mesh, this.lines.mesh, this.cardLines.mesh);
    this.trails = new Trails(layout, film, modes, this.lines, 0.03);
    this.heat = new Heat(layout, this.drawings, film.ground, this.scene);
    this.cameras = new Cameras(layout, picture, moved);
    this.signs = new Signs(scene);
    this.point = new Vector3();
    this.colour = new Color();
    this.unitM = dashUnitM(layout.bounds);
    this.drawnMs = NaN;
    this.canvas.addEventListener('webglcontextrestored', changed);
    this.resize();
    this.cameras.go('overview', false);
  }

  resize() {
    this.widthPx = Math.max(1, this.picture.clientWidth);
    this.heightPx = Math.max(1, this.picture.clientHeight);
    this.ratio = Math.min(2, window.devicePixelRatio || 1);
    this.renderer.setPixelRatio(this.plain ? PLAIN_RATIO : this.ratio);
    this.renderer.setSize(this.widthPx, this.heightPx, false);
    this.over.width = Math.round(this.widthPx * this.ratio);
    this.over.height = Math.round(this.heightPx * this.ratio);
    this.cameras.aspect(this.widthPx / this.heightPx);
    this.drawnMs = NaN;
  }

  /** Draws with less effort from now on: for machines without a graphics processor. */
  plainer() {
    if (this.plain) return;
    this.plain = true;
    this.sun.plainer();
    this.renderer.shadowMap.type = BasicShadowMap;
    this.scene.traverse((each) => each.material && (each.material.needsUpdate = true));
    this.resize();
  }

  tick(seconds) {
    return this.cameras.tick(seconds);
  }

  /** Draws one picture of a time, so long after the last one; returns whether the camera is still on its way. */
  draw(ms, state, seconds) {
    const { animals, film, lines } = this;
    // the shadows of animals are left to the next move of the sun where drawing is slow
    const clockMoved = Number.isNaN(this.drawnMs) || (!this.plain && (ms !== this.drawnMs || state.run));
    this.drawnMs = ms;
    this.heat.show(state.heat);
    const sunMoved = this.sun.set(ms);
    animals.set(ms, Boolean(state.run));
    const followed = state.follow >= 0 ? animals.now[state.follow] : null;
    const underWay = followed && !state.run ? this.cameras.follow(followed, state.calm ? Infinity : seconds) : false;
    this.cameras.adjust();
    const card = state.card ? this.layout.cards[state.card.index] : null;
    lines.clear();
    this.trails.lay(ms, card ? 0 : state.trailMs, state.follow, state.run ? NOBODY : animals.now);
    lines.finish(this.widthPx, this.heightPx);
    this.#card(card, state.run);
    this.renderer.shadowMap.needsUpdate = Boolean(sunMoved || clockMoved);
    this.renderer.info.reset();
    this.renderer.render(this.scene, this.cameras.camera);
    this.labels.begin(this.widthPx, this.heightPx, this.ratio);
    const dark = this.sun.place.elevationDeg < -2;
    this.signs.draw(this.labels, this.#toPicture, animals.now, state, card, dark);
    return underWay;
  }

  #card(card, run) {
    const { cardLines, film } = this;
    cardLines.clear();
    const ways = card ? [...card.ways].sort((a, b) => (a.kind > b.kind ? 1 : -1)) : [];
    for (const pass of card ? [0, 1] : []) {
      for (const way of ways) {
        const { rgb, dash } = paintOf(way);
        this.colour.set(pass ? rgb : '#ffffff');
        const dashes = pass ? dash.map((length) => length * this.unitM) : [];
        eachMove(film, way.way, (ax, ay, az, bx, by, bz, from, to) =>
          cardLines.add(ax, ay, az, bx, by, bz, this.colour, pass ? 1 : 0.8, pass ? 5 : 8.5, from, to, dashes));
      }
    }
    cardLines.finish(this.widthPx, this.heightPx);
    for (let i = 0; i < GHOSTS; i++) {
      const way = run && card ? card.ways[i] : null;
      if (way) this.animals.ghost(i, film.along(way.way, run.ms, this.ghost), this.colour.set(paintOf(way).rgb));
      else this.animals.hide(this.animals.count + i);
    }
  }

  /** Fills a point with where a place is in the picture; null for what is behind the eye. */
  #toPicture = (x, y, z) => {
    const point = this.point.set(x, y, z).project(this.cameras.camera);
    if (point.z > 1 || point.z < -1) return null;
    point.x = ((point.x + 1) / 2) * this.widthPx;
    point.y = ((1 - point.y) / 2) * this.heightPx;
    return point;
  };

  stats() {
    const { calls, triangles } = this.renderer.info.render;
    return { drawCalls: calls, triangles };
  }

  dispose() {
    this.cameras.dispose();
    this.sun.dispose();
    this.animals.dispose();
    this.lines.dispose();
    this.cardLines.dispose();
    this.scene.traverse((each) => {
      each.geometry?.dispose();
      each.material?.dispose();
    });
    this.renderer.dispose();
    this.renderer.forceContextLoss();
    this.canvas.remove();
    this.over.remove();
  }
}
