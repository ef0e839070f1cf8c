// The one clock of a replay: time in milliseconds since midnight before day 1, by days.

const DAY_MS = 86_400_000;
const HALF_HOUR_MS = 1_800_000;

export const SPEEDS = [1, 10, 60, 300];

/** Seconds of real time between two steps where the clock steps instead of gliding. */
const STEP_EVERY_S = 1;

export class Clock {
  /**
   * @param films the films that follow this clock
   * @param suns their suns, or null for layouts without a site
   */
  constructor(films, suns) {
    this.days = Math.max(1, ...films.map((film) => film.days));
    this.spans = Array.from({ length: this.days }, (_, day) => span(films, suns, day));
    this.speed = 60;
    this.playing = false;
    this.stepping = false;
    this.sinceStepS = 0;
    this.ms = beginning(films, suns, this.spans[0]);
  }

  get day() {
    return Math.min(this.days - 1, Math.max(0, Math.floor(this.ms / DAY_MS)));
  }

  /** From when to when the slider of the present day goes. */
  get span() {
    return this.spans[this.day];
  }

  set(ms) {
    const last = this.spans[this.days - 1].to;
    this.ms = Math.min(last, Math.max(this.spans[0].from, ms));
  }

  chooseDay(day) {
    const ofDay = this.ms - this.day * DAY_MS;
    const { from, to } = this.spans[day];
    this.ms = Math.min(to, Math.max(from, day * DAY_MS + ofDay));
  }

  /** How far one press of an arrow goes, with Shift ten times that. */
  get stepMs() {
    return this.speed <= 1 ? 1000 : this.speed <= 10 ? 10_000 : this.speed <= 60 ? 60_000 : 300_000;
  }

  /** Lets so much real time pass; returns whether the clock moved. Nights are left out, the last evening stops it. */
  tick(seconds) {
    if (!this.playing) return false;
    let pass = seconds;
    if (this.stepping) {
      this.sinceStepS += seconds;
      if (this.sinceStepS < STEP_EVERY_S) return false;
      pass = STEP_EVERY_S;
      this.sinceStepS = 0;
    }
    const day = this.day;
    const then = this.ms + pass * 1000 * this.speed;
    if (then < this.spans[day].to) {
      this.ms = then;
    } else if (day + 1 < this.days) {
      this.ms = this.spans[day + 1].from;
    } else {
      this.ms = this.spans[day].to;
      this.playing = false;
    }
    return true;
  }
}

/** A day as it is shown: from before the first trip or sunrise to after the last trip or sunset. */
function span(films, suns, day) {
  const midnight = day * DAY_MS;
  let from = midnight + DAY_MS;
  let to = midnight;
  for (const film of films) {
    for (const trip of film.tripsOfDay(day)) {
      from = Math.min(from, film.trips.startMs[trip]);
      to = Math.max(to, film.tripEndMs(trip));
    }
  }
  for (const sun of suns) {
    const light = sun?.daylight();
    if (light) {
      from = Math.min(from, midnight + light.from);
      to = Math.max(to, midnight + light.to);
    }
  }
  if (from >= to) return { from: midnight, to: midnight + DAY_MS - 1000 };
  return {
    from: Math.max(midnight, Math.floor(from / HALF_HOUR_MS) * HALF_HOUR_MS),
    to: Math.min(midnight + DAY_MS - 1000, (Math.floor(to / HALF_HOUR_MS) + 1) * HALF_HOUR_MS),
  };
}

/** Where the clock stands at first: in the middle of a trip, in good light. */
function beginning(films, suns, day) {
  const light = suns.find((sun) => sun)?.daylight();
  const bright = light ? light.from + 2 * 3_600_000 : day.from;
  for (const film of films) {
    const first = film.tripsOfDay(0).find((trip) => film.trips.startMs[trip] >= bright);
    if (first !== undefined) return (film.trips.startMs[first] + film.tripEndMs(first)) / 2;
  }
  return Math.max(day.from, Math.min(day.to, bright));
}
