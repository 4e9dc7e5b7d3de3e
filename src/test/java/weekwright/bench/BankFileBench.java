package weekwright.bench;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/**
 * Seconds of each step of reading a bank's file of 190,000 made-up rows (near the 200,000 rows and 5 MB that are read) on the
 * real server over loopback: sent, how it is read, its rows, entered, and a second file beside the books that are full of the
 * first. The arguments are how many rows and how many names there are. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.bench.BankFileBench
 * -Dexec.args="190000 4000"}.
 */
public final class BankFileBench {
    private BankFileBench() {}

    public static void main(String[] args) {
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : 190_000;
        int names = args.length > 1 ? Integer.parseInt(args[1]) : 4_000;
        try (ServerFixture server = ServerFixture.of(SmallProject::fill)) {
            Visitor ilse = server.as("ilse");
            double first = file(ilse, "first", text(rows, names, 1));
            double second = file(ilse, "second", text(rows, names, 2));
            System.out.printf(Locale.ROOT, "in all %.1f s and %.1f s%n", first, second);
        }
    }

    /** Rows of some months, the amounts and names drawn; the same for the same numbers. */
    private static byte[] text(int rows, int names, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LocalDate first = LocalDate.of(2026, 9, 2);
        StringBuilder text = new StringBuilder("day;sum;name\n");
        for (int i = 0; i < rows; i++) {
            LocalDate day = first.plusDays((long) i * 80 / rows);
            text.append(String.format(
                    Locale.ROOT,
                    "%02d%02d%d;%d,%02d;N%d%n",
                    day.getDayOfMonth(),
                    day.getMonthValue(),
                    day.getYear(),
                    random.nextInt(-99, 99),
                    random.nextInt(1, 100),
                    random.nextInt(names)));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static double file(Visitor ilse, String name, byte[] bytes) {
        System.out.printf(Locale.ROOT, "%s file, %.1f MB%n", name, bytes.length / 1e6);
        long begun = System.nanoTime();
        Visitor.Form send = ilse.form(ilse.get("/funds/files/new")).attach("file", name + ".csv", bytes);
        Visitor.Reply sent = timed("  sent", 303, send::send);
        Visitor.Reply read = timed("  how it is read", 200, () -> ilse.follow(sent));
        Visitor.Form mapping = ilse.form(read).with("name", name);
        Visitor.Reply mapped = timed("  kept how", 303, mapping::send);
        Visitor.Reply rows = timed("  its rows", 200, () -> ilse.follow(mapped));
        Visitor.Form enter = ilse.form(rows);
        timed("  entered", 303, enter::send);
        return (System.nanoTime() - begun) / 1e9;
    }

    private static Visitor.Reply timed(String what, int status, Supplier<Visitor.Reply> work) {
        long begun = System.nanoTime();
        Visitor.Reply reply = work.get();
        if (reply.status() != status) {
            throw new IllegalStateException(
                    reply.address() + " answered " + reply.status() + ": " + String.join(" ", reply.troubles()));
        }
        System.out.printf(Locale.ROOT, "%-18s %6.2f s%n", what, (System.nanoTime() - begun) / 1e9);
        return reply;
    }
}
