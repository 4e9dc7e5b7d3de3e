package weekwright;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import weekwright.cli.Terminal;

/** Reads secrets from the terminal without showing them; where there is none, from standard input. */
final class Typing implements Terminal.Secrets {
    private final Optional<Console> console;

    /** @param console may be null: there is none */
    Typing(Console console) {
        this.console = Optional.ofNullable(console);
    }

    @Override
    public Optional<String> line(String question) {
        if (console.isPresent()) {
            return Optional.ofNullable(console.get().readPassword("%s: ", question))
                    .map(String::new);
        }
        try {
            return Optional.ofNullable(
                    new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public boolean typed() {
        return console.isPresent();
    }
}
