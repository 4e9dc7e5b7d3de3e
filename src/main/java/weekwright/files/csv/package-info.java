/**
 * Reading and writing the plain files: UTF-8 text, CSV after RFC 4180, TOML, the lines before a build note. What comes in
 * is a folder; what goes out is records with their places, and {@link weekwright.base.Problem}s. Nothing here writes to a
 * project.
 */
package weekwright.files.csv;
