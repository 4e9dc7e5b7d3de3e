package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problem;
<<<<<<<< HEAD:src/test/java/weekwright/files/SmallFilesTest.java
import weekwright.testkit.SmallFiles;

/** The small project of the other tests must itself be without fault or remark, or they would show nothing. */
class SmallFilesTest {
========
import weekwright.testkit.PlainProject;

/** The small project of the other tests must itself be without fault or remark, or they would show nothing. */
class PlainProjectTest {
>>>>>>>> main:src/test/java/weekwright/files/PlainProjectTest.java
    @TempDir
    Path temp;

    @Test
    void the_small_project_has_neither_fault_nor_remark() {
<<<<<<<< HEAD:src/test/java/weekwright/files/SmallFilesTest.java
        var result = SmallFiles.in(temp.resolve("files")).read();
========
        var result = PlainProject.in(temp.resolve("files")).read();
>>>>>>>> main:src/test/java/weekwright/files/PlainProjectTest.java
        assertThat(result.problems()).extracting(Problem::text).isEmpty();
        assertThat(result.data()).isPresent();
    }
}
