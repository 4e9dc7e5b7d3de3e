// The things of a picture: each tells its sentence when it is pointed at, and leads to its page. Without script it is a link.
(() => {
  "use strict";
  // a thing tells its sentence; a finger's first touch tells it, the next one leads to its page
  function tell(thing) {
    const told = document.querySelector("[data-told]");
    document.querySelectorAll(".thing.told").forEach((one) => one.classList.remove("told"));
    if (!told || !thing) return;
    thing.classList.add("told");
    const more = document.createElement("a");
    more.href = thing.getAttribute("href");
    more.textContent = "Look at it";
    told.replaceChildren(thing.getAttribute("aria-label"), " ", more);
    told.hidden = false;
  }
  const thingOf = (e) => e.target.closest?.(".thing");
  document.addEventListener("pointerover", (e) => { if (e.pointerType === "mouse" && thingOf(e)) tell(thingOf(e)); });
  document.addEventListener("focusin", (e) => { if (thingOf(e)) tell(thingOf(e)); });
  let touched = null;
  document.addEventListener("pointerdown", (e) => { touched = e.pointerType === "touch" && thingOf(e) && !thingOf(e).classList.contains("told") ? thingOf(e) : null; }, true);
  document.addEventListener("click", (e) => {
    const thing = thingOf(e);
    if (thing && thing === touched) { e.preventDefault(); touched = null; tell(thing); }
  });

  // one stop of the tab key for the whole picture; up and down go from thing to thing
  const shown = (svg) => svg.getClientRects().length > 0;
  function oneStop() {
    document.querySelectorAll("[data-picture] svg").forEach((svg) => {
      svg.querySelectorAll(".thing").forEach((thing, i) => thing.setAttribute("tabindex", i === 0 ? "0" : "-1"));
    });
  }
  document.addEventListener("keydown", (e) => {
    const thing = thingOf(e);
    const by = e.key === "ArrowDown" ? 1 : e.key === "ArrowUp" ? -1 : 0;
    if (!thing || !by || !shown(thing.ownerSVGElement)) return;
    const things = [...thing.ownerSVGElement.querySelectorAll(".thing")];
    const next = things[things.indexOf(thing) + by];
    if (!next) return;
    e.preventDefault();
    things.forEach((one) => one.setAttribute("tabindex", one === next ? "0" : "-1"));
    next.focus();
  });
  document.addEventListener("sheet-brought", oneStop);
  oneStop();
})();
