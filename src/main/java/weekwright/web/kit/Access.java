package weekwright.web.kit;

import java.util.Optional;
import weekwright.build.CrewMember;

/** Who may use an address (rule 118). Each step may use all that the steps after it may. */
public enum Access {
    /** Those who build and film. */
    CREW,
    /** Who helps on some days: logs hours and sees the week. */
    HELPER,
    /** Everyone, the crew not yet chosen included. */
    PUBLIC;

    /** Whether somebody with this access may use an address that asks for {@code needed}. */
    public boolean covers(Access needed) {
        return ordinal() <= needed.ordinal();
    }

    static Access of(Optional<CrewMember> person) {
        return person.map(p -> p.accessOrDefault() == CrewMember.Access.CREW ? CREW : HELPER)
                .orElse(PUBLIC);
    }
}
