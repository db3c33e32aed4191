package rimeward.adapter.mqtt;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import javax.net.SocketFactory;
import javax.net.ssl.SSLSocketFactory;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The sockets of one attempt, so that they can be cut whatever the library does. */
final class LineSockets extends SocketFactory {
    private static final Logger LOG = LoggerFactory.getLogger(LineSockets.class);

    private final @Nullable SSLSocketFactory tls;
    private final List<Socket> made = new ArrayList<>();
    private boolean cut;

    LineSockets(@Nullable SSLSocketFactory tls) {
        this.tls = tls;
    }

    @Override
    public synchronized Socket createSocket() throws IOException {
        if (cut) {
            throw new IOException("the attempt is over");
        }
        Socket socket = new LineSocket(tls);
        made.add(socket);
        return socket;
    }

    /** Closes all, and allows no more. */
    synchronized void cut() {
        cut = true;
        made.forEach(LineSockets::close);
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            LOG.debug("a socket did not close", e); // it is gone, one way or another
        }
    }

    @Override
    public Socket createSocket(String host, int port) throws IOException {
        throw new IOException("not used");
    }

    @Override
    public Socket createSocket(String host, int port, InetAddress from, int fromPort) throws IOException {
        throw new IOException("not used");
    }

    @Override
    public Socket createSocket(InetAddress host, int port) throws IOException {
        throw new IOException("not used");
    }

    @Override
    public Socket createSocket(InetAddress host, int port, InetAddress from, int fromPort) throws IOException {
        throw new IOException("not used");
    }
}
