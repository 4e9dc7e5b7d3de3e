/**
 * Backups: a project as one file that was read back and checked before it got its name, and back from it into a new folder.
 */
package weekwright.files.backup;
