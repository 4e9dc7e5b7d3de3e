// Under the figures of a drawing: the same tables as a file for a spreadsheet, made here of what the page shows. Cells are quoted
// as RFC 4180 has it; words that a spreadsheet would run as a formula get a quote mark before them.
(() => {
  "use strict";
  const FORMULA = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20](?![\d.,\u00a0 ]+$)/;
  const cell = (one) => {
    const words = one.textContent.replace(/\s+/g, " ").trim().replace(/^\u2212(?=\d)/, "-");
    return `"${(FORMULA.test(words) ? "'" : "") + words.replaceAll('"', '""')}"`;
  };
  const lines = (table) => [
    ...(table.caption ? [[cell(table.caption)]] : []),
    ...[...table.rows].map((row) => [...row.cells].map(cell)),
  ].map((cells) => `${cells.join(",")}\r\n`).join("");

  function offer() {
    document.querySelectorAll("[data-figures]").forEach((at) => {
      const tables = at.matches("table") ? [at] : [...at.querySelectorAll("table")];
      if (!tables.length || at.dataset.offered) return;
      at.dataset.offered = "yes";
      const button = document.createElement("button");
      button.type = "button";
      button.className = "button small unprinted";
      button.textContent = "As CSV";
      button.setAttribute("aria-label", `As CSV: ${at.dataset.figures.replaceAll("-", " ")}`);
      button.addEventListener("click", () => {
        const link = document.createElement("a");
        link.href = URL.createObjectURL(new Blob(["\uFEFF", tables.map(lines).join("\r\n")], { type: "text/csv;charset=utf-8" }));
        link.download = `${at.dataset.figures}-${document.getElementById("main").dataset.day || ""}.csv`;
        link.click();
        setTimeout(() => URL.revokeObjectURL(link.href), 60000);
      });
      if (at.matches("table")) at.after(button);
      else at.append(button);
    });
  }
  offer();
  document.addEventListener("sheet-brought", offer);
})();
