/**
 * The build itself: crew and their hours, equipment, stages, tasks, links, hours entries, week lines, gatherings, and
 * the project's settings. Records hold exactly the columns of the plain files; each has a {@code Store}; a verb class is
 * one write that checks or touches more than its own row.
 */
package weekwright.build;
