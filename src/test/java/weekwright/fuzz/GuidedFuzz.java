package weekwright.fuzz;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Feeds the readers with mutations and keeps each input that reached code which none before it reached, to mutate it further. In a
 * process of its own under the agent of JaCoCo, which counts what is reached (its command stands in the guide). Arguments: rounds of
 * each reader, seed; 20000 and 1 unless given.
 */
public final class GuidedFuzz {
    private static final int HEADER = 0x01;
    private static final int SESSION = 0x10;
    private static final int CLASS = 0x11;
    private static final int REPORTED = 600;

    private final Object agent;
    private final Method reached;
    private final long seed;
    private final List<String> failures = new ArrayList<>();

    private GuidedFuzz(long seed) throws ReflectiveOperationException {
        this.seed = seed;
        agent = Class.forName("org.jacoco.agent.rt.RT").getMethod("getAgent").invoke(null);
        reached = Class.forName("org.jacoco.agent.rt.IAgent").getMethod("getExecutionData", boolean.class);
    }

    private interface Reader {
        void read(byte[] bytes) throws IOException;
    }

    public static void main(String[] args) throws Exception {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        GuidedFuzz fuzz;
        try {
            fuzz = new GuidedFuzz(seed);
        } catch (ClassNotFoundException none) {
            System.out.println(
                    "needs the agent of JaCoCo: java -javaagent:org.jacoco.agent-0.8.15-runtime.jar=output=none …");
            System.exit(2);
            return;
        }
        fuzz.run(
                "Markdown",
                rounds,
                List.of(Mutations.corpus("note.md")),
                bytes -> Fuzz.markdownOf(new String(bytes, StandardCharsets.UTF_8)));
        fuzz.run("pictures", rounds, Fuzz.pictureSeeds(), Fuzz::pictureOf);
        Path files = Files.createTempDirectory("weekwright-fuzz").resolve("files");
        for (Path file : Fuzz.project(files)) {
            byte[] whole = Files.readAllBytes(file);
            fuzz.run(file.getFileName().toString(), rounds / 40, List.of(whole), bytes -> {
                Files.write(file, bytes);
                Fuzz.filesOf(files);
            });
            Files.write(file, whole);
        }
        fuzz.failures.forEach(System.out::println);
        System.out.println(fuzz.failures.size() + " failures");
        System.exit(fuzz.failures.isEmpty() ? 0 : 1);
    }

    private void run(String what, int rounds, List<byte[]> seeds, Reader reader) throws Exception {
        Mutations mutations = new Mutations(seed);
        List<byte[]> kept = new ArrayList<>(seeds);
        Map<Long, BitSet> known = new HashMap<>();
        for (byte[] one : seeds) {
            grew(what, one, reader, known);
        }
        int before = size(known);
        for (int i = 0; i < rounds; i++) {
            byte[] bytes = mutations.of(kept.get(mutations.next(kept.size())));
            if (grew(what, bytes, reader, known)) {
                kept.add(bytes);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d rounds, %d inputs kept; %d places reached, %d of them by mutations alone%n",
                what,
                rounds,
                kept.size() - seeds.size(),
                size(known),
                size(known) - before);
    }

    private static int size(Map<Long, BitSet> known) {
        return known.values().stream().mapToInt(BitSet::cardinality).sum();
    }

    /** Whether an input reached what none before it did. */
    private boolean grew(String what, byte[] bytes, Reader reader, Map<Long, BitSet> known) throws Exception {
        reached.invoke(agent, true);
        try {
            reader.read(bytes);
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            String input = new String(bytes, StandardCharsets.ISO_8859_1);
            failures.add(
                    what + ": " + failure + " for <" + input.substring(0, Math.min(REPORTED, input.length())) + ">");
        }
        return added((byte[]) reached.invoke(agent, true), known);
    }

    /** Reads JaCoCo's format of execution data (its blocks: header, session, class with one bit for each place). */
    private static boolean added(byte[] data, Map<Long, BitSet> known) throws IOException {
        boolean grew = false;
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(data));
        for (int block = in.read(); block >= 0; block = in.read()) {
            switch (block) {
                case HEADER -> in.readInt();
                case SESSION -> {
                    in.readUTF();
                    in.readLong();
                    in.readLong();
                }
                case CLASS -> {
                    BitSet of = known.computeIfAbsent(in.readLong(), id -> new BitSet());
                    in.readUTF();
                    int before = of.cardinality();
                    of.or(BitSet.valueOf(in.readNBytes((length(in) + 7) / 8)));
                    grew |= of.cardinality() > before;
                }
                default -> throw new IOException("unknown block " + block);
            }
        }
        return grew;
    }

    /** Seven bits a byte, the lowest first. */
    private static int length(DataInputStream in) throws IOException {
        int length = 0;
        int shift = 0;
        int part;
        do {
            part = in.readUnsignedByte();
            length |= (part & 0x7f) << shift;
            shift += 7;
        } while (part >= 0x80);
        return length;
    }
}
