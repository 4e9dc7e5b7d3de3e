package weekwright;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The rules of the architecture over compiled classes. Each gives one line for each breach, sorted. */
final class Architecture {
    private static final Set<String> BELOW_FORECAST =
            Set.of("base", "engine", "db", "build", "episodes", "funds", "notes", "forecast");

    /** What each package may import of ours, besides itself; the root package is {@code ""}. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("base", Set.of()),
            Map.entry("engine", Set.of()),
            Map.entry("db", Set.of("base")),
            Map.entry("render", Set.of("base")),
            Map.entry("build", Set.of("base", "db")),
            Map.entry("episodes", Set.of("base", "db", "build")),
            Map.entry("funds", Set.of("base", "db", "build")),
            Map.entry("notes", Set.of("base", "db", "build", "episodes")),
            Map.entry("account", Set.of("base", "db", "build")),
            Map.entry("forecast", BELOW_FORECAST),
            Map.entry("files", BELOW_FORECAST),
            Map.entry("history", with(BELOW_FORECAST, "files", "render")),
            Map.entry("site", with(BELOW_FORECAST, "forecast", "files", "render")),
            Map.entry("web", with(BELOW_FORECAST, "account", "files", "history", "render", "site")),
            Map.entry("cli", with(BELOW_FORECAST, "account", "files", "history", "render", "site", "web", "")),
            Map.entry("", with(BELOW_FORECAST, "account", "files", "history", "render", "site", "cli")));

    /** Each library by the start of its class names, and who may use it. */
    private static final Map<String, Predicate<JavaClass>> HOMES = Map.ofEntries(
            Map.entry("io.javalin.", in("web")),
            Map.entry("com.password4j.", in("account")),
            Map.entry("org.eclipse.jetty.", in("web")),
            Map.entry("jakarta.servlet.", in("web")),
            Map.entry("org.jdbi.", in("db").or(named("Store"))),
            Map.entry("java.sql.", in("db")),
            Map.entry("javax.sql.", in("db")),
            Map.entry("org.sqlite.", in("db")),
            Map.entry("com.zaxxer.", in("db")),
            Map.entry("io.pebbletemplates.", in("render")),
            Map.entry("com.vladsch.flexmark.", in("notes").and(named("Markdown").or(named("NoteParser")))),
            Map.entry("org.owasp.", in("notes").and(named("Markdown"))),
            Map.entry("com.fasterxml.jackson.", in("forecast").or(in("web"))),
            Map.entry("org.tomlj.", in("files")),
            Map.entry("org.apache.commons.csv.", in("files")),
            Map.entry("org.apache.commons.statistics.", in("engine")),
            Map.entry("picocli.", in("cli").or(in(""))),
            Map.entry("me.tongfei.", in("cli")));

    /** Nobody uses these: no other process, no network out, no scripts, no Java serialisation, no XML with entities. */
    private static final List<String> NEVER = List.of(
            "java.lang.ProcessBuilder",
            "java.lang.Runtime#exec",
            "javax.script.",
            "java.net.http.",
            "java.net.Socket",
            "java.net.URLConnection",
            "java.net.HttpURLConnection",
            "java.net.URL#open",
            "java.io.ObjectInputStream",
            "java.io.ObjectOutputStream",
            "javax.xml.parsers.",
            "java.rmi.",
            "javax.naming.");

    private static final List<String> WALL_CLOCK = List.of(
            "java.lang.System#currentTimeMillis",
            "java.lang.System#getenv",
            "java.lang.System#getProperty",
            "java.time.Clock#system",
            "java.time.ZoneId#systemDefault",
            "java.util.Date#<init>");

    private Architecture() {}

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(List.of(more));
        return all;
    }

    static List<String> importOrder(JavaClasses classes) {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : classes) {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                JavaClass to = dependency.getTargetClass().getBaseComponentType();
                if (!to.getPackageName().startsWith("weekwright")) {
                    continue;
                }
                String here = group(from);
                String there = group(to);
                Set<String> may = MAY_IMPORT.getOrDefault(here, Set.of());
                boolean app = there.isEmpty() && outer(to).equals("App");
                boolean appAllowed =
                        app && here.equals("web") && Set.of("Server", "Routes").contains(outer(from));
                if (!here.equals(there) && !may.contains(there) && !appAllowed) {
                    breaches.add(
                            from.getName() + " imports " + to.getName() + ", and " + (here.isEmpty() ? "root" : here)
                                    + " may not import " + (there.isEmpty() ? "App" : there));
                }
            }
        }
        return List.copyOf(breaches);
    }

    static List<String> libraryHomes(JavaClasses classes) {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : classes) {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                String to = dependency.getTargetClass().getBaseComponentType().getName();
                HOMES.forEach((library, home) -> {
                    if (to.startsWith(library) && !home.test(from)) {
                        breaches.add(from.getName() + " uses " + to + " outside the home of that library");
                    }
                });
            }
        }
        return List.copyOf(breaches);
    }

    static List<String> forbiddenUses(JavaClasses classes) {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : classes) {
            for (JavaAccess<?> access : from.getAccessesFromSelf()) {
                String called = access.getTargetOwner().getName() + "#" + access.getName();
                NEVER.stream()
                        .filter(never -> never.contains("#")
                                ? called.startsWith(never)
                                : never.endsWith(".")
                                        ? called.startsWith(never)
                                        : access.getTargetOwner().getName().equals(never))
                        .forEach(never -> breaches.add(from.getName() + " uses " + called + ", which nobody may"));
            }
        }
        return List.copyOf(breaches);
    }

    /** Only Main, App and the command line read the wall clock or the environment; all else is given a Clock. */
    static List<String> wallClock(JavaClasses classes) {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : classes) {
            if (group(from).equals("cli") || group(from).isEmpty()) {
                continue;
            }
            for (JavaAccess<?> access : from.getAccessesFromSelf()) {
                String called = access.getTargetOwner().getName() + "#" + access.getName();
                boolean now = called.startsWith("java.time.")
                        && access.getName().equals("now")
                        && access.getTarget().getFullName().matches(".*\\.now\\((java\\.time\\.ZoneId)?\\)");
                if (now || WALL_CLOCK.stream().anyMatch(called::startsWith)) {
                    breaches.add(from.getName() + " calls " + called + " and is not given a Clock");
                }
            }
        }
        return List.copyOf(breaches);
    }

    /** The part after {@code weekwright.}; the root package is the empty text. */
    private static String group(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 1 ? parts[1] : "";
    }

    /** The simple name of the class in whose file it stands. */
    private static String outer(JavaClass type) {
        String name = type.getName().substring(type.getPackageName().length() + 1);
        return name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
    }

    private static Predicate<JavaClass> in(String group) {
        return type -> group(type).equals(group);
    }

    private static Predicate<JavaClass> named(String ending) {
        return type -> outer(type).endsWith(ending);
    }
}
