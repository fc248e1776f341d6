// What every page shares: focus on what needs it, the way to the finder, and walking through rows of hits.
// Every page works without this script.

const summary = document.querySelector('[data-focus]');
if (summary) {
  summary.focus();
}

document.addEventListener('keydown', (event) => {
  const typing = event.target.closest('input, textarea, select, [contenteditable]');
  if (event.key === '/' && !typing && !event.ctrlKey && !event.metaKey && !event.altKey) {
    const find = document.getElementById('q') || document.getElementById('find');
    if (find) {
      event.preventDefault();
      find.focus();
      find.select();
    }
  }
});

document.addEventListener('keydown', (event) => {
  const finder = event.target.closest('.finder');
  if (!finder || !['ArrowDown', 'ArrowUp', 'Escape', 'Enter'].includes(event.key)) {
    return;
  }
  const box = finder.querySelector('input');
  const links = [...finder.querySelectorAll('[data-walk] a.link-name')];
  const at = links.indexOf(document.activeElement);
  if (event.key === 'Escape') {
    box.value = '';
    box.focus();
    box.dispatchEvent(new Event('input', { bubbles: true }));
    event.preventDefault();
  } else if (event.key === 'Enter' && document.activeElement === box && links.length > 0) {
    links[0].click();
    event.preventDefault();
  } else if (event.key === 'ArrowDown' && links.length > 0) {
    links[Math.min(at + 1, links.length - 1)].focus();
    event.preventDefault();
  } else if (event.key === 'ArrowUp' && links.length > 0) {
    (at <= 0 ? box : links[at - 1]).focus();
    event.preventDefault();
  }
});
