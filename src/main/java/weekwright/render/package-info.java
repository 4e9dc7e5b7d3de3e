/**
 * Pages as text: templates, the words for numbers and dates, and the charts. In come records and values, out goes HTML,
 * CSS or SVG text; nothing here reads a store, a clock or a request.
 */
package weekwright.render;
