// How much each support and each piece of ground is used, as colours in steps.

import {
  BufferAttribute, BufferGeometry, Color, DoubleSide, Float32BufferAttribute, Mesh, MeshBasicMaterial,
} from 'three';
import { row } from 'limbway/data';
import { USE_RGB, useStep } from 'limbway/paints';

const QUIET = new Color('#b9bcba');
const STEPS = USE_RGB.map((rgb) => new Color(rgb));

export class Heat {
  constructor(layout, drawings, ground, scene) {
    this.layout = layout;
    this.drawings = drawings.filter((drawn) => drawn.isMesh && drawn.userData.part.alpha === 1);
    this.ground = ground;
    this.scene = scene;
    this.seconds = new Map((layout.use?.supports ?? []).map((use) => [use.id, use.secondsPerAnimalDay]));
    this.on = false;
    this.made = false;
  }

  show(on) {
    if (on === this.on) return;
    if (on && !this.made) this.#make();
    this.on = on;
    for (const drawn of this.drawings) {
      const { part, rgb } = drawn.userData;
      const keeps = part.finish === 'ground';
      drawn.material.vertexColors = on && !keeps;
      drawn.material.color.set(on && !keeps ? '#ffffff' : rgb);
      drawn.material.needsUpdate = true;
    }
    if (this.cells) this.cells.visible = on;
  }

  #make() {
    this.made = true;
    for (const drawn of this.drawings) {
      const { part } = drawn.userData;
      if (part.finish === 'ground') continue;
      const corners = drawn.geometry.getIndex()?.array;
      const colours = new Float32Array(drawn.geometry.getAttribute('position').count * 3);
      for (let i = 0; i < colours.length; i += 3) QUIET.toArray(colours, i);
      for (const thing of corners ? part.things ?? [] : []) {
        const step = useStep(this.seconds.get(thing.id) ?? 0);
        if (step < 0) continue;
        for (let k = thing.first; k < thing.first + thing.count; k++) STEPS[step].toArray(colours, 3 * corners[k]);
      }
      drawn.geometry.setAttribute('color', new BufferAttribute(colours, 3));
    }
    this.#cells();
  }

  /** One sheet of squares over the ground, the used ones only. */
  #cells() {
    const use = this.layout.use?.ground;
    if (!use) return;
    const seconds = row(use.secondsPerAnimalDay);
    const at = [];
    const colours = [];
    const corners = [];
    for (let i = 0; i < seconds.length; i++) {
      const step = useStep(seconds[i]);
      if (step < 0) continue;
      const x = use.x0 + (i % use.nx) * use.cellM;
      const z = use.z0 + Math.floor(i / use.nx) * use.cellM;
      const first = at.length / 3;
      for (const [dx, dz] of [[0, 0], [1, 0], [1, 1], [0, 1]]) {
        const cx = x + dx * use.cellM;
        const cz = z + dz * use.cellM;
        at.push(cx, this.ground.heightAt(cx, cz) + 0.02, cz);
        colours.push(STEPS[step].r, STEPS[step].g, STEPS[step].b);
      }
      corners.push(first, first + 2, first + 1, first, first + 3, first + 2);
    }
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute(at, 3));
    geometry.setAttribute('color', new Float32BufferAttribute(colours, 3));
    geometry.setIndex(corners);
    this.cells = new Mesh(
      geometry,
      new MeshBasicMaterial({ vertexColors: true, transparent: true, opacity: 0.82, side: DoubleSide, depthWrite: false }),
    );
    this.cells.renderOrder = 1;
    this.scene.add(this.cells);
  }

  /** The supports by use, the most used first: [id, seconds]. */
  ranking() {
    return [...this.seconds].sort((a, b) => b[1] - a[1]);
  }
}
