package weekwright.bench;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.SplittableRandom;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Templates;
import weekwright.site.PublishSite;
import weekwright.site.Site;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/**
 * How long the page view of a note of 20 KB takes, a picture of 12 megapixels from sending to the page that shows it, and the
 * build log of many notes and pictures, with and without the copies that an upload makes, again, and after one change. All on
 * the real server and store. The arguments are how many notes, how many pictures, and how wide
 * these are. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.bench.NotesBench
 * -Dexec.args="500 2000 1600"}.
 */
public final class NotesBench {
    private static final int TIMES = 40;
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private NotesBench() {}

    public static void main(String[] args) throws Exception {
        int notes = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        int pictures = args.length > 1 ? Integer.parseInt(args[1]) : 2_000;
        try (ServerFixture server = ServerFixture.of(NotesBench::one)) {
            Visitor ilse = server.as("ilse");
            view(ilse);
            upload(ilse);
        }
        publish(notes, pictures, args.length > 2 ? Integer.parseInt(args[2]) : 1_600);
    }

    private static void one(Db db) {
        SmallProject.fill(db);
        notes(db, 1, 0);
    }

    /** A text of so many letters with every kind of mark. */
    private static String text(int letters) {
        String block = "## Sill stones\n\n"
                + "Two of *nine* lie, the **third** waits for `lime` and [dry](task:weir.2) days.\n\n"
                + "| stone | hours |\n"
                + "|---|--:|\n"
                + "| one | 3 |\n"
                + "| two | 4.5 |\n\n"
                + "- [x] bedded\n"
                + "- [ ] pointed\n\n"
                + "> So be it.\n\n";
        return block.repeat(letters / block.length() + 1).substring(0, letters);
    }

    private static void view(Visitor ilse) {
        Visitor.Form form = ilse.form(ilse.get("/notes/new")).with("text", text(20_000));
        double[] took = new double[TIMES];
        for (int i = -10; i < TIMES; i++) {
            long begun = System.nanoTime();
            if (form.press("page").status() != 200) {
                throw new IllegalStateException("no page view");
            }
            took[Math.max(0, i)] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT,
                "page view of 20 KB: median %.0f ms, slowest of %d %.0f ms%n",
                took[TIMES / 2],
                TIMES,
                took[TIMES - 1]);
    }

    private static void upload(Visitor ilse) {
        for (int i = 1; i <= 3; i++) {
            byte[] jpeg = CameraPicture.jpeg(picture(i, 4000, 3000), 6, "2026:11:09 07:30:00");
            Visitor.Form form = ilse.form(ilse.get("/notes/n.0/pictures/new"))
                    .attach("pictures", "a.jpg", jpeg)
                    .with("shows", "A stone");
            long begun = System.nanoTime();
            Visitor.Reply shown = ilse.follow(form.send());
            String address = shown.page().select("article img").last().attr("src");
            if (ilse.get(address).status() != 200) {
                throw new IllegalStateException("no picture at " + address);
            }
            System.out.printf(
                    Locale.ROOT,
                    "12 megapixels, %.1f MB, sent and shown: %.2f s%n",
                    jpeg.length / 1e6,
                    (System.nanoTime() - begun) / 1e9);
        }
    }

    /** Fields of colour, different for each number. */
    private static BufferedImage picture(int number, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D paint = image.createGraphics();
        SplittableRandom random = new SplittableRandom(number);
        for (int i = 0; i < 400; i++) {
            paint.setColor(new Color(random.nextInt(0x1000000)));
            paint.fillRect(random.nextInt(width), random.nextInt(height), width / 12, height / 12);
        }
        paint.dispose();
        return image;
    }

    private static void notes(Db db, int notes, int pictures) {
        db.write("bench", write -> {
            for (int i = 0; i < notes; i++) {
                NoteStore.TABLE.insert(
                        write,
                        OakMill.row(
                                Note.class,
                                "id",
                                "n." + i,
                                "title",
                                "Day " + i,
                                "date",
                                TODAY.minusDays(i).toString(),
                                "author",
                                "ilse",
                                "stage",
                                "weir",
                                "visible",
                                "everyone",
                                "text",
                                text(2_000)));
            }
            for (int i = 0; i < pictures; i++) {
                PhotoStore.TABLE.insert(
                        write,
                        OakMill.row(
                                Photo.class,
                                "note",
                                "n." + i % notes,
                                "file",
                                "p" + i + ".jpg",
                                "alternative",
                                "A stone"));
            }
            return null;
        });
    }

    private static void publish(int notes, int pictures, int width) throws Exception {
        Path temp = Files.createTempDirectory("notes-bench");
        Folder folder = new Folder(temp.resolve("project"));
        try (Db db = folder.create(ServerFixture.CLOCK)) {
            SmallProject.fill(db);
            notes(db, notes, pictures);
            Files.createDirectories(folder.photos());
            for (int i = 0; i < pictures; i++) {
                Files.write(
                        folder.photos().resolve("p" + i + ".jpg"),
                        CameraPicture.bytes(picture(i, width, width * 3 / 4), "jpg"));
            }
            timed("copies made on the way", db, folder, temp.resolve("first"));
            timed("copies there", db, folder, temp.resolve("second"));
            timed("again", db, folder, temp.resolve("second"));
            db.write("bench", write -> {
                PhotoStore.TABLE.insert(
                        write, OakMill.row(Photo.class, "note", "n.0", "file", "p1.jpg", "alternative", "Once more"));
                return null;
            });
            timed("after one change", db, folder, temp.resolve("second"));
        } finally {
            remove(temp);
        }
    }

    private static void timed(String what, Db db, Folder folder, Path target) throws Exception {
        long begun = System.nanoTime();
        PublishSite.Done done = PublishSite.into(
                target, Site.of(db, folder, Templates.packed(), Site.copies(folder), TODAY), count -> true);
        System.out.printf(
                Locale.ROOT,
                "published, %s: %.1f s, %d written, %d as they were, %d removed%n",
                what,
                (System.nanoTime() - begun) / 1e9,
                done.written(),
                done.same(),
                done.removed());
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
