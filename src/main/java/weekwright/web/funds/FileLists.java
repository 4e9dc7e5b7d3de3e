package weekwright.web.funds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.files.bank.BankTable;
import weekwright.funds.BankSource;
import weekwright.render.Form;
import weekwright.web.parts.Choices;

/** What is chosen from where it is said how a file is read. */
record FileLists(
        List<Form.Choice> encodings,
        List<Form.Choice> dividers,
        List<Form.Choice> orders,
        List<Form.Choice> decimals,
        List<Form.Choice> kinds) {
    static FileLists all() {
        return new FileLists(
                Choices.words(
                        BankSource.Encoding.class,
                        Map.of(
                                BankSource.Encoding.UTF_8, "UTF-8",
                                BankSource.Encoding.UTF_16, "UTF-16",
                                BankSource.Encoding.WINDOWS_1252, "Windows-1252 (Western European)",
                                BankSource.Encoding.BY_LINE, "each line for itself: UTF-8, else Windows-1252")),
                Choices.words(
                        BankSource.Divider.class,
                        Map.of(
                                BankSource.Divider.COMMA, "commas ,",
                                BankSource.Divider.SEMICOLON, "semicolons ;",
                                BankSource.Divider.TAB, "tabs",
                                BankSource.Divider.BAR, "upright bars |")),
                Choices.words(
                        BankSource.DateOrder.class,
                        Map.of(
                                BankSource.DateOrder.YMD, BankSource.DateOrder.YMD.words(),
                                BankSource.DateOrder.DMY, BankSource.DateOrder.DMY.words(),
                                BankSource.DateOrder.MDY, BankSource.DateOrder.MDY.words())),
                Choices.words(
                        BankSource.Decimals.class,
                        Map.of(
                                BankSource.Decimals.POINT, "a point: 1,234.56",
                                BankSource.Decimals.COMMA, "a comma: 1.234,56")),
                LedgerFields.movements());
    }

    static List<Form.Choice> columns(BankTable table, String skip) {
        int first = skip.matches("[0-9]{1,3}") ? Integer.parseInt(skip) : 0;
        List<Form.Choice> columns = new ArrayList<>();
        for (int column = 1; column <= table.columns(); column++) {
            int at = column;
            String heading = first > 0 && first <= table.rows().size()
                    ? table.rows().get(first - 1).cell(column)
                    : "";
            String text = table.after(first).stream()
                    .map(row -> row.cell(at))
                    .filter(cell -> !cell.isEmpty())
                    .findFirst()
                    .orElse("empty");
            columns.add(new Form.Choice(
                    String.valueOf(column),
                    column + ": " + (heading.isEmpty() ? "" : shortened(heading) + ", such as ") + shortened(text)));
        }
        return columns;
    }

    private static String shortened(String text) {
        int most = 24;
        return text.codePointCount(0, text.length()) <= most
                ? text
                : text.substring(0, text.offsetByCodePoints(0, most)) + "…";
    }
}
