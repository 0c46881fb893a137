// The form for notes: what stands beside it follows the page that is typed, and a choice of
// meanings takes one key. All of it can be done without this, with one more press of Enter.
"use strict";

(() => {
  const form = document.querySelector("form.note-form");

  // --- A key for each choice. ---
  document.querySelectorAll("[data-choosing]").forEach((choosing) => {
    choosing.addEventListener("keydown", (event) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.key.length !== 1) {
        return;
      }
      const label = choosing.querySelector('label[data-key="' + CSS.escape(event.key) + '"]');
      if (label) {
        const input = label.querySelector("input");
        input.checked = true;
        input.focus();
        input.dispatchEvent(new Event("input", { bubbles: true }));
        event.preventDefault();
      }
    });
  });

  // --- Several lines take Enter; with Ctrl it sends. ---
  document.querySelectorAll("form.note-form textarea, form.list-form textarea").forEach((area) =>
    area.addEventListener("keydown", (event) => {
      if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) {
        event.preventDefault();
        area.form.requestSubmit(area.form.querySelector("button.first"));
      }
    }));

  if (!form || form.id === "list-form") {
    return;
  }
  const field = (name) => form.elements[name];
  const beside = document.getElementById("beside");

  // --- What the address says goes before what was typed on another page. ---
  const address = new URLSearchParams(location.search);
  if (!form.hasAttribute("data-refused") && location.search) {
    ["source", "at"].forEach((name) => {
      if (address.has("source")) {
        field(name).value = field(name).defaultValue;
      }
    });
  }

  // --- What stands beside follows the source and the page. ---
  const follow = async () => {
    const source = field("source").value.trim();
    if (source === "") {
      return;
    }
    const asked = { source, at: field("at").value, open: field("open").value, by: field("by").value };
    if (beside.querySelector(".beside-inner")?.dataset.source === source) {
      asked.seen = field("seen").value;
    }
    const answer = await fetch("/note/beside?" + new URLSearchParams(asked));
    if (!answer.ok) {
      return; // it is said when the form is sent
    }
    beside.innerHTML = await answer.text(); // the desk's own page, escaped there
    const inner = beside.querySelector(".beside-inner");
    if (!inner) {
      return;
    }
    field("source").value = inner.dataset.source;
    field("open").value = inner.dataset.at;
    field("seen").value = inner.dataset.seen;
    document.querySelector("#term").closest("[data-suggest]").dataset.suggest =
      "/note/terms/" + encodeURIComponent(inner.dataset.source);
    const shown = new URLSearchParams({ source: inner.dataset.source, at: field("at").value });
    if (inner.dataset.seen) {
      shown.set("seen", inner.dataset.seen);
    }
    history.replaceState(null, "", "/note?" + shown);
    wake(beside);
  };
  field("source").addEventListener("change", follow);
  field("at").addEventListener("change", follow);
  if (!beside.querySelector(".beside-inner")) {
    follow(); // what was typed before, and kept, names a source
  }

  // --- What came back with another page is kept for the next, as what is typed is. ---
  if (form.hasAttribute("data-turned")) {
    form.dispatchEvent(new Event("input"));
  }

  // --- The keys that turn the page. ---
  form.addEventListener("keydown", (event) => {
    const id = { PageDown: "note-next", PageUp: "note-back" }[event.key];
    const link = id && event.altKey && document.getElementById(id);
    if (link) {
      event.preventDefault();
      link.click();
    }
  });

  // --- A photograph is shown as soon as it is chosen or dropped. ---
  const preview = form.querySelector(".preview");
  field("photo").addEventListener("change", () => {
    const file = field("photo").files[0];
    preview.hidden = !file;
    if (file) {
      form.querySelector("details.more").open = true;
      preview.src = URL.createObjectURL(file);
      preview.alt = file.name;
    }
  });

  // --- What was wrong is what is seen first. ---
  const wrong = document.querySelector("[aria-invalid=true]") ||
    (form.hasAttribute("data-refused") && document.querySelector("#problem[tabindex]"));
  if (wrong) {
    wrong.focus();
  }
})();
