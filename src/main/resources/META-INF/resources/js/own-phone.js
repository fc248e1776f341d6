// What the scripts of the patient's own page share: what is kept on this phone until it has reached the clinic, and asking the clinic.

const PREFIX = 'steadwork-own-';
const PATIENCE = 20_000;
const A_DAY = 86_400_000;
const DAYS_KEPT = 7;

export const AGAIN_AFTER = 30_000;

/** Something kept on this phone as JSON under one name; writing null removes it. */
export function kept(name) {
  const key = PREFIX + name;
  return {
    read() {
      try {
        return JSON.parse(localStorage.getItem(key));
      } catch {
        return null;
      }
    },
    write(value) {
      try {
        if (value === null) {
          localStorage.removeItem(key);
        } else {
          localStorage.setItem(key, JSON.stringify(value));
        }
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** The day of the clinic's calendar as the phone knows it: the day that the page was made on, turned over with the phone's own midnights. */
export function dayNow(ofPage, opened) {
  const day = new Date(`${ofPage}T12:00`);
  day.setDate(day.getDate() + daysSince(opened));
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}-${String(day.getDate()).padStart(2, '0')}`;
}

/** Midnights since a moment, by this phone's clock. */
export function daysSince(moment) {
  return Math.round((new Date().setHours(0, 0, 0, 0) - new Date(moment).setHours(0, 0, 0, 0)) / A_DAY);
}

export function time() {
  return new Date().toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
}

export function say(status, word, rest) {
  const strong = document.createElement('b');
  strong.textContent = word;
  status.replaceChildren(strong, ` ${rest}`);
}

export function ask(address, options = {}) {
  return fetch(address, { credentials: 'same-origin', signal: AbortSignal.timeout(PATIENCE), ...options });
}

/** True when the clinic answered with this page; says so by an error when the patient's page has closed. */
export function isPage(answer, path) {
  if (new URL(answer.url).pathname === '/own') {
    throw new Error('closed');
  }
  return answer.ok && new URL(answer.url).pathname === path;
}

function token() {
  return document.querySelector('[name=csrf-token]');
}

/** Posts fields with the token of the page. */
export function post(address, fields) {
  const body = new URLSearchParams(fields);
  body.append('csrf-token', token().value);
  return ask(address, { method: 'POST', body });
}

/** The token of a form may be over although the page is not: takes a fresh one. Says so when the page has closed. */
export async function renewToken() {
  const answer = await ask('/own/today');
  if (!isPage(answer, '/own/today')) {
    throw new Error('refused');
  }
  const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('[name=csrf-token]');
  if (fresh) {
    document.querySelectorAll('[name=csrf-token]').forEach((field) => { field.value = fresh.value; });
  }
}

/** Without reception a page that is left cannot be opened again, since none of it is stored on the phone: so it stays, and says why. */
export function stayWithoutReception(status) {
  document.addEventListener('click', (event) => {
    if (event.target.closest('a[href^="/"]') && !navigator.onLine) {
      event.preventDefault();
      say(status, 'No reception.', 'This page stays open, since it could not be opened again now. Go on; what you fill in is kept on this phone.');
      status.scrollIntoView({ block: 'nearest' });
    }
  });
  window.addEventListener('beforeunload', (event) => {
    if (!navigator.onLine) {
      event.preventDefault();
    }
  });
}

/** All fields of a form but its token. */
export function fieldsOf(form) {
  return [...new FormData(form).entries()].filter(([name]) => name !== 'csrf-token');
}

/**
 * Removes what was kept for longer than the clinic takes it: nothing about a person stays on a phone for good. Days of ticks carry
 * their day as name, a report the moment it was last changed. Returns the days of ticks that never arrived.
 */
export function tidy() {
  const lost = [];
  try {
    Object.keys(localStorage).filter((key) => key.startsWith(PREFIX)).forEach((key) => {
      const store = kept(key.slice(PREFIX.length));
      const value = store.read() || {};
      if (value.changed) {
        if (daysSince(value.changed) > DAYS_KEPT) {
          store.write(null);
        }
        return;
      }
      const days = Object.keys(value);
      const old = days.filter((day) => daysSince(`${day}T12:00`) > DAYS_KEPT);
      old.forEach((day) => { delete value[day]; });
      if (old.length > 0 || days.length === 0) {
        store.write(Object.keys(value).length === 0 ? null : value);
      }
      lost.push(...old);
    });
  } catch {
    // no storage, nothing kept
  }
  return lost;
}
