// The writing of a note: the page view follows what is typed. Without this script "Show it" does the same.
(() => {
  const form = document.querySelector(".note-form");
  const view = document.querySelector("[data-page-view]");
  if (!form || !view) return;
  const text = form.elements.text;

  const body = (act) => {
    const fields = new URLSearchParams(new FormData(form));
    fields.set("do", act);
    return fields;
  };

  // The last answer asked for is shown; an older one that comes later is not.
  let asked = 0;
  const show = () => {
    const mine = ++asked;
    fetch(location.pathname, { method: "POST", body: body("page") })
      .then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error(String(answer.status)))))
      .then((html) => { if (mine === asked) view.innerHTML = html; })
      .catch(() => {});
  };
  let soon = 0;
  text.addEventListener("input", () => {
    clearTimeout(soon);
    soon = setTimeout(show, 250);
  });

  // Marks round what is chosen.
  const put = (before, after) => {
    const chosen = text.value.slice(text.selectionStart, text.selectionEnd);
    text.setRangeText(before + chosen + after, text.selectionStart, text.selectionEnd, "end");
    if (!chosen) text.selectionEnd = text.selectionStart = text.selectionStart - after.length;
    text.dispatchEvent(new Event("input", { bubbles: true }));
  };
  form.addEventListener("keydown", (e) => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
    const key = e.key.toLowerCase();
    if (key === "s") {
      e.preventDefault();
      form.requestSubmit(form.querySelector(".button.main"));
    } else if (key === "enter") {
      e.preventDefault();
      show();
    } else if (e.target === text && (key === "b" || key === "i")) {
      e.preventDefault();
      put(key === "b" ? "**" : "*", key === "b" ? "**" : "*");
    }
  });
})();
