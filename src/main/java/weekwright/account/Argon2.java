package weekwright.account;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;

/**
 * Argon2id, version 0x13 (RFC 9106), on one thread. Costs {@code kibibytes} of memory while it runs.
 *
 * @param kibibytes of memory, at least 8 for each lane
 * @param passes over the memory
 */
record Argon2(int kibibytes, int passes, int lanes) {
    private static final int WORDS = 128;
    private static final int SLICES = 4;
    private static final int VERSION = 0x13;
    private static final int TYPE = 2;

    Argon2 {
        if (lanes < 1 || passes < 1 || kibibytes < 8 * lanes) {
            throw new IllegalArgumentException(kibibytes + " KiB, " + passes + " passes, " + lanes + " lanes");
        }
    }

    /** @param length of the tag in bytes */
    byte[] tag(int length, byte[] message, byte[] salt, byte[] secret, byte[] associated) {
        int laneLength = kibibytes / (SLICES * lanes) * SLICES;
        long[] memory = new long[laneLength * lanes * WORDS];
        byte[] first = first(length, message, salt, secret, associated);
        for (int lane = 0; lane < lanes; lane++) {
            for (int column = 0; column < 2; column++) {
                byte[] block = longHash(WORDS * 8, join(first, number(column), number(lane)));
                for (int i = 0; i < WORDS; i++) {
                    memory[(lane * laneLength + column) * WORDS + i] = Words64.get(block, i * 8);
                }
            }
        }
        Filling filling = new Filling(memory, laneLength, lanes, passes);
        for (int pass = 0; pass < passes; pass++) {
            for (int slice = 0; slice < SLICES; slice++) {
                for (int lane = 0; lane < lanes; lane++) {
                    filling.segment(pass, slice, lane);
                }
            }
        }
        byte[] last = new byte[WORDS * 8];
        for (int i = 0; i < WORDS; i++) {
            long word = 0;
            for (int lane = 0; lane < lanes; lane++) {
                word ^= memory[((lane + 1) * laneLength - 1) * WORDS + i];
            }
            Words64.put(last, i * 8, word);
        }
        Arrays.fill(memory, 0);
        return longHash(length, last);
    }

    private byte[] first(int length, byte[] message, byte[] salt, byte[] secret, byte[] associated) {
        return Blake2b.hash(
                64,
                join(
                        number(lanes),
                        number(length),
                        number(kibibytes),
                        number(passes),
                        number(VERSION),
                        number(TYPE),
                        number(message.length),
                        message,
                        number(salt.length),
                        salt,
                        number(secret.length),
                        secret,
                        number(associated.length),
                        associated));
    }

    /** The hash of any length, RFC 9106 section 3.3. */
    private static byte[] longHash(int length, byte[] input) {
        byte[] all = join(number(length), input);
        if (length <= 64) {
            return Blake2b.hash(length, all);
        }
        byte[] out = new byte[length];
        byte[] part = Blake2b.hash(64, all);
        int at = 0;
        while (length - at > 64) {
            System.arraycopy(part, 0, out, at, 32);
            at += 32;
            part = Blake2b.hash(Math.min(64, length - at), part);
        }
        System.arraycopy(part, 0, out, at, length - at);
        return out;
    }

    private static byte[] number(int value) {
        return new byte[] {(byte) value, (byte) (value >> 8), (byte) (value >> 16), (byte) (value >> 24)};
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    /** Fills the memory, RFC 9106 sections 3.4 and 3.5. */
    private static final class Filling {
        private final long[] memory;
        private final int laneLength;
        private final int lanes;
        private final int passes;
        private final long[] row = new long[WORDS];
        private final long[] mixed = new long[WORDS];

        Filling(long[] memory, int laneLength, int lanes, int passes) {
            this.memory = memory;
            this.laneLength = laneLength;
            this.lanes = lanes;
            this.passes = passes;
        }

        void segment(int pass, int slice, int lane) {
            int segment = laneLength / SLICES;
            boolean independent = pass == 0 && slice < SLICES / 2;
            long[] input = {pass, lane, slice, (long) laneLength * lanes, passes, TYPE, 0};
            long[] addresses = new long[WORDS];
            for (int i = 0; i < segment; i++) {
                if (independent && i % WORDS == 0) {
                    input[6]++;
                    addresses(input, addresses);
                }
                if (pass == 0 && slice == 0 && i < 2) {
                    continue;
                }
                int column = slice * segment + i;
                int previous = at(lane, column == 0 ? laneLength - 1 : column - 1);
                long draw = independent ? addresses[i % WORDS] : memory[previous];
                int from = pass == 0 && slice == 0 ? lane : (int) ((draw >>> 32) % lanes);
                int reference = at(from, referenceColumn(pass, slice, i, segment, from == lane, draw & 0xffffffffL));
                mix(memory, previous, memory, reference, memory, at(lane, column), pass > 0);
            }
        }

        private int at(int lane, int column) {
            return (lane * laneLength + column) * WORDS;
        }

        private int referenceColumn(int pass, int slice, int i, int segment, boolean own, long draw) {
            int done = pass == 0 ? slice * segment : laneLength - segment;
            long area = done + (own ? i - 1 : i == 0 ? -1 : 0);
            long x = draw * draw >>> 32;
            long back = area - 1 - (area * x >>> 32);
            long start = pass == 0 || slice == SLICES - 1 ? 0 : (slice + 1L) * segment;
            return (int) ((start + back) % laneLength);
        }

        private void addresses(long[] input, long[] addresses) {
            long[] zero = new long[WORDS];
            long[] once = new long[WORDS];
            mix(zero, 0, Arrays.copyOf(input, WORDS), 0, once, 0, false);
            mix(zero, 0, once, 0, addresses, 0, false);
        }

        /** The compression function G, section 3.5; over what stands there where {@code onto}. */
        private void mix(long[] x, int xAt, long[] y, int yAt, long[] out, int outAt, boolean onto) {
            for (int i = 0; i < WORDS; i++) {
                row[i] = x[xAt + i] ^ y[yAt + i];
            }
            System.arraycopy(row, 0, mixed, 0, WORDS);
            for (int i = 0; i < 8; i++) {
                permute(16 * i, 2);
            }
            for (int i = 0; i < 8; i++) {
                permute(2 * i, 16);
            }
            for (int i = 0; i < WORDS; i++) {
                long word = mixed[i] ^ row[i];
                out[outAt + i] = onto ? out[outAt + i] ^ word : word;
            }
        }

        /** The permutation P on eight pairs of words, each pair {@code step} words after the one before. */
        private void permute(int from, int step) {
            int b = from + 2 * step;
            int c = from + 4 * step;
            int d = from + 6 * step;
            quarter(from, b, c, d);
            quarter(from + 1, b + 1, c + 1, d + 1);
            quarter(from + step, b + step, c + step, d + step);
            quarter(from + step + 1, b + step + 1, c + step + 1, d + step + 1);
            quarter(from, b + 1, c + step, d + step + 1);
            quarter(from + 1, b + step, c + step + 1, d);
            quarter(from + step, b + step + 1, c, d + 1);
            quarter(from + step + 1, b, c + 1, d + step);
        }

        private void quarter(int ia, int ib, int ic, int id) {
            long[] v = mixed;
            long a = v[ia];
            long b = v[ib];
            long c = v[ic];
            long d = v[id];
            a = multiplied(a, b);
            d = Long.rotateRight(d ^ a, 32);
            c = multiplied(c, d);
            b = Long.rotateRight(b ^ c, 24);
            a = multiplied(a, b);
            d = Long.rotateRight(d ^ a, 16);
            c = multiplied(c, d);
            b = Long.rotateRight(b ^ c, 63);
            v[ia] = a;
            v[ib] = b;
            v[ic] = c;
            v[id] = d;
        }

        private static long multiplied(long a, long b) {
            return a + b + 2 * (a & 0xffffffffL) * (b & 0xffffffffL);
        }
    }
}
