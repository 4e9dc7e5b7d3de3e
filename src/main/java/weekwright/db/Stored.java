package weekwright.db;

/**
 * A record as it stands in the store.
 *
 * @param row its place in the stored order, never used twice
 * @param version rises by one with each change of the row, from 1
 */
public record Stored<R extends Record>(long row, long version, R value) {}
