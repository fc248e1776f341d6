// The full-screen view of a review meeting: arrow keys move from case to case, a clock counts against the minutes of the case.
// Without it the links move and the planned minutes stand there.

const stage = document.body;
const link = selector => document.querySelector(selector);
const keys = { ArrowRight: '[rel=next]', PageDown: '[rel=next]', ArrowLeft: '[rel=prev]', PageUp: '[rel=prev]', w: '[data-write]', Escape: '[data-leave]' };

function fullScreen() {
  if (document.fullscreenElement) {
    document.exitFullscreen();
  } else {
    document.documentElement.requestFullscreen();
  }
}

document.addEventListener('keydown', event => {
  if (event.target.closest('input, textarea, select, [contenteditable]') || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === 'f' && document.fullscreenEnabled) {
    event.preventDefault();
    fullScreen();
    return;
  }
  // the browser leaves full screen by Escape itself
  const to = event.key === 'Escape' && document.fullscreenElement ? null : keys[event.key] && link(keys[event.key]);
  if (to) {
    event.preventDefault();
    to.click();
  }
});

// How long a case has been on the screen is kept while the window is open, so that going back and forth goes on counting.
const clock = link('[data-clock]');
const name = `steadwork-meeting-${stage.dataset.case}`;
const before = Number(sessionStorage.getItem(name)) || 0;
const began = Date.now();
const planned = Number(stage.dataset.minutes) * 60;

function spent() {
  return before + Math.floor((Date.now() - began) / 1000);
}

function shown(seconds) {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

function tick() {
  const seconds = spent();
  const over = seconds - planned;
  clock.textContent = over > 0 ? `${shown(over)} over ${stage.dataset.minutes} min` : `${shown(seconds)} of ${stage.dataset.minutes} min`;
  clock.classList.toggle('stage__clock--over', over > 0);
}

if (clock) {
  tick();
  setInterval(tick, 1000);
  addEventListener('pagehide', () => sessionStorage.setItem(name, String(spent())));
}

const full = link('[data-full]');
if (full && document.fullscreenEnabled) {
  full.hidden = false;
  full.addEventListener('click', fullScreen);
}
for (const hint of document.querySelectorAll('[data-keys]')) {
  hint.hidden = false;
}
