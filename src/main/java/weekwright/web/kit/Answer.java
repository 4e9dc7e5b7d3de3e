package weekwright.web.kit;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** What a page answers to a post, and a fragment to any request. */
public sealed interface Answer {

    /** Goes on to a page by 303 See Other. */
    record GoOn(Saved saved, List<Cookie> cookies, Map<String, String> headers) implements Answer {}

    /**
     * A whole body of any type.
     *
     * @param type the content type with its charset
     * @param headers more headers by name
     */
    record Body(int status, String type, byte[] bytes, Map<String, String> headers) implements Answer {}

    /** A body that is read from a stream, which is closed then: too large to be held. */
    record Stream(String type, InputStream content, Map<String, String> headers) implements Answer {}

    /**
     * The same page once more, nothing saved: what was typed stands in its chief form, with these fields in place of their
     * own; for buttons such as "another line" and "copy the hours of".
     *
     * @param instead several texts for boxes with one name
     * @param said a line above the page; empty for none
     */
    record Again(Map<String, List<String>> instead, String said) implements Answer {}

    /** A cookie to keep, never readable by script. */
    record Cookie(String name, String value, int maxAgeSeconds) {}

    static Answer to(String path) {
        return new GoOn(Saved.to(path), List.of(), Map.of());
    }

    static Answer to(Saved saved, Cookie... cookies) {
        return new GoOn(saved, List.of(cookies), Map.of());
    }

    /** On to a page at a browser that is told to forget all of this server, or all but what was typed and not saved. */
    static Answer forgetting(Saved saved, boolean typedToo, Cookie... cookies) {
        String what = typedToo ? "\"cache\", \"storage\"" : "\"cache\"";
        return new GoOn(saved, List.of(cookies), Map.of("Clear-Site-Data", what));
    }

    /** A table for a spreadsheet, saved under a name and not kept by browsers. */
    static Answer sheet(String csv, String name) {
        return new Body(
                200,
                "text/csv; charset=utf-8",
                csv.getBytes(StandardCharsets.UTF_8),
                Map.of("Cache-Control", "no-store", "Content-Disposition", "attachment; filename=\"" + name + "\""));
    }

    /**
     * A body with its tag, or 304 and none where the browser says that it has the one of this tag (RFC 9110, section 13.1.2).
     *
     * @param tag between quotes
     */
    static Answer tagged(Request request, String type, byte[] bytes, String tag, String caching) {
        Map<String, String> headers = Map.of("ETag", tag, "Cache-Control", caching);
        List<String> had =
                List.of(request.header("If-None-Match").replace("W/", "").split("\\s*,\\s*"));
        return had.contains(tag) ? new Body(304, type, new byte[0], headers) : new Body(200, type, bytes, headers);
    }

    /** A body that is not kept by browsers. */
    static Answer body(String type, byte[] bytes) {
        return new Body(200, type, bytes, Map.of("Cache-Control", "no-store"));
    }
}
