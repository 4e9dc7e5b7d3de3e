package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.funds.BankFile;
import weekwright.funds.BankFileStore;
import weekwright.funds.BankSourceStore;
import weekwright.funds.WaitingFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The files of the bank and of pay-outs that were read into the books, and those that wait to be. */
public final class FundsFilesPage implements Page {
    /** @param thrown the form of each waiting file's button */
    public record View(List<Line> lines, List<Waiting> waiting, Form thrown) {}

    /** A file that was read. */
    public record Line(String name, String source, String read, String bookings, int entered, int leftOut) {}

    /** A file that waits. */
    public record Waiting(String key, String name, String since, String next) {}

    private final WaitingFiles waiting;

    public FundsFilesPage(WaitingFiles waiting) {
        this.waiting = waiting;
    }

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> {
            List<Line> lines = new ArrayList<>();
            BankFileStore.TABLE.values(read).forEach(file -> lines.add(line(read, file, formats)));
            Collections.reverse(lines);
            List<Waiting> files = waiting.list().stream()
                    .map(file -> new Waiting(
                            file.key(),
                            file.name(),
                            formats.dateShort(LocalDate.ofInstant(
                                    file.at(), request.settings().zone())),
                            "/funds/files/" + file.key()))
                    .toList();
            return new View(lines, files, request.form("throw"));
        });
    }

    private static Line line(Read read, BankFile file, Formats formats) {
        String source = BankSourceStore.TABLE
                .find(read, file.source())
                .map(one -> one.value().name())
                .orElse(file.source().value());
        return new Line(
                file.name(),
                source,
                formats.dateShort(file.date()),
                formats.span(file.from(), file.to()),
                file.entered(),
                file.leftOut());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String key = form.text("file");
        return request.save(write -> {
            if (!form.act().equals("throw") || waiting.take(key).isEmpty()) {
                throw new Rejected(
                        Problem.fault("", "", "This file does not wait any more", "look whether it is entered"));
            }
            return Saved.to("/funds/files").saying("The file is thrown away; nothing of it is in the books.");
        });
    }
}
