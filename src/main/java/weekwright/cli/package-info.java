/**
 * The command line: one class per command, called by {@link weekwright.cli.CommandLines} with the streams, clock and settings
 * of a {@link weekwright.cli.Terminal}. Results go to standard output, problems to standard error; the exit status is 0 when
 * all is well, 1 for a fault in the data, 2 for wrong usage.
 */
package weekwright.cli;
