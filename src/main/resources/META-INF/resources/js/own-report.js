// The report before a visit on a phone: half-filled answers stay, what is sent without reception arrives later, once.
// Every sending has a name that the clinic knows it by. The page works without this script.

import { AGAIN_AFTER, dayNow, fieldsOf, isPage, kept, post, renewToken, say, stayWithoutReception, time } from './own-phone.js';

const THANKS = '/own/report/thanks';
const REPORT = '/own/report';
const form = document.querySelector('form[data-report]');
const elsewhere = document.querySelector('[data-report-state]');
const owner = form?.dataset.report || elsewhere?.dataset.reportState;
const store = owner ? kept(`report-${owner}`) : null;
const opened = new Date();

let busy = false;
let retry = null;

/** Says at once what to do about a warning sign that is ticked: no answer of the clinic is waited for. */
function warn() {
  form.querySelectorAll('[data-says]').forEach((notice) => {
    const was = notice.hidden;
    notice.hidden = !form.querySelector(`input[name=sign][value^=${notice.dataset.says}]:checked`);
    if (was && !notice.hidden) {
      notice.scrollIntoView({ block: 'nearest' });
    }
  });
}

function putBack(fields) {
  for (const field of form.elements) {
    if (field.type === 'radio' || field.type === 'checkbox') {
      field.checked = fields.some(([name, value]) => name === field.name && value === field.value);
    } else if (field.name === 'words' || field.name === 'sending') {
      field.value = fields.find(([name]) => name === field.name)?.[1] ?? field.value;
    }
  }
}

function keep(waiting) {
  return store.write({ changed: new Date().toISOString(), waiting, fields: fieldsOf(form) });
}

/** Sends what waits. Returns what came of it: sent, wrong, closed, kept. */
async function send(fields) {
  let answer = await post(REPORT, fields);
  if (answer.status === 400) {
    await renewToken();
    answer = await post(REPORT, fields);
  }
  if (answer.status === 422) {
    return 'wrong';
  }
  return isPage(answer, THANKS) ? 'sent' : 'kept';
}

async function sendWaiting() {
  const report = store.read();
  if (busy || !report?.waiting) {
    return;
  }
  busy = true;
  clearTimeout(retry);
  let result;
  try {
    result = await send(report.fields);
  } catch (problem) {
    result = problem.message === 'closed' ? 'closed' : 'kept';
  }
  busy = false;
  told(result);
}

function told(result) {
  const status = form ? document.querySelector('[data-kept]') : elsewhere;
  if (result === 'sent') {
    store.write(null);
    if (form) {
      location.assign(THANKS);
    } else {
      const link = document.createElement('a');
      link.href = THANKS;
      link.textContent = 'See what to do now';
      say(status, 'Your report was sent', `at ${time()}. `);
      status.append(link);
    }
  } else if (result === 'wrong') {
    store.write({ ...store.read(), waiting: false });
    if (form) {
      // the clinic's own answer says at each field what to do
      form.submit();
    } else {
      const link = document.createElement('a');
      link.href = REPORT;
      link.textContent = 'Look at it again';
      say(status, 'Your report was not taken.', '');
      status.append(link);
    }
  } else if (result === 'closed') {
    say(status, 'Kept', 'on this phone. Your page has closed: open it again with your link and date of birth, and your report is sent.');
  } else {
    say(status, 'Kept', `on this phone at ${time()}. Your report is not sent yet.`);
    retry = setTimeout(sendWaiting, AGAIN_AFTER);
  }
}

if (form) {
  const refused = document.querySelector('.field__error');
  const before = store.read();
  if (before && !refused) {
    putBack(before.fields);
  }
  warn();
  stayWithoutReception(document.querySelector('[data-kept]'));
  form.addEventListener('input', () => {
    warn();
    keep(false);
  });
  form.addEventListener('submit', (event) => {
    form.elements.day.value = dayNow(form.elements.day.defaultValue, opened);
    if (keep(true)) {
      event.preventDefault();
      sendWaiting();
    }
  });
  if (before && !before.waiting && !refused) {
    say(document.querySelector('[data-kept]'), 'Kept', 'on this phone from before. Not sent yet.');
  }
}

if (store) {
  document.querySelector('[data-leave]')?.addEventListener('submit', () => {
    if (!store.read()?.waiting) {
      store.write(null);
    }
  });
  window.addEventListener('online', sendWaiting);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') {
      sendWaiting();
    }
  });
  sendWaiting();
}
