package weekwright.web.kit;

import weekwright.build.CrewMember;

/** The person chosen for a browser. */
public final class People {
    private People() {}

    /** The cookie that keeps the choice for a year. */
    public static Answer.Cookie chosen(CrewMember member) {
        return Browser.whoCookie(member.id().value());
    }
}
