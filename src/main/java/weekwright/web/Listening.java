package weekwright.web;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import weekwright.web.kit.Front;

/**
 * Where the server listens.
 *
 * @param host the address; 127.0.0.1 for this machine alone, 0.0.0.0 for every address it has
 * @param port 0 for a free one
 * @param names by which it may be called besides its addresses
 * @param behindProxy whether a proxy passes requests on to it
 * @param certificate with which it speaks TLS itself
 */
public record Listening(
        String host, int port, List<String> names, boolean behindProxy, Optional<Certificate> certificate) {
    public Listening {
        names = List.copyOf(names);
    }

    /** Without TLS of its own. */
    public Listening(String host, int port, List<String> names, boolean behindProxy) {
        this(host, port, names, behindProxy, Optional.empty());
    }

    /** Whether others than this machine can reach it. */
    public boolean beyond() {
        return behindProxy || !Set.of("127.0.0.1", "localhost", "::1", "[::1]").contains(host);
    }

    Front front() {
        Set<String> all = names(host);
        names.forEach(name -> all.add(name.toLowerCase(Locale.ROOT)));
        return new Front(all, beyond(), behindProxy, certificate.isPresent());
    }

    /** The names of this machine under which a server that listens to more than itself may be called. */
    private static Set<String> names(String host) {
        Set<String> names = new HashSet<>();
        String given = host.toLowerCase(Locale.ROOT);
        if (!given.equals("0.0.0.0") && !given.equals("::")) {
            names.add(given.contains(":") && !given.startsWith("[") ? "[" + given + "]" : given);
        }
        if (!given.equals("0.0.0.0") && !given.equals("::")) {
            return names;
        }
        try {
            NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .map(InetAddress::getHostAddress)
                    .map(address -> address.replaceFirst("%.*", ""))
                    .forEach(address -> names.add(address.contains(":") ? "[" + address + "]" : address));
            names.add(InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT));
        } catch (SocketException | UnknownHostException e) {
            return names;
        }
        return names;
    }
}
