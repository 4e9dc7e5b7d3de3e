package weekwright.testkit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A browser without script: keeps cookies, follows what it is told to follow, fills in forms as they are shown and posts
 * them with all their hidden fields.
 */
public final class Visitor {
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final String origin;
    private final Map<String, String> cookies = new LinkedHashMap<>();

    /** @param origin such as {@code http://127.0.0.1:8410} */
    public Visitor(String origin) {
        this.origin = origin;
    }

    /** One answer. */
    public record Reply(int status, Map<String, List<String>> headers, String body, String address) {
        /** The page. */
        public Document page() {
            return Jsoup.parse(body, address);
        }

        /** Header values joined; empty where the answer has no such header. */
        public String header(String name) {
            return String.join(", ", headers.getOrDefault(name.toLowerCase(Locale.ROOT), List.of()));
        }

        /** All words of the page's main part, one space between them. */
        public String text() {
            return page().select("main").text();
        }

        /** The sentences of what was refused, as the box above the form lists them. */
        public List<String> troubles() {
            return page().select("main .trouble li").eachText();
        }

        /** Where a 303 goes on to. */
        public String to() {
            return header("location");
        }
    }

    /** Asks without following. */
    public Reply get(String path, String... headers) {
        return send(request(path, headers).GET().build());
    }

    /** Asks with another method. */
    public Reply method(String method, String path, String... headers) {
        return send(request(path, headers)
                .method(method, HttpRequest.BodyPublishers.noBody())
                .build());
    }

    /** Posts a body as it is given. */
    public Reply post(String path, String body, String... headers) {
        return send(request(path, headers)
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    /** Follows a 303 to its page. */
    public Reply follow(Reply reply) {
        if (reply.status() != 303) {
            throw new AssertionError("expected 303 but was " + reply.status() + ": " + reply.body());
        }
        return get(reply.to());
    }

    /** A form of a page, to be filled in. */
    public Form form(Reply page, String css) {
        Element form = page.page().selectFirst(css);
        if (form == null) {
            throw new AssertionError("no form " + css + " on " + page.address() + ":\n" + page.text());
        }
        return new Form(form, page.address());
    }

    /** The chief form of a page. */
    public Form form(Reply page) {
        return form(page, "main form[method=post]");
    }

    /** A form as it stands on a page: what is sent is what a browser would send. */
    public final class Form {
        private final List<Attached> files = new ArrayList<>();
        private final Map<String, List<String>> fields = new LinkedHashMap<>();
        private final String action;

        private Form(Element form, String address) {
            action = form.attr("action").isEmpty() ? address.substring(origin.length()) : form.attr("action");
            for (Element field : form.select("input[name], textarea[name], select[name]")) {
                String type = field.attr("type");
                if (type.equals("file")) {
                    continue;
                }
                if ((type.equals("checkbox") || type.equals("radio")) && !field.hasAttr("checked")
                        || type.equals("submit")
                        || field.hasAttr("disabled")) {
                    continue;
                }
                String value = field.val();
                if (field.tagName().equals("select")) {
                    Element chosen = field.selectFirst("option[selected]");
                    Element first = chosen == null ? field.selectFirst("option") : chosen;
                    value = first == null ? "" : first.val();
                }
                fields.computeIfAbsent(field.attr("name"), n -> new ArrayList<>())
                        .add(value);
            }
        }

        /** What stands in a field now. */
        public String value(String name) {
            return String.join(",", fields.getOrDefault(name, List.of()));
        }

        /** Fills a field in, instead of what stood there. */
        public Form with(String name, String... values) {
            fields.put(name, List.of(values));
            return this;
        }

        public Form without(String name) {
            fields.remove(name);
            return this;
        }

        /** Chooses a file for a box; several calls choose several. */
        public Form attach(String name, String file, byte[] content) {
            fields.remove(name);
            files.add(new Attached(name, file, content));
            return this;
        }

        /** The body that is posted. */
        public String body() {
            return fields.entrySet().stream()
                    .flatMap(e -> e.getValue().stream().map(v -> encoded(e.getKey()) + "=" + encoded(v)))
                    .collect(Collectors.joining("&"));
        }

        public Reply send() {
            return send(action);
        }

        private Reply sendParts(String to) {
            String boundary = "----parts-of-a-form-7d9f0c";
            ByteArrayOutputStream body = new ByteArrayOutputStream();
            fields.forEach((name, values) -> values.forEach(value -> body.writeBytes(("--" + boundary
                            + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n")
                    .getBytes(StandardCharsets.UTF_8))));
            for (Attached part : files) {
                body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; name=\"" + part.name()
                                + "\"; filename=\"" + part.file()
                                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                        .getBytes(StandardCharsets.UTF_8));
                body.writeBytes(part.content());
                body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
            }
            body.writeBytes(("--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
            return Visitor.this.send(
                    request(to, "Content-Type", "multipart/form-data; boundary=" + boundary, "Origin", origin)
                            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                            .build());
        }

        /** Presses the button of that act. */
        public Reply press(String act) {
            return with("do", act).send();
        }

        private Reply send(String to) {
            if (!files.isEmpty()) {
                return sendParts(to);
            }
            return post(to, body(), "Content-Type", "application/x-www-form-urlencoded", "Origin", origin);
        }
    }

    /** A file chosen in a form. */
    private record Attached(String name, String file, byte[] content) {}

    /** A cookie kept; empty where there is none. */
    public String cookie(String name) {
        return cookies.getOrDefault(name, "");
    }

    /** All cookies as a request sends them. */
    public String cookies() {
        return cookies.entrySet().stream()
                .map(e -> e.getKey() + "=" + e.getValue())
                .collect(Collectors.joining("; "));
    }

    public void setCookie(String name, String value) {
        cookies.put(name, value);
    }

    public String origin() {
        return origin;
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
        if (!cookies.isEmpty()) {
            request.header("Cookie", cookies());
        }
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return request;
    }

    private Reply send(HttpRequest request) {
        try {
            HttpResponse<String> response =
                    client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            for (String cookie : response.headers().allValues("set-cookie")) {
                String[] pair = cookie.split(";")[0].split("=", 2);
                if (pair[1].isEmpty()) {
                    cookies.remove(pair[0]);
                } else {
                    cookies.put(pair[0], pair[1]);
                }
            }
            return new Reply(
                    response.statusCode(),
                    response.headers().map(),
                    response.body(),
                    request.uri().toString());
        } catch (IOException e) {
            throw new AssertionError(request.uri() + " gave no answer", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
