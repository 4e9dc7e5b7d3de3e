package weekwright.testkit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/**
 * Pictures as a camera writes them: with the place, a serial number, a comment and other tags, each of which holds the word
 * {@link #PRIVATE} or the bytes {@link #LATITUDE}. Written by hand after Exif 2.3 sections 4.6.2 to 4.6.6 (from memory),
 * ITU-T T.81 annex B, the PNG specification and RFC 9649.
 */
public final class CameraPicture {
    public static final String PRIVATE = "PRIVATE-4711";

    /** 52° 31' 12.34" as three fractions, little-endian. */
    public static final byte[] LATITUDE = little(52, 1, 31, 1, 1234, 100);

    private CameraPicture() {}

    private static byte[] little(int... numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * numbers.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int number : numbers) {
            bytes.putInt(number);
        }
        return bytes.array();
    }

    /**
     * Tags of a camera.
     *
     * @param day such as {@code 2026:11:09 07:30:00}, 19 letters
     */
    public static byte[] exif(int orientation, String day) {
        ByteBuffer out = ByteBuffer.allocate(400).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        out.putShort((short) 4);
        entry(out, 0x010f, 2, PRIVATE.length() + 1, 200);
        entry(out, 0x0112, 3, 1, orientation);
        entry(out, 0x8769, 4, 1, 80);
        entry(out, 0x8825, 4, 1, 130);
        out.putInt(0);
        out.position(80);
        out.putShort((short) 2);
        entry(out, 0x9003, 2, 20, 240);
        entry(out, 0xa431, 2, PRIVATE.length() + 1, 200);
        out.putInt(0);
        out.position(130);
        out.putShort((short) 2);
        entry(out, 0x0001, 2, 2, 'N');
        entry(out, 0x0002, 5, 3, 280);
        out.putInt(0);
        out.position(200);
        out.put(PRIVATE.getBytes(StandardCharsets.US_ASCII));
        out.position(240);
        out.put(day.getBytes(StandardCharsets.US_ASCII));
        out.position(280);
        out.put(LATITUDE);
        return out.array();
    }

    private static void entry(ByteBuffer out, int tag, int type, int count, int value) {
        out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    /** Its four quarters have these colours, row by row. */
    public static BufferedImage quarters(int width, int height, int... colours) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, colours[(y * 2 / height) * 2 + x * 2 / width]);
            }
        }
        return image;
    }

    public static byte[] bytes(BufferedImage image, String kind) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, kind, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A JPEG with Exif, XMP, IPTC and a comment. */
    public static byte[] jpeg(BufferedImage image, int orientation, String day) {
        byte[] plain = bytes(image, "jpg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        segment(out, 0xe1, "Exif\0\0", exif(orientation, day));
        segment(out, 0xe1, "http://ns.adobe.com/xap/1.0/\0", PRIVATE.getBytes(StandardCharsets.US_ASCII));
        segment(out, 0xed, "Photoshop 3.0\0", PRIVATE.getBytes(StandardCharsets.US_ASCII));
        segment(out, 0xfe, "", PRIVATE.getBytes(StandardCharsets.US_ASCII));
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    /** A JPEG of a plain colour with a camera's tags. */
    public static byte[] jpeg(int width, int height, String day) {
        return jpeg(quarters(width, height, 0x606060, 0x707070, 0x808080, 0x909090), 1, day);
    }

    private static void segment(ByteArrayOutputStream out, int marker, String head, byte[] content) {
        int length = 2 + head.length() + content.length;
        out.write(0xff);
        out.write(marker);
        out.write(length >> 8);
        out.write(length);
        out.writeBytes(head.getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(content);
    }

    /** A PNG with eXIf and tEXt. */
    public static byte[] png(BufferedImage image, int orientation, String day) {
        byte[] plain = bytes(image, "png");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 33);
        out.writeBytes(chunk("eXIf", exif(orientation, day)));
        out.writeBytes(chunk("tEXt", ("Comment\0" + PRIVATE).getBytes(StandardCharsets.US_ASCII)));
        out.write(plain, 33, plain.length - 33);
        return out.toByteArray();
    }

    /** A PNG of that size by its head alone. */
    public static byte[] pngHead(int width, int height) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
        head.put(new byte[] {1, 0, 0, 0, 0});
        out.writeBytes(chunk("IHDR", head.array()));
        out.writeBytes(chunk("IDAT", new byte[] {0x78, (byte) 0x9c, 3, 0, 0, 0, 0, 1}));
        out.writeBytes(chunk("IEND", new byte[0]));
        return out.toByteArray();
    }

    private static byte[] chunk(String type, byte[] content) {
        ByteBuffer out = ByteBuffer.allocate(12 + content.length).putInt(content.length);
        out.put(type.getBytes(StandardCharsets.US_ASCII)).put(content);
        CRC32 sum = new CRC32();
        sum.update(out.array(), 4, 4 + content.length);
        return out.putInt((int) sum.getValue()).array();
    }

    /** Quarters in red, green, blue and white of 30 by 20 each, as a browser's canvas made them: lossy (RFC 6386). */
    private static final String LOSSY =
            "EAgAnQEqPAAoAD5pKpFFpCKhmVQAQAaEsQBiECAa/X3j8HaUB/YPxm9QD8ALoA/quUAfqB6Kv9gBFT9NNk5ZHRE+m3XecosXkAD+8MQL"
                    + "3V/ZU8Af3X7yA/yA//j5wBoI/mCs8jvf4etiS76Crf1oQk2VJqZkDUcmhQd8Uh/fAkxfzkg5vjTSY059+QH/8ZSHdYBb"
                    + "Q/ZLwfOxArY3pt7+8X/9pBkrGRZv/Ws2GlPmpnLSJbLXYq2Qhn7XF3Y95/D/6oWGMxTa6dIeejr4arg1UVyzOLYRTgAA"
                    + "AAA=";

    /** The same without loss (RFC 9649 section 3), its white quarter half clear. */
    private static final String LOSSLESS =
            "LzvACRAfsP8CgoL/oxMQFPk/moCg6DnTo7cWgKK2kZxcgxiSVyEOhXtG9D+SJMmbc8455+eoqgMA+BsA";

    /** A WebP of four quarters, by its extended form with Exif and XMP; {@code flags} of VP8X beside those. */
    public static byte[] webp(int orientation, int flags) {
        return webp("VP8 ", LOSSY, orientation, flags);
    }

    /** A WebP without loss whose last quarter is half clear. */
    public static byte[] clearWebp() {
        return webp("VP8L", LOSSLESS, 1, 0x10);
    }

    private static byte[] webp(String type, String picture, int orientation, int flags) {
        byte[] exif = exif(orientation, "2026:11:09 07:30:00");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("WEBP".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(piece("VP8X", new byte[] {(byte) (0x0c | flags), 0, 0, 0, 59, 0, 0, 39, 0, 0}));
        out.writeBytes(piece(type, Base64.getDecoder().decode(picture)));
        out.writeBytes(piece("EXIF", exif));
        out.writeBytes(piece("XMP ", PRIVATE.getBytes(StandardCharsets.US_ASCII)));
        return piece("RIFF", out.toByteArray());
    }

    private static byte[] piece(String type, byte[] content) {
        ByteBuffer out =
                ByteBuffer.allocate(8 + content.length + (content.length & 1)).order(ByteOrder.LITTLE_ENDIAN);
        out.put(type.getBytes(StandardCharsets.US_ASCII)).putInt(content.length).put(content);
        return out.array();
    }

    /** The bytes as text, a letter for each, to look for words in. */
    public static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
