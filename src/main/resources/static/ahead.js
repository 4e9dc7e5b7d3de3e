// Brings the newer forecast when it has been drawn, without a reload; the link does the same by hand.
(() => {
  const sheet = () => document.querySelector("[data-forecast]");
  const say = (text) => { const at = document.querySelector("[data-forecast-said]"); if (at) at.textContent = text; };

  async function bring() {
    const answer = await fetch(location.pathname + location.search, { headers: { "Accept": "text/html" } });
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
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
})();
