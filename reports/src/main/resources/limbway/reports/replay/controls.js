// Buttons, the slider of the day and choices; shows the state and tells what was asked for.

import { button, choice, el, say } from 'limbway/dom';
import { FIXED_VIEWS } from 'limbway/cameras';
import { SPEEDS } from 'limbway/clock';
import { timeOfDay } from 'limbway/words';

export const TRAILS_MIN = [0, 5, 15, 60];
const SLIDER_STEP_S = 10;

export class Controls {
  constructor(model, t, act) {
    this.t = t;
    this.model = model;
    this.play = button(t('play'), act.toggle, { class: 'rp-strong rp-play', 'aria-keyshortcuts': 'Space' });
    this.time = el('span', { class: 'rp-clock' });
    this.slider = el('input', {
      type: 'range', class: 'rp-slider', step: SLIDER_STEP_S, 'aria-label': t('clock'),
      oninput: () => act.seek(Number(this.slider.value) * 1000),
    });
    this.back = button('‹', () => act.step(-1), { 'aria-label': t('stepBack'), title: t('stepBack') });
    this.forth = button('›', () => act.step(1), { 'aria-label': t('stepForth'), title: t('stepForth') });
    this.speeds = SPEEDS.map((speed) =>
      button(t('times', { n: speed }), () => act.speed(speed), { 'aria-label': t('speedOf', { n: speed }), 'data-speed': speed }));
    const days = Array.from({ length: model.days }, (_, day) => [day, t('dayOf', { n: day + 1 })]);
    this.day = choice(t('day'), days, (value) => act.day(Number(value)));
    this.follow = choice(t('follow'), [['', t('followNobody')], ...model.names.map((name) => [name, name])], (value) => act.follow(value || null));
    this.view = choice(t('view'), model.views.map((view) => [view.name, view.text]), act.view);
    this.trail = choice(t('trails'), TRAILS_MIN.map((min) => [min, min ? t('trailsOf', { n: min }) : t('trailsNone')]), (value) => act.trail(Number(value)));
    this.heat = button(t('use'), act.heat, { 'aria-pressed': 'false', 'aria-keyshortcuts': 'h' });
    this.names = button(t('names'), act.names, { 'aria-pressed': 'false', 'aria-keyshortcuts': 'n' });
    this.steps = button(t('steps'), act.steps, { 'aria-pressed': 'false' });
    this.closer = button('+', () => act.zoom(1.25), { 'aria-label': t('closer'), title: t('closer') });
    this.farther = button('\u2212', () => act.zoom(1 / 1.25), { 'aria-label': t('farther'), title: t('farther') });
    this.root = el('div', { class: 'rp-controls', role: 'group', 'aria-label': t('controls') },
      el('div', { class: 'rp-line' }, this.play, this.back, this.slider, this.forth, this.time),
      el('div', { class: 'rp-line rp-wrap' },
        el('div', { class: 'rp-group', role: 'group', 'aria-label': t('speed') }, ...this.speeds),
        model.days > 1 ? this.day.box : null,
        model.names.length ? this.follow.box : null,
        this.view.box,
        this.trail.box,
        el('div', { class: 'rp-group' }, this.closer, this.farther),
        this.heat, this.names, this.steps));
  }

  /** Leaves out what has no meaning where the drawing is flat. */
  flat() {
    this.closer.parentElement.hidden = true;
    for (const option of [...this.view.select.options].slice(FIXED_VIEWS.length)) option.remove();
  }

  /** Shows the time; asked for at each picture. */
  tick(clock) {
    const { from, to } = clock.span;
    if (this.shown !== clock.span) {
      this.shown = clock.span;
      this.slider.min = Math.floor(from / 1000);
      this.slider.max = Math.ceil(to / 1000);
    }
    this.slider.value = Math.round(clock.ms / 1000);
    const text = timeOfDay(clock.ms, true);
    if (this.time.textContent === text) return;
    this.time.textContent = text;
    const spoken = clock.days > 1 ? this.t('clockOf', { n: clock.day + 1, time: text }) : text;
    if (!clock.playing) this.slider.setAttribute('aria-valuetext', spoken);
  }

  /** Shows how things stand. */
  show(clock, state) {
    this.tick(clock);
    say(this.play, this.t(clock.playing ? 'pause' : 'play'));
    for (const each of this.speeds) each.setAttribute('aria-pressed', String(Number(each.dataset.speed) === clock.speed));
    this.day.select.value = String(clock.day);
    this.follow.select.value = state.followName ?? '';
    this.view.select.value = state.view;
    this.trail.select.value = String(state.trailMin);
    this.heat.setAttribute('aria-pressed', String(state.heat));
    this.names.setAttribute('aria-pressed', String(state.names));
    this.steps.setAttribute('aria-pressed', String(clock.stepping));
  }
}
