package weekwright.web.kit;

import weekwright.build.CrewMember;

/** The person chosen for a browser. */
public final class People {
    private People() {}

    /** The cookies of somebody who logged in. */
    public static Answer.Cookie[] loggedIn(CrewMember member, String token) {
        return new Answer.Cookie[] {Browser.sessionCookie(token), chosen(member)};
    }

    /** The cookie that forgets a session. */
    public static Answer.Cookie loggedOut() {
        return Browser.sessionCookie("");
    }

    /** The cookie that keeps the choice for a year. */
    public static Answer.Cookie chosen(CrewMember member) {
        return Browser.whoCookie(member.id().value());
    }
}
