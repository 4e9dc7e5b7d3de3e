/** The week's sheet for the screen and the shop wall, and the lines that the crew writes on it. */
package weekwright.web.week;
