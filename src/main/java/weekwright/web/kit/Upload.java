package weekwright.web.kit;

import java.io.InputStream;
import java.util.function.Supplier;

/**
 * A file that came with a form.
 *
 * @param name as the browser calls it; never used as a path
 * @param bytes how many there are
 * @param content opens it anew each time
 */
public record Upload(String name, long bytes, Supplier<InputStream> content) {}
