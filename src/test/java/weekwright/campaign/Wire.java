package weekwright.campaign;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One connection that is kept open (RFC 9112), and costs so little that a load is the server's: requests are bytes made before,
 * of an answer's body nothing is looked at.
 */
final class Wire implements AutoCloseable {
    private final Socket socket;
    private final InputStream in;

    Wire(int port) throws IOException {
        socket = new Socket("127.0.0.1", port);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
    }

    /** @param headers whole lines, each ended by CR LF */
    static byte[] get(int port, String path, String headers) {
        return ("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nAccept-Encoding: gzip\r\n" + headers
                        + "\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** A form, as {@code application/x-www-form-urlencoded}. */
    static byte[] post(int port, String path, String headers, String body) {
        return ("POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nOrigin: http://127.0.0.1:" + port
                        + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                        + "\r\n" + headers + "\r\n" + body)
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** Sends a request and reads its answer to the end; its status. */
    int ask(byte[] request) throws IOException {
        socket.getOutputStream().write(request);
        int status = Integer.parseInt(line().split(" ")[1]);
        Map<String, String> headers = new HashMap<>();
        for (String line = line(); !line.isEmpty(); line = line()) {
            int colon = line.indexOf(':');
            headers.put(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).strip());
        }
        if ("chunked".equals(headers.get("transfer-encoding"))) {
            for (int size = chunk(); size > 0; size = chunk()) {
                in.skipNBytes(size + 2L);
            }
            in.skipNBytes(2);
        } else if (status != 304) {
            in.skipNBytes(Long.parseLong(headers.getOrDefault("content-length", "0")));
        }
        return status;
    }

    private int chunk() throws IOException {
        return Integer.parseInt(line().split(";")[0], 16);
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int read = in.read(); read != '\n'; read = in.read()) {
            if (read < 0) {
                throw new EOFException("the connection was closed by the server");
            }
            if (read != '\r') {
                line.append((char) read);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
