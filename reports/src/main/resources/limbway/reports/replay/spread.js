// Animals at one place, drawn a little apart.

const SAME_PLACE_M = 0.25;
const APART_M = 0.6;

/** Moves those who are drawn at the place of another a little to the side, so that all are seen. */
export function spread(now) {
  for (let i = 1; i < now.length; i++) {
    const one = now[i];
    if (!one || one.moving) continue;
    let others = 0;
    for (let k = 0; k < i; k++) {
      const other = now[k];
      if (other && Math.hypot(one.x - other.heldX, one.y - other.y, one.z - other.heldZ) < SAME_PLACE_M) others++;
    }
    if (others === 0) continue;
    one.x += APART_M * Math.cos(1.3 * others);
    one.z += APART_M * Math.sin(1.3 * others);
  }
}
