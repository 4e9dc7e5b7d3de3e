package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import weekwright.episodes.ClipStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/**
 * A card's folder, read by the browser. The clips are sound in a WAV container (RIFF, "Multimedia Programming Interface and Data
 * Specifications 1.0", 1991: from memory) under the names of films: a browser goes by what is in a file.
 */
class FootageInTheBrowserTest {
    private static final int RATE = 3000;

    @TempDir
    private Path folder;

    /** A silent clip of so many seconds, closed by the camera at an instant. */
    private static void clip(Path file, int seconds, Instant closed) throws IOException {
        int data = RATE * seconds;
        ByteBuffer wav = ByteBuffer.allocate(44 + data).order(ByteOrder.LITTLE_ENDIAN);
        wav.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + data);
        wav.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        wav.putShort((short) 1).putShort((short) 1).putInt(RATE).putInt(RATE);
        wav.putShort((short) 1).putShort((short) 8);
        wav.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(data);
        while (wav.hasRemaining()) {
            wav.put((byte) 128);
        }
        Files.write(file, wav.array());
        Files.setLastModifiedTime(file, FileTime.from(closed));
    }

    private static String said(BrowserFixture browser) {
        return browser.driver().findElement(By.cssSelector("[data-said]")).getText();
    }

    @Test
    void names_times_and_lengths_are_listed_and_the_pictures_stay_where_they_are() throws Exception {
        Path card = Files.createDirectory(folder.resolve("CARD7"));
        clip(card.resolve("M_0002.MOV"), 90, Instant.parse("2026-11-25T09:31:30Z"));
        clip(card.resolve("M_0001.mp4"), 12, Instant.parse("2026-11-25T09:00:12Z"));
        Files.writeString(card.resolve("index.txt"), "no clip");
        Files.writeString(card.resolve("M_0003.mp4"), "no film at all");
        Files.setLastModifiedTime(card.resolve("M_0003.mp4"), FileTime.from(Instant.parse("2026-11-25T10:00:00Z")));
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/episodes/footage/new");
            browser.driver().findElement(By.id("folder")).sendKeys(card.toString());
            browser.until(d -> !d.findElements(By.cssSelector("table tbody tr")).isEmpty());
            String listing = browser.driver().findElement(By.id("listing")).getDomProperty("value");
            String[] lines = listing.split("\n");
            assertThat(lines).hasSize(4);
            assertThat(lines[0].strip()).isEqualTo("clip,date,time,minutes,size,card");
            assertThat(lines[1].strip()).matches("M_0001,2026-11-25,[0-9]{2}:00,0\\.2,1 MB,CARD7");
            assertThat(lines[2].strip()).matches("M_0002,2026-11-25,[0-9]{2}:30,1\\.5,1 MB,CARD7");
            assertThat(lines[3].strip()).matches("M_0003,2026-11-25,[0-9]{2}:00,,1 MB,CARD7");
            browser.send(By.xpath("//button[text()='Keep these clips']"));
            assertThat(server.db().read(ClipStore.TABLE::values).stream()
                            .filter(one -> one.card().equals("CARD7"))
                            .map(one -> one.clip() + " "
                                    + one.minutes()
                                            .map(minutes -> minutes.text())
                                            .orElse("")))
                    .containsExactly("M_0001 0.2", "M_0002 1.5", "M_0003 ");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void of_five_thousand_clips_the_reading_is_told_and_can_be_stopped() throws Exception {
        Path card = Files.createDirectory(folder.resolve("CARD8"));
        for (int i = 0; i < 5000; i++) {
            clip(card.resolve("C%04d.mp4".formatted(i)), 1, Instant.parse("2026-11-24T09:00:00Z"));
        }
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/episodes/footage/new");
            browser.driver().findElement(By.id("folder")).sendKeys(card.toString());
            browser.until(d -> said(browser).matches("[0-9,]+ of 5,000 clips read"));
            browser.driver().findElement(By.cssSelector("[data-stop]")).click();
            browser.until(d -> said(browser).startsWith("Stopped"));
            assertThat(said(browser))
                    .isEqualTo("Stopped; nothing is listed. Choose the folder again, or a smaller one.");
            assertThat(browser.driver().findElement(By.id("listing")).getDomProperty("value"))
                    .isEmpty();
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
