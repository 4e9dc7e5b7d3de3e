package weekwright.web.crew;

import java.util.List;

/** Every key of {@code project.toml} with what it does, in one sentence, and its default. */
final class SettingsKeys {
    private SettingsKeys() {}

    /**
     * A key.
     *
     * @param column as in the file
     * @param label on the page
     * @param said what it does
     * @param byDefault what holds where nothing stands; empty where it has to be given
     */
    record Key(String column, String label, String said, String byDefault) {}

    /** A table of keys; its name is also the act that its button posts. */
    record Part(String name, String title, List<Key> keys) {
        String[] columns() {
            return keys.stream().map(Key::column).toArray(String[]::new);
        }
    }

    static final List<Part> PARTS = List.of(
            new Part(
                    "project",
                    "The project",
                    List.of(
                            new Key("name", "Name", "Stands at the head of every sheet.", ""),
                            new Key("started", "Started", "The project’s first day; nothing is logged before it.", ""),
                            new Key("currency", "Currency", "Three letters of ISO 4217; all amounts stand in it.", ""),
                            new Key(
                                    "units",
                                    "Units",
                                    "metric or imperial, in which lengths and volumes are shown.",
                                    "metric"),
                            new Key("zone", "Time zone", "Whose day it is, by place, such as Europe/Berlin.", ""),
                            new Key("reserve", "Reserve", "The floor of cash that orders leave untouched.", "0"),
                            new Key(
                                    "opening_date",
                                    "Books open",
                                    "The day from which the books are kept.",
                                    "the project’s first day"),
                            new Key("opening_cash", "Opening cash", "What was in the account on that day.", "0"),
                            new Key("horizon_months", "Horizon, months", "How far ahead the forecast looks.", "36"),
                            new Key(
                                    "quotes",
                                    "Quotation marks",
                                    "How \"these\" and 'these' are set in notes: english, german, french, swiss or"
                                            + " as-typed.",
                                    "as-typed"))),
            new Part(
                    "publishing",
                    "Publishing",
                    List.of(
                            new Key("weekday", "Weekday", "On which episodes come out.", "Friday"),
                            new Key("time", "Time", "At which an episode comes out.", "17:00"),
                            new Key(
                                    "first",
                                    "First slot",
                                    "The first day of publication.",
                                    "the first such weekday after the project’s first day"),
                            new Key("every_weeks", "Every … weeks", "How many weeks lie between slots.", "1"),
                            new Key("target_minutes", "Target minutes", "Finished length of an episode.", "20"),
                            new Key(
                                    "early_days",
                                    "Early days",
                                    "How long before its slot an episode has to be ready.",
                                    "1"),
                            new Key(
                                    "edit_window_days",
                                    "Editing window, days",
                                    "How long before its slot editing begins.",
                                    "14"),
                            new Key("edit_days", "Editing days", "Weekdays on which the editor edits.", "any day"),
                            new Key(
                                    "shoot_until",
                                    "Film until",
                                    "Where it stands, printed on the week sheet as the last time to film.",
                                    "none"),
                            new Key(
                                    "bank_floor",
                                    "Bank floor, weeks",
                                    "Weeks of story under which a warning is due.",
                                    "3"),
                            new Key(
                                    "edit_low",
                                    "Editing hours, at least",
                                    "For an episode without hours of its own.",
                                    "16"),
                            new Key(
                                    "edit_likely",
                                    "Editing hours, likely",
                                    "For an episode without hours of its own.",
                                    "24"),
                            new Key(
                                    "edit_high",
                                    "Editing hours, at most",
                                    "For an episode without hours of its own.",
                                    "36"),
                            new Key(
                                    "charges_a_month",
                                    "Charges a month",
                                    "How many episodes of a month are charged at most.",
                                    "no limit"),
                            new Key(
                                    "empty_leaving",
                                    "Leaving after an empty slot",
                                    "By how much an empty slot multiplies the leaving of its month.",
                                    "1, no effect"),
                            new Key("skip", "Skipped slots", "Days without an episode, divided by spaces.", "none"))),
            new Part(
                    "weather",
                    "Weather",
                    List.of(
                            new Key(
                                    "lost",
                                    "Days lost outdoors",
                                    "Twelve shares of days, January first, divided by spaces.",
                                    "none lost"),
                            new Key(
                                    "spell_days",
                                    "Length of a spell, days",
                                    "How long bad weather lasts in the mean.",
                                    "2"))),
            new Part(
                    "orders",
                    "Orders",
                    List.of(
                            new Key(
                                    "margin_days",
                                    "Margin, days",
                                    "How long before the need an order should be here.",
                                    "14"),
                            new Key(
                                    "small",
                                    "Small orders",
                                    "Orders up to this may go out while a larger one waits for money.",
                                    "2 % of the reserve, at least 50"))),
            new Part(
                    "money",
                    "Money put by",
                    List.of(
                            new Key(
                                    "put_by_percent",
                                    "Put by, percent",
                                    "Of pay-outs, for tax; ask a licensed accountant or your tax office how much.",
                                    "0"),
                            new Key(
                                    "tax_month",
                                    "Tax month",
                                    "Month, 1 to 12, in which what was put by is paid out.",
                                    "none"),
                            new Key(
                                    "year_starts",
                                    "Tax year starts",
                                    "Month-day on which the tax year begins.",
                                    "01-01"))),
            new Part(
                    "emergency",
                    "For an emergency",
                    List.of(
                            new Key("number", "Number to call", "Printed on every week sheet.", "none"),
                            new Key("address", "Address", "Where help has to come to.", "none"),
                            new Key("way_in", "Way in", "How help finds the shop.", "none"),
                            new Key("first_aider", "First aider", "Who is trained.", "none"),
                            new Key("kit", "Kit", "Where the first-aid kit hangs.", "none"),
                            new Key("shut_offs", "Shut-offs", "Where power, gas and water are shut off.", "none"))),
            new Part(
                    "model",
                    "The forecast",
                    List.of(
                            new Key(
                                    "prior_ratio",
                                    "Effort ratio at first",
                                    "Actual over estimated hours before your own tasks tell.",
                                    "1.15"),
                            new Key(
                                    "effort_half_life",
                                    "Effort half-life, months",
                                    "After which a finished task counts half; 0 is never.",
                                    "18"),
                            new Key(
                                    "supporters_half_life",
                                    "Supporters half-life, months",
                                    "After which a month of supporters counts half; 0 is never.",
                                    "6"),
                            new Key(
                                    "joining_drift",
                                    "Joining drift",
                                    "How much joining wanders from month to month; 0.1 is a tenth, 0 not at all.",
                                    "learned"),
                            new Key(
                                    "turnout",
                                    "Turnout",
                                    "Share of stated hours that reaches the build; 1 is all of them.",
                                    "learned"),
                            new Key(
                                    "found_share",
                                    "Found work",
                                    "Hours that turn up beside the listed hours of a stage, as a share of these; 0 is"
                                            + " none.",
                                    "learned"),
                            new Key(
                                    "editing_first",
                                    "Editing first",
                                    "Whether editing takes the editor’s hours before the build: yes or no.",
                                    "yes"),
                            new Key(
                                    "camera_fixed",
                                    "Camera left running, percent",
                                    "How much longer a task takes that films itself.",
                                    "15"),
                            new Key(
                                    "camera_operator",
                                    "Somebody films, percent",
                                    "Share of a task’s hours that somebody films.",
                                    "30"),
                            new Key(
                                    "late_together",
                                    "Late together",
                                    "Whether orders that came late make those of the next months longer, whoever"
                                            + " delivers: yes or no.",
                                    "yes"))),
            new Part(
                    "build_log",
                    "The public build log",
                    List.of(
                            new Key("open", "Open", "Whether this program serves it to everyone: yes or no.", "no"),
                            new Key("address", "Address", "Where it stands in public, for feed and site map.", "none"),
                            new Key("lead", "Lead", "The sentences under its title.", "none"),
                            new Key("stages", "Stages", "How far each is, by hours: yes or no.", "no"),
                            new Key("landing", "Landing", "When the stage in hand is done: yes or no.", "no"),
                            new Key(
                                    "episodes",
                                    "Episodes",
                                    "Those that are out, with their notes, and the day of the next: yes or no.",
                                    "no"),
                            new Key("thanks", "Thanks", "Who gave, by the credit agreed: yes or no.", "no"),
                            new Key("drawing", "Drawing", "Your own drawing, inked as stages land: yes or no.", "no"),
                            new Key(
                                    "moved",
                                    "Why it moved",
                                    "Why the date of the stage in hand moved: yes or no.",
                                    "no"),
                            new Key(
                                    "rung",
                                    "Next purchase",
                                    "What is bought next and whether the money is there: yes or no.",
                                    "no"),
                            new Key(
                                    "pledge",
                                    "Where pledges went",
                                    "Share of the spent money by stage: yes or no.",
                                    "no"))));
}
