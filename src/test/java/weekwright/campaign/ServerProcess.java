package weekwright.campaign;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The server of one folder as a process of its own. Its port lies below those that the system gives to outgoing connections, so
 * that nobody takes it while the server is down between two rounds.
 */
final class ServerProcess implements AutoCloseable {
    private static final int LOWEST_PORT = 18_000;
    private static final int PORTS = 8_000;

    private final Process process;
    private final BufferedReader out;
    private final Path log;

    private ServerProcess(Process process, Path log) {
        this.process = process;
        this.log = log;
        out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Begins to start and does not wait until it serves. */
    static ServerProcess begin(String main, List<String> arguments, Path log, Map<String, String> environment)
            throws IOException {
        // it lives for seconds: the quick compiler alone has it up sooner
        return begin(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1"), main, arguments, log, environment);
    }

    private static ServerProcess begin(
            List<String> options, String main, List<String> arguments, Path log, Map<String, String> environment)
            throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC"));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), main));
        command.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().putAll(environment);
        builder.redirectError(ProcessBuilder.Redirect.appendTo(log.toFile()));
        return new ServerProcess(builder.start(), log);
    }

    /** Starts it on the folder and waits until it serves. */
    static ServerProcess serve(String main, Path folder, int port, Path log, Map<String, String> environment)
            throws IOException {
        ServerProcess server = begin(main, arguments(folder, port), log, environment);
        server.waitUntilServing();
        return server;
    }

    /** Starts the program as a service has it, with so large a heap, and waits until it serves. */
    static ServerProcess serve(String heap, Path folder, int port, Path log) throws IOException {
        List<String> options = List.of("-Xmx" + heap, "-XX:+UseTransparentHugePages");
        ServerProcess server = begin(options, "weekwright.Main", arguments(folder, port), log, Map.of());
        server.waitUntilServing();
        return server;
    }

    /** Runs a command of the program to its end; its exit status. */
    static int run(String heap, Path log, String... arguments) throws IOException, InterruptedException {
        ServerProcess command = begin(List.of("-Xmx" + heap), "weekwright.Main", List.of(arguments), log, Map.of());
        command.process.getInputStream().transferTo(OutputStream.nullOutputStream());
        return command.process.waitFor();
    }

    static List<String> arguments(Path folder, int port) {
        return List.of("serve", folder.toString(), "--port", String.valueOf(port));
    }

    /** A port at which nobody listens. */
    static int port() throws IOException {
        int first = (int) (ProcessHandle.current().pid() % PORTS);
        for (int i = 0; i < PORTS; i++) {
            int port = LOWEST_PORT + (first + i) % PORTS;
            try (ServerSocket free = new ServerSocket()) {
                free.bind(new InetSocketAddress("127.0.0.1", port));
                return port;
            } catch (BindException taken) {
                // the next one
            }
        }
        throw new IOException("no free port");
    }

    private void waitUntilServing() throws IOException {
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith("weekwright serves ")) {
                return;
            }
        }
        throw new IOException("the server did not start:\n" + Files.readString(log));
    }

    /** Kills it with signal 9 and waits until it is gone. The handle of the process kills and closes nothing else. */
    void kill() {
        process.toHandle().destroyForcibly();
        boolean interrupted = false;
        while (true) {
            try {
                process.waitFor();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether it ended by itself within so many milliseconds. */
    boolean ends(long millis) throws InterruptedException {
        return process.waitFor(millis, TimeUnit.MILLISECONDS);
    }

    /** Asks it to end, waits, and gives its exit status. */
    int stop() throws InterruptedException {
        process.toHandle().destroy();
        return process.waitFor();
    }

    long pid() {
        return process.pid();
    }

    /** What this process itself runs with, also where a class loader of the test runner holds it. */
    private static String classPath() {
        ClassLoader loader = Thread.currentThread().getContextClassLoader();
        String own = System.getProperty("java.class.path");
        return loader instanceof URLClassLoader urls
                ? Stream.concat(Stream.of(urls.getURLs()).map(url -> new File(url.getPath()).getPath()), Stream.of(own))
                        .collect(Collectors.joining(File.pathSeparator))
                : own;
    }

    @Override
    public void close() {
        kill();
    }
}
