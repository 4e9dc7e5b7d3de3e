// Says on Log what this device can do without the server, and sets up the service worker where browsers allow one: under
// https, and on the machine itself.
(() => {
  "use strict";
  const says = document.querySelector("[data-device-says]");
  const main = document.getElementById("main");
  const can = window.isSecureContext && "serviceWorker" in navigator;
  if (says) {
    says.dataset.deviceSays = can ? "opens" : "stays";
    says.querySelector(`[data-says=${can ? "stays" : "opens"}]`).classList.add("by-script");
    says.classList.remove("by-script");
  }
  if (!can || !/group-(week|log|notes)/.test(document.body.className)) return;
  const pages = ["/week", "/log", "/week/shots", "/notes/new"]
    .filter((page) => document.querySelector(`.sheets a[href="/${page.split("/")[1]}"]`));
  navigator.serviceWorker.register("/static/worker.js", { scope: "/" })
    .then(() => navigator.serviceWorker.ready)
    .then((ready) => ready.active.postMessage({ whose: main.dataset.whose, pages }))
    .catch(() => { /* a private window, or no room: the open page carries on alone */ });
})();
