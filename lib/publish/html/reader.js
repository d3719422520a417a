// What the reader's file does by itself: keeps ticks and own values, finds words, and saves a copy that carries both.
// It runs in any browser from a file, without a network; without it the file is still the whole procedure.
(() => {
  const page = document.documentElement;
  const key = `witness-mark ${page.dataset.procedure}`;
  const inFile = document.getElementById("kept");
  const fields = [...document.querySelectorAll("[data-keep]")];
  const steps = [...document.querySelectorAll("section.step")];
  const say = (name, words) => {
    document.querySelector(`[data-says="${name}"]`).textContent = words;
  };

  const read = (text) => {
    try {
      const kept = JSON.parse(text);
      return typeof kept.at === "string" && typeof kept.values === "object" ? kept : { at: "", values: {} };
    } catch {
      return { at: "", values: {} };
    }
  };
  const stored = () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  };
  // The later of the two has its way where both know a field.
  const [earlier, later] = [read(inFile.textContent), read(stored())].sort((a, b) => (a.at < b.at ? -1 : 1));
  const kept = { at: later.at, values: { ...earlier.values, ...later.values } };

  const readField = (field) => (field.type === "checkbox" ? field.checked : field.value);
  const writeField = (field, value) => {
    if (field.type === "checkbox") field.checked = value === true;
    else field.value = typeof value === "string" ? value : "";
  };
  for (const field of fields) {
    if (field.dataset.keep in kept.values) writeField(field, kept.values[field.dataset.keep]);
  }

  const tell = () => {
    const done = steps.filter((step) => step.querySelector("[data-keep^='tick/']").checked);
    const next = steps.find((step) => !done.includes(step));
    say("done", `${done.length} of ${steps.length} steps done.`);
    const onward = document.querySelector("[data-onward]");
    onward.hidden = !next || done.length === 0;
    if (next) {
      onward.href = `#${next.id}`;
      onward.textContent = `Go on at ${next.querySelector("h3").textContent}`;
    }
  };
  const keep = () => {
    kept.at = new Date().toISOString();
    try {
      localStorage.setItem(key, JSON.stringify(kept));
      say("kept", "");
    } catch {
      say("kept", "This browser keeps nothing for files. Save a copy before you close it.");
    }
  };
  const changed = ({ target }) => {
    if (!target.dataset?.keep) return;
    kept.values[target.dataset.keep] = readField(target);
    keep();
    tell();
  };
  document.addEventListener("input", changed);
  document.addEventListener("change", changed);

  document.querySelector("[data-do='copy']").addEventListener("click", () => {
    // "<" is written so that no text of the reader's can end the block it stands in.
    inFile.textContent = JSON.stringify(kept).replaceAll("<", "\\u003c");
    for (const field of fields) {
      if (field.type === "checkbox") field.toggleAttribute("checked", field.checked);
      else field.setAttribute("value", field.value);
    }
    const file = new Blob([`<!doctype html>\n${page.outerHTML}\n`], { type: "text/html" });
    const link = document.createElement("a");
    link.href = URL.createObjectURL(file);
    link.download = `${document.title}, ${new Date().toISOString().slice(0, 10)}.html`;
    link.click();
    URL.revokeObjectURL(link.href);
  });

  const search = document.querySelector("[data-do='find']");
  search.addEventListener("input", () => {
    const words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    let shown = 0;
    for (const step of steps) {
      const text = step.textContent.toLowerCase();
      step.hidden = !words.every((word) => text.includes(word));
      if (!step.hidden) shown += 1;
    }
    say("found", words.length === 0 ? "" : `${shown} of ${steps.length} steps have it.`);
  });

  document.querySelector(".reader").hidden = false;
  tell();
})();
