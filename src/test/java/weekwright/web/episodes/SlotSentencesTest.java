package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weekwright.build.Settings;
import weekwright.render.Formats;
import weekwright.testkit.SmallProject;

/** What the sheets of episodes say of no slot, one and two, on the day that the project publishes on. */
class SlotSentencesTest {
    private final Settings tuesdays = SmallProject.publishing("weekday", "tuesday");
    private final Settings everySecond = SmallProject.publishing("every_weeks", "2");

    private static String plain(String text) {
        return text.replace(Formats.NBSP, " ");
    }

    @Test
    void how_many_slots_are_safe_is_said_of_one_and_of_several() {
        assertThat(Stream.of(
                                EpisodesPage.safe(0, 1, tuesdays),
                                EpisodesPage.safe(1, 1, tuesdays),
                                EpisodesPage.safe(0, 2, tuesdays),
                                EpisodesPage.safe(1, 2, tuesdays),
                                EpisodesPage.safe(2, 2, tuesdays),
                                EpisodesPage.safe(5, 12, everySecond))
                        .map(SlotSentencesTest::plain))
                .containsExactly(
                        "The next Tuesday is not safe",
                        "The next Tuesday is safe",
                        "None of the next two Tuesdays are safe",
                        "One of the next two Tuesdays is safe",
                        "All of the next two Tuesdays are safe",
                        "Five of the next twelve slots are safe");
    }

    @Test
    void how_many_slots_have_an_episode_is_said_of_none_one_and_two() {
        assertThat(Stream.of(
                                EpisodesSlotsPage.planned(0, 0, tuesdays),
                                EpisodesSlotsPage.planned(0, 1, tuesdays),
                                EpisodesSlotsPage.planned(0, 12, tuesdays),
                                EpisodesSlotsPage.planned(1, 12, tuesdays),
                                EpisodesSlotsPage.planned(2, 26, everySecond))
                        .map(SlotSentencesTest::plain))
                .containsExactly(
                        "No slots ahead",
                        "None of one Tuesday ahead has its episode",
                        "None of twelve Tuesdays ahead has its episode",
                        "One of twelve Tuesdays ahead has its episode",
                        "Two of 26 slots ahead have their episode");
    }
}
