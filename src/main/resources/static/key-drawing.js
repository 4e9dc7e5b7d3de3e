// Puts the numbers of the list on the parts of the key drawing; the list stands without them.
(() => {
  "use strict";
  const space = "http://www.w3.org/2000/svg";
  document.querySelectorAll("svg.key-drawing").forEach((svg) => {
    const box = svg.viewBox.baseVal;
    const radius = Math.max(box.width, box.height) / 44;
    const toDrawing = svg.getScreenCTM();
    if (!toDrawing) return;
    const seen = new Set();
    svg.querySelectorAll("[data-number]").forEach((part) => {
      const number = part.dataset.number;
      const place = part.getBBox();
      if (seen.has(number) || (!place.width && !place.height)) return;
      seen.add(number);
      const middle = new DOMPoint(place.x + place.width / 2, place.y + place.height / 2)
        .matrixTransform(part.getScreenCTM()).matrixTransform(toDrawing.inverse());
      const ring = document.createElementNS(space, "circle");
      ring.setAttribute("class", "balloon-ring");
      ring.setAttribute("cx", middle.x);
      ring.setAttribute("cy", middle.y);
      ring.setAttribute("r", radius);
      const letter = document.createElementNS(space, "text");
      letter.setAttribute("class", "key-number");
      letter.setAttribute("x", middle.x);
      letter.setAttribute("y", middle.y + radius * 0.42);
      letter.setAttribute("text-anchor", "middle");
      letter.setAttribute("font-size", radius * 1.2);
      letter.textContent = number;
      svg.append(ring, letter);
    });
  });
})();
