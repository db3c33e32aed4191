package rimeward.app;

import rimeward.site.Messaging;
import rimeward.site.Page;
import rimeward.site.Site;

/** Where the page is shown, as {@code check} tells it. Of the token it knows only the file. */
final class PageSheet {
    private PageSheet() {}

    static String of(Site site) {
        return "\nPage\n" + (site.page() instanceof Page.Served page ? told(page) : "  none is served\n");
    }

    private static String told(Page.Served page) {
        String names = page.hosts().isEmpty() ? "" : ", also as " + String.join(", ", page.hosts());
        String port = page.port() == 0 ? " on any free port" : " port " + page.port();
        String who = Messaging.isLoopback(page.listen())
                ? "  seen from this machine only\n"
                : "  seen by everybody on its networks, unencrypted\n";
        String token = page.token() instanceof Page.TokenFile.Own own
                ? "the token in " + own.file()
                : "the token in the data folder";
        String address =
                page.address() instanceof Page.Address.Known known ? "  messages lead to " + known.url() + "\n" : "";
        return "  on " + page.listen() + port + names + "\n" + who + "  takes orders with " + token + "\n" + address;
    }
}
