/**
 * Values: immutable, checked when made, each with one text form and one parser that belong together. Knows nothing of
 * tables, files or pages. What comes in is text typed by people or read from files; what goes out is a value or a
 * {@link weekwright.base.Refused} that says the rule and the remedy.
 */
package weekwright.base;
