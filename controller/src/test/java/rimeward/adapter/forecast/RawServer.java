package rimeward.adapter.forecast;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;

/** A server on loopback that says, byte by byte, what a test wants said; one connection after the other. */
final class RawServer implements AutoCloseable {
    /** What is said to whoever connects, after the question was read. */
    interface Answer {
        void say(OutputStream out, Socket line) throws IOException, InterruptedException;
    }

    private final ServerSocket socket;
    private final Thread thread;

    RawServer(Answer answer) {
        try {
            socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        thread = new Thread(() -> serve(answer), "raw server");
        thread.setDaemon(true);
        thread.start();
    }

    /** Says this text and hangs up. */
    static RawServer saying(String text) {
        return new RawServer((out, line) -> out.write(text.getBytes(ISO_8859_1)));
    }

    URI uri() {
        return URI.create("http://127.0.0.1:" + socket.getLocalPort() + "/forecast?lat=1");
    }

    private void serve(Answer answer) {
        while (!socket.isClosed()) {
            try (Socket line = socket.accept()) {
                readQuestion(line.getInputStream());
                OutputStream out = line.getOutputStream();
                answer.say(out, line);
                out.flush();
            } catch (IOException e) {
                // the client hung up, or the test is over
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** Up to the empty line. */
    private static void readQuestion(InputStream in) throws IOException {
        int newLines = 0;
        for (int c = in.read(); c >= 0 && newLines < 2; c = newLines < 2 ? in.read() : c) {
            newLines = c == '\n' ? newLines + 1 : c == '\r' ? newLines : 0;
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
        thread.interrupt();
    }
}
