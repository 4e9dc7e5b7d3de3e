package weekwright.forecast;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Hours;
import weekwright.build.CrewMemberStore;
import weekwright.build.EquipmentStore;
import weekwright.build.Settings;
import weekwright.build.TaskStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.funds.MaterialStore;

/**
 * The sheet of the week of a day, Monday to Sunday: the crew's own lines as they wrote them, and for the as-of day and those
 * after it what the order of work proposes for the hours that are left. Proposals are never stored (rule 43).
 *
 * @param week in ISO 8601: {@code 2026-W48}
 * @param days seven, Monday first
 */
public record WeekPlan(String week, List<Day> days) {
    /** The words of a line of somebody who is beside a dangerous work. */
    public static final String BESIDE = "beside, for safety";

    public WeekPlan {
        days = List.copyOf(days);
    }

    /**
     * A day.
     *
     * @param people those with lines, in the order of the crew list; last, with an empty id, what is for anybody
     * @param rain for those with work outdoors: what they do instead if it rains
     * @param shots ids of pictures still wanted of the day's tasks
     * @param hazards codes of the day's tasks and their equipment
     * @param deliveries material lines promised for the day; on the as-of day also those that are overdue
     * @param orders material lines that should go out by the day; on the as-of day also those that are overdue
     * @param episode whose slot the day is
     * @param onceOnly the day's tasks that cannot be repeated for the camera
     */
    public record Day(
            LocalDate date,
            List<Person> people,
            List<Rain> rain,
            List<String> shots,
            List<String> hazards,
            List<String> deliveries,
            List<String> orders,
            Optional<String> episode,
            @JsonIgnore List<String> onceOnly) {
        public Day {
            people = List.copyOf(people);
            rain = List.copyOf(rain);
            shots = List.copyOf(shots);
            hazards = List.copyOf(hazards);
            deliveries = List.copyOf(deliveries);
            orders = List.copyOf(orders);
            onceOnly = List.copyOf(onceOnly);
        }
    }

    /** A person's lines of a day, their own first. */
    public record Person(String crew, List<Line> lines) {
        public Person {
            lines = List.copyOf(lines);
        }
    }

    /**
     * What a person does.
     *
     * @param kind work, film, edit, errand, care or rest
     * @param hours 0 where an own line gives none
     * @param text the crew's words, or a word about a proposal
     * @param own whether the crew wrote it
     * @param row of an own line its row in the store, else empty
     */
    public record Line(
            String kind,
            Optional<String> task,
            Optional<String> episode,
            Hours hours,
            String text,
            boolean own,
            @JsonIgnore Optional<Long> row) {}

    /** If it rains, this person does this task. */
    public record Rain(String crew, String task) {}

    /**
     * Makes the sheet.
     *
     * @param day any day of its week
     * @param today from it on days have proposals
     * @param proposals what the order of work has people do; without them the crew's own lines stand alone
     * @param forecast for the days by which orders should go out; without one none are listed
     */
    public static WeekPlan of(
            Read read, LocalDate day, LocalDate today, Optional<Proposals> proposals, Optional<Forecast> forecast) {
        return new WeekMaker(Facts.of(Source.of(read), today), WeekLineStore.TABLE.list(read), day, proposals, forecast)
                .plan();
    }

    /** As above for the week of the as-of day. */
    public static WeekPlan of(Read read, Basis basis, ForecastRun.Planned planned, Optional<Forecast> forecast) {
        return of(read, basis.asOf(), basis.asOf(), Optional.of(Proposals.of(basis, planned.plan())), forecast);
    }

    /** As above from plain files, whose rows count from 1. */
    public static WeekPlan of(Source files, Basis basis, ForecastRun.Planned planned, Optional<Forecast> forecast) {
        List<Stored<WeekLine>> own = new ArrayList<>();
        files.list(WeekLineStore.TABLE).forEach(line -> own.add(new Stored<>(own.size() + 1, 1, line)));
        return new WeekMaker(
                        Facts.of(files, basis.asOf()),
                        own,
                        basis.asOf(),
                        Optional.of(Proposals.of(basis, planned.plan())),
                        forecast)
                .plan();
    }

    /** The tables that a sheet is made from alone: a page that is asked first after a start reads no log of ten years. */
    private static Source few(Source all) {
        Set<Table<?>> wanted = Set.of(
                CrewMemberStore.TABLE,
                TaskStore.TABLE,
                EquipmentStore.TABLE,
                ShotStore.TABLE,
                MaterialStore.TABLE,
                EpisodeStore.TABLE);
        return new Source() {
            @Override
            public Settings settings() {
                return all.settings();
            }

            @Override
            public <R extends Record> List<R> list(Table<R> table) {
                return wanted.contains(table) ? all.list(table) : List.of();
            }
        };
    }
}
