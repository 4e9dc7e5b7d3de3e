package weekwright.web.account;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A browser's name and its system, from how it calls itself (RFC 9110, section 10.1.5), by which its owner knows a device again:
 * {@code Firefox on Android}. Many claim to be others too, so the first that fits counts.
 */
final class BrowserName {
    private static final Map<String, String> BROWSERS = ordered(
            "Edg",
            "Edge",
            "OPR/",
            "Opera",
            "SamsungBrowser/",
            "Samsung Internet",
            "Firefox/",
            "Firefox",
            "FxiOS/",
            "Firefox",
            "CriOS/",
            "Chrome",
            "Chrome/",
            "Chrome",
            "Safari/",
            "Safari");
    private static final Map<String, String> SYSTEMS = ordered(
            "iPhone",
            "an iPhone",
            "iPad",
            "an iPad",
            "Android",
            "Android",
            "Windows",
            "Windows",
            "CrOS",
            "ChromeOS",
            "Mac OS X",
            "macOS",
            "Linux",
            "Linux");

    private BrowserName() {}

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    /** Its name; what it calls itself where that says nothing. */
    static String of(String calls) {
        if (calls.isEmpty()) {
            return "a browser without a name";
        }
        Optional<String> browser = first(BROWSERS, calls);
        Optional<String> system = first(SYSTEMS, calls);
        return browser.map(name -> name + system.map(on -> " on " + on).orElse(""))
                .orElse(calls);
    }

    private static Optional<String> first(Map<String, String> words, String calls) {
        return words.entrySet().stream()
                .filter(word -> calls.contains(word.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
