// The light of a scene: the sun with its shadows, the sky above, the dimness of night.

import { Color, DirectionalLight, HemisphereLight, Mesh, PlaneGeometry, ShadowMaterial, Vector3 } from 'three';
import { daylightAt, towards } from 'limbway/sky';

const DAY = new Color('#eceeea');
const NIGHT = new Color('#4a5364');
/** The sun where a layout has no site: high in the south-west, without shadows that would mean a time. */
const NOWHERE = { azimuthDeg: 215, elevationDeg: 58 };
const SHEET_ALPHA = 0.16;
const REDRAW_FROM = Math.cos((0.15 * Math.PI) / 180);

export class Sun {
  constructor(scene, bounds, sky, mapPx) {
    this.sky = sky;
    this.scene = scene;
    this.place = { azimuthDeg: 0, elevationDeg: 0 };
    this.direction = new Vector3();
    this.drawn = new Vector3();
    this.centre = new Vector3(
      (bounds[0] + bounds[3]) / 2,
      (bounds[1] + bounds[4]) / 2,
      (bounds[2] + bounds[5]) / 2,
    );
    this.radius = Math.hypot(bounds[3] - bounds[0], bounds[4] - bounds[1], bounds[5] - bounds[2]) / 2 + 1;
    this.light = new DirectionalLight('#fff4e2', 2);
    this.above = new HemisphereLight('#f4f7fb', '#b7b0a2', 1.6);
    this.light.target.position.copy(this.centre);
    scene.background = new Color();
    scene.add(this.light, this.light.target, this.above);
    if (sky) this.#shadows(mapPx);
    this.set(0);
  }

  #shadows(mapPx) {
    const { light, radius } = this;
    light.castShadow = true;
    light.shadow.mapSize.set(mapPx, mapPx);
    light.shadow.intensity = 0.85;
    light.shadow.bias = -0.0004;
    light.shadow.normalBias = 0.03;
    const camera = light.shadow.camera;
    camera.left = camera.bottom = -radius;
    camera.right = camera.top = radius;
    camera.near = radius * 0.5;
    camera.far = radius * 3.6;
    camera.updateProjectionMatrix();
  }

  /** A sheet around the ground that takes shadows only, so that they do not end at its edge. */
  surroundings(y) {
    if (!this.sky) return;
    const sheet = new Mesh(
      new PlaneGeometry(this.radius * 5, this.radius * 5),
      new ShadowMaterial({
        color: '#39404a', opacity: SHEET_ALPHA, polygonOffset: true, polygonOffsetFactor: 4, polygonOffsetUnits: 4,
      }),
    );
    sheet.rotation.x = -Math.PI / 2;
    sheet.position.set(this.centre.x, y - 0.12, this.centre.z);
    sheet.receiveShadow = true;
    sheet.renderOrder = -1;
    this.sheet = sheet;
    this.scene.add(sheet);
  }

  /** Puts the sun where it stands at a time; returns whether shadows must be drawn anew. */
  set(ms) {
    const place = this.sky ? this.sky.at(ms, this.place) : Object.assign(this.place, NOWHERE);
    towards(place, this.direction);
    const day = daylightAt(place.elevationDeg);
    const up = Math.min(1, Math.max(0, place.elevationDeg / 8));
    this.light.position.copy(this.centre).addScaledVector(this.direction, this.radius * 2);
    this.light.intensity = 1.6 * up;
    if (this.sheet) this.sheet.material.opacity = SHEET_ALPHA * up;
    this.light.color.setRGB(1, 0.86 + 0.1 * up, 0.68 + 0.22 * up);
    this.above.intensity = 0.85 + 1.2 * day;
    this.scene.background.lerpColors(NIGHT, DAY, day);
    const moved = this.drawn.dot(this.direction) < REDRAW_FROM;
    if (moved) this.drawn.copy(this.direction);
    return moved;
  }

  /** Coarser shadows. */
  plainer() {
    const { shadow } = this.light;
    shadow.mapSize.set(1024, 1024);
    shadow.map?.dispose();
    shadow.map = null;
  }

  dispose() {
    this.light.dispose();
    this.above.dispose();
  }
}
