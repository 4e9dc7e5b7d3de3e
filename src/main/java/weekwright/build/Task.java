package weekwright.build;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Ref;
import weekwright.base.Words;

/**
 * A shop task: work in person-hours or pieces, or a wait in calendar days.
 *
 * @param low for work hours (of the first piece where there are pieces), for a wait calendar days; so too likely and high
 * @param learning percent that each doubling of pieces takes; nothing means 100
 * @param equipment ids with counts: {@code trestle:2 hoist}
 * @param without percent longer when the equipment is not to be had; nothing means it cannot be done without
 * @param rebookLow days to the next turn when a booked date was missed
 * @param cameraExtra percent of the hours that filming costs
 * @param left hours that the crew sees still to do, said on {@code leftOn}
 * @param asideUntil laid aside until that day
 */
public record Task(
        Id id,
        @Ref("stages") Id stage,
        String title,
        Kind kind,
        @Bounds(min = 0, max = 100000) Optional<Quantity> low,
        @Bounds(min = 0, max = 100000) Optional<Quantity> likely,
        @Bounds(min = 0, max = 100000) Optional<Quantity> high,
        @Bounds(min = 1, max = 100000) Optional<Integer> pieces,
        @Bounds(min = 1, max = 100) Optional<Quantity> learning,
        @Bounds(min = 1, max = 100) Optional<Integer> hands,
        @Bounds(min = 1, max = 100) Optional<Integer> leastHands,
        Words trades,
        Optional<Company> company,
        String companyReason,
        Words equipment,
        @Bounds(min = 0, max = 1000) Optional<Quantity> without,
        boolean outdoors,
        Optional<MonthDay> seasonFrom,
        Optional<MonthDay> seasonTo,
        Optional<LocalDate> notBefore,
        Optional<LocalDate> booked,
        @Bounds(min = 0, max = 3650) Optional<Quantity> rebookLow,
        @Bounds(min = 0, max = 3650) Optional<Quantity> rebookLikely,
        @Bounds(min = 0, max = 3650) Optional<Quantity> rebookHigh,
        boolean oneGo,
        @Bounds(min = -1000, max = 1000) Optional<Integer> priority,
        boolean fill,
        Optional<Camera> camera,
        @Bounds(min = 0, max = 1000) Optional<Quantity> cameraExtra,
        @Bounds(min = 0, max = 10000) Optional<Quantity> storyMinutes,
        boolean storyTold,
        Words hazards,
        @Bounds(min = 0, max = 100) Optional<Quantity> fail,
        @Bounds(min = 0, max = 100) Optional<Quantity> redo,
        @Ref("tasks") Optional<Id> redoOf,
        Optional<Hours> left,
        Optional<LocalDate> leftOn,
        Optional<LocalDate> asideUntil,
        Optional<LocalDate> added,
        Optional<LocalDate> started,
        Optional<LocalDate> done,
        Optional<LocalDate> dropped) {
    /** Work takes people's hours; a wait takes calendar days. */
    public enum Kind {
        WORK,
        WAIT
    }

    /** Whether another person must be about: beside (by), at work that day (call), or nobody (alone). */
    public enum Company {
        ALONE,
        CALL,
        BY
    }

    /** How a task is filmed; once cannot be repeated for the camera. */
    public enum Camera {
        NONE,
        FIXED,
        OPERATOR,
        ONCE
    }

    public int piecesOrDefault() {
        return pieces.orElse(1);
    }

    public int handsOrDefault() {
        return hands.orElse(1);
    }

    public int leastHandsOrDefault() {
        return leastHands.orElse(handsOrDefault());
    }

    public Camera cameraOrDefault() {
        return camera.orElse(Camera.NONE);
    }

    public boolean isWork() {
        return kind == Kind.WORK;
    }

    /** Neither done nor dropped. */
    public boolean isOpen() {
        return done.isEmpty() && dropped.isEmpty();
    }
}
