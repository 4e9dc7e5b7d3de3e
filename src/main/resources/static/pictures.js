// Pictures that are dropped on the page or pasted into it join those chosen. Without this script they are chosen by the field.
(() => {
  "use strict";
  const field = document.getElementById("pictures");
  const said = document.querySelector("[data-chosen]");
  if (!field || !said) return;
  const say = () => {
    const names = Array.from(field.files).map((file) => file.name);
    said.textContent = names.length === 0 ? "" : "In this order: " + names.join(", ") + ".";
  };
  const take = (files) => {
    const pictures = Array.from(files).filter((file) => file.type.startsWith("image/"));
    if (pictures.length === 0) return;
    const all = new DataTransfer();
    [...field.files, ...pictures].forEach((file) => all.items.add(file));
    field.files = all.files;
    say();
  };
  const carries = (transfer) => transfer && Array.from(transfer.types).includes("Files");
  field.addEventListener("change", say);
  document.addEventListener("paste", (e) => {
    if (!carries(e.clipboardData)) return;
    e.preventDefault();
    take(e.clipboardData.files);
  });
  // A file that is let fall beside a field would else take the page's place, and all that was typed with it.
  document.addEventListener("dragover", (e) => { if (carries(e.dataTransfer)) e.preventDefault(); });
  document.addEventListener("drop", (e) => {
    if (!carries(e.dataTransfer)) return;
    e.preventDefault();
    take(e.dataTransfer.files);
  });
})();
