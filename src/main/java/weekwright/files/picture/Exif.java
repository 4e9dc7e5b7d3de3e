package weekwright.files.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The two tags of a camera's data that are used here (Exif 2.3: 0112 orientation, 9003 original date, 0132 date); all else is
 * passed over. Whatever the bytes are, reading ends: it follows three addresses and no chain.
 *
 * @param orientation 1 to 8, 1 upright, as in Exif 2.3 section 4.6.4
 * @param takenOn the camera's own day, without a zone
 */
record Exif(int orientation, Optional<LocalDate> takenOn) {
    static final Exif NONE = new Exif(1, Optional.empty());

    private static final int ORIENTATION = 0x0112;
    private static final int DATE = 0x0132;
    private static final int CAMERA_TAGS = 0x8769;
    private static final int ORIGINAL_DATE = 0x9003;
    private static final int ENTRY = 12;
    private static final int DATE_LETTERS = 10;

    /** @param tiff from its byte order mark on, with or without {@code Exif\0\0} before it */
    static Exif of(byte[] tiff) {
        int start = tiff.length > 6 && tiff[0] == 'E' && tiff[1] == 'x' ? 6 : 0;
        if (tiff.length - start < 8) {
            return NONE;
        }
        ByteBuffer bytes = ByteBuffer.wrap(tiff, start, tiff.length - start).slice();
        bytes.order(bytes.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int first = bytes.getInt(4);
        int turned = entry(bytes, first, ORIENTATION)
                .map(at -> (int) bytes.getShort(at + 8))
                .orElse(1);
        Optional<LocalDate> taken = entry(bytes, first, CAMERA_TAGS)
                .flatMap(at -> date(bytes, bytes.getInt(at + 8), ORIGINAL_DATE))
                .or(() -> date(bytes, first, DATE));
        return new Exif(turned >= 1 && turned <= 8 ? turned : 1, taken);
    }

    /** Where the entry of a tag begins. */
    private static Optional<Integer> entry(ByteBuffer bytes, int directory, int tag) {
        if (directory < 8 || directory > bytes.capacity() - 2) {
            return Optional.empty();
        }
        int entries = bytes.getShort(directory) & 0xffff;
        for (int i = 0; i < entries; i++) {
            int at = directory + 2 + i * ENTRY;
            if (at > bytes.capacity() - ENTRY) {
                break;
            }
            if ((bytes.getShort(at) & 0xffff) == tag) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> date(ByteBuffer bytes, int directory, int tag) {
        Optional<Integer> place = entry(bytes, directory, tag).map(at -> bytes.getInt(at + 8));
        if (place.isEmpty() || place.get() < 0 || place.get() > bytes.capacity() - DATE_LETTERS) {
            return Optional.empty();
        }
        byte[] letters = new byte[DATE_LETTERS];
        bytes.get(place.get(), letters);
        try {
            return Optional.of(LocalDate.parse(new String(letters, StandardCharsets.US_ASCII).replace(':', '-')));
        } catch (DateTimeException e) {
            // cameras without a set clock write 0000:00:00 or blanks
            return Optional.empty();
        }
    }
}
