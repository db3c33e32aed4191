package rimeward.adapter.mqtt;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketException;
import java.util.concurrent.CountDownLatch;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;
import org.jspecify.annotations.Nullable;

/**
 * The socket as Paho gets it: with TLS inside where that is asked for, an end that is told late, and a gate for long messages. Closing it
 * closes the TCP connection below at once, from any thread, whoever hangs in it; TLS would wait for the writer.
 */
final class LineSocket extends Socket {
    private static final int HANDSHAKE_MS = 10_000;

    private final Socket below = new Socket();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final @Nullable SSLSocketFactory tls;
    private volatile Socket carrier = below;

    /** @param tls null where the line is plain */
    LineSocket(@Nullable SSLSocketFactory tls) {
        this.tls = tls;
    }

    @Override
    public void connect(SocketAddress peer, int mostMs) throws IOException {
        below.connect(peer, mostMs);
        below.setTcpNoDelay(true);
        if (tls != null && peer instanceof InetSocketAddress at) {
            below.setSoTimeout(HANDSHAKE_MS);
            SSLSocket secured = (SSLSocket) tls.createSocket(below, at.getHostString(), at.getPort(), true);
            SSLParameters parameters = secured.getSSLParameters();
            parameters.setEndpointIdentificationAlgorithm("HTTPS"); // the certificate must be the host's (RFC 2818)
            secured.setSSLParameters(parameters);
            secured.startHandshake();
            carrier = secured;
        }
    }

    @Override
    public InputStream getInputStream() throws IOException {
        return new SlowEnd(new PacketGate(new BufferedInputStream(carrier.getInputStream())), closed);
    }

    @Override
    public OutputStream getOutputStream() throws IOException {
        return carrier.getOutputStream();
    }

    @Override
    public synchronized void setSoTimeout(int mostMs) throws SocketException {
        below.setSoTimeout(mostMs);
    }

    @Override
    public synchronized int getSoTimeout() throws SocketException {
        return below.getSoTimeout();
    }

    @Override
    public boolean isConnected() {
        return below.isConnected();
    }

    @Override
    public boolean isClosed() {
        return below.isClosed();
    }

    @Override
    public synchronized void close() throws IOException {
        closed.countDown();
        below.close();
    }
}
