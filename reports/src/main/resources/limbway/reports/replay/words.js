// Words: every text comes from the page's data, numbers are put into its gaps.

/** Returns t(key, gaps): the text of a key, with each {gap} filled. A key without text shows itself, so that it is noticed. */
export function speaker(texts) {
  const t = (key, gaps) => {
    const text = texts?.[key] ?? key;
    return gaps ? text.replace(/\{(\w+)\}/g, (whole, name) => (name in gaps ? String(gaps[name]) : whole)) : text;
  };
  t.has = (key) => texts != null && key in texts;
  return t;
}

const two = (number) => String(number).padStart(2, '0');

/** The time of day of a clock, hours and minutes, with seconds if asked for. */
export function timeOfDay(ms, seconds = false) {
  const s = Math.floor(ms / 1000) % 86400;
  const text = `${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}`;
  return seconds ? `${text}:${two(s % 60)}` : text;
}

/** A number with so many decimals at most, thousands set apart by a narrow space. */
export function number(value, decimals = 0) {
  const [whole, rest] = Math.abs(value).toFixed(decimals).split('.');
  const spaced = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  const tail = rest ? rest.replace(/0+$/, '') : '';
  const sign = value < 0 && Number(value.toFixed(decimals)) !== 0 ? '\u2212' : '';
  return sign + spaced + (tail ? `.${tail}` : '');
}

/** An energy in joules from 0 to 10 kJ, above in kilojoules. */
export function energy(t, milliJ) {
  const joules = milliJ / 1000;
  return joules < 10000
    ? t('joules', { n: number(joules) })
    : t('kilojoules', { n: number(joules / 1000, joules < 100000 ? 1 : 0) });
}

/** A length of time in the unit that reads best. */
export function duration(t, seconds) {
  if (seconds < 60) return t('seconds', { n: number(seconds) });
  if (seconds < 3600) return t('minutes', { n: number(seconds / 60, seconds < 600 ? 1 : 0) });
  return t('hours', { n: number(seconds / 3600, 1) });
}

/** Black or white, whichever stands out more from a colour such as "#8c7a3d"; relative luminance as in WCAG 2. */
export function inkOn(rgb) {
  const n = parseInt(rgb.slice(1), 16);
  const light = 0.2126 * linear(n >> 16) + 0.7152 * linear((n >> 8) & 255) + 0.0722 * linear(n & 255);
  // there (1.05 / (L + 0.05)) equals ((L + 0.05) / 0.05)
  return light > 0.179 ? '#000000' : '#ffffff';
}

function linear(code) {
  const share = code / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}
