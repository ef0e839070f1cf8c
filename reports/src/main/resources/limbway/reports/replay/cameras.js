// From where a scene is seen: overview, above, side, and where keepers and visitors stand.

import { PerspectiveCamera, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';

const RAD = Math.PI / 180;
const GLIDE_S = 0.7;
const LOOK_M = 0.5;
/** How near the camera comes to what it follows, through the lens of the overview. */
const NEAR_M = 17;
const FULL_FOV = 30;
/** How fast it comes, per second; nearer than that it stays. */
const SOON = 5;
const CLOSE_ENOUGH_M = 0.02;
const FIT_ROUNDS = 8;
/** How much of the picture is filled. */
const FILLS = 0.9;
const VIEWS = {
  overview: { from: new Vector3(-0.3, 0.5, 0.9), fov: 30 },
  above: { from: new Vector3(0, 1, 0.0008), fov: 14 },
  side: { from: new Vector3(0, 0.035, 1), fov: 14 },
};
export const FIXED_VIEWS = Object.keys(VIEWS);

export class Cameras {
  constructor(layout, canvas, changed) {
    this.layout = layout;
    this.camera = new PerspectiveCamera(30, 1, 0.05, 5000);
    this.controls = new OrbitControls(this.camera, canvas);
    // one finger up or down moves the page, as everywhere on it
    canvas.style.touchAction = 'pan-y';
    this.controls.enableDamping = false;
    this.controls.addEventListener('change', () => this.gliding || changed());
    this.controls.addEventListener('start', () => {
      this.glide = null;
      this.away = 0;
    });
    this.outer = outerPoints(layout);
    this.view = 'overview';
    this.glide = null;
    this.away = 0;
    this.ends = { at: new Vector3(), to: new Vector3(), fov: 30 };
    this.before = { at: new Vector3(), to: new Vector3(), fov: 30 };
    this.moved = new Vector3();
  }

  viewpoint(name = this.view) {
    return (this.layout.viewpoints ?? []).find((point) => point.name === name) ?? null;
  }

  /** Goes to a view, at once or gliding. */
  go(view, gently) {
    this.view = view;
    this.away = 0;
    const { ends, controls } = this;
    const point = this.viewpoint();
    if (point) {
      ends.at.fromArray(point.at);
      ends.to.fromArray(point.to).sub(ends.at).setLength(LOOK_M).add(ends.at);
      ends.fov = 58;
    } else {
      this.#fit(VIEWS[view] ?? VIEWS.overview);
    }
    // at a viewpoint dragging turns the head
    controls.rotateSpeed = point ? -0.35 : 0.8;
    controls.enableZoom = controls.enablePan = !point;
    controls.maxPolarAngle = point ? Math.PI * 0.95 : Math.PI / 2 - 0.01;
    if (gently) {
      this.before.at.copy(this.camera.position);
      this.before.to.copy(controls.target);
      this.before.fov = this.camera.fov;
      this.glide = { passedS: 0 };
    } else {
      this.glide = null;
      this.#put(ends.at, ends.to, ends.fov);
    }
  }

  /** Sets the end of the glide so that everything fills the picture. */
  #fit({ from, fov }) {
    const { at, to } = this.ends;
    const back = from.clone().normalize();
    const right = new Vector3(0, 1, 0).cross(back).normalize();
    const up = back.clone().cross(right);
    const tanV = Math.tan((fov / 2) * RAD) * FILLS;
    const tanH = tanV * this.camera.aspect;
    const b = this.layout.bounds;
    to.set((b[0] + b[3]) / 2, (b[1] + b[4]) / 2, (b[2] + b[5]) / 2);
    let away = Math.hypot(b[3] - b[0], b[4] - b[1], b[5] - b[2]) * 2;
    const point = new Vector3();
    // each round moves the middle and the distance to where the last one would have wanted them
    for (let round = 0; round < FIT_ROUNDS; round++) {
      let [left, low, farRight, high] = [Infinity, Infinity, -Infinity, -Infinity];
      for (let i = 0; i < this.outer.length; i += 3) {
        point.fromArray(this.outer, i).sub(to);
        const deep = Math.max(0.1, away - point.dot(back));
        const x = point.dot(right) / deep / tanH;
        const y = point.dot(up) / deep / tanV;
        left = Math.min(left, x);
        farRight = Math.max(farRight, x);
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
      to.addScaledVector(right, ((left + farRight) / 2) * away * tanH);
      to.addScaledVector(up, ((low + high) / 2) * away * tanV);
      away *= Math.max((farRight - left) / 2, (high - low) / 2, 0.05);
    }
    at.copy(to).addScaledVector(back, away);
    this.ends.fov = fov;
  }

  #put(at, to, fov) {
    this.gliding = true;
    this.camera.position.copy(at);
    this.controls.target.copy(to);
    this.camera.fov = fov;
    this.camera.updateProjectionMatrix();
    this.controls.update();
    this.gliding = false;
  }

  /** Lets a glide go on; returns whether the camera moved. */
  tick(seconds) {
    if (!this.glide) return false;
    const share = Math.min(1, (this.glide.passedS += seconds) / GLIDE_S);
    const soft = share * share * (3 - 2 * share);
    this.#put(
      this.moved.lerpVectors(this.before.at, this.ends.at, soft),
      this.controls.target.lerpVectors(this.before.to, this.ends.to, soft),
      this.before.fov + soft * (this.ends.fov - this.before.fov),
    );
    if (share === 1) this.glide = null;
    return true;
  }

  /** Lets the camera come near what it follows from now on. */
  nearer() {
    this.glide = null;
    this.away = Math.min(this.camera.position.distanceTo(this.controls.target), NEAR_M * (FULL_FOV / this.camera.fov));
  }

  /** Brings an animal to the middle; from a viewpoint the look follows it. Returns whether it is still on the way. */
  follow(spot, seconds) {
    if (this.glide) return false;
    const { controls, camera, moved } = this;
    const share = seconds === Infinity ? 1 : 1 - Math.exp(-SOON * Math.min(seconds, 0.25));
    moved.set(spot.x, spot.y + 0.3, spot.z);
    this.gliding = true;
    let left;
    if (this.viewpoint()) {
      moved.sub(camera.position).setLength(LOOK_M).add(camera.position);
      left = moved.distanceTo(controls.target) * 4;
      controls.target.lerp(moved, share);
    } else {
      moved.sub(controls.target);
      left = moved.length();
      controls.target.addScaledVector(moved, share);
      camera.position.addScaledVector(moved, share);
      if (this.away) {
        moved.copy(camera.position).sub(controls.target);
        const now = moved.length();
        left = Math.max(left, now - this.away);
        camera.position.copy(controls.target).addScaledVector(moved, 1 + share * (this.away / now - 1));
        if (now - this.away < CLOSE_ENOUGH_M) this.away = 0;
      }
    }
    controls.update();
    this.gliding = false;
    return left > CLOSE_ENOUGH_M;
  }

  zoom(factor) {
    const { camera, controls } = this;
    if (this.viewpoint()) {
      camera.fov = Math.min(75, Math.max(15, camera.fov / factor));
      camera.updateProjectionMatrix();
    } else {
      camera.position.sub(controls.target).divideScalar(factor).add(controls.target);
      controls.update();
    }
  }

  /** Turns by angles in radians, as dragging does. */
  turn(across, up) {
    const offset = this.moved.copy(this.camera.position).sub(this.controls.target);
    const long = offset.length();
    const round = Math.atan2(offset.x, offset.z) + across;
    const tilt = Math.min(this.controls.maxPolarAngle, Math.max(0.01, Math.acos(offset.y / long) - up));
    offset.setFromSphericalCoords(long, tilt, round);
    this.camera.position.copy(this.controls.target).add(offset);
    this.controls.update();
  }

  /** Looks from where another looks. */
  like(other) {
    this.view = other.view;
    this.glide = null;
    this.#put(other.camera.position, other.controls.target, other.camera.fov);
  }

  aspect(aspect) {
    this.camera.aspect = aspect;
    this.camera.updateProjectionMatrix();
  }

  dispose() {
    this.controls.dispose();
  }
}

/** Points that must be in the picture: ends of supports, corners of outlines, or else the corners of the bounds. */
function outerPoints(layout) {
  const points = [];
  for (const { line } of layout.axes ?? []) points.push(...line);
  for (const { ring } of layout.outlines ?? []) points.push(...ring);
  if (points.length) return points;
  const b = layout.bounds;
  for (let i = 0; i < 8; i++) points.push(b[i & 1 ? 3 : 0], b[i & 2 ? 4 : 1], b[i & 4 ? 5 : 2]);
  return points;
}
