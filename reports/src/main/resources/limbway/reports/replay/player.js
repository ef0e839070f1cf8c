// A replay at work: one clock and one state for all its layouts, drawn only when something changed.

import { acts } from 'limbway/acts';
import { Clock } from 'limbway/clock';
import { FIXED_VIEWS } from 'limbway/cameras';
import { Page } from 'limbway/page';
import { listen } from 'limbway/keys';
import { Timing } from 'limbway/timing';

/** A tab that slept does not jump; a slow machine still keeps time. */
const LONGEST_FRAME_S = 1;
/** So many slow pictures one after the other, and drawing gets plainer. */
const SLOW_S = 0.12;
const SLOW_FRAMES = 6;
const TELL_EVERY_MS = 500;

export class Player {
  constructor(root, data, scenes, t, options) {
    this.data = data;
    this.scenes = scenes;
    this.options = options;
    this.listeners = [];
    this.calm = window.matchMedia?.('(prefers-reduced-motion: reduce)').matches ?? false;
    this.clock = new Clock(scenes.map((each) => each.film), scenes.map((each) => each.sky));
    this.clock.stepping = this.calm;
    this.state = {
      followName: null, view: 'overview', trailMin: 15, heat: false, names: false, card: null, run: null,
    };
    this.views = views(scenes, t);
    this.act = acts(this);
    this.timing = new Timing();
    this.page = new Page(root, this, t);
    this.stages = [];
    this.toldMs = 0;
    this.frame = 0;
    this.slow = 0;
    listen(root, this.act);
    this.resizer = new ResizeObserver(() => this.#resize());
    this.page.pictures.forEach((picture) => this.resizer.observe(picture));
    this.watcher = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) this.wake();
    }, { rootMargin: '300px' });
    this.watcher.observe(root);
    if (options.card !== null && this.data.layouts[scenes[0].number].cards?.[options.card]) {
      this.state.card = { layout: scenes[0].number, index: options.card };
    }
    this.changed();
  }

  /** Makes the pictures, when they come near the window or are asked for. */
  wake() {
    if (this.stages.length || this.disposed) return;
    this.watcher.disconnect();
    this.stages = this.page.makeStages();
    this.stages.forEach((stage) => this.look(stage, false));
    this.invalidate();
  }

  /** Lets another picture be drawn soon. */
  invalidate() {
    if (!this.frame && this.stages.length) this.frame = requestAnimationFrame((now) => this.#draw(now));
  }

  #draw(now) {
    this.frame = 0;
    if (this.disposed) return;
    this.timing.begin();
    const passed = this.before ? (now - this.before) / 1000 : 0;
    const seconds = Math.min(LONGEST_FRAME_S, passed);
    this.slow = passed > SLOW_S ? this.slow + 1 : 0;
    if (this.slow === SLOW_FRAMES) this.stages.forEach((stage) => stage.plainer?.());
    const { clock, state, stages } = this;
    const wasPlaying = clock.playing;
    clock.tick(seconds);
    if (wasPlaying && !clock.playing) this.changed();
    state.run?.tick(seconds);
    let gliding = false;
    for (const stage of stages) gliding = stage.tick(passed) || gliding;
    stages.forEach((stage, i) => (gliding = stage.draw(clock.ms, this.#stateOf(i), passed) || gliding));
    this.page.draw(clock, state);
    if (clock.playing && now - this.toldMs > TELL_EVERY_MS) {
      this.toldMs = now;
      this.page.tell(clock, state);
    }
    this.timing.end();
    if (state.run?.done) {
      const { run } = state;
      state.run = null;
      this.changed();
      run.end();
    }
    const goesOn = clock.playing || gliding || state.run;
    this.before = goesOn ? now : 0;
    if (goesOn) this.invalidate();
  }

  /** The state as one layout has it. */
  #stateOf(i) {
    const { state, scenes } = this;
    const { layout, number } = scenes[i];
    const own = (scenes[i].state ??= {});
    own.follow = state.followName === null ? -1 : layout.animals.findIndex(({ name }) => name === state.followName);
    own.calm = this.calm;
    own.trailMs = state.trailMin * 60_000;
    own.heat = state.heat;
    own.names = state.names;
    own.card = state.card?.layout === number ? state.card : null;
    own.run = own.card ? state.run : null;
    return own;
  }

  /** Something changed that is told: buttons, words, those who listen. */
  changed() {
    this.page.show(this.clock, this.state);
    this.page.tell(this.clock, this.state);
    this.invalidate();
    for (const listener of this.listeners) listener();
  }

  /** Shows a picture from the chosen view. */
  look(stage, gently) {
    if (stage.cameras) stage.cameras.go(this.state.view, gently && !this.calm);
    else stage.show(this.state.view);
  }

  /** One camera was moved by hand: the others look the same way. */
  moved(stage) {
    for (const other of this.stages) if (other !== stage) other.cameras?.like(stage.cameras);
    this.invalidate();
  }

  #resize() {
    for (const stage of this.stages) {
      stage.resize();
      // what nobody turned by hand fills the picture again
      if (stage.cameras && !stage.cameras.touched && this.state.followName === null) this.look(stage, false);
    }
    this.page.resize();
    this.invalidate();
  }

  /** Does something to every camera. */
  eachCamera(deed) {
    for (const stage of this.stages) if (stage.cameras) deed(stage.cameras);
    this.invalidate();
  }

  stats() {
    this.wake();
    const all = this.stages.map((stage) => stage.stats());
    return {
      drawCalls: Math.max(0, ...all.map((each) => each.drawCalls)),
      triangles: all.reduce((sum, each) => sum + each.triangles, 0),
      scriptMs: this.timing.middle(),
      mode: this.stages[0]?.mode ?? (this.options.flat ? '2d' : '3d'),
    };
  }

  dispose() {
    this.disposed = true;
    cancelAnimationFrame(this.frame);
    this.resizer.disconnect();
    this.watcher.disconnect();
    this.state.run?.end();
    this.stages.forEach((stage) => stage.dispose());
    this.page.dispose();
  }
}

/** The views that can be chosen: three fixed ones and where people stand. */
function views(scenes, t) {
  const list = FIXED_VIEWS.map((name) => ({ name, text: t(name) }));
  for (const { name, who } of scenes[0].layout.viewpoints ?? []) {
    list.push({ name, text: t(`viewpoint.${who}`, { name }) });
  }
  return list;
}
