// Ties a body chart to the rows of its form: a zone opens its row, a row colours its zone.
// The drawing holds every shape; this only switches attributes. Without it the list of zones does the same work.
(() => {
  const keys = { ArrowUp: "up", ArrowDown: "down", ArrowLeft: "left", ArrowRight: "right" };

  function connect(root) {
    const svg = root.querySelector("svg[data-prefix]");
    const rows = root.querySelector("[data-symptom-rows]");
    const template = root.querySelector("template[data-symptom-row]");
    const status = root.querySelector("[data-symptom-status]");
    if (!svg || !rows || !template) return;

    const prefix = svg.dataset.prefix;
    const ramp = svg.dataset.ramp.split(" ");
    const darkFrom = Number(svg.dataset.darkFrom);
    const zone = key => svg.querySelector(`[data-zone="${key}"]`);
    const row = key => rows.querySelector(`[data-row="${key}"]`);
    const show = (element, shown) => shown ? element.removeAttribute("display") : element.setAttribute("display", "none");

    function mark(key) {
      const shape = zone(key), line = row(key);
      if (!shape) return;
      const chosen = line?.querySelector("[data-pain-now]:checked")?.value;
      const pain = chosen === undefined || chosen === "not_asked" ? null : Number(chosen);
      const kinds = line ? [...line.querySelectorAll("[data-symptom-kind]:checked")] : [];
      const dark = pain !== null && pain >= darkFrom;
      const unsaid = Boolean(line) && kinds.length === 0 && pain !== 0;

      shape.querySelector(".bc-area").setAttribute("fill", line && pain !== null ? ramp[pain] : svg.dataset.skin);
      for (const pattern of shape.querySelectorAll(".bc-kind")) {
        pattern.setAttribute("fill", `url(#${prefix}-${pattern.dataset.kind}-${dark ? "paper" : "ink"})`);
        show(pattern, kinds.some(kind => kind.value === pattern.dataset.kind));
      }
      const edge = shape.querySelector(".bc-unsaid");
      edge.setAttribute("stroke", dark ? "#faf7f2" : "#1d2733");
      show(edge, unsaid);

      const disc = svg.querySelector(`[data-mark="${key}"]`);
      show(disc, Boolean(line));
      disc.querySelector("text").textContent = pain === null ? "?" : pain;
      const ring = disc.querySelector("circle");
      if (pain === null) ring.setAttribute("stroke-dasharray", "4 3"); else ring.removeAttribute("stroke-dasharray");
      for (const hint of svg.querySelectorAll(`[data-in="${key}"]`)) show(hint, !line);

      const amount = pain === null ? "pain not asked" : pain === 0 && kinds.length === 0 ? "no pain" : `pain ${pain} of 10`;
      const said = unsaid ? ["kind not said"] : kinds.map(kind => kind.dataset.symptomKind);
      const words = `${shape.dataset.place}: ${line ? [amount, ...said].join(", ") : "no mark"}`;
      shape.setAttribute("aria-label", words);
      shape.querySelector("title").textContent = words;
    }

    function stopAt(shape) {
      for (const other of svg.querySelectorAll('[data-zone][tabindex="0"]')) other.setAttribute("tabindex", "-1");
      shape.setAttribute("tabindex", "0");
    }

    function insert(key) {
      const shape = zone(key);
      const markup = template.innerHTML.replaceAll("zone-label", shape.dataset.label).replaceAll("zone-key", key);
      const holder = document.createElement("template");
      holder.innerHTML = markup;
      // rows stand in the order of the drawing, head to foot, as the page without script has them
      const order = Number(shape.dataset.order);
      const later = [...rows.querySelectorAll("[data-row]")].find(other => Number(zone(other.dataset.row).dataset.order) > order);
      rows.insertBefore(holder.content, later ?? null);
      rows.querySelector("[data-symptom-none]")?.setAttribute("hidden", "");
      say(`${shape.dataset.label} added.`);
    }

    function open(key) {
      stopAt(zone(key));
      if (!row(key)) insert(key);
      mark(key);
      const target = row(key);
      (target.querySelector("[data-pain-now]:checked") ?? target.querySelector("[data-pain-now]")).focus({ preventScroll: true });
      target.scrollIntoView({ block: "nearest" });
    }

    function remove(key) {
      row(key).remove();
      mark(key);
      if (!rows.querySelector("[data-row]")) rows.querySelector("[data-symptom-none]")?.removeAttribute("hidden");
      say(`${zone(key).dataset.label} removed.`);
      back(key);
    }

    function back(key) {
      stopAt(zone(key));
      zone(key).focus();
    }

    // a digit chooses its cell; 1 and then 0 within a moment is 10
    let last = { scale: null, digit: "", at: 0 };
    function type(radio, digit) {
      const joined = last.scale === radio.name && last.digit === "1" && digit === "0" && Date.now() - last.at < 1000;
      const cell = rows.querySelector(`input[name="${radio.name}"][value="${joined ? "10" : digit}"]`);
      last = { scale: radio.name, digit: joined ? "" : digit, at: Date.now() };
      cell.focus();
      cell.click();
    }

    function say(words) { if (status) status.textContent = words; }

    svg.addEventListener("click", event => {
      const key = event.target.closest("[data-zone]")?.dataset.zone ?? event.target.closest("[data-hit]")?.dataset.hit;
      if (key) open(key);
    });
    svg.addEventListener("keydown", event => {
      const shape = event.target.closest("[data-zone]");
      if (!shape || event.altKey || event.ctrlKey || event.metaKey) return;
      if (event.key === "Enter" || event.key === " ") {
        event.preventDefault();
        open(shape.dataset.zone);
      } else if (keys[event.key]) {
        event.preventDefault();
        const next = shape.dataset[keys[event.key]];
        if (next) back(next);
      }
    });
    svg.addEventListener("focusin", event => {
      const shape = event.target.closest("[data-zone]");
      if (shape) stopAt(shape);
    });
    rows.addEventListener("change", event => {
      const line = event.target.closest("[data-row]");
      if (line) mark(line.dataset.row);
    });
    rows.addEventListener("keydown", event => {
      const line = event.target.closest("[data-row]");
      if (line && event.key === "Escape") {
        event.preventDefault();
        back(line.dataset.row);
      } else if (event.target.type === "radio" && /^\d$/.test(event.key) && !event.altKey && !event.ctrlKey && !event.metaKey) {
        event.preventDefault();
        type(event.target, event.key);
      }
    });
    rows.addEventListener("click", event => {
      const button = event.target.closest("[data-symptom-remove]");
      if (button) {
        event.preventDefault();
        remove(button.closest("[data-row]").dataset.row);
      }
    });
    const add = root.querySelector("[data-symptom-add]");
    add?.addEventListener("click", event => {
      const chosen = root.querySelector("[data-symptom-list]").value;
      if (chosen && zone(chosen)) {
        event.preventDefault();
        open(chosen);
      }
    });
    for (const words of root.querySelectorAll("[data-with-script]")) words.removeAttribute("hidden");
    // a browser may bring back what was chosen before a reload
    for (const line of rows.querySelectorAll("[data-row]")) mark(line.dataset.row);
  }

  for (const root of document.querySelectorAll("[data-body-chart]")) connect(root);
})();
