/** Dated build notes in Markdown and their pictures. */
package weekwright.notes;
