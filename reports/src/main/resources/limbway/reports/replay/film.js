// The film: where each animal is at a time, in which mode it moves, on the ground or not.

import { places, rows } from 'limbway/data';

/** The mode of one who stays where it is. */
export const STILL = 255;
const ON_GROUND = 128;
const NEAR_GROUND_M = 0.1;
const DAY_MS = 86_400_000;

export class Film {
  constructor(layout, ground) {
    const film = layout.film;
    this.days = film.days ?? 1;
    this.ground = ground;
    this.holds = places(layout, film.holds);
    this.ways = rows(film.ways);
    this.trips = rows(film.trips);
    this.stays = rows(film.stays);
    this.trips.startMs = tens(this.trips.startMs);
    this.stays.startMs = tens(this.stays.startMs);
    this.stays.endMs = tens(this.stays.endMs);
    this.tripCount = this.trips.startMs.length;
    this.wayMs = new Float64Array(Math.max(0, this.ways.start.length - 1));
    this.wayOnGround = new Uint8Array(this.wayMs.length);
    for (let way = 0; way < this.wayMs.length; way++) this.#measure(way);
    this.tracks = layout.animals.map((_, animal) => this.#track(animal));
  }

  #measure(way) {
    const { start, ms, mode } = this.ways;
    for (let i = start[way] + 1; i < start[way + 1]; i++) {
      this.wayMs[way] += ms[i] * 10;
      if (mode[i] & ON_GROUND) this.wayOnGround[way] = 1;
    }
  }

  /** The keys of an animal: at time t at a hold, come there in a mode on a trip. */
  #track(animal) {
    const { trips, stays, ways } = this;
    const events = [];
    for (let i = 0; i < this.tripCount; i++) {
      if (trips.animal[i] === animal) events.push({ at: trips.startMs[i], trip: i, stay: -1 });
    }
    for (let i = 0; i < stays.startMs.length; i++) {
      if (stays.animal[i] === animal) events.push({ at: stays.startMs[i], trip: -1, stay: i });
    }
    events.sort((a, b) => a.at - b.at || a.stay - b.stay);
    const track = { t: [], hold: [], mode: [], trip: [], stay: [] };
    const key = (t, hold, mode, trip, stay) => {
      track.t.push(t);
      track.hold.push(hold);
      track.mode.push(mode);
      track.trip.push(trip);
      track.stay.push(stay);
    };
    for (const { at, trip, stay } of events) {
      if (trip < 0) {
        key(at, stays.hold[stay], STILL, -1, stay);
        key(stays.endMs[stay], stays.hold[stay], STILL, -1, stay);
        continue;
      }
      const way = trips.way[trip];
      let t = at;
      for (let i = ways.start[way]; i < ways.start[way + 1]; i++) {
        const first = i === ways.start[way];
        if (!first) t += ways.ms[i] * 10;
        key(t, ways.hold[i], first ? STILL : ways.mode[i], trip, -1);
      }
    }
    return {
      t: Float64Array.from(track.t),
      hold: Uint32Array.from(track.hold),
      mode: Uint8Array.from(track.mode),
      trip: Int32Array.from(track.trip),
      stay: Int32Array.from(track.stay),
      seen: 0,
    };
  }

  /** The last key at or before a time, -1 before the first. Remembers where it looked last. */
  keyAt(track, ms) {
    const { t } = track;
    let low = 0;
    let high = t.length;
    if (track.seen < t.length && t[track.seen] <= ms) {
      low = track.seen;
      if (low + 2 < t.length && t[low + 2] > ms) high = low + 2;
    }
    while (low < high) {
      const middle = (low + high) >> 1;
      if (t[middle] <= ms) low = middle + 1;
      else high = middle;
    }
    track.seen = Math.max(0, low - 1);
    return low - 1;
  }

  /** Fills spot with where an animal is; returns it, or null for an animal that is never seen. */
  at(animal, ms, spot) {
    const track = this.tracks[animal];
    if (!track || track.t.length === 0) return null;
    const key = Math.max(0, this.keyAt(track, ms));
    const next = key + 1;
    const moving = next < track.t.length && track.t[key] <= ms && track.mode[next] !== STILL;
    const from = track.hold[key];
    const to = moving ? track.hold[next] : from;
    const took = moving ? track.t[next] - track.t[key] : 0;
    this.between(from, to, took > 0 ? (ms - track.t[key]) / took : 0, spot);
    spot.moving = moving;
    spot.mode = moving ? track.mode[next] & ~ON_GROUND : STILL;
    spot.trip = moving ? track.trip[next] : -1;
    spot.stay = moving ? -1 : track.stay[key];
    spot.ground = moving ? (track.mode[next] & ON_GROUND) !== 0 : this.isOnGround(from);
    return spot;
  }

  /** Fills spot with a place between two holds and the way from one to the other. */
  between(from, to, share, spot) {
    const { holds } = this;
    const a = 3 * from;
    const b = 3 * to;
    spot.dx = holds[b] - holds[a];
    spot.dy = holds[b + 1] - holds[a + 1];
    spot.dz = holds[b + 2] - holds[a + 2];
    spot.x = holds[a] + share * spot.dx;
    spot.y = holds[a + 1] + share * spot.dy;
    spot.z = holds[a + 2] + share * spot.dz;
    spot.heldX = spot.x;
    spot.heldZ = spot.z;
    return spot;
  }

  isOnGround(hold) {
    const i = 3 * hold;
    return this.holds[i + 1] - this.ground.heightAt(this.holds[i], this.holds[i + 2]) < NEAR_GROUND_M;
  }

  /** Fills spot with where one who took a way is after so much time. */
  along(way, afterMs, spot) {
    const { start, hold, ms, mode } = this.ways;
    let left = afterMs;
    const last = start[way + 1] - 1;
    for (let i = start[way] + 1; i <= last; i++) {
      const took = ms[i] * 10;
      if (left < took || i === last) {
        this.between(hold[i - 1], hold[i], took > 0 ? Math.min(1, Math.max(0, left / took)) : 1, spot);
        spot.moving = left < took;
        spot.mode = spot.moving ? mode[i] & ~ON_GROUND : STILL;
        spot.ground = (mode[i] & ON_GROUND) !== 0;
        return spot;
      }
      left -= took;
    }
    this.between(hold[start[way]], hold[start[way]], 0, spot);
    spot.moving = false;
    spot.mode = STILL;
    return spot;
  }

  tripEndMs(trip) {
    return this.trips.startMs[trip] + this.wayMs[this.trips.way[trip]];
  }

  /** The numbers of the trips that start on a day, by time. */
  tripsOfDay(day) {
    const list = [];
    for (let i = 0; i < this.tripCount; i++) {
      if (Math.floor(this.trips.startMs[i] / DAY_MS) === day) list.push(i);
    }
    return list.sort((a, b) => this.trips.startMs[a] - this.trips.startMs[b]);
  }
}

/** A place to fill; make one and use it again. */
export const spot = () => ({
  x: 0, y: 0, z: 0, dx: 0, dy: 0, dz: 0, heldX: 0, heldZ: 0, topY: 0,
  moving: false, mode: STILL, ground: false, trip: -1, stay: -1,
});

function tens(row) {
  return Float64Array.from(row, (value) => value * 10);
}

export { ON_GROUND };
