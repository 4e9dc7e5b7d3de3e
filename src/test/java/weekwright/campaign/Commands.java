package weekwright.campaign;

import java.io.IOException;

/** Commands of the machine that a test needs: mounting a disk, making a folder immutable. */
final class Commands {
    private Commands() {}

    /** Whether there is such a command and it did what was asked of it. */
    static boolean did(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
