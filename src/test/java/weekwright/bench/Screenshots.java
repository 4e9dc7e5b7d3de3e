package weekwright.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/**
 * Pictures of the sample's pages into a folder, for a person to look at: each page whole on a desk (1,280 pixels) and its
 * first screen on a phone (390), by day and by night. Arguments: the folder, and if wanted the addresses instead of the usual ones.
 * With {@code tour} behind the folder the few small ones of the guide are written, in few colours.
 */
public final class Screenshots {
    private static final List<String> USUAL = List.of(
            "/ahead",
            "/ahead/levers?hours.ilse=8",
            "/ahead/record",
            "/week",
            "/log",
            "/build",
            "/build/stages/shaft",
            "/episodes",
            "/episodes/slots",
            "/funds",
            "/funds/ladder",
            "/notes",
            "/crew");
    private static final List<String> TOUR_ON_A_DESK = List.of("/ahead", "/week", "/episodes/slots", "/funds");
    private static final List<String> TOUR_ON_A_PHONE = List.of("/log", "/week/shots");
    private static final int COLOURS = 16;
    private static final int TOUR = 1040;
    private static final int PHONE = 390;
    private static final int DESK = 1280;

    private Screenshots() {}

    public static void main(String[] args) throws Exception {
        if (args.length == 0) {
            throw new IllegalArgumentException("say the folder that the pictures are written to");
        }
        Path folder = Files.createDirectories(Path.of(args[0]));
        if (args.length == 2 && args[1].equals("tour")) {
            tour(folder);
            return;
        }
        List<String> pages = args.length > 1 ? List.of(args).subList(1, args.length) : USUAL;
        try (ServerFixture server = ServerFixture.sample().drawn();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            for (String page : pages) {
                for (boolean night : new boolean[] {false, true}) {
                    for (int width : new int[] {DESK, PHONE}) {
                        Path file = folder.resolve(name(page, width, night));
                        whole(browser, page, width, night, file);
                        System.out.println(file);
                    }
                }
            }
        }
    }

    /** First screens by day. */
    private static void tour(Path folder) throws Exception {
        try (ServerFixture server = ServerFixture.sample().drawn();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            for (int width : new int[] {TOUR, PHONE}) {
                for (String page : width == TOUR ? TOUR_ON_A_DESK : TOUR_ON_A_PHONE) {
                    browser.size(TOUR, 1000);
                    browser.device(false, width == PHONE ? PHONE : 0);
                    browser.open(page);
                    Path file = folder.resolve(name(page, width, false));
                    browser.picture(file);
                    SmallPicture.reduce(file, COLOURS);
                    System.out.println(file + ", " + Files.size(file) + " bytes");
                }
            }
        }
    }

    private static void whole(BrowserFixture browser, String page, int width, boolean night, Path file) {
        browser.size(DESK, 900);
        browser.device(night, width == PHONE ? PHONE : 0);
        browser.open(page);
        if (width == DESK) {
            Number height = (Number) browser.script("return document.documentElement.scrollHeight");
            browser.size(DESK, Math.max(900, height.intValue()));
        }
        browser.picture(file);
    }

    private static String name(String page, int width, boolean night) {
        String plain = page.substring(1).replaceAll("[^a-z0-9]+", "-");
        return String.format(
                Locale.ROOT, "%s-%s%s.png", plain, width == PHONE ? "phone" : "desk", night ? "-night" : "");
    }
}
