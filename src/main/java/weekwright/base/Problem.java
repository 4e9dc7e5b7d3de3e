package weekwright.base;

/**
 * One thing wrong with what a person gave: where, what was read, the rule, the remedy.
 *
 * @param grade {@link Grade#FAULT} refuses the whole input, {@link Grade#REMARK} is accepted and shown
 * @param file the plain file's name, empty where the value was typed into a form or stands in the store
 * @param line physical line in that file, from 1; 0 where the whole file or no file is meant
 * @param column the column or field, by its name in the files; empty where the whole row is meant
 * @param read the text as it was read; empty where nothing was there or the rule names it itself
 * @param rule what is wrong, put so that it continues the text read: {@code is not hours}
 * @param remedy what to do: {@code write 3.5 or 3:30}
 */
public record Problem(Grade grade, String file, int line, String column, String read, String rule, String remedy) {

    /** How bad: a fault refuses, a remark is accepted and shown. */
    public enum Grade {
        FAULT,
        REMARK
    }

    public static Problem fault(String column, String read, String rule, String remedy) {
        return new Problem(Grade.FAULT, "", 0, column, read, rule, remedy);
    }

    public static Problem fault(String column, String read, Refused refused) {
        return fault(column, read, refused.rule(), refused.remedy());
    }

    public static Problem remark(String column, String read, String rule, String remedy) {
        return new Problem(Grade.REMARK, "", 0, column, read, rule, remedy);
    }

    /** The same problem with its place in a plain file. */
    public Problem at(String atFile, int atLine) {
        return new Problem(grade, atFile, atLine, column, read, rule, remedy);
    }

    public boolean isFault() {
        return grade == Grade.FAULT;
    }

    /** The sentence without its place, as shown beside the field: {@code "3x" is not hours; write 3.5 or 3:30}. */
    public String sentence() {
        String said = read.isEmpty() ? rule : "\"" + shortened(read) + "\" " + rule;
        return remedy.isEmpty() ? said : said + "; " + remedy;
    }

    /** The whole line: {@code tasks.csv line 14, column likely: "3x" is not hours; write 3.5 or 3:30}. */
    public String text() {
        StringBuilder where = new StringBuilder(file);
        if (line > 0) {
            where.append(" line ").append(line);
        }
        if (!column.isEmpty()) {
            where.append(where.isEmpty() ? "" : ", ")
                    .append(file.endsWith(".toml") ? "key " : file.isEmpty() ? "" : "column ")
                    .append(column);
        }
        return where.isEmpty() ? sentence() : where + ": " + sentence();
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= 60
                ? text
                : text.substring(0, text.offsetByCodePoints(0, 59)) + "…";
    }
}
