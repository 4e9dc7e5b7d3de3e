// Says on Log what this device can do without the server, and sets up the service worker where browsers allow one: under
// https, and on the machine itself.
(() => {
  "use strict";
  const says = document.querySelector("[data-device-says]");
  const main = document.getElementById("main");
  const can = window.isSecureContext && "serviceWorker" in navigator;
  if (says) {
    says.textContent = can
      ? "Without the server this sheet and the week open here all the same, and entries are kept on this device until they can be"
        + " sent. The browser's menu can install it."
      : "Without the server this sheet carries on while it stays open, and entries are kept on this device until they can be sent."
        + " It cannot be opened anew without the server: browsers allow that under https alone.";
    says.dataset.deviceSays = can ? "opens" : "stays";
    says.hidden = false;
  }
  if (!can || !/group-(week|log|notes)/.test(document.body.className)) return;
  const pages = ["/week", "/log", "/week/shots", "/notes/new"]
    .filter((page) => document.querySelector(`.sheets a[href="/${page.split("/")[1]}"]`));
  navigator.serviceWorker.register("/static/worker.js", { scope: "/" })
    .then(() => navigator.serviceWorker.ready)
    .then((ready) => ready.active.postMessage({ whose: main.dataset.whose, pages }))
    .catch(() => { /* a private window, or no room: the open page carries on alone */ });
})();
