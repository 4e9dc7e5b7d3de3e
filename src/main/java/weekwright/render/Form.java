package weekwright.render;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A form as a template shows it: what stands in each field, what is wrong with it, and the keys it carries. Refused
 * forms keep what was typed.
 *
 * @param csrf the token that every posted form carries
 * @param answerKey a repeated post with the same key gives the first answer
 * @param version the version of the row that is edited; empty for something new
 * @param values field name to what stands in it; several for boxes with one name
 * @param errors field name to the sentence under it; the empty name is the form as a whole
 */
public record Form(
        String csrf,
        String answerKey,
        Optional<Long> version,
        Map<String, List<String>> values,
        Map<String, String> errors) {

    public Form {
        values = new LinkedHashMap<>(values);
        errors = new LinkedHashMap<>(errors);
    }

    /** An empty form with the keys of its page. */
    public static Form of(Frame frame) {
        return new Form(frame.csrf(), frame.answerKey(), Optional.empty(), Map.of(), Map.of());
    }

    /** The same form with one field filled. */
    public Form with(String name, String... texts) {
        Map<String, List<String>> more = new LinkedHashMap<>(values);
        more.put(name, List.of(texts));
        return new Form(csrf, answerKey, version, more, errors);
    }

    /** What stands in the field; empty where nothing does. */
    public String value(String name) {
        List<String> all = values.getOrDefault(name, List.of());
        return all.isEmpty() ? "" : all.get(0);
    }

    /** Whether the field holds this text among its values, as a ticked box or a chosen line does. */
    public boolean holds(String name, String text) {
        return values.getOrDefault(name, List.of()).contains(text);
    }

    /** Whether the list begins with these words for an empty field: not where the choice of the same words is chosen. */
    public boolean begins(String name, List<Choice> choices, String blank) {
        return !blank.isEmpty()
                && choices.stream().noneMatch(choice -> choice.label().equals(blank) && holds(name, choice.value()));
    }

    /** The choices without the one that the words for an empty field say already, unless it is chosen. */
    public List<Choice> besides(String name, List<Choice> choices, String blank) {
        return choices.stream()
                .filter(choice -> !choice.label().equals(blank) || holds(name, choice.value()))
                .toList();
    }

    /** What stands in the field and is none of these choices. */
    public List<String> strays(String name, List<Choice> choices) {
        return values.getOrDefault(name, List.of()).stream()
                .filter(text -> !text.isEmpty()
                        && choices.stream().noneMatch(choice -> choice.value().equals(text)))
                .toList();
    }

    /** The sentence under the field; empty where nothing is wrong. */
    public String error(String name) {
        return errors.getOrDefault(name, "");
    }

    /** Whether it is the first field with something wrong: it takes the focus, without script too. */
    public boolean leads(String name) {
        return leader().map(name::equals).orElse(false);
    }

    /** Whether a field takes the focus; where only the whole form is wrong, what is said above it does. */
    public boolean isLed() {
        return leader().isPresent();
    }

    private Optional<String> leader() {
        return errors.keySet().stream().filter(field -> !field.isEmpty()).findFirst();
    }

    public boolean isRefused() {
        return !errors.isEmpty();
    }

    /**
     * A line of a list to choose from.
     *
     * @param remark a word or two at its right, where the list has room for one; empty for none
     */
    public record Choice(String value, String label, String remark) {
        public Choice(String value, String label) {
            this(value, label, "");
        }
    }
}
