// Hours on Log: a quarter more or less by button, the drawn rule, and the hours again on the button that saves them.
// Without this script the field takes typed hours all the same.
(() => {
  "use strict";
  const form = document.querySelector("[data-log]");
  if (!form) {
    return;
  }
  const field = form.querySelector("[data-hours]");
  const rule = form.querySelector("[data-rule]");
  const range = rule.querySelector("input");
  const save = form.querySelector("[data-save]");
  const quarters = ["", "¼", "½", "¾"];

  // The minutes typed, or NaN where they are none: the server reads the same forms and says what is wrong.
  function minutes() {
    const text = field.value.trim().replace(",", ".").replace("h", "").trim();
    let match = /^(\d{0,2})\s?([¼½¾])$/.exec(text);
    if (match) {
      return Number(match[1] || 0) * 60 + quarters.indexOf(match[2]) * 15;
    }
    match = /^(\d{1,2}):([0-5]?\d)$/.exec(text);
    if (match) {
      return Number(match[1]) * 60 + Number(match[2]);
    }
    return /^\d{1,2}(\.\d{1,2})?$/.test(text) ? Math.round(Number(text) * 60) : NaN;
  }

  function words(count) {
    const whole = Math.floor(count / 60);
    const rest = count % 60;
    if (rest % 15 !== 0) {
      return whole + ":" + String(rest).padStart(2, "0");
    }
    return (whole === 0 && rest > 0 ? "" : whole) + quarters[rest / 15];
  }

  function shown() {
    const count = minutes();
    const some = !Number.isNaN(count) && count > 0;
    range.value = some ? String(count) : "0";
    const said = words(count) + (count <= 60 && count % 15 === 0 ? " hour" : " hours");
    range.setAttribute("aria-valuetext", some ? said : "none");
    save.textContent = some ? "Save " + said : "Save hours";
  }

  function set(count) {
    field.value = words(Math.max(0, Math.min(24 * 60, count)));
    shown();
  }

  form.querySelectorAll("[data-step]").forEach((button) => {
    button.classList.remove("by-script");
    button.addEventListener("click", () => {
      const now = minutes();
      const step = Number(button.dataset.step);
      const from = Number.isNaN(now) ? 0 : now;
      set(step > 0 ? Math.floor(from / 15) * 15 + step : Math.ceil(from / 15) * 15 + step);
    });
  });
  rule.classList.remove("by-script");
  range.addEventListener("input", () => {
    set(Number(range.value));
  });
  field.addEventListener("input", shown);
  form.addEventListener("kept", shown);
  shown();

  // Clocks count on in whole minutes from what the server measured; the device's own time of day does not matter.
  const counting = Array.from(document.querySelectorAll("[data-minutes]"));
  const shownAt = performance.now();
  if (counting.length > 0) {
    setInterval(() => {
      counting.forEach((place) => {
        const count = Number(place.dataset.minutes) + Math.floor((performance.now() - shownAt) / 60000);
        place.textContent = count < 60 ? count + " min" : Math.floor(count / 60) + " h " + (count % 60) + " min";
      });
    }, 10000);
  }
})();
