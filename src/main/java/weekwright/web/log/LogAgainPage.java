package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import weekwright.web.parts.Choices;

/** The lines of the last day that this browser's person worked, to be confirmed for today; pieces and notes are not. */
public final class LogAgainPage implements Page {
    private static final int DAYS_BACK = 21;

    /**
     * @param day the last day worked; empty where none is within three weeks
     * @param lines a line an entry: its field and its words
     */
    public record View(Form form, Optional<LocalDate> day, List<Form.Choice> lines) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            Map<String, String> values = new LinkedHashMap<>();
            List<Form.Choice> lines = new ArrayList<>();
            List<Stored<HoursEntry>> last = last(read, request);
            for (Stored<HoursEntry> entry : last) {
                values.put(field(entry), entry.value().hours().text());
                lines.add(new Form.Choice(field(entry), LogDay.what(read, entry.value())));
            }
            return new View(
                    request.form("", values),
                    last.stream().map(e -> e.value().date()).findFirst(),
                    lines);
        });
    }

    private static String field(Stored<HoursEntry> entry) {
        return "hours" + entry.row();
    }

    /** The person's entries of the newest day before today on which there are any. */
    private static List<Stored<HoursEntry>> last(Read read, Request request) {
        LocalDate today = request.today();
        List<Stored<HoursEntry>> own =
                HoursEntryStore.between(read, today.minusDays(DAYS_BACK), today.minusDays(1)).stream()
                        .filter(entry -> request.person()
                                .map(person ->
                                        Choices.same(person.id(), entry.value().crew()))
                                .orElse(false))
                        .toList();
        return own.isEmpty()
                ? own
                : own.stream()
                        .filter(entry -> entry.value()
                                .date()
                                .equals(own.get(own.size() - 1).value().date()))
                        .toList();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Stored<HoursEntry>> last = request.read(read -> last(read, request));
        if (last.isEmpty()) {
            throw new NotFound("There is no day to take again.");
        }
        Map<Stored<HoursEntry>, Hours> chosen = new LinkedHashMap<>();
        for (Stored<HoursEntry> entry : last) {
            form.read(field(entry), Hours.class)
                    .filter(hours -> hours.minutes() > 0)
                    .ifPresent(hours -> chosen.put(entry, hours));
        }
        if (chosen.isEmpty() && form.problems().isEmpty()) {
            form.fault(field(last.get(0)), "", "is empty, and so are all others", "leave hours in one line at least");
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
                    rejected.problems().forEach(p -> faults.fault(field(one.getKey()), p.read(), p.rule(), p.remedy()));
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
