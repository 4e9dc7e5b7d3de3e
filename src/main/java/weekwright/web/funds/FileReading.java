package weekwright.web.funds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.db.Read;
import weekwright.files.bank.BankGuess;
import weekwright.files.bank.BankLetters;
import weekwright.files.bank.BankReading;
import weekwright.files.bank.BankTable;
import weekwright.funds.BankSource;
import weekwright.funds.WaitingFile;
import weekwright.funds.WaitingFileStore;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** A waiting file and how it is read: its bytes, and from them letters, cells and bookings. */
final class FileReading {
    static final Shape<BankSource> SHAPE = Shape.of(BankSource.class);

    private final WaitingFile file;
    private final byte[] bytes;

    private FileReading(WaitingFile file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
    }

    /** The file that the address names. */
    static FileReading of(Request request, Read read) {
        String key = request.part("key");
        WaitingFile file = WaitingFileStore.find(read, key)
                .orElseThrow(() -> new NotFound("This file does not wait any more: it is entered, or thrown away."));
        return new FileReading(file, WaitingFileStore.bytes(read, key));
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
        Optional<String> text = BankLetters.read(bytes, letters, new Problems());
        BankSource.Divider parted = word(BankSource.Divider.class, divider)
                .or(() -> text.map(BankTable::guess))
                .orElse(BankSource.Divider.COMMA);
        found.put("divider", Codec.word(parted));
        text.flatMap(t -> BankTable.of(file.name(), t, parted, new Problems()))
                .ifPresent(table -> found.putAll(BankGuess.of(table, digits)));
        return found;
    }

    /** The cells; empty where the file cannot be taken apart so, then the faults say why. */
    Optional<BankTable> table(String encoding, String divider, Problems problems) {
        Optional<BankSource.Encoding> letters = word(BankSource.Encoding.class, encoding);
        Optional<BankSource.Divider> parted = word(BankSource.Divider.class, divider);
        return letters.isEmpty() || parted.isEmpty()
                ? Optional.empty()
                : BankLetters.read(bytes, letters.get(), problems)
                        .flatMap(text -> BankTable.of(file.name(), text, parted.get(), problems));
    }

    /** The bookings as a source has them. */
    Optional<BankReading> bookings(BankSource source, Request request, Problems problems) {
        return table(Codec.word(source.encoding()), Codec.word(source.divider()), problems)
                .map(table -> FundsFilePage.bookings(table, source, request));
    }

    static <E extends Enum<E>> Optional<E> word(Class<E> type, String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Codec.of(type).parse(text, Reading.file(0)));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    /** The texts of the dates under a mapping that is not whole yet. */
    static List<String> dates(BankTable table, String skip, String column) {
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
