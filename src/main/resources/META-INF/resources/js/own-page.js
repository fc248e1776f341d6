// Keeps what was ticked on this phone until it has reached the clinic. The page works without this script.
// A day is sent whole, so sending it twice says the same and stores it once.

import { AGAIN_AFTER, ask, dayNow, daysSince, fieldsOf, isPage, kept, post, renewToken, say as sayAt, stayWithoutReception, tidy, time } from './own-phone.js';

const form = document.querySelector('form[data-keep]');
const status = document.querySelector('[data-kept]');
const store = form ? kept(`kept-${form.dataset.keep}`) : null;
const TODAY = '/own/today';
const STALE_AFTER = 3_600_000;

let opened = new Date();
let busy = false;
let again = false;
let retry = null;

function read() {
  return store.read() || {};
}

function write(days) {
  return store.write(Object.keys(days).length === 0 ? null : days);
}

function say(word, rest) {
  sayAt(status, word, rest);
}

function keep() {
  const days = read();
  days[form.elements.day.value] = fieldsOf(form);
  return write(days);
}

/** Puts what this phone kept of the day back onto the page: the clinic does not know it yet. */
function putBack() {
  const kept = read()[form.elements.day.value];
  if (!kept) {
    return;
  }
  const ticked = kept.filter(([name]) => name === 'done').map(([, value]) => value);
  form.querySelectorAll('input[name=done]').forEach((box) => { box.checked = ticked.includes(box.value); });
  kept.forEach(([name, value]) => {
    const field = form.elements[name];
    if (field instanceof HTMLSelectElement) {
      field.value = value;
    }
  });
}

/** Pain is said of a session that was done; a session taken back takes its pain along. */
function tie(changed) {
  if (changed instanceof HTMLSelectElement && changed.value !== '') {
    const box = form.querySelector(`input[name=done][value="${changed.dataset.session}"]`);
    box.checked = true;
  } else if (changed.name === 'done' && !changed.checked) {
    form.querySelectorAll(`select[data-session="${changed.value}"]`).forEach((field) => { field.value = ''; });
  }
}

async function send(fields) {
  const answer = await post(form.action, fields);
  return isPage(answer, TODAY) ? answer.text() : null;
}

async function sendOrRenew(fields) {
  const page = await send(fields);
  if (page !== null) {
    return page;
  }
  await renewToken();
  const second = await send(fields);
  if (second === null) {
    throw new Error('refused');
  }
  return second;
}

async function sendAll() {
  if (busy) {
    again = true;
    return;
  }
  busy = true;
  clearTimeout(retry);
  try {
    let page = null;
    for (const [day, fields] of Object.entries(read())) {
      page = await sendOrRenew(fields);
      const days = read();
      if (JSON.stringify(days[day]) === JSON.stringify(fields)) {
        delete days[day];
        write(days);
      }
    }
    if (page !== null) {
      show(page);
      say('Sent', `at ${time()}. Untick what you ticked by mistake.`);
    }
  } catch (problem) {
    if (problem.message === 'closed') {
      say('Kept', 'on this phone. Your page has closed: open it again with your link and date of birth, and it is sent.');
    } else {
      say('Kept', `on this phone at ${time()}. Not sent yet.`);
      retry = setTimeout(sendAll, AGAIN_AFTER);
    }
  } finally {
    busy = false;
    if (again) {
      again = false;
      sendAll();
    }
  }
}

/** Takes over from the answer what the page cannot know: what is stored, how far the day is, and an alarm. */
function show(text) {
  const fresh = new DOMParser().parseFromString(text, 'text/html');
  const progress = fresh.querySelector('.progress');
  if (progress) {
    document.querySelector('.progress').replaceWith(document.importNode(progress, true));
  }
  form.querySelectorAll('input[name=was]').forEach((input) => input.remove());
  fresh.querySelectorAll('input[name=was]').forEach((input) => form.append(document.importNode(input, true)));
  const alarm = fresh.querySelector('.phone > [role=alert]');
  document.querySelector('.phone > [role=alert]')?.remove();
  if (alarm) {
    document.querySelector('.phone h1').after(document.importNode(alarm, true));
  }
}

function keepAndSend() {
  if (keep()) {
    say('Kept', `on this phone at ${time()}. Not sent yet.`);
    sendAll();
    return true;
  }
  return false;
}

/** A page left open is loaded anew: the day may be another, and an exercise may have been paused meanwhile. */
async function freshen() {
  const passed = daysSince(opened);
  if (passed < 1 && new Date() - opened < STALE_AFTER) {
    return;
  }
  try {
    if ((await ask(location.pathname)).ok) {
      location.reload();
      return;
    }
  } catch {
    // no reception: the page stays, and turns its day over by itself
  }
  if (passed >= 1) {
    turn();
  }
}

function turn() {
  const next = dayNow(form.elements.day.value, opened);
  const day = new Date(`${next}T12:00`);
  opened = new Date();
  form.querySelectorAll('input[name=was]').forEach((input) => input.remove());
  form.querySelectorAll('input[name=done]').forEach((box) => { box.checked = false; });
  form.querySelectorAll('select[data-session]').forEach((field) => { field.value = ''; });
  form.elements.day.value = next;
  document.querySelector('.phone h1').textContent = day.toLocaleDateString('en-GB', { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' }).replace(',', '');
  document.querySelector('.progress').hidden = true;
  say('New day.', 'No reception: what you tick is kept on this phone.');
}

/** The figures are fetched while there is reception, not only when they are looked at. */
function fetchFigures() {
  form.querySelectorAll('img[loading=lazy]').forEach((figure) => { figure.loading = 'eager'; });
}

const lost = tidy();

if (form && status) {
  if (lost.length > 0) {
    say('Too old to send:', `what was ticked on ${lost.sort().join(', ')} did not reach the clinic within a week and is no longer on this phone. Tell your physiotherapist.`);
  }
  fetchFigures();
  stayWithoutReception(status);
  putBack();
  form.addEventListener('change', (event) => {
    tie(event.target);
    keepAndSend();
  });
  form.addEventListener('submit', (event) => {
    if (keepAndSend()) {
      event.preventDefault();
    }
  });
  window.addEventListener('online', sendAll);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') {
      sendAll().then(freshen);
    }
  });
  if (Object.keys(read()).length > 0) {
    say('Kept', 'on this phone. Not sent yet.');
    sendAll();
  }
}
