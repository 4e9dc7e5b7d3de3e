package weekwright.web.funds;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import weekwright.base.Codec;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.files.bank.BankGuess;
import weekwright.files.bank.BankLetters;
import weekwright.files.bank.BankReading;
import weekwright.files.bank.BankTable;
import weekwright.funds.BankSource;
import weekwright.funds.WaitingFile;
import weekwright.funds.WaitingFiles;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** A waiting file and how it is read: its bytes, and from them letters, cells and bookings. */
final class FileReading {
    static final Shape<BankSource> SHAPE = Shape.of(BankSource.class);
    private static final List<String> MONEY = List.of("amount", "out", "in", "balance", "gross", "fee");

    private final WaitingFile file;
    private final byte[] bytes;
    private final Map<BankSource.Encoding, Text> texts = new EnumMap<>(BankSource.Encoding.class);
    private final Map<List<?>, Taken> tables = new HashMap<>();

    private FileReading(WaitingFile file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
    }

    /** The file that the address names. */
    static FileReading of(WaitingFiles waiting, Request request) {
        WaitingFiles.Kept kept = waiting.find(request.part("key"))
                .orElseThrow(() -> new NotFound("This file does not wait any more: it is entered, thrown away, or was"
                        + " forgotten when the program stopped. Send it again where it is still wanted."));
        return new FileReading(kept.file(), kept.bytes());
    }

    WaitingFile file() {
        return file;
    }

    /** What the columns of a new source are likely to be; of encoding and divider those that are given, where they are. */
    Map<String, String> guess(String encoding, String divider, int digits) {
        Map<String, String> found = new LinkedHashMap<>();
        BankSource.Encoding letters =
                word(BankSource.Encoding.class, encoding).orElseGet(() -> BankLetters.guess(bytes));
        found.put("encoding", Codec.word(letters));
        BankSource.Divider parted = word(BankSource.Divider.class, divider)
                .or(() -> read(letters).text().map(BankTable::guess))
                .orElse(BankSource.Divider.COMMA);
        found.put("divider", Codec.word(parted));
        taken(letters, parted).table().ifPresent(table -> found.putAll(BankGuess.of(table, digits)));
        return found;
    }

    /** The cells; empty where the file cannot be taken apart so, then the faults say why. */
    Optional<BankTable> table(String encoding, String divider, Problems problems) {
        Optional<BankSource.Encoding> letters = word(BankSource.Encoding.class, encoding);
        Optional<BankSource.Divider> parted = word(BankSource.Divider.class, divider);
        if (letters.isEmpty() || parted.isEmpty()) {
            return Optional.empty();
        }
        problems.addAll(read(letters.get()).problems());
        Taken taken = taken(letters.get(), parted.get());
        problems.addAll(taken.problems());
        return taken.table();
    }

    /** A file is large, and looked at more than once for one answer. */
    private Text read(BankSource.Encoding letters) {
        return texts.computeIfAbsent(letters, encoding -> {
            Problems found = new Problems();
            return new Text(BankLetters.read(bytes, encoding, found), found.list());
        });
    }

    private Taken taken(BankSource.Encoding letters, BankSource.Divider divider) {
        return tables.computeIfAbsent(List.of(letters, divider), key -> {
            Problems found = new Problems();
            Optional<BankTable> table =
                    read(letters).text().flatMap(text -> BankTable.of(file.name(), text, divider, found));
            return new Taken(table, found.list());
        });
    }

    private record Text(Optional<String> text, List<Problem> problems) {}

    private record Taken(Optional<BankTable> table, List<Problem> problems) {}

    /** The bookings as a source has them. */
    Optional<BankReading> bookings(BankSource source, Request request, Problems problems) {
        return table(Codec.word(source.encoding()), Codec.word(source.divider()), problems)
                .map(table -> bookings(table, source, request));
    }

    static BankReading bookings(BankTable table, BankSource source, Request request) {
        Settings settings = request.settings();
        return BankReading.of(table, source, settings.project().currency(), settings.moneyDigits());
    }

    /** {@code Line 7: "31.02.2026" is no day as day, month, year}. */
    static String said(Problem problem) {
        return "Line " + problem.line() + ": " + problem.sentence();
    }

    /**
     * What a file leaves open and nobody has chosen yet.
     *
     * @param column of the source
     * @param text of the file that can be read in two ways
     */
    record Question(String column, String text, String rule, String choose) {}

    /** Asked, never guessed: a date that can be two days, amounts that leave open what stands before the cents. */
    List<Question> questions(UnaryOperator<String> field, int digits) {
        Optional<BankTable> table = table(field.apply("encoding"), field.apply("divider"), new Problems());
        List<Question> open = new ArrayList<>();
        if (table.isPresent() && field.apply("date_order").isEmpty()) {
            BankGuess.twofold(column(table.get(), field, "date"))
                    .ifPresent(two -> open.add(new Question(
                            "date_order",
                            two.text(),
                            "can be " + Said.day(two.one()) + " or " + Said.day(two.other()),
                            "choose the order of a date")));
        }
        if (table.isPresent() && field.apply("decimals").isEmpty()) {
            List<String> amounts = MONEY.stream()
                    .flatMap(role -> column(table.get(), field, role).stream())
                    .toList();
            BankGuess.undecided(amounts, digits)
                    .ifPresent(one -> open.add(
                            new Question("decimals", one.text(), one.rule(), "choose what stands before the cents")));
        }
        return open;
    }

    private static <E extends Enum<E>> Optional<E> word(Class<E> type, String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Codec.of(type).parse(text, Reading.file(0)));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    /** The texts of a column, such as the dates, under a mapping that is not whole yet. */
    private static List<String> column(BankTable table, UnaryOperator<String> field, String role) {
        String skip = field.apply("skip");
        String column = field.apply(role);
        if (!skip.matches("[0-9]{1,3}") || !column.matches("[0-9]{1,3}")) {
            return List.of();
        }
        int at = Integer.parseInt(column);
        return at < 1
                ? List.of()
                : table.after(Integer.parseInt(skip)).stream()
                        .map(row -> row.cell(at))
                        .filter(text -> !text.isEmpty())
                        .toList();
    }
}
