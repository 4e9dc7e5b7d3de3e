package weekwright;

/** The program's entry: hands the command line over and ends with its exit status. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {}
}
