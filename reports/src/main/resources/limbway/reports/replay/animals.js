// The animals: one simple body each, all in one drawing. It lies along level ways, hangs under what it hangs from.

import { CapsuleGeometry, Color, InstancedMesh, Matrix4, MeshLambertMaterial, Quaternion, Vector3 } from 'three';
import { spot } from 'limbway/film';
import { spread } from 'limbway/spread';

const UP = new Vector3(0, 1, 0);
const RADIUS_M = 0.26;
const TRUNK_M = 0.42;
const HANGING = new Set(['clamber', 'brachiate', 'bridge', 'sway']);

export class Animals {
  constructor(layout, film, modes, ghosts) {
    this.film = film;
    this.count = layout.animals.length;
    this.hangs = modes.map((mode) => HANGING.has(mode.word));
    this.here = layout.animals.map(() => spot());
    this.now = new Array(this.count).fill(null);
    this.mesh = new InstancedMesh(
      new CapsuleGeometry(RADIUS_M, TRUNK_M, 5, 14),
      new MeshLambertMaterial(),
      Math.max(1, this.count + ghosts),
    );
    const colour = new Color();
    layout.animals.forEach((animal, i) => this.mesh.setColorAt(i, colour.set(animal.rgb)));
    for (let i = this.count; i < this.count + ghosts; i++) this.mesh.setColorAt(i, colour.set('#222222'));
    this.mesh.castShadow = true;
    this.mesh.frustumCulled = false;
    this.mesh.matrixAutoUpdate = false;
    this.at = new Vector3();
    this.turn = new Quaternion();
    this.one = new Vector3(1, 1, 1);
    this.none = new Vector3(0, 0, 0);
    this.matrix = new Matrix4();
    this.along = new Vector3();
  }

  /** Puts each animal where it is at a time; this.now tells where that is, also of hidden ones. */
  set(ms, hidden) {
    for (let i = 0; i < this.count; i++) this.now[i] = this.film.at(i, ms, this.here[i]);
    spread(this.now);
    for (let i = 0; i < this.count; i++) {
      if (this.now[i] && !hidden) this.#place(i, this.now[i], this.one);
      else this.hide(i);
    }
    this.mesh.instanceMatrix.needsUpdate = true;
  }

  /** Puts one of the bodies that show how a way is gone. */
  ghost(number, at, colour) {
    this.mesh.setColorAt(this.count + number, colour);
    this.mesh.instanceColor.needsUpdate = true;
    this.#place(this.count + number, at, this.one);
  }

  hide(index) {
    this.matrix.compose(this.at, this.turn, this.none);
    this.mesh.setMatrixAt(index, this.matrix);
    this.mesh.instanceMatrix.needsUpdate = true;
  }

  #place(index, at, size) {
    const lies = at.moving && Math.hypot(at.dx, at.dz) > Math.abs(at.dy);
    const hangs = lies && !at.ground && this.hangs[at.mode];
    const half = TRUNK_M / 2 + RADIUS_M;
    if (lies) this.turn.setFromUnitVectors(UP, this.along.set(at.dx, at.dy, at.dz).normalize());
    else this.turn.identity();
    this.at.set(at.x, at.y + (hangs ? -1.15 * RADIUS_M : lies ? RADIUS_M : half), at.z);
    this.matrix.compose(this.at, this.turn, size);
    this.mesh.setMatrixAt(index, this.matrix);
    at.topY = this.at.y + (lies ? RADIUS_M : half);
  }

  dispose() {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
    this.mesh.dispose();
  }
}
