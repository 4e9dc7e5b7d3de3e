package weekwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few rounds with a fixed seed; tens of thousands by command (see the guide). */
class FuzzTest {
    private static final long SEED = 20261125;

    @TempDir
    Path folder;

    @Test
    void no_markdown_fails_and_nothing_that_runs_comes_out_of_it() {
        assertThat(new Fuzz(SEED, 600).markdown()).isEmpty();
    }

    @Test
    void a_damaged_picture_is_read_or_refused_in_words() {
        Fuzz fuzz = new Fuzz(SEED, 1_000);
        assertThat(fuzz.pictures()).isEmpty();
        assertThat(fuzz.outcomes()).containsOnlyKeys("read", "refused");
    }

    @Test
    void damaged_plain_files_are_read_or_their_faults_told() throws Exception {
        Fuzz fuzz = new Fuzz(SEED, 200);
        assertThat(fuzz.plainFiles(folder)).isEmpty();
        assertThat(fuzz.outcomes()).containsOnlyKeys("read", "refused");
    }

    @Test
    void no_form_answers_with_a_failure_of_the_program() throws Exception {
        Fuzz fuzz = new Fuzz(SEED, 150);
        assertThat(fuzz.forms()).isEmpty();
        assertThat(fuzz.outcomes()).containsKeys("303", "422");
    }
}
