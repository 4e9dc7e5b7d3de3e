package weekwright.files.picture;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.FileKind;
import weekwright.base.Refused;

/**
 * What a picture says of itself before it is decoded.
 *
 * @param width as stored, before it is turned
 * @param orientation 1 to 8, see {@link Exif}
 * @param takenOn by the camera's clock
 */
public record PictureFacts(FileKind kind, int width, int height, int orientation, Optional<LocalDate> takenOn) {
    /** More pixels than this are not decoded: 60 megapixels. */
    public static final long MOST_PIXELS = 60_000_000;

    private static final Refused NO_PICTURE = new Refused("is no JPEG, PNG or WebP inside", "save it as one of these");
    private static final Refused BROKEN = new Refused("is damaged", "take it from the camera once more");
    private static final int MOST_TAGS = 1 << 20;

    /**
     * Reads the head of a file; of a WebP, whose tags stand behind the picture, all of it.
     *
     * @throws Refused no picture of these kinds, damaged in its head, moving, or too many pixels
     */
    public static PictureFacts read(InputStream content) throws IOException, Refused {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(content))) {
            in.mark(FileKind.HEAD);
            FileKind kind = FileKind.of(in.readNBytes(FileKind.HEAD))
                    .filter(FileKind::isPicture)
                    .orElseThrow(() -> NO_PICTURE);
            in.reset();
            PictureFacts facts = switch (kind) {
                case JPEG -> jpeg(in);
                case PNG -> png(in);
                default -> webp(in);
            };
            bound(facts.width(), facts.height());
            return facts;
        } catch (EOFException e) {
            throw BROKEN;
        }
    }

    private static PictureFacts of(FileKind kind, int width, int height, Exif exif) {
        return new PictureFacts(kind, width, height, exif.orientation(), exif.takenOn());
    }

    /** @throws Refused when a picture of that size is not decoded */
    static void bound(int width, int height) throws Refused {
        if (width < 1 || height < 1) {
            throw BROKEN;
        }
        if ((long) width * height > MOST_PIXELS) {
            throw new Refused("has more than 60 megapixels", "save it smaller");
        }
    }

    /** Segments up to the picture's own data; ITU-T T.81 annex B. */
    private static PictureFacts jpeg(DataInputStream in) throws IOException, Refused {
        in.skipNBytes(2);
        Exif exif = Exif.NONE;
        while (true) {
            if (in.readUnsignedByte() != 0xff) {
                throw BROKEN;
            }
            int marker = in.readUnsignedByte();
            while (marker == 0xff) {
                marker = in.readUnsignedByte();
            }
            if (marker == 0xda || marker == 0xd9) {
                throw BROKEN;
            }
            int length = in.readUnsignedShort() - 2;
            if (length < 0) {
                throw BROKEN;
            }
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (frame) {
                in.readUnsignedByte();
                int height = in.readUnsignedShort();
                return of(FileKind.JPEG, in.readUnsignedShort(), height, exif);
            }
            if (marker == 0xe1 && exif == Exif.NONE) {
                byte[] tags = full(in, length);
                if (begins(tags, "Exif\0\0")) {
                    exif = Exif.of(tags);
                }
            } else {
                in.skipNBytes(length);
            }
        }
    }

    /** Chunks up to the picture's own data; PNG third edition, section 5. */
    private static PictureFacts png(DataInputStream in) throws IOException, Refused {
        in.skipNBytes(8);
        int width = 0;
        int height = 0;
        Exif exif = Exif.NONE;
        while (true) {
            int length = in.readInt();
            String type = word(in);
            if (length < 0) {
                throw BROKEN;
            }
            switch (type) {
                case "IHDR" -> {
                    width = in.readInt();
                    height = in.readInt();
                    in.skipNBytes(length - 8L + 4);
                }
                case "eXIf" -> {
                    exif = Exif.of(full(in, length));
                    in.skipNBytes(4);
                }
                case "IDAT" -> {
                    return of(FileKind.PNG, width, height, exif);
                }
                default -> in.skipNBytes(length + 4L);
            }
        }
    }

    /** Chunks of the container; RFC 9649 sections 2.3 to 2.7. */
    private static PictureFacts webp(DataInputStream in) throws IOException, Refused {
        in.skipNBytes(4);
        long left = littleEndian(in, 4) - 4;
        in.skipNBytes(4);
        int width = 0;
        int height = 0;
        Exif exif = Exif.NONE;
        while (left >= 8) {
            String type = word(in);
            long length = littleEndian(in, 4);
            long padded = length + (length & 1);
            left -= 8 + padded;
            switch (type) {
                case "VP8X" -> {
                    byte[] head = full(in, padded);
                    if (head.length < 10) {
                        throw BROKEN;
                    }
                    if ((head[0] & 0x02) != 0) {
                        throw new Refused("is a moving picture", "send a still one");
                    }
                    width = 1 + little(head, 4, 3);
                    height = 1 + little(head, 7, 3);
                    bound(width, height);
                }
                case "VP8 ", "VP8L" -> {
                    byte[] head = in.readNBytes((int) Math.min(10, padded));
                    if (head.length < 10) {
                        throw BROKEN;
                    }
                    boolean lossy = type.equals("VP8 ");
                    int sides = little(head, lossy ? 6 : 1, 4);
                    width = Math.max(width, lossy ? sides & 0x3fff : 1 + (sides & 0x3fff));
                    height = Math.max(height, lossy ? sides >>> 16 & 0x3fff : 1 + (sides >>> 14 & 0x3fff));
                    in.skipNBytes(padded - 10);
                }
                case "EXIF" -> exif = Exif.of(full(in, padded));
                default -> in.skipNBytes(padded);
            }
        }
        return of(FileKind.WEBP, width, height, exif);
    }

    private static byte[] full(DataInputStream in, long length) throws IOException, Refused {
        if (length > MOST_TAGS) {
            throw BROKEN;
        }
        byte[] bytes = new byte[(int) length];
        in.readFully(bytes);
        return bytes;
    }

    private static String word(DataInputStream in) throws IOException {
        byte[] letters = new byte[4];
        in.readFully(letters);
        return new String(letters, StandardCharsets.ISO_8859_1);
    }

    private static long littleEndian(DataInputStream in, int bytes) throws IOException {
        byte[] read = new byte[bytes];
        in.readFully(read);
        return little(read, 0, bytes) & 0xffffffffL;
    }

    private static int little(byte[] bytes, int from, int count) {
        int value = 0;
        for (int i = count - 1; i >= 0; i--) {
            value = value << 8 | bytes[from + i] & 0xff;
        }
        return value;
    }

    private static boolean begins(byte[] bytes, String text) {
        return new String(bytes, 0, Math.min(bytes.length, text.length()), StandardCharsets.ISO_8859_1).equals(text);
    }
}
