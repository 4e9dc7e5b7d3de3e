package weekwright.cli;

import java.io.PrintStream;
import java.time.Clock;
import java.util.Optional;

/**
 * Where a command runs: its streams and its clock.
 *
 * @param interactive whether somebody watches standard error, so that a progress bar makes sense
 * @param secrets how a passphrase is typed
 * @param threads processors to use where nothing else is said
 */
public record Terminal(
        PrintStream out, PrintStream err, boolean interactive, Clock clock, int threads, Secrets secrets) {

    /** Reads what is not to be seen. */
    public interface Secrets {
        /** One line, not shown while it is typed; empty when nothing more comes. */
        Optional<String> line(String question);

        /** Whether somebody types it blindly, so that it is asked twice. */
        boolean typed();
    }
}
