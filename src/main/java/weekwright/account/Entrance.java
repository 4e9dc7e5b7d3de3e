package weekwright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * The door: tries names with passphrases and codes, no more often than the throttle lets, and begins sessions. Unknown
 * names cost as much time as known ones and get the same answer. Safe for use from several threads.
 */
public final class Entrance {
    private static final Duration FIRST_RUN = Duration.ofMinutes(30);
    private static final Duration CODE = Duration.ofDays(7);
    private static final int NAME_MOST = 80;

    private final Passphrases passphrases;
    private final Throttle throttle;
    private final Confirmations confirmations;
    private final Clock clock;
    private Optional<LogInStore.StartCode> firstRun = Optional.empty();

    /**
     * What came of a try.
     *
     * @param member who it is; empty when name, passphrase or code is wrong, or when it was not tried
     * @param delay how long to wait before the next try; zero when it was tried
     */
    public record Tried(Optional<CrewMember> member, Duration delay) {}

    /** @param nanos what the throttle goes by: a counter that nobody sets, such as {@link System#nanoTime} */
    public Entrance(Passphrases passphrases, Clock clock, LongSupplier nanos) {
        this.passphrases = passphrases;
        this.throttle = new Throttle(nanos);
        this.confirmations = new Confirmations(nanos);
        this.clock = clock;
    }

    public Passphrases passphrases() {
        return passphrases;
    }

    /** Tries a passphrase. A stored one of another cost is made anew. */
    public Tried passphrase(Db db, List<CrewMember> crew, String name, String typed, String address) {
        return tried(crew, name, address, member -> {
            Optional<String> stored = member.flatMap(m -> db.read(read -> LogInStore.passphrase(read, m.id())));
            boolean bounded = typed.length() <= 2 * PassphraseRules.MOST;
            boolean right = passphrases.matches(bounded ? typed : "", stored) && bounded;
            if (right && passphrases.outdated(stored.orElseThrow())) {
                String hash = passphrases.hash(typed);
                db.write(member.orElseThrow().id().value(), write -> {
                    LogInStore.rehash(write, member.orElseThrow().id(), hash);
                    return null;
                });
            }
            return right;
        });
    }

    /** Tries a start code: the person's own, or, while nobody has a log-in, that of the first run. */
    public Tried code(Db db, List<CrewMember> crew, String name, String typed, String address) {
        String hash = Codes.hashOfCode(typed);
        return tried(
                crew,
                name,
                address,
                member -> member.map(
                                m -> db.read(read -> LogInStore.any(read) ? LogInStore.code(read, m.id()) : firstRun()))
                        .flatMap(code -> code)
                        .filter(code -> clock.instant().isBefore(code.until()) && Codes.same(code.sha256(), hash))
                        .isPresent());
    }

    private interface Test {
        boolean right(Optional<CrewMember> member);
    }

    private Tried tried(List<CrewMember> crew, String name, String address, Test test) {
        Optional<CrewMember> member = named(crew, name);
        String folded = member.map(m -> m.id().folded()).orElse(folded(name));
        Duration wait = throttle.ask(folded, address);
        if (!wait.isZero()) {
            return new Tried(Optional.empty(), wait);
        }
        boolean right = test.right(member);
        if (right) {
            throttle.right(folded, address);
        }
        return new Tried(right ? member : Optional.empty(), Duration.ZERO);
    }

    /** By id or by whole name, in any case of letters. */
    public static Optional<CrewMember> named(List<CrewMember> crew, String name) {
        return crew.stream()
                .filter(m ->
                        m.id().folded().equals(folded(name)) || folded(m.name()).equals(folded(name)))
                .findFirst();
    }

    private static String folded(String name) {
        String text = name.strip().toLowerCase(Locale.ROOT);
        return text.substring(0, Math.min(NAME_MOST, text.length()));
    }

    /** Begins a session of somebody who just proved who they are. @return the browser's secret; only its hash is kept */
    public String begin(Write write, Id crew, String browser) {
        String token = Codes.token();
        SessionStore.begin(write, Codes.sha256(token), crew, browser);
        confirmations.confirm(Codes.sha256(token));
        return token;
    }

    /** The right passphrase was typed again in this session. */
    public void confirm(Session session) {
        confirmations.confirm(session.tokenSha256());
    }

    /** Whether it was typed in this session within the last ten minutes. */
    public boolean confirmed(Session session) {
        return confirmations.holds(session.tokenSha256());
    }

    /** Makes a code with which this person sets a first passphrase within seven days. @return to be handed over */
    public static String giveCode(Write write, Id crew) {
        String code = Codes.code();
        Instant until = write.at().plus(CODE);
        LogInStore.giveCode(write, crew, new LogInStore.StartCode(Codes.hashOfCode(code), until));
        return code;
    }

    /** Makes the code of the first run, good for half an hour and once. @return to be shown on the console */
    public synchronized String openFirstRun() {
        String code = Codes.code();
        firstRun = Optional.of(
                new LogInStore.StartCode(Codes.hashOfCode(code), clock.instant().plus(FIRST_RUN)));
        return code;
    }

    private synchronized Optional<LogInStore.StartCode> firstRun() {
        return firstRun;
    }

    /** Whether somebody of these with access to everything has a log-in. */
    public static boolean crewHasLogIn(Read read, List<CrewMember> crew) {
        var has = LogInStore.since(read).keySet();
        return crew.stream()
                .anyMatch(member -> member.accessOrDefault() == CrewMember.Access.CREW
                        && has.contains(member.id().folded()));
    }
}
