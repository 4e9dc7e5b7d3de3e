// Under the figures of a drawing: the same tables as a file for a spreadsheet, made here of what the page shows. Lines and quotes
// as RFC 4180 has them, every line of a file with as many cells; words that a spreadsheet would run as a formula get a quote mark
// before them, a number keeps its sign, hours in quarters are numbers. A cell that tells two figures (data-cell) is two cells under
// two heads (data-cells).
(() => {
  "use strict";
  const FORMULA = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;
  const NUMBER = /^[+\-]?\d[\d.,\u00a0 ]*$/;
  const QUARTERS = /^([\d,]*)([¼½¾]?) h$|^([\d,]*)([¼½¾])$/;
  const PARTS = { "¼": ".25", "½": ".5", "¾": ".75" };
  const words = (one) => {
    const copy = one.cloneNode(true);
    copy.querySelectorAll("svg, button, input, select").forEach((drawn) => drawn.remove());
    const said = copy.textContent.replace(/\s+/g, " ").trim();
    const number = said.replace(/^\u2212/, "-");
    if (NUMBER.test(number)) return number;
    const [, whole, part, bare, barePart] = QUARTERS.exec(said) || [];
    if (whole || part || barePart) return (whole || bare || "0").replaceAll(",", "") + (PARTS[part || barePart] || "");
    return FORMULA.test(said) ? `'${said}` : said;
  };
  const quoted = (text) => `"${text.replaceAll('"', '""')}"`;

  function cells(one) {
    if (one.dataset.cells) return one.dataset.cells.split(", ").map((part) => `${words(one)}, ${part}`);
    const parts = [...one.querySelectorAll("[data-cell]")];
    return parts.length ? parts.map(words) : [words(one), ...Array(one.colSpan - 1).fill("")];
  }

  // the cells of a table, without columns in which only drawings stand
  function rows(table) {
    const all = [...table.rows].map((row) => [...row.cells].flatMap(cells));
    const used = all[0].map((head, at) => all.length < 2 || all.slice(1).some((row) => row[at]));
    return all.map((row) => row.filter((one, at) => used[at] !== false));
  }

  function sheet(tables) {
    const lines = tables.flatMap((table, at) => [
      ...(at ? [[]] : []),
      ...(table.caption ? [[words(table.caption)]] : []),
      ...rows(table),
    ]);
    const width = Math.max(...lines.map((line) => line.length));
    return lines.map((line) => `${[...line, ...Array(width - line.length).fill("")].map(quoted).join(",")}\r\n`).join("");
  }

  function offer() {
    document.querySelectorAll("[data-figures]").forEach((at) => {
      const tables = [...at.querySelectorAll("table")];
      const button = at.querySelector("[data-as-csv].by-script");
      if (!tables.length || !button) return;
      button.classList.remove("by-script");
      button.addEventListener("click", () => {
        const link = document.createElement("a");
        link.href = URL.createObjectURL(new Blob(["\uFEFF", sheet(tables)], { type: "text/csv;charset=utf-8" }));
        link.download = `${at.dataset.figures}-${document.getElementById("main").dataset.day || ""}.csv`;
        link.click();
        setTimeout(() => URL.revokeObjectURL(link.href), 60000);
      });
    });
  }
  offer();
  document.addEventListener("sheet-brought", offer);
})();
