/**
 * Made-up projects whose truth is known: drawn from the model's own assumptions or from others, written as plain files as of a day,
 * forecast from those files, lived on, and scored.
 */
package weekwright.worlds;
