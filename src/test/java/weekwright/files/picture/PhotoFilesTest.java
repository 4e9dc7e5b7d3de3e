package weekwright.files.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.base.FileKind;
import weekwright.base.Refused;
import weekwright.files.KeptFiles;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Requirement;

/** Originals stay, copies are upright and tell nothing of their maker. */
class PhotoFilesTest {
    private static final int RED = 0xff0000;
    private static final int GREEN = 0x00ff00;
    private static final int BLUE = 0x0000ff;
    private static final int WHITE = 0xffffff;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String TAKEN = "2026:11:09 07:30:00";

    @TempDir
    Path folder;

    private String keep(byte[] picture) throws Exception {
        PictureFacts facts = PictureFacts.read(new ByteArrayInputStream(picture));
        return new PhotoFiles(folder).keep(new ByteArrayInputStream(picture), facts, DAY);
    }

    private byte[] copy(String name, PhotoFiles.Size size) throws IOException {
        return Files.readAllBytes(
                new PhotoFiles(folder).copy(name, size).orElseThrow().file());
    }

    private BufferedImage shown(String name) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(copy(name, PhotoFiles.Size.PAGE)));
    }

    /**
     * What corner of the upright picture the stored corners are (top left, top right, bottom left, bottom right), from the
     * sides that Exif 2.3 gives for row 0 and column 0: 1 top left, 2 top right, 3 bottom right, 4 bottom left, 5 left top,
     * 6 right top, 7 right bottom, 8 left bottom.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 0 1 2 3",
        "2, 1 0 3 2",
        "3, 3 2 1 0",
        "4, 2 3 0 1",
        "5, 0 2 1 3",
        "6, 1 3 0 2",
        "7, 3 1 2 0",
        "8, 2 0 3 1"
    })
    void a_picture_stands_upright_however_the_camera_lay(int orientation, String corners) throws Exception {
        int[] upright = {RED, GREEN, BLUE, WHITE};
        int[] stored = Arrays.stream(corners.split(" "))
                .mapToInt(corner -> upright[Integer.parseInt(corner)])
                .toArray();
        BufferedImage image = CameraPicture.quarters(40, 20, stored);
        BufferedImage shown = shown(keep(CameraPicture.png(image, orientation, TAKEN)));
        boolean lies = orientation >= 5;
        assertThat(shown.getWidth()).isEqualTo(lies ? 20 : 40);
        assertThat(shown.getHeight()).isEqualTo(lies ? 40 : 20);
        int right = shown.getWidth() - 1;
        int bottom = shown.getHeight() - 1;
        assertThat(List.of(
                        shown.getRGB(0, 0) & WHITE,
                        shown.getRGB(right, 0) & WHITE,
                        shown.getRGB(0, bottom) & WHITE,
                        shown.getRGB(right, bottom) & WHITE))
                .containsExactly(RED, GREEN, BLUE, WHITE);
    }

    @Test
    @Requirement({"14.2.8"})
    void no_copy_tells_the_place_the_camera_or_a_comment_and_the_original_stays_as_it_came() throws Exception {
        BufferedImage image = CameraPicture.quarters(60, 40, RED, GREEN, BLUE, WHITE);
        for (byte[] picture : List.of(
                CameraPicture.jpeg(image, 6, TAKEN), CameraPicture.png(image, 6, TAKEN), CameraPicture.webp(1, 0))) {
            String latitude = CameraPicture.text(CameraPicture.LATITUDE);
            assertThat(CameraPicture.text(picture)).contains(CameraPicture.PRIVATE, latitude);
            String name = keep(picture);
            assertThat(Files.readAllBytes(folder.resolve(name))).isEqualTo(picture);
            for (PhotoFiles.Size size : PhotoFiles.Size.values()) {
                assertThat(CameraPicture.text(copy(name, size)))
                        .as(name)
                        .doesNotContain(CameraPicture.PRIVATE, latitude, "Exif", "EXIF", "eXIf", "tEXt", "XMP");
            }
            assertThat(new PhotoFiles(folder).facts(name).orElseThrow().takenOn())
                    .contains(LocalDate.of(2026, 11, 9));
        }
    }

    @Test
    void a_webp_is_read_stood_upright_and_copied_as_a_jpeg_of_each_size() throws Exception {
        String name = keep(CameraPicture.webp(6, 0));
        assertThat(name).endsWith(".webp");
        BufferedImage page = shown(name);
        assertThat(page.getWidth()).isEqualTo(40);
        assertThat(page.getHeight()).isEqualTo(60);
        // turned by a quarter to the right: the lower left, blue, comes to the upper left
        assertNear(page.getRGB(5, 5), BLUE);
        assertNear(page.getRGB(35, 5), RED);
        assertNear(page.getRGB(5, 55), WHITE);
        assertNear(page.getRGB(35, 55), GREEN);
        for (PhotoFiles.Size size : PhotoFiles.Size.values()) {
            PhotoFiles.Copy copy = new PhotoFiles(folder).copy(name, size).orElseThrow();
            assertThat(copy.kind()).isEqualTo(FileKind.JPEG);
            assertThat(FileKind.of(Files.readAllBytes(copy.file()))).contains(FileKind.JPEG);
        }
        BufferedImage clear = shown(keep(CameraPicture.clearWebp()));
        assertNear(clear.getRGB(5, 5), RED);
        assertNear(clear.getRGB(55, 35), WHITE);
    }

    /** Within what a JPEG and a lossy WebP of plain colours lose. */
    private static void assertNear(int seen, int meant) {
        for (int shift = 0; shift <= 16; shift += 8) {
            assertThat(seen >> shift & 0xff)
                    .as("%06x", seen & WHITE)
                    .isBetween((meant >> shift & 0xff) - 6, (meant >> shift & 0xff) + 6);
        }
    }

    @Test
    void copies_are_no_larger_than_needed_and_never_blown_up() throws Exception {
        String large = keep(CameraPicture.jpeg(2000, 1000, TAKEN));
        assertThat(shown(large).getWidth()).isEqualTo(1600);
        assertThat(shown(large).getHeight()).isEqualTo(800);
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(copy(large, PhotoFiles.Size.SMALL)));
        assertThat(small.getWidth()).isEqualTo(480);
        assertThat(small.getHeight()).isEqualTo(240);
        String little = keep(CameraPicture.jpeg(30, 20, TAKEN));
        assertThat(shown(little).getWidth()).isEqualTo(30);
    }

    @Test
    void a_smaller_picture_is_the_mean_of_what_it_covers() {
        BufferedImage image = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
        int[] greys = {0, 60, 120, 30, 90, 150};
        for (int i = 0; i < greys.length; i++) {
            image.setRGB(i % 3, i / 3, greys[i] * 0x010101);
        }
        Pixels two = Pixels.reduced(image, 2);
        assertThat(two.width()).isEqualTo(2);
        assertThat(two.height()).isEqualTo(1);
        // left: columns 0 and half of 1: (0 + 30 + (60 + 90) / 2) / 3; right likewise
        assertThat(two.samples()).containsExactly(35, 35, 35, 115, 115, 115);
    }

    @Test
    void grey_deep_and_transparent_pictures_keep_their_tones() throws Exception {
        BufferedImage grey = new BufferedImage(8, 8, BufferedImage.TYPE_BYTE_GRAY);
        WritableRaster tones = grey.getRaster();
        for (int i = 0; i < 64; i++) {
            tones.setSample(i % 8, i / 8, 0, 100);
        }
        assertThat(shown(keep(CameraPicture.bytes(grey, "png"))).getRGB(3, 3)).isEqualTo(0xff646464);
        BufferedImage deep = new BufferedImage(8, 8, BufferedImage.TYPE_USHORT_GRAY);
        deep.getRaster().setSample(0, 0, 0, 0x8040);
        assertThat(shown(keep(CameraPicture.bytes(deep, "png"))).getRGB(0, 0)).isEqualTo(0xff808080);
        BufferedImage clear = new BufferedImage(8, 8, BufferedImage.TYPE_INT_ARGB);
        clear.setRGB(1, 1, 0x80123456);
        assertThat(shown(keep(CameraPicture.bytes(clear, "png"))).getRGB(1, 1)).isEqualTo(0x80123456);
    }

    @Test
    void colours_of_another_space_become_those_of_the_screen() {
        ColorModel model = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_LINEAR_RGB),
                false,
                false,
                Transparency.OPAQUE,
                DataBuffer.TYPE_BYTE);
        WritableRaster raster = model.createCompatibleWritableRaster(4, 4);
        for (int i = 0; i < 16; i++) {
            raster.setPixel(i % 4, i / 4, new int[] {55, 55, 55});
        }
        BufferedImage image = new BufferedImage(model, raster, false, null);
        int shown = Pixels.reduced(image, 4).image().getRGB(2, 2) & 0xff;
        // IEC 61966-2-1: 55 of 255 linear is 0.2157, as the screen has it 0.5020 or 128
        assertThat(shown).isBetween(127, 129);
    }

    @Test
    @Requirement({"5.2.2", "5.1.1"})
    void what_is_no_whole_still_picture_of_a_sensible_size_is_refused_and_leaves_nothing() throws Exception {
        byte[] jpeg = CameraPicture.jpeg(400, 300, TAKEN);
        byte[] png = CameraPicture.png(CameraPicture.quarters(400, 300, RED, GREEN, BLUE, WHITE), 1, TAKEN);
        refused("<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8), "is no JPEG, PNG or WebP inside");
        refused("%PDF-1.7 a bill of the mill".getBytes(StandardCharsets.UTF_8), "is no JPEG, PNG or WebP inside");
        refused(CameraPicture.pngHead(60_000, 60_000), "has more than 60 megapixels; save it smaller");
        refused(CameraPicture.pngHead(30_000, 30_000), "has more than 60 megapixels; save it smaller");
        refused(CameraPicture.pngHead(0, 10), "is damaged; take it from the camera once more");
        refused(CameraPicture.webp(1, 2), "is a moving picture; send a still one");
        refused(Arrays.copyOf(CameraPicture.webp(1, 0), 90), "is damaged");
        refused(Arrays.copyOf(jpeg, 700), "is damaged");
        refused(Arrays.copyOf(jpeg, jpeg.length / 2 + 500), "is damaged or of a rare kind");
        refused(Arrays.copyOf(png, png.length - 60), "is damaged or of a rare kind");
        refused(CameraPicture.pngHead(100, 100), "is damaged or of a rare kind");
        assertThat(new KeptFiles(folder).names()).isEmpty();
    }

    private void refused(byte[] picture, String start) {
        assertThatThrownBy(() -> keep(picture)).isInstanceOf(Refused.class).hasMessageStartingWith(start);
    }

    @Test
    @Requirement({"5.2.6"})
    void a_picture_of_just_60_megapixels_is_taken_by_its_head() throws Exception {
        assertThat(PictureFacts.read(new ByteArrayInputStream(CameraPicture.pngHead(10_000, 6_000)))
                        .width())
                .isEqualTo(10_000);
    }

    @Test
    void tags_that_lead_nowhere_are_passed_over() {
        byte[] tags = CameraPicture.exif(6, TAKEN);
        for (int at = 0; at < tags.length; at++) {
            byte[] broken = tags.clone();
            broken[at] = (byte) 0xff;
            assertThat(Exif.of(broken).orientation()).as("byte %d", at).isBetween(1, 8);
            assertThat(Exif.of(Arrays.copyOf(tags, at)).orientation())
                    .as("length %d", at)
                    .isBetween(1, 8);
        }
        assertThat(Exif.of(CameraPicture.exif(1, "0000:00:00 00:00:00")).takenOn())
                .isEmpty();
    }

    @Test
    void a_copy_follows_an_original_that_was_put_in_its_place() throws Exception {
        String name = keep(CameraPicture.png(CameraPicture.quarters(8, 8, RED, RED, RED, RED), 1, TAKEN));
        assertThat(shown(name).getRGB(2, 2)).isEqualTo(0xff000000 | RED);
        Files.write(
                folder.resolve(name), CameraPicture.bytes(CameraPicture.quarters(8, 8, BLUE, BLUE, BLUE, BLUE), "png"));
        Files.setLastModifiedTime(folder.resolve(name), FileTime.fromMillis(1_000_000_000_000L));
        assertThat(shown(name).getRGB(2, 2)).isEqualTo(0xff000000 | BLUE);
    }
}
