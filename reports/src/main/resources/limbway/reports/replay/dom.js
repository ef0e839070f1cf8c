// Elements of the page, always with text as text.

/** An element with attributes, handlers ("on…") and children; strings become text, what is null or false is left out. */
export function el(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

/** A button with its text and what it does. */
export function button(text, press, attributes = {}) {
  return el('button', { type: 'button', onclick: press, ...attributes }, text);
}

/** A labelled choice; options are [value, text] pairs. */
export function choice(label, options, change, attributes = {}) {
  const select = el('select', { onchange: (event) => change(event.target.value), ...attributes });
  for (const [value, text] of options) select.append(el('option', { value }, text));
  return { select, box: el('label', { class: 'rp-field' }, el('span', {}, label), select) };
}

/** Sets text only where it differs, so that screen readers are not told again. */
export function say(element, text) {
  if (element.textContent !== text) element.textContent = text;
}
