package weekwright.web.kit;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.render.Frame;

/**
 * A saved answer as one text, as it is kept with its answer key and, signed, in the cookie that carries the line to the
 * next page. Parts are base64url, divided by full stops: path, line, and for an undo its address, label and fields.
 */
final class FlashText {
    private FlashText() {}

    static String of(Saved saved) {
        StringBuilder text = new StringBuilder(part(saved.to()));
        saved.flash().ifPresent(flash -> {
            text.append('.').append(part(flash.text()));
            flash.undo().ifPresent(undo -> {
                text.append('.').append(part(undo.action())).append('.').append(part(undo.label()));
                undo.fields()
                        .forEach((name, value) ->
                                text.append('.').append(part(name)).append('.').append(part(value)));
            });
        });
        return text.toString();
    }

    /** @throws IllegalArgumentException when the text was not written by {@link #of} */
    static Saved read(String text) {
        String[] parts = text.split("\\.", -1);
        for (int i = 0; i < parts.length; i++) {
            parts[i] = new String(Base64.getUrlDecoder().decode(parts[i]), StandardCharsets.UTF_8);
        }
        if (parts.length == 1) {
            return Saved.to(parts[0]);
        }
        Optional<Frame.Undo> undo = Optional.empty();
        if (parts.length >= 4) {
            Map<String, String> fields = new LinkedHashMap<>();
            for (int i = 4; i + 1 < parts.length; i += 2) {
                fields.put(parts[i], parts[i + 1]);
            }
            undo = Optional.of(new Frame.Undo(parts[2], parts[3], fields));
        }
        return new Saved(parts[0], Optional.of(new Frame.Flash(parts[1], undo)), Optional.empty());
    }

    private static String part(String text) {
        return Keys.base64(text.getBytes(StandardCharsets.UTF_8));
    }
}
