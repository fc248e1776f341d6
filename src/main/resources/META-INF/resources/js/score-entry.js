// Keying in a filled-in form: a finished answer moves on to the next box, and how much is answered is told as it grows.
// Without it the same boxes are walked with Tab and the server tells the rest.
(() => {
  const boxes = [...document.querySelectorAll("input[data-min][data-max]")];
  const allowed = (box, value) => Number.isInteger(value) && value >= Number(box.dataset.min) && value <= Number(box.dataset.max);

  // another digit could still make it larger and keep it allowed
  const open = (box, text) => text === "" || text === "-" || [...Array(10).keys()].some(d => text !== "0" && allowed(box, Number(text + d)));

  function next(box, rest) {
    const following = boxes[boxes.indexOf(box) + 1] ?? box.form.querySelector("button[type=submit]");
    following.focus();
    if (rest && following.matches("input")) {
      following.value = rest;
      typed(following);
    } else if (following.matches("input")) {
      following.select();
    }
  }

  function typed(box) {
    const text = box.value.trim().replace("\u2212", "-");
    if (!/^-?\d*$/.test(text)) return;
    if (allowed(box, Number(text)) && text !== "" && !open(box, text)) {
      next(box, "");
    } else if (text.length > 1 && !allowed(box, Number(text)) && allowed(box, Number(text.slice(0, -1)))) {
      // 1 stands for 1 or the start of 10: when the next digit cannot belong to it, it belongs to the next box
      const rest = text.slice(-1);
      box.value = text.slice(0, -1);
      next(box, rest);
    }
    tell(box.form);
  }

  function tell(form) {
    const words = form.querySelector("[data-answered]");
    if (!words) return;
    const own = boxes.filter(box => box.form === form);
    const count = some => some.filter(box => box.value.trim() !== "").length;
    words.textContent = `${count(own)} of ${own.length} answered`;
    for (const need of form.querySelectorAll("[data-need]")) {
      const part = own.slice(Number(need.dataset.first) - 1, Number(need.dataset.last));
      const missing = Number(need.dataset.need) - count(part);
      need.querySelector("[data-state]").textContent = missing > 0 ? `${missing} more needed` : "enough for a score";
    }
  }

  for (const box of boxes) {
    box.addEventListener("input", event => { if (!event.isComposing && !event.inputType?.startsWith("delete")) typed(box); else tell(box.form); });
    box.addEventListener("keydown", event => {
      const at = boxes.indexOf(box);
      const to = event.key === "ArrowDown" || event.key === "Enter" ? boxes[at + 1] : event.key === "ArrowUp" ? boxes[at - 1]
        : event.key === "Backspace" && box.value === "" ? boxes[at - 1] : null;
      if (to) {
        event.preventDefault();
        to.focus();
        to.select();
      }
    });
  }
  new Set(boxes.map(box => box.form)).forEach(tell);
})();
