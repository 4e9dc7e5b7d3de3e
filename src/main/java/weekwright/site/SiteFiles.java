package weekwright.site;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Refused;
import weekwright.files.picture.PhotoFiles;
import weekwright.files.picture.PictureFacts;
import weekwright.render.Templates;

/**
 * The files of the build log that are no pages: its style sheet, its letters and its pictures. Their names bear a hash of
 * what is in them, so that a browser may keep them for ever. Pictures are copies without tags.
 */
final class SiteFiles {
    private static final Pattern FONT = Pattern.compile("url\\(\\.\\./static/fonts/([a-z0-9-]+)\\.woff2\\)");

    /** Letters that every page is set in. */
    private static final List<String> FACES = List.of("besley-latin-wght-normal", "archivo-latin-wght-normal");

    private final Map<String, byte[]> assets = new LinkedHashMap<>();
    private final Map<String, Path> pictures = new LinkedHashMap<>();
    private final Map<String, Optional<Shown>> shown = new LinkedHashMap<>();
    private final Function<String, Optional<Path>> copies;
    private final String style;

    /**
     * A picture in the log.
     *
     * @param path from the log's folder
     * @param place the attributes that keep its place in a page until it is there
     */
    record Shown(String path, String place) {}

    /** @param copies the copy of a picture that may be given out, by the picture's name */
    SiteFiles(Templates templates, Function<String, Optional<Path>> copies) {
        this.copies = copies;
        String css = templates.css("base").orElseThrow() + templates.css("site").orElseThrow();
        Matcher fonts = FONT.matcher(css);
        String whole = fonts.replaceAll(match -> "url(" + asset(match.group(1), "woff2", font(match.group(1))) + ")");
        style = "assets/" + asset("log", "css", whole.getBytes(StandardCharsets.UTF_8));
    }

    String style() {
        return style;
    }

    /** The letters that every page is set in, by path. */
    List<String> letters() {
        return assets.keySet().stream()
                .filter(path -> FACES.stream().anyMatch(face -> path.startsWith("assets/" + face)))
                .toList();
    }

    /** Style sheet and letters, by path. */
    Map<String, byte[]> assets() {
        return assets;
    }

    /** The pictures that pages asked for, by path, each with the file that is copied there. */
    synchronized Map<String, Path> pictures() {
        return new LinkedHashMap<>(pictures);
    }

    /** The copy of a picture, made now where it was not yet. Needs no lock. */
    Optional<Path> copy(String name) {
        return copies.apply(name);
    }

    /** Where a picture stands in the log; empty where it is not there or cannot be given out. */
    synchronized Optional<Shown> picture(String name) {
        return shown.computeIfAbsent(
                name,
                asked -> copies.apply(asked).map(file -> {
                    byte[] bytes = read(file);
                    String ending = file.getFileName().toString();
                    String path = "pictures/" + hash(bytes)
                            + ending.substring(ending.lastIndexOf('.')).toLowerCase(Locale.ROOT);
                    pictures.put(path, file);
                    return new Shown(path, place(bytes));
                }));
    }

    private static String place(byte[] copy) {
        try {
            PictureFacts facts = PictureFacts.read(new ByteArrayInputStream(copy));
            return new PhotoFiles.Box(facts.width(), facts.height()).place();
        } catch (Refused noPicture) {
            return "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String asset(String name, String ending, byte[] bytes) {
        String file = name + "-" + hash(bytes) + "." + ending;
        assets.put("assets/" + file, bytes);
        return file;
    }

    private static byte[] font(String name) {
        try (InputStream in = SiteFiles.class.getResourceAsStream("/static/fonts/" + name + ".woff2")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String hash(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
