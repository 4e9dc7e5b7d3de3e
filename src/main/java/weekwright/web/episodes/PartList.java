package weekwright.web.episodes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Shape;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;

/**
 * A list on a form: a row each, its fields named {@code name.row.column}. Buttons add a row and move one up or down; a row
 * that is emptied is out. Nothing is saved before the whole form is.
 *
 * @param name before the dots
 * @param fixed the column that numbers the rows; empty for none
 * @param columns those that a row carries, the one that must be there first
 */
record PartList<R extends Record>(String name, Class<R> type, String fixed, List<String> columns) {
    private static final int MOST = 200;

    /** The fields of the rows that stand and of an empty one after them. */
    Form filled(Form form, List<R> rows, int moneyDigits) {
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> texts = Shape.of(type).texts(rows.get(i), moneyDigits);
            for (String column : columns) {
                String text = texts.get(column);
                values.put(field(i, column), text.isEmpty() ? List.of() : List.of(text));
            }
        }
        values.put(field(rows.size(), columns.get(0)), List.of());
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    /** The numbers of the rows that a form has. */
    List<Integer> rows(Form form) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < MOST && form.values().containsKey(field(i, columns.get(0))); i++) {
            rows.add(i);
        }
        return rows;
    }

    private String field(int row, String column) {
        return name + "." + row + "." + column;
    }

    private int count(FormReader form) {
        int rows = 0;
        while (rows < MOST && form.has(field(rows, columns.get(0)))) {
            rows++;
        }
        return rows;
    }

    /** The form once more, where one of the list's own buttons was pressed: {@code parts-more}, {@code parts-up.3}. */
    Optional<Answer> again(FormReader form) {
        String act = form.act();
        int rows = count(form);
        if (act.equals(name + "-more")) {
            return Optional.of(new Answer.Again(
                    Map.of(field(Math.min(rows, MOST - 1), columns.get(0)), List.of()), ""));
        }
        for (int i = 0; i < rows; i++) {
            if (act.equals(name + "-up." + i) && i > 0) {
                return Optional.of(swapped(form, i, i - 1));
            }
            if (act.equals(name + "-down." + i) && i + 1 < rows) {
                return Optional.of(swapped(form, i, i + 1));
            }
        }
        return act.startsWith(name + "-") ? Optional.of(new Answer.Again(Map.of(), "")) : Optional.empty();
    }

    private Answer swapped(FormReader form, int one, int other) {
        Map<String, List<String>> instead = new LinkedHashMap<>();
        for (String column : columns) {
            instead.put(field(one, column), form.texts(field(other, column)));
            instead.put(field(other, column), form.texts(field(one, column)));
        }
        return new Answer.Again(instead, "Moved; not saved yet.");
    }

    /** Checks a row. */
    interface Rule<R> {
        void check(R row, Problems problems);
    }

    /**
     * The rows that hold anything; each fault stands on its field.
     *
     * @param episode id that they hang on
     */
    List<R> read(FormReader form, String episode, Rule<R> rule) {
        List<R> all = new ArrayList<>();
        for (int i = 0; i < count(form); i++) {
            Map<String, String> texts = new LinkedHashMap<>();
            for (String column : columns) {
                texts.put(column, form.text(field(i, column)));
            }
            if (texts.values().stream().allMatch(String::isEmpty)) {
                continue;
            }
            texts.put("episode", episode);
            if (!fixed.isEmpty()) {
                texts.put(fixed, Integer.toString(all.size() + 1));
            }
            Problems found = new Problems();
            Optional<R> row = Shape.of(type).parse(texts, form.reading(), found);
            row.ifPresent(one -> rule.check(one, found));
            int number = i;
            found.faults()
                    .forEach(fault ->
                            form.fault(field(number, fault.column()), fault.read(), fault.rule(), fault.remedy()));
            row.ifPresent(all::add);
        }
        return all;
    }
}
