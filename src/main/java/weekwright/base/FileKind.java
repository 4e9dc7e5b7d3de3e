package weekwright.base;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** What a file is by its first bytes, whatever its name says. */
public enum FileKind {
    JPEG("jpg", "image/jpeg"),
    PNG("png", "image/png"),
    WEBP("webp", "image/webp"),
    PDF("pdf", "application/pdf");

    /** So many first bytes tell. */
    public static final int HEAD = 12;

    private final String ending;
    private final String type;

    FileKind(String ending, String type) {
        this.ending = ending;
        this.type = type;
    }

    /** The ending of its name, without the dot. */
    public String ending() {
        return ending;
    }

    /** The content type. */
    public String type() {
        return type;
    }

    public boolean isPicture() {
        return this != PDF;
    }

    /** By its first bytes: JPEG FF D8 FF, PNG 89 50 4E 47, WebP RIFF....WEBP, PDF %PDF-; none for anything else. */
    public static Optional<FileKind> of(byte[] head) {
        String text = new String(head, 0, Math.min(HEAD, head.length), StandardCharsets.ISO_8859_1);
        if (head.length < HEAD) {
            return Optional.empty();
        }
        return Arrays.stream(values()).filter(kind -> kind.begins(text)).findFirst();
    }

    private boolean begins(String text) {
        return switch (this) {
            case JPEG -> text.startsWith("\u00ff\u00d8\u00ff");
            case PNG -> text.startsWith("\u0089PNG");
            case WEBP -> text.startsWith("RIFF") && text.startsWith("WEBP", 8);
            case PDF -> text.startsWith("%PDF-");
        };
    }
}
