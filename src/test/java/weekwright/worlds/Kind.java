package weekwright.worlds;

import java.util.List;
import java.util.Set;

/**
 * What is true in a world, and what its settings say of it.
 *
 * @param traits what is so in it beside what the model assumes
 * @param learned whether the model may learn of turnout, found work and late deliveries and is told of chances to fail and of surges
 */
public record Kind(String name, boolean learned, Set<Trait> traits) {
    /** What may be so in a world. */
    public enum Trait {
        /** The crew gives a part of its hours, another each week, with spells of illness; it has half a year of log before. */
        TURNOUT,
        /** Tasks come up that nobody had listed. */
        FOUND,
        /** Two in five of them buy material, which is known of when they are. */
        FOUND_BUYS,
        /** The crew makes ranks and order days anew every four weeks. */
        REPLANNED,
        /** Each year's work takes a fifth more of the estimate than that of the year before. */
        SLOWER,
        /** Nobody comes for 28 days, some time after the as-of day. */
        LOST_MONTH,
        /** Deliveries of a quarter are late or early together. */
        CLUMPS,
        /** Money is short and comes from supporters who join and leave, with a film every Friday. */
        SUPPORTERS,
        /** Films set off surges, as often and as large as rule 123 expects before anything is counted. */
        SURGES,
        /** Joining drifts by 0.35 a month for all levels together, not by 0.1. */
        WAVES,
        /** A third of the work without material fails now and then and is done again in part. */
        FAILURES
    }

    public static final Kind PLAIN = of("as the model says");
    public static final Kind REAL = of("turnout and found work", Trait.TURNOUT, Trait.FOUND);
    public static final Kind REAL_UNLEARNED =
            REAL.unlearned("the same with turnout and found work, rules 120 and 122 off");

    public Kind {
        traits = Set.copyOf(traits);
    }

    private static Kind of(String name, Trait... traits) {
        return new Kind(name, true, Set.of(traits));
    }

    private Kind unlearned(String other) {
        return new Kind(other, false, traits);
    }

    /** All that are measured. */
    public static List<Kind> all() {
        Kind waves = of("supporters, joining in waves", Trait.SUPPORTERS, Trait.WAVES);
        Kind surges = of("supporters, surges", Trait.SUPPORTERS, Trait.SURGES);
        Kind clumps = of("late materials in clumps", Trait.CLUMPS);
        Kind failures = of("failures", Trait.FAILURES);
        return List.of(
                PLAIN,
                of("re-planned every four weeks", Trait.REPLANNED),
                of("turnout alone", Trait.TURNOUT),
                of("found work alone", Trait.FOUND),
                of("found work that buys material", Trait.FOUND, Trait.FOUND_BUYS),
                REAL,
                of("turnout, found work that buys material", Trait.TURNOUT, Trait.FOUND, Trait.FOUND_BUYS),
                REAL_UNLEARNED,
                failures,
                failures.unlearned("failures, rule 132 off"),
                of("crew that gets slower", Trait.SLOWER),
                of("a lost month", Trait.LOST_MONTH),
                clumps,
                clumps.unlearned("late materials in clumps, rule 137 off"),
                of("supporters", Trait.SUPPORTERS),
                surges,
                surges.unlearned("supporters, surges in months that are not marked"),
                waves,
                waves.unlearned("supporters, joining in waves, drift of rule 80 not learned"));
    }

    boolean is(Trait trait) {
        return traits.contains(trait);
    }

    /** Whether the crew lives from plan to plan of some weeks. */
    boolean inSteps() {
        return is(Trait.REPLANNED) || is(Trait.FOUND);
    }
}
