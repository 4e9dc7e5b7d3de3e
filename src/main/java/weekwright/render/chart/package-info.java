/**
 * Drawings as SVG text with classes only, never inline style, so that a strict content policy holds. In come dates, minor
 * units and chances; the same input gives the same text.
 */
package weekwright.render.chart;
