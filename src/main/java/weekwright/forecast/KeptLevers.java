package weekwright.forecast;

import weekwright.base.Bounds;
import weekwright.base.Words;

/**
 * Levers under a name, to be tried again.
 *
 * @param name unique regardless of case
 * @param pulled what is changed, a word each: {@code helper=16}, {@code supporters=-33}
 */
public record KeptLevers(@Bounds(max = 80) String name, Words pulled) {}
