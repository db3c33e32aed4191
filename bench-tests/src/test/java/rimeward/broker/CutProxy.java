package rimeward.broker;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;

/** A network between a tunnel and its broker that breaks after so many bytes, in the middle of whatever is being said. */
final class CutProxy implements AutoCloseable {
    private final ServerSocket server;
    private final int to;
    private final List<Socket> open = new CopyOnWriteArrayList<>();
    private final AtomicLong leftBytes = new AtomicLong(Long.MAX_VALUE);

    CutProxy(int to) throws IOException {
        this.to = to;
        server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        begin(this::accept);
    }

    int port() {
        return server.getLocalPort();
    }

    /** From now on so many bytes from the tunnel get through; then everything breaks, and the next line is a good one. */
    void cutAfter(long bytes) {
        leftBytes.set(bytes);
    }

    private static void begin(Runnable run) {
        Thread thread = new Thread(run, "proxy");
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (!server.isClosed()) {
            acceptOne();
        }
    }

    private void acceptOne() {
        try {
            Socket from = server.accept();
            Socket onward = new Socket(InetAddress.getLoopbackAddress(), to);
            open.addAll(List.of(from, onward));
            begin(() -> pass(from, onward, true));
            begin(() -> pass(onward, from, false));
        } catch (IOException e) {
            leftBytes.set(Long.MAX_VALUE); // closed, or the broker is away
        }
    }

    private void pass(Socket from, Socket onward, boolean counted) {
        try (from;
                onward) {
            InputStream in = from.getInputStream();
            OutputStream out = onward.getOutputStream();
            for (int next = in.read(); next >= 0; next = in.read()) {
                if (counted && leftBytes.getAndDecrement() <= 0) {
                    leftBytes.set(Long.MAX_VALUE);
                    return;
                }
                out.write(next);
            }
        } catch (IOException e) {
            leftBytes.set(Long.MAX_VALUE); // the other half broke
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
        for (Socket each : open) {
            each.close();
        }
    }
}
