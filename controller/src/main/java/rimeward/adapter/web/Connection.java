package rimeward.adapter.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;
import java.util.Arrays;

/** One connection, for the server's thread. It waits for a request, for its answer to be made, or for that to be taken; or it follows live. */
final class Connection {
    enum Doing {
        READING,
        WRITING,
        BEING_ANSWERED,
        FOLLOWING
    }

    private static final int FIRST_BYTES = 1024;
    private static final int MOST_UNHEARD_BYTES = 1 << 20; // the rest of a body that was refused. Own choice

    private final SocketChannel channel;
    private final WebLimits limits;
    private final String here;
    private final String from;
    private byte[] in = new byte[FIRST_BYTES];
    private int length;
    private ByteBuffer[] out = {};
    private Doing doing = Doing.READING;
    private boolean keeps;
    private boolean headOnly;
    private boolean ended;
    private int unheardBytes;

    /** Since when it does what it does, or took the last byte of an event, ms. */
    long sinceMs;

    /** When it was last told something, ms. */
    long toldMs;

    /** What it was last told of each topic. */
    final long[] seen;

    Connection(SocketChannel channel, WebLimits limits, int topics, long nowMs) throws IOException {
        this.channel = channel;
        this.limits = limits;
        here = shown(channel.getLocalAddress());
        from = shown(channel.getRemoteAddress());
        seen = new long[topics];
        sinceMs = nowMs;
    }

    /** In numbers, an IPv6 one in brackets and in full. */
    private static String shown(SocketAddress address) {
        return address instanceof InetSocketAddress inet ? shown(inet.getAddress()) : "";
    }

    static String shown(InetAddress address) {
        String text = address.getHostAddress();
        String bare = text.contains("%") ? text.substring(0, text.indexOf('%')) : text;
        return bare.contains(":") ? "[" + bare + "]" : bare;
    }

    Doing doing() {
        return doing;
    }

    /** Whether it has begun a request that is not whole yet. */
    boolean isAmidRequest() {
        return doing == Doing.READING && length > 0;
    }

    /** Takes what has come; whether the other side is still there. */
    boolean read(ByteBuffer scratch) throws IOException {
        scratch.clear();
        if (ended || doing == Doing.FOLLOWING) { // nobody listens
            int heard = channel.read(scratch);
            unheardBytes += Math.max(0, heard);
            return heard >= 0 && unheardBytes <= MOST_UNHEARD_BYTES;
        }
        int room = limits.headBytes() + limits.bodyBytes() + 4 - length;
        scratch.limit(Math.min(scratch.capacity(), Math.max(0, room)));
        int got = channel.read(scratch);
        if (got < 0) {
            return false;
        }
        scratch.flip();
        if (length + got > in.length) {
            in = Arrays.copyOf(in, Math.max(length + got, 2 * in.length));
        }
        scratch.get(in, length, got);
        length += got;
        return true;
    }

    Parsed parsed(RequestText text) {
        return length == 0 ? Parsed.MORE : text.read(in, length);
    }

    /** The request is on its way to be answered. */
    Request taken(Parsed.Whole whole, long nowMs) {
        length -= whole.length();
        System.arraycopy(in, whole.length(), in, 0, length);
        keeps = whole.keeps();
        headOnly = whole.method().equals("HEAD");
        become(Doing.BEING_ANSWERED, nowMs);
        return new Request(
                whole.method(), whole.path(), whole.question(), whole.headers(), whole.body(), here, from, keeps);
    }

    /** Begins to answer. */
    void answer(Response response, boolean last, long nowMs) {
        keeps &= !last;
        out = new ByteBuffer[] {
            response.head(keeps),
            headOnly ? ByteBuffer.allocate(0) : response.body().duplicate(),
        };
        become(response.live() && !headOnly ? Doing.FOLLOWING : Doing.WRITING, nowMs);
    }

    /** Tells a listener something; only when nothing lies unsent. */
    void tell(byte[] event, long nowMs) {
        out = new ByteBuffer[] {ByteBuffer.wrap(event)};
        sinceMs = nowMs;
        toldMs = nowMs;
    }

    private void become(Doing next, long nowMs) {
        doing = next;
        sinceMs = nowMs;
    }

    /** Sends what the other side takes; whether anything went. */
    boolean write() throws IOException {
        return hasUnsent() && channel.write(out) > 0;
    }

    boolean hasUnsent() {
        return unsentBytes() > 0;
    }

    long unsentBytes() {
        long sum = 0;
        for (ByteBuffer part : out) {
            sum += part.remaining();
        }
        return sum;
    }

    /** All is sent: the next request may come; false where none may. */
    boolean again(long nowMs) {
        out = new ByteBuffer[] {};
        if (!keeps) {
            return false;
        }
        in = length == 0 && in.length > FIRST_BYTES ? new byte[FIRST_BYTES] : in;
        become(Doing.READING, nowMs);
        return true;
    }

    /** Says that no more follows, and waits for the other side to go: closing at once could throw away what it has not read. */
    void end(long nowMs) throws IOException {
        ended = true;
        sinceMs = nowMs;
        channel.shutdownOutput();
    }

    boolean isEnding() {
        return ended;
    }

    /** What to wait for. */
    int interest() {
        if (ended) {
            return SelectionKey.OP_READ;
        }
        return switch (doing) {
            case READING -> SelectionKey.OP_READ;
            case BEING_ANSWERED -> 0;
            case WRITING -> SelectionKey.OP_WRITE;
            case FOLLOWING -> SelectionKey.OP_READ | (hasUnsent() ? SelectionKey.OP_WRITE : 0);
        };
    }
}
