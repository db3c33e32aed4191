package rimeward.site;

import java.util.List;

/** How messages reach the grower: by a broker of MQTT, or not at all. Secrets are never here, only the names of their files. */
public sealed interface Messaging {
    /** Only the log and the record tell. */
    record None() implements Messaging {}

    /**
     * A broker that speaks MQTT 3.1.1 (OASIS standard, 2014).
     *
     * @param host name or address
     * @param port mostly 8883 with TLS and 1883 without
     * @param domain first level of every topic (Homie 5: one level, {@code homie} where nobody says otherwise)
     * @param commands what the grower may ask for from afar
     * @param logs whether what the service says of itself goes out too
     */
    record Mqtt(
            String host, int port, Security security, Login login, String domain, List<Command> commands, boolean logs)
            implements Messaging {
        public Mqtt {
            Check.that(!host.isBlank(), "the broker's host is empty");
            Check.that(port >= 1 && port <= 65_535, "port is " + port + "; it must lie between 1 and 65535");
            Check.that(
                    security instanceof Security.Tls || isLoopback(host) || security.equals(new Security.Plain(true)),
                    "messages to " + host + " would go unencrypted");
            Check.that(domain.matches("[a-z0-9-]+"), "domain is \"" + domain + "\"; one level of a topic is needed");
            commands = List.copyOf(commands);
        }

        /** As people call it. */
        public String inWords() {
            return "the broker " + host + ":" + port;
        }

        public boolean allows(Command command) {
            return commands.contains(command);
        }
    }

    /** What keeps others on the network from reading along, or from playing the broker. */
    sealed interface Security {
        /**
         * Nothing does.
         *
         * @param accepted whether the grower has said that this may be, beyond this machine
         */
        record Plain(boolean accepted) implements Security {}

        /** The broker shows a certificate that {@code trust} signed for its host's name. */
        record Tls(Trust trust, Identity identity) implements Security {}
    }

    /** Whose signature under the broker's certificate counts. */
    sealed interface Trust {
        /** Whoever this Java runtime trusts. */
        record Usual() implements Trust {}

        /** The grower's own authority: a PEM file with one certificate or several. */
        record Own(String file) implements Trust {}
    }

    /** Whether we show a certificate too. */
    sealed interface Identity {
        record None() implements Identity {}

        /** Key and certificate in a PKCS#12 file; its password is the first line of another file. */
        record Pkcs12(String file, String passwordFile) implements Identity {}
    }

    /** As whom we log in. */
    sealed interface Login {
        record None() implements Login {}

        /** The password is the first line of the file. */
        record Password(String user, String passwordFile) implements Login {}
    }

    /** What may be asked for from afar. */
    enum Command {
        ACKNOWLEDGE("acknowledge an alert"),
        SET_FLOOR("set the floor within the plants' limits"),
        PLAN_NOW("plan the night now"),
        HAND_FORECAST("hand a forecast over"),
        STAND_DOWN("stand a machine down for service");

        private final String inWords;

        Command(String inWords) {
            this.inWords = inWords;
        }

        public String inWords() {
            return inWords;
        }
    }

    /** Whether the name cannot mean another machine (RFC 6761, RFC 1122, RFC 4291); no name is looked up. */
    static boolean isLoopback(String host) {
        return host.equals("localhost") || host.matches("127(\\.\\d{1,3}){3}") || host.equals("::1");
    }
}
