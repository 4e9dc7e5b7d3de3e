package weekwright.cli;

/** Words that the commands about backups share. */
final class Backups {
    private Backups() {}

    static String pictures(int count) {
        return count == 0 ? "no pictures" : count == 1 ? "1 picture" : count + " pictures";
    }
}
