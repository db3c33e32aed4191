package rimeward.site;

import java.util.List;
import java.util.regex.Pattern;

/** Whether the service shows itself in a browser, where, and under which names. */
public sealed interface Page {
    /** It does not. */
    record None() implements Page {}

    /**
     * It does, unencrypted: on a network that others share something that encrypts belongs before it.
     *
     * @param listen the address of this machine that is listened on; 127.0.0.1 is reached from this machine only
     * @param port 0 for any that is free
     * @param token where the secret lies that orders need
     * @param hosts names that it answers to beside the address itself
     * @param address where others find it, for links
     */
    record Served(String listen, int port, TokenFile token, List<String> hosts, Address address) implements Page {
        private static final Pattern LISTEN = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|[0-9a-fA-F:]*:[0-9a-fA-F:.]*");
        private static final Pattern HOST = Pattern.compile("[A-Za-z0-9]([A-Za-z0-9.-]{0,251}[A-Za-z0-9])?");

        public Served {
            Check.that(isAddress(listen), "listen is \"" + listen + "\"; it must be an address in numbers");
            Check.that(port >= 0 && port <= 65_535, "port is " + port + "; it must lie between 0 and 65535");
            hosts = List.copyOf(hosts);
            hosts.forEach(host -> Check.that(isHost(host), "\"" + host + "\" is no host's name"));
        }

        /** Whether it is an address in numbers: no name is looked up. */
        public static boolean isAddress(String text) {
            return LISTEN.matcher(text).matches();
        }

        /** Whether it is a name, without port. */
        public static boolean isHost(String text) {
            return HOST.matcher(text).matches();
        }

        /** What to type into a browser on this machine, or, where it listens on one address, on others. */
        public String inWords(int boundPort) {
            boolean any = listen.equals("0.0.0.0") || listen.matches("[0:]+");
            String host = any ? "localhost" : listen.contains(":") ? "[" + listen + "]" : listen;
            return "http://" + host + ":" + boundPort + "/";
        }

        /** The same place on another port. */
        public Served onPort(int other) {
            return new Served(listen, other, token, hosts, address);
        }
    }

    /** Where the token lies. */
    sealed interface TokenFile {
        /** In the data folder; it is made at the first start. */
        record Made() implements TokenFile {}

        /** In the first line of a file of the grower's. */
        record Own(String file) implements TokenFile {}
    }

    /** Where others find the page. */
    sealed interface Address {
        record Unknown() implements Address {}

        /** @param url with a slash at its end */
        record Known(String url) implements Address {
            private static final Pattern URL =
                    Pattern.compile("https?://[A-Za-z0-9.\\[\\]:-]{1,260}(/[A-Za-z0-9._~-]+)*/");

            public Known {
                Check.that(
                        isUrl(url),
                        "address is \"" + url + "\"; it must look like https://host/ with a slash at its end");
            }

            public static boolean isUrl(String text) {
                return URL.matcher(text).matches();
            }
        }
    }

    /** On this machine only, with a token of its own making. */
    static Served onLoopback(int port) {
        return new Served("127.0.0.1", port, new TokenFile.Made(), List.of(), new Address.Unknown());
    }
}
