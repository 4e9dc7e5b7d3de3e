// Pictures that are let fall into a note's text, pasted there or chosen under it: each is sent by itself, and where it stands is
// written at the caret. Without this script they are added on the page of the note's pictures.
(() => {
  "use strict";
  const form = document.querySelector(".note-form");
  const row = document.querySelector("[data-text-pictures]");
  if (!form || !row) return;
  const text = form.elements.text;
  const field = row.querySelector("input[type=file]");
  const said = row.querySelector("[data-sent]");
  const refused = row.querySelector("[data-refused]");
  row.classList.remove("by-script");

  const send = (file, tell) => new Promise((done, failed) => {
    const body = new FormData();
    ["csrf", "answer"].forEach((name) => body.set(name, form.elements[name].value));
    body.set("do", "picture");
    body.set("pictures", file, file.name);
    const asked = new XMLHttpRequest();
    asked.open("POST", location.pathname);
    asked.responseType = "json";
    asked.upload.addEventListener("progress", (e) => {
      if (e.lengthComputable) tell(Math.floor((e.loaded * 100) / e.total));
    });
    asked.addEventListener("error", () => failed(new Error("\"" + file.name + "\" was not sent: the server was not reached; try once more.")));
    asked.addEventListener("load", () => {
      const answer = asked.response;
      if (asked.status === 200 && answer && answer.text) done(answer.text);
      else failed(new Error((answer && answer.refused) || "\"" + file.name + "\" was not taken (" + asked.status + "); load the page again, your draft is kept."));
    });
    asked.send(body);
  });

  // In a paragraph of its own; the caret stands where the words for it are written.
  const put = (mark) => {
    const at = text.selectionStart;
    const before = text.value.slice(0, at);
    const after = text.value.slice(text.selectionEnd);
    const lead = before === "" || before.endsWith("\n\n") ? "" : before.endsWith("\n") ? "\n" : "\n\n";
    const end = after.startsWith("\n\n") ? "" : after.startsWith("\n") ? "\n" : "\n\n";
    text.setRangeText(lead + mark + end, at, text.selectionEnd, "end");
    text.dispatchEvent(new Event("input", { bubbles: true }));
    return at + lead.length + 2;
  };

  let waiting = Promise.resolve();
  const take = (files) => {
    const all = Array.from(files);
    if (all.length === 0) return;
    refused.textContent = "";
    waiting = waiting.then(async () => {
      let caret = -1;
      let kept = 0;
      for (let i = 0; i < all.length; i++) {
        const name = all[i].name + (all.length > 1 ? " (" + (i + 1) + " of " + all.length + ")" : "");
        said.textContent = "Sending " + name + " …";
        try {
          const mark = await send(all[i], (percent) => {
            said.textContent = percent < 100 ? "Sending " + name + ", " + percent + " %" : "Making the copies of " + name + " …";
          });
          caret = put(mark);
          kept++;
        } catch (trouble) {
          refused.textContent = (refused.textContent + " " + trouble.message).trim();
        }
      }
      said.textContent = kept === 0 ? "" : (kept === 1 ? "It stands in the text" : "They stand in the text") + "; write between [ and ] what is seen.";
      if (kept === 1) {
        text.focus();
        text.setSelectionRange(caret, caret);
      }
    });
  };

  const carries = (transfer) => transfer && Array.from(transfer.types).includes("Files");
  field.addEventListener("change", () => { take(field.files); field.value = ""; });
  text.addEventListener("paste", (e) => {
    if (!carries(e.clipboardData) || e.clipboardData.getData("text/plain") !== "") return;
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
