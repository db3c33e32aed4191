package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;

/** A bare line to the page: what goes over it is the test's affair. */
final class Wire implements AutoCloseable {
    private static final int PATIENCE_MS = 30_000;

    private final Socket socket;

    Wire(int port) throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(PATIENCE_MS);
    }

    /** A whole exchange on a line of its own. */
    static String exchange(int port, String request) throws IOException {
        try (Wire wire = new Wire(port)) {
            wire.say(request);
            return wire.rest();
        }
    }

    static String get(int port, String path) throws IOException {
        return exchange(port, "GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    }

    void say(String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(ISO_8859_1));
    }

    /** All that comes until the other side ends. */
    String rest() throws IOException {
        return new String(socket.getInputStream().readAllBytes(), UTF_8);
    }

    /** What comes until this has come. */
    String until(String mark) throws IOException {
        ByteArrayOutputStream got = new ByteArrayOutputStream();
        InputStream in = socket.getInputStream();
        while (!got.toString(UTF_8).contains(mark)) {
            int next = in.read();
            if (next < 0) {
                throw new IOException("ended after: " + got.toString(UTF_8));
            }
            got.write(next);
        }
        return got.toString(UTF_8);
    }

    /** Whether something has come. */
    boolean isAnswered() {
        try {
            return socket.getInputStream().available() > 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** How much comes before the other side ends, in whatever way. */
    int taken() {
        byte[] part = new byte[65_536];
        int sum = 0;
        try {
            for (int got = 0; got >= 0; got = socket.getInputStream().read(part)) {
                sum += got;
            }
        } catch (IOException e) {
            return sum;
        }
        return sum;
    }

    /** Whether the other side has ended it; waits until it has, or has waited long enough. */
    boolean isEnded() throws IOException {
        return socket.getInputStream().read() < 0;
    }

    static int status(String answer) {
        return Integer.parseInt(answer.substring(9, 12));
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
