// A table to type in: a block from a spreadsheet goes into the cells from the one under the cursor on; Enter goes down.
(() => {
  "use strict";
  const table = document.querySelector("[data-cells]");
  if (!table) return;
  const body = table.tBodies[0];
  const inputs = (row) => [...row.querySelectorAll("td input")];

  const addRow = () => {
    const last = body.rows[body.rows.length - 1];
    const from = last.rowIndex - 1;
    const row = last.cloneNode(true);
    row.querySelectorAll("input[type=hidden], .error").forEach((e) => e.remove());
    row.querySelector("th").textContent = String(from + 2);
    inputs(row).forEach((input) => {
      const column = input.name.slice(0, input.name.lastIndexOf("."));
      input.name = input.id = `${column}.${from + 1}`;
      input.value = "";
      ["aria-invalid", "aria-describedby"].forEach((a) => input.removeAttribute(a));
      input.setAttribute("aria-label", input.getAttribute("aria-label").replace(/\d+$/, String(from + 2)));
    });
    body.append(row);
    return row;
  };

  const at = (input) => {
    const row = input.closest("tr");
    return { row: [...body.rows].indexOf(row), column: inputs(row).indexOf(input) };
  };

  table.addEventListener("paste", (e) => {
    const text = e.clipboardData.getData("text/plain").replace(/\r\n?/g, "\n").replace(/\n$/, "");
    if (!/[\t\n]/.test(text) || !e.target.matches("td input")) return;
    e.preventDefault();
    const start = at(e.target);
    text.split("\n").forEach((line, i) => {
      const row = body.rows[start.row + i] || addRow();
      const cells = inputs(row);
      line.split("\t").forEach((cell, j) => {
        if (cells[start.column + j]) cells[start.column + j].value = cell.trim();
      });
    });
  });

  table.addEventListener("keydown", (e) => {
    const step = e.key === "Enter" || e.key === "ArrowDown" ? 1 : e.key === "ArrowUp" ? -1 : 0;
    if (!step || !e.target.matches("td input")) return;
    e.preventDefault();
    const from = at(e.target);
    const row = body.rows[from.row + step];
    if (row) inputs(row)[from.column].focus();
  });
})();
