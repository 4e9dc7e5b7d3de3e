package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Refused;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Levers;
import weekwright.web.kit.FormReader;

/**
 * Levers as they stand in an address: {@code hours.ilse=4}, {@code helper=16}, {@code helper_trade=joiner},
 * {@code helper_from=2027-01-04}, {@code supporters=-33}, {@code prices=10}, {@code drop=wheel.3},
 * {@code postponed=wheel.4:2027-03-01} (a date chosen beside it: {@code postpone}, {@code until}), {@code every=2},
 * {@code grant=5000} with {@code grant_on=2027-02-01}, {@code films=75}, {@code deposit=yes}, {@code empty=3}.
 */
final class LeverFields {
    private static final int MINUTES = 60;
    private static final String WHOLE = "write a whole number";

    private final FormReader form;
    private final Inputs inputs;
    private final LocalDate today;
    private final Map<String, List<String>> words = new LinkedHashMap<>();

    private LeverFields(FormReader form, Inputs inputs) {
        this.form = form;
        this.inputs = inputs;
        this.today = LocalDate.ofEpochDay(inputs.asOf());
    }

    /**
     * What was read.
     *
     * @param levers with those left out that were refused; then the reader holds the faults
     * @param words the same as texts of fields, the chosen tasks among those chosen before
     */
    record Read(Levers levers, Map<String, List<String>> words) {
        /** A word each, as they are kept. */
        List<String> pulled() {
            List<String> all = new ArrayList<>();
            words.forEach((name, texts) -> texts.forEach(text -> all.add(name + "=" + text)));
            return all;
        }
    }

    static Read read(FormReader form, Inputs inputs) {
        LeverFields fields = new LeverFields(form, inputs);
        Levers levers = fields.levers();
        return new Read(levers, fields.words);
    }

    private Levers levers() {
        Map<String, Integer> hours = new HashMap<>();
        for (Inputs.Crew one : inputs.crew()) {
            int more = number("hours." + one.id(), 0, -80, 80);
            if (more != 0) {
                hours.put(one.id(), more * MINUTES);
            }
        }
        Levers.Helper helper = helper();
        Set<String> dropped = dropped();
        return new Levers(
                hours,
                helper,
                number("supporters", 0, -100, 500),
                number("prices", 0, -90, 500),
                dropped,
                postponed(dropped),
                number("every", 0, 1, 13),
                grant(),
                number("films", 100, 10, 300),
                deposit(),
                number("empty", 0, 0, 12));
    }

    /** A whole number within bounds; nothing typed and what changes nothing are the same. */
    private int number(String name, int neutral, int least, int most) {
        Optional<Integer> value = form.read(name, Integer.class);
        if (value.isEmpty() || value.get() == neutral) {
            return neutral;
        }
        if (value.get() < least || value.get() > most) {
            form.fault(name, form.text(name), "is not between " + least + " and " + most, WHOLE + " of these");
            return neutral;
        }
        said(name, value.get().toString());
        return value.get();
    }

    private void said(String name, String text) {
        words.computeIfAbsent(name, one -> new ArrayList<>()).add(text);
    }

    private Levers.Helper helper() {
        int hours = number("helper", 0, 0, 80);
        String trade = form.text("helper_trade");
        Optional<LocalDate> from = form.read("helper_from", LocalDate.class);
        Set<String> trades = new HashSet<>();
        inputs.crew().forEach(one -> trades.addAll(one.trades()));
        inputs.tasks().forEach(task -> trades.addAll(task.trades()));
        if (!trade.isEmpty() && !trades.contains(trade)) {
            form.fault("helper_trade", trade, "is no trade of this project", "choose one of the list");
            return Levers.Helper.NOBODY;
        }
        if (hours == 0) {
            return Levers.Helper.NOBODY;
        }
        if (!trade.isEmpty()) {
            said("helper_trade", trade);
        }
        from.ifPresent(day -> said("helper_from", day.toString()));
        return new Levers.Helper(
                hours * MINUTES, trade, from.map(day -> (int) day.toEpochDay()).orElse(Inputs.NONE));
    }

    private Set<String> dropped() {
        Set<String> all = new HashSet<>();
        for (String text : form.texts("drop")) {
            task("drop", text).filter(all::add).ifPresent(id -> said("drop", id));
        }
        return all;
    }

    private Map<String, Integer> postponed(Set<String> dropped) {
        Map<String, Integer> all = new LinkedHashMap<>();
        for (String text : form.texts("postponed")) {
            int colon = text.indexOf(':');
            Optional<String> task = task("postponed", colon < 0 ? text : text.substring(0, colon));
            Optional<LocalDate> day = day("postponed", colon < 0 ? "" : text.substring(colon + 1));
            if (task.isPresent() && day.isPresent()) {
                postpone(all, dropped, task.get(), day.get());
            }
        }
        String chosen = form.text("postpone");
        Optional<LocalDate> until = form.read("until", LocalDate.class);
        if (!chosen.isEmpty() && form.text("until").isEmpty()) {
            form.fault("until", "", "is missing", "say from which day on it may start");
        }
        if (!chosen.isEmpty()) {
            Optional<String> task = task("postpone", chosen);
            Optional<LocalDate> day = until.filter(one -> later("until", one));
            if (task.isPresent() && day.isPresent()) {
                postpone(all, dropped, task.get(), day.get());
            }
        }
        return all;
    }

    private void postpone(Map<String, Integer> all, Set<String> dropped, String task, LocalDate day) {
        if (dropped.contains(task)) {
            form.fault("postpone", task, "is dropped as well", "choose one of the two");
        } else if (all.putIfAbsent(task, (int) day.toEpochDay()) == null) {
            said("postponed", task + ":" + day);
        }
    }

    /** The id as the project has it, of a task still to be done. */
    private Optional<String> task(String name, String text) {
        String folded = Id.isOne(text) ? new Id(text).folded() : "";
        Optional<String> found = inputs.tasks().stream()
                .filter(task -> task.done() == Inputs.NONE && task.dropped() == Inputs.NONE)
                .map(Inputs.Task::id)
                .filter(id -> new Id(id).folded().equals(folded))
                .findFirst();
        if (found.isEmpty()) {
            form.fault(name, text, "is no task that is still to be done", "choose one of the list");
        }
        return found;
    }

    private Optional<LocalDate> day(String name, String text) {
        try {
            return Optional.of(Codec.of(LocalDate.class).parse(text, form.reading()))
                    .filter(day -> later(name, day));
        } catch (Refused refused) {
            form.fault(name, text, refused.rule(), refused.remedy());
            return Optional.empty();
        }
    }

    private boolean later(String name, LocalDate day) {
        if (day.isAfter(today)) {
            return true;
        }
        form.fault(name, day.toString(), "is not after today", "write a later day");
        return false;
    }

    private Levers.Grant grant() {
        Optional<Money> amount = form.read("grant", Money.class);
        Optional<LocalDate> on = form.read("grant_on", LocalDate.class);
        Levers.Grant none = Levers.NONE.grant();
        if (amount.isEmpty() || amount.get().minor() == 0) {
            return none;
        }
        if (amount.get().minor() < 0) {
            form.fault("grant", form.text("grant"), "is under nothing", "write what comes in");
            return none;
        }
        if (on.isEmpty()) {
            if (form.text("grant_on").isEmpty()) {
                form.fault("grant_on", "", "is missing", "say on which day it comes in");
            }
            return none;
        }
        if (!later("grant_on", on.get())) {
            return none;
        }
        said("grant", amount.get().text(form.reading().moneyDigits()));
        said("grant_on", on.get().toString());
        return new Levers.Grant(amount.get().minor(), (int) on.get().toEpochDay());
    }

    private boolean deposit() {
        String text = form.text("deposit");
        if (text.isEmpty()) {
            return false;
        }
        if (!text.equals("yes")) {
            form.fault("deposit", text, "is neither yes nor empty", "tick it, or leave it");
            return false;
        }
        said("deposit", text);
        return true;
    }
}
