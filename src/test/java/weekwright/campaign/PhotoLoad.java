package weekwright.campaign;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import weekwright.files.Tidy;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Visitor;

/**
 * Ten pictures of 12 megapixels, as large as a phone's, one after the other into a note of the sample, each until its small copy was
 * given out; and what the server, whose heap is bounded at 384 MB, held of memory at most. Demanded: 2 s each, 600 MB (no source).
 */
public final class PhotoLoad {
    private static final int PICTURES = 10;
    private static final int WIDTH = 4_000;
    private static final int HEIGHT = 3_000;
    private static final int GRAIN = 24;

    private PhotoLoad() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("weekwright-photos");
        Path place = folder.resolve("project");
        LargeProject.SAMPLE.in(place);
        int port = ServerProcess.port();
        try (ServerProcess server = ServerProcess.serve("384m", place, port, folder.resolve("server.log"))) {
            Visitor ilse = new Visitor("http://127.0.0.1:" + port);
            ilse.setCookie("who", LargeProject.SAMPLE.who());
            for (int i = 0; i < PICTURES; i++) {
                byte[] jpeg = CameraPicture.jpeg(picture(i), 6, "2026:11:09 07:30:00");
                Visitor.Form form = ilse.form(ilse.get("/notes/note.01/pictures/new"))
                        .with("shows", "Grey, with grain")
                        .attach("pictures", "a.jpg", jpeg);
                long begun = System.nanoTime();
                Visitor.Reply note = ilse.follow(form.send());
                String small = note.page().select("article img").last().attr("src");
                int status = ilse.get(small).status();
                System.out.printf(
                        Locale.ROOT,
                        "picture %d, %.1f MB: %.2f s%s%n",
                        i + 1,
                        jpeg.length / 1e6,
                        (System.nanoTime() - begun) / 1e9,
                        status == 200 ? "" : "  void: " + status);
            }
            System.out.println(Load.highest(server));
        }
        Tidy.remove(folder);
    }

    /** Grey with the grain of a sensor, which makes it as large as a phone's. */
    private static BufferedImage picture(int number) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        SplittableRandom random = new SplittableRandom(number);
        int[] row = new int[WIDTH];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int grey = 40 + 160 * y / HEIGHT + random.nextInt(GRAIN);
                row[x] = grey << 16 | grey << 8 | grey;
            }
            image.setRGB(0, y, WIDTH, 1, row, 0, WIDTH);
        }
        return image;
    }
}
