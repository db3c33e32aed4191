package rimeward.adapter.config;

import java.util.List;
import java.util.Optional;
import rimeward.site.Messaging;
import rimeward.site.Page;

/** Reads {@code [page]}; without it nothing is listened on. */
final class PageSettings {
    private static final int PORT = 8484; // own choice, among those that IANA has given to nobody

    private PageSettings() {}

    static Page read(TableReader top) {
        return top.findTable("page").flatMap(PageSettings::page).orElse(new Page.None());
    }

    private static Optional<Page> page(TableReader table) {
        boolean on = table.get("on", Kinds.yesNo(), true);
        String listen = table.get("listen", listen(), "127.0.0.1");
        int port = table.get("port", Kinds.whole(0, 65_535), PORT);
        Optional<String> file = table.find("token_file", Kinds.text());
        List<String> hosts = table.has("hosts") ? table.list("hosts", host()) : List.of();
        Optional<String> address = table.find("address", address());
        if (table.has("token")) {
            table.faultOfSecret("token", "must not stand in the settings", "name a file with it: token_file");
        }
        if (table.isSound() && !Messaging.isLoopback(listen) && file.isEmpty()) {
            table.fault(
                    "listen",
                    "shows the page to others on the network, who could ask for things",
                    "add token_file, a file whose first line is a secret of 22 letters or more (openssl rand -base64 32)");
        }
        Page.TokenFile token = file.<Page.TokenFile>map(Page.TokenFile.Own::new).orElse(new Page.TokenFile.Made());
        Page.Address known = address.<Page.Address>map(Page.Address.Known::new).orElse(new Page.Address.Unknown());
        return table.whenSound(() -> on ? new Page.Served(listen, port, token, hosts, known) : new Page.None());
    }

    private static Kind<String> listen() {
        return Kinds.checked(
                "an address of this machine in numbers, in quotes",
                "127.0.0.1",
                Page.Served::isAddress,
                "is no address in numbers",
                "write \"127.0.0.1\" for this machine only, \"0.0.0.0\" for all its networks");
    }

    private static Kind<String> host() {
        return Kinds.checked(
                "a host's name without port, in quotes",
                "a",
                Page.Served::isHost,
                "is no host's name",
                "write it like \"tunnel.local\", without http:// and port");
    }

    private static Kind<String> address() {
        return Kinds.checked(
                "where others find the page, in quotes",
                "http://a/",
                Page.Address.Known::isUrl,
                "must begin with http:// or https:// and a host, and end with a slash",
                "write it like \"https://tunnel.example/\"");
    }
}
