// Lists the clips of a card: names, times and lengths. The files themselves are read by this browser alone and never sent.
(() => {
  "use strict";
  const form = document.querySelector("[data-footage]");
  if (!form) return;
  form.querySelectorAll("[data-choose]").forEach((e) => e.classList.remove("by-script"));
  const listing = form.querySelector("#listing");
  const said = form.querySelector("[data-said]");
  const read = form.querySelector("button[value=read]");
  const films = /\.(mp4|mov|m4v|mxf|mts|m2ts|avi|mkv|webm|mpg|mpeg|3gp|crm|r3d|braw)$/i;

  const seconds = (file) => new Promise((done) => {
    const video = document.createElement("video");
    const address = URL.createObjectURL(file);
    const end = (value) => { clearTimeout(late); URL.revokeObjectURL(address); video.removeAttribute("src"); done(value); };
    const late = setTimeout(() => end(0), 5000);
    video.preload = "metadata";
    video.onloadedmetadata = () => end(Number.isFinite(video.duration) ? video.duration : 0);
    video.onerror = () => end(0);
    video.src = address;
  });

  const two = (n) => String(n).padStart(2, "0");
  const cell = (text) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const size = (bytes) => (bytes >= 1e9 ? `${(bytes / 1e9).toFixed(1)} GB` : `${Math.max(1, Math.round(bytes / 1e6))} MB`);

  const AT_ONCE = 6;
  const stop = form.querySelector("[data-stop]");
  let stopped = false;
  stop.addEventListener("click", () => { stopped = true; });

  async function line(file) {
    const length = await seconds(file);
    const start = new Date(file.lastModified - length * 1000); // a camera closes the file when the clip ends
    const minutes = length > 0 ? String(Math.max(0.01, Math.round(length / 0.6) / 100)) : "";
    const card = (file.webkitRelativePath || "").split("/")[0];
    return [
      file.name.replace(films, ""),
      `${start.getFullYear()}-${two(start.getMonth() + 1)}-${two(start.getDate())}`,
      `${two(start.getHours())}:${two(start.getMinutes())}`,
      minutes, size(file.size), card,
    ].map(cell).join(",");
  }

  form.querySelector("#folder").addEventListener("change", async (e) => {
    const files = [...e.target.files].filter((f) => films.test(f.name)).sort((a, b) => a.name.localeCompare(b.name));
    if (!files.length) { said.textContent = "No clips are in this folder."; return; }
    const lines = new Array(files.length);
    let next = 0, done = 0;
    stopped = false;
    stop.hidden = false;
    const work = async () => {
      while (next < files.length && !stopped) {
        const at = next++;
        lines[at] = await line(files[at]);
        done += 1;
        said.textContent = `${done.toLocaleString("en")} of ${files.length.toLocaleString("en")} clips read`;
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, work));
    stop.hidden = true;
    if (stopped) {
      said.textContent = "Stopped; nothing is listed. Choose the folder again, or a smaller one.";
      e.target.value = "";
      return;
    }
    listing.value = ["clip,date,time,minutes,size,card", ...lines].join("\n");
    said.textContent = files.length === 1 ? "One clip listed." : `${files.length.toLocaleString("en")} clips listed.`;
    read.click();
  });

  form.querySelector("#csv").addEventListener("change", async (e) => {
    if (!e.target.files.length) return;
    listing.value = await e.target.files[0].text();
    read.click();
  });
})();
