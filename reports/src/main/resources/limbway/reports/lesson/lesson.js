// Shows a lesson step by step. The page holds everything and is complete without this script; nothing is kept or sent.
// Words come from the page; texts are only ever copied as text.

const main = document.querySelector('main.lesson');
const steps = [...main.querySelectorAll('.step')];
let at = 0;

/** Shows one step and puts the focus on its heading. */
function show(number) {
  at = Math.max(0, Math.min(steps.length - 1, number));
  mark();
  const heading = steps[at].querySelector('h2');
  heading.focus({preventScroll: true});
  steps[at].scrollIntoView({block: 'start'});
  steps[at].querySelectorAll('.played').forEach(play);
}

/** Shows the step where the reader is; introduction and cautions stand at the beginning and at the end. */
function mark() {
  steps.forEach((step, i) => step.classList.toggle('now', i === at));
  document.documentElement.classList.toggle('begun', at > 0);
  document.documentElement.classList.toggle('ending', at >= steps.length - 2);
}

/** Says what is so about the chosen answer, and opens what comes after once every question of the step was answered. */
function check(question) {
  const verdict = question.querySelector('.verdict');
  const chosen = question.querySelector('input:checked');
  question.querySelectorAll('.choice').forEach(choice => choice.classList.remove('right', 'wrong'));
  if (!chosen) {
    verdict.className = 'verdict';
    verdict.textContent = main.dataset.choose;
    return;
  }
  const told = question.querySelectorAll('.answer li')[Number(chosen.value)];
  const right = told.dataset.right === 'true';
  chosen.closest('.choice').classList.add(right ? 'right' : 'wrong');
  verdict.className = right ? 'verdict right' : 'verdict wrong';
  verdict.textContent = told.querySelector('.feedback').textContent;
  done(question);
}

function done(question) {
  question.classList.add('done');
  const step = question.closest('.step');
  if ([...step.querySelectorAll('.question')].every(one => one.classList.contains('done'))) {
    step.classList.add('checked');
  }
}

/** Plays both ways of the trip where the page carries the player; without it the drawing below says the same. */
async function play(place) {
  const root = place.querySelector('.replay');
  const data = document.querySelector('script.replay-data');
  if (!root || !data || place.dataset.state) {
    return;
  }
  place.dataset.state = 'loading';
  try {
    const {mount} = await import('limbway/replay');
    const handle = mount(root, JSON.parse(data.textContent), JSON.parse(root.dataset.options));
    window.limbwayReplays = [handle];
    const button = place.querySelector('.controls button');
    button.addEventListener('click', () => handle.playWays(0, Number(root.dataset.card)));
    place.dataset.state = 'ready';
  } catch (e) {
    place.dataset.state = 'none';
    console.warn('the player could not be started; the drawing below shows both ways', e);
  }
}

steps.forEach((step, i) => {
  step.querySelectorAll('.question').forEach(question => {
    question.querySelectorAll('.check').forEach(button => button.addEventListener('click', () => check(question)));
    question.querySelectorAll('.compare').forEach(button => button.addEventListener('click', () => done(question)));
  });
  step.querySelectorAll('.back').forEach(button => button.addEventListener('click', () => show(i - 1)));
  step.querySelectorAll('.next').forEach(button => button.addEventListener('click', () => show(i + 1)));
});
document.querySelectorAll('button.print').forEach(button => button.addEventListener('click', () => window.print()));
document.documentElement.classList.add('scripted');
mark();
