package rimeward.app;

import java.util.stream.Collectors;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** How messages go out, as {@code check} tells it. Of secrets it knows only the files. */
final class MessagingSheet {
    private MessagingSheet() {}

    static String of(Site site) {
        return "\nMessages\n"
                + (site.messaging() instanceof Messaging.Mqtt mqtt
                        ? told(site, mqtt)
                        : "  to no broker: alerts stand in the log and the record only\n");
    }

    private static String told(Site site, Messaging.Mqtt mqtt) {
        return "  " + mqtt.domain() + "/5/" + site.id() + "/… on " + mqtt.host() + " port " + mqtt.port() + ", "
                + security(mqtt.security()) + "\n  "
                + login(mqtt.login()) + "\n  "
                + commands(mqtt) + "\n"
                + (mqtt.logs() ? "  also sends what it says of itself\n" : "");
    }

    private static String security(Messaging.Security security) {
        if (!(security instanceof Messaging.Security.Tls tls)) {
            return "unencrypted";
        }
        String trust = tls.trust() instanceof Messaging.Trust.Own own
                ? "trusting who is in " + own.file()
                : "trusting the authorities that Java knows";
        return "encrypted, " + trust
                + (tls.identity() instanceof Messaging.Identity.Pkcs12 mine
                        ? ", showing the certificate in " + mine.file()
                        : "");
    }

    private static String login(Messaging.Login login) {
        return login instanceof Messaging.Login.Password password
                ? "logs in as " + password.user() + " with the password in " + password.passwordFile()
                : "logs in without name and password";
    }

    private static String commands(Messaging.Mqtt mqtt) {
        return mqtt.commands().isEmpty()
                ? "takes no commands"
                : mqtt.commands().stream()
                        .map(Messaging.Command::inWords)
                        .collect(Collectors.joining(", ", "takes these commands: ", ""));
    }
}
