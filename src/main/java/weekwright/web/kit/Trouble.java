package weekwright.web.kit;

import java.util.List;
import java.util.Optional;
import weekwright.history.Labels;
import weekwright.render.Frame;

/**
 * The sheet of what went wrong: what happened, what is safe, what to do.
 *
 * @param kept what was typed and could not be saved, to be copied
 * @param reference under which the log tells the rest
 */
public record Trouble(int status, String title, String text, List<Frame.Cell> kept, Optional<String> reference) {

    private static final String TOO_LARGE =
            "What was sent is too large. Nothing of it was saved. Send a file of at most 40 MB,"
                    + " and at most 160 MB at once; each page says what it reads.";
    private static final String CUT_OFF = "The form arrived cut off. Nothing of it was saved. Send it once more.";

    static Trouble plain(int status, String sentence) {
        return new Trouble(status, title(status), sentence, List.of(), Optional.empty());
    }

    static Trouble failed(String reference) {
        return new Trouble(
                500,
                title(500),
                "Nothing of this entry was saved. What was saved before is safe. Go back and try once more; if it"
                        + " happens again, tell the reference below to whoever looks after the program.",
                List.of(),
                Optional.of(reference));
    }

    /** @param thing the table of what is gone; empty where that is not known */
    static Trouble gone(Request request, String thing) {
        List<Frame.Cell> kept = request.context().formParamMap().entrySet().stream()
                .filter(e ->
                        !FormReader.KEYS.contains(e.getKey()) && !e.getKey().isEmpty())
                .map(e -> new Frame.Cell(Labels.of(thing, e.getKey()), String.join(", ", e.getValue())))
                .filter(cell -> !cell.text().isBlank())
                .toList();
        return new Trouble(
                410,
                title(410),
                "Somebody removed it since this page was loaded, so nothing was saved. What you typed stands below.",
                kept,
                Optional.empty());
    }

    /** What the server says of a form with files that is larger than it takes, or that is cut off: it throws plain exceptions. */
    static Optional<Trouble> unreadable(Exception e) {
        boolean broken = false;
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            String said = String.valueOf(cause.getMessage());
            if (cause instanceof IllegalStateException && said.matches("max .*(size|length).* exceeded.*")) {
                return Optional.of(plain(413, TOO_LARGE));
            }
            broken |= said.endsWith("bad multipart");
        }
        return broken ? Optional.of(plain(400, CUT_OFF)) : Optional.empty();
    }

    private static String title(int status) {
        return switch (status) {
            case 400 -> "This address cannot be read";
            case 403 -> "Not for you here";
            case 404 -> "Nothing stands here";
            case 405 -> "This cannot be done here";
            case 410 -> "This is gone";
            case 413 -> "Too much at once";
            case 415, 422 -> "This form was not taken";
            case 503 -> "The project is busy";
            case 507 -> "The disk did not take it";
            default -> status >= 500 ? "Something in the program failed" : "This could not be answered";
        };
    }

    static String sentence(int status) {
        return switch (status) {
            case 400 -> "The address holds characters that no address of this program has.";
            case 404 -> "No sheet has this address. The sheets are named above.";
            case 405 -> "This address does not take that kind of request.";
            case 413 -> "What was sent is too large. Nothing of it was saved. Send at most 1 MB of text.";
            default -> "The request could not be answered. Nothing was saved.";
        };
    }
}
