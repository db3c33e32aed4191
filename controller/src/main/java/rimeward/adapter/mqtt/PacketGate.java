package rimeward.adapter.mqtt;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Lets through whole MQTT packets up to a size, and swallows longer messages before anybody reserves memory for one: a packet may claim
 * 256 MB, and whoever may send us a command could end the service with it. Framing: MQTT 3.1.1, 2.2.
 */
final class PacketGate extends FilterInputStream {
    /** Several times the longest message that we understand, bytes. */
    static final int MOST_BYTES = 65_536;

    private static final Logger LOG = LoggerFactory.getLogger(PacketGate.class);
    private static final int PUBLISH = 3;
    private static final int LONGEST_HEAD = 5;

    private final byte[] head = new byte[LONGEST_HEAD];
    private int known;
    private int handedOut;
    private boolean headDone;
    private long left;
    private boolean swallowing;

    PacketGate(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
        if (most == 0) {
            return 0;
        }
        while (!headDone || swallowing) {
            if (!(swallowing ? swallowed() : headRead())) {
                return -1;
            }
        }
        int count;
        if (handedOut < known) {
            count = Math.min(most, known - handedOut);
            System.arraycopy(head, handedOut, into, from, count);
            handedOut += count;
        } else {
            count = in.read(into, from, (int) Math.min(most, left));
            if (count < 0) {
                return -1;
            }
            left -= count;
        }
        beginAnewWhenDone();
        return count;
    }

    private void beginAnewWhenDone() {
        if (handedOut == known && left == 0) {
            headDone = false;
            known = 0;
            handedOut = 0;
        }
    }

    /** One byte further; what is known stays known where the read times out. */
    private boolean headRead() throws IOException {
        int next = in.read();
        if (next < 0) {
            return false;
        }
        head[known] = (byte) next;
        known++;
        if (known > 1 && (next & 0x80) == 0) {
            begin(length());
        } else if (known == LONGEST_HEAD) {
            throw new IOException("what the peer says is not MQTT");
        }
        return true;
    }

    private long length() {
        long length = 0;
        for (int i = known - 1; i > 0; i--) {
            length = length << 7 | (head[i] & 0x7f);
        }
        return length;
    }

    private void begin(long length) {
        left = length;
        if (length > MOST_BYTES && (head[0] & 0xff) >> 4 == PUBLISH) {
            LOG.warn("a message of {} bytes was left out; none may be longer than {}", length, MOST_BYTES);
            swallowing = true;
            known = 0;
        } else {
            headDone = true;
        }
    }

    private boolean swallowed() throws IOException {
        byte[] waste = new byte[8192];
        while (left > 0) {
            int count = in.read(waste, 0, (int) Math.min(waste.length, left));
            if (count < 0) {
                return false;
            }
            left -= count;
        }
        swallowing = false;
        return true;
    }

    @Override
    public int available() {
        return 0;
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
