package weekwright.build;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Words;

/**
 * A person of the crew: trades, stated hours by weekday, pay, and what they may do in the program. Log-ins are kept apart.
 *
 * @param trades words of the project's own
 * @param pay an hour, nothing for owners
 * @param notFor hazards that are not for this person; for a helper without any, all are
 */
public record CrewMember(
        Id id,
        String name,
        Words trades,
        @Bounds(min = 0, max = 24) Optional<Hours> mon,
        @Bounds(min = 0, max = 24) Optional<Hours> tue,
        @Bounds(min = 0, max = 24) Optional<Hours> wed,
        @Bounds(min = 0, max = 24) Optional<Hours> thu,
        @Bounds(min = 0, max = 24) Optional<Hours> fri,
        @Bounds(min = 0, max = 24) Optional<Hours> sat,
        @Bounds(min = 0, max = 24) Optional<Hours> sun,
        @Bounds(min = 0) Optional<Money> pay,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<Access> access,
        Words notFor,
        String publicName) {
    /** What a person may do in the program. */
    public enum Access {
        CREW,
        HELPER
    }

    /** Stated hours of a weekday; nothing stated is none (rule 3). */
    public Hours on(DayOfWeek day) {
        return List.of(mon, tue, wed, thu, fri, sat, sun)
                .get(day.getValue() - 1)
                .orElse(Hours.ZERO);
    }

    /** Those who have not left by a day, in the same order. */
    public static List<CrewMember> present(List<CrewMember> all, LocalDate day) {
        return all.stream()
                .filter(member -> member.to().map(to -> !to.isBefore(day)).orElse(true))
                .toList();
    }

    public Access accessOrDefault() {
        return access.orElse(Access.CREW);
    }
}
