// How long the script takes for a picture: the mean of the last ones.

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

  mean() {
    const kept = Math.min(KEPT, this.count);
    let sum = 0;
    for (let i = 0; i < kept; i++) sum += this.row[i];
    return kept ? sum / kept : 0;
  }
}
