package rimeward.sim.app;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.jspecify.annotations.Nullable;
import rimeward.site.Page;
import rimeward.site.Site;

/** Where {@code live} serves its page: to this machine only, on the port it was told, on the settings' own, or on a spare one. */
final class LivePage {
    private LivePage() {}

    /**
     * @param told null where nobody said
     * @throws IOException if no port is left
     */
    static Page of(Site site, @Nullable Integer told) throws IOException {
        if (told != null) {
            return Page.onLoopback(told);
        }
        int settled = site.page() instanceof Page.Served served ? served.port() : 0;
        return Page.onLoopback(settled > 0 && isFree(settled) ? settled : sparePort());
    }

    private static boolean isFree(int port) {
        try (ServerSocket tried = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return tried.isBound();
        } catch (IOException e) {
            return false;
        }
    }

    /** The same one after a restart of the controller, so that who looks on finds it again. */
    private static int sparePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }
}
