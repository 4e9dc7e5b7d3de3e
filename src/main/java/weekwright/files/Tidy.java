package weekwright.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** What is done to folders before and after work in them. */
public final class Tidy {
    private Tidy() {}

    /** Removes a file or a folder with all that is in it; nothing where it is not there. */
    public static void remove(Path path) throws IOException {
        PictureMove.remove(path);
    }

    /** Forces the names of a folder to disk, where the system lets a folder be opened for that. */
    public static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // not every system opens folders; the file itself was forced before
        }
    }
}
