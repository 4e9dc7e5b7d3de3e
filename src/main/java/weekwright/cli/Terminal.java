package weekwright.cli;

import java.io.PrintStream;
import java.time.Clock;

/**
 * Where a command runs: its streams and its clock.
 *
 * @param interactive whether somebody watches standard error, so that a progress bar makes sense
 * @param threads processors to use where nothing else is said
 */
public record Terminal(PrintStream out, PrintStream err, boolean interactive, Clock clock, int threads) {}
