package weekwright.web.help;

import java.util.List;
import java.util.Optional;
import weekwright.render.Templates;
import weekwright.web.kit.Access;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** What a group of sheets is for, with an example; without {@code of} the list of all that there is. */
public final class HelpPage implements Page {
    private final Templates templates;

    /**
     * @param topic the one that is shown; empty on the list of all
     * @param words those of the glossary that its sheets use
     * @param others what else can be read
     */
    public record View(Optional<Shown> topic, List<HelpWords.Word> words, List<Entry> others) {}

    /** A topic with its text. @param sheet where its sheets begin; empty where there is no such page */
    public record Shown(String title, String lead, String html, String sheet) {}

    /** A line of the list. */
    public record Entry(String name, String title, String lead) {}

    public HelpPage(Templates templates) {
        this.templates = templates;
    }

    @Override
    public View show(Request request) {
        Access access = request.access();
        String of = request.query("of");
        Optional<HelpTopics.Topic> topic = of.isEmpty() ? Optional.empty() : Optional.of(asked(request, of));
        List<Entry> others = HelpTopics.readableBy(access).stream()
                .filter(one -> !one.name().equals(of))
                .map(one -> new Entry(
                        one.name(),
                        one.title(),
                        HelpText.of(templates, one.name()).lead()))
                .toList();
        List<HelpWords.Word> words = topic.map(one -> HelpWords.of(templates, access).stream()
                        .filter(word -> word.topics().contains(one.name()))
                        .toList())
                .orElse(List.of());
        return new View(topic.map(this::shown), words, others);
    }

    private static HelpTopics.Topic asked(Request request, String of) {
        HelpTopics.Topic topic = HelpTopics.named(of)
                .orElseThrow(
                        () -> new NotFound("There is no help with \"" + of + "\"; /help lists all that there is."));
        if (!request.access().covers(topic.access())) {
            request.crewOnly("This page of the help is for the crew.");
        }
        return topic;
    }

    private Shown shown(HelpTopics.Topic topic) {
        HelpText text = HelpText.of(templates, topic.name());
        return new Shown(topic.title(), text.lead(), text.html(), topic.sheets().get(0));
    }
}
