// What pages do beyond what a browser does by itself. Every page works without it, but for
// suggestions and for keeping what was typed.
"use strict";

const token = () => document.querySelector('meta[name="merese-token"]').content;

// --- Every change that htmx sends brings the token along. ---
document.addEventListener("htmx:configRequest", (event) => {
  event.detail.headers["X-Merese-Token"] = token();
});
// A page that answers with what was wrong is shown, not thrown away.
document.addEventListener("htmx:beforeSwap", (event) => {
  if (event.detail.xhr.status === 422) {
    event.detail.shouldSwap = true;
    event.detail.isError = false;
  }
});

// --- Suggestions: a combobox as the ARIA Authoring Practices describe it. ---
function suggesting(box) {
  const input = box.querySelector("input");
  const list = box.querySelector('[role="listbox"]');
  const field = box.dataset.field || "term";
  let asked = 0;
  let shown = 0;
  let at = -1;

  const close = () => {
    list.hidden = true;
    at = -1;
    input.setAttribute("aria-expanded", "false");
    input.removeAttribute("aria-activedescendant");
  };
  const options = () => [...list.querySelectorAll('[role="option"]')];
  const mark = (index) => {
    const all = options();
    at = all.length === 0 ? -1 : (index + all.length) % all.length;
    all.forEach((option, i) => option.setAttribute("aria-selected", String(i === at)));
    if (at >= 0) {
      input.setAttribute("aria-activedescendant", all[at].id);
      all[at].scrollIntoView({ block: "nearest" });
    }
  };
  const take = (option) => {
    const key = field === "source" && option.dataset.id;
    if (option.dataset.kind === "source" && field === "term") {
      location.href = "/shelf/" + encodeURIComponent(option.dataset.id);
      return;
    }
    input.value = key || option.dataset.text;
    close();
    input.dispatchEvent(new Event("change", { bubbles: true }));
    if (input.form && input.form.hasAttribute("data-at-once")) {
      input.form.requestSubmit();
    }
  };
  const ask = async () => {
    const typed = input.value.trim();
    const number = ++asked;
    if (typed === "") {
      close();
      return;
    }
    const answer = await fetch(
      box.dataset.suggest + "?" + new URLSearchParams({ [field]: typed }));
    if (!answer.ok || number < shown || document.activeElement !== input) {
      return;
    }
    shown = number;
    const text = await answer.text();
    if (number < shown) {
      return;
    }
    list.innerHTML = text; // the desk's own page, escaped there
    options().forEach((option, i) => (option.id = input.id + "-option-" + i));
    list.hidden = options().length === 0;
    at = -1;
    input.setAttribute("aria-expanded", String(!list.hidden));
  };

  input.addEventListener("input", ask);
  input.addEventListener("keydown", (event) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      if (list.hidden) {
        ask();
      } else {
        mark(at + (event.key === "ArrowDown" ? 1 : at < 0 ? 0 : -1));
      }
      event.preventDefault();
    } else if (event.key === "Enter" && at >= 0 && !list.hidden) {
      take(options()[at]);
      event.preventDefault();
    } else if (event.key === "Escape" && !list.hidden) {
      close();
      event.preventDefault();
    }
  });
  input.addEventListener("blur", () => setTimeout(close, 150));
  list.addEventListener("mousedown", (event) => {
    const option = event.target.closest('[role="option"]');
    if (option) {
      take(option);
      event.preventDefault();
    }
  });
}

// --- What is typed into a form is kept in this browser until the form is sent. ---
function keeping(form) {
  const per = form.dataset.keepPer;
  const place = () =>
    "merese:" + form.dataset.keep + (per ? ":" + form.elements[per].value.trim() : "");
  let last = place();
  const fields = () => [...form.elements].filter(
    (field) => field.name && field.name !== "token" && !["hidden", "file", "submit", "button"].includes(field.type));
  const isChoice = (field) => field.type === "checkbox" || field.type === "radio";
  const forget = () => {
    sessionStorage.removeItem(last);
    last = place();
    sessionStorage.removeItem(last);
  };
  const keep = () => {
    const kept = fields().map((field) =>
      [field.name, isChoice(field) ? field.checked : field.value, field.value]);
    try {
      if (place() !== last) {
        forget();
      }
      sessionStorage.setItem(last, JSON.stringify(kept));
    } catch {
      // a browser that keeps nothing still sends forms
    }
  };
  const kept = sessionStorage.getItem(last);
  if (kept && !form.hasAttribute("data-refused")) {
    putIn(form, fields(), JSON.parse(kept), isChoice, forget);
  }
  form.addEventListener("input", keep);
  form.addEventListener("submit", forget);
}

/** What the address says goes before what was kept; what is put in is said. */
function putIn(form, fields, kept, isChoice, forget) {
  const address = new URLSearchParams(location.search);
  const left = [...kept];
  const changed = [];
  for (const field of fields) {
    const at = left.findIndex(([name]) => name === field.name);
    if (at < 0) {
      continue;
    }
    const [[, value]] = left.splice(at, 1);
    if (address.has(field.name) || (isChoice(field) ? field.checked : field.value) === value) {
      continue;
    }
    if (isChoice(field)) {
      field.checked = value;
    } else {
      field.value = value;
    }
    if (!isChoice(field) || value) {
      changed.push(field);
    }
  }
  if (changed.length === 0) {
    return;
  }
  const words = changed.filter((field) => !isChoice(field) && field.value.trim() !== "")
    .map((field) => {
      const text = field.value.trim().replace(/\s+/g, " ");
      return "“" + (text.length > 60 ? text.slice(0, 60) + "…" : text) + "”";
    });
  const where = form.dataset.keepAt && kept.find(([name]) => name === form.dataset.keepAt);
  const elsewhere = where && where[1] && where[1] !== form.elements[where[0]].value;
  const line = document.createElement("p");
  line.className = "left-over";
  line.setAttribute("role", "status");
  const clear = document.createElement("button");
  clear.type = "button";
  clear.textContent = "Clear it";
  clear.addEventListener("click", () => {
    form.reset();
    forget();
    line.remove();
    changed[0].focus();
  });
  form.prepend(line);
  line.append("Left over from before: " + (words.join(", ") || "what was chosen")
    + (elsewhere ? ", typed at " + where[1] : "") + ". ", clear);
}

// --- Pictures enlarge where they are, one after another. ---
function enlarging(link) {
  link.addEventListener("click", (event) => {
    event.preventDefault();
    enlarged(link);
  });
}

function enlarged(first) {
  const all = [...document.querySelectorAll("a[data-enlarge]")];
  let at = all.indexOf(first);
  const dialog = document.createElement("dialog");
  dialog.className = "enlarged";
  const picture = document.createElement("img");
  const caption = document.createElement("p");
  const full = document.createElement("a");
  full.textContent = "Full size";
  const button = (text, does) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = text;
    made.addEventListener("click", does);
    return made;
  };
  const show = () => {
    const link = all[at];
    const words = link.closest("figure")?.querySelector("figcaption");
    picture.src = full.href = link.href;
    picture.alt = link.querySelector("img").alt;
    caption.textContent = (words ? words.textContent : "")
      + (all.length > 1 ? ` (${at + 1} of ${all.length})` : "");
    dialog.setAttribute("aria-label", picture.alt);
  };
  const step = (by) => {
    at = (at + by + all.length) % all.length;
    show();
  };
  const row = document.createElement("p");
  row.className = "turning-pictures";
  caption.setAttribute("aria-live", "polite");
  if (all.length > 1) {
    row.append(button("Previous", () => step(-1)), button("Next", () => step(1)));
    dialog.addEventListener("keydown", (event) => {
      const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
      if (by && !event.ctrlKey && !event.altKey && !event.metaKey) {
        event.preventDefault();
        step(by);
      }
    });
  }
  row.append(full, button("Close", () => dialog.close()));
  dialog.append(picture, caption, row);
  dialog.addEventListener("close", () => {
    dialog.remove();
    all[at].focus();
  });
  show();
  document.body.append(dialog);
  dialog.showModal();
}

// --- A file that is dropped on a form goes into its field. ---
function dropping(zone) {
  const input = zone.querySelector('input[type="file"]');
  zone.addEventListener("dragover", (event) => {
    event.preventDefault();
    zone.classList.add("over");
  });
  zone.addEventListener("dragleave", () => zone.classList.remove("over"));
  zone.addEventListener("drop", (event) => {
    event.preventDefault();
    zone.classList.remove("over");
    if (event.dataTransfer.files.length > 0) {
      input.files = event.dataTransfer.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    }
  });
}

// --- Copying, as text and as rich text. ---
function copying(button) {
  button.addEventListener("click", async () => {
    const from = document.getElementById(button.dataset.copy);
    const plain = new Blob([from.innerText], { type: "text/plain" });
    const rich = new Blob([from.innerHTML], { type: "text/html" });
    const said = button.textContent;
    try {
      await navigator.clipboard.write([new ClipboardItem(
        button.dataset.rich === undefined
          ? { "text/plain": plain } : { "text/plain": plain, "text/html": rich })]);
      button.textContent = "Copied";
    } catch {
      getSelection().selectAllChildren(from);
      button.textContent = "Selected: copy it with your keyboard";
    }
    setTimeout(() => (button.textContent = said), 2500);
  });
}

function wake(root) {
  root.querySelectorAll("[data-suggest]").forEach(suggesting);
  root.querySelectorAll("form[data-keep]").forEach(keeping);
  root.querySelectorAll("a[data-enlarge]").forEach(enlarging);
  root.querySelectorAll("[data-drop]").forEach(dropping);
  root.querySelectorAll("[data-copy]").forEach(copying);
  root.querySelectorAll("[data-print]").forEach((button) =>
    button.addEventListener("click", () => print()));
}

// --- Paper can't be opened: what is closed on the screen is printed open. ---
let closed = [];
addEventListener("beforeprint", () => {
  closed = [...document.querySelectorAll("main details:not([open])")];
  closed.forEach((each) => (each.open = true));
});
addEventListener("afterprint", () => {
  closed.forEach((each) => (each.open = false));
  closed = [];
});

// --- On a narrow screen a row of the band is pushed sideways: to where one is. ---
document.querySelectorAll(".tabs [aria-current]").forEach((here) => {
  const row = here.closest("ul");
  row.scrollLeft = here.offsetLeft - row.offsetLeft - (row.clientWidth - here.offsetWidth) / 2;
});

wake(document);
document.addEventListener("htmx:afterSettle", (event) => wake(event.target));

// --- What was wrong is what is seen first, wherever in the page it is. ---
{
  const wrong = document.querySelector("[data-refused] [autofocus], #problem[autofocus]");
  const problem = document.getElementById("problem");
  if (wrong && problem) {
    for (let part = wrong.closest("details"); part; part = part.parentElement.closest("details")) {
      part.open = true;
    }
    wrong.focus({ preventScroll: true });
    problem.scrollIntoView({ block: "start" });
    if (wrong.getBoundingClientRect().bottom > innerHeight * 0.9) {
      wrong.scrollIntoView({ block: "center" });
    }
  }
}
