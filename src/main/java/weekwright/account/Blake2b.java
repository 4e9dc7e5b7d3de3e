package weekwright.account;

import java.util.Arrays;

/** BLAKE2b without a key (RFC 7693). */
final class Blake2b {
    private static final int BLOCK = 128;
    private static final long[] START = {
        0x6a09e667f3bcc908L, 0xbb67ae8584caa73bL, 0x3c6ef372fe94f82bL, 0xa54ff53a5f1d36f1L,
        0x510e527fade682d1L, 0x9b05688c2b3e6c1fL, 0x1f83d9abfb41bd6bL, 0x5be0cd19137e2179L
    };
    /** RFC 7693 section 2.7; rounds 10 and 11 are 0 and 1 again. */
    private static final int[][] ORDER = {
        {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15},
        {14, 10, 4, 8, 9, 15, 13, 6, 1, 12, 0, 2, 11, 7, 5, 3},
        {11, 8, 12, 0, 5, 2, 15, 13, 10, 14, 3, 6, 7, 1, 9, 4},
        {7, 9, 3, 1, 13, 12, 11, 14, 2, 6, 5, 10, 4, 0, 15, 8},
        {9, 0, 5, 7, 2, 4, 10, 15, 14, 1, 11, 12, 6, 8, 3, 13},
        {2, 12, 6, 10, 0, 11, 8, 3, 4, 13, 7, 5, 15, 14, 1, 9},
        {12, 5, 1, 15, 14, 13, 4, 10, 0, 7, 6, 3, 9, 2, 8, 11},
        {13, 11, 7, 14, 12, 1, 3, 9, 5, 0, 15, 4, 8, 6, 2, 10},
        {6, 15, 14, 9, 11, 3, 0, 8, 12, 2, 13, 7, 1, 4, 10, 5},
        {10, 2, 8, 4, 7, 6, 1, 5, 15, 11, 9, 14, 3, 12, 13, 0}
    };

    private Blake2b() {}

    /** @param length of the hash in bytes, 1 to 64 */
    static byte[] hash(int length, byte[] input) {
        long[] h = START.clone();
        h[0] ^= 0x01010000L ^ length;
        int blocks = Math.max(1, (input.length + BLOCK - 1) / BLOCK);
        for (int block = 0; block < blocks; block++) {
            boolean last = block == blocks - 1;
            byte[] part = Arrays.copyOf(
                    Arrays.copyOfRange(input, block * BLOCK, Math.min(input.length, (block + 1) * BLOCK)), BLOCK);
            compress(h, part, last ? input.length : (block + 1L) * BLOCK, last);
        }
        byte[] out = new byte[64];
        for (int i = 0; i < 8; i++) {
            Words64.put(out, i * 8, h[i]);
        }
        return Arrays.copyOf(out, length);
    }

    private static void compress(long[] h, byte[] part, long counted, boolean last) {
        long[] m = new long[16];
        for (int i = 0; i < 16; i++) {
            m[i] = Words64.get(part, i * 8);
        }
        long[] v = Arrays.copyOf(h, 16);
        System.arraycopy(START, 0, v, 8, 8);
        v[12] ^= counted;
        if (last) {
            v[14] = ~v[14];
        }
        for (int round = 0; round < 12; round++) {
            int[] s = ORDER[round % 10];
            for (int i = 0; i < 4; i++) {
                mix(v, i, 4 + i, 8 + i, 12 + i, m[s[2 * i]], m[s[2 * i + 1]]);
            }
            for (int i = 0; i < 4; i++) {
                mix(v, i, 4 + (i + 1) % 4, 8 + (i + 2) % 4, 12 + (i + 3) % 4, m[s[8 + 2 * i]], m[s[9 + 2 * i]]);
            }
        }
        for (int i = 0; i < 8; i++) {
            h[i] ^= v[i] ^ v[i + 8];
        }
    }

    private static void mix(long[] v, int a, int b, int c, int d, long x, long y) {
        v[a] += v[b] + x;
        v[d] = Long.rotateRight(v[d] ^ v[a], 32);
        v[c] += v[d];
        v[b] = Long.rotateRight(v[b] ^ v[c], 24);
        v[a] += v[b] + y;
        v[d] = Long.rotateRight(v[d] ^ v[a], 16);
        v[c] += v[d];
        v[b] = Long.rotateRight(v[b] ^ v[c], 63);
    }
}
