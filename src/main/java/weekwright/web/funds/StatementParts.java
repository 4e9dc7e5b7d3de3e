package weekwright.web.funds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.funds.MonthStatement;
import weekwright.funds.StatementLine;
import weekwright.funds.StatementLine.Part;
import weekwright.render.Formats;

/** A month's statement as the tables of its page. */
final class StatementParts {
    private static final Map<Part, String> TITLES = Map.of(
            Part.INCOME, "Income",
            Part.COST, "Costs by kind",
            Part.STAGE, "Costs by stage",
            Part.APART, "Neither income nor cost",
            Part.BALANCE, "In the bank",
            Part.HOURS, "Hours worked",
            Part.FIGURE, "For each");
    private static final Map<Part, String> REMARKS = Map.of(
            Part.INCOME, "fees taken off",
            Part.APART, "taken out, put in, lent, taxed, moved",
            Part.HOURS, "everybody together");

    private StatementParts() {}

    /** @param fees whether gross and fees have columns */
    record Section(String title, String remark, boolean fees, List<Row> rows) {}

    /** A line; {@code sum}: all of them together. */
    record Row(String name, String gross, String fee, String figure, boolean sum) {}

    static List<Section> of(List<StatementLine> lines, Formats formats) {
        List<Section> sections = new ArrayList<>();
        for (Part part : Part.values()) {
            List<StatementLine> of =
                    lines.stream().filter(line -> line.part() == part).toList();
            if (part == Part.MISSING || of.isEmpty()) {
                continue;
            }
            List<Row> rows = new ArrayList<>();
            of.forEach(line -> rows.add(row(line, formats)));
            sum(part, of, formats).ifPresent(rows::add);
            sections.add(new Section(
                    TITLES.get(part),
                    REMARKS.getOrDefault(part, ""),
                    of.stream().anyMatch(line -> line.gross().isPresent()),
                    rows));
        }
        return sections;
    }

    private static Row row(StatementLine line, Formats formats) {
        return new Row(
                Formats.sentence(line.name()),
                line.gross().map(money -> formats.moneyExact(money.minor())).orElse(""),
                line.fee().map(money -> formats.moneyExact(money.minor())).orElse(""),
                figure(line, formats),
                line.part() == Part.BALANCE && line.name().equals(MonthStatement.END));
    }

    /** What a line says: costs without their minus. */
    static String figure(StatementLine line, Formats formats) {
        boolean cost = line.part() == Part.COST || line.part() == Part.STAGE;
        return line.amount()
                .map(money -> formats.moneyExact(cost ? -money.minor() : money.minor()))
                .or(() -> line.hours().map(hours -> Formats.hoursLong(hours.minutes())))
                .or(() -> line.count().map(String::valueOf))
                .orElse("");
    }

    private static Optional<Row> sum(Part part, List<StatementLine> lines, Formats formats) {
        long minutes = lines.stream()
                .flatMap(line -> line.hours().stream())
                .mapToLong(Hours::minutes)
                .sum();
        return switch (part) {
            case INCOME ->
                Optional.of(new Row(
                        "All income",
                        "",
                        text(lines, StatementLine::fee, formats),
                        text(lines, StatementLine::amount, formats),
                        true));
            case COST, STAGE ->
                Optional.of(new Row(
                        "All costs",
                        "",
                        "",
                        formats.moneyExact(-sum(lines, StatementLine::amount).minor()),
                        true));
            case HOURS -> Optional.of(new Row("All hours", "", "", Formats.hoursLong(minutes), true));
            default -> Optional.empty();
        };
    }

    private static String text(
            List<StatementLine> lines, Function<StatementLine, Optional<Money>> column, Formats formats) {
        return lines.stream().anyMatch(line -> column.apply(line).isPresent())
                ? formats.moneyExact(sum(lines, column).minor())
                : "";
    }

    private static Money sum(List<StatementLine> lines, Function<StatementLine, Optional<Money>> column) {
        return lines.stream().flatMap(line -> column.apply(line).stream()).reduce(Money.ZERO, Money::plus);
    }
}
