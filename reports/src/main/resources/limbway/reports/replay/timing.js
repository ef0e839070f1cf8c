// How long the script takes for a picture: the middle of the last ones.

const KEPT = 60;

export class Timing {
  constructor() {
    this.row = new Float64Array(KEPT);
    this.count = 0;
  }

  begin() {
    this.began = performance.now();
  }

  end() {
    this.row[this.count++ % KEPT] = performance.now() - this.began;
  }

  /** The middle one, so that one long wait for the machine does not tell for all. */
  middle() {
    const kept = this.row.slice(0, Math.min(KEPT, this.count)).sort();
    return kept.length ? kept[kept.length >> 1] : 0;
  }
}
