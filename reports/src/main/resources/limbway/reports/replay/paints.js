// Colours and dashes of modes, ways and use: the same in the scene, in the flat drawing and in the legends.

/** Ground and above, as in the charts of the report. */
export const ON_GROUND_RGB = '#e69f00';
export const ABOVE_RGB = '#0072b2';

export const WAYS = {
  ground: { rgb: ON_GROUND_RGB, dash: [7, 4] },
  above: { rgb: ABOVE_RGB, dash: [] },
};

/** The darker, the more use: steps that also differ in a grey print. */
export const USE_RGB = ['#f2e2b6', '#e8b878', '#d0784f', '#9a3f52', '#4a1c4d'];

/** Seconds of use for each animal and day at which the next step begins. */
export const USE_FROM_S = [1, 10, 60, 600, 3600];

/** The step of so much use, -1 for none. */
export function useStep(seconds) {
  let step = -1;
  while (step + 1 < USE_FROM_S.length && seconds >= USE_FROM_S[step + 1]) step++;
  return step;
}

/** Units of a dash as SVG has them, in metres of a scene of this size. */
export function dashUnitM(bounds) {
  return Math.hypot(bounds[3] - bounds[0], bounds[5] - bounds[2]) / 330;
}

/** A dash of one to four lengths as pairs of on and off, stretched by a factor. */
export function dashOf(mode, factor) {
  const dash = mode?.dash ?? [];
  if (dash.length === 0) return [];
  const whole = dash.length % 2 ? [...dash, ...dash] : dash;
  return whole.slice(0, 4).map((length) => length * factor);
}
