// A sheet on which something is still being made is asked for again until it is whole; its link does the same by hand.
(() => {
  "use strict";
  async function ask() {
    try {
      const answer = await fetch(location.pathname + location.search, { headers: { Accept: "text/html" } });
      const then = answer.ok && new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("[data-made]");
      const now = document.querySelector("[data-made]");
      if (then && now) {
        now.replaceWith(then);
        if (then.dataset.made === "yes") { document.dispatchEvent(new Event("sheet-brought")); return; }
      }
    } catch (e) { /* out of reach; asked again */ }
    setTimeout(ask, 2000);
  }
  if (document.querySelector("[data-made=no]")) setTimeout(ask, 2000);
})();
