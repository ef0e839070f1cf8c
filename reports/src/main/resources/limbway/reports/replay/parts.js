// What stands there, as drawings: one for each paint, merged by those who wrote the data.

import {
  BufferAttribute, BufferGeometry, DoubleSide, LineBasicMaterial, LineSegments, Mesh, MeshLambertMaterial,
} from 'three';
import { places, row } from 'limbway/data';

/** One drawing of everything of one paint. */
export function drawing(layout, part) {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(places(layout, part.places), 3));
  if (part.indices) geometry.setIndex(new BufferAttribute(row(part.indices), 1));
  const clear = part.alpha < 1;
  const paint = { color: part.rgb, transparent: clear, opacity: part.alpha, depthWrite: !clear };
  let drawn;
  if (part.drawing === 'lines') {
    drawn = new LineSegments(geometry, new LineBasicMaterial(paint));
  } else {
    if (part.normals) geometry.setAttribute('normal', new BufferAttribute(row(part.normals), 3, true));
    else geometry.computeVertexNormals();
    const material = new MeshLambertMaterial({ ...paint, side: DoubleSide, forceSinglePass: true });
    if (part.finish === 'ground') Object.assign(material, { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
    drawn = new Mesh(geometry, material);
    drawn.castShadow = Boolean(part.casts);
    drawn.receiveShadow = !clear;
  }
  drawn.matrixAutoUpdate = false;
  drawn.renderOrder = clear ? 2 : 0;
  drawn.userData = { part, rgb: part.rgb };
  return drawn;
}
