// The rules of accessibility as axe-core tries them, on the page as it stands and without loading it again. What cannot come out
// otherwise than on a page before is not asked again: contrast is decided by colour, ground and size of letters, so axe-core is
// asked where a page has a new such set; the head and foot of a sheet are tried once for each shape that they have.
const pageRules = (() => {
  const ASKED = { resultTypes: ["violations"], preload: false, iframes: false, elementRef: false, selectors: false };
  const CHROME = ".masthead, .phone-foot, footer, dialog";

  const seen = (name) => new Set(JSON.parse(sessionStorage.getItem(name) || "[]"));
  const see = (name, more) => sessionStorage.setItem(name, JSON.stringify([...seen(name), ...more]));

  async function axeSays(context, more) {
    const said = await axe.run(context, { ...ASKED, ...more });
    return said.violations.map((rule) => `${rule.id}, ${rule.help}: ${rule.nodes.length} times, ${rule.nodes[0].html.slice(0, 200)}`);
  }

  const shape = (one) => [one.tagName, one.className, one.getAttribute("role"), one.id, [...one.children].map(shape)].join(" ");

  function ground(one) {
    const layers = [];
    for (let at = one; at; at = at.parentElement) {
      const style = getComputedStyle(at);
      if (style.opacity !== "1") layers.push(style.opacity);
      if (style.position !== "static" && style.position !== "relative") layers.push(`${style.position} ${at.className}`);
      if (style.backgroundImage !== "none") layers.push(style.backgroundImage);
      if (!style.backgroundColor.endsWith(", 0)")) {
        layers.push(style.backgroundColor);
        if (!style.backgroundColor.startsWith("rgba")) break;
      }
    }
    return layers.join(" on ");
  }

  // Everything that shows letters: its colour, what lies under it, its size and weight.
  function letters() {
    const found = new Set();
    const grounds = new Map();
    document.body.querySelectorAll("*").forEach((one) => {
      const shows = one.matches("input, textarea, select") || [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim());
      if (!shows || !one.checkVisibility()) return;
      const style = getComputedStyle(one);
      const under = style.backgroundColor.startsWith("rgb(") ? one : one.parentElement;
      if (!grounds.has(under)) grounds.set(under, ground(under));
      found.add([style.color, style.fontSize, style.fontWeight, style.opacity, style.backgroundColor, style.textShadow,
        style.textDecorationLine, one.matches("a") ? getComputedStyle(one.parentElement).color : "", one instanceof SVGElement ? style.fill : "", grounds.get(under)].join("; "));
    });
    return found;
  }

  async function contrast() {
    const known = seen("letters");
    const fresh = [...letters()].filter((one) => !known.has(one));
    if (!fresh.length) return [];
    const faults = await axeSays(document, { runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block"] } });
    if (!faults.length) see("letters", fresh);
    return faults;
  }

  async function all() {
    const chrome = [...document.querySelectorAll(CHROME)].map(shape).join(" ");
    const context = seen("chrome").has(chrome) ? { include: ["html"], exclude: CHROME.split(", ") } : document;
    const faults = await axeSays(context, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
      rules: { "color-contrast": { enabled: false } },
    });
    if (!faults.length) see("chrome", [chrome]);
    faults.push(...await contrast());
    return faults;
  }

  // What is at least 24 pixels in both directions keeps the rule of target sizes; for all else axe-core is asked.
  async function phone() {
    const faults = await contrast();
    const small = [...document.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex]")].some((one) => {
      const box = one.getBoundingClientRect();
      return box.width && (box.width < 24 || box.height < 24);
    });
    if (small) faults.push(...await axeSays(document, { runOnly: { type: "rule", values: ["target-size"] } }));
    return faults;
  }

  // The width of the letters' own viewport: innerWidth grows with what is too wide.
  function reflow() {
    const width = document.documentElement.clientWidth;
    const over = document.documentElement.scrollWidth - width;
    if (over <= 0) return [];
    const wide = [...document.querySelectorAll("main *")].filter((one) => one.getBoundingClientRect().right > width + 1);
    return [`at ${width} pixels it is ${over} too wide: ${wide.length ? wide[wide.length - 1].outerHTML.slice(0, 160) : ""}`];
  }

  // A refused form says so at once: the focus is on what is wrong, each such field names its fault, and the list leads to it. A
  // browser moves the focus to what has autofocus when it draws its next frame, which may be after the page was loaded (HTML
  // Standard, update the rendering: flush autofocus candidates).
  async function announced() {
    await new Promise((done) => requestAnimationFrame(done));
    const alert = document.querySelector("main [role=alert]");
    if (!alert || !alert.textContent.trim()) return ["nothing says that it was refused"];
    const at = document.activeElement;
    const faults = at === alert || at.matches("[aria-invalid=true]") ? [] : [`the focus is on ${at.outerHTML.slice(0, 120)}`];
    const wrong = [...document.querySelectorAll("main [aria-invalid=true]")];
    if (!wrong.length) faults.push("no field is marked");
    wrong.forEach((one) => {
      const said = (one.getAttribute("aria-describedby") || "").split(" ").map((id) => document.getElementById(id));
      if (!said.some((words) => words && words.textContent.trim())) faults.push(`${one.id} does not say what is wrong with it`);
      if (!alert.querySelector(`a[href="#${CSS.escape(one.id)}"]`)) faults.push(`nothing leads to ${one.id}`);
    });
    return faults;
  }

  function links() {
    return [...document.querySelectorAll("a[href]")].map((one) => new URL(one.getAttribute("href"), location.href))
      .filter((to) => to.origin === location.origin).map((to) => to.pathname + to.search);
  }

  return { all, contrast, phone, reflow, announced, links };
})();
