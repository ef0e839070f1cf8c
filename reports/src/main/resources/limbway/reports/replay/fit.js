// Where a camera must stand so that everything fills its picture.

import { Vector3 } from 'three';

/** What stands beside an enclosure and need not be in the picture. */
const BESIDE = new Set(['buildings', 'neighbours']);
const ROUNDS = 8;
/** How much of the picture is filled. */
const FILLS = 0.9;

/**
 * Sets from where and at what a camera looks.
 *
 * @param points what must be in the picture, three numbers each
 * @param from direction from which it looks
 * @param fov opening of its lens upright, in degrees
 * @param aspect width of the picture by its height
 * @param ends at and to are set
 */
export function fit(points, from, fov, aspect, { at, to }) {
  const back = from.clone().normalize();
  const right = new Vector3(0, 1, 0).cross(back).normalize();
  const up = back.clone().cross(right);
  const tanV = Math.tan((fov * Math.PI) / 360) * FILLS;
  const tanH = tanV * aspect;
  const { middle, size } = box(points);
  to.copy(middle);
  let away = size * 2;
  const point = new Vector3();
  // each round moves the middle and the distance to where the last one would have wanted them
  for (let round = 0; round < ROUNDS; round++) {
    let [left, low, farRight, high] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < points.length; i += 3) {
      point.fromArray(points, i).sub(to);
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
}

function box(points) {
  const least = new Vector3(Infinity, Infinity, Infinity);
  const most = new Vector3(-Infinity, -Infinity, -Infinity);
  const point = new Vector3();
  for (let i = 0; i < points.length; i += 3) {
    point.fromArray(points, i);
    least.min(point);
    most.max(point);
  }
  return { middle: least.clone().add(most).divideScalar(2), size: least.distanceTo(most) };
}

/** Points that must be in the picture: ends of supports, corners of outlines, or else the corners of the bounds. */
export function outerPoints(layout) {
  const points = [];
  for (const { line } of layout.axes ?? []) points.push(...line);
  for (const { ring, group } of layout.outlines ?? []) if (!BESIDE.has(group)) points.push(...ring);
  if (points.length) return points;
  const b = layout.bounds;
  for (let i = 0; i < 8; i++) points.push(b[i & 1 ? 3 : 0], b[i & 2 ? 4 : 1], b[i & 4 ? 5 : 2]);
  return points;
}
