// Draws what the table of a page holds, so that drawing and table can't disagree. Global: d3.
"use strict";

(() => {
  const figure = document.getElementById("drawing");
  if (!figure) {
    return;
  }
  const canvas = figure.querySelector(".canvas");
  const table = document.getElementById(figure.dataset.from);
  const name = figure.dataset.name;
  const NARROW = 560;
  const held = getComputedStyle(canvas);
  figure.hidden = false; // what is hidden has no width
  const inner = Math.floor(canvas.clientWidth
    - parseFloat(held.paddingLeft) - parseFloat(held.paddingRight));

  // The colours are looked up anew when the reader's light changes; a class names each in the style.
  const svgOf = (width, height, title, description) => {
    const svg = d3.select(canvas).append("svg")
      .attr("xmlns", "http://www.w3.org/2000/svg")
      .attr("width", width).attr("height", height).attr("viewBox", `0 0 ${width} ${height}`)
      .attr("role", "group").attr("aria-labelledby", "drawing-title drawing-description");
    svg.append("title").attr("id", "drawing-title").text(title);
    svg.append("desc").attr("id", "drawing-description").text(description);
    return svg;
  };

  const measure = (() => {
    const context = document.createElement("canvas").getContext("2d");
    return (text, size = 13) => {
      context.font = `${size}px ${getComputedStyle(canvas).fontFamily}`;
      return context.measureText(text).width;
    };
  })();

  /** Text that fits a width, with an ellipsis where it was cut; the whole stands in its title. */
  const fitted = (text, width, size) => {
    if (measure(text, size) <= width) {
      return text;
    }
    let end = text.length;
    while (end > 1 && measure(text.slice(0, end) + "…", size) > width) {
      end--;
    }
    return text.slice(0, end).trimEnd() + "…";
  };

  /** Lines of at most a width. */
  const lines = (text, width, size) => {
    const made = [];
    let line = "";
    for (const word of text.split(" ")) {
      const longer = line === "" ? word : line + " " + word;
      if (line !== "" && measure(longer, size) > width) {
        made.push(line);
        line = word;
      } else {
        line = longer;
      }
    }
    made.push(line);
    return made.map((each) => fitted(each, width, size));
  };

  /** Lines of at most a width that end between two parts. */
  const linesOf = (parts, width, size) => {
    const made = [""];
    for (const part of parts) {
      const longer = made.at(-1) === "" ? part : made.at(-1) + "; " + part;
      if (made.at(-1) !== "" && measure(longer, size) > width) {
        made.push(part);
      } else {
        made[made.length - 1] = longer;
      }
    }
    return made.flatMap((each) => lines(each, width, size));
  };

  // --- Concordance: a square for each source and concept. ---
  function concordance() {
    const concepts = [...table.querySelectorAll("[data-column]")].map((th) => th.textContent);
    const ids = [...table.querySelectorAll("[data-column]")].map((th) => th.dataset.column);
    const rows = [...table.querySelectorAll("[data-row]")].map((tr) => ({
      key: tr.dataset.row,
      reference: tr.dataset.reference,
      cells: [...tr.querySelectorAll("td")].map((td, i) => ({
        concept: ids[i], label: concepts[i], stand: td.dataset.stand, words: td.dataset.words,
        letter: td.dataset.letter, href: td.dataset.href,
      })),
    }));
    const small = canvas.clientWidth < NARROW;
    const size = 28;
    const left = Math.min(small ? Math.max(130, Math.min(240, canvas.clientWidth - concepts.length * size - 90)) : 240,
      20 + d3.max(rows, (row) => measure(row.reference)));
    const slant = Math.PI / 3.2;
    const longest = Math.min(220, d3.max(concepts, (each) => measure(each)));
    const top = Math.ceil(longest * Math.sin(slant)) + 30;
    const right = Math.ceil(longest * Math.cos(slant)) + 28;
    const width = left + concepts.length * size + right;
    // Saved by itself, the drawing has to say what its letters are.
    const key = linesOf([...figure.querySelectorAll(".legend li")]
      .map((li) => li.textContent.trim().replace(/\s+/g, " ")), width - 24, 12);
    const foot = top + rows.length * size + 22;
    const svg = svgOf(width, foot + key.length * 16,
      "Concordance: " + table.caption.textContent,
      "One row a source, by year; one column a concept. A letter in each square says how the source"
      + " stands to the concept: P pictured, N named in words only, D described without a name,"
      + " K a narrower kind, X says not shown, A apart, 0 checked without a note, none not checked.");
    patterns(svg);
    key.forEach((line, i) => svg.append("text").attr("class", "soft").attr("aria-hidden", "true")
      .attr("x", 12).attr("y", foot + i * 16).text(line));
    const heads = svg.append("g").attr("aria-hidden", "true");
    concepts.forEach((label, i) => {
      const x = left + i * size + size / 2;
      heads.append("text").attr("class", "ink")
        .attr("transform", `translate(${x + 3},${top - 8}) rotate(${-slant * 180 / Math.PI})`)
        .text(fitted(label, 220)).append("title").text(label);
    });
    const grid = svg.append("g").attr("role", "grid")
      .attr("aria-label", "Sources by concepts").attr("aria-rowcount", rows.length)
      .attr("aria-colcount", concepts.length);
    const all = [];
    rows.forEach((row, r) => {
      const g = grid.append("g").attr("role", "row")
        .attr("transform", `translate(0,${top + r * size})`);
      g.append("text").attr("class", "ink").attr("role", "rowheader")
        .attr("x", left - 8).attr("y", size / 2 + 4.5)
        .attr("text-anchor", "end").text(fitted(row.reference, left - 16))
        .append("title").text(row.reference);
      all.push(row.cells.map((cell, c) => {
        const a = g.append("g").attr("role", "gridcell").append("a")
          .attr("class", "cell stand-" + cell.stand).attr("href", cell.href)
          .attr("tabindex", r === 0 && c === 0 ? 0 : -1)
          .attr("data-source", row.key).attr("data-concept", cell.concept)
          .attr("data-stand", cell.stand)
          .attr("aria-label", `${row.reference}, ${cell.label}: ${cell.words}`);
        a.append("title").text(`${row.reference}, ${cell.label}: ${cell.words}`);
        a.append("rect").attr("class", "square").attr("x", left + c * size + 1).attr("y", 1)
          .attr("width", size - 2).attr("height", size - 2).attr("rx", 2);
        if (["SAYS_NOT_SHOWN", "CHECKED", "NARROWER", "APART"].includes(cell.stand)) {
          a.append("rect").attr("class", "pattern").attr("x", left + c * size + 1).attr("y", 1)
            .attr("width", size - 2).attr("height", size - 2).attr("rx", 2)
            .attr("fill", `url(#pattern-${cell.stand})`).attr("pointer-events", "none");
        }
        a.append("text").attr("class", "mark").attr("x", left + c * size + size / 2)
          .attr("y", size / 2 + 4.5).attr("text-anchor", "middle").text(cell.letter);
        return a.node();
      }));
    });
    legendPatterns();
    roving(all);
    grid.on("click", (event) => {
      const cell = event.target.closest("a.cell");
      if (cell && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
        event.preventDefault();
        notesOf(cell);
      }
    });
  }

  function patterns(svg) {
    const defs = svg.append("defs");
    const pattern = (id, path) => defs.append("pattern").attr("id", "pattern-" + id)
      .attr("width", 6).attr("height", 6).attr("patternUnits", "userSpaceOnUse")
      .append("path").attr("d", path).attr("class", "hatch");
    pattern("SAYS_NOT_SHOWN", "M0,6 L6,0 M-1,1 L1,-1 M5,7 L7,5");
    pattern("CHECKED", "M0,3 H6");
    pattern("NARROWER", "M3,0 V6");
    pattern("APART", "M3,2.2 V3.8 M2.2,3 H3.8");
  }

  /** The legend shows what the squares do. */
  function legendPatterns() {
    for (const key of figure.querySelectorAll(".legend .key")) {
      if (document.getElementById("pattern-" + key.dataset.stand)) {
        d3.select(key).insert("svg", ":first-child").attr("class", "pattern")
          .append("rect").attr("width", "100%").attr("height", "100%")
          .attr("fill", `url(#pattern-${key.dataset.stand})`);
      }
    }
  }

  /** The Tab key stops once; the arrow keys go on, as in the ARIA pattern for a grid. */
  function roving(cells) {
    const go = (from, r, c) => {
      const to = cells[r] && cells[r][c];
      if (to) {
        from.setAttribute("tabindex", "-1");
        to.setAttribute("tabindex", "0");
        to.focus();
      }
    };
    cells.forEach((row, r) => row.forEach((cell, c) => cell.addEventListener("keydown", (event) => {
      const steps = {
        ArrowRight: [r, c + 1], ArrowLeft: [r, c - 1], ArrowDown: [r + 1, c], ArrowUp: [r - 1, c],
        Home: [r, 0], End: [r, row.length - 1],
      };
      if (steps[event.key]) {
        event.preventDefault();
        go(cell, ...steps[event.key]);
      } else if (event.key === " ") {
        event.preventDefault();
        notesOf(cell);
      }
    })));
  }

  async function notesOf(cell) {
    const href = cell.getAttribute("href");
    let answer = null;
    try {
      answer = await fetch(href + "&part=on");
    } catch {
      // the desk has stopped; its own address says so better
    }
    if (!answer || !answer.ok) {
      location.href = href;
      return;
    }
    const dialog = document.createElement("dialog");
    dialog.className = "notes";
    dialog.innerHTML = await answer.text(); // the desk's own page, escaped there
    dialog.setAttribute("aria-label", cell.getAttribute("aria-label"));
    const close = document.createElement("button");
    close.type = "button";
    close.textContent = "Close";
    close.addEventListener("click", () => dialog.close());
    dialog.append(close);
    dialog.addEventListener("close", () => {
      dialog.remove();
      cell.focus();
    });
    document.body.append(dialog);
    dialog.showModal();
  }

  // --- Timeline: one row a source, its claims in lanes below each other. ---
  const span = (text) => {
    const [from, to] = text.split("/");
    return {
      from: from === "" || from === ".." ? null : Number(from), openStart: from === "..",
      to: to === "" || to === ".." ? null : Number(to), openEnd: to === "..",
    };
  };

  function timeline() {
    const features = [...table.querySelectorAll("[data-feature]")].map((section) => {
      const claims = [...section.querySelectorAll("tr.claim[data-core]")].map((tr) => ({
        ...tr.dataset, part: tr.closest("table").dataset.part,
        coreSpan: span(tr.dataset.core), outerSpan: span(tr.dataset.outer),
      }));
      const bands = [
        ["", claims.filter((each) => each.kind === "DATE"
          && !["COPIES", "OWN", "OBJECTS"].includes(each.part))],
        ["About one object, not the feature", claims.filter((each) => each.kind === "DATE"
          && each.part === "OBJECTS")],
        ["Later copies, apart: never a date of the original",
          claims.filter((each) => each.part === "COPIES")],
      ].filter(([, those]) => those.length > 0);
      return { label: section.dataset.label, bands };
    }).filter((feature) => feature.bands.length > 0);

    const years = features.flatMap((feature) => feature.bands.flatMap(([, those]) =>
      those.flatMap((each) => [each.outerSpan.from, each.outerSpan.to])))
      .filter((year) => year !== null);
    const small = canvas.clientWidth < NARROW;
    const width = small ? 620 : Math.max(760, Math.min(inner, 1100));
    const left = small ? 180 : 300;
    const right = 28;
    const scale = d3.scaleLinear()
      .domain([Math.floor((d3.min(years) - 8) / 10) * 10, Math.ceil((d3.max(years) + 9) / 10) * 10])
      .range([left, width - right]);
    const line = 15;
    const pieces = [];
    let y = 8;
    for (const feature of features) {
      pieces.push({ y: (y += 22), head: feature.label });
      y += 10;
      const top = y;
      for (const [title, those] of feature.bands) {
        if (title) {
          pieces.push({ y: (y += 24), band: title });
          y += 6;
        }
        for (const [, ofSource] of d3.group(those, (each) => each.source)) {
          const first = y;
          ofSource.forEach((claim, i) => {
            const label = [
              ...(i === 0 ? lines(claim.reference, left - 24) : []).map((text) => ({ text, bold: true })),
              ...lines("“" + claim.words + "”" + (claim.limit ? " [" + claim.limit + "]" : "")
                + (claim.narrower ? " (" + claim.narrower + ")" : "")
                + (claim.computed === "yes" ? " – computed" : ""), left - 24, 12).slice(0, 3)
                .map((text) => ({ text })),
            ];
            const high = label.length * line + 8;
            pieces.push({ y, high, claim, label, object: claim.part === "OBJECTS",
              copy: claim.part === "COPIES" });
            y += high;
          });
          pieces.push({ y, rule: first });
        }
      }
      pieces.push({ y, axis: top });
      y += 34;
    }
    const svg = svgOf(width, y, "Dates claimed for "
      + features.map((feature) => feature.label).join(", "),
      "One row a source: dark for the plain reading of its words, light for the outer years."
      + " What is said of later copies stands apart. Nothing is averaged.");
    svg.attr("role", "img");
    const ticks = scale.ticks(Math.max(3, Math.floor((width - left) / 90)));
    for (const piece of pieces.filter((each) => each.axis !== undefined)) {
      for (const tick of ticks) {
        svg.append("line").attr("class", "gridline").attr("x1", scale(tick)).attr("x2", scale(tick))
          .attr("y1", piece.axis).attr("y2", piece.y + 4);
        svg.append("text").attr("class", "soft").attr("x", scale(tick)).attr("y", piece.y + 19)
          .attr("text-anchor", "middle").text(tick);
      }
    }
    for (const piece of pieces) {
      if (piece.head) {
        svg.append("text").attr("class", "ink head").attr("x", 8).attr("y", piece.y).text(piece.head);
      } else if (piece.band) {
        svg.append("text").attr("class", "soft band").attr("x", 8).attr("y", piece.y).text(piece.band);
      } else if (piece.rule !== undefined) {
        svg.append("line").attr("class", "gridline").attr("x1", 8).attr("x2", width - right)
          .attr("y1", piece.y).attr("y2", piece.y);
      } else if (piece.claim) {
        claimRow(svg, piece, scale, left, width - right);
      }
    }
  }

  function claimRow(svg, piece, scale, left, end) {
    const { claim } = piece;
    const g = svg.append("g").attr("class", "claim-bar"
      + (piece.object ? " object" : "") + (piece.copy ? " copy" : ""))
      .attr("data-source", claim.source).attr("data-core", claim.core)
      .attr("data-outer", claim.outer);
    g.append("title").text(`${claim.reference}, ${claim.where}: “${claim.words}”. Plain reading `
      + `${claim.core}${claim.computed === "yes" ? ", computed" : ""}; outer years ${claim.outer}`);
    piece.label.forEach((each, i) => g.append("text")
      .attr("class", "ink" + (each.bold ? " bold" : " wording"))
      .attr("x", 8).attr("y", piece.y + 15 + i * 15).text(each.text));
    const middle = piece.y + piece.high / 2;
    bar(g, claim.outerSpan, scale, middle, 14, "outer", left, end);
    bar(g, claim.coreSpan, scale, middle, 14, "core", left, end);
  }

  function bar(g, years, scale, middle, high, kind, left, end) {
    const from = years.from === null ? left : scale(years.from);
    const to = years.to === null ? end : scale(years.to + 1);
    const tip = 9;
    const start = years.from === null && years.openStart ? from + tip : from;
    const stop = years.to === null && years.openEnd ? to - tip : to;
    g.append("rect").attr("class", kind).attr("x", start).attr("y", middle - high / 2)
      .attr("width", Math.max(2, stop - start)).attr("height", high);
    if (stop !== to) {
      g.append("path").attr("class", kind)
        .attr("d", `M${to},${middle} L${stop},${middle - high} L${stop},${middle + high} Z`);
    }
    if (start !== from) {
      g.append("path").attr("class", kind)
        .attr("d", `M${from},${middle} L${start},${middle - high} L${start},${middle + high} Z`);
    }
    const unknown = (x) => g.append("text").attr("class", "ink").attr("x", x)
      .attr("y", middle + 5).attr("text-anchor", "middle").text("?");
    if (years.from === null && !years.openStart) {
      unknown(from - 8);
    }
    if (years.to === null && !years.openEnd) {
      unknown(to + 8);
    }
  }

  // --- Words: two columns, joined by lines. ---
  function words() {
    const links = [...table.querySelectorAll("tr[data-word]")].map((tr) => ({
      word: tr.dataset.word, safety: tr.dataset.safety,
      meaning: tr.dataset.meaning || "not-stated", label: tr.dataset.label,
      stated: Number(tr.dataset.stated), seen: Number(tr.dataset.seen),
    }));
    const left = [...d3.group(links, (link) => link.word)].map(([word, those]) =>
      ({ word, safety: those[0].safety, links: those }));
    const meanings = new Map(links.map((link) => [link.meaning, link.label]));
    // Meanings stand near the words that have them, so that lines cross little.
    const place = new Map(left.map((each, i) => [each.word, i]));
    const weight = (id) => d3.mean(links.filter((link) => link.meaning === id),
      (link) => place.get(link.word));
    const right = [...meanings].map(([id, label]) => ({ id, label, at: weight(id) }))
      .sort((a, b) => (a.id === "not-stated") - (b.id === "not-stated") || a.at - b.at);
    const order = new Map(right.map((each, i) => [each.id, i]));
    left.sort((a, b) => d3.mean(a.links, (link) => order.get(link.meaning))
      - d3.mean(b.links, (link) => order.get(link.meaning)));

    const small = canvas.clientWidth < NARROW;
    const width = small ? 620 : Math.max(700, Math.min(inner, 1000));
    const row = 26;
    const top = 34;
    const height = top + Math.max(left.length, right.length) * row + 10;
    const column = Math.round(width * 0.34);
    const step = (count) => (height - top - 10) / count;
    const yLeft = (i) => top + (i + 0.5) * step(left.length);
    const yRight = (i) => top + (i + 0.5) * step(right.length);
    const svg = svgOf(width, height, "Which word means what",
      "Words as printed at the left, joined to their meanings at the right; the more sources, the"
      + " thicker the line.");
    svg.append("text").attr("class", "soft").attr("x", column - 12).attr("y", 18)
      .attr("text-anchor", "end").text("word, as printed");
    svg.append("text").attr("class", "soft").attr("x", width - column + 12).attr("y", 18)
      .text("what it means");
    const thick = d3.scaleSqrt().domain([1, Math.max(2, d3.max(links, (l) => l.stated + l.seen))])
      .range([1.5, 11]);
    const at = new Map(left.map((each, i) => [each.word, i]));
    const curve = d3.linkHorizontal().source((l) => [column, yLeft(at.get(l.word))])
      .target((l) => [width - column, yRight(order.get(l.meaning))]);
    const strokes = svg.append("g").attr("class", "strokes").selectAll("path").data(links)
      .join("path")
      .attr("class", (l) => "stroke " + (l.stated > 0 ? "stated" : l.seen > 0 ? "seen" : "vocabulary"))
      .attr("d", curve).attr("fill", "none")
      .attr("stroke-dasharray", (l) => l.stated > 0 ? null : l.seen > 0 ? "7 4" : "2 4")
      .attr("stroke-width", (l) => thick(Math.max(1, l.stated + l.seen)));
    strokes.append("title").text((l) => `“${l.word}”: ${l.label}, `
      + (l.stated + l.seen > 0 ? `${l.stated + l.seen} source${l.stated + l.seen === 1 ? "" : "s"}`
        : "by the vocabulary only"));
    const signs = { NOT_SAFE: "⚠ ", NOT_CERTAIN: "? ", SAFE: "" };
    const node = (g, x, y, anchor, text, label, marks) => {
      g.attr("tabindex", 0).attr("role", "img").attr("aria-label", label);
      g.append("title").text(label);
      g.append("rect").attr("class", "reach").attr("y", y - 12).attr("height", 24)
        .attr("x", anchor === "end" ? 2 : x - 8).attr("width", column - 4);
      g.append("text").attr("class", "ink").attr("x", x).attr("y", y + 4.5)
        .attr("text-anchor", anchor).text(fitted(text, column - 26));
      const mark = (on) => {
        svg.classed("marking", on);
        strokes.classed("marked", (l) => on && marks(l));
        words.classed("marked", (each) => on && links.some((l) => l.word === each.word && marks(l)));
        senses.classed("marked", (each) => on && links.some((l) => l.meaning === each.id && marks(l)));
      };
      g.on("mouseenter focus", () => mark(true)).on("mouseleave blur", () => mark(false));
    };
    const words = svg.append("g").selectAll("g").data(left).join("g")
      .attr("class", (each) => "node word " + each.safety).attr("data-word", (each) => each.word);
    const senses = svg.append("g").selectAll("g").data(right).join("g")
      .attr("class", "node meaning").attr("data-meaning", (each) => each.id);
    words.each(function (each, i) {
      node(d3.select(this), column - 10, yLeft(i), "end", signs[each.safety] + "“" + each.word + "”",
        `“${each.word}”: ` + each.links.map((l) => l.label).join("; "), (l) => l.word === each.word);
    });
    senses.each(function (each, i) {
      node(d3.select(this), width - column + 10, yRight(i), "start", each.label,
        `${each.label}: ` + links.filter((l) => l.meaning === each.id)
          .map((l) => `“${l.word}”`).join(", "), (l) => l.meaning === each.id);
    });
  }

  // --- Witnesses: sources by year, arrows from who repeats to who is repeated. ---
  function witnesses() {
    const small = canvas.clientWidth < NARROW;
    const width = small ? 640 : Math.max(760, Math.min(inner, 1100));
    const features = [...table.querySelectorAll("[data-feature]")]
      .filter((section) => section.querySelector("tr[data-source]")).map(witnessed);
    const row = 30;
    const dated = features.flatMap((f) => f.nodes).map((n) => n.year).filter((n) => n !== null);
    const undated = features.some((f) => f.nodes.some((n) => n.year === null));
    const left = undated ? 110 : 30;
    const right = small ? 200 : 250;
    const [least, most] = dated.length > 0 ? d3.extent(dated) : [1900, 1900];
    const scale = d3.scaleLinear().domain([Math.floor((least - 1) / 10) * 10,
      Math.max(Math.ceil(most / 10) * 10, least + 10)]).range([left, width - right]);
    const x = (node) => node.year === null ? 40 : scale(node.year);
    let y = 8;
    for (const feature of features) {
      feature.top = (y += 24);
      y += 16;
      feature.nodes.forEach((node) => {
        node.y = y + row / 2;
        y += row;
      });
      feature.bottom = y;
      y += 34;
    }
    const svg = svgOf(width, y, "Who repeats whom: "
      + features.map((f) => f.label).join(", "),
      "Sources by year. An arrow leads from a source that follows another to the one it follows.");
    svg.attr("role", "img");
    const tip = (id) => svg.append("defs").append("marker").attr("id", id)
      .attr("viewBox", "0 0 10 10").attr("refX", 9).attr("refY", 5).attr("markerWidth", 9)
      .attr("markerHeight", 9).attr("markerUnits", "userSpaceOnUse").attr("orient", "auto")
      .append("path").attr("class", "tip " + id).attr("d", "M0,0 L10,5 L0,10 Z");
    tip("tip-follows");
    tip("tip-cites");
    for (const feature of features) {
      svg.append("text").attr("class", "ink head").attr("x", 8).attr("y", feature.top)
        .text(feature.label);
      for (const tick of scale.ticks(Math.max(3, Math.floor((width - left - right) / 80)))) {
        svg.append("line").attr("class", "gridline").attr("x1", scale(tick)).attr("x2", scale(tick))
          .attr("y1", feature.top + 10).attr("y2", feature.bottom);
        svg.append("text").attr("class", "soft").attr("x", scale(tick)).attr("y", feature.bottom + 16)
          .attr("text-anchor", "middle").text(tick);
      }
      if (feature.nodes.some((node) => node.year === null)) {
        svg.append("text").attr("class", "soft").attr("x", 40).attr("y", feature.bottom + 16)
          .attr("text-anchor", "middle").text("undated");
      }
      for (const edge of feature.edges) {
        const from = [x(edge.from), edge.from.y];
        const to = [x(edge.to), edge.to.y];
        const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
        const bend = (edge.kind === "follows" ? -1 : edge.kind === "cites" ? 1 : 1.7)
          * Math.min(40, length / 4);
        const middle = [(from[0] + to[0]) / 2 + bend, (from[1] + to[1]) / 2];
        const near = (end, away) => {
          const far = Math.hypot(middle[0] - end[0], middle[1] - end[1]) || 1;
          return [end[0] + (middle[0] - end[0]) / far * away, end[1] + (middle[1] - end[1]) / far * away];
        };
        const path = svg.append("path").attr("class", "edge " + edge.kind).attr("fill", "none")
          .attr("d", `M${near(from, 8)} Q${middle} ${near(to, 9)}`)
          .attr("stroke-dasharray", { cites: "6 4", picture: "2 4" }[edge.kind] || null)
          .attr("data-from", edge.from.key).attr("data-to", edge.to.key);
        if (edge.kind !== "picture") {
          path.attr("marker-end", `url(#tip-${edge.kind})`);
        }
        path.append("title").text(edge.words);
      }
      for (const node of feature.nodes) {
        const g = svg.append("g").attr("class", "witness " + node.kind)
          .attr("data-source", node.key);
        g.append("title").text(node.reference + ": " + node.says);
        if (node.kind === "after") {
          g.append("rect").attr("class", "dot").attr("x", x(node) - 5.5).attr("y", node.y - 5.5)
            .attr("width", 11).attr("height", 11)
            .attr("transform", `rotate(45 ${x(node)} ${node.y})`);
        } else {
          g.append("circle").attr("class", "dot").attr("cx", x(node)).attr("cy", node.y).attr("r", 7);
        }
        const name = fitted(node.reference, Math.max(120, width - x(node) - 20));
        // An arrow goes behind a name, not through it.
        g.append("rect").attr("class", "paper").attr("x", x(node) + 11).attr("y", node.y - 9)
          .attr("width", measure(name) + 6).attr("height", 18);
        g.append("text").attr("class", "ink halo").attr("x", x(node) + 14).attr("y", node.y + 4.5)
          .text(name);
      }
    }
  }

  function witnessed(section) {
    const nodes = [...section.querySelectorAll("tr[data-source]")].map((tr) => ({
      key: tr.dataset.source, reference: tr.dataset.reference,
      year: tr.dataset.year === "" ? null : Number(tr.dataset.year), witness: tr.dataset.witness,
      kind: tr.classList.contains("after") ? "after" : "own",
      says: tr.cells[1].textContent.trim(),
      steps: [...tr.querySelectorAll("[data-step]")].map((step) => ({ ...step.dataset })),
    }));
    const byKey = new Map(nodes.map((node) => [node.key, node]));
    const byReference = new Map(nodes.map((node) => [node.reference, node]));
    // A source that is followed and has nothing on this is drawn too, or its arrow leads nowhere.
    const named = (reference, year) => {
      if (!byReference.has(reference)) {
        const node = { key: "", reference, year, kind: "absent",
          says: "has nothing on this here", steps: [] };
        nodes.push(node);
        byReference.set(reference, node);
      }
      return byReference.get(reference);
    };
    const yearIn = (reference) => {
      const found = /(?:^|\D)(1[5-9]\d\d|20\d\d)(?:\D|$)/.exec(reference);
      return found ? Number(found[1]) : null;
    };
    const edges = [];
    for (const node of [...nodes]) {
      let from = node;
      for (const step of node.steps) {
        const to = named(step.to, yearIn(step.to));
        if (step.step === "SAME_ORIGIN") {
          edges.push({ from: to, to: from, kind: "follows", words: `${to.reference} follows ${from.reference}` });
        } else if (from !== to) {
          edges.push({ from, to, kind: "follows", words: `${from.reference} ${step.words} ${to.reference}` });
          from = to;
        }
      }
    }
    for (const mention of section.querySelectorAll("[data-mention]")) {
      const from = byKey.get(mention.dataset.by);
      const to = byKey.get(mention.dataset.of);
      if (from && to && mention.dataset.mention === "cites") {
        edges.push({ from, to, kind: "cites", words: mention.textContent.trim() });
      }
    }
    for (const picture of section.querySelectorAll("[data-picture]")) {
      const keys = [...new Set([...picture.querySelectorAll("[data-printing]")]
        .map((each) => each.dataset.printing))].filter((key) => byKey.has(key));
      for (let i = 1; i < keys.length; i++) {
        edges.push({ from: byKey.get(keys[i]), to: byKey.get(keys[i - 1]), kind: "picture",
          words: "The same picture: " + picture.textContent.trim() });
      }
    }
    nodes.sort((a, b) => (a.year === null) - (b.year === null) || a.year - b.year);
    return { label: section.dataset.label, nodes, edges };
  }

  // --- Saving: the drawing by itself, its colours written in, on the paper of the page. ---
  const WRITTEN = ["fill", "stroke", "stroke-width", "stroke-dasharray", "opacity", "fill-opacity",
    "font-family", "font-size", "font-weight", "font-style", "paint-order", "stroke-linejoin"];

  function alone() {
    const drawn = canvas.querySelector("svg");
    const copy = drawn.cloneNode(true);
    const from = [drawn, ...drawn.querySelectorAll("*")];
    [copy, ...copy.querySelectorAll("*")].forEach((element, i) => {
      const style = getComputedStyle(from[i]);
      if (!["title", "desc", "defs"].includes(element.tagName)) {
        WRITTEN.forEach((property) => {
          const value = style.getPropertyValue(property);
          if (value && !value.includes("url(")) {
            element.setAttribute(property, value);
          }
        });
      }
      element.removeAttribute("tabindex");
      element.removeAttribute("class");
    });
    // A link to this desk leads nowhere on another machine.
    for (const link of [...copy.querySelectorAll("a")]) {
      const group = document.createElementNS("http://www.w3.org/2000/svg", "g");
      group.append(...link.childNodes);
      link.replaceWith(group);
    }
    copy.querySelectorAll("[role]").forEach((element) => element.removeAttribute("role"));
    copy.setAttribute("role", "img");
    const before = [...copy.children].find((each) => !["title", "desc"].includes(each.tagName));
    const width = Number(drawn.getAttribute("width"));
    const heads = lines(headline(), width - 16, 17);
    const more = heads.length * 22 + 12;
    const height = Number(drawn.getAttribute("height")) + more;
    copy.setAttribute("height", height);
    copy.setAttribute("viewBox", `0 ${-more} ${width} ${height}`);
    const put = (kind, attributes) => {
      const made = document.createElementNS("http://www.w3.org/2000/svg", kind);
      Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
      copy.insertBefore(made, before || null);
      return made;
    };
    put("rect", { y: -more, width, height,
      fill: getComputedStyle(document.querySelector(".drawing .canvas")).backgroundColor });
    heads.forEach((line, i) => {
      put("text", { x: 8, y: 24 - more + i * 22, fill: getComputedStyle(figure).color,
        "font-family": getComputedStyle(document.documentElement).fontFamily,
        "font-size": "17px", "font-weight": "600" }).textContent = line;
    });
    return { width, height,
      text: '<?xml version="1.0" encoding="UTF-8"?>\n' + new XMLSerializer().serializeToString(copy) };
  }

  /** What is drawn, of which terms. */
  const headline = () => (document.getElementById("asked")
    || canvas.querySelector("svg > title")).textContent.trim();

  function give(blob, ending) {
    const address = URL.createObjectURL(blob);
    const link = document.createElement("a");
    link.href = address;
    link.download = name.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "").slice(0, 80) + ending;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 10000);
    figure.querySelector("[data-saved]").textContent = link.download + " goes to your downloads.";
  }

  const svgBlob = (made) => new Blob([made.text], { type: "image/svg+xml;charset=utf-8" });

  async function png() {
    const made = alone();
    const address = URL.createObjectURL(svgBlob(made));
    try {
      const picture = new Image();
      picture.src = address;
      await picture.decode();
      const page = document.createElement("canvas");
      const times = Math.min(2, 8000 / Math.max(made.width, made.height));
      page.width = Math.round(made.width * times);
      page.height = Math.round(made.height * times);
      page.getContext("2d").drawImage(picture, 0, 0, page.width, page.height);
      const blob = await new Promise((done) => page.toBlob(done, "image/png"));
      if (!blob) {
        throw new Error("too large");
      }
      give(blob, ".png");
    } catch {
      figure.querySelector("[data-saved]").textContent =
        "This browser can't make a PNG of it; save it as SVG.";
    } finally {
      URL.revokeObjectURL(address);
    }
  }

  figure.querySelector('[data-save="svg"]').addEventListener("click", () => give(svgBlob(alone()), ".svg"));
  figure.querySelector('[data-save="png"]').addEventListener("click", png);

  ({ concordance, timeline, words, witnesses })[figure.dataset.draws]();
})();
