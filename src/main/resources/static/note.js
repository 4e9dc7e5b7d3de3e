// The writing of a note: the page view follows what is typed, and a draft is kept on this device and by the server. Without
// this script "Show it" and "Keep as a draft" do the same.
(() => {
  "use strict";
  const prefix = "note draft ";
  const stored = (key) => {
    try { return JSON.parse(localStorage.getItem(key) || "null"); } catch (e) { return null; }
  };
  const form = document.querySelector(".note-form");
  const view = document.querySelector("[data-page-view]");
  if (!form || !view) {
    // The note as it was saved: what this device kept of it is not needed any more.
    const from = document.referrer && new URL(document.referrer).pathname;
    const kept = from && stored(prefix + from);
    if (kept && kept.sent) localStorage.removeItem(prefix + from);
    return;
  }
  const text = form.elements.text;
  const said = document.querySelector("[data-draft-said]");
  const key = prefix + location.pathname;

  const post = (act) => {
    const fields = new URLSearchParams(new FormData(form));
    fields.set("do", act);
    return fetch(location.pathname, { method: "POST", body: fields })
      .then((answer) => (answer.ok ? answer : Promise.reject(new Error(String(answer.status)))));
  };

  // The last answer asked for is shown; an older one that comes later is not.
  let asked = 0;
  const show = () => {
    const mine = ++asked;
    post("page").then((answer) => answer.text())
      .then((html) => { if (mine === asked) view.innerHTML = html; })
      .catch(() => {});
  };

  let sending = false;
  const keep = (sent) => {
    try {
      localStorage.setItem(key, JSON.stringify({ title: form.elements.title.value, text: text.value, sent }));
    } catch (e) { /* a full or closed store: the server keeps the draft */ }
  };
  const autosave = () => {
    if (sending) return;
    post("autosave").then((answer) => answer.json())
      .then((answer) => { said.textContent = answer.kept ? "Draft kept." : "Draft kept on this device."; })
      .catch(() => { said.textContent = "Draft kept on this device; the server was not reached."; });
  };
  let soon = 0;
  let later = 0;
  form.addEventListener("input", (e) => {
    keep(false);
    clearTimeout(later);
    later = setTimeout(autosave, 3000);
    if (e.target !== text) return;
    clearTimeout(soon);
    soon = setTimeout(show, 250);
  });
  form.addEventListener("submit", () => {
    sending = true;
    clearTimeout(later);
    keep(true);
    addEventListener("pageshow", () => { sending = false; }, { once: true });
  });

  form.addEventListener("kept", () => {
    sending = false;
    clearTimeout(later);
    localStorage.removeItem(key);
  });

  // What this device kept and what stands here differ: it is offered, never put in by itself.
  const kept = stored(key);
  if (kept && kept.text && kept.text.trim() !== text.value.trim()) {
    const offer = document.createElement("p");
    offer.className = "remark-box";
    const take = document.createElement("button");
    take.type = "button";
    take.className = "button";
    take.textContent = "Put it into the text";
    const leave = take.cloneNode();
    leave.textContent = "Throw it away";
    offer.append("This device kept another text that was not saved. ", take, " ", leave);
    take.addEventListener("click", () => {
      form.elements.title.value = kept.title || form.elements.title.value;
      text.value = kept.text;
      offer.remove();
      text.dispatchEvent(new Event("input", { bubbles: true }));
    });
    leave.addEventListener("click", () => { localStorage.removeItem(key); offer.remove(); });
    form.before(offer);
  }

  const put = (mark) => {
    const chosen = text.value.slice(text.selectionStart, text.selectionEnd);
    text.setRangeText(mark + chosen + mark, text.selectionStart, text.selectionEnd, "end");
    if (!chosen) text.selectionEnd = text.selectionStart = text.selectionStart - mark.length;
    text.dispatchEvent(new Event("input", { bubbles: true }));
  };
  form.addEventListener("keydown", (e) => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
    const pressed = e.key.toLowerCase();
    if (pressed === "s") {
      e.preventDefault();
      form.requestSubmit(form.querySelector(".button.main"));
    } else if (pressed === "enter") {
      e.preventDefault();
      show();
    } else if (e.target === text && (pressed === "b" || pressed === "i")) {
      e.preventDefault();
      put(pressed === "b" ? "**" : "*");
    }
  });
})();
