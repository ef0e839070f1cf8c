// From where a scene is seen: overview, above, side, and where keepers and visitors stand.

import { PerspectiveCamera, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { fit, outerPoints } from 'limbway/fit';

const GLIDE_S = 0.7;
const NEAREST_M = 0.05;
const LOOK_M = 0.5;
/** How near the camera comes to what it follows, through the lens of the overview. */
const NEAR_M = 17;
const FULL_FOV = 30;
/** How fast it comes, per second; nearer than that it stays. */
const SOON = 5;
const CLOSE_ENOUGH_M = 0.02;
const VIEWS = {
  overview: { from: new Vector3(-0.3, 0.5, 0.9), fov: 30 },
  above: { from: new Vector3(0, 1, 0.0008), fov: 14 },
  side: { from: new Vector3(0, 0.035, 1), fov: 14 },
};
export const FIXED_VIEWS = Object.keys(VIEWS);

export class Cameras {
  constructor(layout, canvas, changed) {
    this.layout = layout;
    this.camera = new PerspectiveCamera(30, 1, NEAREST_M, 5000);
    this.controls = new OrbitControls(this.camera, canvas);
    // one finger up or down moves the page, as everywhere on it
    canvas.style.touchAction = 'pan-y';
    this.controls.enableDamping = false;
    this.controls.addEventListener('change', () => this.gliding || changed());
    this.controls.addEventListener('start', () => {
      this.glide = null;
      this.away = 0;
      this.touched = true;
    });
    this.outer = outerPoints(layout);
    this.view = 'overview';
    this.glide = null;
    this.away = 0;
    this.comes = false;
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
    this.touched = false;
    const { ends, controls } = this;
    const point = this.viewpoint();
    if (point) {
      ends.at.fromArray(point.at);
      ends.to.fromArray(point.to).sub(ends.at).setLength(LOOK_M).add(ends.at);
      ends.fov = 58;
    } else {
      const { from, fov } = VIEWS[view] ?? VIEWS.overview;
      fit(this.outer, from, fov, this.camera.aspect, ends);
      ends.fov = fov;
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

  /** Lets the camera come near what it follows from now on, once it stands where it was going. */
  nearer() {
    this.comes = true;
  }

  /** Brings an animal to the middle; from a viewpoint the look follows it. Returns whether it is still on the way. */
  follow(spot, seconds) {
    if (this.glide) return false;
    const { controls, camera, moved } = this;
    if (this.comes && !this.viewpoint()) {
      this.comes = false;
      this.away = Math.min(camera.position.distanceTo(controls.target), NEAR_M * (FULL_FOV / camera.fov));
    }
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

  /** Draws nothing so near that depths far away run together. */
  adjust() {
    const { camera, controls } = this;
    const near = Math.max(NEAREST_M, this.viewpoint() ? 0 : 0.03 * camera.position.distanceTo(controls.target));
    if (Math.abs(near - camera.near) < 0.1 * camera.near) return;
    camera.near = near;
    camera.far = Math.max(500, near * 20_000);
    camera.updateProjectionMatrix();
  }

  zoom(factor) {
    this.touched = true;
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
    this.touched = true;
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
    this.touched = true;
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
