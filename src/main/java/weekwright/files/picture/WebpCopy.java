package weekwright.files.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * A WebP without its tags: the picture, its cover and colours are kept as they are, every other chunk goes (RFC 9649 section
 * 2.7). It is not decoded, so it keeps its size; the JDK reads no WebP.
 */
final class WebpCopy {
    private static final Set<String> KEPT = Set.of("VP8X", "VP8 ", "VP8L", "ALPH", "ICCP");
    private static final int TAGS = 0x04 | 0x08;

    private WebpCopy() {}

    static byte[] of(Path file) throws IOException {
        ByteBuffer from = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        ByteArrayOutputStream into = new ByteArrayOutputStream();
        from.position(12);
        while (from.remaining() >= 8) {
            byte[] head = new byte[8];
            from.get(head);
            long length = ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN).getInt(4) & 0xffffffffL;
            byte[] chunk = new byte[(int) Math.min(length + (length & 1), from.remaining())];
            from.get(chunk);
            String type = new String(head, 0, 4, StandardCharsets.ISO_8859_1);
            if (!KEPT.contains(type)) {
                continue;
            }
            if (type.equals("VP8X") && chunk.length > 0) {
                chunk[0] &= (byte) ~TAGS;
            }
            into.writeBytes(head);
            into.writeBytes(chunk);
        }
        ByteBuffer whole = ByteBuffer.allocate(12 + into.size()).order(ByteOrder.LITTLE_ENDIAN);
        whole.put("RIFF".getBytes(StandardCharsets.ISO_8859_1)).putInt(4 + into.size());
        whole.put("WEBP".getBytes(StandardCharsets.ISO_8859_1)).put(into.toByteArray());
        return whole.array();
    }
}
