// Brings the newer forecast when it has been drawn, without a reload; the link does the same by hand.
(() => {
  "use strict";
  const sheet = () => document.querySelector("[data-forecast]");
  const say = (text) => { const at = document.querySelector("[data-forecast-said]"); if (at) at.textContent = text; };

  async function fetched(address) {
    const answer = await fetch(address, { headers: { "Accept": "text/html" } });
    return answer.ok ? new DOMParser().parseFromString(await answer.text(), "text/html") : null;
  }

  async function bring() {
    const page = await fetched(location.pathname + location.search);
    if (!page) return;
    for (const part of ["main", "footer"]) {
      const now = document.querySelector(part), then = page.querySelector(part);
      if (now && then) now.replaceWith(then);
    }
    document.dispatchEvent(new Event("sheet-brought"));
    say("The forecast is new.");
  }

  async function ask() {
    const shown = sheet();
    if (!shown || shown.dataset.moving !== "true") return;
    try {
      const answer = await fetch(shown.dataset.state);
      if (!answer.ok) return;
      const state = await answer.json();
      if (state.key !== shown.dataset.forecast || !state.moving) await bring();
      else if (state.of > 0) say(`${state.done.toLocaleString("en")} of ${state.of.toLocaleString("en")} futures drawn.`);
    } catch (e) { /* out of reach; asked again */ }
    setTimeout(ask, 400);
  }
  setTimeout(ask, 250);

  // other weeks of the picture, without a jump of the page; the links do the same without script
  let going = 0;
  async function go(address, way, remember) {
    const mine = ++going;
    let then = null;
    try { then = (await fetched(address))?.querySelector("[data-picture]"); } catch (e) { /* out of reach */ }
    const now = document.querySelector("[data-picture]");
    if (mine !== going) return;
    if (!then || !now) { location.href = address; return; }
    now.replaceWith(then);
    document.dispatchEvent(new Event("sheet-brought"));
    if (remember) history.pushState({ picture: true }, "", address);
    const again = [...then.querySelectorAll("[data-way]")].find((link) => link.textContent === way) || then.querySelector("[data-way]");
    if (way) again.focus({ preventScroll: true });
  }
  addEventListener("popstate", () => { if (document.querySelector("[data-picture]")) go(location.pathname + location.search, "", false); });

  document.addEventListener("keydown", (e) => {
    const picture = e.target.closest?.("[data-picture]");
    if (!picture || e.altKey || e.ctrlKey || e.metaKey || /^(INPUT|SELECT)$/.test(e.target.tagName)) return;
    const key = e.key === "=" ? "+" : e.key;
    const link = key && [...picture.querySelectorAll("[data-way]")].find((one) => one.dataset.way === key);
    if (link) { e.preventDefault(); go(link.getAttribute("href"), link.textContent, true); }
  });
  document.addEventListener("click", (e) => {
    const way = e.target.closest?.("[data-way]");
    if (way && !e.ctrlKey && !e.metaKey && !e.shiftKey && e.button === 0) { e.preventDefault(); go(way.getAttribute("href"), way.textContent, true); }
  });
})();
