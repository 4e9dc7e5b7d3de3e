// What a page weighs and when it is there, as the browser itself keeps count from the page's first moment on.
const pageSight = (() => {
  const shifts = [];
  const observer = new PerformanceObserver((list) => shifts.push(...list.getEntries()));
  observer.observe({ type: "layout-shift", buffered: true });

  const drawn = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

  async function still() {
    const from = typeof lateThings === "undefined" ? 0 : await lateThings;
    await document.fonts.ready;
    await drawn();
    shifts.push(...observer.takeRecords());
    return shifts.filter((one) => !one.hadRecentInput && one.value > 0 && one.startTime >= from);
  }

  const box = (rect) => `${Math.round(rect.x)},${Math.round(rect.y)} ${Math.round(rect.width)}×${Math.round(rect.height)}`;

  const words = (node) => !node ? "what is gone" : node.nodeType === 1 ? node.cloneNode(false).outerHTML.slice(0, 120)
    : `"${node.textContent.trim().slice(0, 40)}" in ${words(node.parentNode)}`;

  // What moved although nobody pressed anything (Layout Instability, W3C draft: value and hadRecentInput).
  async function moved() {
    return (await still()).map((one) => `${one.value.toFixed(5)} moved: `
      + one.sources.map((at) => `${words(at.node)} from ${box(at.previousRect)} to ${box(at.currentRect)}`).join("; "));
  }

  // All that comes late is there.
  async function settled() {
    await still();
    return true;
  }

  async function shift() {
    return (await still()).reduce((sum, one) => sum + one.value, 0);
  }

  const firstPaint = () => new Promise((done) => new PerformanceObserver((list) => list
    .getEntriesByName("first-contentful-paint").forEach((one) => done(one.startTime))).observe({ type: "paint", buffered: true }));

  // Bytes as they were sent, compressed, of every style sheet and script; those of a worker are not the page's.
  function paint() {
    return performance.getEntriesByType("resource").filter((one) => /\.(css|js)$/.test(new URL(one.name).pathname))
      .reduce((sum, one) => sum + one.encodedBodySize, 0);
  }

  // Bytes of the largest drawing as it stands in the page.
  function drawing() {
    return Math.max(0, ...Array.from(document.querySelectorAll("svg"), (one) => new Blob([one.outerHTML]).size));
  }

  return { moved, settled, shift, firstPaint, paint, drawing };
})();
