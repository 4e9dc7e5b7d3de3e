package weekwright.engine;

/**
 * The k-th smallest of many numbers without sorting all of them (Hoare 1961, "Algorithm 65: Find", Communications of the ACM
 * 4:321-322; the pivot is the median of first, middle and last). Cost: proportional to the count on average, to its square at worst.
 */
final class Smallest {
    private Smallest() {}

    /**
     * The numbers that would stand at some positions if all were sorted.
     *
     * @param values are brought into another order
     * @param positions from 0, in growing order
     */
    static long[] at(long[] values, int... positions) {
        long[] found = new long[positions.length];
        int from = 0;
        for (int i = 0; i < positions.length; i++) {
            find(values, from, positions[i]);
            found[i] = values[positions[i]];
            from = positions[i];
        }
        return found;
    }

    /** Puts the right number at {@code k}, none greater before it and none smaller after it; all before {@code from} are in place. */
    private static void find(long[] values, int from, int k) {
        int low = from;
        int high = values.length - 1;
        while (low < high) {
            long pivot = median(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    long other = values[i];
                    values[i++] = values[j];
                    values[j--] = other;
                }
            }
            if (k <= j) {
                high = j;
            } else if (k >= i) {
                low = i;
            } else {
                return;
            }
        }
    }

    private static long median(long a, long b, long c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
