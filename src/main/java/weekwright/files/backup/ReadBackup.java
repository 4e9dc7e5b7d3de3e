package weekwright.files.backup;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import weekwright.db.DatabaseCopy;
import weekwright.files.csv.Pictures;

/**
 * Reads a backup whole and checks it: every file against its SHA-256, the database by itself. It is a zip of
 * {@code project.db}, {@code photos/}, {@code receipts/}, {@code drawing.svg} and at the end {@code contents.txt}. Whoever
 * made it may have meant ill: names, number and size are held to bounds that are counted while reading.
 */
final class ReadBackup {
    static final String DATABASE = "project.db";
    static final String CONTENTS = "contents.txt";
    static final String FIRST_LINE = "weekwright backup 1";
    static final String MADE = "made ";

    private static final Pattern PICTURE = Pattern.compile(
            "(" + Pictures.PHOTOS + "|" + Pictures.RECEIPTS + ")/[^./\\\\:\\p{Cntrl}][^/\\\\:\\p{Cntrl}]*");
    private static final int MOST_FILES = 200_000;
    private static final long MOST_BYTES = 50L << 30;
    private static final long CONTENTS_MOST = 50L << 20;
    /** Deflate can pack a thousandfold; ours are pictures and rows, which never come near a hundredfold. */
    private static final long MOST_RATIO = 100;

    private static final long RATIO_FROM = 10L << 20;

    private final Path scratch;
    private final boolean keepPictures;
    private final Map<String, String> hashes = new TreeMap<>();
    private List<String> contents = List.of();
    private long packed;
    private long unpacked;

    private ReadBackup(Path scratch, boolean keepPictures) {
        this.scratch = scratch;
        this.keepPictures = keepPictures;
    }

    /**
     * What a whole backup holds.
     *
     * @param made when its state was taken
     * @param pictures how many photos and receipts
     */
    record Contents(Instant made, int pictures, DatabaseCopy.Facts facts) {}

    /**
     * @param scratch an empty folder, into which at least the database is unpacked
     * @param keepPictures whether the pictures are unpacked there too
     * @throws Broken with what was found, when it is not whole
     * @throws IOException when the scratch folder cannot be written
     */
    static Contents read(Path file, Path scratch, boolean keepPictures) throws Broken, IOException {
        ReadBackup reading = new ReadBackup(scratch, keepPictures);
        try (InputStream in = new Counted(Files.newInputStream(file), reading);
                ZipInputStream zip = new ZipInputStream(in, StandardCharsets.UTF_8)) {
            reading.entries(zip);
        }
        return reading.checked();
    }

    /** A backup is not whole; the message is what was found, as a part of a sentence. */
    static final class Broken extends Exception {
        private static final long serialVersionUID = 1L;

        Broken(String finding) {
            super(finding);
        }
    }

    private void entries(ZipInputStream zip) throws Broken, IOException {
        for (ZipEntry entry = next(zip); entry != null; entry = next(zip)) {
            String name = entry.getName();
            if (!contents.isEmpty()) {
                throw new Broken("something follows its list of contents");
            }
            if (name.equals(CONTENTS)) {
                contents = new String(text(zip), StandardCharsets.UTF_8).lines().toList();
                continue;
            }
            boolean picture = PICTURE.matcher(name).matches() || name.equals(Pictures.DRAWING);
            if (!picture && !name.equals(DATABASE)) {
                throw new Broken("it holds \"" + shown(name) + "\", which belongs in no backup");
            }
            if (hashes.containsKey(name)) {
                throw new Broken(name + " stands in it twice");
            }
            if (hashes.size() >= MOST_FILES) {
                throw new Broken("it holds more than " + MOST_FILES + " files");
            }
            hashes.put(name, unpack(zip, name, !picture || keepPictures));
        }
    }

    private static String shown(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", "?");
        return plain.length() > 80 ? plain.substring(0, 80) + "…" : plain;
    }

    private static ZipEntry next(ZipInputStream zip) throws Broken {
        try {
            return zip.getNextEntry();
        } catch (IOException | IllegalArgumentException e) {
            throw new Broken("it cannot be unpacked: " + e.getMessage());
        }
    }

    private byte[] text(ZipInputStream zip) throws Broken {
        try {
            byte[] bytes = zip.readNBytes((int) CONTENTS_MOST);
            if (zip.read() >= 0) {
                throw new Broken("its list of contents is too long");
            }
            return bytes;
        } catch (IOException e) {
            throw new Broken("it cannot be unpacked: " + e.getMessage());
        }
    }

    private String unpack(ZipInputStream zip, String name, boolean keep) throws Broken, IOException {
        MessageDigest digest = sha256();
        DigestInputStream in = new DigestInputStream(zip, digest);
        Path file = scratch.resolve(name);
        if (keep) {
            Files.createDirectories(file.getParent());
        }
        try (OutputStream out = keep
                ? Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)
                : OutputStream.nullOutputStream()) {
            byte[] buffer = new byte[1 << 16];
            for (int read = some(in, buffer); read >= 0; read = some(in, buffer)) {
                unpacked += read;
                if (unpacked > MOST_BYTES || unpacked > RATIO_FROM && unpacked > MOST_RATIO * packed) {
                    throw new Broken("it unpacks to far more than a project is");
                }
                out.write(buffer, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** What fails here is the backup's fault; what fails at writing is that of the disk. */
    private static int some(InputStream in, byte[] buffer) throws Broken {
        try {
            return in.read(buffer);
        } catch (IOException e) {
            throw new Broken("it cannot be unpacked: " + e.getMessage());
        }
    }

    private Contents checked() throws Broken {
        if (contents.size() < 2
                || !contents.get(0).equals(FIRST_LINE)
                || !contents.get(1).startsWith(MADE)) {
            throw new Broken(
                    contents.isEmpty()
                            ? "it has no list of contents: it is no backup, or its end is missing"
                            : "its list of contents is of another program");
        }
        if (!contents.subList(2, contents.size()).equals(lines(hashes))) {
            throw new Broken("its files are not those of its list of contents" + first());
        }
        if (!hashes.containsKey(DATABASE)) {
            throw new Broken("it holds no database");
        }
        try {
            Instant made = Instant.parse(contents.get(1).substring(MADE.length()));
            DatabaseCopy.Facts facts =
                    DatabaseCopy.at(scratch.resolve(DATABASE)).check();
            int pictures = (int)
                    hashes.keySet().stream().filter(name -> name.contains("/")).count();
            return new Contents(made, pictures, facts);
        } catch (DateTimeException e) {
            throw new Broken("its list of contents names no time");
        } catch (DatabaseCopy.Damaged e) {
            throw new Broken(e.getMessage());
        }
    }

    /** Names the first file that is not as the list says. */
    private String first() {
        List<String> now = lines(hashes);
        for (String line : now) {
            if (!contents.contains(line)) {
                return ": " + line.substring(line.indexOf("  ") + 2);
            }
        }
        return "";
    }

    /** The lines of the list: the SHA-256 of each file and its name. */
    static List<String> lines(Map<String, String> hashes) {
        List<String> lines = new ArrayList<>();
        new TreeMap<>(hashes).forEach((name, hash) -> lines.add(hash + "  " + name));
        return lines;
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }

    /** Counts what was read of the packed file. */
    private static final class Counted extends FilterInputStream {
        private final ReadBackup reading;

        Counted(InputStream in, ReadBackup reading) {
            super(in);
            this.reading = reading;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            reading.packed += one < 0 ? 0 : 1;
            return one;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            reading.packed += Math.max(0, read);
            return read;
        }
    }
}
