package weekwright.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The files of {@code sample-project/} that are made by code are what that code makes. */
class SampleTest {
    private static final Path FOLDER = Path.of("sample-project");

    @Test
    void hoursAreTheDiaryLaidOutAgain() throws IOException {
        assertEquals(Files.readString(FOLDER.resolve("hours.csv")), new Diary(FOLDER).text());
    }

    @Test
    void supportersAreTheMonthsWrittenByHandWithTheirStarts() throws IOException {
        assertEquals(Files.readString(FOLDER.resolve("supporters.csv")), new Supporters(FOLDER).text());
    }

    @Test
    void ledgerIsTheBooksKeptAgainToTheCent() throws IOException {
        assertEquals(Files.readString(FOLDER.resolve("ledger.csv")), new Books(FOLDER, new Supporters(FOLDER)).text());
    }

    @Test
    void datesOfTheTasksAreThoseOfTheDiary() {
        Diary diary = new Diary(FOLDER);
        Csv.read(FOLDER.resolve("tasks.csv")).forEach(task -> {
            String id = task.get("id");
            assertEquals(String.valueOf(diary.started().getOrDefault(id, null)), orNull(task.get("started")), id);
            assertEquals(String.valueOf(diary.done().getOrDefault(id, null)), orNull(task.get("done")), id);
        });
    }

    private static String orNull(String text) {
        return text.isEmpty() ? "null" : text;
    }
}
