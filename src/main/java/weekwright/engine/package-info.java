/**
 * The forecast's numbers: {@link weekwright.engine.Inputs} in, {@link weekwright.engine.Outcome} out. Pure functions of the
 * inputs, the number of trials and the seed; the same on any machine and any number of threads. Nothing here knows a file, a
 * table, a date format or a title.
 */
package weekwright.engine;
