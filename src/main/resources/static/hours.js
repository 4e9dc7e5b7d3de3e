// The rule for hours: buttons, a drawn rule and the typed field say the same. Typed hours stand as they were typed.
(() => {
  const quarters = ["", "¼", "½", "¾"];
  const most = 24 * 60;

  // 3.5, 3,5, 3:30, 3½, ½ as whole minutes; NaN where it is not hours.
  const read = (text) => {
    const plain = text.trim();
    if (plain === "") return 0;
    let m = /^(\d{1,2}):(\d{1,2})$/.exec(plain);
    if (m) return Number(m[2]) < 60 ? Number(m[1]) * 60 + Number(m[2]) : NaN;
    m = /^(\d{0,2}) ?([¼½¾])$/.exec(plain);
    if (m) return Number(m[1] || 0) * 60 + 15 * quarters.indexOf(m[2]);
    return /^\d{1,2}([.,]\d{1,2})?$/.test(plain) ? Math.round(Number(plain.replace(",", ".")) * 60) : NaN;
  };

  const write = (minutes) => {
    const whole = Math.floor(minutes / 60);
    const rest = minutes % 60;
    if (rest % 15) return `${whole}:${String(rest).padStart(2, "0")}`;
    return whole === 0 && rest ? quarters[rest / 15] : `${whole}${quarters[rest / 15]}`;
  };

  document.querySelectorAll("[data-hours]").forEach((field) => {
    const text = field.querySelector("[data-hours-text]");
    const range = field.querySelector("[data-hours-range]");
    const worked = field.querySelector("[data-hours-worked]");
    const said = field.querySelector("[data-hours-said]");
    const save = text.form && text.form.querySelector("[data-hours-save]");
    field.querySelectorAll("[hidden]").forEach((part) => { part.hidden = false; });

    const show = () => {
      const minutes = read(text.value);
      const known = Number.isFinite(minutes) ? minutes : 0;
      range.value = Math.min(720, known);
      range.setAttribute("aria-valuetext", `${write(known)} hours`);
      worked.setAttribute("width", String((Math.min(720, known) / 15) * 7));
      if (save) save.textContent = known > 0 ? `Save ${write(known)} ${known <= 60 ? "hour" : "hours"}` : save.dataset.hoursSave;
      text.dispatchEvent(new CustomEvent("hours", { bubbles: true, detail: known }));
    };
    const put = (minutes) => {
      text.value = write(Math.max(0, Math.min(most, minutes)));
      said.textContent = `${text.value} hours`;
      show();
    };
    field.querySelectorAll("[data-hours-step]").forEach((button) => button.addEventListener("click", () => {
      const step = Number(button.dataset.hoursStep);
      const now = read(text.value) || 0;
      put(step > 0 ? Math.floor(now / 15) * 15 + 15 : Math.ceil(now / 15) * 15 - 15);
    }));
    range.addEventListener("input", () => put(Number(range.value)));
    text.addEventListener("input", show);
    show();
  });
})();
