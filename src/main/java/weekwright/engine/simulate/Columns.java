package weekwright.engine.simulate;

import weekwright.engine.Outcome;

/**
 * Carries one array of a trial's state into an outcome, where each of its entries is a column with a place for every trial. The
 * entries of one trial lie far apart there, each on a page of memory of its own that has gone cold since the last trial, so rows are
 * kept for a block of trials and turned into columns together. The copying is small code on purpose: it is compiled once for all
 * arrays.
 */
abstract class Columns {
    /** The array in the answer "held for funds", and in "work first" where the two parted. */
    private final Object held;

    private final Object free;
    private final Object rows;
    final int width;

    /** @param rows an array of the same kind with room for a block of trials */
    private Columns(Object held, Object free, Object rows, int width) {
        this.held = held;
        this.free = free;
        this.rows = rows;
        this.width = width;
    }

    /** Keeps the array as it stands as the {@code i}-th row of the block. */
    final void keep(int i, boolean parted) {
        System.arraycopy(parted ? free : held, 0, rows, i * width, width);
    }

    /** Hands the first {@code count} rows over, each to the place of its trial. */
    abstract void flush(int[] trials, int count);

    static Columns of(int[] held, int[][] columns, int most) {
        int width = columns.length;
        int[] rows = new int[most * width];
        return new Columns(held, held, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    int[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        column[trials[i]] = rows[i * width + c];
                    }
                }
            }
        };
    }

    /** Days counted from the as-of day become epoch days; {@link Outcome#LATER} stays. */
    static Columns ofDays(int[] held, int[][] columns, int asOf, int most) {
        int width = columns.length;
        int[] rows = new int[most * width];
        return new Columns(held, held, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    int[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        int day = rows[i * width + c];
                        column[trials[i]] = day == State.LATER ? Outcome.LATER : day + asOf;
                    }
                }
            }
        };
    }

    static Columns of(long[] held, long[] free, long[][] columns, int most) {
        int width = columns.length;
        long[] rows = new long[most * width];
        return new Columns(held, free, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    long[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        column[trials[i]] = rows[i * width + c];
                    }
                }
            }
        };
    }

    static Columns of(float[] held, float[][] columns, int most) {
        int width = columns.length;
        float[] rows = new float[most * width];
        return new Columns(held, held, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    float[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        column[trials[i]] = rows[i * width + c];
                    }
                }
            }
        };
    }

    static Columns of(byte[] held, byte[][] columns, int most) {
        int width = columns.length;
        byte[] rows = new byte[most * width];
        return new Columns(held, held, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    byte[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        column[trials[i]] = rows[i * width + c];
                    }
                }
            }
        };
    }

    static Columns of(boolean[] held, boolean[] free, boolean[][] columns, int most) {
        int width = columns.length;
        boolean[] rows = new boolean[most * width];
        return new Columns(held, free, rows, width) {
            @Override
            void flush(int[] trials, int count) {
                for (int c = 0; c < width; c++) {
                    boolean[] column = columns[c];
                    for (int i = 0; i < count; i++) {
                        column[trials[i]] = rows[i * width + c];
                    }
                }
            }
        };
    }
}
