// The arrow keys in the diary: up and down within a column, left and right to the nearest time beside, Page up and Page down to the
// day or week before and after, Home to today. Without this script the Tab key reaches everything.

const diary = document.querySelector('[data-diary]');
const columns = diary ? [...diary.querySelectorAll('[data-col]')].map((col) => [...col.querySelectorAll('[data-slot]')]) : [];
const at = (slot) => Number(slot.closest('[data-from]').dataset.from);

function beside(slot, column, step) {
  for (let next = column + step; next >= 0 && next < columns.length; next += step) {
    if (columns[next].length > 0) {
      return columns[next].reduce((best, one) => (Math.abs(at(one) - at(slot)) < Math.abs(at(best) - at(slot)) ? one : best));
    }
  }
  return null;
}

function turn(way) {
  const link = document.querySelector(`[data-way="${way}"]`);
  if (link) {
    link.click();
  }
}

const ways = { PageUp: 'before', PageDown: 'after', Home: 'today' };

if (diary) {
  diary.parentElement.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) {
      return;
    }
    if (ways[event.key]) {
      event.preventDefault();
      turn(ways[event.key]);
      return;
    }
    const slot = event.target.closest('[data-slot]');
    const column = columns.findIndex((slots) => slots.includes(slot));
    const row = column < 0 ? -1 : columns[column].indexOf(slot);
    const first = columns.flat()[0];
    const goal = column < 0 ? (event.key === 'ArrowDown' ? first : null) : {
      ArrowDown: columns[column][row + 1], ArrowUp: columns[column][row - 1],
      ArrowRight: beside(slot, column, 1), ArrowLeft: beside(slot, column, -1),
    }[event.key];
    if (goal) {
      event.preventDefault();
      goal.focus();
    }
  });
}
