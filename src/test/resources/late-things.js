// Holds the scripts and pictures of a page back until it stands painted in its own letters, as where they come late: so what they
// move is seen each time, and only that is counted from then on.
const lateThings = (() => {
  const scripts = [];
  const pictures = [];
  new MutationObserver((changes) => changes.forEach((change) => change.addedNodes.forEach((one) => {
    if (one.tagName === "SCRIPT" && one.src && !one.dataset.late) {
      one.type = "held";
      scripts.push(one.src);
    } else if (one.tagName === "IMG" && !one.dataset.late) {
      one.dataset.late = one.getAttribute("src");
      one.removeAttribute("src");
      pictures.push(one);
    }
  }))).observe(document, { childList: true, subtree: true });

  const painted = new Promise((done) => new PerformanceObserver(done).observe({ type: "paint", buffered: true }));
  const parsed = new Promise((done) => document.addEventListener("DOMContentLoaded", done));
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const come = (one) => new Promise((done) => { one.onload = one.onerror = done; });

  async function comeLate() {
    await Promise.all([painted, parsed]);
    await document.fonts.ready;
    await frame();
    await frame();
    const from = performance.now();
    const all = scripts.map((src) => {
      const script = document.createElement("script");
      script.dataset.late = "no more";
      script.async = false;
      script.src = src;
      document.head.append(script);
      return come(script);
    });
    pictures.filter((one) => one.isConnected).forEach((one) => {
      one.loading = "eager";
      one.src = one.dataset.late;
      all.push(come(one));
    });
    await Promise.all(all);
    return from;
  }
  return comeLate();
})();
