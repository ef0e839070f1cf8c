// A replay at work: one clock and one state for all its layouts, drawn only when something changed.

import { Clock, SPEEDS } from 'limbway/clock';
import { FIXED_VIEWS } from 'limbway/cameras';
import { Page } from 'limbway/page';
import { listen } from 'limbway/keys';
import { NO_CARD } from 'limbway/trips';
import { Run } from 'limbway/ways';
import { Timing } from 'limbway/timing';

const LONGEST_FRAME_S = 0.1;
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
    this.act = this.#acts();
    this.timing = new Timing();
    this.page = new Page(root, this, t);
    this.stages = [];
    this.toldMs = 0;
    this.frame = 0;
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
    this.stages.forEach((stage) => this.#show(stage, false));
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

  #show(stage, gently) {
    if (stage.cameras) stage.cameras.go(this.state.view, gently && !this.calm);
    else stage.show(this.state.view);
  }

  /** One camera was moved by hand: the others look the same way. */
  moved(stage) {
    for (const other of this.stages) if (other !== stage) other.cameras?.like(stage.cameras);
    this.invalidate();
  }

  #resize() {
    this.stages.forEach((stage) => stage.resize());
    this.page.resize();
    this.invalidate();
  }

  #acts() {
    const { clock, state } = this;
    const then = (deed) => (...given) => {
      this.wake();
      const result = deed(...given);
      this.changed();
      return result;
    };
    const stopRun = () => {
      state.run?.end();
      state.run = null;
    };
    const act = {
      play: then((on) => {
        stopRun();
        const end = clock.spans[clock.days - 1].to;
        if (on && clock.ms >= end) clock.ms = clock.spans[0].from;
        clock.playing = on;
        clock.sinceStepS = 0;
      }),
      toggle: () => act.play(!clock.playing),
      seek: then((ms) => clock.set(ms)),
      step: then((times) => {
        clock.playing = false;
        clock.set(clock.ms + times * clock.stepMs);
      }),
      speed: then((times) => (clock.speed = times)),
      faster: (by) => {
        const at = SPEEDS.findIndex((speed) => speed >= clock.speed);
        act.speed(SPEEDS[Math.min(SPEEDS.length - 1, Math.max(0, (at < 0 ? SPEEDS.length : at) + by))]);
      },
      day: then((day) => clock.chooseDay(day)),
      follow: then((name) => {
        const known = this.scenes.some(({ layout }) => layout.animals.some((animal) => animal.name === name));
        const wasFollowing = state.followName !== null;
        state.followName = known ? name : null;
        if (state.followName !== null) this.#camera((cameras) => cameras.nearer());
        else if (wasFollowing) this.stages.forEach((stage) => this.#show(stage, true));
      }),
      followNext: () => {
        const names = [...this.page.names, null];
        act.follow(names[(names.indexOf(state.followName) + 1) % names.length]);
      },
      view: then((name) => {
        state.view = name;
        this.stages.forEach((stage) => this.#show(stage, true));
      }),
      viewNext: () => {
        const at = this.views.findIndex(({ name }) => name === state.view);
        act.view(this.views[(at + 1) % this.views.length].name);
      },
      trail: then((minutes) => (state.trailMin = minutes)),
      heat: then(() => (state.heat = !state.heat)),
      names: then(() => (state.names = !state.names)),
      steps: then(() => (clock.stepping = !clock.stepping)),
      zoom: (factor) => this.#camera((cameras) => cameras.zoom(factor)),
      turn: (across, up) => this.#camera((cameras) => cameras.turn(across, up)),
      showCard: then((layout, index) => {
        stopRun();
        state.card = this.data.layouts[layout]?.cards?.[index] ? { layout, index } : null;
      }),
      closeCard: then(() => {
        stopRun();
        state.card = null;
      }),
      cardNext: (by = 1) => {
        const layout = state.card?.layout ?? this.scenes[0].number;
        const count = this.data.layouts[layout].cards?.length ?? 0;
        if (count) act.showCard(layout, state.card ? (state.card.index + by + count) % count : 0);
      },
      runWays: () => {
        if (!state.card) return Promise.resolve();
        const { film } = this.scenes.find(({ number }) => number === state.card.layout) ?? {};
        if (!film) return Promise.resolve();
        act.play(false);
        state.run = new Run(film, this.data.layouts[state.card.layout].cards[state.card.index], this.calm);
        this.changed();
        return state.run.ended;
      },
      openTrip: then((layout, trip) => {
        const { film } = this.scenes.find(({ number }) => number === layout);
        clock.playing = false;
        clock.set(film.trips.startMs[trip]);
        stopRun();
        const card = film.trips.card[trip];
        state.card = card === NO_CARD ? null : { layout, index: card };
        if (!state.card) act.follow(this.data.layouts[layout].animals[film.trips.animal[trip]].name);
      }),
    };
    return act;
  }

  #camera(deed) {
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
