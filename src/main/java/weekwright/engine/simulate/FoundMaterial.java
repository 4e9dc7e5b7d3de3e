package weekwright.engine.simulate;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Material;
import weekwright.engine.Inputs.Source;
import weekwright.engine.Inputs.Task;

/**
 * What turns up may have to wait for its material (rule 122). At the end of each listed task that is open a job may have turned up beside
 * it, with the stage's drawn share as its chance; so many of such jobs buy something as of the crew's own found jobs, weighed with two
 * that buy as often as its listed tasks do; and what is bought takes the lead of one of the project's lines, as it is written there, from
 * that day on. What has turned up in the stage is worked when the last such delivery is there. The figures are trade judgement, no source.
 */
final class FoundMaterial {
    private static final double WORTH = 2;

    /** Chance that a job buys something. */
    final double buys;
    /** Leads of the project's lines, the shortest first. */
    private final Spread[] leads;

    private final long[] key;
    private final int firstLink;

    FoundMaterial(Inputs inputs, LinkTable links, Found found) {
        Set<String> buying = new HashSet<>();
        inputs.materials().stream().filter(FoundMaterial::delivered).forEach(line -> buying.add(line.task()));
        double listed = 0;
        double listedBuy = 0;
        double jobs = 0;
        double jobsBuy = 0;
        Set<String> later = found.any() ? Found.later(inputs) : Set.of();
        for (Task task : inputs.tasks()) {
            if (task.kind() != Inputs.Kind.WORK || task.dropped() != Inputs.NONE) {
                continue;
            }
            int one = buying.contains(task.id()) ? 1 : 0;
            if (later.contains(task.id())) {
                jobs++;
                jobsBuy += one;
            } else {
                listed++;
                listedBuy += one;
            }
        }
        buys = listed == 0 ? 0 : (WORTH * listedBuy / listed + jobsBuy) / (WORTH + jobs);
        leads = !found.any()
                ? new Spread[0]
                : inputs.materials().stream()
                        .filter(FoundMaterial::delivered)
                        .map(Material::leadDays)
                        .sorted(Comparator.comparingDouble(Inputs.Range::mean))
                        .map(Spread::of)
                        .toArray(Spread[]::new);
        firstLink = inputs.links().size();
        key = new long[leads.length == 0 ? 0 : links.count - firstLink];
        List<Task> tasks = inputs.tasks();
        for (int l = 0; l < key.length; l++) {
            key[l] = Streams.key(
                    Streams.Purpose.FOUND_MATERIAL,
                    tasks.get(links.from[firstLink + l]).id());
        }
    }

    private static boolean delivered(Material line) {
        return line.source() != Source.OWN && line.leadDays().mean() > 0;
    }

    /** Whether anything that turns up may have to wait. */
    boolean any() {
        return key.length > 0 && buys > 0;
    }

    /** Days from the end of the task at the beginning of an unlisted task's link until what turned up beside it can be worked. */
    int wait(long trialKey, int link, double share) {
        long of = key[link - firstLink];
        if (Streams.uniform(trialKey, of, 0) >= buys * StrictMath.min(1, share)) {
            return 0;
        }
        Spread lead = leads[(int) (Streams.uniform(trialKey, of, 1) * leads.length)];
        return ThreePoint.wholeDays(lead.draw(Streams.uniform(trialKey, of, 2)));
    }
}
