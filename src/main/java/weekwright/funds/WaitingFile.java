package weekwright.funds;

import java.time.Instant;

/**
 * A file that was sent and is not in the books yet.
 *
 * @param key random, its part of the address
 * @param source id of the source that it is read as; empty while none was chosen
 */
public record WaitingFile(String key, String name, String source, Instant at) {}
