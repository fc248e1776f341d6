// Keeps what was ticked on this phone until it has reached the clinic. The page works without this script.
// A day is sent whole, so sending it twice says the same and stores it once.

const KEPT = 'steadwork-own-kept';
const form = document.querySelector('form[data-keep]');
const status = document.querySelector('[data-kept]');

function read() {
  try {
    return JSON.parse(localStorage.getItem(KEPT) || '{}');
  } catch {
    return {};
  }
}

function write(days) {
  try {
    if (Object.keys(days).length === 0) {
      localStorage.removeItem(KEPT);
    } else {
      localStorage.setItem(KEPT, JSON.stringify(days));
    }
    return true;
  } catch {
    return false;
  }
}

function time() {
  return new Date().toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
}

function say(word, rest) {
  const strong = document.createElement('b');
  strong.textContent = word;
  status.replaceChildren(strong, ` ${rest}`);
}

function keep() {
  const days = read();
  const fields = [...new FormData(form).entries()].filter(([name]) => name !== 'csrf-token');
  days[form.elements.day.value] = fields;
  return write(days);
}

async function send(day, fields) {
  const body = new URLSearchParams(fields);
  body.append('csrf-token', form.elements['csrf-token'].value);
  const answer = await fetch(form.action, { method: 'POST', body, credentials: 'same-origin' });
  if (answer.ok && new URL(answer.url).pathname === '/own/today') {
    return answer.text();
  }
  throw new Error(new URL(answer.url).pathname === '/own' ? 'closed' : 'refused');
}

let busy = false;
let again = false;

async function sendAll() {
  if (busy) {
    again = true;
    return;
  }
  busy = true;
  try {
    let page = null;
    for (const [day, fields] of Object.entries(read())) {
      page = await send(day, fields);
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
  const shown = document.querySelector('.phone > [role=alert]');
  if (shown) {
    shown.remove();
  }
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

if (form && status) {
  form.addEventListener('change', keepAndSend);
  form.addEventListener('submit', (event) => {
    if (keepAndSend()) {
      event.preventDefault();
    }
  });
  window.addEventListener('online', sendAll);
  if (Object.keys(read()).length > 0) {
    sendAll().then(() => {
      if (Object.keys(read()).length === 0) {
        location.reload();
      }
    });
  }
}
