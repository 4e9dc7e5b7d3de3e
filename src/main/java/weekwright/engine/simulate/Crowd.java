package weekwright.engine.simulate;

import java.util.List;
import weekwright.engine.Inputs;

/**
 * The people as bits of an int: the crew in its order, then as many unnamed hands as the largest gathering has (rule 129: they have
 * every trade but camera and edit, and are kept from tasks with hazards).
 */
final class Crowd {
    private static final int MOST = 31;

    final int named;
    final int count;
    final int camera;
    final int edit;
    /** Pay for an hour in minor units; 0 for unnamed hands. */
    final long[] pay;
    /** Place in the order "fewest trades, then crew list", larger is better; below 256. */
    final int[] preference;

    private final Inputs inputs;
    private final Ids ids;

    Crowd(Inputs inputs) {
        this.inputs = inputs;
        ids = Ids.of("person", inputs.crew(), Inputs.Crew::id);
        named = inputs.crew().size();
        count = named
                + inputs.gatherings().stream()
                        .mapToInt(Inputs.Gathering::hands)
                        .max()
                        .orElse(0);
        if (count > MOST) {
            throw new IllegalArgumentException("%d people at once are more than %d".formatted(count, MOST));
        }
        camera = having("camera");
        edit = having("edit");
        pay = new long[count];
        preference = new int[count];
        for (int p = 0; p < count; p++) {
            pay[p] = p < named ? inputs.crew().get(p).payMinor() : 0;
            preference[p] = 255;
            for (int q = 0; q < count; q++) {
                if (trades(q) < trades(p) || (trades(q) == trades(p) && q < p)) {
                    preference[p]--;
                }
            }
        }
    }

    private int trades(int p) {
        return p < named ? inputs.crew().get(p).trades().size() : Integer.MAX_VALUE;
    }

    private int having(String trade) {
        int mask = 0;
        for (int p = 0; p < named; p++) {
            if (inputs.crew().get(p).trades().contains(trade)) {
                mask |= 1 << p;
            }
        }
        return mask;
    }

    /** Position of a named person. */
    int at(String id) {
        return ids.at(id);
    }

    /** The bit of a named person, 0 for somebody who is not in the crew. */
    int bit(String id) {
        int p = ids.orNone(id);
        return p < 0 ? 0 : 1 << p;
    }

    /** Who has one of the trades (none given: anyone) and may be near these hazards. */
    int hands(List<String> trades, List<String> hazards) {
        int mask = unnamed();
        if (trades.isEmpty()) {
            mask |= (1 << named) - 1;
        }
        for (String trade : trades) {
            mask |= having(trade);
        }
        return mask & allowed(hazards);
    }

    /** Who may be near these hazards. */
    int allowed(List<String> hazards) {
        int mask = hazards.isEmpty() ? unnamed() : 0;
        for (int p = 0; p < named; p++) {
            if (inputs.crew().get(p).notFor().stream().noneMatch(hazards::contains)) {
                mask |= 1 << p;
            }
        }
        return mask;
    }

    private int unnamed() {
        return ((1 << count) - 1) & -(1 << named);
    }
}
