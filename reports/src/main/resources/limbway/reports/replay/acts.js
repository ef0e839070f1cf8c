// What can be done with a replay: by buttons, by keys, by the page.

import { SPEEDS } from 'limbway/clock';
import { NO_CARD } from 'limbway/trips';
import { Run } from 'limbway/ways';

/** One function for each deed. */
export function acts(player) {
  const { clock, state } = player;
  const then = (deed) => (...given) => {
    player.wake();
    const result = deed(...given);
    player.changed();
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
      const known = player.scenes.some(({ layout }) => layout.animals.some((animal) => animal.name === name));
      const wasFollowing = state.followName !== null;
      state.followName = known ? name : null;
      if (state.followName !== null) player.eachCamera((cameras) => cameras.nearer());
      else if (wasFollowing) player.stages.forEach((stage) => player.look(stage, true));
    }),
    followNext: () => {
      const names = [...player.page.names, null];
      act.follow(names[(names.indexOf(state.followName) + 1) % names.length]);
    },
    view: then((name) => {
      state.view = name;
      player.stages.forEach((stage) => player.look(stage, true));
    }),
    viewNext: () => {
      const at = player.views.findIndex(({ name }) => name === state.view);
      act.view(player.views[(at + 1) % player.views.length].name);
    },
    trail: then((minutes) => (state.trailMin = minutes)),
    heat: then(() => (state.heat = !state.heat)),
    names: then(() => (state.names = !state.names)),
    steps: then(() => (clock.stepping = !clock.stepping)),
    zoom: (factor) => player.eachCamera((cameras) => cameras.zoom(factor)),
    turn: (across, up) => player.eachCamera((cameras) => cameras.turn(across, up)),
    showCard: then((layout, index) => {
      stopRun();
      state.card = player.data.layouts[layout]?.cards?.[index] ? { layout, index } : null;
    }),
    closeCard: then(() => {
      stopRun();
      state.card = null;
    }),
    cardNext: (by = 1) => {
      const layout = state.card?.layout ?? player.scenes[0].number;
      const count = player.data.layouts[layout].cards?.length ?? 0;
      if (count) act.showCard(layout, state.card ? (state.card.index + by + count) % count : 0);
    },
    runWays: () => {
      if (!state.card) return Promise.resolve();
      const { film } = player.scenes.find(({ number }) => number === state.card.layout) ?? {};
      if (!film) return Promise.resolve();
      act.play(false);
      state.run = new Run(film, player.data.layouts[state.card.layout].cards[state.card.index], player.calm);
      player.changed();
      return state.run.ended;
    },
    openTrip: then((layout, trip) => {
      const { film } = player.scenes.find(({ number }) => number === layout);
      clock.playing = false;
      clock.set(film.trips.startMs[trip]);
      stopRun();
      const card = film.trips.card[trip];
      state.card = card === NO_CARD ? null : { layout, index: card };
      if (!state.card) act.follow(player.data.layouts[layout].animals[film.trips.animal[trip]].name);
    }),
  };
  return act;
}
