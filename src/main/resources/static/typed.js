// What is typed into a form stays on this device until it is saved: going back, a closed page or a crash loses none of it.
// Nothing of passphrases, files and hidden fields is kept; what is older than a week is thrown away.
(() => {
  "use strict";
  const main = document.getElementById("main");
  const whose = main ? main.dataset.whose : "";
  if (!whose || location.pathname.startsWith("/account")) {
    return;
  }
  const PREFIX = "typed|";
  const SENT = "typed sent";
  const WEEK = 7 * 24 * 60 * 60 * 1000;
  const visit = performance.getEntriesByType("navigation")[0] || { type: "navigate", redirectCount: 0 };

  const store = {
    get(key) {
      try {
        return JSON.parse(localStorage.getItem(key));
      } catch (e) {
        return null;
      }
    },
    set(key, value) {
      try {
        localStorage.setItem(key, JSON.stringify(value));
      } catch (e) { /* no room, or not allowed: the form works all the same */ }
    },
    remove(key) {
      try {
        localStorage.removeItem(key);
      } catch (e) { /* as above */ }
    },
  };

  function tidy() {
    try {
      Object.keys(localStorage).filter((key) => key.startsWith(PREFIX)).forEach((key) => {
        const kept = store.get(key);
        if (!kept || Date.now() - kept.at > WEEK) {
          store.remove(key);
        }
      });
    } catch (e) { /* as above */ }
  }

  const fields = (form) => Array.from(form.elements).filter((field) =>
    field.name && /^(INPUT|TEXTAREA|SELECT)$/.test(field.tagName)
    && !/^(hidden|password|file|submit|button|reset|image)$/.test(field.type));
  const pressed = (field) => field.type === "checkbox" || field.type === "radio";

  function read(form) {
    const all = {};
    fields(form).forEach((field) => {
      all[field.name] = all[field.name] || [];
      if (!pressed(field) || field.checked) {
        all[field.name].push(field.value);
      }
    });
    return all;
  }

  function put(form, values, version) {
    const next = {};
    fields(form).forEach((field) => {
      const list = values[field.name];
      if (!list) {
        return;
      }
      if (pressed(field)) {
        field.checked = list.includes(field.value);
      } else {
        next[field.name] = next[field.name] || 0;
        if (next[field.name] < list.length) {
          field.value = list[next[field.name]++];
        }
      }
    });
    // saved against the version that it was typed over, so that a newer one is never overwritten unseen
    if (version && form.elements.version) {
      form.elements.version.value = version;
    }
    fields(form).forEach((field) => field.dispatchEvent(new Event("input", { bubbles: true })));
  }

  const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

  // Whether words differ, not only what is pressed: that alone is not worth a question.
  function wordsDiffer(form, values) {
    const now = read(form);
    return fields(form).some((field) =>
      !pressed(field) && values[field.name] && !same(values[field.name], now[field.name]));
  }

  function clock(at) {
    const when = new Date(at);
    const time = when.getHours() + ":" + String(when.getMinutes()).padStart(2, "0");
    const today = new Date().toDateString() === when.toDateString();
    return today ? "at " + time : "on " + when.getDate() + " "
      + ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November",
        "December"][when.getMonth()] + " at " + time;
  }

  // Laid over the foot of the window: whatever is read or typed meanwhile stays where it is.
  function lines() {
    let place = main.querySelector(".typed-lines");
    if (!place) {
      place = document.createElement("div");
      place.className = "typed-lines";
      main.append(place);
    }
    return place;
  }

  function say(text, buttons) {
    const line = document.createElement("p");
    line.className = "typed-before";
    line.setAttribute("role", "status");
    line.append(text + " ");
    buttons.forEach(([words, act]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "button small";
      button.textContent = words;
      button.addEventListener("click", () => {
        act();
        const place = line.parentNode;
        line.remove();
        if (!place.firstChild) {
          place.remove();
        }
      });
      line.append(button, " ");
    });
    lines().append(line);
  }

  function keep(form, index) {
    const key = PREFIX + whose + "|" + location.pathname + location.search + "|" + index;
    const untouched = read(form);
    const version = form.elements.version ? form.elements.version.value : "";
    let timer = 0;

    function note() {
      clearTimeout(timer);
      const now = read(form);
      if (same(now, untouched)) {
        store.remove(key);
      } else {
        store.set(key, { at: Date.now(), version: form.elements.version ? form.elements.version.value : "", values: now });
      }
    }

    const sent = sessionStorage.getItem(SENT);
    const answered = sent === key && visit.type === "navigate" && visit.redirectCount === 0;
    const kept = store.get(key);
    if (form.querySelector(".trouble") || answered) {
      // shown once more by the server with what was typed: not saved yet
      store.set(key, { at: Date.now(), version, values: untouched });
    } else if (kept && !same(kept.values, untouched)) {
      const throwAway = () => {
        put(form, untouched, version);
        store.remove(key);
      };
      if (visit.type === "back_forward" || visit.type === "reload") {
        put(form, kept.values, kept.version);
        say("What you typed " + clock(kept.at) + " stands here again, not saved yet.", [["Throw it away", throwAway]]);
      } else if (wordsDiffer(form, kept.values)) {
        say("You had typed something here " + clock(kept.at) + " and not saved it.",
          [["Put it back", () => put(form, kept.values, kept.version)], ["Throw it away", () => store.remove(key)]]);
      }
    }
    form.addEventListener("input", () => {
      clearTimeout(timer);
      timer = setTimeout(note, 300);
    });
    form.addEventListener("change", note);
    // sent by this page itself, or kept on this device to be sent later: nothing of it is left to offer
    form.addEventListener("kept", () => {
      clearTimeout(timer);
      timer = 0;
      store.remove(key);
      sessionStorage.removeItem(SENT);
    });
    window.addEventListener("pagehide", () => {
      if (timer) {
        note();
      }
    });
    form.addEventListener("submit", () => {
      note();
      clearTimeout(timer);
      timer = 0;
      sessionStorage.setItem(SENT, key);
    });
  }

  // A form that was accepted goes on to another page by a redirect; a lost log-in goes on to the log-in page, which never gets here.
  try {
    const sent = sessionStorage.getItem(SENT);
    if (sent && visit.type === "navigate" && visit.redirectCount > 0) {
      store.remove(sent);
      sessionStorage.removeItem(SENT);
    }
    tidy();
    Array.from(main.querySelectorAll("form[method=post]"))
      .filter((form) => fields(form).length > 0 && !form.closest("[data-no-keep]"))
      .forEach(keep);
    sessionStorage.removeItem(SENT);
  } catch (e) { /* storage is not allowed here: the form works all the same */ }
})();
