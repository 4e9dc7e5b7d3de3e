package weekwright.render;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.attributes.AttributeResolver;
import io.pebbletemplates.pebble.extension.AbstractExtension;
import io.pebbletemplates.pebble.loader.ClasspathLoader;
import io.pebbletemplates.pebble.loader.FileLoader;
import io.pebbletemplates.pebble.loader.Loader;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The page templates and their style sheets. A template reads {@code page} (its page's View record), {@code frame} (the
 * {@link Frame}) and {@code styles} (names of style sheets to link). Strict: a name that does not exist fails with file
 * and line. Everything is escaped but what a filter {@code raw} lets through. Safe for use from several threads.
 */
public final class Templates {
    /** Under this name the filters find the formats of the page. */
    static final String FORMATS = "formats";

    private static final Pattern STYLE_NAME = Pattern.compile("[a-z][a-z-]*");
    /** base.css is these files one after the other; later ones win. */
    private static final List<String> BASE_STYLES = List.of(
            "base.css", "parts/form.css", "parts/table.css", "parts/marks.css", "parts/chart.css", "parts/paper.css");

    private final PebbleEngine engine;
    /** Style sheets of packed templates, each read once. */
    private final Map<String, Optional<String>> sheets = new ConcurrentHashMap<>();

    private final Optional<Path> folder;

    private Templates(Loader<?> loader, Optional<Path> folder) {
        this.folder = folder;
        this.engine = new PebbleEngine.Builder()
                .loader(loader)
                .strictVariables(true)
                .cacheActive(folder.isEmpty())
                .newLineTrimming(true)
                .extension(new FormatFilters(), new AbstractExtension() {
                    @Override
                    public List<AttributeResolver> getAttributeResolver() {
                        return List.of(new RecordAttributes());
                    }
                })
                .build();
    }

    /** The templates packed with the program, each read once. */
    public static Templates packed() {
        ClasspathLoader loader = new ClasspathLoader(Templates.class.getClassLoader());
        loader.setPrefix("templates");
        loader.setSuffix(".peb");
        return new Templates(loader, Optional.empty());
    }

    /** Whether they are read anew for every page, as by those who work on them. */
    public boolean areEdited() {
        return folder.isPresent();
    }

    /** Templates of a folder, read anew for every page: an edit shows at the next request. */
    public static Templates from(Path folder) {
        FileLoader loader = new FileLoader(folder.toAbsolutePath().toString());
        loader.setSuffix(".peb");
        return new Templates(loader, Optional.of(folder));
    }

    /**
     * One page as text.
     *
     * @param name the template without its ending: {@code build/build-task-edit}
     * @param page what the template reads as {@code page}
     */
    public String render(String name, Frame frame, Object page) {
        Map<String, Object> model = new HashMap<>();
        model.put("page", page);
        model.put("frame", frame);
        model.put("styles", styles(frame.group()));
        model.put(FORMATS, new Formats(frame.currency(), frame.today()));
        StringWriter text = new StringWriter(16_384);
        try {
            engine.getTemplate(name).evaluate(text, model);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * A style sheet's text by its name: {@code base}, or a page group's ({@code templates/log/log.css} is {@code log}).
     * Empty where there is none.
     */
    public Optional<String> css(String name) {
        if (name.length() > 40 || !STYLE_NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        return folder.isPresent() ? sheet(name) : sheets.computeIfAbsent(name, this::sheet);
    }

    /** A plain text that lies among the templates, by its name with its ending: {@code help/words.txt}. */
    public Optional<String> text(String file) {
        return read(file);
    }

    private Optional<String> sheet(String name) {
        if (!name.equals("base")) {
            return read(name + "/" + name + ".css");
        }
        StringBuilder all = new StringBuilder();
        for (String file : BASE_STYLES) {
            all.append(read(file).orElseThrow(() -> new IllegalStateException("no style sheet " + file)));
        }
        return Optional.of(all.toString());
    }

    private List<String> styles(String group) {
        List<String> names = new ArrayList<>(List.of("base"));
        if (css(group).isPresent()) {
            names.add(group);
        }
        return names;
    }

    private Optional<String> read(String file) {
        try {
            if (folder.isPresent()) {
                Path path = folder.get().resolve(file);
                return Files.isRegularFile(path) ? Optional.of(Files.readString(path)) : Optional.empty();
            }
            try (InputStream in = Templates.class.getClassLoader().getResourceAsStream("templates/" + file)) {
                return in == null
                        ? Optional.empty()
                        : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
