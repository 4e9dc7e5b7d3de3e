package weekwright.engine.simulate;

import java.nio.charset.StandardCharsets;

/**
 * Addressed random numbers: one uniform in the open interval (0, 1) for each (seed, trial, purpose, id, index). Nothing is kept between
 * calls, so a draw depends neither on the order of the draws nor on what else the project holds; two variants of a project share
 * their luck.
 *
 * <p>The index is a calendar date (epoch day), a month (year × 12 + month − 1) or the number of an attempt at the same thing; never a
 * position in a list and never a count of days from the as-of day.
 *
 * <p>Mixing is the 64-bit finaliser of SplitMix64 (Steele, Lea &amp; Flood 2014, "Fast splittable pseudorandom number generators",
 * OOPSLA; the constants are Stafford's variant 13), the one that {@link java.util.SplittableRandom} uses. Ids are hashed by FNV-1a
 * with 64 bits (Fowler, Noll &amp; Vo) over their UTF-8 bytes and then mixed, so that short ids differ in all bits.
 *
 * <p>Use: {@link #trialKey} once a trial, {@link #key} once for each thing and purpose, {@link #uniform} for each number.
 */
public final class Streams {
    /** 2^64 divided by the golden ratio, odd: the step between consecutive indices. */
    private static final long STEP = 0x9e3779b97f4a7c15L;

    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;
    private static final double TWO_TO_MINUS_52 = 0x1.0p-52;

    private Streams() {}

    /** What a number is drawn for. The salt comes from the name, so adding a purpose or reordering them moves no other draw. */
    public enum Purpose {
        EFFORT_SPREAD,
        EFFORT_RATIO,
        TASK_HOURS,
        GUESSED_HOURS,
        STAGE_ROUGH,
        WAIT_DAYS,
        LINK_WAIT,
        REBOOK_DAYS,
        BACK_DAYS,
        LEAD_DAYS,
        UNIT_PRICE,
        PRICE_SPREAD,
        PRICE_RATIO,
        LEAD_SPREAD,
        LEAD_RATIO,
        LATE_STRENGTH,
        LATE_TOGETHER,
        EDIT_HOURS,
        WEATHER,
        GATHERING,
        JOIN_RATE,
        LEAVE_SHARE,
        JOIN_DRIFT,
        JOIN_WANDER,
        JOIN_NOW,
        JOINED,
        LEFT,
        OTHER_MONTH,
        REGULAR_AMOUNT,
        TURNOUT,
        FOUND_RATE,
        FOUND_SHARE,
        FOUND_MATERIAL,
        FAILURE,
        SURGE_CHANCE,
        SURGE,
        SURGE_SIZE,
        SURGE_JOINED,
        SURGE_LEFT;

        private final long salt = mix(fnv1a(name()));
    }

    /** The stable 64-bit hash of an id as it is written; computed once per id, not in the trial. */
    public static long idHash(String id) {
        return mix(fnv1a(id));
    }

    /** FNV-1a, 64 bits, over the UTF-8 bytes of the text. */
    static long fnv1a(String text) {
        long hash = FNV_OFFSET;
        for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return hash;
    }

    /** The finaliser of SplitMix64: a bijection of the 64-bit numbers. */
    public static long mix(long z) {
        long x = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        x = (x ^ (x >>> 27)) * 0x94d049bb133111ebL;
        return x ^ (x >>> 31);
    }

    /** The key of a trial (0-based) of a run with this seed; computed once a trial. */
    public static long trialKey(long seed, int trial) {
        return mix(mix(seed + STEP) + (trial + 1L) * STEP);
    }

    /** The key of a purpose and a thing, whose {@link #idHash} is given; computed once per thing. */
    public static long key(Purpose purpose, long idHash) {
        return mix(purpose.salt + idHash);
    }

    /** The key of a purpose and the thing with this id. */
    public static long key(Purpose purpose, String id) {
        return key(purpose, idHash(id));
    }

    /** The key of a thing that belongs to two others in order, such as a link of a task to the task before it. */
    public static long pairHash(long firstIdHash, long secondIdHash) {
        return mix(mix(firstIdHash + STEP) + secondIdHash);
    }

    /**
     * The uniform with this address, in (0, 1): one of the 2^52 midpoints (k + ½) / 2^52, so never 0 or 1 and symmetric about ½.
     *
     * @param trialKey from {@link #trialKey}
     * @param key from {@link #key}
     * @param index epoch day, month number or attempt; 0 for what is drawn once a trial
     */
    public static double uniform(long trialKey, long key, long index) {
        long bits = mix(mix(trialKey ^ key) + index * STEP);
        return ((bits >>> 12) + 0.5) * TWO_TO_MINUS_52;
    }
}
