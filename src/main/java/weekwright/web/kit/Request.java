package weekwright.web.kit;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import weekwright.account.Codes;
import weekwright.account.LogInStore;
import weekwright.account.Session;
import weekwright.account.SessionStore;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.AnswerKey;
import weekwright.db.Db;
import weekwright.db.Disk;
import weekwright.db.Read;
import weekwright.db.StoreTrouble;
import weekwright.db.Stored;
import weekwright.forecast.Forecasts;
import weekwright.render.Form;
import weekwright.render.Formats;

/** One request as a page sees it: the project, the person, the day, what was asked and posted. Used by one thread. */
public final class Request {
    /** The hand that is written down while the project lists nobody. */
    private static final String NOBODY = "crew";

    private final Context context;
    private final String path;
    private final Optional<Project> project;
    private final Clock clock;
    private final Browser browser;
    private final Front front;
    private final long version;
    private Optional<Boolean> locked = Optional.empty();
    private Optional<Optional<Session>> session = Optional.empty();
    private String interrupted = "";
    private Optional<Settings> settings = Optional.empty();
    private Optional<List<CrewMember>> crew = Optional.empty();
    private Optional<Forecasts.Look> forecast = Optional.empty();
    private Optional<FormReader> reader = Optional.empty();
    private Optional<Typed> again = Optional.empty();
    private final Map<String, List<String>> carried = new LinkedHashMap<>();

    /** A form as it was sent and not accepted. */
    record Typed(
            String act,
            Optional<Long> version,
            Map<String, List<String>> values,
            Map<String, String> errors,
            List<Problem> problems) {}

    Request(Context context, String path, Optional<Project> project, Clock clock, Browser browser, Front front) {
        this.context = context;
        this.path = path;
        this.project = project;
        this.clock = clock;
        this.browser = browser;
        this.front = front;
        version = project.map(one -> one.db().version()).orElse(0L);
    }

    /** Refuses to be answered here: the browser is sent on. */
    public static final class Elsewhere extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Saved saved;

        public Elsewhere(Saved saved) {
            super(saved.to(), null, false, false);
            this.saved = saved;
        }

        Saved saved() {
            return saved;
        }
    }

    // ---- the project

    /** Whether a project stands in the folder; only the pages that start one may be asked without. */
    public boolean hasProject() {
        return project.isPresent();
    }

    public Project project() {
        return project.orElseThrow(() -> new IllegalStateException("no project is open"));
    }

    public Db db() {
        return project().db();
    }

    /** The project's version when this was asked: what is shown is no older; 0 without a project. */
    public long version() {
        return version;
    }

    public Forecasts forecasts() {
        return project().forecasts();
    }

    /** The forecast of today as far as it is there, the same all along; asking starts it where there is none. Never waits. */
    public Forecasts.Look forecast() {
        if (forecast.isEmpty()) {
            forecast = Optional.of(forecasts().current(today()));
        }
        return forecast.get();
    }

    /** Runs reads on one consistent view of the store. */
    public <T> T read(Function<Read, T> work) {
        return db().read(work);
    }

    public Settings settings() {
        if (settings.isEmpty()) {
            settings = Optional.of(read(SettingsStore::get));
        }
        return settings.get();
    }

    public Clock clock() {
        return clock;
    }

    /** The day in the project's zone. */
    public LocalDate today() {
        return LocalDate.now(clock.withZone(hasProject() ? settings().zone() : ZoneId.of("UTC")));
    }

    /** Words for the days, the money and the hours of this project, as of {@link #today}. */
    public Formats formats() {
        return new Formats(settings().project().currency(), today());
    }

    // ---- the person

    /** Everybody of the crew who has not left, in file order. */
    public List<CrewMember> crew() {
        if (crew.isEmpty()) {
            crew = Optional.of(CrewMember.present(read(CrewMemberStore.TABLE::values), today()));
        }
        return crew.get();
    }

    /** Who sits at this browser: the one chosen, or the only one there is; empty while nobody was chosen. */
    public Optional<CrewMember> person() {
        if (!hasProject()) {
            return Optional.empty();
        }
        if (locked()) {
            return session().flatMap(one -> member(one.crew()));
        }
        if (crew().size() == 1) {
            return Optional.of(crew().get(0));
        }
        return crew().stream()
                .filter(member -> member.id().folded().equals(browser.who()))
                .findFirst();
    }

    private Optional<CrewMember> member(Id id) {
        return crew().stream().filter(member -> member.id().same(id)).findFirst();
    }

    /** Whether anybody has a log-in, so that nobody gets in without. */
    public boolean locked() {
        if (locked.isEmpty()) {
            locked = Optional.of(hasProject() && read(LogInStore::any));
        }
        return locked.get();
    }

    /** The session of this browser, where log-ins exist and it has one that has not ended. */
    public Optional<Session> session() {
        if (session.isEmpty()) {
            session = Optional.of(
                    browser.token().isEmpty() || !locked()
                            ? Optional.empty()
                            : read(read -> SessionStore.find(read, Codes.sha256(browser.token())))
                                    .filter(this::alive));
        }
        return session.get();
    }

    /** One that has ended is forgotten, so that a clock put back does not revive it. */
    private boolean alive(Session one) {
        boolean alive = one.alive(clock.instant());
        if (!alive) {
            db().write(one.crew().value(), write -> SessionStore.end(write, one.crew(), one.mark()));
        }
        return alive;
    }

    /** Where this request came from, for the throttle alone. */
    public String remoteAddress() {
        return front.address(context);
    }

    /** How the browser reached this server: {@code https://mill.example:8347}. */
    public String origin() {
        return (Front.https(context) ? "https://" : "http://") + front.host(context);
    }

    /** What was typed when the log-in was found to have ended, packed for the log-in page; empty where nothing was. */
    public String interrupted() {
        return interrupted;
    }

    void interruptedBy(String packed) {
        interrupted = packed;
    }

    /** What the change log is to name: the person's id. */
    public String who() {
        return person().map(member -> member.id().value()).orElse(NOBODY);
    }

    /** This project and this person, for a device that keeps what was typed: {@code 7f3a|ilse}; empty before a stranger. */
    public String whose() {
        return access() == Access.PUBLIC ? "" : db().projectKey() + "|" + who();
    }

    public Access access() {
        if (hasProject() && crew().isEmpty() && !locked()) {
            return Access.CREW;
        }
        return Access.of(person());
    }

    /** Where a person begins who asked for no sheet. */
    public String home() {
        return access() == Access.HELPER ? "/week" : "/ahead";
    }

    /** Refuses a helper who is after what only the crew may do. */
    public void crewOnly(String sentence) {
        if (access() != Access.CREW) {
            throw new Forbidden(sentence);
        }
    }

    // ---- what was asked

    /** The text of a part of the address: of {@code id} in {@code /build/tasks/{id}}. */
    public String part(String name) {
        return context.pathParam(name);
    }

    /** The id in the address. */
    public Id id(String name) {
        try {
            return Id.parse(part(name));
        } catch (Refused refused) {
            throw new NotFound("\"" + part(name) + "\" " + refused.rule() + ".");
        }
    }

    /** A row number in the address. */
    public long row(String name) {
        if (!part(name).matches("[0-9]{1,15}")) {
            throw new NotFound("\"" + part(name) + "\" is not a number of an entry.");
        }
        return Long.parseLong(part(name));
    }

    /** A word after the question mark; empty where there is none. */
    public String query(String name) {
        String text = context.queryParam(name);
        return text == null ? "" : text.strip();
    }

    /** What stands after the question mark, read as a form is; its faults are the page's to show. */
    public FormReader asked() {
        return asked(context.queryParamMap());
    }

    /** As above, of words that were kept from an earlier address. */
    public FormReader asked(Map<String, List<String>> words) {
        return new FormReader(words, hasProject() ? settings().typed() : Reading.form(2));
    }

    /** A request header; empty where there is none. */
    public String header(String name) {
        String text = context.header(name);
        return text == null ? "" : text;
    }

    /** The address without what stands after the question mark. */
    public String address() {
        return context.path();
    }

    // ---- forms as they are sent

    /** What was posted. */
    public FormReader form() {
        if (reader.isEmpty()) {
            Reading reading = hasProject() ? settings().typed() : Reading.form(2);
            reader = Optional.of(new FormReader(context.formParamMap(), reading));
        }
        return reader.get();
    }

    /** Puts a text into a field of the form that is about to be shown as refused. */
    public void carry(String name, String text) {
        carried.put(name, List.of(text));
    }

    /** Files sent with a form under a name, in order; a box left empty sends none. */
    public List<Upload> uploads(String name) {
        List<Upload> uploads = context.uploadedFiles(name).stream()
                .filter(file -> !file.filename().isEmpty() || file.size() > 0)
                .map(file -> new Upload(file.filename(), file.size(), file::content))
                .toList();
        if (!uploads.isEmpty()
                && hasProject()
                && Disk.littleRoom(project().folder().path())) {
            throw StoreTrouble.littleRoom();
        }
        return uploads;
    }

    /**
     * Does what the form asks for as one transaction, at most once for its answer key: sent again, it gets the first
     * answer and nothing is done. Checks the form first.
     *
     * @throws weekwright.base.Rejected when the form or the work has faults; nothing is kept
     */
    public Answer save(Db.Work<Saved, ? extends Exception> work) throws Exception {
        form().check();
        AnswerKey key = new AnswerKey(Posts.answerKey(context), path, Posts.digest(context));
        Db.Work<String, Exception> kept = write -> {
            Saved saved = work.in(write);
            return FlashText.of(write.raisedTo().map(saved::undo).orElse(saved));
        };
        return Answer.to(FlashText.read(db().once(who(), key, kept)));
    }

    // ---- forms as they are shown

    /**
     * The form behind one of the page's buttons, empty; when it was sent and refused, with what was typed and what is
     * wrong.
     *
     * @param act what its button posts as {@code do}; empty for the chief form
     */
    public Form form(String act) {
        return again.filter(typed -> typed.act().equals(act))
                .map(typed -> new Form(csrf(), Keys.random(), typed.version(), typed.values(), typed.errors()))
                .orElseGet(() -> new Form(csrf(), Keys.random(), Optional.empty(), Map.of(), Map.of()));
    }

    /** As {@link #form(String)}, with what stands in its fields at first; an empty text fills nothing in. */
    public Form form(String act, Map<String, String> values) {
        Form form = form(act);
        if (wasRefused(act)) {
            return form;
        }
        Map<String, List<String>> all = new LinkedHashMap<>();
        values.forEach((name, text) -> all.put(name, text.isEmpty() ? List.of() : List.of(text)));
        return new Form(form.csrf(), form.answerKey(), form.version(), all, Map.of());
    }

    /** The form that edits a row: its version and the texts of all its columns, as they are typed. */
    public Form form(String act, Stored<?> row) {
        Form form = form(act, texts(row.value()));
        return wasRefused(act)
                ? form
                : new Form(form.csrf(), form.answerKey(), Optional.of(row.version()), form.values(), form.errors());
    }

    private <R extends Record> Map<String, String> texts(R value) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) value.getClass());
        return shape.texts(value, settings().moneyDigits());
    }

    /**
     * A form that asks by its address and saves nothing, with these texts in its fields.
     *
     * @param problems what is wrong with them
     */
    public Form asking(Map<String, List<String>> texts, List<Problem> problems) {
        return new Form(csrf(), Keys.random(), Optional.empty(), texts, Refusals.byField(problems, fieldsOf(problems)));
    }

    private static Set<String> fieldsOf(List<Problem> problems) {
        return problems.stream().map(Problem::column).collect(Collectors.toSet());
    }

    /** Whether this very form was sent and not accepted. */
    public boolean wasRefused(String act) {
        return again.filter(typed -> typed.act().equals(act)).isPresent();
    }

    /** Every problem of the form that was sent and not accepted, for a page that lists them itself. */
    public List<Problem> refusals() {
        return again.map(Typed::problems).orElse(List.of());
    }

    /** The form is shown once more with what was typed: refused, filled in by a button, or kept over a log-in. */
    void shownAgain(Typed typed) {
        Map<String, List<String>> values = new LinkedHashMap<>(typed.values());
        values.putAll(carried);
        again = Optional.of(new Typed(typed.act(), typed.version(), values, typed.errors(), typed.problems()));
    }

    String csrf() {
        return browser.csrf();
    }

    String path() {
        return path;
    }

    Context context() {
        return context;
    }
}
