package weekwright.web.notes;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.notes.Draft;
import weekwright.notes.DraftStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/** What the pages that write a note do with drafts: keep one, offer it on return, take it up, throw it away. */
final class NoteDrafts {
    private NoteDrafts() {}

    /** A draft to be taken up, in words; {@code changed}: the note was saved anew since it was opened for it. */
    record Offer(String when, boolean changed) {}

    /** The person's draft; nobody's while nobody was chosen. */
    static Optional<Draft> of(Request request, Optional<Id> note) {
        return request.person().flatMap(person -> request.read(read -> DraftStore.find(read, person.id(), note)));
    }

    /** Whether the address asks for the draft in place of the note. */
    static boolean isTakenUp(Request request) {
        return request.query("draft").equals("yes") && !request.wasRefused("");
    }

    /** @param version of the note as it stands; 0 for a new one */
    static Optional<Offer> offer(Request request, Optional<Id> note, long version) {
        if (isTakenUp(request) || request.wasRefused("")) {
            return Optional.empty();
        }
        return of(request, note)
                .map(draft -> new Offer(
                        Formats.moment(LocalDateTime.ofInstant(
                                draft.at(), request.settings().zone())),
                        draft.version() != version));
    }

    static Form takenUp(Form form, Draft draft) {
        return new Form(
                form.csrf(),
                form.answerKey(),
                draft.version() == 0 ? Optional.empty() : Optional.of(draft.version()),
                draft.fields(),
                Map.of());
    }

    /** Keeps what is typed as a draft, or throws the kept one away; empty for other buttons. */
    static Optional<Answer> answer(Request request, Optional<Id> note) throws Exception {
        FormReader form = request.form();
        Optional<Id> crew = request.person().map(CrewMember::id);
        switch (form.act()) {
            case "draft", "autosave" -> {
                if (crew.isPresent()) {
                    request.db().write(request.who(), write -> {
                        DraftStore.keep(write, crew.get(), note, form.version(), NoteFields.typed(form));
                        return null;
                    });
                }
                return Optional.of(
                        form.act().equals("draft")
                                ? new Answer.Again(Map.of(), "Kept as your draft; no note was changed.")
                                : Answer.body(
                                        "application/json; charset=utf-8",
                                        ("{\"kept\": " + crew.isPresent() + "}").getBytes(StandardCharsets.UTF_8)));
            }
            case "forget" -> {
                request.db().write(request.who(), write -> {
                    crew.ifPresent(one -> DraftStore.drop(write, one, note));
                    return null;
                });
                return Optional.of(Answer.to(request.address()));
            }
            default -> {
                return Optional.empty();
            }
        }
    }
}
