/**
 * A whole project in plain files and back: check, import, export. Whatever is read is checked whole before anything is
 * written; every fault is told with file, line, column, what was read, the rule and the remedy.
 */
package weekwright.files;
