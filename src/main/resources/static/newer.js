// Says quietly when something was saved since this page was made. Nothing is loaded anew by itself, and where something can
// be typed the newer page opens beside this one.
(() => {
  "use strict";
  const at = document.querySelector("[data-newer]");
  if (!at) return;
  const made = () => Number(document.getElementById("main").dataset.version);
  const typing = () => document.querySelector("main form[method=post] :is(input:not([type=hidden]), textarea, select)");

  function say() {
    const link = document.createElement("a");
    link.href = location.pathname + location.search;
    link.textContent = "Show it";
    if (typing()) {
      link.textContent = "Show it beside this";
      link.target = "_blank";
    }
    at.replaceChildren("Something was changed since this was opened. ", link);
  }

  async function ask() {
    if (document.visibilityState !== "visible") return;
    try {
      const answer = await fetch("/newer");
      if (!answer.ok) return;
      const { version } = await answer.json();
      if (version > made()) say();
      else at.replaceChildren();
    } catch (e) { /* out of reach, or nobody is known here any more; asked again */ }
  }
  setInterval(ask, 20000);
  document.addEventListener("visibilitychange", ask);
})();
