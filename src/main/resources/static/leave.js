// Logging out leaves nothing of the project on this device. What was typed and not saved is asked about first, and stays where
// that is ticked. The server asks browsers for the same by a header, which they heed under https and on the machine itself alone.
(() => {
  "use strict";
  const form = document.querySelector("form[data-leave]");
  if (!form) return;
  const typed = async () => {
    try {
      if (localStorage.length > 0) return true;
      return indexedDB.databases ? (await indexedDB.databases()).length > 0 : false;
    } catch (e) {
      return false;
    }
  };
  typed().then((some) => { form.querySelector("[data-unsaved]").hidden = !some; });
  form.addEventListener("submit", () => {
    if (form.elements.keep.checked) return;
    try {
      localStorage.clear();
      sessionStorage.clear();
      if (indexedDB.databases) {
        indexedDB.databases().then((all) => all.forEach((one) => indexedDB.deleteDatabase(one.name)));
      }
    } catch (e) { /* storage is not allowed here: nothing was kept */ }
  });
})();
