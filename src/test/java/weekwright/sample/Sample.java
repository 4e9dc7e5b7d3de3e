package weekwright.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Makes the parts of {@code sample-project/} that are not written by hand: hours, supporters, ledger, pictures. Arguments:
 * the folder, and if wanted a file for the days on which each task was begun and done, which tasks.csv has to repeat.
 */
final class Sample {
    private Sample() {}

    /** @throws IOException when the folder cannot be written */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args.length > 0 ? args[0] : "sample-project");
        Diary diary = new Diary(folder);
        Files.writeString(folder.resolve("hours.csv"), diary.text(), StandardCharsets.UTF_8);
        Supporters supporters = new Supporters(folder);
        Files.writeString(folder.resolve("supporters.csv"), supporters.text(), StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("ledger.csv"), new Books(folder, supporters).text(), StandardCharsets.UTF_8);
        Path photos = Files.createDirectories(folder.resolve("photos"));
        DrawnWood.all(photos);
        DrawnWorks.all(photos, Files.createDirectories(folder.resolve("receipts")));
        if (args.length > 1) {
            StringBuilder dates = new StringBuilder("{");
            for (String task : diary.started().keySet()) {
                dates.append(dates.length() > 1 ? ",\n" : "\n")
                        .append('"')
                        .append(task)
                        .append("\":{\"started\":\"")
                        .append(diary.started().get(task))
                        .append('"');
                if (diary.done().containsKey(task)) {
                    dates.append(",\"done\":\"").append(diary.done().get(task)).append('"');
                }
                dates.append('}');
            }
            Files.writeString(Path.of(args[1]), dates.append("\n}\n").toString());
        }
    }
}
