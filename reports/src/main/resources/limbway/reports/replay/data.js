// Numbers out of the page's JSON: rows in base64, places as multiples of a step.

const ROWS = {
  i8: Int8Array,
  u8: Uint8Array,
  i16: Int16Array,
  u16: Uint16Array,
  u32: Uint32Array,
  f32: Float32Array,
};

/** Reads a row such as "i16:AAAB…" into a typed array; a plain array passes through. */
export function row(text) {
  if (typeof text !== 'string') return text ?? [];
  const colon = text.indexOf(':');
  const Row = ROWS[text.slice(0, colon)];
  if (!Row) throw new Error(`replay data: unknown row "${text.slice(0, 8)}"`);
  const raw = atob(text.slice(colon + 1));
  const bytes = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) bytes[i] = raw.charCodeAt(i);
  return new Row(bytes.buffer);
}

/** Reads a row of places as metres, three numbers each. */
export function places(layout, text) {
  const steps = row(text);
  const metres = new Float32Array(steps.length);
  for (let i = 0; i < steps.length; i++) metres[i] = layout.origin[i % 3] + layout.stepM * steps[i];
  return metres;
}

/** The rows of an object, each read; what is no row stays as it is. */
export function rows(object) {
  const read = {};
  for (const [name, value] of Object.entries(object ?? {})) {
    read[name] = typeof value === 'string' ? row(value) : value;
  }
  return read;
}
