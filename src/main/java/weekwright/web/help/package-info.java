/** The help: a page for each group of sheets, and the words of the program. Texts lie in {@code templates/help}. */
package weekwright.web.help;
