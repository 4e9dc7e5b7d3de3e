package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.base.Hours;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.LogHours;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The lines of the last day that this browser's person worked, to be confirmed for today; pieces and notes are not. */
public final class LogAgainPage implements Page {
    private static final int DAYS_BACK = 21;
    /** Lines of one day; no day has more. */
    private static final int MOST = 100;

    /**
     * @param day the last day worked; empty where none is within three weeks
     * @param rows the entries of the lines, carried by the form: hours logged meanwhile make another day the last
     * @param lines a line an entry: its field and its words
     */
    public record View(Form form, Optional<LocalDate> day, String rows, List<Form.Choice> lines) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            List<Long> rows = request.wasRefused("")
                    ? rows(request.form("").value("rows"))
                    : last(read, request).stream().map(Stored::row).toList();
            Map<String, String> values = new LinkedHashMap<>();
            List<Form.Choice> lines = new ArrayList<>();
            Optional<LocalDate> day = Optional.empty();
            for (long row : rows) {
                Optional<HoursEntry> entry = own(read, request, row).map(Stored::value);
                day = day.or(() -> entry.map(HoursEntry::date));
                values.put(field(row), entry.map(e -> e.hours().text()).orElse(""));
                lines.add(new Form.Choice(
                        field(row), entry.map(e -> LogDay.what(read, e)).orElse("An entry taken away meanwhile")));
            }
            String carried = rows.stream().map(String::valueOf).collect(Collectors.joining(","));
            return new View(request.form("", values), day, carried, lines);
        });
    }

    private static String field(long row) {
        return "hours" + row;
    }

    /** Reads "12,13". */
    private static List<Long> rows(String text) {
        return Arrays.stream(text.split(","))
                .filter(part -> part.matches("[0-9]{1,15}"))
                .map(Long::valueOf)
                .distinct()
                .limit(MOST)
                .toList();
    }

    private static Optional<Stored<HoursEntry>> own(Read read, Request request, long row) {
        return HoursEntryStore.TABLE.find(read, row).filter(entry -> LogPage.own(request, entry.value()));
    }

    /** The person's entries of the newest day before today on which there are any. */
    private static List<Stored<HoursEntry>> last(Read read, Request request) {
        LocalDate today = request.today();
        List<Stored<HoursEntry>> own =
                HoursEntryStore.between(read, today.minusDays(DAYS_BACK), today.minusDays(1)).stream()
                        .filter(entry -> LogPage.own(request, entry.value()))
                        .toList();
        return own.stream()
                .filter(entry -> entry.value()
                        .date()
                        .equals(own.get(own.size() - 1).value().date()))
                .toList();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Long> rows = rows(form.text("rows"));
        if (rows.isEmpty()) {
            throw new NotFound("There is no day to take again.");
        }
        Map<Stored<HoursEntry>, Hours> chosen = new LinkedHashMap<>();
        for (long row : rows) {
            Optional<Stored<HoursEntry>> entry = request.read(read -> own(read, request, row));
            if (form.text(field(row)).isEmpty()) {
                continue;
            }
            Optional<Hours> hours =
                    form.column(field(row), HoursEntry.class, "hours").map(Hours.class::cast);
            if (entry.isEmpty()) {
                form.fault(
                        field(row),
                        form.text(field(row)),
                        "stands beside an entry that was taken away meanwhile",
                        "leave the line empty, and enter the hours on Log");
            } else {
                hours.ifPresent(typed -> chosen.put(entry.get(), typed));
            }
        }
        if (chosen.isEmpty() && form.problems().isEmpty()) {
            form.fault(field(rows.get(0)), "", "is empty, and so are all others", "leave hours in one line at least");
        }
        return request.save(write -> {
            Problems faults = new Problems();
            List<Problem> remarks = new ArrayList<>();
            int sum = 0;
            for (Map.Entry<Stored<HoursEntry>, Hours> one : chosen.entrySet()) {
                HoursEntry old = one.getKey().value();
                HoursEntry entry = new HoursEntry(
                        HoursEntryStore.nextId(write),
                        request.today(),
                        old.crew(),
                        old.people(),
                        old.task(),
                        old.episode(),
                        old.as(),
                        one.getValue(),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        "");
                try {
                    remarks.addAll(LogHours.log(write, entry, request.today()).remarks());
                } catch (Rejected rejected) {
                    rejected.problems()
                            .forEach(p -> faults.fault(field(one.getKey().row()), p.read(), p.rule(), p.remedy()));
                }
                sum += one.getValue().minutes();
            }
            Rejected.ifFaults(faults);
            StringBuilder said = new StringBuilder(Formats.hoursLong(sum)).append(" logged for today.");
            remarks.forEach(remark ->
                    said.append(' ').append(Formats.sentence(remark.sentence())).append('.'));
            return Saved.to("/log").saying(said.toString());
        });
    }
}
