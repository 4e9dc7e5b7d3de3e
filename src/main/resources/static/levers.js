// Moves levers without a reload: a slider beside each number, the answer brought as soon as a lever rests, and again while more
// futures are being drawn. Without script the button does the same.
(() => {
  "use strict";
  const form = document.querySelector("[data-levers]");
  if (!form) {
    return;
  }
  const REST = 80;
  const AGAIN = 500;
  let asking = null;
  let waiting = 0;

  function slider(field) {
    const range = document.createElement("input");
    range.type = "range";
    range.min = field.dataset.slideFrom;
    range.max = field.dataset.slideTo;
    range.step = "1";
    range.setAttribute("aria-label", form.querySelector(`label[for="${CSS.escape(field.id)}"]`).textContent);
    const neutral = field.dataset.neutral === "" ? field.dataset.slideFrom : field.dataset.neutral;
    const follow = () => { range.value = field.value.trim() === "" ? neutral : field.value.trim().replace("−", "-"); };
    follow();
    range.addEventListener("input", () => {
      field.value = range.value === field.dataset.neutral ? "" : range.value;
      soon(REST);
    });
    field.addEventListener("input", follow);
    field.closest(".field").append(range);
  }

  function address() {
    const words = new URLSearchParams();
    new FormData(form).forEach((value, name) => {
      if (String(value).trim() !== "") {
        words.append(name, String(value).trim());
      }
    });
    return words.toString();
  }

  const half = () => {
    const chosen = form.elements.postpone, until = form.elements.until;
    const grant = form.elements.grant, on = form.elements.grant_on;
    return (chosen.value !== "") !== (until.value !== "") || (grant.value.trim() !== "") !== (on.value !== "");
  };

  function soon(after) {
    clearTimeout(waiting);
    waiting = setTimeout(bring, after);
  }

  async function bring() {
    if (half()) {
      return;
    }
    if (asking) {
      asking.abort();
    }
    asking = new AbortController();
    const words = address();
    try {
      const answer = await fetch(location.pathname + (words ? "?" + words : ""),
        { headers: { "Accept": "text/html" }, signal: asking.signal });
      if (!answer.ok) {
        return;
      }
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const then = page.querySelector("[data-answer]");
      document.querySelector("[data-answer]").replaceWith(then);
      document.dispatchEvent(new Event("sheet-brought"));
      history.replaceState(null, "", location.pathname + (then.dataset.address ? "?" + then.dataset.address : ""));
      const keep = document.querySelector("[data-keep-levers] [name=pulled]");
      keep.value = page.querySelector("[data-keep-levers] [name=pulled]").value;
      chosen(page);
      const said = form.querySelector("[data-said]");
      said.textContent = then.querySelector("h1").textContent;
      said.hidden = false;
      settle();
    } catch (e) { /* overtaken by a newer question, or out of reach: the button still works */ }
  }

  // a task that was just chosen becomes a box, and the lists are free for another one
  function chosen(page) {
    const now = form.querySelector("[data-chosen]"), then = page.querySelector("[data-chosen]");
    if (now.innerHTML !== then.innerHTML && !page.querySelector("[data-answer] .trouble")) {
      now.replaceWith(then);
      ["drop", "postpone", "until"].forEach((name) => {
        form.querySelectorAll(`select[name=${name}], input[type=date][name=${name}]`).forEach((field) => { field.value = ""; });
      });
    }
  }

  function settle() {
    if (document.querySelector("[data-answer]").dataset.settling === "true") {
      soon(AGAIN);
    }
  }

  form.querySelectorAll("[data-slide-from]").forEach(slider);
  form.addEventListener("input", (event) => { if (event.target.type !== "range") { soon(4 * REST); } });
  form.addEventListener("change", (event) => { if (event.target.type !== "range") { soon(REST); } });
  form.addEventListener("submit", (event) => { if (!half()) { event.preventDefault(); soon(0); } });
  settle();
})();
