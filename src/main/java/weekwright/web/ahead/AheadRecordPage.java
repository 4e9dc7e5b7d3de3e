package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.forecast.Records;
import weekwright.forecast.Replay;
import weekwright.forecast.TrackRecord;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LineChart;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.RecordWords;

/** Every past forecast against what happened. */
public final class AheadRecordPage implements Page {
    private final Records records;

    public AheadRecordPage(Records records) {
        this.records = records;
    }

    /** What was said of a stage on a day; {@code word} is how it fell. */
    public record Line(String date, LocalDate p10, LocalDate p50, LocalDate p90, String word, boolean missed) {}

    /** A stage with what was said of it, newest first; {@code drawing} has it from two Fridays on. */
    public record Stage(String id, String name, String landed, String drawing, List<Line> lines) {}

    /** A rival and its losses in days. */
    public record Loss(String name, String crps, String pinball) {}

    /**
     * @param making how far the record is that is being made; empty when none is
     * @param failed whether the one of today could not be made
     * @param lead whether ranges have been too narrow
     * @param sentences of it
     * @param basis what was known of what
     */
    public record View(
            String making,
            boolean failed,
            String lead,
            List<String> sentences,
            String basis,
            List<Loss> losses,
            List<Stage> stages) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Records.Look look = records.look(request.version(), today, () -> request.read(read -> Replay.ask(read, today)));
        String making = !look.making()
                ? ""
                : look.of() == 0
                        ? "Looking back."
                        : "Looking back: " + look.done() + " of " + Formats.count(look.of(), "Friday") + ".";
        if (look.shown().isEmpty()) {
            return new View(making, look.failed(), "", List.of(), "", List.of(), List.of());
        }
        TrackRecord record = look.shown().get();
        List<String> sentences = new ArrayList<>();
        if (!record.decided().isEmpty()) {
            sentences.add(RecordWords.sides(record));
            sentences.add(RecordWords.tolerance(record));
        }
        return new View(
                making,
                look.failed(),
                RecordWords.verdict(record),
                sentences,
                RecordWords.basis(record),
                record.all().isEmpty() ? List.of() : losses(record.crps(), record.pinball()),
                stages(record, request.formats()));
    }

    private static List<Loss> losses(TrackRecord.Losses crps, TrackRecord.Losses pinball) {
        return List.of(
                loss(RecordWords.OURS, crps.model(), pinball.model()),
                loss(RecordWords.PLAN, crps.plan(), pinball.plan()),
                loss(RecordWords.PACE, crps.velocity(), pinball.velocity()),
                loss(RecordWords.LIKELY, crps.likely(), pinball.likely()));
    }

    private static Loss loss(String name, double crps, double pinball) {
        return new Loss(name, RecordWords.days(crps), RecordWords.days(pinball));
    }

    private static List<Stage> stages(TrackRecord record, Formats formats) {
        List<Stage> stages = new ArrayList<>();
        for (String id :
                record.all().stream().map(TrackRecord.Stage::id).distinct().toList()) {
            List<Line> lines = new ArrayList<>();
            List<AheadPicture.Fan> said = new ArrayList<>();
            String name = "";
            Optional<LocalDate> landed = Optional.empty();
            for (int i = record.fridays().size() - 1; i >= 0; i--) {
                TrackRecord.Friday friday = record.fridays().get(i);
                for (TrackRecord.Stage stage : friday.stages()) {
                    if (stage.id().equals(id)) {
                        name = stage.name();
                        landed = stage.landed();
                        said.add(0, said(friday.date(), stage));
                        TrackRecord.Fell fell = record.fell(stage);
                        lines.add(new Line(
                                formats.dateShort(friday.date()),
                                stage.p10(),
                                stage.p50(),
                                stage.p90(),
                                word(fell),
                                fell == TrackRecord.Fell.LATER || fell == TrackRecord.Fell.EARLIER));
                    }
                }
            }
            stages.add(new Stage(
                    id,
                    name,
                    landed.map(day -> "Landed " + formats.dateLong(day)).orElse("Still open"),
                    said.size() < 2 ? "" : drawing(id, name, record.today(), said, landed, formats),
                    lines));
        }
        return stages;
    }

    private static AheadPicture.Fan said(LocalDate on, TrackRecord.Stage stage) {
        double[] drawn = stage.drawn();
        double p50 = stage.p50().toEpochDay();
        // the inner band never leaves the outer one, whatever the ends of the range were rounded to
        double p25 = Math.min(p50, Math.max(stage.p10().toEpochDay(), drawn[drawn.length / 4]));
        double p75 = Math.max(p50, Math.min(stage.p90().toEpochDay(), drawn[drawn.length * 3 / 4]));
        return new AheadPicture.Fan(
                on, stage.p10().toEpochDay(), p25, p50, p75, stage.p90().toEpochDay());
    }

    private static String drawing(
            String id,
            String name,
            LocalDate today,
            List<AheadPicture.Fan> said,
            Optional<LocalDate> landed,
            Formats formats) {
        AheadPicture.Fan last = said.get(said.size() - 1);
        String title = "What was said of " + name + " from "
                + formats.dateLong(said.get(0).day()) + " to "
                + formats.dateLong(last.day()) + ", at last "
                + formats.dateLong(LocalDate.ofEpochDay((long) last.p50())) + " at even chances"
                + landed.map(day -> "; landed " + formats.dateLong(day)).orElse("");
        List<LineChart.Level> levels = landed.stream()
                .map(day -> new LineChart.Level("landed " + formats.dateBrief(day), day.toEpochDay()))
                .toList();
        return LineChart.ofDays("record-" + id, title, today, said, levels, formats)
                .drawings();
    }

    private static String word(TrackRecord.Fell fell) {
        return switch (fell) {
            case EARLIER -> "earlier";
            case WITHIN -> "within";
            case LATER -> "later";
            case OPEN -> "open";
        };
    }
}
