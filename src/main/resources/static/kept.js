// What is typed while the server is out of reach stays on this device and is sent, in order and once, when it is in reach again.
// Every entry has its answer key from the moment it is kept: the server answers a key that it knows as it did the first time.
// Forms that may wait carry data-keep. Without this script, or where the device stores nothing, they post as any form does.
(() => {
  "use strict";
  const main = document.getElementById("main");
  const place = document.querySelector("[data-kept]");
  const whose = main ? main.dataset.whose : "";
  if (!place || !whose) return;
  const forms = Array.from(document.querySelectorAll("form[data-keep]"));
  const NO_STORE = "This device will not keep entries. Write it down, or stay in reach of the server.";
  const AWAY = "The server is out of reach, and this can be done with it alone. Nothing was lost; try again when it is in reach.";
  const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

  // ---- the store of this device

  let base = null;
  const opened = () => new Promise((done, fail) => {
    const ask = indexedDB.open("kept", 1);
    ask.onupgradeneeded = () => ask.result.createObjectStore("entries", { keyPath: "number", autoIncrement: true });
    ask.onsuccess = () => done(ask.result);
    ask.onerror = () => fail(ask.error);
  });
  async function store(mode, work) {
    base = base || opened();
    const all = (await base).transaction("entries", mode, { durability: "strict" });
    return new Promise((done, fail) => {
      const ask = work(all.objectStore("entries"));
      all.oncomplete = () => done(ask.result);
      all.onabort = () => fail(all.error);
    });
  }
  const put = (entry) => store("readwrite", (entries) => entries.put(entry));
  const remove = (entry) => store("readwrite", (entries) => entries.delete(entry.number));
  const list = () => store("readonly", (entries) => entries.getAll()).catch(() => []);

  // A store that does not answer keeps nothing either.
  const soon = (stored) => Promise.race([stored, new Promise((done, fail) => setTimeout(fail, 10000))]);

  // ---- the server

  let away = false;
  let reach = null;

  // Who answers here now; null where nobody does, or something that is not this program. What was known stands until it is known
  // anew: another entry may just be on its way by it.
  async function ask() {
    let found = null;
    try {
      const answer = await fetch("/reach", { cache: "no-store", signal: AbortSignal.timeout(10000) });
      const said = answer.ok ? await answer.json() : {};
      if (typeof said.whose === "string") {
        found = said;
        if (said.day) localStorage.setItem("days beside this device", String(days(said.day) - days(ownDay())));
      }
    } catch (e) { /* out of reach, or no local storage */ }
    reach = found;
    away = !found;
    return found;
  }

  async function post(entry, later) {
    const files = entry.fields.some((field) => field[1] instanceof Blob);
    const body = files ? new FormData() : new URLSearchParams();
    [["csrf", reach.csrf], ["answer", entry.key]].concat(entry.fields).forEach((field) => body.append(field[0], field[1]));
    const headers = { Accept: "application/json" };
    if (later) headers.Prefer = "return=minimal";
    const answer = await fetch(entry.action, {
      method: "POST", headers, body, redirect: "error", signal: AbortSignal.timeout(files ? 120000 : 30000),
    });
    return Object.assign({ status: answer.status }, await answer.json());
  }

  // Sends what waits, oldest first; what is refused stays with the reason and the others go on. A lost answer ends it.
  let under = Promise.resolve();
  let sent = 0;
  function flush(before) {
    under = under.then(async () => {
      const waiting = (await list()).filter((entry) => entry.state === "waits" && (!before || entry.number < before));
      if (waiting.length === 0 || !(await ask())) return;
      for (const entry of waiting.filter((one) => one.whose === reach.whose)) {
        const answer = await post(entry, true);
        if (answer.status === 200) {
          await remove(entry);
          sent += 1;
        } else if (answer.status === 401 || answer.status >= 500) {
          return;
        } else {
          await put(Object.assign(entry, { state: "refused", faults: answer.faults || [] }));
        }
      }
    }).catch(() => { away = true; });
    return before ? under : under.then(show);
  }

  // ---- the day: a page that stood open over midnight, or was opened without the server, is for today

  const days = (iso) => Math.round(Date.parse(iso + "T00:00:00Z") / 86400000);
  const ownDay = () => {
    const now = new Date();
    return new Date(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate())).toISOString().slice(0, 10);
  };
  function turn() {
    let beside = null;
    try { beside = localStorage.getItem("days beside this device"); } catch (e) { /* no local storage */ }
    if (beside === null) return;
    const day = new Date((days(ownDay()) + Number(beside)) * 86400000).toISOString().slice(0, 10);
    const old = main.dataset.day;
    if (day <= old) return;
    forms.forEach((form) => ["date", "day"].map((name) => form.elements[name])
      .filter((field) => field && field.value === old)
      .forEach((field) => {
        if (field.max) field.max = day;
        field.value = field.defaultValue = day;
      }));
    document.querySelectorAll("[data-day-words]").forEach((words) => {
      words.textContent = Number(day.slice(8)) + "\u00a0" + MONTHS[Number(day.slice(5, 7)) - 1];
    });
    main.dataset.day = day;
  }

  // ---- what was typed

  const labelOf = (field) => {
    const label = field.closest("label") || document.querySelector(`label[for="${CSS.escape(field.id)}"]`);
    const words = label && (label.querySelector("span") || label);
    return words ? words.textContent.trim() : "";
  };
  function words(form, button) {
    const said = Array.from(form.elements).filter((field) => field.name && field.type !== "hidden" && field.offsetParent)
      .map((field) => {
        if (/^(checkbox|radio)$/.test(field.type)) return field.checked ? labelOf(field) : "";
        if (!/^(INPUT|TEXTAREA|SELECT)$/.test(field.tagName) || !field.value) return "";
        if (field.type === "file") return field.files.length ? field.files[0].name : "";
        if (field.tagName === "SELECT") return field.selectedOptions[0].textContent.trim();
        return labelOf(field) + " " + field.value;
      }).filter((text) => text);
    const text = form.dataset.keep + ": " + (said.length ? said.join(", ") : button.textContent.trim());
    return text.length > 200 ? text.slice(0, 199) + "…" : text;
  }
  const key = () => Array.from(crypto.getRandomValues(new Uint8Array(24)), (one) => one.toString(16).padStart(2, "0")).join("");

  function made(form, button) {
    turn();
    const fields = Array.from(new FormData(form)).filter(([name, value]) =>
      name !== "csrf" && name !== "answer" && !(value instanceof File && !value.name && !value.size));
    if (button && button.name) fields.push([button.name, button.value]);
    return {
      at: Date.now(), whose, action: form.getAttribute("action") || location.pathname + location.search,
      words: words(form, button), key: key(), fields, state: "waits", faults: [],
    };
  }

  // ---- a form is sent

  // The form posts as any form does, past this script.
  const passing = new WeakSet();
  function pass(form, button) {
    delete form.dataset.sent;
    passing.add(form);
    form.requestSubmit(button || undefined);
    passing.delete(form);
  }

  async function keep(form, button) {
    if (form.dataset.sent) return;
    form.dataset.sent = "yes";
    const entry = made(form, button);
    const putting = put(entry);
    try {
      entry.number = await soon(putting);
    } catch (e) {
      // what is stored late after all has the key of what was posted, and goes
      putting.then((number) => remove({ number })).catch(() => {});
      form.elements.answer.value = entry.key;
      if (await ask()) pass(form, button);
      else say(NO_STORE);
      delete form.dataset.sent;
      return;
    }
    try {
      await flush(entry.number);
      const there = away ? await ask() : reach || await ask();
      if (there && there.whose === whose) {
        const answer = await post(entry, false);
        await remove(entry);
        if (answer.status === 200) {
          form.dispatchEvent(new Event("kept"));
          location.assign(answer.to);
        } else {
          pass(form, button);
        }
        return;
      }
    } catch (e) {
      away = true;
    }
    if (Array.from(form.elements).some((field) => field.offsetParent && field.name && field.name !== "do")) form.reset();
    else mark(form);
    form.dispatchEvent(new Event("kept"));
    delete form.dataset.sent;
    await show();
    place.scrollIntoView({ block: "nearest" });
  }

  function mark(form) {
    const button = form.querySelector("button");
    button.disabled = true;
    button.textContent = "Kept, not sent yet";
  }

  document.addEventListener("submit", async (e) => {
    const form = e.target;
    if (form.method !== "post" || passing.has(form)) return;
    const button = e.submitter;
    const other = button && button.name && button.dataset.keepToo === undefined;
    if (form.dataset.keep !== undefined && !other) {
      e.preventDefault();
      keep(form, button);
    } else if (away) {
      e.preventDefault();
      if (await ask()) pass(form, button);
      else say(AWAY);
    }
  }, true);

  // ---- what waits is shown

  const line = document.createElement("p");
  line.setAttribute("role", "status");
  const entriesShown = document.createElement("ul");
  entriesShown.className = "ruled";
  place.append(line, entriesShown);

  function say(text) {
    place.hidden = false;
    line.textContent = text;
    place.scrollIntoView({ block: "nearest" });
  }
  function button(text, act) {
    const one = document.createElement("button");
    one.type = "button";
    one.className = "button small";
    one.textContent = text;
    one.addEventListener("click", act);
    return one;
  }
  const clock = (at) => {
    const when = new Date(at);
    const time = when.getHours() + ":" + String(when.getMinutes()).padStart(2, "0");
    return when.toDateString() === new Date().toDateString() ? time : when.getDate() + "\u00a0" + MONTHS[when.getMonth()] + " " + time;
  };
  const again = (entry, change) => () => put(Object.assign(entry, change)).then(() => flush());

  function shown(entry) {
    const item = document.createElement("li");
    const what = document.createElement("span");
    const small = document.createElement("small");
    const acts = document.createElement("span");
    acts.className = "acts";
    const mine = (reach ? reach.whose : whose).split("|");
    const from = entry.whose.split("|");
    what.append(entry.words, " ", small);
    item.append(what, acts);
    if (entry.state === "removed") {
      small.textContent = "removed";
      acts.append(button("Put it back", again(entry, { state: "waits" })));
      return item;
    }
    if (entry.state === "refused") {
      item.className = "refused";
      small.textContent = "Not taken: " + entry.faults.join(" ");
      acts.append(button("Send it once more", again(entry, { state: "waits", faults: [] })));
    } else if (mine.length === 2 && mine[0] !== from[0]) {
      item.className = "refused";
      small.textContent = "Typed " + clock(entry.at) + " for another project, or before this one was set up anew.";
      acts.append(button("It belongs here", again(entry, { whose: reach ? reach.whose : whose })));
    } else if (mine.length === 2 && mine[1] !== from[1]) {
      item.className = "refused";
      small.textContent = "Typed " + clock(entry.at) + " by " + from[1] + ", who is not the one chosen here now.";
      acts.append(button("Send it all the same", again(entry, { whose: reach ? reach.whose : whose })));
    } else {
      small.textContent = "typed " + clock(entry.at);
    }
    acts.append(button("Remove", () => put(Object.assign(entry, { state: "removed" })).then(show)));
    return item;
  }

  async function show() {
    const all = await list();
    const waiting = all.filter((entry) => entry.state !== "removed");
    const refused = waiting.filter((entry) => entry.state === "refused").length;
    place.hidden = all.length === 0 && sent === 0;
    entriesShown.replaceChildren(...all.map(shown));
    const parts = [];
    const still = [waiting.length > refused ? waiting.length - refused + " waiting" : "", refused > 0 ? refused + " not taken" : ""];
    if (waiting.length > 0) parts.push("Kept on this device, " + still.filter((words) => words).join(", ") + ".");
    if (waiting.length > refused && away) parts.push("The server is out of reach; what waits is sent when it is in reach again.");
    if (sent > 0) parts.push((waiting.length === 0 ? "All sent " : sent + " sent ") + clock(Date.now()) + ".");
    line.textContent = parts.join(" ");
    if (waiting.length > refused && reach && !reach.whose) {
      const door = document.createElement("a");
      door.href = reach.door + "?to=" + encodeURIComponent(location.pathname);
      door.textContent = "Come in again";
      line.append(" Nobody is known here any more. ", door, ", then what waits is sent.");
    } else if (waiting.length > refused) {
      line.append(" ", button("Send now", () => flush()));
    }
    forms.filter((form) => form.elements.shot && waiting.some((entry) => entry.fields.some(([name, value]) =>
      name === "shot" && value === form.elements.shot.value))).forEach(mark);
  }

  // ---- when

  const waitingNow = async () => (await list()).some((entry) => entry.state === "waits");
  const tryAgain = async () => {
    turn();
    if (document.visibilityState === "visible" && await waitingNow()) flush();
  };
  window.addEventListener("online", tryAgain);
  document.addEventListener("visibilitychange", tryAgain);
  setInterval(tryAgain, 20000);
  (async () => {
    turn();
    const old = await list();
    await Promise.all(old.filter((entry) => entry.state === "removed").map(remove));
    if (old.some((entry) => entry.state === "waits")) await flush();
    else {
      if (forms.length > 0) await ask();
      if (old.length > 0) await show();
    }
  })().catch(() => {});
})();
