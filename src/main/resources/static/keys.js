// The keys of every sheet, shown by the key ?. They are single letters, so they can be switched off (WCAG 2.2, 2.1.4), and
// they rest while something is typed.
(() => {
  "use strict";
  const list = document.querySelector("[data-keys]");
  if (!list) return;
  const OFF = "keys off";
  const off = list.querySelector("[data-keys-off]");
  try { off.checked = localStorage.getItem(OFF) === "yes"; } catch (e) { /* not allowed here: the keys are on */ }
  off.addEventListener("change", () => {
    try {
      if (off.checked) localStorage.setItem(OFF, "yes");
      else localStorage.removeItem(OFF);
    } catch (e) { /* for this page alone then */ }
  });
  const show = () => {
    document.querySelectorAll("details.more[open]").forEach((menu) => { menu.open = false; });
    if (!list.open) list.showModal();
  };
  document.querySelectorAll("[data-keys-shown]").forEach((button) => {
    button.hidden = false;
    button.addEventListener("click", show);
  });
  const go = (link) => { if (link) location.assign(link.href); };
  const acts = {
    "?": show,
    "/": () => {
      const words = document.getElementById("words");
      if (words) words.focus();
      else go(document.querySelector("[data-search]"));
    },
    f: () => {
      const first = document.querySelector("main :is(input:not([type=hidden]), select, textarea):not([disabled])");
      if (first) first.focus();
    },
  };
  document.addEventListener("keydown", (e) => {
    if (e.ctrlKey || e.metaKey || e.altKey || e.isComposing || list.open) return;
    if (e.target.closest("input, textarea, select, [contenteditable]")) return;
    const sheet = /^[1-9]$/.test(e.key) && document.querySelectorAll(".sheets a")[Number(e.key) - 1];
    if (off.checked || !(sheet || acts[e.key])) return;
    e.preventDefault();
    if (sheet) go(sheet);
    else acts[e.key]();
  });
})();
