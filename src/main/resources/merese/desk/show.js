// Goes from one slide to the next without leaving the full screen: the next page is fetched and put
// in the place of this one. Without this script the links do.
"use strict";

const fetched = new Map();

function text(address) {
  if (!fetched.has(address)) {
    fetched.set(address, fetch(address).then((answer) => {
      if (!answer.ok) {
        throw new Error(answer.statusText);
      }
      return answer.text();
    }));
    fetched.get(address).catch(() => fetched.delete(address));
  }
  return fetched.get(address);
}

let going = 0;

async function go(address) {
  if (!address) {
    return;
  }
  const number = ++going;
  let page;
  try {
    page = new DOMParser().parseFromString(await text(address), "text/html");
  } catch {
    location.href = address;
    return;
  }
  if (number !== going) {
    return;
  }
  document.getElementById("slide").replaceWith(page.getElementById("slide"));
  document.getElementById("foot").replaceWith(page.getElementById("foot"));
  document.title = page.title;
  history.replaceState(null, "", address);
  wake();
  scroller().scrollTo(0, 0);
  document.querySelector("#slide h1").focus({ preventScroll: true });
}

const link = (relation) => document.querySelector('#foot a[rel="' + relation + '"]');
const next = () => link("next") && link("next").getAttribute("href");
const back = () => link("prev") && link("prev").getAttribute("href");

// In a wide window the slide itself scrolls, above its foot; in a narrow one the page does.
function scroller() {
  const slide = document.getElementById("slide");
  return getComputedStyle(slide).overflowY === "auto" ? slide : document.documentElement;
}

function below() {
  const part = scroller();
  return part.scrollHeight - part.clientHeight - part.scrollTop;
}

function overflows() {
  const parts = [scroller(), ...document.querySelectorAll(".slide-words, .slide-side")];
  return parts.some((part) => part.scrollHeight > part.clientHeight + 1);
}

function key(event) {
  if (event.ctrlKey || event.altKey || event.metaKey) {
    return;
  }
  const onControl = event.target.closest("a, button") && (event.key === " " || event.key === "Enter");
  if (onControl) {
    return;
  }
  switch (event.key) {
    case "ArrowDown":
      if (below() > 1) {
        scroller().scrollBy(0, scroller().clientHeight * 0.8); // there is more of this slide below
        break;
      }
      go(next());
      break;
    case "ArrowUp":
      if (scroller().scrollTop > 0) {
        scroller().scrollBy(0, -scroller().clientHeight * 0.8);
        break;
      }
      go(back());
      break;
    case "ArrowRight":
    case "PageDown":
    case "Enter":
      go(next());
      break;
    case " ":
      go(event.shiftKey ? back() : next());
      break;
    case "ArrowLeft":
    case "PageUp":
      go(back());
      break;
    case "Home":
      go(link("prev") && link("prev").dataset.first);
      break;
    case "End":
      go(link("next") && link("next").dataset.last);
      break;
    case "Escape":
      if (!document.fullscreenElement) {
        location.href = document.getElementById("leave").href;
      }
      break;
    default:
      return;
  }
  event.preventDefault();
}

async function full() {
  try {
    if (document.fullscreenElement) {
      await document.exitFullscreen();
    } else {
      await document.documentElement.requestFullscreen();
    }
  } catch {
    // a browser that has no full screen still shows the slide
  }
}

// What does not fit on the screen is set smaller, down to a size that can still be read.
function fit() {
  const slide = document.getElementById("slide");
  let size = 1;
  slide.style.fontSize = "";
  while (overflows() && size > 0.6) {
    size -= 0.05;
    slide.style.fontSize = size + "em";
  }
}

function wake() {
  fit();
  const button = document.querySelector("[data-full]");
  button.hidden = !document.fullscreenEnabled;
  button.textContent = document.fullscreenElement ? "Leave full screen" : "Full screen";
  button.addEventListener("click", full);
  document.querySelectorAll("#foot a[rel]").forEach((each) =>
    each.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) {
        return;
      }
      event.preventDefault();
      go(each.getAttribute("href"));
    }));
  if (next()) {
    text(next()).then((page) => {
      const parsed = new DOMParser().parseFromString(page, "text/html");
      parsed.querySelectorAll("#slide img").forEach((each) => {
        new Image().src = each.getAttribute("src");
      });
    }).catch(() => {});
  }
}

document.addEventListener("keydown", key);
addEventListener("resize", fit);
document.addEventListener("fullscreenchange", () => {
  document.querySelector("[data-full]").textContent =
    document.fullscreenElement ? "Leave full screen" : "Full screen";
});
wake();
