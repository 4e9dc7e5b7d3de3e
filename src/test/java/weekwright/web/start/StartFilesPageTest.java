package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.build.TaskStore;
import weekwright.files.SampleFiles;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class StartFilesPageTest {
    private ServerFixture server;
    private Visitor visitor;

    @BeforeEach
    void start() {
        server = ServerFixture.empty();
        visitor = server.stranger();
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Visitor.Reply bringIn(String folder) {
        return visitor.form(visitor.get("/start/files")).with("folder", folder).send();
    }

    @Test
    void a_folder_of_plain_files_becomes_the_project() throws Exception {
        try (SampleFiles sample = SampleFiles.unpack()) {
            Visitor.Reply done = bringIn(sample.folder().toString());
            assertThat(done.troubles()).isEmpty();
            assertThat(done.status()).isEqualTo(303);
            assertThat(done.to()).isEqualTo("/ahead");
        }
        assertThat(server.db().read(TaskStore.TABLE::count)).isGreaterThan(70);
    }

    @Test
    void every_fault_of_the_files_is_listed_and_nothing_is_brought_in() throws Exception {
        Path files = Files.createDirectory(server.beside().resolve("files"));
        Files.writeString(
                files.resolve("project.toml"),
                "format = 1\nname = \"Weir\"\nstarted = \"2026-02-30\"\ncurrency = \"EUR\"\nzone = \"Europe/Berlin\"\n");
        Files.writeString(files.resolve("stages.csv"), "id,name,length\r\nweir,Weir,3\r\n");
        Visitor.Reply refused = bringIn(files.toString());
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "project.toml line 3, key started: \"2026-02-30\" is not a day of the calendar; write a day that"
                                + " exists, such as 2026-02-28",
                        "stages.csv line 1: \"length\" is not a column of stages.csv; write one of"
                                + " id,name,order,weight,side,rough_low,rough_likely,rough_high,rough_cost,description");
        assertThat(refused.page().select("#folder").val()).isEqualTo(files.toString());
        assertThat(server.app().folder().isProject()).isFalse();
    }

    @Test
    void what_is_no_folder_here_is_told() {
        assertThat(bringIn("").troubles()).containsExactly("is missing; it has to be given");
        assertThat(bringIn("mill").troubles())
                .containsExactly("\"mill\" is not a whole path; write it from the root of the disk on");
        assertThat(bringIn("/nowhere/mill").troubles())
                .containsExactly(
                        "\"/nowhere/mill\" is no folder on this machine; write the path of the folder of files");
    }
}
