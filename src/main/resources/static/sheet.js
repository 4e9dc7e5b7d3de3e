// Small help for every sheet; each page is whole without it.
(() => {
  "use strict";
  const root = document.documentElement;
  const device = matchMedia("(prefers-color-scheme: dark)");
  const dark = () => (root.dataset.theme ? root.dataset.theme === "night" : device.matches);

  // Dark or light: the choice is kept in a cookie, so that the server draws the next page in it at once.
  const shown = (one) => { one.hidden = false; one.classList.remove("by-script"); };
  const switches = document.querySelectorAll("[data-theme-switch]");
  const say = () => switches.forEach((b) => { b.textContent = dark() ? "Light" : "Dark"; shown(b); });
  switches.forEach((b) => b.addEventListener("click", () => {
    root.dataset.theme = dark() ? "day" : "night";
    document.cookie = `theme=${root.dataset.theme}; path=/; max-age=31536000; samesite=lax`;
    say();
  }));
  device.addEventListener("change", say);
  say();

  const printing = () => document.querySelectorAll("[data-print].by-script").forEach((b) => {
    shown(b);
    b.addEventListener("click", () => print());
  });
  printing();
  document.addEventListener("sheet-brought", printing);

  document.querySelectorAll("[data-copy]").forEach((b) => {
    if (!navigator.clipboard) return;
    shown(b);
    b.addEventListener("click", async () => {
      await navigator.clipboard.writeText(document.getElementById(b.dataset.copy).value);
      b.textContent = "Copied";
    });
  });

  // The menu under More closes at Escape and at a press beside it.
  const menus = [...document.querySelectorAll("details.more")];
  document.addEventListener("click", (e) => menus.forEach((m) => { if (!m.contains(e.target)) m.open = false; }));
  document.addEventListener("keydown", (e) => {
    if (e.key !== "Escape") return;
    menus.filter((m) => m.open).forEach((m) => { m.open = false; m.querySelector("summary").focus(); });
  });

  // A refused form: what is wrong with it takes the focus by itself, else the first field that was not accepted. A moved thing
  // keeps it.
  const wrong = !document.querySelector("[autofocus]") && document.querySelector("[aria-invalid=true]");
  const kept = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (wrong) wrong.focus();
  else if (kept && kept.matches("button, input, select, textarea")) {
    const folded = kept.closest("details");
    if (folded) folded.open = true;
    kept.focus();
  }

  // Alt and an arrow move a row as its buttons up and down do.
  document.querySelectorAll("[data-moved-by-keys]").forEach((list) => list.addEventListener("keydown", (e) => {
    const way = { ArrowUp: "up-", ArrowDown: "down-" }[e.key];
    if (!way || !e.altKey || e.ctrlKey || e.metaKey) return;
    e.preventDefault();
    const button = e.target.closest("li").querySelector(`button[id^=${way}]`);
    if (button) button.click();
  }));

  // One press posts once; the answer key guards the rest.
  document.addEventListener("submit", (e) => {
    const form = e.target;
    if (e.defaultPrevented || form.method !== "post") return;
    if (form.dataset.sent) { e.preventDefault(); return; }
    form.dataset.sent = "yes";
    addEventListener("pageshow", () => delete form.dataset.sent, { once: true });
  });
})();
