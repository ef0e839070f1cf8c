// Many thick lines in one drawing: each piece with its own colour, width and dash, measured in pixels of the page.

import {
  DynamicDrawUsage, InstancedBufferAttribute, InstancedBufferGeometry, Float32BufferAttribute, Mesh, ShaderMaterial,
  Vector2,
} from 'three';

const VERTEX = `
  attribute vec3 from; attribute vec3 to; attribute vec4 rgba; attribute vec4 dash; attribute vec3 shape;
  uniform vec2 view; uniform float nearer;
  varying vec4 vColour; varying vec4 vDash; varying float vAlong; varying float vAcross; varying float vWide;
  void main() {
    vec4 a = modelViewMatrix * vec4(from, 1.0);
    vec4 b = modelViewMatrix * vec4(to, 1.0);
    float close = -0.06;
    float la = 0.0; float lb = 1.0;
    if (a.z > close && b.z > close) { gl_Position = vec4(2.0, 2.0, 2.0, 1.0); return; }
    if (a.z > close) { la = (close - a.z) / (b.z - a.z); a = mix(a, b, la); }
    else if (b.z > close) { lb = (close - a.z) / (b.z - a.z); b = mix(a, b, lb); }
    a.xyz += normalize(-a.xyz) * min(nearer, 0.5 * length(a.xyz));
    b.xyz += normalize(-b.xyz) * min(nearer, 0.5 * length(b.xyz));
    vec4 ca = projectionMatrix * a;
    vec4 cb = projectionMatrix * b;
    vec2 sa = ca.xy / ca.w * view; vec2 sb = cb.xy / cb.w * view;
    vec2 along = sb - sa;
    along = length(along) > 0.0001 ? normalize(along) : vec2(1.0, 0.0);
    vec2 across = vec2(-along.y, along.x);
    float wide = shape.x + 1.5;
    float over = dash.y > 0.0 ? 0.0 : 0.35 * shape.x;
    vec4 at = position.x < 0.5 ? ca : cb;
    vec2 shift = across * position.y * wide + along * (position.x < 0.5 ? -over : over);
    at.xy += shift / view * at.w;
    gl_Position = at;
    vColour = rgba; vDash = dash; vAcross = position.y * wide; vWide = shape.x;
    vAlong = mix(shape.y, shape.z, position.x < 0.5 ? la : lb);
  }`;

const FRAGMENT = `
  varying vec4 vColour; varying vec4 vDash; varying float vAlong; varying float vAcross; varying float vWide;
  void main() {
    if (vDash.y > 0.0) {
      float at = mod(vAlong, vDash.x + vDash.y + vDash.z + vDash.w);
      if (at > vDash.x && (at < vDash.x + vDash.y || at > vDash.x + vDash.y + vDash.z)) discard;
    }
    float edge = 1.0 - smoothstep(vWide - 0.75, vWide + 0.75, abs(vAcross));
    if (edge <= 0.0) discard;
    gl_FragColor = vec4(vColour.rgb, vColour.a * edge);
    #include <colorspace_fragment>
  }`;

const SIZES = { from: 3, to: 3, rgba: 4, dash: 4, shape: 3 };
const SOLID = [];

export class Strokes {
  /**
   * @param capacity most pieces that are drawn; what goes beyond is left out
   * @param nearerM how far the lines are drawn towards the eye, so that what carries them does not hide them
   * @param through whether they are seen through everything
   */
  constructor(capacity, { nearerM = 0, through = false } = {}) {
    this.capacity = capacity;
    this.count = 0;
    const geometry = new InstancedBufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute([0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0], 3));
    geometry.setIndex([0, 1, 2, 0, 2, 3]);
    this.rows = {};
    for (const [name, size] of Object.entries(SIZES)) {
      this.rows[name] = new InstancedBufferAttribute(new Float32Array(size * capacity), size);
      this.rows[name].setUsage(DynamicDrawUsage);
      geometry.setAttribute(name, this.rows[name]);
    }
    this.view = new Vector2(1, 1);
    const material = new ShaderMaterial({
      uniforms: { view: { value: this.view }, nearer: { value: nearerM } },
      vertexShader: VERTEX,
      fragmentShader: FRAGMENT,
      transparent: true,
      depthWrite: false,
      depthTest: !through,
    });
    this.mesh = new Mesh(geometry, material);
    this.mesh.frustumCulled = false;
    this.mesh.matrixAutoUpdate = false;
    this.mesh.renderOrder = through ? 5 : 4;
  }

  clear() {
    this.count = 0;
  }

  /** Adds a piece; colour in linear light, dash and its place along the line in metres. */
  add(ax, ay, az, bx, by, bz, colour, alpha, widthPx, fromM = 0, toM = 0, dash = SOLID) {
    if (this.count === this.capacity) return;
    const i = this.count++;
    const { from, to, rgba, dash: dashes, shape } = this.rows;
    from.setXYZ(i, ax, ay, az);
    to.setXYZ(i, bx, by, bz);
    rgba.setXYZW(i, colour.r, colour.g, colour.b, alpha);
    dashes.setXYZW(i, dash[0] ?? 0, dash[1] ?? 0, dash[2] ?? 0, dash[3] ?? 0);
    shape.setXYZ(i, widthPx / 2, fromM, toM);
  }

  /** Hands what was added to the drawing; size of the page's picture in pixels. */
  finish(widthPx, heightPx) {
    this.view.set(widthPx / 2, heightPx / 2);
    this.mesh.geometry.instanceCount = this.count;
    this.mesh.visible = this.count > 0;
    for (const [name, size] of Object.entries(SIZES)) {
      const row = this.rows[name];
      row.clearUpdateRanges();
      row.addUpdateRange(0, size * this.count);
      row.needsUpdate = this.count > 0;
    }
  }

  dispose() {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
  }
}
