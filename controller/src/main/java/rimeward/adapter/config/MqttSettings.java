package rimeward.adapter.config;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rimeward.site.Messaging;

/** Reads {@code [mqtt]}; without it nothing speaks to a broker. */
final class MqttSettings {
    private static final int TLS_PORT = 8883; // both ports: IANA's registry of service names
    private static final int PLAIN_PORT = 1883;

    private MqttSettings() {}

    static Messaging read(TableReader top) {
        return top.findTable("mqtt").flatMap(MqttSettings::mqtt).orElse(new Messaging.None());
    }

    private static Optional<Messaging> mqtt(TableReader table) {
        String host = table.get("host", Kinds.text());
        boolean tls = table.get("tls", Kinds.yesNo("whether the line to the broker is encrypted"));
        int port = table.get("port", Kinds.whole(1, 65_535), tls ? TLS_PORT : PLAIN_PORT);
        boolean plainOk = table.get("plain_ok", Kinds.yesNo(), false);
        Messaging.Trust trust = table.find("ca_file", Kinds.text())
                .<Messaging.Trust>map(Messaging.Trust.Own::new)
                .orElse(new Messaging.Trust.Usual());
        Messaging.Identity identity = identity(table);
        Messaging.Login login = login(table);
        String domain = table.get("domain", Kinds.id(), "homie");
        List<Messaging.Command> commands = commands(table);
        boolean logs = table.get("log", Kinds.yesNo(), false);
        if (tls && plainOk) {
            table.fault("plain_ok", "contradicts tls = true", "keep one of the two");
        }
        if (!tls) {
            plain(table, host, plainOk);
        }
        Messaging.Security security =
                tls ? new Messaging.Security.Tls(trust, identity) : new Messaging.Security.Plain(plainOk);
        return table.whenSound(() -> new Messaging.Mqtt(host, port, security, login, domain, commands, logs));
    }

    private static void plain(TableReader table, String host, boolean plainOk) {
        for (String key : List.of("ca_file", "certificate_file")) {
            if (table.has(key)) {
                table.fault(key, "has no use without tls = true", "remove it, or set tls = true");
            }
        }
        if (table.isSound() && !plainOk && !Messaging.isLoopback(host)) {
            table.fault(
                    "tls",
                    "sends the password and all messages to " + host + " unencrypted",
                    "set tls = true, or, where nobody else is on that network, plain_ok = true");
        }
    }

    private static Messaging.Login login(TableReader table) {
        Optional<String> user = table.find("user", Kinds.text());
        Optional<String> file = table.find("password_file", Kinds.text());
        if (table.has("password")) {
            table.faultOfSecret("password", "must not stand in the settings", "name a file with it: password_file");
        }
        if (user.isPresent() != file.isPresent()) {
            String there = user.isPresent() ? "user" : "password_file";
            table.fault(there, "is one half of a login", user.isPresent() ? "add password_file" : "add user");
        }
        return user.isPresent() && file.isPresent()
                ? new Messaging.Login.Password(user.get(), file.get())
                : new Messaging.Login.None();
    }

    private static Messaging.Identity identity(TableReader table) {
        Optional<String> file = table.find("certificate_file", Kinds.text());
        Optional<String> password = table.find("certificate_password_file", Kinds.text());
        if (file.isPresent() != password.isPresent()) {
            String there = file.isPresent() ? "certificate_file" : "certificate_password_file";
            String other = file.isPresent() ? "certificate_password_file" : "certificate_file";
            table.fault(there, "goes with " + other, "add " + other);
        }
        return file.isPresent() && password.isPresent()
                ? new Messaging.Identity.Pkcs12(file.get(), password.get())
                : new Messaging.Identity.None();
    }

    private static List<Messaging.Command> commands(TableReader table) {
        Map<String, Messaging.Command> words = new LinkedHashMap<>();
        for (Messaging.Command command : Messaging.Command.values()) {
            words.put(command.name().toLowerCase(Locale.ROOT).replace('_', '-'), command);
        }
        List<Messaging.Command> allowed = new ArrayList<>();
        if (table.has("commands")) {
            table.list("commands", Kinds.word(words)).stream().distinct().forEach(allowed::add);
        }
        return allowed;
    }
}
